"""What isn't said in a file in inches is round in inches."""

from __future__ import annotations

from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from pydantic import Field
from ruamel.yaml import YAML

from rodwright.lengths import from_inches
from rodwright.wishes.fields import DEFAULT_IN, Length, LengthOrZero, SpecModel, default, in_inches
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.files import parse_spec
from rodwright.wishes.reading.reference import reference_table
from rodwright.wishes.reading.schema import Shape, json_schema

METRIC_WARE = {"cup"}
"""Borings of concealed hinges are 35 mm in both worlds (common practice, no source)."""
SPEC = """
title: Niche
unit: in
opening: {width: 36, height: 72, depth: 12}
stock: {ply: {kind: sheet, material: birch plywood, thickness: 3/4 in}}
carcass: {stock: ply}
interior: {columns: [
  {width: 12, doors: {hinge: {edge: 4 mm}, handle: {}}, shelves: {count: 2, fixed: false}},
  {width: 1 share, drawers: {count: 2, gap: 0.1}}]}
"""


def properties(node: Any) -> Any:
    """Every property of a schema, by its key."""
    if isinstance(node, dict):
        yield from node.get("properties", {}).items()
        for each in node.values():
            yield from properties(each)
    elif isinstance(node, list):
        for each in node:
            yield from properties(each)


def test_every_default_of_a_length_has_its_inches() -> None:
    found = 0
    for key, schema in properties(Shape.of(UnitSpec).schema):
        value = schema.get("default")
        if not isinstance(value, float) or not str(schema.get("title")).startswith("length"):
            continue
        if value == 0:
            continue
        if key in METRIC_WARE:
            assert DEFAULT_IN not in schema
            continue
        found += 1
        inches = from_inches(schema[DEFAULT_IN])
        # Round: a multiple of 1/32 of an inch, or of 1/64 where the whole is under 1/8.
        parts = Fraction(inches) / Fraction(254, 10) * (64 if inches < 3.2 else 32)
        assert abs(parts - round(parts)) < 1e-9, key
        assert abs(inches - value) <= 0.3 * value, key
    assert found > 30


def test_a_file_in_inches_gets_them() -> None:
    spec = parse_spec(SPEC, "niche.yaml").spec
    assert (spec.fit.sides, spec.fit.top) == (3.175, 6.35)
    assert spec.fit.packers[:3] == (0.79375, 1.5875, 3.175)
    assert spec.interior.columns is not None
    door, drawers = spec.interior.columns
    assert door.shelves is not None
    assert door.doors is not None
    assert drawers.drawers is not None
    assert (door.shelves.holes.pitch, door.shelves.holes.diameter) == (31.75, 6.35)
    # What is said stands as it is said, and only that counts as said.
    assert (door.doors.hinge.edge, door.doors.hinge.plate) == (4.0, from_inches("1 7/16"))
    assert drawers.drawers.gap == pytest.approx(2.54)
    assert door.doors.hinge.model_fields_set == {"edge"}
    assert door.shelves.model_fields_set == {"count", "fixed"}


def test_a_file_in_millimetres_keeps_its_own() -> None:
    text = SPEC.replace("unit: in", "unit: mm")
    text = text.replace("{width: 36, height: 72, depth: 12}", "{width: 900, height: 1800}")
    spec = parse_spec(text.replace("width: 12,", "width: 300,"), "niche.yaml").spec
    assert (spec.fit.sides, spec.fit.top) == (3.5, 7.0)


class Hole(SpecModel):
    """A hole."""

    wide: Length = default(5.0, "3/16")
    deep: LengthOrZero = 0.0
    steps: tuple[Length, ...] = default((1.0, 2.0), ("1/32", "1/16"))


class Board(SpecModel):
    """A board."""

    hole: Hole = Hole()
    holes: dict[str, Hole] = Field(default_factory=dict)


def test_defaults_inside_groups_lists_and_names() -> None:
    board = in_inches(Board(holes={"a": Hole(wide=7.0)}))
    assert (board.hole.wide, board.hole.deep) == (from_inches("3/16"), 0.0)
    assert board.holes["a"].wide == 7.0
    assert board.holes["a"].steps == (0.79375, 1.5875)
    assert board.model_fields_set == {"holes"}


def test_schema_and_table_tell_both() -> None:
    hole = json_schema(Hole)["properties"]
    assert hole["wide"]["default"] == "5 mm"  # a bare 5 would be five inches in a file in inches
    assert hole["wide"]["description"] == "In a file in inches 3/16 in unless said."
    assert hole["deep"]["default"] == "0 mm"
    assert DEFAULT_IN not in str(json_schema(UnitSpec))
    assert [row.split(" | ")[2] for row in reference_table(Hole).splitlines()[2:]] == [
        "5 mm, or 3/16 in",
        "0 mm",
        "`[1, 2]` mm, or `[1/32, 1/16]` in",
    ]


@pytest.mark.parametrize("path", sorted((Path(__file__).parents[2] / "models").glob("*.yaml")))
def test_models_are_read_as_before(path: Path) -> None:
    data = YAML(typ="safe", pure=True).load(path.read_text(encoding="utf-8"))
    spec = UnitSpec.model_validate(data, context={"unit": data.get("unit", "mm")})
    assert spec == parse_spec(path.read_text(encoding="utf-8"), path).spec
