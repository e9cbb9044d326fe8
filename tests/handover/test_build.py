"""A whole build: which files, from which unit, and nothing when something goes wrong."""

from __future__ import annotations

import csv
import hashlib
import json
import os
import re
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from rodwright.checks.findings import Finding, Severity
from rodwright.handover import write_build
from rodwright.handover.model import read_unit_json
from rodwright.handover.names import file_stems, slug
from rodwright.laid import laid_unit
from rodwright.parts import Fixing, Mitre, Notch, Part, Surface, Unit
from rodwright.problems import ProblemsError
from samples import bookcase

STEMS = (
    "SD1-side", "BT1-bottom", "SH1-shelf", "TP1-top", "BK1-back", "ST1-left-stile",
    "ST2-right-stile", "RL1-bottom-rail", "RL2-top-rail",
)  # fmt: skip
WHOLE = (
    "findings.json", "parts-list.csv", "parts-list.json", "parts-list.xlsx",
    "unit.glb", "unit.json", "unit.step", "unit.stl",
)  # fmt: skip


def test_the_files_of_a_build(tmp_path: Path) -> None:
    target = tmp_path / "out"
    made = write_build(bookcase(), target)
    names = [path.relative_to(target).as_posix() for path in made]
    parts = [f"parts/{stem}.{kind}" for stem in STEMS for kind in ("step", "stl")]
    assert names == sorted([*WHOLE, *parts])
    on_disk = {path for path in target.rglob("*") if path.is_file()}
    assert on_disk == {*made, target / "manifest.json"}


def test_every_row_of_the_list_has_its_files_and_the_model_reads_back(tmp_path: Path) -> None:
    write_build(bookcase(), tmp_path / "out")
    with (tmp_path / "out" / "parts-list.csv").open(encoding="utf-8-sig", newline="") as file:
        refs = [row["refs"].split(", ")[0] for row in csv.DictReader(file)]
    assert [stem.split("-")[0] for stem in STEMS] == refs
    assert read_unit_json(tmp_path / "out" / "unit.json") == laid_unit(bookcase())


def test_hardware_has_a_list_when_there_are_any(tmp_path: Path) -> None:
    unit = bookcase()
    joint = replace(unit.joints[0], fixings=(Fixing("screw", 3, "4 x 40 mm"),))
    made = write_build(replace(unit, joints=(joint, joint)), tmp_path / "out")
    assert tmp_path / "out" / "hardware.csv" in made
    listed = (tmp_path / "out" / "hardware.csv").read_text(encoding="utf-8-sig").splitlines()
    assert listed == [
        "hardware,size,quantity,holes,for",
        "screw,4 x 40 mm,6,,housing: BT1",
    ]


def test_findings_are_written_gravest_first(tmp_path: Path) -> None:
    findings = [
        Finding(Severity.NOTE, "note", "a note", "leave it"),
        Finding(Severity.ERROR, "sum", "too wide — by 3", "narrow it", ("SD1",), 3.0, 0.0),
    ]
    write_build(bookcase(), tmp_path / "out", findings=findings)
    document = json.loads((tmp_path / "out" / "findings.json").read_text(encoding="utf-8"))
    assert document["counts"] == {"error": 1, "warning": 0, "note": 1, "caution": 0}
    assert [each["message"] for each in document["findings"]] == ["too wide — by 3", "a note"]
    assert document["findings"][0]["parts"] == ["SD1"]


def test_extras_write_into_the_same_build(tmp_path: Path) -> None:
    def picture(unit: Unit, folder: Path) -> None:
        assert (folder / "unit.step").is_file()
        (folder / "picture.svg").write_text(f"<!-- {unit.title} -->", encoding="utf-8")

    made = write_build(bookcase(), tmp_path / "out", extras=[picture])
    assert tmp_path / "out" / "picture.svg" in made
    manifest = json.loads((tmp_path / "out" / "manifest.json").read_text(encoding="utf-8"))
    assert "picture.svg" in manifest["files"]


def test_a_failing_extra_leaves_nothing(tmp_path: Path) -> None:
    def failing(unit: Unit, folder: Path) -> None:
        (folder / "half.svg").write_text(unit.title, encoding="utf-8")
        raise RuntimeError("no picture today")

    with pytest.raises(RuntimeError, match="no picture today"):
        write_build(bookcase(), tmp_path / "out", extras=[failing])
    assert list(tmp_path.iterdir()) == []


def test_a_part_that_cant_be_made_leaves_nothing(tmp_path: Path) -> None:
    unit = bookcase()
    shelf = unit.part("SH1")
    cut = replace(shelf, workings=(Notch(100.0, 0.0, 20.0, shelf.blank.width),))
    broken = replace(unit, parts=tuple(cut if part is shelf else part for part in unit.parts))
    with pytest.raises(ValueError, match="2 pieces"):
        write_build(broken, tmp_path / "out")
    assert list(tmp_path.iterdir()) == []


def test_a_second_build_replaces_the_first_and_keeps_the_makers_own_files(tmp_path: Path) -> None:
    target = tmp_path / "out"
    write_build(bookcase(), target)
    (target / "notes.txt").write_text("call the plasterer")
    unit = bookcase()
    made = write_build(replace(unit, parts=unit.parts[:2], joints=()), target)
    assert {path.name for path in (target / "parts").iterdir()} == {"SD1-side.step", "SD1-side.stl"}
    assert (target / "notes.txt").read_text() == "call the plasterer"
    assert target / "notes.txt" not in made


def test_an_edited_list_is_not_overwritten(tmp_path: Path) -> None:
    target = tmp_path / "out"
    write_build(bookcase(), target)
    (target / "parts-list.csv").write_text("edited")
    with pytest.raises(ProblemsError, match=r"parts-list\.csv` is in the way"):
        write_build(replace(bookcase(), title="Other"), target)
    assert (target / "parts-list.csv").read_text() == "edited"


def test_progress_is_told_in_steps(tmp_path: Path) -> None:
    steps: list[str] = []
    write_build(bookcase(), tmp_path / "out", progress=steps.append)
    assert steps == [
        "writing lists",
        "writing STEP",
        "writing GLB and STL",
        "writing 9 parts",
    ]


TWICE = """
import sys
from pathlib import Path
sys.path.insert(0, sys.argv[1])
from rodwright.handover import write_build
from samples import bookcase
write_build(bookcase(), Path(sys.argv[2]))
"""


def test_two_processes_write_the_same_bytes_but_for_the_date(tmp_path: Path) -> None:
    tests = str(Path(__file__).parents[1])
    targets = [tmp_path / seed for seed in ("1", "2")]  # hashes of text differ by seed
    running = [
        subprocess.Popen(
            [sys.executable, "-c", TWICE, tests, str(target)],
            env=os.environ | {"PYTHONHASHSEED": target.name},
        )
        for target in targets
    ]
    assert [process.wait() for process in running] == [0, 0]
    digests = [
        {
            path.relative_to(target).as_posix(): hashlib.sha256(dateless(path)).hexdigest()
            for path in target.rglob("*")
            if path.is_file() and path.name != "manifest.json"  # its digests know the date
        }
        for target in targets
    ]
    assert digests[0] == digests[1]
    assert len(digests[0]) == 26


def dateless(path: Path) -> bytes:
    content = path.read_bytes()
    if path.suffix == ".step":
        content, dates = re.subn(rb"'\d{4}-\d\d-\d\dT[0-9:+]*'", b"''", content, count=1)
        assert dates == 1
    return content


def test_file_stems_are_safe_and_differ() -> None:
    unit = bookcase()
    renamed = {
        "SD1": ("../SD 1", "Seite: links/außen"),
        "BT1": ("A", "Ящик"),
        "SH1": ("a", "抽屉"),
        "TP1": ("Ж", "ф"),
    }
    parts: list[Part] = []
    for part in unit.parts:
        ref, name = renamed.get(part.ref, (part.ref, part.name))
        workings = (Mitre(Surface.NEAR_END, 1.0 + len(parts), Surface.FACE),)
        parts.append(replace(part, ref=ref, name=name, workings=workings))
    stems = file_stems(replace(unit, parts=tuple(parts), joints=()))
    assert stems[0] == "SD-1-seite-links-aussen"
    assert {"A", "a-2", "part"} <= set(stems)
    assert len({stem.casefold() for stem in stems}) == len(stems)
    for stem in stems:
        assert re.fullmatch(r"[A-Za-z0-9-]{1,90}", stem)


@pytest.mark.parametrize(
    ("text", "safe"),
    [("Left side", "Left-side"), ("Étagère", "Etagere"), ("Køkken/…", "Kokken"), ("..", "")],
)
def test_slugs(text: str, safe: str) -> None:
    assert slug(text) == safe
