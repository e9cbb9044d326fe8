"""Names of part files: safe, different, and by what they are of."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from kit.samples import PLYWOOD, bookcase
from kit.specs import unit_from
from rodwright.handover.exports import BUILD_FILES
from rodwright.handover.names import file_paths, slug
from rodwright.jobs.new import model_names, model_path
from rodwright.lengths import from_inches
from rodwright.unit import Mitre, Part, Surface, Unit


def renamed(names: dict[str, tuple[str, str]]) -> Unit:
    """The bookcase with other refs and names, no two of its parts alike."""
    unit = bookcase()
    parts: list[Part] = []
    for part in unit.parts:
        ref, name = names.get(part.ref, (part.ref, part.name))
        workings = (Mitre(Surface.NEAR_END, 1.0 + len(parts), Surface.FACE),)
        parts.append(replace(part, ref=ref, name=name, workings=workings))
    return replace(unit, parts=tuple(parts), joints=())


def test_file_names_are_safe_and_differ() -> None:
    unit = renamed(
        {
            "SD1": ("../SD 1", "Seite: links/außen"),
            "BT1": ("A", "Ящик"),
            "SH1": ("a", "抽屉"),
            "TP1": ("Ж", "ф"),
            "BK1": ("CON", "x" * 300),
        }
    )
    files = file_paths(unit, "cut")
    assert files[0].name == "SD-1-seite-links-aussen-1x-birch-plywood-18-cut"
    assert {
        f"{name}-birch-plywood-18-cut{more}"
        for name, more in (("A-1x", ""), ("a-1x", "-2"), ("part-1x", ""))
    } <= {file.name for file in files}
    assert len({str(file).casefold() for file in files}) == len(files) == len(unit.parts)
    for file in files:
        for part in file.parts:
            assert re.fullmatch(r"[A-Za-z0-9]([A-Za-z0-9.-]{0,140}[A-Za-z0-9])?", part)
        # Windows' MAX_PATH is 260, drive and folders included (Microsoft, Naming Files).
        assert len(str(file)) <= 200


def stocked(**stocks: str) -> list[str]:
    """The folders of a unit whose parts are of these stocks and materials."""
    parts = [
        replace(
            bookcase().part("SH1"),
            ref=f"SH{number}",
            blank=replace(
                bookcase().part("SH1").blank,
                stock=replace(PLYWOOD, name=name, material=material),
            ),
        )
        for number, (name, material) in enumerate(stocks.items())
    ]
    unit = Unit("Stocks", parts[0].bounds(), tuple(parts))
    return [file.parent.as_posix() for file in file_paths(unit, "cut")]


def test_a_folder_is_named_by_what_the_stock_is_and_its_thickness() -> None:
    assert stocked(case="Birch plywood", back="MDF") == ["birch-plywood-18", "mdf-18"]
    assert stocked(case="birch plywood", front="Birch Plywood") == [
        "birch-plywood-18-case",
        "birch-plywood-18-front",
    ]
    assert stocked(case="берёза", Case="дуб") == ["case-18-case", "case-18-Case-2"]
    assert stocked(**{"бук": "берёза"}) == ["stock-18"]


def test_thicknesses_in_folders_are_in_the_makers_unit() -> None:
    thin = replace(
        bookcase().part("BK1"),
        blank=replace(bookcase().part("BK1").blank, stock=replace(PLYWOOD, thickness=5.5)),
    )
    assert (
        file_paths(Unit("Thin", thin.bounds(), (thin,)), "cut")[0].parts[0] == "birch-plywood-5.5"
    )
    inches = replace(thin, blank=replace(thin.blank, stock=replace(PLYWOOD, thickness=18.25625)))
    unit = Unit("Inches", inches.bounds(), (inches,), display_unit="in")
    assert file_paths(unit, "cut")[0].parts[0] == "birch-plywood-23-32in"
    folders = [
        file_paths(
            replace(
                unit,
                parts=(
                    replace(
                        thin,
                        blank=replace(
                            thin.blank, stock=replace(PLYWOOD, thickness=from_inches(size))
                        ),
                    ),
                ),
            ),
            "cut",
        )[0].parts[0]
        for size in ("1/8", "15/32", "3/4", "1", "1 1/8", "11", "18")
    ]
    assert [each.removeprefix("birch-plywood-") for each in folders] == [
        "1-8in", "15-32in", "3-4in", "1in", "1-1-8in", "11in", "18in",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "safe"),
    [("Left side", "Left-side"), ("Étagère", "Etagere"), ("Køkken/…", "Kokken"), ("..", "")],
)
def test_slugs(text: str, safe: str) -> None:
    assert slug(text) == safe


@pytest.mark.parametrize("name", model_names())
def test_every_part_file_of_every_model_is_known_as_a_builds(name: str) -> None:
    unit = unit_from(model_path(name).read_text(encoding="utf-8"))
    for kind in ("cut", "finished"):
        for file in file_paths(unit, kind):
            assert BUILD_FILES.fullmatch(f"parts/{file}.step"), file
            assert BUILD_FILES.fullmatch(f"parts/{file}.stl"), file
