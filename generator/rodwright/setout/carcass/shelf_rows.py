"""Rows of holes for adjustable shelves: where they run, and the shelves that rest on them.

Lengths in mm, unit frame unless said otherwise.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import floor

from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit, from_inches
from rodwright.setout.inside import Space
from rodwright.setout.notes import ShelfRows
from rodwright.setout.setting import Setting
from rodwright.trade.wood_left import BETWEEN
from rodwright.wishes.models import ShelvesSpec
from rodwright.wishes.shelf_holes import ShelfHolesSpec

SETBACK: dict[LengthUnit, float] = {"mm": 37.0, "in": from_inches("1 7/16")}
"""From the front edge of the uprights to the front row, mm ("What all modular 32mm systems have in
common", davelers.com/32mm); from the rear edge of the shelf to the rear row as much, so that the
two sides are alike (common practice, no source)."""
SLEEVE: dict[LengthUnit, float] = {"mm": 2.0, "in": from_inches("1/32")}
"""How much wider (mm) the hole for a sleeve is than its pin (common practice, no source)."""
ENDS = 2
"""Pitches kept free at either end of a row that nothing more was said of (common practice, no
source)."""
MOST_HOLES = 300
"""Holes of one row; at the usual pitch that is a shelf unit of nearly 10 m."""
PLATE_USE, PIN_USE = "hinge plate", "adjustable shelves"
"""What the holes of a hinge's plate, and those of a row, are for."""
_MERGED = 20.0
"""Rows this near (mm) the line of a door's hinge plates are laid on it (common practice, no
source)."""


def hole_diameter(wish: ShelfHolesSpec, unit: LengthUnit) -> float:
    """Diameter of the holes: the pin's, or its sleeve's."""
    return wish.diameter + (SLEEVE[unit] if wish.sleeves else 0.0)


def end_margin(wish: ShelfHolesSpec, unit: LengthUnit) -> float:
    """The least distance from a hole's centre to the end of its space."""
    wide = hole_diameter(wish, unit)
    return max(wide, wide / 2 + BETWEEN)


def best_datum(heights: Sequence[float], pitch: float) -> float:
    """Where a row must begin (0 <= datum < pitch) for its holes to come nearest to heights.

    The largest distance from a height to its nearest hole is then as small as it can be:
    half of what the largest gap between the heights' remainders leaves of the pitch.
    """
    rests = sorted(height % pitch for height in heights)
    following = [*rests[1:], rests[0] + pitch]
    gaps = [after - rest for rest, after in zip(rests, following, strict=True)]
    widest = max(range(len(gaps)), key=gaps.__getitem__)
    return (following[widest] + (pitch - gaps[widest]) / 2) % pitch


def lay_rows(
    setting: Setting,
    space: Space,
    wish: ShelvesSpec,
    wished: Sequence[float],
    thickness: float,
    across: tuple[float, float, float],
) -> ShelfRows | None:
    """The rows for the adjustable shelves of a space; None where they can't be, which is noted.

    Behind a door on concealed hinges the front rows lie on the line of the hinges' plates, unless
    the maker said where they lie.

    ``wished`` are the undersides of the shelves above the floor of the space, ``thickness``
    is how thick they are.  ``across`` are the y of the front that rows are measured from, and
    of the shelves' front and rear.
    """
    holes, here = wish.holes, setting.at("holes")
    rows = _across(here, holes, across, space.plates)
    if rows is None or not _fits(here, holes, space.height):
        return None
    pin = holes.diameter / 2
    if holes.start is not None:
        datum = holes.start
    elif wish.at is not None:
        datum = wished[0] - pin
    else:
        datum = best_datum([height - pin for height in wished], holes.pitch)
    steps = _nearest(setting, space.height, wish, wished, datum, thickness)
    if not steps:
        return None
    low, high = _ends(holes, space.height, setting.unit)
    reach = range(floor((low - datum) / holes.pitch), floor((high - datum) / holes.pitch) + 1)
    if holes.near is not None:
        reach = range(-holes.near, holes.near + 1)
        some = {step + more for step in steps for more in reach}
    else:
        some = set(range(min([*reach, *steps]), max([*reach, *steps]) + 1))

    def height(step: int) -> float:
        return space.low + datum + step * holes.pitch

    kept = [
        step
        for step in sorted(some)
        if step in steps or low - TOUCH <= height(step) - space.low <= high + TOUCH
    ]
    if len(kept) > MOST_HOLES:
        here.at("pitch").refuse(
            f"a row of {len(kept)} holes {setting.say(holes.pitch)} apart is more than anybody "
            f"bores",
            f"Make the pitch greater, or bore only some: `near`, or `from` and `to` ({MOST_HOLES} "
            "at most).",
        )
        return None
    return ShelfRows(
        here.where, holes, space, tuple(map(height, kept)), tuple(map(height, steps)), *rows
    )


def _across(
    setting: Setting,
    holes: ShelfHolesSpec,
    across: tuple[float, float, float],
    plates: float | None,
) -> tuple[float, float] | None:
    """The y of the front and the rear row; ``plates`` is that of the hinge plates, if any."""
    say = setting.say
    upright, shelf, rear = across
    setback = holes.setback
    if setback is None:
        setback = min(SETBACK[setting.unit], (rear - shelf) / 4)
    first = max(upright + setback, shelf + hole_diameter(holes, setting.unit))
    last = rear - setback
    if holes.setback is None and plates is not None and abs(plates - first) < _MERGED:
        wide = hole_diameter(holes, setting.unit)
        if shelf + wide <= plates <= last - wide - BETWEEN:
            first = plates
    if last - first < hole_diameter(holes, setting.unit) + BETWEEN - TOUCH:
        setting.at("setback").refuse(
            f"rows set back by {say(setback)} at front and rear run into each other under shelves "
            f"{say(rear - shelf)} deep",
            "Make the setback smaller or the shelves deeper.",
        )
        return None
    return first, last


def _fits(setting: Setting, holes: ShelfHolesSpec, clear: float) -> bool:
    """Whether a row's own figures agree with each other and with the height of the space."""
    say, before = setting.say, setting.problems.mark()
    wide = hole_diameter(holes, setting.unit)
    if holes.pitch < wide + BETWEEN:
        setting.at("pitch").refuse(
            f"holes of {say(wide)} that are {say(holes.pitch)} apart leave too little wood between "
            "them",
            f"Make the pitch at least {setting.at_least(wide + BETWEEN)}.",
        )
    for key, end in (("from", holes.start), ("to", holes.stop)):
        if end is not None and not wide / 2 <= end <= clear - wide / 2:
            setting.at(key).refuse(
                f"a hole at {say(end)} isn't in its space, which is {say(clear)} high",
                f"Keep it between {say(wide / 2)} and {say(clear - wide / 2)}.",
            )
    if holes.start is not None and holes.stop is not None and holes.stop < holes.start:
        setting.at("to").refuse(
            f"a row can't begin at {say(holes.start)} and end at {say(holes.stop)}",
            "Swap them.",
        )
    return not setting.problems.noted_since(before)


def _ends(holes: ShelfHolesSpec, clear: float, unit: LengthUnit) -> tuple[float, float]:
    """The least and the greatest height of a hole above the floor of a space, if no shelf rests
    on it."""
    margin = ENDS * holes.pitch if holes.near is None else end_margin(holes, unit)
    low = margin if holes.start is None else holes.start
    high = clear - margin if holes.stop is None else holes.stop
    return low, high


def _nearest(
    setting: Setting,
    clear: float,
    wish: ShelvesSpec,
    wished: Sequence[float],
    datum: float,
    thickness: float,
) -> tuple[int, ...]:
    """The hole for each shelf, counted from the datum; empty where they can't all have one."""
    say, holes = setting.say, wish.holes
    pitch, pin = holes.pitch, holes.diameter / 2
    low = end_margin(holes, setting.unit) if holes.start is None else holes.start
    high = clear - thickness - pin
    if holes.stop is not None:
        high = min(high, holes.stop)
    found: list[int] = []
    for number, height in enumerate(wished):
        here = setting.at("at", wish.at.index(height)) if wish.at is not None else setting
        step = floor((height - pin - datum) / pitch + 0.5 + TOUCH)
        # Where the nearest hole lies just outside, the next one further in does as well.
        step += (datum + step * pitch < low - TOUCH) - (datum + step * pitch > high + TOUCH)
        hole = datum + step * pitch
        if abs(hole - height + pin) > pitch or not low - TOUCH <= hole <= high + TOUCH:
            here.refuse(
                f"the shelf at {say(height)} has no hole near it: there can be some from "
                f"{say(low)} to {say(high)} above the floor of its space",
                "Move the shelf, or let the row begin lower or end higher.",
            )
            return ()
        if found and (step - found[-1]) * pitch <= thickness:
            here.refuse(
                f"with holes {say(pitch)} apart, the shelf at {say(height)} comes on the one at "
                f"{say(wished[number - 1])}",
                "Move the shelves apart, or make the pitch smaller.",
            )
            return ()
        found.append(step)
    return tuple(found)
