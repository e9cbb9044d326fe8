"""Half the size of elements changes next to nothing."""

from __future__ import annotations

import pytest

import rodwright
from rodwright.jobs.new import model_path
from rodwright.strength.model.lines import Fineness
from rodwright.strength.model.sagging import sag_of
from rodwright.strength.model.swaying import sway
from rodwright.strength.model.whole import Model, model_of

HALF = Fineness(80.0, 125.0, 130.0)


def _models(name: str) -> tuple[Model, Model]:
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    return model_of(unit), model_of(unit, fineness=HALF)


@pytest.mark.parametrize("name", ["niche-shelf", "hallway-bookcase", "market-shelves"])
def test_sags_change_by_less_than_two_per_cent(name: str) -> None:
    coarse, fine = _models(name)
    assert len(fine.mesh.nodes) > 2 * len(coarse.mesh.nodes)
    moved = [each.moved() for each in (coarse, fine)]
    for ref, bearing in coarse.bearings.items():
        if not bearing.grounded:
            before, after = (
                sag_of(model, model.bearings[ref], each)
                for model, each in zip((coarse, fine), moved, strict=True)
            )
            assert after == pytest.approx(before, rel=0.02, abs=0.01), ref


@pytest.mark.parametrize("name", ["niche-shelf", "hallway-bookcase"])
def test_sway_changes_by_less_than_five_per_cent(name: str) -> None:
    coarse, fine = (sway(each, 100.0) for each in _models(name))
    assert fine.back == pytest.approx(coarse.back, rel=0.05)
    assert fine.front == pytest.approx(coarse.front, rel=0.05)
