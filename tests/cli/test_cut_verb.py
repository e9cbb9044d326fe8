"""`rodwright cut` as a maker runs it: what is shown, what is written, how it ends."""

from __future__ import annotations

import json
import os
import signal
from pathlib import Path
from typing import Any

import pytest
from click.testing import Result
from typer.testing import CliRunner

import rodwright
from rodwright.cutting.planning import Watch
from rodwright_cli.main import app

SPEC = """
title: Niche shelf
size: {width: 620, height: 900, depth: 250}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220], price: 74}
  thin: {kind: sheet, material: birch plywood, thickness: 6, size: [2440, 1220]}
carcass: {stock: ply}
interior: {shelves: {count: 2}}
back: {stock: thin, fixing: applied}
"""


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "niche.yaml").write_text(SPEC)
    return tmp_path


def run(*words: str) -> Result:
    """A command, with its words on one line whatever the terminal's width."""
    return CliRunner().invoke(app, ["cut", *words], env={"COLUMNS": "250"})


def test_without_a_folder_it_is_shown_and_nothing_is_written(folder: Path) -> None:
    said = run("niche.yaml")
    assert said.exit_code == 0, said.output
    out = said.stdout
    assert "birch plywood, 18 mm: 1 sheet, 74.00, proven best (least cost)" in out
    assert "birch plywood, 6 mm: 1 sheet, 2.98 m2, proven best (least wood)" in out
    assert "SD1, SD2" in out
    assert "To pay: 74.00 and what has no price. Screws, hinges, edging and the like" in out
    assert "Without a price, and not in the sum: 1 sheet of birch plywood, 6 mm" in out
    assert "riving knife" in out
    assert "add -o with a folder" in out
    assert list(folder.iterdir()) == [folder / "niche.yaml"]
    assert "planning birch plywood, 18 mm" in said.stderr


def test_with_a_folder_all_is_written(folder: Path) -> None:
    said = run("niche.yaml", "-o", "out")
    assert said.exit_code == 0, said.output
    assert "files in out: cut.json is the whole plan" in said.stdout
    assert (folder / "out" / "cut" / "sequence.md").is_file()
    assert rodwright.read_cut("out/cut.json").jobs[0].spec == "niche.yaml"


def test_json_is_the_file(folder: Path) -> None:
    said = run("niche.yaml", "--json", "-o", "out")
    assert said.exit_code == 0
    document: dict[str, Any] = json.loads(said.stdout)
    assert document.pop("errors") == []
    assert document == json.loads((folder / "out" / "cut.json").read_bytes())


def test_a_rack_is_used_and_told(folder: Path) -> None:
    (folder / "rack.yaml").write_text(
        "stock:\n  half sheet: {kind: sheet, material: birch plywood, thickness: 18, "
        "size: [1220, 1220], count: 1, where: loft}\n"
    )
    said = run("niche.yaml", "--rack", "rack.yaml")
    assert said.exit_code == 0, said.output
    assert "At hand: half sheet (loft): 1 sheet of birch plywood, 18 mm, 1220 x 1220 mm." in (
        said.stdout
    )
    assert "nothing to buy, proven best (fewest sheets)" in said.stdout


def test_a_router_takes_the_sheets(folder: Path) -> None:
    said = run("niche.yaml", "--free", "--kerf", "8 mm", "-o", "out")
    assert said.exit_code == 0, said.output
    assert "Router: clamp or hold the sheet" in said.stdout
    plan = rodwright.read_cut("out/cut.json")
    assert plan.rules.router is not None and plan.lots[0].plan.kerf == 8.0
    assert "Sheets by a router, tool 8 mm" in (folder / "out/cut/sequence.md").read_text()


@pytest.mark.usefixtures("folder")
def test_how_sheets_are_cut_can_be_asked() -> None:
    words = ("--saw", "panel saw", "--first-cut", "along", "--stages", "2", "--head-cut")
    said = run("niche.yaml", *words, "--seed", "5", "--json")
    assert said.exit_code == 0, said.output
    document = json.loads(said.stdout)
    rules = document["rules"]
    assert (rules["saw"]["kind"], rules["first_cut"], rules["stages"]) == ("panel saw", "along", 2)
    assert rules["head_cuts"] is True and document["seed"] == 5


# --- what goes wrong -------------------------------------------------------------------


def test_what_cant_be_cut_is_told_and_nothing_is_written(folder: Path) -> None:
    (folder / "niche.yaml").write_text(SPEC.replace("height: 900", "height: 2600"))
    with pytest.raises(rodwright.ProblemsError) as caught:
        CliRunner().invoke(app, ["cut", "niche.yaml", "-o", "out"], catch_exceptions=False)
    assert "niche.yaml:5:" in str(caught.value) and "SD1" in str(caught.value)
    assert not (folder / "out").exists()


def test_what_is_in_the_way_is_told_before_the_search(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert run("niche.yaml", "-o", "out").exit_code == 0
    (folder / "out" / "cut" / "pieces.csv").write_text("mine")
    monkeypatch.setattr(rodwright, "cut", lambda *_, **__: pytest.fail("it was searched for"))
    with pytest.raises(rodwright.ProblemsError, match=r"pieces\.csv` is in the way"):
        CliRunner().invoke(app, ["cut", "niche.yaml", "-o", "out"], catch_exceptions=False)


def test_what_must_be_mended_first_leaves_with_1(folder: Path) -> None:
    (folder / "niche.yaml").write_text(f"{SPEC}loads: 700 kg/m\n")
    said = run("niche.yaml", "-o", "out")
    assert said.exit_code == 1
    assert "[breaks]" in said.stdout
    assert (folder / "out" / "cut.json").is_file()


@pytest.mark.usefixtures("folder")
def test_no_time_at_all_still_gives_a_plan() -> None:
    said = run("niche.yaml", "--seconds", "0")
    assert said.exit_code == 0, said.output
    assert "SD1, SD2" in said.stdout


def _interrupted(monkeypatch: pytest.MonkeyPatch, times: int) -> None:
    """Press Ctrl-C so often when the first lot is begun."""
    share = Watch.share
    pressed = iter(range(times))

    def pressing(self: Watch, *words: Any) -> Any:
        patience = share(self, *words)
        for _ in pressed:
            os.kill(os.getpid(), signal.SIGINT)
        return patience

    monkeypatch.setattr(Watch, "share", pressing)


@pytest.mark.usefixtures("folder")
def test_ctrl_c_takes_the_best_so_far(monkeypatch: pytest.MonkeyPatch) -> None:
    _interrupted(monkeypatch, 1)
    said = run("niche.yaml", "-o", "out")
    assert said.exit_code == 0, said.output
    assert "Stopping: the best plan so far is taken." in said.stderr
    plan = rodwright.read_cut("out/cut.json")
    assert plan.whole
    assert plan.stopped or all(each.plan.proven for each in plan.lots)


def test_a_second_ctrl_c_leaves_with_nothing(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    _interrupted(monkeypatch, 2)
    said = run("niche.yaml", "-o", "out")
    assert said.exit_code == 130
    assert not (folder / "out").exists()
