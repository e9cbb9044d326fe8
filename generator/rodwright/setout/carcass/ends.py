"""The ends of what stands and lies inside a carcass, and the joints that they get."""

from __future__ import annotations

from rodwright.problems import KeyPath
from rodwright.setout.inside import Space
from rodwright.setout.joints import make_joint
from rodwright.setout.notes import End
from rodwright.setout.setting import Setting
from rodwright.wishes.joints import JointSpec


def reaches(setting: Setting, space: Space, joint: JointSpec) -> tuple[float, float]:
    """How far (mm) a part across a space reaches into its left and its right upright."""
    left, right = (
        setting.rod.joinery.reach(joint, upright.right - upright.left)
        for upright in (space.left, space.right)
    )
    return left, right


def ends_place(setting: Setting, ends: JointSpec | None) -> KeyPath:
    """Where in the spec the joint of some ends is wished: here, or for the whole carcass."""
    return ("carcass", "corners") if ends is None else setting.at("ends").where


def join_ends(setting: Setting) -> None:
    """Joint every end to what carries it, once all of them lie there.

    What stands behind a divider decides whether screws can be driven through it, and joints on
    its two sides make room for each other.  So none is made before the others are known, and
    they are made in an order that a unit and its mirror image share: from the bottom up, from
    the front, the narrower first, then from the middle outwards.
    """
    middle = setting.rod.outside.width / 2

    def order(end: End) -> tuple[float, ...]:
        box = setting.bench.bounds(end.ref)
        low, high, size = box.low, box.high, box.size
        figures = (low[2], high[2], low[1], high[1], size[0], abs(box.centre[0] - middle))
        return tuple(round(figure, 6) for figure in figures)

    for end in sorted(setting.notes.ends, key=order):
        place = setting.moved_to(end.where)
        make_joint(place, end.joint, end.carrier, end.ref, layers=end.layers)
