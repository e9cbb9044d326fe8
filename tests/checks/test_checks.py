"""All checks together: what is told once, and what is loaded for it."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace
from inspect import getsource

import rodwright
from kit.panels import panel, unit_of
from kit.specs import unit_from
from rodwright.checks import BY_STRENGTH, CHECKS, check_parts, check_strength
from rodwright.checks.findings import Severity
from rodwright.checks.rules import Rule
from rodwright.jobs.new import model_names, model_path
from rodwright.unit import Housing, Surface


def test_every_caution_has_a_short_line_of_its_own() -> None:
    """The longest line still goes on a terminal of 80 columns."""
    for name in model_names():
        found = check_parts(rodwright.set_out(rodwright.read_spec(model_path(name))))
        briefs = [each.brief for each in found if each.severity is Severity.CAUTION]
        assert briefs
        assert len(set(briefs)) == len(briefs)
        assert all(0 < len(brief) <= 78 for brief in briefs)
        assert {each.brief for each in found if each.severity is not Severity.CAUTION} <= {""}


def test_the_same_is_said_once() -> None:
    working = Housing(Surface.FACE, 100.0, 18.0, 10.0)
    pair = [panel(working), replace(panel(working), ref="P2")]
    (finding,) = (
        each for each in check_parts(unit_of(*pair)) if each.rule is Rule.DEEPER_THAN_HALF
    )
    assert finding.parts == ("P1", "P2")
    assert finding.message.endswith("more than half of 18 mm; likewise P2")


def test_the_same_of_two_doors_is_said_once() -> None:
    """A pair 2 mm over the floor: one finding that names both, each once."""
    text = "size: {width: 800, height: 900, depth: 300}\n"
    doors = {"count": 2, "hung": "overlay"}
    unit = unit_from(text, interior={"doors": doors})
    found = [each for each in check_parts(unit) if each.rule is Rule.NEAR_FLOOR]
    assert len(found) == 1
    assert found[0].parts == ("DO1", "DO2")
    assert found[0].message.count("DO1") == found[0].message.count("DO2") == 1


def test_a_wide_rail_held_by_both_stiles_is_told_once() -> None:
    """127 of maple between stiles: what moves is the same at either, but for rounding."""
    unit = unit_from(
        "unit: in\n"
        "opening:\n  width: {bottom: 48, middle: 47 7/8, top: 48 1/8}\n"
        "  height: {left: 84, middle: 84, right: 83 1/4}\n  depth: 16\n"
        "  level: {floor: {out: 3/4, over: 48, rises: right},"
        " top: {out: 0, over: 48, rises: right}}\n"
        "  plumb: {left: {out: 0, over: 72, leans: in}, right: {out: 0, over: 72, leans: in}}\n"
        "fit: {overlap: 1/4}\n"
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 23/32, size: [96, 48]}\n"
        "  maple: {kind: board, material: maple, thickness: 3/4}\n",
        carcass={"stock": "ply", "bottom_height": 5},
        face_frame={
            "stock": "maple",
            "width": 1.5,
            "corners": "butted",
            "overhang": {"sides": 0.5},
        },
    )
    found = [each for each in check_parts(unit) if each.rule is Rule.HELD_ACROSS_GRAIN]
    assert [each.parts[0] for each in found] == ["RL1"]
    assert found[0].message.endswith("; likewise ST2")


def test_what_is_said_of_the_unit_names_no_parts_beside() -> None:
    text = "size: {width: 800, height: 900, depth: 300}\n"
    unit = unit_from(text, carcass={"stock": "ply"}, interior={"shelves": {"count": 1}})
    (found,) = [each for each in check_parts(unit) if each.rule is Rule.NOTHING_BRACES_IT]
    assert found.parts == ("SD1", "SD2")
    assert "likewise" not in found.message


def test_checks_on_parts_load_no_geometry_library() -> None:
    code = (
        "import sys, rodwright.checks; "
        "print([m for m in ('trimesh', 'cadquery', 'scipy', 'vtkmodules') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


def test_those_that_go_by_strength_are_known_as_such() -> None:
    """All whose modules import results of strength, and no others."""
    importing = [
        check
        for check in CHECKS
        if "from rodwright.strength" in getsource(sys.modules[check.__module__])
    ]
    assert set(BY_STRENGTH) == set(importing)


def test_what_is_found_of_strength_is_among_what_is_found() -> None:
    unit = unit_from("size: {width: 900, height: 2000, depth: 300}\ninterior: {shelves: 4}\n")
    found = check_strength(unit)
    assert {each.rule for each in found} <= {each.rule for each in check_parts(unit)}
    assert found
