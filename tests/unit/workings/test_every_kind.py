"""Every kind of working is known wherever one has to be: what is forgotten fails by its name."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from typing import get_args, get_type_hints

import numpy as np
import pytest
from hypothesis import find

from kit.points import cut_away
from kit.samples import worked_part
from kit.strategies import WORKINGS
from rodwright import unit as the_unit
from rodwright.geometry import Vector
from rodwright.handover.working_names import working_names
from rodwright.handover.workings import describe_workings
from rodwright.mass.pieces import pieces
from rodwright.solids.cutters import cutters
from rodwright.unit import Working
from rodwright.unit.shop_part import shop_part

KINDS: tuple[type[Working], ...] = get_args(Working)
EVERY = pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
SIZE: Vector = (400.0, 120.0, 20.0)


@cache
def one(kind: type[Working]) -> Working:
    """The simplest that the tests' strategy has."""
    return find(WORKINGS[kind](SIZE), lambda _: True)


@EVERY
def test_a_kind_has_a_literal_of_its_own_for_records(kind: type[Working]) -> None:
    assert get_args(get_type_hints(kind)["kind"]) == (kind.__name__.lower(),)
    assert one(kind).kind == kind.__name__.lower()


@EVERY
def test_a_kind_has_words(kind: type[Working]) -> None:
    assert [each.word for each in KINDS].count(kind.word) == 1
    assert one(kind).called


@EVERY
def test_a_kind_is_offered_with_the_unit(kind: type[Working]) -> None:
    assert getattr(the_unit, kind.__name__) is kind
    assert kind.__name__ in the_unit.__all__


@EVERY
def test_a_kind_says_where_it_is(kind: type[Working]) -> None:
    for asked in ("bounds", "turned", "moved", "figures"):
        assert callable(getattr(kind, asked, None)), f"{kind.__name__} has no `{asked}`"


@EVERY
def test_a_kind_has_a_strategy_points_and_a_sample(kind: type[Working]) -> None:
    assert kind in WORKINGS
    assert kind in {type(each) for each in worked_part().workings}
    assert cut_away(np.array([SIZE]) / 2, np.array(SIZE), one(kind)).shape == (1,)


@EVERY
def test_a_kind_has_a_cutter(kind: type[Working]) -> None:
    (*solids,) = cutters(one(kind), SIZE)
    assert solids


@EVERY
def test_a_kind_has_a_mass_rule(kind: type[Working]) -> None:
    working = one(kind)
    assert [*pieces(working, SIZE)] or working.planes(SIZE)


@EVERY
def test_a_kind_has_words_in_the_list_and_a_name_for_its_faces(kind: type[Working]) -> None:
    working = one(kind)
    part = replace(worked_part(), workings=(working,))
    assert any(describe_workings(shop_part([part]), "mm"))
    (name,) = working_names((working,), SIZE, "mm")
    assert name.startswith(working.called)
