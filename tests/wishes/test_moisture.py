"""The moisture contents a spec may give."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from pydantic import ValidationError

from kit.specs import spec_from, unit_from
from rodwright.handover.unit_json import read_unit, unit_json

CASE = "size: {width: 600, height: 800, depth: 300}\n"


def test_a_heated_room_unless_said() -> None:
    assert unit_from(CASE).moisture == (6.0, 12.0)


def test_given_contents_reach_the_unit_and_its_document(tmp_path: Path) -> None:
    unit = unit_from(CASE + "moisture: {least: 8, most: 13.5}")
    assert unit.moisture == (8.0, 13.5)
    path = tmp_path / "unit.json"
    path.write_bytes(unit_json(unit))
    assert read_unit(path) == unit
    assert json.loads(path.read_text())["measures"]["moisture"].startswith("%")


def test_a_document_without_them_is_read_as_of_a_heated_room(tmp_path: Path) -> None:
    document = json.loads(unit_json(unit_from(CASE)))
    del document["moisture"]
    path = tmp_path / "unit.json"
    path.write_text(json.dumps(document))
    assert read_unit(path).moisture == (6.0, 12.0)


@pytest.mark.parametrize(
    ("wish", "says"),
    [
        ("{least: 12, most: 7}", "`least` \\(12 %\\) is more than `most` \\(7 %\\)"),
        ("{least: 5.5}", "greater than or equal to 6"),
        ("{most: 15}", "less than or equal to 14"),
        ("{most: wet}", "valid number"),
    ],
)
def test_what_the_formula_cannot_judge_is_refused(wish: str, says: str) -> None:
    with pytest.raises(ValidationError, match=says):
        spec_from(f"{CASE}moisture: {wish}")
