"""The whole answer, its files, and the command."""

from __future__ import annotations

import json
import subprocess
import sys
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PIL import Image
from typer.testing import CliRunner

import rodwright
from kit.samples import bookcase
from kit.specs import STOCK, unit_from
from rodwright.pictures.way import way_drawings
from rodwright.problems import ProblemsError
from rodwright.unit import Unit
from rodwright.unit.facts import fitted_size
from rodwright.unit.way import WayIn
from rodwright.way.answer import into_opening
from rodwright.way.body import Body, Niche, body_of, niche_of, rest, slide
from rodwright.way.remedies import steps_for
from rodwright_cli.main import app

CABINET = """
title: Hall cabinet
opening: {width: 1209, height: 2027, depth: 700}
size: {width: 1000, height: 1900, depth: 330}
carcass: {stock: ply}
way_in:
  ceiling: 2400
  doors: [{width: 760, height: 1050}]
  corners: [{before: 1200, after: 1150}]
  mouth: {height: 1885, thickness: 25}
"""


def way(unit: Unit) -> WayIn:
    assert unit.way_in is not None
    return unit.way_in


def test_every_step_is_answered_and_drawn(tmp_path: Path) -> None:
    answer = rodwright.way_in(unit_from(CABINET))
    assert answer.goes
    assert [step.name for step in answer.steps] == [
        "doorway-1",
        "corner-1",
        "standing",
        "opening",
    ]
    assert answer.steps[0].held == "on its side, end first"
    assert not answer.remedies
    names = rodwright.write_way_in(answer, tmp_path / "way")
    assert names == (
        "1-doorway-1.png", "1-doorway-1.svg", "2-corner-1.png", "2-corner-1.svg",
        "3-standing.png", "3-standing.svg", "4-opening.png", "4-opening.svg", "way-in.json",
    )  # fmt: skip
    ElementTree.parse(tmp_path / "way" / "4-opening.svg")
    with Image.open(tmp_path / "way" / "4-opening.png") as picture:
        colours = picture.convert("RGB").getcolors(1 << 24)
    assert colours is not None
    assert [each for _, each in colours if each[0] > 180 and each[1] < 80] == []
    document = json.loads((tmp_path / "way" / "way-in.json").read_bytes())
    assert document["goes"] is True
    assert len(document["paths"][3]["poses"]) > 2


def test_equal_answers_give_equal_files(tmp_path: Path) -> None:
    for folder in ("one", "two"):
        rodwright.write_way_in(rodwright.way_in(unit_from(CABINET)), tmp_path / folder)
    for name in ("2-corner-1.svg", "4-opening.svg", "way-in.json"):
        assert (tmp_path / "one" / name).read_bytes() == (tmp_path / "two" / name).read_bytes()


def test_a_no_is_drawn_in_red_with_its_amount(tmp_path: Path) -> None:
    unit = unit_from(CABINET.replace("ceiling: 2400", "ceiling: 1920"))
    answer = rodwright.way_in(unit)
    standing = answer.steps[2]
    assert standing.spare == pytest.approx(1920 - (1900**2 + 330**2) ** 0.5)
    assert any(remedy.works for remedy in answer.remedies)
    rodwright.write_way_in(answer, tmp_path / "way")
    text = (tmp_path / "way" / "3-standing.svg").read_text(encoding="utf-8")
    assert "8.4 mm short at the ceiling" in text
    with Image.open(tmp_path / "way" / "3-standing.png") as picture:
        colours = picture.convert("RGB").getcolors(1 << 24)
    assert colours is not None
    assert any(red > 180 and green < 80 for _, (red, green, _) in colours)


def test_the_command(tmp_path: Path) -> None:
    spec = tmp_path / "cabinet.yaml"
    spec.write_text(CABINET + STOCK, encoding="utf-8")
    run = CliRunner().invoke(app, ["way-in", str(spec)])
    assert run.exit_code == 0
    assert "The finished unit goes in." in run.output
    spec.write_text(CABINET.replace("ceiling: 2400", "ceiling: 1920") + STOCK, encoding="utf-8")
    run = CliRunner().invoke(app, ["way-in", str(spec)])
    assert run.exit_code == 1
    assert "8.4 mm short" in run.output
    assert "would do" in run.output


def test_the_answer_needs_no_geometry_kernel(tmp_path: Path) -> None:
    spec = tmp_path / "cabinet.yaml"
    spec.write_text(CABINET + STOCK, encoding="utf-8")
    code = (
        "import sys, rodwright\n"
        "from pathlib import Path\n"
        "unit = rodwright.set_out(rodwright.read_spec(Path(sys.argv[1])))\n"
        "assert rodwright.way_in(unit).goes\n"
        "assert not {'cadquery', 'OCP', 'vtkmodules'} & set(sys.modules)\n"
    )
    subprocess.run([sys.executable, "-c", code, str(spec)], check=True)


def test_without_a_way_in() -> None:
    with pytest.raises(ProblemsError, match="way_in"):
        rodwright.way_in(bookcase())


OVERLAY = """
opening: {width: {bottom: 1200, top: 1196}, height: 2300, depth: 340}
carcass: {stock: ply}
interior: {doors: {hung: overlay, count: 2}}
way_in: {ceiling: 3000}
"""


def test_doors_that_stand_before_the_opening_take_none_of_its_depth() -> None:
    unit = unit_from(OVERLAY)
    doors = -min(part.bounds().low[1] for part in unit.parts)
    assert doors >= 18.0
    for found in (rodwright.way_in(unit).steps, steps_for(unit, way(unit))):
        assert found[-1].passes
    # The carcass alone is as deep as the opening: a millimetre more is too much.
    for depth, goes in ((340.0, True), (341.0, False)):
        deep = unit_from(f"{OVERLAY}size: {{depth: {depth}}}\n")
        assert rodwright.way_in(deep).steps[-1].passes is goes
    assert fitted_size(unit)[2] == pytest.approx(340.0)
    assert body_of(unit).depth_inside == pytest.approx(340.0)
    assert body_of(unit).overall_depth == pytest.approx(340.0 + doors)


def test_doors_wider_than_a_mouth_stand_behind_it() -> None:
    """There is no room then for what would else stand before the opening."""
    text = OVERLAY.replace("ceiling: 3000", "mouth: {width: 1150, thickness: 25}")
    unit = unit_from(text)
    body = body_of(unit)
    assert unit.opening is not None
    niche = niche_of(unit.opening, way(unit), body)
    assert rest(body, niche) == pytest.approx(340.0 - body.overall_depth)
    assert slide(body, niche).inside == pytest.approx(340.0 - body.overall_depth - 25.0)


def test_the_search_puts_doors_before_the_opening_too() -> None:
    """Between nibs the carcass is turned; its doors would run into the rear wall else."""
    body = Body(1000.0, 1990.0, 354.0, proud=24.0)
    place = Niche(1200.0, 2000.0, 400.0, 1050.0, 2000.0, 20.0, 0.0, 0.0, None, None)
    assert into_opening(body, place, "mm").passes
    shallow = replace(place, depth=329.0)
    assert not into_opening(body, shallow, "mm").passes
    assert into_opening(body, replace(place, depth=331.0), "mm").passes


def test_the_opening_is_named_as_check_names_it() -> None:
    unit = unit_from(OVERLAY)
    named = "the opening (1196 x 2300 mm as read at its tightest)"
    answer = rodwright.way_in(unit)
    assert answer.steps[-1].place == named
    assert any(named in drawing.title for drawing in way_drawings(answer).values())


def test_files_are_named_whatever_the_steps_are_called() -> None:
    answer = rodwright.way_in(unit_from(CABINET))
    reworded = tuple(replace(path, step=replace(path.step, place="?")) for path in answer.paths)
    names = ["1-doorway-1", "2-corner-1", "3-standing", "4-opening"]
    assert list(way_drawings(replace(answer, paths=reworded))) == names
