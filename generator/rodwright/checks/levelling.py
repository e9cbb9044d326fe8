"""Can what the unit stands on follow the floor?  It stands on the floor's high spot."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.fit import carcass_size
from rodwright.checks.wording import length_in
from rodwright.opening.gaps import BATTEN_LIMIT, NEGLIGIBLE, Gap, bent_at, gap_along
from rodwright.unit import Part, Role, Unit

_SOURCE = "the readings, and `base`"


def levelling(unit: Unit) -> Iterator[Finding]:
    """The floor's fall under the unit against what its base can follow, and what is packed."""
    if unit.levelling is None:
        return
    plinth = plinth_boards(unit)
    if unit.opening is None or unit.opening.shape is None:
        if plinth and unit.levelling:
            yield Finding(
                Severity.NOTE,
                "levelling",
                f"the plinth stands on the floor's high spot, and may be packed up to "
                f"{length_in(unit, unit.levelling)} off the low side",
                "Level it first, and fix the carcass to it once it lies true.",
                figure=unit.levelling,
                source="`base.levelling`",
            )
        return
    fall = floor_fall(unit)
    likely, most = (length_in(unit, each) for each in (fall.gap, fall.most))
    if fall.gap > unit.levelling + NEGLIGIBLE:
        yield Finding(
            Severity.WARNING,
            "levelling",
            f"under the unit the floor falls by {likely} from its high spot (up to {most}), and "
            f"its base levels out {length_in(unit, unit.levelling)}",
            "Give the base more (`base.levelling`, or feet with a larger range), or make the "
            "plinth higher and scribe it to the floor.",
            figure=round(fall.gap, 1),
            limit=unit.levelling,
            source=_SOURCE,
        )
    elif plinth and fall.gap > NEGLIGIBLE:
        yield Finding(
            Severity.NOTE,
            "levelling",
            f"the plinth stands on the floor's high spot and is packed up by {likely} (up to "
            f"{most}) {_where(unit, fall)}, of the {length_in(unit, unit.levelling)} allowed",
            "Level it first, and fix the carcass to it once it lies true; a strip in front covers "
            "the gap under it."
            + (" Pack it on a batten, not on packers alone." if fall.gap > BATTEN_LIMIT else ""),
            figure=round(fall.gap, 1),
            limit=unit.levelling,
            source=_SOURCE,
        )


def plinth_boards(unit: Unit) -> list[Part]:
    """The boards of a plinth that the carcass stands on: none of a toe board or of a board
    clipped to feet."""
    boards = [part for part in unit.parts if part.role is Role.PLINTH]
    return boards if len(boards) > 1 else []


def floor_fall(unit: Unit) -> Gap:
    """The widest gap under what the unit stands on, in whatever plane: how far (mm) the floor
    falls away from its high spot.

    Raises:
        ValueError: the unit has no opening with a shape.
    """
    if unit.opening is None or unit.opening.shape is None:
        raise ValueError("nothing is known of the floor")
    shape, size = unit.opening.shape, carcass_size(unit)
    legs = [part for part in unit.parts if part.role is Role.LEG]
    stands = [part.bounds() for part in plinth_boards(unit) or legs]
    low = min((box.low[0] for box in stands), default=0.0)
    high = max((box.high[0] for box in stands), default=size[0])
    return max(
        (
            gap
            for name, plane in shape.planes.items()
            for gap in gap_along(name, shape, size, "bottom", bent_at(plane, "bottom", low, high))
        ),
        key=lambda gap: gap.gap,
    )


def _where(unit: Unit, gap: Gap) -> str:
    third = carcass_size(unit)[0] / 3
    if gap.at < third:
        return "at the left"
    return "at the right" if gap.at > 2 * third else "in the middle"
