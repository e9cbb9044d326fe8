"""Holes, mortises, pocket holes and finger pulls in words, equal ones in a line gathered."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import assert_never

from rodwright.handover.words import Words, degrees
from rodwright.lengths import sold_in_mm
from rodwright.unit import Bore, FingerPull, Hole, Mortise, PocketHole

LEAST_ROW = 5
"""So many equal holes, as far apart from one to the next, are read more easily as a row."""
_SAME = 0.01
"""mm: steps that differ by no more are equal."""

_STEPPED = 0.1
"""mm by which the last hole may be out where a row is told by its pitch: as little as any length
in a list may."""

_PLATE = 32.0
"""mm between the two holes of a hinge's plate (common practice, no source)."""
_DIGITS = 6
"""Decimals of a millimetre to which places are equal."""
_RUNS = ("along the length", "across the width", "through the thickness")
"""Which way a piece's x, y and z run."""

Line = tuple[float, list[float]]
"""Where a line of places lies across, and the places along it."""


def bores(words: Words, workings: Sequence[Bore]) -> Iterator[str]:
    """Texts for the holes, mortises, pocket holes and finger pulls of a piece."""
    holes: list[Hole] = []
    mortises: list[Mortise] = []
    pockets: list[PocketHole] = []
    pulls: list[FingerPull] = []
    for each in workings:
        match each:
            case Hole():
                holes.append(each)
            case Mortise():
                mortises.append(each)
            case PocketHole():
                pockets.append(each)
            case FingerPull():
                pulls.append(each)
            case _:
                assert_never(each)
    yield from _holes(words, holes)
    yield from _mortises(words, mortises)
    yield from _pocket_holes(words, pockets)
    for pull in pulls:
        yield _finger_pull(words, pull)


def _holes(words: Words, holes: Sequence[Hole]) -> Iterator[str]:
    alike: dict[Hole, list[tuple[float, float]]] = {}
    for hole in holes:
        alike.setdefault(replace(hole, position=(0.0, 0.0)), []).append(hole.position)
    for kind, positions in alike.items():
        deep = "right through" if kind.depth is None else f"{words.say(kind.depth)} deep"
        what = f"{words.ware(kind.diameter)} dia., {deep}, {words.on(kind.surface)}"
        axes = kind.surface.across
        lines, runs = _lines(positions)
        along, across = (words.low(axes[each]) for each in (runs, 1 - runs))
        rows: dict[tuple[float, ...], list[float]] = {}
        for at, places in lines:
            found, others = _rows(places)
            for row in found:
                if _steps_true(words, row):
                    rows.setdefault(tuple(row), []).append(at)
                else:
                    others = sorted([*others, *row])
            if others:
                yield (
                    f"{_count(len(others), 'hole')} {what}, {words.say(at)} from the {across}, "
                    f"at {words.places(others)} from the {along}{_in_pairs(words, kind, others)}"
                )
        for places_of, ats in rows.items():
            row = list(places_of)
            count = f"{'' if len(ats) == 1 else f'{len(ats)} '}row{'s' * (len(ats) > 1)}"
            yield (
                f"{count} of {len(row)} holes {what}, {words.places(ats)} from the {across}, "
                f"{words.ware(_pitch(row))} apart, first at {words.say(row[0])} from the {along}, "
                f"last at {words.say(row[-1])}"
            )


def _in_pairs(words: Words, kind: Hole, places: Sequence[float]) -> str:
    """That holes for metric ware are in pairs, where a maker in inches wouldn't see it."""
    if words.unit == "mm" or len(places) % 2 or not sold_in_mm(kind.diameter):
        return ""
    pairs = list(zip(places[::2], places[1::2], strict=True))
    if any(abs(high - low - _PLATE) > _SAME for low, high in pairs):
        return ""
    return f", in pairs {words.ware(_PLATE)} apart"


def _pitch(row: Sequence[float]) -> float:
    return (row[-1] - row[0]) / (len(row) - 1)


def _steps_true(words: Words, row: Sequence[float]) -> bool:
    """Whether the pitch as it is told, stepped off from the first hole, comes to the last."""
    pitch = _pitch(row)
    return abs(words.told(pitch) - pitch) * (len(row) - 1) <= _STEPPED


def in_rows(positions: Sequence[tuple[float, float]]) -> frozenset[tuple[float, float]]:
    """Which of the places of equal holes are told as rows."""
    lines, runs = _lines(positions)
    found = [(at, place) for at, places in lines for row in _rows(places)[0] for place in row]
    return frozenset((place, at) if runs == 0 else (at, place) for at, place in found)


def _count(count: int, name: str) -> str:
    plural = f"{name}es" if name.endswith("s") else f"{name}s"
    return f"{count} {plural}" if count > 1 else name


def _lines(positions: Sequence[tuple[float, float]]) -> tuple[list[Line], int]:
    """Positions in lines along one of the two axes, whichever makes fewer; and which it is."""
    ways = []
    for along in (0, 1):
        lines: dict[float, list[float]] = {}
        for position in positions:
            lines.setdefault(position[1 - along], []).append(position[along])
        ways.append(sorted((at, sorted(places)) for at, places in lines.items()))
    along = 0 if len(ways[0]) <= len(ways[1]) else 1
    return ways[along], along


def _rows(places: list[float]) -> tuple[list[list[float]], list[float]]:
    """Rows of places in equal steps, and the places that are in none."""
    rows, others, at = [], [], 0
    while at < len(places):
        end = at + 1
        while end < len(places) and math.isclose(
            places[end] - places[end - 1], places[at + 1] - places[at], abs_tol=_SAME
        ):
            end += 1
        if end - at >= LEAST_ROW:
            rows.append(places[at:end])
            at = end
        else:
            others.append(places[at])
            at += 1
    return rows, others


def middle(mortise: Mortise) -> tuple[float, float]:
    """The middle of a mortise on its surface, where a cutter of round ends is set."""
    (first, second), (length, width) = mortise.position, mortise.extent
    return first + length / 2, second + width / 2


def _mortises(words: Words, mortises: Sequence[Mortise]) -> Iterator[str]:
    """Those with round ends by their middle, as holes are; square ones by their nearest corner."""
    alike: dict[tuple[Mortise, float], list[float]] = {}
    for mortise in mortises:
        along, across = middle(mortise) if mortise.round_ends else mortise.position
        kind = replace(mortise, position=(0.0, 0.0))
        alike.setdefault((kind, round(across, _DIGITS)), []).append(along)
    for (kind, across), places in alike.items():
        first, second = map(words.low, kind.surface.across)
        count, at = len(places), "centre" if kind.round_ends else "nearest corner"
        yield (
            f"{_count(count, kind.called)} {_mortise_size(words, kind)}, "
            f"{words.deep(kind.surface, kind.depth)}, {words.on(kind.surface)}, "
            f"{at}{'s' if count > 1 else ''} at {words.places(sorted(places))} "
            f"from the {first} and {words.say(across)} from the {second}"
        )


def _mortise_size(words: Words, kind: Mortise) -> str:
    say = words.say
    if not kind.round_ends:
        return f"{say(kind.extent[0])} x {say(kind.extent[1])}"
    long, wide = max(kind.extent), min(kind.extent)
    return f"{say(long)} long {_RUNS[kind.long_axis]}, {say(wide)} wide, round ends"


def _pocket_holes(words: Words, pockets: Sequence[PocketHole]) -> Iterator[str]:
    say, name = words.say, words.name
    alike: dict[PocketHole, list[float]] = {}
    for pocket in pockets:
        alike.setdefault(replace(pocket, position=0.0), []).append(pocket.position)
    for kind, places in alike.items():
        surface, end = kind.surface, kind.end
        yield (
            f"{_count(len(places), kind.word)} {words.ware(kind.diameter)} dia. at "
            f"{degrees(kind.angle)} {words.on(surface)}, at {words.places(sorted(places))} from "
            f"the {words.low(kind.run)}, ending {say(kind.stop)} before the "
            f"{name(end)}, then {words.ware(kind.screw)} dia. out of it {say(kind.exit)} below the "
            f"{name(surface)}"
        )


def _finger_pull(words: Words, pull: FingerPull) -> str:
    """The cutter and where its middle runs, as a router's fence is set."""
    say, edge = words.say, words.name(pull.edge)
    round_ends = ", round ends" if any(pull.lets_in(words.size)) else ""
    return (
        f"{pull.word} {say(pull.depth)} deep {words.on(pull.surface)}, with a core-box bit "
        f"{words.ware(2 * pull.radius)} dia., its middle {say(pull.position)} from the {edge}"
        + words.stopped(pull.start, pull.stop, pull.run)
        + round_ends
    )
