"""Movement across the grain against the Wood Handbook's own example and its shrinkage table."""

from __future__ import annotations

import pytest

from rodwright.trade.materials import MATERIALS, known_materials
from rodwright.trade.movement import UNKNOWN, WOODS, swelling, wood_of
from rodwright.unit import Grain, Stock

# Wood Handbook FPL-GTR-190, table 4-3: radial and tangential shrinkage, %, green to oven-dry.
SHRINKAGE = {
    "ash": (4.9, 7.8),
    "basswood": (6.6, 9.3),
    "beech": (5.5, 11.9),
    "birch": (7.3, 9.5),
    "butternut": (3.4, 6.4),
    "cherry": (3.7, 7.1),
    "chestnut": (3.4, 6.7),
    "douglas fir": (4.8, 7.6),
    "elm": (4.2, 9.5),
    "poplar": (4.6, 8.2),
    "walnut": (5.5, 7.8),
    "white fir": (3.3, 7.0),
}
# The same table, from memory.
REMEMBERED = {"pine": (3.8, 7.2), "spruce": (4.3, 7.5), "larch": (4.5, 9.1), "maple": (4.8, 9.9)}


def test_the_handbooks_example() -> None:
    """Wood Handbook FPL-GTR-190, chapter 13, under equation 13-2.

    A flat-grained white fir board 232 mm (9.15 in) wide at 8 % goes to 11 %: it widens by
    1.705 mm (0.067 in) to 233.7 mm (9.217 in).
    """
    assert swelling("white fir", 232.0, 8.0, 11.0) == pytest.approx(1.705, abs=0.0005)
    assert 232.0 + swelling("white fir", 232.0, 8.0, 11.0) == pytest.approx(233.7, abs=0.05)
    assert 9.15 + swelling("white fir", 9.15, 8.0, 11.0) == pytest.approx(9.217, abs=0.0005)
    # "... the thickness of the same board ... by using the coefficient CR = 0.00112."
    assert swelling("white fir", 100.0, 8.0, 9.0, "radial") == pytest.approx(0.112)


@pytest.mark.parametrize(("wood", "shrinkage"), (SHRINKAGE | REMEMBERED).items())
def test_coefficients_follow_from_green_shrinkage(
    wood: str, shrinkage: tuple[float, float]
) -> None:
    """The coefficients are "based on the dimension at 10 % moisture content" (ch. 13).

    So the handbook's equation 13-3 (from memory), taken at 10 %, gives them from table 4-3:
    1 / (30 x 100 / shrinkage - 30 + 10).
    """
    for given, total in zip((WOODS[wood].radial, WOODS[wood].tangential), shrinkage, strict=True):
        assert given == pytest.approx(1.0 / (3000.0 / total - 20.0), abs=1.5e-5)


def test_drying_is_less_than_nought_and_quarter_sawn_moves_less() -> None:
    assert swelling("oak", 300.0, 12.0, 6.0) == -swelling("oak", 300.0, 6.0, 12.0)
    for material in WOODS:
        assert 0 < swelling(material, 1.0, 6, 12, "radial") < swelling(material, 1.0, 6, 12)


@pytest.mark.parametrize(
    ("material", "listed"),
    [
        ("European oak", "white oak, commercial"),
        ("quarter-sawn european oak", "white oak, commercial"),
        ("american red oak", "red oak, commercial"),
        ("Douglas-fir", "Douglas-fir, coast-type"),
        ("scots pine", "pine, red"),
        ("sycamore", "maple, sugar"),
        ("brown ash", "ash, white"),
    ],
)
def test_british_names_find_the_nearest_listed_wood(material: str, listed: str) -> None:
    assert wood_of(material).listed_as == listed


def test_no_known_wood_counts_as_unknown_and_the_unknown_moves_most() -> None:
    unlisted = {name for name in MATERIALS if wood_of(name) is UNKNOWN}
    woods = known_materials("board").split(", ")
    assert unlisted & set(woods) == {
        "afrormosia", "aspen", "cypress", "iroko", "obeche", "ramin", "robinia", "sapele",
        "spanish cedar", "sweetgum", "western red cedar",
    }  # fmt: skip
    assert wood_of("zebrano") is UNKNOWN
    assert all(UNKNOWN.tangential >= wood.tangential for wood in WOODS.values())
    assert all(UNKNOWN.radial >= wood.radial for wood in WOODS.values())


@pytest.mark.parametrize(("low", "high"), [(5.9, 12.0), (6.0, 14.1)])
def test_outside_its_range_the_formula_is_refused(low: float, high: float) -> None:
    with pytest.raises(ValueError, match="6-14 %"):
        swelling("oak", 300.0, low, high)


def test_sheet_goods_count_as_still() -> None:
    def stock(kind: str) -> Stock:
        return Stock(kind, kind, "oak", 18.0, Grain.LENGTHWISE, 700.0, "", "#000000")  # type: ignore[arg-type]

    assert stock("sheet").swelling(600.0, (6.0, 12.0)) == 0.0
    assert stock("board").swelling(600.0, (6.0, 12.0)) == swelling("oak", 600.0, 6.0, 12.0)


def test_quarter_sawn_stock_moves_by_its_radial_coefficient() -> None:
    """Wood Handbook table 13-5, white oak: 0.00180 radial, 0.00365 tangential."""
    flat = Stock("oak", "board", "oak", 18.0, Grain.LENGTHWISE, 700.0, "", "#000000")
    quarter = flat.quarter_sawn
    assert quarter is not None
    assert flat.swelling(300.0, (6.0, 12.0)) == pytest.approx(300 * 0.00365 * 6)
    assert quarter.swelling(300.0, (6.0, 12.0)) == pytest.approx(300 * 0.00180 * 6)
    assert quarter.quarter_sawn is None
    assert quarter.described == "oak, quarter-sawn" and flat.described == "oak"
