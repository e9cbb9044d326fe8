"""From specs and a rack to a plan, and every file of it."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import pytest

from rodwright.cutting.offcuts import Least
from rodwright.cutting.planning import Watch
from rodwright.cutting.taking import taking_of
from rodwright.cutting.whole import Cutting
from rodwright.handover.cut_json import read_cut
from rodwright.handover.cut_sequence import steps_of
from rodwright.jobs.build import build
from rodwright.jobs.cut import Asked, cut, must_be_mended, write_cut
from rodwright.jobs.rack import read_rack, take_from_rack
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.wishes import SpecFile, read_spec

SPEC = """
title: Niche shelf
size: {{width: 620, height: 900, depth: 250}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220], price: 74}}
  oak: {{kind: board, material: european oak, thickness: 27}}
carcass: {{stock: ply}}
interior: {{shelves: {{count: 2}}}}
{more}
"""
RACK = """
saws: [{kind: track saw, kerf: 2}, {kind: table saw, kerf: 3, rip: 700}]
router: {tool: 8, spacing: 12}
keep: {length: 500, width: 200, board_length: 350, board_width: 30}
first_cut: along
stock:
  half sheet: {kind: sheet, material: birch plywood, thickness: 18, size: [1220, 1220], count: 1}
"""


@pytest.fixture
def spec(tmp_path: Path) -> SpecFile:
    return specs(tmp_path, "")[0]


def specs(folder: Path, *more: str) -> list[SpecFile]:
    found = []
    for at, each in enumerate(more):
        path = folder / f"spec-{at}.yaml"
        path.write_text(SPEC.format(more=each))
        found.append(read_spec(path))
    return found


def rack(folder: Path, text: str = RACK) -> Path:
    path = folder / "rack.yaml"
    path.write_text(text)
    return path


def _refs(plan: Cutting) -> list[str]:
    return sorted(
        label.ref
        for planned in plan.lots
        for piece in planned.lot.pieces
        for label in planned.lot.labels[piece.name]
    )


def test_every_part_of_a_spec_is_cut_once(spec: SpecFile) -> None:
    plan = cut([spec])
    assert _refs(plan) == sorted(part.ref for part in set_out(spec).parts)
    placed = [
        each for planned in plan.lots for layout in planned.plan.layouts for each in layout.placed
    ]
    assert len(placed) == len(set_out(spec).parts)
    assert plan.whole and not plan.stopped
    assert (plan.jobs[0].title, plan.jobs[0].mark) == ("Niche shelf", "")
    assert plan.lots[0].plan.cost == 74.0
    assert plan.lots[0].plan.proven


def test_jobs_are_marked_and_equal_titles_told_apart(tmp_path: Path) -> None:
    plan = cut(specs(tmp_path, "", "", "worktop: {stock: oak}"))
    assert [(job.mark, job.title) for job in plan.jobs] == [
        ("A", "Niche shelf"),
        ("B", "Niche shelf (2)"),
        ("C", "Niche shelf (3)"),
    ]
    refs = _refs(plan)
    assert len(refs) == len(set(refs))
    assert {"A SD1", "B SD1", "C SD1"} <= set(refs)
    # Of the same wood, whatever the spec: the sides of all three are one lot.
    assert [planned.lot.kind for planned in plan.lots] == ["sheet", "board"]


def test_the_rack_says_what_it_is_cut_with_unless_that_is_asked(
    spec: SpecFile, tmp_path: Path
) -> None:
    there = read_rack(rack(tmp_path))
    rules = cut([spec], rack=there).rules
    assert (rules.saw.kind, rules.saw.kerf, rules.first_cut) == ("track saw", 2.0, "along")
    assert rules.router is None
    asked = cut(
        [spec],
        rack=there,
        asked=Asked("Table-saw", "1/8 in", free=True, first_cut="across"),
    ).rules
    assert (asked.saw.kind, asked.saw.rip, asked.first_cut) == ("table saw", 700.0, "across")
    assert asked.saw.kerf == pytest.approx(3.175)
    assert asked.router is not None and asked.router.kerf == pytest.approx(3.175)
    assert asked.between == 12.0
    assert cut([spec], rack=there, asked=Asked("panel saw")).rules.saw.kind == "panel saw"


def test_what_is_at_hand_is_cut_before_anything_is_bought(spec: SpecFile, tmp_path: Path) -> None:
    there = read_rack(rack(tmp_path))
    plan = cut([spec], rack=there)
    assert plan.lots[0].plan.used == {"half sheet": 1}
    assert plan.lots[0].plan.cost == 0.0
    assert plan.least == Least(500.0, 200.0, 350.0, 30.0)
    assert plan.rack is not None
    assert [(each.entry, each.count) for each in plan.rack.uses] == [("half sheet", 1)]
    assert [each.name for each in plan.rack.comes] == [each.name for each in plan.kept]
    assert plan.identity != cut([spec]).identity


def test_a_plan_made_again_is_the_same(spec: SpecFile) -> None:
    assert cut([spec], seed=3) == cut([spec], seed=3)


def test_offcuts_that_are_kept_fall_off_in_the_cuts(spec: SpecFile) -> None:
    plan = cut([spec])
    names = {
        name
        for lot in steps_of(plan)
        for sheet in lot.sheets
        for step in sheet.steps
        for result in step.results
        for name in result.names
    }
    assert names == {each.name for each in plan.kept}


def test_a_search_that_is_stopped_still_gives_a_whole_plan(spec: SpecFile) -> None:
    plan = cut([spec], watch=Watch(stopped=True))
    assert plan.whole
    assert plan.one_more == ()


# --- what can't be -------------------------------------------------------------------


def test_a_part_larger_than_any_sheet_is_told_at_its_stock(tmp_path: Path) -> None:
    (large,) = specs(tmp_path, "")
    path = tmp_path / "large.yaml"
    path.write_text(SPEC.format(more="").replace("height: 900", "height: 2600"))
    with pytest.raises(ProblemsError) as caught:
        cut([large, read_spec(path)])
    problems = caught.value.problems
    assert problems
    assert all((each.file, each.line) == (str(path), 5) for each in problems)
    assert "SD1" in problems[0].message


@pytest.mark.parametrize(
    ("asked", "said"),
    [
        (Asked("band saw"), "--saw: `band saw` is no saw"),
        (Asked(kerf="wide"), "--kerf: `wide` can't be read"),
        (Asked(kerf="50"), "--kerf: no saw or tool cuts wider than 40 mm"),
    ],
)
def test_what_is_asked_wrongly_is_told(spec: SpecFile, asked: Asked, said: str) -> None:
    with pytest.raises(ProblemsError) as caught:
        cut([spec], asked=asked)
    assert said in str(caught.value)


def test_errors_of_the_checks_are_told_before_anything_is_cut(tmp_path: Path) -> None:
    fine, breaking = specs(tmp_path, "", "loads: 700 kg/m")
    assert must_be_mended([fine]) == ()
    assert must_be_mended([fine, breaking])


# --- files ----------------------------------------------------------------------------


def test_all_is_written_and_reads_back(spec: SpecFile, tmp_path: Path) -> None:
    (tmp_path / "mine").mkdir()
    there = read_rack(rack(tmp_path / "mine"))
    plan = cut([spec], rack=there)
    files = write_cut(plan, tmp_path / "out")
    assert {
        "cut.json",
        "cut/cuts.csv",
        "cut/cutting.xlsx",
        "cut/labels.csv",
        "cut/labels-1.png",
        "cut/labels-1.svg",
        "cut/pieces.csv",
        "cut/plan-1-ply-1.png",
        "cut/plan-1-ply-1.svg",
        "cut/sequence.md",
        "cut/shopping.csv",
    } <= set(files)
    read = read_cut(tmp_path / "out" / "cut.json")
    assert read.rack is not None and plan.rack is not None
    assert read.rack.rack == "../mine/rack.yaml"
    assert replace(read, rack=plan.rack) == plan
    record = json.loads((tmp_path / "out" / "cut.json").read_bytes())["rack"]
    assert taking_of(record) == read.rack


def test_flaws_of_an_offcut_are_in_every_file_and_in_the_rack(tmp_path: Path) -> None:
    path = tmp_path / "bench.yaml"
    path.write_text(SPEC.format(more="").replace("carcass: {stock: ply}", "carcass: {stock: oak}"))
    plank = (
        "stock:\n  plank: {kind: board, material: european oak, thickness: 27, length: 2900,\n"
        "    width: 400, count: 3, flaws: [{x: 1000, length: 60, y: 300, width: 45, why: wane}]}\n"
    )
    file, spec = rack(tmp_path, plank), read_spec(path)
    plan = cut([spec], rack=read_rack(file))
    flawed = [each for each in plan.kept if each.flaws]
    assert flawed
    write_cut(plan, tmp_path / "out")
    assert replace(read_cut(tmp_path / "out" / "cut.json"), rack=plan.rack) == plan
    for each in ("cut/offcuts.csv", "cut/labels.csv", "cut/sequence.md"):
        assert "with a flaw: wane" in (tmp_path / "out" / each).read_text("utf-8-sig"), each
    take_from_rack(tmp_path / "out" / "cut.json")
    entries = {each.name: each for each in read_rack(file).entries}
    for kept in flawed:
        (flaw,) = entries[kept.name].piece.flaws
        assert flaw.why == "wane" and flaw.width == 45.0
        # Where it was in the plank, no larger than to the next tenth of a millimetre.
        assert 1000 - 0.1 <= kept.offcut.x + flaw.x <= 1000
        assert 300 - 0.1 <= kept.offcut.y + flaw.y <= 300


def test_equal_plans_give_equal_files(spec: SpecFile, tmp_path: Path) -> None:
    for out in ("a", "b"):
        write_cut(cut([spec]), tmp_path / out)
    one, other = (
        {
            path.relative_to(tmp_path / out).as_posix(): path.read_bytes()
            for path in (tmp_path / out).rglob("*")
            if path.is_file()
        }
        for out in ("a", "b")
    )
    assert one == other


def test_a_build_and_a_plan_live_in_one_folder(spec: SpecFile, tmp_path: Path) -> None:
    out = tmp_path / "out"

    def there() -> set[str]:
        return {p.relative_to(out).as_posix() for p in out.rglob("*") if p.is_file()}

    built = build(set_out(spec), out, pictures=False).files
    planned = write_cut(cut([spec]), out)
    assert there() == {*built, *planned, "manifest.json"}
    assert set(built).isdisjoint(planned)
    build(set_out(spec), out, pictures=False)
    write_cut(cut([spec], asked=Asked(kerf="4")), out)
    assert there() == {*built, *planned, "manifest.json"}


def test_what_the_maker_changed_is_never_overwritten(spec: SpecFile, tmp_path: Path) -> None:
    out = tmp_path / "out"
    write_cut(cut([spec]), out)
    (out / "cut" / "pieces.csv").write_text("mine")
    before = {path: path.read_bytes() for path in out.rglob("*") if path.is_file()}
    with pytest.raises(ProblemsError, match=r"pieces\.csv` is in the way"):
        write_cut(cut([spec], asked=Asked(kerf="4")), out)
    assert {path: path.read_bytes() for path in out.rglob("*") if path.is_file()} == before
