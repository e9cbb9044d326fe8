"""Which results are meant by a ref, a run of refs, or a subject as the table prints it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.results import PINS, SAG, STANDS
from kit.specs import unit_from
from rodwright.handover.strength_about import about
from rodwright.handover.strength_list import strength_rows
from rodwright.problems import ProblemsError
from rodwright.strength.results import Group, Result
from rodwright.unit import Unit

_CARCASS = replace(STANDS, group=Group.WHOLE, subject="carcass", parts=("SD1", "SD2"))
_LIFTED = replace(
    STANDS, group=Group.LIFTING, subject="the unit without what comes off", parts=("SD1",)
)
_JOINT = replace(PINS, group=Group.JOINTS, subject="shelf SH1 on side SD1", parts=("SH1", "SD1"))


@pytest.fixture(scope="module")
def unit() -> Unit:
    return unit_from(
        "size: {width: 800, height: 1900, depth: 300}\ninterior: {shelves: {count: 5}}\n"
    )


@pytest.fixture(scope="module")
def results() -> tuple[Result, ...]:
    shelves = tuple(
        replace(SAG, subject=f"shelf SH{n}", parts=(f"SH{n}",), figure=7.0 if n < 4 else 8.0)
        for n in range(1, 6)
    )
    return (*shelves, _JOINT, _CARCASS, STANDS, _LIFTED)


def meant(unit: Unit, results: tuple[Result, ...], asked: str) -> list[str]:
    return [each.subject for each in about(unit, results, asked).results]


@pytest.mark.parametrize(
    ("asked", "subjects"),
    [
        ("sh2", ["shelf SH2"]),
        ("SH1-SH3", ["shelf SH1", "shelf SH2", "shelf SH3", "shelf SH1 on side SD1"]),
        ("SH2-4", ["shelf SH2", "shelf SH3", "shelf SH4"]),
        ("SH4, SH5", ["shelf SH4", "shelf SH5"]),
        ("SH2 and SH4–SH5", ["shelf SH2", "shelf SH4", "shelf SH5"]),
        ("carcass", ["carcass"]),
        ("the carcass", ["carcass"]),
        ("the unit", ["the unit"]),
        ("Unit", ["the unit"]),
        ("what comes off", ["the unit without what comes off"]),
        ("on side", ["shelf SH1 on side SD1"]),
        ("shelf SH4", ["shelf SH4"]),
    ],
)
def test_what_is_meant(
    unit: Unit, results: tuple[Result, ...], asked: str, subjects: list[str]
) -> None:
    assert meant(unit, results, asked) == subjects


def test_every_subject_is_found_as_it_is_printed(unit: Unit, results: tuple[Result, ...]) -> None:
    for row in strength_rows(results, "mm"):
        assert set(meant(unit, results, row.subject)) == set(row.subjects)
    assert meant(unit, results, "shelf SH1-SH3") == ["shelf SH1", "shelf SH2", "shelf SH3"]


def test_a_subject_is_known_by_its_first_words(unit: Unit) -> None:
    until = replace(STANDS, subject="the unit, until it is fixed")
    whole = replace(_LIFTED, subject="the whole unit")
    assert meant(unit, (until, whole), "the unit") == ["the unit, until it is fixed"]


def test_layers_run_too() -> None:
    unit = unit_from(
        "size: {width: 800, height: 1900, depth: 300}\n"
        "interior: {shelves: {count: 4, layers: 2, fixed: true}}\n"
    )
    shelves = tuple(
        replace(SAG, subject=f"shelf SH{n}a", parts=(f"SH{n}a", f"SH{n}b")) for n in range(1, 5)
    )
    (row,) = strength_rows(shelves, "mm")
    assert row.subject == "shelf SH1a-SH4a"
    assert about(unit, shelves, "SH2a-SH3a").results == shelves[1:3]
    assert about(unit, shelves, "sh4b").results == shelves[3:]


def test_refs_are_those_of_the_parts_meant(unit: Unit, results: tuple[Result, ...]) -> None:
    assert about(unit, results, "SH2-SH3").refs == {"SH2", "SH3"}
    assert about(unit, results, "carcass").refs == {"SD1", "SD2"}


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("SH9", ["no part `SH9`", "`SH", "SD1, SD2, SH1-SH5", "carcass; the unit; "]),
        ("SH1-SH9", ["no part `SH9`"]),
        ("SD1-SH2", ["two kinds of parts"]),
        ("carcsas", ["called `carcsas`", "Did you mean `carcass`"]),
        ("shelf", ["more than one", "`shelf SH1`", "`shelf SH5`"]),
        ("", ["more than one"]),
    ],
)
def test_what_means_nothing_or_too_much_is_refused(
    unit: Unit, results: tuple[Result, ...], asked: str, told: list[str]
) -> None:
    with pytest.raises(ProblemsError) as refused:
        about(unit, results, asked)
    said = " ".join(str(refused.value).split())
    assert all(each in said for each in told), said
