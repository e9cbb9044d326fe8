"""The pack for a CNC shop: whole, true to its manifest, and the same every time."""

from __future__ import annotations

import csv
import hashlib
import io
import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path
from zipfile import ZipFile

import pytest

import rodwright
from kit.machine_reader import outline, read
from rodwright.handover.lists import like_parts
from rodwright.problems import ProblemsError

MODELS = Path("models").resolve()


def spec_of(tmp_path: Path, model: str, *changes: tuple[str, str]) -> rodwright.SpecFile:
    text = (MODELS / f"{model}.yaml").read_text(encoding="utf-8")
    for old, new in changes:
        assert old in text
        text = text.replace(old, new)
    path = tmp_path / "spec.yaml"
    path.write_text(text, encoding="utf-8")
    return rodwright.read_spec(path)


@pytest.fixture(scope="module")
def pack(tmp_path_factory: pytest.TempPathFactory) -> tuple[rodwright.CncPack, ZipFile]:
    folder = tmp_path_factory.mktemp("cnc")
    made = rodwright.cnc_pack(rodwright.read_spec(MODELS / "tape-drawers.yaml"), folder)
    return made, ZipFile(folder / "cnc.zip")


def page_text(archive: ZipFile) -> str:
    program = shutil.which("pdftotext")
    if program is None:
        pytest.skip("pdftotext isn't installed")
    page = archive.read("read-me-first.pdf")
    said = subprocess.run([program, "-", "-"], input=page, stdout=-1, check=True)
    return said.stdout.decode()


def test_every_distinct_part_is_there_once(pack: tuple[rodwright.CncPack, ZipFile]) -> None:
    made, archive = pack
    names = archive.namelist()
    rows = like_parts(made.unit)
    steps = [name for name in names if name.endswith(".step")]
    assert len(steps) == len(rows)
    assert {f"{name[:-5]}.dxf" for name in steps} <= set(names)
    refs = {Path(name).name.split("-")[0] for name in steps}
    assert refs == {row[0].ref for row in rows}
    assert names == sorted(names) == list(made.files)
    assert made.sheets == sum(name.startswith("sheets/") for name in names) > 0


def test_the_manifest_is_true_and_the_zip_is_whole(
    pack: tuple[rodwright.CncPack, ZipFile],
) -> None:
    _, archive = pack
    assert archive.testzip() is None
    document = json.loads(archive.read("manifest.json"))
    assert document["title"] == "Tape drawers" and document["lengths"] == "mm"
    assert sorted([*document["files"], "manifest.json"]) == archive.namelist()
    for name, told in document["files"].items():
        data = archive.read(name)
        assert (len(data), hashlib.sha256(data).hexdigest()) == (told["bytes"], told["sha256"])


def test_names_are_safe_on_any_disk(pack: tuple[rodwright.CncPack, ZipFile]) -> None:
    names = pack[1].namelist()
    for name in names:
        assert re.fullmatch(r"(?:[A-Za-z0-9.-]+/){0,2}[A-Za-z0-9.-]+", name), name
        assert ".." not in name and not name.startswith("/") and len(name) < 160
    assert len({name.casefold() for name in names}) == len(names)


def test_the_list_has_the_sizes_of_the_drawings(pack: tuple[rodwright.CncPack, ZipFile]) -> None:
    _, archive = pack
    text = archive.read("parts.csv").decode("utf-8-sig")
    rows = list(csv.DictReader(io.StringIO(text)))
    assert rows
    for row in rows:
        shape = outline(read(archive.read(f"{row['file']}.dxf")))
        low_x, low_y, length, width = shape.bounds
        assert (low_x, low_y) == (0, 0)
        assert length == pytest.approx(float(row["length mm"]), abs=0.006)
        assert width == pytest.approx(float(row["width mm"]), abs=0.006)
        second = f"{row['file']}-second-side.dxf" in archive.namelist()
        assert row["second side"] == ("yes" if second else "no")


def test_the_page_tells_of_every_part_layer_and_sheet(
    pack: tuple[rodwright.CncPack, ZipFile],
) -> None:
    made, archive = pack
    text = page_text(archive)
    assert "For the CNC shop: Tape drawers" in text
    # Drawer bottoms and the back of 6 mm run in grooves or rebates as narrow as that.
    assert "The narrowest channel is 6 mm wide" in " ".join(text.split())
    # Words too long for a column may be broken anywhere, at spaces of no width.
    flat = "".join(text.replace("\u200b", "").split())
    for row in like_parts(made.unit):
        assert row[0].ref in text
    for name in archive.namelist():
        if name.startswith("sheets/"):
            assert name in flat
        if name.endswith(".dxf"):
            layers = {each.dxf.name for each in read(archive.read(name)).layers}
            assert all(each in flat for each in layers - {"0", "Defpoints"})


def test_the_same_spec_gives_the_same_bytes_whatever_the_place_and_time(tmp_path: Path) -> None:
    script = (
        "import sys, rodwright\nrodwright.cnc_pack(rodwright.read_spec(sys.argv[1]), sys.argv[2])\n"
    )
    made = []
    for name, zone, language in (("one", "UTC", "C.UTF-8"), ("two", "Asia/Tokyo", "C")):
        environment = {
            **os.environ,
            "TZ": zone,
            "LC_ALL": language,
            "PYTHONHASHSEED": str(len(made) + 1),
        }
        target = tmp_path / name
        model = str(MODELS / "niche-shelf.yaml")
        subprocess.run(
            [sys.executable, "-c", script, model, str(target)], env=environment, check=True
        )
        made.append((target / "cnc.zip").read_bytes())
    assert made[0] == made[1]


def test_titles_of_any_length_and_alphabet_do(tmp_path: Path) -> None:
    title = "Полка 棚 " + "long " * 78
    spec = spec_of(tmp_path, "niche-shelf", ("title: Plant-room niche shelf", f"title: {title}"))
    rodwright.cnc_pack(spec, tmp_path / "out")
    archive = ZipFile(tmp_path / "out" / "cnc.zip")
    assert json.loads(archive.read("manifest.json"))["title"] == spec.spec.title
    assert "Полка" in page_text(archive)


def test_a_unit_that_cannot_be_nested_comes_without_sheets_and_says_why(tmp_path: Path) -> None:
    spec = spec_of(
        tmp_path, "reading-alcove", ("size: [2440, 1220], price: 31.00", "size: [900, 600]")
    )
    made = rodwright.cnc_pack(spec, tmp_path / "out")
    assert made.sheets == 0
    assert any("the largest sheet of" in why for why in made.no_plan)
    archive = ZipFile(tmp_path / "out" / "cnc.zip")
    assert "the largest sheet of" in " ".join(page_text(archive).split())


@pytest.mark.parametrize("tool", ["0", "40", "-6", "six"])
def test_what_is_no_tool_is_refused_before_the_work(tmp_path: Path, tool: str) -> None:
    spec = rodwright.read_spec(MODELS / "niche-shelf.yaml")
    with pytest.raises(ProblemsError, match="--tool"):
        rodwright.cnc_pack(spec, tmp_path / "out", tool=tool)
    assert not (tmp_path / "out").exists()


def test_a_file_of_the_makers_own_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "cnc.zip").write_text("mine")
    with pytest.raises(ProblemsError, match="in the way"):
        rodwright.cnc_pack(rodwright.read_spec(MODELS / "niche-shelf.yaml"), tmp_path)
    assert (tmp_path / "cnc.zip").read_text() == "mine"
