"""The main lines of a unit, worked out of the wishes; lengths in mm, unit frame."""

from __future__ import annotations

from dataclasses import replace
from math import inf

from rodwright.opening.heights import heights_without_slope
from rodwright.opening.survey import Survey, measure, usable_opening, with_shape
from rodwright.problems import Problems
from rodwright.setout.rod.front_and_back import (
    FrameLines,
    back_lines,
    frame_lines,
    lipping_lines,
)
from rodwright.setout.rod.lines import (
    FrontLines,
    InsideLines,
    Joinery,
    OutsideLines,
    Rod,
    housed_to,
)
from rodwright.setout.rod.reach import joint_of
from rodwright.setout.rod.sizes import (
    base_height,
    easily_set,
    head_height,
    overall_depth,
    overall_height,
    overall_width,
    standing_inset,
)
from rodwright.setout.stocks import find_stock, stocks
from rodwright.trade.gaps import HEAD_GAP
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import Opening, Stock
from rodwright.wishes.models import UnitSpec


def draw_rod(spec: UnitSpec, problems: Problems, survey: Survey | None = None) -> Rod:
    """The main lines of a unit; ``survey`` is that of its opening, if it is made already.

    What is wrong but hinders nothing else is only noted.

    Raises:
        ProblemsError: the sizes or stocks that everything else hangs on can't be settled.
    """
    named = stocks(spec.stock, problems, spec.loads.service_class)
    stock = find_stock(named, spec.carcass.stock, ("carcass", "stock"), problems)
    if survey is None and spec.opening is not None and heights_without_slope(spec, problems):
        survey = measure(spec.opening, problems)
    opening = usable_opening(survey, spec.fit, spec.unit) if survey else None
    frame_stock, back_stock, lipping_stock = (
        find_stock(named, wish.stock, (key, "stock"), problems) if wish else None
        for key, wish in (
            ("face_frame", spec.face_frame),
            ("back", spec.back),
            ("lipping", spec.lipping),
        )
    )
    if stock is None or (spec.opening and not opening):
        raise problems.error()
    width = overall_width(spec, opening, problems)
    overall = overall_height(spec, opening, stock.thickness, problems)
    front_to_rear = overall_depth(spec, opening, problems)
    if min(width, overall, front_to_rear) <= 0:
        raise problems.error()
    if survey and opening:
        opening = with_shape(opening, survey, spec.fit, width, overall, standing_inset(spec))
    foot, height = base_height(spec), overall - head_height(spec)
    if foot >= height:
        _no_carcass(spec, overall, problems)
        raise problems.error()
    toe = foot if spec.base is not None and spec.base.kind == "toe_board" else 0.0
    underside = foot + _bottom_height(spec, problems)
    has_top, has_bottom = spec.carcass.top != "none", spec.carcass.bottom != "none"
    bottom = (underside, underside + stock.thickness) if has_bottom else (foot, foot)
    frame = frame_lines(spec, frame_stock, width, (foot, height), bottom, problems)
    if opening is not None:
        opening = replace(opening, front=_opening_front(spec, frame))
    depth = front_to_rear - (frame.thickness if frame else 0.0)
    if back_stock and spec.back and spec.back.fixing == "applied":
        depth -= back_stock.thickness
    joinery = _joinery(spec, stock, problems)
    back = back_lines(spec, back_stock, stock, depth, problems)
    lipping = lipping_lines(spec, lipping_stock, problems)
    gap_behind = _gap_behind(spec, opening, front_to_rear)
    base, rear = 0.0 if toe else foot, max(depth, back.rear) if back else depth
    rod = Rod(
        named,
        stock,
        OutsideLines(width, base, height, overall, depth, rear, toe, gap_behind),
        InsideLines(
            has_top,
            has_bottom,
            bottom_underside=underside,
            floor=bottom[1] if has_bottom else base,
            ceiling=height - stock.thickness if has_top else height,
            shelf_rear=min(depth, back.front) if back else depth,
        ),
        FrontLines(frame, lipping, _head(spec, height)),
        joinery,
        back,
        opening,
    )
    if not _has_room(rod, front_to_rear, problems):
        raise problems.error()
    return rod


def _joinery(spec: UnitSpec, stock: Stock, problems: Problems) -> Joinery:
    """How parts of the carcass meet: inside by housings where its corners are for corners alone."""
    housing = _housing(spec, stock, problems)
    corners = usual = housed_to(spec.carcass.corners, housing)
    if corners.joint in ("rebated", "mitred"):
        usual = housed_to(joint_of("housed"), housing)
    return Joinery(corners, usual, housing, spec.unit)


def _opening_front(spec: UnitSpec, frame: FrameLines | None) -> float:
    """The y of the plane in which the walls beside an opening end."""
    setback = spec.face_frame.setback if spec.face_frame else 0.0
    return 0.0 - (frame.thickness if frame else 0.0) - setback


def _gap_behind(spec: UnitSpec, opening: Opening | None, depth: float) -> float | None:
    if opening is None or opening.depth is None:
        return None
    return opening.depth - depth - (spec.face_frame.setback if spec.face_frame else 0.0)


def _head(spec: UnitSpec, height: float) -> float:
    """How high fronts may reach under a worktop's overhang or a lapped cornice."""
    gap = trade_sizes(spec.unit).usual(HEAD_GAP)
    if spec.worktop is not None and spec.worktop.overhang.front:
        return height - gap
    if spec.cornice is not None and spec.cornice.place == "lapped":
        return height + spec.cornice.rise - spec.cornice.height - gap
    return inf


def _no_carcass(spec: UnitSpec, overall: float, problems: Problems) -> None:
    """Note that what is under and over the carcass takes all of the height."""
    say = problems.length
    key = "base" if spec.base else "worktop" if spec.worktop else "cornice"
    taken = base_height(spec) + head_height(spec)
    problems.add(
        (key,) if key == "worktop" else (key, "height"),
        f"what stands under and over the carcass takes {say(taken)} of a unit {say(overall)} high",
        f"Make the {key} lower or the unit higher.",
    )


def _housing(spec: UnitSpec, stock: Stock, problems: Problems) -> float | None:
    """Depth of housings, if it is given and the carcass stock can take it."""
    say = problems.length
    depth = spec.carcass.housing_depth
    if depth is not None and depth > stock.thickness / 2:
        problems.add(
            ("carcass", "housing_depth"),
            f"housings {say(depth)} deep are more than half of {say(stock.thickness)} stock",
            f"Make them {say(easily_set(stock.thickness / 3, spec.unit))} deep, or use thicker "
            "stock.",
        )
        return None
    return depth


def _bottom_height(spec: UnitSpec, problems: Problems) -> float:
    height = spec.carcass.bottom_height
    if height and spec.base is not None:
        problems.add(
            ("carcass", "bottom_height"),
            "the bottom lies on the base, so it has no height of its own",
            "Leave out `bottom_height`, or `base`.",
        )
    elif height and spec.carcass.bottom != "between":
        problems.add(
            ("carcass", "bottom_height"),
            f"only a bottom between the sides can stand off the floor; this one is "
            f"`{spec.carcass.bottom}`",
            "Write `bottom: between`, or leave out `bottom_height`.",
        )
    return height if spec.carcass.bottom == "between" else 0.0


def _has_room(rod: Rod, overall: float, problems: Problems) -> bool:
    """Whether the sizes leave an inside; what they lack is noted."""
    before = problems.mark()
    say = problems.length
    t = rod.thickness
    if rod.outside.width - 2 * t <= 0:
        problems.add(
            ("size", "width"),
            f"a width of {say(rod.outside.width)} leaves no space between two sides of {say(t)}",
            "Make the unit wider.",
        )
    if rod.inside.ceiling - rod.inside.floor <= 0:
        problems.add(
            ("size", "height"),
            f"a height of {say(rod.outside.overall)} leaves no space between bottom and top",
            "Make the unit higher.",
        )
    fronts = max(
        rod.front.behind_lipping(edge) for edge in ("shelves", "dividers", "sides", "top", "bottom")
    )
    if rod.inside.shelf_rear - fronts <= 0:
        problems.add(
            ("size", "depth"),
            f"a depth of {say(overall)} leaves no depth for shelves once back, face frame and "
            f"lippings are taken off",
            "Make the unit deeper.",
        )
    return not problems.noted_since(before)
