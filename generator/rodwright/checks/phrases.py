"""How checks speak of parts and lengths."""

from __future__ import annotations

from collections.abc import Callable

from rodwright.amounts import STRESSES, format_weight
from rodwright.lengths import format_length, told_apart
from rodwright.unit import DOORS, DRAWERS, Motion, Part, Role, Unit


def named(part: Part) -> str:
    """A part as the maker finds it: its name, the door or drawer it belongs to, and the ref
    pencilled on it."""
    of = f" of {part.group.lower()}" if _opens(part) and part.role is not Role.DOOR else ""
    return f"{part.name}{of} ({part.ref})"


def what_opens(unit: Unit, motion: Motion) -> str:
    """The door or drawer that a motion opens, with the ref of the first part that moves."""
    return opened(unit.part(motion.refs[0]))


def opened(part: Part) -> str:
    """The door or drawer that a part belongs to, with the part's ref; the part where it is of
    neither."""
    return f"{part.group.lower()} ({part.ref})" if _opens(part) else named(part)


def _opens(part: Part) -> bool:
    return part.role in (*DOORS, *DRAWERS)


def length_in(unit: Unit, length: float) -> str:
    """A length (mm) in the unit of measure that the spec uses, with that unit."""
    return f"{format_length(length, unit.display_unit)} {unit.display_unit}"


def held_to(unit: Unit, length: float, limit: float) -> tuple[str, str]:
    """A length and its limit (mm) in the unit of measure that the spec uses, with that unit: two
    that differ never read alike."""
    texts = told_apart(length, limit, unit.display_unit)
    return (f"{texts[0]} {unit.display_unit}", f"{texts[1]} {unit.display_unit}")


def moves_in(unit: Unit, length: float) -> str:
    """How far something moves (mm): what is finer than a length is told to, but not nothing, is
    said to be under it."""
    said = length_in(unit, length)
    if length > 0 and said == length_in(unit, 0.0):
        return f"under {_FINEST[unit.display_unit]}"
    return said


_FINEST = {"mm": "0.1 mm", "in": "1/64 in"}


def stress_in(unit: Unit, stress: float, decimals: int = 1) -> str:
    """A stress (N/mm2) with its unit: in whole psi for a maker in inches."""
    measure = STRESSES[unit.display_unit]
    return measure.said(stress, decimals if unit.display_unit == "mm" else None)


def past_limit(figure: float, limit: float, shown: Callable[[float], str]) -> tuple[str, str]:
    """A figure beyond its limit, and the limit, as they are ``shown``: two that differ never read
    alike."""
    text, most = shown(figure), shown(limit)
    if text != most or figure == limit:
        return text, most
    return f"just {'over' if figure > limit else 'under'} {most}", most


def weight_in(unit: Unit, kg: float, decimals: int = 0) -> str:
    """A weight in kilograms, or in pounds for a maker in inches."""
    return format_weight(kg, unit.display_unit, decimals)
