from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rodwright.lengths import (
    LengthUnit,
    as_shown,
    at_least,
    at_most,
    format_difference,
    format_length,
    parse_length,
    shown_adding_up,
    told_apart,
)

# NIST Special Publication 811, appendix B.8: 1 inch = 25.4 mm exactly, 1 foot = 304.8 mm exactly.
INCH = Fraction(254, 10)
FOOT = Fraction(3048, 10)

WELL_KNOWN = [
    ("18", "mm", 18.0),
    ("18", "in", 457.2),
    ("18 mm", "in", 18.0),
    ("18mm", "in", 18.0),
    ("1.2 m", "mm", 1200.0),
    ("30 cm", "mm", 300.0),
    ("602.5", "mm", 602.5),
    (".5 in", "mm", 12.7),
    ("1 IN", "mm", 25.4),
    ("1 in", "mm", 25.4),
    ("1 ft", "mm", 304.8),
    ("23 5/8 in", "mm", 600.075),
    ("23 5/8", "in", 600.075),
    ("23-5/8 in", "mm", 600.075),
    ('23 5/8"', "mm", 600.075),
    ('3/4"', "mm", 19.05),
    ("3/4 in", "mm", 19.05),
    ("¾ in", "mm", 19.05),
    ("23⅝ inches", "mm", 600.075),
    ("3⁄4 in", "mm", 19.05),
    ("6 ft 3 1/4 in", "mm", 1911.35),
    ("6' 3 1/4\"", "mm", 1911.35),
    ("6'3¼″", "mm", 1911.35),
    ("6′-3″", "mm", 1905.0),
    ("6’ 3”", "mm", 1905.0),
    ("3 1/2 feet", "mm", 1066.8),
    ("  18 \N{NO-BREAK SPACE}mm ", "mm", 18.0),
    ("0", "mm", 0.0),
    (0, "in", 0.0),
    (18, "mm", 18.0),
    (602.5, "mm", 602.5),
    (23.1, "in", 586.74),
]


@pytest.mark.parametrize(("written", "unit", "expected"), WELL_KNOWN)
def test_a_length_is_read_as_it_is_written(written, unit, expected):
    assert parse_length(written, unit) == expected


@pytest.mark.parametrize(
    ("written", "unit", "said"),
    [
        ("abc", "mm", "`abc` can't be read as a length; write it like `18`, `18 mm`"),
        ("", "mm", "an empty text can't be read"),
        ("  ", "in", "an empty text can't be read"),
        ("in", "mm", "`in` can't be read"),
        ("18 mil", "mm", "`18 mil` can't be read"),
        ("18 mm mm", "mm", "can't be read"),
        ("6 ft 3", "mm", "`6 ft 3` can't be read"),
        ("1e3", "mm", "`1e3` can't be read"),
        ("٣ mm", "mm", "can't be read"),
        ("9" * 5000, "mm", "can't be read"),
        ("12,5", "mm", "write decimals with a point (`12.5`)"),
        ("1,216", "mm", "thousands without a mark"),
        ("-3 mm", "mm", "`-3 mm` is less than zero"),
        ("−3 mm", "mm", "is less than zero"),
        (-3, "mm", "`-3` is less than zero"),
        ("3/0 in", "mm", "divides by zero"),
        ("23 9/8 in", "mm", "check the fraction"),
        ("3/4", "mm", "if inches are meant, write `3/4 in`"),
        ("1216 m", "mm", "more than 100 m"),
        (1e300, "in", "more than 100 m"),
        (10**400, "in", "more than 100 m"),
        (float("nan"), "mm", "`nan` can't be read"),
        (float("inf"), "mm", "`inf` can't be read"),
        (float("-inf"), "mm", "`-inf` can't be read"),
        (True, "mm", "`true` can't be read"),
        (False, "in", "`false` can't be read"),
    ],
)
def test_what_is_not_a_length_is_refused_in_plain_words(written, unit, said):
    with pytest.raises(ValueError) as caught:
        parse_length(written, unit)
    assert said in str(caught.value)
    assert len(str(caught.value)) < 250


@pytest.mark.parametrize(
    ("mm", "in_mm", "in_inches"),
    [
        (0.0, "0", "0"),
        (-0.01, "0", "0"),
        (18.0, "18", "45/64"),
        (602.5, "602.5", "23 23/32"),
        (600.075, "600.1", "23 5/8"),
        (19.05, "19.1", "3/4"),
        (-19.05, "-19.1", "-3/4"),
        (-600.075, "-600.1", "-23 5/8"),
        (25.4, "25.4", "1"),
        (2440.0, "2440", "96 1/16"),
        (100.04, "100", "3 15/16"),
        (1196.4, "1196.4", "47 7/64"),
        (-18.0, "-18", "-45/64"),
        (18.034, "18", "45/64"),
        (0.15, "0.2", "0"),
        (-0.15, "-0.2", "0"),
        (0.25, "0.3", "1/64"),
        (25.3, "25.3", "1"),
        (449.05, "449.1", "17 43/64"),
    ],
)
def test_a_length_is_shown_as_it_is_marked_out(mm, in_mm, in_inches):
    assert format_length(mm, "mm") == in_mm
    assert format_length(mm, "in") == in_inches


@st.composite
def inches(draw):
    """Text and exact value of a length in inches, in one of the ways they are written."""
    under = draw(st.sampled_from([2, 4, 8, 16, 32, 64, 3, 10]))
    over = draw(st.integers(1, under - 1))
    whole = draw(st.integers(0, 400))
    feet = draw(st.integers(0, 60))
    mark = draw(st.sampled_from([" in", "in", '"', " inches", "″"]))
    way = draw(st.sampled_from(["lone", "whole", "mixed", "hyphen", "feet"]))
    part = Fraction(over, under)
    written, value = {
        "lone": (f"{over}/{under}{mark}", part),
        "whole": (f"{whole}{mark}", Fraction(whole)),
        "mixed": (f"{whole} {over}/{under}{mark}", whole + part),
        "hyphen": (f"{whole}-{over}/{under}{mark}", whole + part),
        "feet": (f"{feet}' {whole} {over}/{under}{mark}", 12 * feet + whole + part),
    }[way]
    return written, value


@given(inches(), st.sampled_from(["mm", "in"]))
@settings(max_examples=300)
def test_inches_are_exact(length, unit):
    written, value = length
    assert parse_length(written, unit) == float(value * INCH)


@given(st.integers(0, 300), st.sampled_from(["ft", "foot", "feet", "'", "′"]))
@settings(max_examples=50)
def test_feet_are_exact(feet, mark):
    assert parse_length(f"{feet} {mark}", "mm") == float(feet * FOOT)


@given(
    st.integers(0, 9999), st.integers(0, 999), st.sampled_from(["mm", "cm", "m", "in", "ft", ""])
)
@settings(max_examples=200)
def test_decimals_are_exact(whole, thousandths, mark):
    factor = {"mm": 1, "cm": 10, "m": 1000, "in": INCH, "ft": FOOT, "": INCH}[mark]
    exact = (whole + Fraction(thousandths, 1000)) * factor
    if exact <= 100_000:
        assert parse_length(f"{whole}.{thousandths:03}{mark}", "in") == float(exact)


@given(st.integers(0, 20_000))
@settings(max_examples=200)
def test_tenths_of_a_millimetre_come_back(tenths):
    mm = tenths / 10
    assert parse_length(format_length(mm, "mm"), "mm") == mm


@given(st.integers(0, 64 * 400))
@settings(max_examples=200)
def test_sixty_fourths_of_an_inch_come_back(sixty_fourths):
    mm = float(Fraction(sixty_fourths, 64) * INCH)
    assert parse_length(format_length(mm, "in"), "in") == mm


@given(st.floats(0, 20_000), st.sampled_from(["mm", "in"]))
@settings(max_examples=300)
def test_what_is_shown_reads_back_to_half_a_step(mm, unit):
    slack = {"mm": Fraction(1, 20), "in": INCH / 128}[unit]
    shown = parse_length(format_length(mm, unit), unit)
    # What is a half but for 1e-6 mm goes up too.
    assert abs(Fraction(shown) - Fraction(mm)) <= slack + Fraction(2, 10**6)
    assert as_shown(mm, unit) == shown


@given(st.integers(0, 64 * 400), st.floats(-1e-7, 1e-7), st.sampled_from(["mm", "in"]))
@settings(max_examples=300)
def test_halves_of_what_is_shown_go_up_whatever_sum_made_them(steps, noise, unit):
    step = {"mm": Fraction(1, 10), "in": INCH / 64}[unit]
    half = float((steps + Fraction(1, 2)) * step)
    up = format_length(float((steps + 1) * step), unit)
    assert format_length(half, unit) == format_length(half + noise, unit) == up
    assert format_length(-half - noise, unit) == f"-{up}"


def test_equal_doors_read_alike():
    """517.3265625 mm are 20 47/128 in."""
    assert {format_length(each, "in") for each in (517.326562, 517.326563)} == {"20 3/8"}


@given(st.text(max_size=30), st.sampled_from(["mm", "in"]))
@settings(max_examples=300)
def test_any_text_is_a_length_or_a_plain_refusal(text, unit):
    try:
        length = parse_length(text, unit)
    except ValueError as error:
        assert "length" in str(error) or "`" in str(error)
    else:
        assert 0 <= length <= 100_000


@given(st.floats(0, 20_000), st.sampled_from(["mm", "in"]))
@settings(max_examples=200)
def test_what_is_said_to_be_enough_is_enough(mm, unit):
    """A limit that is read off a message and written into the spec is kept."""
    up, down = at_least(mm, unit), at_most(mm, unit)
    said_up = parse_length(format_length(up, unit), unit)
    said_down = parse_length(format_length(down, unit), unit)
    assert said_down <= mm + 1e-6
    assert mm - 1e-6 <= said_up
    assert said_up - said_down <= {"mm": 0.1, "in": 25.4 / 64}[unit] + 1e-6


@pytest.mark.parametrize(
    ("mm", "unit", "text"),
    [(1.5, "mm", "+1.5"), (-1.5, "mm", "-1.5"), (0.04, "mm", "0"), (-4.7625, "in", "-3/16")],
)
def test_a_difference_has_its_sign(mm, unit, text):
    assert format_difference(mm, unit) == text


@pytest.mark.parametrize(
    ("mm", "limit", "unit", "told"),
    [
        (6.0, 4.6, "mm", ("6", "4.6")),
        (4.6, 4.6, "mm", ("4.6", "4.6")),
        (4.62, 4.58, "mm", ("4.62", "4.58")),
        (4.6001, 4.6, "mm", ("just over 4.60", "4.60")),
        (4.5999, 4.6, "mm", ("just under 4.60", "4.60")),
        (0.432, 0.381, "in", ("0.017", "0.015")),
        (5.92, 5.842, "in", ("0.233", "0.230")),
        (5.845, 5.842, "in", ("just over 0.230", "0.230")),
        (17.2, 5.842, "in", ("43/64", "15/64")),
    ],
)
def test_a_length_past_its_limit_never_reads_like_it(
    mm: float, limit: float, unit: LengthUnit, told: tuple[str, str]
) -> None:
    assert told_apart(mm, limit, unit) == told


@pytest.mark.parametrize(
    ("lengths", "unit", "kept", "shown"),
    [
        # Three equal spaces of 1000/3: two boards stay as they are, one space takes the rest.
        ([18.0, 1000 / 3, 1000 / 3, 1000 / 3, 18.0], "mm", [True, False, False, False, True],
         ("18", "333.3", "333.3", "333.4", "18")),
        ([0.04, 0.04, 0.04], "mm", [False] * 3, ("0", "0", "0.1")),
        ([12.7, 12.7], "in", [False] * 2, ("1/2", "1/2")),
        # 1/3 in is 21 1/3 sixty-fourths: three of them are an inch.
        ([25.4 / 3] * 3, "in", [False] * 3, ("21/64", "21/64", "11/32")),
        ([100.06, 200.06], "mm", [True, True], ("100.1", "200")),
        # What is kept more gives way last.
        ([100.04, 3.04, 100.04], "mm", [1, 2, 1], ("100", "3", "100.1")),
        ([], "mm", [], ()),
    ],
)  # fmt: skip
def test_a_chain_of_figures_adds_up(
    lengths: list[float], unit: LengthUnit, kept: list[int], shown: tuple[str, ...]
) -> None:
    assert shown_adding_up(lengths, unit, kept) == shown


@given(
    st.lists(st.tuples(st.floats(0.0, 3000.0), st.booleans()), min_size=1, max_size=20),
    st.sampled_from(["mm", "in"]),
)
def test_every_chain_of_figures_adds_up_and_none_is_more_than_a_step_off(
    pieces: list[tuple[float, bool]], unit: LengthUnit
) -> None:
    lengths, kept = [length for length, _ in pieces], [each for _, each in pieces]
    shown = shown_adding_up(lengths, unit, kept)
    step = 0.1 if unit == "mm" else 25.4 / 64
    read = [parse_length(text, unit) for text in shown]
    assert sum(read) == pytest.approx(as_shown(sum(lengths), unit), abs=1e-6)
    plain = [as_shown(length, unit) for length in lengths]
    off = [abs(its - length) > 1e-6 for its, length in zip(read, plain, strict=True)]
    assert read == pytest.approx(plain, abs=1.001 * step)
    # A board is shown as it is unless no space is left that could give way.
    spaces = [at for at, fixed in enumerate(kept) if not fixed and plain[at] >= step]
    if any(off[at] for at, fixed in enumerate(kept) if fixed):
        assert all(off[at] for at in spaces)
