"""What there is to say of each part beside its size."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence

from rodwright.amounts import format_weight
from rodwright.handover.lists import PartsRow, parts_list
from rodwright.handover.told_tables import edges_said
from rodwright.page import document as page
from rodwright.paper.steps.joint_words import joints_said
from rodwright.unit import Joint, JointKind, Unit


def details_of(unit: Unit, places: Mapping[str, page.Place]) -> dict[str, page.Detail]:
    """Each part's material, weight, finish, workings, joints and place in the spec, by its ref."""
    joined = _joints_by_part(unit)
    found = {
        ref: _detail(unit, row, ref, joined.get(ref, ()), places.get(ref))
        for row in parts_list(unit)
        for ref in row.refs
    }
    return {part.ref: found[part.ref] for part in unit.parts}


def _detail(
    unit: Unit, row: PartsRow, ref: str, joints: Sequence[Joint], place: page.Place | None
) -> page.Detail:
    return page.Detail(
        row.material,
        format_weight(row.weight_each, unit.display_unit, 2),
        row.finish,
        edges_said(row),
        row.set_up if row.workings else row.notes,
        row.workings,
        tuple(_joined(ref, joints)),
        place,
    )


def _joints_by_part(unit: Unit) -> dict[str, list[Joint]]:
    found: dict[str, list[Joint]] = {}
    for joint in unit.joints:
        for ref in dict.fromkeys((joint.first, joint.second)):
            found.setdefault(ref, []).append(joint)
    return found


def _joined(ref: str, joints: Sequence[Joint]) -> Iterator[page.Joined]:
    """What a part is joined to, each other part once, and what holds it there."""
    others: dict[str, list[Joint]] = {}
    for joint in joints:
        other = joint.second if joint.first == ref else joint.first
        others.setdefault(other, []).append(joint)
    # What merely touches it comes last.
    for other, between in sorted(others.items(), key=lambda each: _only_touches(each[1])):
        yield page.Joined(other, ", ".join([*joints_said(between, [ref]), *_held_by(between)]))


def _only_touches(joints: Sequence[Joint]) -> bool:
    return all(each.kind is JointKind.BUTT and not each.fixings for each in joints)


def _held_by(joints: Sequence[Joint]) -> Iterator[str]:
    """Fixings counted: `4 x screw, 4 x 50`."""
    counts: dict[tuple[str, str], int] = {}
    for joint in joints:
        for each in joint.fixings:
            kind = (each.name, each.size)
            counts[kind] = counts.get(kind, 0) + each.count
    for (name, size), count in counts.items():
        yield " ".join(filter(None, (f"{count} x {name}" if count > 1 else name, size)))
