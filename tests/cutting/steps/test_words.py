"""What a maker reads of the cuts."""

from __future__ import annotations

from rodwright.cutting import Flaw, Inner, Layout, Offcut, Piece, Placed, Plan, Supply, Trim
from rodwright.cutting.offcuts import Kept
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import LotSteps, lot_steps, rip_settings, stop_settings
from rodwright.cutting.steps.words import StepWords, cautions, setting_words, step_words
from rodwright.cutting.work import Label, Lot, LotPlan

PIECES = (Piece("A", 800, 400, 4), Piece("C", 700, 300, 2))
PLACED = (
    Placed("A", 0, 10, 800, 400),
    Placed("A", 803.2, 10, 800, 400),
    Placed("C", 0, 413.2, 700, 300),
)
SIZES = (800, 400, 18), (700, 300, 18)
LABELS = {
    "A": tuple(Label(f"SH{n}", "alcove", "shelf", SIZES[0], ("edge it",)) for n in range(1, 5)),
    "C": tuple(Label(f"BK{n}", "alcove", "back", SIZES[1]) for n in range(1, 3)),
}
OFFCUT = Offcut(1606.4, 10, 833.6, 400)


def steps_of(saw: Saw, flaws: tuple[Flaw, ...] = ()) -> LotSteps:
    layout = Layout("ply", PLACED, (OFFCUT,))
    supply = Supply("ply", 2440, 1220, trim=Trim(face=10), flaws=flaws)
    lot = Lot("lot", "sheet", "birch", 18, 680, PIECES, LABELS, (supply,))
    kept = [Kept("K7Q-1", 0, 0, OFFCUT), Kept("K7Q-2", 0, 1, OFFCUT)]
    return lot_steps(LotPlan(lot, Plan((layout, layout), 2, 2, True, 3.2)), saw, kept)


def told(steps: LotSteps) -> list[StepWords]:
    sheet = steps.sheets[0]
    return [step_words(steps, sheet, step, "mm") for step in sheet.steps]


def test_each_cut_says_what_is_set_and_what_comes_off() -> None:
    words = told(steps_of(Saw(rip=800)))
    assert words[0] == StepWords(
        1,
        "sheets 1 and 2",
        "2440 x 1220, 36.4 kg",
        "trim 10 off the face edge",
        "1210",
        "back edge, factory; 6.8 from the face edge",
        ("1, 2440 x 1210", "waste, 2440 x 6.8"),
        (
            "heavy: 3 people",
            "beyond the saw, which rips 800",
            "carried: a saw is brought to it",
        ),
    )
    assert words[3] == StepWords(
        4,
        "1.1",
        "2440 x 400",
        "crosscut",
        "800",
        "near end, factory",
        ("800 x 400: done, write SH1 and SH2", "1.1, 1636.8 x 400"),
        (),
    )
    assert words[4].leaves == (
        "800 x 400: done, write SH3 and SH4",
        "offcut K7Q-1 and K7Q-2, 833.6 x 400: to the rack",
    )


def test_an_offcut_with_a_flaw_says_so() -> None:
    steps = steps_of(Saw(rip=800), (Flaw(1600, 0, 50, 100, "old screw holes"),))
    assert told(steps)[4].leaves[1] == (
        "offcut K7Q-1 and K7Q-2, 833.6 x 400: to the rack, with a flaw: old screw holes"
    )


def test_a_line_is_measured_from_both_edges() -> None:
    words = told(steps_of(Saw("track saw")))
    assert (words[1].cut, words[1].setting) == ("rip", "400")
    assert words[1].against == "face edge, trimmed; 806.8 from the back edge"


def test_lists_say_each_setting_once() -> None:
    steps = steps_of(Saw(lift=50))
    rips = [setting_words(steps, each, "mm") for each in rip_settings(steps)]
    assert [(each.setting, each.cut, each.times, each.cuts) for each in rips] == [
        ("1210", "trim 10 off the face edge", 2, "sheets 1 and 2"),
        ("400", "rip", 2, "sheets 1 and 2"),
        ("300", "rip", 2, "sheets 1 and 2"),
    ]
    stops = [setting_words(steps, each, "mm") for each in stop_settings(steps)]
    assert [(each.setting, each.times, each.cuts) for each in stops] == [
        ("800", 4, "1.1, 2 times"),
        ("700", 2, "1.2"),
    ]


def test_cautions_go_with_what_is_done() -> None:
    assert any("marked heavy" in each for each in cautions(steps_of(Saw())))
    assert not any("marked heavy" in each for each in cautions(steps_of(Saw(lift=50))))
    (_, router) = cautions(steps_of(Saw("router", lift=50)))
    assert "tabs" in router


def test_lists_say_which_cuts_are_carried_and_what_is_beyond_the_saw() -> None:
    steps = steps_of(Saw(rip=350))
    rips = [setting_words(steps, each, "mm").cut for each in rip_settings(steps)]
    assert rips == [
        "trim 10 off the face edge, carried, beyond the saw, which rips 350",
        "rip, carried, beyond the saw, which rips 350",
        "rip",
    ]


def test_what_a_rail_does_not_lie_on_is_packed_and_nothing_is_pushed() -> None:
    pieces = (Piece("N", 300, 50, 2),)
    placed = Placed("N", 0, 0, 300, 50), Placed("N", 0, 53.2, 300, 50)
    lot = Lot("lot", "sheet", "birch", 18, 680, pieces, {}, (Supply("ply", 1000, 300),))
    plan = Plan((Layout("ply", placed),), 1, 1, True, 3.2)
    words = told(lot_steps(LotPlan(lot, plan), Saw("track saw")))
    minds = [any("rail" in each for each in word.mind) for word in words]
    assert minds == [word.size.startswith("300 x ") or " x 103" in word.size for word in words]
    assert any(minds) and not all(minds)
    assert not any("push stick" in each for word in words for each in word.mind)


def test_the_order_of_fronts_is_said_where_they_are_cut_out_as_one() -> None:
    row = Piece(
        "R", 1000, 400, inner=(Inner("F2", 503.2, 0, 496.8, 400), Inner("F1", 0, 0, 500, 400))
    )
    layout = Layout("ply", (Placed("R", 0, 0, 1000, 400),))
    lot = Lot("lot", "sheet", "birch", 18, 680, (row,), {}, (Supply("ply", 1000, 800),))
    words = told(lot_steps(LotPlan(lot, Plan((layout,), 1, 1, True, 3.2)), Saw()))
    assert words[0].leaves[0] == "R, 1000 x 400: divided later into F1 and F2, from the near end on"
