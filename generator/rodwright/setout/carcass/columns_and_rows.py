"""Spaces divided: columns with dividers between them, rows with shelves or rails between."""

from __future__ import annotations

from dataclasses import replace

from rodwright.problems import KeyPath
from rodwright.setout.carcass.box import blank, level_placement, upright_placement
from rodwright.setout.carcass.division import divide
from rodwright.setout.carcass.ends import ends_place, reaches
from rodwright.setout.carcass.shelves import has_depth, lay_fixed
from rodwright.setout.carcass.spaces import columns_of, mid_rail, mid_stile, panel_front, rows_of
from rodwright.setout.inside import Level, Member, Space, Upright
from rodwright.setout.notes import End, FrontEdge
from rodwright.setout.rod.reach import joint_of
from rodwright.setout.setting import Setting
from rodwright.unit import Part, Role
from rodwright.wishes.models import BetweenSpec, DividersSpec, ShelvesSpec, SpaceSpec

RAIL_WIDTH = 70.0
"""Width of a rail between rows, front to rear, mm (common practice, no source)."""


def lay_columns(setting: Setting, space: Space, wish: SpaceSpec) -> list[Space]:
    """Lay the dividers between the columns of a space, and give the columns; none where they
    can't be made, which is noted."""
    assert wish.columns is not None
    rod, bench, notes, like = setting.rod, setting.bench, setting.notes, wish.dividers
    here = setting.at("dividers")
    stock = here.at("stock").stock(like.stock)
    high = _dividers_end(setting, space, like)
    if stock is None or high is None:
        return []
    t = stock.thickness
    widths = divide(
        setting.at("columns"),
        space.width,
        t,
        [column.width for column in wish.columns],
        ("columns", "dividers"),
    )
    if not widths:
        return []
    ceiling = space.ceiling if high == space.high else None
    joint = rod.joinery.joint(like.ends)
    below, above = (
        rod.joinery.reach(joint, level.high - level.low) if level and level.panel else 0.0
        for level in (space.floor, ceiling)
    )
    front = panel_front(rod, space, "dividers", like.setback)
    if rod.inside.shelf_rear - front <= 0:
        here.at("setback").refuse(
            f"set back by {setting.say(front)}, dividers have no depth left",
            "Make the setback smaller.",
        )
        return []
    dividers: list[Upright] = []
    members: list[Member | None] = []
    x = space.left.right
    for width in widths[:-1]:
        x += width
        part = Part(
            bench.next_ref(Role.DIVIDER),
            "Divider",
            Role.DIVIDER,
            "Carcass",
            blank(high - space.low + below + above, rod.inside.shelf_rear - front, stock),
            upright_placement(x + t, front, space.low - below),
        )
        with bench.wished_at(_wished(setting, wish, "dividers", "columns")):
            bench.add(part)
        upright = Upright(part.ref, x, x + t)
        for level in (space.floor, ceiling):
            if level is not None:
                kind = joint if level.panel else joint_of("butted")
                notes.ends.append(End(kind, level.ref, part.ref, ends_place(here, like.ends)))
        notes.dividers.append((upright, replace(space, high=high, ceiling=ceiling)))
        dividers.append(upright)
        whole = high == space.high
        members.append(mid_stile(space, upright, _mid_stiles(setting)) if whole else None)
        x += t
    notes.members.extend(member for member in members if member)
    return columns_of(space, dividers, members, high, rod.front.frame is not None)


def _mid_stiles(setting: Setting) -> float | None:
    """Width of mid stiles, where they are wished."""
    return setting.spec.face_frame.mid_stiles if setting.spec.face_frame else None


def _mid_rails(setting: Setting) -> float | None:
    """Width of mid rails, where they are wished."""
    return setting.spec.face_frame.mid_rails if setting.spec.face_frame else None


def _dividers_end(setting: Setting, space: Space, like: DividersSpec) -> float | None:
    """How high the dividers of a space reach (z); None where they can't stand, which is noted."""
    say = setting.say
    if space.floor is None and space.low > setting.rod.inside.floor:
        setting.refuse(
            "there is nothing below that dividers could stand on",
            "Put a shelf or a rail between the rows (`between`).",
        )
        return None
    if like.height is None or like.height == space.height:
        return space.high
    if like.height > space.height:
        setting.at("dividers", "height").refuse(
            f"dividers {say(like.height)} high don't fit a clear height of {say(space.height)}",
            "Make them lower, or leave `height` out.",
        )
        return None
    return space.low + like.height


def lay_between_rows(setting: Setting, space: Space, wish: SpaceSpec) -> list[Space]:
    """Lay what stands between the rows of a space, and give the rows from the top down; none where
    they can't be made, which is noted."""
    assert wish.rows is not None
    like, notes = wish.between, setting.notes
    between = setting.at("between")
    t = setting.rod.thickness if like.kind != "nothing" else 0.0
    called = {"nothing": "nothing", "rail": "rails", "shelf": "shelves"}[like.kind]
    heights = divide(
        setting.at("rows"), space.height, t, [row.height for row in wish.rows], ("rows", called)
    )
    if not heights:
        return []
    bounds: list[tuple[float, float]] = []
    levels: list[Level | None] = []
    members: list[Member | None] = []
    z = space.high
    for height in heights[:-1]:
        bounds.append((z - height, z))
        z -= height + t
        with setting.bench.wished_at(_wished(setting, wish, "between", "rows")):
            level = _lay_between(between, space, like, z)
        levels.append(level)
        member = mid_rail(space, level, _mid_rails(setting)) if level else None
        if member:
            edge = notes.edges[-1]
            notes.edges[-1] = replace(edge, front=replace(edge.front, high=member.low))
        members.append(member)
    bounds.append((space.low, z))
    notes.members.extend(member for member in members if member)
    return rows_of(space, bounds, levels, members, setting.rod.front.frame is not None)


def _wished(setting: Setting, wish: SpaceSpec, own: str, because_of: str) -> KeyPath:
    """Where in the spec what divides a space was wished: at its ``own`` key, or where nothing is
    said of it, at the spaces that it is there for."""
    return setting.at(own if own in wish.model_fields_set else because_of).where


def _lay_between(setting: Setting, space: Space, like: BetweenSpec, z: float) -> Level | None:
    """Lay what lies between two rows on the bench, its underside at ``z``."""
    rod, bench, notes, say = setting.rod, setting.bench, setting.notes, setting.say
    if like.kind == "nothing":
        return None
    if like.kind == "shelf":
        shelf = ShelvesSpec(count=1, setback=like.setback, ends=like.ends)
        if not has_depth(setting, space, shelf):
            return None
        refs = lay_fixed(setting, space, shelf, z, rod.stock)
        return Level(refs[0], z, z + rod.thickness)
    front = panel_front(rod, space, "shelves", like.setback)
    width = like.width if like.width is not None else bench.sizes.usual(RAIL_WIDTH)
    if front + width > rod.inside.shelf_rear:
        setting.at("width").refuse(
            f"a rail {say(width)} wide doesn't fit a depth of {say(rod.inside.shelf_rear - front)}",
            "Make it narrower, or put a shelf there.",
        )
        return None
    joint = rod.joinery.joint(like.ends)
    left, right = reaches(setting, space, joint)
    rail = Part(
        bench.next_ref(Role.CARCASS_RAIL),
        "Rail",
        Role.CARCASS_RAIL,
        "Carcass",
        blank(space.width + left + right, width, rod.stock),
        level_placement(space.left.right - left, front, z),
    )
    bench.add(rail)
    place = ends_place(setting, like.ends)
    notes.ends.extend(
        End(joint, upright.ref, rail.ref, place) for upright in (space.left, space.right)
    )
    notes.edges.append(FrontEdge((rail.ref,), (space.left, space.right), space.front))
    return Level(rail.ref, z, z + rod.thickness, panel=False)
