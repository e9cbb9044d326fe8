"""The way in as drawings: one for each step, with the load at several stages.

Doorways are seen from before them, corners and turned units from above, tilted units from the
side.  The walls are grey, the first stage is pale and the last dark; what runs into a wall is
red.
"""

from __future__ import annotations

from itertools import pairwise
from math import hypot

import shapely
from shapely import MultiPolygon, Polygon, box

from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Drawing, Fill, Lettering, Mark, Point, Stroke
from rodwright.way.answer import Path, WayInAnswer
from rodwright.way.carry import said
from rodwright.way.search import Pose, Scene, placed

PAGE = (1400, 1050)
"""Width and height: pixels of the PNG, units of the SVG."""
_MARGIN = 40.0
_HEAD = 110.0
_TITLE, _TEXT = 30.0, 21.0
_STAGES = 8
_AROUND = 120.0
"""Walls are shown at least this far beyond the load, mm."""
_WALL, _HIT = "#c9c4bb", "#c0392b"
_PALE, _FULL = (243, 247, 250), (139, 168, 193)
"""The load's colour at its first stage and at its last, red, green and blue."""
_VIEWS = {
    "doorway": "seen from before the doorway",
    "plan": "seen from above",
    "section": "seen from the side",
}


def way_drawings(answer: WayInAnswer) -> dict[str, Drawing]:
    """A drawing for each path, by a short name for its file (``2-corner-1``)."""
    return {
        f"{number}-{path.step.name}": way_drawing(answer, path)
        for number, path in enumerate(answer.paths, 1)
    }


def way_drawing(answer: WayInAnswer, path: Path) -> Drawing:
    """One step: the walls near the load, and the load at its stages."""
    unit, step = answer.unit, path.step
    stages = _stages(path.scene, path.poses)
    bodies = [placed(path.scene, pose) for pose in stages]
    window = _window(path, bodies)
    to_page = _OntoPage(window)
    walls = [
        (wall.name, shape)
        for wall in path.scene.walls
        if (shape := Polygon(wall.ring).intersection(window)).area > 0
    ]
    marks: list[Mark] = [Fill(to_page(shape), _WALL) for _, shape in walls]
    outline = Stroke(tuple(ring for _, shape in walls for ring in to_page(shape)), 1.5, "#8b857b")
    marks.append(outline)
    shares = [number / len(bodies) for number in range(1, len(bodies) + 1)]
    for share, body in zip(shares, bodies, strict=True):
        marks += [Fill((ring,), _between(share)) for ring in to_page(body)]
    for share, body in zip(shares, bodies, strict=True):
        marks.append(Stroke(to_page(body), 1.0 + 1.5 * share))
    if not step.passes:
        marks += _red(to_page, walls, bodies)
    verdict = _verdict(answer, path)
    marks += [
        Lettering(
            (_MARGIN, _MARGIN + 14), _fitted(f"{unit.title}: {step.place}", _TITLE), _TITLE, "start"
        ),
        Lettering(
            (_MARGIN, _MARGIN + 50),
            _fitted(verdict, _TEXT),
            _TEXT,
            "start",
            colour="#33302c" if step.passes else _HIT,
        ),
    ]
    return Drawing(
        *PAGE,
        f"{unit.title}: {step.place}",
        f"{verdict}.  {len(stages)} stage{'s' if len(stages) > 1 else ''}, {_VIEWS[path.view]}.",
        tuple(marks),
    )


def _verdict(answer: WayInAnswer, path: Path) -> str:
    step = path.step
    view = _VIEWS[path.view]
    spare = said(abs(step.spare), answer.unit.display_unit)
    if step.passes:
        left = f", {spare} to spare" if step.spare > 0 else ""
        return f"Goes: {step.held}{left} ({view})"
    hits = ", ".join(path.hits) or step.tight
    return f"Doesn't go: {spare} short at {hits} ({view})"


def _fitted(text: str, size: float) -> str:
    """The text, cut where it would run off the page."""
    if text_width(text, size) <= PAGE[0] - 2 * _MARGIN:
        return text
    while text_width(text + " …", size) > PAGE[0] - 2 * _MARGIN:
        text = text.rsplit(" ", 1)[0]
    return text + " …"


class _OntoPage:
    """From the scene's millimetres to the page: even scale, y turned over, in the middle."""

    def __init__(self, window: Polygon) -> None:
        x0, y0, x1, y1 = window.bounds
        width, height = PAGE[0] - 2 * _MARGIN, PAGE[1] - _HEAD - _MARGIN
        self._scale = min(width / (x1 - x0), height / (y1 - y0))
        self._x = _MARGIN + (width - self._scale * (x1 - x0)) / 2 - self._scale * x0
        self._y = _HEAD + (height + self._scale * (y1 - y0)) / 2 + self._scale * y0

    def __call__(self, shape: shapely.Geometry) -> tuple[tuple[Point, ...], ...]:
        """The rings of a shape, closed."""
        rings = []
        for part in shapely.get_parts(shape):
            if isinstance(part, Polygon):
                rings += [part.exterior, *part.interiors]
        return tuple(
            tuple((self._x + self._scale * x, self._y - self._scale * y) for x, y in ring.coords)
            for ring in rings
        )


def _between(share: float) -> str:
    """The load's colour at a stage, from pale to full."""
    channels = (
        round(pale + share * (full - pale)) for pale, full in zip(_PALE, _FULL, strict=True)
    )
    return "#" + "".join(f"{channel:02x}" for channel in channels)


def _red(
    to_page: _OntoPage, walls: list[tuple[str, shapely.Geometry]], bodies: list[MultiPolygon]
) -> list[Mark]:
    marks: list[Mark] = []
    for body in bodies:
        for _, wall in walls:
            overlap = body.intersection(wall)
            if overlap.area > 0:
                rings = to_page(overlap)
                marks += [Fill((ring,), _HIT) for ring in rings]
                marks.append(Stroke(rings, 4.0, _HIT))
    return marks


def _window(path: Path, bodies: list[MultiPolygon]) -> Polygon:
    """What is shown: the load at every stage and what is around it; of a doorway, all of it."""
    shapes: list[shapely.Geometry] = list(bodies)
    if path.view == "doorway":
        shapes.append(box(*path.scene.room))
    x0, y0, x1, y1 = shapely.total_bounds(shapes)
    return box(x0 - _AROUND, y0 - _AROUND, x1 + _AROUND, y1 + _AROUND)


def _stages(scene: Scene, poses: tuple[Pose, ...]) -> list[Pose]:
    """Poses at even distances along a path, its ends among them; a turn counts by what the
    farthest corner moves."""
    if len(poses) == 1:
        return list(poses)
    lengths = [
        hypot(b.x - a.x, b.y - a.y) + scene.reach * abs(b.turn_rad - a.turn_rad)
        for a, b in pairwise(poses)
    ]
    total = sum(lengths)
    stages = []
    for number in range(_STAGES):
        rest, k = total * number / (_STAGES - 1), 0
        while k < len(lengths) - 1 and rest > lengths[k]:
            rest -= lengths[k]
            k += 1
        share = min(1.0, rest / lengths[k]) if lengths[k] else 0.0
        a, b = poses[k], poses[k + 1]
        stages.append(
            Pose(
                a.x + share * (b.x - a.x),
                a.y + share * (b.y - a.y),
                a.turn_rad + share * (b.turn_rad - a.turn_rad),
            )
        )
    return stages
