"""In what order a part is made: cut, glued up, edged, worked, trimmed; sentence by sentence."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.paper.part_sheets.datum import Datum
from rodwright.paper.part_sheets.figures import Operation
from rodwright.paper.part_sheets.purposes import named
from rodwright.unit import Grain, JointKind, Part, Role, Surface, Unit
from rodwright.unit.cut_edges import glued_up, trims
from rodwright.unit.shop_part import listed

_GRAIN = {
    Grain.LENGTHWISE: ", grain along the length",
    Grain.CROSSWISE: ", grain across the width",
    Grain.NONE: "",
}


def order_of_work(
    unit: Unit,
    parts: Sequence[Part],
    datum: Datum,
    operations: Sequence[Operation],
    marks: int,
    square: Sequence[int],
) -> tuple[str, ...]:
    """What is done to a part one after the other, with so many places that are only marked, and
    the numbers of what is to be ``square`` at its ends; lengths in the unit's measure."""
    return tuple(_steps(unit, parts, datum, operations, marks, square))


def _steps(
    unit: Unit,
    parts: Sequence[Part],
    datum: Datum,
    operations: Sequence[Operation],
    marks: int,
    square: Sequence[int],
) -> Iterator[str]:
    first = parts[0]
    left_on = trims(first)
    yield _cut(first, datum, left_on)
    before = _before(unit, parts, datum)
    yield from before
    yield from _edging(first, datum)
    if operations or marks:
        yield _marking(datum, 0.0 if before else left_on.get(datum.origin[0], 0.0))
    for each in operations:
        yield f"{each.heading}{_lying(datum, each)}: {_numbers(each)}."
    if square:
        numbers = f"no{'s' * (len(square) > 1)}. {listed([str(each) for each in square])}"
        yield f"Square the stopped ends of {numbers} with a chisel if a router left them round."
    if marks:
        made = sum(len(each.entries) for each in operations)
        yield f"Mark in pencil what is set against it: {_range(made + 1, made + marks)}."
    yield from _after(unit, parts, datum, left_on, trimmed=bool(before))


def _marking(datum: Datum, over: float) -> str:
    """Where figures run from, where the datum end is cut so much over."""
    edge, end = datum.name(1), datum.name(0)
    inward = f", {datum.words.say(over)} in from the end as cut" if over else ""
    return (
        f"Pencil the face mark on the {datum.name(2)} and the edge mark on the {edge}; measure "
        f"from the {edge} and the {end}{inward}."
    )


def _lying(datum: Datum, operation: Operation) -> str:
    """How the piece lies for it, seen from where the maker stands."""
    sides = {Surface.FACE: datum.origin[1].at_high, Surface.REVERSE: not datum.origin[1].at_high}
    for face, far in sides.items():
        if operation.side is face:
            away = "away from you" if far else "towards you"
            return f", {datum.name(0)} at your left, {datum.name(1)} {away}"
    return ""


def _cut(part: Part, datum: Datum, left_on: dict[Surface, float]) -> str:
    say = datum.words.say
    size = " x ".join(map(say, part.rough_size))
    over = [f"{say(amount)} over at {where}" for amount, where in _amounts(left_on, datum)]
    under = {each.surface: each.thickness for each in part.edged}
    over += [
        f"{say(amount)} under at {where} for the edging" for amount, where in _amounts(under, datum)
    ]
    text = f"Cut {size} out of {part.blank.stock.name}{_GRAIN[part.blank.grain]}"
    text += f": {listed(over)}." if over else "."
    if part.grain_run:
        text += (
            f" Its grain runs on through its neighbours (run {part.grain_run}): cut them in their "
            "order from one piece."
        )
    return text


def _before(unit: Unit, parts: Sequence[Part], datum: Datum) -> list[str]:
    """Gluing that comes before the piece has its size."""
    first = parts[0]
    lips = first.role is Role.LIPPING
    to = _partners(unit, parts, JointKind.EDGE_GLUED if lips else JointKind.FACE_GLUED)
    finished = f"{datum.words.say(first.blank.length)} x {datum.words.say(first.blank.width)}"
    if lips:
        where = f" to {to}" if to else ""
        if not trims(first):
            return [f"Glue it{where}."]
        return [f"Glue it{where}, then trim it flush to {finished}."]
    if not glued_up(first):
        return []
    where = f" with {to}" if to else ""
    if within := _within(unit, parts):
        where = f" in layers ({within})"
    return [f"Glue it up{where}, show faces out, then trim them together to {finished}."]


def _edging(part: Part, datum: Datum) -> Iterator[str]:
    size = " x ".join(map(datum.words.say, part.blank.size[:2]))
    alike: dict[tuple[str, float], list[Surface]] = {}
    for each in part.edged:
        alike.setdefault((each.called, each.thickness), []).append(each.surface)
    for (called, thickness), surfaces in alike.items():
        where = _places(surfaces, datum)
        told = f"Edge {where} with {called}, {datum.words.say(thickness)} thick"
        last = surfaces[-1] is part.edged[-1].surface
        yield f"{told}: it is then {size}." if last else f"{told}."


def _after(
    unit: Unit, parts: Sequence[Part], datum: Datum, left_on: dict[Surface, float], *, trimmed: bool
) -> Iterator[str]:
    """What waits until the piece is fitted."""
    first, say = parts[0], datum.words.say
    if first.role is Role.SCRIBE and left_on:
        yield f"Scribe it to the wall at {_places(list(left_on), datum)}."
    elif left_on and not trimmed:
        long = f"{say(first.blank.length)} long" if any(s.axis == 0 for s in left_on) else ""
        wide = f"{say(first.blank.width)} wide" if any(s.axis == 1 for s in left_on) else ""
        size = " and ".join(filter(None, (long, wide)))
        yield f"Trim {_places(list(left_on), datum)} when it is fitted, to {size}."
    if first.lipped:
        lippings = _partners(unit, parts, JointKind.EDGE_GLUED, Role.LIPPING)
        strip = f" ({lippings})" if lippings else ""
        yield f"Its lipping{strip} is glued on at the {listed(first.lipped)}."


def _partners(unit: Unit, parts: Sequence[Part], kind: JointKind, role: Role | None = None) -> str:
    """Refs of what equal pieces are joined to in a way."""
    refs = {part.ref for part in parts}
    found = []
    for joint in unit.joints:
        if joint.kind is kind and (joint.first in refs) is not (joint.second in refs):
            other = joint.second if joint.first in refs else joint.first
            if role is None or unit.part(other).role is role:
                found.append(other)
    return named([found])


def _within(unit: Unit, parts: Sequence[Part]) -> str:
    """Which of equal pieces are glued face to face with each other."""
    refs = {part.ref for part in parts}
    pairs = [
        f"{joint.first} to {joint.second}"
        for joint in unit.joints
        if joint.kind is JointKind.FACE_GLUED and {joint.first, joint.second} <= refs
    ]
    return named([pairs])


def _numbers(operation: Operation) -> str:
    numbers = [each.number for each in operation.entries]
    return _range(min(numbers), max(numbers))


def _range(low: int, high: int) -> str:
    return f"no. {low}" if low == high else f"nos. {low} to {high}"


def _amounts(amounts: dict[Surface, float], datum: Datum) -> list[tuple[float, str]]:
    alike: dict[float, list[Surface]] = {}
    for surface, amount in amounts.items():
        alike.setdefault(amount, []).append(surface)
    return [(amount, _places(surfaces, datum)) for amount, surfaces in alike.items()]


def _places(surfaces: Sequence[Surface], datum: Datum) -> str:
    """Ends and edges together: both of them before their names one by one."""
    said: list[str] = []
    for axis, both in ((0, "both ends"), (1, "both edges")):
        there = [each for each in surfaces if each.axis == axis]
        if len(there) == 2:
            said.append(both)
        else:
            said += [f"the {datum.words.name(each)}" for each in there]
    return listed(said)
