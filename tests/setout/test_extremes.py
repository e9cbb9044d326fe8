"""Wishes at the edge of what makes sense are refused in words, or made; nothing breaks on them."""

from __future__ import annotations

import pytest

from kit.specs import of_role, problems_of, unit_from
from rodwright.checks import check_parts
from rodwright.mass import unit_weight
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.setout.carcass.back import BACK_HOLD
from rodwright.setout.carcass.shelf_rows import MOST_HOLES
from rodwright.trade.sizes import METRIC
from rodwright.unit import Role
from rodwright.wishes.reading.files import parse_spec

SIZE = "size: {width: 900, height: 900, depth: 300}\n"


@pytest.mark.parametrize("width", [30, 40, 42, 43.9, 45])
def test_a_lipped_shelf_that_the_frame_hides_takes_no_lipping(width: float) -> None:
    """The frame's stile hides 60 - 18 = 42 mm of the column."""
    columns = [{"width": width, "shelves": {"count": 2}}, {"width": "1 share"}]
    unit = unit_from(
        SIZE,
        interior={"columns": columns},
        face_frame={"stock": "ash", "width": 60},
        lipping={"stock": "ash", "thickness": 10},
    )
    strips = of_role(unit, Role.LIPPING)
    assert len(strips) == (2 if width - 42 >= 3 else 0)
    assert all(strip.blank.length == pytest.approx(width - 42) for strip in strips)
    assert unit_weight(unit) > 0
    check_parts(unit)


def test_a_back_no_screw_goes_through_is_refused() -> None:
    thickest = METRIC.screw_lengths[-1] - BACK_HOLD

    def said(thickness: float, fixing: str) -> list[str]:
        thick = {"kind": "sheet", "material": "mdf", "thickness": thickness}
        ply = {"kind": "sheet", "material": "birch plywood", "thickness": 18}
        stock = {"ply": ply, "thick": thick}
        back = {"stock": "thick", "fixing": fixing}
        return problems_of("size: {width: 900, height: 900, depth: 400}\n", stock=stock, back=back)

    assert said(thickest, "applied") == []
    (problem,) = said(thickest + 1, "applied")
    assert problem.startswith("back.stock: no wood screw is long enough for a back 105 mm thick")
    assert said(thickest + 1, "grooved") == []


def test_a_row_has_no_more_holes_than_anybody_bores() -> None:
    def said(pitch: float, **more: object) -> list[str]:
        holes = {"pitch": pitch, **more}
        shelves = {"count": 4, "fixed": False, "holes": holes}
        size = "size: {width: 900, height: 5000, depth: 300}\n"
        return problems_of(size, interior={"shelves": shelves})

    assert said(20) == []
    (problem,) = said(10)
    assert problem.startswith("interior.shelves.holes.pitch: a row of ")
    assert said(10, near=3) == []
    assert said(10, **{"from": 100, "to": 100 + 10 * (MOST_HOLES - 1)}) != said(10)


@pytest.mark.parametrize(
    ("key", "value"), [("width", "1e-9"), ("rail_width", "0.001"), ("eased", "1e-300")]
)
def test_a_length_that_no_workshop_knows_is_refused_where_it_stands(key: str, value: str) -> None:
    frame = {"stock": "case", "width": "60", "corners": "butted"} | {key: value}
    text = (
        "title: A\nsize: {width: 900, height: 900, depth: 300}\n"
        "stock: {case: {kind: sheet, material: mdf, thickness: 18}}\ncarcass: {stock: case}\n"
        f"face_frame: {{{', '.join(f'{name}: {each}' for name, each in frame.items())}}}\n"
    )
    with pytest.raises(ProblemsError, match="less than a hundredth of a millimetre") as caught:
        parse_spec(text, "a.yaml")
    (problem,) = caught.value.problems
    assert (problem.line, problem.column) == (5, text.splitlines()[4].index(value) + 1)


def test_of_very_many_problems_of_the_set_out_the_first_are_told() -> None:
    columns = ", ".join(["{width: 1 share, shelves: {count: 9}}"] * 16)
    text = (
        "title: A\nsize: {width: 9000, height: 2400, depth: 300}\n"
        "stock: {case: {kind: sheet, material: birch plywood, thickness: 18}}\n"
        "carcass: {stock: case, corners: screwed}\n"
        f"interior: {{columns: [{columns}]}}\n"
    )
    spec = parse_spec(text, "a.yaml")
    with pytest.raises(ProblemsError) as caught:
        set_out(spec)
    problems = caught.value.problems
    assert len(problems) == 101
    assert "there is more that is wrong" in problems[-1].message
    assert all(problem.line for problem in problems)
