"""`rodwright rack` as a maker uses it."""

from __future__ import annotations

import json
import re
from pathlib import Path

import jsonschema
import pytest
from ruamel.yaml import YAML
from typer.testing import CliRunner

import rodwright
from rodwright.cutting.supplies import Flaw
from rodwright.cutting.taking import Comes, Taking, Used, taking_record
from rodwright.jobs.rack import parse_rack
from rodwright.jobs.rack.starting import example_rack
from rodwright_cli.main import app

PAGE = (Path(__file__).parents[2] / "docs" / "rack.md").read_text(encoding="utf-8")
IN_PAGE = re.findall(r"```yaml\n(.*?)```", PAGE, flags=re.DOTALL)


def run(*words: str | Path, width: int = 120) -> tuple[int, str]:
    said = CliRunner().invoke(app, ["rack", *map(str, words)], env={"COLUMNS": str(width)})
    if said.exception is not None and not isinstance(said.exception, SystemExit):
        return 2, str(said.exception)
    return said.exit_code, said.output


@pytest.fixture
def rack(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    assert run("new")[0] == 0
    return tmp_path / "rack.yaml"


def test_a_new_rack_is_the_one_that_ships(rack: Path) -> None:
    assert rack.read_text() == example_rack().read_text()
    code, said = run("new")
    assert code == 2 and "`rack.yaml` is there already" in said


def test_what_is_shown(rack: Path) -> None:
    code, said = run("show", rack)
    assert code == 0
    lines = [" ".join(line.split()) for line in said.splitlines()]
    assert "birch 18 birch plywood 2440 x 1220 x 18 2 5.95 m2 74.00 148.00 wall" in lines
    assert any(
        line.startswith("pine 20 x 44 scots pine 2400 x 44 x 20 6 14.4 m 3.84") for line in lines
    )
    # 5.954 + 2.977 + 0.454 + 2.160 + 1.664 m2 and 148 + 31 + 85.36 + 23.04, by hand.
    assert "At hand: 13.21 m2 and 14.4 m of section, worth 287.40." in lines
    assert "Not in that sum, as nobody said what they cost: K1, school shelf." in lines
    assert run("show", width=60)[0] == 0


def test_an_empty_rack_and_one_in_inches(tmp_path: Path) -> None:
    file = tmp_path / "rack.yaml"
    file.write_text("unit: in\n")
    code, said = run("show", file)
    assert code == 0 and "There is nothing in the rack." in said
    assert "Cut with: table saw, kerf 1/8 in." in said
    file.write_text(
        "unit: in\nstock: {B: {kind: board, material: oak, thickness: 3/4, length: 96, width: 6, "
        "count: 2, price: 7.50/board ft}}\n"
    )
    said = " ".join(run("show", file)[1].split())
    assert "B oak 96 x 6 x 3/4 2 8.0 sq ft 22.50 45.00" in said


def test_taking_a_plan(rack: Path) -> None:
    used = rodwright.read_rack(rack).entry("ash 27")
    assert used is not None
    knot = Flaw(300.0, 0.0, 40.0, 70.0, "knot")
    come = Comes(
        "KD7F-1", "board", "european ash", 22.0, 900.0, 70.0, cut_from="ash 27", flaws=(knot,)
    )
    taking = Taking(
        "rack.yaml", "0123456789abcdef", (Used("ash 27", 3, used.fingerprint),), (come,)
    )
    Path("cut.json").write_text(json.dumps({"rack": taking_record(taking)}))
    code, said = run("take", "cut.json")
    assert code == 0
    assert "3 of ash 27 cut, 1 left" in said and "came in: KD7F-1 (with a flaw: knot)" in said
    code, said = run("take", "cut.json")
    assert code == 2 and "taken out of the rack already" in said
    assert "KD7F-1" in run("show")[1]


def test_an_option_of_take_alone(rack: Path) -> None:
    assert run("show", "--rack", rack)[0] == 2


def test_a_rack_file_that_is_wrong(tmp_path: Path) -> None:
    file = tmp_path / "rack.yaml"
    file.write_text("stock:\n  a: {kind: sheet}\n")
    code, said = run("show", file)
    assert code == 2 and f"{file}:2:3: `a` needs `material`" in said


@pytest.mark.parametrize("text", [*IN_PAGE, example_rack().read_text(encoding="utf-8")])
def test_an_editor_accepts_the_racks_that_are_shown(text: str) -> None:
    """The schema in an independent validator (jsonschema), as an editor would use it."""
    schema = rodwright.rack_schema()
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.Draft202012Validator(schema).validate(YAML(typ="safe", pure=True).load(text))
    assert parse_rack(text, "rack.yaml").rack.entries


def test_the_page_has_an_example() -> None:
    assert len(IN_PAGE) == 1
