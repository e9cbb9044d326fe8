"""The page of materials, docs/materials.md, made from the tables.

`python tests/kit/materials_page.py docs/materials.md` writes it anew.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path

from rodwright.trade.materials import MATERIALS
from rodwright.trade.mechanics import Family, Mechanics, mechanics_of
from rodwright.trade.sources import Figure
from rodwright.trade.timber_classes import TIMBER_CLASSES

_HEAD = """\
# How stiff and strong materials are

What Rodwright reckons with where a spec says nothing else: `strength` in a stock goes before it.
Made from the tables in `generator/rodwright/trade/`, not by hand. Moduli and strengths in N/mm2
(1 N/mm2 is 145 psi), of the whole thickness lying flat, along the grain of a board and of a
sheet's face; `creep` is by how much of itself a sag grows in years in a heated room (kdef of EN
1995-1-1). A figure with `?` is from memory, or a stated estimate; the others were read in the
work named, some of them in a transcription. `-` isn't known: what hangs on it is told as not
known. Strengths marked `m` are means of clear pieces, of which nineteen in twenty reach three
quarters; the others are what nineteen in twenty reach. Melamine-faced and veneered boards have
the figures of their core, and `osb`, `chipboard` and `mr mdf` those that their row names.
"""
_COLUMNS = (
    "material", "kg/m3", "E along", "E across", "G flat", "G in its plane", "bending", "shear",
    "bearing", "creep", "sources",
)  # fmt: skip
_THICKNESSES = {
    "birch plywood": (4.0, 6.5, 9.0, 12.0, 15.0, 18.0, 21.0, 24.0, 27.0, 30.0),
    "softwood plywood": (12.0, 24.0),
    "hardboard": (3.2,), "hb.la": (3.2,), "hb.hla2": (3.2,), "hdf": (3.0,), "glass": (6.0,),
}  # fmt: skip


def page() -> str:
    """The page, Markdown."""
    woods = [name for name in MATERIALS if _family(name) is Family.SOLID_WOOD]
    graded = [name for name in woods if name.upper() in TIMBER_CLASSES]
    sheets = [n for n in MATERIALS if n not in woods and "-veneered" not in n and "-faced" not in n]
    parts = [_HEAD]
    sources: dict[str, int] = {}
    for title, names in (
        ("Solid wood", [name for name in woods if name not in graded]),
        ("Strength classes of timber", graded),
        ("Sheets, 18 mm thick unless said", sheets),
    ):
        parts.append(f"\n## {title}\n\n| {' | '.join(_COLUMNS)} |\n|{' --- |' * len(_COLUMNS)}\n")
        parts += [f"| {' | '.join(row)} |\n" for name in names for row in _rows(name, sources)]
    parts.append("\n## Sources\n\n")
    parts += [f"{number}. {work}\n" for work, number in sources.items()]
    return "".join(parts)


def _family(name: str) -> Family | None:
    found = mechanics_of(name, 18.0)
    return found.family if found else None


def _rows(name: str, sources: dict[str, int]) -> Iterator[tuple[str, ...]]:
    for thickness in _THICKNESSES.get(name, (18.0,)):
        of = mechanics_of(name, thickness)
        assert of is not None
        said = f"{name}, {thickness:g} mm" if name in _THICKNESSES else name
        yield (
            f"{said} ({of.borrowed})" if of.borrowed else said,
            f"{MATERIALS[name].density:g}",
            *(_cell(figure, sources) for figure in (of.along, of.across, of.shear, of.panel_shear)),
            *(
                _strength(figure, of, sources)
                for figure in (of.bending, of.shear_strength, of.bearing)
            ),
            _cell(of.creep, sources),
            _numbers(of, sources),
        )


def _cell(figure: Figure | None, sources: dict[str, int]) -> str:
    if figure is None:
        return "-"
    sources.setdefault(figure.source.work, len(sources) + 1)
    decimals = 0 if figure.value >= 200 else 2
    number = f"{figure.value:.{decimals}f}"
    shown = number.rstrip("0").rstrip(".") if decimals else number
    return shown if figure.source.seen else f"{shown}?"


def _strength(figure: Figure | None, of: Mechanics, sources: dict[str, int]) -> str:
    return _cell(figure, sources) + ("" if figure is None or of.characteristic else " m")


def _numbers(of: Mechanics, sources: dict[str, int]) -> str:
    shown = (
        of.along, of.across, of.shear, of.panel_shear, of.bending, of.shear_strength, of.bearing,
        of.creep,
    )  # fmt: skip
    return ", ".join(dict.fromkeys(str(sources[figure.source.work]) for figure in shown if figure))


if __name__ == "__main__":
    Path(sys.argv[1]).write_text(page(), encoding="utf-8")
