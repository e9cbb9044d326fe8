"""A quote as JSON: the maker's own document, with costs and margin in it.

Amounts, counts and hours are decimals in text (``"667.03"``), so that no reader rounds them on the
way; docs/json.md has the keys.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from decimal import Decimal
from typing import Any, get_args

from rodwright.quote.costing import Costing, LabourLine, MaterialLine
from rodwright.quote.counted import MaterialKind
from rodwright.quote.levers import Lever
from rodwright.quote.rates import Rates


def quote_document(
    title: str,
    costings: Sequence[Costing],
    levers: Mapping[str, Sequence[Lever]],
    rates: Rates,
) -> dict[str, Any]:
    """A quote's options as keys and values that JSON can hold; ``levers`` are by option."""
    return {
        "title": title,
        "currency": rates.currency,
        "unit": rates.unit,
        "valid_days": rates.valid,
        "tax_name": rates.tax_name,
        "shares": _shares(rates),
        "round_up_to": _said(rates.round_up_to),
        "options": [_option(each, levers.get(each.option, ())) for each in costings],
    }


def rates_document(rates: Rates) -> dict[str, Any]:
    """A workshop's rates as keys and values that JSON can hold; shares are decimals (0.15)."""
    return {
        "currency": rates.currency,
        "unit": rates.unit,
        "hour": {stage: _said(each) for stage, each in rates.hour.items()},
        "minutes": {key: _said(each) for key, each in rates.minutes.items()},
        "prices": {
            key: {"amount": _said(each.amount), "of": _said(each.of), "power": each.power}
            for key, each in rates.prices.items()
        },
        "shares": _shares(rates),
        "round_up_to": _said(rates.round_up_to),
        "payments": [{"when": each.when, "share": _said(each.share)} for each in rates.deposits],
        "extras": [
            {
                "what": each.what,
                "stage": each.stage,
                "minutes": _said(each.minutes),
                "price": _said(each.price),
            }
            for each in rates.extras
        ],
        "valid_days": rates.valid,
        "hours_a_day": _said(rates.hours_a_day),
        "fitters": rates.fitters,
        "travel": {
            "visits": rates.travel.visits,
            "hours": _said(rates.travel.hours),
            "cost": _said(rates.travel.cost),
        },
    }


def _shares(rates: Rates) -> dict[str, str | None]:
    return {
        "waste": _said(rates.waste),
        "consumables": _said(rates.consumables),
        "overhead": _said(rates.overhead),
        "margin": _said(rates.margin),
        "tax": _said(rates.tax),
    }


def _option(costing: Costing, levers: Sequence[Lever]) -> dict[str, Any]:
    kinds = get_args(MaterialKind)
    return {
        "name": costing.option,
        "missing": list(costing.missing),
        "cost": _said(costing.cost),
        "overhead": _said(costing.overhead),
        "margin": _said(costing.margin),
        "net": _said(costing.net),
        "tax": _said(costing.tax),
        "total": _said(costing.total),
        "payments": [{"when": when, "amount": _said(each)} for when, each in costing.payments],
        "spent_on": {kind: _said(costing.spent_on(kind)) for kind in kinds},
        "worked_at": {stage: _said(costing.worked_at(stage)) for stage, _ in costing.hours},
        "hours": {stage: _said(hours) for stage, hours in costing.hours},
        "all_hours": _said(costing.all_hours),
        "days_on_site": _said(costing.days_on_site),
        "earned_an_hour": _said(costing.earned_an_hour),
        "levers": [
            {"what": each.what, "said": each.said, "change": _said(each.change)} for each in levers
        ],
        "materials": [_material(each) for each in costing.materials],
        "labour": [_labour(each) for each in costing.labour],
    }


def _material(line: MaterialLine) -> dict[str, Any]:
    material = line.material
    return {
        "kind": material.kind,
        "key": material.key,
        "name": material.name,
        "count": _said(material.count),
        "per": material.per,
        "price": _said(material.price),
        "basis": material.basis,
        "wasted": material.wasted,
        "amount": _said(line.amount),
    }


def _labour(line: LabourLine) -> dict[str, Any]:
    operation = line.operation
    return {
        "stage": operation.stage,
        "key": operation.key,
        "name": operation.name,
        "count": _said(operation.count),
        "per": operation.per,
        "minutes": _said(line.minutes),
        "hour": _said(line.hour),
        "amount": _said(line.amount),
    }


def _said(decimal: Decimal | None) -> str | None:
    """A decimal in its own digits, never in powers of ten."""
    return None if decimal is None else f"{decimal:f}"
