"""A small cutting plan by hand: two sheets, one bought and one at hand, and a length."""

from __future__ import annotations

from dataclasses import replace

from rodwright.cutting.offcuts import Least, kept_offcuts, plan_identity
from rodwright.cutting.offers import Offer
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import Layout, Offcut, Placed, Plan
from rodwright.cutting.saws import Saw
from rodwright.cutting.supplies import Supply
from rodwright.cutting.whole import Cutting, ForJob, Rules
from rodwright.cutting.work import Label, Lot, LotPlan

LEAST = Least(length=400, width=150, board_length=300, board_width=40)


def offer(
    name: str,
    length: float,
    width: float,
    *,
    price: float | None = None,
    count: int | None = None,
    kind: str = "sheet",
    thickness: float = 18.0,
    **more: object,
) -> Offer:
    """Something to buy at a price, or (with a count) at hand."""
    at_hand = count is not None
    supply = Supply(name, length, width, count, 0.0 if at_hand else price or 1.0)
    return Offer(
        supply,
        kind,
        "birch plywood",
        thickness,
        thickness,  # type: ignore[arg-type]
        at_hand,
        0.0 if at_hand else price,
        **more,  # type: ignore[arg-type]
    )


def sheet_lot(*offers: Offer) -> Lot:
    """Two sides and a shelf of plywood, 18 mm."""

    def label(ref: str, part: str, *size: float, notes: tuple[str, ...] = ()) -> Label:
        return Label(ref, "Bookcase", part, (size[0], size[1], 18.0), notes)

    sides = (label("SD1", "Left side", 2000, 300), label("SD2", "Right side", 2000, 300))
    shelf = label("SH1", "Shelf", 800, 280, notes=("edge the front",))
    return Lot(
        "ply",
        "sheet",
        "birch plywood",
        18.0,
        680.0,
        (Piece("SD1", 2000.0, 300.0, 2), Piece("SH1", 800.0, 279.0, 1, turning=True)),
        {"SD1": sides, "SH1": (shelf,)},
        tuple(each.supply for each in offers),
        offers=offers,
    )


def sheet_plan() -> LotPlan:
    """The sides from a sheet that is bought, the shelf from an offcut in the rack."""
    lot = sheet_lot(
        offer("ply 2440 x 1220", 2440.0, 1220.0, price=74.0),
        offer("KD7F-3", 900.0, 500.0, count=1, entry="KD7F-3", where="behind the door"),
    )
    sides = Layout(
        "ply 2440 x 1220",
        (
            Placed("SD1", 0.0, 0.0, 2000.0, 300.0),
            Placed("SD1", 0.0, 303.0, 2000.0, 300.0),
        ),
        (
            Offcut(0.0, 606.0, 2440.0, 614.0),
            Offcut(2003.0, 0.0, 437.0, 300.0),
            Offcut(2003.0, 303.0, 437.0, 300.0),
        ),
    )
    shelf = Layout(
        "KD7F-3",
        (Placed("SH1", 0.0, 0.0, 800.0, 279.0),),
        (Offcut(0.0, 282.0, 900.0, 218.0), Offcut(803.0, 0.0, 97.0, 279.0)),
    )
    return LotPlan(lot, Plan((sides, shelf), 74.0, 74.0, proven=True, kerf=3.0))


def length_plan() -> LotPlan:
    """Four legs from two lengths of a section, of which no price is known; 2 % may be above the
    best."""
    offers = (offer("beech 45", 2000.0, 0.0, kind="length", thickness=45.0, section=45.0),)
    labels = tuple(
        Label(f"LG{at}", "Bookcase", "Leg", (720.0, 45.0, 45.0), ()) for at in range(1, 5)
    )
    lot = Lot(
        "beech",
        "length",
        "beech",
        45.0,
        720.0,
        (Piece("LG1", 720.0, 0.0, 4),),
        {"LG1": labels},
        tuple(each.supply for each in offers),
        45.0,
        offers,
    )
    legs = Layout(
        "beech 45",
        (Placed("LG1", 0.0, 0.0, 720.0, 0.0), Placed("LG1", 723.0, 0.0, 720.0, 0.0)),
        (Offcut(1446.0, 0.0, 554.0, 0.0),),
    )
    return LotPlan(lot, Plan((legs, legs), 4.0, 3.92, proven=False, kerf=3.0))


def cutting(*lots: LotPlan, **more: object) -> Cutting:
    """Plans of lots as a whole: those above, unless others are given."""
    lots = lots or (sheet_plan(), length_plan())
    identified = plan_identity(lots)
    whole = Cutting(
        (ForJob("Bookcase", "", "bookcase.yaml"),),
        "mm",
        Rules(Saw(kerf=3.0)),
        lots,
        LEAST,
        identified,
        kept_offcuts(lots, identified, LEAST),
    )
    return replace(whole, **more)  # type: ignore[arg-type]
