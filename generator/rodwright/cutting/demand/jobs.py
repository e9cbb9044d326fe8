"""Jobs, and what each of their parts asks of the stock."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.lengths import format_length
from rodwright.unit import Part, Stock, Unit


@dataclass(frozen=True, slots=True)
class Job:
    """A unit to be cut for.

    ``mark`` goes before the refs of its parts, so that those of several jobs are told apart; a
    job alone needs none.
    """

    unit: Unit
    mark: str = ""

    def ref(self, ref: str) -> str:
        """What a part is called among the parts of all jobs."""
        return f"{self.mark} {ref}" if self.mark else ref

    def size(self, *lengths: float) -> str:
        """Lengths (mm) as the job's maker writes them: ``739 x 288``."""
        return " x ".join(format_length(each, self.unit.display_unit) for each in lengths)

    def length(self, *lengths: float) -> str:
        """Lengths (mm) with their unit: ``739 x 288 mm``."""
        return f"{self.size(*lengths)} {self.unit.display_unit}"


@dataclass(frozen=True, slots=True)
class Wanted:
    """A part, and the piece it is made of: ``length`` along the grain of the stock and ``width``
    across it, as cut, mm.

    ``turning``, ``slants`` are those of :class:`rodwright.cutting.pieces.Piece`; ``notes`` say
    what is done to it once it is cut.
    """

    job: Job
    part: Part
    length: float
    width: float
    turning: bool
    slants: tuple[float, float] = (0.0, 0.0)
    notes: tuple[str, ...] = ()

    @property
    def ref(self) -> str:
        """What the part is called among the parts of all jobs."""
        return self.job.ref(self.part.ref)

    @property
    def stock(self) -> Stock:
        """What it is cut from."""
        return self.part.blank.stock

    @property
    def faces_shown(self) -> int:
        """How many of its two faces show."""
        return sum(each.axis == 2 for each in set(self.part.blank.show_surfaces))

    @property
    def thickness(self) -> float:
        """Finished thickness, mm."""
        return self.part.blank.thickness
