"""Published pieces go together in the order of work that their books state.

The words quoted were seen in copies on the web; years of publication are from memory.
"""

from __future__ import annotations

from collections import Counter

from kit.specs import unit_from
from rodwright.lengths import format_length
from rodwright.making.order import order_of
from rodwright.making.steps import Order
from rodwright.unit import JointKind, Role, Unit


def _roles(unit: Unit, order: Order, within: str = "") -> list[str]:
    """What comes, step after step: the role of a part, or the name of what was made before."""
    return [
        step.brings.rstrip("0123456789 ") or str(unit.part(step.refs[0]).role)
        for step in order.steps
        if step.within == within
    ]


def test_cabinet_of_foster() -> None:
    """Edwin W. Foster, Carpentry and Woodwork (New York 1911), the cabinet for collections.

    Its list: four shelves 24 5/8 x 12 x 1/2 in, two ends 14 x 12 x 1/2, a back 25 1/8 x 14 x 1/4;
    the shelves gained into the sides, top and bottom rebated.  "The grooves finished, the cabinet
    was put together with 1 1/2-inch brads, except the back", which "was nailed on"; the drawers
    go in when they are finished.  The order found agrees, and says how: all four boards into one
    end, then the other end on.
    """
    unit = unit_from("""
unit: in
size: {width: 25 1/8, height: 14, depth: 12 1/4}
stock:
  box: {kind: board, material: pine, thickness: 1/2}
  thin: {kind: board, material: pine, thickness: 1/4}
carcass: {stock: box, corners: {joint: rebated, depth: 1/4}, housing_depth: 1/4}
interior: {shelves: {count: 2}}
back: {stock: thin}
""")
    bill = Counter(
        tuple(sorted(format_length(size, "in") for size in part.blank.size)) for part in unit.parts
    )
    assert bill == Counter(
        {
            ("1/2", "12", "24 5/8"): 4,
            ("1/2", "12", "14"): 2,
            ("1/4", "14", "25 1/8"): 1,
        }
    )
    order = order_of(unit)
    assert _roles(unit, order) == ["side", "bottom", "shelf", "shelf", "top", "side", "back"]
    assert len(order.steps[-1].joints) == 6


def test_medicine_cabinet_of_foster() -> None:
    """The same book, chapter XL, the medicine cabinet with its panelled door.

    "When the five parts are ready for assembling, the mortise joints are glued, the panel slipped
    into place and left free to shrink in the grooves"; "while it is drying, proceed with the
    building of the cabinet": sides rebated for the back, shelves gained into them.  The panel's
    place among the five is as in the book: before the last upright.  The book makes the door first,
    because it stands in its clamps overnight; here it comes after the cabinet, into which it is
    fitted, and the book says of that as well to leave it "slightly larger than its finished
    dimensions, to allow for planing off and fitting".  Neither needs the other before it is hung.
    (Its sizes are in a drawing; these are ours.)
    """
    unit = unit_from("""
unit: in
size: {width: 20, height: 26, depth: 6}
stock:
  oak: {kind: board, material: oak, thickness: 3/4}
  half: {kind: board, material: pine, thickness: 1/2}
  thin: {kind: board, material: pine, thickness: 1/4}
carcass: {stock: oak, corners: housed}
interior:
  shelves: {count: 2, stock: half, ends: housed}
  doors:
    {kind: framed, stock: oak, hung: overlay, frame: {joint: loose-tenoned, groove: 3/8},
     panel: {stock: thin, thickness: 1/4}}
back: {stock: thin, fixing: rebated}
""")
    order = order_of(unit)
    assert _roles(unit, order) == [
        "side",
        "bottom",
        "shelf",
        "shelf",
        "top",
        "side",
        "back",
        "door",
    ]
    assert _roles(unit, order, "door 1") == [
        "door stile",
        "door rail",
        "door rail",
        "door panel",
        "door stile",
    ]


def test_drawer_of_griffith() -> None:
    """Ira S. Griffith, Essentials of Woodworking (Peoria 1908), section 105, drawers.

    "The front, sides and back are put together, the back being kept just above the grooves in the
    sides.  The bottom is then slipped in place under the back."  The order found agrees.  The
    book's front is one end of the box; here a front of its own is screwed on last of all.
    """
    unit = unit_from("""
unit: in
size: {width: 20, height: 12, depth: 16}
stock:
  oak: {kind: board, material: oak, thickness: 3/4}
  half: {kind: board, material: pine, thickness: 1/2}
  thin: {kind: board, material: pine, thickness: 1/4}
carcass: {stock: oak, corners: housed}
interior:
  drawers: {count: 1, stock: half, bottom: {stock: thin}, slides: {kind: runners}}
""")
    order = order_of(unit)
    made = _roles(unit, order, "drawer 1")
    assert Counter(made[:4]) == Counter({"drawer side": 2, "drawer end": 2})
    assert made[4:] == ["drawer bottom", "drawer front"]
    bottom = next(
        step for step in order.steps if unit.part(step.refs[0]).role is Role.DRAWER_BOTTOM
    )
    assert bottom.towards == (0.0, -1.0, 0.0)  # from behind, under the back


def test_chest_of_drawers_of_spons() -> None:
    """Spons' Mechanics' Own Book (London 1885), the chest of drawers of its figure 592.

    Sides and bottom "of 1-in. pine about 18 in. wide", the bottom let into grooves in the sides;
    cross pieces between them at the front; side ledges for the drawers.  "The back, which is next
    put on"; the top of 1 in pine "screwed on to the cross pieces" from below, "projecting 1 in.
    over the sides and front"; then the drawers.  The order found agrees: case, back, top, drawers.
    Its ledges go on the sides while those lie flat, before the case is put together: the book has
    them "glued and screwed to the sides" after the cross pieces; nothing is in the way either
    time.  (A whole board under the top stands here for the book's two cross pieces; heights and
    width are ours.)
    """
    unit = unit_from("""
unit: in
size: {width: 40, height: 36, depth: 19 1/2}
stock:
  pine: {kind: board, material: pine, thickness: 1}
  thin: {kind: board, material: pine, thickness: 1/2}
  bottoms: {kind: board, material: pine, thickness: 1/4}
carcass: {stock: pine, corners: housed}
interior:
  between: {kind: rail, width: 3}
  rows:
    - height: 1 share
      drawers: {count: 1, stock: thin, bottom: {stock: bottoms}, slides: {kind: runners}}
    - height: 1 share
      drawers: {count: 1, stock: thin, bottom: {stock: bottoms}, slides: {kind: runners}}
back: {stock: thin, fixing: rebated}
worktop: {stock: pine, overhang: {front: 1, sides: 1}}
""")
    order = order_of(unit)
    assert _roles(unit, order) == [
        "side SD",
        "bottom",
        "carcass rail",
        "top",
        "side SD",
        "back",
        "worktop",
        "drawer",
        "drawer",
    ]
    (top,) = (step for step in order.steps if unit.part(step.refs[0]).role is Role.WORKTOP)
    assert {joint.kind for joint in top.joints} == {JointKind.BUTTONED}
