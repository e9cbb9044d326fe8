"""What is too large, too small or too much is refused as soon as it is read."""

from __future__ import annotations

import re

import pytest

from rodwright.jobs.new import models_folder
from rodwright.problems import ProblemsError
from rodwright.wishes.limits import LARGEST, MOST_PARTS
from rodwright.wishes.reading.files import parse_spec

SPEC = """\
title: Niche shelf
size: {width: 800, height: 900, depth: 250}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18}
carcass: {stock: case}
interior: {shelves: {count: 2}}
"""
TEXTS = {path.stem: path.read_text(encoding="utf-8") for path in models_folder().glob("*.yaml")}
IN_MM = sorted(name for name, text in TEXTS.items() if "\nunit: in" not in text)


def told(text: str) -> list[str]:
    """What is said against a spec, each with its place."""
    try:
        parse_spec(text, "a.yaml")
    except ProblemsError as error:
        assert all(problem.remedy for problem in error.problems)
        return [str(problem).splitlines()[0] for problem in error.problems]
    return []


@pytest.mark.parametrize("name", IN_MM)
def test_a_ready_model_taken_for_inches_is_told_so_once(name: str) -> None:
    text = re.sub("^unit: .*\n", "", TEXTS[name], flags=re.MULTILINE)
    assert told(text) == []
    (said,) = told(f"unit: in\n{text}")
    assert said.startswith("a.yaml:1:7: ")
    assert "larger than any that is built: is this in mm?" in said


@pytest.mark.parametrize(
    "size",
    [
        "{width: 48, height: 84, depth: 12}",
        "{width: 31.5, height: 35.4, depth: 9.75}",
        "{width: 156, height: 96, depth: 14}",
    ],
)
def test_inches_taken_for_millimetres_are_told_so_once(size: str) -> None:
    spec = SPEC.replace("{width: 800, height: 900, depth: 250}", size).replace("18}", "18 mm}")
    (said,) = told(spec)
    assert re.match(r"a\.yaml:2:\d+: ", said)
    assert "smaller than any that is built: is this in inches?" in said
    assert told(f"unit: in\n{spec}") == []


def test_an_opening_in_inches_is_told_so() -> None:
    opening = "opening: {width: {bottom: 47.5, top: 47.25}, height: 80, depth: 12.5}\n"
    spec = re.sub("size:.*\n", opening, SPEC)
    (said,) = told(spec)
    assert said.startswith("a.yaml:2:") and "is this in inches?" in said


@pytest.mark.parametrize("axis", LARGEST)
def test_a_size_just_inside_its_limit_and_just_outside(axis: str) -> None:
    def spec(mm: float) -> str:
        return re.sub(rf"{axis}: \d+", f"{axis}: {mm:.0f}", SPEC, count=1)

    assert told(spec(LARGEST[axis])) == []
    (said,) = told(spec(LARGEST[axis] + 100))
    assert f"the {axis} is too large for a unit" in said and "is this in mm?" in said
    assert re.match(r"a\.yaml:2:\d+: ", said)


@pytest.mark.parametrize(
    ("key", "value"),
    [
        ("width", "0.01"),
        ("height", "1"),
        ("depth", "3"),
        ("width", "{middle: 0.5}"),
        ("height", "{left: 900, others: [{at: 1, height: 9000}]}"),
        ("depth", "{left: 300, right: 4000}"),
    ],
)
def test_a_reading_that_cant_be_of_an_opening(key: str, value: str) -> None:
    opening = {"width": "810", "height": "910", "depth": "260"} | {key: value}
    line = ", ".join(f"{name}: {each}" for name, each in opening.items())
    said = told(f"{SPEC}opening: {{{line}}}\n")
    assert len(said) == 1
    assert re.match(rf"a\.yaml:7:\d+: the {key} is too (small|large) for a unit", said[0])


def test_a_rear_reading_is_looked_at_too() -> None:
    said = told(f"{SPEC}opening: {{width: 810, height: 910, back: {{width: 81000}}}}\n")
    assert len(said) == 1 and "the width behind is too large" in said[0]


@pytest.mark.parametrize("thickness", ["0.5", "200", "457.2"])
def test_a_thickness_that_no_board_has(thickness: str) -> None:
    (said,) = told(SPEC.replace("thickness: 18", f"thickness: {thickness}"))
    assert re.match(r"a\.yaml:4:\d+: the thickness of `case` is too (small|large)", said)


@pytest.mark.parametrize(
    "interior",
    ["{shelves: {openings: [5000, 5000]}}", "{rows: [{height: 5000}, {height: 4000}]}"],
)
def test_lengths_that_add_up_to_too_much(interior: str) -> None:
    spec = SPEC.replace("height: 900, ", "").replace("{shelves: {count: 2}}", interior)
    (said,) = told(spec)
    assert "the height that adds up is too large" in said


COLUMN = "{width: 1 share, shelves: {count: 200}}"
DRAWERS = "{width: 1 share, drawers: {count: 50}}"
ROW = f"{{height: 1 share, columns: [{COLUMN}, {COLUMN}]}}"
NESTED = f"{{width: 1 share, rows: [{ROW}, {{height: 1 share}}]}}"
FEW = "{width: 1 share, shelves: {at: [1]}}"


@pytest.mark.parametrize(
    "columns",
    [[COLUMN] * 12, [DRAWERS] * 9, [NESTED] * 6, [FEW, *[COLUMN] * 11]],
)
def test_a_product_of_modest_counts_is_counted_before_it_is_made(columns: list[str]) -> None:
    spec = SPEC.replace("{shelves: {count: 2}}", f"{{columns: [{', '.join(columns)}]}}")
    (said,) = told(spec)
    assert re.match(r"a\.yaml:6:\d+: ", said)
    assert f"more than {MOST_PARTS:,} parts" in said
    few = SPEC.replace("{shelves: {count: 2}}", f"{{columns: [{', '.join(columns[:2])}]}}")
    assert told(few) == []


def test_parts_by_alias_are_counted_each_time() -> None:
    columns = "&c {width: 1 share, shelves: {count: 200}}, " + "*c, " * 11
    spec = SPEC.replace("{shelves: {count: 2}}", f"{{columns: [{columns}]}}")
    (said,) = told(spec)
    assert "parts" in said


def test_forty_thousand_columns() -> None:
    spec = SPEC.replace("{shelves: {count: 2}}", "{columns: [" + "{width: 1}, " * 40_000 + "]}")
    assert "more than 20,000 keys and values" in told(spec)[0]
    spec = SPEC.replace("{shelves: {count: 2}}", "{columns: [" + "{width: 1}, " * 400 + "]}")
    (said,) = told(spec)
    assert said == "a.yaml:6:12: `columns` takes at most 100 items; there are 400"


@pytest.mark.parametrize(
    "line",
    [
        "base: {kind: plinth, height: 90, spacing: 20}",
        "base: {kind: legs, height: 90, span: 1}",
        "base: {kind: levellers, height: 100, spacing: 0.01}",
        "fit: {fixing_spacing: 5}",
    ],
)
def test_spacings_that_would_give_very_many(line: str) -> None:
    (said,) = told(f"{SPEC}{line}\n")
    assert re.match(r"a\.yaml:7:\d+: `\w+` has to be at least 50 mm", said)
