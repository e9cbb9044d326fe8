"""Every model, its lengths left as they are but its maker working in inches."""

from __future__ import annotations

import csv
import io
import re
from typing import Any

import pytest
from ruamel.yaml import YAML

from rodwright import check, check_solids
from rodwright.checks.findings import Severity
from rodwright.handover.list_files import edges_csv, hardware_csv, parts_csv
from rodwright.handover.lists import hardware_list, parts_list
from rodwright.jobs.new import model_names, model_path
from rodwright.setout import set_out_unit
from rodwright.unit import Hole, Unit
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.schema import Shape

METRIC_WARE = {5.0, 8.0, 15.0, 35.0}
"""Holes (mm) for what is sold in mm everywhere: plate screws, drum bolts, drums, cups."""


def with_units(data: Any, shape: Shape | None) -> Any:
    """Spec data with every bare number that is a length in millimetres said to be one."""
    if isinstance(data, dict):
        return {
            key: with_units(each, shape.at(key, data) if shape else None)
            for key, each in data.items()
        }
    if isinstance(data, list):
        return [with_units(each, shape.at(0) if shape else None) for each in data]
    is_number = isinstance(data, int | float) and not isinstance(data, bool)
    return f"{data} mm" if is_number and shape is not None and shape.is_length else data


def in_inches(name: str) -> Unit:
    data = YAML(typ="safe", pure=True).load(model_path(name).read_text(encoding="utf-8"))
    if data.get("unit") != "in":
        data = with_units(data, Shape.of(UnitSpec)) | {"unit": "in"}
    return set_out_unit(UnitSpec.model_validate(data, context={"unit": "in"}))


@pytest.mark.parametrize("name", model_names())
def test_words_have_fractions_and_no_millimetres(name: str) -> None:
    unit = in_inches(name)
    found = check(unit)
    assert not [each.message for each in found if each.severity is Severity.ERROR]
    rows = hardware_list(unit)
    texts = [text for row in rows for text in (row.name, row.size, *row.holes)]
    texts += [text for row in parts_list(unit) for text in row.workings]
    texts += [f"{each.message} {each.remedy} {each.brief}" for each in found]
    for text in texts:
        # What is sold in mm everywhere says so, with its inches; pounds and degrees have tenths.
        plain = re.sub(
            r"\b\d+(\.\d+)? mm \([\d/ ]+(?: in)?\)|\d+\.\d (lb|in of)|\d+\.\d+°", "", text
        )
        assert not re.search(r"\d\.\d", plain), text
        assert not re.search(r"(?<![\d/])0 \d+/\d+", plain), text
        assert not re.search(r"\b(mm|kg|m2)\b", plain), text


@pytest.mark.parametrize("name", model_names())
def test_holes_are_of_drills_in_64ths(name: str) -> None:
    for part in in_inches(name).parts:
        for working in part.workings:
            if isinstance(working, Hole) and working.diameter not in METRIC_WARE:
                drill = working.diameter / 25.4 * 64
                assert drill == pytest.approx(round(drill), abs=1e-4), (part.ref, working)


@pytest.mark.parametrize("name", ["reading-alcove", "tape-drawers"])
def test_lists_have_numbers_and_fractions(name: str) -> None:
    unit = in_inches(name)
    for content in (parts_csv(unit), hardware_csv(unit), edges_csv(unit)):
        records = list(csv.DictReader(io.StringIO(content.decode("utf-8-sig"), newline="")))
        for record in records:
            assert not [key for key in record if re.search(r"\b(mm|kg|m)\b", key)]
            for key, cell in record.items():
                if key.endswith("as fraction"):
                    assert re.fullmatch(r"(\d+|\d+ \d+/\d+|\d+/\d+) in", cell), (key, cell)
                    assert float(record[key.removesuffix(" as fraction")]) >= 0
                elif cell:
                    assert not re.fullmatch(r"\d+/\d+|0 \d+/\d+", cell), (key, cell)


def test_a_unit_in_inches_is_free_of_collisions() -> None:
    assert check_solids(in_inches("tape-drawers")) == ()
