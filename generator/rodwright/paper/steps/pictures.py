"""A picture of a move: what stands in thin grey lines, what comes in thick black ones, drawn out
along its way with an arrow.

Line drawings in mm of paper, so that they are small and print in black and white.  All pictures of
a stage have one camera and one scale.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from rodwright.geometry import Box, Vector, plus, times
from rodwright.making.steps import Step
from rodwright.pictures.bodies import Body, bodies_of
from rodwright.pictures.camera import Array, Camera, looking_from
from rodwright.pictures.hidden import visible_by_group
from rodwright.pictures.ink import DARK, Drawing, Fill, Lettering, Mark, Point, Stroke, rounded
from rodwright.pictures.pens import thinned
from rodwright.pictures.tags import Anchor, Frame, Tag, place_tags, tag_width
from rodwright.unit import Unit

WIDTH, LOWEST, HIGHEST = 84.0, 34.0, 64.0
"""Of a picture, mm on paper: as high as what it shows asks for."""
_THICK, _THIN, _FINEST = 0.5, 0.2, 0.13
_GREY = "#8a8a8a"
_TEXT = 3.2
"""Size of type, mm: 9 pt."""
_EDGE = 1.0
_TAGS = 6
"""What comes is named up to so many; of more the first and the last."""
_ARROWS = 4
_TURN, _TILT = np.radians(32.0), np.radians(22.0)
_LEAST, _MOST = 0.12, 0.45
"""How far what comes is drawn out, as shares of the diagonal of all that is made."""
_CLEAR = 1.15
"""And of its travel, if it lies between the two."""


_LOOSE = 0.1
"""Pieces that are drawn together at once stand at least so far apart, as a share of that
diagonal."""


_ALONG = (0.3, -0.3, 0.42, -0.42, 0.15, -0.15, 0.0)
"""Where along a piece its name may point, from its middle, which arrows want, as shares of its
length."""
_OFF = 0.1
"""What is before a point by less than this (mm) touches it."""


@dataclass(frozen=True, eq=False, slots=True)
class Scene:
    """A stage's camera, and what of the screen its pictures show: mm of the unit to a mm of paper,
    and the screen's place (x, y) at the middle of the frame."""

    unit: Unit
    bodies: dict[str, Body]
    camera: Camera
    scale: float
    middle: tuple[float, float]
    diagonal: float
    frame: Frame

    def on_page(self, screen: Array) -> Array:
        """Screen coordinates (..., 2) on paper."""
        centre = np.array(
            [(self.frame.left + self.frame.right) / 2, (self.frame.top + self.frame.bottom) / 2]
        )
        turned = (screen - np.array(self.middle)) / self.scale * (1.0, -1.0)
        return np.asarray(turned + centre)

    def point(self, at: Vector) -> Point:
        """A point of the unit on paper."""
        x, y = self.on_page(self.camera.screen(np.array([at]))[0, :2]).tolist()
        return (x, y)


def scene_of(unit: Unit, moves: Sequence[Sequence[Step]]) -> Scene:
    """The scene for the moves of one making: seen from the front, or from behind where more comes
    from there."""
    steps = [step for move in moves for step in move]
    behind = sum(step.towards[1] < -0.5 for step in steps)
    side = -1.0 if behind > sum(step.towards[1] > 0.5 for step in steps) else 1.0
    camera = looking_from(
        (
            float(np.sin(_TURN) * np.cos(_TILT)),
            -side * float(np.cos(_TURN) * np.cos(_TILT)),
            float(np.sin(_TILT)),
        )
    )
    refs = list(dict.fromkeys(ref for step in steps for ref in (*step.refs, *step.standing)))
    diagonal = _diagonal(unit, refs)
    boxes = [unit.part(ref).bounds() for ref in refs]
    for step in steps:
        by = _drawn_out(step, diagonal)
        boxes += [
            unit.part(ref).bounds().moved(plus(by, apart))
            for ref, apart in _apart(step, diagonal).items()
        ]
    corners = np.array([corner for box in boxes for corner in box.corners()])
    screen = camera.screen(corners)[:, :2]
    low, high = screen.min(axis=0), screen.max(axis=0)
    widest = max(tag_width(text, _TEXT) for move in moves for text, _ in _named(move))
    across, up = (high - low).tolist()
    wide = WIDTH - 2 * (widest + _EDGE)
    high_on_paper = min(max(up / (across / wide) + 6 * _EDGE, LOWEST), HIGHEST)
    frame = Frame(widest + _EDGE, 3 * _EDGE, WIDTH - widest - _EDGE, high_on_paper - 3 * _EDGE)
    scale = max(across / wide, up / (frame.bottom - frame.top))
    x, y = ((low + high) / 2).tolist()
    count = len(unit.parts)
    bodies = dict(zip((part.ref for part in unit.parts), bodies_of(unit, {})[:count], strict=True))
    return Scene(unit, bodies, camera, scale, (x, y), diagonal, frame)


def draw_move(scene: Scene, move: Sequence[Step], begun: Sequence[Step], title: str) -> Drawing:
    """What comes, on its way to what stands; with the names of both where that has just begun.
    Doors that stand open meanwhile are left out."""
    by = _drawn_out(move[0], scene.diagonal)
    coming = [ref for step in move for ref in step.refs]
    open_meanwhile = {ref for step in move for ref in step.opened}
    standing = [ref for ref in move[0].standing if ref not in {*coming, *open_meanwhile}]
    still = [scene.bodies[ref].placed_solid() for ref in standing]
    moved = [
        _moved(scene.bodies[ref], plus(by, apart)).placed_solid()
        for step in move
        for ref, apart in _apart(step, scene.diagonal).items()
    ]
    found = visible_by_group([moved, still] if still else [moved], scene.camera)
    strong, *others = (scene.on_page(ends) for ends in found)
    light = others[0] if others else np.empty((0, 2, 2))
    marks: list[Mark] = [
        *_strokes(light, _THIN, _GREY, strong),
        *_strokes(strong, _THICK, DARK, None),
    ]
    if any(by):
        for step in move[:_ARROWS] if len(move) <= _ARROWS else (move[0], move[-1]):
            marks += _arrow(*_way(scene, step, by))
    anchors = [*_anchors(scene, begun, (0.0, 0.0, 0.0)), *_anchors(scene, move, by)]
    marks += _tag_marks(place_tags(anchors, scene.frame, _TEXT))
    return Drawing(WIDTH, scene.frame.bottom + 3 * _EDGE, title, f"{title}.", tuple(marks), "mm")


def _diagonal(unit: Unit, refs: Sequence[str]) -> float:
    return float(np.linalg.norm(Box.of_boxes(unit.part(ref).bounds() for ref in refs).size))


def _drawn_out(step: Step, diagonal: float) -> Vector:
    """By how much what comes is moved back along its way."""
    far = min(max(step.travel * _CLEAR, _LEAST * diagonal), _MOST * diagonal)
    return times(step.towards, -far)


def _apart(step: Step, diagonal: float) -> dict[str, Vector]:
    """How far each of what is drawn together at once stands off its place, far enough to be
    seen."""
    if not step.drawn:
        return dict.fromkeys(step.refs, (0.0, 0.0, 0.0))
    farthest = max(sum(each * each for each in way) ** 0.5 for way in step.drawn)
    share = max(1.0, _LOOSE * diagonal / farthest) if farthest else 0.0
    return {ref: times(way, -share) for ref, way in zip(step.refs, step.drawn, strict=True)}


def _moved(body: Body, by: Vector) -> Body:
    matrix = body.matrix.copy()
    matrix[:3, 3] += by
    return Body(body.solid, body.facets, matrix, body.colour, body.grain)


def _strokes(ends: Array, pen: float, colour: str, among: Array | None) -> Iterator[Mark]:
    for width, pieces in thinned(ends, pen, _FINEST, among).items():
        lines = tuple(((ax, ay), (bx, by)) for (ax, ay), (bx, by) in pieces.tolist())
        if lines:
            yield Stroke(lines, width, colour)


def _way(scene: Scene, step: Step, by: Vector) -> tuple[Point, Point]:
    """Where an arrow begins, at the foremost of what comes, and where it ends, on paper."""
    box = Box.of_boxes(scene.unit.part(ref).bounds() for ref in step.refs)
    half = sum(abs(each) * size for each, size in zip(step.towards, box.size, strict=True)) / 2
    tip = plus(box.centre, times(step.towards, half))
    return scene.point(plus(tip, by)), scene.point(plus(tip, times(by, 0.1)))


def _arrow(start: Point, end: Point) -> Iterator[Mark]:
    (x, y), (a, b) = start, end
    length = float(np.hypot(a - x, b - y))
    if length < 1e-6:
        return
    u, v = (a - x) / length, (b - y) / length
    head = min(3.0, max(length, 1.5))
    neck = (a - head * u, b - head * v)
    wing = 0.4 * head
    barbs = (neck[0] - wing * v, neck[1] + wing * u), (neck[0] + wing * v, neck[1] - wing * u)
    tip = (end, *barbs, end)
    yield Stroke(((start, neck), tip), 1.6, "#ffffff")
    if length > head:
        yield Stroke(((start, neck),), 0.7)
    yield Fill((tip,), DARK)


def _named(move: Sequence[Step]) -> list[tuple[str, Step]]:
    """What comes, by its first ref each."""
    if len(move) == 1 and move[0].drawn:
        return [(ref, move[0]) for ref in move[0].refs][:_TAGS]
    named = [(_name(step), step) for step in move]
    return named if len(named) <= _TAGS else [named[0], named[-1]]


def _name(step: Step) -> str:
    """A sub-assembly that has a name of its own by that, else the first ref."""
    return step.brings if step.brings.islower() else step.refs[0]


def _anchors(scene: Scene, move: Sequence[Step], by: Vector) -> Iterator[Anchor]:
    """Each on the side of its first part that most faces the viewer, where nothing that stands is
    before it."""
    standing = [scene.unit.part(ref).bounds() for step in move[:1] for ref in step.standing]
    for text, step in _named(move):
        ref = text if text in step.refs else step.refs[0]
        away = plus(by, _apart(step, scene.diagonal)[ref])
        box = scene.unit.part(ref).bounds().moved(away)
        towards = scene.camera.towards
        areas = [box.size[(i + 1) % 3] * box.size[(i + 2) % 3] * abs(towards[i]) for i in range(3)]
        axis = areas.index(max(areas))
        reach = [0.0, 0.0, 0.0]
        reach[axis] = box.size[axis] / 2 * (1.0 if towards[axis] > 0 else -1.0)
        along = max((i for i in range(3) if i != axis), key=lambda i: box.size[i])
        places = []
        for share in _ALONG:
            reach[along] = share * box.size[along]
            places.append(plus(box.centre, (reach[0], reach[1], reach[2])))
        shown = (at for at in places if not any(before(each, at, towards) for each in standing))
        yield Anchor(text, scene.point(next(shown, places[0])))


def before(box: Box, at: Vector, towards: Vector) -> bool:
    """Whether a box stands between a point and the viewer."""
    near, far = _OFF, float("inf")
    for axis in range(3):
        if abs(towards[axis]) < 1e-9:
            if not box.low[axis] < at[axis] < box.high[axis]:
                return False
            continue
        ends = sorted((end - at[axis]) / towards[axis] for end in (box.low[axis], box.high[axis]))
        near, far = max(near, ends[0]), min(far, ends[1])
    return near < far


def _tag_marks(tags: Sequence[Tag]) -> Iterator[Mark]:
    lines = tuple((tag.anchor.at, tag.port) for tag in tags)
    yield Stroke(lines, 0.7, "#ffffff")
    yield Stroke(lines, 0.18)
    for tag in tags:
        (x, y), r = tag.anchor.at, 0.45
        yield Fill((rounded((x - r, y - r), (x + r, y + r), r),), DARK)
        middle = ((tag.low[0] + tag.high[0]) / 2, (tag.low[1] + tag.high[1]) / 2 + 0.35 * _TEXT)
        yield Lettering(middle, tag.anchor.text, _TEXT)
