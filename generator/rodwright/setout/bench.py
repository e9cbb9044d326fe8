"""The bench: parts and joints while they are being set out.

The set-out thinks in the unit frame: what is cut into a part is told the bench there
(:mod:`rodwright.setout.cuts`).
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from types import MappingProxyType

from rodwright.geometry import Box, Vector
from rodwright.problems import KeyPath
from rodwright.setout import cuts
from rodwright.setout.equal_pieces import comparable
from rodwright.setout.recut import Recut, Workpiece
from rodwright.trade.sizes import METRIC, TradeSizes
from rodwright.unit import (
    TRAITS,
    Clearance,
    Edging,
    Fitting,
    Fixing,
    Joint,
    JointKind,
    Motion,
    Part,
    Role,
    Shape,
    Ware,
    Working,
)


class Bench:
    """What has been set out so far.  Only its own methods change it."""

    def __init__(self, sizes: TradeSizes = METRIC) -> None:
        """``sizes`` are those that the unit's maker buys in."""
        self._sizes = sizes
        self._parts: dict[str, Part] = {}
        self._shown_parts = MappingProxyType(self._parts)
        self._workings: dict[str, dict[Working, None]] = {}
        self._joints: list[Joint] = []
        self._clearances: list[Clearance] = []
        self._motions: list[Motion] = []
        self._fixings: list[Fixing] = []
        self._shown: list[Fitting] = []
        self._places: dict[str, KeyPath] = {}
        self._wished: list[KeyPath] = []
        self._counts: dict[Role, int] = {}

    @property
    def sizes(self) -> TradeSizes:
        """What is sold where the unit is made."""
        return self._sizes

    @property
    def parts(self) -> Mapping[str, Part]:
        """Every part by its ref, in the order laid down, without its workings."""
        return self._shown_parts

    @property
    def joints(self) -> tuple[Joint, ...]:
        """Where parts meet, in the order noted."""
        return tuple(self._joints)

    @property
    def clearances(self) -> tuple[Clearance, ...]:
        """What must not come closer than it is let."""
        return tuple(self._clearances)

    @property
    def motions(self) -> tuple[Motion, ...]:
        """What moves, each with the parts that move together."""
        return tuple(self._motions)

    @property
    def fixings(self) -> tuple[Fixing, ...]:
        """What is bought that holds no joint."""
        return tuple(self._fixings)

    def bounds(self, ref: str) -> Box:
        """Where a part stands: the box round it, unit frame."""
        return self._parts[ref].bounds()

    def contact(self, first: str, second: str) -> Box | None:
        """Where two parts touch or overlap, unit frame; None where they don't."""
        return self.bounds(first).contact(self.bounds(second))

    def parts_of(self, *roles: Role) -> list[Part]:
        """The parts of some roles, in the order laid down."""
        return [part for part in self._parts.values() if part.role in roles]

    def refs_of(self, *roles: Role) -> list[str]:
        """Refs of the parts of some roles, in the order laid down."""
        return [part.ref for part in self.parts_of(*roles)]

    def resting(self) -> set[str]:
        """Refs of the parts that only rest on others."""
        return {each.second for each in self._joints if each.kind is JointKind.RESTING}

    def count_moving(self, way: type[Motion]) -> int:
        """How many groups of parts move in one way."""
        return sum(isinstance(motion, way) for motion in self._motions)

    def next_ref(self, role: Role) -> str:
        """A fresh ref: the role's mark and a number."""
        self._counts[role] = self._counts.get(role, 0) + 1
        return f"{TRAITS[role].mark}{self._counts[role]}"

    def add(self, part: Part) -> Part:
        """Lay a part on the bench.

        Raises:
            RuntimeError: nobody said where in the spec it was wished (:meth:`wished_at`).
        """
        if not self._wished:
            raise RuntimeError(f"{part.name.lower()} {part.ref} is laid at no place of the spec")
        self._places[part.ref] = self._wished[-1]
        self._parts[part.ref] = part
        self._workings[part.ref] = dict.fromkeys(part.workings)
        return part

    def work(self, ref: str, working: Working) -> None:
        """Cut a working into a part; the same one twice is cut once."""
        self._workings[ref].setdefault(working)

    def rebate_along(self, ref: str, box: Box, use: str = "") -> None:
        """Rebate ``box`` (unit frame) along an edge of a part."""
        self.work(ref, cuts.rebate_along(self.parts[ref], box, use))

    def groove_along(self, ref: str, box: Box, use: str = "") -> None:
        """Plough ``box`` (unit frame) along the length of a part, in its face or reverse."""
        self.work(ref, cuts.groove_along(self.parts[ref], box, use))

    def notch(self, ref: str, box: Box, use: str = "") -> None:
        """Notch ``box`` (unit frame) out of a part, right through its thickness."""
        self.work(ref, cuts.notch(self.parts[ref], box, use))

    def drill(
        self,
        ref: str,
        at: Vector,
        into: Vector,
        diameter: float,
        depth: float | None,
        use: str = "",
    ) -> None:
        """Drill a hole at a point (unit frame) of a part's surface, in a direction square to it."""
        self.work(ref, cuts.hole(self.parts[ref], at, into, diameter, depth, use))

    def mortise(
        self, ref: str, box: Box, into: Vector, round_ends: bool = False, use: str = ""
    ) -> None:
        """Cut a pocket (unit frame) into a part from the surface that ``into`` goes in at."""
        self.work(ref, cuts.mortise(self.parts[ref], box, into, round_ends, use))

    def workings_of(self, ref: str) -> tuple[Working, ...]:
        """What has been cut into a part so far."""
        return tuple(self._workings[ref])

    @contextmanager
    def wished_at(self, where: KeyPath) -> Iterator[None]:
        """What is laid on the bench meanwhile was wished at this place of the spec; of places one
        within another the innermost counts."""
        self._wished.append(where)
        try:
            yield
        finally:
            self._wished.pop()

    def place_of(self, ref: str) -> KeyPath:
        """Where in the spec a part was wished."""
        return self._places[ref]

    def workpiece(self, ref: str) -> Workpiece:
        """A part with what is cut into it so far."""
        return Workpiece(self._parts[ref], tuple(self._workings[ref]))

    def workpieces(self) -> dict[str, Workpiece]:
        """Every part as it is so far, by its ref, in the order laid down."""
        return {ref: self.workpiece(ref) for ref in self._parts}

    def recut(self, left: Recut) -> None:
        """Put what a cut leaves in place of what lay here.

        What it took away goes with its clearances, and out of what it moved together with.
        """
        gone = left.gone
        for ref in gone:
            del self._parts[ref], self._workings[ref], self._places[ref]
        for ref, piece in left.kept.items():
            self._parts[ref] = piece.part
            self._workings[ref] = dict.fromkeys(piece.workings)
        self._joints = list(left.joints)
        self._clearances = [
            each for each in self._clearances if each.first not in gone and each.second not in gone
        ]
        moving = [
            replace(motion, refs=tuple(ref for ref in motion.refs if ref not in gone))
            for motion in self._motions
        ]
        self._motions = [motion for motion in moving if motion.refs]

    def join(self, kind: JointKind, first: str, second: str, at: Vector, *fixings: Fixing) -> None:
        """Note that two parts meet."""
        self._joints.append(Joint(kind, first, second, at, fixings))

    def meet(self, kind: JointKind, first: str, second: str, *fixings: Fixing) -> bool:
        """Join two parts in the middle of where they touch; whether they do."""
        patch = self.contact(first, second)
        if patch is not None:
            self.join(kind, first, second, patch.centre, *fixings)
        return patch is not None

    def move_together(self, motion: Motion) -> None:
        """Note that parts move as one."""
        self._motions.append(motion)

    def buy(self, fixing: Fixing) -> None:
        """Note something bought that holds no joint; the like of it is counted up."""
        for number, other in enumerate(self._fixings):
            if replace(other, count=fixing.count) == fixing:
                self._fixings[number] = replace(other, count=other.count + fixing.count)
                return
        self._fixings.append(fixing)

    def keep_apart(self, first: str, second: str, least: float) -> None:
        """Note that two parts must not come closer than ``least`` mm."""
        self._clearances.append(Clearance(first, second, least))

    def mark_lipped(self, ref: str, edge: str) -> None:
        """Note that an edge of a part carries a lipping."""
        part = self.parts[ref]
        if edge not in part.lipped:
            self._parts[ref] = replace(part, lipped=(*part.lipped, edge))

    def run_grain(self, refs: Iterable[str], run: str) -> None:
        """Note the fronts that are cut in their order from one piece, and what that is called."""
        for ref in refs:
            self._parts[ref] = replace(self.parts[ref], grain_run=run)

    def edge(self, ref: str, edged: tuple[Edging, ...]) -> None:
        """Note the strips glued on a part's edges, in place of any noted before."""
        self._parts[ref] = replace(self.parts[ref], edged=edged)

    def show(
        self,
        ref: str,
        *shapes: Shape,
        inner: bool = False,
        fine: bool = False,
        ware: Ware = "steel",
    ) -> None:
        """Note how a bought-in piece on a part looks, unit frame, with all closed."""
        self._shown.append(Fitting(ref, shapes, inner, fine, ware))

    def fittings(self, parts: Iterable[Part]) -> tuple[Fitting, ...]:
        """How bought-in pieces look, each in the frame of its part among the finished ones."""
        placed = {part.ref: part.placement for part in parts}
        return tuple(
            each.moved(None, placed[each.ref]) for each in self._shown if each.ref in placed
        )

    def finished(self) -> tuple[Part, ...]:
        """Every part with its workings, in the order laid down.

        Sizes are rounded to a millionth of a millimetre and workings put in a fixed order,
        so that pieces which are the same compare equal.
        """
        return tuple(comparable(part, self._workings[ref]) for ref, part in self.parts.items())
