"""What a part is finished with."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

FinishKind = Literal["oil", "lacquer", "paint", "stain"]
Sheen = Literal["matt", "satin", "gloss"]


@dataclass(frozen=True, slots=True)
class Finish:
    """A finish: its ``kind``, ``colour`` (``#rrggbb``: of paint what is seen, of stain what it
    tends to; empty for what has none) and how it shines.  A stain is lacquered over."""

    kind: FinishKind
    colour: str = ""
    sheen: Sheen = "satin"
