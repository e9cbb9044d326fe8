"""Straight lines of a PDF's pages as a reader of its content streams finds them, in mm."""

from __future__ import annotations

from io import BytesIO

from pypdf import PdfReader
from pypdf.generic import ContentStream

POINT = 25.4 / 72
"""A point, the unit of a PDF's page, in mm (ISO 32000-1, 8.3.2.3)."""
Matrix = tuple[float, float, float, float, float, float]
Segment = tuple[tuple[float, float], tuple[float, float]]


def page_sizes(pdf: bytes) -> list[tuple[float, float]]:
    """Width and height of each page, mm."""
    pages = PdfReader(BytesIO(pdf)).pages
    return [
        (float(page.mediabox.width) * POINT, float(page.mediabox.height) * POINT) for page in pages
    ]


def page_lines(pdf: bytes) -> list[list[Segment]]:
    """The lines of each page's paths, mm from the upper left corner, y down."""
    reader = PdfReader(BytesIO(pdf))
    return [_lines(reader, number) for number in range(len(reader.pages))]


def _lines(reader: PdfReader, number: int) -> list[Segment]:
    page = reader.pages[number]
    height = float(page.mediabox.height)
    now: Matrix = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)
    kept: list[Matrix] = []
    found: list[Segment] = []
    at = (0.0, 0.0)
    for operands, operator in ContentStream(page.get_contents(), reader).operations:
        if operator == b"q":
            kept.append(now)
        elif operator == b"Q":
            now = kept.pop()
        elif operator == b"cm":
            a, b, c, d, e, f = map(float, operands)
            p, q, r, s, t, u = now
            now = (a * p + b * r, a * q + b * s, c * p + d * r, c * q + d * s,
                   e * p + f * r + t, e * q + f * s + u)  # fmt: skip
        elif operator in {b"m", b"l"}:
            x, y = map(float, operands)
            p, q, r, s, t, u = now
            to = ((x * p + y * r + t) * POINT, (height - (x * q + y * s + u)) * POINT)
            if operator == b"l":
                found.append((at, to))
            at = to
    return found
