"""Each arithmetic check just inside and just outside its limit."""

from __future__ import annotations

import subprocess
import sys
from dataclasses import replace

import pytest

import rodwright
from kit.samples import ASH, PLYWOOD, X, Y, Z, bookcase
from kit.specs import of_role, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.workings import workings
from rodwright.geometry import Box
from rodwright.jobs.new import model_names, model_path
from rodwright.unit import (
    Bevel,
    Blank,
    Easing,
    Grain,
    Groove,
    Hole,
    Housing,
    Joint,
    JointKind,
    Mitre,
    Opening,
    Part,
    Piece,
    Placement,
    Rebate,
    Role,
    Stock,
    Surface,
    Unit,
    Working,
)

CAUTIONS = {"dust", "walls", "lifting", "tipping", "fitting gap"}


def _panel(*workings: Working, length: float = 400.0, width: float = 120.0) -> Part:
    blank = Blank(length, width, 18.0, PLYWOOD, Grain.LENGTHWISE)
    return Part(
        "P1", "Panel", Role.SHELF, "Test", blank, Placement((0.0, 0.0, 0.0), X, Y), workings
    )


def _check(*parts: Part, **more: object) -> list[Finding]:
    unit = Unit("Test", Box((0, 0, 0), (10, 10, 10)), parts, **more)  # type: ignore[arg-type]
    return [finding for finding in check_parts(unit) if finding.rule not in CAUTIONS]


def _rules(*parts: Part) -> list[tuple[str, Severity]]:
    return [(finding.rule, finding.severity) for finding in _check(*parts)]


@pytest.mark.parametrize(
    ("working", "rules"),
    [
        (Housing(Surface.FACE, 382.0, 18.0, 6.0), []),
        (Housing(Surface.FACE, 383.0, 18.0, 6.0), [("working outside the blank", "error")]),
        (Hole(Surface.FACE, (-1.0, 60.0), 5.0, 8.0), [("working outside the blank", "error")]),
        (Housing(Surface.FACE, 100.0, 18.0, 7.0), []),
        (Housing(Surface.FACE, 100.0, 18.0, 9.0), [("deep housing", "warning")]),
        (Housing(Surface.FACE, 100.0, 18.0, 9.1), [("depth", "warning")]),
        (Groove(Surface.REVERSE, 50.0, 6.0, 18.0), [("depth", "error")]),
        (Rebate(Surface.REVERSE, Surface.BACK_EDGE, 6.0, 12.0), []),
        (Rebate(Surface.REVERSE, Surface.BACK_EDGE, 6.0, 18.0), [("depth", "error")]),
        (Hole(Surface.FACE, (200.0, 5.0), 5.0, 8.0), []),
        (Hole(Surface.FACE, (200.0, 4.0), 5.0, 8.0), [("hole near an edge", "warning")]),
        (Groove(Surface.FACE, 3.0, 6.0, 6.0), []),
        (Groove(Surface.FACE, 2.9, 6.0, 6.0), [("thin tongue", "warning")]),
        (Groove(Surface.FACE, 114.0, 6.0, 6.0), []),
        (Housing(Surface.REVERSE, 379.5, 18.0, 6.0), [("thin tongue", "warning")]),
        (Housing(Surface.REVERSE, 50.0, 18.0, 6.0, 0.0, 118.0), [("thin tongue", "warning")]),
        (Groove(Surface.FACE_EDGE, 2.0, 6.0, 6.0), [("thin tongue", "warning")]),
        (Easing(Surface.FACE, Surface.FACE_EDGE, 18.0), []),
        (Easing(Surface.FACE, Surface.FACE_EDGE, 18.1), [("working outside the blank", "error")]),
        (Hole(Surface.FACE, (200.0, 50.0), 5.0, 18.0), [("depth", "error")]),
        (Hole(Surface.FACE, (200.0, 50.0), 5.0, 16.5), []),
        (Hole(Surface.FACE, (200.0, 50.0), 5.0, 17.0), [("hole nearly through", "warning")]),
        (Hole(Surface.FACE, (200.0, 50.0), 5.0), []),
    ],
)
def test_one_working(working: Working, rules: list[tuple[str, str]]) -> None:
    assert [(rule, severity.value) for rule, severity in _rules(_panel(working))] == rules


@pytest.mark.parametrize(("depth", "found"), [(7.5, 0), (7.6, 1)])
def test_tongue_between_opposite_housings(depth: float, found: int) -> None:
    housings = [Housing(side, 100.0, 18.0, depth) for side in (Surface.FACE, Surface.REVERSE)]
    findings = [each for each in _check(_panel(*housings)) if each.rule != "deep housing"]
    assert [finding.rule for finding in findings] == ["thin tongue"] * found
    assert [finding.figure for finding in findings] == pytest.approx([18 - 2 * depth] * found)


@pytest.mark.parametrize(("gap", "found"), [(3.0, 0), (2.5, 1), (0.0, 0)])
def test_tongue_between_neighbours(gap: float, found: int) -> None:
    """Housings that share a wall line leave no tongue at all between them."""
    pair = [Housing(Surface.FACE, 100.0, 18.0, 6.0), Housing(Surface.FACE, 118 + gap, 18.0, 6.0)]
    assert len(_check(_panel(*pair))) == found


@pytest.mark.parametrize(
    ("bevel", "tilt"),
    [
        (Bevel(Surface.FACE, Surface.FAR_END, 18.0, 18.1), None),
        (Bevel(Surface.FACE, Surface.FAR_END, 18.1, 18.0), 45.2),
        (Bevel(Surface.FAR_END, Surface.FACE, 18.1, 18.0), None),
        (Bevel(Surface.FAR_END, Surface.FACE, 18.0, 20.0), 48.0),
        (Bevel(Surface.REVERSE, Surface.BACK_EDGE, 20.0, 18.0), 48.0),
        # Seen on the face: a mitre gauge or a guide, and the saw square.
        (Bevel(Surface.BACK_EDGE, Surface.FAR_END, 90.0, 60.0), None),
    ],
)
def test_bevels_that_a_saw_cannot_tilt_to(bevel: Bevel, tilt: float | None) -> None:
    """atan(20 / 18) = 48.0 degrees from square; most saws stop at 45."""
    found = [each for each in _check(_panel(bevel)) if each.rule == "bevel past the saw"]
    assert len(found) == (tilt is not None)
    for each in found:
        assert each.figure == pytest.approx(tilt, abs=0.05)
        assert (each.limit, each.measure) == (45.0, "degrees")
        assert "jig" in each.remedy


def test_bevels_of_one_tilt_are_told_once() -> None:
    bevel = Bevel(Surface.FAR_END, Surface.FACE, 18.0, 20.0)
    steeper = Bevel(Surface.FAR_END, Surface.FACE, 18.0, 22.0)
    parts = [_panel(bevel), replace(_panel(bevel), ref="P2", name="Another"),
             replace(_panel(steeper), ref="P3")]  # fmt: skip
    found = [each for each in _check(*parts) if each.rule == "bevel past the saw"]
    assert [each.parts for each in found] == [("P1", "P2"), ("P3",)]
    assert found[0].message.endswith("most stop at 45; likewise P2")


@pytest.mark.parametrize(("length", "found"), [(240.1, 0), (239.9, 1)])
def test_mitres_that_cross(length: float, found: int) -> None:
    mitres = [Mitre(end, 45.0, Surface.FACE_EDGE) for end in (Surface.NEAR_END, Surface.FAR_END)]
    rules = [finding.rule for finding in _check(_panel(*mitres, length=length))]
    assert rules == ["mitres cross"] * found


@pytest.mark.parametrize(("length", "found"), [(138.1, 0), (137.9, 1)])
def test_mitre_and_bevel_that_cross(length: float, found: int) -> None:
    """At the corner opposite both long points the two take 120 and 18 mm, both at 45 degrees."""
    mitre = Mitre(Surface.NEAR_END, 45.0, Surface.FACE_EDGE)
    bevel = Mitre(Surface.FAR_END, 45.0, Surface.FACE)
    rules = [finding.rule for finding in _check(_panel(mitre, bevel, length=length))]
    assert rules == ["mitres cross"] * found


@pytest.mark.parametrize(("length", "found"), [(120.1, 0), (119.9, 1)])
def test_slanted_ends_that_cross(length: float, found: int) -> None:
    """Parallel ends leave a parallelogram, or nothing that could be weighed."""
    ends = [
        Mitre(Surface.NEAR_END, 45.0, Surface.FACE_EDGE),
        Mitre(Surface.FAR_END, 45.0, Surface.BACK_EDGE),
    ]
    unit = Unit("Test", Box((0, 0, 0), (10, 10, 10)), (_panel(*ends, length=length),))
    rules = [finding.rule for finding in workings(unit)]
    assert rules == ["mitres cross"] * found


@pytest.mark.parametrize(("thickness", "found"), [(18, 0), (18.5, 1), (19, 1), (22, 1)])
def test_lipping_against_an_eased_frame(thickness: float, found: int) -> None:
    """Common practice, no source: thinner than the frame by the easing, or a gap shows."""
    unit = unit_from(
        "size: {width: 800, height: 1000, depth: 300}\n",
        interior={"shelves": {"count": 2}},
        face_frame={"stock": "ash", "width": 45, "thickness": 22, "eased": 4},
        lipping={"stock": "ash", "thickness": thickness},
    )
    rule = "lipping meets an eased edge"
    findings = [finding for finding in check_parts(unit) if finding.rule == rule]
    assert {finding.figure for finding in findings} == ({thickness - 18.0} if found else set())
    assert all("LP1" in finding.parts and "LP2" in finding.parts for finding in findings)


@pytest.mark.parametrize("kind", [JointKind.BUTT, JointKind.EDGE_GLUED])
@pytest.mark.parametrize(
    ("edge", "reach", "found"),
    [
        (Surface.FACE_EDGE, 4.5, 1),  # the left stile's inner edge, beside the strip
        (Surface.FACE_EDGE, 4.0, 0),
        (Surface.BACK_EDGE, 4.5, 0),  # its outer edge
    ],
)
def test_only_the_easing_beside_the_lipping_counts(
    kind: JointKind, edge: Surface, reach: float, found: int
) -> None:
    (stile,) = (part for part in bookcase().parts if part.ref == "ST1")
    stile = replace(stile, workings=(Easing(Surface.FACE, edge, reach),))
    blank = Blank(600.0, 18.0, 18.0, ASH, Grain.LENGTHWISE)
    strip = Part(
        "LP1", "Lipping", Role.LIPPING, "Lippings", blank, Placement((45.0, 0.0, 482.0), X, Z)
    )
    for pair in (("ST1", "LP1"), ("LP1", "ST1")):
        joints = (Joint(kind, *pair, (45.0, -9.0, 491.0)),)
        findings = _check(stile, strip, joints=joints)
        assert [finding.figure for finding in findings] == [reach - 4.0] * found


def _of(stock: Stock, length: float, width: float, thickness: float) -> Part:
    blank = Blank(length, width, thickness, stock, stock.grain)
    return replace(_panel(), blank=blank)


BOARD = replace(ASH, pieces=(Piece(2000.0, 100.0, 1), Piece(1500.0, 150.0, 2)))
CROSS = replace(PLYWOOD, grain=Grain.CROSSWISE)
PLAIN = replace(PLYWOOD, grain=Grain.NONE)


@pytest.mark.parametrize(
    ("part", "rules"),
    [
        (_of(PLYWOOD, 2440.0, 1220.0, 18.0), []),
        (_of(PLYWOOD, 2441.0, 300.0, 18.0), ["larger than its sheet"]),
        (_of(PLYWOOD, 300.0, 1221.0, 18.0), ["larger than its sheet"]),
        (_of(PLAIN, 300.0, 1300.0, 18.0), []),
        (_of(CROSS, 1300.0, 300.0, 18.0), ["larger than its sheet"]),
        (_of(CROSS, 300.0, 2400.0, 18.0), []),
        (_of(PLYWOOD, 300.0, 300.0, 17.0), ["thickness of the stock"]),
        (_of(BOARD, 2000.0, 150.0, 22.0), []),
        (_of(BOARD, 2001.0, 50.0, 22.0), ["longer than every board"]),
        (_of(BOARD, 1000.0, 151.0, 22.0), ["wider than every board"]),
        (_of(BOARD, 1000.0, 50.0, 23.0), ["thickness of the stock"]),
        (_of(BOARD, 1000.0, 18.0, 40.0), []),  # a strip ripped off and turned on its side
    ],
)
def test_stock(part: Part, rules: list[str]) -> None:
    assert [finding.rule for finding in _check(part)] == rules


@pytest.mark.parametrize(
    ("width", "rule"),
    [
        (1000.1, "larger than the opening"),
        (994.5, "fitting gap"),
        (993.0, None),
        (990.0, "fitting gap"),
    ],
)
def test_fit(width: float, rule: str | None) -> None:
    """Common practice, no source: an opening is underfilled by 6-8 mm."""
    unit = Unit(
        "Test", Box((0, 0, 0), (width, 300, 1993)), (_panel(),), opening=Opening(1000, 2000, 300)
    )
    rules = ("larger than the opening", "fitting gap")
    found = [finding.rule for finding in check_parts(unit) if finding.rule in rules]
    assert found == ([rule] if rule else [])


def test_cautions() -> None:
    heavy = _panel(length=2400.0, width=1000.0)
    wide = Unit("Test", Box((0, 0, 0), (1000, 300, 601)), (heavy,))
    rules = [(finding.rule, finding.severity.value) for finding in check_parts(wide)]
    assert rules == [("tipping", "warning"), ("lifting", "caution"), ("lifting", "caution"),
                     ("dust", "caution")]  # fmt: skip
    low = Unit("Test", Box((0, 0, 0), (1000, 300, 600)), (_panel(),))
    assert [finding.rule for finding in check_parts(low)] == ["dust"]


def test_heavy_parts_are_one_caution() -> None:
    heavy = [_panel(length=2400.0, width=1000.0), _panel(length=2400.0, width=900.0)]
    heavy[1] = replace(heavy[1], ref="P2")
    unit = Unit("Test", Box((0, 0, 0), (1000, 300, 500)), tuple(heavy))
    first, whole = (each for each in check_parts(unit) if each.rule == "lifting")
    assert first.parts == ("P1", "P2")
    assert first.figure == pytest.approx(2.4 * 1.0 * 0.018 * 680.0)
    assert "P1" in first.brief and "1 more" in first.brief
    assert whole.figure == pytest.approx(2.4 * 1.9 * 0.018 * 680.0)


def test_every_caution_has_a_short_line_of_its_own() -> None:
    """The longest line still goes on a terminal of 80 columns."""
    for name in model_names():
        found = check_parts(rodwright.set_out(rodwright.read_spec(model_path(name))))
        briefs = [each.brief for each in found if each.severity is Severity.CAUTION]
        assert briefs
        assert len(set(briefs)) == len(briefs)
        assert all(0 < len(brief) <= 78 for brief in briefs)
        assert not any(each.brief for each in found if each.severity is not Severity.CAUTION)


def test_the_same_is_said_once() -> None:
    working = Housing(Surface.FACE, 100.0, 18.0, 10.0)
    pair = [_panel(working), replace(_panel(working), ref="P2")]
    (finding,) = _check(*pair)
    assert finding.parts == ("P1", "P2")
    assert finding.message.endswith("more than half of 18 mm; likewise P2")


def test_the_same_of_two_doors_is_said_once() -> None:
    """A pair 2 mm over the floor: one finding that names both, each once."""
    text = "size: {width: 800, height: 900, depth: 300}\n"
    doors = {"count": 2, "hung": "overlay"}
    unit = unit_from(text, interior={"doors": doors})
    found = [each for each in check_parts(unit) if "over the floor" in each.rule]
    assert len(found) == 1
    assert found[0].parts == ("DO1", "DO2")
    assert found[0].message.count("DO1") == found[0].message.count("DO2") == 1


@pytest.mark.parametrize("front", ["doors", "drawers"])
def test_what_hangs_on_the_wall_has_no_floor_under_its_fronts(front: str) -> None:
    text = "size: {width: 500, height: 600, depth: 300}\n"
    wish = {"hung": "overlay"} | (
        {"count": 2, "bottom": {"stock": "thin"}} if front == "drawers" else {}
    )
    for hung in (False, True):
        unit = unit_from(text, hung=hung, interior={front: wish})
        assert any("over the floor" in each.rule for each in check_parts(unit)) != hung


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
            "stock": "maple", "width": 1.5, "corners": "butted", "overhang": {"sides": 0.5},
        },
    )  # fmt: skip
    found = [each for each in check_parts(unit) if "across its grain" in each.message]
    assert [each.parts[0] for each in found] == ["RL1"]
    assert found[0].message.endswith("; likewise ST2")


def test_what_is_said_of_the_unit_names_no_parts_beside() -> None:
    text = "size: {width: 800, height: 900, depth: 300}\n"
    unit = unit_from(text, carcass={"stock": "ply"}, interior={"shelves": {"count": 1}})
    (found,) = [each for each in check_parts(unit) if each.rule == "open back"]
    assert found.parts == ("SD1", "SD2")
    assert "likewise" not in found.message


def test_checks_on_parts_load_no_geometry_library() -> None:
    code = (
        "import sys, rodwright.checks; "
        "print([m for m in ('trimesh', 'cadquery', 'scipy', 'vtkmodules') if m in sys.modules])"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "[]"


@pytest.mark.parametrize("joint", ["housed", "tongued"])
@pytest.mark.parametrize(("thick", "width"), [(22, 40), (22, 60), (20, 40)])
def test_the_air_behind_an_inset_door_leaves_no_sliver(
    joint: str, thick: float, width: float
) -> None:
    """Contents stand 2 mm back from the rear of a door that is flush with the frame: their
    channels run out behind the frame."""
    unit = unit_from(
        "size: {width: 800, height: 1000, depth: 320}\n",
        stock={
            "ply": {"kind": "sheet", "material": "birch plywood", "thickness": 18},
            "oak": {"kind": "board", "material": "oak", "thickness": thick},
        },
        carcass={"stock": "ply", "corners": joint},
        face_frame={"stock": "oak", "width": width, "mid_rails": 40, "corners": "butted"},
        interior={
            "rows": [
                {"height": "1 share", "shelves": 1},
                {"height": "1 share", "shelves": 1, "doors": {"stock": "oak", "hung": "inset"}},
            ]
        },
    )
    assert [each.rule for each in check_parts(unit) if each.rule == "thin tongue"] == []
    assert check_solids(unit) == ()
    for side in of_role(unit, Role.SIDE):
        for each in side.workings:
            if isinstance(each, Housing):
                front = each.removal(side.blank.size)
                assert min(front.low[1], side.blank.width - front.high[1]) == 0.0


def test_a_sliver_that_was_asked_for_is_told_with_the_keys_that_help() -> None:
    unit = unit_from(
        "size: {width: 800, height: 1000, depth: 320}\n",
        carcass={"stock": "ply", "corners": "housed"},
        interior={"shelves": {"count": 1, "setback": 2}},
    )
    (found,) = [each for each in check_parts(unit) if each.rule == "thin tongue"]
    assert (found.figure, found.limit) == (2.0, 3.0)
    assert "`setback`" in found.remedy and "`stopped`" in found.remedy
