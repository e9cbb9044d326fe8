"""What the cuts of one sheet or board go by, and the steps that are made of them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from typing import NamedTuple

from rodwright.cutting.flaws import flaws_within
from rodwright.cutting.pieces import Piece
from rodwright.cutting.plans import Offcut, Placed
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps.cuts import CutKind, Edge, Held, How, Line, Result, State, Step
from rodwright.cutting.steps.panels import NOISE, Axis, Rectangle
from rodwright.cutting.supplies import Supply
from rodwright.cutting.work import Lot

OPPOSITE: dict[Axis, tuple[Edge, Edge]] = {"along": ("face", "back"), "across": ("near", "far")}
"""The edges that are parted by cuts along and across."""
_CUBIC_MM = 1e-9
"""m3."""


@dataclass(frozen=True)
class Edges:
    """How each edge of what is in hand came to be."""

    face: State = "factory"
    back: State = "factory"
    near: State = "factory"
    far: State = "factory"


@dataclass(frozen=True)
class Hand:
    """What is in hand: its name, where it lies on its sheet (``within`` a piece that is divided, in
    that), its edges; ``stage`` is the round in which it is cut."""

    name: str
    area: Rectangle
    edges: Edges
    stage: int
    within: bool = False

    def left(self, area: Rectangle, edge: Edge, state: State) -> Hand:
        """What is left of it by a cut that makes one of its edges."""
        edges = replace(self.edges, **{edge: state})
        return replace(self, area=area, edges=edges)


@dataclass(frozen=True)
class Task:
    """A cut, and the runs of cuts that can begin once it is made."""

    step: Step
    then: tuple[tuple[Task, ...], ...] = ()


Run = tuple[Task, ...]


class Way(NamedTuple):
    """One cut: the kerf begins ``at``, and the side measured is the far one if ``from_high``."""

    axis: Axis
    at: float
    from_high: bool
    kind: CutKind


@dataclass
class Bench:
    """All that the cuts of one sheet go by; ``names`` are those of its offcuts that are kept, for
    each sheet that is cut like it."""

    lot: Lot
    stock: Supply
    saw: Saw
    kerf: float
    names: Mapping[Offcut, tuple[str, ...]]
    pieces: dict[str, Piece] = field(init=False)
    _parts: dict[str, int] = field(init=False, default_factory=dict)

    def __post_init__(self) -> None:
        self.pieces = {piece.name: piece for piece in self.lot.pieces}
        for piece in self.lot.pieces:
            for inner in piece.inner:
                self.pieces[inner.name] = Piece(inner.name, inner.length, inner.width)

    @property
    def jointed(self) -> float | None:
        """What jointing takes off the face edge of a board that is bought sawn, mm; None of what
        needs none.  All of the trim of that edge (common practice, no source: a board is jointed,
        planed, and then ripped from the edge that was made straight)."""
        sawn = any(
            offer.supply.name == self.stock.name
            and offer.sawn_thickness is not None
            and offer.sawn_thickness > self.lot.thickness + NOISE
            for offer in self.lot.offers
        )
        return self.stock.trim.face if sawn and self.lot.kind == "board" else None

    def whole(self, name: str, stage: int) -> Hand:
        """A sheet, or a board, as its first cut finds it."""
        stock, off = self.stock, self.jointed
        edges = Edges() if off is None else Edges(face="jointed")
        area = Rectangle(0.0, off or 0.0, stock.length, stock.width - (off or 0.0))
        return Hand(name, area, edges, stage)

    def part_name(self, of: str) -> str:
        """What the next part of something in hand is called: ``1.1``, then ``1.2``."""
        self._parts[of] = self._parts.get(of, 0) + 1
        return f"{of}.{self._parts[of]}"

    def weight(self, area: Rectangle) -> float:
        """Of something of the lot's thickness, kg."""
        wide = area.width or self.lot.section
        return area.length * wide * self.lot.thickness * self.lot.density * _CUBIC_MM

    def reaches(self, axis: Axis, setting: float, area: Rectangle) -> bool:
        """Whether the saw is large enough for a cut."""
        if axis == "along":
            return self.saw.rip is None or setting < self.saw.rip + NOISE
        return self.saw.crosscut is None or area.width < self.saw.crosscut + NOISE

    def broken_down(self, area: Rectangle) -> bool:
        """Whether it is too heavy for the saw; on a panel saw a whole sheet is laid."""
        return self.saw.kind != "panel saw" and self.weight(area) > self.saw.lift

    def step(self, hand: Hand, way: Way, low: Result | None, high: Result | None) -> Step:
        """The step that parts what is in hand into what is low and what is high of the cut."""
        start, stop = hand.area.span(way.axis)
        setting, beyond = way.at - start, stop - way.at - self.kerf
        if way.from_high:
            setting, beyond, low, high = beyond, setting, high, low
        edge = OPPOSITE[way.axis][way.from_high]
        return self.guided(
            Step(
                stage=hand.stage,
                kind=way.kind,
                held=self.held(hand),
                setting=rounded(setting),
                edge=edge,
                state=getattr(hand.edges, edge),
                rest_setting=rounded(beyond),
                measured=low,
                rest=high,
                line=self._line(hand, way),
            ),
            hand,
            way.axis,
        )

    def _line(self, hand: Hand, way: Way) -> Line | None:
        if hand.within:
            return None
        area, middle = hand.area, rounded(way.at + self.kerf / 2)
        if way.axis == "along":
            return (rounded(area.x), middle), (rounded(area.x + area.length), middle)
        return (middle, rounded(area.y)), (middle, rounded(area.y + area.width))

    def guided(self, step: Step, hand: Hand, axis: Axis) -> Step:
        """A step with what it is guided by."""
        heavy = self.weight(hand.area) > self.saw.lift
        large = not self.reaches(axis, step.setting, hand.area)
        how: How = "carried" if self.broken_down(hand.area) or large else "fence"
        if self.saw.kind == "track saw":
            how, large = "line", False
        return replace(step, how=how, heavy=heavy, large=large)

    def held(self, hand: Hand) -> Held:
        """What is in hand, with its weight."""
        area = hand.area
        return Held(
            hand.name, rounded(area.length), rounded(area.width), round(self.weight(area), 3)
        )

    def panel(self, hand: Hand) -> Result:
        """What is in hand, as what a cut leaves."""
        return Result("panel", hand.name, rounded(hand.area.length), rounded(hand.area.width))

    def piece(self, placed: Placed) -> Result:
        """A piece that is done, or has to be divided yet."""
        piece = self.pieces[placed.piece]
        what = "outer" if piece.inner else "piece"
        at = rounded(placed.x), rounded(placed.y)
        return Result(what, piece.name, piece.length, piece.width, turned=placed.turned, at=at)  # type: ignore[arg-type]

    def offcut_names(self, area: Rectangle) -> tuple[str, ...]:
        """What an offcut is called if it is kept; nothing if it isn't."""
        for offcut, names in self.names.items():
            sides = (offcut.x, offcut.y, offcut.length, offcut.width)
            if all(abs(a - b) < NOISE for a, b in zip(sides, area, strict=True)):
                return names
        return ()

    def rest(self, area: Rectangle, axis: Axis) -> Result | None:
        """What nothing is cut from: an offcut, waste, or where the blade leaves nothing, None."""
        low, high = area.span(axis)
        if high - low < NOISE:
            return None
        names = self.offcut_names(area)
        size = rounded(area.length), rounded(area.width)
        if not names:
            return Result("waste", "", *size)
        return Result(
            "offcut", names[0], *size, names=names, flaws=flaws_within(self.stock.flaws, *area)
        )


def rounded(length: float) -> float:
    """A length without the noise of sums, to a millionth of a mm."""
    return round(length, 6) + 0.0
