"""Joints: what is cut into two parts where they meet, and what holds them together.

A part that comes to another (the *second*) meets a face, edge or end of it (the *first*)
with its end, edge or face.  Both are laid on the bench beforehand, the second reaching
as far into the first as :mod:`rodwright.setout.rod.reach` says; :func:`make_joint` cuts both and
joins them.  All lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Collection

from rodwright.geometry import Box
from rodwright.setout.joints.dowels import dowelled
from rodwright.setout.joints.housed import housed, note, rebated, tongue_of, tongued
from rodwright.setout.joints.knock_down import knock_down
from rodwright.setout.joints.meet import Work, find_meeting
from rodwright.setout.joints.mitred import mitred
from rodwright.setout.joints.screws import pocket_screwed, screwed
from rodwright.setout.joints.slots import biscuited, loose_tenoned
from rodwright.setout.setting import Setting
from rodwright.unit import JointKind
from rodwright.wishes.joints import JointSpec

__all__ = ["make_joint"]


def make_joint(
    setting: Setting,
    wish: JointSpec,
    first: str,
    second: str,
    *,
    layers: tuple[str, ...] = (),
    clear: Box | None = None,
    among: Collection[str] | None = None,
) -> None:
    """Cut a joint into two parts (refs) on the bench, and join them with what holds it.

    ``layers`` are parts that lie on the second and meet the first beside it: they go into
    the same housing or rebate; in other joints they are butted.  ``clear`` is what of the second is
    free for the joint (unit frame), where not all of it is.  ``among`` are the parts that are there
    while the two are put together, where the rest of the bench comes later.  What the material
    can't take is noted at the setting's place, that of the joint in the spec, and the parts stay as
    they are.

    Raises:
        ValueError: the parts don't meet, or the second doesn't reach into the first as far
            as its joint needs.
    """
    bench, unit = setting.bench, setting.unit
    meeting = find_meeting(bench, first, second, clear)
    work = Work(setting, wish, meeting, bench.parts if among is None else among)
    match wish.joint:
        case "housed":
            housed(work, layers)
            return
        case "rebated":
            rebated(work, layers)
            return
        case "butted":
            note(bench, JointKind.BUTT, first, second)
        case "screwed":
            screwed(work)
        case "tongued":
            tongued(work, layers, tongue_of(work.meeting.thickness, unit))
            return
        case "dowelled":
            dowelled(work)
        case "biscuited":
            biscuited(work)
        case "loose-tenoned":
            loose_tenoned(work, unit)
        case "pocket-screwed":
            pocket_screwed(work)
        case "knock-down":
            knock_down(work)
        case "mitred":
            mitred(work)
    for ref in layers:
        note(bench, JointKind.BUTT, first, ref)
