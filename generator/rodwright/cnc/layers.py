"""Layers of a drawing for a machine: each tells from which side, what, how wide and how deep.

A name is made of words with underscores between: the side from which the tool comes, what it
makes, its diameter or width, and its depth, in mm with ``p`` for the decimal point:
``FACE_HOLE_5_DEEP_12p5``, ``THROUGH_HOLE_8``, ``NEAR_END_HOLE_8_DEEP_24_UP_9`` (its middle 9 mm
above the lower face).  Letters, digits and underscores only, as any reader takes them.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.unit import Surface

OUTLINE = "OUTLINE"
SHEET, USABLE, OFFCUT = "SHEET", "SHEET_TRIMMED", "OFFCUT"
TEXT, GRAIN, EDGING = "TEXT", "GRAIN", "EDGING"

SAID: dict[str, str] = {
    OUTLINE: "the part's edge as cut: right through, the tool on its outside",
    SHEET: "the sheet's own edge: not cut",
    USABLE: "what is left of the sheet once its edges are trimmed",
    OFFCUT: "what is left over in one piece: not cut",
    TEXT: "refs and what to know: not cut",
    GRAIN: "which way the grain runs: not cut",
    EDGING: "edges that are edged after cutting: not cut",
}
"""What the layers are that no working has."""
_SIDES = {
    Surface.FACE: "FACE", Surface.REVERSE: "REVERSE",
    Surface.NEAR_END: "NEAR_END", Surface.FAR_END: "FAR_END",
    Surface.FACE_EDGE: "FACE_EDGE", Surface.BACK_EDGE: "BACK_EDGE",
}  # fmt: skip


@dataclass(frozen=True, slots=True)
class Layer:
    """A working's layer: from which side (None: right through), its kind, its size over the
    surface, its depth and, in an end or edge, how far its middle is above the lower face; mm.

    ``sign`` is what kind of size it is: empty, ``R`` (a radius) or ``AT`` (degrees).
    """

    side: Surface | None
    kind: str
    size: float | None = None
    depth: float | None = None
    up: float | None = None
    sign: str = ""

    @property
    def name(self) -> str:
        """What the layer is called."""
        words = ["THROUGH" if self.side is None else _SIDES[self.side]]
        words.append(self.kind.upper().replace(" ", "_").replace("-", "_"))
        if self.size is not None:
            words += [*([self.sign] if self.sign else []), figure(self.size)]
        if self.depth is not None:
            words += ["DEEP", figure(self.depth)]
        if self.up is not None:
            words += ["UP", figure(self.up)]
        return "_".join(words)


def figure(mm: float) -> str:
    """A figure to a hundredth, as it stands in a layer's name."""
    return hundredths(mm).replace(".", "p")


def hundredths(mm: float) -> str:
    """A figure to a hundredth of a mm: an inch's parts aren't whole tenths."""
    return f"{mm:.2f}".rstrip("0").rstrip(".")


def said(name: str) -> str:
    """What a layer is, in words for the shop."""
    if name in SAID:
        return SAID[name]
    longest_first = sorted(_SIDES.values(), key=len, reverse=True)
    side = next((each for each in longest_first if name.startswith(f"{each}_")), "THROUGH")
    words = name[len(side) + 1 :].lower().split("_")
    where = "right through" if side == "THROUGH" else f"from the {side.lower().replace('_', ' ')}"
    return f"{where}: {_read(words)}"


def _read(words: list[str]) -> str:
    text: list[str] = []
    for word in words:
        figures = word.replace("p", "")
        if figures.isdigit():
            unit = " degrees" if text and text[-1] == "at" else " mm"
            text.append(word.replace("p", ".") + unit)
        elif word == "r":
            text.append("radius")
        elif word == "deep":
            text[-1] += ","
            text.append("deep")
        elif word == "up":
            text[-1] += ","
            text.append("its middle above the lower face by")
        else:
            text.append(word)
    return " ".join(text)
