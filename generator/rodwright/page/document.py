"""What a page is told of a unit, as plain data; `generator/viewer/src/document.ts` mirrors it.

Lengths in mm.  Points, normals and edges are in the part frame, matrices turn that into the unit
frame (x to the right, y to the back, z up).  Arrays are base64 of little-endian numbers.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Literal

from rodwright.geometry.vectors import Vector

Layer = Literal["carcass", "shelves", "back", "frame", "doors", "drawers", "base", "surround"]
"""Parts that are shown or hidden together; so are, besides, all fittings and the room's lines."""
GrainAlong = Literal["length", "width", "none"]


@dataclass(frozen=True, slots=True)
class Shape:
    """A solid as it is drawn: ``points`` and ``normals`` (n, 3) float32, ``triangles`` (m, 3)
    uint32, ``edges`` (k, 2, 3) float32: the ends of every drawn line."""

    points: str
    normals: str
    triangles: str
    edges: str


@dataclass(frozen=True, slots=True)
class Texture:
    """Pictures as data addresses that go on beyond their sides without a seam.

    ``size`` is what they show, mm: along the grain, across it and through the thickness.  The face
    has the first two, to the right and up, long edges the first and the last, ends the last two.
    """

    face: str
    edge: str
    end: str
    size: Vector


@dataclass(frozen=True, slots=True)
class Surface:
    """How something looks: ``colour`` is ``#rrggbb`` (sRGB), the mean of its face's texture if it
    has one; the rest as in :class:`rodwright.photo.scene.Surface`."""

    colour: str
    roughness: float
    metal: bool = False
    clear: bool = False


@dataclass(frozen=True, slots=True)
class Place:
    """Where in the spec something was wished: line and column from 1, and the line's text."""

    line: int
    column: int
    text: str


@dataclass(frozen=True, slots=True)
class Part:
    """A part as it is shown.  ``shape`` and ``surface`` name one of the model's; ``matrix`` is 16
    numbers by rows.  ``size`` is length, width and thickness in the maker's words; ``kind`` that of
    its stock, by which cuts through it are hatched.  ``lie`` is where in its wood it was cut, as
    :class:`rodwright.handover.dressed.Dress` has it; ``edges`` name the surfaces of what is glued
    on its edges, by their side (``-x``, ``+y``).  What isn't ``told`` is shown and not listed."""

    ref: str
    name: str
    layer: Layer
    shape: str
    surface: str
    grain: GrainAlong
    matrix: tuple[float, ...]
    size: str
    stock: str
    kind: Literal["sheet", "board"]
    lie: tuple[float, float, float, float] = (1.0, 0.0, 1.0, 0.0)
    edges: dict[str, str] = field(default_factory=dict)
    told: bool = True


@dataclass(frozen=True, slots=True)
class Fitting:
    """A bought-in piece that moves with the part ``ref``, in whose frame its shape is.  ``inner``
    ones are seen only where doors and drawers stand open."""

    ref: str
    shape: str
    surface: str
    inner: bool


@dataclass(frozen=True, slots=True)
class Motion:
    """A door or drawer: these parts turn by ``angle`` degrees (anticlockwise from above) about an
    upright axis at ``hinge`` (x, y), or move by ``travel``; the other of the two is empty."""

    label: str
    refs: tuple[str, ...]
    hinge: tuple[float, ...] = ()
    angle: float = 0.0
    travel: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Model:
    """What is needed to draw the unit.  ``low`` and ``high`` are the corners of its envelope,
    ``room`` are lines through points of what stays round it: the opening, a sloping ceiling, what
    it is cut out round.

    A live page isn't told again of shapes and surfaces it has: their names (digests) never come to
    mean something else.
    """

    title: str
    unit: Literal["mm", "in"]
    size: str
    low: Vector
    high: Vector
    shapes: dict[str, Shape]
    surfaces: dict[str, Surface]
    parts: tuple[Part, ...]
    fittings: tuple[Fitting, ...] = ()
    motions: tuple[Motion, ...] = ()
    room: tuple[tuple[Vector, ...], ...] = ()


@dataclass(frozen=True, slots=True)
class Joined:
    """What a part is joined to, and how, in words that name it: `in a housing of SD1`."""

    ref: str
    how: str


@dataclass(frozen=True, slots=True)
class Detail:
    """What there is to say of a part beside its size; all in words, empty where there is nothing.

    ``edges`` are those that are lipped or edged, ``laid`` is how it lies to be worked and what is
    done before or after, line by line.
    """

    material: str
    weight: str
    finish: str
    edges: str
    laid: tuple[str, ...]
    workings: tuple[str, ...]
    joined: tuple[Joined, ...]
    place: Place | None


@dataclass(frozen=True, slots=True)
class Told:
    """A finding, as the maker reads it; ``at`` is its place in the unit frame, if it has one,
    ``meaning`` are heading and text of the paragraphs that explain its rule to who asks."""

    severity: str
    rule: str
    message: str
    remedy: str
    parts: tuple[str, ...]
    source: str
    at: tuple[float, ...] = ()
    meaning: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True, slots=True)
class Table:
    """A list: its heading, its columns (right-aligned if ``figures`` says so), and its rows;
    ``refs`` are the parts each row is of."""

    title: str
    columns: tuple[str, ...]
    figures: tuple[bool, ...]
    rows: tuple[tuple[str, ...], ...]
    refs: tuple[tuple[str, ...], ...]
    note: str = ""


@dataclass(frozen=True, slots=True)
class Drawing:
    """A drawing with its caption: SVG text, shown as a picture and never as a part of the page."""

    caption: str
    svg: str


@dataclass(frozen=True, slots=True)
class Sheet:
    """A tab of the page: paragraphs, drawings, lists, in this order; ``notes`` are told in full
    only if one asks for them, below the drawings."""

    words: tuple[str, ...] = ()
    drawings: tuple[Drawing, ...] = ()
    tables: tuple[Table, ...] = ()
    notes: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Dimension:
    """A dimension in space: what is measured lies between ``start`` and ``end``, its line is moved
    by ``offset`` from there; unit frame."""

    start: Vector
    end: Vector
    offset: Vector
    text: str


@dataclass(frozen=True, slots=True)
class Hanging:
    """What hangs on a figure of the spec: refs of the parts that become others by it, or come and
    go (``changes``; ``sizes`` are those of them whose size is another), and of those that only
    stand elsewhere (``moves``).  ``nothing``: another figure makes the very same unit."""

    changes: tuple[str, ...]
    moves: tuple[str, ...]
    sizes: tuple[str, ...] = ()
    nothing: bool = False


@dataclass(frozen=True, slots=True)
class Sections:
    """What is told after the model, each when it is known; None: not yet, or not on this page.

    ``textures`` are of surfaces, by their names; a live page isn't told again of those it has.
    ``hanging`` is by the keys of figures (:class:`Nudge`), where it could be found.
    """

    textures: dict[str, Texture] | None = None
    apart: dict[str, Vector] | None = None
    details: dict[str, Detail] | None = None
    dimensions: tuple[Dimension, ...] | None = None
    findings: tuple[Told, ...] | None = None
    lists: Sheet | None = None
    opening: Sheet | None = None
    strength: Sheet | None = None
    cutting: Sheet | None = None
    hanging: dict[str, Hanging] | None = None


@dataclass(frozen=True, slots=True)
class Nudge:
    """A figure of the spec that may be changed from the page.

    ``key`` is its place in the spec as text (``interior/columns/0/width``).  ``group`` and
    ``label`` name it in the maker's words ("Column 1", "width"), ``also`` other figures that are
    the same one in the file (``&name``).  ``value`` is what stands there, as written, or if not
    ``written`` what is wished unless said.  ``number`` in ``unit`` (mm, cm, m, in, share, or none
    for a count) is what the slider stands at, from ``least`` to ``most`` by ``step`` (None: a field
    only).  Of a length in ``ft`` the number is in inches, and ``feet`` what is written behind its
    feet, between feet and inches, and behind these (`` ft``, `` ``, `` in``); else it is None.
    """

    key: str
    group: str
    label: str
    value: str
    unit: str
    number: float | None
    least: float
    most: float
    step: float
    line: int
    also: tuple[str, ...] = ()
    written: bool = True
    feet: tuple[str, str, str] | None = None


@dataclass(frozen=True, slots=True)
class Trouble:
    """Why the file as it is now makes no unit."""

    message: str
    remedy: str
    line: int | None = None
    column: int | None = None
