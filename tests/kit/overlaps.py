"""What of a drawing's lettering lies on something else, by shapely."""

from __future__ import annotations

from shapely import STRtree, box
from shapely.geometry import LineString, Polygon

from rodwright.pictures.glyphs import text_width
from rodwright.pictures.ink import Drawing, Lettering, Stroke


def lettering(text: Lettering) -> Polygon:
    """The box that a text's letters fill: their ascenders and descenders within a line of type."""
    width = text_width(text.text, text.size)
    low = {"start": 0.0, "middle": -width / 2, "end": -width}[text.anchor]
    x, y = text.at
    up, down = 0.74 * text.size, 0.2 * text.size
    if text.upwards:
        return box(x - up, y - low - width, x + down, y - low)
    return box(x + low, y - up, x + low + width, y + down)


def overlaps(page: Drawing, edge: float = 3.0) -> list[str]:
    """Texts that lie on each other or on a line, or come nearer than ``edge`` to the page's."""
    texts = [mark for mark in page.marks if isinstance(mark, Lettering)]
    inside = box(edge, edge, page.width - edge, page.height - edge)
    boxes = [lettering(text) for text in texts]
    found = [
        f"{text.text!r} leaves the page"
        for text, each in zip(texts, boxes, strict=True)
        if not inside.covers(each)
    ]
    lines = [
        LineString(line) for mark in page.marks if isinstance(mark, Stroke) for line in mark.lines
    ]
    tree, drawn = STRtree(boxes), STRtree(lines)
    for number, each in enumerate(boxes):
        found += [
            f"{texts[number].text!r} lies on {texts[other].text!r}"
            for other in tree.query(each, "intersects")
            if other > number
        ]
        found += [
            f"{texts[number].text!r} lies on the line {lines[line].wkt}"
            for line in drawn.query(each, "intersects")
        ]
    return found
