"""Doors: slab or frame and panel, inset or overlay, single or in pairs."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.geometry import TOUCH
from rodwright.setout import looks
from rodwright.setout.doors.framed_panel import set_out_framed
from rodwright.setout.doors.hinge_places import Around, Hung, surroundings
from rodwright.setout.doors.hinges import hang
from rodwright.setout.doors.panel import Outline
from rodwright.setout.fixings import bumpers
from rodwright.setout.handles import handle_fixings
from rodwright.setout.inside import Front, Space
from rodwright.setout.rod.slope_lines import door_plane
from rodwright.setout.setting import Setting
from rodwright.trade.hinges import HINGE_REACH
from rodwright.unit import Blank, Part, Placement, Role, Stock, Surface, Swing
from rodwright.unit.directions import FORWARD, LEFT, Y, Z
from rodwright.wishes.doors import DoorsSpec, HandleSpec

HANDLE_EDGE = 40.0
"""From the edge of a slab to its handle, mm (common practice, no source)."""


def set_out_doors(setting: Setting) -> None:
    """Lay the doors of every space on the bench, hung on what stands beside them.

    Everything that carries or surrounds them, and what stands behind them, lies there already.
    """
    around = surroundings(setting)
    for each in setting.notes.doors:
        with setting.bench.wished_at(each.where):
            _lay_doors(setting.moved_to(each.where), each.wish, each.space, around)


def _lay_doors(setting: Setting, wish: DoorsSpec, space: Space, around: Around) -> None:
    """Lay the doors of a space on the bench, each a group of its own.

    Slabs that a slope will cut are hung and handled by what it leaves of their edges.  What can't
    be made is noted.
    """
    rod, bench, slope = setting.rod, setting.bench, setting.slope
    body = _body(setting, wish)
    whole = _whole(setting, wish, space)
    if body is None or whole is None:
        return
    stock, thickness = body
    plane = max(space.front.plane, space.setback) if space.closed else space.front.plane
    for hinges, left, right in _leaves(setting, wish, space.front, whole):
        rear = plane + (thickness if wish.hung == "inset" else -wish.bumper)
        outline = Outline(left, right, whole.low, whole.high, rear - thickness, rear)
        group = f"Door {bench.count_moving(Swing) + 1}"
        if wish.kind == "slab":
            ref = _slab(setting, wish, outline, group, stock)
            cut = door_plane(slope, rod, rear, wish.gap) if slope is not None else None
            hung = Hung(outline, hinges, ref, ref, (ref,), outline.width, cut)
        else:
            made = set_out_framed(setting, wish, outline, group, stock)
            if made is None:
                return
            stiles = made.left, made.right
            near, far = stiles if hinges == "left" else stiles[::-1]
            clear = wish.frame.stile_width - wish.frame.groove
            hung = Hung(outline, hinges, near, far, made.refs, clear)
        hang(setting.at("hinge"), wish, hung, space, around)
        if wish.hung == "overlay" and wish.bumper:
            bench.buy(bumpers(wish.bumper, hung.far, setting.unit))
        if wish.handle is not None:
            _handle(setting.at("handle"), wish.handle, wish, hung)


@dataclass(frozen=True, slots=True)
class _Whole:
    """What the doors of a space cover together: x and z, mm, unit frame."""

    left: float
    right: float
    low: float
    high: float


def _body(setting: Setting, wish: DoorsSpec) -> tuple[Stock, float] | None:
    """Stock and thickness of a door."""
    stock = setting.at("stock").stock(wish.stock)
    if stock is None:
        return None
    thickness = wish.thickness if wish.thickness is not None else stock.thickness
    thinner = stock.kind == "sheet" and thickness < stock.thickness - TOUCH
    if thickness > stock.thickness + TOUCH or thinner:
        say = setting.say
        setting.at("thickness").refuse(
            f"doors {say(thickness)} thick can't come out of `{stock.name}`, which is "
            f"{say(stock.thickness)}",
            "Name other stock, or leave `thickness` out.",
        )
        return None
    return stock, thickness


def _whole(setting: Setting, wish: DoorsSpec, space: Space) -> _Whole | None:
    """What the doors cover: within the opening less gaps, or over what is round it.

    Where nothing stands between two rows, the doors of each leave half of the gap.
    """
    rod, front, say = setting.rod, space.front, setting.say
    covers = front.cover_left, front.cover_right, front.cover_low, front.cover_high
    if wish.hung == "inset":
        reaches = [-wish.gap] * 4
        if space.floor is None and space.low > rod.inside.floor + TOUCH:
            reaches[2] /= 2
        if space.ceiling is None and space.high < rod.inside.ceiling - TOUCH:
            reaches[3] /= 2
    else:
        most = [cover - wish.gap / 2 for cover in covers]
        reach = HINGE_REACH + wish.hinge.edge
        if wish.overlay is None:
            most = [min(each, reach) for each in most]
        elif wish.overlay > reach + TOUCH:
            setting.at("overlay").refuse(
                f"hinges with the rim of their cup {say(wish.hinge.edge)} from the edge let a door "
                f"cover {say(reach)} at most, not {say(wish.overlay)}",
                "Make it smaller, or `hinge.edge` larger.",
            )
            return None
        reaches = [
            reach if wish.overlay is None or cover == 0 else wish.overlay
            for cover, reach in zip(covers, most, strict=True)
        ]
        over = max(reach - allowed for reach, allowed in zip(reaches, most, strict=True))
        if over > TOUCH:
            least = min(reach for cover, reach in zip(covers, most, strict=True) if cover)
            setting.at("overlay").refuse(
                f"an overlay of {say(max(reaches))} is more than the {say(max(0.0, least))} that "
                f"what is round the doors and a gap of {say(wish.gap)} leave to cover",
                "Make it smaller, or leave it out.",
            )
            return None
    whole = _Whole(
        front.left - reaches[0],
        front.right + reaches[1],
        front.low - reaches[2],
        min(front.high + reaches[3], rod.front.head),
    )
    width, height = whole.right - whole.left, whole.high - whole.low
    if width - (wish.count - 1) * wish.gap <= 0 or height <= 0:
        setting.at("gap").refuse(
            f"gaps of {say(wish.gap)} leave no door in an opening {say(front.width)} x "
            f"{say(front.height)}",
            "Make the gaps smaller or the space larger.",
        )
        return None
    return whole


def _leaves(
    setting: Setting, wish: DoorsSpec, front: Front, whole: _Whole
) -> list[tuple[Literal["left", "right"], float, float]]:
    """Side of the hinges, left and right of each door."""
    say = setting.say
    left, right = whole.left, whole.right
    width = (right - left - (wish.count - 1) * wish.gap) / wish.count
    if wish.width is not None:
        together = wish.count * wish.width + (wish.count - 1) * wish.gap
        spare = right - left - together
        what = "a door" if wish.count == 1 else "a pair of doors"
        short = front.width - together if wish.hung == "overlay" else spare
        if spare < -TOUCH:
            setting.at("width").refuse(
                f"{what} {say(together)} wide doesn't go where there is room for "
                f"{say(right - left)}: the opening is {say(front.width)} wide",
                "Make the width smaller, or leave it out.",
            )
            return []
        if short > TOUCH:
            setting.at("width").refuse(
                f"{what} {say(together)} wide leaves {say(short)} more open than the gaps in an "
                f"opening of {say(front.width)}",
                "Make the width larger, or leave it out.",
            )
            return []
        left, right, width = left + spare / 2, right - spare / 2, wish.width
    if wish.count == 1:
        return [(wish.hinges, left, right)]
    return [("left", left, left + width), ("right", right - width, right)]


def _slab(setting: Setting, wish: DoorsSpec, outline: Outline, group: str, stock: Stock) -> str:
    """Lay a slab on the bench, its length upright, its face forward."""
    bench = setting.bench
    blank = Blank(
        outline.height,
        outline.width,
        outline.rear - outline.front,
        stock,
        stock.lengthwise,
        (Surface.FACE, Surface.REVERSE),
    )
    placement = Placement((outline.right, outline.rear, outline.low), Z, LEFT)
    part = Part(
        bench.next_ref(Role.DOOR), "Door", Role.DOOR, group, blank, placement, withdraw=FORWARD
    )
    setting.notes.slabs[part.ref] = wish
    return bench.add(part).ref


def _handle(setting: Setting, handle: HandleSpec, wish: DoorsSpec, hung: Hung) -> None:
    """Drill for a handle, and put it on the list."""
    bench, say = setting.bench, setting.say
    outline = hung.outline
    usual = wish.frame.stile_width / 2 if wish.kind == "framed" else bench.sizes.usual(HANDLE_EDGE)
    edge = handle.edge if handle.edge is not None else min(usual, outline.width / 2)
    if not handle.hole / 2 < edge < hung.clear - handle.hole / 2:
        setting.at("edge").refuse(
            f"{say(edge)} from the edge, a hole of {say(handle.hole)} isn't within the "
            f"{say(hung.clear)} that a door or stile gives it",
            "Move the handle.",
        )
        return
    high = hung.top(outline.right if hung.hinges == "left" else outline.left) - outline.low
    height = handle.height if handle.height is not None else high / 2
    reach = (handle.spacing + handle.hole) / 2
    if not reach < height < outline.height - reach:
        setting.at("height").refuse(
            f"holes {say(height)} up, {say(handle.spacing)} apart, don't lie on a door "
            f"{say(outline.height)} high",
            "Move the handle, or take a shorter one.",
        )
        return
    x = outline.right - edge if hung.hinges == "left" else outline.left + edge
    z = outline.low + height
    places = [z] if handle.spacing == 0 else [z - handle.spacing / 2, z + handle.spacing / 2]
    for at in places:
        bench.drill(hung.far, (x, outline.front, at), Y, handle.hole, None, "handle")
    over = tuple((x, at) for at in places)
    shapes = looks.handle(handle.name, over, outline.front, upright=True)
    bench.show(hung.far, *shapes, ware=handle.material or looks.ware_of(handle.name))
    through = bench.parts[hung.far].blank.thickness
    for fixing in handle_fixings(bench.sizes, handle, [through] * len(places), hung.far):
        bench.buy(fixing)
