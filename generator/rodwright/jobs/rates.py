"""A rates file, read and checked, as the plain data that quotes are made of; one to start from."""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from decimal import Decimal
from difflib import get_close_matches
from pathlib import Path
from typing import get_args

from rodwright.cutting.rack import Rack
from rodwright.jobs.new import write_new
from rodwright.problems import KeyPath, Problem, ProblemsError
from rodwright.quote.counted import Stage
from rodwright.quote.operations import BY_KEY
from rodwright.quote.prices import plain
from rodwright.quote.rates import Deposit, Extra, Price, Rates, Travel, Workshop
from rodwright.quote.starter import starter_rates
from rodwright.trade.currencies import decimals_of
from rodwright.wishes import SpecFile
from rodwright.wishes.rates import ExtraSpec, HourSpec, RatesSpec, WorkshopSpec
from rodwright.wishes.reading.documents import read_text
from rodwright.wishes.reading.file_kinds import RATES
from rodwright.wishes.reading.files import parse

_IN_FULL = (Deposit("when it is done", Decimal(1)),)


def read_rates(path: str | Path) -> Rates:
    """Reads a rates file.

    Raises:
        ProblemsError: it can't be opened, read as YAML or understood as rates, or something in it
            can't be (an operation that isn't known, payments that don't add up ...); with every
            problem found, each with its place.
    """
    return parse_rates(read_text(Path(path), RATES), path)


def parse_rates(text: str, path: str | Path) -> Rates:
    """Reads rates from text; ``path`` is the file that problems name.

    Raises:
        ProblemsError: as for :func:`read_rates`.
    """
    spec, _ = parse(RatesSpec, text, Path(path), RATES, _looked_closer)
    return Rates(
        currency=spec.currency,
        hour=_hours(spec.hour),
        minutes=spec.minutes,
        prices={key: Price(each.number, each.of, each.power) for key, each in spec.prices.items()},
        waste=spec.waste,
        overhead=spec.overhead,
        margin=spec.margin,
        tax=spec.tax.rate,
        tax_name=spec.tax.name,
        deposits=tuple(Deposit(each.when, each.share) for each in spec.payments) or _IN_FULL,
        valid=spec.valid_days,
        hours_a_day=spec.hours_a_day,
        fitters=spec.fitters,
        workshop=_workshop(spec.workshop),
        unit=spec.unit,
        travel=Travel(spec.travel.visits, spec.travel.hours, spec.travel.cost),
        round_up_to=spec.round_up_to,
        consumables=spec.consumables,
        extras=tuple(map(_extra, spec.extras)),
    )


def new_rates(target: Path, currency: str = "EUR", *, inches: bool = False) -> None:
    """Write a commented rates file to start from; every figure in it is invented, and says so.

    Raises:
        ProblemsError: the currency isn't a code, the file is there already, or it can't be
            written.
    """
    if not re.fullmatch("[A-Z]{3}", currency):
        raise ProblemsError(
            [
                Problem(
                    f"`{currency}` isn't the code of a currency",
                    "Write its three capital letters by ISO 4217: `EUR`, `USD`.",
                )
            ]
        )
    write_new(starter_rates(currency, "in" if inches else "mm"), target)


def refuse_other_currency(spec: SpecFile, rack: Rack | None, rates: Rates) -> None:
    """Refuse to add up amounts in two currencies.

    Raises:
        ProblemsError: the spec or the rack says that its prices are in another currency than the
            rates are.
    """
    said = spec.spec.currency
    if said is not None and said != rates.currency:
        with spec.located():
            raise ProblemsError([_other_currency(said, rates, ("currency",))])
    if rack is not None and rack.currency and rack.currency != rates.currency:
        raise ProblemsError([_other_currency(rack.currency, rates, ("currency",), rack.file)])


def _other_currency(said: str, rates: Rates, where: KeyPath, file: str | None = None) -> Problem:
    return Problem(
        f"the prices here are in {said}, and the rates are in {rates.currency}",
        "Nothing is converted: give rates in the same currency, or change the prices here, and "
        "`currency:` with them.",
        where,
        file,
    )


def _hours(spec: HourSpec) -> Mapping[Stage, Decimal]:
    found = {}
    for stage in get_args(Stage):
        said = getattr(spec, stage.replace(" ", "_"))
        found[stage] = spec.any if said is None else said
    return found


def _extra(spec: ExtraSpec) -> Extra:
    stages = {each.replace(" ", "_"): each for each in get_args(Stage)}
    stage = None if spec.stage is None else stages[spec.stage]
    return Extra(spec.what, stage, spec.minutes, spec.price)


def _workshop(spec: WorkshopSpec) -> Workshop:
    return Workshop(
        spec.name or "", spec.address, spec.telephone or "", spec.email or "", spec.tax_number or ""
    )


# --- what is wrong ---------------------------------------------------------------------


def _looked_closer(spec: RatesSpec) -> Iterator[Problem]:
    yield from _unknown_operations(spec)
    yield from _prices_said_twice(spec)
    yield from _unpaid(spec)
    yield from _unlike_extras(spec)
    coin = Decimal(1).scaleb(-decimals_of(spec.currency))
    if spec.round_up_to is not None and spec.round_up_to % coin:
        yield Problem(
            f"{spec.round_up_to} isn't a multiple of {coin}, the smallest amount in "
            f"{spec.currency}",
            "Round up to a whole amount: `10`, say.",
            ("round_up_to",),
        )


def _unknown_operations(spec: RatesSpec) -> Iterator[Problem]:
    for key in spec.minutes:
        if key not in BY_KEY:
            near = get_close_matches(key, BY_KEY, n=1)
            hint = f"Did you mean `{near[0]}`? " if near else "docs/rates.md lists them all. "
            hint += "What comes with every job beside them goes under `extras:`."
            yield Problem(f"`{key}` isn't an operation that is counted", hint, ("minutes", key))


def _prices_said_twice(spec: RatesSpec) -> Iterator[Problem]:
    seen: dict[str, str] = {}
    for key in spec.prices:
        other = seen.setdefault(plain(key), key)
        if other != key:
            yield Problem(
                f"`{key}` has two prices: here and as `{other}`", "Keep one.", ("prices", key)
            )


def _unpaid(spec: RatesSpec) -> Iterator[Problem]:
    whole = sum((each.share for each in spec.payments), Decimal(0))
    if spec.payments and whole != 1:
        yield Problem(
            f"the payments add up to {(whole * 100).normalize():f} % of the total",
            "Change their shares so that they add up to 100 %.",
            ("payments",),
        )


def _unlike_extras(spec: RatesSpec) -> Iterator[Problem]:
    """Extras that say neither time nor price, or time without its stage."""
    for number, each in enumerate(spec.extras):
        where: KeyPath = ("extras", number)
        if each.minutes is None and each.price is None:
            yield Problem(
                f"`{each.what}` takes no time and costs nothing",
                "Say its `minutes` and their `stage`, its `price`, or all three.",
                where,
            )
        elif (each.minutes is None) != (each.stage is None):
            yield Problem(
                f"`{each.what}` says only one of `minutes` and `stage`",
                "Say both, so that the minutes cost what an hour of that stage does; or neither.",
                where,
            )
