"""Which figures of a spec are offered, what they are called, and how far they go."""

from __future__ import annotations

from pathlib import Path

import pytest

from rodwright.jobs.look.figures import figure_at, figures_of, nudges_of
from rodwright.jobs.look.nudging import Nudging, digest_of
from rodwright.lengths import parse_length
from rodwright.wishes.reading.editing import value_at
from rodwright.wishes.reading.files import parse_spec, read_spec

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))
SPECS = {path.stem: read_spec(path) for path in MODELS}
SMALL = """\
title: A
unit: {unit}
size: {{width: {width}, height: {height}, depth: 12 in}}
stock: {{"18/20 ply": {{kind: sheet, material: mdf, thickness: {thickness}}}}}
carcass: {{stock: 18/20 ply}}
interior: {{shelves: {shelves}}}
"""


def nudges(spec):
    return {nudge.key: nudge for nudge in nudges_of(spec)}


def small(**said):
    figures = {"unit": "mm", "width": 800, "height": 900, "thickness": 18, "shelves": 3} | said
    return nudges(parse_spec(SMALL.format(**figures), "a.yaml"))


def test_the_figures_of_a_model_in_the_makers_words():
    told = {
        f"{nudge.group}: {nudge.label}": (nudge.value, nudge.line)
        for nudge in nudges_of(SPECS["reading-alcove"])
        if nudge.written
    }
    assert told == {
        "Column 1: width": ("1 share", 46),
        "Column 1: shelves": ("4", 46),
        "Column 1: shelves, layers": ("2", 46),
        "Column 2: width": ("420", 47),
        "Column 2, row 1: height": ("1 share", 49),
        "Column 2, row 1: shelves": ("2", 49),
        "Column 2, row 2: height": ("620", 50),
        "Face frame: width": ("45", 55),
        "Face frame: thickness": ("22", 55),
        "Face frame: rounded by": ("4", 55),
        "Lipping: thickness": ("18", 56),
        "Gaps to the opening: sides": ("3.5", 16),
        "Gaps to the opening: top": ("7", 16),
        "Gaps to the opening: back": ("2", 16),
        "Stock case: thickness": ("18", 23),
        "Stock back: thickness": ("6", 28),
        "Stock ash: thickness": ("22", 32),
    }


def test_what_was_measured_or_bought_is_not_offered():
    for spec in SPECS.values():
        for figure in figures_of(spec):
            assert figure.path[0] not in ("opening", "way_in", "slope", "cutouts", "options")
            assert not {"pieces", "sold", "price", "load"} & set(figure.path)


@pytest.mark.parametrize("model", SPECS)
def test_every_figure_stands_where_it_says_and_in_its_span(model):
    spec = SPECS[model]
    lines = spec.path.read_text(encoding="utf-8").splitlines()
    for nudge in nudges_of(spec):
        path = figure_at(spec, nudge.key).path
        if nudge.written:
            assert str(value_at(spec.data, path)) == nudge.value
            assert nudge.value in lines[nudge.line - 1]
        else:
            assert value_at(spec.data, path) is None
        if nudge.number is None:
            assert nudge.unit == "share"
            continue
        assert 0 <= nudge.least <= nudge.number <= nudge.most
        steps = (nudge.number - nudge.least) / nudge.step
        assert abs(steps - round(steps)) < 1e-4
        if nudge.unit == "share":
            assert nudge.value.startswith(f"{nudge.number:g} share")
        elif nudge.unit:
            mm = {"mm": 1, "cm": 10, "m": 1000, "in": 25.4, "ft": 25.4}[nudge.unit]
            said = value_at(spec.data, path) if nudge.written else nudge.value
            assert parse_length(said, spec.spec.unit) == pytest.approx(nudge.number * mm)


def test_what_has_a_name_is_told_once_with_all_that_changes_with_it():
    told = nudges(SPECS["pottery-dresser"])
    height = told["interior/columns/0/rows/0/height"]
    assert height.also == ("column 2, row 1",)
    assert "interior/columns/1/rows/0/height" not in told
    assert told["interior/columns/0/rows/0/drawers/gap"].also == (
        "column 2, row 1",
        "column 3, row 1",
    )


def test_one_figure_used_for_several_things_is_told_with_what_they_are():
    spec = parse_spec(
        SMALL.format(unit="mm", width="&side 800", height="*side", thickness=18, shelves=3), "a"
    )
    (size,) = (nudge for key, nudge in nudges(spec).items() if key.startswith("size/w"))
    assert size.also == ("overall: height",)


@pytest.mark.parametrize(
    ("said", "key", "unit", "number", "step"),
    [
        ({}, "size/width", "mm", 800, 1),
        ({"width": 800.5}, "size/width", "mm", 800.5, 0.5),
        ({"width": 800.3}, "size/width", "mm", 800.3, 0.1),
        ({"width": "0.8 m"}, "size/width", "m", 0.8, 0.001),
        ({"width": "80 cm"}, "size/width", "cm", 80, 0.1),
        ({"width": "31 1/2 in"}, "size/width", "in", 31.5, 1 / 16),
        ({"width": '"31 1/2″"'}, "size/width", "in", 31.5, 1 / 16),
        ({"width": "31 5/64 in"}, "size/width", "in", 31 + 5 / 64, 1 / 64),
        ({"width": "2 ft 7 1/2 in"}, "size/width", "ft", 31.5, 1 / 16),
        ({"width": "3 ft"}, "size/width", "ft", 36, 1),
        ({"width": "3'"}, "size/width", "ft", 36, 1),
        ({"width": "1/2 ft"}, "size/width", "ft", 6, 1 / 16),
        ({"width": "31 1/2''"}, "size/width", "in", 31.5, 1 / 16),
        ({}, "size/depth", "in", 12, 1 / 16),
        ({"unit": "in", "width": 31.5, "height": 36, "thickness": "3/4"},
         "stock/18~120 ply/thickness", "in", 0.75, 1 / 16),
        ({}, "stock/18~120 ply/thickness", "mm", 18, 1),
        ({}, "interior/shelves", "", 3, 1),
        ({"shelves": "{count: 3}"}, "interior/shelves/count", "", 3, 1),
        ({"shelves": "{openings: [1 share, 300, 2 shares]}"}, "interior/shelves/openings/1",
         "mm", 300, 1),
        ({"shelves": "{openings: [1 share, 300, 2 shares]}"}, "interior/shelves/openings/2",
         "share", 2, 0.25),
        ({"shelves": "{openings: [1.1 shares, 300, 2 shares]}"}, "interior/shelves/openings/0",
         "share", 1.1, 0.05),
        ({"shelves": "{openings: [200, 300, 2 shares]}"}, "interior/shelves/openings/2",
         "share", None, 0),
    ],
)  # fmt: skip
def test_units_and_steps_are_those_of_what_is_written(said, key, unit, number, step):
    nudge = small(**said)[key]
    assert (nudge.unit, nudge.number, nudge.step) == (unit, number, step)


def test_counts_keep_the_limits_of_the_spec():
    layers = small(shelves="{count: 3, layers: 2}")["interior/shelves/layers"]
    assert (layers.least, layers.most) == (1, 4)
    doors = nudges(SPECS["linen-cupboard"])["interior/doors/count"]
    assert (doors.least, doors.most) == (1, 2)


def test_what_is_wished_unless_said_can_be_written():
    spec = SPECS["linen-cupboard"]
    assert "fit" not in spec.data
    gap = nudges(spec)["fit/sides"]
    assert (gap.value, gap.written) == ("3.5", False)


@pytest.mark.parametrize("model", ["hallway-bookcase", "pottery-dresser", "tape-drawers"])
def test_every_figure_can_be_written_and_taken_back(model, tmp_path):
    """One step up on each slider, and twice the share, in a copy of the model."""
    content = SPECS[model].path.read_bytes()
    path = tmp_path / "copy.yaml"
    path.write_bytes(content)
    nudging = Nudging(path)
    written = 0
    for nudge in nudges_of(SPECS[model]):
        if nudge.number is None:
            value = "3"
        elif nudge.number >= nudge.most:
            value = f"{nudge.least:g}"
        else:
            value = f"{nudge.number + nudge.step:g}"
        nudging.nudge(nudge.key, value, digest_of(path.read_bytes()))
        written += 1
        now = str(figure_at(read_spec(path), nudge.key).value)
        assert now.startswith(value)
    for _ in range(written):
        nudging.undo()
    assert path.read_bytes() == content
