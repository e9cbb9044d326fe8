"""Lippings against a face frame with an eased edge, just inside and just outside."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.panels import unit_of
from kit.samples import ASH, X, Z, bookcase
from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.lipping import lippings
from rodwright.checks.rules import Rule
from rodwright.unit import Blank, Easing, Grain, Joint, JointKind, Part, Placement, Role, Surface


@pytest.mark.parametrize(("thickness", "found"), [(18, 0), (18.5, 1), (19, 1), (22, 1)])
def test_lipping_against_an_eased_frame(thickness: float, found: int) -> None:
    """Common practice, no source: thinner than the frame by the easing, or a gap shows."""
    unit = unit_from(
        "size: {width: 800, height: 1000, depth: 300}\n",
        interior={"shelves": {"count": 2}},
        face_frame={"stock": "ash", "width": 45, "thickness": 22, "eased": 4},
        lipping={"stock": "ash", "thickness": thickness},
    )
    rule = Rule.LIPPING_AT_EASED_EDGE
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
        findings = list(lippings(unit_of(stile, strip, joints=joints)))
        assert [finding.figure for finding in findings] == [reach - 4.0] * found
