"""`rodwright strength` as the maker runs it: what fails first, every figure with its sources."""

from __future__ import annotations

import json
import re
import sys
from dataclasses import replace
from pathlib import Path

import pytest

import rodwright.checks
import rodwright.strength
from kit.results import BREAKS, PINS, SAG, STANDS, UNKNOWN
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.strength.results import Group, Input, Result
from rodwright_cli.main import main

SPEC = """\
title: Niche [shelf]
unit: {unit}
size: {{width: 32, height: 20, depth: 12}}
stock:
  case: {{kind: sheet, material: birch plywood, thickness: 3/4}}
carcass: {{stock: case}}
interior:
  shelves: {{count: 2}}
"""


class Maker:
    """Runs the verb on a spec, with results of our own."""

    def __init__(
        self, folder: Path, patch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
    ) -> None:
        self._spec, self._patch, self._capsys = folder / "niche.yaml", patch, capsys
        patch.setenv("COLUMNS", "160")

    def run(self, *words: str, results: tuple[Result, ...]) -> tuple[int, str, str]:
        self._spec.write_text(SPEC.format(unit="in"))
        self._patch.setattr(rodwright.strength, "ANALYSES", (lambda _: results,))
        self._patch.setattr(sys, "argv", ["rodwright", "strength", str(self._spec), *words])
        with pytest.raises(SystemExit) as left:
            main()
        said = self._capsys.readouterr()
        assert isinstance(left.value.code, int)
        return left.value.code, said.out, said.err


@pytest.fixture
def maker(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> Maker:
    return Maker(tmp_path, monkeypatch, capsys)


def lines_of(out: str) -> list[str]:
    return [" ".join(line.split()) for line in out.splitlines() if line.strip()]


def test_what_fails_comes_first_with_its_remedies(maker: Maker) -> None:
    code, out, err = maker.run(results=(STANDS, PINS, SAG, UNKNOWN))
    assert (code, err) == (0, "")
    lines = lines_of(out)
    assert lines[:5] == [
        "Niche [shelf]",
        "fails shelf SH1, sag after 10 years: 0.285 in, at most 0.181 in",
        "would do: 25 mm thick: 0.106 in, +12.50 each, net",
        "not enough: a lipping of 30 mm: 0.201 in",
        "not known shelf SH2, sag at once: nothing is known of how stiff `bamboo` is",
    ]
    at = lines.index("Shelves, rails, tops, bottoms")
    assert lines[at : at + 4] == [
        "Shelves, rails, tops, bottoms",
        "shelf SH1",
        "sag after 10 years 0.285 in at most 0.181 in x 0.634 ?~",
        "a pin's bearing 290 psi at most 435 psi x 1.5",
    ]
    assert "the unit, pull that tips it 44.1 lb at least 22 lb x 2" in lines


def test_marks_and_a_count_of_sources_stand_below(maker: Maker) -> None:
    lines = lines_of(maker.run(results=(SAG, PINS))[1])
    assert (
        "? rests on a usual value that wasn't looked up; "
        "~ something was taken for granted: --of says what." in (lines)
    )
    below = " ".join(lines)
    assert "Sources: 3, 1 of them from memory, in whole or in part; --formulas names them" in below
    assert "2 figures, 1 beyond their limits. This is no structural engineer's" in below
    assert "Wood Handbook" not in below
    assert "? a figure" not in " ".join(lines_of(maker.run(results=(PINS,))[1]))


LONG = replace(
    SAG, subject="top TP1", what="sag after 10 years, every other span empty", remedies=()
)
LIFT = replace(
    STANDS,
    group=Group.LIFTING,
    subject="the carcass with its back",
    what="weight that is lifted",
    figure=51.5,
    limit=9.29,
    at_least=False,
    inputs=(Input("n", "people by the NIOSH equation", 4.0, ""),),
)
LIGHT = replace(LIFT, subject="a door", figure=2.5, inputs=(replace(LIFT.inputs[0], value=1.0),))


def test_eighty_columns_hold_a_figure_a_line(maker: Maker, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("COLUMNS", "80")
    out = maker.run(results=(SAG, PINS, LONG, STANDS, LIFT, LIGHT))[1]
    assert max(map(len, out.splitlines())) <= 80
    lines = lines_of(out)
    at = lines.index("top TP1")
    assert (
        lines[at + 1].startswith("sag after 10 years, every other span")
        and "0.285 in" in (lines[at + 1])
    )
    assert len(lines_of(maker.run(results=(SAG, PINS))[1])) <= 14


def test_what_is_lifted_is_a_line_each(maker: Maker) -> None:
    lines = lines_of(maker.run(results=(LIFT, LIGHT))[1])
    assert lines[1:5] == [
        "Lifting and carrying",
        "weighs one lifts people",
        "the carcass with its back 114 lb 20.5 lb 4",
        "What else is lifted weighs 5.51 lb at most: one person lifts it.",
    ]
    assert not [line for line in lines if line.startswith("heavy")]
    told = lines_of(maker.run("--of", "carcass with", results=(LIFT, LIGHT))[1])
    assert told[1].startswith("heavy the carcass with its back, weight that is lifted: 114 lb")


def test_it_leaves_as_check_does_when_something_breaks(
    maker: Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    def found(_: object) -> tuple[Finding, ...]:
        return (Finding(Severity.ERROR, Rule.JOINT_OVERLOADED, "", "", parts=("SH1", "SD1")),)

    assert maker.run(results=(SAG, BREAKS))[0] == 0
    monkeypatch.setattr(rodwright.checks, "BY_STRENGTH", (found,))
    assert maker.run(results=(SAG,))[0] == 1
    assert maker.run("--of", "sh1", results=(SAG,))[0] == 1
    assert maker.run("--of", "SH2", results=(UNKNOWN,))[0] == 0
    code, out, _ = maker.run("--json", results=(SAG,))
    assert code == 1 and json.loads(out)["breaks"] is True


def test_one_part_is_told_in_full(maker: Maker) -> None:
    code, out, _ = maker.run("--of", "sh1", results=(SAG, PINS, STANDS))
    assert code == 0
    assert "w = 5 q L^4 / (384 E I) [Wood Handbook FPL-GTR-190 (2010), table 9-1]" in lines_of(out)
    assert any(
        line.startswith("E modulus of elasticity 1460000 psi [Lavers") for line in lines_of(out)
    )
    assert "books are taken for granted" in out and "limit [common practice" in " ".join(
        out.split()
    )
    assert "the unit" not in out


def test_parts_and_what_is_told_of_can_be_asked_for(maker: Maker) -> None:
    other = replace(SAG, subject="shelf SH2", parts=("SH2",))
    for asked in ("SH1-SH2", "SH1, SH2", "shelf SH1, SH2"):
        code, out, err = maker.run("--of", asked, results=(SAG, other, STANDS))
        assert (code, err) == (0, "") and "shelf SH1, SH2, sag after 10 years" in out
        assert "the unit" not in out
    out = maker.run("--of", "the unit", results=(SAG, STANDS))[1]
    assert "P = W x / H" in out and "w = 5 q L^4" not in out


def test_formulas_are_told_of_all(maker: Maker) -> None:
    out = maker.run("--formulas", results=(SAG, STANDS))[1]
    assert "P = W x / H" in out and "w = 5 q L^4" in out


def test_a_part_that_is_none_is_refused(maker: Maker) -> None:
    code, out, err = maker.run("--of", "SH9", results=(SAG,))
    assert (code, out) == (2, "") and "no part `SH9`" in err


def test_json_is_all_that_is_printed(maker: Maker) -> None:
    _, out, err = maker.run("--json", results=(SAG, STANDS, replace(PINS, what="\x1b[1m—")))
    assert err == "" and out.isascii() and "\x1b" not in out
    results = json.loads(out)["results"]
    assert [each["figure"] for each in results] == [7.25, 20.0, 2.0]
    assert results[2]["what"] == "\x1b[1m—"


def test_the_model_stands_beside_the_formulas(maker: Maker) -> None:
    code, out, err = maker.run("--model", results=())
    assert (code, err) == (0, "")
    lines = lines_of(out)
    assert lines[0] == "Niche [shelf]: formulas, and the whole by finite elements"
    for told in ("Sag at once", "Sag after 10 years", "Comes to the floor there"):
        assert told in lines
    assert any(
        re.fullmatch(r"shelf SH1, SH2 [\d.]+ in [\d.]+ in 1(\.0\d)?", line) for line in lines
    )
    assert any(line.startswith("The greatest moment in a joint: ") for line in lines)


def test_the_model_as_json_balances(maker: Maker) -> None:
    code, out, _ = maker.run("--model", "--json", results=())
    document = json.loads(out)
    assert code == 0
    assert document["weight"] == pytest.approx(document["reaction"], rel=1e-6)
    assert {row["what"] for row in document["rows"]} >= {"sag at once", "sag after 10 years"}


def test_without_pynite_the_model_says_how_to_get_it(
    maker: Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in [name for name in sys.modules if name.startswith("rodwright.strength.model")]:
        monkeypatch.delitem(sys.modules, name)
    monkeypatch.setitem(sys.modules, "Pynite", None)
    code, out, err = maker.run("--model", results=())
    assert code != 0
    assert "pip install PyNiteFEA" in out + err


def test_what_a_cost_is_of_is_said_once(maker: Maker) -> None:
    _, out, _ = maker.run("--formulas", results=(SAG, replace(SAG, what="sag at once")))
    assert out.count("without offcuts") == 1
    _, out, _ = maker.run("--formulas", results=(STANDS,))
    assert "offcuts" not in out
