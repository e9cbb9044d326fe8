"""Places on rods worked out again from unit.json alone: what a rod lacks, and what it invents."""

from __future__ import annotations

import json
import math
from collections.abc import Iterator
from itertools import product
from typing import Any

import numpy as np
from scipy.optimize import linprog
from scipy.spatial import HalfspaceIntersection

from rodwright.handover.unit_json import unit_json
from rodwright.paper.rods.rods import Rod, rods_of
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit

NEAR = 0.06
AXES = {"width": 0, "depth": 1, "height": 2}
RUNS = {"near end": 0, "far end": 0, "face edge": 1, "back edge": 1, "reverse": 2, "face": 2}
HIGH = {"far end", "back edge", "face"}
"""Surfaces by the axis across them, and which of them are at its high end."""


def places_on(rod: Rod) -> dict[str, list[float]]:
    """Every place on a rod that is marked on a part, by its ref, or told of it."""
    found: dict[str, list[float]] = {}
    for track in rod.tracks:
        for piece in track.pieces:
            for mark in piece.marks:
                for ref in {*piece.refs, *mark.of}:
                    found.setdefault(ref, []).append(mark.at)
    return found


def missing(unit: Unit) -> Iterator[str]:
    """Places of ends and workings, worked out from unit.json, that are on no rod."""
    document = json.loads(unit_json(laid_unit(unit)))
    boxes = [ends_of(part) for part in document["parts"]]
    start = np.min([low for low, _ in boxes], axis=0)
    if not unit.hung:
        start[2] = min(start[2], 0.0)
    for rod in rods_of(unit):
        axis, there = AXES[rod.name], places_on(rod)
        for part in document["parts"]:
            on = np.array(there.get(part["ref"], []))
            for at, what in wanted(part, axis):
                if not np.any(abs(on - (at - start[axis])) < NEAR):
                    yield f"{rod.name} rod: {part['ref']} {what} at {at - start[axis]:.3f}"


def ends_of(part: dict[str, Any]) -> tuple[Any, Any]:
    """The low and high corner of what is left of a part's blank, unit frame: of the eight corners,
    or of those that slanting cuts leave."""
    corners = placed(part, hull(part))
    return corners.min(axis=0), corners.max(axis=0)


def hull(part: dict[str, Any]) -> Any:
    """Corners of a part's blank less its slanting cuts, part frame, by scipy's half-spaces."""
    size = np.array([part["blank"][key] for key in ("length", "width", "thickness")])
    slants = [slant(each, size) for each in part["workings"] if each["kind"] in {"mitre", "bevel"}]
    if not slants:
        return np.array(list(product(*((0.0, each) for each in size))))
    rows = [[*(-row), 0.0] for row in np.eye(3)]
    rows += [[*row, -each] for row, each in zip(np.eye(3), size, strict=True)] + slants
    inside = linprog(
        [0.0, 0.0, 0.0, -1.0],
        A_ub=[[*row[:3], 1.0] for row in rows],
        b_ub=[-row[3] for row in rows],
        bounds=[(None, None)] * 4,
    ).x[:3]
    return HalfspaceIntersection(np.array(rows), inside).intersections


def slant(working: dict[str, Any], size: Any) -> list[float]:
    """The half-space that a mitre or a bevel leaves: normal and offset, from its own figures."""
    if working["kind"] == "mitre":
        end, long = working["end"], working["long"]
        reach = size[RUNS[long]]
        legs = ((end, reach * math.tan(math.radians(working["angle"]))), (long, -reach))
        # It comes down to the far side of `long` so far from the end.
        other = {RUNS[end]: at_side(end, size), RUNS[long]: at_side(long, size)}
        first = np.zeros(3)
        for axis, value in other.items():
            first[axis] = value
        second = first.copy()
        second[RUNS[end]] += legs[0][1] * (-1 if end in HIGH else 1)
        second[RUNS[long]] = size[RUNS[long]] - first[RUNS[long]]
        taken = first.copy()
        taken[RUNS[long]] = second[RUNS[long]]
    else:
        surface, edge = working["surface"], working["edge"]
        taken = np.zeros(3)
        taken[RUNS[surface]], taken[RUNS[edge]] = at_side(surface, size), at_side(edge, size)
        first, second = taken.copy(), taken.copy()
        first[RUNS[edge]] += working["width"] * (-1 if edge in HIGH else 1)
        second[RUNS[surface]] += working["depth"] * (-1 if surface in HIGH else 1)
    run = (
        {0, 1, 2}
        - {int(np.flatnonzero(first != taken)[0]), int(np.flatnonzero(second != taken)[0])}
    ).pop()
    normal = np.cross(second - first, np.eye(3)[run])
    normal /= np.linalg.norm(normal)
    if normal @ (taken - first) < 0:
        normal = -normal
    return [*normal, -float(normal @ first)]


def at_side(surface: str, size: Any) -> float:
    return float(size[RUNS[surface]]) if surface in HIGH else 0.0


def placed(part: dict[str, Any], points: Any) -> Any:
    matrix = np.array(part["matrix"])
    return points @ matrix[:3, :3].T + matrix[:3, 3]


def wanted(part: dict[str, Any], axis: int) -> Iterator[tuple[float, str]]:
    """Places along an axis of the unit that a maker has to find on the rod."""
    low, high = (float(end[axis]) for end in ends_of(part))
    yield low, "low end"
    yield high, "high end"
    directions = np.array(part["matrix"])[:3, :3]
    own = [each for each in range(3) if abs(directions[axis, each]) > 1 - 1e-9]
    size = np.array([part["blank"][key] for key in ("length", "width", "thickness")])
    for each in part["workings"]:
        for point, what in points_of(each, size, own[0] if own else None):
            at = float(placed(part, np.array([point]))[0, axis])
            if low + NEAR < at < high - NEAR:
                yield at, f"{each['kind']} {what}"


def points_of(each: dict[str, Any], size: Any, along: int | None) -> Iterator[tuple[Any, str]]:
    """Points of a working that give its places along an axis of its part: the middles of holes,
    the sides and the bottoms of what has flat ones."""
    kind, surface = each["kind"], each.get("surface")
    if along is None or kind in {"mitre", "bevel", "easing"}:
        return
    if kind == "hole":
        point = np.zeros(3)
        point[[axis for axis in range(3) if axis != RUNS[surface]]] = each["position"]
        if RUNS[surface] != along:
            yield point, "middle"
        return
    if kind == "pockethole":
        point = np.zeros(3)
        run = 3 - RUNS[surface] - RUNS[each["end"]]
        point[run] = each["position"]
        if run == along:
            yield point, "middle"
        return
    for side, box in zip(("low", "high"), extents(each, size), strict=True):
        point = np.zeros(3)
        point[along] = box[along]
        yield point, side


def extents(each: dict[str, Any], size: Any) -> Any:
    """Low and high corner of what a working takes, part frame."""
    low, high = np.zeros(3), np.array(size, dtype=float)

    def under(surface: str, depth: float) -> None:
        axis = RUNS[surface]
        if surface in HIGH:
            low[axis] = max(low[axis], size[axis] - depth)
        else:
            high[axis] = min(high[axis], depth)

    kind = each["kind"]
    if kind == "notch":
        low[:2] = each["x"], each["y"]
        high[:2] = each["x"] + each["length"], each["y"] + each["width"]
        return low, high
    under(each["surface"], each["depth"])
    axis = RUNS[each["surface"]]
    if kind == "mortise":
        across = [number for number in range(3) if number != axis]
        low[across], high[across] = each["position"], np.add(each["position"], each["extent"])
        return low, high
    if kind == "rebate":
        under(each["edge"], each["width"])
        run = 3 - axis - RUNS[each["edge"]]
    elif kind == "fingerpull":
        reach = math.sqrt(each["depth"] * (2 * each["radius"] - each["depth"]))
        under(each["edge"], each["position"] + reach)
        other = RUNS[each["edge"]]
        if each["edge"] in HIGH:
            high[other] = min(high[other], size[other] - each["position"] + reach)
        else:
            low[other] = max(low[other], each["position"] - reach)
        run = 3 - axis - other
    else:
        run = 0 if kind == "groove" else 1
        across = 3 - axis - run
        low[across], high[across] = each["position"], each["position"] + each["width"]
    low[run] = each["start"]
    high[run] = size[run] if each["stop"] is None else each["stop"]
    return low, high


def invented(unit: Unit) -> Iterator[str]:
    """Lines of rods at which unit.json has neither an end nor a working of what they are said to
    mark; slides and hinges have tests of their own."""
    document = json.loads(unit_json(laid_unit(unit)))
    parts = {part["ref"]: part for part in document["parts"]}
    start = np.min([ends_of(part)[0] for part in parts.values()], axis=0)
    if not unit.hung:
        start[2] = min(start[2], 0.0)
    for rod in rods_of(unit):
        axis = AXES[rod.name]
        ends = {ref: placed(part, hull(part))[:, axis] for ref, part in parts.items()}
        cuts = {ref: np.array([at for at, _ in wanted(part, axis)]) for ref, part in parts.items()}
        for piece in (piece for track in rod.tracks for piece in track.pieces):
            for mark in piece.marks:
                places, refs = (
                    (ends, mark.of) if mark.kind in {"end", "board", "edge"} else (cuts, piece.refs)
                )
                near = [abs(places[ref] - mark.at - start[axis]).min() < NEAR for ref in refs]
                if mark.kind != "ware" and not all(near):
                    yield f"{rod.name} rod: {mark} on {piece.on}"
