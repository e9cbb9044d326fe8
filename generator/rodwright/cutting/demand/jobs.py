"""Jobs, and what each of their parts asks of the stock."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.cutting.pieces import Inner
from rodwright.geometry import Vector
from rodwright.lengths import as_shown, format_length
from rodwright.unit import DOORS, DRAWERS, Part, Stock, Unit


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

    def as_read(self, length: float) -> float:
        """A length (mm) as the maker reads it, and sets it at the saw."""
        return as_shown(length, self.unit.display_unit)

    def length(self, *lengths: float) -> str:
        """Lengths (mm) with their unit: ``739 x 288 mm``."""
        return f"{self.size(*lengths)} {self.unit.display_unit}"


@dataclass(frozen=True, slots=True)
class Wanted:
    """A part, and the piece it is made of: ``length`` along the grain of the stock and ``width``
    across it, as cut, mm.

    ``turning``, ``slants`` are those of :class:`rodwright.cutting.pieces.Piece`; ``notes`` say
    what is done to it once it is cut.  Of fronts that are cut from one piece, ``run`` are all of
    them, ``part`` is the first, and ``inner`` says where they lie in it.
    """

    job: Job
    part: Part
    length: float
    width: float
    turning: bool
    slants: tuple[float, float] = (0.0, 0.0)
    notes: tuple[str, ...] = ()
    run: tuple[Wanted, ...] = ()
    inner: tuple[Inner, ...] = ()

    @property
    def ref(self) -> str:
        """What the piece is called among those of all jobs."""
        if self.run:
            return self.job.ref(f"{self.run[0].part.ref} to {self.run[-1].part.ref}")
        return self.job.ref(self.part.ref)

    @property
    def refs(self) -> tuple[str, ...]:
        """The refs of its parts in their unit."""
        return tuple(each.part.ref for each in self.run) or (self.part.ref,)

    @property
    def called(self) -> str:
        """What it is, as its label says."""
        return f"{len(self.run)} fronts in one piece" if self.run else name_of(self.part)

    @property
    def finished(self) -> Vector:
        """Its finished length, width and thickness, mm."""
        if self.run:
            return (self.length, self.width, self.thickness)
        return self.part.blank.size

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


def name_of(part: Part) -> str:
    """What a part is called, with the door or drawer that it belongs to."""
    moves = part.role in (*DOORS, *DRAWERS)
    return f"{part.name}, {part.group.lower()}" if moves else part.name
