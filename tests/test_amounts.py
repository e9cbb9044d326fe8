"""Weights, areas, volumes and runs against published conversion factors."""

import pytest

from rodwright.amounts import AREAS, RUNS, VOLUMES, WEIGHTS, format_weight


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
