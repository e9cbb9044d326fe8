"""Cross-grain construction: what moves against what."""

from __future__ import annotations

import pytest

from kit.specs import unit_from
from rodwright.checks import check_parts
from rodwright.checks.cross_grain import ACCEPTED
from rodwright.checks.findings import Finding
from rodwright.checks.rules import Rule

SIZE = "size: {width: 800, height: 900, depth: 306}\n"
STOCK = """stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  thin: {kind: sheet, material: birch plywood, thickness: 6, size: [2440, 1220]}
  oak: {kind: board, material: european oak, thickness: 20}
  slats: {kind: board, material: oak, thickness: 9}
"""


def found(text: str, **more: object) -> list[Finding]:
    """What the check says of a unit 306 mm deep with a 6 mm back."""
    unit = unit_from(SIZE + STOCK + text, **more)
    rules = (Rule.HELD_ACROSS_GRAIN, Rule.NO_ROOM_TO_SWELL)
    return [each for each in check_parts(unit) if each.rule in rules]


def test_solid_shelves_housed_in_sheet_sides_are_held() -> None:
    """By hand, Wood Handbook table 13-5: 300 x 0.00365 x (12 - 6) = 6.57 mm."""
    (finding,) = found(
        "back: {stock: thin}\ninterior: {shelves: {count: 2, stock: oak, ends: housed}}\n"
    )
    assert finding.figure == pytest.approx(300 * 0.00365 * 6)
    assert "6.6 mm" in finding.message and "Shelf" in finding.message
    assert {"SH1", "SH2", "SD1", "SD2"} <= set(finding.parts)


def test_loose_shelves_of_solid_wood_are_free() -> None:
    assert not found(
        "back: {stock: thin}\ninterior: {shelves: {count: 2, stock: oak, fixed: false}}\n"
    )


def test_a_case_all_of_boards_moves_together() -> None:
    assert not found("interior: {shelves: {count: 2}}\n", carcass={"stock": "oak"})


def test_a_solid_back_moves_against_the_top_along_its_grain() -> None:
    """The back's boards stand upright: its width lies along top and bottom.

    By hand: 800 mm of oak on the ends of an oak top, 800 x 0.00365 x 6 = 17.52 mm.
    """
    findings = found("back: {stock: slats}\n", carcass={"stock": "oak", "corners": "butted"})
    assert max(each.figure or 0.0 for each in findings) == pytest.approx(
        (800 - 2 * 20) * 0.00365 * 6
    )


def test_the_range_of_moisture_decides() -> None:
    text = "interior: {shelves: {count: 1, stock: oak}}\nmoisture: {least: 8, most: %s}\n"
    span = ACCEPTED / (306 * 0.00365)
    assert not found(text % (8 + span * 0.999))
    assert found(text % (8 + span * 1.001))


def test_frames_of_usual_width_are_not_reported() -> None:
    """Rails of 110 mm oak across the stiles: 110 x 0.00365 x 6 = 2.41 mm."""
    frame = "face_frame: {stock: oak, width: %s, corners: butted, rail_width: %s}\n"
    assert not found(frame % (45, 110))
    rails = found(frame % (45, 120))
    held = {ref for each in rails for ref in each.parts if ref.startswith("RL")}
    assert held == {"RL1", "RL2"}
    assert all(each.figure == pytest.approx(120 * 0.00365 * 6) for each in rails)


def test_a_solid_back_in_grooves_is_free_as_far_as_it_has_room() -> None:
    """Grooves 6 mm deep, 2 mm of clearance each: it is 760 + 2 x 4 mm wide and has 4 mm of room.

    By hand, between 6 and m %: 768 x 0.00365 x (m - 6) = 4 mm at m = 7.427 %.
    """
    text = "back: {stock: slats, fixing: grooved, depth: 6, clearance: 2}\nmoisture: {most: %s}\n"
    assert not found(text % 7.42, carcass={"stock": "oak"})
    (finding,) = found(text % 7.43, carcass={"stock": "oak"})
    assert finding.parts == ("BK1",)
    assert finding.limit == pytest.approx(4.0)


@pytest.mark.parametrize(("fixing", "held"), [("screwed", True), ("slotted", False)])
def test_a_solid_worktop_needs_slots_over_a_sheet_carcass(fixing: str, held: bool) -> None:
    """By hand: a carcass 306 mm deep, 306 x 0.00365 x 6 = 6.70 mm."""
    findings = found(f"worktop: {{stock: oak, fixing: {fixing}}}\n")
    assert bool(findings) is held
    assert all(each.figure == pytest.approx(306 * 0.00365 * 6) for each in findings)


def test_quarter_sawn_wood_is_held_by_less_and_is_offered_where_it_is_enough() -> None:
    """By hand, white oak, table 13-5: rails of 150 move 150 x 0.00365 x 6 = 3.29 mm flat-sawn and
    150 x 0.00180 x 6 = 1.62 mm quarter-sawn; shelves of 300 still 3.24 mm."""
    frame = "face_frame: {stock: oak, width: 45, corners: butted, rail_width: %s}\n"
    rails = found(frame % 150)
    assert rails
    assert all("`sawn: quarter`), which moves 1.6" in each.remedy for each in rails)
    quarter = STOCK.replace("european oak, thickness", "european oak, sawn: quarter, thickness")
    unit = unit_from(SIZE + quarter + frame % 150)
    assert not [each for each in check_parts(unit) if each.rule is Rule.HELD_ACROSS_GRAIN]
    (shelves,) = found("back: {stock: thin}\ninterior: {shelves: {count: 2, stock: oak}}\n")
    assert "quarter" not in shelves.remedy
