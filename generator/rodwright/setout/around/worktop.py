"""A worktop on the carcass, and what holds it down."""

from __future__ import annotations

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.spacing import count_along, spread
from rodwright.setout.bench import Bench
from rodwright.setout.boards import Board, lay_board
from rodwright.setout.fixings import screws, screws_through, slot_for, washers
from rodwright.setout.rod.walls import side_gap
from rodwright.setout.setting import Setting
from rodwright.trade.connectors import BUTTON, BUTTON_SCREW, BUTTON_SLOT
from rodwright.trade.gaps import GLUE_UP_TRIM
from rodwright.trade.sizes import TradeSizes
from rodwright.unit import UPRIGHTS, Fixing, JointKind, Part, Role, Stock, Surface
from rodwright.unit.directions import X, Z
from rodwright.wishes.worktop import WorktopSpec

GROUP = "Worktop"
_SPACING = 400.0
"""Largest distance between screws or buttons, mm (common practice, no source)."""
_FROM_EDGE = 50.0
"""From the edge of what they go through to the nearest screws, mm (common practice, no source)."""
_FROM_END = 90.0
"""From an upright to the nearest screws, mm: clear of what joints cut there (common practice, no
source)."""
_ONE_ROW = 120.0
"""Something narrower than this (mm) takes one row of screws."""
_LEAST_SLOT = 15.0
"""Length of a slot, mm, where the wood's movement doesn't ask for more (common practice, no
source)."""


def set_out_worktop(setting: Setting) -> None:
    """Lay the worktop on the bench and fix it; what can't be made is noted.

    Slots are long enough for the wood to swell or shrink, at whatever moisture it is made.
    """
    wish, rod, bench, moisture = setting.spec.worktop, setting.rod, setting.bench, setting.moisture
    assert wish is not None
    stock = setting.at("stock").stock(wish.stock)
    if stock is None or not _has_place(setting, wish):
        return
    carriers = [
        ref
        for ref in bench.refs_of(Role.TOP, Role.CARCASS_RAIL)
        if abs(bench.bounds(ref).high[2] - rod.outside.height) < TOUCH
    ]
    fixing = wish.fixing
    if fixing is None:
        fixing = "buttons" if not carriers else "screwed" if stock.kind == "sheet" else "slotted"
    if fixing == "buttons" and carriers:
        setting.at("fixing").refuse(
            "buttons hook into the sides, and the carcass's top lies where they go",
            "Write `fixing: slotted`, or leave the top out (`carcass.top: none`).",
        )
        return
    if fixing != "buttons" and not carriers:
        setting.at("fixing").refuse(
            "the carcass has no top to screw through",
            "Write `fixing: buttons`, or give the carcass a top.",
        )
        return
    lowest = _lay(setting, wish, stock)
    if fixing == "buttons":
        for side in bench.refs_of(Role.SIDE):
            _buttons(bench, side, lowest, rod.outside.height, moisture)
    else:
        for carrier in carriers:
            _screws(bench, carrier, lowest, moisture if fixing == "slotted" else None)


def _has_place(setting: Setting, wish: WorktopSpec) -> bool:
    """Whether nothing stands in its way; what does is noted."""
    rod, say, before = setting.rod, setting.say, setting.problems.mark()
    over = wish.overhang
    if rod.front.frame is not None and rod.front.frame.top > rod.outside.height + TOUCH:
        setting.moved_to(("face_frame", "overhang", "top")).refuse(
            "a face frame can't reach above the carcass where a worktop lies on it",
            "Leave `overhang.top` out.",
        )
    gap = side_gap(rod, rod.outside.height, rod.outside.overall)
    if gap is not None and over.sides > gap + TOUCH:
        setting.at("overhang", "sides").refuse(
            f"an overhang of {say(over.sides)} runs into the walls: the gap beside the carcass is "
            f"down to {say(gap)} there",
            "Make it smaller, or `fit.sides` larger.",
        )
    behind = rod.outside.gap_behind
    if behind is not None and over.rear > behind + TOUCH:
        setting.at("overhang", "rear").refuse(
            f"an overhang of {say(over.rear)} runs into the wall: the gap behind the unit is "
            f"{say(behind)}",
            "Make it smaller, or `fit.back` larger.",
        )
    return not setting.problems.noted_since(before)


def _lay(setting: Setting, wish: WorktopSpec, stock: Stock) -> str:
    """Lay its layers on the bench, from the carcass up; the ref of the lowest."""
    rod, bench = setting.rod, setting.bench
    over = wish.overhang
    refs: list[str] = []
    glued, trim = wish.layers > 1, bench.sizes.usual(GLUE_UP_TRIM)
    ref = bench.next_ref(Role.WORKTOP)
    for number in range(wish.layers):
        low = rod.outside.height + number * stock.thickness
        layer = lay_board(
            bench,
            Board(
                Role.WORKTOP,
                "Worktop layer" if glued else "Worktop",
                GROUP,
                stock,
                shows=(Surface.FACE, Surface.FACE_EDGE)
                if number == wish.layers - 1
                else (Surface.FACE_EDGE,),
                trim=(trim, trim) if glued else (0.0, 0.0),
                withdraw=Z,
            ),
            Box(
                (-over.sides, rod.front.face - over.front, low),
                (
                    rod.outside.width + over.sides,
                    rod.outside.rear + over.rear,
                    low + stock.thickness,
                ),
            ),
            X,
            Z,
            ref=ref + "abcd"[number] if glued else ref,
        )
        if refs:
            patch = bench.bounds(refs[-1]).contact(layer.bounds())
            assert patch is not None
            bench.join(JointKind.FACE_GLUED, refs[-1], layer.ref, patch.centre)
        refs.append(layer.ref)
    return refs[0]


def _screws(bench: Bench, carrier: str, worktop: str, moisture: tuple[float, float] | None) -> None:
    """Screws up through a panel or rail, clear of the uprights under it.

    With ``moisture`` they go through slots across the worktop's grain; the front row stays
    put, so that the front does, and a single row has half the worktop to follow.
    """
    slotted, sizes = moisture is not None, bench.sizes
    hole = sizes.clearance(sizes.screw)
    part, top = bench.parts[carrier], bench.parts[worktop]
    low, high = part.bounds().low, part.bounds().high
    deep = high[1] - low[1]
    rows = [(low[1] + high[1]) / 2] if deep < _ONE_ROW else _places(low[1], high[1], sizes)
    count = 0
    for start, end in _bays(bench, part):
        for x in _places(start, end, sizes, _FROM_END):
            for number, y in enumerate(rows):
                count += 1
                if moisture and (number or len(rows) == 1):
                    moving = y - rows[0] if number else top.blank.width / 2
                    half = hole / 2
                    moves = top.blank.stock.swelling(moving, moisture)
                    long = slot_for(sizes, hole, moves, _LEAST_SLOT) / 2
                    box = Box((x - half, y - long, low[2]), (x + half, y + long, high[2]))
                    bench.mortise(carrier, box, Z, round_ends=True, use="screw")
                else:
                    bench.drill(carrier, (x, y, low[2]), Z, hole, None, "screw")
    held = top.blank.stock.grip
    screws = screws_through(sizes, part.blank.thickness, top.blank.thickness, count, held)
    fixings = (screws, washers(sizes, count)) if slotted else (screws,)
    kind = JointKind.BUTTONED if slotted else JointKind.SCREWED
    patch = part.bounds().contact(top.bounds())
    assert patch is not None
    bench.join(kind, carrier, worktop, patch.centre, *fixings)


def _bays(bench: Bench, carrier: Part) -> list[tuple[float, float]]:
    """The stretches of a panel's length (x) that no upright stands under."""
    box = carrier.bounds()
    under = sorted(
        (bounds.low[0], bounds.high[0])
        for ref in bench.refs_of(*UPRIGHTS)
        if (bounds := bench.bounds(ref)) and box.contact(bounds) is not None
    )
    bays, start = [], box.low[0]
    for low, high in under:
        if low - start > TOUCH:
            bays.append((start, low))
        start = max(start, high)
    if box.high[0] - start > TOUCH:
        bays.append((start, box.high[0]))
    return bays


def _places(low: float, high: float, sizes: TradeSizes, inset: float = _FROM_EDGE) -> list[float]:
    """Where to fix along a stretch: near its ends and evenly between, or in its middle if short."""
    inset = min(sizes.usual(inset), (high - low) / 3)
    if high - low < _ONE_ROW:
        return [(low + high) / 2]
    return [*spread(low, high, inset, count_along(high - low, inset, sizes.usual(_SPACING)))]


def _buttons(
    bench: Bench, side: str, worktop: str, height: float, moisture: tuple[float, float]
) -> None:
    """Slots for buttons in the inner face of a side, and the buttons."""
    sizes = bench.sizes
    button = sizes.usual(BUTTON)
    high, deep, below = map(sizes.usual, BUTTON_SLOT[1:])
    part = bench.parts[side]
    box, top = part.bounds(), bench.bounds(worktop)
    deep = min(deep, part.blank.thickness / 2)
    board = bench.parts[worktop]
    moves = board.blank.stock.swelling(board.blank.width / 2, moisture)
    long = min(slot_for(sizes, button, moves, BUTTON_SLOT[0]), box.size[1] / 2)
    left = box.low[0] < TOUCH
    outer = (box.high[0] - deep, box.high[0]) if left else (box.low[0], box.low[0] + deep)
    places = [
        y
        for y in _places(box.low[1], box.high[1], sizes)
        if y - long / 2 > box.low[1] and y + long / 2 < box.high[1]
    ] or [(box.low[1] + box.high[1]) / 2]
    for y in places:
        slot = Box(
            (outer[0], y - long / 2, height - below - high),
            (outer[1], y + long / 2, height - below),
        )
        bench.mortise(side, slot, (-1.0 if left else 1.0, 0.0, 0.0), round_ends=True, use="button")
    patch = box.contact(top)
    assert patch is not None
    bench.join(
        JointKind.BUTTONED,
        side,
        worktop,
        patch.centre,
        Fixing("worktop button", len(places), f"{sizes.say(button)} wide"),
        screws(
            sizes,
            len(places),
            sizes.usual(BUTTON_SCREW),
            sizes.pilot_hole(sizes.screw, board.blank.stock.grip),
        ),
    )
