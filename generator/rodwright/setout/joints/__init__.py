"""Joints: what is cut into two parts where they meet, and what holds them together.

A part that comes to another (the *second*) meets a face, edge or end of it (the *first*)
with its end, edge or face.  Both are laid on the bench beforehand, the second reaching
as far into the first as :mod:`rodwright.setout.rod.reach` says; :func:`make_joint` cuts both and
joins them.  All lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Callable, Collection

from rodwright.geometry import Box
from rodwright.setout.joints.dowels import dowelled
from rodwright.setout.joints.housed import housed, note, rebated, tongued
from rodwright.setout.joints.knock_down import knock_down
from rodwright.setout.joints.meet import Work, find_meeting
from rodwright.setout.joints.mitred import mitred
from rodwright.setout.joints.screws import pocket_screwed, screwed
from rodwright.setout.joints.slots import biscuited, loose_tenoned
from rodwright.setout.setting import Setting
from rodwright.unit import JointKind
from rodwright.wishes.joints import JointSpec, JointWord

__all__ = ["MAKERS", "make_joint"]


def _butted(work: Work) -> None:
    note(work.bench, JointKind.BUTT, work.meeting.first, work.meeting.second)


MAKERS: dict[JointWord, Callable[[Work], None]] = {
    "butted": _butted,
    "screwed": screwed,
    "housed": housed,
    "rebated": rebated,
    "tongued": tongued,
    "dowelled": dowelled,
    "biscuited": biscuited,
    "loose-tenoned": loose_tenoned,
    "pocket-screwed": pocket_screwed,
    "knock-down": knock_down,
    "mitred": mitred,
}
"""What cuts each joint, notes what holds it, and refuses what the material can't take."""
LETS_IN: tuple[JointWord, ...] = ("housed", "rebated", "tongued")
"""Joints that let in what lies on the second part with it; in others that is butted."""


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
    bench = setting.bench
    meeting = find_meeting(bench, first, second, clear)
    present = bench.parts if among is None else among
    MAKERS[wish.joint](Work(setting, wish, meeting, present, layers))
    if wish.joint not in LETS_IN:
        for ref in layers:
            note(bench, JointKind.BUTT, first, ref)
