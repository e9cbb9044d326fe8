"""What closes the gap between a unit and its opening at the front: frame, caulk, strip or scribe.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

from rodwright.geometry import TOUCH
from rodwright.opening.gaps import Gap, bent_at, gap_along, open_sides, slope_gaps
from rodwright.opening.silhouettes import Silhouette, SlopeLine, sloped
from rodwright.trade.gaps import CAULK_LIMIT, NEGLIGIBLE
from rodwright.unit import OpeningShape, Part, Unit
from rodwright.unit.facts import carcass_size, frame_reach, scribes


@dataclass(frozen=True, slots=True)
class Scribe:
    """A strip of the unit's that closes a gap: as wide as it is first cut (``width``), from
    ``begins`` past the carcass outwards."""

    ref: str
    width: float
    begins: float


@dataclass(frozen=True, slots=True)
class Closing:
    """How the gap along one side is closed at the front.

    ``gaps`` are the likeliest at the side's lower or left end, wherever its wall, floor or top
    bends, and at its other end; ``reach`` is how far the face frame reaches past the carcass
    there.  ``rest`` is the widest gap that the frame leaves, ``overlap`` the least by which it
    reaches past the gap (one of the two is 0), both likeliest; ``most`` is the most that may
    stay open.  A scribe is ripped to ``strip``, the most the gap may be, and ``cut`` is the most
    that is planed off that.  ``scribe`` is the unit's own strip there, where it has one.
    """

    side: str
    gaps: tuple[Gap, ...]
    reach: float
    scribe: Scribe | None = None

    @property
    def start(self) -> float:
        """The gap at the lower or left end."""
        return self.gaps[0].gap

    @property
    def end(self) -> float:
        """The gap at the upper or right end."""
        return self.gaps[-1].gap

    @property
    def rest(self) -> float:
        """The widest gap that is left beside the face frame."""
        return max(0.0, max(each.gap for each in self.gaps) - self.reach)

    @property
    def most(self) -> float:
        """The widest gap that may be left beside the face frame."""
        return max(0.0, self.strip - self.reach)

    @property
    def overlap(self) -> float:
        """How far the face frame reaches past the gap where it does so least."""
        return max(0.0, self.reach - max(each.gap for each in self.gaps))

    @property
    def strip(self) -> float:
        """Width to rip a scribe to: the most the gap may be."""
        return max(each.most for each in self.gaps)

    @property
    def narrowest(self) -> float:
        """The least the gap may be."""
        return max(0.0, min(each.gap - each.error for each in self.gaps))

    @property
    def cut(self) -> float:
        """The most that is planed off that strip."""
        return self.strip - self.narrowest

    @property
    def trim(self) -> float:
        """The most to be scribed off a face frame that reaches past the gap."""
        return max(0.0, self.reach - self.narrowest)

    @property
    def remedy(self) -> str:
        """What closes the likeliest gap: `frame`, `caulk` or `scribe`."""
        return _remedy(self.rest)

    @property
    def worst_remedy(self) -> str:
        """What it takes to close the most it may be."""
        return _remedy(self.most)


def _remedy(gap: float) -> str:
    if gap <= NEGLIGIBLE:
        return "frame"
    return "caulk" if gap <= CAULK_LIMIT + TOUCH else "scribe"


def closings(
    shape: OpeningShape,
    size: tuple[float, float],
    reach: Mapping[str, float],
    slope: SlopeLine | None = None,
    strips: Mapping[str, Scribe] | None = None,
) -> Iterator[Closing]:
    """How the front's gaps at the sides, at the level top and along a ``slope`` are closed;
    ``reach`` is how far the face frame reaches past the carcass at each, ``strips`` are the unit's
    own by side.  Nothing of a side that stays open."""
    outline = Silhouette(*size, slope)
    left_out = open_sides(shape, size, {"front": slope} if slope else {})
    for side in ("left", "right", "top", "slope"):
        run = None if side in left_out else outline.run(side)
        if run is None:
            continue
        gaps = (
            slope_gaps("front", outline)
            if side == "slope"
            else gap_along("front", shape, size, side, bent_at(shape.front, side, *run))
        )
        yield Closing(side, gaps, reach.get(side, 0.0), (strips or {}).get(side))


def closings_round(unit: Unit) -> tuple[Closing, ...]:
    """How the gaps round a unit are closed at the front; none where nothing is known of the
    opening's shape."""
    shape = unit.opening.shape if unit.opening is not None else None
    if shape is None:
        return ()
    size, over = carcass_size(unit), sloped(unit)
    reach = frame_reach(unit) | ({"slope": over.reach} if over else {})
    slope = over.planes.get("front") if over else None
    strips = {side: _scribe(part, side, size) for side, part in scribes(unit).items()}
    return tuple(closings(shape, size, reach, slope, strips))


def _scribe(part: Part, side: str, size: tuple[float, float]) -> Scribe:
    box = part.bounds()
    begins = {"left": -box.high[0], "right": box.low[0] - size[0], "top": box.low[2] - size[1]}
    return Scribe(part.ref, part.rough_size[1], begins[side])


def closing_text(closing: Closing, say: Callable[[float], str]) -> str:
    """What closes the gap along one side, and how wide it may be; ``say`` words a length."""
    if closing.scribe is not None:
        return _scribed_text(closing, closing.scribe, say)
    if closing.remedy == closing.worst_remedy == "frame":
        off = f", which may need {say(closing.trim)} scribed off" if _worth(closing.trim) else ""
        return f"covered by the face frame{off}"
    stays = f"up to {say(closing.most)} stays open, likely {say(closing.rest)} at its widest"
    if closing.worst_remedy == "caulk":
        return f"{stays}: a bead of caulk"
    strip = f"a cover strip, or {strip_text(closing, say)}"
    if closing.remedy == "scribe":
        return f"{stays}: {strip}"
    by = "the face frame covers it" if closing.remedy == "frame" else "a bead of caulk"
    return f"{stays}: {by} if it proves no more, else {strip}"


def _scribed_text(closing: Closing, scribe: Scribe, say: Callable[[float], str]) -> str:
    off = scribe.width - max(0.0, closing.narrowest - scribe.begins)
    text = f"closed by {scribe.ref}"
    if _worth(off):
        text += f", planed to {_over(closing)} by up to {say(off)}"
    short = closing.strip - scribe.begins - scribe.width
    return f"{text}; the gap may be {say(short)} wider than it" if short > TOUCH else text


def strip_text(closing: Closing, say: Callable[[float], str]) -> str:
    """The strip of wood that closes the gap along one side; ``say`` words a length."""
    wide = say(closing.strip)
    if not _worth(closing.cut):
        return f"a strip {wide} wide"
    return f"a scribe ripped to {wide} and planed to {_over(closing)}, by up to {say(closing.cut)}"


def _over(closing: Closing) -> str:
    """What a strip is planed to."""
    return "what is over it" if closing.side in ("top", "slope") else "the wall"


def _worth(planed: float) -> bool:
    return planed >= NEGLIGIBLE
