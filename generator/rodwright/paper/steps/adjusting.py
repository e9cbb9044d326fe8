"""What is said of frames, doors, drawers and gaps on site; common practice, no source, but for what
the survey knows."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.opening.closings import closing_text
from rodwright.opening.sheet import FitSheet, SurveySheet
from rodwright.paper.steps.words import length_said
from rodwright.unit import JointKind, Unit


def frame_lines(survey: SurveySheet | None, count: int) -> Iterator[str]:
    """How a face frame is fitted: in one piece, or member by member."""
    frame = survey.fit.frame if survey is not None and survey.fit is not None else None
    if count > 1 and frame is not None:
        yield from frame.order
    elif count > 1:
        yield "Short rails first; then the long stiles, bowed slightly and sprung in."
    else:
        yield (
            "Try it dry: even at both sides, its inner edges flush or even with the carcass's. "
            "Scribe and plane what touches a wall; then glue, clamp or tape until the glue sets."
        )


def door_lines(unit: Unit) -> Iterator[str]:
    """How doors are hung and adjusted."""
    hinges = {
        fixing.name
        for joint in unit.joints
        if joint.kind is JointKind.HINGED
        for fixing in joint.fixings
    }
    if any("concealed" in name for name in hinges):
        yield (
            "Click or screw the hinges on, top one first; one person holds the door. Then set "
            "height, then sideways until the gaps are even, then depth so that it closes without "
            "touching."
        )
    else:
        yield (
            "One screw in each hinge, try the door, then the others. If it binds on the hinge side "
            "pack the hinge with card; if it gapes there let the leaf in a shaving deeper."
        )
    yield "Hang doors when the unit stands level and fixed: one that leans makes all gaps crooked."


def drawer_lines() -> Iterator[str]:
    """How drawers are put in and adjusted."""
    yield (
        "Only when the unit is fixed. Slide each in, and see that it runs to both ends and doesn't "
        "rub; wax wooden runners. Then set the fronts: lowest first, even gaps, screw tight. One "
        "drawer open at a time."
    )


def closing_lines(unit: Unit, fit: FitSheet | None) -> Iterator[str]:
    """What closes the gaps at the walls and the top."""
    if fit is not None:
        for each in fit.closings:
            said = closing_text(each, lambda mm: length_said(mm, unit.display_unit))
            yield f"{each.side.capitalize()}: {said}."
    if unit.opening is not None:
        yield (
            "Caulk last, when all is fixed: tape both sides, a thin bead, smooth it wet, tape off "
            "at once. It shrinks; paint it when it is dry."
        )


def last_lines(unit: Unit) -> Iterator[str]:
    """What is tried and told before the work is handed over."""
    if unit.motions:
        yield "Open every door and drawer, all the way, one after the other: nothing rubs or slams."
    if any(joint.kind is JointKind.RESTING for joint in unit.joints):
        yield "Every loose shelf lies on all its pins, and each pin is home."
    yield "Push and pull at its top: it doesn't move off the wall. Touch up edges and screw heads."
    yield (
        "Tell who lives with it what the shelves may carry, that heavy things go at the bottom, "
        "and that nobody climbs it."
    )
