"""What is cut in which order, as plain data.

The frame of what is in hand is that of its sheet or board: its length along x from the near end,
its width along y from the face edge.  A cut *along* it is a rip, one *across* it a crosscut.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.cutting.plans import Layout, Offcut
from rodwright.cutting.saws import Saw
from rodwright.cutting.supplies import Flaw, Supply
from rodwright.cutting.work import Lot

CutKind = Literal["trim", "head cut", "rip", "crosscut", "mitre"]
Edge = Literal["face", "back", "near", "far"]
State = Literal["factory", "jointed", "trimmed", "sawn"]
Line = tuple[tuple[float, float], tuple[float, float]]
How = Literal["fence", "line", "carried"]
"""How a cut is guided: against the saw's fence or stop; along a line that is marked, with a track
saw; or along a line with a track saw or a hand-held saw and a straightedge that is carried to
what is too heavy, or too large, for the saw."""


@dataclass(frozen=True, slots=True)
class Held:
    """What is in hand: the name it bears (``1`` is the first sheet, ``1.2`` its second strip; a
    piece's own name where one is divided), its size in mm and its weight in kg."""

    name: str
    length: float
    width: float
    weight: float


@dataclass(frozen=True, slots=True)
class Result:
    """What a cut leaves on one side of it.

    ``what`` is a ``piece`` (done, to be labelled at once), an ``outer`` piece (still to be
    divided into those inside it), a ``panel`` that is cut further, an ``offcut`` to be kept, or
    ``waste``.  ``name`` is what it bears then: of pieces that of :class:`Piece`, of offcuts the
    new name; none for waste.  ``copies`` say which of a lot's labels of that name it gets: one for
    each sheet that is cut like this, and in an outer piece for each of its copies; of offcuts
    ``names`` are those of each sheet.  ``flaws`` are what it has, from its own near corner.
    ``length`` and ``width`` (mm) are as it lies on its sheet, but of a piece its own: ``turned``
    says that it lay across, ``at`` is its near corner on its sheet (in the outer piece, of what is
    inside one).
    """

    what: Literal["piece", "outer", "panel", "offcut", "waste"]
    name: str
    length: float
    width: float
    copies: tuple[int, ...] = ()
    names: tuple[str, ...] = ()
    flaws: tuple[Flaw, ...] = ()
    turned: bool = False
    at: tuple[float, float] | None = None


@dataclass(frozen=True, slots=True)
class Step:
    """One cut.

    It leaves ``measured``, which is ``setting`` mm wide (rip) or long (crosscut) between ``edge``
    and the blade, and ``rest`` beyond the blade; either may be None where the blade leaves nothing
    of it.  ``state`` is how that edge came to be.  ``rest_setting`` is the same line measured from
    the opposite edge, to the blade's other side (0 or less where the blade leaves nothing there).
    Where ``edge`` is an end that was mitred, and
    for mitres, ``setting`` is over the long points.

    A mitre is ``angle`` degrees off square; ``long_point`` is the edge at which ``measured`` is
    longer.  ``nested`` says that the cut leaves the next piece's end as it is wanted.

    ``remains`` says that ``rest`` has its size that way by what other cuts took: none is made to
    its own measure.

    ``heavy`` and ``large`` say why it is ``carried`` out: what is in hand weighs more than is
    lifted, or the saw doesn't reach.  ``stage`` counts the rounds of cuts: rips are odd, crosscuts
    even and those before the first rips 0; ``number`` counts the steps of a sheet from 1.
    ``line`` is where the middle of the blade runs on its sheet, None in a piece that is divided.
    """

    stage: int
    kind: CutKind
    held: Held
    setting: float
    edge: Edge
    state: State
    rest_setting: float
    measured: Result | None
    rest: Result | None
    number: int = 0
    how: How = "fence"
    angle: float = 0.0
    long_point: Edge | None = None
    nested: bool = False
    remains: bool = False
    heavy: bool = False
    large: bool = False
    line: Line | None = None

    @property
    def along(self) -> bool:
        """Whether it runs along what is in hand."""
        return self.edge in ("face", "back")

    @property
    def results(self) -> tuple[Result, ...]:
        """What it leaves, what was measured first."""
        return tuple(each for each in (self.measured, self.rest) if each is not None)


@dataclass(frozen=True, slots=True)
class Contour:
    """What a router cuts round, ``number`` in its order: a piece, or what is inside one.

    ``x`` and ``y`` are its near corner on the sheet, ``length`` along x and ``width`` along y,
    mm.  ``tabs`` says that it is small, and held by tabs until the sheet is done.
    """

    number: int
    name: str
    copies: tuple[int, ...]
    x: float
    y: float
    length: float
    width: float
    inner: bool
    tabs: bool


@dataclass(frozen=True, slots=True)
class SheetSteps:
    """How one sheet or board is cut, and all that are cut like it.

    ``numbers`` are those of the sheets, from 1, in the order of the plan's layouts.  ``whole`` is
    what a sheet is that needs no cut.  A router has ``contours`` instead of ``steps``.  ``kept``
    are offcuts that go into the rack, with the names that they get on each of the sheets.
    ``jointed`` is what comes off the face edge (mm) of a sawn board that is jointed and planed
    before it is cut; None for what needs neither.
    """

    layout: Layout
    stock: Supply
    numbers: tuple[int, ...]
    steps: tuple[Step, ...]
    whole: Result | None = None
    contours: tuple[Contour, ...] = ()
    kept: tuple[tuple[Offcut, tuple[str, ...]], ...] = ()
    jointed: float | None = None


@dataclass(frozen=True, slots=True)
class LotSteps:
    """All cuts of a lot.

    ``order`` is one in which all its sheets can be cut together with the fewest settings of the
    fence and the stop: pairs of places in ``sheets`` and in its ``steps``.  ``settings`` is how
    often they are set then, cuts along a line that is carried out apart.
    """

    lot: Lot
    saw: Saw
    kerf: float
    sheets: tuple[SheetSteps, ...]
    order: tuple[tuple[int, int], ...] = ()
    settings: int = 0
