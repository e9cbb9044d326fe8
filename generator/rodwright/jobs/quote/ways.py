"""The ways of making a unit that are quoted, itself and its options, and what each takes."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from decimal import Decimal

from rodwright.cutting.rack import Rack
from rodwright.cutting.whole import Cutting
from rodwright.jobs.cut import cut
from rodwright.problems import ProblemsError
from rodwright.quote.counted import Material, Takings
from rodwright.quote.letter import BoughtIn, Letter
from rodwright.quote.rates import Rates
from rodwright.quote.takings import takings_of
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.options import option_specs


@dataclass(frozen=True, slots=True)
class Way:
    """One way of making the unit: its ``name`` (empty where there is but one), the maker's ``note``
    for the client, the unit as it is laid, what it takes, and why its stock is counted by area
    (``no_plan``: empty where it has a cutting plan)."""

    name: str
    note: str
    unit: Unit
    takings: Takings
    no_plan: tuple[str, ...]


def ways_of(spec: SpecFile, rates: Rates, rack: Rack | None) -> tuple[Way, ...]:
    """The unit as the spec has it, then each of its options.

    Raises:
        ProblemsError: the spec or an option makes no unit.
    """
    named = option_specs(spec)
    bought = tuple(_bought_in(each) for each in letter_of(spec).bought_in)
    said = (spec.spec.first_option, *spec.spec.options)
    notes = (each.note or "" if each else "" for each in said)
    plans: dict[Unit, tuple[Cutting | None, tuple[str, ...]]] = {}
    ways = []
    for (name, made), note in zip(named, notes, strict=True):
        unit = set_out(made)
        bare = _as_cut(unit)
        if bare not in plans:
            plans[bare] = _planned(made, rack)
        plan, no_plan = plans[bare]
        takings = takings_of(unit, plan, rates, fixing_spacing=made.spec.fit.fixing_spacing)
        takings = replace(takings, materials=(*takings.materials, *bought))
        called = name if len(named) > 1 else ""
        ways.append(Way(called, note, laid_unit(unit), takings, no_plan))
    return tuple(ways)


def letter_of(spec: SpecFile) -> Letter:
    """What a spec says of its quote; number and date are the design's where it says none."""
    whole, said = spec.spec, spec.spec.quote
    return Letter(
        client=said.client.name if said.client else "",
        address=said.client.address if said.client else (),
        site=said.site,
        number=said.number or whole.number or "",
        date=said.date or whole.date or "",
        words=said.words,
        included=said.included,
        not_included=said.not_included,
        bought_in=tuple(BoughtIn(each.what, each.price) for each in said.bought_in),
        terms=said.terms,
    )


def _bought_in(work: BoughtIn) -> Material:
    return Material("bought in", work.what, work.what, Decimal(1), "job", work.price, "the spec")


def _as_cut(unit: Unit) -> Unit:
    """What of a unit its cutting plan goes by: units that differ in finish alone share one."""
    return replace(unit, parts=tuple(replace(part, finish=None) for part in unit.parts))


def _planned(spec: SpecFile, rack: Rack | None) -> tuple[Cutting | None, tuple[str, ...]]:
    """A cutting plan with a place for every piece, or why there is none."""
    try:
        plan = cut([spec], rack=rack)
    except ProblemsError as error:
        return None, tuple(each.message for each in error.problems)
    if not plan.whole:
        return None, ("some pieces find no place in what there is to cut",)
    return plan, ()


def without_plan(ways: Iterable[Way]) -> tuple[str, ...]:
    """Why stock is counted by area, each reason once."""
    return tuple(dict.fromkeys(why for way in ways for why in way.no_plan))
