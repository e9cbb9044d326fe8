"""Which unit a photograph is of, and how that stands in its file.

A photograph bears its stamp as the comment of its JPEG file (the COM segment of ISO/IEC 10918-1),
so that whoever finds it knows whether it still shows the unit as it is.  A moving picture bears it
as its description in Exif.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable
from hashlib import sha256
from io import BytesIO
from typing import Literal

from PIL import Image, UnidentifiedImageError

from rodwright.unit import Unit
from rodwright.unit.record import unit_record

Shot = Literal["closed", "open", "apart", "options", "turntable", "build-up"]
"""What a photograph shows; the last three are options side by side and moving pictures."""

_DESCRIPTION = 0x010E
"""The tag of a picture's description in Exif (CIPA DC-008), where WebP files have their stamp."""


def stamp_of(unit: Unit, shot: Shot) -> str:
    """The stamp of a photograph of a unit, laid as its files are (:mod:`rodwright.unit.laid`):
    another of each unit that differs in anything."""
    return f"rodwright {shot} {_digest(unit)}"


_DIGEST = re.compile("[0-9a-f]{64}")


def _digest(unit: Unit) -> str:
    text = json.dumps(unit_record(unit), sort_keys=True, ensure_ascii=True, allow_nan=False)
    return sha256(text.encode()).hexdigest()


def bears(photograph: bytes, stamp: str) -> bool:
    """Whether a file is a photograph that bears a stamp."""
    return stamp_in(photograph) == stamp


def stamp_in(photograph: bytes) -> str:
    """The stamp that a file bears; empty where it bears none."""
    try:
        with Image.open(BytesIO(photograph), formats=("JPEG", "WEBP")) as image:
            found = image.info.get("comment", b"") or image.getexif().get(_DESCRIPTION, "")
    except (UnidentifiedImageError, OSError, SyntaxError):
        return ""
    return found.decode("ascii", "replace") if isinstance(found, bytes) else str(found)


def described(stamp: str) -> Image.Exif:
    """A stamp as the Exif data of a file that has no comment."""
    exif = Image.Exif()
    exif[_DESCRIPTION] = stamp
    return exif


def shows_only(photograph: bytes, units: Iterable[Unit]) -> bool:
    """Whether a file bears a stamp, and of these units alone (laid as their files are)."""
    shown = set(_DIGEST.findall(stamp_in(photograph)))
    return bool(shown) and shown <= {_digest(unit) for unit in units}
