"""What stands beside a view of a part besides its figures: edging, caption, grain, and the trade's
marks."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.paper.part_sheets.labels import SIZE
from rodwright.paper.part_sheets.laying import (
    FINE,
    NARROW,
    RISE,
    THICK,
    Laying,
    Placed,
    Spot,
    arrow,
)
from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Lettering, Mark, Stroke
from rodwright.unit import Grain, Surface
from rodwright.unit.surfaces import HIGH, LOW

CAPTION = 3.2
"""mm of type, and of paper from the top of a drawing."""
_BAND = 1.8
"""mm of paper: from an edge to the line beside it that marks its edging."""
_LOOP = (
    (0.0, 0.0), (0.1, 1.8), (0.5, 3.4), (1.2, 4.6), (2.0, 5.0), (2.5, 4.5), (2.3, 3.7), (1.5, 3.3),
    (0.5, 3.6), (-0.7, 4.4), (-1.8, 5.4),
)  # fmt: skip
"""The face mark, from its tail, mm of paper (as it is pencilled; common practice, no source)."""


def edging(
    laying: Laying, below: Sequence[Placed], beside: Sequence[Placed], above: Sequence[Placed]
) -> list[Mark]:
    """Edges that are edged or lipped: a thick line beside them, and a letter clear of other
    lines."""
    if laying.facing.surface.axis != 2:
        return []
    sheet, name = laying.laid.sheet, laying.laid.datum.words.name
    edged = {each: "E" for each, _, _ in sheet.edged}
    marks: list[Mark] = []
    for surface in (*LOW[:2], *HIGH[:2]):
        lipped = any(name(surface).startswith(each) for each in sheet.lipped)
        letter = edged.get(name(surface), "L" if lipped else "")
        if not letter:
            continue
        upright = surface.axis == 0
        if upright:
            lines = beside if surface is Surface.NEAR_END else []
            out = laying.left - _BAND if surface is Surface.NEAR_END else laying.right + _BAND
            ends = laying.top, laying.bottom
        else:
            top = surface is laying.facing.top
            lines = above if top else below
            out = laying.top - _BAND if top else laying.bottom + _BAND
            ends = laying.left, laying.right
        at = _clearest(ends, [each.place for each in lines])
        half = 1.4 if upright else text_width(letter, SIZE) / 2 + 0.4
        pieces = ((ends[0], at - half), (at + half, ends[1]))
        drawn = (
            tuple((out, place) if upright else (place, out) for place in piece)
            for piece in pieces
            if piece[1] > piece[0]
        )
        x, y = (out, at) if upright else (at, out)
        marks += [Stroke(tuple(drawn), THICK), Lettering((x, y + RISE * SIZE), letter, SIZE)]
    return marks


def _clearest(ends: Spot, lines: Sequence[float]) -> float:
    """The place between two ends that is farthest from lines, near the middle if it can be."""
    places = [ends[0] + (ends[1] - ends[0]) * share / 20 for share in range(2, 19)]
    return max(
        places,
        key=lambda at: (
            min([3.0, *(abs(at - each) for each in lines)]),
            -abs(at - sum(ends) / 2),
        ),
    )


def captioned(laying: Laying, *, whole: bool) -> list[Mark]:
    """What is looked at, its scale, whether the whole of its figures are there, which way the grain
    runs, and the trade's marks."""
    sheet, facing = laying.laid.sheet, laying.facing
    name = laying.laid.datum.words.name(facing.surface)
    said = [
        name[:1].upper() + name[1:],
        *(["face side"] if name == sheet.lies.face else []),
        *(["shows"] if name in sheet.shows else []),
        f"scale 1:{laying.scale:g}",
    ]
    if facing.surface.axis != 2:
        said.insert(1, f"{laying.laid.datum.words.name(facing.top)} at the top")
    if laying.taller > 1:
        said.append(f"not to scale across: drawn {laying.taller:g} times as high")
    if not whole:
        said.append("some figures only in the table")
    text = ", ".join(said)
    marks: list[Mark] = [Lettering((0.0, CAPTION), text, CAPTION, "start")]
    if facing.surface.axis == 2:
        marks += [*_grain(laying, text_width(text, CAPTION) + 6.0), *_signs(laying)]
    return marks


def _grain(laying: Laying, left: float) -> list[Mark]:
    """An arrow both ways along the grain."""
    grain = laying.laid.piece.blank.grain
    if grain is Grain.NONE:
        return []
    x, y = left + text_width("grain", CAPTION) + 2.0, 2.2
    if grain is Grain.LENGTHWISE:
        ends, way = ((x, y), (x + 12.0, y)), (1.0, 0.0)
    else:
        ends, way = ((x + 2.0, y - 2.0), (x + 2.0, y + 2.4)), (0.0, 1.0)
    return [
        Lettering((left, CAPTION), "grain", CAPTION, "start"),
        Stroke((ends,), NARROW),
        arrow(ends[1], way),
        arrow(ends[0], (-way[0], -way[1])),
    ]


def _signs(laying: Laying) -> list[Mark]:
    """The trade's marks: of the face edge, a V whose point is at it; of the face side, a loop whose
    tail runs out at the face edge."""
    y, x = laying.y(0.0), laying.right + 5.0
    inward = -1.0 if y > (laying.top + laying.bottom) / 2 else 1.0
    arms = ((x - 1.6, y + 3.2 * inward), (x, y), (x + 1.6, y + 3.2 * inward))
    lines: list[tuple[Spot, ...]] = [arms]
    name = laying.laid.datum.words.name
    if name(laying.facing.surface) == laying.laid.sheet.lies.face:
        lines.append(tuple((x + 5.5 + over, y + inward * up) for over, up in _LOOP))
    return [Stroke(tuple(lines), 0.4), Stroke((((x - 3.0, y), (x + 8.5, y)),), FINE)]
