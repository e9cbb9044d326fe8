"""A unit as a notebook shows it: a picture, and the model to turn where scripts may run."""

from __future__ import annotations

import base64
from dataclasses import asdict, replace
from html import escape

from rodwright.page.model import model_of
from rodwright.page.shell import page_html
from rodwright.page.standing import Picture, standing_markup
from rodwright.page.telling import quick_sections
from rodwright.page.tiles import textures_of
from rodwright.page.words import words_of
from rodwright.pictures.all_views import assembled
from rodwright.pictures.raster import Raster
from rodwright.unit import Unit

_HEIGHT = 620
"""Pixels of the model, below which its panels have no room."""


def notebook_bundle(unit: Unit) -> dict[str, str]:
    """What a notebook may show of a unit, by kind of content: the model as HTML, and a picture.

    The model is a page of its own, in a frame that may run its script and do nothing else (HTML
    standard, 4.8.5: ``sandbox``).  Beneath it lies the picture: where frames are taken out, as by
    viewers of notebooks that nobody has said to trust, that is what is left.

    Raises:
        ValueError: the workings of a part leave no single solid.
    """
    with Raster() as raster:
        picture = Picture(f"{unit.title}, assembled", assembled(unit, raster).jpeg(), "image/jpeg")
    page, title = escape(_page(unit, picture)), escape(unit.title)
    inside = "position:absolute;inset:0;width:100%;height:100%;"
    html = (
        f'<div style="position:relative;height:{_HEIGHT}px">'
        f'<img style="{inside}object-fit:contain" alt="{escape(picture.caption)}" '
        f'src="{picture.address}">'
        f'<iframe style="{inside}border:0" title="{title}" sandbox="allow-scripts" '
        f'srcdoc="{page}"></iframe></div>'
    )
    return {
        # The script runs only as it was, whatever the encoding of what is round it.
        "text/html": html.encode("ascii", "xmlcharrefreplace").decode("ascii"),
        "image/jpeg": base64.b64encode(picture.data).decode("ascii"),
    }


def _page(unit: Unit, picture: Picture) -> str:
    model = model_of(unit)
    sections = replace(quick_sections(unit, {}), textures=textures_of(unit))
    told = {"model": asdict(model), "sections": asdict(sections)}
    standing = standing_markup(unit.title, model.size, words_of(unit), [picture], [])
    return page_html(unit.title, told, standing=standing, packed=True)
