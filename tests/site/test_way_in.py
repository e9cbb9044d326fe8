"""The whole answer, its files, and the command."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path
from xml.etree import ElementTree

import pytest
from PIL import Image
from typer.testing import CliRunner

import rodwright
from rodwright.problems import ProblemsError
from rodwright_cli.main import app
from samples import bookcase
from specs import STOCK, unit_from

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


def test_every_step_is_answered_and_drawn(tmp_path: Path) -> None:
    answer = rodwright.way_in(unit_from(CABINET))
    assert answer.goes
    assert [step.place.split(" (")[0] for step in answer.steps] == [
        "doorway 1",
        "corner 1",
        "standing it up",
        "the opening",
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
    assert not any(red > 180 and green < 80 for _, (red, green, _) in colours)
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
