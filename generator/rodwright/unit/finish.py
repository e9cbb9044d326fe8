"""What a part is finished with."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

FinishKind = Literal["oil", "lacquer", "paint", "stain"]
Sheen = Literal["matt", "satin", "gloss"]


@dataclass(frozen=True, slots=True)
class Finish:
    """A finish: its ``kind``, ``colour`` (``#rrggbb``: of paint what is seen, of stain what it
    tends to; empty for what has none) and how it shines.  A stain is lacquered over.

    ``name`` is the maker's own word or number for the colour; empty where there is none."""

    kind: FinishKind
    colour: str = ""
    sheen: Sheen = "satin"
    name: str = ""

    @property
    def described(self) -> str:
        """Kind, colour and sheen as a list says them: `paint #f3f0e6, satin`; a colour by its name
        where it has one."""
        over = " under lacquer" if self.kind == "stain" else ""
        colour = f" {called}" if (called := self.name or self.colour) else ""
        return f"{self.kind}{colour}{over}, {self.sheen}"
