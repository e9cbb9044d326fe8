"""The table of passes: what each needs is true, and all that it needs is said."""

from __future__ import annotations

import inspect
import json
import subprocess
import sys
from collections import Counter
from collections.abc import Iterable
from graphlib import TopologicalSorter
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.specs import setting_from, spec_from
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import Problems, ProblemsError
from rodwright.setout import begin
from rodwright.setout.passes import PASSES, Pass, in_order, run
from rodwright.setout.setting import Setting
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.files import read_spec

SIZE = "size: {width: 900, height: 1200, depth: 400}\n"
BACK = "back: {stock: thin, fixing: rebated}\n"
FRAME = "face_frame: {stock: ash, width: 45, corners: butted, mid_stiles: 45}\n"
COLUMNS = "interior: {columns: [{width: 1 share, %s}, {width: 1 share, %s}]}\n"
SCREWED = "carcass: {stock: ply, corners: screwed}\n"
CORNICE = "cornice: {stock: ash, height: 60, rise: 20}\n"
PIPE = "cutouts: [{kind: pipe, runs: %s, at: [%s], diameter: 22}]\n"

SHOWS: dict[tuple[str, str], str] = {
    ("interior", "carcass"): SIZE + "interior: {shelves: 2}\n",
    ("ends inside", "interior"): SIZE + "interior: {shelves: 2}\n",
    ("back", "interior"): SIZE + "interior: {shelves: 2}\n" + BACK,
    ("face frame", "interior"): SIZE + FRAME + COLUMNS % ("shelves: 1", "shelves: 1"),
    ("lippings", "face frame"): SIZE
    + FRAME
    + "interior: {shelves: 2}\nlipping: {stock: ash, thickness: 8, edges: [shelves]}\n",
    ("play of shelves", "back"): SIZE + BACK + "interior: {shelves: {count: 2, fixed: false}}\n",
    ("play of shelves", "face frame"): SIZE
    + FRAME
    + "interior: {shelves: {count: 2, fixed: false}}\n",
    # A runner on the other side of the divider would hide the screws into a shelf.
    ("drawers", "ends inside"): SIZE
    + SCREWED
    + COLUMNS % ("drawers: {count: 3, slides: {kind: runners}}", "shelves: {at: [389]}"),
    # Butt hinges are let into the lippings of the sides.
    ("doors", "lippings"): SIZE
    + "interior: {doors: {count: 1, hinge: {kind: butt}}}\n"
    + "lipping: {stock: ash, thickness: 18, edges: [sides]}\n",
    # Packers are numbered as they are laid.
    ("doors", "drawers"): SIZE + FRAME + COLUMNS % ("drawers: 3", "doors: {hinges: right}"),
    ("continuous grain", "doors"): SIZE + "interior: {continuous_grain: true, doors: 2}\n",
    # The plinth hides the screws up into the divider.
    ("base", "ends inside"): SIZE
    + SCREWED
    + COLUMNS % ("shelves: 1", "shelves: 2")
    + "base: {kind: plinth, height: 100, spacing: 432}\n",
    # The worktop lies over the screws down into the divider.
    ("worktop", "ends inside"): SIZE
    + SCREWED
    + COLUMNS % ("shelves: 1", "shelves: 2")
    + "worktop: {stock: ash}\n",
    ("cornice", "lippings"): SIZE
    + "interior: {shelves: 1}\nlipping: {stock: ash, thickness: 8, edges: [top]}\n"
    + CORNICE,
    ("cornice", "drawers"): SIZE + "interior: {drawers: 3}\n" + CORNICE,
    ("cornice", "worktop"): SIZE + "worktop: {stock: ash}\n" + CORNICE,
    ("scribes", "cornice"): SIZE
    + CORNICE
    + "scribes: {stock: ash, edges: [left, right], width: 20}\n",
    ("edging", "doors"): SIZE
    + "interior: {doors: 1}\nedging: {material: birch, thickness: 1, edges: [doors]}\n",
    ("cut-outs", "back"): SIZE + BACK + PIPE % ("back", "300, 600"),
    ("cut-outs", "base"): SIZE
    + "base: {kind: levellers, height: 100, board: {}}\n"
    + PIPE % ("upright", "300, 344"),
    ("cut-outs", "doors"): SIZE + "interior: {doors: 1}\n" + PIPE % ("upright", "300, 390"),
    ("cut-outs", "scribes"): SIZE
    + "scribes: {stock: ash, edges: [left, right], width: 20}\n"
    + PIPE % ("across", "390, 600"),
    ("rows of holes", "cut-outs"): SIZE
    + "interior: {shelves: {count: 2, fixed: false}}\n"
    + PIPE % ("across", "45, 600"),
    ("slope", "rows of holes"): SIZE
    + "slope: {falls: front, low: 710, pitch: 45}\n"
    + "interior: {shelves: {at: [150, 300], fixed: false}}\n",
    ("sloping boards", "slope"): SIZE + "slope: {falls: right, low: 700, pitch: 45}\n",
    ("sloping boards", "edging"): SIZE
    + "slope: {falls: right, low: 700, pitch: 45}\n"
    + "edging: {material: birch, thickness: 1, edges: [top]}\n",
}
"""For each need a unit that comes out otherwise where it isn't kept."""


def made(spec: UnitSpec, passes: Iterable[Pass]) -> tuple[Any, ...]:
    """What passes make of a spec, whatever the order in which they lay it down; or what was said
    or raised."""
    problems = Problems(spec.unit)
    setting = begin(spec, problems)
    try:
        run(setting, tuple(passes))
        problems.raise_if_any()
    except ProblemsError as error:
        return ("refused", Counter(error.problems))
    except (RuntimeError, ValueError, AssertionError) as error:
        return ("raised", type(error))
    bench = setting.bench
    return (
        frozenset(bench.finished()),
        *(Counter(each) for each in (bench.joints, bench.clearances, bench.motions)),
        Counter(bench.fixings),
    )


def by_name(name: str) -> Pass:
    """The pass of this name."""
    return next(each for each in PASSES if each.name == name)


def reversed_need(name: str, need: str) -> list[Pass]:
    """The passes with one before what it needs, everything else as the needs have it."""
    after = {each.name: {*each.needs} for each in PASSES}
    after[name].discard(need)
    after[need].add(name)
    order = list(TopologicalSorter(after).static_order())
    return sorted(PASSES, key=lambda each: order.index(each.name))


UNITS = {name: read_spec(model_path(name)).spec for name in model_names()} | {
    " <- ".join(pair): spec_from(text) for pair, text in SHOWS.items()
}
NEEDS = [(each.name, need) for each in PASSES for need in each.needs]


@pytest.mark.parametrize(("name", "need"), NEEDS, ids=lambda each: each.replace(" ", "-"))
def test_a_need_is_real(name: str, need: str) -> None:
    """Where what is needed comes too late, and nothing else is out of order, its unit differs."""
    spec = spec_from(SHOWS[name, need])
    assert made(spec, reversed_need(name, need)) != made(spec, PASSES)


def test_every_unit_shows_a_need() -> None:
    assert sorted(SHOWS) == sorted(NEEDS)


@st.composite
def orders(draw: st.DrawFn) -> list[Pass]:
    """The passes in any order that keeps what they say they need."""
    left, done = list(PASSES), list[Pass]()
    while left:
        ready = [each for each in left if {*each.needs} <= {other.name for other in done}]
        done.append(draw(st.sampled_from(ready)))
        left.remove(done[-1])
    return done


@settings(max_examples=200)
@given(orders(), st.sampled_from([*UNITS]))
def test_all_that_is_needed_is_said(order: list[Pass], name: str) -> None:
    """Every order that keeps the needs makes the same unit."""
    assert made(UNITS[name], order) == made(UNITS[name], PASSES)


def test_the_table_keeps_its_own_order() -> None:
    assert in_order(PASSES) == PASSES


@pytest.mark.parametrize(("name", "need"), NEEDS, ids=lambda each: each.replace(" ", "-"))
def test_a_table_out_of_order_is_refused(name: str, need: str) -> None:
    late = [each for each in PASSES if each.name != need]
    late.insert([each.name for each in late].index(name) + 1, by_name(need))
    with pytest.raises(ValueError, match=f"needs {need}, which doesn't come before it"):
        in_order(tuple(late))


@pytest.mark.parametrize("name", [each.name for each in PASSES])
def test_what_another_pass_needs_cant_be_left_out(name: str) -> None:
    rest = tuple(each for each in PASSES if each.name != name)
    if any(name in each.needs for each in rest):
        with pytest.raises(ValueError, match=f"needs {name}"):
            in_order(rest)


def test_a_pass_that_comes_twice_is_refused() -> None:
    with pytest.raises(ValueError, match="carcass comes twice"):
        in_order((*PASSES, PASSES[0]))


@pytest.mark.parametrize("each", PASSES, ids=lambda each: each.name.replace(" ", "-"))
def test_a_pass_is_a_function_of_a_setting(each: Pass) -> None:
    signature = inspect.signature(each.load(), eval_str=True)
    assert [parameter.annotation for parameter in signature.parameters.values()] == [Setting]
    assert signature.return_annotation is None


def test_only_passes_that_a_unit_has_are_loaded() -> None:
    """In an interpreter of its own, where no other test has loaded any."""
    plain = setting_from(SIZE + "interior: {shelves: 2}\n")
    code = (
        "import json, sys; from rodwright.setout import set_out_unit; "
        "from rodwright.wishes import UnitSpec; "
        "set_out_unit(UnitSpec.model_validate_json(sys.stdin.read())); "
        "print(json.dumps(list(sys.modules)))"
    )
    done = subprocess.run(
        [sys.executable, "-c", code],
        input=plain.spec.model_dump_json(exclude_unset=True),
        capture_output=True,
        text=True,
        check=True,
    )
    run(plain)
    modules = {f"rodwright.setout.{each.step.partition(':')[0]}": each for each in PASSES}
    loaded = {each.name for name, each in modules.items() if name in json.loads(done.stdout)}
    assert loaded == {each.name for each in modules.values() if each.applies(plain)}


def test_the_carcass_is_asked_for_in_vain_before_it_is_laid() -> None:
    with pytest.raises(RuntimeError, match="the carcass isn't laid yet"):
        _ = setting_from(SIZE).carcass
