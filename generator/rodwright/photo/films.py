"""Moving pictures: round the unit, and the unit built up part by part."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

import numpy as np

from rodwright.geometry import Box, Vector, times
from rodwright.making.order import order_of
from rodwright.making.steps import Step
from rodwright.photo.bodies import flush_in, unit_bodies
from rodwright.photo.developing import developed, metered, webp
from rodwright.photo.scene import Camera, Scene
from rodwright.photo.shots import Progress, untold
from rodwright.photo.stamp import stamp_of
from rodwright.photo.studio import round_it, studio_round
from rodwright.photo.tracing import Quality, Tracer
from rodwright.photo.views import texel_of
from rodwright.unit import Unit
from rodwright.unit.directions import FORWARD

_ROUND = 40
"""Pictures of one turn round the unit."""
_SHOWN = 110
"""How long each picture of a turn is shown, milliseconds: some four seconds and a half a turn."""
_FLIGHT, _SHOWN_FLYING = 5, 80
"""Pictures from where a part begins to where it sits, and how long each is shown."""
_MOST = 120
"""Pictures of a build-up: where there are more steps than fit, parts set out before the one before
them has arrived."""
_STILL = 3000
"""How long the finished unit is shown, milliseconds."""
_LIFTING = 4
"""So many pictures before parts come in from below, and after it, the unit is lifted and set down
in."""
_LEAST_WAY = 0.22
"""The least way that a part comes, as a share of the unit's longest side."""
_TURNED = 28.0
"""How far to its left the camera of a build-up stands, degrees."""


def turntable(unit: Unit, quality: Quality, *, seed: int = 0, progress: Progress = untold) -> bytes:
    """Once round the unit as it stands, as a WebP file that moves.

    Raises:
        ProblemsError: Mitsuba or Open Image Denoise isn't installed.
        ValueError: a part's workings leave no single solid.
    """

    def told(share: float) -> None:
        progress("turntable", share)

    told(0.0)
    box = unit.envelope
    studio = studio_round(box, box.low[2])
    turns = [360.0 * number / _ROUND for number in range(_ROUND)]
    cameras = round_it(box, turns, quality.size, box.low[2])
    bodies = unit_bodies(unit, {}, texel=texel_of(unit, quality.size), seed=seed)
    scene = Scene((*bodies, *studio.bodies), studio.lamps, cameras[0], studio.sky)
    meter, frames = None, []
    for traced in Tracer().trace_from(scene, cameras, quality, seed=seed, progress=told):
        meter = meter or metered(traced)  # the first for all, or it would flicker
        frames.append(developed(traced, meter))
    return webp(frames, [_SHOWN] * len(frames), stamp_of(unit, "turntable"))


def build_up(unit: Unit, quality: Quality, *, seed: int = 0, progress: Progress = untold) -> bytes:
    """The parts coming in in the order of assembly, as a WebP file that moves.

    What is made apart comes as one, but for the largest of it, which is seen being made where it
    stands.

    Raises:
        ProblemsError: Mitsuba or Open Image Denoise isn't installed.
        ValueError: a part's workings leave no single solid.
    """

    def told(share: float) -> None:
        progress("build-up", share)

    told(0.0)
    all_moves = lifted(unit, frames_of(flights_of(unit)))
    studio = studio_round(unit.envelope, unit.envelope.low[2])
    camera = _camera(unit, quality.size, all_moves)
    texel, flush = texel_of(unit, quality.size), flush_in(unit)

    def scene(moves: dict[str, Vector]) -> Scene:
        there = replace(
            unit,
            parts=tuple(part for part in unit.parts if part.ref in moves),
            fittings=tuple(each for each in unit.fittings if each.ref in moves),
        )
        bodies = unit_bodies(there, moves, texel=texel, seed=seed, flush=flush)
        return Scene((*bodies, *studio.bodies), studio.lamps, camera, studio.sky)

    tracer = Tracer()
    last = tracer.trace(scene(all_moves[-1]), quality, seed=seed)
    meter = metered(last)  # of the whole unit, for all
    frames = []
    for number, moves in enumerate(all_moves[:-1], 1):
        frames.append(developed(tracer.trace(scene(moves), quality, seed=seed), meter))
        told(number / len(all_moves))
    frames.append(developed(last, meter))
    return webp(frames, [*[_SHOWN_FLYING] * (len(frames) - 1), _STILL], stamp_of(unit, "build-up"))


@dataclass(frozen=True, slots=True)
class Flight:
    """Parts that come in together, each from so far off (mm, unit frame, by ref) to its place."""

    off: dict[str, Vector]


def flights_of(unit: Unit) -> tuple[Flight, ...]:
    """How the parts of a unit come in, one flight after the other; the first stand there."""
    steps = order_of(unit).steps
    own = [step for step in steps if not step.within]
    largest = max(own, key=lambda step: len(step.refs) if step.brings else 0)
    made = [step for step in steps if largest.brings and step.within == largest.brings]
    seen = [each for step in own for each in (made if step is largest and made else [step])]
    least = _LEAST_WAY * max(unit.size)
    return tuple(_flight(step, least, first=number == 0) for number, step in enumerate(seen))


def _flight(step: Step, least: float, *, first: bool) -> Flight:
    if first:
        return Flight(dict.fromkeys(step.refs, (0.0, 0.0, 0.0)))
    if step.drawn:
        return Flight(
            {
                ref: _farther(times(way, -1.0), least)
                for ref, way in zip(step.refs, step.drawn, strict=True)
            }
        )
    away = times(step.towards, -1.0) if any(step.towards) else FORWARD
    return Flight(dict.fromkeys(step.refs, times(away, step.travel + least)))


def _farther(off: Vector, least: float) -> Vector:
    far = float(np.linalg.norm(off))
    return times(off, 1.0 + least / far) if far else off


def frames_of(flights: Sequence[Flight]) -> list[dict[str, Vector]]:
    """By how much each part that is there already is off its place, picture by picture."""
    coming = len(flights) - 1
    stride = min(float(_FLIGHT), (_MOST - _FLIGHT - 2) / max(1, coming - 1))
    count = 2 + (round(stride * (coming - 1)) + _FLIGHT if coming else 0)
    frames = []
    for number in range(count):
        moves: dict[str, Vector] = {}
        for order, flight in enumerate(flights):
            begun = number - 1 - stride * (order - 1)
            if order and begun < 0:
                continue
            share = 1.0 if not order else min(1.0, begun / _FLIGHT)
            left = (1.0 - share) ** 2  # fast at first, and gently in
            moves |= {ref: times(off, left) for ref, off in flight.off.items()}
        frames.append(moves)
    return frames


def lifted(unit: Unit, frames: Sequence[dict[str, Vector]]) -> list[dict[str, Vector]]:
    """The same pictures with all that is there lifted off the floor for as long as parts come in
    from below, and set down on it again at the end."""
    low = {part.ref: part.bounds().low[2] for part in unit.parts}
    floor = unit.envelope.low[2]
    below = [
        max(floor - min(low[ref] + move[2] for ref, move in moves.items()), 0.0) for moves in frames
    ]
    late = 2 * _LIFTING + 1 if any(below[-2 * _LIFTING - 1 :]) else 0
    frames, below = [*frames, *[frames[-1]] * late], [*below, *[0.0] * late]
    # As high as it has to be a little before and after, and the mean of that: never jerky, and
    # never too low.
    steps = range(len(frames))
    high = [max(below[max(0, at - _LIFTING) : at + _LIFTING + 1]) for at in steps]
    ups = [float(np.mean(high[max(0, at - _LIFTING) : at + _LIFTING + 1])) for at in steps]
    return [
        {ref: (x, y, z + up) for ref, (x, y, z) in moves.items()}
        for moves, up in zip(frames, ups, strict=True)
    ]


def _camera(unit: Unit, size: int, frames: Sequence[dict[str, Vector]]) -> Camera:
    low, high = unit.envelope.low, unit.envelope.high
    first = next(iter(frames[0]))
    lift = max(moves[first][2] for moves in frames)
    room = 0.12 * max(unit.size)  # so that what comes in is seen coming
    box = Box((low[0] - room, low[1], low[2]), (high[0] + room, high[1], high[2] + room + lift))
    (camera,) = round_it(box, [-_TURNED], size, low[2])
    return camera
