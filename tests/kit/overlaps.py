"""What overlaps on a drawing, by shapely: every text against every text, line and filled mark.

Texts are measured as they are inked, by Pillow from the fonts, and not as the layout takes them.
"""

from __future__ import annotations

from collections.abc import Iterator

import shapely
from shapely import Polygon
from shapely.affinity import rotate

from rodwright.pictures.glyphs import font
from rodwright.pictures.ink import Drawing, Fill, Lettering, Stroke

_MEASURED = 200.0


def inked(mark: Lettering) -> Polygon:
    """The rectangle round the ink of a text."""
    face, share = font(mark.text, _MEASURED), mark.size / _MEASURED
    left, top, right, bottom = (share * each for each in face.getbbox(mark.text, anchor="ls"))
    shift = {"start": 0.0, "middle": 0.5, "end": 1.0}[mark.anchor]
    x, y = mark.at[0] - shift * share * face.getlength(mark.text), mark.at[1]
    box = shapely.box(x + left, y + top, x + right, y + bottom)
    return rotate(box, -90, origin=mark.at) if mark.upwards else box


def overlaps(drawing: Drawing) -> Iterator[str]:
    """Each overlap, and each text that isn't on the page, in words."""
    texts = [mark for mark in drawing.marks if isinstance(mark, Lettering) and mark.text.strip()]
    boxes = [inked(mark) for mark in texts]
    page = shapely.box(0, 0, drawing.width, drawing.height)
    for mark, box in zip(texts, boxes, strict=True):
        if not page.contains(box):
            yield f"{mark.text!r} isn't on the page"
    tree = shapely.STRtree(boxes)
    for one, two in zip(*tree.query(boxes, predicate="intersects").tolist(), strict=True):
        if one < two:
            yield f"{texts[one].text!r} and {texts[two].text!r}"
    for name, shapes in (("a line", _lines(drawing)), ("a filled mark", _fills(drawing))):
        if not shapes:
            continue
        for number, _ in zip(
            *tree.query(shapes, predicate="intersects")[::-1].tolist(), strict=True
        ):
            yield f"{texts[number].text!r} and {name}"


def _lines(drawing: Drawing) -> list[Polygon]:
    """Every line as wide as it is drawn, dashes as if they were whole."""
    return [
        shapely.LineString(line).buffer(mark.width / 2, cap_style="flat")
        for mark in drawing.marks
        if isinstance(mark, Stroke)
        for line in mark.lines
    ]


def _fills(drawing: Drawing) -> list[Polygon]:
    return [
        Polygon(ring) for mark in drawing.marks if isinstance(mark, Fill) for ring in mark.rings
    ]
