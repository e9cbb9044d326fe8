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

from kit.samples import PLYWOOD, bookcase
from kit.specs import unit_from
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.handover import BUILD_FILES, write_build
from rodwright.handover.names import file_paths, slug
from rodwright.handover.products import products
from rodwright.handover.unit_json import read_unit
from rodwright.jobs.build import build
from rodwright.jobs.new import model_names, model_path
from rodwright.lengths import from_inches
from rodwright.problems import ProblemsError
from rodwright.solids import solid_of
from rodwright.unit import Fixing, Mitre, Notch, Part, Surface, Unit
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
    names = [path.relative_to(target).as_posix() for path in made]
    parts = [f"parts/{stem}.{kind}" for stem in STEMS for kind in ("step", "stl")]
    assert names == sorted([*WHOLE, *parts])
    on_disk = {path for path in target.rglob("*") if path.is_file()}
    assert on_disk == {*made, target / "manifest.json"}


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
    assert tmp_path / "out" / "hardware.csv" in made
    listed = (tmp_path / "out" / "hardware.csv").read_text(encoding="utf-8-sig").splitlines()
    assert listed == [
        "hardware,size,quantity,holes,for",
        "screw,4 x 40 mm,6,,housing: BT1",
    ]


def test_findings_are_written_gravest_first(tmp_path: Path) -> None:
    findings = [
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
    ]
    write_build(bookcase(), tmp_path / "out", findings=findings)
    document = json.loads((tmp_path / "out" / "findings.json").read_text(encoding="utf-8"))
    assert document["counts"] == {"error": 1, "warning": 0, "note": 1, "caution": 0}
    assert [each["message"] for each in document["findings"]] == ["too wide — by 3", "a note"]
    assert document["findings"][0]["rule"] == "larger-than-opening"
    assert document["findings"][0]["parts"] == ["SD1"]


def test_extras_write_into_the_same_build(tmp_path: Path) -> None:
    def picture(unit: Unit, folder: Path) -> None:
        assert (folder / "unit.step").is_file()
        (folder / "picture.svg").write_text(f"<!-- {unit.title} -->", encoding="utf-8")

    made = write_build(bookcase(), tmp_path / "out", extras=[picture])
    assert tmp_path / "out" / "picture.svg" in made
    manifest = json.loads((tmp_path / "out" / "manifest.json").read_text(encoding="utf-8"))
    assert "picture.svg" in manifest["files"]


def test_parts_are_cut_or_finished_and_nothing_else(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="'cut' or 'finished', not 'rough'"):
        write_build(bookcase(), tmp_path / "out", parts="rough")  # type: ignore[arg-type]
    assert list(tmp_path.iterdir()) == []


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
    left = [path.name for path in (target / "parts").rglob("*") if path.is_file()]
    assert sorted(left) == [
        "SD1-side-2x-birch-plywood-18-cut.step",
        "SD1-side-2x-birch-plywood-18-cut.stl",
    ]
    assert (target / "notes.txt").read_text() == "call the plasterer"
    assert target / "notes.txt" not in made


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
    assert len(digests[0]) == 27


@pytest.mark.parametrize("epoch", ["", "soon", "-1", "1.5", "1e9", " 5", "9" * 15, "9" * 400])
def test_a_bad_source_date_epoch_is_told_before_the_work(
    epoch: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("SOURCE_DATE_EPOCH", epoch)
    steps: list[str] = []
    with pytest.raises(ProblemsError) as caught:
        write_build(bookcase(), tmp_path / "out", progress=steps.append)
    [problem] = caught.value.problems
    assert "SOURCE_DATE_EPOCH" in problem.message
    assert "unset it" in problem.remedy
    assert not steps
    assert list(tmp_path.iterdir()) == []


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
        "birch-plywood-18-case", "birch-plywood-18-front",
    ]  # fmt: skip
    assert stocked(case="берёза", Case="дуб") == ["case-18-case", "case-18-Case-2"]
    assert stocked(**{"бук": "берёза"}) == ["stock-18"]


def test_thicknesses_in_folders_are_in_the_makers_unit() -> None:
    thin = replace(bookcase().part("BK1"), blank=replace(bookcase().part("BK1").blank,
                   stock=replace(PLYWOOD, thickness=5.5)))  # fmt: skip
    assert (
        file_paths(Unit("Thin", thin.bounds(), (thin,)), "cut")[0].parts[0] == "birch-plywood-5.5"
    )
    inches = replace(thin, blank=replace(thin.blank, stock=replace(PLYWOOD, thickness=18.25625)))
    unit = Unit("Inches", inches.bounds(), (inches,), display_unit="in")
    assert file_paths(unit, "cut")[0].parts[0] == "birch-plywood-23-32in"
    folders = [
        file_paths(replace(unit, parts=(replace(thin, blank=replace(
            thin.blank, stock=replace(PLYWOOD, thickness=from_inches(size)))),)), "cut"
        )[0].parts[0]
        for size in ("1/8", "15/32", "3/4", "1", "1 1/8", "11", "18")
    ]  # fmt: skip
    assert [each.removeprefix("birch-plywood-") for each in folders] == [
        "1-8in", "15-32in", "3-4in", "1in", "1-1-8in", "11in", "18in",
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("text", "safe"),
    [("Left side", "Left-side"), ("Étagère", "Etagere"), ("Køkken/…", "Kokken"), ("..", "")],
)
def test_slugs(text: str, safe: str) -> None:
    assert slug(text) == safe


def test_every_file_of_a_build_has_a_name_that_builds_have(tmp_path: Path) -> None:
    made = write_build(bookcase(), tmp_path / "out")
    names = [path.relative_to(tmp_path / "out").as_posix() for path in made]
    assert [name for name in names if not BUILD_FILES.fullmatch(name)] == []


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


@pytest.mark.parametrize("name", model_names())
def test_every_part_file_of_every_model_is_known_as_a_builds(name: str) -> None:
    unit = unit_from(model_path(name).read_text(encoding="utf-8"))
    for kind in ("cut", "finished"):
        for file in file_paths(unit, kind):
            assert BUILD_FILES.fullmatch(f"parts/{file}.step"), file
            assert BUILD_FILES.fullmatch(f"parts/{file}.stl"), file
