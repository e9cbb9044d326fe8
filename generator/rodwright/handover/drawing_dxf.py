"""A technical drawing as DXF: full size in model space, in mm, by the layers of its line types.

The first view's origin is the document's, so that there a coordinate is one of the unit; the other
views, the frame and the title block stand round it as on the sheet, enlarged by the scale.  Edges
are whole: none is broken round a text.  Dimensions are DIMENSION entities that measure what they
say; what is drawn of them is what was laid out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import pairwise
from typing import TYPE_CHECKING

from rodwright.handover.dxf import document_bytes, new_document, plain_text
from rodwright.pictures.drafting.drafted import DraftedDimension, Ring
from rodwright.pictures.drafting.figures import (
    ARROW,
    CAPITALS,
    CHAIN,
    CLEAR,
    DASHES,
    DOUBLE,
    FIGURE,
    FINE,
    GAP,
    NARROW,
    OVER,
    WIDE,
)
from rodwright.pictures.drafting.hatching import hatched
from rodwright.pictures.drafting.letters import Written
from rodwright.pictures.drafting.on_paper import DraftedView
from rodwright.pictures.drafting.room import broken
from rodwright.pictures.drafting.sheets import Sheet
from rodwright.pictures.drafting.views import Line, Point

if TYPE_CHECKING:
    from ezdxf.document import Drawing
    from ezdxf.entities.text import Text
    from ezdxf.layouts.base import BaseLayout
    from ezdxf.layouts.blocklayout import BlockLayout
    from ezdxf.layouts.layout import Modelspace

_LAYERS: dict[str, tuple[float, str]] = {
    "visible edges": (WIDE, "CONTINUOUS"),
    "hidden edges": (NARROW, "hidden"),
    "cut edges": (WIDE, "CONTINUOUS"),
    "hatching": (FINE, "CONTINUOUS"),
    "room": (FINE, "CONTINUOUS"),
    "other positions": (NARROW, "moved"),
    "cutting planes": (NARROW, "plane"),
    "cutting planes' ends": (WIDE, "CONTINUOUS"),
    "dimensions": (NARROW, "CONTINUOUS"),
    "notes": (NARROW, "CONTINUOUS"),
    "frame": (WIDE, "CONTINUOUS"),
    "title block": (NARROW, "CONTINUOUS"),
}
"""Each layer's pen, mm, and its line type (ISO 128-2)."""
_PATTERNS: dict[str, tuple[float, ...]] = {"hidden": DASHES, "plane": CHAIN, "moved": DOUBLE}
_STYLE = "letters"
_SIZES: dict[str, float] = {
    "dimtxt": FIGURE,
    "dimasz": ARROW,
    "dimexo": GAP,
    "dimexe": OVER,
    "dimgap": CLEAR,
    "dimtad": 1,
    "dimtih": 0,
    "dimtoh": 0,
}
"""Of dimensions, mm of paper; and that texts stand above their lines and along them."""
_USER_PLACED = 128
"""The flag of a dimension whose text was placed by hand (group code 70)."""

ToModel = Callable[[Point], Point]


def drawing_dxf(sheet: Sheet) -> bytes:
    """The sheet as a DXF file (AC1024); equal sheets give equal bytes."""
    document = new_document("R2010")
    _set_up(document, sheet)
    space, to_model = document.modelspace(), _to_model(sheet)
    for view in sheet.views:
        _view(space, view, to_model)
    for view in sheet.views:
        for each in view.dimensions:
            _dimension(document, each, view, to_model, sheet.scale)
    _titles(space, sheet, to_model)
    return document_bytes(document)


def _to_model(sheet: Sheet) -> ToModel:
    """From paper to the document's coordinates."""
    (x, y), scale = sheet.views[0].at, sheet.scale
    return lambda point: (
        round((point[0] - x) * scale, 6) + 0.0,
        round((y - point[1]) * scale, 6) + 0.0,
    )


def _set_up(document: Drawing, sheet: Sheet) -> None:
    scale = float(sheet.scale)
    for name, pattern in _PATTERNS.items():
        lengths = [length * scale * (-1) ** at for at, length in enumerate(pattern)]
        document.linetypes.add(name, [sum(map(abs, lengths)), *lengths], description=name)
    for name, (pen, kind) in _LAYERS.items():
        document.layers.add(name, linetype=kind, lineweight=round(pen * 100))
    document.styles.add(_STYLE, font="DejaVuSans.ttf")
    letters = document.styles.get(_STYLE).dxf.handle
    sizes = {"dimscale": scale, **_SIZES}
    document.dimstyles.add(_STYLE, dxfattribs={**sizes, "dimtxsty_handle": letters})
    # Some readers go by the document's own figures.
    for name, value in sizes.items():
        document.header[f"${name.upper()}"] = value
    document.header["$DIMSTYLE"] = _STYLE


def _view(space: Modelspace, view: DraftedView, to_model: ToModel) -> None:
    """The lines of a view, its notes and its caption."""

    def own(line: Iterable[Point]) -> list[Point]:
        return [to_model(view.page(point)) for point in line]

    for layer, lines in (
        ("visible edges", view.view.visible),
        ("hidden edges", view.view.hidden),
        ("room", view.view.outline),
    ):
        for line in lines:
            start, end = own(line)
            space.add_line(start, end, {"layer": layer})
    for points in view.view.moved:
        space.add_lwpolyline(own(points), dxfattribs={"layer": "other positions"})
    for cut in view.view.cuts:
        for ring in cut.rings:
            space.add_lwpolyline(own(ring), close=True, dxfattribs={"layer": "cut edges"})
    cuts = [
        (cut, tuple(tuple(map(view.page, ring)) for ring in cut.rings)) for cut in view.view.cuts
    ]
    texts = [text.rect.grown(CLEAR / 2) for text in view.texts()]
    for lines in hatched(cuts):
        _lines(space, broken(lines, texts), to_model, "hatching")
    _lines(space, view.plane_lines, to_model, "cutting planes")
    for plane in view.plane_ends:
        _lines(space, [plane.line], to_model, "cutting planes' ends")
        _lines(space, [plane.shaft], to_model, "dimensions")
        _filled(space, [plane.head], to_model, "cutting planes' ends")
        _text(space, plane.letter, to_model, view.scale, "cutting planes' ends")
    for note in view.notes:
        _lines(space, note.leader, to_model, "notes")
        _filled(space, note.ends, to_model, "notes")
        _text(space, note.text, to_model, view.scale, "notes")
    if view.caption:
        _text(space, view.caption, to_model, view.scale, "notes")


def _dimension(
    document: Drawing, each: DraftedDimension, view: DraftedView, to_model: ToModel, scale: int
) -> None:
    """A DIMENSION entity, and what was laid out of it as the block that is shown."""
    told = each.dimension
    start, end = (to_model(view.page(point)) for point in (told.start, told.end))
    base, centre = to_model(each.line[0]), to_model(_centre(each.text))
    attributes = {"layer": "dimensions"}
    space = document.modelspace()
    if told.along == "line":
        style = space.add_aligned_dim(
            start, end, distance=0.0, text=told.text, dimstyle=_STYLE, dxfattribs=attributes
        )
        style.dimension.dxf.defpoint = end
    else:
        angle = 90.0 if told.along == "y" else 0.0
        style = space.add_linear_dim(
            base,
            start,
            end,
            angle=angle,
            text=told.text,
            dimstyle=_STYLE,
            dxfattribs=attributes,
        )
    entity = style.dimension
    block: BlockLayout = document.blocks.new_anonymous_block(type_char="D")
    _lines(block, each.lines, to_model, "dimensions")
    _filled(block, each.arrows, to_model, "dimensions")
    _text(block, each.text, to_model, scale, "dimensions")
    for point in (start, end, base):
        block.add_point(point, {"layer": "Defpoints"})
    entity.dxf.geometry = block.name
    entity.dxf.text_midpoint = centre
    entity.dxf.dimtype |= _USER_PLACED
    axis = 1 if told.along == "y" else 0
    entity.dxf.actual_measurement = (
        abs(end[axis] - start[axis])
        if told.along != "line"
        else ((end[0] - start[0]) ** 2 + (end[1] - start[1]) ** 2) ** 0.5
    )


def _titles(space: Modelspace, sheet: Sheet, to_model: ToModel) -> None:
    from ezdxf.enums import TextEntityAlignment

    left, top, right, bottom = sheet.frame
    corners = [(left, top), (right, top), (right, bottom), (left, bottom)]
    space.add_lwpolyline(
        [to_model(corner) for corner in corners], close=True, dxfattribs={"layer": "frame"}
    )
    _lines(space, sheet.block.wide, to_model, "frame")
    _lines(space, (*sheet.block.narrow, *sheet.block.axes), to_model, "title block")
    for points in sheet.block.symbol:
        placed = [to_model(point) for point in points]
        space.add_lwpolyline(placed, dxfattribs={"layer": "title block"})
    for text in sheet.block.texts:
        start = (text.rect.left, text.base[1])
        entity = _text(space, text, to_model, sheet.scale, "title block")
        entity.set_placement(to_model(start), align=TextEntityAlignment.LEFT)


def _lines(space: BaseLayout, lines: Iterable[Line], to_model: ToModel, layer: str) -> None:
    for start, end in lines:
        space.add_line(to_model(start), to_model(end), {"layer": layer})


def _filled(space: BaseLayout, rings: Sequence[Ring], to_model: ToModel, layer: str) -> None:
    """Arrowheads as triangles, dots as fans of them."""
    for ring in rings:
        tip, *others = [to_model(point) for point in ring]
        for one, two in pairwise(others):
            space.add_solid([tip, one, two], {"layer": layer})


def _text(space: BaseLayout, text: Written, to_model: ToModel, scale: int, layer: str) -> Text:
    from ezdxf.enums import TextEntityAlignment

    entity = space.add_text(
        plain_text(text.text),
        height=round(text.size * CAPITALS * scale, 6),
        rotation=90.0 if text.upwards else 0.0,
        dxfattribs={"layer": layer, "style": _STYLE},
    )
    return entity.set_placement(to_model(text.base), align=TextEntityAlignment.CENTER)


def _centre(text: Written) -> Point:
    left, top, right, bottom = text.rect
    return (left + right) / 2, (top + bottom) / 2
