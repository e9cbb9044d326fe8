"""Levels and the dividers between them, worked out together.

What ends on a divider goes down it to the level that it stands on.  A divider that stands on a
level which gives way carries the level above it only as far as that comes down on it: the forces
between them follow from both going down alike, and none is less than nothing where no joint holds
them to each other.  Dividers and sides count as unyielding along their length.

N and mm; x in the unit frame, in beams from the level's left end.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np

from rodwright.strength.beams import (
    Beam,
    BeamNotHeldError,
    Bent,
    Point,
    Segment,
    Support,
    bend,
)
from rodwright.strength.contacts import CLOSE, Contact, balanced
from rodwright.strength.held_edges import edges_holding
from rodwright.strength.level_loads import LevelLoads, weight_of
from rodwright.strength.level_parts import Level, joints_of
from rodwright.strength.level_sections import Section
from rodwright.strength.seats import PULLS, Lying, Seat
from rodwright.unit import Role, Unit
from rodwright.unit.facts import STANDS

_NEAR = 15.0
"""A divider stands over a support that is this near its middle, mm."""
_ROUNDS = 12
"""How often the forces of dividers are mended, where levels lift off what stands below them."""
_TRIAL = 100.0
"""The force (N) whose effect is tried."""

bent_once = lru_cache(maxsize=8192)(bend)
"""Equal beams are bent once."""


@dataclass(frozen=True, slots=True)
class Laid:
    """A level: how it lies, its sections, what it carries but dividers, and by how much its joints
    have softened (1: not)."""

    level: Level
    lying: Lying
    sections: tuple[Section, ...]
    loads: LevelLoads
    softened: float = 1.0


@dataclass(frozen=True, slots=True)
class Carried:
    """A level under all it carries: the forces of what stands on it and of the dividers below it
    (by ref, N), and its bent beam, None where it doesn't bend from seat to seat."""

    laid: Laid
    standing: Mapping[str, float]
    posts: Mapping[str, float]
    bent: Bent | None


class Carcass:
    """All levels of a unit, on its sides and dividers.

    A divider that is held up at its front or its back by what stands beside it brings the level
    it stands on half of what it carries, and one that is held at both nothing.
    """

    def __init__(self, unit: Unit, laid: Sequence[Laid]) -> None:
        self._unit = unit
        joints = joints_of(unit)
        self._share = {
            part.ref: 1 - len(edges_holding(unit, part.ref, joints)) / 2
            for part in unit.parts
            if part.role is Role.DIVIDER
        }
        self._laid = {each.level.ref: each for each in laid}
        # From the top down, as loads go.
        self._order = sorted(laid, key=lambda each: -each.level.box.low[2])
        self._feet = {standing.ref: each for each in laid for standing in each.lying.standing}
        self._firm: dict[str, bool] = {}
        self._contacts = tuple(self._find_contacts())
        self._beams = {each.level.ref: self._beam(each) for each in laid}

    def carried(self) -> tuple[Carried, ...]:
        """Every level under what it carries, in the order in which they were given."""
        found = {each.laid.level.ref: each for each in self._under(self._forces())}
        return tuple(found[ref] for ref in self._laid)

    def _is_firm(self, ref: str) -> bool:
        """Whether an upright stands on something that doesn't give way."""
        if ref not in self._firm:
            self._firm[ref] = False  # what stands on itself by some detour gives way
            self._firm[ref] = self._find_firm(ref)
        return self._firm[ref]

    def _find_firm(self, ref: str) -> bool:
        part = self._unit.part(ref)
        foot = self._feet.get(ref)
        if self._share.get(ref) in (None, 0.0):
            return True
        if foot is None:
            return part.bounds().low[2] <= STANDS and not self._unit.hung
        if foot.lying.grounded or len({line.edge for line in foot.lying.lines}) > 1:
            return True
        middle = part.bounds().centre[0]
        return any(
            abs(seat.at - middle) < _NEAR and (not seat.on or self._carries(seat.on))
            for seat in foot.lying.seats
        )

    def _carries(self, ref: str) -> bool:
        return self._unit.part(ref).role is not Role.DIVIDER or self._is_firm(ref)

    def is_post(self, seat: Seat) -> bool:
        """Whether a seat lies on a divider that may give way."""
        return seat.how == "under" and bool(seat.on) and not self._carries(seat.on)

    def _find_contacts(self) -> list[Contact]:
        return [
            Contact(each.level.ref, seat.on, seat.at, self._holds(seat))
            for each in self._order
            for seat in each.lying.seats
            if self.is_post(seat)
        ]

    def _holds(self, seat: Seat) -> bool:
        """Whether a divider is held at its head and its foot, so that it can pull."""
        foot = self._feet.get(seat.on)
        if foot is None:
            return True  # It hangs from what is above it.
        joints = [each.joint for each in foot.lying.standing if each.ref == seat.on]
        return seat.joint is not None and all(j.kind in PULLS for j in (seat.joint, *joints))

    def _beam(self, laid: Laid) -> Beam | None:
        """A level on what doesn't give way, without what dividers bring; None where it doesn't
        bend from seat to seat."""
        lie = laid.lying
        if lie.grounded or len({line.edge for line in lie.lines}) > 1:
            return None
        low, length = laid.level.box.low[0], round(laid.level.box.size[0], 6)

        def along(at: float) -> float:
            return min(max(round(at - low, 6), 0.0), length)

        supports = tuple(
            Support(
                along(seat.at),
                seat.stiffness.value / laid.softened if seat.stiffness else 0.0,
                lifts=seat.lifts,
            )
            for seat in lie.seats
            if not self.is_post(seat)
        )
        if not supports:
            return None
        stops = [along(piece.stop) for piece in laid.sections[:-1]] + [length]
        segments = tuple(
            Segment(stop, piece.bending, piece.shear)
            for stop, piece in zip(stops, laid.sections, strict=True)
        )
        return Beam(length, segments, supports, laid.loads.stretches, laid.loads.points)

    def _forces(self) -> list[float]:
        """The force (N) in each contact, pushing the level up."""
        count = len(self._contacts)
        forces = [0.0] * count
        if not count:
            return forces
        for _ in range(_ROUNDS):
            gaps = self._gaps(forces)
            if all(
                abs(gap) < CLOSE or (force == 0.0 and gap < 0 and not each.pulls)
                for gap, force, each in zip(gaps, forces, self._contacts, strict=True)
            ):
                break
            columns = []
            for number in range(count):
                tried = list(forces)
                tried[number] += _TRIAL
                columns.append((np.array(self._gaps(tried)) - gaps) / _TRIAL)
            matrix = np.array(columns).T
            forces = balanced(matrix, matrix @ np.array(forces) - gaps, self._contacts)
        return forces

    def _gaps(self, forces: Sequence[float]) -> list[float]:
        """How far each level has gone down past the divider below it, mm."""
        found = {each.laid.level.ref: each for each in self._under(forces)}
        down = {ref: self._settled(found, ref) for ref in {c.divider for c in self._contacts}}
        return [
            self._depth(found, contact.level, contact.at) - down[contact.divider]
            for contact in self._contacts
        ]

    def _settled(self, found: Mapping[str, Carried], divider: str) -> float:
        """How far a divider has gone down, mm."""
        foot = self._feet.get(divider)
        if foot is None or self._carries(divider):
            return 0.0
        middle = self._unit.part(divider).bounds().centre[0]
        return self._share[divider] * self._depth(found, foot.level.ref, middle)

    def _depth(self, found: Mapping[str, Carried], level: str, at: float) -> float:
        """How far a level has gone down at an x, with what its ends lie on, mm."""
        laid, bent = found[level].laid, found[level].bent
        if bent is None:
            return 0.0
        x = at - laid.level.box.low[0]
        ends = [seat for seat in laid.lying.seats if not self.is_post(seat)]
        down = [self._settled(found, seat.on) if seat.on else 0.0 for seat in ends]
        settled = 0.0
        if len(ends) == 2 and any(down):
            share = (at - ends[0].at) / (ends[1].at - ends[0].at)
            settled = down[0] + share * (down[1] - down[0])
        return bent.deflection(x) + settled

    def _under(self, forces: Sequence[float]) -> list[Carried]:
        """Every level under what it carries, from the top down."""
        brought: dict[str, float] = {}
        pushes: dict[str, dict[str, float]] = {}
        for contact, force in zip(self._contacts, forces, strict=True):
            brought[contact.divider] = brought.get(contact.divider, 0.0) + force
            pushes.setdefault(contact.level, {})[contact.divider] = force
        found = []
        for laid in self._order:
            standing = {
                each.ref: self._share.get(each.ref, 1.0)
                * (weight_of(self._unit, each.ref) + brought.get(each.ref, 0.0))
                for each in laid.lying.standing
            }
            posts = pushes.get(laid.level.ref, {})
            bent = self._bent(laid, standing, posts)
            found.append(Carried(laid, standing, posts, bent))
            for seat, force, _ in self.reactions(found[-1]):
                if seat.on and not self.is_post(seat):
                    brought[seat.on] = brought.get(seat.on, 0.0) + force
        return found

    def _bent(
        self, laid: Laid, standing: Mapping[str, float], posts: Mapping[str, float]
    ) -> Bent | None:
        beam = self._beams[laid.level.ref]
        if beam is None:
            return None
        low = laid.level.box.low[0]
        at = {each.ref: each.at for each in laid.lying.standing}
        at |= {seat.on: seat.at for seat in laid.lying.seats if self.is_post(seat)}
        down = [(ref, force) for ref, force in standing.items()]
        up = [(ref, -force) for ref, force in posts.items()]
        points = tuple(
            Point(min(max(round(at[ref] - low, 6), 0.0), beam.length), force)
            for ref, force in (*down, *up)
        )
        try:
            return bent_once(replace(beam, points=(*beam.points, *points)))
        except BeamNotHeldError:
            return None

    def reactions(self, each: Carried) -> list[tuple[Seat, float, float]]:
        """Each seat of a level, with the force (N) on it and how far it is turned (N mm)."""
        seats = each.laid.lying.seats
        if each.bent is None:
            share = 1 / max(1, sum(seat.how == "end" for seat in seats))
            total = each.laid.loads.total + sum(each.standing.values())
            free = each.laid.lying.grounded or len(each.laid.lying.lines) > 1
            return [
                (seat, 0.0 if free or seat.how != "end" else total * share, 0.0) for seat in seats
            ]
        solved = iter(zip(each.bent.reactions, each.bent.turnings, strict=True))
        found = []
        for seat in seats:
            if self.is_post(seat):
                found.append((seat, each.posts.get(seat.on, 0.0), 0.0))
            else:
                found.append((seat, *next(solved)))
        return found
