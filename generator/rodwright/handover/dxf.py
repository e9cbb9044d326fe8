"""DXF documents whose bytes are the same for the same content."""

from __future__ import annotations

import io
from collections.abc import Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ezdxf.document import Drawing

_MILLIMETRES = 4
"""Of ``$INSUNITS`` (DXF reference, header variables)."""


@contextmanager
def _fixed() -> Iterator[None]:
    """Neither the time of day nor fresh identifiers in what is written."""
    import ezdxf

    before = ezdxf.options.write_fixed_meta_data_for_testing
    ezdxf.options.write_fixed_meta_data_for_testing = True
    try:
        yield
    finally:
        ezdxf.options.write_fixed_meta_data_for_testing = before


def new_document(version: str = "R2000") -> Drawing:
    """An empty document in millimetres."""
    import ezdxf
    from ezdxf.enums import InsertUnits

    with _fixed():
        document = ezdxf.new(version)
    document.units = InsertUnits(_MILLIMETRES)
    document.header["$MEASUREMENT"] = 1
    # Else some programs print everything at one point.
    document.header["$PSVPSCALE"] = 1.0
    return document


def document_bytes(document: Drawing) -> bytes:
    """A document as a file."""
    from ezdxf import bbox

    box = bbox.extents(document.modelspace(), fast=True)
    if box.has_data:
        document.header["$EXTMIN"], document.header["$EXTMAX"] = box.extmin, box.extmax
    text = io.StringIO()
    with _fixed():
        document.write(text)
    data: bytes = document.encode(text.getvalue())
    return data


def plain_text(text: str) -> str:
    """A text as a TEXT entity has to hold it, so that none of it is taken for a code."""
    if "%%" in text:
        text = text.replace("%", "%%%")
    return text.replace("^", "^ ")
