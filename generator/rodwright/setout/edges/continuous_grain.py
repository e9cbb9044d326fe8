"""Fronts through which the grain runs on: which of them are cut from one piece."""

from __future__ import annotations

from rodwright.problems import KeyPath
from rodwright.setout.setting import Setting
from rodwright.unit import DOORS, Grain, Part, Role

_WHOLE = (Role.DOOR, Role.DRAWER_FRONT)
"""Fronts that are one piece, with one grain."""


def run_grain_on(setting: Setting) -> None:
    """Note of each front the run that it belongs to: that of the innermost space that asks for it.

    A space without two fronts of one piece, and fronts of what has no grain, are problems.
    """
    # Of a unit that is refused already, fronts may be missing for that alone.
    refused = setting.problems.noted_since()
    spaces = sorted(setting.notes.continuous, key=len, reverse=True)
    fronts = {part.ref: part for part in setting.bench.parts_of(*_WHOLE)}
    for number, where in enumerate(spaces, start=1):
        inside = [
            part for part in fronts.values() if _is_in(setting.bench.place_of(part.ref), where)
        ]
        for part in inside:
            del fronts[part.ref]
        if len(inside) > 1:
            setting.bench.run_grain([part.ref for part in inside], str(number))
            _need_grain(setting.moved_to((*where, "continuous_grain")), inside)
        elif not refused:
            _refuse(setting.moved_to((*where, "continuous_grain")), inside)


def _is_in(place: KeyPath, where: KeyPath) -> bool:
    return place[: len(where)] == where


def _need_grain(setting: Setting, fronts: list[Part]) -> None:
    for name in dict.fromkeys(
        part.blank.stock.name for part in fronts if part.blank.grain is Grain.NONE
    ):
        setting.refuse(
            f"fronts of `{name}` have no grain that could run on",
            "Leave it out, or name other stock for them.",
        )


def _refuse(setting: Setting, fronts: list[Part]) -> None:
    framed = [each for each in setting.bench.parts_of(*DOORS) if each.role is not Role.DOOR]
    besides = "; doors with a frame have no one grain" if framed else ""
    found = "only one front" if fronts else "no front"
    setting.refuse(
        f"{found} of one piece is in this space for the grain to run on through{besides}",
        "Leave it out, or say it of a space with two drawers or flat doors at least.",
    )
