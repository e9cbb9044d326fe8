"""The way in with its paths: formula first, and a search where there is no formula.

The opening is looked at in plan (the unit upright, turned on the floor) and in side section
(tilted, its width square to the section).  A motion that turns in both at once is not tried.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise
from math import atan2, cos, pi, sin

from shapely import Polygon

from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit
from rodwright.unit import Unit
from rodwright.unit.way import Corner, Doorway, WayIn
from rodwright.way.body import (
    Body,
    Niche,
    body_of,
    niche_of,
    opening_step,
    slide,
    straight_in,
)
from rodwright.way.carry import Step, StepKind
from rodwright.way.remedies import Remedy, remedies, steps_for
from rodwright.way.scenes import (
    corner_scene,
    doorway_scene,
    plan_scene,
    section_scene,
    standing_scene,
)
from rodwright.way.search import Pose, Scene, find_path, placed

_COARSE = (2.0, 1.0, 0.5)
_TOUCHING = 1.0
"""Overlaps of a smaller area (mm2) are touching."""
_TO = 1.0
"""What is lacking is found to within this, mm."""


@dataclass(frozen=True, slots=True)
class Path:
    """A step's path for a picture: the scene, and the stages; only the tightest for a no.

    Under too low a ceiling there is nothing to see from above, and no path.

    ``view`` is ``doorway``, ``plan`` or ``section``; ``hits`` names what the body runs into.
    """

    step: Step
    view: str
    scene: Scene
    poses: tuple[Pose, ...]
    hits: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class WayInAnswer:
    """Whether the finished unit goes in: every step, the paths, and the remedies tried.

    ``remedies`` is empty where every step goes.
    """

    unit: Unit
    steps: tuple[Step, ...]
    paths: tuple[Path, ...]
    remedies: tuple[Remedy, ...]

    @property
    def goes(self) -> bool:
        """Whether every step goes."""
        return all(step.passes for step in self.steps)


def find_way_in(unit: Unit, way: WayIn) -> WayInAnswer:
    """Work out whether a finished unit goes in by a way, and how."""
    steps = steps_for(unit, way, into_opening)
    tried = () if all(step.passes for step in steps) else remedies(unit, way, into_opening)
    return WayInAnswer(unit, steps, tuple(_paths(unit, way, steps)), tried)


def _paths(unit: Unit, way: WayIn, steps: tuple[Step, ...]) -> Iterator[Path]:
    for step in steps:
        if step.kind is StepKind.DOORWAY:
            yield _doorway_path(step, way.doors[step.number - 1], way.hands)
        elif step.kind is StepKind.CORNER:
            if step.outline is not None:
                yield _corner_path(step, way.corners[step.number - 1])
        elif step.kind is StepKind.STANDING:
            if step.outline is not None and way.ceiling is not None:
                yield _standing_path(step, way.ceiling)
        elif unit.opening is not None:
            body = body_of(unit)
            yield _opening_path(step, body, niche_of(unit.opening, way, body))


# --- doorways, corners, standing up -------------------------------------------------------


def _doorway_path(step: Step, door: Doorway, hands: float) -> Path:
    assert step.outline is not None
    across, up = step.outline
    high = across * sin(step.roll_rad) + up * cos(step.roll_rad)
    lifted = min(hands, max(0.0, door.height - high))
    pose = Pose(door.width / 2, lifted + high / 2, step.roll_rad)
    scene = doorway_scene(step.outline, door, pose)
    return Path(step, "doorway", scene, (pose,), _hits(scene, pose))


def _corner_path(step: Step, corner: Corner) -> Path:
    assert step.outline is not None
    short, long = sorted(step.outline)
    scene = corner_scene(long, short, corner.before, corner.after)
    if step.passes:
        # What hands leave to spare is as a rule more than the search may miss.
        poses = find_path(scene) or tuple(
            _on_outer_walls(long, short, pi / 2 * part / 12) for part in range(12, -1, -1)
        )
        return Path(step, "plan", scene, poses)
    tight = min(
        (_on_outer_walls(long, short, pi / 2 * part / 180) for part in range(181)),
        key=lambda pose: _corner_room(pose, long, short, corner),
    )
    return Path(step, "plan", scene, (tight,), _hits(scene, tight))


def _on_outer_walls(long: float, short: float, t_rad: float) -> Pose:
    """Where a rectangle is whose long side ends on both outer walls, at ``t_rad`` to one."""
    x, y = long * cos(t_rad) / 2, long * sin(t_rad) / 2
    return Pose(x + short / 2 * sin(t_rad), y + short / 2 * cos(t_rad), -t_rad)


def _corner_room(pose: Pose, long: float, short: float, corner: Corner) -> float:
    """How far the inner corner is beyond the inner side; see `longest_round_corner`."""
    s, c = sin(-pose.turn_rad), cos(pose.turn_rad)
    return corner.before * s + corner.after * c - long * s * c - short


def _standing_path(step: Step, ceiling: float) -> Path:
    """Tilting over the bottom edge at the rear, which stays where it is."""
    assert step.outline is not None
    depth, height = step.outline
    scene = standing_scene(height, depth, ceiling)

    def tilted(turn: float) -> Pose:
        c, s = cos(turn), sin(turn)
        x, y = -depth / 2, height / 2
        return Pose(depth / 2 + c * x - s * y, s * x + c * y, turn)

    if step.passes:
        poses = tuple(tilted(-pi / 2 + pi / 24 * number) for number in range(13))
        return Path(step, "section", scene, poses)
    pose = tilted(-atan2(depth, height))
    return Path(step, "section", scene, (pose,), _hits(scene, pose))


# --- the opening ---------------------------------------------------------------------------


def into_opening(body: Body, niche: Niche, unit: LengthUnit) -> Step:
    """Straight in where that goes, else along the path that a search finds.

    ``spare`` is 0 where a path is only known to go; what is lacking is found to within a few
    mm (:func:`rodwright.way.search.tolerance`).
    """
    found = _better_than_straight(body, niche)
    if found is None:
        return straight_in(body, niche, unit)
    if found.lacking == 0:
        how = {
            "plan": "upright, turned on the floor on its way in",
            "section": "tilted on its way in",
        }[found.view]
        return opening_step(niche, unit, how, 0.0, "")
    held = f"upright, {'turned' if found.view == 'plan' else 'tilted'} as may be"
    return opening_step(niche, unit, held, -found.lacking, ", ".join(found.hits))


@dataclass(frozen=True, slots=True)
class _Found:
    """A path, or the tightest pose, in one view; what the body lacks there, and what it hits."""

    view: str
    lacking: float
    poses: tuple[Pose, ...]
    hits: tuple[str, ...] = ()


def _better_than_straight(body: Body, niche: Niche) -> _Found | None:
    """What a search finds where going straight in doesn't do; None where nothing is better."""
    spare, _ = slide(body, niche).tightest
    if spare >= -TOUCH:
        return None
    found = _search(body, niche)
    return None if found is None or found.lacking >= -spare else found


@lru_cache(maxsize=256)
def _search(body: Body, niche: Niche) -> _Found | None:
    """A path in plan or in section, or what is lacking where the least is lacking.

    None where turning and tilting can't help: the body doesn't fit where it is to stand, or
    it is too large in both views.
    """
    straight = slide(body, niche)
    if straight.inside < -TOUCH:
        return None
    views: list[tuple[str, Callable[[Body, Niche], Scene], float]] = []
    if straight.height[0] >= -TOUCH:
        views.append(("plan", plan_scene, -straight.width[0]))
    if straight.width[0] >= -TOUCH:
        views.append(("section", section_scene, -straight.height[0]))
    for view, make, _ in views:
        path = find_path(make(body, niche))
        if path is not None:
            return _Found(view, 0.0, path)
    # With too little floor before it, no narrower or lower body need ever go in.
    tried = [_least_lacking(body, niche, *view) for view in views if view[2] > 0]
    found = [each for each in tried if each is not None]
    return min(found, key=lambda each: each.lacking, default=None)


def _least_lacking(
    body: Body, niche: Niche, view: str, make: Callable[[Body, Niche], Scene], most: float
) -> _Found | None:
    """Halve down to how much narrower (plan) or lower (section) a body must be to go in.

    ``most`` is what makes it go straight in, if there is floor enough before the opening.
    """

    def try_with(less: float) -> tuple[Pose, ...] | None:
        if view == "plan":
            return find_path(make(replace(body, width=body.width - less), niche), _COARSE)
        return find_path(make(replace(body, height=body.height - less), niche), _COARSE)

    low, high = 0.0, most + _TO
    path = try_with(high)
    if path is None:
        return None
    while high - low > _TO:
        middle = (low + high) / 2
        found = try_with(middle)
        if found is None:
            low = middle
        else:
            high, path = middle, found
    scene = make(body, niche)
    pose = max(_stages(path), key=lambda pose: _overlap(scene, pose))
    return _Found(view, high, (pose,), _hits(scene, pose))


def _stages(poses: tuple[Pose, ...], between: int = 6) -> list[Pose]:
    """The poses of a path and some between each two."""
    stages = [poses[0]]
    for a, b in pairwise(poses):
        for number in range(1, between + 1):
            k = number / between
            stages.append(
                Pose(
                    a.x + k * (b.x - a.x),
                    a.y + k * (b.y - a.y),
                    a.turn_rad + k * (b.turn_rad - a.turn_rad),
                )
            )
    return stages


def _overlap(scene: Scene, pose: Pose) -> float:
    body = placed(scene, pose)
    return float(sum(body.intersection(Polygon(wall.ring)).area for wall in scene.walls))


def _hits(scene: Scene, pose: Pose) -> tuple[str, ...]:
    body = placed(scene, pose)
    return tuple(
        wall.name for wall in scene.walls if body.intersection(Polygon(wall.ring)).area > _TOUCHING
    )


def _opening_path(step: Step, body: Body, niche: Niche) -> Path:
    found = _better_than_straight(body, niche)
    if found is None:
        straight = slide(body, niche)
        in_plan = straight.width[0] <= straight.height[0]
        scene = plan_scene(body, niche) if in_plan else section_scene(body, niche)
        assert isinstance(scene.goal, Pose)
        goal, view = scene.goal, "plan" if in_plan else "section"
        if not step.passes:
            return Path(step, view, scene, (goal,), _hits(scene, goal))
        away = body.overall_depth * 1.5
        start = replace(goal, y=goal.y - away) if in_plan else replace(goal, x=goal.x - away)
        return Path(step, view, scene, (start, goal))
    scene = (plan_scene if found.view == "plan" else section_scene)(body, niche)
    return Path(step, found.view, scene, found.poses, found.hits)
