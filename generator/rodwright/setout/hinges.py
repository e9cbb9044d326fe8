"""Hinges: cups or butts, how many, where, and what is cut for them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.parts import Box, Fixing, Hole, JointKind, Part, Role, Surface, Swing, Vector
from rodwright.problems import KeyPath, Problems
from rodwright.setout.bench import FORWARD, LEFT, TOUCH, Bench, X, to_part
from rodwright.setout.carcass import Upright
from rodwright.setout.framed_panel import Outline
from rodwright.setout.spaces import Space
from rodwright.spec.doors import DoorsSpec, HingeSpec

MOST = ((900.0, 6.0, 2), (1600.0, 12.0, 3), (2000.0, 17.0, 4), (2400.0, 22.0, 5))
"""Greatest height (mm) and weight (kg) of a door on so many hinges; from the tables that
makers of hinges print for doors up to 600 mm wide (from memory)."""
ENDS = 100.0
"""From a door's ends to its outer hinges, mm (common practice, no source)."""
LEAST_FLOOR, LEAST_WALL = 1.5, 2.0
"""Wood left under a cup and beside it, mm (common practice, no source)."""
PLATE_PITCH, PLATE_HOLE, PLATE_DEPTH = 32.0, 5.0, 10.0
"""Distance, diameter and depth of a plate's two holes, mm (common practice, no source)."""
HALF_HINGE, HINGE_DEPTH = 32.0, 60.0
"""What a concealed hinge takes up above and below its middle, and into the unit beside its
upright, mm (from memory)."""
FLUSH = 0.5
"""An upright this near the edge of the opening needs no packers, mm (common practice)."""
OPENS = 110.0
"""How far hinges open unless said, degrees (common practice, no source)."""
SCREWS_PER_BUTT = 6

_CARRIERS = (Role.SIDE, Role.DIVIDER, Role.STILE, Role.LIPPING)
_LEVELS = (Role.SHELF, Role.TOP, Role.BOTTOM, Role.CARCASS_RAIL)


@dataclass(frozen=True, slots=True)
class Hung:
    """A door to be hung: its outline, the side of its hinges, refs, and the width of wood (mm)
    that a boring may have from either edge.

    ``near`` is the piece that carries the hinges, ``far`` the one at the other edge; ``refs``
    are all that turn.
    """

    outline: Outline
    hinges: Literal["left", "right"]
    near: str
    far: str
    refs: tuple[str, ...]
    clear: float


def hinge_count(height: float, weight: float) -> int | None:
    """How many hinges carry a door of this height (mm) and weight (kg); None: more than five."""
    for most_height, most_weight, count in MOST:
        if height <= most_height + TOUCH and weight <= most_weight:
            return count
    return None


def hang(
    wish: DoorsSpec, hung: Hung, space: Space, bench: Bench, problems: Problems, where: KeyPath
) -> None:
    """Cut door and carrier for the hinges, join them, and note how the door turns."""
    where = (*where, "hinge")
    count = _count(wish.hinge, hung, bench, problems, where)
    if count is None:
        return
    hinge = _Hinge(wish, hung, space, bench, problems, where)
    made = hinge.cups(count) if wish.hinge.kind == "cup" else hinge.butts(count)
    if made is None:
        return
    carrier, axis, at, fixings = made
    bench.join(JointKind.HINGED, carrier, hung.near, at, *fixings)
    angle = wish.hinge.opens if wish.hinge.opens is not None else OPENS
    bench.motions.append(Swing(hung.refs, axis, -angle if hung.hinges == "left" else angle))


def _count(
    hinge: HingeSpec, hung: Hung, bench: Bench, problems: Problems, where: KeyPath
) -> int | None:
    if hinge.count is not None:
        return hinge.count
    weight = sum(_weight(bench.parts[ref]) for ref in hung.refs)
    count = hinge_count(hung.outline.height, weight)
    if count is None:
        problems.add(
            (*where, "count"),
            f"a door {problems.length(hung.outline.height)} high of {weight:.1f} kg is more than "
            f"five hinges are known to carry",
            "Make it smaller or lighter, or give `count` after asking the hinges' maker.",
        )
    return count


def _weight(part: Part) -> float:
    """Of a blank, kg: what is cut out of it is on the safe side."""
    length, width, thickness = part.blank.size
    return length * width * thickness * part.blank.stock.density * 1e-9


Made = tuple[str, tuple[float, float], Vector, tuple[Fixing, ...]]
"""Carrier, axis (x, y), middle of the joint, and fixings."""


@dataclass(frozen=True, slots=True)
class _Hinge:
    """Everything that hanging one door needs."""

    wish: DoorsSpec
    hung: Hung
    space: Space
    bench: Bench
    problems: Problems
    where: KeyPath

    @property
    def inwards(self) -> float:
        """1 where x grows from the hinges into the door, else -1."""
        return 1.0 if self.hung.hinges == "left" else -1.0

    @property
    def edge(self) -> float:
        """The x of the door's edge at its hinges."""
        outline = self.hung.outline
        return outline.left if self.hung.hinges == "left" else outline.right

    @property
    def surround(self) -> float:
        """The x of what bounds the opening at the hinges."""
        front = self.space.front
        return front.left if self.hung.hinges == "left" else front.right

    @property
    def upright(self) -> Upright:
        """The side or divider behind the hinges."""
        return self.space.left if self.hung.hinges == "left" else self.space.right

    @property
    def face(self) -> float:
        """The x of the upright's inner face."""
        upright = self.upright
        return upright.right if self.hung.hinges == "left" else upright.left

    # --- cups ---------------------------------------------------------------------------

    def cups(self, count: int) -> Made | None:
        """Bore the door for cups and drill the upright for plates.

        A concealed hinge moves the door on links.  What it sweeps is taken as if it turned
        about its front corner, which keeps an overlay door within what it covers and an
        inset one within its opening, as such hinges do (common practice, no source).
        """
        wish, outline, say = self.wish.hinge, self.hung.outline, self.problems.length
        plate = self._plate()
        if plate is None or not self._can_be_bored():
            return None
        heights = self._heights(count, plate)
        if heights is None:
            return None
        inward = self.inwards
        x = self.edge + inward * (wish.edge + wish.cup / 2)
        part = self.bench.parts[self.upright.ref]
        depth = min(PLATE_DEPTH, 0.45 * part.blank.thickness)
        for z in heights:
            self.bench.drill(
                self.hung.near, (x, outline.rear, z), FORWARD, wish.cup, wish.cup_depth
            )
            for half in (-PLATE_PITCH / 2, PLATE_PITCH / 2):
                into = LEFT if inward > 0 else X
                at = (self.face, plate, z + half)
                self.bench.drill(self.upright.ref, at, into, PLATE_HOLE, depth)
        cover = inward * (self.surround - self.edge)
        where = f"covering {say(cover)}" if cover > 0 else "for inset doors"
        fixings = [
            Fixing(
                f"concealed hinge, {say(wish.cup)} cup", count,
                f"{where}, rim {say(wish.edge)} from the edge",
                f"boring {say(wish.cup)}, {say(wish.cup_depth)} deep",
            ),
            Fixing("hinge plate", count, f"holes {say(PLATE_PITCH)} apart"),
            Fixing(
                "plate screw", 2 * count, f"for {say(PLATE_HOLE)} holes",
                f"{say(PLATE_HOLE)}, {say(depth)} deep",
            ),
        ]  # fmt: skip
        packing = inward * (self.surround - self.face)
        if packing > FLUSH:
            fixings.append(Fixing("packer under a hinge plate", count, f"{say(packing)} thick"))
        at = (self.face, plate, (outline.low + outline.high) / 2)
        return self.upright.ref, (self.edge, outline.front), at, tuple(fixings)

    def _plate(self) -> float | None:
        """The y of a plate's holes; None where the upright has no room for them."""
        bumper = self.wish.bumper if self.wish.hung == "overlay" else 0.0
        y = self.hung.outline.rear + bumper + self.wish.hinge.plate
        bounds = self.bench.parts[self.upright.ref].bounds()
        say = self.problems.length
        if not bounds.low[1] + PLATE_HOLE < y < bounds.high[1] - PLATE_HOLE:
            self.problems.add(
                (*self.where, "plate"),
                f"plate holes {say(y)} behind the carcass's front miss the upright "
                f"{self.upright.ref}, which reaches from {say(bounds.low[1])} to "
                f"{say(bounds.high[1])}",
                "Change `plate`, or let the upright come further forward.",
            )
            return None
        return y

    def _can_be_bored(self) -> bool:
        """Whether the door takes its cups."""
        wish, say, add = self.wish.hinge, self.problems.length, self.problems.add
        before = len(self.problems)
        outline = self.hung.outline
        thickness = outline.rear - outline.front
        if wish.cup_depth > thickness - LEAST_FLOOR + TOUCH:
            add(
                (*self.where, "cup_depth"),
                f"borings {say(wish.cup_depth)} deep leave less than {say(LEAST_FLOOR)} of a door "
                f"{say(thickness)} thick",
                "Take shallower cups, butt hinges, or a thicker door.",
            )
        if wish.edge < LEAST_WALL - TOUCH:
            add(
                (*self.where, "edge"),
                f"borings {say(wish.edge)} from the door's edge break out",
                f"Leave at least {say(LEAST_WALL)}.",
            )
        beside = self.hung.clear - wish.edge - wish.cup
        if beside < LEAST_WALL - TOUCH:
            what = "the panel's groove" if self.wish.kind == "framed" else "the door's other edge"
            short = "meet" if beside <= 0 else f"come within {say(beside)} of"
            add(
                (*self.where, "cup"),
                f"borings of {say(wish.cup)}, {say(wish.edge)} from the edge, {short} {what}",
                "Take wider stiles or smaller cups, or bring the borings nearer to the edge.",
            )
        return len(self.problems) == before

    # --- butts --------------------------------------------------------------------------

    def butts(self, count: int) -> Made | None:
        """Let the leaves into the door's edge and what faces it.

        The pin stands in front of the faces by half a knuckle, in the middle of the gap.
        Each leaf is let in by what half of the gap doesn't take.
        """
        wish, outline, say = self.wish.hinge, self.hung.outline, self.problems.length
        if self.wish.hung != "inset":
            self.problems.add(
                (*self.where, "kind"),
                "butt hinges are for inset doors",
                "Write `hung: inset`, or `kind: cup`.",
            )
            return None
        thickness = outline.rear - outline.front
        if wish.leaf > thickness - LEAST_WALL + TOUCH:
            self.problems.add(
                (*self.where, "leaf"),
                f"leaves that reach {say(wish.leaf)} onto the edge leave less than "
                f"{say(LEAST_WALL)} of a door {say(thickness)} thick",
                "Take narrower leaves, or a thicker door.",
            )
            return None
        heights = self._heights(count, None)
        if heights is None:
            return None
        gap = self.inwards * (self.edge - self.surround)
        depth = wish.leaf_thickness - gap / 2
        carriers = self._facing(heights)
        if carriers is None:
            return None
        if depth > TOUCH:
            for z in heights:
                self._let_in((self.hung.near,), self.edge, self.inwards * depth, z)
                self._let_in(carriers, self.surround, -self.inwards * depth, z)
        name = f"butt hinge, {say(wish.length)}"
        let_in = f"each leaf let in {say(max(0.0, depth))}"
        fixings = (
            Fixing(name, count, f"leaf {say(wish.leaf)}, knuckle {say(wish.knuckle)}", let_in),
            Fixing("countersunk screw", SCREWS_PER_BUTT * count, "3 x 16 mm", "pilot 2 mm"),
        )
        x = (self.edge + self.surround) / 2
        at = (self.surround, outline.front + wish.leaf / 2, (outline.low + outline.high) / 2)
        return carriers[0], (x, outline.front - wish.knuckle / 2), at, fixings

    def _leaf(self, x: float, reach: float, z: float) -> Box:
        """What is cut for a leaf, from the face at ``x`` so far along x."""
        wish, front = self.wish.hinge, self.hung.outline.front
        low, high = sorted((x, x + reach))
        half = wish.length / 2
        return Box((low, front, z - half), (high, front + wish.leaf, z + half))

    def _facing(self, heights: list[float]) -> tuple[str, ...] | None:
        """Refs of the pieces that carry the leaves; None where they don't cover them."""
        x, away = self.surround, -self.inwards * TOUCH * 10
        found: dict[str, None] = {}
        for z in heights:
            leaf = self._leaf(x, away, z)
            there = {
                ref: shared
                for ref, part in self.bench.parts.items()
                if part.role in _CARRIERS and (shared := _shared(part.bounds(), leaf)) is not None
            }
            area = sum(box.size[1] * box.size[2] for box in there.values())
            if area < leaf.size[1] * leaf.size[2] - TOUCH:
                say = self.problems.length
                self.problems.add(
                    (*self.where, "kind"),
                    f"beside the door, {say(z)} up, there is no wood for a hinge's leaf of "
                    f"{say(leaf.size[1])} x {say(leaf.size[2])}",
                    "Bring the upright forward, put a mid stile before it, or take cup hinges.",
                )
                return None
            found |= dict.fromkeys(there)
        return tuple(found)

    def _let_in(self, refs: tuple[str, ...], x: float, reach: float, z: float) -> None:
        for ref in refs:
            box = _shared(self.bench.parts[ref].bounds(), self._leaf(x, reach, z))
            if box is not None:
                self.bench.mortise(ref, box, X if reach > 0 else LEFT)

    # --- heights ------------------------------------------------------------------------

    def _heights(self, count: int, plate: float | None) -> list[float] | None:
        """Heights (z) of the hinges' middles, evenly spaced, moved clear of what is in the way."""
        wish, outline, say = self.wish.hinge, self.hung.outline, self.problems.length
        half = wish.length / 2 if plate is None else wish.cup / 2
        apart = wish.length if plate is None else 2 * HALF_HINGE
        ends = wish.ends if wish.ends is not None else min(ENDS, outline.height / 6)
        ends = ends if wish.ends is not None else max(ends, half + LEAST_WALL)
        run = outline.height - 2 * ends
        if ends < half + LEAST_WALL - TOUCH or run < (count - 1) * apart - TOUCH:
            self.problems.add(
                (*self.where, "ends" if wish.ends is not None else "count"),
                f"{count} hinges, {say(ends)} from the ends, don't go on a door "
                f"{say(outline.height)} high",
                "Take fewer or smaller hinges, or a higher door.",
            )
            return None
        heights = [outline.low + ends + run * number / (count - 1) for number in range(count)]
        if plate is None:
            return heights
        step = max(0.0, min(run / (count - 1) / 2 - HALF_HINGE, 2 * ENDS))
        found = []
        for z in heights:
            place = self._nearest_free(z, step, plate)
            if place is None:
                self.problems.add(
                    (*self.where, "ends"),
                    f"a hinge {say(z - outline.low)} up the door has no room beside the upright "
                    f"{self.upright.ref}: a shelf or holes are in the way",
                    "Move the shelf, or change `ends` or `count`.",
                )
                return None
            found.append(place)
        return found

    def _nearest_free(self, z: float, step: float, plate: float) -> float | None:
        outline = self.hung.outline
        least = self.wish.hinge.cup / 2 + LEAST_WALL
        for away in range(int(step) + 1):
            for place in (z + away, z - away):
                inside = outline.low + least <= place + TOUCH and place <= outline.high - least
                if (inside or away == 0) and self._free(place, plate):
                    return place
        return None

    def _free(self, z: float, plate: float) -> bool:
        """Whether nothing level stands beside a hinge, and its plate's holes meet no others."""
        rear = self.hung.outline.rear
        low, high = sorted((self.face, self.face + self.inwards * HINGE_DEPTH))
        room = Box((low, rear, z - HALF_HINGE), (high, plate + PLATE_PITCH / 2, z + HALF_HINGE))
        if any(
            part.role in _LEVELS and _shared(part.bounds(), room) is not None
            for part in self.bench.parts.values()
        ):
            return False
        part = self.bench.parts[self.upright.ref]
        return not any(
            _meets(part, (self.face, plate, z + half), hole)
            for half in (-PLATE_PITCH / 2, PLATE_PITCH / 2)
            for hole in self.bench.workings_of(self.upright.ref)
            if isinstance(hole, Hole)
        )


def _meets(part: Part, at: Vector, hole: Hole) -> bool:
    """Whether a plate's hole at a point of a panel's face comes too near another hole there, or
    one from the other face."""
    if hole.surface not in (Surface.FACE, Surface.REVERSE):
        return False
    x, y, z = to_part(part.placement, Box(at, at)).low
    across = (hole.position[0] - x) ** 2 + (hole.position[1] - y) ** 2
    reach = (hole.diameter + PLATE_HOLE) / 2 + LEAST_FLOOR
    if across >= reach * reach:
        return False
    thickness = part.blank.thickness
    depth = min(PLATE_DEPTH, 0.45 * thickness)
    same = (z > thickness / 2) == hole.surface.at_high
    if same:
        alike = across < TOUCH and hole.diameter == PLATE_HOLE and hole.depth == depth
        return not alike
    return hole.depth is None or hole.depth + depth > thickness - LEAST_FLOOR


def _shared(first: Box, second: Box) -> Box | None:
    """What two boxes share; None where it has no volume."""
    low = [max(a, b) for a, b in zip(first.low, second.low, strict=True)]
    high = [min(a, b) for a, b in zip(first.high, second.high, strict=True)]
    if any(b - a < TOUCH for a, b in zip(low, high, strict=True)):
        return None
    return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))
