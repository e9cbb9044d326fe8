"""How far a board spans, what it carries, or how thick it must be: no spec needed."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from difflib import get_close_matches
from functools import cache
from math import inf, isfinite
from typing import Any, get_args

from rodwright.amounts import AmountError, Kind, parse_amount
from rodwright.lengths import LengthUnit, format_length, parse_length
from rodwright.problems import Problem, ProblemsError
from rodwright.setout import set_out_unit
from rodwright.strength.plain_board import PlainBoard, UnanswerableError
from rodwright.strength.span import SHORTEST
from rodwright.strength.span_answer import SpanAnswer, answer
from rodwright.strength.span_question import HEIGHT, Question
from rodwright.strength.turning import MEASURE, turning_of
from rodwright.trade.loads import Burden, most_per_metre, read_burden
from rodwright.trade.mechanics import Family, Mechanics
from rodwright.trade.sources import Figure, Source
from rodwright.unit import Role
from rodwright.wishes.joints import JointWord
from rodwright.wishes.models import UnitSpec

__all__ = ["LIMIT", "YEARS", "SpanAnswer", "span"]

LIMIT, YEARS = 200.0, 10.0
"""The limit and the years unless said (common practice, no source)."""
DEPTHS: dict[LengthUnit, float] = {"mm": 300.0, "in": 304.8}
"""mm.  A shelf's depth unless said: 300 mm or 12 in (common practice, no source)."""
_ASKED = Source("as asked")
_USUAL_LIMIT = Source("span over 200 unless said: common practice, no source")
_PINNED, _FIXED = "pinned", "fixed"
_JOINTS: tuple[str, ...] = get_args(JointWord)
_WAYS = (_PINNED, _FIXED, *_JOINTS)
_INCHES = re.compile(r'in\b|inch|"|″|ft\b|feet|foot|\'|′', re.IGNORECASE)
_CASE = 900.0
_LEAST_LIMIT = 20.0


def span(
    material: str,
    thickness: str | None = None,
    *,
    load: str | None = None,
    length: str | None = None,
    depth: str | None = None,
    limit: float | None = None,
    years: float | None = None,
    ends: str | None = None,
    e: str | None = None,
) -> SpanAnswer:
    """The greatest span (``length`` left out), load, or least thickness of a shelf; with all three
    given, whether it holds.

    Lengths as makers write them: bare numbers are mm, or inches where one of them is written in
    inches.  ``load`` is a use (``books``) or an amount, ``ends`` is `pinned`,
    `fixed` or one of the spec's joints, ``e`` a modulus of elasticity of the maker's own.

    Raises:
        ProblemsError: something can't be read, isn't known, or more than one of thickness, load and
            length is left out; or no shelf answers.
    """
    unit = _unit_of(thickness, length, depth)
    sizes = _Sizes(unit)
    thick = sizes.read("thickness", thickness, 1.0, 200.0)
    clear = sizes.read("--span", length, SHORTEST, 100_000.0)
    deep = sizes.read("--depth", depth, 20.0, 3_000.0)
    if [thick, clear, load].count(None) > 1:
        raise _problem(
            "two of thickness, --load and --span are needed; the third is worked out",
            "Say for instance `rodwright span mdf 18 --load books`, "
            "`rodwright span mdf 18 --span 800` or `rodwright span mdf --span 800 --load books`.",
        )
    notes: list[str] = []
    burden = None if load is None else _burden(load, unit, clear, notes)
    way = _way(ends)
    over = _number("--limit", limit, LIMIT, _LEAST_LIMIT, 2_000.0)
    lasts = _number("--years", years, YEARS, 0.0, 200.0)
    deepness = DEPTHS[unit] if deep is None else deep
    notes += _assumed(depth=deep, ends=ends, years=years)
    if way in _JOINTS:
        notes.append(f"its ends are {way} to sides of the same board")
    try:
        board = PlainBoard(material, None if e is None else _modulus(e))
        board.check(thick, lasts)
        turning = _turning(way, board, deepness)
        if thick is not None:
            turning(thick)  # a joint that can't be made in it is told now
        return answer(
            Question(
                material,
                _that_can_be_made(board, turning),
                turning,
                board.density,
                deepness,
                thick,
                clear,
                burden,
                over,
                lasts,
                way,
                _ASKED if limit is not None else _USUAL_LIMIT,
                (*notes, *board.notes(thick, lasts)),
                unit,
            )
        )
    except UnanswerableError as error:
        raise _problem(str(error), error.remedy) from None


def _assumed(depth: float | None, ends: str | None, years: float | None) -> Iterator[str]:
    """What was taken as usual."""
    if depth is None:
        yield "its depth is assumed (--depth)"
    if ends is None:
        yield "its ends are taken to turn freely, as on pins or cleats (--ends)"
    if years is None:
        yield f"it is to last {YEARS:g} years (--years)"


def _that_can_be_made(
    board: PlainBoard, turning: Callable[[float], Figure]
) -> Callable[[float], Mechanics | None]:
    """What is known of a board by thickness; None also where its ends can't be jointed so."""

    def known(thickness: float) -> Mechanics | None:
        try:
            turning(thickness)
        except ProblemsError:
            return None
        return board.known(thickness)

    return known


def _unit_of(*lengths: str | None) -> LengthUnit:
    """Inches if one of these is written in inches or feet, else mm."""
    return "in" if any(each and _INCHES.search(each) for each in lengths) else "mm"


class _Sizes:
    """Reads lengths in one unit."""

    def __init__(self, unit: LengthUnit) -> None:
        self._unit = unit

    def read(self, name: str, text: str | None, least: float, most: float) -> float | None:
        """A length (mm) between two others, or None.

        Raises:
            ProblemsError: it can't be read, or makes no shelf.
        """
        if text is None:
            return None
        try:
            found = parse_length(text, self._unit)
        except ValueError as error:
            said = str(error).replace(" in a file in mm", "")
            raise _problem(f"{name}: {said}", 'Write it like `18`, `"3/4 in"`.') from None
        if not least <= found <= most:
            raise _problem(
                f"{name}: {found:g} mm is no size of a shelf; from {least:g} to {most:g} mm is",
                "Check the figure and its unit: bare numbers are mm.",
            )
        return found


def _stock(board: PlainBoard, thickness: float) -> dict[str, Any]:
    """A board as a stock of a spec."""
    known = board.known(thickness)
    solid = known is not None and known.family is Family.SOLID_WOOD
    stock: dict[str, Any] = {
        "kind": "board" if solid else "sheet",
        "material": board.material,
        "thickness": thickness,
        "density": board.density.value,
    }
    if board.modulus is not None:
        stock["strength"] = {"stiffness": f"{board.modulus.value!r} N/mm2"}
    return stock


def _turning(way: str, board: PlainBoard, depth: float) -> Callable[[float], Figure]:
    """How stiffly ends are held, by the board's thickness: by the joint's in a case of that board.

    Raises (when it is called):
        ProblemsError: such a joint can't be made in it.
    """
    if way not in _JOINTS:
        rigid = inf if way == _FIXED else 0.0
        return lambda _: Figure(rigid, MEASURE, Source(f"ends {way}, as asked"))

    @cache
    def by_thickness(thickness: float) -> Figure:
        unit = set_out_unit(
            UnitSpec.model_validate(
                {
                    "title": "Span",
                    "size": {"width": _CASE, "height": _CASE, "depth": depth},
                    "stock": {"board": _stock(board, thickness)},
                    "carcass": {"stock": "board", "corners": "butted"},
                    "interior": {"shelves": {"count": 1, "fixed": True, "ends": way}},
                },
                context={"unit": "mm"},
            )
        )
        shelf = next(part.ref for part in unit.parts if part.role is Role.SHELF)
        joints = (each for each in unit.joints if shelf in (each.first, each.second))
        return min((turning_of(unit, each) for each in joints), key=lambda each: each.value)

    return by_thickness


def _burden(load: str, unit: LengthUnit, clear: float | None, notes: list[str]) -> Burden:
    try:
        burden = read_burden(load, unit)
    except AmountError as error:
        raise _problem(f"--load: {error}", error.remedy) from None
    if burden.manner == "hangs":
        raise _problem(
            f"--load: {burden.said} hang on a rail, not on a shelf",
            'Write what lies on the shelf: `--load books`, `--load "25 kg/m"`.',
        )
    if burden.amount.value == 0:
        raise _problem("--load: nothing lies on it", "Leave --load out and give --span.")
    if clear is not None and burden.per_metre(clear, 1000.0, HEIGHT) > _most(burden):
        over = f"{format_length(clear, unit)} {unit}"
        raise _problem(
            f"--load: `{load}` is more than a shelf carries over {over}",
            "Check the figure and its unit.",
        )
    if burden.amount.kind is Kind.DENSITY:
        notes.append(f"a clear height of {HEIGHT:g} mm is filled with {burden.said}")
    if burden.manner == "stands":
        notes.append(f"{burden.said} stands in its middle")
    return burden


def _most(burden: Burden) -> float:
    """The most that a shelf carries, kg/m; loads that say it by length or area were checked."""
    return most_per_metre() if burden.amount.kind is Kind.WEIGHT else inf


def _modulus(e: str) -> Figure:
    try:
        value = round(parse_amount(e, [Kind.STRESS]).value, 6)
    except AmountError as error:
        raise _problem(f"--e: {error}", error.remedy) from None
    if not 100 <= value <= 250_000:
        raise _problem(
            f"--e: `{e}` can't be; boards have 100 N/mm2 at least, and steel has 210000 N/mm2",
            "Check the figure and its unit: 1 N/mm2 is 1 MPa or 145 psi.",
        )
    return Figure(value, "N/mm2", Source("given with --e"))


def _way(ends: str | None) -> str:
    if ends is None:
        return _PINNED
    way = ends.strip().lower().replace("_", "-")
    if way not in _WAYS:
        near = get_close_matches(way, _WAYS, n=1)
        raise _problem(
            f"--ends: `{ends}` isn't known",
            f"{f'Did you mean `{near[0]}`? ' if near else ''}There are: {', '.join(_WAYS)}.",
        )
    return way


def _number(name: str, given: float | None, usual: float, least: float, most: float) -> float:
    value = usual if given is None else given
    if not isfinite(value) or not least <= value <= most:
        raise _problem(f"{name}: {value:g} can't be", f"Give a number from {least:g} to {most:g}.")
    return value


def _problem(message: str, remedy: str) -> ProblemsError:
    return ProblemsError([Problem(message, remedy)])
