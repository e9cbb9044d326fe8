"""How checks speak of parts and lengths."""

from __future__ import annotations

from rodwright.lengths import format_length
from rodwright.parts import Part, PocketHole, Unit, Working


def named(part: Part) -> str:
    """A part as the maker finds it: its name and the ref pencilled on it."""
    return f"{part.name} ({part.ref})"


def length_in(unit: Unit, length: float) -> str:
    """A length (mm) in the unit of measure that the spec uses, with that unit."""
    return f"{format_length(length, unit.display_unit)} {unit.display_unit}"


def words(working: Working) -> str:
    """What kind of working it is."""
    return "pocket hole" if isinstance(working, PocketHole) else type(working).__name__.lower()
