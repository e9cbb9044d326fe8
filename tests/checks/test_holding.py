"""What nothing holds is told, and the default joint holds.

Limits are common practice unless a source is named.
"""

from __future__ import annotations

from typing import Any, get_args

import pytest

from kit.specs import of_role, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.setout import set_out_unit
from rodwright.unit import JointKind, Role
from rodwright.wishes.joints import JointWord
from rodwright.wishes.models import UnitSpec

SIZE = "size: {width: 800, height: 900, depth: 300}\n"
BACK = {"stock": "thin"}


def _found(rule: Rule, text: str = SIZE, **more: Any) -> list[Finding]:
    more.setdefault("carcass", {"stock": "ply"})
    return [each for each in check_parts(unit_from(text, **more)) if each.rule == rule]


def test_the_shortest_spec_is_sound() -> None:
    """What the README shows first: every shelf has its place cut, and nothing is told of it."""
    unit = set_out_unit(
        UnitSpec.model_validate(
            {
                "title": "Plant-room niche shelf",
                "opening": {
                    "width": {"bottom": 646, "middle": 643, "top": 641},
                    "height": 900,
                    "depth": 260,
                },
                "stock": {
                    "ply": {"kind": "sheet", "material": "softwood plywood", "thickness": 18}
                },
                "carcass": {"stock": "ply"},
                "interior": {"shelves": {"count": 2}},
            },
            context={"unit": "mm"},
        )
    )
    kinds = {joint.kind for joint in unit.joints}
    assert kinds == {JointKind.HOUSING, JointKind.REBATE}
    for side in of_role(unit, Role.SIDE):
        assert len(side.workings) == 4
    assert check_solids(unit) == ()
    graver = (Severity.ERROR, Severity.WARNING)
    assert [each for each in check_parts(unit) if each.severity in graver] == []


@pytest.mark.parametrize("joint", get_args(JointWord))
def test_only_what_is_butted_is_held_by_nothing(joint: str) -> None:
    found = _found(
        Rule.NOTHING_HOLDS_IT,
        back=BACK,
        interior={"shelves": {"count": 2}},
        carcass={"stock": "ply", "corners": joint},
    )
    assert len(found) == (joint == "butted")
    for finding in found:
        assert finding.parts == ("TP1", "BT1", "SH1", "SH2")
        assert finding.message.startswith("Top (TP1) is butted: no screw holds it, ")
        assert finding.message.endswith("; likewise BT1, SH1, SH2")
        assert finding.severity is Severity.WARNING
        assert "`carcass.corners`" in finding.remedy


def test_ends_of_their_own_are_told_too() -> None:
    (found,) = _found(
        Rule.NOTHING_HOLDS_IT, back=BACK, interior={"shelves": {"count": 1, "ends": "butted"}}
    )
    assert found.parts == ("SH1",)


def test_loose_shelves_and_layers_are_not_meant_to_be_held() -> None:
    shelves = {"count": 2, "fixed": False}
    assert not _found(Rule.NOTHING_HOLDS_IT, interior={"shelves": shelves})
    assert not _found(Rule.NOTHING_HOLDS_IT, interior={"shelves": {"count": 2, "layers": 2}})


COLUMNS = {"columns": [{"width": "1 share"}, {"width": "1 share"}]}


@pytest.mark.parametrize("fixing", ["applied", "rebated", "grooved"])
def test_panels_of_a_split_back_are_pinned_where_they_meet(fixing: str) -> None:
    """Each lies on half of 18: a 1.4 pin keeps three diameters of 4.2 to both edges of its 9, or 8
    and a half where there is a gap between the panels (EN 1995-1-1, table 8.2, from memory)."""
    back = {"stock": "thin", "fixing": fixing, "split": True}
    unit = unit_from(SIZE, carcass={"stock": "ply"}, interior=COLUMNS, back=back)
    pinned = [joint for joint in unit.joints if joint.kind is JointKind.PINNED]
    assert {joint.second for joint in pinned} == {"BK1", "BK2"}
    assert {joint.first for joint in pinned} == {"DV1"}
    for joint in pinned:
        (pins,) = joint.fixings
        diameter = float(pins.size.split(" x ")[0])
        assert 3 * diameter <= (9.0 if fixing == "applied" else 8.5) / 2 + 1e-9
        # Between two 40 from the ends, 100 apart at the most.
        assert (pins.count - 1) * 100 >= unit.part(joint.second).blank.length - 2 * 40 - 36
    assert not _found(Rule.BACK_SEAM_UNFIXED, interior=COLUMNS, back=back)


@pytest.mark.parametrize(("thickness", "told"), [(12.1, False), (11.9, True)])
def test_a_divider_too_thin_for_two_panels(thickness: float, told: bool) -> None:
    text = f"""{SIZE}stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18}}
  slim: {{kind: sheet, material: birch plywood, thickness: {thickness}}}
  thin: {{kind: sheet, material: birch plywood, thickness: 6}}
"""
    back = {"stock": "thin", "split": True}
    interior = COLUMNS | {"dividers": {"stock": "slim"}}
    found = _found(Rule.BACK_SEAM_UNFIXED, text, interior=interior, back=back)
    assert len(found) == told
    for each in found:
        assert (each.figure, each.limit) == (thickness, 12.0)
        assert each.parts == ("DV1", "BK1", "BK2")
        assert "likewise" not in each.message
        assert "`back.split`" in each.remedy
