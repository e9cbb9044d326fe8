"""The unit: all its parts, and all that is known of it."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Annotated, Literal

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.unit.fittings import Fitting
from rodwright.unit.joints import Clearance, Fixing, Joint
from rodwright.unit.kinds import ByKind
from rodwright.unit.loading import Loading
from rodwright.unit.motions import Motion
from rodwright.unit.opening import Opening
from rodwright.unit.parts import Part, ShapeKey
from rodwright.unit.surroundings import Surroundings
from rodwright.unit.way import WayIn


@dataclass(frozen=True, slots=True)
class Unit:
    """A whole piece of furniture, set out.

    ``envelope`` is the overall box (a face frame stands in front of the carcass, at
    negative y, and may overhang it).  ``display_unit`` is what lengths are shown in.
    ``least_gap`` is the smallest gap, in mm, that two parts which neither touch nor are
    joined may leave (0: any).  ``way_in`` is what the unit has to pass, where that is known.
    ``motions`` are how doors and drawers move; ``fixings`` are bought in and belong to no
    joint, such as feet and handles; ``fittings`` say how some of what is bought in looks.
    ``hung`` says that it hangs on the wall and stands on nothing.
    ``levelling`` is how far, in mm, its base can be packed or turned up off a floor that falls
    away from its high spot (None: not said). ``moisture`` is the least and most moisture content,
    in %, of its solid wood in use; ``services`` are what it is cut out round, such as a socket or
    a pipe. ``author`` and ``organisation`` are who designed it, ``date`` the day (ISO 8601), each
    empty where it isn't known; so are its ``number``, ``revision`` and who has ``approved_by``,
    for title blocks (ISO 7200).  ``loading`` is what it is to carry, ``surroundings`` what stays
    round it in its room.
    """

    title: str
    envelope: Box
    parts: tuple[Part, ...]
    joints: tuple[Joint, ...] = ()
    clearances: tuple[Clearance, ...] = ()
    opening: Opening | None = None
    least_gap: float = 0.0
    display_unit: Literal["mm", "in"] = "mm"
    way_in: WayIn | None = None
    motions: tuple[Annotated[Motion, ByKind()], ...] = ()
    fixings: tuple[Fixing, ...] = ()
    fittings: tuple[Fitting, ...] = ()
    levelling: float | None = None
    services: tuple[str, ...] = ()
    hung: bool = False
    moisture: tuple[float, float] = (6.0, 12.0)
    author: str = ""
    organisation: str = ""
    date: str = ""
    number: str = ""
    revision: str = ""
    approved_by: str = ""
    loading: Loading = field(default_factory=Loading)
    surroundings: Surroundings = field(default_factory=Surroundings)
    _by_ref: dict[str, Part] = field(init=False, repr=False, compare=False, hash=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "_by_ref", {part.ref: part for part in self.parts})
        if len(self._by_ref) != len(self.parts):
            raise ValueError("two parts of a unit have the same ref")

    @property
    def size(self) -> Vector:
        """Overall width, height and depth."""
        width, depth, height = self.envelope.size
        return (width, height, depth)

    def part(self, ref: str) -> Part:
        """The part with this ref.

        Raises:
            KeyError: no part has it.
        """
        return self._by_ref[ref]

    @property
    def shapes(self) -> dict[ShapeKey, tuple[Part, ...]]:
        """Parts gathered by shape, in the order in which shapes first occur."""
        gathered: dict[ShapeKey, list[Part]] = {}
        for part in self.parts:
            gathered.setdefault(part.shape, []).append(part)
        return {key: tuple(parts) for key, parts in gathered.items()}
