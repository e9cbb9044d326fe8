"""What hangs on figures, by hand and against files that were really written otherwise."""

from __future__ import annotations

from pathlib import Path

import pytest

from rodwright.jobs.look import later
from rodwright.jobs.look.figures import Figure, key_of, told_once
from rodwright.jobs.look.hanging import hanging_on
from rodwright.lengths import parse_length
from rodwright.page.document import Hanging
from rodwright.problems import ProblemsError
from rodwright.setout import set_out, set_out_traced
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.editing import with_value
from rodwright.wishes.reading.files import parse_spec

MODELS = Path(__file__).parents[3] / "models"
CASE = """\
title: A
size: {width: 900, height: 1000, depth: 300}
stock: {ply: {kind: sheet, material: birch plywood, thickness: 18}}
carcass: {stock: ply}
"""
PINNED = "interior: {shelves: {count: 3, fixed: false}}\n"
TWO = """\
interior:
  columns:
    - {width: &wide 1 share, shelves: {count: 1, fixed: false}}
    - {width: *wide, shelves: {count: 2, fixed: false}}
"""


def hanging(text: str) -> dict[str, Hanging | None]:
    spec = parse_spec(text, "a.yaml")
    unit, wished = set_out_traced(spec)
    return {key_of(same[0]): hanging_on(same, spec, unit, wished) for same in told_once(spec)}


def test_a_width_changes_what_lies_and_moves_what_stands_on_the_right() -> None:
    told = hanging(CASE + PINNED)["size/width"]
    assert told is not None
    unit = set_out(parse_spec(CASE + PINNED, "a.yaml"))
    lying = {part.ref for part in unit.parts if part.ref.startswith(("BT", "TP", "SH"))}
    assert len(lying) == 5
    assert set(told.changes) == lying
    assert told.moves == ("SD2",)
    assert set(told.sizes) == lying


def test_the_workings_of_a_part_hang_on_more_than_its_size() -> None:
    told = hanging(CASE + PINNED.replace("fixed: false", "setback: 20"))
    setback = told["interior/shelves/setback"]
    assert setback is not None
    # Fixed shelves lie in the sides: these are worked elsewhere, and are as large as before.
    assert {"SD1", "SD2", "SH1"} <= set(setback.changes)
    assert "SH1" in setback.sizes and not {"SD1", "SD2"} & set(setback.sizes)


def test_a_depth_changes_everything_of_a_case_without_a_back() -> None:
    told = hanging(CASE + PINNED)["size/depth"]
    assert told is not None
    assert len(told.changes) == 7 and told.moves == ()


def test_one_shelf_more_touches_the_shelves_of_its_own_column_only() -> None:
    told = hanging(CASE + TWO)["interior/columns/0/shelves/count"]
    assert told is not None
    # The second column's are called SH2 and SH3 before and SH3 and SH4 after it.
    assert "SH1" in told.changes
    assert not {"SH2", "SH3"} & {*told.changes, *told.moves}


def test_a_share_that_all_have_changes_nothing() -> None:
    together = hanging(CASE + TWO)["interior/columns/0/width"]
    assert together == Hanging((), (), nothing=True)
    alone = hanging(CASE + TWO.replace("*wide", "1 share"))["interior/columns/0/width"]
    assert alone is not None
    assert {"SH1", "SH2", "SH3"} <= set(alone.changes)
    assert alone.moves == ("DV1",)


def test_where_there_can_be_no_more_there_is_one_less() -> None:
    text = (MODELS / "linen-cupboard.yaml").read_text(encoding="utf-8")
    spec = parse_spec(text, "a.yaml")
    doors = next(each for (each, *_) in told_once(spec) if each.path[-2:] == ("doors", "count"))
    assert doors.value == doors.most == 2
    told = hanging(text)["interior/doors/count"]
    assert told is not None
    unit = set_out(spec)
    across = {part.ref for part in unit.parts if part.ref.startswith(("DOR", "DOP"))}
    assert across and across <= set(told.changes)


@pytest.mark.parametrize("model", ["hallway-bookcase", "record-cabinet"])
def test_whatever_becomes_another_in_a_file_written_otherwise_hangs_on_its_figure(
    model: str,
) -> None:
    path = MODELS / f"{model}.yaml"
    text = path.read_text(encoding="utf-8")
    spec = parse_spec(text, path)
    unit, wished = set_out_traced(spec)
    seen = 0
    for same in told_once(spec):
        told = hanging_on(same, spec, unit, wished)
        try:
            written = with_value(text, same[0].path, more(same[0], spec), str(path))
            other = set_out(parse_spec(written, path))
        except ProblemsError:
            continue
        assert told is not None
        assert told.nothing == (unit == other)
        assert not set(told.changes) & set(told.moves)
        if len(unit.parts) != len(other.parts):
            continue
        seen += 1
        for part in unit.parts:
            now = other.part(part.ref)
            if part.blank.size != pytest.approx(now.blank.size, abs=0.01):
                assert part.ref in told.changes and part.ref in told.sizes
            elif part.placement.origin != pytest.approx(now.placement.origin, abs=0.01):
                assert part.ref in (*told.changes, *told.moves)
            elif part == now:
                assert part.ref not in (*told.changes, *told.moves)
    assert seen > 6


def more(figure: Figure, spec: SpecFile) -> str:
    """A figure as a maker would write it who wants a little more."""
    if figure.count:
        return str(int(figure.value) + 1)
    if "share" in str(figure.value):
        return f"{2 * float(str(figure.value).split()[0]):g} shares"
    by = 1.0 if spec.spec.unit == "mm" else 25.4 / 16
    return f"{parse_length(figure.value, spec.spec.unit) + by:.6f} mm"


def test_portions_together_are_the_whole(monkeypatch: pytest.MonkeyPatch) -> None:
    text = CASE + TWO
    monkeypatch.setattr(later, "_PORTION", -1.0)
    told: dict[str, Hanging] = {}
    begin: int | None = 0
    asked = 0
    while begin is not None:
        portion, begin = later.hanging(text, "a.yaml", begin)
        told |= portion
        asked += 1
    assert told == {key: each for key, each in hanging(text).items() if each is not None}
    assert asked == len(hanging(text))
