"""What hangs on a figure of a spec: found by setting the unit out again with another one there."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import fields, is_dataclass

from rodwright.jobs.look.figures import Figure
from rodwright.lengths import parse_length
from rodwright.page import document as page
from rodwright.problems import KeyPath, ProblemsError
from rodwright.setout import set_out
from rodwright.unit import Part, Unit
from rodwright.wishes import SpecFile, UnitSpec
from rodwright.wishes.limits import beyond_limits
from rodwright.wishes.reading.documents import Data
from rodwright.wishes.reading.editing import data_with
from rodwright.wishes.reading.validation import validate

_TRIED_BY = {"mm": 1.0, "in": parse_length("1/16", "in")}
"""mm that a length is changed by, by the spec's unit: the least that makers set out to."""
_NOISE = 0.005
"""mm.  What differs by less came of floating-point arithmetic."""
_OF_A_PIECE = ("name", "role", "blank", "workings", "lipped", "edged")
"""What of a part is the piece itself, wherever it stands."""
_COUNTED = ("shelves", "doors", "drawers")


def hanging_on(
    same: Sequence[Figure], spec: SpecFile, unit: Unit, wished: Mapping[str, KeyPath]
) -> page.Hanging | None:
    """What hangs on figures that are one in the file (see :func:`figures.told_once`).

    ``unit`` is what ``spec`` makes, ``wished`` where each of its parts (by ref) was.  A length is
    tried one millimetre or sixteenth of an inch longer, a count one more, a share twice as large;
    where that makes no unit the other way.  None where neither makes one.
    """
    for value in _others(same[0], spec):
        other = _made(spec, [each.path for each in same], value)
        if other is not None:
            return _compared(unit, other, lambda ref: _counted(same, wished.get(ref, ())))
    return None


def _others(figure: Figure, spec: SpecFile) -> Iterator[Data]:
    value = figure.value
    if figure.count:
        assert isinstance(value, int)
        if figure.most is None or value < figure.most:
            yield value + 1
        if value > (figure.least or 0):
            yield value - 1
    elif isinstance(value, str) and "share" in value:
        for times in (2, 0.5):
            yield f"{float(value.split()[0]) * times:g} shares"
    else:
        mm, by = parse_length(value, spec.spec.unit), _TRIED_BY[spec.spec.unit]
        yield f"{mm + by:.6f} mm"
        if mm > by:
            yield f"{mm - by:.6f} mm"


def _made(spec: SpecFile, paths: Sequence[KeyPath], value: Data) -> Unit | None:
    data = dict(spec.data)
    for path in paths:
        data = data_with(data, path, value)
    try:
        read = validate(UnitSpec, data, spec.places, str(spec.path))
        return None if any(beyond_limits(read)) else set_out(read)
    except ProblemsError:
        return None


def _counted(same: Sequence[Figure], place: KeyPath) -> bool:
    """Whether a part wished at this place is one of those that are counted, or laid out so."""
    for figure in same:
        path = figure.path
        owner = path if path[-1] in _COUNTED else path[:-1]
        if figure.count and owner[-1] in _COUNTED and place[: len(owner)] == owner:
            return True
    return False


def _compared(before: Unit, after: Unit, counted: Callable[[str], bool]) -> page.Hanging:
    """Which parts of ``before`` aren't in ``after``, and which stand elsewhere.

    Where there is another number of parts, refs go on to others: a part then is what is the same.
    """
    left = {part.ref: part for part in after.parts}
    renumbered = len(before.parts) != len(after.parts)
    alike = _taken(before.parts, left, _stands, renumbered)
    others = [part for part in before.parts if part.ref not in alike]
    moved = _taken(others, left, _anywhere, renumbered)
    moves = [part.ref for part in others if part.ref in moved and not counted(part.ref)]
    changes = [part.ref for part in others if part.ref not in moves]
    nothing = not others and not left and _same(before, after)
    sizes = (
        () if renumbered else tuple(ref for ref in changes if not _sized_alike(ref, before, after))
    )
    return page.Hanging(tuple(changes), tuple(moves), sizes, nothing)


def _taken(
    parts: Sequence[Part],
    left: dict[str, Part],
    fits: Callable[[Part, Part], bool],
    renumbered: bool,
) -> set[str]:
    """Refs of the parts of which the same piece is ``left``, one for each; that goes from there."""
    taken = set()
    for part in parts:
        own = [left[part.ref]] if part.ref in left else []
        for other in (*own, *(left.values() if renumbered else ())):
            if other.role == part.role and fits(part, other) and _is_piece(part, other):
                taken.add(part.ref)
                del left[other.ref]
                break
    return taken


def _sized_alike(ref: str, before: Unit, after: Unit) -> bool:
    return _same(before.part(ref).blank.size, after.part(ref).blank.size)


def _stands(one: Part, other: Part) -> bool:
    return _same(one.placement, other.placement)


def _anywhere(_one: Part, _other: Part) -> bool:
    return True


def _is_piece(one: Part, other: Part) -> bool:
    return all(_same(getattr(one, each), getattr(other, each)) for each in _OF_A_PIECE)


def _same(one: object, other: object) -> bool:
    """Whether two values are equal but for noise."""
    if one == other:
        return True
    if type(one) is not type(other):
        return False
    if isinstance(one, float) and isinstance(other, float):
        return abs(one - other) < _NOISE
    if isinstance(one, tuple) and isinstance(other, tuple):
        return len(one) == len(other) and all(map(_same, one, other))
    if is_dataclass(one):
        told = (each.name for each in fields(one) if each.compare)
        return all(_same(getattr(one, each), getattr(other, each)) for each in told)
    return False
