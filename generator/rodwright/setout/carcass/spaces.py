"""The spaces inside a carcass, and the openings they have in its front."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

from rodwright.setout.inside import Carcass, Edge, Front, Level, Member, Space, Upright
from rodwright.setout.rod.lines import Rod
from rodwright.trade.gaps import AIR
from rodwright.trade.sizes import TradeSizes
from rodwright.wishes.doors import DoorsSpec


def behind(wish: DoorsSpec, front_plane: float, thickness: float, sizes: TradeSizes) -> float:
    """The y (>= 0, mm, unit frame) that the contents of a space stay behind.

    ``front_plane`` is the y of the front of what surrounds the door, ``thickness`` the
    door's.  An overlay door takes nothing of the space.
    """
    if wish.hung == "overlay":
        return 0.0
    return max(0.0, front_plane + thickness + sizes.usual(AIR))


def panel_front(rod: Rod, space: Space, edge: str, setback: float) -> float:
    """Where the panels of a space named by ``edge`` end at the front (y): behind its door and their
    own lipping, and set back by so much."""
    front = space.setback + setback + rod.front.behind_lipping(edge)
    lines = rod.front.lipping
    if space.closed and rod.front.frame is not None and lines and edge in lines.edges:
        front += lines.thickness
    return front


def whole_space(rod: Rod, carcass: Carcass) -> Space:
    """The space between sides, bottom and top."""
    frame, t = rod.front.frame, rod.thickness
    left, right = carcass.left.right, carcass.right.left
    if frame is None:
        front = Front(
            left,
            right,
            rod.inside.floor,
            rod.inside.ceiling,
            0.0,
            t,
            t,
            t if carcass.bottom else 0.0,
            t if carcass.top else 0.0,
        )
    else:
        behind = carcass.bottom is not None, carcass.top is not None
        bare: set[Edge] = set()
        if behind[0] and not frame.has_bottom_rail:
            bare.add("low")
        if behind[1] and not frame.has_top_rail:
            bare.add("high")
        front = Front(
            frame.inner_left,
            frame.inner_right,
            frame.inner_bottom if frame.has_bottom_rail else rod.inside.floor,
            frame.inner_top if frame.has_top_rail else rod.inside.ceiling,
            -frame.thickness,
            frame.stile_width,
            frame.stile_width,
            frame.bottom_rail if frame.has_bottom_rail else t if behind[0] else 0.0,
            frame.rail_width if frame.has_top_rail else t if behind[1] else 0.0,
            frozenset(bare),
        )
    front = replace(front, cover_high=max(0.0, min(front.cover_high, rod.front.head - front.high)))
    return Space(
        carcass.left,
        carcass.right,
        rod.inside.floor,
        rod.inside.ceiling,
        carcass.bottom,
        carcass.top,
        front,
    )


def mid_stile(space: Space, divider: Upright, width: float | None) -> Member | None:
    """The mid stile before a divider of a space; None where none is wished, where an inset door
    stands, or where its ends would butt against no rail."""
    front = space.front
    if width is None or space.closed or front.bare & {"low", "high"}:
        return None
    middle = (divider.left + divider.right) / 2
    member = Member("stile", middle - width / 2, middle + width / 2, front.low, front.high)
    return member if front.left < member.left and member.right < front.right else None


def mid_rail(space: Space, level: Level, width: float | None) -> Member | None:
    """The mid rail before a level of a space, flush with its upper face; None where none is
    wished, where an inset door stands, or where its ends would butt against no stile."""
    front = space.front
    if width is None or space.closed or front.bare & {"left", "right"}:
        return None
    member = Member("rail", front.left, front.right, level.high - width, level.high)
    return member if front.low < member.low and member.high < front.high else None


def columns_of(
    space: Space, dividers: list[Upright], members: list[Member | None], high: float, framed: bool
) -> list[Space]:
    """The spaces that dividers make of a space, with the members that stand before them."""
    ceiling = space.ceiling if high == space.high else None
    uprights = [space.left, *dividers, space.right]
    found = []
    for number, (left, right) in enumerate(pairwise(uprights)):
        front = replace(
            space.front,
            high=min(high, space.front.high),
            cover_high=space.front.cover_high if ceiling is space.ceiling else 0.0,
        )
        if number > 0:
            member = members[number - 1]
            edge = member.right if member else left.right
            front = replace(
                front,
                left=edge,
                cover_left=_half(member, left),
                bare=_bared(front.bare, "left", framed and member is None),
            )
        if number < len(dividers):
            member = members[number]
            edge = member.left if member else right.left
            front = replace(
                front,
                right=edge,
                cover_right=_half(member, right),
                bare=_bared(front.bare, "right", framed and member is None),
            )
        found.append(
            replace(space, left=left, right=right, high=high, ceiling=ceiling, front=front)
        )
    return found


def rows_of(
    space: Space,
    bounds: list[tuple[float, float]],
    levels: list[Level | None],
    members: list[Member | None],
    framed: bool,
) -> list[Space]:
    """The spaces that levels make of a space, from the top down; ``bounds`` are their low and
    high, ``levels`` and ``members`` what lies between each two of them."""
    found = []
    for number, (low, high) in enumerate(bounds):
        front, ceiling, floor = space.front, space.ceiling, space.floor
        if number > 0:
            ceiling, member = levels[number - 1], members[number - 1]
            front = replace(
                front,
                high=member.low if member else high,
                cover_high=_half(member, ceiling),
                bare=_bared(front.bare, "high", framed and member is None and ceiling is not None),
            )
        if number < len(levels):
            floor, member = levels[number], members[number]
            front = replace(
                front,
                low=member.high if member else low,
                cover_low=_half(member, floor),
                bare=_bared(front.bare, "low", framed and member is None and floor is not None),
            )
        found.append(replace(space, low=low, high=high, floor=floor, ceiling=ceiling, front=front))
    return found


def _half(member: Member | None, behind: Upright | Level | None) -> float:
    """Half of what stands between two spaces, for each of them to cover."""
    if member is not None:
        wide = member.right - member.left if member.kind == "stile" else member.high - member.low
        return wide / 2
    if isinstance(behind, Upright):
        return (behind.right - behind.left) / 2
    return (behind.high - behind.low) / 2 if behind is not None else 0.0


def _bared(edges: frozenset[Edge], edge: Edge, bare: bool) -> frozenset[Edge]:
    return edges | {edge} if bare else edges - {edge}
