"""Looking up what is near finds all that overlaps, as looking at everything would."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from rodwright.geometry import Box
from rodwright.geometry.nearby import Nearby

PLACE, SIZE = st.floats(-3000, 3000), st.floats(0, 1500)
BOX = st.builds(lambda x, z, w, h: Box((x, 0, z), (x + w, 1, z + h)), PLACE, PLACE, SIZE, SIZE)


@given(st.lists(BOX, max_size=30), BOX)
def test_nothing_that_overlaps_is_missed(boxes: list[Box], place: Box) -> None:
    found = Nearby(zip(boxes, range(len(boxes)), strict=True)).within(place)
    overlapping = {
        number
        for number, box in enumerate(boxes)
        if all(box.low[i] <= place.high[i] and place.low[i] <= box.high[i] for i in (0, 2))
    }
    assert overlapping <= set(found)
    assert found == sorted(set(found))


def test_what_is_far_off_is_left_out() -> None:
    far = Box((5000, 0, 0), (5010, 10, 10))
    assert Nearby([(far, "far")]).within(Box((0, 0, 0), (900, 1, 900))) == []
