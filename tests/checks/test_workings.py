"""Workings just inside and just outside their limits."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.panels import panel, unit_of
from kit.specs import of_role, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding, Severity
from rodwright.checks.rules import Rule
from rodwright.checks.workings import workings
from rodwright.unit import (
    Bevel,
    Easing,
    Groove,
    Hole,
    Housing,
    Mitre,
    Part,
    Rebate,
    Role,
    Surface,
    Working,
)


def _found(*parts: Part) -> list[Finding]:
    found = check_parts(unit_of(*parts))
    return [each for each in found if each.severity is not Severity.CAUTION]


def _rules(*parts: Part) -> list[tuple[str, Severity]]:
    return [(finding.rule, finding.severity) for finding in _found(*parts)]


@pytest.mark.parametrize(
    ("working", "rules"),
    [
        (Housing(Surface.FACE, 382.0, 18.0, 6.0), []),
        (Housing(Surface.FACE, 383.0, 18.0, 6.0), [(Rule.OUTSIDE_BLANK, "error")]),
        (Hole(Surface.FACE, (-1.0, 60.0), 5.0, 8.0), [(Rule.OUTSIDE_BLANK, "error")]),
        (Housing(Surface.FACE, 100.0, 18.0, 7.0), []),
        (Housing(Surface.FACE, 100.0, 18.0, 9.0), [(Rule.DEEP_HOUSING, "warning")]),
        (Housing(Surface.FACE, 100.0, 18.0, 9.1), [(Rule.DEEPER_THAN_HALF, "warning")]),
        (Groove(Surface.REVERSE, 50.0, 6.0, 18.0), [(Rule.RIGHT_THROUGH, "error")]),
        (Rebate(Surface.REVERSE, Surface.BACK_EDGE, 6.0, 12.0), []),
        (Rebate(Surface.REVERSE, Surface.BACK_EDGE, 6.0, 18.0), [(Rule.RIGHT_THROUGH, "error")]),
        (Hole(Surface.FACE, (200.0, 5.0), 5.0, 8.0), []),
        (Hole(Surface.FACE, (200.0, 4.0), 5.0, 8.0), [(Rule.HOLE_NEAR_EDGE, "warning")]),
        (Groove(Surface.FACE, 3.0, 6.0, 6.0), []),
        (Groove(Surface.FACE, 2.9, 6.0, 6.0), [(Rule.THIN_TONGUE, "warning")]),
        (Groove(Surface.FACE, 114.0, 6.0, 6.0), []),
        (Housing(Surface.REVERSE, 379.5, 18.0, 6.0), [(Rule.THIN_TONGUE, "warning")]),
        (Housing(Surface.REVERSE, 50.0, 18.0, 6.0, 0.0, 118.0), [(Rule.THIN_TONGUE, "warning")]),
        (Groove(Surface.FACE_EDGE, 2.0, 6.0, 6.0), [(Rule.THIN_TONGUE, "warning")]),
        (Easing(Surface.FACE, Surface.FACE_EDGE, 18.0), []),
        (Easing(Surface.FACE, Surface.FACE_EDGE, 18.1), [(Rule.OUTSIDE_BLANK, "error")]),
        (Hole(Surface.FACE, (200.0, 50.0), 5.0, 18.0), [(Rule.RIGHT_THROUGH, "error")]),
        (Hole(Surface.FACE, (200.0, 50.0), 5.0, 16.5), []),
        (Hole(Surface.FACE, (200.0, 50.0), 5.0, 17.0), [(Rule.NEARLY_THROUGH, "warning")]),
        (Hole(Surface.FACE, (200.0, 50.0), 5.0), []),
    ],
)
def test_one_working(working: Working, rules: list[tuple[str, str]]) -> None:
    assert [(rule, severity.value) for rule, severity in _rules(panel(working))] == rules


@pytest.mark.parametrize(("depth", "found"), [(7.5, 0), (7.6, 1)])
def test_tongue_between_opposite_housings(depth: float, found: int) -> None:
    housings = [Housing(side, 100.0, 18.0, depth) for side in (Surface.FACE, Surface.REVERSE)]
    findings = [each for each in _found(panel(*housings)) if each.rule != Rule.DEEP_HOUSING]
    assert [finding.rule for finding in findings] == [Rule.THIN_TONGUE] * found
    assert [finding.figure for finding in findings] == pytest.approx([18 - 2 * depth] * found)


@pytest.mark.parametrize(("gap", "found"), [(3.0, 0), (2.5, 1), (0.0, 0)])
def test_tongue_between_neighbours(gap: float, found: int) -> None:
    """Housings that share a wall line leave no tongue at all between them."""
    pair = [Housing(Surface.FACE, 100.0, 18.0, 6.0), Housing(Surface.FACE, 118 + gap, 18.0, 6.0)]
    assert len(_found(panel(*pair))) == found


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
    found = [each for each in _found(panel(bevel)) if each.rule is Rule.BEVEL_PAST_SAW]
    assert len(found) == (tilt is not None)
    for each in found:
        assert each.figure == pytest.approx(tilt, abs=0.05)
        assert (each.limit, each.measure) == (45.0, "degrees")
        assert "jig" in each.remedy


def test_bevels_of_one_tilt_are_told_once() -> None:
    bevel = Bevel(Surface.FAR_END, Surface.FACE, 18.0, 20.0)
    steeper = Bevel(Surface.FAR_END, Surface.FACE, 18.0, 22.0)
    parts = [
        panel(bevel),
        replace(panel(bevel), ref="P2", name="Another"),
        replace(panel(steeper), ref="P3"),
    ]
    found = [each for each in _found(*parts) if each.rule is Rule.BEVEL_PAST_SAW]
    assert [each.parts for each in found] == [("P1", "P2"), ("P3",)]
    assert found[0].message.endswith("most stop at 45; likewise P2")


@pytest.mark.parametrize(("length", "found"), [(240.1, 0), (239.9, 1)])
def test_mitres_that_cross(length: float, found: int) -> None:
    mitres = [Mitre(end, 45.0, Surface.FACE_EDGE) for end in (Surface.NEAR_END, Surface.FAR_END)]
    rules = [finding.rule for finding in _found(panel(*mitres, length=length))]
    assert rules == [Rule.MITRES_CROSS] * found


@pytest.mark.parametrize(("length", "found"), [(138.1, 0), (137.9, 1)])
def test_mitre_and_bevel_that_cross(length: float, found: int) -> None:
    """At the corner opposite both long points the two take 120 and 18 mm, both at 45 degrees."""
    mitre = Mitre(Surface.NEAR_END, 45.0, Surface.FACE_EDGE)
    bevel = Mitre(Surface.FAR_END, 45.0, Surface.FACE)
    rules = [finding.rule for finding in _found(panel(mitre, bevel, length=length))]
    assert rules == [Rule.MITRES_CROSS] * found


@pytest.mark.parametrize(("length", "found"), [(120.1, 0), (119.9, 1)])
def test_slanted_ends_that_cross(length: float, found: int) -> None:
    """Parallel ends leave a parallelogram, or nothing that could be weighed."""
    ends = [
        Mitre(Surface.NEAR_END, 45.0, Surface.FACE_EDGE),
        Mitre(Surface.FAR_END, 45.0, Surface.BACK_EDGE),
    ]
    unit = unit_of(panel(*ends, length=length))
    rules = [finding.rule for finding in workings(unit)]
    assert rules == [Rule.MITRES_CROSS] * found


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
    assert [each.rule for each in check_parts(unit) if each.rule is Rule.THIN_TONGUE] == []
    assert check_solids(unit) == ()
    for side in of_role(unit, Role.SIDE):
        for each in side.workings:
            if isinstance(each, Housing):
                front = each.bounds(side.blank.size)
                assert min(front.low[1], side.blank.width - front.high[1]) == 0.0


def test_a_sliver_that_was_asked_for_is_told_with_the_keys_that_help() -> None:
    unit = unit_from(
        "size: {width: 800, height: 1000, depth: 320}\n",
        carcass={"stock": "ply", "corners": "housed"},
        interior={"shelves": {"count": 1, "setback": 2}},
    )
    (found,) = [each for each in check_parts(unit) if each.rule is Rule.THIN_TONGUE]
    assert (found.figure, found.limit) == (2.0, 3.0)
    assert "`setback`" in found.remedy and "`stopped`" in found.remedy
