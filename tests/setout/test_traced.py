"""Where in the spec each part was wished: the line that a maker would point at."""

from __future__ import annotations

from collections.abc import Callable

import pytest

import rodwright
from kit.specs import STOCK
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import KeyPath
from rodwright.setout import set_out, set_out_traced
from rodwright.unit import Part, Role, Unit
from rodwright.unit.roles import TRAITS, Assembly
from rodwright.wishes.reading.files import SpecFile, parse_spec


@pytest.mark.parametrize("name", model_names())
def test_every_part_leads_to_a_line_that_wished_for_it(name: str) -> None:
    spec = rodwright.read_spec(model_path(name))
    unit, wished = set_out_traced(spec)
    assert unit == set_out(spec)
    assert wished.keys() == {part.ref for part in unit.parts}
    for part in unit.parts:
        where = wished[part.ref]
        assert where in spec.places.values, f"{part.ref} at {where}"
        _agrees(part, where, _line(spec, where))


def _line(spec: SpecFile, where: KeyPath) -> str:
    return spec.path.read_text().splitlines()[spec.places.of_value(where).line - 1]


def _agrees(part: Part, where: KeyPath, line: str) -> None:
    """The line, read by itself, has the word that a maker looks for."""
    words: dict[Callable[[Part], bool], tuple[str, ...]] = {
        lambda its: TRAITS[its.role].of is Assembly.DRAWER: ("drawer",),
        lambda its: TRAITS[its.role].of is Assembly.DOOR: ("door",),
        lambda its: its.role is Role.SHELF: ("shel", "rows", "between"),
        lambda its: its.role is Role.DIVIDER: ("dividers", "columns"),
        lambda its: its.role in (Role.SIDE, Role.BOTTOM): ("carcass",),
        lambda its: its.role is Role.TOP: ("carcass", "slope"),
        lambda its: its.role is Role.BACK: ("back",),
        lambda its: its.role is Role.LIPPING: ("lipping",),
        lambda its: TRAITS[its.role].of is Assembly.FACE_FRAME: ("face_frame", "slope"),
        lambda its: TRAITS[its.role].of is Assembly.BASE: ("base",),
        lambda its: TRAITS[its.role].of is Assembly.SURROUND: (part.role.value,),
        lambda its: its.role in (Role.RUNNER, Role.PACKER): ("drawers", "doors"),
    }
    (wanted,) = (each for applies, each in words.items() if applies(part))
    key = [each for each in where if isinstance(each, str)][-1]
    assert any(word in key for word in wanted), (part.ref, where)
    # What an alias stands for is written elsewhere, under the same key.
    assert any(word in line for word in (*wanted, "*", "&")), (part.ref, line)


def test_a_shelf_of_the_second_column_leads_into_that_column() -> None:
    spec = rodwright.read_spec(model_path("reading-alcove"))
    unit, wished = set_out_traced(spec)
    divider = next(part for part in unit.parts if part.role is Role.DIVIDER)
    right = [
        part
        for part in unit.parts
        if part.role is Role.SHELF and part.bounds().low[0] >= divider.bounds().low[0]
    ]
    assert len(right) == 3
    for part in right:
        assert wished[part.ref][:3] == ("interior", "columns", 1)
    assert "width: 420" in _line(spec, ("interior", "columns", 1))


_BAYS = """
title: Bays
size: {width: 1200, height: 900, depth: 300}
carcass: {stock: ply}
interior:
  columns:
    - &bay
      width: 1 share
      shelves: {count: 2}
    - *bay
    - *bay
"""


def _bays(unit: Unit, wished: dict[str, KeyPath]) -> list[list[KeyPath]]:
    shelves = [part for part in unit.parts if part.role is Role.SHELF]
    lefts = sorted({part.bounds().low[0] for part in shelves})
    return [
        [wished[part.ref] for part in shelves if part.bounds().low[0] == left] for left in lefts
    ]


def test_what_an_alias_wishes_leads_to_where_it_is_written() -> None:
    text = _BAYS + STOCK
    spec = parse_spec(text, "bays.yaml")
    unit, wished = set_out_traced(spec)
    for number, bay in enumerate(_bays(unit, dict(wished))):
        assert bay == [("interior", "columns", number, "shelves")] * 2
        lines = {spec.places.of_value(where).line for where in bay}
        assert [text.splitlines()[line - 1].strip() for line in lines] == ["shelves: {count: 2}"]


def test_what_divides_leads_to_its_own_key_where_it_has_one() -> None:
    said = _BAYS.replace("  columns:", "  dividers: {setback: 5}\n  columns:")
    for text, key in ((_BAYS, "columns"), (said, "dividers")):
        unit, wished = set_out_traced(parse_spec(text + STOCK, "bays.yaml"))
        dividers = [part.ref for part in unit.parts if part.role is Role.DIVIDER]
        assert [wished[ref] for ref in dividers] == [("interior", key)] * 2
