"""Inside the carcass: spaces divided into columns and rows, and the shelves in them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rodwright.geometry import TOUCH
from rodwright.problems import KeyPath, Problems
from rodwright.setout.bench import NOWHERE, Bench, Z
from rodwright.setout.carcass.box import (
    BOTH_FACES,
    Carcass,
    Level,
    Upright,
    blank,
    level_placement,
    upright_placement,
)
from rodwright.setout.carcass.shelf_rows import ShelfRows, lay_rows
from rodwright.setout.carcass.spaces import (
    Front,
    Member,
    Space,
    behind,
    columns_of,
    mid_rail,
    mid_stile,
    rows_of,
    whole_space,
)
from rodwright.setout.joints import joint_of, make_joint
from rodwright.setout.rod.division import divide, shelf_heights
from rodwright.setout.rod.main_lines import Rod
from rodwright.setout.stocks import find_stock
from rodwright.unit import FACE_FRAME, Fixing, JointKind, Part, Role, Stock, Surface
from rodwright.wishes.doors import DoorsSpec
from rodwright.wishes.drawers import DrawersSpec
from rodwright.wishes.joints import JointSpec
from rodwright.wishes.models import BetweenSpec, DividersSpec, ShelvesSpec, SpaceSpec, UnitSpec

RAIL_WIDTH = 70.0
"""Width of a rail between rows, front to rear, mm (common practice, no source)."""

GLUE_UP_TRIM = 6.0
"""Left on layers in length and width (mm), trimmed after glue-up (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Lipped:
    """A front edge to be lipped: the parts behind it, the uprights they stand between, and the
    opening they show in."""

    refs: tuple[str, ...]
    between: tuple[Upright, Upright]
    front: Front


@dataclass(frozen=True, slots=True)
class Doorway:
    """A space that doors are wished before, and their place in the spec."""

    space: Space
    wish: DoorsSpec
    where: KeyPath


@dataclass(frozen=True, slots=True)
class Chest:
    """A space that drawers are wished in, and their place in the spec."""

    space: Space
    wish: DrawersSpec
    where: KeyPath


@dataclass(frozen=True, slots=True)
class Interior:
    """Dividers, lipped edges and mid members, for face frame and lippings to follow; the rows of
    holes for adjustable shelves; and what stands in the front."""

    dividers: tuple[tuple[Upright, Space], ...]
    shelves: tuple[Lipped, ...]
    members: tuple[Member, ...]
    rows: tuple[ShelfRows, ...]
    doorways: tuple[Doorway, ...]
    chests: tuple[Chest, ...]
    loose: tuple[tuple[str, float], ...]
    """Refs of what adjustable shelves are made of, and the play (mm) each has."""

    @property
    def levels(self) -> tuple[tuple[str, ...], ...]:
        """Refs of everything level, layer by layer."""
        return tuple(shelf.refs for shelf in self.shelves)


@dataclass(frozen=True, slots=True)
class _End:
    """An end to be jointed to what carries it, and the place of its joint in the spec."""

    joint: JointSpec
    carrier: str
    ref: str
    where: KeyPath
    layers: tuple[str, ...] = ()
    stopped: float | None = None


@dataclass(frozen=True, slots=True)
class _Setter:
    """What every step inside needs."""

    spec: UnitSpec
    rod: Rod
    bench: Bench
    problems: Problems
    dividers: list[tuple[Upright, Space]]
    shelves: list[Lipped]
    members: list[Member]
    rows: list[ShelfRows]
    doorways: list[Doorway]
    chests: list[Chest]
    ends: list[_End]
    loose: list[tuple[str, float]]

    @property
    def mid_stiles(self) -> float | None:
        """Width of mid stiles, where they are wished."""
        return self.spec.face_frame.mid_stiles if self.spec.face_frame else None

    @property
    def mid_rails(self) -> float | None:
        """Width of mid rails, where they are wished."""
        return self.spec.face_frame.mid_rails if self.spec.face_frame else None


def set_out_interior(
    spec: UnitSpec, rod: Rod, carcass: Carcass, bench: Bench, problems: Problems
) -> Interior:
    """Lay dividers and shelves on the bench, jointed to what carries them."""
    setter = _Setter(spec, rod, bench, problems, [], [], [], [], [], [], [], [])
    _fill(setter, whole_space(rod, carcass), spec.interior, ("interior",))
    _join_ends(setter)
    return Interior(
        tuple(setter.dividers),
        tuple(setter.shelves),
        tuple(setter.members),
        tuple(setter.rows),
        tuple(setter.doorways),
        tuple(setter.chests),
        tuple(setter.loose),
    )


def _join_ends(setter: _Setter) -> None:
    """Joint every end to what carries it, once all of them lie there.

    What stands behind a divider decides whether screws can be driven through it, and joints on
    its two sides make room for each other.  So none is made before the others are known, and
    they are made in an order that a unit and its mirror image share: from the bottom up, from
    the front, the narrower first, then from the middle outwards.
    """
    middle = setter.rod.width / 2

    def order(end: _End) -> tuple[float, ...]:
        box = setter.bench.parts[end.ref].bounds()
        low, high, size = box.low, box.high, box.size
        figures = (low[2], high[2], low[1], high[1], size[0], abs(box.centre[0] - middle))
        return tuple(round(figure, 6) for figure in figures)

    for end in sorted(setter.ends, key=order):
        make_joint(
            setter.bench, end.joint, end.carrier, end.ref, setter.problems, end.where,
            layers=end.layers, stopped=end.stopped,
            covered=setter.rod.frame is not None, unit=setter.rod.unit,
        )  # fmt: skip


def _fill(setter: _Setter, space: Space, wish: SpaceSpec, where: KeyPath) -> None:
    if wish.doors is not None:
        space = _behind_doors(setter, space, wish.doors, (*where, "doors"))
    given = [
        name
        for name in ("columns", "rows", "shelves", "drawers")
        if getattr(wish, name) is not None
    ]
    if len(given) > 1:
        setter.problems.add(
            (*where, given[1]),
            f"a space has either {' or '.join(f'`{name}`' for name in given)}, not both",
            "Put one of them into the columns or rows of the other.",
        )
    elif wish.columns is not None:
        _columns(setter, space, wish, where)
    elif wish.rows is not None:
        _rows(setter, space, wish, where)
    elif wish.shelves is not None:
        _shelves(setter, space, wish.shelves, (*where, "shelves"))
        setter.bench.note_places((*where, "shelves"))
    elif wish.drawers is not None:
        place = (*where, "drawers")
        if space.closed or _is_framed_round(setter, space, place):
            setter.chests.append(Chest(space, wish.drawers, place))


def _behind_doors(setter: _Setter, space: Space, wish: DoorsSpec, where: KeyPath) -> Space:
    """Note doors before a space, and give the space that is left behind them."""
    inside = where[:-1]
    if any(inside[: len(other.where) - 1] == other.where[:-1] for other in setter.doorways):
        setter.problems.add(
            where,
            "doors stand before this space already, with all that is round it",
            "Take `doors` out, here or there.",
        )
        return space
    stock = _named_stock(setter, wish.stock, where)
    if stock is None or not _is_framed_round(setter, space, where):
        return space
    setter.doorways.append(Doorway(space, wish, where))
    thickness = wish.thickness if wish.thickness is not None else stock.thickness
    plates = None
    if wish.hinge.kind == "cup":
        rear = thickness if wish.hung == "inset" else 0.0
        plates = space.front.plane + rear + wish.hinge.plate
    if wish.hung == "overlay":
        return replace(space, covered=True, plates=plates)
    least = behind(wish, space.front.plane, thickness, setter.bench.sizes)
    return replace(space, setback=max(space.setback, least), closed=True, plates=plates)


def _is_framed_round(setter: _Setter, space: Space, where: KeyPath) -> bool:
    """Whether a front in a face frame has a member at every edge; what lacks one is noted."""
    # Whichever of two sides is named first, a unit and its mirror image are told the same.
    for edge in sorted(space.front.bare, key=("low", "high", "left", "right").index):
        key = "mid_stiles" if edge in ("left", "right") else "mid_rails"
        said = {"left": "left of", "right": "right of", "low": "below", "high": "above"}[edge]
        setter.problems.add(
            where,
            f"the face frame has no member {said} this front",
            f"Add `face_frame.{key}`, and `rails: both`.",
        )
        return False
    return True


def _front(setter: _Setter, space: Space, edge: str, setback: float) -> float:
    """Where the panels of a space end at the front: behind its door and their own lipping."""
    lines = setter.rod.lipping
    front = space.setback + setback + setter.rod.front(edge)
    if space.closed and setter.rod.frame is not None and lines and edge in lines.edges:
        front += lines.thickness
    return front


def _columns(setter: _Setter, space: Space, wish: SpaceSpec, where: KeyPath) -> None:
    assert wish.columns is not None
    rod, like = setter.rod, wish.dividers
    stock = _named_stock(setter, like.stock, (*where, "dividers"))
    high = _dividers_end(setter, space, like, (*where, "dividers"))
    if stock is None or high is None:
        return
    t = stock.thickness
    widths = divide(
        space.width, t, [column.width for column in wish.columns], (*where, "columns"),
        ("columns", "dividers"), setter.problems,
    )  # fmt: skip
    if not widths:
        return
    ceiling = space.ceiling if high == space.high else None
    joint = rod.joint(like.ends)
    below, above = (
        rod.reach(joint, level.high - level.low) if level and level.panel else 0.0
        for level in (space.floor, ceiling)
    )
    front = _front(setter, space, "dividers", like.setback)
    if rod.shelf_rear - front <= 0:
        setter.problems.add(
            (*where, "dividers", "setback"),
            f"set back by {setter.problems.length(front)}, dividers have no depth left",
            "Make the setback smaller.",
        )
        return
    dividers: list[Upright] = []
    members: list[Member | None] = []
    x = space.left.right
    for width in widths[:-1]:
        x += width
        part = Part(
            setter.bench.next_ref(Role.DIVIDER), "Divider", Role.DIVIDER, "Carcass",
            blank(high - space.low + below + above, rod.shelf_rear - front, stock),
            upright_placement(x + t, front, space.low - below),
        )  # fmt: skip
        setter.bench.add(part)
        upright = Upright(part.ref, x, x + t)
        for level in (space.floor, ceiling):
            if level is not None:
                kind = joint if level.panel else joint_of("butted")
                place = _ends_place(like.ends, (*where, "dividers"))
                setter.ends.append(_End(kind, level.ref, part.ref, place))
        setter.dividers.append((upright, replace(space, high=high, ceiling=ceiling)))
        dividers.append(upright)
        whole = high == space.high
        members.append(mid_stile(space, upright, setter.mid_stiles) if whole else None)
        x += t
    setter.members.extend(member for member in members if member)
    setter.bench.note_places((*where, "dividers"))
    inner = columns_of(space, dividers, members, high, rod.frame is not None)
    for number, (column, each) in enumerate(zip(wish.columns, inner, strict=True)):
        _fill(setter, each, column, (*where, "columns", number))


def _dividers_end(
    setter: _Setter, space: Space, like: DividersSpec, where: KeyPath
) -> float | None:
    """How high the dividers of a space reach (z); None where they can't stand, which is noted."""
    say = setter.problems.length
    if space.floor is None and space.low > setter.rod.floor:
        setter.problems.add(
            where[:-1],
            "there is nothing below that dividers could stand on",
            "Put a shelf or a rail between the rows (`between`).",
        )
        return None
    if like.height is None or like.height == space.height:
        return space.high
    if like.height > space.height:
        setter.problems.add(
            (*where, "height"),
            f"dividers {say(like.height)} high don't fit a clear height of {say(space.height)}",
            "Make them lower, or leave `height` out.",
        )
        return None
    return space.low + like.height


def _rows(setter: _Setter, space: Space, wish: SpaceSpec, where: KeyPath) -> None:
    assert wish.rows is not None
    like = wish.between
    t = setter.rod.thickness if like.kind != "nothing" else 0.0
    heights = divide(
        space.height, t, [row.height for row in wish.rows], (*where, "rows"),
        ("rows", "nothing" if like.kind == "nothing" else f"{like.kind}s" if like.kind == "rail"
         else "shelves"), setter.problems,
    )  # fmt: skip
    if not heights:
        return
    bounds: list[tuple[float, float]] = []
    levels: list[Level | None] = []
    members: list[Member | None] = []
    z = space.high
    for height in heights[:-1]:
        bounds.append((z - height, z))
        z -= height + t
        level = _between(setter, space, like, z, (*where, "between"))
        setter.bench.note_places((*where, "between"))
        levels.append(level)
        member = mid_rail(space, level, setter.mid_rails) if level else None
        if member:
            shelf = setter.shelves[-1]
            front = replace(shelf.front, high=member.low)
            setter.shelves[-1] = replace(shelf, front=front)
        members.append(member)
    bounds.append((space.low, z))
    setter.members.extend(member for member in members if member)
    inner = rows_of(space, bounds, levels, members, setter.rod.frame is not None)
    for number, (row, each) in enumerate(zip(wish.rows, inner, strict=True)):
        _fill(setter, each, row, (*where, "rows", number))


def _between(
    setter: _Setter, space: Space, like: BetweenSpec, z: float, where: KeyPath
) -> Level | None:
    """Lay what lies between two rows on the bench, its underside at ``z``."""
    rod, problems = setter.rod, setter.problems
    say = problems.length
    if like.kind == "nothing":
        return None
    if like.kind == "shelf":
        shelf = ShelvesSpec(count=1, setback=like.setback, ends=like.ends)
        if not _has_depth(setter, space, shelf, where):
            return None
        refs = _fixed_shelf(setter, space, shelf, z, rod.stock.name, where)
        return Level(refs[0], z, z + rod.thickness)
    front = _front(setter, space, "shelves", like.setback)
    width = like.width if like.width is not None else setter.bench.sizes.usual(RAIL_WIDTH)
    if front + width > rod.shelf_rear:
        problems.add(
            (*where, "width"),
            f"a rail {say(width)} wide doesn't fit a depth of {say(rod.shelf_rear - front)}",
            "Make it narrower, or put a shelf there.",
        )
        return None
    joint = rod.joint(like.ends)
    left, right = _reaches(setter, space, joint)
    rail = Part(
        setter.bench.next_ref(Role.CARCASS_RAIL), "Rail", Role.CARCASS_RAIL, "Carcass",
        blank(space.width + left + right, width, rod.stock),
        level_placement(space.left.right - left, front, z),
    )  # fmt: skip
    setter.bench.add(rail)
    for upright in (space.left, space.right):
        place = _ends_place(like.ends, where)
        setter.ends.append(_End(joint, upright.ref, rail.ref, place))
    setter.shelves.append(Lipped((rail.ref,), (space.left, space.right), space.front))
    return Level(rail.ref, z, z + rod.thickness, panel=False)


def _shelves(setter: _Setter, space: Space, wish: ShelvesSpec, where: KeyPath) -> None:
    problems = setter.problems
    say = problems.length
    stock = _named_stock(setter, wish.stock, where)
    if stock is None:
        return
    if wish.fixed and "holes" in wish.model_fields_set:
        problems.add(
            (*where, "holes"),
            "fixed shelves rest in no holes",
            "Write `fixed: false`, or leave out `holes`.",
        )
    heights = shelf_heights(space.height, stock.thickness * wish.layers, wish, where, problems)
    if not _has_depth(setter, space, wish, where):
        return
    if not wish.fixed and space.width <= 2 * wish.clearance:
        problems.add(
            (*where, "clearance"),
            f"gaps of {say(wish.clearance)} leave no length in a space {say(space.width)} wide",
            "Make the clearance smaller or the space wider.",
        )
    elif not wish.fixed and heights:
        _loose_shelves(setter, space, wish, heights, stock, where)
    elif wish.fixed:
        for height in heights:
            _fixed_shelf(setter, space, wish, space.low + height, stock.name, where)


def _has_depth(setter: _Setter, space: Space, wish: ShelvesSpec, where: KeyPath) -> bool:
    """Whether shelves keep some depth behind their front and their stopped housings."""
    say = setter.problems.length
    front = _front(setter, space, "shelves", wish.setback)
    depth = setter.rod.shelf_rear - front
    if depth <= 0:
        setter.problems.add(
            (*where, "setback"),
            f"set back by {say(front)}, shelves {say(setter.rod.shelf_rear)} deep have none left",
            "Make the setback smaller.",
        )
    elif wish.stopped >= depth:
        setter.problems.add(
            (*where, "stopped"),
            f"housings stopped {say(wish.stopped)} behind the front leave nothing of a shelf "
            f"{say(depth)} deep",
            "Make `stopped` smaller.",
        )
        return False
    return depth > 0


def _named_stock(setter: _Setter, name: str | None, where: KeyPath) -> Stock | None:
    """The stock of this name, or the carcass's where none is named."""
    if name is None:
        return setter.rod.stock
    return find_stock(setter.rod.stocks, name, (*where, "stock"), setter.problems)


def _layers(
    setter: _Setter,
    space: Space,
    wish: ShelvesSpec,
    z: float,
    stock_name: str,
    reaches: tuple[float, float],
    run: tuple[float, float],
) -> tuple[str, ...]:
    """Lay the layers of one shelf on the bench; it reaches so many mm into the left and the right
    upright, and from the first to the second y of ``run``."""
    rod, bench = setter.rod, setter.bench
    stock = rod.stocks[stock_name]
    front = run[0]
    length, width = space.width + sum(reaches), run[1] - front
    glued = wish.layers > 1
    body = blank(length, width, stock, trim=bench.sizes.usual(GLUE_UP_TRIM) if glued else 0.0)
    ref = bench.next_ref(Role.SHELF)
    refs: list[str] = []
    name: str
    outward: tuple[Surface, ...]
    for number in range(wish.layers):
        # Show faces go outwards: the lowest layer shows its reverse, inner ones nothing.
        name, outward = "Shelf", BOTH_FACES
        if glued and number == 0:
            name, outward = "Lower shelf layer", (Surface.REVERSE,)
        elif glued and number < wish.layers - 1:
            name, outward = "Inner shelf layer", ()
        elif glued:
            name, outward = "Upper shelf layer", (Surface.FACE,)
        layer = Part(
            ref + "abcd"[number] if glued else ref,
            name,
            Role.SHELF,
            "Shelves",
            replace(body, show_surfaces=outward),
            level_placement(space.left.right - reaches[0], front, z + number * stock.thickness),
            withdraw=Z if number else NOWHERE,
        )
        bench.add(layer)
        if refs:
            middle = bench.parts[refs[-1]].bounds().centre
            at = (middle[0], middle[1], z + number * stock.thickness)
            bench.join(JointKind.FACE_GLUED, refs[-1], layer.ref, at)
        refs.append(layer.ref)
    setter.shelves.append(Lipped(tuple(refs), (space.left, space.right), space.front))
    return tuple(refs)


def _fixed_shelf(
    setter: _Setter, space: Space, wish: ShelvesSpec, z: float, stock_name: str, where: KeyPath
) -> tuple[str, ...]:
    joint = setter.rod.joint(wish.ends)
    reaches = _reaches(setter, space, joint)
    run = _front(setter, space, "shelves", wish.setback), setter.rod.shelf_rear
    refs = _layers(setter, space, wish, z, stock_name, reaches, run)
    for upright in (space.left, space.right):
        place = _ends_place(wish.ends, where)
        stopped = wish.stopped or None
        setter.ends.append(_End(joint, upright.ref, refs[0], place, refs[1:], stopped))
    return refs


def _reaches(setter: _Setter, space: Space, joint: JointSpec) -> tuple[float, float]:
    """How far a part across a space reaches into its left and its right upright."""
    left, right = (
        setter.rod.reach(joint, upright.right - upright.left)
        for upright in (space.left, space.right)
    )
    return left, right


def _ends_place(ends: JointSpec | None, where: KeyPath) -> KeyPath:
    """Where in the spec the joint of some ends is wished."""
    return ("carcass", "corners") if ends is None else (*where, "ends")


def _loose_run(setter: _Setter, space: Space, wish: ShelvesSpec) -> tuple[float, float]:
    """Where adjustable shelves begin and end (y): they have play to a face frame in front, past
    which they are tilted, and to the back."""
    rod, front = setter.rod, _front(setter, space, "shelves", wish.setback)
    if rod.frame is not None:
        front = max(front, wish.clearance)
    return front, rod.shelf_rear - (wish.clearance if rod.back is not None else 0.0)


def keep_loose(loose: tuple[tuple[str, float], ...], bench: Bench) -> None:
    """Note the play that adjustable shelves keep to the back and to the face frame."""
    round_them = [
        (ref, part.bounds())
        for ref, part in bench.parts.items()
        if part.role in (Role.BACK, *FACE_FRAME)
    ]
    for ref, play in loose:
        box = bench.parts[ref].bounds()
        for other, bounds in round_them:
            if -box.penetration(bounds) <= play + TOUCH:
                bench.keep_apart(other, ref, play)


def _loose_shelves(
    setter: _Setter,
    space: Space,
    wish: ShelvesSpec,
    heights: tuple[float, ...],
    stock: Stock,
    where: KeyPath,
) -> None:
    """Lay adjustable shelves on pins; ``heights`` are where their undersides are wished."""
    bench = setter.bench
    uprights = space.left, space.right
    before = space.setback + wish.setback
    front, rear = _loose_run(setter, space, wish)
    across = (
        before + max(bench.parts[each.ref].bounds().low[1] for each in uprights),
        front,
        setter.rod.shelf_rear,
    )
    thickness = stock.thickness * wish.layers
    rows = lay_rows(space, heights, thickness, across, wish, where, setter.problems)
    if rows is None:
        return
    setter.rows.append(rows)
    thick = bench.sizes.say(wish.holes.diameter)
    pins = Fixing("shelf pin", 2, thick, "" if wish.holes.sleeves else thick)
    for z in rows.undersides:
        refs = _layers(setter, space, wish, z, stock.name, (-wish.clearance, -wish.clearance),
                       (front, rear))  # fmt: skip
        setter.loose.extend((ref, wish.clearance) for ref in refs)
        middle = bench.parts[refs[0]].bounds().centre[1]
        for upright, face in zip(uprights, (space.left.right, space.right.left), strict=True):
            bench.join(JointKind.RESTING, upright.ref, refs[0], (face, middle, z), pins)
            for ref in refs:
                bench.keep_apart(upright.ref, ref, wish.clearance)
