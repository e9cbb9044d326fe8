"""Names that other programs can take: safe file stems and the names shown in trees."""

from __future__ import annotations

import re
import unicodedata

from rodwright.handover.lists import parts_list
from rodwright.parts import Part, Unit

_LONGEST_STEM = 60
# Letters that don't fall apart into a plain one and a mark.
_LETTERS = str.maketrans({"ß": "ss", "ø": "o", "Ø": "O", "æ": "ae", "Æ": "AE", "ł": "l", "Ł": "L"})


def slug(text: str) -> str:
    """Text as a safe part of a file name: ASCII letters, digits and hyphens; may be empty."""
    decomposed = unicodedata.normalize("NFKD", text.translate(_LETTERS))
    plain = decomposed.encode("ascii", "ignore").decode()
    return re.sub(r"[^A-Za-z0-9]+", "-", plain).strip("-")[:_LONGEST_STEM].rstrip("-")


def file_stems(unit: Unit) -> tuple[str, ...]:
    """A file stem for each row of the parts list, such as ``SD1-left-side``, all different."""
    stems: list[str] = []
    taken: set[str] = set()
    for row in parts_list(unit):
        plain = "-".join(filter(None, (slug(row.refs[0]), slug(row.name).lower()))) or "part"
        stem, number = plain, 1
        while stem.casefold() in taken:
            number += 1
            stem = f"{plain}-{number}"
        taken.add(stem.casefold())
        stems.append(stem)
    return tuple(stems)


def shown_name(part: Part) -> str:
    """Ref and name, as a tree of parts shows them."""
    return f"{part.ref} {part.name}"


def groups(unit: Unit) -> dict[str, tuple[Part, ...]]:
    """The unit's parts by group, in the order in which groups first occur."""
    gathered: dict[str, list[Part]] = {}
    for part in unit.parts:
        gathered.setdefault(part.group, []).append(part)
    return {name: tuple(parts) for name, parts in gathered.items()}
