"""Tags and leaders: nothing crosses, nothing overlaps."""

from itertools import combinations

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from kit import samples
from rodwright.jobs.new import model_path
from rodwright.pictures.explode import explode
from rodwright.pictures.labels import MANY, rows
from rodwright.pictures.raster import Raster
from rodwright.pictures.stage import anchors, render, set_stage
from rodwright.pictures.tags import Anchor, Frame, Tag, faults, place_tags, room, tag_width
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.wishes import read_spec


@settings(max_examples=60)
@given(
    st.floats(300, 3000),
    st.floats(300, 3000),
    st.lists(
        st.tuples(st.integers(1, 99), st.integers(1, 99)), min_size=1, max_size=60, unique=True
    ),
    st.sampled_from(["SD1", "SH12b", "SH1 to SH31 (4)"]),
)
def test_no_leaders_cross_and_no_tags_overlap(
    width: float, height: float, places: list[tuple[int, int]], text: str
) -> None:
    frame = Frame(200.0, 100.0, 200.0 + width, 100.0 + height)
    points = [
        Anchor(text, (frame.left + width * x / 100, frame.top + height * y / 100))
        for x, y in places
    ]
    size = 9.0
    if not room([text] * len(points), frame, size):
        with pytest.raises(ValueError, match="room"):
            place_tags(points, frame, size)
        return
    tags = place_tags(points, frame, size)
    assert [tag.anchor for tag in tags] == points
    assert faults(tags) == ()
    # The same again by another library.
    leaders = [shapely.LineString([tag.anchor.at, tag.port]) for tag in tags]
    boxes = [shapely.box(*tag.low, *tag.high) for tag in tags]
    for first, second in combinations(leaders, 2):
        assert not first.crosses(second)
    for a, b in combinations(boxes, 2):
        assert a.intersection(b).area < 1e-9
    for i, leader in enumerate(leaders):
        assert all(box.intersection(leader).length < 1e-9 for j, box in enumerate(boxes) if i != j)


def test_tags_go_above_and_below_only_when_the_sides_are_full() -> None:
    frame = Frame(100.0, 100.0, 500.0, 300.0)
    # Ten fit on each side: 200 mm at twice the text's size of 10.
    few = [Anchor("A1", (200.0, 110.0 + i)) for i in range(20)]
    assert {tag.port[0] for tag in place_tags(few, frame, 10.0)} == {100.0, 500.0}
    many = [*few, Anchor("A2", (300.0, 105.0))]
    assert any(tag.port[1] in (100.0, 300.0) for tag in place_tags(many, frame, 10.0))


def test_faults_are_found() -> None:
    def tag(text: str, at: tuple[float, float], port: tuple[float, float]) -> Tag:
        low, high = (port[0] - 20.0, port[1] - 5.0), (port[0], port[1] + 5.0)
        return Tag(Anchor(text, at), port, low, high)

    crossing = (tag("A", (10.0, 0.0), (0.0, 50.0)), tag("B", (10.0, 50.0), (0.0, 0.0)))
    assert faults(crossing) == ("the leaders of A and B cross",)
    close = (tag("A", (10.0, 0.0), (0.0, 0.0)), tag("B", (10.0, 6.0), (0.0, 6.0)))
    assert faults(close) == ("the tags of A and B overlap",)
    over = (tag("A", (-50.0, 0.0), (50.0, 0.0)), tag("B", (10.0, 0.0), (0.0, 3.0)))
    assert "the leader of A runs over B" in faults(over)


def test_wider_text_makes_wider_tags() -> None:
    assert tag_width("SH10 to SH40 (4)", 20.0) > tag_width("SH10", 20.0) > 20.0


def _tagged(unit: Unit) -> tuple[Tag, ...]:
    named = rows(unit.parts)
    stage = set_stage(unit, explode(unit), (2000, 1500), Frame(350, 150, 1650, 1350))
    with Raster() as raster:
        seen = render(stage, raster).seen
    return place_tags(anchors(stage, seen, named), Frame(300, 100, 1700, 1400), 18.0)


def test_every_part_of_a_small_unit_has_a_tag_of_its_own() -> None:
    unit = samples.bookcase()
    tags = _tagged(unit)
    assert [tag.anchor.text for tag in tags] == [part.ref for part in unit.parts]
    assert [tag.anchor.text for tag in tags if tag.anchor.hidden] == []
    assert faults(tags) == ()


def test_equal_parts_in_a_row_share_a_tag_in_a_large_unit() -> None:
    unit = set_out(read_spec(model_path("library-wall")))
    assert len(unit.parts) > MANY
    named = rows(unit.parts)
    assert sorted(number for _, row in named for number in row) == list(range(len(unit.parts)))
    assert len(named) < len(unit.parts)
    for _, row in named:
        assert len({unit.parts[number].shape for number in row}) == 1
    assert faults(_tagged(unit)) == ()
