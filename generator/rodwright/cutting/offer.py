"""One thing that pieces can be cut from, and where it comes from."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.cutting.rack import RackKind
from rodwright.cutting.supplies import Flaw, Supply, Trim
from rodwright.geometry import TOUCH
from rodwright.trade.materials import name_of
from rodwright.unit import Grain
from rodwright.unit.stock import Piece, Stock


@dataclass(frozen=True, slots=True)
class Offer:
    """A supply, and where it comes from.

    ``kind`` is as of a lot.  ``at_hand`` tells what is there from what is bought.  ``entry`` is
    its name in the rack file (empty: it is in none), ``stock`` the spec's name for it (empty: it is
    in the rack alone).  ``price`` is what one costs, 0 at hand; None where that isn't known, and
    ``supply.price`` is then by area (or length) what the others cost, or in m2 (or metres) where
    no price is known at all.  ``assumed`` says that nobody said it is sold in this size.

    ``turned`` says that its grain runs across its first size, so that the supply's length is the
    second one: its near end is then the face edge of what lies in the rack, its face edge the far
    end.  ``thickness`` is what parts get, ``lies`` what it is as it lies there (sawn, or
    thicker than is wanted: it is planed).  ``where`` is where it stands.  ``density`` is in kg/m3.
    """

    supply: Supply
    kind: RackKind
    material: str
    thickness: float
    lies: float
    at_hand: bool
    price: float | None
    entry: str = ""
    stock: str = ""
    section: float = 0.0
    grained: bool = True
    show_faces: int = 2
    sawn_thickness: float | None = None
    turned: bool = False
    assumed: bool = False
    where: str = ""
    density: float = 0.0


Place = tuple[str, ...]


def place_of(offer: Offer) -> Place:
    """What tells supplies at hand apart over all lots: the rack's entry, or where else it is."""
    if offer.entry:
        return (offer.entry,)
    return (offer.stock, offer.supply.name, offer.material, f"{offer.lies:.6f}")


def lot_kind(stock: Stock) -> RackKind:
    """As which kind of lot a stock's parts are cut: a board bought in its section is a length."""
    if stock.kind == "sheet":
        return "sheet"
    return "board" if stock.section is None else "length"


def same_lot(one: Stock, other: Stock) -> bool:
    """Whether parts of two stocks are cut from the same wood: kind, material, thickness, section,
    grain, and how it is sawn."""
    return (
        lot_kind(one) == lot_kind(other)
        and plain_material(one.material) == plain_material(other.material)
        and abs(one.thickness - other.thickness) <= TOUCH
        and abs((one.section or 0.0) - (other.section or 0.0)) <= TOUCH
        and (one.grain is Grain.NONE) == (other.grain is Grain.NONE)
        and one.sawn == other.sawn
    )


def make_supply(name: str, size: Piece, grain: Grain, planing: float) -> Supply:
    """A supply at hand whose length runs along the grain."""
    length, width, trim = size.length, size.width, size.trim
    if grain is not Grain.CROSSWISE:
        half = planing / 2
        edges = Trim(trim.near, trim.far, trim.face + half, trim.back + half)
        flaws = tuple(
            Flaw(each.x, each.y, each.length, each.width, each.why) for each in size.flaws
        )
        return Supply(name, length, width, size.count, 0.0, edges, flaws)
    # A quarter turn, and no mirror image: what was measured along the first size is now measured
    # across, from the other end.
    turned = tuple(
        Flaw(each.y, length - each.x - each.length, each.width, each.length, each.why)
        for each in size.flaws
    )
    edges = Trim(trim.face, trim.back, trim.far, trim.near)
    return Supply(name, width, length, size.count, 0.0, edges, turned)


def same_size(one: Offer, other: Offer) -> bool:
    """Whether two offers are of one size, lying the same way."""
    return (
        abs(one.supply.length - other.supply.length) <= TOUCH
        and abs(one.supply.width - other.supply.width) <= TOUCH
        and one.turned == other.turned
    )


def plain_material(name: str) -> str:
    """What a material is called, however it is written."""
    plain = " ".join(name.lower().replace(",", " ").split())
    return name_of(plain) or plain.replace("-", " ")
