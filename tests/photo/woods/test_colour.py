"""Colours as reflectance."""

import pytest

from rodwright.photo.woods.colour import linear_of


def test_the_tone_curve_is_that_of_srgb() -> None:
    assert linear_of("#ff8000") == pytest.approx((1.0, 0.2158605, 0.0))
    assert linear_of("#0a0a0a")[0] == pytest.approx(10 / 255 / 12.92)
