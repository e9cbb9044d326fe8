"""Random units are told whole: every part of theirs, by names that they have."""

from __future__ import annotations

from hypothesis import HealthCheck, assume, given, settings

from kit.specs import spec_from
from kit.wishes import Wish, wishes
from rodwright.checks import check_parts
from rodwright.page.model import layers_of
from rodwright.page.telling import checked_sections, quick_sections
from rodwright.problems import ProblemsError
from rodwright.setout import set_out_traced


@settings(
    max_examples=12,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(wish=wishes())
def test_every_part_is_told_of_and_no_other(wish: Wish) -> None:
    try:
        unit, wished = set_out_traced(spec_from("unit: mm\n", **wish))
    except ProblemsError:
        assume(False)
        raise
    refs = {part.ref for part in unit.parts}
    quick = quick_sections(unit, {})
    checked = checked_sections(unit, check_parts(unit))
    assert quick.apart is not None and quick.details is not None and quick.dimensions
    assert checked.findings is not None and checked.lists is not None
    assert checked.strength is not None
    assert wished.keys() == layers_of(unit).keys() == quick.apart.keys() == refs
    assert quick.details.keys() == refs
    assert {each.ref for detail in quick.details.values() for each in detail.joined} <= refs
    assert {ref for each in checked.findings for ref in each.parts} <= refs
    for sheet in (checked.lists, checked.strength):
        for table in sheet.tables:
            assert {ref for row in table.refs for ref in row} <= refs
