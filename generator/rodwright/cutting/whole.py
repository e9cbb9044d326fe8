"""Everything that is cut for some jobs, as one answer."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from rodwright.cutting.offcuts import Kept, Least
from rodwright.cutting.saws import Saw
from rodwright.cutting.taking import Taking
from rodwright.cutting.work import LotPlan
from rodwright.lengths import LengthUnit


@dataclass(frozen=True, slots=True)
class ForJob:
    """A unit that is cut for: its ``title``, told apart from the others', the ``mark`` that its
    pieces' names begin with (empty where it is the only one), and its ``spec`` file."""

    title: str
    mark: str = ""
    spec: str = ""


@dataclass(frozen=True, slots=True)
class Rules:
    """What plans keep to: the ``saw`` that boards are cut with, and how sheets are cut: with it
    too, or, free of cuts from edge to edge, by a ``router``.

    ``spacing`` is the least distance between pieces that a router cuts, mm, if that is more than
    its tool.  ``stages`` is how many times the direction of cuts may change (None: as often as it
    takes), ``first_cut`` the direction of the first, along the length or across it (None: either);
    ``head_cuts`` allows one cut straight across before the first stage.
    """

    saw: Saw
    router: Saw | None = None
    spacing: float = 0.0
    stages: int | None = None
    first_cut: Literal["along", "across"] | None = None
    head_cuts: bool = False

    @property
    def between(self) -> float:
        """What is lost between two pieces of a sheet, mm."""
        return self.saw.kerf if self.router is None else max(self.router.kerf, self.spacing)

    @property
    def begins(self) -> Literal["along", "across"] | None:
        """How the first cuts run, where no head cut may come before them."""
        return None if self.head_cuts else self.first_cut


ONE_MORE = "one more size"
"""What a size that would be bought besides is called."""


@dataclass(frozen=True, slots=True)
class OneMore:
    """What would change for a lot if one more size could be bought.

    ``lot`` is its number, from 0.  ``price`` is for one of that size; it is ``in_proportion`` to
    its area where nobody said it.  ``count`` are how many fewer sheets or boards are cut (less
    than 0: more), ``saved`` what is saved, in what the lot's cost is in.  ``used`` are how many
    of each supply would be cut then, that size as ``one more size``; empty where nothing is saved.
    """

    lot: int
    length: float
    width: float
    price: float
    in_proportion: bool
    count: int
    saved: float
    used: Mapping[str, int] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Cutting:
    """What is cut for some jobs, from what, and what is left.

    ``identity`` tells this plan from every other.  ``kept`` are the offcuts that go into the rack,
    by their names, ``least`` the smallest that do.  ``unit`` is what lengths are shown in.
    ``rack`` is what the plan takes out of a rack file and puts into it (None: it has none).
    """

    jobs: tuple[ForJob, ...]
    unit: LengthUnit
    rules: Rules
    lots: tuple[LotPlan, ...]
    least: Least
    identity: str
    kept: tuple[Kept, ...]
    seed: int = 0
    one_more: tuple[OneMore, ...] = ()
    rack: Taking | None = None

    @property
    def stopped(self) -> bool:
        """Whether time or the maker stopped a search before its end."""
        return any(each.plan.stopped for each in self.lots)

    @property
    def whole(self) -> bool:
        """Whether every piece has found a place."""
        return not any(each.plan.left for each in self.lots)

    def kept_of(self, lot: int, layout: int) -> tuple[Kept, ...]:
        """The offcuts that are kept of one sheet or board."""
        return tuple(each for each in self.kept if (each.lot, each.layout) == (lot, layout))
