"""What holds a unit that hangs: pull by hand, fixings by the wall, plasterboard refused."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.strength.hanging import HOLDS, hanging

CABINET = """size: {width: 800, height: 720, depth: 320}
hung: true
carcass: {stock: ply}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  rear: {kind: sheet, material: birch plywood, thickness: 9}
"""
BACK = {"stock": "rear", "fixing": "rebated"}


def _found(rule: Rule, text: str = CABINET, **more: Any) -> list[Finding]:
    unit = unit_from(text, **({"back": BACK} | more))
    return [each for each in check_parts(unit) if each.rule is rule]


def test_plasterboard_alone_is_refused() -> None:
    (found,) = _found(Rule.PLASTERBOARD_ALONE, wall="plasterboard")
    assert found.severity is Severity.ERROR
    assert "`wall: studs`" in found.remedy
    assert "local codes" in found.remedy
    for wall in ("masonry", "studs"):
        assert not _found(Rule.PLASTERBOARD_ALONE, wall=wall)


def test_a_wall_that_is_not_said_is_asked_for() -> None:
    (found,) = _found(Rule.WALL_NOT_SAID)
    assert found.severity is Severity.NOTE
    assert "masonry takes" in found.message
    assert "studs 2 screws of 6 x 80 mm" in found.message
    assert not _found(Rule.WALL_NOT_SAID, wall="masonry")


def test_a_narrow_cabinet_meets_no_stud_for_sure() -> None:
    """Studs stand up to 600 apart: 450 may lie between two."""
    narrow = CABINET.replace("800", "450")
    (found,) = _found(Rule.TOO_FEW_FIXINGS_FIT, narrow, wall="studs")
    assert found.severity is Severity.ERROR
    assert (found.figure, found.limit) == (2, 0)
    assert "a batten 638 mm long across 1 stud," in found.remedy
    assert not _found(Rule.TOO_FEW_FIXINGS_FIT, narrow, wall="masonry")


def test_what_it_takes_is_told() -> None:
    found = [each for each in _found(Rule.HANGING, wall="masonry") if each.limit is not None]
    assert len(found) == 1
    assert found[0].severity is Severity.NOTE
    assert "plugs there, as many more at the bottom" in found[0].message


def test_more_than_cabinets_are_tried_with() -> None:
    loads = {"interior": {"shelves": {"count": 2}, "load": "120 kg"}}
    assert not _found(Rule.HEAVIER_THAN_TESTED)
    (found,) = _found(Rule.HEAVIER_THAN_TESTED, **loads)
    assert found.limit == pytest.approx(272.0)
    assert found.figure is not None
    assert found.figure > 272


def test_a_back_that_few_screws_tie_gives() -> None:
    loads = {"interior": {"shelves": {"count": 2}, "load": "120 kg"}}
    found = _found(Rule.HUNG_BACK_GIVES, **loads)
    assert [each.severity for each in found] == [Severity.ERROR]
    assert found[0].figure is not None
    assert found[0].figure > 1.0
    assert "mm apart all round instead of 175" in found[0].remedy


def test_nothing_to_hang_by_is_an_error_and_fails_in_strength() -> None:
    thin = CABINET.replace("thickness: 9", "thickness: 6")
    (found,) = _found(Rule.NOTHING_TO_HANG_BY, thin, wall="studs")
    assert found.severity is Severity.ERROR
    (row,) = (e for e in hanging(unit_from(thin, back=BACK, wall="studs")) if e.what == HOLDS)
    assert (row.figure, row.limit, row.holds) == (6.0, 9.0, False)
    assert not any(e.what == HOLDS for e in hanging(unit_from(CABINET, back=BACK)))
