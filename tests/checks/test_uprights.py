"""Findings about uprights, what they stand on, and the floor."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from kit.specs import of_role, unit_from
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.checks.uprights import uprights
from rodwright.unit import Role
from rodwright.unit.loading import Load, Loading, Lump

TEXT = """size: {width: 1000, height: 2400, depth: 300}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  skin: {kind: sheet, material: birch plywood, thickness: 6}
  soft: {kind: board, material: pine, thickness: 18}
"""


def _found(rule: Rule, kg: float, text: str = TEXT, **more: Any) -> list[Finding]:
    unit = unit_from(text, **({"carcass": {"stock": "ply"}} | more))
    top = of_role(unit, Role.TOP)[0]
    loading = Loading((Load(top.ref, "it", (), (Lump(500.0, kg),)),))
    return [each for each in uprights(replace(unit, loading=loading)) if each.rule is rule]


def test_a_thin_side_bows_out() -> None:
    """6 mm of birch plywood, 2400 high with nothing between: pi2 E I/L2/3 is some 3 kg."""
    thin = TEXT.replace("thickness: 18}\n  skin", "thickness: 8}\n  skin")
    found = _found(Rule.UPRIGHT_BUCKLES, 60.0, thin)
    assert {each.parts[0] for each in found} == {"SD1", "SD2"}
    for each in found:
        assert each.severity is Severity.ERROR
        assert each.figure is not None
        assert each.limit is not None
        assert each.figure > each.limit
    assert not _found(Rule.UPRIGHT_BUCKLES, 60.0)


def test_a_foot_sinks_in() -> None:
    """A divider of 18 x 300 on a bottom of pine; 5 t on it, of which it carries more than half."""
    columns = {"columns": [{"width": "1 share"}, {"width": "1 share"}]}
    carcass = {"stock": "soft"}
    found = _found(Rule.FOOT_CRUSHES, 5000.0, interior=columns, carcass=carcass)
    assert [each.severity for each in found] == [Severity.WARNING]
    assert found[0].measure == "N/mm2"
    assert not _found(Rule.FOOT_CRUSHES, 50.0, interior=columns, carcass=carcass)


@pytest.mark.parametrize(("kg", "told"), [(2.0, False), (140.0, False), (260.0, True)])
def test_what_the_floor_carries(kg: float, told: bool) -> None:
    """17 kg of wood and the load: up to 204 stand on one spot, on 0.3 m2 more is too much."""
    low = TEXT.replace("2400", "700")
    found = _found(Rule.FLOOR_LOAD, kg, low)
    assert len(found) == told
    for each in found:
        assert each.severity is Severity.CAUTION
        assert "structural engineer" in each.remedy
        assert 0 < len(each.brief) <= 78


def test_the_floor_in_pounds() -> None:
    text = (
        "unit: in\nsize: {width: 40, height: 60, depth: 12}\n"
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 3/4}\n"
    )
    # 38 lb/ft2: more than in Europe, and not more than in the US.
    assert not _found(Rule.FLOOR_LOAD, 200.0, text)
    (found,) = _found(Rule.FLOOR_LOAD, 300.0, text)
    assert "lb/ft2" in found.message
    assert "for 40 lb/ft2" in found.message
