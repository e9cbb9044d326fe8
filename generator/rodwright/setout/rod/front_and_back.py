"""Main lines of face frame, back and lippings."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.geometry import TOUCH, Box
from rodwright.problems import Problems
from rodwright.setout.rod.sizes import easily_set
from rodwright.trade.screws import PIN_DIAMETERS, PIN_EDGE, SIDE
from rodwright.trade.sizes import TradeSizes, trade_sizes
from rodwright.trade.wood_left import BETWEEN
from rodwright.unit import Stock
from rodwright.wishes.models import UnitSpec


@dataclass(frozen=True, slots=True)
class FrameLines:
    """Main lines of the face frame: stock and thickness, outline, widths of its members.

    ``bottom`` is where its stiles end: at the foot of the carcass, or over its toe.
    ``bottom_rail`` is how wide the bottom rail is, if there is one.
    """

    stock: Stock
    thickness: float
    left: float
    right: float
    bottom: float
    top: float
    stile_width: float
    rail_width: float
    bottom_rail: float
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
        """Upper edge of the bottom rail, or the frame's bottom."""
        return self.bottom + self.bottom_rail if self.has_bottom_rail else self.bottom

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


def screw_strip(diameter: float, sizes: TradeSizes) -> float:
    """How much (mm) of a back has to lie in a rebate to be screwed there."""
    return SIDE * diameter + sizes.clearance(diameter) / 2 + BETWEEN


@dataclass(frozen=True, slots=True)
class LippingLines:
    """Stock and thickness of the lippings, and which front edges get one."""

    stock: Stock
    thickness: float
    edges: frozenset[str]


def frame_lines(
    spec: UnitSpec,
    stock: Stock | None,
    width: float,
    between: tuple[float, float],
    floor: tuple[float, float],
    problems: Problems,
) -> FrameLines | None:
    """The face frame's lines on a carcass of this width; None if there is no frame.

    ``between`` are the heights at which the carcass's front begins and ends, ``floor`` those of
    the two faces of its bottom.  A butted bottom rail that would leave a hole below a raised
    bottom reaches up to its upper face; mitred rails are as wide as the stiles.
    """
    say = problems.length
    wish = spec.face_frame
    if wish is None or stock is None:
        return None
    thickness = wish.thickness if wish.thickness is not None else stock.thickness
    if thickness > stock.thickness:
        problems.add(
            ("face_frame", "thickness"),
            f"a frame {say(thickness)} thick can't come out of `{stock.name}`, "
            f"which is {say(stock.thickness)}",
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
            f"edges can't be eased to a radius of {say(wish.eased)} on members "
            f"{say(wish.width)} x {say(thickness)}",
            "Make the radius smaller than the thickness and half the width.",
        )
    bottom_rail = rail_width
    if wish.corners == "butted" and floor[0] > between[0] + rail_width + TOUCH:
        bottom_rail = floor[1] - between[0]
    left, right = -wish.overhang.sides, width + wish.overhang.sides
    bottom, top = between[0], between[1] + wish.overhang.top
    if 2 * wish.width >= right - left or rail_width + bottom_rail >= top - bottom:
        problems.add(
            ("face_frame", "width"),
            f"members {say(wish.width)} wide leave no opening in a frame {say(right - left)} x "
            f"{say(top - bottom)}",
            "Make the members narrower.",
        )
    return FrameLines(
        stock=stock,
        thickness=thickness,
        left=left,
        right=right,
        bottom=bottom,
        top=top,
        stile_width=wish.width,
        rail_width=rail_width,
        bottom_rail=bottom_rail,
        has_top_rail=wish.rails in ("both", "top"),
        has_bottom_rail=wish.rails in ("both", "bottom"),
    )


def back_lines(
    spec: UnitSpec, stock: Stock | None, carcass: Stock, depth: float, problems: Problems
) -> BackLines | None:
    """The back's lines in a carcass of this depth; None if there is no back."""
    say = problems.length
    wish = spec.back
    if wish is None or stock is None:
        return None
    if wish.fixing == "applied":
        return BackLines(stock, depth, depth + stock.thickness, 0.0, 0.0)
    share = 2 if wish.fixing == "rebated" else 3
    usual = easily_set(carcass.thickness / share, spec.unit)
    if wish.fixing == "rebated":
        sizes = trade_sizes(spec.unit)
        pins, screws = (
            2 * PIN_EDGE * PIN_DIAMETERS[-1],
            screw_strip(sizes.screw_diameters[0], sizes),
        )
        strip = (screws if spec.hung else pins) + wish.clearance
        most_round = sizes.round_down(carcass.thickness * 2 / 3)
        usual = max(usual, min(sizes.round_up(strip), most_round))
    reach = wish.depth if wish.depth is not None else usual
    most = carcass.thickness * (2 / 3 if wish.fixing == "rebated" else 1 / 2)
    if reach > most:
        problems.add(
            ("back", "depth"),
            f"{wish.fixing[:-1]}s {say(reach)} deep are too much for {say(carcass.thickness)} "
            f"carcass stock",
            f"Make them {say(usual)} deep, or use thicker stock.",
        )
    if wish.clearance >= reach:
        problems.add(
            ("back", "clearance"),
            f"with {say(wish.clearance)} left all round, the back falls out of a "
            f"{wish.fixing[:-1]} {say(reach)} deep",
            "Make the clearance smaller.",
        )
    rear = depth if wish.fixing == "rebated" else depth - wish.inset
    return BackLines(stock, rear - stock.thickness, rear, reach, wish.clearance)


"""What hides a front edge: members of the face frame, and uprights that its ends are let into."""
_NEAR = 3.0
"""A front edge this near behind a frame member (mm) is hidden by it from above too (common
practice, no source)."""


def hidden_by_frame(edge: Box, frame: Sequence[Box], uprights: Sequence[Box]) -> bool:
    """Whether the front edge of a part with these bounds lies wholly behind the face frame.

    Its ends may lie in uprights.  All in mm, unit frame.
    """
    near = [box for box in frame if -TOUCH <= edge.low[1] - box.high[1] < _NEAR]
    # Level edges are hidden all along by what is as high, upright ones by what is as wide.
    along = 0 if edge.size[0] > edge.size[2] else 2
    across = 2 - along
    spans = sorted(
        (box.low[along], box.high[along])
        for box in near
        if box.low[across] <= edge.low[across] + TOUCH
        and edge.high[across] <= box.high[across] + TOUCH
    )
    if not spans:
        return False
    if along == 0:
        spans = sorted([*spans, *((box.low[0], box.high[0]) for box in uprights)])
    reached = edge.low[along]
    for low, high in spans:
        if low <= reached + TOUCH:
            reached = max(reached, high)
    return reached >= edge.high[along] - TOUCH


def covered_fronts(spec: UnitSpec) -> set[str]:
    """What has its front edge covered by a face frame."""
    frame = spec.face_frame
    if frame is None:
        return set()
    covered = {"sides"} | {name for name in ("top", "bottom") if frame.rails in ("both", name)}
    return covered | ({"dividers"} if frame.mid_stiles is not None else set())


def lipping_lines(spec: UnitSpec, stock: Stock | None, problems: Problems) -> LippingLines | None:
    """The lippings' lines; None if there are none."""
    wish = spec.lipping
    if wish is None or stock is None:
        return None
    covered = covered_fronts(spec)
    for number, edge in enumerate(wish.edges):
        if edge in covered:
            problems.add(
                ("lipping", "edges", number),
                f"the face frame covers the front of the {edge}: nothing shows to be lipped",
                f"Take `{edge}` out of the list.",
            )
    return LippingLines(stock, wish.thickness, frozenset(wish.edges))
