"""Inside the carcass: spaces divided into columns and rows, and the shelves in them."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rodwright.parts import (
    Box,
    Fixing,
    Hole,
    JointKind,
    Part,
    Role,
    Surface,
)
from rodwright.problems import KeyPath, Problems
from rodwright.setout.bench import NOWHERE, Bench, Z, to_part
from rodwright.setout.carcass import (
    BOTH_FACES,
    Carcass,
    Level,
    Upright,
    blank,
    house,
    level_placement,
    upright_placement,
)
from rodwright.setout.division import divide, shelf_heights
from rodwright.setout.rod import Rod
from rodwright.setout.stocks import find_stock
from rodwright.spec.models import ShelvesSpec, SpaceSpec, UnitSpec

GLUE_UP_TRIM = 6.0
"""Left on layers in length and width (mm), trimmed after glue-up (common practice, no source)."""
PIN_DIAMETER = 5.0
"""Shelf pins and their holes, mm (common practice, no source)."""
PIN_SETBACK = 37.0
"""From a loose shelf's front and rear edge to its pins, mm (common practice, no source)."""
PIN_DEPTH = 10.0
"""Depth of a pin's hole, mm, where the upright is thick enough (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Space:
    """A clear space: its bounds in mm (x and z, unit frame) and what stands around it."""

    left: Upright
    right: Upright
    low: float
    high: float
    floor: Level | None
    ceiling: Level | None

    @property
    def width(self) -> float:
        """Clear width."""
        return self.right.left - self.left.right

    @property
    def height(self) -> float:
        """Clear height."""
        return self.high - self.low


@dataclass(frozen=True, slots=True)
class Lipped:
    """A front edge to be lipped: the parts behind it, and the space it shows in (None: all)."""

    refs: tuple[str, ...]
    edge: str
    between: tuple[Upright, Upright]


@dataclass(frozen=True, slots=True)
class Interior:
    """Dividers and lipped edges, for the face frame and the lippings to follow."""

    dividers: tuple[tuple[Upright, Space], ...]
    shelves: tuple[Lipped, ...]


@dataclass(frozen=True, slots=True)
class _Setter:
    """What every step inside needs."""

    spec: UnitSpec
    rod: Rod
    bench: Bench
    problems: Problems
    dividers: list[tuple[Upright, Space]]
    shelves: list[Lipped]


def set_out_interior(
    spec: UnitSpec, rod: Rod, carcass: Carcass, bench: Bench, problems: Problems
) -> Interior:
    """Lay dividers and shelves on the bench, jointed to what carries them."""
    setter = _Setter(spec, rod, bench, problems, [], [])
    whole = Space(carcass.left, carcass.right, rod.floor, rod.ceiling, carcass.bottom, carcass.top)
    _fill(setter, whole, spec.interior, ("interior",))
    return Interior(tuple(setter.dividers), tuple(setter.shelves))


def _fill(setter: _Setter, space: Space, wish: SpaceSpec, where: KeyPath) -> None:
    given = [name for name in ("columns", "rows", "shelves") if getattr(wish, name) is not None]
    if len(given) > 1:
        setter.problems.add(
            (*where, given[1]),
            f"a space has either {' or '.join(f'`{name}`' for name in given)}, not both",
            "Put one of them into the columns or rows of the other.",
        )
    elif wish.columns is not None:
        _columns(setter, space, wish, (*where, "columns"))
    elif wish.rows is not None:
        _rows(setter, space, wish, (*where, "rows"))
    elif wish.shelves is not None:
        _shelves(setter, space, wish.shelves, (*where, "shelves"))


def _columns(setter: _Setter, space: Space, wish: SpaceSpec, where: KeyPath) -> None:
    assert wish.columns is not None
    rod, t = setter.rod, setter.rod.thickness
    widths = divide(
        space.width, t, [column.width for column in wish.columns], where,
        ("columns", "dividers"), setter.problems,
    )  # fmt: skip
    if not widths:
        return
    uprights, x = [space.left], space.left.right
    for width in widths[:-1]:
        x += width
        below = rod.housing if space.floor else 0.0
        above = rod.housing if space.ceiling else 0.0
        front = rod.front("dividers")
        part = Part(
            setter.bench.next_ref(Role.DIVIDER), "Divider", Role.DIVIDER, "Carcass",
            blank(space.height + below + above, rod.shelf_rear - front, rod.stock),
            upright_placement(x + t, front, space.low - below),
        )  # fmt: skip
        setter.bench.add(part)
        upright = Upright(part.ref, x, x + t)
        for level in (space.floor, space.ceiling):
            if level is not None:
                house(setter.bench, rod.housing, level.ref, part.ref)
        setter.dividers.append((upright, space))
        uprights.append(upright)
        x += t
    uprights.append(space.right)
    for number, column in enumerate(wish.columns):
        inner = Space(
            uprights[number], uprights[number + 1], space.low, space.high,
            space.floor, space.ceiling,
        )  # fmt: skip
        _fill(setter, inner, column, (*where, number))


def _rows(setter: _Setter, space: Space, wish: SpaceSpec, where: KeyPath) -> None:
    assert wish.rows is not None
    t = setter.rod.thickness
    heights = divide(
        space.height, t, [row.height for row in wish.rows], where,
        ("rows", "shelves"), setter.problems,
    )  # fmt: skip
    if not heights:
        return
    levels: list[Level | None] = [space.ceiling]
    edges, z = [space.high], space.high
    plain = ShelvesSpec(count=1)
    for height in heights[:-1]:
        z -= height
        refs = _fixed_shelf(setter, space, plain, z - t, setter.rod.stock.name)
        levels.append(Level(refs[0], z - t, z))
        edges.append(z - t)
        z -= t
    levels.append(space.floor)
    edges.append(space.low)
    for number, row in enumerate(wish.rows):
        ceiling, floor = levels[number], levels[number + 1]
        inner = Space(
            space.left, space.right, floor.high if floor else space.low, edges[number],
            floor, ceiling,
        )  # fmt: skip
        _fill(setter, inner, row, (*where, number))


def _shelves(setter: _Setter, space: Space, wish: ShelvesSpec, where: KeyPath) -> None:
    rod, problems = setter.rod, setter.problems
    say = problems.length
    stock = (
        find_stock(rod.stocks, wish.stock, (*where, "stock"), problems) if wish.stock else rod.stock
    )
    if stock is None:
        return
    heights = shelf_heights(space.height, stock.thickness * wish.layers, wish, where, problems)
    depth = rod.shelf_rear - wish.setback - rod.front("shelves")
    if depth <= 0:
        problems.add(
            (*where, "setback"),
            f"set back by {say(wish.setback)}, shelves {say(rod.shelf_rear)} deep have none left",
            "Make the setback smaller.",
        )
    elif wish.stopped >= depth:
        problems.add(
            (*where, "stopped"),
            f"housings stopped {say(wish.stopped)} behind the front leave nothing of a shelf "
            f"{say(depth)} deep",
            "Make `stopped` smaller.",
        )
    elif not wish.fixed and space.width <= 2 * wish.clearance:
        problems.add(
            (*where, "clearance"),
            f"gaps of {say(wish.clearance)} leave no length in a space {say(space.width)} wide",
            "Make the clearance smaller or the space wider.",
        )
    else:
        for height in heights:
            if wish.fixed:
                _fixed_shelf(setter, space, wish, space.low + height, stock.name)
            else:
                _loose_shelf(setter, space, wish, space.low + height, stock.name)


def _layers(
    setter: _Setter, space: Space, wish: ShelvesSpec, z: float, stock_name: str, reach: float
) -> tuple[str, ...]:
    """Lay the layers of one shelf on the bench; it reaches ``reach`` mm into each upright."""
    rod, bench = setter.rod, setter.bench
    stock = rod.stocks[stock_name]
    front = wish.setback + rod.front("shelves")
    length, width = space.width + 2 * reach, rod.shelf_rear - front
    glued = wish.layers > 1
    body = blank(length, width, stock, trim=GLUE_UP_TRIM if glued else 0.0)
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
            level_placement(space.left.right - reach, front, z + number * stock.thickness),
            withdraw=Z if number else NOWHERE,
        )
        bench.add(layer)
        if refs:
            middle = bench.parts[refs[-1]].bounds().centre
            at = (middle[0], middle[1], z + number * stock.thickness)
            bench.join(JointKind.FACE_GLUED, refs[-1], layer.ref, at)
        refs.append(layer.ref)
    setter.shelves.append(Lipped(tuple(refs), "shelves", (space.left, space.right)))
    return tuple(refs)


def _fixed_shelf(
    setter: _Setter, space: Space, wish: ShelvesSpec, z: float, stock_name: str
) -> tuple[str, ...]:
    rod, bench = setter.rod, setter.bench
    ends = wish.ends or setter.spec.carcass.corners
    reach = rod.housing_for_shelves if ends == "housed" else 0.0
    refs = _layers(setter, space, wish, z, stock_name, reach)
    for upright in (space.left, space.right):
        house(bench, reach, upright.ref, *refs, stopped=wish.stopped)
    return refs


def _loose_shelf(
    setter: _Setter, space: Space, wish: ShelvesSpec, z: float, stock_name: str
) -> None:
    bench = setter.bench
    refs = _layers(setter, space, wish, z, stock_name, -wish.clearance)
    bounds = bench.parts[refs[0]].bounds()
    setback = min(PIN_SETBACK, bounds.size[1] / 4)
    for upright in (space.left, space.right):
        part = bench.parts[upright.ref]
        depth = min(PIN_DEPTH, 0.4 * part.blank.thickness)
        face = upright.right if upright is space.left else upright.left
        for y in (bounds.low[1] + setback, bounds.high[1] - setback):
            point = (face, y, z - PIN_DIAMETER / 2)
            local = to_part(part.placement, Box(point, point)).low
            surface = Surface.REVERSE if local[2] < part.blank.thickness / 2 else Surface.FACE
            bench.work(upright.ref, Hole(surface, (local[0], local[1]), PIN_DIAMETER, depth))
        at = (face, bounds.centre[1], z)
        pins = Fixing(f"shelf pin, {PIN_DIAMETER:g} mm", 2)
        bench.join(JointKind.RESTING, upright.ref, refs[0], at, pins)
        for ref in refs:
            bench.keep_apart(upright.ref, ref, wish.clearance)
