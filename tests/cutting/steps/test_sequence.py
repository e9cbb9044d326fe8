"""The cuts of sheets and boards in their order."""

from __future__ import annotations

from dataclasses import replace

from kit.cutting_replay import check_steps
from rodwright.cutting import Flaw, Inner, Layout, Offcut, Piece, Placed, Plan, Supply, Trim
from rodwright.cutting.offcuts import Kept
from rodwright.cutting.offer import Offer
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import LotSteps, arranged, lot_steps
from rodwright.cutting.steps.words import preparation, step_words
from rodwright.cutting.work import Lot, LotPlan

PIECES = (
    Piece("A", 800, 400, 2), Piece("B", 600, 400), Piece("C", 700, 300, 2), Piece("D", 100, 250),
)  # fmt: skip
PLACED = (
    Placed("A", 10, 10, 800, 400), Placed("A", 813.2, 10, 800, 400),
    Placed("B", 1616.4, 10, 600, 400), Placed("C", 10, 413.2, 700, 300),
    Placed("C", 713.2, 413.2, 700, 300), Placed("D", 1416.4, 413.2, 100, 250),
)  # fmt: skip
SHEET = Supply("ply", 2440, 1220, trim=Trim(10, 10, 10, 10))


def planned(
    pieces: tuple[Piece, ...],
    placed: tuple[tuple[Placed, ...], ...],
    supply: Supply,
    kind: str = "sheet",
    section: float = 0.0,
    density: float = 680.0,
) -> LotPlan:
    layouts = tuple(Layout(supply.name, each) for each in placed)
    lot = Lot("lot", kind, "birch", 18, density, pieces, {}, (supply,), section)  # type: ignore[arg-type]
    return LotPlan(lot, Plan(layouts, 1, 1, True, 3.2))


def told(steps: LotSteps) -> list[tuple[str, str, float, str]]:
    return [(x.kind, x.held.name, x.setting, x.how) for x in steps.sheets[0].steps]


def test_a_sheet_is_trimmed_broken_down_and_cut_with_wide_settings_first() -> None:
    steps = lot_steps(planned(PIECES, (PLACED,), SHEET), Saw(rip=800, crosscut=1300))
    check_steps(steps)
    assert told(steps) == [
        ("trim", "1", 2430.0, "carried"),
        ("trim", "1", 2420.0, "carried"),
        ("trim", "1", 1210.0, "carried"),
        ("rip", "1", 400.0, "carried"),
        ("rip", "1", 300.0, "fence"),
        ("crosscut", "1.1", 800.0, "fence"),
        ("crosscut", "1.1", 800.0, "fence"),
        ("crosscut", "1.2", 700.0, "fence"),
        ("crosscut", "1.2", 700.0, "fence"),
        ("crosscut", "1.1", 600.0, "fence"),
        ("crosscut", "1.2", 100.0, "fence"),
        ("rip", "1.2.1", 250.0, "fence"),
    ]
    assert steps.settings == 6


def test_equal_sheets_are_told_once_and_their_pieces_get_a_label_each() -> None:
    pieces = tuple(replace(piece, count=3 * piece.count) for piece in PIECES)
    steps = lot_steps(planned(pieces, (PLACED,) * 3, SHEET), Saw())
    check_steps(steps)
    (sheet,) = steps.sheets
    assert sheet.numbers == (1, 2, 3)
    done = [each for step in sheet.steps for each in step.results if each.name == "A"]
    assert [each.copies for each in done] == [(0, 1, 2), (3, 4, 5)]


def test_a_sheet_too_heavy_is_halved_before_it_goes_on_the_saw() -> None:
    placed = tuple(Placed("S", 0, number * 303.2, 2440, 300) for number in range(4))
    lot = planned((Piece("S", 2440, 300, 4),), (placed,), Supply("ply", 2440, 1220))
    steps = lot_steps(lot, Saw(lift=25.0))
    shops = check_steps(steps)
    assert told(steps)[:2] == [("rip", "1", 603.2, "carried"), ("rip", "1", 300.0, "fence")]
    assert shops[0].carried == 1


def test_a_saw_that_does_not_reach_is_carried_to_the_sheet() -> None:
    placed = (Placed("W", 0, 0, 2440, 900), Placed("N", 0, 903.2, 2440, 316.8))
    pieces = (Piece("W", 2440, 900), Piece("N", 2440, 316.8))
    lot = planned(pieces, (placed,), Supply("mdf", 2440, 1220), density=100)
    (step,) = lot_steps(lot, Saw(rip=700)).sheets[0].steps
    # The narrow strip lies at the other edge: measured from there, the saw reaches.
    assert (step.edge, step.setting, step.how) == ("back", 316.8, "fence")
    (step,) = lot_steps(lot, Saw(rip=300)).sheets[0].steps
    assert (step.edge, step.setting, step.how, step.large) == ("face", 900, "carried", True)


def test_what_is_cut_whole_needs_no_cut() -> None:
    lot = planned((Piece("W", 900, 300),), ((Placed("W", 0, 0, 900, 300),),), Supply("o", 900, 300))
    steps = lot_steps(lot, Saw())
    check_steps(steps)
    assert not steps.sheets[0].steps and steps.sheets[0].whole is not None


def test_a_flaw_is_cut_round() -> None:
    placed = (Placed("P", 0, 0, 500, 200), Placed("P", 560, 0, 500, 200))
    flaw = Flaw(505, 90, 40, 20)
    supply = Supply("b", 1200, 200, flaws=(flaw,))
    steps = lot_steps(planned((Piece("P", 500, 200, 2),), (placed,), supply), Saw())
    check_steps(steps)
    assert [step.setting for step in steps.sheets[0].steps] == [500.0, 640.0, 500.0]


def test_a_row_of_fronts_is_divided_at_the_end() -> None:
    row = Piece(
        "R", 700, 900, inner=(Inner("F1", 0, 0, 700, 448.4), Inner("F2", 0, 451.6, 700, 448.4))
    )
    lot = planned((row,), ((Placed("R", 0, 0, 700, 900),),), Supply("ply", 2440, 1220))
    steps = lot_steps(lot, Saw())
    check_steps(steps)
    assert [(x.kind, x.held.name) for x in steps.sheets[0].steps][-1] == ("rip", "R")


def test_mitres_head_to_tail_share_their_cuts() -> None:
    kerf_along = 3.2 * 2**0.5
    first = Placed("M", 0, 0, 500, 45)
    second = Placed("M", 500 - 45 + kerf_along, 0, 500, 45, flipped=True)
    pieces = (Piece("M", 500, 45, 2, slants=(45, 45)),)
    lot = planned(pieces, ((first, second),), Supply("ash", 2400, 45), kind="board")
    steps = lot_steps(lot, Saw())
    check_steps(steps)
    assert [
        (x.kind, x.setting, x.angle, x.long_point, x.nested) for x in steps.sheets[0].steps
    ] == [
        ("mitre", 2400.0, 45.0, "face", False),
        ("mitre", 500.0, 45.0, "face", True),
        ("mitre", 500.0, 45.0, "back", False),
    ]


def test_mitres_that_do_not_nest_are_parted_square_first() -> None:
    placed = (Placed("M", 0, 0, 500, 45), Placed("M", 503.2, 0, 500, 45))
    pieces = (Piece("M", 500, 45, 2, slants=(45, 45)),)
    steps = lot_steps(planned(pieces, (placed,), Supply("ash", 2400, 45), kind="board"), Saw())
    check_steps(steps)


def test_lengths_without_a_width() -> None:
    placed = (
        Placed("L", 0, 0, 700, 0),
        Placed("L", 703.2, 0, 700, 0),
        Placed("K", 1406.4, 0, 300, 0),
    )
    pieces = (Piece("L", 700, count=2), Piece("K", 300))
    lot = planned(pieces, (placed,), Supply("bar", 2400), kind="length", section=44)
    steps = lot_steps(lot, Saw())
    check_steps(steps)
    assert [step.setting for step in steps.sheets[0].steps] == [700, 700, 300]


def test_an_offcut_is_measured_when_less_than_the_blade_is_trimmed_off_it() -> None:
    pieces, placed = (Piece("A", 800, 60),), (Placed("A", 0, 3, 800, 60),)
    offcut = Offcut(0, 66.2, 2520, 63.4)
    supply = Supply("oak", 2520, 132.6, trim=Trim(face=3, back=3))
    lot = planned(pieces, (placed,), supply, kind="board")
    plan = replace(lot.plan, layouts=(Layout("oak", placed, (offcut,)),))
    steps = lot_steps(replace(lot, plan=plan), Saw(), [Kept("K7Q-1", 0, 0, offcut)])
    check_steps(steps)
    trim = steps.sheets[0].steps[2]
    assert (trim.kind, trim.edge, trim.setting, trim.rest) == ("trim", "face", 63.4, None)
    words = step_words(steps, steps.sheets[0], trim, "mm")
    assert words.cut == "trim 3 off the back edge"


def test_a_panel_saw_takes_a_heavy_sheet_whole() -> None:
    steps = lot_steps(planned(PIECES, (PLACED,), SHEET), Saw("panel saw", lift=10))
    check_steps(steps)
    assert all(step.how == "fence" for step in steps.sheets[0].steps)
    assert steps.sheets[0].steps[0].heavy


def test_an_offcut_is_set_from_its_sawn_edge_and_the_trim_falls_off() -> None:
    lot = planned(
        (Piece("A", 2420, 400),), ((Placed("A", 10, 10, 2420, 400),),), SHEET, density=100
    )
    offcut = Offcut(10, 413.2, 2420, 796.8)
    layout = replace(lot.plan.layouts[0], offcuts=(offcut,))
    lot = replace(lot, plan=replace(lot.plan, layouts=(layout,)))
    steps = lot_steps(lot, Saw(), [Kept("K7Q-1", 0, 0, offcut)])
    check_steps(steps)
    *_, last = steps.sheets[0].steps
    assert (last.kind, last.setting, last.edge, last.state) == ("trim", 796.8, "face", "sawn")


def test_only_the_first_cut_across_is_a_head_cut() -> None:
    placed = tuple(Placed("A", x, y, 900, 300) for x in (0, 903.2) for y in (0, 303.2, 606.4))
    lot = planned((Piece("A", 900, 300, 6),), (placed,), Supply("ply", 2440, 1220), density=100)
    steps = lot_steps(lot, Saw(), first="across")
    check_steps(steps)
    across = [step.kind for step in steps.sheets[0].steps if not step.along]
    assert across == ["head cut", "crosscut"]


def test_what_stays_in_hand_keeps_its_name_and_what_is_cut_off_gets_one() -> None:
    placed = tuple(Placed("S", 0, number * 303.2, 2440, 300) for number in range(4))
    lot = planned((Piece("S", 2440, 300, 4),), (placed,), Supply("ply", 2440, 1220))
    first = lot_steps(lot, Saw(lift=25.0)).sheets[0].steps[0]
    assert first.measured is not None and first.rest is not None
    assert (first.measured.name, first.rest.name) == ("1.1", "1")


def test_equal_pieces_come_from_equal_settings() -> None:
    # 300 + 300 + 200 fill the width; of the 300s there are more, of the 200 there is one.
    pieces = (Piece("A", 1000, 200), Piece("B", 1000, 300, 2))
    rows = (
        Placed("A", 0, 0, 1000, 200),
        Placed("B", 0, 203.2, 1000, 300),
        Placed("B", 0, 506.4, 1000, 300),
    )
    lot = planned(pieces, (rows,), Supply("ply", 1000, 806.4), density=100)
    steps = lot_steps(arranged(lot), Saw())
    check_steps(steps)
    made = steps.sheets[0].steps
    assert [(step.setting, step.remains) for step in made] == [(300, False), (300, True)]
    assert made[-1].rest is not None and made[-1].rest.name == "A"
    words = step_words(steps, steps.sheets[0], made[-1], "mm")
    assert "what is left is A: check it, 200 wide" in words.mind


def test_a_remainder_that_is_cut_to_size_later_needs_no_check() -> None:
    placed = Placed("A", 0, 0, 500, 400), Placed("B", 0, 403.2, 300, 150)
    pieces = Piece("A", 500, 400), Piece("B", 300, 150)
    lot = planned(pieces, (placed,), Supply("ply", 900, 700), density=100)
    steps = lot_steps(lot, Saw())
    check_steps(steps)
    assert not any(step.remains for step in steps.sheets[0].steps)


def test_a_sawn_board_is_jointed_and_planed_before_it_is_ripped() -> None:
    pieces, placed = (Piece("A", 800, 60),), (Placed("A", 0, 3, 800, 60),)
    supply = Supply("ash", 2600, 160, trim=Trim(face=3, back=3))
    lot = planned(pieces, (placed,), supply, kind="board")
    offer = Offer(supply, "board", "birch", 18, 27, True, 0.0, sawn_thickness=27)
    sawn = replace(lot, lot=replace(lot.lot, offers=(offer,)))
    steps = lot_steps(sawn, Saw())
    check_steps(steps)
    (sheet,) = steps.sheets
    along = [(step.setting, step.edge, step.state) for step in sheet.steps if step.along]
    assert along == [(154, "face", "jointed"), (60, "face", "jointed")]
    assert sheet.steps[0].held.width == 157
    text = preparation(steps, sheet, "mm")
    assert text is not None and "joint the face edge straight (3 comes off) and plane to 18" in text
    bought_planed = lot_steps(lot, Saw())
    assert preparation(bought_planed, bought_planed.sheets[0], "mm") is None
    assert bought_planed.sheets[0].steps[0].kind == "trim"


def test_offcuts_that_remain_need_no_check() -> None:
    pieces, placed = (Piece("A", 800, 300),), (Placed("A", 0, 0, 800, 300),)
    kept = (Offcut(0, 303.2, 500, 396.8), Offcut(503.2, 303.2, 296.8, 396.8))
    lot = planned(pieces, (placed,), Supply("ply", 800, 700), density=100)
    lot = replace(lot, plan=replace(lot.plan, layouts=(Layout("ply", placed, kept),)))
    names = [Kept(f"K7Q-{at}", 0, 0, offcut) for at, offcut in enumerate(kept, 1)]
    steps = lot_steps(lot, Saw(), names)
    check_steps(steps)
    assert len(steps.sheets[0].steps) == 2
    assert not any(step.remains for step in steps.sheets[0].steps)


def test_mitred_pieces_on_both_sides_of_a_flaw_are_no_chain() -> None:
    placed = tuple(Placed("M", x, 48.2, 500, 45) for x in (0, 1040))
    pieces = (Piece("M", 500, 45, 2, slants=(45, 45)),)
    supply = Supply("ash", 2400, 130, flaws=(Flaw(1000, 0, 40, 130),))
    lot = arranged(planned(pieces, (placed,), supply, kind="board"))
    check_steps(lot_steps(lot, Saw()))
    left = [(each.x, each.length, each.width) for each in lot.plan.layouts[0].offcuts]
    assert (0, 1540, 45) in left
