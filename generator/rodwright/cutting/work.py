"""All that is cut for some jobs: lots, each of one material and thickness, and their plans."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Literal

from rodwright.cutting.offers import Offer
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import Plan
from rodwright.cutting.supplies import Supply


@dataclass(frozen=True, slots=True)
class Label:
    """What is written on a piece: its part's ``ref``, its ``job`` (the spec's title), what it is
    called, its finished length, width and thickness in mm, and what is done to it after it is cut
    (``notes``).  ``edged`` are the ends and edges, of the piece as cut, that get edging."""

    ref: str
    job: str
    part: str
    finished: tuple[float, float, float]
    notes: tuple[str, ...] = ()
    edged: tuple[Literal["near", "far", "face", "back"], ...] = ()


@dataclass(frozen=True, slots=True)
class Lot:
    """All that is cut from one material of one thickness.

    ``kind`` is ``sheet``; ``board`` (ripped to width, then cut to length); or ``length`` (bought in
    its section and only cut to length, so pieces and supplies have no width; ``section`` is its
    other side).  ``thickness`` in mm, ``density`` in kg/m3.  ``labels`` are by the names of pieces
    and of what is inside them; of a piece of which there are several, all have that name.
    ``offers`` say where its supplies come from, as far as that is known.  ``faces`` are how many
    good faces pieces show, by their names, where some of the supplies have fewer than some pieces
    show.  ``glued_up`` says that some pieces are strips of panels, which were divided before
    anything was planned: what a plan proves holds for these strips.
    """

    name: str
    kind: Literal["sheet", "board", "length"]
    material: str
    thickness: float
    density: float
    pieces: tuple[Piece, ...]
    labels: Mapping[str, tuple[Label, ...]]
    supplies: tuple[Supply, ...]
    section: float = 0.0
    offers: tuple[Offer, ...] = ()
    faces: Mapping[str, int] = field(default_factory=dict)
    glued_up: bool = False


@dataclass(frozen=True, slots=True)
class LotPlan:
    """A lot and the plan for it."""

    lot: Lot
    plan: Plan
