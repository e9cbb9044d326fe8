"""Which picture a quote takes."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

from kit.specs import unit_from
from rodwright.jobs.quote.pictures import as_finished, drawings_of, photographs_of, shown
from rodwright.page.surfaces import surface_of
from rodwright.photo.stamp import stamp_of
from rodwright.problems import Problem, ProblemsError
from rodwright.unit import Role, Unit
from rodwright.unit.laid import laid_unit

UNIT = laid_unit(unit_from("size: {width: 800, height: 900, depth: 300}"))
OTHER = laid_unit(unit_from("size: {width: 700, height: 900, depth: 300}"))


def _photograph(unit: Unit, shade: int) -> bytes:
    file = BytesIO()
    image = Image.new("RGB", (8, 12), (shade,) * 3)
    image.save(file, format="JPEG", comment=stamp_of(unit, "closed"))
    return file.getvalue()


def _put(folder: Path, **files: bytes) -> None:
    (folder / "photographs").mkdir()
    for name, data in files.items():
        (folder / "photographs" / f"{name}.jpg").write_bytes(data)


def test_photographs_of_the_very_units_are_taken_whatever_they_are_called(tmp_path: Path) -> None:
    one, two = _photograph(UNIT, 10), _photograph(OTHER, 200)
    _put(tmp_path, closed=two, white=one, broken=b"")
    assert photographs_of([UNIT, OTHER], tmp_path, lambda _: None) == (one, two)


def test_one_of_the_unit_as_it_was_is_not(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """It would be made anew; without Mitsuba the unit is drawn, and that is told."""

    def refuse() -> None:
        raise ProblemsError([Problem("Mitsuba isn't installed", "Install it.")])

    monkeypatch.setattr("rodwright.photo.tracing.refuse_without_mitsuba", refuse)
    _put(tmp_path, closed=_photograph(OTHER, 10))
    (drawn,), why = shown([UNIT], tmp_path, "photographs", lambda _: None)
    assert why == "Mitsuba isn't installed"
    with Image.open(BytesIO(drawn)) as image:
        assert image.size[0] > 500


BARE = "size: {width: 800, height: 900, depth: 300}\ninterior: {shelves: 1}"


def test_a_drawing_has_the_colours_of_paint_and_darker_wood_under_oil() -> None:
    spec = """size: {width: 800, height: 900, depth: 300}
finish: {everything: oil, carcass: {kind: paint, colour: "#8a9a8c"}}
interior: {shelves: 1}"""
    unit = unit_from(spec)
    colours = {part.role: part.blank.stock.colour for part in as_finished(unit).parts}
    bare = {part.role: part.blank.stock.colour for part in as_finished(unit_from(BARE)).parts}
    assert colours[Role.SIDE] == "#8a9a8c"
    assert colours[Role.SHELF] < bare[Role.SHELF]


@pytest.mark.parametrize("finish", ["", "finish: oil", "finish: {kind: stain, colour: '#5b4632'}"])
def test_a_drawing_has_the_colours_of_the_same_unit_in_space(finish: str) -> None:
    unit = unit_from(f"{BARE}\n{finish}")
    shown = {part.role: surface_of(part)[1].colour for part in unit.parts}
    assert {part.role: part.blank.stock.colour for part in as_finished(unit).parts} == shown


def test_a_drawing_is_cut_to_the_unit() -> None:
    """A unit as high as it is wide is about as large a picture: not the page it was drawn on."""
    (drawn,) = drawings_of([OTHER], lambda _: None)
    with Image.open(BytesIO(drawn)) as image:
        assert image.width < 1.4 * image.height
        assert min(image.convert("L").crop((0, 0, image.width, 5)).getextrema()) > 235
