"""The commands, run as the maker runs them: exit codes, what is said, and what is written."""

from __future__ import annotations

import hashlib
import json
import os
import re
import subprocess
import sys
from dataclasses import dataclass
from importlib.metadata import version
from pathlib import Path

import pytest
from jsonschema import Draft202012Validator
from ruamel.yaml import YAML

from rodwright.jobs.new import model_names, models_folder
from rodwright_cli.main import main

SPEC = """\
title: Niche shelf
size: {width: 800, height: 900, depth: 250}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18}
carcass: {stock: case}
interior:
  shelves: {count: 2}
"""


@dataclass(frozen=True)
class Said:
    """How a command ended, and what it said."""

    code: int
    out: str
    err: str


class Maker:
    """Runs commands in a folder of their own."""

    def __init__(
        self, folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
    ) -> None:
        self.folder, self._patch, self._capsys = folder, monkeypatch, capsys
        monkeypatch.chdir(folder)
        monkeypatch.setenv("COLUMNS", "200")

    def run(self, *words: str) -> Said:
        self._patch.setattr(sys, "argv", ["rodwright", *words])
        with pytest.raises(SystemExit) as left:
            main()
        said = self._capsys.readouterr()
        assert "Traceback" not in said.out + said.err
        code = left.value.code
        assert isinstance(code, int)
        return Said(code, said.out, said.err)

    def write(self, text: str, name: str = "niche.yaml") -> str:
        (self.folder / name).write_text(text, encoding="utf-8")
        return name

    def files(self) -> dict[str, str]:
        """Everything in the folder, with its digest (empty for a folder)."""
        return {
            path.relative_to(self.folder).as_posix(): (
                hashlib.sha256(path.read_bytes()).hexdigest() if path.is_file() else ""
            )
            for path in self.folder.rglob("*")
        }


@pytest.fixture
def maker(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> Maker:
    return Maker(tmp_path, monkeypatch, capsys)


# --- new -----------------------------------------------------------------------------


def test_version(maker: Maker) -> None:
    said = maker.run("--version")
    assert (said.code, said.out, said.err) == (0, f"rodwright {version('rodwright')}\n", "")


def test_new_lists_the_models(maker: Maker) -> None:
    said = maker.run("new")
    assert (said.code, said.err) == (0, "")
    assert said.out.split() == sorted(path.stem for path in models_folder().glob("*.yaml"))
    assert maker.files() == {}


@pytest.mark.parametrize("words", [("niche-shelf",), ("niche-shelf", "mine.yaml")])
def test_new_writes_a_spec_that_checks(maker: Maker, words: tuple[str, ...]) -> None:
    target = words[1] if len(words) > 1 else "niche-shelf.yaml"
    said = maker.run("new", *words)
    assert said.code == 0
    assert target in said.out
    assert list(maker.files()) == [target]
    written = (maker.folder / target).read_bytes()
    assert written == (models_folder() / "niche-shelf.yaml").read_bytes()
    assert maker.run("check", target).code == 0


def test_new_never_overwrites(maker: Maker) -> None:
    maker.write("my own", "niche-shelf.yaml")
    before = maker.files()
    said = maker.run("new", "niche-shelf")
    assert said.code == 2
    assert "`niche-shelf.yaml` is there already" in said.err
    assert maker.files() == before


def test_new_names_the_nearest_model(maker: Maker) -> None:
    said = maker.run("new", "nich-shelf")
    assert said.code == 2
    assert "no model called `nich-shelf`" in said.err
    assert "Did you mean `niche-shelf`?" in said.err
    assert all(name in said.err for name in model_names())
    assert maker.files() == {}


def test_new_into_a_folder_that_is_not_there(maker: Maker) -> None:
    said = maker.run("new", "niche-shelf", "nowhere/a.yaml")
    assert said.code == 2
    assert "nowhere/a.yaml` can't be written" in said.err
    assert maker.files() == {}


# --- check ---------------------------------------------------------------------------


@pytest.mark.parametrize("words", [(), ("--solids",)])
def test_check_says_sizes_and_writes_nothing(maker: Maker, words: tuple[str, ...]) -> None:
    name = maker.write(SPEC)
    before = maker.files()
    said = maker.run("check", name, *words)
    assert said.code == 0
    assert "Niche shelf" in said.out
    assert "800 x 900 x 250 mm" in said.out
    assert re.search(r"weight +\d+\.\d kg", said.out)
    assert ("add --solids" in said.out) is not ("--solids" in words)
    assert maker.files() == before


def test_check_leaves_with_1_when_the_unit_is_larger_than_its_opening(maker: Maker) -> None:
    opening = "opening: {width: 790, height: 910, depth: 260}\n"
    said = maker.run("check", maker.write(SPEC + opening))
    assert said.code == 1
    assert "error" in said.out
    assert re.search(r"Findings: \d+ error", said.out)
    assert "-10 x 10 x 10 mm" in said.out
    assert said.err == ""


def test_check_tells_what_an_option_has_besides(maker: Maker) -> None:
    narrow = "- {name: Narrow, change: {opening: {width: 790, height: 910, depth: 260}}}\n"
    name = maker.write(SPEC + f"options:\n- {{name: Oiled, change: {{finish: oil}}}}\n{narrow}")
    said = maker.run("check", name)
    assert said.code == 1
    unit, oiled, narrow = re.split(r"Option \w+, besides:", said.out)
    assert "error" not in unit
    assert oiled.strip() == "Findings: none."
    assert re.search(r"Findings: \d+ error", narrow)


def test_check_refuses_options_that_make_no_unit(maker: Maker) -> None:
    name = maker.write(SPEC + "options:\n- {name: Oiled, change: {finish: {doors: oil}}}\n")
    said = maker.run("check", name)
    assert said.code == 2
    assert said.out == ""
    assert "option `Oiled`: this unit has no doors to be finished" in " ".join(said.err.split())


def test_plasterboard_alone_is_refused(maker: Maker) -> None:
    said = maker.run("check", maker.write(SPEC + "hung: true\nwall: plasterboard\n"))
    assert said.code == 1
    assert "plasterboard-alone" in said.out
    assert "in plasterboard alone" in " ".join(said.out.split())
    said = maker.run("check", maker.write(SPEC + "hung: true\nwall: masonry\n"))
    assert "plasterboard" not in said.out


def test_cautions_come_last_and_short(maker: Maker) -> None:
    opening = "opening: {width: 790, height: 910, depth: 260}\n"
    said = maker.run("check", maker.write(SPEC + opening)).out
    assert said.index("error") < said.index("Take care") < said.index("Findings: ")
    assert said.count("Take care") == 1
    take_care = said[said.index("Take care") : said.index("Findings: ")].splitlines()
    assert all(re.match(r"  [A-Z][\w -]+: ", line) for line in take_care[1:])
    assert "Never widen" not in said


def test_check_names_the_rule_that_rule_explains(maker: Maker) -> None:
    opening = "opening: {width: 790, height: 910, depth: 260}\n"
    said = maker.run("check", maker.write(SPEC + opening)).out
    assert "[larger-than-opening]" in said
    (name,) = re.findall(r"rodwright rule ([a-z-]+)", said)
    explained = maker.run("rule", name)
    assert explained.code == 0
    for word in ("What to do: ", "Source: "):
        assert word in explained.out
    assert "Danger: " in maker.run("rule", "glass").out


def test_rules_are_listed_and_suggested(maker: Maker) -> None:
    listed = maker.run("rule")
    assert (listed.code, listed.err) == (0, "")
    assert re.search(r"^thin-tongue +A thin tongue", listed.out, flags=re.MULTILINE)
    wrong = maker.run("rule", "thin-tonge")
    assert wrong.code == 2
    assert "Did you mean `thin-tongue`" in wrong.err


def test_notes_give_cautions_in_full(maker: Maker) -> None:
    opening = "opening: {width: 810, height: 910, depth: 260}\n"
    said = maker.run("check", "--notes", maker.write(SPEC + opening)).out
    assert "Never widen or notch it without a structural engineer's word" in said
    assert "Leave wiring, pipes and anything structural to licensed people" in said


# --- parts and schema ----------------------------------------------------------------


def test_parts_lists_every_part_once(maker: Maker) -> None:
    said = maker.run("parts", maker.write(SPEC))
    assert (said.code, said.err) == (0, "")
    assert re.findall(r"\b[A-Z]{2}\d\b", said.out) == ["SD1", "SD2", "BT1", "TP1", "SH1", "SH2"]
    assert re.search(r"SD1, SD2 +Side +2 +900 x 250 x 18 +case", said.out)
    assert "6 parts" in said.out


def test_the_schema_is_one_and_takes_the_ready_models(maker: Maker) -> None:
    said = maker.run("schema")
    assert (said.code, said.err) == (0, "")
    schema = json.loads(said.out)
    assert schema["$schema"] == "https://json-schema.org/draft/2020-12/schema"
    Draft202012Validator.check_schema(schema)
    validator = Draft202012Validator(schema)
    for path in models_folder().glob("*.yaml"):
        validator.validate(YAML(typ="safe", pure=True).load(path))
    assert not validator.is_valid({"titel": "x"})


# --- build ---------------------------------------------------------------------------


def _build(maker: Maker, text: str = SPEC, out: str = "out") -> Said:
    return maker.run("build", maker.write(text), "--no-pictures", "-o", out)


def test_build_writes_what_it_names(maker: Maker) -> None:
    said = _build(maker)
    assert said.code == 0
    table = said.out[said.out.index("files in out:") :]
    named = re.findall(r"[\w/-]+\.(?:step|stl|glb|csv|json|xlsx)\b", table)
    on_disk = {
        name.removeprefix("out/")
        for name in maker.files()
        if name.startswith("out/") and Path(name).suffix
    }
    assert {"unit.step", "unit.stl", "unit.glb", "unit.json", "parts-list.xlsx"} <= set(named)
    assert set(named) | {"manifest.json"} == on_disk
    assert f"{len(named)} files in out:" in said.out


EDGED = SPEC.replace("{count: 2}", "{count: 2, fixed: false}") + (
    "edging: {material: abs, thickness: 2, edges: [sides]}\n"
)


def test_parts_are_written_and_listed_as_cut_or_finished(maker: Maker) -> None:
    """The front edge as cut is 2 behind the finished one; the rear edge is the same."""
    assert _build(maker, EDGED).code == 0
    listed = (maker.folder / "out" / "parts-list.csv").read_text(encoding="utf-8-sig")
    assert ",as cut," in listed
    assert ",finished," not in listed
    words = ("build", "niche.yaml", "-o", "whole", "--no-pictures", "--parts")
    assert maker.run(*words, "finished").code == 0
    whole = (maker.folder / "whole" / "parts-list.csv").read_text(encoding="utf-8-sig")
    assert ",finished," in whole
    assert ",as cut," not in whole
    assert "37, 213 from the front edge" in whole
    assert "35, 211 from the front edge" in listed
    assert maker.run(*words, "rough").code == 2


def test_a_second_build_replaces_the_first_and_leaves_the_makers_files(maker: Maker) -> None:
    assert _build(maker).code == 0
    maker.write("call the plasterer", "out/notes.txt")
    before = maker.files()
    assert _build(maker, SPEC.replace("width: 800", "width: 820")).code == 0
    after = maker.files()
    assert after.keys() == before.keys()
    assert after["out/notes.txt"] == before["out/notes.txt"]
    assert after["out/parts-list.csv"] != before["out/parts-list.csv"]


def test_a_changed_file_is_refused_and_nothing_is_written(maker: Maker) -> None:
    assert _build(maker).code == 0
    maker.write("my prices", "out/parts-list.csv")
    changed = maker.write(SPEC.replace("width: 800", "width: 820"))
    before = maker.files()
    said = maker.run("build", changed, "--no-pictures", "-o", "out")
    assert said.code == 2
    assert "parts-list.csv` is in the way" in said.err
    assert maker.files() == before


@pytest.mark.parametrize(
    ("out", "message"), [("taken", "is a file, not a folder"), ("taken/out", "can't be written")]
)
def test_a_file_where_the_folder_should_go(maker: Maker, out: str, message: str) -> None:
    maker.write("my own", "taken")
    name = maker.write(SPEC)
    before = maker.files()
    said = maker.run("build", name, "--no-pictures", "-o", out)
    assert said.code == 2
    assert message in said.err
    assert maker.files() == before


@pytest.mark.skipif(
    not hasattr(os, "geteuid") or os.geteuid() == 0, reason="root may write anywhere"
)
def test_a_folder_that_may_not_be_written_to(maker: Maker) -> None:
    (maker.folder / "shut").mkdir(mode=0o555)
    said = _build(maker, out="shut/out")
    assert said.code == 2
    assert "can't be written: Permission denied" in said.err
    assert list((maker.folder / "shut").iterdir()) == []


def test_a_build_with_an_error_finding_is_written_and_leaves_with_1(maker: Maker) -> None:
    said = _build(maker, SPEC + "opening: {width: 790, height: 910, depth: 260}\n")
    assert said.code == 1
    findings = json.loads((maker.folder / "out" / "findings.json").read_text(encoding="utf-8"))
    assert findings["counts"]["error"] >= 1


# --- what is wrong with a spec -------------------------------------------------------

WRONG = {
    "a key that isn't one": (SPEC.replace("depth: 250", "dept: 250"), ["2:33"]),
    "no number": (SPEC.replace("width: 800", "width: wide"), ["2:15"]),
    "stock that isn't there": (SPEC.replace("stock: case}", "stock: oak}"), ["5:18"]),
    "no YAML": (SPEC.replace("{count: 2}", "{count: 2"), ["7:12"]),
    "several": (
        SPEC.replace("width: 800", "width: wide").replace("count: 2", "count: -1"),
        ["2:15", "7:20"],
    ),
    "nothing fits": (SPEC.replace("width: 800", "width: 30"), ["2:15"]),
}


@pytest.mark.parametrize("command", ["check", "parts", "build"])
@pytest.mark.parametrize("wrong", WRONG)
def test_a_wrong_spec_is_told_with_its_places(maker: Maker, wrong: str, command: str) -> None:
    text, places = WRONG[wrong]
    name = maker.write(text)
    before = maker.files()
    options = ["--no-pictures", "-o", "out"] if command == "build" else []
    said = maker.run(command, name, *options)
    assert (said.code, said.out) == (2, "")
    told = re.findall(r"^niche\.yaml:(\d+:\d+): .+\n  \S", said.err, re.MULTILINE)
    assert told == places
    assert maker.files() == before


@pytest.mark.parametrize("command", ["check", "parts", "build"])
def test_a_file_that_is_not_there(maker: Maker, command: str) -> None:
    options = ["-o", "out"] if command == "build" else []
    said = maker.run(command, "nowhere.yaml", *options)
    assert said.code == 2
    assert "there is no file `nowhere.yaml`" in said.err
    assert maker.files() == {}


def test_a_folder_instead_of_a_spec(maker: Maker) -> None:
    said = maker.run("check", ".")
    assert said.code == 2
    assert "is a folder" in said.err


def test_own_faults_are_owned_up_to(maker: Maker, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(_: object) -> None:
        raise RuntimeError("nobody thought of this")

    monkeypatch.setattr("rodwright.set_out_options", fail)
    monkeypatch.delenv("RODWRIGHT_DEBUG", raising=False)
    said = maker.run("check", maker.write(SPEC))
    assert said.code == 70
    assert "Rodwright itself failed: RuntimeError: nobody thought of this" in said.err


def test_an_unknown_command_is_a_usage_error(maker: Maker) -> None:
    assert maker.run("saw").code == 2


def test_as_a_module_with_its_output_piped(tmp_path: Path) -> None:
    (tmp_path / "niche.yaml").write_text(SPEC.replace("width: 800", "width: wide"))
    done = subprocess.run(
        [sys.executable, "-m", "rodwright_cli", "check", "niche.yaml"],
        cwd=tmp_path,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 2
    assert done.stdout == ""
    assert done.stderr.startswith("niche.yaml:2:15: ")
    assert "Traceback" not in done.stderr


@pytest.mark.parametrize("verb", ["check spec.yaml", "survey spec.yaml", "build spec.yaml -o out"])
def test_a_bad_source_date_epoch_is_told_plainly(verb: str, tmp_path: Path) -> None:
    """In a process of its own: numpy reads it when it is loaded, and fails."""
    (tmp_path / "spec.yaml").write_text(SPEC, encoding="utf-8")
    done = subprocess.run(
        [sys.executable, "-m", "rodwright_cli", *verb.split()],
        cwd=tmp_path,
        env=os.environ | {"SOURCE_DATE_EPOCH": "soon"},
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 2
    assert "SOURCE_DATE_EPOCH is 'soon'" in done.stderr
    assert "unset it" in done.stderr
    assert "Traceback" not in done.stderr
    assert [path.name for path in tmp_path.iterdir()] == ["spec.yaml"]


def test_what_an_option_can_be_is_told_in_plain_words(maker: Maker) -> None:
    said = maker.run("book", maker.write(SPEC), "--out", "made", "--paper", "legal")
    assert (said.code, said.out) == (2, "")
    assert "Invalid value for '--paper': 'legal' is not one of 'a4', 'letter'." in said.err
    assert list(maker.files()) == ["niche.yaml"]
