"""Keys that the maker writes otherwise than the program does."""

from __future__ import annotations

from kit.specs import spec_from
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.schema import json_schema


def test_from_and_to_are_keys_with_a_meaning() -> None:
    keys = json_schema(UnitSpec)["$defs"]["ShelfHolesSpec"]["properties"]
    assert keys["from"]["description"].startswith("Height of the first hole's centre")
    assert "no hole lies higher" in keys["to"]["description"].lower()
    holes = {"from": "4 in", "to": 800}
    spec = spec_from("unit: mm\n", interior={"shelves": {"count": 1, "holes": holes}})
    assert spec.interior.shelves is not None
    assert (spec.interior.shelves.holes.start, spec.interior.shelves.holes.stop) == (101.6, 800)
