"""Places told in a list as points of the part, to be looked for in its solid.

The texts are read as a shop would read them, by their words alone: which face is up, what x
and y are measured from, and the figures.
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

import pytest
from cadquery import Solid
from OCP.BRepClass3d import BRepClass3d_SolidClassifier
from OCP.gp import gp_Pnt
from OCP.TopAbs import TopAbs_State

from rodwright.handover.lists import PartsRow

OPPOSITE = {
    "left end": "right end", "front end": "rear end", "bottom end": "top end",
    "left edge": "right edge", "front edge": "rear edge", "lower edge": "upper edge",
    "left face": "right face", "front face": "rear face", "underside": "upper face",
    "near end": "far end", "face edge": "back edge", "reverse": "face",
}  # fmt: skip
OPPOSITE |= {high: low for low, high in OPPOSITE.items()}
JUST = 0.3
"""mm.  So far beside a wall of a working is surely in the wood, or surely out of it."""

NUMBER = r"\d+(?:\.\d+)?"
NUMBERS = rf"{NUMBER}(?:, {NUMBER})*"
NAME = "|".join(sorted(OPPOSITE, key=len, reverse=True))
WHAT = (
    rf"(?P<dia>{NUMBER}) dia\., (?:right through|(?P<deep>{NUMBER}) deep), "
    rf"(?:on|in) the (?P<on>{NAME}), "
)
HOLES = re.compile(
    rf"(?:\d+ holes|hole) {WHAT}(?P<across>{NUMBER}) from the (?P<side>{NAME}), "
    rf"at (?P<along>{NUMBERS}) from the (?P<end>{NAME})$"
)
ROWS = re.compile(
    rf"(?:\d+ )?rows? of (?P<count>\d+) holes {WHAT}(?P<across>{NUMBERS}) from the "
    rf"(?P<side>{NAME}), (?P<pitch>{NUMBER}) apart, first at (?P<first>{NUMBER}) from the "
    rf"(?P<end>{NAME}), last at (?P<last>{NUMBER})$"
)
CHANNEL = re.compile(
    rf"(?:housing|groove) (?P<width>{NUMBER}) x (?P<deep>{NUMBER}) deep at (?P<at>{NUMBER}) from "
    rf"the (?P<side>{NAME}), (?:on|in) the (?P<on>{NAME})(?P<rest>.*)$"
)
REBATE = re.compile(
    rf"rebate (?P<width>{NUMBER}) x (?P<deep>{NUMBER}) deep along the (?P<edge>{NAME}), on the "
    rf"(?P<on>{NAME})(?P<rest>.*?)(?:, leaving a tongue (?P<tongue>{NUMBER}) thick)?$"
)
POCKET_NAMES = r"(?:\d+ )?(?:mortise|slot|leaf recess)(?:e?s)?"
POCKET_PLACE = (
    rf"at (?P<along>{NUMBERS}) from the (?P<end>{NAME}) and "
    rf"(?P<across>{NUMBER}) from the (?P<side>{NAME})$"
)
POCKET_DEEP = rf"(?:right through|(?P<deep>{NUMBER}) deep), (?:on|in) the (?P<on>{NAME}), "
MORTISES = re.compile(
    rf"{POCKET_NAMES} (?P<first>{NUMBER}) x (?P<second>{NUMBER}), {POCKET_DEEP}"
    rf"nearest corners? {POCKET_PLACE}"
)
SLOTS = re.compile(
    rf"{POCKET_NAMES} (?P<long>{NUMBER}) long (?P<runs>along the length|across the width|through "
    rf"the thickness), (?P<wide>{NUMBER}) wide, round ends, {POCKET_DEEP}centres? {POCKET_PLACE}"
)
RUNS = {"along the length": 0, "across the width": 1, "through the thickness": 2}
NOTCH = re.compile(
    rf"notch (?P<long>{NUMBER}) along x (?P<wide>{NUMBER}) across, right through, (?P<rest>.*)$"
)
STOPPED_SHORT = re.compile(rf", stopped (?P<by>{NUMBER}) short of the (?P<at>{NAME})$")
STOPPED_BOTH = re.compile(
    rf", stopped at both ends, from (?P<start>{NUMBER}) to (?P<stop>{NUMBER}) "
    rf"from the (?P<at>{NAME})$"
)
POCKETS = re.compile(
    rf"(?:\d+ )?pocket holes? (?P<dia>{NUMBER}) dia\. at (?P<angle>{NUMBER})° on the "
    rf"(?P<on>{NAME}), at (?P<along>{NUMBERS}) from the (?P<side>{NAME}), ending "
    rf"(?P<stop>{NUMBER}) before the (?P<end>{NAME}), then (?P<screw>{NUMBER}) dia\. out of it "
    rf"(?P<exit>{NUMBER}) below the (?P<under>{NAME})$"
)
SLOPING = re.compile(
    r"mitre|bevel|taper|corner of|eased|.* over the (?:long|short) point|.* along the|once "
)


@dataclass(frozen=True)
class Frame:
    """A part's frame as the list tells it, and its size."""

    low: tuple[str, str, str]
    size: tuple[float, float, float]

    @classmethod
    def of(cls, row: PartsRow, size: tuple[float, float, float]) -> Frame:
        told = re.fullmatch(rf"x from the ({NAME}), y from the ({NAME})", row.reference)
        assert told, row.reference
        return cls((told[1], told[2], OPPOSITE[row.up]), size)

    def axis(self, name: str) -> int:
        return next(axis for axis, low in enumerate(self.low) if name in (low, OPPOSITE[low]))

    def measured_along(self, name: str) -> int:
        """The axis of a figure: in a list it is measured from where x, y or z is 0."""
        return self.low.index(name)

    def into(self, name: str, depth: float) -> float:
        """The coordinate at some depth under a surface."""
        axis = self.axis(name)
        return depth if name == self.low[axis] else self.size[axis] - depth


def floats(text: str) -> list[float]:
    return [float(each) for each in text.split(", ")]


Point = tuple[float, float, float]
Probe = tuple[list[Point], list[Point]]
"""Points that are all cut away, and points of which one at least is wood."""


def _point(places: dict[int, float]) -> Point:
    return (places[0], places[1], places[2])


def _walls(places: dict[int, float], halves: dict[int, float]) -> Probe:
    """Just within the walls of something round a middle, and just beyond them."""

    def at(beyond: float) -> list[Point]:
        return [
            _point({**places, axis: places[axis] + sign * (half + beyond)})
            for axis, half in halves.items()
            for sign in (-1, 1)
        ]

    return [_point(places), *at(-JUST)], at(JUST)


def _hole(frame: Frame, on: str, deep: str | None, dia: float, places: dict[int, float]) -> Probe:
    depth = float(deep) / 2 if deep else frame.size[frame.axis(on)] / 2
    at = {**places, frame.axis(on): frame.into(on, depth)}
    return _walls(at, dict.fromkeys(places, dia / 2))


def _pocket(
    frame: Frame, found: re.Match[str], places: dict[int, float], halves: dict[int, float]
) -> Probe:
    into = frame.axis(found["on"])
    depth = float(found["deep"]) / 2 if found["deep"] else frame.size[into] / 2
    return _walls({**places, into: frame.into(found["on"], depth)}, halves)


def probes(frame: Frame, text: str) -> Iterator[Probe]:
    """Points that a text says are cut away, each with some round it that should not all be."""
    for pattern, told in TOLD.items():
        if found := pattern.match(text):
            yield from told(frame, found)
            return
    assert SLOPING.match(text), text


def _on(frame: Frame, found: re.Match[str], along: float, across: float) -> dict[int, float]:
    return {
        frame.measured_along(found["end"]): along,
        frame.measured_along(found["side"]): across,
    }


def _holes(frame: Frame, found: re.Match[str]) -> Iterator[Probe]:
    for along in floats(found["along"]):
        places = _on(frame, found, along, float(found["across"]))
        yield _hole(frame, found["on"], found["deep"], float(found["dia"]), places)


def _rows(frame: Frame, found: re.Match[str]) -> Iterator[Probe]:
    count, pitch = int(found["count"]), float(found["pitch"])
    first, last = float(found["first"]), float(found["last"])
    assert (last - first) / (count - 1) == pytest.approx(pitch, abs=0.06)
    for across in floats(found["across"]):
        for number in range(count):
            places = _on(frame, found, first + number * pitch, across)
            yield _hole(frame, found["on"], found["deep"], float(found["dia"]), places)


def _channel(frame: Frame, found: re.Match[str]) -> Iterator[Probe]:
    low, high = float(found["at"]), float(found["at"]) + float(found["width"])
    yield from _long(frame, found, frame.measured_along(found["side"]), low, high)


def _rebate(frame: Frame, found: re.Match[str]) -> Iterator[Probe]:
    across, width = frame.axis(found["edge"]), float(found["width"])
    low, high = sorted((frame.into(found["edge"], 0.0), frame.into(found["edge"], width)))
    if found["tongue"]:
        deep = float(found["deep"]) + float(found["tongue"])
        into = frame.axis(found["on"])
        run = 3 - across - into
        at = {across: (low + high) / 2, run: frame.size[run] / 2}
        yield (
            [_point({**at, into: frame.into(found["on"], deep + JUST)})],
            [_point({**at, into: frame.into(found["on"], deep - JUST)})],
        )
    yield from _long(frame, found, across, low, high)


def _mortises(frame: Frame, found: re.Match[str]) -> Iterator[Probe]:
    halves = float(found["first"]) / 2, float(found["second"]) / 2
    for along in floats(found["along"]):
        places = _on(frame, found, along + halves[0], float(found["across"]) + halves[1])
        yield _pocket(frame, found, places, dict(zip(places, halves, strict=True)))


def _slots(frame: Frame, found: re.Match[str]) -> Iterator[Probe]:
    long = RUNS[found["runs"]]
    for along in floats(found["along"]):
        places = _on(frame, found, along, float(found["across"]))
        halves = {axis: float(found["long" if axis == long else "wide"]) / 2 for axis in places}
        yield _pocket(frame, found, places, halves)


def _pocket_holes(frame: Frame, found: re.Match[str]) -> Iterator[Probe]:
    assert found["under"] == found["on"]
    run, into = frame.axis(found["end"]), frame.axis(found["on"])
    slope = math.radians(float(found["angle"]))
    for along in floats(found["along"]):
        # Where the screw leaves, and up the axis halfway into the pocket.
        for up, dia in ((JUST, found["screw"]), (float(found["stop"]) + 5.0, found["dia"])):
            depth = float(found["exit"]) - up * math.sin(slope)
            places = {
                frame.measured_along(found["side"]): along,
                run: frame.into(found["end"], up * math.cos(slope)),
                into: frame.into(found["on"], depth),
            }
            yield _walls(places, {frame.measured_along(found["side"]): float(dia) / 2})


def _long(
    frame: Frame, found: re.Match[str], across: int, low: float, high: float
) -> Iterator[Probe]:
    """A channel or a rebate: both its walls, at three places of its run.

    A slope may have taken what was beside it at some of them, but not at all.
    """
    into = frame.axis(found["on"])
    run = 3 - across - into
    start, stop = 0.0, frame.size[run]
    if short := STOPPED_SHORT.match(found["rest"]):
        end = frame.into(short["at"], float(short["by"]))
        start, stop = (end, stop) if short["at"] == frame.low[run] else (start, end)
    elif both := STOPPED_BOTH.match(found["rest"]):
        assert both["at"] == frame.low[run]
        start, stop = float(both["start"]), float(both["stop"])
    else:
        assert found["rest"] == ""
    depth = frame.into(found["on"], float(found["deep"]) / 2)
    floor = frame.into(found["on"], float(found["deep"]) + JUST)
    cut_away: list[Point] = []
    wood: list[Point] = []
    for share in (0.25, 0.5, 0.75):
        along = start + share * (stop - start)
        places = {run: along, into: depth, across: (low + high) / 2}
        empty, beside = _walls(places, {across: (high - low) / 2})
        cut_away += empty
        wood += [*beside, _point({**places, into: floor})]
    yield cut_away, wood


def _notch(frame: Frame, found: re.Match[str]) -> Iterator[Probe]:
    rest = found["rest"]
    named = re.findall(NAME, rest)
    places = {2: frame.size[2] / 2}
    extents = {0: float(found["long"]), 1: float(found["wide"])}
    figures = dict(re.findall(rf"({NUMBER}) from the ({NAME})", rest))
    for figure, name in figures.items():
        axis = frame.measured_along(name)
        places[axis] = float(figure) + extents[axis] / 2
    for name in named:
        if name not in figures.values():
            places[frame.axis(name)] = frame.into(name, extents[frame.axis(name)] / 2)
    yield _walls(places, {axis: extent / 2 for axis, extent in extents.items()})


TOLD: dict[re.Pattern[str], Callable[[Frame, re.Match[str]], Iterator[Probe]]] = {
    HOLES: _holes,
    ROWS: _rows,
    CHANNEL: _channel,
    REBATE: _rebate,
    MORTISES: _mortises,
    SLOTS: _slots,
    NOTCH: _notch,
    POCKETS: _pocket_holes,
}
"""The words of each working, and the points that they tell."""

EDGED = """
size: {width: 900, height: 902, depth: 400}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  thin: {kind: sheet, material: birch plywood, thickness: 6, size: [2440, 1220]}
carcass: {stock: ply, corners: dowelled}
back: {stock: thin, fixing: grooved}
interior:
  columns:
    - {width: 1 share, shelves: {count: 2, fixed: false}, doors: {hung: overlay, count: 1}}
    - {width: 1 share, shelves: {count: 2, layers: 2}}
    - {width: 1 share, shelves: {count: 2, ends: pocket-screwed}}
edging: {material: abs, thickness: 2, edges: [doors, sides, dividers, top, bottom, shelves]}
"""


def misplaced(row: PartsRow, solid: Solid) -> Iterator[str]:
    """Places of a row's list that aren't so in a solid, and what is there instead."""
    box = solid.BoundingBox()
    inside = wood_of(solid)
    frame = Frame.of(row, (box.xmax, box.ymax, box.zmax))
    for text in row.workings:
        for empty, beside in probes(frame, text):
            yield from (f"{row.label}: {text}: wood at {each}" for each in empty if inside(each))
            if not any(map(inside, beside)):
                yield f"{row.label}: {text}: no wood at any of {beside}"


def wood_of(solid: Solid) -> Callable[[Point], bool]:
    """Whether a point is wood."""
    classifier = BRepClass3d_SolidClassifier(solid.wrapped)

    def inside(point: Point) -> bool:
        classifier.Perform(gp_Pnt(*point), 1e-6)
        return bool(classifier.State() == TopAbs_State.TopAbs_IN)

    return inside
