"""Frame and panel: stiles that run through, rails between them, a panel in a groove."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from rodwright.movement import stock_swelling
from rodwright.parts import (
    Blank,
    Grain,
    Groove,
    JointKind,
    Part,
    Placement,
    Rebate,
    Role,
    Stock,
    Surface,
    Working,
)
from rodwright.problems import KeyPath, Problems
from rodwright.setout.bench import DOWN, FORWARD, LEFT, TOUCH, Bench, X, Z, meeting
from rodwright.setout.joints import make_joint
from rodwright.setout.rod import Rod
from rodwright.setout.stocks import find_stock
from rodwright.spec.doors import DoorsSpec
from rodwright.spec.joints import JointSpec

LEAST_CHEEK = 4.0
"""Wood left on each side of a panel's groove, mm (common practice, no source)."""
LEAST_LAP = 2.0
"""What a panel keeps in its groove at the driest, mm (common practice, no source)."""
SHEET_GAP = 1.0
"""From a sheet panel, or the ends of a solid one, to the bottom of its groove, mm (common
practice, no source)."""
BOTH_FACES = (Surface.FACE, Surface.REVERSE)


@dataclass(frozen=True, slots=True)
class Outline:
    """A door's bounds in mm, unit frame: x, z, and y of its front and rear."""

    left: float
    right: float
    low: float
    high: float
    front: float
    rear: float

    @property
    def width(self) -> float:
        """Left to right."""
        return self.right - self.left

    @property
    def height(self) -> float:
        """Bottom to top."""
        return self.high - self.low


@dataclass(frozen=True, slots=True)
class Framed:
    """Refs of the stiles, and of all the pieces."""

    left: str
    right: str
    refs: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Panel:
    """A panel's stock and thickness, and the gaps beside its sides and its ends, mm."""

    stock: Stock
    thickness: float
    beside: float
    ends: float


def set_out_framed(
    wish: DoorsSpec,
    outline: Outline,
    stock: Stock,
    rod: Rod,
    bench: Bench,
    problems: Problems,
    where: KeyPath,
    moisture: tuple[float, float],
) -> Framed | None:
    """Lay a frame and its panel on the bench; None where it can't be made, which is noted."""
    frame = wish.frame
    low_rail = frame.bottom_rail_width if frame.bottom_rail_width is not None else frame.rail_width
    inner = replace(
        outline,
        left=outline.left + frame.stile_width,
        right=outline.right - frame.stile_width,
        low=outline.low + low_rail,
        high=outline.high - frame.rail_width,
    )
    if not _possible(wish, outline, inner, problems, where):
        return None
    panel = _panel(wish, outline, inner, stock, rod, problems, where, moisture)
    if panel is None:
        return None
    refs = _stiles(wish, outline, inner, stock, panel, bench)
    rails = _rails(wish, outline, inner, stock, panel, bench)
    kind = Grain.NONE if panel.stock.grain is Grain.NONE else Grain.LENGTHWISE
    reach, up = frame.groove - panel.beside, frame.groove - panel.ends
    blank = Blank(
        inner.height + 2 * up,
        inner.width + 2 * reach,
        panel.thickness,
        panel.stock,
        kind,
        BOTH_FACES,
    )
    rear = (outline.front + outline.rear + panel.thickness) / 2
    sheet = bench.add(
        Part(
            bench.next_ref(Role.DOOR_PANEL),
            "Door panel",
            Role.DOOR_PANEL,
            "Doors",
            blank,
            Placement((inner.right + reach, rear, inner.low - up), Z, LEFT),
            withdraw=FORWARD,
        )
    ).ref
    held = JointKind.FLOATING if panel.stock.kind == "board" else JointKind.GROOVE
    for member in (*refs, *rails):
        _join(bench, held, member, sheet)
    for stile in refs:
        for rail in rails:
            if frame.joint.joint == "tongued":
                _join(bench, JointKind.TONGUE, stile, rail)
            else:
                _fasten(wish, stile, rail, bench, problems, (*where, "frame", "joint"))
    return Framed(refs[0], refs[1], (*refs, *rails, sheet))


def _join(bench: Bench, kind: JointKind, first: str, second: str) -> None:
    at = meeting(bench.parts[first].bounds(), bench.parts[second].bounds())
    assert at is not None, f"{first} and {second} were set out apart"
    bench.join(kind, first, second, at)


def _fasten(
    wish: DoorsSpec, stile: str, rail: str, bench: Bench, problems: Problems, where: KeyPath
) -> None:
    """Joint a rail to a stile in the wood beside the panel's groove."""
    whole = bench.parts[rail]
    clear = replace(whole.blank, width=whole.blank.width - wish.frame.groove)
    bench.parts[rail] = replace(whole, blank=clear)
    make_joint(bench, wish.frame.joint, stile, rail, problems, where)
    bench.parts[rail] = whole


def _possible(
    wish: DoorsSpec, outline: Outline, inner: Outline, problems: Problems, where: KeyPath
) -> bool:
    """Whether the frame leaves an opening and its members enough beside their grooves."""
    say, frame = problems.length, wish.frame
    if inner.width <= 0 or inner.height <= 0:
        problems.add(
            (*where, "frame"),
            f"stiles {say(frame.stile_width)} and rails {say(frame.rail_width)} wide leave no "
            f"panel in a door {say(outline.width)} x {say(outline.height)}",
            "Make them narrower, or the doors slabs.",
        )
        return False
    if not _jointed(frame.joint, problems, (*where, "frame", "joint")):
        return False
    narrowest = min(
        width
        for width in (frame.stile_width, frame.rail_width, frame.bottom_rail_width)
        if width is not None
    )
    if frame.groove > narrowest / 2:
        problems.add(
            (*where, "frame", "groove"),
            f"a groove {say(frame.groove)} deep is more than half of a member "
            f"{say(narrowest)} wide",
            "Make the groove shallower or the members wider.",
        )
        return False
    return True


def _jointed(joint: JointSpec, problems: Problems, where: KeyPath) -> bool:
    """Whether a door's frame is made with such joints."""
    if joint.joint not in ("tongued", "dowelled", "loose-tenoned"):
        problems.add(
            where,
            f"rails and stiles of a door can't be {joint.joint}",
            "Write `tongued`, `dowelled` or `loose-tenoned`.",
        )
        return False
    figures = joint.model_fields_set - {"joint"}
    if joint.joint == "tongued" and figures:
        problems.add(
            (*where, min(figures)),
            "the tongues of a door's rails fill the panel's groove",
            "Leave it out, and give `frame.groove` or the panel's thickness.",
        )
        return False
    return True


def _panel(
    wish: DoorsSpec,
    outline: Outline,
    inner: Outline,
    stock: Stock,
    rod: Rod,
    problems: Problems,
    where: KeyPath,
    moisture: tuple[float, float],
) -> _Panel | None:
    """The panel, and the gaps that its swelling asks for."""
    say = problems.length
    where = (*where, "panel")
    if wish.panel.stock is not None:
        found = find_stock(rod.stocks, wish.panel.stock, (*where, "stock"), problems)
        if found is None:
            return None
        stock = found
    thick = outline.rear - outline.front
    thickness = wish.panel.thickness
    if thickness is None:
        # Sheets are used as they are; boards are planed down to what the frame can hold.
        third = math.floor(thick / 3 * 2) / 2
        thickness = stock.thickness if stock.kind == "sheet" else min(stock.thickness, third)
    elif thickness > stock.thickness or (stock.kind == "sheet" and thickness != stock.thickness):
        problems.add(
            (*where, "thickness"),
            f"a panel {say(thickness)} thick can't come out of `{stock.name}`, which is "
            f"{say(stock.thickness)}",
            "Name other stock, or leave `thickness` out.",
        )
        return None
    cheek = (thick - thickness) / 2
    if cheek < LEAST_CHEEK - TOUCH:
        problems.add(
            (*where, "thickness"),
            f"a groove for a panel {say(thickness)} thick leaves {say(max(0.0, cheek))} on each "
            f"side of it in a frame {say(thick)} thick",
            f"Leave at least {say(LEAST_CHEEK)}: take a thinner panel or a thicker frame.",
        )
        return None
    grows = stock_swelling(stock, inner.width + 2 * wish.frame.groove, moisture)
    beside = _gap(wish, stock, grows, moisture, problems, where)
    if beside is None:
        return None
    return _Panel(stock, thickness, beside, min(beside, SHEET_GAP))


def _gap(
    wish: DoorsSpec,
    stock: Stock,
    grows: float,
    moisture: tuple[float, float],
    problems: Problems,
    where: KeyPath,
) -> float | None:
    """The gap on each side of a panel; None where it would burst the frame or fall out.

    The panel is held at its middle, so half of its movement goes to each side.  It may be
    made at any moisture content of its range, so the gap takes up all the swelling, and the
    groove holds it after all the shrinking.
    """
    say = problems.length
    wished, groove = wish.panel.clearance, wish.frame.groove
    # Up to the next half millimetre, so that the figure can be measured.
    gap = math.ceil(grows - TOUCH) / 2 if stock.kind == "board" else SHEET_GAP
    gap = max(gap, SHEET_GAP) if wished is None else wished
    dry, wet = moisture
    if gap < grows / 2 - TOUCH:
        problems.add(
            (*where, "clearance"),
            f"from {dry:g} to {wet:g} % moisture the panel swells by {say(grows)}: gaps of "
            f"{say(gap)} at each side let it burst the frame",
            f"Leave at least {say(math.ceil(grows) / 2)}, or leave `clearance` out.",
        )
        return None
    lap = groove - gap - grows / 2
    if lap < LEAST_LAP - TOUCH:
        needed = math.ceil(gap + grows / 2 + LEAST_LAP)
        shrunk = f" and shrunk by {say(grows)} as it dries to {dry:g} %" if grows else ""
        left = "nothing" if lap <= 0 else say(lap)
        problems.add(
            (*where, "clearance"),
            f"with gaps of {say(gap)} at each side{shrunk}, the panel keeps {left} in a groove "
            f"{say(groove)} deep and can fall out",
            f"Make `frame.groove` at least {say(needed)}, the panel narrower (two doors), or take "
            "a sheet.",
        )
        return None
    return gap


def _blank(length: float, width: float, thickness: float, stock: Stock) -> Blank:
    grain = Grain.NONE if stock.grain is Grain.NONE else Grain.LENGTHWISE
    return Blank(length, width, thickness, stock, grain, BOTH_FACES)


def _stiles(
    wish: DoorsSpec, outline: Outline, inner: Outline, stock: Stock, panel: _Panel, bench: Bench
) -> tuple[str, str]:
    """Both stiles, grooved in their inner edges; right through where the rails' tongues fill
    the grooves, else as far as the panel reaches.

    The right one is the left one turned end for end, so that they are the same piece where
    the rails are alike.
    """
    thick, depth = outline.rear - outline.front, wish.frame.groove
    blank = _blank(outline.height, wish.frame.stile_width, thick, stock)
    position = (thick - panel.thickness) / 2
    whole = Groove(Surface.FACE_EDGE, position, panel.thickness, depth)
    ends = inner.low - depth - outline.low, outline.high - inner.high - depth
    refs = []
    for name, placement, (start, end) in (
        ("Left door stile", Placement((inner.left, outline.rear, outline.low), Z, LEFT), ends),
        ("Right door stile", Placement((inner.right, outline.rear, outline.high), DOWN, X),
         ends[::-1]),
    ):  # fmt: skip
        groove = whole
        if wish.frame.joint.joint != "tongued":
            groove = replace(whole, start=start, stop=outline.height - end)
        part = Part(
            bench.next_ref(Role.DOOR_STILE), name, Role.DOOR_STILE, "Doors", blank, placement,
            (groove,), withdraw=FORWARD,
        )  # fmt: skip
        refs.append(bench.add(part).ref)
    return refs[0], refs[1]


def _rails(
    wish: DoorsSpec, outline: Outline, inner: Outline, stock: Stock, panel: _Panel, bench: Bench
) -> tuple[str, str]:
    """Both rails, grooved in their inner edges; with a tongue at each end where that is the joint.

    The top one is the bottom one turned end for end.
    """
    thick, depth = outline.rear - outline.front, wish.frame.groove
    cheek = (thick - panel.thickness) / 2
    tongue = depth if wish.frame.joint.joint == "tongued" else 0.0
    workings: tuple[Working, ...] = (Groove(Surface.BACK_EDGE, cheek, panel.thickness, depth),)
    if tongue:
        workings += tuple(
            Rebate(surface, end, tongue, cheek)
            for surface in BOTH_FACES
            for end in (Surface.NEAR_END, Surface.FAR_END)
        )
    left, right = inner.left - tongue, inner.right + tongue
    refs = []
    for name, width, placement in (
        ("Bottom door rail", inner.low - outline.low,
         Placement((left, outline.rear, outline.low), X, Z)),
        ("Top door rail", outline.high - inner.high,
         Placement((right, outline.rear, outline.high), LEFT, DOWN)),
    ):  # fmt: skip
        part = Part(
            bench.next_ref(Role.DOOR_RAIL), name, Role.DOOR_RAIL, "Doors",
            _blank(right - left, width, thick, stock), placement, workings, withdraw=FORWARD,
        )  # fmt: skip
        refs.append(bench.add(part).ref)
    return refs[0], refs[1]
