"""Does the unit go into its opening, does it leave the usual gaps, and what closes them?"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from rodwright.checks.findings import Finding, Severity
from rodwright.checks.phrases import length_in, named
from rodwright.checks.rules import Rule
from rodwright.geometry import TOUCH
from rodwright.lengths import at_least
from rodwright.opening.cautions import OLD_MATERIALS, STRUCTURE
from rodwright.opening.closings import Closing, closings_round, strip_text
from rodwright.opening.slips import SMALL_OPENING, other_unit
from rodwright.trade.gaps import CAULK_LIMIT, USUAL_GAP, WIDEST_STRIP
from rodwright.unit import OpeningShape, Part, Role, Unit
from rodwright.unit.facts import carcass_size, frame_reach, scribes, size_going_in

_SURVEY = "the readings with their assumed errors"
_MEANT = {"width": 2 * WIDEST_STRIP, "height": WIDEST_STRIP}
"""A unit that leaves more of its opening than strips close was made smaller on purpose."""
_PLACES = {
    "left": "at the left wall",
    "right": "at the right wall",
    "top": "over the top",
    "slope": "along the slope",
}


def fit(unit: Unit) -> Iterator[Finding]:
    """The unit's overall sizes against its opening, and its gaps against what closes them."""
    if unit.opening is None:
        return
    yield from _small(unit)
    yield from _sizes(unit)
    if unit.opening.shape is not None:
        yield from _worst_case(unit, unit.opening.shape)
        yield from _gaps(unit, unit.opening.shape)
    for rule, caution in (
        (Rule.LOAD_BEARING_WALL, STRUCTURE),
        (Rule.LEAD_AND_ASBESTOS, OLD_MATERIALS),
    ):
        yield Finding(
            Severity.CAUTION,
            rule,
            caution.danger,
            caution.remedy,
            measure="",
            brief=caution.brief,
        )


def _small(unit: Unit) -> Iterator[Finding]:
    assert unit.opening is not None
    read = unit.opening.readings or unit.opening
    for what, least in SMALL_OPENING.items():
        size = getattr(read, what)
        if size is not None and size < least:
            yield Finding(
                Severity.WARNING,
                Rule.SMALL_OPENING,
                f"the opening's {what} of {length_in(unit, size)} is very small",
                other_unit(length_in(unit, size), unit.display_unit),
                figure=size,
                limit=least,
            )


def _sizes(unit: Unit) -> Iterator[Finding]:
    assert unit.opening is not None
    width, height, depth = size_going_in(unit)
    for what, size, opening in (
        ("width", width, unit.opening.width),
        ("height", height, unit.opening.height),
        ("depth", depth, unit.opening.depth),
    ):
        if opening is None:
            continue
        gap = opening - size
        if gap < -TOUCH:
            yield Finding(
                Severity.ERROR,
                Rule.LARGER_THAN_OPENING,
                f"the unit's {what} of {length_in(unit, size)} is {length_in(unit, -gap)} more "
                f"than the opening's",
                _smaller(unit, what, opening),
                figure=size,
                limit=opening,
                source="the opening's readings",
            )
        elif what == "depth" or _closed(unit, what) or gap > _MEANT[what] + TOUCH:
            continue
        elif not USUAL_GAP[0] <= gap + TOUCH <= USUAL_GAP[1] + 2 * TOUCH:
            low, high = (length_in(unit, limit) for limit in USUAL_GAP)
            yield Finding(
                Severity.NOTE,
                Rule.UNUSUAL_GAP,
                f"in {what} the unit leaves {length_in(unit, gap)} of the opening; usual is {low} "
                f"to {high}",
                "Mind that it can be put in, and that packers and frame can fill what is left.",
                figure=gap,
                limit=USUAL_GAP[0] if gap < USUAL_GAP[0] else USUAL_GAP[1],
            )


def _smaller(unit: Unit, what: str, opening: float) -> str:
    """What to do about a unit that is larger than its opening."""
    reach = frame_reach(unit)
    own = dict(zip(("width", "height"), carcass_size(unit), strict=True)).get(what)
    if not reach or own is None or own > opening + TOUCH:
        return f"Make its {what} smaller (`size`), or measure again."
    key = "face_frame.overhang.sides" if what == "width" else "face_frame.overhang.top"
    usual = "5 mm" if unit.display_unit == "mm" else "3/16 in"
    return (
        f"Only the frame is too large: if it is to be scribed to the opening on site, write "
        f"`fit.overlap` (how far it is to reach past the gaps, say {usual}); else make "
        f"`{key}` smaller."
    )


def _closed(unit: Unit, what: str) -> bool:
    """Whether scribes close the gaps, so that they may be as wide as is wished."""
    sides = {"left", "right"} if what == "width" else {"top"}
    return sides <= scribes(unit).keys()


def _worst_case(unit: Unit, shape: OpeningShape) -> Iterator[Finding]:
    """Sizes that go into the likeliest shape, but not into the least that the readings allow."""
    assert unit.opening is not None
    sizes = carcass_size(unit)
    for what, size, likely, least in zip(
        ("width", "height"),
        sizes,
        (unit.opening.width, unit.opening.height),
        (shape.least_width, shape.least_height),
        strict=True,
    ):
        if least + TOUCH < size <= likely + TOUCH:
            yield Finding(
                Severity.WARNING,
                Rule.MAY_NOT_GO_IN,
                f"the readings leave it open whether a {what} of {length_in(unit, size)} goes in: "
                f"only {length_in(unit, least)} surely do",
                f"Take plumb, level and diagonal readings, or make the {what} smaller.",
                figure=size,
                limit=least,
                source=_SURVEY,
            )


def _gaps(unit: Unit, shape: OpeningShape) -> Iterator[Finding]:
    """Gaps at the front that the face frame doesn't cover as asked, or that caulk can't bridge."""
    reach = frame_reach(unit)
    strips = scribes(unit)
    headed = any(part.role in (Role.WORKTOP, Role.CORNICE) for part in unit.parts)
    for closing in closings_round(unit):
        if closing.side in strips:
            yield from _strip_may_be_narrow(unit, closing, strips[closing.side])
            continue
        place, above = _PLACES[closing.side], closing.side in ("top", "slope")
        framed = reach and not (headed and above)
        if framed and shape.overlap and closing.overlap < shape.overlap - TOUCH:
            # As wide as the gap may be, not as it likely is.
            short = shape.overlap + closing.strip - closing.reach
            yield Finding(
                Severity.WARNING,
                Rule.FRAME_OVERLAP_SHORT,
                f"the face frame reaches {length_in(unit, closing.reach)} past the carcass "
                f"{place}, and the gap there is likely {_likely(unit, closing)}",
                f"Make `face_frame.overhang.{'top' if above else 'sides'}` "
                f"{length_in(unit, at_least(short, unit.display_unit))} more, or `fit.overlap` "
                "less.",
                figure=closing.overlap - closing.rest,
                limit=shape.overlap,
                source="`fit.overlap`",
            )
        elif framed and shape.overlap and closing.most > TOUCH:
            yield Finding(
                Severity.NOTE,
                Rule.FRAME_OVERLAP_UNSURE,
                f"the readings leave it open whether the face frame covers the gap {place}: it "
                f"reaches {length_in(unit, closing.reach)} past the carcass, and the gap is likely "
                f"{_likely(unit, closing)}",
                "Read plumb and level, and more widths, or give the frame more overhang.",
                figure=closing.strip,
                limit=closing.reach,
                source=_SURVEY,
            )
        elif closing.remedy == "scribe":
            most = length_in(unit, closing.most)
            likely = length_in(unit, closing.rest)
            yield Finding(
                Severity.NOTE,
                Rule.OPEN_GAP,
                f"{place} a gap of up to {most} stays open (likely {likely} at its widest): more "
                f"than the {length_in(unit, CAULK_LIMIT)} that caulk bridges",
                f"Fit a cover strip, or {strip_text(closing, partial(length_in, unit))}.",
                figure=closing.rest,
                limit=CAULK_LIMIT,
            )


def _strip_may_be_narrow(unit: Unit, closing: Closing, part: Part) -> Iterator[Finding]:
    """A scribe is cut wider than the likeliest gap by its allowance; the gap may be wider yet."""
    more = closing.strip - max(each.gap for each in closing.gaps)
    allowed = part.blank.trim_width
    if more > allowed + TOUCH:
        yield Finding(
            Severity.WARNING,
            Rule.SCRIBE_ALLOWANCE_SHORT,
            f"{named(part)} is cut {length_in(unit, allowed)} wider than the likeliest gap, which "
            f"may be {length_in(unit, more)} wider",
            "Read plumb and level, and more widths, or give `scribes.allowance` more.",
            (part.ref,),
            more,
            allowed,
            source=_SURVEY,
        )


def _likely(unit: Unit, closing: Closing) -> str:
    likely = max(each.gap for each in closing.gaps)
    return f"{length_in(unit, likely)} at its widest, and up to {length_in(unit, closing.strip)}"
