"""What was worked out, with all that it was worked out from."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from rodwright.trade.sources import Source


class Group(StrEnum):
    """What a result is about, in the order of the table."""

    LEVELS = "shelves, rails, tops, bottoms"
    UPRIGHTS = "sides and dividers"
    WHOLE = "the carcass as a whole"
    JOINTS = "joints and fixings"
    HANGING = "hung on the wall"
    STABILITY = "tipping"
    LIFTING = "lifting and carrying"


@dataclass(frozen=True, slots=True)
class Input:
    """A figure that a result was worked out from: its symbol in the formula, what it is, its value
    in ``measure``, and its source (None: it is the unit's own, or the maker's)."""

    symbol: str
    what: str
    value: float
    measure: str
    source: Source | None = None


@dataclass(frozen=True, slots=True)
class Beyond:
    """What a remedy of one figure leaves beyond its limit: which other, how much, and the most that
    it may be, in ``measure``."""

    what: str
    figure: float
    limit: float
    measure: str


@dataclass(frozen=True, slots=True)
class Remedy:
    """Something else that would do, worked out: what it is, the figure that it gives (in the
    measure of its result), whether that is within the limit, and what it costs in the maker's
    currency more than now, where prices are known.  Of one that ``bears`` more, ``figure`` is the
    limit that it gives, and what comes on it stays.

    ``limit`` is the most it may then be, where that is another than now (a shorter span may sag
    less), and ``beyond`` other figures that it leaves beyond their limits, so that it doesn't hold.
    """

    what: str
    figure: float
    holds: bool
    cost: float | None = None
    bears: bool = False
    limit: float | None = None
    beyond: tuple[Beyond, ...] = ()


@dataclass(frozen=True, slots=True)
class Result:
    """One figure of a unit's strength.

    ``subject`` says of what, in the maker's words (``shelf SH3``), ``parts`` are its refs, and
    ``what`` says which figure (``sag after 10 years``).  ``figure`` and ``limit`` are in
    ``measure`` (mm, kg, N, N/mm2, degrees, or empty for a plain number); ``limit`` is the most it
    may be, or the least where ``at_least``; None where nothing limits it.  ``figure`` is None where
    it can't be worked out, and ``lacking`` says what is to be given.  ``formula`` is how it was
    worked out from ``inputs``, ``source`` where that comes from, ``limit_source`` where the limit
    does.  ``notes`` say what was taken for granted.
    """

    group: Group
    subject: str
    parts: tuple[str, ...]
    what: str
    figure: float | None
    limit: float | None
    measure: str
    formula: str
    source: Source
    inputs: tuple[Input, ...] = ()
    at_least: bool = False
    limit_source: Source | None = None
    lacking: str = ""
    notes: tuple[str, ...] = ()
    remedies: tuple[Remedy, ...] = ()

    @property
    def holds(self) -> bool:
        """Whether it is within its limit, as far as is known."""
        if self.figure is None or self.limit is None:
            return True
        return self.figure >= self.limit if self.at_least else self.figure <= self.limit

    @property
    def spare(self) -> float | None:
        """How many times over it holds: 2 is twice as good as needed; None without a limit."""
        if self.figure is None or self.limit is None:
            return None
        better, worse = (self.figure, self.limit) if self.at_least else (self.limit, self.figure)
        return max(better, 0.0) / worse if worse > 0 else None

    @property
    def from_memory(self) -> tuple[Source, ...]:
        """The sources in it that were not looked up."""
        sources = (self.source, self.limit_source, *(each.source for each in self.inputs))
        return tuple(dict.fromkeys(each for each in sources if each and not each.seen))
