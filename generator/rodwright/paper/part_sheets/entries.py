"""The workings of a part as entries of its sheet."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import assert_never

from rodwright.geometry import TOUCH, Box
from rodwright.handover.words import degrees
from rodwright.paper.part_sheets.datum import AXES, Datum
from rodwright.paper.part_sheets.figures import Entry, Figure
from rodwright.paper.part_sheets.gathering import grids, told_places
from rodwright.paper.part_sheets.patches import Patch
from rodwright.paper.part_sheets.slants import leaves_box, slant_figures
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Surface,
    Working,
)

Figures = dict[str, Figure]
THROUGH = "through"
"""What is said of the depth of what goes right through."""


@dataclass(frozen=True, slots=True)
class Group:
    """An entry with the workings (part frame) that it tells, or the place that is only marked."""

    entry: Entry
    workings: tuple[Working | Patch, ...]


def groups(
    datum: Datum, workings: Sequence[Working], purposes: Mapping[Working, str]
) -> Iterator[Group]:
    """Workings of a piece gathered into entries, none numbered yet, in the piece's order."""
    alike: dict[tuple[Hashable, str], list[Working]] = {}
    for each in dict.fromkeys(workings):
        alike.setdefault((_kind(each), purposes.get(each, "")), []).append(each)
    for (_, purpose), members in alike.items():
        yield from _entries(datum, members, purpose)


def _kind(working: Working) -> Hashable:
    """A working without its place, or without that along its surface: those that are equal so are
    told together."""
    match working:
        case Hole():
            return replace(working, position=(0.0, 0.0))
        case PocketHole():
            return replace(working, position=0.0)
        case Mortise():
            return replace(working, position=(0.0, working.position[1]))
    return working


def _entries(datum: Datum, members: Sequence[Working], purpose: str) -> Iterator[Group]:
    first = members[0]
    into: tuple[Surface, ...]
    match first:
        case Hole():
            yield from _holes(datum, [each for each in members if isinstance(each, Hole)], purpose)
            return
        case PocketHole():
            pockets = [each for each in members if isinstance(each, PocketHole)]
            yield _pocket_holes(datum, pockets, purpose)
            return
        case Mortise():
            mortises = [each for each in members if isinstance(each, Mortise)]
            yield _mortises(datum, mortises, purpose)
            return
        case Rebate():
            figures, into = _rebate(datum, first), (first.surface, first.edge)
        case Notch():
            figures, into = _notch(datum, first), (Surface.FACE,)
        case FingerPull():
            figures, into = _finger_pull(datum, first), (first.surface, first.edge)
        case Mitre() | Bevel():
            if not leaves_box(datum.size, first):
                return
            figures, into = slant_figures(datum, first)
        case Easing():
            figures, into = _easing(datum, first), (first.surface, first.edge)
        case Groove() | Housing():
            figures, into = _channel(datum, first), (first.surface,)
        case _:
            assert_never(first)
    yield Group(_entry(datum, first.called, 1, into, figures, purpose), (first,))


def _entry(
    datum: Datum, kind: str, count: int, into: Sequence[Surface], figures: Figures, purpose: str
) -> Entry:
    return Entry(0, kind, count, tuple(map(datum.words.name, into)), figures, purpose)


def _depth(datum: Datum, surface: Surface, depth: float | None) -> str:
    through = depth is None or depth >= datum.size[surface.axis] - TOUCH
    return THROUGH if through or depth is None else datum.words.say(depth)


def _holes(datum: Datum, holes: Sequence[Hole], purpose: str) -> Iterator[Group]:
    """Equal holes by lines of the same places; what is printed is each place from the datum."""
    kind = holes[0]
    first, second = kind.surface.across
    places = {
        (round(datum.from_datum(first, a), 6), round(datum.from_datum(second, b), 6)): hole
        for hole in holes
        for a, b in [hole.position]
    }
    for along, across in grids(list(places)):
        figures: Figures = {
            "diameter": datum.words.ware(kind.diameter),
            "depth": _depth(datum, kind.surface, kind.depth),
            AXES[first]: told_places(datum.words, along),
            AXES[second]: told_places(datum.words, across),
        }
        count = len(along) * len(across)
        members = tuple(places[a, b] for b in across for a in along)
        yield Group(_entry(datum, kind.called, count, [kind.surface], figures, purpose), members)


def _pocket_holes(datum: Datum, pockets: Sequence[PocketHole], purpose: str) -> Group:
    kind, words = pockets[0], datum.words
    at = sorted(datum.from_datum(kind.run, each.position) for each in pockets)
    figures: Figures = {
        "diameter": words.ware(kind.diameter),
        "angle": degrees(kind.angle),
        "stops": words.say(kind.stop),
        "screw": words.ware(kind.screw),
        "leaves": words.say(kind.exit),
        AXES[kind.run]: told_places(words, at),
    }
    into = [kind.surface, kind.end]
    return Group(_entry(datum, kind.called, len(pockets), into, figures, purpose), tuple(pockets))


def _mortises(datum: Datum, mortises: Sequence[Mortise], purpose: str) -> Group:
    """Equal ones, in a line along the first axis of their surface."""
    kind, words = mortises[0], datum.words
    along, across = kind.surface.across
    members = sorted(mortises, key=lambda each: datum.from_datum(along, *_reach(each)))
    figures: Figures = {"depth": _depth(datum, kind.surface, kind.depth)}
    if kind.round_ends:
        middles = [datum.from_datum(along, at + extent / 2) for at, extent in map(_reach, members)]
        aside = kind.position[1] + kind.extent[1] / 2
        figures |= {
            "long": words.say(max(kind.extent)),
            "wide": words.say(min(kind.extent)),
            "runs along": AXES[kind.long_axis],
            AXES[along]: told_places(words, middles),
            AXES[across]: (words.say(datum.from_datum(across, aside)),),
        }
    else:
        low = kind.position[1]
        figures |= {
            "length": words.say(kind.extent[0]),
            "width": words.say(kind.extent[1]),
            AXES[along]: tuple(
                datum.stretch(along, at, at + extent) for at, extent in map(_reach, members)
            ),
            AXES[across]: datum.stretch(across, low, low + kind.extent[1]),
        }
    entry = _entry(datum, kind.called, len(members), [kind.surface], figures, purpose)
    return Group(entry, tuple(members))


def _reach(mortise: Mortise) -> tuple[float, float]:
    """Where it begins along the first axis of its surface, and how long it is there."""
    return mortise.position[0], mortise.extent[0]


def _box(datum: Datum, box: Box, surface: Surface) -> Figures:
    """What fills a box below a surface: its stretches over the surface, and its depth."""
    figures: Figures = {"depth": _depth(datum, surface, box.size[surface.axis])}
    for axis in surface.across:
        figures[AXES[axis]] = datum.stretch(axis, box.low[axis], box.high[axis])
    return figures


def _channel(datum: Datum, channel: Groove | Housing) -> Figures:
    width = datum.words.say(channel.width)
    return {"width": width} | _box(datum, channel.bounds(datum.size), channel.surface)


def _rebate(datum: Datum, rebate: Rebate) -> Figures:
    width = datum.words.say(rebate.width)
    return {"width": width} | _box(datum, rebate.bounds(datum.size), rebate.surface)


def _notch(datum: Datum, notch: Notch) -> Figures:
    words = datum.words
    sizes: Figures = {"length": words.say(notch.length), "width": words.say(notch.width)}
    return sizes | _box(datum, notch.bounds(datum.size), Surface.FACE)


def _easing(datum: Datum, easing: Easing) -> Figures:
    box, run = easing.bounds(datum.size), easing.run
    return {
        "radius": datum.words.say(easing.radius),
        AXES[run]: datum.stretch(run, box.low[run], box.high[run]),
    }


def _finger_pull(datum: Datum, pull: FingerPull) -> Figures:
    """The cutter and where its middle runs; the ends of what it leaves at the surface."""
    words, run, across = datum.words, pull.run, pull.edge.axis
    stop = datum.size[run] if pull.stop is None else pull.stop
    middle = datum.size[across] - pull.position if pull.edge.at_high else pull.position
    return {
        "cutter": words.ware(2 * pull.radius),
        "depth": words.say(pull.depth),
        AXES[across]: (words.say(datum.from_datum(across, middle)),),
        AXES[run]: datum.stretch(run, pull.start, stop),
    }
