"""The setting of the set-out: where problems are noted, and what stock is found."""

from __future__ import annotations

from kit.specs import setting_from
from rodwright.problems import Problem

SETTING = "size: {width: 600, height: 800, depth: 300}"


def test_a_problem_is_noted_at_the_settings_place() -> None:
    setting = setting_from(SETTING)
    setting.at("interior").at("columns", 1).refuse("too wide", "Make it narrower.")
    assert setting.problems.error().problems == (
        Problem("too wide", "Make it narrower.", ("interior", "columns", 1)),
    )


def test_settings_at_other_places_share_bench_problems_and_notes() -> None:
    setting = setting_from(SETTING)
    for other in (setting.at("doors"), setting.moved_to(("base",))):
        assert other.bench is setting.bench
        assert other.problems is setting.problems
        assert other.notes is setting.notes
    assert setting.where == ()


def test_without_a_name_the_stock_is_the_carcasss() -> None:
    setting = setting_from(SETTING)
    assert setting.stock(None) is setting.rod.stock
    assert not setting.problems.noted_since()


def test_a_stock_that_isnt_there_is_noted_where_it_was_wished() -> None:
    setting = setting_from(SETTING)
    assert setting.at("back", "stock").stock("thn") is None
    (problem,) = setting.problems.error().problems
    assert problem.where == ("back", "stock")
    assert problem.remedy.startswith("Did you mean `thin`?")
