"""Weights, areas, volumes and runs, in the words of makers in millimetres or in inches.

Inside they are kilograms, square and cubic metres, metres and N/mm2; this is the edge where they
turn into pounds, square feet, board feet, feet and psi for a spec in inches, and where amounts that
are written with their own unit (``25 kg/m``, ``50 lb/ft2``) are read.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from enum import StrEnum
from math import isfinite

from rodwright.lengths import LengthUnit


@dataclass(frozen=True, slots=True)
class Measure:
    """A unit of measure: its symbol, what one of it is inside, and the decimals it is shown to."""

    symbol: str
    one: float
    decimals: int

    def of(self, amount: float) -> float:
        """An amount (kg, m2, m3, m) in this measure."""
        return amount / self.one

    def said(self, amount: float, decimals: int | None = None) -> str:
        """An amount (kg, m2, m3, m) as text with the symbol."""
        return (
            f"{self.of(amount):.{self.decimals if decimals is None else decimals}f} {self.symbol}"
        )


# By definition: the pound is 0.45359237 kg, the foot 0.3048 m (NIST Special Publication 811,
# appendix B.8); a board foot is a foot square and an inch thick (NIST Handbook 130, from memory).
_FOOT = 0.3048
WEIGHTS: dict[LengthUnit, Measure] = {
    "mm": Measure("kg", 1.0, 1),
    "in": Measure("lb", 0.45359237, 1),
}
AREAS: dict[LengthUnit, Measure] = {
    "mm": Measure("m2", 1.0, 2),
    "in": Measure("sq ft", _FOOT**2, 1),
}
VOLUMES: dict[LengthUnit, Measure] = {
    "mm": Measure("m3", 1.0, 4),
    "in": Measure("board ft", _FOOT**3 / 12, 1),
}
RUNS: dict[LengthUnit, Measure] = {
    "mm": Measure("m", 1.0, 1),
    "in": Measure("ft", _FOOT, 1),
}
RUN_WEIGHTS: dict[LengthUnit, Measure] = {
    "mm": Measure("kg/m", 1.0, 1),
    "in": Measure("lb/ft", WEIGHTS["in"].one / _FOOT, 1),
}
AREA_WEIGHTS: dict[LengthUnit, Measure] = {
    "mm": Measure("kg/m2", 1.0, 0),
    "in": Measure("lb/ft2", WEIGHTS["in"].one / _FOOT**2, 0),
}


def format_weight(kg: float, unit: LengthUnit, decimals: int | None = None) -> str:
    """A weight with its unit: kilograms for a maker in mm, pounds for one in inches."""
    return WEIGHTS[unit].said(kg, decimals)


class Kind(StrEnum):
    """What an amount with a unit is of, and what it is once it is read."""

    WEIGHT = "weight"
    """kg."""
    RUN_WEIGHT = "weight per length"
    """kg/m."""
    AREA_WEIGHT = "weight per area"
    """kg/m2."""
    DENSITY = "density"
    """kg/m3."""
    STRESS = "stiffness or strength"
    """N/mm2."""


@dataclass(frozen=True, slots=True)
class Amount:
    """A value in the measure of its kind."""

    value: float
    kind: Kind


class AmountError(ValueError):
    """Text that is no amount of the kinds that are wanted, and what to write instead."""

    def __init__(self, message: str, remedy: str) -> None:
        """``message`` says what is wrong, ``remedy`` what to do."""
        super().__init__(message)
        self.remedy = remedy


GRAVITY = 9.80665
"""m/s2, standard gravity (NIST Special Publication 811, appendix B.8): by it a weight in newtons
is one in kilograms."""
_POUND = WEIGHTS["in"].one
STRESSES: dict[LengthUnit, Measure] = {
    "mm": Measure("N/mm2", 1.0, 1),
    "in": Measure("psi", _POUND * GRAVITY / (_FOOT * 1000 / 12) ** 2, 0),
}
_HEAVY = {
    ("kg", "kgs", "kilogram", "kilograms"): 1.0,
    ("g", "gram", "grams"): 1e-3,
    ("t", "tonne", "tonnes"): 1e3,
    ("lb", "lbs", "lbf", "pound", "pounds"): _POUND,
    ("stone", "stones"): 14 * _POUND,
    ("n",): 1 / GRAVITY,
    ("kn",): 1e3 / GRAVITY,
}
_LONG = {
    ("m", "metre", "metres", "meter", "meters"): 1.0,
    ("dm",): 0.1,
    ("cm",): 0.01,
    ("mm",): 0.001,
    ("ft", "foot", "feet"): _FOOT,
    ("in", "inch", "inches"): _FOOT / 12,
}
_WEIGHTS = {name: kg for names, kg in _HEAVY.items() for name in names}
_LENGTHS = {name: metres for names, metres in _LONG.items() for name in names}
_NAMED = {
    "pa": (1 / GRAVITY, 2),
    "kpa": (1e3 / GRAVITY, 2),
    "mpa": (1e6 / GRAVITY, 2),
    "gpa": (1e9 / GRAVITY, 2),
    "psi": (_POUND / (_FOOT / 12) ** 2, 2),
    "ksi": (1e3 * _POUND / (_FOOT / 12) ** 2, 2),
    "psf": (_POUND / _FOOT**2, 2),
    "plf": (_POUND / _FOOT, 1),
    "pcf": (_POUND / _FOOT**3, 3),
}
"""Units with a name of their own: kg per m to the power that stands beside it."""
_POWERS = {
    Kind.WEIGHT: 0,
    Kind.RUN_WEIGHT: 1,
    Kind.AREA_WEIGHT: 2,
    Kind.DENSITY: 3,
    Kind.STRESS: 2,
}
_EXAMPLES = {
    Kind.WEIGHT: ("30 kg", "65 lb"),
    Kind.RUN_WEIGHT: ("25 kg/m", "30 lb/ft"),
    Kind.AREA_WEIGHT: ("50 lb/ft2", "200 kg/m2", "1.92 kPa"),
    Kind.DENSITY: ("680 kg/m3", "42 lb/ft3"),
    Kind.STRESS: ("9500 N/mm2", "9.5 GPa", "1400000 psi"),
}
_LONGEST_TEXT = 60
_WRITTEN = re.compile(
    r"(?P<number>[-+]?(?:[0-9]+(?:\.[0-9]*)?|\.[0-9]+)(?:e[-+]?[0-9]+)?)(?P<unit>.*)"
)
_NO_NUMBERS = re.compile(r"[-+.]*(?:nan|inf|infinity)\b")


def parse_amount(text: object, kinds: Sequence[Kind]) -> Amount:
    """An amount as a maker writes it, ``25 kg/m`` or ``50 lb/ft2``, if it is of one of ``kinds``.

    Units are made of a weight (kg, g, t, lb, stone, N, kN) and, but for a weight alone, ``/`` or
    ``per`` and a length (m, dm, cm, mm, ft, in), square (``m2``, ``sq ft``) or cubic; or they
    are Pa, kPa, MPa, GPa, psi, ksi, psf, plf or pcf.  What fits two of the kinds is of the first.
    Zero is an amount.

    Raises:
        AmountError: it is none of these; it says what is wrong and what to write.
    """
    most = len(_EXAMPLES) if len(kinds) == 1 else 1
    examples = [each for kind in kinds for each in _EXAMPLES[kind][:most]]
    remedy = f"Write it like {_either([f'`{each}`' for each in examples])}."
    wanted = _either([f"a {kind}" for kind in kinds])
    if isinstance(text, bool) or not isinstance(text, str | int | float):
        raise AmountError(f"this can't be read as {wanted}", remedy)
    plain, shown = _plain(str(text)), _shown(str(text))
    if _NO_NUMBERS.match(plain):
        raise AmountError(f"`{shown}` is no number", remedy)
    found = _WRITTEN.fullmatch(plain)
    if found is None or len(plain) > _LONGEST_TEXT:
        raise AmountError(
            f"{f'`{shown}`' if plain else 'an empty text'} can't be read as {wanted}", remedy
        )
    number, unit = float(found["number"]), found["unit"].strip()
    if unit.startswith(",") and unit[1:2].isdigit():
        raise AmountError(
            f"`{shown}` has a comma in it; write decimals with a point (`12.5`) and thousands "
            "without a mark (`1250`)",
            remedy,
        )
    if not unit:
        raise AmountError(f"`{shown}` has no unit", remedy)
    factor, power = _unit(unit, shown, remedy)
    kind = next((each for each in kinds if _POWERS[each] == power), None)
    if kind is None:
        is_of = next(each for each, of in _POWERS.items() if of == power)
        raise AmountError(f"`{shown}` is a {is_of}, where {wanted} is wanted", remedy)
    if number < 0:
        raise AmountError(f"`{shown}` is less than zero", remedy)
    value = number * factor * (GRAVITY / 1e6 if kind is Kind.STRESS else 1.0)
    if not isfinite(value):
        raise AmountError(f"`{shown}` is too large a number", remedy)
    return Amount(value, kind)


def _unit(unit: str, shown: str, remedy: str) -> tuple[float, int]:
    """What one of a unit is in kg per m to a power, and that power.

    Raises:
        AmountError: it isn't known.
    """
    if unit in _NAMED:
        return _NAMED[unit]
    weight, slash, below = (each.strip() for each in unit.partition("/"))
    length, power = below, 1
    if below[-1:] in ("2", "3"):
        length, power = below[:-1].strip(), int(below[-1])
    if weight in _WEIGHTS and not slash:
        return _WEIGHTS[weight], 0
    if weight in _WEIGHTS and length in _LENGTHS:
        return _WEIGHTS[weight] / _LENGTHS[length] ** power, power
    raise AmountError(f"`{unit}` in `{shown}` isn't a unit that is known here", remedy)


def _plain(text: str) -> str:
    """The text in small ASCII letters, with ``/`` for per and ``2`` for square."""
    plain = unicodedata.normalize("NFKC", text).replace("−", "-").replace("⁄", "/").lower()
    plain = re.sub(r"\s+", " ", plain.replace("^", "")).strip()
    plain = re.sub(r"\bper\b", "/", plain)
    plain = re.sub(r"\b(?:sq(?:uare|\.)?|cu(?:bic|\.)?) ?([a-z]+)", _powered, plain)
    return re.sub(r" ?/ ?", "/", plain)


def _powered(found: re.Match[str]) -> str:
    return f"{found[1]}{2 if found[0].startswith('sq') else 3}"


def _shown(text: str) -> str:
    line = " ".join(text.split())
    return line if len(line) <= _LONGEST_TEXT else f"{line[: _LONGEST_TEXT - 1]}…"


def _either(words: Sequence[str]) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} or {words[-1]}"
