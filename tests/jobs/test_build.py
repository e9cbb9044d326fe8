"""A whole build: which files, from which unit, and nothing when something goes wrong."""

from __future__ import annotations

import csv
import hashlib
import json
import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from kit.builds import write_build
from kit.samples import PLYWOOD, bookcase
from kit.specs import unit_from
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.handover.exports import Content, Export, Kind
from rodwright.handover.products import products
from rodwright.handover.unit_json import read_unit
from rodwright.jobs.build import build
from rodwright.problems import ProblemsError
from rodwright.solids import solid_of
from rodwright.unit import Fixing, Notch, Unit
from rodwright.unit.laid import laid_unit

STEMS = tuple(
    f"{stock}/{what}-1x-{stock}-cut".replace("side-1x", "side-2x")
    for stock, refs in (
        ("birch-plywood-18", ("SD1-side", "BT1-bottom", "SH1-shelf", "TP1-top")),
        ("birch-plywood-6", ("BK1-back",)),
        ("ash-22", ("ST1-left-stile", "ST2-right-stile", "RL1-bottom-rail", "RL2-top-rail")),
    )
    for what in refs
)
WHOLE = (
    "findings.json", "parts-list.csv", "parts-list.json", "parts-list.xlsx",
    "unit.glb", "unit.json", "unit.step", "unit.stl",
)  # fmt: skip


def test_the_files_of_a_build(tmp_path: Path) -> None:
    target = tmp_path / "out"
    made = write_build(bookcase(), target)
    parts = [f"parts/{stem}.{kind}" for stem in STEMS for kind in ("step", "stl")]
    assert list(made) == sorted([*WHOLE, *parts])
    on_disk = {path.relative_to(target) for path in target.rglob("*") if path.is_file()}
    assert on_disk == {*map(Path, made), Path("manifest.json")}


def test_every_row_of_the_list_has_its_files_and_the_model_reads_back(tmp_path: Path) -> None:
    write_build(bookcase(), tmp_path / "out")
    with (tmp_path / "out" / "parts-list.csv").open(encoding="utf-8-sig", newline="") as file:
        refs = [row["refs"].split(", ")[0] for row in csv.DictReader(file)]
    assert [stem.split("/")[1].split("-")[0] for stem in STEMS] == refs
    assert read_unit(tmp_path / "out" / "unit.json") == laid_unit(bookcase())


def test_hardware_has_a_list_when_there_are_any(tmp_path: Path) -> None:
    unit = bookcase()
    joint = replace(unit.joints[0], fixings=(Fixing("screw", 3, "4 x 40 mm"),))
    made = write_build(replace(unit, joints=(joint, joint)), tmp_path / "out")
    assert "hardware.csv" in made
    listed = (tmp_path / "out" / "hardware.csv").read_text(encoding="utf-8-sig").splitlines()
    assert listed == [
        "hardware,size,quantity,holes,for",
        "screw,4 x 40 mm,6,,housing: BT1",
    ]


def test_findings_are_written_gravest_first(tmp_path: Path) -> None:
    findings = (
        Finding(Severity.NOTE, Rule.OPEN_BACK, "a note", "leave it"),
        Finding(
            Severity.ERROR,
            Rule.LARGER_THAN_OPENING,
            "too wide — by 3",
            "narrow it",
            ("SD1",),
            3.0,
            0.0,
        ),
    )
    write_build(bookcase(), tmp_path / "out", findings=findings)
    document = json.loads((tmp_path / "out" / "findings.json").read_text(encoding="utf-8"))
    assert document["counts"] == {"error": 1, "warning": 0, "note": 1, "caution": 0}
    assert [each["message"] for each in document["findings"]] == ["too wide — by 3", "a note"]
    assert document["findings"][0]["rule"] == "larger-than-opening"
    assert document["findings"][0]["parts"] == ["SD1"]


def test_an_export_writes_into_the_same_build(tmp_path: Path) -> None:
    def picture(content: Content, folder: Path) -> None:
        assert (folder / "unit.step").is_file()
        (folder / "picture.svg").write_text(f"<!-- {content.unit.title} -->", encoding="utf-8")

    export = Export(Kind.PICTURES, r"picture\.svg", picture)
    assert "picture.svg" in write_build(bookcase(), tmp_path / "out", export)
    manifest = json.loads((tmp_path / "out" / "manifest.json").read_text(encoding="utf-8"))
    assert "picture.svg" in manifest["files"]


def test_parts_are_cut_or_finished_and_nothing_else(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="'cut' or 'finished', not 'rough'"):
        build(bookcase(), tmp_path / "out", parts="rough")  # type: ignore[arg-type]
    assert list(tmp_path.iterdir()) == []


def test_a_failing_export_leaves_nothing(tmp_path: Path) -> None:
    def failing(content: Content, folder: Path) -> None:
        (folder / "half.svg").write_text(content.unit.title, encoding="utf-8")
        raise RuntimeError("no picture today")

    with pytest.raises(RuntimeError, match="no picture today"):
        write_build(bookcase(), tmp_path / "out", Export(Kind.PICTURES, r"half\.svg", failing))
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
    left = [path.name for path in (target / "parts").rglob("*") if path.is_file()]
    assert sorted(left) == [
        "SD1-side-2x-birch-plywood-18-cut.step",
        "SD1-side-2x-birch-plywood-18-cut.stl",
    ]
    assert (target / "notes.txt").read_text() == "call the plasterer"
    assert "notes.txt" not in made


def test_an_edited_list_is_not_overwritten(tmp_path: Path) -> None:
    target = tmp_path / "out"
    write_build(bookcase(), target)
    (target / "parts-list.csv").write_text("edited")
    with pytest.raises(ProblemsError, match=r"parts-list\.csv` is in the way"):
        write_build(replace(bookcase(), title="Other"), target)
    assert (target / "parts-list.csv").read_text() == "edited"


def test_a_build_makes_each_solid_once(tmp_path: Path) -> None:
    # Sizes that no other test has, so that nothing is kept of them.
    unit = unit_from(
        "size: {width: 733.7, height: 811.3, depth: 277.9}\n"
        "interior: {shelves: {count: 2, layers: 2}}\n"
        "edging: {material: abs, thickness: 1, edges: [shelves]}\n"
    )
    turned = laid_unit(unit)
    assert laid_unit(turned) == turned
    assert turned != unit
    before = solid_of.cache_info().misses
    build(unit, tmp_path / "out", pictures=False)
    made = {part.shape for part in turned.parts}
    made |= {product.part.shape for product in products(turned, "cut")}
    assert solid_of.cache_info().misses - before == len(made)


@pytest.mark.parametrize(("unit", "thickness"), [("mm", "6.5"), ("in", "1-4in")])
def test_a_thickness_with_a_point_leaves_names_whole(
    unit: str, thickness: str, tmp_path: Path
) -> None:
    thin = replace(PLYWOOD, thickness=6.5)
    back = bookcase().part("BK1")
    parts = tuple(
        replace(back, ref=ref, blank=replace(back.blank, stock=thin, thickness=6.5, length=length))
        for ref, length in (("BK1", 900.0), ("BK2", 800.0))
    )
    both = replace(bookcase(), parts=parts, joints=(), display_unit="in" if unit == "in" else "mm")
    write_build(both, tmp_path / "out")
    stock = f"birch-plywood-{thickness}"
    assert sorted(path.name for path in (tmp_path / "out" / "parts" / stock).iterdir()) == [
        f"{ref}-back-1x-{stock}-cut.{kind}" for ref in ("BK1", "BK2") for kind in ("step", "stl")
    ]


def test_progress_is_told_in_steps(tmp_path: Path) -> None:
    steps: list[str] = []
    write_build(bookcase(), tmp_path / "out", progress=steps.append)
    assert steps == [
        "writing solids for the CNC shop",
        "writing meshes",
        "writing lists",
        "writing the whole model",
    ]


TWICE = """
import sys
from pathlib import Path
sys.path.insert(0, sys.argv[1])
from kit.builds import write_build
from kit.builds import write_build
from kit.samples import bookcase
write_build(bookcase(), Path(sys.argv[2]))
"""


def test_two_processes_write_the_same_bytes(tmp_path: Path) -> None:
    tests = str(Path(__file__).parents[1])
    targets = [tmp_path / seed for seed in ("1", "2")]  # hashes of text differ by seed
    environment = {key: each for key, each in os.environ.items() if key != "SOURCE_DATE_EPOCH"}
    running = [
        subprocess.Popen(
            [sys.executable, "-c", TWICE, tests, str(target)],
            env=environment | {"PYTHONHASHSEED": target.name},
        )
        for target in targets
    ]
    assert [process.wait() for process in running] == [0, 0]
    digests = [
        {
            path.relative_to(target).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
            for path in target.rglob("*")
            if path.is_file()
        }
        for target in targets
    ]
    assert digests[0] == digests[1]
    assert len(digests[0]) == len(WHOLE) + 2 * len(STEMS) + 1  # and the manifest


@pytest.mark.parametrize("epoch", ["", "soon", "-1", "1.5", "1e9", " 5", "9" * 15, "9" * 400])
def test_a_bad_source_date_epoch_is_told_before_the_work(
    epoch: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", epoch)
    steps: list[str] = []
    with pytest.raises(ProblemsError) as caught:
        build(bookcase(), tmp_path / "out", progress=steps.append)
    [problem] = caught.value.problems
    assert "SOURCE_DATE_EPOCH" in problem.message
    assert "unset it" in problem.remedy
    assert not steps
    assert list(tmp_path.iterdir()) == []


def test_an_edited_file_is_told_before_the_work(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    target = tmp_path / "out"
    unit = bookcase()
    write_build(unit, target)
    edited = [target / "parts-list.csv", sorted((target / "parts").rglob("SH1*.step"))[0]]
    for path in edited:
        path.write_text("mine")
    # An edited file of a piece that isn't in the unit any more is in nobody's way.
    gone = next(path for path in sorted((target / "parts").rglob("BK1*.stl")))
    gone.write_text("mine")
    unit = replace(unit, parts=tuple(part for part in unit.parts if part.ref != "BK1"))
    monkeypatch.setattr("rodwright.jobs.build.check_parts", _never)
    with pytest.raises(ProblemsError) as caught:
        build(unit, target)
    told = [str(problem).splitlines()[0] for problem in caught.value.problems]
    assert len(told) == 2
    assert all(any(str(path) in each for each in told) for path in edited)
    assert all(path.read_text() == "mine" for path in (*edited, gone))


def _never(_: Unit) -> None:
    raise AssertionError("the work had begun")


def test_a_forged_manifest_costs_no_file(tmp_path: Path) -> None:
    target = tmp_path / "out"
    mine = {"notes.txt": "mine", "prices.csv": "mine", "parts/bracket.step": "mine"}
    for name, text in mine.items():
        (target / name).parent.mkdir(parents=True, exist_ok=True)
        (target / name).write_text(text)
    sha = {name: hashlib.sha256(text.encode()).hexdigest() for name, text in mine.items()}
    manifest = json.dumps({"made_by": "Rodwright", "files": sha})
    (target / "manifest.json").write_text(manifest)
    write_build(bookcase(), target)
    write_build(bookcase(), target)
    assert {name: (target / name).read_text() for name in mine} == mine
