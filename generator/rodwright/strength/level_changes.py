"""Parts and loads of a level as they would be otherwise: shorter, higher, of other stock; mm."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from rodwright.amounts import AmountError, Kind
from rodwright.trade.loads import read_burden
from rodwright.unit import (
    Bore,
    Load,
    Part,
    Stock,
    Stretch,
    Unit,
)


def loaded_less(unit: Unit, refs: Collection[str], share: float, *, by_area: bool = False) -> Unit:
    """A unit whose parts of these refs carry so small a share, or only of what goes ``by_area``."""
    loads = tuple(
        replace(
            load,
            stretches=tuple(
                replace(each, at_start=each.at_start * share, at_stop=each.at_stop * share)
                for each in load.stretches
            ),
            lumps=tuple(replace(each, mass=each.mass * share) for each in load.lumps),
        )
        if load.ref in refs and (not by_area or _goes_by_area(load))
        else load
        for load in unit.loading.loads
    )
    return replace(unit, loading=replace(unit.loading, loads=loads))


def _goes_by_area(load: Load) -> bool:
    """Whether a load was said per square metre or fills a space; what isn't in such words goes by
    the metre, which is more on a level that is less deep."""
    try:
        return read_burden(load.said).amount.kind in {Kind.AREA_WEIGHT, Kind.DENSITY}
    except AmountError:
        return False


def cut_off(part: Part, left: float, right: float) -> Part:
    """A part that runs from left to right, so much shorter at either end."""
    x, y, z = part.placement.origin
    runs = part.placement.length[0]
    if abs(runs) > 0.5:
        blank = replace(part.blank, length=part.blank.length - left - right)
    else:
        runs = part.placement.width[0]
        blank = replace(part.blank, width=part.blank.width - left - right)
    origin = (x + left if runs > 0 else x - right, y, z)
    return replace(part, blank=blank, placement=replace(part.placement, origin=origin))


def load_between(load: Load, start: float, stop: float) -> Load:
    """What lies of a load between two x."""
    stretches = []
    for each in load.stretches:
        low, high = max(each.start, start), min(each.stop, stop)
        if low < high:
            rise = (each.at_stop - each.at_start) / (each.stop - each.start)
            ends = (each.at_start + rise * (at - each.start) for at in (low, high))
            stretches.append(Stretch(low, high, *ends))
    lumps = tuple(each for each in load.lumps if start <= each.at <= stop)
    return replace(load, stretches=tuple(stretches), lumps=lumps)


def laid_as(like: Part, ref: str, stock: Stock, low: float) -> Part:
    """A panel like another, of a stock, its underside at ``low``; without its bores, which weaken
    it nowhere to speak of."""
    x, y, _ = like.placement.origin
    up = like.placement.thickness[2] > 0
    origin = (x, y, low if up else low + stock.thickness)
    blank = replace(like.blank, stock=stock, thickness=stock.thickness)
    workings = tuple(each for each in like.workings if not isinstance(each, Bore))
    placed = replace(like.placement, origin=origin)
    return replace(like, ref=ref, blank=blank, placement=placed, workings=workings)


def raised(part: Part, rise: float) -> Part:
    """A part so much higher up."""
    x, y, z = part.placement.origin
    return replace(part, placement=replace(part.placement, origin=(x, y, z + rise)))


def grown(strip: Part, rise: float) -> Part:
    """A strip that closes an edge, so much higher."""
    placed, blank = strip.placement, strip.blank
    if abs(placed.width[2]) < 0.5:
        return strip
    up = placed.width[2] > 0
    x, y, z = placed.origin
    return replace(
        strip,
        blank=replace(blank, width=blank.width + rise),
        placement=replace(placed, origin=(x, y, z if up else z + rise)),
    )
