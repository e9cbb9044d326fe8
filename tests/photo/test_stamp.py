"""Whether a photograph still shows the unit as it is."""

from __future__ import annotations

from dataclasses import replace
from io import BytesIO

import pytest
from PIL import Image

from kit.specs import unit_from
from rodwright.photo.stamp import bears, stamp_of

UNIT = unit_from("size: {width: 800, height: 900, depth: 300}")


def _photograph(comment: str) -> bytes:
    file = BytesIO()
    Image.new("RGB", (8, 8)).save(file, format="JPEG", comment=comment)
    return file.getvalue()


def test_a_photograph_of_the_same_unit_is_known() -> None:
    again = unit_from("size: {width: 800, height: 900, depth: 300}")
    assert bears(_photograph(stamp_of(UNIT, "closed")), stamp_of(again, "closed"))


def test_one_of_anything_else_is_not() -> None:
    photograph = _photograph(stamp_of(UNIT, "closed"))
    wider = unit_from("size: {width: 801, height: 900, depth: 300}")
    titled = replace(UNIT, title="Another")
    assert not bears(photograph, stamp_of(wider, "closed"))
    assert not bears(photograph, stamp_of(titled, "closed"))
    assert not bears(photograph, stamp_of(UNIT, "open"))


@pytest.mark.parametrize("data", [b"", b"no picture", _photograph("")])
def test_what_bears_no_stamp(data: bytes) -> None:
    assert not bears(data, stamp_of(UNIT, "closed"))
