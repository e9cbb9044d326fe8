"""Who made a design and when, as a spec may say it."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from pydantic import ValidationError

from kit.specs import spec_from, unit_from
from rodwright.handover.unit_json import read_unit, unit_json
from rodwright.setout import set_out_unit
from rodwright.wishes import read_spec

CASE = "size: {width: 600, height: 800, depth: 300}\n"


def test_nobody_and_no_day_unless_said() -> None:
    unit = unit_from(CASE)
    assert (unit.author, unit.organisation, unit.date) == ("", "", "")


def test_what_is_given_reaches_the_unit_and_its_document(tmp_path: Path) -> None:
    spec = tmp_path / "case.yaml"
    spec.write_text(
        "title: Case\nstock: {ply: {kind: sheet, material: birch plywood, thickness: 18}}\n"
        f"carcass: {{stock: ply}}\n{CASE}"
        "made_by: {name: Zoë Carr, organisation: Carr & Sons}\ndate: 2026-05-31\n"
        "number: 14-B/2026\nrevision: C\napproved_by: Ann Lee\n",
        encoding="utf-8",
    )
    unit = set_out_unit(read_spec(spec).spec)
    assert (unit.author, unit.organisation, unit.date) == ("Zoë Carr", "Carr & Sons", "2026-05-31")
    assert (unit.number, unit.revision, unit.approved_by) == ("14-B/2026", "C", "Ann Lee")
    path = tmp_path / "unit.json"
    path.write_bytes(unit_json(unit))
    assert read_unit(path) == unit


def test_a_document_from_before_is_read_as_nobodys(tmp_path: Path) -> None:
    document = json.loads(unit_json(unit_from(CASE)))
    for key in ("author", "organisation", "date", "number", "revision", "approved_by"):
        del document[key]
    path = tmp_path / "unit.json"
    path.write_text(json.dumps(document))
    assert read_unit(path).date == ""
    assert read_unit(path).number == ""


@pytest.mark.parametrize(("key", "most"), [("number", 24), ("revision", 12), ("approved_by", 80)])
def test_what_goes_on_one_line_of_a_title_block_is_held_to_it(key: str, most: int) -> None:
    assert getattr(spec_from(f"{CASE}{key}: '{'a' * most}'"), key) == "a" * most
    for wish in ("a" * (most + 1), "", "a\tb"):
        with pytest.raises(ValidationError):
            spec_from(f'{CASE}{key}: "{wish}"')


@pytest.mark.parametrize(
    "wish",
    ["2026-02-30", "31.5.2026", "20260531", "2026-W22-7", "2026-05-31T10:00:00", "tomorrow"],
)
def test_what_is_no_day_is_refused(wish: str) -> None:
    with pytest.raises(ValidationError, match="isn't a date"):
        spec_from(f"{CASE}date: '{wish}'")
