"""Lengths as makers write them, to millimetres and back.

``18``, ``18 mm``, ``1.2 m``, ``23 5/8 in``, ``3/4"``, ``6 ft 3 1/4 in`` are all lengths.
Arithmetic is exact (fractions) until the last step.
"""

from __future__ import annotations

import math
import re
import unicodedata
from collections.abc import Sequence
from fractions import Fraction
from math import ceil, floor
from typing import Literal

LengthUnit = Literal["mm", "in"]
"""The unit of a spec file: what a bare number in it means."""

# The inch is exactly 25.4 mm, by the international yard and pound agreement of 1959
# (NIST Special Publication 811, appendix B.8).
_INCH = Fraction(254, 10)
_MM_PER: dict[str, Fraction] = {
    "mm": Fraction(1),
    "cm": Fraction(10),
    "m": Fraction(1000),
    "in": _INCH,
    "inch": _INCH,
    "inches": _INCH,
    '"': _INCH,
    "ft": 12 * _INCH,
    "foot": 12 * _INCH,
    "feet": 12 * _INCH,
    "'": 12 * _INCH,
}
_LONGEST = 100_000
_LONGEST_TEXT = 60
INCH_PARTS = 64
"""Inches are shown to this part of one: the finest that rules are divided into (common practice,
no source)."""
_NOISE = Fraction(1, 10**6)
"""mm.  Lengths that differ by no more are equal: sums of floats leave no more than that."""
_STEPS: dict[LengthUnit, Fraction] = {"mm": Fraction(1, 10), "in": _INCH / INCH_PARTS}
_DECIMALS: dict[LengthUnit, int] = {"mm": 2, "in": 3}
"""Of lengths that would else read like what they are held to."""
_UNITS: tuple[LengthUnit, ...] = ("mm", "in")

_EXAMPLES = {
    "mm": "`18`, `18 mm`, `1.2 m` or `3/4 in`",
    "in": "`18`, `23 5/8`, `3/4 in`, `6 ft 3 1/4 in` or `18 mm`",
}

_AMOUNT = r"""(?P<{0}whole>[0-9]+)[ ]+(?P<{0}over>[0-9]+)[ ]?/[ ]?(?P<{0}under>[0-9]+)
    |(?P<{0}hyphened>[0-9]+)-(?P<{0}hyphened_over>[0-9]+)/(?P<{0}hyphened_under>[0-9]+)
    |(?P<{0}lone_over>[0-9]+)[ ]?/[ ]?(?P<{0}lone_under>[0-9]+)
    |(?P<{0}decimal>[0-9]+(?:\.[0-9]*)?|\.[0-9]+)"""
_ONE = re.compile(
    rf"(?:{_AMOUNT.format('')})[ ]?(?P<unit>mm|cm|m|inches|inch|in|\"|ft|foot|feet|')?", re.VERBOSE
)
_FEET_AND_INCHES = re.compile(
    rf"(?P<feet>[0-9]+)[ ]?(?:ft|foot|feet|')[ ]?-?[ ]?"
    rf"(?:{_AMOUNT.format('')})[ ]?(?:inches|inch|in|\")",
    re.VERBOSE,
)
_MARKS = str.maketrans({"′": "'", "’": "'", "″": '"', "”": '"', "⁄": "/", "−": "-"})


def parse_length(value: float | str, unit: LengthUnit) -> float:
    """Millimetres from a number in ``unit``, or from text with a unit of its own or none.

    Text takes mm, cm, m, in (inch, inches, ``"``) and ft (foot, feet, ``'``), fractions
    (``3/4``, ``23 5/8``, ``23-5/8``, ``¾``) and a decimal point.  Zero is a length here;
    fields that need more say so themselves.

    Raises:
        ValueError: it isn't a length; the message says what was read and what is expected.
    """
    if isinstance(value, bool):
        raise ValueError(_unreadable("true" if value else "false", unit))
    if isinstance(value, str):
        amount = _read(value, unit)
    else:
        written = repr(float(value) if isinstance(value, float) else value)
        if written in ("nan", "inf", "-inf"):
            raise ValueError(_unreadable(written, unit))
        # repr gives back the decimals that were written: 23.1 in is exactly 586.74 mm.
        amount = Fraction(written) * _MM_PER[unit]
        if amount < 0:
            raise ValueError(_negative(written))
    if amount > _LONGEST:
        hint = "is it in mm?" if unit == "in" else "check its unit"
        raise ValueError(f"`{_shown(str(value))}` is more than 100 m long; {hint}")
    return float(amount)


def to_inches(mm: float) -> Fraction:
    """A length in mm in inches, to the nearest 1/64: the one rounding of all inches shown.

    A half goes up (of a length below zero, down), and so does what is a half but for 1e-6 mm: equal
    pieces read alike whichever sums made them.
    """
    return Fraction(_steps(mm, "in"), INCH_PARTS)


def from_inches(inches: str) -> float:
    """Millimetres from inches as a maker writes them (``1 1/2``), for sizes given in a program."""
    return parse_length(inches, "in")


def format_length(mm: float, unit: LengthUnit) -> str:
    """A length in mm as text in ``unit``, without the unit itself.

    Millimetres are rounded to one decimal, which is dropped where it is 0 (``602.5``,
    ``18``), inches to the nearest 1/64 as a reduced fraction (``23 5/8``, ``3/4``, ``0``); halves
    as in :func:`to_inches`.
    """
    if unit == "mm":
        return f"{_steps(mm, unit) / 10:.1f}".removesuffix(".0")
    inches = to_inches(mm)
    whole, rest = divmod(abs(inches), 1)
    sign = "-" if inches < 0 else ""
    if rest == 0:
        return f"{sign}{whole}"
    return f"{sign}{whole} {rest}" if whole else f"{sign}{rest}"


def as_shown(mm: float, unit: LengthUnit) -> float:
    """A length in mm as :func:`format_length` has it, in mm again: what is set by who reads it."""
    return float(_steps(mm, unit) * _STEPS[unit])


def shown_adding_up(
    lengths: Sequence[float], unit: LengthUnit, kept: Sequence[int]
) -> tuple[str, ...]:
    """Lengths in mm as text in ``unit`` that add up, as they are read, to their sum as it is read.

    Each is as :func:`format_length` has it, or one step (0.1 mm, 1/64 in) off, none below 0: first
    those that are least ``kept``, and of them the ones that rounding took farthest the other way
    (the largest remainders); of equal ones the later first.
    """
    steps = [_steps(each, unit) for each in lengths]
    lack = _steps(math.fsum(lengths), unit) - sum(steps)
    one = 1 if lack > 0 else -1
    lost = [
        one * (Fraction(each) / _STEPS[unit] - step)
        for each, step in zip(lengths, steps, strict=True)
    ]
    able = [at for at, step in enumerate(steps) if step + one >= 0]
    in_turn = sorted(able, key=lambda at: (kept[at], -round(lost[at], 3), -at))
    for at in in_turn[: abs(lack)]:
        steps[at] += one
    return tuple(format_length(float(each * _STEPS[unit]), unit) for each in steps)


def told_apart(mm: float, limit: float, unit: LengthUnit) -> tuple[str, str]:
    """A length and what it is held to (mm) as text in ``unit``, without the unit.

    They read as :func:`format_length` has them; where that reads alike of two that differ, with
    decimals, and where these do too, as ``just over`` or ``just under`` (``just over 0.233``).
    """
    coarse = format_length(mm, unit), format_length(limit, unit)
    if coarse[0] != coarse[1] or mm == limit:
        return coarse
    one, decimals = float(_MM_PER[unit]), _DECIMALS[unit]
    length, its = f"{mm / one:.{decimals}f}", f"{limit / one:.{decimals}f}"
    if length != its:
        return length, its
    return f"just {'over' if mm > limit else 'under'} {its}", its


def format_difference(mm: float, unit: LengthUnit) -> str:
    """A difference in mm as text in ``unit``, with its sign (``+1.5``, ``-3/16``, ``0``)."""
    text = format_length(mm, unit)
    return text if text.startswith("-") or text == "0" else f"+{text}"


def sold_in_mm(mm: float) -> bool:
    """Whether a size is one of metric ware: whole tenths of a mm, and no 64th of an inch."""
    metric, inches = (_off(mm, _STEPS[unit]) for unit in _UNITS)
    return metric <= _NOISE < inches


def ware_size(mm: float, unit: LengthUnit) -> str:
    """A size as :func:`format_length` has it; of metric ware, for a maker in inches, as it is sold
    with the inches beside it: ``35 mm (1 3/8)``."""
    shown = format_length(mm, unit)
    if unit == "mm" or not sold_in_mm(mm):
        return shown
    return f"{format_length(mm, 'mm')} mm ({shown})"


def at_least(mm: float, unit: LengthUnit) -> float:
    """A length (mm) up to the next that is shown: what is said to be enough has to be enough."""
    step = _STEPS[unit]
    return float(ceil(round(Fraction(mm) / step, 9)) * step)


def at_most(mm: float, unit: LengthUnit) -> float:
    """A length (mm) down to the next that is shown."""
    step = _STEPS[unit]
    return float(floor(round(Fraction(mm) / step, 9)) * step)


def _steps(mm: float, unit: LengthUnit) -> int:
    """A length in mm in the steps that are shown, to the nearest."""
    steps = floor((abs(Fraction(mm)) + _NOISE) / _STEPS[unit] + Fraction(1, 2))
    return -steps if mm < 0 else steps


def _off(mm: float, step: Fraction) -> Fraction:
    """By how much (mm) a length is off the nearest whole number of steps."""
    steps = Fraction(mm) / step
    return abs(steps - round(steps)) * step


def _read(text: str, unit: LengthUnit) -> Fraction:
    plain = _plain(text)
    if plain.startswith("-"):
        raise ValueError(_negative(text))
    if len(plain) > _LONGEST_TEXT:
        raise ValueError(_unreadable(text, unit))
    feet = _FEET_AND_INCHES.fullmatch(plain)
    if feet is not None:
        return int(feet["feet"]) * _MM_PER["ft"] + _amount(feet, text) * _INCH
    found = _ONE.fullmatch(plain)
    if found is None:
        if re.search(r"[0-9],[0-9]", plain):
            raise ValueError(
                f"`{_shown(text)}` has a comma in it; write decimals with a point (`12.5`) "
                "and thousands without a mark (`1250`)"
            )
        raise ValueError(_unreadable(text, unit))
    if found["unit"] is None and found["decimal"] is None and unit == "mm":
        raise ValueError(
            f"`{_shown(text)}` is a fraction without a unit in a file in mm; "
            f"if inches are meant, write `{_shown(text)} in`"
        )
    return _amount(found, text) * _MM_PER[found["unit"] or unit]


def _amount(found: re.Match[str], text: str) -> Fraction:
    if found["decimal"] is not None:
        return Fraction(found["decimal"].rstrip("."))
    whole = int(found["whole"] or found["hyphened"] or 0)
    over = int(found["over"] or found["hyphened_over"] or found["lone_over"])
    under = int(found["under"] or found["hyphened_under"] or found["lone_under"])
    if under == 0:
        raise ValueError(f"`{_shown(text)}` divides by zero; write a fraction like `3/4`")
    if found["lone_over"] is None and over >= under:
        raise ValueError(
            f"`{_shown(text)}` has a fraction of 1 or more beside a whole number; "
            "check the fraction"
        )
    return whole + Fraction(over, under)


def _plain(text: str) -> str:
    """The text with every fraction, mark and space in its ASCII form, in small letters."""
    spelt = []
    for character in text.translate(_MARKS):
        if unicodedata.decomposition(character).startswith("<fraction>"):
            spelt.append(" " + unicodedata.normalize("NFKC", character).translate(_MARKS))
        else:
            spelt.append(" " if character.isspace() else character)
    return re.sub(" +", " ", "".join(spelt).replace("''", '"')).strip().lower()


def _shown(text: str) -> str:
    return text if len(text) <= _LONGEST_TEXT else text[: _LONGEST_TEXT - 1] + "…"


def _unreadable(text: str, unit: LengthUnit) -> str:
    read = f"`{_shown(text)}`" if text.strip() else "an empty text"
    return f"{read} can't be read as a length; write it like {_EXAMPLES[unit]}"


def _negative(text: str) -> str:
    return f"`{_shown(text)}` is less than zero; a length can't be negative"
