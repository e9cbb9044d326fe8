"""Shelves, fixed and adjustable, in one layer or several."""

from __future__ import annotations

from dataclasses import dataclass, replace

from rodwright.geometry import TOUCH
from rodwright.setout.carcass.box import BOTH_FACES, blank, level_placement
from rodwright.setout.carcass.division import shelf_heights
from rodwright.setout.carcass.ends import ends_place, reaches
from rodwright.setout.carcass.shelf_rows import lay_rows
from rodwright.setout.carcass.spaces import panel_front
from rodwright.setout.inside import Space
from rodwright.setout.notes import End, FrontEdge
from rodwright.setout.setting import Setting
from rodwright.trade.gaps import GLUE_UP_TRIM
from rodwright.unit import FACE_FRAME, Fixing, JointKind, Part, Role, Stock, Surface
from rodwright.unit.directions import NOWHERE, Z
from rodwright.wishes.models import ShelvesSpec


def lay_shelves(setting: Setting, space: Space, wish: ShelvesSpec) -> None:
    """Lay the shelves of a space on the bench; what can't be made is noted."""
    say = setting.say
    stock = setting.at("stock").stock(wish.stock)
    if stock is None:
        return
    if wish.fixed and "holes" in wish.model_fields_set:
        setting.at("holes").refuse(
            "fixed shelves rest in no holes", "Write `fixed: false`, or leave out `holes`."
        )
    heights = shelf_heights(setting, space.height, stock.thickness * wish.layers, wish)
    if not has_depth(setting, space, wish):
        return
    if not wish.fixed and space.width <= 2 * wish.clearance:
        setting.at("clearance").refuse(
            f"gaps of {say(wish.clearance)} leave no length in a space {say(space.width)} wide",
            "Make the clearance smaller or the space wider.",
        )
    elif not wish.fixed and heights:
        _lay_loose(setting, space, wish, heights, stock)
    elif wish.fixed:
        for height in heights:
            lay_fixed(setting, space, wish, space.low + height, stock)


def has_depth(setting: Setting, space: Space, wish: ShelvesSpec) -> bool:
    """Whether shelves keep some depth behind their front and their stopped housings."""
    rod, say = setting.rod, setting.say
    front = panel_front(rod, space, "shelves", wish.setback)
    depth = rod.inside.shelf_rear - front
    if depth <= 0:
        setting.at("setback").refuse(
            f"set back by {say(front)}, shelves {say(rod.inside.shelf_rear)} deep have none left",
            "Make the setback smaller.",
        )
    elif wish.stopped >= depth:
        setting.at("stopped").refuse(
            f"housings stopped {say(wish.stopped)} behind the front leave nothing of a shelf "
            f"{say(depth)} deep",
            "Make `stopped` smaller.",
        )
        return False
    return depth > 0


def lay_fixed(
    setting: Setting, space: Space, wish: ShelvesSpec, z: float, stock: Stock
) -> tuple[str, ...]:
    """Lay a fixed shelf with its underside at ``z``, its ends to be jointed; the refs of its
    layers from the bottom up."""
    rod = setting.rod
    joint = rod.joinery.joint(wish.ends)
    run = panel_front(rod, space, "shelves", wish.setback), rod.inside.shelf_rear
    refs = _lay(setting, space, wish, stock, _Lie(z, reaches(setting, space, joint), run))
    place = ends_place(setting, wish.ends)
    if wish.stopped:
        joint = joint.model_copy(update={"stopped": wish.stopped})
    for upright in (space.left, space.right):
        setting.notes.ends.append(End(joint, upright.ref, refs[0], place, refs[1:]))
    return refs


@dataclass(frozen=True, slots=True)
class _Lie:
    """How one shelf lies, mm: the z of its underside, how far it reaches into the uprights at its
    left and its right, and the y of its front and its rear."""

    low: float
    reaches: tuple[float, float]
    run: tuple[float, float]


def _lay(
    setting: Setting, space: Space, wish: ShelvesSpec, stock: Stock, lie: _Lie
) -> tuple[str, ...]:
    """Lay the layers of one shelf on the bench, from the bottom up."""
    bench = setting.bench
    front = lie.run[0]
    length, width = space.width + sum(lie.reaches), lie.run[1] - front
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
        z = lie.low + number * stock.thickness
        layer = Part(
            ref + "abcd"[number] if glued else ref,
            name,
            Role.SHELF,
            "Shelves",
            replace(body, show_surfaces=outward),
            level_placement(space.left.right - lie.reaches[0], front, z),
            withdraw=Z if number else NOWHERE,
        )
        bench.add(layer)
        if refs:
            middle = bench.bounds(refs[-1]).centre
            bench.join(JointKind.FACE_GLUED, refs[-1], layer.ref, (middle[0], middle[1], z))
        refs.append(layer.ref)
    setting.notes.edges.append(FrontEdge(tuple(refs), (space.left, space.right), space.front))
    return tuple(refs)


def _lay_loose(
    setting: Setting, space: Space, wish: ShelvesSpec, heights: tuple[float, ...], stock: Stock
) -> None:
    """Lay adjustable shelves on pins; ``heights`` are where their undersides are wished."""
    bench = setting.bench
    uprights = space.left, space.right
    before = space.setback + wish.setback
    front, rear = _loose_run(setting, space, wish)
    across = (
        before + max(bench.bounds(each.ref).low[1] for each in uprights),
        front,
        setting.rod.inside.shelf_rear,
    )
    rows = lay_rows(setting, space, wish, heights, stock.thickness * wish.layers, across)
    if rows is None:
        return
    setting.notes.rows.append(rows)
    thick = bench.sizes.say(wish.holes.diameter)
    drilled = "" if wish.holes.sleeves else thick
    pins = Fixing("shelf pin", 2, thick, drilled, diameter=wish.holes.diameter)
    short = (-wish.clearance, -wish.clearance)
    for z in rows.undersides:
        refs = _lay(setting, space, wish, stock, _Lie(z, short, (front, rear)))
        setting.notes.loose.extend((ref, wish.clearance) for ref in refs)
        middle = bench.bounds(refs[0]).centre[1]
        for upright, face in zip(uprights, (space.left.right, space.right.left), strict=True):
            bench.join(JointKind.RESTING, upright.ref, refs[0], (face, middle, z), pins)
            for ref in refs:
                bench.keep_apart(upright.ref, ref, wish.clearance)


def _loose_run(setting: Setting, space: Space, wish: ShelvesSpec) -> tuple[float, float]:
    """Where adjustable shelves begin and end (y): they have play to a face frame in front, past
    which they are tilted, and to the back."""
    rod = setting.rod
    front = panel_front(rod, space, "shelves", wish.setback)
    if rod.front.frame is not None:
        front = max(front, wish.clearance)
    return front, rod.inside.shelf_rear - (wish.clearance if rod.back is not None else 0.0)


def keep_loose(setting: Setting) -> None:
    """Note the play that adjustable shelves keep to the back and to the face frame."""
    bench = setting.bench
    round_them = [(part.ref, part.bounds()) for part in bench.parts_of(Role.BACK, *FACE_FRAME)]
    for ref, play in setting.notes.loose:
        box = bench.bounds(ref)
        for other, bounds in round_them:
            if -box.penetration(bounds) <= play + TOUCH:
                bench.keep_apart(other, ref, play)
