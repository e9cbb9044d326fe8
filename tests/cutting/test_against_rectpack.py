"""Never more sheets than rectpack needs, on the ready models and on published instances."""

from __future__ import annotations

from pathlib import Path

import pytest

from benchmarks.cutting.instances import read
from kit.cutting_checker import check_sheets
from kit.with_rectpack import fewest_sheets
from rodwright.cutting import Piece, Supply, plan_sheets
from rodwright.cutting.demand import Job, lots_of
from rodwright.setout import set_out
from rodwright.wishes.reading.files import read_spec

MODELS = sorted((Path(__file__).parents[2] / "models").glob("*.yaml"))
KERF = 3.2


@pytest.mark.parametrize("guillotine", [True, False], ids=["saw", "router"])
@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_the_ready_models(path: Path, *, guillotine: bool) -> None:
    """Of each size that is sold, alone: rectpack fills sheets of one size."""
    lots = lots_of([Job(set_out(read_spec(path)))], kerf=KERF)
    for lot in (each for each in lots if each.kind == "sheet"):
        for sheet in (each for each in lot.supplies if each.count is None):
            theirs = fewest_sheets(lot.pieces, sheet, kerf=KERF)
            if theirs is not None:
                plan = plan_sheets(lot.pieces, [sheet], kerf=KERF, guillotine=guillotine)
                check_sheets(plan, lot.pieces, [sheet], kerf=KERF, guillotine=guillotine)
                assert len(plan.layouts) <= theirs, (lot.name, sheet.name)


PUBLISHED = [
    instance
    for instance in read("2d_bp_berkey_martello")[::23]
    if instance.count <= 40 and "published_non_guillotine" in instance.published
]


@pytest.mark.parametrize("guillotine", [True, False], ids=["saw", "router"])
@pytest.mark.parametrize("instance", PUBLISHED, ids=lambda each: each.name)
def test_published_instances(instance, *, guillotine: bool) -> None:
    """Sources: tests/benchmarks/cutting/data/README.md."""
    rules = {**instance.rules, "guillotine": guillotine}
    plan = plan_sheets(instance.pieces, instance.stock, **rules)
    check_sheets(plan, instance.pieces, instance.stock, **rules)
    theirs = fewest_sheets(instance.pieces, instance.stock[0], **instance.rules)
    assert theirs is not None
    assert len(plan.layouts) <= theirs
    if not guillotine:
        assert plan.cost <= instance.published["published_non_guillotine"]


def test_rectpack_is_asked_rightly() -> None:
    """Four squares and their cuts fill a sheet; with a hair more kerf they don't."""
    squares, sheet = [Piece("a", 50, 50, 4)], Supply("s", 103, 103)
    assert fewest_sheets(squares, sheet, kerf=3) == 1
    assert fewest_sheets(squares, sheet, kerf=3.01) == 4
    assert fewest_sheets([Piece("a", 50, 20)], Supply("s", 20, 50)) is None
    assert fewest_sheets([Piece("a", 50, 20)], Supply("s", 20, 50), turning=True) == 1
