"""Operations of fitting, counted by hand."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.specs import unit_from
from rodwright import read_spec
from rodwright.jobs.survey import survey
from rodwright.quote.from_site import fitted, wall_fixings
from rodwright.setout import set_out
from rodwright.unit import Role, Unit

OPENING = "opening: {width: 806, height: 1906, depth: 320}\n"


def counted(unit: Unit) -> dict[str, float]:
    found: dict[str, float] = {}
    for key, amount in fitted(unit):
        found[key] = found.get(key, 0) + amount
    return {key: amount for key, amount in found.items() if amount}


def test_an_opening_is_packed_and_fixed_at_both_sides() -> None:
    """1900 high: near both ends and no more than 600 apart, 4 points a side."""
    unit = unit_from(OPENING)
    assert wall_fixings(unit) == 2 * 4
    # No more than 400 apart: 6 points.
    assert wall_fixings(unit, 400.0) == 2 * 6


def test_fixings_are_those_of_the_survey() -> None:
    """Both planes of an alcove that was measured at the front and at the rear."""
    spec = read_spec(Path(__file__).parents[2] / "models" / "reading-alcove.yaml")
    unit, sheet = set_out(spec), survey(spec)
    assert sheet.fit is not None
    sides = [each for each in sheet.fit.packing if each.gap.side in ("left", "right")]
    assert wall_fixings(unit, spec.spec.fit.fixing_spacing) == len(sides) > 0


def test_a_face_frame_is_fitted_as_it_comes_to_site() -> None:
    """Dowelled it comes in one; mitred with nothing let in, its two stiles and two rails come one
    by one."""
    frame = "face_frame: {stock: ash, width: 45, joint: "
    assert counted(unit_from(OPENING + frame + "dowels}\n"))["frame_member"] == 1
    assert counted(unit_from(OPENING + frame + "glue}\n"))["frame_member"] == 4


def test_what_stands_free_has_its_frame_fitted_at_the_bench() -> None:
    unit = unit_from(
        "size: {width: 800, height: 900, depth: 300}\nface_frame: {stock: ash, width: 45}\n"
    )
    assert "frame_member" not in counted(unit)


def test_scribes_are_scribed_as_long_as_they_are() -> None:
    unit = unit_from(OPENING + "fit: {sides: 40}\nscribes: {stock: ash, edges: [left]}\n")
    scribes = [part.blank.length for part in unit.parts if part.role is Role.SCRIBE]
    assert len(scribes) == 1
    assert counted(unit)["scribing"] == pytest.approx(scribes[0] / 1000)


INSIDE = (
    "interior: {rows: [{height: 1 share, shelves: {count: 2, fixed: false}, "
    "doors: {stock: ply, hung: overlay}}, {height: 200, drawers: {count: 1, hung: overlay, "
    "front_stock: ply, stock: ply, bottom: {stock: thin}}}]}\n"
)


def test_loose_shelves_doors_and_drawers_are_carried_one_by_one() -> None:
    unit = unit_from("opening: {width: 806, height: 1206, depth: 320}\n" + INSIDE)
    found = counted(unit)
    # The carcass, a door, a drawer; and two shelves.
    assert (found["packing"], found["loose_shelf"]) == (3, 2)
    assert found["adjusting"] == len(unit.motions) == 2


def test_what_travels_whole_is_wrapped_once_and_has_its_top_on() -> None:
    unit = unit_from(
        "size: {width: 800, height: 1200, depth: 300}\nworktop: {stock: ply}\n" + INSIDE
    )
    found = counted(unit)
    assert (found["packing"], found["loose_shelf"]) == (1, 2)
    assert "surround" not in found


@pytest.mark.parametrize("wall", ["masonry", "studs", "plasterboard", None])
def test_what_could_tip_is_fixed_to_whatever_wall(wall: str | None) -> None:
    said = f"wall: {wall}\n" if wall else ""
    tall = unit_from("size: {width: 800, height: 1900, depth: 300}\n" + said)
    low = unit_from("size: {width: 800, height: 400, depth: 400}\n" + said)
    assert wall_fixings(tall) >= 2
    assert wall_fixings(low) == 0


def test_what_hangs_is_fixed_by_the_plugs_that_it_needs() -> None:
    unit = unit_from(
        "size: {width: 800, height: 600, depth: 250}\nhung: true\n"
        "back: {stock: thick, fixing: rebated}\n"
        "stock:\n  thick: {kind: sheet, material: birch plywood, thickness: 12}\n"
        "  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
    )
    assert unit.hung
    assert wall_fixings(unit) >= 2
