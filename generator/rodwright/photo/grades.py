"""How good photographs are: sizes and samples."""

from __future__ import annotations

from typing import Literal, get_args

from rodwright.photo.tracing import Quality

Grade = Literal["draft", "usual", "fine"]
"""What a maker asks for."""
GRADES: tuple[Grade, ...] = get_args(Grade)
QUALITIES: dict[Grade, Quality] = {
    "draft": Quality(480, 8),
    "usual": Quality(1280, 32),
    "fine": Quality(1600, 64),
}
"""What that comes to.  On a small picture 8, 32 and 64 paths are 34.5, 36.6 and 37.5 dB from a
long render: from 32 on, twice the time buys one decibel (tests/benchmarks/PHOTOGRAPHS.md)."""
FILMS: dict[Grade, Quality] = {
    "draft": Quality(320, 6),
    "usual": Quality(480, 12),
    "fine": Quality(640, 32),
}
"""Of each picture of a moving one."""
