"""The table of exports against what a build writes and what the maker is told of it."""

from __future__ import annotations

import re
from collections import defaultdict
from pathlib import Path

import pytest

from kit.specs import unit_from
from rodwright.handover.exports import BUILD_FILES, EXPORTS, Export, Kind
from rodwright.jobs.build import Build, build

pytestmark = pytest.mark.xdist_group("exports")
"""What they share is made once."""

PAGE = (Path(__file__).parents[2] / "docs" / "files.md").read_text(encoding="utf-8")
WITH_EVERYTHING = """
title: Small cupboard
size: {width: 500, height: 400, depth: 300}
interior: {shelves: {count: 1}, doors: {hung: overlay}}
edging: {material: abs, thickness: 1, edges: [shelves]}
"""


@pytest.fixture(scope="module")
def built(tmp_path_factory: pytest.TempPathFactory) -> Build:
    return build(unit_from(WITH_EVERYTHING), tmp_path_factory.mktemp("built") / "out")


def test_every_file_of_a_build_is_of_one_row(built: Build) -> None:
    for name in built.files:
        rows = [export.names for export in EXPORTS if re.fullmatch(export.names, name)]
        assert len(rows) == 1, f"{name} is in {len(rows)} rows of handover/exports.py"
        assert BUILD_FILES.fullmatch(name)


@pytest.mark.parametrize("export", EXPORTS, ids=lambda export: export.names)
def test_every_row_writes_something(built: Build, export: Export) -> None:
    made = [name for name in built.files if re.fullmatch(export.names, name)]
    assert made, f"nothing is called {export.names}"


def test_every_file_is_shown_by_its_kind(built: Build) -> None:
    shown = built.by_kind()
    assert list(shown) == list(Kind)
    told = sorted(name for names in shown.values() for name in names if "/" not in name)
    assert told == [name for name in built.files if "/" not in name]


def told_by_the_page() -> dict[str, set[str]]:
    """What files end in, by their stems: a row of the page's table names a file whole, or its stem
    and then what else it ends in."""
    told: dict[str, set[str]] = defaultdict(set)
    for row in re.findall(r"^\| (`.*?) \|", PAGE, flags=re.MULTILINE):
        stems: set[str] = set()
        for word in re.findall(r"`([^`]+)`", row):
            stem, dot, suffix = word.rpartition(".")
            stems |= {stem if dot else word} - {""}
            for each in ({stem} if stem else stems) if dot else ():
                told[each].add(suffix)
    return told


def test_the_page_on_files_tells_of_every_file(built: Build) -> None:
    told = told_by_the_page()
    for name in built.files:
        plain = "parts/*/*" if name.startswith("parts/") else name.rpartition(".")[0]
        assert name.rpartition(".")[2] in told[plain], f"docs/files.md doesn't tell of {name}"


def test_the_page_on_files_tells_of_no_other() -> None:
    for stem, suffixes in told_by_the_page().items():
        for suffix in suffixes:
            name = f"{stem.replace('*/*', 'ash-22/ST1-stile')}.{suffix}"
            assert BUILD_FILES.fullmatch(name), (
                f"docs/files.md tells of {name}, which no row writes"
            )
