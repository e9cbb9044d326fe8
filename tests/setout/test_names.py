"""Names of parts are told to makers, and nothing else: reworded, they change no unit."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from kit.specs import problems_of, unit_from
from rodwright.setout import set_out
from rodwright.setout.bench import Bench
from rodwright.unit import Part, Unit
from rodwright.wishes.reading.files import read_spec

MODELS = sorted((Path(__file__).parents[2] / "models").glob("*.yaml"))
SLOPING = """
size: {width: 1200, height: 1800, depth: 400}
slope: {falls: left, low: 1400, pitch: 40, clearance: 0}
interior: {columns: [{width: 1 share, shelves: {count: 1}}, {width: 1 share}]}
"""


def nameless(unit: Unit) -> Unit:
    return replace(unit, parts=tuple(replace(part, name="") for part in unit.parts))


def reword(monkeypatch: pytest.MonkeyPatch) -> None:
    """From now on every part is called by its ref alone, backwards."""
    add = Bench.add

    def renamed(bench: Bench, part: Part) -> Part:
        return add(bench, replace(part, name=part.ref[::-1]))

    monkeypatch.setattr(Bench, "add", renamed)


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_models_with_other_names(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    unit = set_out(read_spec(path))
    reword(monkeypatch)
    assert nameless(set_out(read_spec(path))) == nameless(unit)


@pytest.mark.parametrize("corners", ["mitred", "butted"])
def test_a_face_frame_under_a_slope_with_other_names(
    corners: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    frame = {"stock": "ash", "width": 50, "corners": corners, "mid_stiles": 40}
    unit = unit_from(SLOPING, face_frame=frame)
    reword(monkeypatch)
    assert nameless(unit_from(SLOPING, face_frame=frame)) == nameless(unit)


def test_a_top_rail_too_short_under_a_slope_is_told_under_any_name(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    frame = {"stock": "ash", "width": 120, "corners": "butted"}
    slope = {"falls": "left", "low": 1400, "pitch": 22, "clearance": 0}
    (told,) = problems_of(SLOPING, face_frame=frame, slope=slope, interior={})
    assert told.startswith("face_frame: the slope leaves the face frame's top rail")
    reword(monkeypatch)
    assert problems_of(SLOPING, face_frame=frame, slope=slope, interior={}) == [told]
