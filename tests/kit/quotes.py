"""Rates and takings for tests of quotes."""

from __future__ import annotations

from decimal import Decimal
from typing import get_args

from hypothesis import strategies as st

from rodwright.quote.counted import Material, MaterialKind, Operation, Stage, Takings
from rodwright.quote.rates import Deposit, Rates

STAGES: tuple[Stage, ...] = get_args(Stage)
KINDS: tuple[MaterialKind, ...] = get_args(MaterialKind)
BOUGHT: tuple[MaterialKind, ...] = tuple(each for each in KINDS if each != "consumables")
"""Kinds of what a job takes; consumables are a share of it."""
MINUTES = {
    "rip": Decimal("1.5"),
    "crosscut": Decimal(1),
    "housing": Decimal("4.25"),
    "screw": Decimal("0.6"),
    "oil": Decimal(5),
    "standing": Decimal(35),
}


def rates_of(**changes: object) -> Rates:
    """Plain rates in euro: 48.00 an hour, and all of it paid in three parts."""
    said: dict[str, object] = {
        "currency": "EUR",
        "hour": dict.fromkeys(STAGES, Decimal("48.00")),
        "minutes": MINUTES,
        "prices": {},
        "waste": Decimal("0.15"),
        "overhead": Decimal("0.12"),
        "margin": Decimal("0.2"),
        "tax": Decimal("0.21"),
        "tax_name": "VAT",
        "deposits": (
            Deposit("with the order", Decimal("0.4")),
            Deposit("before it is fitted", Decimal("0.35")),
            Deposit("when it is done", Decimal("0.25")),
        ),
        "valid": 30,
        "hours_a_day": Decimal("7.5"),
        "fitters": 2,
    }
    return Rates(**(said | changes))  # type: ignore[arg-type]


def material(
    kind: MaterialKind, name: str, count: str, price: str | None, *, wasted: bool = False
) -> Material:
    """Something that is bought; its key is its name."""
    priced = None if price is None else Decimal(price)
    return Material(kind, name, name, Decimal(count), "piece", priced, wasted=wasted)


def operation(key: str, stage: Stage, count: str, per: str = "piece") -> Operation:
    """Something that is done; it is called by its key."""
    return Operation(key, key, stage, Decimal(count), per)


COUNTS = st.decimals(0, 500, places=3)
SHARES = st.decimals(0, 100, places=2).map(lambda percent: percent.scaleb(-2))
MATERIALS = st.builds(
    material,
    st.sampled_from(BOUGHT),
    st.text("abc", min_size=1, max_size=3),
    COUNTS.map(str),
    st.decimals(0, 1000, places=4).map(str),
    wasted=st.booleans(),
)
OPERATIONS = st.builds(
    operation, st.sampled_from(sorted(MINUTES)), st.sampled_from(STAGES), COUNTS.map(str)
)


@st.composite
def takings(draw: st.DrawFn) -> Takings:
    """What some job takes; all of it has a price."""
    return Takings(
        tuple(draw(st.lists(MATERIALS, max_size=6))), tuple(draw(st.lists(OPERATIONS, max_size=6)))
    )


@st.composite
def some_rates(draw: st.DrawFn) -> Rates:
    """Rates of some workshop."""
    cuts = sorted(draw(st.lists(st.integers(0, 1000), max_size=4)))
    shares = [b - a for a, b in zip((0, *cuts), (*cuts, 1000), strict=True)]
    return rates_of(
        currency=draw(st.sampled_from(["EUR", "JPY", "KWD"])),
        hour={stage: draw(st.decimals(0, 200, places=2)) for stage in STAGES},
        waste=draw(SHARES),
        consumables=draw(st.just(Decimal(0)) | SHARES),
        overhead=draw(SHARES),
        margin=draw(st.decimals(0, 90, places=2).map(lambda percent: percent.scaleb(-2))),
        tax=draw(SHARES),
        deposits=tuple(Deposit(str(n), Decimal(each).scaleb(-3)) for n, each in enumerate(shares)),
        round_up_to=draw(st.none() | st.sampled_from([Decimal(5), Decimal(10)])),
    )
