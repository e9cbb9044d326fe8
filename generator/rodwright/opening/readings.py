"""From what the spec says of a plane of the opening to readings with their errors.

A plane's corners are numbered 0 to 3 from the bottom left, against the clock seen from the
front: bottom left, bottom right, top right, top left.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise
from typing import Literal

from rodwright.problems import KeyPath, Problems
from rodwright.wishes.fields import SpecModel
from rodwright.wishes.opening import (
    Diagonals,
    HeightReadings,
    LevelReadings,
    OpeningSpec,
    PlumbReadings,
    RearPlane,
    WidthReadings,
)

# Errors are bounds that hold nineteen times in twenty (two standard deviations), in mm.
# Common practice, no source: they are assumptions, and stated as such on the survey sheet.
TAPE_ERROR = 1.0
"""Of a tape reading between two corners."""
BOW_ERROR = 2.0
"""More of a reading away from the corners: walls and floors bow.  Where readings show that they
bow by more, it is more."""
LEVEL_ERROR = 1.0
"""Of a plumb or level reading, over the length that it was taken over."""
PLUMB_ASSUMED = 4.0
"""Per metre, how far out of plumb a wall is where nobody measured it."""
FLOOR_ASSUMED = 2.0
"""Per metre, how far out of level a floor is where nobody measured it."""
TOP_ASSUMED = 3.0
"""Per metre, how far out of level a top is where nobody measured it."""
REAR_ASSUMED = 6.0
"""How far a size at the rear differs from the front's where nobody measured it."""

_CORNER = 0.01
"""A reading this near an end of the edges it is taken between, as a share of them, is one at
their corners."""
_UNITS = {10.0: "cm", 25.4: "in", 304.8: "ft", 1000.0: "m"}

Place = tuple[int, int, float]
"""A point on the outline: between two corners, at a share of the way from the first."""


@dataclass(frozen=True, slots=True)
class Reading:
    """One reading, or an assumption that stands in for one; mm.

    ``kind`` of `distance`: between the places ``first`` and ``second``.  `plumb` and `level`:
    how far the edge from ``first`` to ``second`` (whose shares are unused) runs out, over
    ``over``: towards +x going up, or upwards going to +x.  ``error`` is the bound that holds
    nineteen times in twenty; ``bow`` is what walls, floor and top take of it that leave the
    straight line there.  ``where`` is its place in the spec, empty for an assumption.
    """

    where: KeyPath
    name: str
    kind: Literal["distance", "plumb", "level"]
    value: float
    error: float
    first: Place
    second: Place
    over: float = 0.0
    bow: float = 0.0

    @property
    def tape(self) -> float:
        """What is left of the error without the bow."""
        return float(max(self.error**2 - self.bow**2, 0.0) ** 0.5)

    def bowed(self, bow: float) -> Reading:
        """The same reading where the edges may bow by so much (mm)."""
        return replace(self, bow=bow, error=(self.tape**2 + bow**2) ** 0.5)

    @property
    def is_assumption(self) -> bool:
        """True where nobody measured this."""
        return not self.where


@dataclass(frozen=True, slots=True)
class PlaneReadings:
    """The readings of one plane, the assumptions beside them, and its tightest sizes.

    ``tightest`` is the least width and the least height on the tape, None where there is none.
    """

    name: str
    readings: tuple[Reading, ...]
    assumptions: tuple[Reading, ...]
    tightest: tuple[float | None, float | None]


_LEFT, _RIGHT, _FLOOR, _TOP = (0, 3), (1, 2), (0, 1), (3, 2)
EDGES = {"left wall": _LEFT, "right wall": _RIGHT, "floor": _FLOOR, "top": _TOP}
"""The two corners of each edge, from below or from the left."""
DIAGONALS = ("rising diagonal", "falling diagonal")
"""What the readings of the two diagonals of a plane are called."""


def front_readings(spec: OpeningSpec, problems: Problems) -> PlaneReadings:
    """The readings of the front plane; what can't be a reading of it is noted in ``problems``."""
    return _plane_readings("front", spec, ("opening",), problems)


def rear_readings(spec: RearPlane, problems: Problems) -> PlaneReadings:
    """The readings of the rear plane, without what is assumed of it; problems as above."""
    return _plane_readings("rear", spec, ("opening", "back"), problems)


def _plane_readings(
    plane: str, spec: OpeningSpec | RearPlane, where: KeyPath, problems: Problems
) -> PlaneReadings:
    before = problems.mark()
    height_about = _middle(spec.height)
    width_about = _middle(spec.width)
    widths = _across(spec.width, (*where, "width"), _LEFT, _RIGHT, height_about, problems)
    heights = _across(spec.height, (*where, "height"), _FLOOR, _TOP, width_about, problems)
    others = [
        *_diagonals(spec.diagonals, (*where, "diagonals")),
        *_plumb(spec.plumb, (*where, "plumb")),
        *_level(spec.level, (*where, "level")),
    ]
    for reading in others:
        _check_slope(reading, widths, heights, problems)
    if not problems.noted_since(before) and widths and heights:
        _check_diagonals(others, widths, heights, problems)
    return PlaneReadings(
        plane,
        (*widths, *heights, *others),
        _assumptions() if plane == "front" else (),
        (
            min((each.value for each in widths), default=None),
            min((each.value for each in heights), default=None),
        ),
    )


def _assumptions() -> tuple[Reading, ...]:
    return (
        _slope((), "floor level", _FLOOR, 0.0, 1000.0, FLOOR_ASSUMED),
        _slope((), "top level", _TOP, 0.0, 1000.0, TOP_ASSUMED),
        _slope((), "left wall plumb", _LEFT, 0.0, 1000.0, PLUMB_ASSUMED),
        _slope((), "right wall plumb", _RIGHT, 0.0, 1000.0, PLUMB_ASSUMED),
    )


def assumed_alike(corners: tuple[tuple[float, float], ...]) -> tuple[Reading, ...]:
    """What is assumed of a rear plane: that it is much like a front with these corners."""
    readings = []
    for name, (a, b) in EDGES.items():
        across, up = (corners[b][axis] - corners[a][axis] for axis in (0, 1))
        upright = (a, b) in (_LEFT, _RIGHT)
        out = 1000.0 * (across / up if upright else up / across)
        error = {"floor": FLOOR_ASSUMED, "top": TOP_ASSUMED}.get(name, PLUMB_ASSUMED)
        readings.append(_slope((), f"{name} runs as in front", (a, b), out, 1000.0, error))
        length = (across**2 + up**2) ** 0.5
        places = (a, b, 0.0), (a, b, 1.0)
        readings.append(
            Reading((), f"{name} as long as in front", "distance", length, REAR_ASSUMED, *places)
        )
    return tuple(readings)


def _middle(readings: SpecModel | float | None) -> float:
    """A rough size, for placing other readings by."""
    if readings is None or isinstance(readings, float):
        return readings or 0.0
    found = [value for _, value, _ in _listed(readings, (), 0.0)]
    return sum(found) / len(found) if found else 0.0


_NAMED = {"bottom": 0.0, "left": 0.0, "middle": 0.5, "top": 1.0, "right": 1.0}


def _listed(
    readings: SpecModel, where: KeyPath, length: float
) -> list[tuple[KeyPath, float, float]]:
    """Place in the spec, value and share of the way for each reading of a group."""
    found = [
        ((*where, name), value, _NAMED[name])
        for name, value in dict(readings).items()
        if name in _NAMED and value is not None
    ]
    if isinstance(readings, WidthReadings):
        others = [(each.at, each.width) for each in readings.others]
    else:
        assert isinstance(readings, HeightReadings)
        others = [(each.at, each.height) for each in readings.others]
    for number, (at, value) in enumerate(others):
        found.append(((*where, "others", number), value, at / length if length else 0.5))
    return found


def _across(
    readings: WidthReadings | HeightReadings | float | None,
    where: KeyPath,
    from_edge: tuple[int, int],
    to_edge: tuple[int, int],
    length: float,
    problems: Problems,
) -> list[Reading]:
    """Distances between two opposite edges; ``length`` is about how long those are."""
    if readings is None:
        return []
    what = str(where[-1])
    if isinstance(readings, float):
        listed: list[tuple[KeyPath, float, float]] = [(where, readings, 0.5)]
    else:
        listed = _listed(readings, where, length)
        if not listed:
            places = ", ".join(f"`{name}`" for name in dict(readings))
            problems.add(where, "no reading is given here", f"Give at least one of {places}.")
    for path, _, share in listed:
        if not -0.001 <= share <= 1.001:
            say = problems.length
            problems.add(
                (*path, "at"),
                f"`at` of {say(share * length)} lies outside an opening of about {say(length)}",
                "Measure it from the floor, or from the left wall; is it in another unit?",
            )
    values = [value for _, value, _ in listed]
    if values and max(values) > 1.5 * min(values):
        _add_odd_one(where, listed, problems)
        return []
    return [
        Reading(
            path,
            f"{what} {_place(path, where)}".strip(),
            "distance",
            value,
            TAPE_ERROR,
            (*from_edge, share),
            (*to_edge, share),
        ).bowed(BOW_ERROR if _CORNER < share < 1 - _CORNER else 0.0)
        for path, value, share in listed
    ]


def _place(path: KeyPath, where: KeyPath) -> str:
    """What tells a reading from the others of its group."""
    last = path[len(where) :]
    return f"no. {int(last[1]) + 1} of others" if len(last) == 2 else "".join(map(str, last))


def _add_odd_one(
    where: KeyPath, listed: list[tuple[KeyPath, float, float]], problems: Problems
) -> None:
    """Say which of several readings is far from the rest, and what unit it may be in."""
    say = problems.length
    ordered = sorted(listed, key=lambda each: each[1])
    gaps = [high[1] / low[1] for low, high in pairwise(ordered)]
    cut = gaps.index(max(gaps)) + 1
    few, most = sorted((ordered[:cut], ordered[cut:]), key=len)
    message = f"readings of {say(ordered[0][1])} and {say(ordered[-1][1])} can't be of one opening"
    path = few[0][0] if len(few) < len(most) else where
    problems.add(path, message, _which_unit(ordered[0][1], ordered[-1][1]))


def _which_unit(low: float, high: float) -> str:
    """What to do about a reading that is a multiple of what it should be."""
    for factor, unit in _UNITS.items():
        if abs(high / low / factor - 1) < 0.1:
            return (
                f"Measure again; if one was read in {unit}, write the unit after it: `... {unit}`."
            )
    return "Measure again; is one of them in another unit?"


def _diagonals(spec: Diagonals | None, where: KeyPath) -> list[Reading]:
    places = {"rising": ((0, 0, 0.0), (2, 2, 0.0)), "falling": ((3, 3, 0.0), (1, 1, 0.0))}
    return [
        Reading((*where, name), f"{name} diagonal", "distance", value, TAPE_ERROR, *places[name])
        for name, value in (dict(spec).items() if spec else ())
        if value is not None
    ]


def _plumb(spec: PlumbReadings | None, where: KeyPath) -> list[Reading]:
    found = []
    for name, edge, inwards in (("left", _LEFT, 1.0), ("right", _RIGHT, -1.0)):
        reading = getattr(spec, name, None)
        if reading is not None:
            out = reading.out * (inwards if reading.leans == "in" else -inwards)
            found.append(
                _slope(
                    (*where, name),
                    f"plumb of the {name} wall",
                    edge,
                    out,
                    reading.over,
                    LEVEL_ERROR,
                )
            )
    return found


def _level(spec: LevelReadings | None, where: KeyPath) -> list[Reading]:
    found = []
    for name, edge in (("floor", _FLOOR), ("top", _TOP)):
        reading = getattr(spec, name, None)
        if reading is not None:
            out = reading.out * (1.0 if reading.rises == "right" else -1.0)
            found.append(
                _slope((*where, name), f"level of the {name}", edge, out, reading.over, LEVEL_ERROR)
            )
    return found


def _slope(
    where: KeyPath, name: str, edge: tuple[int, int], out: float, over: float, error: float
) -> Reading:
    kind: Literal["plumb", "level"] = "plumb" if edge in (_LEFT, _RIGHT) else "level"
    return Reading(where, name, kind, out, error, (*edge, 0.0), (*edge, 1.0), over)


def _check_slope(
    reading: Reading, widths: list[Reading], heights: list[Reading], problems: Problems
) -> None:
    """Note a plumb or level reading that is too steep, or taken over more than there is."""
    if reading.kind == "distance":
        return
    say = problems.length
    if abs(reading.value) > 0.1 * reading.over:
        problems.add(
            reading.where,
            f"{say(abs(reading.value))} over {say(reading.over)} is too steep for a wall, a floor "
            f"or a top",
            "Are `out` and `over` swapped, or in different units?",
        )
    along = heights if reading.kind == "plumb" else widths
    longest = max((each.value for each in along), default=reading.over)
    if reading.over > 1.05 * longest:
        problems.add(
            reading.where,
            f"`over` of {say(reading.over)} is more than the {say(longest)} there is",
            "Write the length of the level, or the height that the plumb line hung over.",
        )


def _check_diagonals(
    others: list[Reading], widths: list[Reading], heights: list[Reading], problems: Problems
) -> None:
    """Note diagonals that no quadrilateral near these sizes has: slips of whole units."""
    say = problems.length
    width, height = (max(each.value for each in group) for group in (widths, heights))
    about = (width**2 + height**2) ** 0.5
    for reading in others:
        if "diagonal" in reading.name and not 0.9 * about < reading.value < 1.1 * about:
            low, high = sorted((reading.value, about))
            problems.add(
                reading.where,
                f"a diagonal of {say(reading.value)} doesn't belong to this width and height "
                f"(about {say(round(about))})",
                _which_unit(low, high) if high / low > 2 else "Measure it again, corner to corner.",
            )
