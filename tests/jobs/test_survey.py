from __future__ import annotations

import json
from collections.abc import Sequence
from pathlib import Path

import pytest
from shapely import Polygon, box

from kit.openings import FULLY_READ
from kit.planes import outline
from kit.specs import spec_from
from rodwright.jobs.survey import survey, write_survey
from rodwright.opening.adjustment import Plane, solve_plane
from rodwright.opening.readings import Reading
from rodwright.problems import ProblemsError
from rodwright.wishes.reading.files import parse_spec


def test_the_sheet_hangs_together() -> None:
    """What the parts say and what the sheet says of them is one thing; by shapely the unit
    stands clear of the shape by the gaps on the sheet."""
    fit = survey(spec_from(FULLY_READ)).fit
    assert fit is not None
    width, height = fit.size
    unit = box(0.0, 0.0, width, height)
    for name, plane in fit.shape.planes.items():
        corners = outline(plane)
        assert Polygon(corners).buffer(1e-3).covers(unit)
        corner_gaps = [
            each.gap for each in fit.gaps if each.plane == name and each.side in ("left", "right")
        ]
        assert min(corner_gaps) > 2.0
        half = height / 2
        total = sum(each.gap for each in fit.gaps if (each.plane, each.at) == (name, half))
        level = Polygon(corners).intersection(box(-500.0, half - 1e-7, 5000.0, half + 1e-7))
        assert total + width == pytest.approx(level.bounds[2] - level.bounds[0], abs=1e-3)
    assert fit.spare.width >= 7.0
    assert fit.gains == ()
    assert [closing.side for closing in fit.closings] == ["left", "right", "top"]


def test_a_frame_on_a_base_is_not_cut_to_the_floor() -> None:
    base = {"kind": "plinth", "height": 100}
    framed, raised = (survey(spec_from(FULLY_READ, **more)).fit for more in ({}, {"base": base}))
    assert framed is not None and framed.frame is not None
    assert raised is not None and raised.frame is None
    assert raised.size == framed.size


def test_what_is_worth_reading() -> None:
    """The reading named first settles most: taken, it leaves more that surely goes in."""
    few = "opening: {width: 900, height: 2400, depth: 300}\n"
    fit = survey(spec_from(few)).fit
    assert fit is not None
    best = fit.gains[0]
    assert "wall" in best.reading
    side = "left" if "left" in best.reading else "right"
    more = few.replace(
        "depth: 300", f"depth: 300, plumb: {{{side}: {{out: 0, over: 1000, leans: in}}}}"
    )
    after = survey(spec_from(more)).fit
    assert after is not None
    gained = after.survey.least[0] - fit.survey.least[0]
    assert gained == pytest.approx(best.width, abs=0.2)


def test_the_file_says_what_the_sheet_says(tmp_path: Path) -> None:
    sheet = survey(spec_from(FULLY_READ))
    files = {path.name: path for path in write_survey(sheet, tmp_path)}
    assert set(files) == {
        "survey.json", "opening.svg", "opening.png", "opening-rear.svg", "opening-rear.png"
    }  # fmt: skip
    document = json.loads(files["survey.json"].read_text(encoding="utf-8"))
    assert sheet.fit is not None
    assert document["unit"] == {"width": sheet.fit.size[0], "height": sheet.fit.size[1]}
    front, rear = document["planes"]
    assert len(front["readings"]) == 12
    assert sum(each["assumed"] for each in front["readings"]) == 0
    assert any(each["assumed"] for each in rear["readings"])
    assert set(document["frame"]["angles"]) == {
        "bottom left", "bottom right", "top right", "top left"
    }  # fmt: skip
    assert sum(document["frame"]["angles"].values()) == pytest.approx(360.0, abs=0.01)
    assert len(document["cautions"]) == 3


def test_a_wrong_reading_is_shown_with_its_place(tmp_path: Path) -> None:
    text = f"title: Test\ncarcass: {{stock: ply}}\n{FULLY_READ}".replace("2366", "2380")
    text += (
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "  ash: {kind: board, material: ash, thickness: 22}\n"
    )
    sheet = survey(parse_spec(text, "alcove.yaml"))
    (problem,) = sheet.problems
    assert problem.file == "alcove.yaml"
    assert text.splitlines()[(problem.line or 0) - 1].startswith("  diagonals:")
    assert "about 2366" in problem.message
    assert sheet.fit is None
    assert [path.name for path in write_survey(sheet, tmp_path)] == ["survey.json"]


@pytest.mark.parametrize("wish", [{}, {"back": {"stock": "nowhere"}}], ids=["sound", "refused"])
def test_no_plane_is_solved_twice(monkeypatch: pytest.MonkeyPatch, wish: dict[str, object]) -> None:
    solved: list[tuple[str, Sequence[Reading]]] = []

    def solve(name: str, readings: Sequence[Reading]) -> Plane:
        solved.append((name, tuple(readings)))
        return solve_plane(name, readings)

    monkeypatch.setattr("rodwright.opening.survey.solve_plane", solve)
    survey(spec_from(FULLY_READ, **wish))
    assert solved
    assert [each for each in solved if solved.count(each) > 1] == []


def test_nothing_to_survey() -> None:
    with pytest.raises(ProblemsError, match="no opening to survey"):
        survey(spec_from("size: {width: 800, height: 900, depth: 300}\n"))


def test_files_beside_a_build_are_left_alone(tmp_path: Path) -> None:
    kept = tmp_path / "parts-list.csv"
    kept.write_text("part\n", encoding="utf-8")
    sheet = survey(spec_from(FULLY_READ))
    first = {path: path.read_bytes() for path in write_survey(sheet, tmp_path)}
    again = {path: path.read_bytes() for path in write_survey(sheet, tmp_path)}
    assert first == again
    assert kept.exists()


REFUSED = "interior: {shelves: {at: [9000]}}"


def test_what_else_is_wrong_keeps_no_opening_from_being_surveyed(tmp_path: Path) -> None:
    """A plain box of the unit's size has the gaps of the unit."""
    text = f"title: Test\ncarcass: {{stock: ply}}\n{FULLY_READ}"
    text += (
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "  ash: {kind: board, material: ash, thickness: 22}\n"
    )
    whole = survey(parse_spec(text, "alcove.yaml"))
    sheet = survey(parse_spec(text.replace("interior: {shelves: {count: 3}}", REFUSED), "a.yaml"))
    assert whole.fit is not None and sheet.fit is not None
    assert sheet.fit.size == whole.fit.size
    assert sheet.fit.gaps == whole.fit.gaps
    assert sheet.fit.packing == whole.fit.packing
    assert (sheet.fit.closings, sheet.fit.frame) == ((), None)
    assert "face frame" in sheet.not_shown
    assert not whole.not_shown
    (problem,) = sheet.problems
    assert problem.file == "a.yaml" and problem.where[0] == "interior"
    names = [path.name for path in write_survey(sheet, tmp_path)]
    assert "opening.svg" in names
    assert "Not shown" in (tmp_path / "survey" / "opening.svg").read_text(encoding="utf-8")


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_a_survey_needs_no_stock_and_no_base_that_does(unit: str) -> None:
    lengths = (
        "width: 1200, height: 2000, depth: 400"
        if unit == "mm"
        else ("width: 48, height: 80, depth: 16")
    )
    text = f"unit: {unit}\nopening: {{{lengths}}}\n"
    spec = spec_from(text, carcass={"stock": "unknown"}, base={"kind": "plinth", "height": 1900})
    sheet = survey(spec)
    assert sheet.fit is not None and sheet.problems
    assert sheet.fit.size[0] == pytest.approx(1193.0 if unit == "mm" else 25.4 * 47.75)
