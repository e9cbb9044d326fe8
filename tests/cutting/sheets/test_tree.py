"""Guillotine cuts as a tree, found from where the pieces lie."""

from __future__ import annotations

from collections.abc import Iterator

from hypothesis import given
from hypothesis import strategies as st

from rodwright.cutting import Flaw, Placed, Supply, Trim
from rodwright.cutting.sheet_problem import Rules
from rodwright.cutting.sheets.tree import Cut, Panel, tree

SHEET = Supply("ply", 2440, 1220)
Rect = tuple[float, float, float, float]


def _placed(*rows: Rect) -> list[Placed]:
    return [Placed(f"p{number}", *row) for number, row in enumerate(rows)]


def _panels(panel: Panel | None) -> Iterator[Panel]:
    if panel:
        yield panel
        if panel.cut:
            yield from _panels(panel.cut.low)
            yield from _panels(panel.cut.high)


@st.composite
def _divided(draw: st.DrawFn) -> tuple[list[Placed], float]:
    """A sheet cut to pieces edge to edge, some of which are left out."""
    kerf = draw(st.sampled_from([0.0, 3.2]))
    rects: list[Rect] = [(0.0, 0.0, 2440.0, 1220.0)]
    for _ in range(draw(st.integers(0, 12))):
        which = draw(st.integers(0, len(rects) - 1))
        x, y, length, width = rects[which]
        across = draw(st.booleans())
        side = length if across else width
        at = round(side * draw(st.integers(2, 8)) / 10, 1)
        rest = round(side - at - kerf, 1)
        if min(at, rest) < 20:
            continue
        if across:
            halves = [(x, y, at, width), (round(x + at + kerf, 1), y, rest, width)]
        else:
            halves = [(x, y, length, at), (x, round(y + at + kerf, 1), length, rest)]
        rects[which : which + 1] = halves
    return _placed(*(rect for rect in rects if draw(st.integers(0, 4)))), kerf


def _rect(panel: Panel | Placed) -> Rect:
    return (panel.x, panel.y, panel.length, panel.width)


@given(_divided())
def test_every_sheet_that_was_cut_edge_to_edge_is_parted_again(
    divided: tuple[list[Placed], float],
) -> None:
    placed, kerf = divided
    root = tree(placed, SHEET, kerf)
    assert root is not None
    found = [leaf.piece for leaf in root.leaves() if leaf.piece]
    assert sorted(found, key=lambda each: each.piece) == sorted(placed, key=lambda each: each.piece)
    for panel in _panels(root):
        if panel.piece:
            assert _rect(panel) == _rect(panel.piece)
        if panel.cut:
            _hold_cut(panel, panel.cut, kerf)


def _hold_cut(panel: Panel, cut: Cut, kerf: float) -> None:
    across = cut.axis == "across"
    for side in (cut.low, cut.high):
        if side:
            whole, its = (panel.width, side.width) if across else (panel.length, side.length)
            assert its == whole
    if cut.low:
        end = cut.low.x + cut.low.length if across else cut.low.y + cut.low.width
        assert abs(end - cut.at) < 1e-6
    if cut.high:
        assert abs((cut.high.x if across else cut.high.y) - cut.at - kerf) < 1e-6


def test_pieces_that_lie_like_a_windmill_are_not_parted() -> None:
    placed = _placed((0, 0, 600, 300), (600, 0, 300, 600), (300, 600, 600, 300), (0, 300, 300, 600))
    assert tree(placed, SHEET, 0) is None


def test_parallel_cuts_stand_together() -> None:
    root = tree(_placed(*((x * 403.2, 0, 400, 1220) for x in range(5))), SHEET, 3.2)
    ats = []
    while root and root.cut:
        assert root.cut.axis == "across"
        ats.append(root.cut.at)
        root = root.cut.high
    assert ats == [400, 803.2, 1206.4, 1609.6, 2012.8]


def _largest(placed: list[Placed], kerf: float, supply: Supply = SHEET) -> Rect:
    root = tree(placed, supply, kerf)
    assert root is not None
    offcut = root.left_over()[0]
    return (offcut.x, offcut.y, offcut.length, offcut.width)


def test_the_largest_offcut_stays_whole() -> None:
    short = _placed((0, 0, 1000, 400), (0, 403, 900, 300))
    assert _largest(short, 3) == (1003, 0, 1437, 1220)
    long = _placed((0, 0, 2300, 400), (0, 403, 900, 300))
    assert _largest(long, 3) == (903, 403, 1537, 817)


def test_an_offcut_has_no_flaw() -> None:
    flawed = Supply("ply", 2440, 1220, flaws=(Flaw(2000, 0, 40, 1220),))
    assert _largest(_placed((0, 0, 900, 1220)), 0, flawed) == (900, 0, 1100, 1220)


def test_trims_are_off_already() -> None:
    trimmed = Supply("ply", 2440, 1220, trim=Trim(near=10, far=20, face=5, back=15))
    root = tree(_placed((10, 5, 1000, 1200)), trimmed, 4)
    assert root is not None
    assert _rect(root) == (10, 5, 2410, 1200)
    assert root.cut is not None
    assert root.cut.high is not None
    assert root.cut.high.length == 1406


def test_a_cut_may_leave_nothing_beside_the_kerf() -> None:
    root = tree(_placed((0, 0, 2438, 1220)), SHEET, 3)
    assert root is not None
    assert root.cut is not None
    assert root.cut.high is None


def test_stages_are_kept() -> None:
    strips = _placed((0, 0, 800, 400), (800, 0, 700, 300), (0, 400, 600, 500), (600, 400, 600, 500))
    assert tree(strips, SHEET, 0, rules=Rules(stages=2, first_cut="along")) is not None
    assert tree(strips, SHEET, 0, rules=Rules(stages=2, first_cut="across")) is None
    assert tree(strips, SHEET, 0, rules=Rules(stages=1)) is None
    stacked = [*strips, Placed("more", 800, 300, 700, 100)]
    assert tree(stacked, SHEET, 0, rules=Rules(stages=2)) is None
    assert tree(stacked, SHEET, 0, rules=Rules(stages=3, first_cut="along")) is not None


def test_a_head_cut_comes_before_the_stages() -> None:
    headed = _placed(
        (0, 0, 400, 500), (0, 500, 400, 700), (400, 0, 800, 300), (1200, 0, 700, 300),
        (400, 300, 900, 600), (1300, 300, 900, 600),
    )  # fmt: skip
    assert tree(headed, SHEET, 0, rules=Rules(stages=2, first_cut="along")) is None
    root = tree(headed, SHEET, 0, rules=Rules(stages=2, first_cut="along", head_cuts=True))
    assert root is not None
    assert root.cut is not None
    assert (root.cut.axis, root.cut.at) == ("across", 400)
