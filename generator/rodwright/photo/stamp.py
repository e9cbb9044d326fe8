"""Which unit a photograph is of, and how that stands in its file.

A photograph bears its stamp as the comment of its JPEG file (the COM segment of ISO/IEC 10918-1),
so that whoever finds it knows whether it still shows the unit as it is.
"""

from __future__ import annotations

import json
from hashlib import sha256
from io import BytesIO
from typing import Literal

from PIL import Image, UnidentifiedImageError

from rodwright.unit import Unit
from rodwright.unit.record import unit_record

Shot = Literal["closed", "open", "apart"]
"""How the unit stands in a photograph."""


def stamp_of(unit: Unit, shot: Shot) -> str:
    """The stamp of a photograph of a unit, laid as its files are (:mod:`rodwright.unit.laid`):
    another of each unit that differs in anything."""
    text = json.dumps(unit_record(unit), sort_keys=True, ensure_ascii=True, allow_nan=False)
    return f"rodwright {shot} {sha256(text.encode()).hexdigest()}"


def bears(photograph: bytes, stamp: str) -> bool:
    """Whether a file is a photograph that bears a stamp."""
    try:
        with Image.open(BytesIO(photograph), formats=("JPEG",)) as image:
            found = image.info.get("comment", b"")
    except (UnidentifiedImageError, OSError):
        return False
    return bool(found == stamp.encode())
