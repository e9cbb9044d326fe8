"""Does anything hold a door shut?"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import what_opens
from rodwright.checks.rules import Rule
from rodwright.trade.hinges import BUTT
from rodwright.unit import JointKind, Swing, Unit


def catches(unit: Unit) -> Iterator[Finding]:
    """Notes on doors hung on butts: they have no spring, as cup hinges do, and no catch is
    listed."""
    hung = {
        ref
        for joint in unit.joints
        if joint.kind is JointKind.HINGED
        and any(fixing.name.startswith(BUTT) for fixing in joint.fixings)
        for ref in (joint.first, joint.second)
    }
    for swing in unit.motions:
        if isinstance(swing, Swing) and hung.intersection(swing.refs):
            yield Finding(
                Severity.NOTE,
                Rule.NO_CATCH,
                f"nothing holds {what_opens(unit, swing)} shut",
                "Fit a catch (magnet, ball or roller) or a bolt: butt hinges have no spring, and "
                "none is on the list.",
                swing.refs[:1],
                measure="",
            )
