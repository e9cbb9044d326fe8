"""What people may lift: the revised NIOSH lifting equation, and the HSE's filter; kg and mm.

Neither is a limit of what is safe for everyone: the equation is meant for nearly all healthy
workers, the filter sorts out what is of low risk.  The equation is of Waters, Putz-Anderson and
Garg, Applications manual for the revised NIOSH lifting equation, DHHS (NIOSH) 94-110, read in
open-source code that cites it; what of it is from memory is marked.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Literal

from rodwright.trade.sources import Figure, Source

Grip = Literal["good", "fair", "poor"]
Who = Literal["men", "women"]

NIOSH = Source(
    "Waters, Putz-Anderson and Garg, revised NIOSH lifting equation, DHHS (NIOSH) 94-110, 1994"
)
NIOSH_REMEMBERED = Source(NIOSH.work, seen=False)
"""What of NIOSH 94-110 is from memory."""
HSE = Source("HSE, INDG143 and L23, lifting and lowering filter", seen=False)
"""From memory."""
PRACTICE = Source("common practice, no source")

LOAD_CONSTANT = Figure(23.0, "kg", NIOSH)
"""What is lifted in the best of cases; NIOSH 94-110."""
_LEAST_REACH, _MOST_REACH = 250.0, 630.0
"""Hands no nearer to the ankles count as so near, and none farther lift; the greatest reach is from
memory."""
_KNUCKLES = 750.0
"""The best height of the hands (from memory)."""
HIGHEST = Figure(1750.0, "mm", NIOSH_REMEMBERED)
"""No hands lift higher; NIOSH 94-110."""
_LEAST_WAY, _MOST_WAY = 250.0, 1750.0
"""A lift no higher counts as so high, and none goes higher (from memory)."""
_GRIPS: dict[Grip, tuple[float, float]] = {
    "good": (1.0, 1.0),
    "fair": (0.95, 1.0),
    "poor": (0.9, 0.9),
}
"""Multipliers of grips, below 75 cm and from there on; NIOSH 94-110."""


def _rounded(multiplier: float) -> float:
    """To two places, half up, as the manual's tables print them (from memory)."""
    return math.floor(multiplier * 100 + 0.5 + 1e-9) / 100


@dataclass(frozen=True, slots=True)
class Lift:
    """A lift straight in front, now and then (less than once in five minutes, up to an hour):
    ``start`` and ``stop`` are the heights of the hands over the floor, ``reach`` how far they are
    before the ankles, mm."""

    start: float
    stop: float
    reach: float
    grip: Grip = "poor"

    def multipliers(self, height: float) -> dict[str, float]:
        """The multipliers with the hands at a height, each rounded to two places:
        HM = 25/H, VM = 1 - 0.003 |V - 75|, DM = 0.82 + 4.5/D (H, V, D in cm), CM by the grip.
        All nought where the equation doesn't reach."""
        way = abs(self.stop - self.start)
        if self.reach > _MOST_REACH or height > HIGHEST.value or way > _MOST_WAY:
            return dict.fromkeys(("HM", "VM", "DM", "CM"), 0.0)
        return {
            "HM": _rounded(_LEAST_REACH / max(self.reach, _LEAST_REACH)),
            "VM": _rounded(1 - 0.0003 * abs(height - _KNUCKLES)),
            "DM": _rounded(min(1.0, 0.82 + 45 / max(way, _LEAST_WAY))),
            "CM": _GRIPS[self.grip][height >= _KNUCKLES],
        }

    @property
    def worse(self) -> float:
        """The height of the hands, at its start or its stop, at which less may be lifted, mm."""
        return min((self.start, self.stop), key=self._limit_at)

    @property
    def limit(self) -> float:
        """The recommended weight limit, kg: RWL = LC HM VM DM AM FM CM, the lesser of both ends,
        with AM = FM = 1; nought where the equation doesn't reach."""
        return self._limit_at(self.worse)

    def _limit_at(self, height: float) -> float:
        return LOAD_CONSTANT.value * math.prod(self.multipliers(height).values())


def reach_round(depth: float, height: float) -> float:
    """How far the hands are before the ankles that hold something ``depth`` mm from front to back
    at a height: 20 cm and half of it, or 25 cm and half of it below 25 cm; NIOSH 94-110, from
    memory."""
    least = 200.0 if height >= _LEAST_REACH else _LEAST_REACH
    return max(least + depth / 2, _LEAST_REACH)


_ZONES: tuple[tuple[float, dict[Who, tuple[float, float]]], ...] = (
    (250.0, {"men": (10.0, 5.0), "women": (7.0, 3.0)}),
    (750.0, {"men": (20.0, 10.0), "women": (13.0, 7.0)}),
    (1050.0, {"men": (25.0, 15.0), "women": (16.0, 10.0)}),
    (1400.0, {"men": (20.0, 10.0), "women": (13.0, 7.0)}),
    (math.inf, {"men": (10.0, 5.0), "women": (7.0, 3.0)}),
)
"""Upper bounds of zones (mid lower leg, knuckles, elbow, shoulder; their heights are common
practice, no source), and what men and women lift there close to the body and with arms extended;
HSE INDG143, from memory."""
CLOSE = 400.0
"""Reach up to which the hands count as close to the body for the filter, mm; common practice, no
source."""
_TEAMS = {1: 1.0, 2: 2 / 3}
_TEAM = 0.5
"""The share that two, and more, lift together of what they lift singly; HSE L23, from memory."""


def filter_value(lift: Lift, who: Who) -> float:
    """What the HSE's filter has one person lift, kg: the least of the zones it goes through."""
    low, high = sorted((lift.start, lift.stop))
    extended = lift.reach > CLOSE
    begins, found = 0.0, []
    for ends, values in _ZONES:
        if begins <= high and low < ends:
            found.append(values[who][extended])
        begins = ends
    return min(found)


def filter_people(lift: Lift, who: Who, mass: float) -> int:
    """How many people the filter has lift a mass together: n of them n times the value of one, and
    of that two thirds where they are two, half where they are more."""
    value, count = filter_value(lift, who), 1
    while count * _TEAMS.get(count, _TEAM) * value < mass:
        count += 1
    return count


BENCH = Figure(900.0, "mm", PRACTICE)
"""Height of a bench and of a saw's table; common practice, no source."""
FROM_FLOOR = Figure(250.0, "mm", PRACTICE)
"""Where the hands take hold of what stands on the floor, an end tilted up first; common practice,
no source."""
CARRIED = Figure(750.0, "mm", PRACTICE)
"""Height of the hands that carry something, arms hanging down; common practice, no source."""
AT_ITS_ENDS = Figure(300.0, "mm", PRACTICE)
"""Reach of each of several people who take something at its ends; common practice, no source."""
LONG = Figure(2400.0, "mm", PRACTICE)
"""What is longer takes two people whatever it weighs; common practice, no source."""
HEAVY_PANE = Figure(10.0, "kg", PRACTICE)
"""Glass that weighs more takes two people; common practice, no source."""
LIGHT = Figure(5.0, "kg", PRACTICE)
"""Parts that weigh less aren't told one by one: a man lifts that in every zone of the filter; HSE
INDG143, from memory."""
ROUND_IT = Figure(4.0, "people", PRACTICE)
"""The most people that can take hold of a piece of furniture well; common practice, no source."""


def people_lifting(alone: Lift, mass: float, least: int = 1) -> int | None:
    """How many lift a mass (kg) by the NIOSH equation, but no fewer than ``least``: one as
    ``alone`` has it, or several who share it evenly, each at an end of it; None where the equation
    doesn't reach so high."""
    if mass <= alone.limit:
        return least
    each = shared(alone).limit
    return max(2, least, math.ceil(mass / each - 1e-9)) if each > 0 else None


def shared(alone: Lift) -> Lift:
    """The same lift for one of several who take it at its ends."""
    return replace(alone, reach=min(alone.reach, AT_ITS_ENDS.value))


def sheet_lift(thickness: float) -> Lift:
    """A sheet or board of that thickness (mm) lifted on edge off the floor to the saw, by one."""
    start = FROM_FLOOR.value
    return Lift(start, BENCH.value, reach_round(thickness, start))


def sheet_people(length: float, thickness: float, mass: float) -> int:
    """How many lift a sheet or board (mm, kg) to the saw."""
    count = people_lifting(sheet_lift(thickness), mass, 2 if length > LONG.value else 1)
    assert count is not None
    return count


def people(count: int) -> str:
    """How many, in words."""
    return f"{count} {'person' if count == 1 else 'people'}"
