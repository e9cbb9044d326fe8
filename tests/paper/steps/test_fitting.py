"""Fitting on site and finishing, as they are told."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from rodwright import read_spec, set_out, survey
from rodwright.making.order import order_of
from rodwright.paper.sections import Section
from rodwright.paper.steps.finishing import finishing_section
from rodwright.paper.steps.fitting import fitting_section
from rodwright.strength.hanging import PULL, hanging
from rodwright.strength.paths import GRAVITY
from rodwright.strength.restraint import FIXING
from rodwright.strength.tipping import tipping

MODELS = Path(__file__).parents[3] / "models"


def _told(name: str) -> tuple[Section, dict[str, list[str]]]:
    spec = read_spec(MODELS / f"{name}.yaml")
    unit = set_out(spec)
    found = survey(spec) if unit.opening is not None else None
    section = fitting_section(unit, order_of(unit), found)
    return section, {block["title"]: block["lines"] for block in section.data["blocks"]}


def test_the_work_on_site_is_in_its_order() -> None:
    section, told = _told("reading-alcove")
    assert list(told) == [
        "Before anything is drilled",
        "Carry it in",
        "The floor",
        "Stand it in its place",
        "Pack it and fix it to the wall",
        "Loose shelves",
        "Face frame",
        "Close the gaps",
        "Before you leave",
    ]
    assert set(section.files) == {
        move["picture"] for block in section.data["blocks"] for move in block["moves"]
    }


def test_packers_are_those_of_the_survey() -> None:
    spec = read_spec(MODELS / "reading-alcove.yaml")
    fit = survey(spec).fit
    assert fit is not None
    section, _ = _told("reading-alcove")
    rows = [row for block in section.data["blocks"] for row in block["rows"]]
    assert len(rows) == len(fit.packing)
    assert sum(row["side"] == "under it" for row in rows) == sum(
        each.gap.side == "bottom" for each in fit.packing
    )


def test_what_closes_each_gap_is_told() -> None:
    _, told = _told("reading-alcove")
    assert [line.split(":")[0] for line in told["Close the gaps"][:3]] == ["Left", "Right", "Top"]


def test_a_unit_that_stands_free_is_fixed_against_tipping() -> None:
    _, told = _told("pottery-dresser")
    unit = set_out(read_spec(MODELS / "pottery-dresser.yaml"))
    held = next(each for each in tipping(unit) if each.what == FIXING)
    assert held.figure is not None
    (first, *_) = told["Pack it and fix it to the wall"]
    assert f"{held.figure / GRAVITY:.0f} kg of pull" in first
    assert "Drawers" in told and "Doors" in told and "Close the gaps" not in told


def test_a_unit_that_hangs_says_what_its_fixings_hold() -> None:
    unit = replace(set_out(read_spec(MODELS / "niche-shelf.yaml")), opening=None, hung=True)
    pull = next(each for each in hanging(unit) if each.what == PULL)
    assert pull.figure is not None
    told = {
        block["title"]: block["lines"]
        for block in fitting_section(unit, order_of(unit)).data["blocks"]
    }
    assert f"{pull.figure / GRAVITY:.0f} kg" in told["Pack it and fix it to the wall"][0]
    assert "The floor" not in told


def test_a_way_in_that_is_too_tight_says_what_does() -> None:
    unit = set_out(read_spec(MODELS / "reading-alcove.yaml"))
    assert unit.way_in is not None
    low = replace(unit, way_in=replace(unit.way_in, ceiling=2000.0))
    blocks = fitting_section(low, order_of(low)).data["blocks"]
    lines = next(block["lines"] for block in blocks if block["title"] == "Carry it in")
    assert any("short" in line for line in lines)
    assert any(line.startswith(("What does:", "None of the remedies")) for line in lines)


@pytest.mark.parametrize(
    ("name", "chosen"),
    [
        (
            "pottery-dresser",
            [
                "Paint #6f8288, satin: primer and paint",
                "Lacquer, satin: water-based lacquer",
                "Oil, matt: hardwax oil",
            ],
        ),
        ("market-shelves", ["Lacquer, matt: water-based lacquer"]),
    ],
)
def test_finishing_says_areas_amounts_and_what_burns(name: str, chosen: list[str]) -> None:
    data = finishing_section(set_out(read_spec(MODELS / f"{name}.yaml"))).data
    assert data["whole"].endswith("m2")
    assert [finish["name"] for finish in data["finishes"]] == chosen
    assert any("catch fire by themselves" in line for line in data["cautions"])


def test_what_stays_bare_is_told_and_not_counted() -> None:
    data = finishing_section(set_out(read_spec(MODELS / "drying-rack.yaml"))).data
    assert [(row["finish"], row["stock"]) for row in data["areas"]] == [
        ("lacquer, satin", "ply"),
        ("stays bare", "pine"),
    ]
    assert data["whole"] == data["areas"][0]["whole"]


def test_where_nothing_was_chosen_three_usual_kinds_are_told() -> None:
    unit = set_out(read_spec(MODELS / "market-shelves.yaml"))
    bare = replace(unit, parts=tuple(replace(part, finish=None) for part in unit.parts))
    data = finishing_section(bare).data
    assert not data["chosen"]
    assert len(data["finishes"]) == 3


def test_finishing_is_in_the_makers_measures() -> None:
    unit = replace(set_out(read_spec(MODELS / "niche-shelf.yaml")), display_unit="in")
    data = finishing_section(unit).data
    assert data["whole"].endswith("sq ft")
    assert data["finishes"][0]["coats"][0]["buy"].endswith("qt")
