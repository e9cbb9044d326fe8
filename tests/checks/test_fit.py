"""Limits are common practice, no source; each is tried just inside and just outside."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from typer.testing import CliRunner

from kit.panels import panel
from kit.specs import STOCK, unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.geometry import Box
from rodwright.unit import Opening, Unit
from rodwright_cli.main import app


def _found(text: str, *rules: Rule) -> list[Finding]:
    return [each for each in check_parts(unit_from(text)) if each.rule in rules]


OVERLAPS = (Rule.FRAME_OVERLAP_SHORT, Rule.FRAME_OVERLAP_UNSURE)


def _opening(width: str = "900", size: str = "", fit: str = "", frame: str = "") -> str:
    return (
        f"opening: {{width: {width}, height: 2000, depth: 300}}\n"
        f"size: {{{size}}}\nfit: {{{fit}}}\n{frame}"
    )


def test_a_size_that_may_not_go_in() -> None:
    (found,) = _found(_opening(size="width: 899"), Rule.MAY_NOT_GO_IN)
    assert found.severity is Severity.WARNING
    assert found.limit is not None
    assert 890.0 < found.limit < 899.0
    assert not _found(_opening(size=f"width: {found.limit - 0.01:.3f}"), Rule.MAY_NOT_GO_IN)
    assert _found(_opening(size=f"width: {found.limit + 0.01:.3f}"), Rule.MAY_NOT_GO_IN)
    assert not _found(_opening(size="width: 901"), Rule.MAY_NOT_GO_IN)


@pytest.mark.parametrize(("sides", "open_gap"), [(5.9, False), (6.1, True)])
def test_what_caulk_cannot_bridge(sides: float, open_gap: bool) -> None:
    found = _found(_opening(fit=f"sides: {sides}, top: 5"), Rule.OPEN_GAP)
    assert bool(found) == open_gap
    for each in found:
        assert each.figure == pytest.approx(6.1, abs=0.1)


@pytest.mark.parametrize(("reach", "short"), [(5.7, False), (5.3, True)])
def test_overlap_asked_for(reach: float, short: bool) -> None:
    frame = f"face_frame: {{stock: ash, width: 45, overhang: {{sides: {reach}, top: 20}}}}\n"
    text = _opening(fit="sides: 3.5, overlap: 2", frame=frame)
    found = _found(text, Rule.FRAME_OVERLAP_SHORT)
    assert [each.severity for each in found] == [Severity.WARNING] * (2 if short else 0)
    assert not _found(text, Rule.LARGER_THAN_OPENING)


def test_cautions_go_with_an_opening() -> None:
    cautions = (Rule.LOAD_BEARING_WALL, Rule.LEAD_AND_ASBESTOS)
    said = " ".join(each.message + each.remedy for each in _found(_opening(), *cautions))
    for word in ("load", "asbestos", "lead", "local"):
        assert word in said
    assert not _found("size: {width: 800, height: 900, depth: 300}\n", *cautions)


@pytest.mark.parametrize(("width", "small"), [("251", False), ("249", True), ("90.2 cm", False)])
def test_a_width_in_another_unit(width: str, small: bool) -> None:
    found = _found(_opening(width=width), Rule.SMALL_OPENING)
    assert len(found) == small
    for each in found:
        assert each.severity is Severity.WARNING
        assert "`249 cm`" in each.remedy


def test_a_frame_under_a_worktop_has_nothing_to_cover_over_it() -> None:
    """1990 of 2000 high: 10 stay open over the worktop, however low the frame ends."""
    frame = "face_frame: {stock: ash, width: 45, overhang: {sides: 8}}\nworktop: {stock: ply}\n"
    text = _opening(size="height: 1990", fit="overlap: 3", frame=frame)
    assert not [each for each in _found(text, *OVERLAPS) if "top" in each.message]
    (gap,) = [each for each in _found(text, Rule.OPEN_GAP) if "top" in each.message]
    assert gap.figure == pytest.approx(10.0)


@pytest.mark.parametrize(("overhang", "size"), [("sides: 8", "width"), ("top: 9", "height")])
def test_a_frame_that_is_too_large_for_its_opening_names_the_keys(overhang: str, size: str) -> None:
    """It may be scribed on site, which `fit.overlap` says; or it overhangs too far."""
    frame = f"face_frame: {{stock: ash, width: 45, overhang: {{{overhang}}}}}\n"
    (found,) = _found(_opening(frame=frame), Rule.LARGER_THAN_OPENING)
    assert size in found.message
    assert "`fit.overlap`" in found.remedy
    assert f"`face_frame.overhang.{overhang.split(':')[0]}`" in found.remedy
    (found,) = _found(_opening(size=f"{size}: 2100"), Rule.LARGER_THAN_OPENING)
    assert "`fit.overlap`" not in found.remedy
    scribed = _opening(fit="overlap: 2", frame=frame)
    assert not _found(scribed, Rule.LARGER_THAN_OPENING)


def test_too_little_overlap_names_its_keys() -> None:
    frame = "face_frame: {stock: ash, width: 45, overhang: {sides: 5.3, top: 20}}\n"
    found = _found(_opening(fit="sides: 3.5, overlap: 2", frame=frame), Rule.FRAME_OVERLAP_SHORT)
    assert found
    for each in found:
        assert "`face_frame.overhang.sides`" in each.remedy
        assert "`fit.overlap`" in each.remedy


def test_the_overhang_told_to_add_covers_the_most_that_the_gap_may_be() -> None:
    """After that neither too little overlap nor a doubt about the gap is left."""

    def told(top: float) -> list[Finding]:
        frame = f"face_frame: {{stock: ash, width: 45, overhang: {{sides: 40, top: {top}}}}}\n"
        return _found(_opening(fit="overlap: 5", frame=frame), *OVERLAPS)

    (found,) = told(10.0)
    more = re.search(r"overhang\.top` ([\d.]+) mm more", found.remedy)
    most = re.search(r"up to ([\d.]+) mm", found.message)
    assert more is not None and most is not None
    assert float(more[1]) == pytest.approx(5 + float(most[1]) - 10, abs=0.15)
    assert not told(10.0 + float(more[1]))


def test_of_a_scribed_frame_the_carcass_has_to_spare(tmp_path: Path) -> None:
    frame = "face_frame: {stock: ash, width: 45, overhang: {sides: 20, top: 10}}\n"
    text = _opening(fit="overlap: 5", frame=frame)
    spec = tmp_path / "alcove.yaml"
    spec.write_text(f"title: Test\n{text}carcass: {{stock: ply}}\n{STOCK}", encoding="utf-8")
    run = CliRunner().invoke(app, ["check", str(spec)])
    (line,) = [each for each in run.output.splitlines() if each.startswith("  to spare")]
    assert line == "  to spare  7 x 7 x 0 mm  for the carcass; the frame is scribed to the walls"
    (line,) = [each for each in run.output.splitlines() if each.startswith("  overall")]
    fitted = line.split()[1:4]
    (line,) = [each for each in run.output.splitlines() if each.startswith("  opening")]
    assert line.split()[1:4] == fitted
    (line,) = [each for each in run.output.splitlines() if each.startswith("  made")]
    assert line.endswith("before it is scribed to the walls")


@pytest.mark.parametrize(("allowance", "narrow"), [(3, True), (6, False)])
def test_a_scribe_that_may_come_out_narrow(allowance: float, narrow: bool) -> None:
    """Walls 2 m high that nobody read may be out of plumb by more than 3 beside the unit."""
    scribes = f"scribes: {{stock: ash, edges: [left, right], allowance: {allowance}}}\n"
    found = _found(_opening(fit="sides: 20", frame=scribes), Rule.SCRIBE_ALLOWANCE_SHORT)
    assert len(found) == (2 if narrow else 0)
    for each in found:
        assert each.limit == allowance
        assert each.figure is not None
        assert 3.0 < each.figure < 6.0


@pytest.mark.parametrize(
    ("width", "rule"),
    [
        (1000.1, Rule.LARGER_THAN_OPENING),
        (994.5, Rule.UNUSUAL_GAP),
        (993.0, None),
        (990.0, Rule.UNUSUAL_GAP),
    ],
)
def test_what_an_opening_is_underfilled_by(width: float, rule: Rule | None) -> None:
    """Common practice, no source: an opening is underfilled by 6-8 mm."""
    unit = Unit(
        "Test", Box((0, 0, 0), (width, 300, 1993)), (panel(),), opening=Opening(1000, 2000, 300)
    )
    rules = (Rule.LARGER_THAN_OPENING, Rule.UNUSUAL_GAP)
    found = [finding.rule for finding in check_parts(unit) if finding.rule in rules]
    assert found == ([rule] if rule else [])
