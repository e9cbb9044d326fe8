"""What is lifted, step by step: sheets and boards as bought, parts, what they are put together to,
and what is left of the whole when it is taken apart to be carried."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.geometry import Box, Vector, minus
from rodwright.lengths import format_length
from rodwright.mass import mass_of, weight
from rodwright.strength.lots import Lot, opens, together
from rodwright.trade.lifting import BENCH, CARRIED, FROM_FLOOR, LIGHT, Grip
from rodwright.trade.materials import is_glass
from rodwright.unit import TRAITS, Assembly, JointKind, Part, Role, Slide, Stock, Unit

WHOLE = "the whole unit"
STRIPPED = "the unit without what comes off"


@dataclass(frozen=True, slots=True)
class Piece:
    """Something that is lifted as one: its weight and centre, from its own low corner (kg, mm), its
    size as it stands, the heights of the hands at first and at last, and how deep it is from
    front to back of who holds it (mm)."""

    subject: str
    parts: tuple[str, ...]
    lot: Lot
    size: Vector
    start: float
    stop: float
    depth: float
    grip: Grip = "poor"
    pane: float = 0.0
    """Weight of the heaviest glass in it, kg."""


def pieces(unit: Unit) -> Iterator[Piece]:
    """All that is lifted, in the order of the work.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    yield from _bought(unit)
    yield from _finished(unit)
    yield from _assembled(unit)
    yield from _moving(unit)


def comes_off(unit: Unit) -> frozenset[str]:
    """The parts that are taken off before a unit is carried: doors, drawers, shelves on pins, and
    what is fitted round it."""
    resting = {joint.second for joint in unit.joints if joint.kind is JointKind.RESTING}
    moving = {ref for motion in unit.motions for ref in motion.refs}
    around = {part.ref for part in unit.parts if TRAITS[part.role].of is Assembly.SURROUND}
    return frozenset(resting | moving | around)


def _bought(unit: Unit) -> Iterator[Piece]:
    """A sheet of each stock, and the heaviest of its boards at hand, lifted on edge to the saw."""
    for stock in dict.fromkeys(part.blank.stock for part in unit.parts):
        sizes = [stock.size] if stock.size else [(p.length, p.width) for p in stock.pieces]
        if sizes:
            length, width = max(sizes, key=lambda size: size[0] * size[1])
            size = (length, stock.thickness, width)
            lot = Lot(length * width * stock.thickness * stock.density * 1e-9, _half(size))
            yield Piece(
                _sheet(unit, stock, length, width),
                (),
                lot,
                size,
                FROM_FLOOR.value,
                BENCH.value,
                stock.thickness,
                pane=lot.mass if is_glass(stock.material) else 0.0,
            )


def _sheet(unit: Unit, stock: Stock, length: float, width: float) -> str:
    said = " x ".join(
        format_length(each, unit.display_unit) for each in (length, width, stock.thickness)
    )
    kind = "sheet" if stock.kind == "sheet" else "board"
    return f"a {kind} of {stock.material} as bought, {said} {unit.display_unit}"


def _finished(unit: Unit) -> Iterator[Piece]:
    """The parts that weigh something, equal ones once, lifted on edge to the bench."""
    equal: dict[object, list[Part]] = {}
    for part in unit.parts:
        if weight(part) >= LIGHT.value:
            equal.setdefault((part.shape, part.blank.stock, part.name), []).append(part)
    for parts in sorted(equal.values(), key=lambda parts: -weight(parts[0])):
        yield _alone(parts[0], tuple(part.ref for part in parts))


def _alone(part: Part, refs: tuple[str, ...]) -> Piece:
    length, width, thickness = part.blank.size
    centre = mass_of(part.shape).centroid
    mass = weight(part)
    return Piece(
        f"{part.name} ({part.ref})",
        refs,
        Lot(mass, (centre[0], centre[2], centre[1])),
        (length, thickness, width),
        FROM_FLOOR.value,
        BENCH.value,
        thickness,
        pane=mass if is_glass(part.blank.stock.material) else 0.0,
    )


def lifted(parts: Sequence[Part]) -> Piece:
    """Some parts as they are lifted: one to the bench, several that are put together as one.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    refs = tuple(part.ref for part in parts)
    return _alone(parts[0], refs) if len(parts) == 1 else _together(", ".join(refs), parts)


def _assembled(unit: Unit) -> Iterator[Piece]:
    """Carcass, frame and base, what is left of the whole without what comes off, and the whole."""
    off = comes_off(unit)
    of = {
        each: [p for p in unit.parts if TRAITS[p.role].of is each and p.ref not in off]
        for each in Assembly
    }
    carcass = of[Assembly.CARCASS]
    backs = [part for part in carcass if part.role is Role.BACK]
    bare = [part for part in carcass if part.role is not Role.BACK]
    if backs and bare:
        yield _together("the carcass without its back", bare)
    if carcass:
        yield _together("the carcass with its back" if backs else "the carcass", carcass)
    for each, said in ((Assembly.FACE_FRAME, "the face frame"), (Assembly.BASE, "the base")):
        if len(of[each]) > 1:
            yield _together(said, of[each])
    left = [part for part in unit.parts if part.ref not in off]
    if left and len(left) < len(unit.parts):
        yield _together(STRIPPED, left)
    yield _together(WHOLE, unit.parts)


def _together(subject: str, parts: Sequence[Part]) -> Piece:
    """Some parts as one, lifted off the floor by whoever stands at its shorter side."""
    box = Box.of_boxes(part.bounds() for part in parts)
    lot = together(_lot(part) for part in parts)
    return Piece(
        subject,
        (),
        Lot(lot.mass, minus(lot.centre, box.low)),
        box.size,
        FROM_FLOOR.value,
        CARRIED.value,
        min(box.size[0], box.size[1]),
        pane=_pane(parts),
    )


def _moving(unit: Unit) -> Iterator[Piece]:
    """Doors from the floor to their hinges, drawers from the bench to their slides; equal ones at
    equal heights once."""
    equal: dict[object, Piece] = {}
    for motion in unit.motions:
        parts = [unit.part(ref) for ref in motion.refs]
        box = Box.of_boxes(part.bounds() for part in parts)
        lot = together(_lot(part) for part in parts)
        drawer = isinstance(motion, Slide)
        middle = box.centre[2]
        piece = Piece(
            opens(unit, motion),
            (parts[0].ref,),
            Lot(lot.mass, minus(lot.centre, box.low)),
            box.size,
            BENCH.value if drawer else FROM_FLOOR.value,
            middle,
            box.size[1],
            "fair" if drawer else "poor",
            _pane(parts),
        )
        key = (drawer, round(lot.mass, 2), round(middle))
        first = equal.setdefault(key, piece)
        if first is not piece:
            equal[key] = replace(first, parts=(*first.parts, *piece.parts))
    yield from equal.values()


def _lot(part: Part) -> Lot:
    return Lot(weight(part), part.placement.to_unit(mass_of(part.shape).centroid))


def _pane(parts: Iterable[Part]) -> float:
    panes = (weight(part) for part in parts if is_glass(part.blank.stock.material))
    return max(panes, default=0.0)


def _half(size: Vector) -> Vector:
    return (size[0] / 2, size[1] / 2, size[2] / 2)
