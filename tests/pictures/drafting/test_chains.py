"""The figures of drawings are those of the parts."""

from __future__ import annotations

import math
from pathlib import Path

import pytest

from kit.samples import bookcase
from kit.specs import unit_from
from rodwright import read_spec, set_out
from rodwright.lengths import as_shown, format_length, parse_length
from rodwright.pictures.drafting.chains import Chain, chains, dimensions_of, pitch_note
from rodwright.pictures.drafting.seen import ViewName
from rodwright.unit import Unit

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))
VIEWS: tuple[ViewName, ...] = ("front", "side", "plan")


def told(unit: Unit, view: ViewName) -> list[tuple[str, str, list[str]]]:
    """Every chain of a view: its name, its side and its figures."""
    return [
        (chain.name, chain.dimensions[0].side, [each.text for each in chain.dimensions])
        for chain in chains(unit, view)
    ]


def test_a_bookcase_by_hand() -> None:
    # 800 x 1000 x 300 in 18 mm, a shelf in its middle, a frame of 45 x 22, an applied back of 6.
    unit = bookcase()
    assert told(unit, "front") == [
        ("columns", "below", ["18", "764", "18"]),
        ("shelves", "left", ["18", "464", "18", "482", "18"]),
        ("front", "above", ["45", "710", "45"]),
        ("front", "right", ["45", "910", "45"]),
        ("levels", "right", ["18", "500", "1000"]),
        ("overall", "below", ["800"]),
        ("overall", "left", ["1000"]),
    ]
    assert told(unit, "side") == [
        ("depths", "below", ["6", "300", "22"]),
        ("overall", "below", ["328"]),
        ("overall", "left", ["1000"]),
    ]
    assert told(unit, "plan")[-2:] == [
        ("overall", "below", ["800"]),
        ("overall", "left", ["328"]),
    ]


def test_columns_that_differ_have_chains_of_their_own() -> None:
    unit = unit_from(
        "size: {width: 1036, height: 1018, depth: 300}\n"
        "interior:\n"
        "  columns:\n"
        "    - {width: 1 share, shelves: {count: 1}}\n"
        "    - {width: 1 share, shelves: {count: 2}}\n"
    )
    shelves = [chain for chain in told(unit, "front") if chain[0] == "shelves"]
    assert shelves == [
        ("shelves", "left", ["18", "315.3", "18", "315.3", "18", "315.4", "18"]),
        ("shelves", "inside", ["18", "482", "18", "482", "18"]),
    ]


@pytest.mark.parametrize("falls", ["left", "right", "front", "rear"])
def test_a_slope_is_told_where_it_shows(falls: str) -> None:
    unit = unit_from(
        "size: {width: 1400, height: 2200, depth: 700}\n"
        f"slope: {{falls: {falls}, low: 1700, pitch: 50}}\n"
        "interior: {columns: [{width: 1 share}, {width: 1 share}]}\n"
    )
    view: ViewName = "front" if falls in ("left", "right") else "side"
    other: ViewName = "side" if view == "front" else "front"
    assert [note.text for note in pitch_note(unit, view)] == ["50°"]
    assert not pitch_note(unit, other)
    sloping = {chain[1]: chain[2] for chain in told(unit, view) if chain[0] == "slope"}
    low_side = "left" if falls in ("left", "rear") else "right"
    assert set(sloping) == {"above", low_side}
    assert not [chain for chain in told(unit, other) if chain[0] == "slope"]
    # The ceiling is 1700 up at the low side; 7 are left under it, square to it.
    low = 1700 - 7 / math.cos(math.radians(50))
    assert float(sloping[low_side][0]) == pytest.approx(low, abs=0.06)
    run = (2200 - low) / math.tan(math.radians(50))
    assert run in [pytest.approx(float(text), abs=0.11) for text in sloping["above"]]


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_chains_add_up_and_start_where_the_last_one_ends(path: Path) -> None:
    unit = set_out(read_spec(path))
    for view in VIEWS:
        for chain in chains(unit, view):
            if chain.name != "levels":
                adds_up(unit, chain)


def test_a_gap_reads_the_same_in_every_chain() -> None:
    """Three fronts and two gaps, which in 64ths of an inch don't add up by themselves."""
    unit = unit_from(
        "unit: in\n"
        "size: {width: 20, height: 30 1/2, depth: 15}\n"
        "stock:\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 3/4}\n"
        "interior: {drawers: {count: 3, hung: overlay, stock: ply, bottom: {stock: ply}}}\n"
    )
    fronts = next(each for each in chains(unit, "front") if each.dimensions[0].side == "right")
    adds_up(unit, fronts)
    gaps = [each for each in fronts.dimensions if each.end[1] - each.start[1] < 6]
    plain = [format_length(each.end[1] - each.start[1], "in") for each in gaps]
    assert len(gaps) == 2 and [each.text for each in gaps] == plain


def adds_up(unit: Unit, chain: Chain) -> None:
    """A chain runs on from point to point, and its figures are what it reads from end to end."""
    figures = [parse_length(each.text, unit.display_unit) for each in chain.dimensions]
    step = 0.1 if unit.display_unit == "mm" else 25.4 / 64
    for before, after in zip(chain.dimensions, chain.dimensions[1:], strict=False):
        assert before.end == after.start
    axis = 0 if chain.dimensions[0].along == "x" else 1
    whole = chain.dimensions[-1].end[axis] - chain.dimensions[0].start[axis]
    assert sum(figures) == pytest.approx(as_shown(whole, unit.display_unit), abs=1e-6)
    for each, figure in zip(chain.dimensions, figures, strict=True):
        assert figure == pytest.approx(each.end[axis] - each.start[axis], abs=1.5 * step + 1e-4)


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_overall_sizes_stand_outermost(path: Path) -> None:
    unit = set_out(read_spec(path))
    for view in VIEWS:
        dimensions = dimensions_of(chains(unit, view))
        for side in {each.side for each in dimensions} & {"below", "left"}:
            there = [each for each in dimensions if each.side == side]
            last = max(each.rank for each in there)
            assert {each.rank for each in there} == set(range(last + 1))
            assert len([each for each in there if each.rank == last]) == 1
