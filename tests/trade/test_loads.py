"""What shelves carry, against what was published, and as it is read."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.amounts import Amount, AmountError, Kind
from rodwright.trade.loads import (
    BEHIND_DOORS,
    IN_DRAWERS,
    MOST_PER_AREA,
    ON_OPEN_SHELVES,
    ON_WORKTOPS,
    USES,
    Burden,
    burden_of,
    most_per_metre,
    read_burden,
)

NAMES = [name for use in USES for name in (use.name, *use.others)]


@pytest.mark.parametrize(
    ("name", "value", "kind"),
    [
        # What the sources themselves give in metric measure, beside the pounds that are kept.
        ("books", 37.2, Kind.RUN_WEIGHT),  # Krakower: 25 lb/ft
        ("paperbacks", 14.9, Kind.RUN_WEIGHT),  # Kime et al.: 10 lb/ft
        ("hardbacks", 29.8, Kind.RUN_WEIGHT),  # Kime et al.: 20 lb/ft
        ("large books", 53.6, Kind.RUN_WEIGHT),  # Kime et al.: 36 lb/ft
        ("textbooks", 71.4, Kind.RUN_WEIGHT),  # Kaw: 4 lb/in
        ("records", 67.0, Kind.RUN_WEIGHT),  # 45 lb/ft, from memory
        ("files", 45.0, Kind.RUN_WEIGHT),  # from memory
        ("crockery", 73.2, Kind.AREA_WEIGHT),  # ANSI/KCMA A161.1: 718 Pa
        ("storage", 195, Kind.AREA_WEIGHT),  # Architectural Woodwork Standards: 40 lb/ft2
        ("school storage", 244, Kind.AREA_WEIGHT),  # the same: 50 lb/ft2
        ("folded clothes", 136, Kind.DENSITY),  # ASTM F2057: 8.5 lb/ft3, from memory
    ],
)
def test_weights_that_are_published(name, value, kind):
    amount = burden_of(name).amount
    assert amount.kind is kind
    assert amount.value == pytest.approx(value, rel=2e-3)


@pytest.mark.parametrize("name", NAMES)
def test_every_use_has_a_source_or_no_weight(name):
    if name in {"television", "tv", "television set"}:
        return
    burden = burden_of(name.upper())
    assert burden.source is not None
    assert burden.amount.value > 0


def test_what_is_remembered_is_marked_so():
    remembered = {use.name for use in USES if use.weight and not use.weight.source.seen}
    assert remembered == {"records", "files", "paper", "folded clothes", "clothes on a rail"}


def test_names_are_said_once():
    assert len(NAMES) == len(set(NAMES))


@pytest.mark.parametrize("name", [ON_OPEN_SHELVES, BEHIND_DOORS, IN_DRAWERS, ON_WORKTOPS])
def test_what_is_assumed_is_known(name):
    assert burden_of(name).said == name


@pytest.mark.parametrize(
    ("text", "kind", "value", "manner"),
    [
        ("25 kg/m", Kind.RUN_WEIGHT, 25, "lies"),
        ("30 kg", Kind.WEIGHT, 30, "lies"),
        ("potted plants 30 kg", Kind.WEIGHT, 30, "lies"),
        ("A4 files 45 kg/m", Kind.RUN_WEIGHT, 45, "lies"),
        ("books 20 kg/m", Kind.RUN_WEIGHT, 20, "lies"),
        ("television 18 kg", Kind.WEIGHT, 18, "stands"),
        ("TV 18 kg", Kind.WEIGHT, 18, "stands"),
        ("coats 20 kg/m", Kind.RUN_WEIGHT, 20, "hangs"),
        ("0 kg", Kind.WEIGHT, 0, "lies"),
    ],
)
def test_amounts_are_the_makers_own(text, kind, value, manner):
    assert read_burden(text) == Burden(text, Amount(value, kind), None, manner)


def test_what_is_known_by_two_names_keeps_its_makers_own():
    bedding, clothes = read_burden("  Bedding "), read_burden("folded clothes")
    assert bedding.said == "Bedding"
    assert (bedding.amount, bedding.source) == (clothes.amount, clothes.source)


def test_nothing_weighs_nothing():
    assert read_burden("Nothing").amount.value == 0


@pytest.mark.parametrize("text", ["nothin", "noting", "empties", "clothng", "non"])
def test_nothing_is_never_what_was_meant(text):
    with pytest.raises(AmountError) as refused:
        read_burden(text)
    assert "nothing" not in f"{refused.value} {refused.value.remedy}"


@pytest.mark.parametrize(
    ("text", "message", "remedy"),
    [
        (
            "bokos",
            "`bokos` isn't among what is known to lie on shelves; did you mean `books`?",
            "Write `books`.",
        ),
        (
            "widgets",
            "`widgets` isn't among what is known to lie on shelves",
            "Write what it weighs, like `widgets 25 kg/m`, or one of `books`, `paperbacks`, "
            "`hardbacks`, `large books`, `textbooks`, `records`, `files`, `archive boxes`, "
            "`paper`, `crockery`, `household goods`, `storage`, `school storage`, "
            "`folded clothes`, `clothes on a rail`, `television`.",
        ),
        (
            "television",
            "no weight of a television is published",
            "Take it from its data plate and write it: `television 18 kg`.",
        ),
        (
            "clothes",
            "clothes hang on a rail or lie on shelves",
            "Write `clothes on a rail` or `folded clothes`.",
        ),
        (
            "clothing",
            "clothes hang on a rail or lie on shelves",
            "Write `clothes on a rail` or `folded clothes`.",
        ),
        (
            "children's clothing",
            "clothes hang on a rail or lie on shelves",
            "Write `clothes on a rail` or `folded clothes`.",
        ),
        (25, "`25` has no unit", "Write it like `25 kg/m`, `50 lb/ft2` or `30 kg`."),
        ("books 25", "`25` has no unit", "Write it like `25 kg/m`, `50 lb/ft2` or `30 kg`."),
        (
            "-25 kg/m",
            "`-25 kg/m` is less than zero",
            "Write it like `25 kg/m`, `50 lb/ft2` or `30 kg`.",
        ),
        (
            "nan kg/m",
            "`nan kg/m` is no number",
            "Write it like `25 kg/m`, `50 lb/ft2` or `30 kg`.",
        ),
        (
            "10 t/m",
            "`10 t/m` is more than a shelf carries: at most 714.3 kg/m makes sense (ten times a "
            "row of large textbooks: A. Kaw, numerical methods notes, chapter 03.00C, from pages "
            "per inch)",
            "Check the figure and its unit.",
        ),
        (
            "gravel 2 t/m2",
            "`2 t/m2` is more than a shelf carries: at most 1465 kg/m2 makes sense (ARLIS-L list "
            "of art librarians (2009), after Metcalf (1986), p. 327)",
            "Check the figure and its unit.",
        ),
        (
            "tv 18 kg/m",
            "`18 kg/m` is a weight per length, where a weight is wanted",
            "Write it like `30 kg` or `65 lb`.",
        ),
        (
            "9500 N/mm",
            "`9500 N/mm` is more than a shelf carries: at most 714.3 kg/m makes sense (ten times a "
            "row of large textbooks: A. Kaw, numerical methods notes, chapter 03.00C, from pages "
            "per inch)",
            "Check the figure and its unit.",
        ),
        (
            "680 kg/m3",
            "`680 kg/m3` is a density, where a weight per length, a weight per area or a weight "
            "is wanted",
            "Write it like `25 kg/m`, `50 lb/ft2` or `30 kg`.",
        ),
        ("  ", "this is empty", "Write what lies there: `books`, `25 kg/m` or `nothing`."),
        (
            "x" * 80,
            f"`{'x' * 39}…` isn't among what is known to lie on shelves",
            "Write what it weighs, like `25 kg/m`.",
        ),
    ],
)
def test_what_is_refused(text, message, remedy):
    with pytest.raises(AmountError) as refused:
        read_burden(text)
    assert (str(refused.value), refused.value.remedy) == (message, remedy)


def test_limits_are_told_in_the_makers_measure():
    with pytest.raises(AmountError, match=r"at most 480\.0 lb/ft makes sense"):
        read_burden("600 lb/ft", "in")
    with pytest.raises(AmountError, match=r"at most 300 lb/ft2 makes sense"):
        read_burden("301 lb/ft2", "in")


def test_limits_are_just_kept():
    assert read_burden("480 lb/ft").amount.value == pytest.approx(most_per_metre())
    assert read_burden("300 lb/ft2").amount.value == pytest.approx(1464.7, rel=1e-4)
    assert MOST_PER_AREA.value == 300


@pytest.mark.parametrize(
    ("text", "per_metre"),
    [("25 kg/m", 25), ("30 kg", 37.5), ("100 kg/m2", 30), ("folded clothes", 136.157 * 0.3 * 0.25)],
)
def test_weights_per_metre_by_hand(text, per_metre):
    """On a shelf of 800 mm, 300 deep and with 250 above it."""
    assert read_burden(text).per_metre(800, 300, 250) == pytest.approx(per_metre, rel=1e-5)


@given(text=st.text(max_size=60) | st.sampled_from(NAMES) | st.floats() | st.integers())
def test_anything_is_read_or_refused(text):
    try:
        burden = read_burden(text)
    except AmountError as error:
        assert error.remedy
    else:
        assert burden.amount.value >= 0
