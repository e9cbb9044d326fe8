"""What is written round a view: the places that are dimensioned, and the numbers of workings."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.geometry import TOUCH
from rodwright.lengths import parse_length
from rodwright.paper.part_sheets.datum import AXES
from rodwright.paper.part_sheets.entries import Group
from rodwright.paper.part_sheets.figures import Figure, Point, Row, Stretch
from rodwright.paper.part_sheets.seen import Facing, shape
from rodwright.paper.part_sheets.sheets import Laid
from rodwright.paper.part_sheets.slants import crossings, taken_axes
from rodwright.pictures.glyphs import text_width
from rodwright.unit import Bevel, Mitre

Spot = tuple[float, float]
SIZE = 2.9
"""mm of type: 8 points and a little."""
_LONG = 100.0
"""mm: what reaches farther up a view is pointed at near its upper end."""


@dataclass(frozen=True, slots=True)
class Label:
    """A text, and where on the view its line goes: how far along, and from there how far in; mm
    from the datum."""

    at: float
    into: float
    text: str


def dimensions(laid: Laid, facing: Facing, groups: Sequence[Group], way: int) -> list[Label]:
    """The places along an axis of a view that are dimensioned, with the datum and the whole.

    Labels have the text that is printed in the table too.
    """
    axis, unit = facing.across[way], laid.sheet.unit
    whole, told = laid.datum.size[axis], laid.datum.words.say(laid.datum.size[axis])
    found: dict[str, Label] = {}
    for group in groups:
        if isinstance(group.workings[0], Mitre | Bevel):
            texts, reach = list(_of_slant(group, axis)), 0.0
        else:
            texts = [each for each in _figures(group.entry.figures.get(AXES[axis])) if each]
            reach = _reach(laid, facing, group, 1 - way)
        for text in texts:
            if text[0].isdigit():
                before = found.get(text)
                into = min(reach, before.into) if before else reach
                found[text] = Label(parse_length(text, unit), into, text)
    found.pop("0", None)
    found.pop(told, None)
    ends = Label(0.0, 0.0, "0"), Label(whole, 0.0, told)
    return sorted([*ends, *found.values()], key=lambda each: each.at)


def _figures(figure: Figure | None) -> Iterator[str]:
    """The printed places of a figure."""
    match figure:
        case Stretch(start, stop):
            yield from (start, stop)
        case tuple():
            for each in figure:
                match each:
                    case Row():
                        yield from (each.first, each.last)
                    case Stretch():
                        yield from _figures(each)
                    case _:
                        yield each


def _of_slant(group: Group, axis: int) -> Iterator[str]:
    for end in (group.entry.figures.get("from"), group.entry.figures.get("to")):
        if isinstance(end, Point) and end.axis == AXES[axis]:
            yield end.at


def _reach(laid: Laid, facing: Facing, group: Group, way: int) -> float:
    """How far from its datum along the other axis what is dimensioned begins."""
    shapes = [shape(laid.datum, facing, each) for each in group.workings]
    return float(min(each.bounds[way] for each in shapes))


def numbers(laid: Laid, facing: Facing, groups: Sequence[Group], longest: float) -> list[Label]:
    """The numbers of the workings, each with a spot on it, and with what goes there and how deep
    as far as that is no longer (mm of paper)."""
    found = []
    for group in groups:
        spots = list(_spots(laid, facing, group))
        top = (min if facing.turned[1] else max)(y for _, y in spots)
        spot = min(each for each in spots if abs(each[1] - top) < TOUCH)
        found.append(Label(*spot, _said(group, longest)))
    return found


def _said(group: Group, longest: float) -> str:
    """As much of what goes there and how deep it is as stands beside a drawing."""
    entry = group.entry
    figure = entry.figures.get("depth", "")
    depth = f", {figure}" + ("" if figure == "through" else " deep") if figure else ""
    short = entry.purpose.split(" and ")[0].removeprefix("row for ")
    brief = short.split(",")[0]
    ref = brief.rsplit(" to ", maxsplit=1)[-1]
    texts = [f"{short}{depth}", f"{brief}{depth}", brief, f"{ref}{depth}", ref, entry.kind]
    if not brief:
        texts = [f"{entry.kind}{depth}", entry.kind]
    wanted = (f"{entry.number}  {each}" for each in texts)
    return next((each for each in wanted if text_width(each, SIZE) <= longest), str(entry.number))


def _spots(laid: Laid, facing: Facing, group: Group) -> Iterator[Spot]:
    """Places of a view where a working is pointed at."""
    for each in group.workings:
        if isinstance(each, Mitre | Bevel):
            yield _on_slant(laid, facing, each)
            continue
        x, low, far, high = shape(laid.datum, facing, each).bounds
        # Long ones are pointed at near the top of the view.
        share = 0.15 if facing.turned[1] else 0.85
        yield (x + far) / 2, low + (high - low) * (0.5 if high - low < _LONG else share)


def _on_slant(laid: Laid, facing: Facing, cut: Mitre | Bevel) -> Spot:
    """The middle of a sloping cut as it is seen."""
    datum, places = laid.datum, dict[int, list[float]]()
    first, second = taken_axes(cut)
    for surface, along in crossings(datum.size, cut):
        other = second if surface.axis == first else first
        at = datum.size[surface.axis] if surface.at_high else 0.0
        places.setdefault(surface.axis, []).append(datum.from_datum(surface.axis, at))
        places.setdefault(other, []).append(datum.from_datum(other, along))
    x, y = (
        sum(places[axis]) / len(places[axis]) if axis in places else datum.size[axis] / 2
        for axis in facing.across
    )
    return x, y
