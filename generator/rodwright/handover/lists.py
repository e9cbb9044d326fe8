"""The parts list and the hardware list: what to cut, and what to buy to hold it together."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.geometry import Vector
from rodwright.handover.workings import describe_workings
from rodwright.mass import weight
from rodwright.unit import Blank, Edging, Fixing, Grain, Joint, Part, Role, Unit, Working
from rodwright.unit.finish import Finish
from rodwright.unit.orientation import describe_orientation, describe_shows, orientation_of
from rodwright.unit.shop_part import PartsKind, shop_part


@dataclass(frozen=True, slots=True)
class PartsRow:
    """Pieces that are cut and worked alike.

    ``refs`` are in the unit's order.  Lengths in mm: ``length``, ``width`` and
    ``thickness`` are finished sizes (over the long points of a mitred piece), the rough
    ones are what to cut before trimming and before edging is glued on.  ``shows`` names the
    surfaces that show, ``edged`` those under edging;
    ``workings`` are texts in the unit's display unit, their figures in the frame of the
    part's file: ``measured`` says whether from the edges as cut or the finished ones, ``up``
    and ``reference`` which face is up and what x and y are measured from, ``second_side`` how
    the piece is turned over (empty where it needn't be), ``notes`` what is done before or
    after.  ``lie`` says which way the pieces go in the unit, with the refs first where they
    go more than one way.  Surfaces are named by where they lie in the unit as far as the
    pieces agree.  ``weight_each`` in kg.  ``finish`` is what they are finished with, empty where
    nothing is said of it.
    """

    refs: tuple[str, ...]
    name: str
    role: Role
    length: float
    width: float
    thickness: float
    rough_length: float
    rough_width: float
    stock: str
    material: str
    grain: Grain
    shows: tuple[str, ...]
    lipped: tuple[str, ...]
    edged: tuple[str, ...]
    workings: tuple[str, ...]
    measured: str
    up: str
    reference: str
    second_side: str
    notes: tuple[str, ...]
    lie: tuple[str, ...]
    weight_each: float
    finish: str

    @property
    def quantity(self) -> int:
        """How many there are."""
        return len(self.refs)

    @property
    def weight(self) -> float:
        """Weight of all of them, kg."""
        return self.weight_each * self.quantity

    @property
    def set_up(self) -> tuple[str, ...]:
        """How the pieces are laid to be worked, and what is done before or after, line by line."""
        over = [f"second side, {self.second_side}"] if self.second_side else []
        return (f"{self.up} up, {self.reference}", *over, *self.notes)

    @property
    def label(self) -> str:
        """First ref and name, with the number off where there are several."""
        off = f", {self.quantity} off" if self.quantity > 1 else ""
        return f"{self.refs[0]} {self.name}{off}"


@dataclass(frozen=True, slots=True)
class HardwareRow:
    """Bought-in pieces of one kind and size.

    ``holes`` says what is drilled for each, in the ways there are; ``uses`` what they are for:
    the joints that need them, with the refs of the pieces that come to those.
    """

    name: str
    size: str
    quantity: int
    holes: tuple[str, ...]
    uses: tuple[str, ...]


_SameKey = tuple[
    Role,
    str,
    Blank,
    tuple[Working, ...],
    tuple[str, ...],
    tuple[Edging, ...],
    Finish | None,
]
_MOST_REFS = 8
"""Refs named for one use before the others are only counted."""
_MOST_HOLES = 4
"""Ways to drill that are named before the others are only counted."""


def parts_list(unit: Unit, kind: PartsKind = "cut") -> tuple[PartsRow, ...]:
    """The unit's parts by rows of equal pieces, in the order in which they first occur.

    Pieces are equal when nothing at the bench tells them apart: the same role and kind (the
    last word of the name), blank (size, stock, grain, trim, show surfaces), workings, lipped
    edges, edging and finish.  A left and a right side that are cut alike are one row, named by the
    words their names share at the end (``Side``); handed sides are two.  ``kind`` says
    whether workings are measured on the blank as cut or on the finished one.
    """
    return tuple(_row(parts, unit, kind) for parts in like_parts(unit))


def like_parts(unit: Unit) -> tuple[tuple[Part, ...], ...]:
    """The parts behind each row of the parts list, in the same order."""
    gathered: dict[_SameKey, list[Part]] = {}
    for part in unit.parts:
        kind = part.name.split()[-1].casefold() if part.name.split() else ""
        key = (part.role, kind, part.blank, part.workings, part.lipped, part.edged, part.finish)
        gathered.setdefault(key, []).append(part)
    return tuple(tuple(parts) for parts in gathered.values())


def hardware_list(unit: Unit) -> tuple[HardwareRow, ...]:
    """Everything bought in: what the joints need, and feet, handles and the like; by name.

    An article has one row, wherever it goes and however its name is written.
    """
    return tuple(_hardware_row(*kind, pieces) for kind, pieces in articles(unit).items())


def articles(unit: Unit) -> dict[tuple[str, str], list[tuple[Fixing, Joint | None]]]:
    """All that is bought in by its name and size, in their order, each with the joint that needs it
    (None: it belongs to none)."""
    gathered: dict[tuple[str, str], list[tuple[Fixing, Joint | None]]] = {}
    names: dict[str, str] = {}
    needed = [(fixing, joint) for joint in unit.joints for fixing in joint.fixings]
    for fixing, joint in [*needed, *((fixing, None) for fixing in unit.fixings)]:
        name = names.setdefault(fixing.name.casefold(), fixing.name)
        gathered.setdefault((name, fixing.size), []).append((fixing, joint))
    return {kind: gathered[kind] for kind in sorted(gathered)}


def _hardware_row(name: str, size: str, pieces: list[tuple[Fixing, Joint | None]]) -> HardwareRow:
    uses: dict[str, list[str]] = {}
    for fixing, joint in pieces:
        use = "on" if joint is None else str(joint.kind)
        ref = fixing.on or (joint.second if joint is not None else "")
        if ref:
            uses.setdefault(use, []).append(ref)
    holes = [fixing.pilot for fixing, _ in pieces if fixing.pilot]
    return HardwareRow(
        name,
        size,
        sum(fixing.count for fixing, _ in pieces),
        _some(holes, _MOST_HOLES),
        tuple(f"{use}: {', '.join(_some(refs, _MOST_REFS))}" for use, refs in uses.items()),
    )


def _some(texts: list[str], most: int) -> tuple[str, ...]:
    """Each text once; past so many, only how many more there are."""
    once = tuple(dict.fromkeys(texts))
    more = len(once) - most
    return once if more <= 0 else (*once[:most], f"and {more} more")


def common_name(names: Sequence[str]) -> str:
    """The words that names share at their end, beginning with a capital."""
    shared: list[str] = []
    for words in zip(*(reversed(name.split()) for name in names), strict=False):
        if len({word.casefold() for word in words}) > 1:
            break
        shared.insert(0, words[0])
    name = " ".join(shared)
    return name[:1].upper() + name[1:]


def _row(parts: tuple[Part, ...], unit: Unit, kind: PartsKind) -> PartsRow:
    first, shop = parts[0], shop_part(parts, kind, unit.display_unit)
    size: Vector = first.blank.size
    rough: Vector = first.rough_size
    orientation = orientation_of(shop.pieces)
    return PartsRow(
        refs=tuple(part.ref for part in parts),
        name=common_name(tuple(part.name for part in parts)),
        role=first.role,
        length=size[0],
        width=size[1],
        thickness=size[2],
        rough_length=rough[0],
        rough_width=rough[1],
        stock=first.blank.stock.name,
        material=first.blank.stock.described,
        grain=first.blank.grain,
        shows=describe_shows(shop.pieces),
        lipped=first.lipped,
        edged=tuple(orientation.name(each.surface) for each in shop.edged),
        workings=describe_workings(shop, unit.display_unit),
        measured=shop.state,
        up=shop.up,
        reference=shop.reference,
        second_side=shop.second_side or "",
        notes=shop.notes,
        lie=describe_orientation(shop.pieces),
        weight_each=weight(first),
        finish=first.finish.described if first.finish is not None else "",
    )
