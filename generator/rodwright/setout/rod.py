"""The rod: the main lines of a unit, from which every part is taken.

All lengths in mm, unit frame: the carcass fills ``[0, width] x [0, depth] x [0, height]``.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.parts import Opening, Stock
from rodwright.problems import Problems
from rodwright.setout.stocks import find_stock, stocks
from rodwright.site.opening import tightest
from rodwright.spec.fields import Share
from rodwright.spec.models import SpaceSpec, UnitSpec


@dataclass(frozen=True, slots=True)
class FrameLines:
    """Main lines of the face frame: stock and thickness, outline, widths of its members."""

    stock: Stock
    thickness: float
    left: float
    right: float
    top: float
    stile_width: float
    rail_width: float
    has_top_rail: bool
    has_bottom_rail: bool

    @property
    def inner_left(self) -> float:
        """Inner edge of the left stile."""
        return self.left + self.stile_width

    @property
    def inner_right(self) -> float:
        """Inner edge of the right stile."""
        return self.right - self.stile_width

    @property
    def inner_bottom(self) -> float:
        """Upper edge of the bottom rail, or the floor."""
        return self.rail_width if self.has_bottom_rail else 0.0

    @property
    def inner_top(self) -> float:
        """Lower edge of the top rail, or the frame's top."""
        return self.top - self.rail_width if self.has_top_rail else self.top


@dataclass(frozen=True, slots=True)
class BackLines:
    """Main lines of the back: stock, front and rear planes, reach into the carcass."""

    stock: Stock
    front: float
    rear: float
    reach: float
    clearance: float


@dataclass(frozen=True, slots=True)
class LippingLines:
    """Stock and thickness of the lippings, and which front edges get one."""

    stock: Stock
    thickness: float
    edges: frozenset[str]


@dataclass(frozen=True, slots=True)
class Rod:
    """Everything the parts are set out from.

    ``side_bottom`` and ``side_top`` are where the sides end, ``floor`` and ``ceiling``
    bound the clear space inside, ``shelf_rear`` is where shelves and dividers end at the
    back.  ``housing`` is the depth of housings, 0 where corners are butted.
    """

    stocks: dict[str, Stock]
    stock: Stock
    width: float
    height: float
    depth: float
    housing: float
    housing_for_shelves: float
    has_top: bool
    has_bottom: bool
    bottom_underside: float
    shelf_rear: float
    opening: Opening | None
    frame: FrameLines | None
    back: BackLines | None
    lipping: LippingLines | None

    @property
    def thickness(self) -> float:
        """Thickness of the carcass stock."""
        return self.stock.thickness

    @property
    def floor(self) -> float:
        """Height at which the clear space inside begins."""
        return self.bottom_underside + self.thickness if self.has_bottom else 0.0

    @property
    def ceiling(self) -> float:
        """Height at which the clear space inside ends."""
        return self.height - self.thickness if self.has_top else self.height

    def front(self, edge: str) -> float:
        """Where the panels named by ``edge`` end at the front: behind their lipping, if any."""
        if self.lipping is None or self.frame is not None or edge not in self.lipping.edges:
            return 0.0
        return self.lipping.thickness


def draw_rod(spec: UnitSpec, problems: Problems) -> Rod:
    """The main lines of a unit.

    Raises:
        ProblemsError: the sizes or stocks that everything else hangs on can't be settled.
    """
    named = stocks(spec.stock, problems)
    stock = find_stock(named, spec.carcass.stock, ("carcass", "stock"), problems)
    opening = tightest(spec.opening, problems) if spec.opening else None
    frame_stock = back_stock = lipping_stock = None
    if spec.face_frame:
        frame_stock = find_stock(named, spec.face_frame.stock, ("face_frame", "stock"), problems)
    if spec.back:
        back_stock = find_stock(named, spec.back.stock, ("back", "stock"), problems)
    if spec.lipping:
        lipping_stock = find_stock(named, spec.lipping.stock, ("lipping", "stock"), problems)
    if stock is None:
        problems.raise_if_any()
        raise AssertionError("a missing stock is a problem")
    width = _width(spec, opening, problems)
    height = _height(spec, opening, stock.thickness, problems)
    overall = _depth(spec, opening, problems)
    problems.raise_if_any()
    frame = _frame_lines(spec, frame_stock, width, height, problems)
    back_thickness = back_stock.thickness if back_stock else 0.0
    applied = spec.back is not None and spec.back.fixing == "applied"
    depth = overall - (frame.thickness if frame else 0.0) - (back_thickness if applied else 0.0)
    housing = _housing(spec, stock, problems)
    back = _back_lines(spec, back_stock, stock, depth, problems)
    rod = Rod(
        stocks=named,
        stock=stock,
        width=width,
        height=height,
        depth=depth,
        housing=housing if spec.carcass.corners == "housed" else 0.0,
        housing_for_shelves=housing,
        has_top=spec.carcass.top != "none",
        has_bottom=spec.carcass.bottom != "none",
        bottom_underside=_bottom_height(spec, problems),
        shelf_rear=min(depth, back.front) if back else depth,
        opening=opening,
        frame=frame,
        back=back,
        lipping=_lipping_lines(spec, lipping_stock, problems),
    )
    _room_left(rod, overall, problems)
    problems.raise_if_any()
    return rod


def _width(spec: UnitSpec, opening: Opening | None, problems: Problems) -> float:
    if spec.size.width is not None:
        return spec.size.width
    if opening is None:
        problems.add(
            ("size",),
            "the unit has no width: there is neither an opening nor `size.width`",
            "Add `opening`, or `size: {width: ..., height: ..., depth: ...}`.",
        )
        return 0.0
    return _fitted(opening.width, 2 * spec.fit.sides, "width", ("fit", "sides"), problems)


def _height(spec: UnitSpec, opening: Opening | None, t: float, problems: Problems) -> float:
    if spec.size.height is not None:
        return spec.size.height
    added = _stacked(spec, spec.interior, t)
    if opening is None and added is None:
        problems.add(
            ("size",),
            "the unit has no height: there is neither an opening nor `size.height`, and the "
            "interior's openings aren't all given as lengths",
            "Add `size.height`, or give every clear opening as a length.",
        )
        return 0.0
    if opening is None:
        assert added is not None
        ends = (t if spec.carcass.top != "none" else 0.0) + (
            spec.carcass.bottom_height + t if spec.carcass.bottom != "none" else 0.0
        )
        return added + ends
    return _fitted(opening.height, spec.fit.top, "height", ("fit", "top"), problems)


def _stacked(spec: UnitSpec, space: SpaceSpec, t: float) -> float | None:
    """Clear height that openings or rows given wholly as lengths add up to, shelves included."""
    lengths: tuple[float | Share, ...]
    if space.shelves is not None and space.shelves.openings is not None:
        lengths, between = space.shelves.openings, t * space.shelves.layers
        if space.shelves.stock in spec.stock:
            between = spec.stock[space.shelves.stock].thickness * space.shelves.layers
    elif space.rows is not None:
        lengths, between = tuple(row.height for row in space.rows), t
    else:
        return None
    if any(isinstance(length, Share) for length in lengths):
        return None
    return sum(length for length in lengths if isinstance(length, float)) + between * (
        len(lengths) - 1
    )


def _depth(spec: UnitSpec, opening: Opening | None, problems: Problems) -> float:
    setback = spec.face_frame.setback if spec.face_frame else 0.0
    if setback and opening is None:
        problems.add(
            ("face_frame", "setback"),
            "`setback` is measured from the front of an opening, and there is none",
            "Leave it out, or add `opening`.",
        )
    if spec.size.depth is not None:
        return spec.size.depth
    if opening is None or opening.depth is None:
        problems.add(
            ("opening",) if spec.opening else ("size",),
            "the unit has no depth: there is neither `opening.depth` nor `size.depth`",
            "Add one of them.",
        )
        return 0.0
    return _fitted(opening.depth, spec.fit.back + setback, "depth", ("fit", "back"), problems)


def _fitted(
    measured: float, gaps: float, what: str, where: tuple[str, str], problems: Problems
) -> float:
    if measured and measured - gaps <= 0:
        problems.add(
            where,
            f"gaps of {gaps:g} mm leave nothing of a {what} of {measured:g} mm",
            "Make the gaps smaller or measure again.",
        )
    return measured - gaps


def _housing(spec: UnitSpec, stock: Stock, problems: Problems) -> float:
    """Depth of housings: a third of the thickness unless given (common practice, no source)."""
    depth = spec.carcass.housing_depth
    if depth is None:
        return stock.thickness / 3
    if depth > stock.thickness / 2:
        problems.add(
            ("carcass", "housing_depth"),
            f"housings {depth:g} mm deep are more than half of {stock.thickness:g} mm stock",
            f"Make them {stock.thickness / 3:.1f} mm deep (a third), or use thicker stock.",
        )
    return depth


def _bottom_height(spec: UnitSpec, problems: Problems) -> float:
    height = spec.carcass.bottom_height
    if height and spec.carcass.bottom != "between":
        problems.add(
            ("carcass", "bottom_height"),
            f"only a bottom between the sides can stand off the floor; this one is "
            f"`{spec.carcass.bottom}`",
            "Write `bottom: between`, or leave out `bottom_height`.",
        )
    return height if spec.carcass.bottom == "between" else 0.0


def _frame_lines(
    spec: UnitSpec, stock: Stock | None, width: float, height: float, problems: Problems
) -> FrameLines | None:
    wish = spec.face_frame
    if wish is None or stock is None:
        return None
    thickness = wish.thickness if wish.thickness is not None else stock.thickness
    if thickness > stock.thickness:
        problems.add(
            ("face_frame", "thickness"),
            f"a frame {thickness:g} mm thick can't come out of `{stock.name}`, "
            f"which is {stock.thickness:g} mm",
            "Make the frame thinner or name thicker stock.",
        )
    rail_width = wish.rail_width if wish.rail_width is not None else wish.width
    if wish.corners == "mitred" and rail_width != wish.width:
        problems.add(
            ("face_frame", "rail_width"),
            "mitred stiles and rails are equally wide",
            "Leave out `rail_width`, or write `corners: butted`.",
        )
    if wish.eased >= thickness or wish.eased > min(wish.width, rail_width) / 2:
        problems.add(
            ("face_frame", "eased"),
            f"edges can't be eased to a radius of {wish.eased:g} mm on members "
            f"{wish.width:g} x {thickness:g} mm",
            "Make the radius smaller than the thickness and half the width.",
        )
    left, right = -wish.overhang.sides, width + wish.overhang.sides
    top = height + wish.overhang.top
    if 2 * wish.width >= right - left or 2 * rail_width >= top:
        problems.add(
            ("face_frame", "width"),
            f"members {wish.width:g} mm wide leave no opening in a frame {right - left:g} x "
            f"{top:g} mm",
            "Make the members narrower.",
        )
    return FrameLines(
        stock=stock,
        thickness=thickness,
        left=left,
        right=right,
        top=top,
        stile_width=wish.width,
        rail_width=rail_width,
        has_top_rail=wish.rails in ("both", "top"),
        has_bottom_rail=wish.rails in ("both", "bottom"),
    )


def _back_lines(
    spec: UnitSpec, stock: Stock | None, carcass: Stock, depth: float, problems: Problems
) -> BackLines | None:
    wish = spec.back
    if wish is None or stock is None:
        return None
    if wish.fixing == "applied":
        return BackLines(stock, depth, depth + stock.thickness, 0.0, 0.0)
    usual = carcass.thickness / (2 if wish.fixing == "rebated" else 3)
    reach = wish.depth if wish.depth is not None else usual
    most = carcass.thickness * (2 / 3 if wish.fixing == "rebated" else 1 / 2)
    if reach > most:
        problems.add(
            ("back", "depth"),
            f"{wish.fixing[:-2]}s {reach:g} mm deep are too much for {carcass.thickness:g} mm "
            f"carcass stock",
            f"Make them {usual:.1f} mm deep, or use thicker stock.",
        )
    if wish.clearance >= reach:
        problems.add(
            ("back", "clearance"),
            f"with {wish.clearance:g} mm left all round, the back falls out of a "
            f"{wish.fixing[:-2]} {reach:g} mm deep",
            "Make the clearance smaller.",
        )
    rear = depth if wish.fixing == "rebated" else depth - wish.inset
    return BackLines(stock, rear - stock.thickness, rear, reach, wish.clearance)


def _lipping_lines(spec: UnitSpec, stock: Stock | None, problems: Problems) -> LippingLines | None:
    wish = spec.lipping
    if wish is None or stock is None:
        return None
    covered = {"sides"} if spec.face_frame else set()
    if spec.face_frame and spec.face_frame.rails in ("both", "top"):
        covered.add("top")
    if spec.face_frame and spec.face_frame.rails in ("both", "bottom"):
        covered.add("bottom")
    if spec.face_frame and spec.face_frame.mid_stiles is not None:
        covered.add("dividers")
    for number, edge in enumerate(wish.edges):
        if edge in covered:
            problems.add(
                ("lipping", "edges", number),
                f"the face frame covers the front of the {edge}: nothing shows to be lipped",
                f"Take `{edge}` out of the list.",
            )
    return LippingLines(stock, wish.thickness, frozenset(wish.edges))


def _room_left(rod: Rod, overall: float, problems: Problems) -> None:
    """Refuse sizes that leave no inside."""
    t = rod.thickness
    if rod.width - 2 * t <= 0:
        problems.add(
            ("size", "width"),
            f"a width of {rod.width:g} mm leaves no space between two sides of {t:g} mm",
            "Make the unit wider.",
        )
    if rod.ceiling - rod.floor <= 0:
        problems.add(
            ("size", "height"),
            f"a height of {rod.height:g} mm leaves no space between bottom and top",
            "Make the unit higher.",
        )
    fronts = max(rod.front(edge) for edge in ("shelves", "dividers", "sides", "top", "bottom"))
    if rod.shelf_rear - fronts <= 0:
        problems.add(
            ("size", "depth"),
            f"a depth of {overall:g} mm leaves no depth for shelves once back, face frame and "
            f"lippings are taken off",
            "Make the unit deeper.",
        )
