"""What to read again or as well, and what is packed from a batten."""

from __future__ import annotations

from pathlib import Path

import pytest
from typer.testing import CliRunner

from kit.specs import STOCK, unit_from
from rodwright.checks import Finding, Severity, check_parts
from rodwright.checks.rules import Rule
from rodwright_cli.main import app

THREE = "{bottom: 1000, middle: 1000, top: 1000}"
SIZES = "{left: 2300, middle: 2300, right: 2300}"


def _plumb(left: float = 0.0, right: float = 0.0) -> str:
    """Both walls, over 2 m; the left one leans in, the right one out."""
    return (
        f"plumb: {{left: {{out: {left}, over: 2000, leans: in}}, "
        f"right: {{out: {right}, over: 2000, leans: out}}}}"
    )


def _text(width: str = THREE, height: str = SIZES, more: str = "", size: str = "") -> str:
    opening = f"opening: {{width: {width}, height: {height}, depth: 300{more and ', '}{more}}}\n"
    return f"{opening}size: {{{size}}}\n"


def _found(text: str, rule: Rule) -> list[Finding]:
    return [each for each in check_parts(unit_from(text)) if each.rule == rule]


@pytest.mark.parametrize(
    ("width", "wanted"),
    [
        ("1000", "two more widths are wanted before anything is cut"),
        ("{middle: 1000}", "two more widths are wanted before anything is cut"),
        ("{bottom: 1000, top: 1000}", "one more width is wanted before anything is cut"),
        (THREE, ""),
        ("{bottom: 1000, top: 1000, others: [{at: 900, width: 1000}]}", ""),
    ],
)
def test_widths_that_are_wanted(width: str, wanted: str) -> None:
    found = _found(_text(width), Rule.TOO_FEW_WIDTHS)
    assert len(found) == bool(wanted)
    for each in found:
        assert each.severity is Severity.WARNING
        assert wanted in each.message


@pytest.mark.parametrize(
    ("height", "noted"), [("2300", 1), ("{left: 2300, right: 2300}", 1), (SIZES, 0)]
)
def test_heights_that_would_be_well(height: str, noted: int) -> None:
    found = _found(_text(height=height), Rule.TOO_FEW_HEIGHTS)
    assert [each.severity for each in found] == [Severity.NOTE] * noted


def test_widths_alone_that_taper_ask_for_a_level() -> None:
    """65 in 2.3 m: the walls may lean by all of it or share it."""
    taper = "{bottom: 1065, middle: 1032, top: 1000}"
    (found,) = _found(_text(taper), Rule.NO_LEVEL_TAKEN)
    assert found.severity is Severity.WARNING
    assert found.figure == pytest.approx(65.0, abs=1.0)
    assert "level" in found.remedy
    assert "plumb" in found.remedy
    assert not _found(_text(taper, more=_plumb(56.0)), Rule.NO_LEVEL_TAKEN)


def test_a_lean_that_diagonals_show_asks_for_a_level() -> None:
    """Both walls 65 out of plumb: equal sizes, and diagonals by Pythagoras."""
    rising, falling = (((1000 + out) ** 2 + 2300**2) ** 0.5 for out in (65, -65))
    diagonals = f"diagonals: {{rising: {rising:.1f}, falling: {falling:.1f}}}"
    found = _found(_text(more=diagonals), Rule.NO_LEVEL_TAKEN)
    named = {each.message.split(" is ")[0]: each for each in found}
    assert "by the other readings the left wall" in named
    assert all(each.severity is Severity.WARNING for each in found)
    assert all("level" in each.remedy for each in found)


@pytest.mark.parametrize(("out", "asks"), [(8.0, False), (22.0, True)])
def test_what_walls_may_be_out_without_a_level(out: float, asks: bool) -> None:
    """Assumed: 4 in a metre each, 18.4 both over 2.3 m."""
    taper = f"{{bottom: 1000, middle: {1000 - out / 2}, top: {1000 - out}}}"
    assert bool(_found(_text(taper), Rule.NO_LEVEL_TAKEN)) is asks


def test_contradictory_readings_show_in_check() -> None:
    right = (1000**2 + 2300**2) ** 0.5
    for off, shown in ((0.4, False), (3.6, True)):
        diagonals = f"diagonals: {{rising: {right + off:.1f}, falling: {right:.1f}}}"
        found = _found(_text(more=diagonals), Rule.CONTRADICTORY_READINGS)
        assert bool(found) is shown
        for each in found:
            assert each.severity is Severity.WARNING
            assert "rising diagonal" in each.message
            assert "Measure again" in each.remedy


def test_bellies_are_no_contradiction() -> None:
    bellied = "{bottom: 1012, middle: 1002, top: 1012}"
    assert not _found(_text(bellied, more=_plumb()), Rule.CONTRADICTORY_READINGS)


@pytest.mark.parametrize(("width", "sides"), [(961.0, 0), (959.0, 2), (900.0, 2)])
def test_more_than_twenty_is_packed_from_a_batten(width: float, sides: int) -> None:
    found = _found(_text(size=f"width: {width}"), Rule.BATTEN_WANTED)
    assert len(found) == sides
    for each in found:
        assert "batten" in each.remedy
        assert each.figure == pytest.approx((1000 - width) / 2, abs=0.1)


def test_check_prints_what_was_read(tmp_path: Path) -> None:
    """1209 was read at its tightest, and 7 less would not go in between walls that lean."""
    width = "{bottom: 1216, middle: 1212, top: 1209}"
    height = "{left: 2032, middle: 2030, right: 2027}"
    text = _text(width, height, _plumb(12.0, 5.0))
    spec = tmp_path / "alcove.yaml"
    spec.write_text(f"title: Test\n{text}carcass: {{stock: ply}}\n{STOCK}", encoding="utf-8")
    run = CliRunner().invoke(app, ["check", str(spec)])
    (line,) = [each for each in run.output.splitlines() if each.startswith("  opening")]
    assert line == "  opening   1209 x 2027 x 300 mm  as read at its tightest"
    unit = unit_from(text)
    assert unit.size[0] < 1199.0
    (line,) = [each for each in run.output.splitlines() if each.startswith("  to spare")]
    assert "7 x" in line
