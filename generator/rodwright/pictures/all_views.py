"""Every picture of a unit: closed, open, taken apart, loaded, and drawn in three views."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from io import BytesIO
from pathlib import Path

from PIL import Image

from rodwright.lengths import format_length
from rodwright.pictures.details import Detail, Rows, details
from rodwright.pictures.explode import explode
from rodwright.pictures.files import write_drawing
from rodwright.pictures.flat import area_marks, edge_marks, shadow_marks
from rodwright.pictures.ink import Drawing, Lettering, Mark
from rodwright.pictures.labels import rows, tag_marks
from rodwright.pictures.loaded import write_loaded
from rodwright.pictures.opened import opened
from rodwright.pictures.paint import to_image
from rodwright.pictures.photo import light_up, photograph
from rodwright.pictures.raster import Raster
from rodwright.pictures.sheet import draw_views
from rodwright.pictures.stage import anchors, render, set_stage
from rodwright.pictures.tags import TAG_HEIGHT, Frame, place_tags, room, tag_width
from rodwright.strength.sag_lines import sag_lines
from rodwright.unit import Unit

__all__ = ["write_drawings", "write_pictures"]

PAGE = (2000, 1500)
"""Width and height of the pictures: pixels of the PNG, units of the SVG."""
MARGIN = 150
"""Around an assembled unit."""
TAG_SIZES = (26.0, 22.0, 18.0, 14.0, 11.0, 9.0)
"""Text sizes of tags, the largest that fits being taken."""
TAG_ROOM = 44.0
"""From tags to the page's border, and to the parts."""
_QUALITY = 85
"""Of JPEG files, in %."""
VIEWS_PIXELS = 2800
"""Longer side of the PNG of the views."""


def write_pictures(
    unit: Unit, folder: Path, progress: Callable[[str], None] = lambda _: None
) -> tuple[Path, ...]:
    """Write ``assembled``, ``exploded``, ``loaded`` and ``views``, each as PNG and SVG, into a
    folder; and ``opened`` where there are doors or drawers, ``exploded-column`` and
    ``exploded-drawer`` where there are too many parts for one page.  ``loaded`` is left out of a
    unit without shelves or anything else that sags.

    Returns the files' paths.  Equal units give equal SVG files, byte for byte.

    Raises:
        ValueError: a part's workings leave no single solid.
        OSError: the folder can't be written.
    """
    progress("drawing the unit assembled")
    with Raster() as raster:
        written = [*assembled(unit, raster).write(folder, "assembled")]
        if unit.motions:
            progress("drawing the unit with its doors and drawers open")
            written += open_view(unit, raster).write(folder, "opened")
        return (*written, *_write_drawings(unit, folder, raster, progress))


def write_drawings(
    unit: Unit, folder: Path, progress: Callable[[str], None] = lambda _: None
) -> tuple[Path, ...]:
    """As :func:`write_pictures`, but for what photographs show better: the unit as it stands."""
    with Raster() as raster:
        return _write_drawings(unit, folder, raster, progress)


def _write_drawings(
    unit: Unit, folder: Path, raster: Raster, progress: Callable[[str], None]
) -> tuple[Path, ...]:
    progress("drawing the exploded view")
    written = [*taken_apart(unit, raster).write(folder, "exploded")]
    for detail in details(unit):
        progress(f"drawing {detail.about} taken apart")
        shown = detail_apart(unit, detail, raster)
        written += shown.write(folder, f"exploded-{detail.name}")
    progress("drawing the unit under its loads")
    sagging = sag_lines(unit)
    written += write_loaded(unit, sagging, folder)
    progress("drawing front, side and plan")
    views = draw_views(unit, sagging)
    per_mm = VIEWS_PIXELS / max(views.width, views.height)
    written += write_drawing(views, folder, "views", per_unit=per_mm)
    return tuple(written)


@dataclass(frozen=True, slots=True)
class Shown:
    """A picture: all its marks, and those that lie ``over`` the ``photo`` of what stands there."""

    drawing: Drawing
    over: tuple[Mark, ...]
    photo: Image.Image

    def write(self, folder: Path, name: str) -> tuple[Path, ...]:
        """Write it as PNG and SVG.

        Raises:
            OSError: a file can't be written.
        """
        return write_drawing(self.drawing, folder, name, over=self.over, under=self.photo)

    def jpeg(self) -> bytes:
        """It as a JPEG file, for paper."""
        file = BytesIO()
        image = to_image(replace(self.drawing, marks=self.over), 1.0, self.photo)
        image.save(file, format="JPEG", quality=_QUALITY)
        return file.getvalue()


def assembled(unit: Unit, raster: Raster) -> Shown:
    """The unit as it stands, doors and drawers closed.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    about = f"{unit.title}, assembled, seen from the front right: {_size(unit)}."
    return _standing(unit, about, raster)


def open_view(unit: Unit, raster: Raster) -> Shown:
    """The unit with its doors and drawers open.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    about = f"{unit.title}, its doors and drawers open, seen from the front right."
    return _standing(opened(unit), about, raster, inner=True)


def taken_apart(unit: Unit, raster: Raster) -> Shown:
    """The parts moved apart, each with its ref.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    about = f"The {len(unit.parts)} parts of {unit.title}, moved apart and tagged with their refs."
    return _exploded(unit, rows(unit.parts), f"{unit.title}, taken apart", about, raster)


def detail_apart(whole: Unit, detail: Detail, raster: Raster) -> Shown:
    """A column or a drawer of a unit, moved apart.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    title = f"{whole.title}, {detail.about} taken apart"
    about = f"The {len(detail.unit.parts)} parts of {detail.about}, moved apart, each with its ref."
    return _exploded(detail.unit, detail.named, title, about, raster)


def _standing(unit: Unit, description: str, raster: Raster, *, inner: bool = False) -> Shown:
    width, height = PAGE
    frame = Frame(MARGIN, MARGIN, width - MARGIN, height - MARGIN)
    stage = set_stage(unit, {}, PAGE, frame, inner=inner)
    sight = render(stage, raster)
    lit = light_up(stage, sight, raster)
    edges = edge_marks(stage, sight)
    drawing = Drawing(
        width,
        height,
        unit.title,
        description,
        (*shadow_marks(stage, 1.0), *area_marks(stage, sight, lit), *edges),
    )
    return Shown(drawing, tuple(edges), photograph(stage, sight, lit, 0.7))


def _exploded(unit: Unit, named: Rows, title: str, description: str, raster: Raster) -> Shown:
    width, height = PAGE
    texts = [text for text, _ in named]
    size, frame = next(
        (
            (size, frame)
            for size, frame in ((size, _tag_frame(texts, size)) for size in TAG_SIZES)
            if room(texts, frame, size)
        ),
        (TAG_SIZES[-1], _tag_frame(texts, TAG_SIZES[-1])),
    )
    inner = Frame(
        frame.left + TAG_ROOM, frame.top + TAG_ROOM, frame.right - TAG_ROOM, frame.bottom - TAG_ROOM
    )
    stage = set_stage(unit, explode(unit), PAGE, inner)
    sight = render(stage, raster)
    lit = light_up(stage, sight, raster)
    edges = edge_marks(stage, sight)
    marks: tuple[Mark, ...]
    if room(texts, frame, size):
        marks = tag_marks(place_tags(anchors(stage, sight.seen, named), frame, size), size)
    else:
        note = f"{len(unit.parts)} parts, too many to tag here: see the parts list."
        marks = (Lettering((width / 2, height - TAG_ROOM / 2), note, TAG_SIZES[0]),)
    drawing = Drawing(
        width,
        height,
        title,
        description,
        (*shadow_marks(stage, 0.4), *area_marks(stage, sight, lit), *edges, *marks),
    )
    return Shown(drawing, (*edges, *marks), photograph(stage, sight, lit, 0.3))


def _tag_frame(texts: Sequence[str], size: float) -> Frame:
    """The rectangle between the tags."""
    width, height = PAGE
    side = max(tag_width(text, size) for text in texts) + TAG_ROOM
    foot = TAG_HEIGHT * size + TAG_ROOM
    return Frame(side, foot, width - side, height - foot)


def _size(unit: Unit) -> str:
    figures = " x ".join(format_length(length, unit.display_unit) for length in unit.size)
    return f"{figures} {unit.display_unit} (width x height x depth)"
