"""Amounts against published conversion factors, and as they are read."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.amounts import (
    AREAS,
    RUNS,
    VOLUMES,
    WEIGHTS,
    Amount,
    AmountError,
    Kind,
    format_weight,
    parse_amount,
)
from rodwright.lengths import parse_length


@pytest.mark.parametrize(
    ("measure", "factor"),
    [
        # NIST Special Publication 811 (2008), appendix B.8, "to convert from ... to ...
        # multiply by" (from memory), to the digits printed there.
        (WEIGHTS["in"], 4.535924e-01),  # pound (avoirdupois) to kilogram
        (AREAS["in"], 9.290304e-02),  # square foot to square metre
        (VOLUMES["in"], 2.359737e-03),  # board foot to cubic metre
        (RUNS["in"], 3.048e-01),  # foot to metre
    ],
    ids=lambda value: getattr(value, "symbol", ""),
)
def test_factors_of_the_bureau_of_standards(measure, factor):
    assert measure.one == pytest.approx(factor, rel=5e-7)
    assert measure.of(factor) == pytest.approx(1.0, rel=5e-7)


def test_a_weight_as_it_is_said():
    assert format_weight(22.7, "mm") == "22.7 kg"
    # 50 lb are 22.68 kg: the test load of ASTM F2057 is given in both.
    assert format_weight(22.68, "in") == "50.0 lb"
    assert format_weight(25.0, "in", 0) == "55 lb"


WEIGHT, RUN, AREA, DENSITY, STRESS = Kind
LOADS = (RUN, AREA, WEIGHT)


@pytest.mark.parametrize(
    ("text", "kind", "value", "digits"),
    [
        # Shelf loads that are published in both systems: Architectural Woodwork Standards (2009),
        # section 10; ANSI/KCMA A161.1; M. Krakower on weighed book stacks (2000).
        ("50 lb/ft2", AREA, 244, 3),
        ("2.39 kPa", AREA, 244, 3),
        ("40 psf", AREA, 195, 3),
        ("1.92 kN/m2", AREA, 195, 2),
        ("718 Pa", AREA, 73, 2),
        ("15 lb per square foot", AREA, 73, 2),
        ("25 lb/ft", RUN, 37.2, 3),
        ("365 N/m", RUN, 37.2, 3),
        ("40 lb/ft3", DENSITY, 641, 3),
        ("50 lb", WEIGHT, 22.68, 4),
        # NIST Special Publication 811, appendix B.8 (from memory): psi, ksi and psf to pascals.
        ("1 psi", STRESS, 6.894757e-3, 7),
        ("1 ksi", STRESS, 6.894757, 7),
        ("1 psf", STRESS, 4.788026e-5, 7),
        # Wood Handbook, white oak at 12 %: 1.78 million psi, printed as 12,300 MPa.
        ("1.78e6 psi", STRESS, 12_300, 3),
        ("1780000 lb/in2", STRESS, 12_300, 3),
    ],
)
def test_amounts_that_are_published_in_two_measures(text, kind, value, digits):
    read = parse_amount(text, [kind])
    assert read.kind is kind
    assert read.value == pytest.approx(value, rel=0.5 * 10 ** (1 - digits))


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("25 kg/m", 25),
        ("25kg/m", 25),
        (" 25  KG / M ", 25),
        ("25 kg per metre", 25),
        ("25 kilograms per meter", 25),
        ("0.25 kg/cm", 25),
        ("25 g/mm", 25),
        ("25. kg/m", 25),
        (".5 t/m", 500),
        ("0 kg/m", 0),
        ("1 plf", 0.45359237 / 0.3048),
        ("1 pound per foot", 0.45359237 / 0.3048),
        ("12 lbs/in", 12 * 12 * 0.45359237 / 0.3048),
    ],
)
def test_a_weight_per_length_is_written_in_many_ways(text, value):
    assert parse_amount(text, LOADS) == Amount(pytest.approx(value), RUN)


@pytest.mark.parametrize(
    "text", ["200 kg/m2", "200 kg/m²", "200 kg/m^2", "200 kg per sq m", "2 kg/dm2", "200 kg/sq. m"]
)
def test_squares_are_written_in_many_ways(text):
    assert parse_amount(text, LOADS) == Amount(pytest.approx(200), AREA)


def test_a_pressure_is_whichever_kind_is_wanted_first():
    assert parse_amount("1 kPa", [AREA, STRESS]).kind is AREA
    assert parse_amount("1 kPa", [STRESS, AREA]) == Amount(pytest.approx(1e-3), STRESS)


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("25", "`25` has no unit"),
        (25, "`25` has no unit"),
        (2.5, "`2.5` has no unit"),
        ("-25 kg/m", "`-25 kg/m` is less than zero"),
        ("−25 kg/m", "`−25 kg/m` is less than zero"),
        ("nan kg/m", "`nan kg/m` is no number"),
        ("-inf kg/m", "`-inf kg/m` is no number"),
        (".nan", "`.nan` is no number"),
        (float("nan"), "`nan` is no number"),
        ("1e999 kg/m", "`1e999 kg/m` is too large a number"),
        (
            "1,250 kg/m",
            "`1,250 kg/m` has a comma in it; write decimals with a point (`12.5`) and "
            "thousands without a mark (`1250`)",
        ),
        ("25 cwt/m", "`cwt/m` in `25 cwt/m` isn't a unit that is known here"),
        ("25 kg/", "`kg/` in `25 kg/` isn't a unit that is known here"),
        ("25 kg/m3", "`25 kg/m3` is a density, where a weight per length is wanted"),
        ("25 kPa", "`25 kPa` is a weight per area, where a weight per length is wanted"),
        ("kg/m", "`kg/m` can't be read as a weight per length"),
        ("", "an empty text can't be read as a weight per length"),
        (True, "this can't be read as a weight per length"),
        (["25 kg/m"], "this can't be read as a weight per length"),
        ("9" * 80, "`" + "9" * 59 + "…` can't be read as a weight per length"),
    ],
)
def test_what_is_no_amount_is_refused(text, message):
    with pytest.raises(AmountError) as refused:
        parse_amount(text, [RUN])
    assert str(refused.value) == message
    assert refused.value.remedy == "Write it like `25 kg/m` or `30 lb/ft`."


def test_a_refusal_says_all_that_is_wanted():
    with pytest.raises(AmountError, match="a weight per length, a weight per area or a weight is"):
        parse_amount("9500 kg/m3", LOADS)


@given(
    value=st.floats(0, 1e6),
    weight=st.sampled_from(["kg", "lb", "N", "t"]),
    length=st.sampled_from(["m", "ft", "mm", "in"]),
)
def test_more_lengths_carry_more(value, weight, length):
    """A weight per length over a length is the weight, in every unit; so it is with areas."""
    metres = parse_length(f"1 {length}", "mm") / 1000
    whole = parse_amount(f"{value!r} {weight}", LOADS).value
    run = parse_amount(f"{value!r} {weight}/{length}", LOADS)
    area = parse_amount(f"{value!r} {weight}/{length}2", LOADS)
    assert (run.kind, area.kind) == (RUN, AREA)
    assert run.value * metres == pytest.approx(whole)
    assert area.value * metres**2 == pytest.approx(whole)


@given(text=st.text(max_size=80), kinds=st.lists(st.sampled_from(Kind), min_size=1, max_size=5))
def test_any_text_is_an_amount_or_refused(text, kinds):
    try:
        read = parse_amount(text, kinds)
    except AmountError as error:
        assert error.remedy
    else:
        assert read.value >= 0
        assert read.kind in kinds


def test_a_stone_is_fourteen_pounds() -> None:
    assert parse_amount("3 stone", [Kind.WEIGHT]).value == pytest.approx(42 * 0.45359237)
