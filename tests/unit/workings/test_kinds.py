"""Every kind of working is told apart by one literal."""

from __future__ import annotations

from typing import get_args, get_type_hints

from rodwright.unit import Working


def test_every_kind_has_a_word_of_its_own_for_records() -> None:
    kinds = {each.__name__: get_args(get_type_hints(each)["kind"]) for each in get_args(Working)}
    assert kinds == {name: (name.lower(),) for name in kinds}
