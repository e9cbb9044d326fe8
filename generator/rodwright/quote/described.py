"""A unit in a client's words: how large it is, what of, how finished, what is in it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from rodwright.amounts import format_weight
from rodwright.geometry import TOUCH
from rodwright.lengths import format_length
from rodwright.mass import unit_weight
from rodwright.opening.silhouettes import Silhouette, sloped
from rodwright.quote.places import PLACES, adjustable_of, places_of, shelves_of
from rodwright.trade.colours import COLOUR_WORDS
from rodwright.trade.materials import is_glass
from rodwright.unit import JointKind, Load, Part, Slide, Swing, Unit
from rodwright.unit.facts import carcass_size, is_scribed, scribes, size_as_fitted
from rodwright.unit.finish import Finish

_FINISHED = {"oil": "oiled", "lacquer": "lacquered", "paint": "painted", "stain": "stained"}
_SPELT = {
    "american": "American",
    "baltic": "Baltic",
    "douglas": "Douglas",
    "european": "European",
    "hdf": "HDF",
    "mdf": "MDF",
    "osb": "OSB",
    "scots": "Scots",
}
_CAPITALS = re.compile(rf"\b(?:{'|'.join(_SPELT)})\b", re.IGNORECASE)
_HOLES = re.compile(r"\d+ holes?\b")
_MOVES = re.compile(r"hinge\b(?! plate)|slides\b")
_WORDS_OF = {colour: word for word, colour in COLOUR_WORDS.items()}


@dataclass(frozen=True, slots=True)
class Line:
    """A line of what is told; ``colour`` (``#rrggbb``) is shown beside it where there is one."""

    said: str
    colour: str = ""


@dataclass(frozen=True, slots=True)
class Fact:
    """What is told of a unit under one word."""

    word: str
    lines: tuple[Line, ...]


def facts_of(unit: Unit) -> tuple[Fact, ...]:
    """All that a client is told of a unit, what there is nothing to tell of left out."""
    told = (
        ("Size", _size(unit)),
        ("Made of", _materials(unit)),
        ("Finish", finishes(unit)),
        ("It has", _counted(unit)),
        ("Hardware", _hardware(unit)),
        ("To carry", _carried(unit)),
        ("Weight", (Line(f"about {format_weight(unit_weight(unit), unit.display_unit, 0)}"),)),
    )
    return tuple(Fact(word, tuple(lines)) for word, lines in told if lines)


def is_finished(unit: Unit) -> bool:
    """Whether anything of it has a finish."""
    return any(part.finish is not None for part in unit.parts)


def _size(unit: Unit) -> tuple[Line, ...]:
    sizes = zip(size_as_fitted(unit), ("wide", "high", "deep"), strict=True)
    lines = [Line(", ".join(f"{_length(unit, each)} {word}" for each, word in sizes))]
    if unit.opening is not None:
        wide, high = (_length(unit, each) for each in unit.opening.as_read[:2])
        lines.append(Line(f"For an opening {wide} wide and {high} high where it is smallest"))
    if unit.surroundings.ceiling is not None:
        lines.append(Line(_under_slope(unit)))
    return (*lines, *(Line(each) for each in cut_on_site(unit)))


def _under_slope(unit: Unit) -> str:
    """That it is cut to a sloping ceiling, and how high it is at its low side if that is known."""
    told = "Cut to the sloping ceiling"
    ceiling = sloped(unit)
    if ceiling is None:
        return told
    low = ceiling.planes.get("rear" if ceiling.falls == "rear" else "front")
    if low is None:
        return told
    size = carcass_size(unit)
    height = Silhouette(*size, low).top_at(size[0] if ceiling.falls == "right" else 0.0)
    where = {"front": "in front", "rear": "behind"}.get(ceiling.falls, f"at the {ceiling.falls}")
    return f"{told}: {_length(unit, height)} high {where}"


def cut_on_site(unit: Unit) -> Iterator[str]:
    """What is made too large, and cut to the walls where it stands."""
    if is_scribed(unit):
        yield "Its face frame is made larger than the opening, and cut to it on site"
    if scribes(unit):
        yield "The strips beside it are made larger than the gaps, and cut to them on site"
    wide, high = unit.size[:2]
    fitted = size_as_fitted(unit)
    if max(abs(wide - fitted[0]), abs(high - fitted[1])) > TOUCH:
        over = (("face frame", is_scribed(unit)), ("strips", bool(scribes(unit))))
        what = _joined(word for word, there in over if there)
        yield (
            f"Before it is cut, it is {_length(unit, wide)} wide and {_length(unit, high)} high "
            f"over the {what}"
        )


def _length(unit: Unit, length: float) -> str:
    """A length with its unit, which stays on its line."""
    return f"{format_length(length, unit.display_unit)}\u00a0{unit.display_unit}"


def _materials(unit: Unit) -> tuple[Line, ...]:
    """Each material and thickness, and where it is seen."""
    places = places_of(unit, lambda part: (part.blank.stock.described, part.blank.thickness))
    edges: dict[str, None] = {}
    for part in unit.parts:
        if part.role in PLACES:
            edges |= dict.fromkeys(edging.called for edging in part.edged)
    lines = [
        Line(f"{_capital(_joined(where))}: {_spelt(what)}, {_length(unit, thick)}")
        for (what, thick), where in places.items()
    ]
    if edges:
        lines.append(Line(f"Edges: {_spelt(_joined(edges))}"))
    return tuple(lines)


def finishes(unit: Unit) -> tuple[Line, ...]:
    """Each finish and where it is; what comes finished, as glass does, is left out."""
    places = places_of(unit, lambda part: part.finish, _can_be_finished)
    if list(places) == [None]:
        return (Line("None: the wood is left bare"),)
    found = list(places.items())
    if len(found) == 1:
        return (_finish(found[0][0], ()),)
    return tuple(_finish(finish, where) for finish, where in found if finish is not None)


def _can_be_finished(part: Part) -> bool:
    return part.finish is not None or not is_glass(part.blank.stock.material)


def _finish(finish: Finish | None, where: Iterable[str]) -> Line:
    """A finish in words: `painted seagreen (#2e8b57), satin`."""
    if finish is None:
        raise ValueError("what is bare has no finish")
    said = _FINISHED[finish.kind]
    if finish.name:
        said += f" {finish.name}"
    elif finish.colour:
        word = _WORDS_OF.get(finish.colour)
        said += f" {word} ({finish.colour})" if word else f" {finish.colour}"
    said += " and lacquered" if finish.kind == "stain" else ""
    places = _joined(where)
    told = f"{places}: {said}" if places else said
    return Line(f"{_capital(told)}, {finish.sheen}", finish.colour)


def _counted(unit: Unit) -> tuple[Line, ...]:
    """Doors, drawers and shelves."""
    shelves, loose = len(shelves_of(unit)), len(adjustable_of(unit))
    counts = (
        (sum(isinstance(each, Swing) for each in unit.motions), "door"),
        (sum(isinstance(each, Slide) for each in unit.motions), "drawer"),
        (shelves - loose, "fixed shel{f|ves}"),
        (loose, "adjustable shel{f|ves}"),
    )
    said = [_number(count, name) for count, name in counts if count]
    return (Line(_joined(said)),) if said else ()


def _hardware(unit: Unit) -> tuple[Line, ...]:
    """Knobs and handles, and what doors and drawers hang and run on."""
    handles: dict[str, int] = {}
    for fixing in unit.fixings:
        # Whatever a maker calls a handle, what it is sold by is its holes.
        if _HOLES.match(fixing.size):
            handles[fixing.name] = handles.get(fixing.name, 0) + fixing.count
    of = _joined(_handles_of(unit))
    said = [
        _capital(f"{name}, {of}: {count}" if of and of not in name else f"{name}: {count}")
        for name, count in handles.items()
    ]
    for kind, what in ((JointKind.HINGED, "doors on"), (JointKind.SLIDING, "drawers on")):
        names = {
            _plural(fixing.name): None
            for joint in unit.joints
            if joint.kind is kind
            for fixing in joint.fixings
            if _MOVES.search(fixing.name)
        }
        if names:
            said.append(_capital(f"{what} {_joined(names)}"))
    return tuple(map(Line, said))


def _handles_of(unit: Unit) -> Iterator[str]:
    """What knobs and handles are of, as far as it is known: hinges and slides are of steel too, and
    some wood is taken of what is only called turned."""
    seen = (each.ware for each in unit.fittings if not each.inner and not each.fine)
    yield from (each for each in dict.fromkeys(seen) if each not in ("steel", "plastic", "wood"))


def _plural(name: str) -> str:
    """`concealed hinge, 35 mm cup` as `concealed hinges`; slides are named as a drawer's pair."""
    kind = name.partition(",")[0].removeprefix("pair of ").replace("drawer slides", "slides")
    return kind if kind.endswith("s") else f"{kind}s"


def _carried(unit: Unit) -> tuple[Line, ...]:
    """What it was said to carry, each kind with how much that is in all."""
    said: dict[str, list[Load]] = {}
    for load in unit.loading.loads:
        if not load.assumed:
            said.setdefault(load.said, []).append(load)
    return tuple(_load(what, _mass(unit, loads)) for what, loads in said.items())


def _load(what: str, mass: str) -> Line:
    return Line(_capital(what) if what == mass else f"{_capital(what)}, {mass} in all")


def _mass(unit: Unit, loads: Iterable[Load]) -> str:
    return format_weight(sum(load.mass for load in loads), unit.display_unit, 0)


def _number(count: int, name: str) -> str:
    """`1 door`, `2 doors`; `{f|ves}` has the ends of both."""
    if "{" not in name:
        return f"{count} {name}{'' if count == 1 else 's'}"
    stem, _, ends = name.partition("{")
    one, _, many = ends.rstrip("}").partition("|")
    return f"{count} {stem}{one if count == 1 else many}"


def _joined(words: Iterable[str]) -> str:
    """`a`, `a and b`, `a, b and c`."""
    *first, last = list(words) or [""]
    return f"{', '.join(first)} and {last}" if first else last


def _spelt(material: str) -> str:
    """A material with the capitals of a letter: names of materials have none."""
    return _CAPITALS.sub(lambda found: _SPELT[found[0].lower()], material)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def solid_wood(unit: Unit) -> tuple[Part, ...]:
    """The parts of solid wood."""
    return tuple(
        part
        for part in unit.parts
        if part.blank.stock.kind == "board" and not is_glass(part.blank.stock.material)
    )
