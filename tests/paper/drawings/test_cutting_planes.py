"""Areas that planes cut, held by shapely to what lengths and thicknesses of the parts make."""

from __future__ import annotations

from pathlib import Path

import pytest
from shapely import Polygon, box

from kit.cut_areas import areas, by_arithmetic
from kit.samples import bookcase
from rodwright import read_spec, set_out
from rodwright.paper.drawings.choice import cutting_planes
from rodwright.paper.drawings.cutting_planes import CuttingPlane, cut_through
from rodwright.pictures.drafting.bands import is_square
from rodwright.unit import Unit

MODELS = Path(__file__).parents[3] / "models"


def reached(unit: Unit, plane: CuttingPlane) -> set[str]:
    """Parts whose boxes a plane goes through."""
    boxes = {part.ref: part.bounds() for part in unit.parts}
    return {
        ref for ref, its in boxes.items() if its.low[plane.axis] < plane.at < its.high[plane.axis]
    }


def square_ones(unit: Unit, refs: set[str]) -> set[str]:
    """Those of some parts that lie square and have no slanting cuts."""
    return {
        ref
        for ref in refs
        if is_square(unit.part(ref))
        and not any(each.planes(unit.part(ref).blank.size) for each in unit.part(ref).workings)
    }


def test_a_bookcase_cut_across_by_hand() -> None:
    # 800 x 1000 x 300, 18 thick: levels 300 deep, an applied back of 6, rails of 45 x 22.
    cuts, _ = cut_through(bookcase(), CuttingPlane("A", 0, 400.0))
    assert areas(cuts) == {
        "BT1": pytest.approx(300 * 18),
        "SH1": pytest.approx(300 * 18),
        "TP1": pytest.approx(300 * 18),
        "BK1": pytest.approx(1000 * 6),
        # Eased by 4 at the inner arris: a quarter of a circle is left of 16.
        "RL1": pytest.approx(45 * 22 - 16 * (1 - 3.14159 / 4), abs=0.2),
        "RL2": pytest.approx(45 * 22 - 16 * (1 - 3.14159 / 4), abs=0.2),
    }
    assert {cut.ref: cut.kind for cut in cuts} == {
        "BT1": "sheet",
        "SH1": "sheet",
        "TP1": "sheet",
        "BK1": "sheet",
        "RL1": "end grain",
        "RL2": "end grain",
    }


def test_a_bookcase_cut_level_by_hand() -> None:
    cuts, lines = cut_through(bookcase(), CuttingPlane("B", 2, 250.0))
    assert areas(cuts) == {
        "SD1": pytest.approx(300 * 18),
        "SD2": pytest.approx(300 * 18),
        "BK1": pytest.approx(800 * 6),
        "ST1": pytest.approx(45 * 22 - 16 * (1 - 3.14159 / 4), abs=0.2),
        "ST2": pytest.approx(45 * 22 - 16 * (1 - 3.14159 / 4), abs=0.2),
    }
    # Looked down into: the bottom lies below, the shelf above is gone.
    assert lines
    left = next(cut for cut in cuts if cut.ref == "SD1")
    assert box(*Polygon(left.rings[0]).bounds).equals(box(0, 0, 18, 300))


@pytest.mark.parametrize(
    "name", ["hallway-bookcase", "hostel-eaves", "pottery-dresser", "drying-rack"]
)
def test_areas_are_length_by_thickness_of_the_parts(name: str) -> None:
    unit = set_out(read_spec(MODELS / f"{name}.yaml"))
    planes = cutting_planes(unit)
    assert {plane.axis for plane in planes} == {0, 2}
    held = total = 0
    for plane in planes:
        cuts, _ = cut_through(unit, plane)
        for ref, its in areas(cuts).items():
            total += 1
            part = unit.part(ref)
            expected = by_arithmetic(part, plane) if is_square(part) else None
            if expected is not None:
                held += 1
                assert its == pytest.approx(expected, rel=1e-6), (ref, plane)
        assert square_ones(unit, set(areas(cuts))) == square_ones(unit, reached(unit, plane))
    assert held > 0.6 * total
