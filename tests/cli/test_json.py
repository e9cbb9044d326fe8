"""`--json` of every verb: one document and nothing else, with the figures of the text."""

from __future__ import annotations

import json
import re
import sys
from dataclasses import dataclass
from importlib import import_module
from inspect import signature
from pathlib import Path
from typing import Any

import pytest

from rodwright.checks.rules import Rule
from rodwright.handover.json_text import json_text
from rodwright.jobs.new import model_names, model_path
from rodwright.jobs.rack import read_rack
from rodwright_cli.json_out import say_json
from rodwright_cli.main import app, main

PAGE = (Path(__file__).parents[2] / "docs" / "json.md").read_text(encoding="utf-8")
KEYS = {
    verb: set(re.findall(r"`(\w+)`", keys))
    for verb, keys in re.findall(r"^\| `([\w-]+)` \| (.*?) \|", PAGE, flags=re.MULTILINE)
}
"""Keys at the top of what each verb prints, as the page has them."""
TABLELESS = {"schema", "gallery", "look"}
"""`schema` prints JSON by itself, `gallery` writes pictures, and `look` serves a page."""
WAY = "\nway_in: {ceiling: 2400, doors: [{width: 760, height: 1980}]}\n"


@dataclass(frozen=True)
class Said:
    """How a command ended, and what it said."""

    code: int
    out: str
    err: str

    @property
    def document(self) -> Any:
        """The one document that it printed; whatever JSON doesn't know fails."""
        assert self.out.isascii() and self.out.endswith("}\n")
        return json.loads(self.out, parse_constant=pytest.fail)


class Maker:
    """Runs commands in a folder of their own."""

    def __init__(
        self, folder: Path, patch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
    ) -> None:
        self.folder, self._patch, self._capsys = folder, patch, capsys
        patch.chdir(folder)
        patch.setenv("COLUMNS", "200")

    def run(self, *words: str) -> Said:
        self._patch.setattr(sys, "argv", ["rodwright", *words])
        with pytest.raises(SystemExit) as left:
            main()
        said = self._capsys.readouterr()
        assert isinstance(left.value.code, int)
        return Said(left.value.code, said.out, said.err)

    def model(self, name: str, more: str = "") -> str:
        text = model_path(name).read_text(encoding="utf-8")
        (self.folder / f"{name}.yaml").write_text(text + more, encoding="utf-8")
        return f"{name}.yaml"


@pytest.fixture
def maker(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> Maker:
    return Maker(tmp_path, monkeypatch, capsys)


def verbs() -> set[str]:
    return {each.callback.__name__ for each in app.registered_commands if each.callback}


def test_every_verb_with_a_table_takes_json_and_the_page_tells_of_it() -> None:
    taking = {
        verb
        for verb in verbs()
        if "json" in signature(getattr(import_module(f"rodwright_cli.{verb}"), verb)).parameters
    }
    assert taking == verbs() - TABLELESS
    assert {verb.replace("-", "_") for verb in KEYS} == taking


@pytest.mark.parametrize("name", model_names())
@pytest.mark.parametrize("verb", ["check", "parts", "strength"])
def test_of_every_model(maker: Maker, verb: str, name: str) -> None:
    spec = maker.model(name)
    said = maker.run(verb, spec, "--json")
    assert said.err == ""
    assert set(said.document) == KEYS[verb]
    assert said.code == maker.run(verb, spec).code


def test_span(maker: Maker) -> None:
    said = maker.run("span", "birch plywood", "18", "--load", "books", "--json")
    assert (said.code, said.err) == (0, "")
    assert set(said.document) == KEYS["span"]


def test_cut(maker: Maker) -> None:
    said = maker.run("cut", maker.model("niche-shelf"), "--json")
    assert said.code == 0
    assert set(said.document) == KEYS["cut"]


def test_check_has_the_figures_of_the_text(maker: Maker) -> None:
    spec = maker.model("reading-alcove")
    document, text = maker.run("check", spec, "--json").document, maker.run("check", spec).out
    width, height, depth = (f"{each:.1f}".removesuffix(".0") for each in document["size_as_fitted"])
    assert f"{width} x {height} x {depth} mm" in text
    assert f"{document['parts']} of {document['shapes']} shapes" in text
    assert f"{document['weight']:.1f} kg" in text
    told = [each for each in document["findings"] if each["severity"] != "caution"]
    assert told and all(f"[{each['rule']}]" in text for each in told)
    assert sum(document["counts"].values()) == len(document["findings"])
    assert document["measures"] == {"length": "mm", "mass": "kg"} and not document["solids"]
    spare = document["opening"]["to_spare"]
    assert len(spare) == 3 and all(each > 0 for each in spare)


def test_parts_has_the_figures_of_the_text_and_of_the_file(maker: Maker) -> None:
    spec = maker.model("hallway-bookcase")
    document, text = maker.run("parts", spec, "--json").document, maker.run("parts", spec).out
    for row in document["parts"]:
        assert row["name"] in text and f"{row['weight'] / 0.45359237:.2f}" in text
    assert f"{document['totals']['weight'] / 0.45359237:.1f} lb" in text
    assert document["figures_in"]["length"] == "mm" and document["errors"] == []


def test_parts_tells_what_must_be_mended(maker: Maker) -> None:
    name = maker.model("niche-shelf")
    path = maker.folder / name
    path.write_text(path.read_text().replace("size: [2440, 1220]", "size: [800, 400]"))
    checked, listed = (maker.run(verb, name, "--json") for verb in ("check", "parts"))
    found = checked.document["findings"]
    errors = [each for each in found if each["severity"] == "error"]
    assert errors and listed.document["errors"] == errors
    assert (checked.code, listed.code) == (1, 0)


def test_survey_is_its_file(maker: Maker) -> None:
    spec = maker.model("reading-alcove")
    said = maker.run("survey", spec, "--json", "-o", "out")
    assert (said.code, said.err) == (0, "")
    assert said.document == json.loads((maker.folder / "out/survey/survey.json").read_text())
    assert set(said.document) == KEYS["survey"]


def test_a_survey_of_readings_that_cannot_be_is_printed_and_leaves_with_2(maker: Maker) -> None:
    spec = maker.model("reading-alcove")
    path = maker.folder / spec
    path.write_text(re.sub(r"rising: *\d+", "rising: 2566", path.read_text()))
    said = maker.run("survey", spec, "--json")
    assert said.code == 2 and said.document["problems"]
    assert said.document["problems"][0]["message"] in said.err


def test_way_in_has_the_steps_of_the_text(maker: Maker) -> None:
    spec = maker.model("niche-shelf", WAY)
    said = maker.run("way-in", spec, "--json")
    assert set(said.document) == KEYS["way-in"]
    text = maker.run("way-in", spec)
    assert said.code == text.code == int(not said.document["goes"])
    assert all(step["place"] in text.out for step in said.document["steps"])


def test_build_names_the_files_that_are_there(maker: Maker) -> None:
    said = maker.run("build", maker.model("niche-shelf"), "-o", "out", "--no-pictures", "--json")
    assert said.code == 0 and set(said.document) == KEYS["build"]
    written = [each for each in (maker.folder / "out").rglob("*") if each.is_file()]
    names = {path.relative_to(maker.folder / "out").as_posix() for path in written}
    assert set(said.document["files"]) == names - {"manifest.json"}
    assert said.document["folder"] == "out"
    found = json.loads((maker.folder / "out/findings.json").read_text())
    assert said.document["findings"] == found["findings"]


def test_rules_and_one_rule(maker: Maker) -> None:
    every = maker.run("rule", "--json").document["rules"]
    assert [each["rule"] for each in every] == [*maker_rules()]
    assert all(each["title"] and each["source"] and each["remedy"] for each in every)
    (one,) = maker.run("rule", "thin-tongue", "--json").document["rules"]
    assert one in every


def maker_rules() -> list[str]:
    from rodwright.checks.meanings import MEANINGS

    assert set(MEANINGS) == set(Rule)
    return list(MEANINGS)


def test_models_and_one_that_is_copied(maker: Maker) -> None:
    assert maker.run("new", "--json").document == {"models": list(model_names())}
    said = maker.run("new", "niche-shelf", "mine.yaml", "--json")
    assert said.document == {"models": ["niche-shelf"], "file": "mine.yaml"}
    assert (maker.folder / "mine.yaml").is_file()


@pytest.mark.parametrize("verb", ["check", "parts", "strength", "survey", "way-in", "cut"])
def test_what_is_wrong_goes_to_the_error_stream_alone(maker: Maker, verb: str) -> None:
    (maker.folder / "wrong.yaml").write_text("title: x\nsize: {width: wide}\n")
    said = maker.run(verb, "wrong.yaml", "--json")
    assert (said.code, said.out) == (2, "")
    assert "wrong.yaml:2:" in said.err


def test_whatever_a_title_holds_it_is_ascii_that_reads_back(
    capsys: pytest.CaptureFixture[str],
) -> None:
    titles = ["Büro — Régal", "\x1b[2J\x07\x7f\u202e\u2028", "𝔸 shelf 🪚", 'quo"te\\']
    say_json(json_text({"titles": titles}))
    out = capsys.readouterr().out
    assert out.isascii() and not re.search(r"[^\n -~]", out)
    assert json.loads(out) == {"titles": titles}


def test_a_rack_and_what_is_taken_from_it(maker: Maker) -> None:
    assert maker.run("rack", "new", "--json").document == {"file": "rack.yaml"}
    shown = maker.run("rack", "show", "--json")
    assert (shown.code, shown.err) == (0, "") and set(shown.document) == KEYS["rack"]
    named = {each["name"]: each for each in shown.document["stock"]}
    assert named["ash 27"]["price"] == pytest.approx(1900 * 2.6 * 0.16 * 0.027)
    assert shown.document["value"] == pytest.approx(
        sum(each["value"] for each in named.values() if each["value"] is not None)
    )
    rack = read_rack(maker.folder / "rack.yaml")
    used = [{"entry": "K1", "count": 1, "was": rack.entries[3].fingerprint}]
    plan = {"rack": "rack.yaml", "plan": "0123456789abcdef", "uses": used, "comes": []}
    (maker.folder / "cut.json").write_text(json.dumps({"rack": plan}))
    done = maker.run("rack", "take", "cut.json", "--json").document
    assert set(done) == {"file", "plan", "used", "came"}
    assert done["used"] == [{"name": "K1", "used": 1, "left": 0}]
    assert maker.run("rack", "take", "cut.json", "--json").code == 2
