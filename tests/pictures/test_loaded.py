"""The unit under its loads: what is drawn, and that no text runs over a line."""

from __future__ import annotations

from itertools import combinations
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from PIL import Image
from shapely import LineString, box

import rodwright
from kit.specs import unit_from
from kit.wishes import Wish, wishes
from rodwright.jobs.new import model_names, model_path
from rodwright.lengths import LengthUnit
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import DARK, Drawing, Fill, Lettering, Stroke
from rodwright.pictures.loaded import draw_loaded, write_loaded
from rodwright.pictures.loaded_labels import sag_and_limit
from rodwright.pictures.sagged import after, drawn, drop_at, exaggeration, slices
from rodwright.pictures.sheet import LONG_DASHES, draw_views
from rodwright.problems import ProblemsError
from rodwright.strength.sag_lines import SagLine, sag_lines
from rodwright.unit import Unit

WEAK = """
size: {width: 1100, height: 900, depth: 300}
carcass: {stock: ply, corners: housed}
loads: books
interior: {shelves: {count: 2, fixed: true, stock: soft}}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  soft: {kind: sheet, material: mdf, thickness: 12, size: [2440, 1220]}
"""


@pytest.mark.parametrize(
    ("sag", "limit", "unit", "told"),
    [
        (17.2, 5.84, "in", ("43/64", "15/64")),
        (0.45, 0.38, "in", ("0.018", "0.015")),
        (4.6001, 4.6, "mm", ("just over 4.60", "4.60")),
        (0.01, 4.6, "mm", ("less than 0.1", "4.6")),
    ],
)
def test_a_sag_past_its_limit_never_reads_like_it(
    sag: float, limit: float, unit: LengthUnit, told: tuple[str, str]
) -> None:
    assert sag_and_limit(sag, limit, unit) == told


def _of(unit: Unit) -> Drawing:
    return draw_loaded(unit, sag_lines(unit))


def _texts(drawing: Drawing) -> list[Lettering]:
    return [mark for mark in drawing.marks if isinstance(mark, Lettering)]


def _box(text: Lettering) -> object:
    """The rectangle that a text fills: capitals and what hangs below."""
    x, y = text.at
    width = text_width(text.text, text.size)
    left = x - {"start": 0.0, "middle": width / 2, "end": width}[text.anchor]
    return box(left, y - 0.72 * text.size, left + width, y + 0.2 * text.size)


@pytest.mark.parametrize("name", model_names())
def test_no_text_runs_over_a_line_or_another_text(name: str) -> None:
    _is_clear(_of(rodwright.set_out(rodwright.read_spec(model_path(name)))))


@settings(max_examples=25, suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large])
@given(wishes(), st.sampled_from(["books", "records", "10 kg/m"]))
def test_nor_does_it_in_random_units(wish: Wish, loads: str) -> None:
    try:
        unit = unit_from(f"unit: mm\nloads: {loads}\n", **wish)
    except ProblemsError:
        return
    if sag_lines(unit):
        _is_clear(_of(unit))


def _is_clear(drawing: Drawing) -> None:
    boxes = [(text.text, _box(text)) for text in _texts(drawing)]
    lines = [
        LineString(line)
        for mark in drawing.marks
        if isinstance(mark, Stroke)
        for line in mark.lines
    ]
    for text, where in boxes:
        assert not any(line.intersects(where) for line in lines), text
    for (one, first), (other, second) in combinations(boxes, 2):
        assert not first.intersects(second), (one, other)  # type: ignore[attr-defined]
    for text, where in boxes:
        assert box(0, 0, drawing.width, drawing.height).contains(where), text


def test_what_sags_too_far_is_told_without_colour() -> None:
    """In black, in words beside it, and in the notes."""
    unit = unit_from(WEAK)
    failing = [line for line in sag_lines(unit) if not line.holds]
    assert {line.ref for line in failing} >= {"SH1", "SH2"}
    drawing = _of(unit)
    told = [text.text for text in _texts(drawing)]
    assert sum("too far" in text for text in told) == len(failing)
    assert any(text.startswith("Past its limit: SH1, SH2") for text in told)
    strips = [m for m in drawing.marks if isinstance(m, Fill) and len(m.rings[0]) > 50]
    assert sum(mark.colour == DARK for mark in strips) == len(failing)
    assert "past their limits: TP1, SH1, SH2" in drawing.description


def test_loads_are_lettered_in_the_makers_weights() -> None:
    in_mm = [text.text for text in _texts(_of(unit_from(WEAK)))]
    assert any(text.startswith("SH1: books, ") and text.endswith(" kg") for text in in_mm)
    bookcase = rodwright.set_out(rodwright.read_spec(model_path("hallway-bookcase")))
    drawing = _of(bookcase)
    assert any(" lb" in text.text for text in _texts(drawing))
    assert (drawing.width, drawing.height) == (279.4, 215.9)


def test_a_weight_that_was_said_is_not_said_twice() -> None:
    unit = unit_from(WEAK.replace("loads: books", "loads: 20 kg"))
    said = [text.text for text in _texts(_of(unit)) if text.text.startswith("SH1: ")]
    assert said == ["SH1: 20 kg"]


def test_a_level_is_bent_by_its_sag_times_what_is_said() -> None:
    """In the unit's lengths: the strip of SH1 is its thickness and its sag, so many times."""
    sound = WEAK.replace("material: mdf, thickness: 12", "material: birch plywood, thickness: 30")
    unit = unit_from(sound.replace("width: 1100", "width: 700"))
    lines = sag_lines(unit)
    drawing = draw_loaded(unit, lines)
    (line,) = (line for line in lines if line.ref == "SH1")
    strips = [m.rings[0] for m in drawing.marks if isinstance(m, Fill) and len(m.rings[0]) > 50]
    number = [each.ref for each in lines].index("SH1")
    ys, xs = [y for _, y in strips[number]], [x for x, _ in strips[number]]
    scale = (max(xs) - min(xs)) / line.box.size[0]
    subtitle = next(text.text for text in _texts(drawing) if "drawn" in text.text)
    times = float(subtitle.rpartition("drawn ")[2].partition(" times")[0])
    downs = [down for _, down in line.line]
    drop = (max(downs) - min(downs)) * times
    assert (max(ys) - min(ys)) / scale == pytest.approx(line.box.size[2] + drop, rel=1e-6)


def _line(down: float) -> SagLine:
    from rodwright.geometry import Box

    place = Box((0, 0, 0), (100, 100, 18))
    return SagLine("SH1", ("SH1",), place, ((0.0, 0.0), (50.0, down)), down, 1.0, 50.0, (), 0.0)


def test_a_divider_goes_down_with_what_it_stands_on() -> None:
    """As far as its level at its middle, to within its thickness; the other end stays."""
    unit = rodwright.set_out(rodwright.read_spec(model_path("market-shelves")))
    lines = sag_lines(unit)
    (divider,) = (part.bounds() for part in unit.parts if part.role == "divider")
    bottom = next(line for line in lines if line.ref == "BT1")
    assert drop_at(bottom, divider.centre[0]) == pytest.approx(bottom.sag, rel=0.05)
    drawing = draw_loaded(unit, lines)
    rings = [m.rings[0] for m in drawing.marks if isinstance(m, Fill) and len(m.rings[0]) == 4]
    strips = [m.rings[0] for m in drawing.marks if isinstance(m, Fill) and len(m.rings[0]) > 50]
    strip = strips[[line.ref for line in lines].index("BT1")]
    middle = (min(x for x, _ in strip) + max(x for x, _ in strip)) / 2
    narrow = [ring for ring in rings if abs(sum(x for x, _ in ring) / 4 - middle) < 3]
    (standing,) = narrow
    face = max(y for _, y in strip[: len(strip) // 2])
    assert max(y for _, y in standing) == pytest.approx(face, abs=0.5)


@pytest.mark.parametrize("x", [-10.0, 0.0, 25.0, 50.0, 80.0])
def test_a_drop_is_read_between_its_places(x: float) -> None:
    assert drop_at(_line(2.0), x) == pytest.approx(2.0 * min(max(x, 0.0), 50.0) / 50.0)


@pytest.mark.parametrize(
    ("down", "times", "said"),
    [
        (0.05, 100, "100 times too large"),
        (1.0, 50, "50 times too large"),
        (2.6, 20, "20 times too large"),
        (40.0, 1, "as large as it is"),
        (90.0, 0.5, "2 times too small"),
        (9000.0, 0.1, "10 times too small"),
    ],
)
def test_the_exaggeration_is_a_round_figure(down: float, times: float, said: str) -> None:
    """No deeper than 70 mm of the unit."""
    assert exaggeration([_line(down)], 70.0) == times
    assert drawn(times) == said


def test_when_it_sags_so() -> None:
    assert [after(years) for years in (0.0, 1.0, 10.0)] == [
        "at once",
        "after 1 year",
        "after 10 years",
    ]


def test_what_slopes_is_taken_in_slices() -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path("hostel-eaves")))
    sloping = [part for part in unit.parts if abs(part.placement.length[2]) not in {0.0, 1.0}]
    cut = [tuple(slices(part)) for part in sloping if abs(part.placement.length[0]) > 0.1]
    assert any(len(each) > 1 for each in cut)
    for part, boxes in zip(sloping, cut, strict=False):
        assert sum(each.size[0] for each in boxes) == pytest.approx(part.bounds().size[0])


def test_the_front_view_has_the_lines_in_long_dashes() -> None:
    unit = unit_from(WEAK)
    lines = sag_lines(unit)
    marks = draw_views(unit, lines).marks
    dashed = [m for m in marks if isinstance(m, Stroke) and m.dashes == LONG_DASHES]
    assert len(dashed) >= 2
    told = [m.text for m in marks if isinstance(m, Lettering) and "Long dashes: sag" in m.text]
    assert len(told) == 1
    bare = draw_views(unit).marks
    assert not [m for m in bare if isinstance(m, Stroke) and m.dashes == LONG_DASHES]


def test_it_is_written_as_png_and_svg(tmp_path: Path) -> None:
    unit = unit_from(WEAK)
    made = write_loaded(unit, sag_lines(unit), tmp_path)
    assert [path.name for path in made] == ["loaded.png", "loaded.svg"]
    with Image.open(made[0]) as picture:
        assert min(picture.size) > 1000
    assert write_loaded(unit, (), tmp_path / "none") == ()
