"""What drawers run on: slides at their sides or under them, or wooden runners.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import floor

from rodwright.geometry import TOUCH, Box
from rodwright.setout import looks
from rodwright.setout.boards import Board, lay_board, screw_on
from rodwright.setout.fixings import screws
from rodwright.setout.inside import Space, Upright
from rodwright.setout.setting import Setting
from rodwright.trade.slides import (
    ABOVE,
    BELOW,
    DRAWN,
    LEAST_CLEARANCE,
    RUNNER_CLEARANCE,
    RUNNER_WIDTH,
    SHORTEST,
    SIDE_CLEARANCE,
    SLIDE_SCREW,
    SLIDE_SCREWS,
    STEPS,
)
from rodwright.unit import Fixing, JointKind, Role
from rodwright.unit.directions import Y, Z
from rodwright.wishes.drawers import SlidesSpec

_GROUP = "Carcass"


@dataclass(frozen=True, slots=True)
class ClearOpening:
    """What a drawer's box can pass through and stand in.

    x and z between the panels and, where it is narrower, within the face frame; ``front``
    is the y of the front of the box, ``start`` that of what carries the slides, ``rear``
    where the clear depth ends.
    """

    left: float
    right: float
    low: float
    high: float
    front: float
    start: float
    rear: float

    @property
    def width(self) -> float:
        """Clear width."""
        return self.right - self.left


@dataclass(frozen=True, slots=True)
class Running:
    """How boxes run: the gap at each side, their length, how far they are drawn out, and how high
    slides at their sides are."""

    kind: str
    clearance: float
    length: float
    travel: float
    height: float | None


@dataclass(frozen=True, slots=True)
class Chest:
    """A space with drawers: what their boxes pass through, and how they run; the setting is at
    their wish."""

    setting: Setting
    space: Space
    clear: ClearOpening
    run: Running


def running(setting: Setting, wish: SlidesSpec, clear: ClearOpening, side: float) -> Running | None:
    """How boxes with sides so thick (mm) run in a space; None where they can't, which is noted."""
    before = setting.problems.mark()
    _read_in_vain(setting, wish)
    clearance = _clearance(setting, wish, side)
    length = _length(setting, wish, clear)
    if setting.problems.noted_since(before):
        return None
    height = wish.height if wish.kind == "side" else None
    return Running(wish.kind, clearance, length, length * DRAWN[wish.kind], height)


def _read_in_vain(setting: Setting, wish: SlidesSpec) -> None:
    """Note figures that say nothing about this kind of slides."""
    given = wish.model_fields_set
    for key, kinds in (
        ("clearance", ("side", "runners")),
        ("deduction", ("under",)),
        ("below", ("side", "under")),
        ("height", ("side",)),
    ):
        if key in given and wish.kind not in kinds:
            setting.at(key).refuse(
                f"`{key}` says nothing about `{wish.kind}`",
                f"Leave it out; it goes with {' and '.join(f'`{kind}`' for kind in kinds)}.",
            )


def _clearance(setting: Setting, wish: SlidesSpec, side: float) -> float:
    if wish.kind != "under":
        on_runners = setting.sizes.usual(RUNNER_CLEARANCE)
        usual = SIDE_CLEARANCE if wish.kind == "side" else on_runners
        return wish.clearance if wish.clearance is not None else usual
    # The box is ``deduction`` narrower inside than its way, and its sides take their part of it.
    clearance = wish.deduction / 2 - side
    if clearance < LEAST_CLEARANCE:
        say = setting.say
        setting.at("deduction").refuse(
            f"a box {say(wish.deduction)} narrower inside than the opening has no room there for "
            f"sides {say(side)} thick",
            f"Use stock of at most {setting.at_most(wish.deduction / 2 - LEAST_CLEARANCE)} for "
            "the box.",
        )
    return clearance


def _length(setting: Setting, wish: SlidesSpec, clear: ClearOpening) -> float:
    say = setting.say
    there = clear.rear - max(clear.front, clear.start) - wish.rear
    if wish.length is not None:
        if wish.length > there + TOUCH:
            setting.at("length").refuse(
                f"drawers {say(wish.length)} deep don't go into a clear depth of "
                f"{say(there + wish.rear)} with {say(wish.rear)} left behind them",
                f"Make them at most {setting.at_most(there)} long, or the unit deeper.",
            )
        return wish.length
    step = STEPS[setting.unit]
    # Runners are made to measure.
    length = there if wish.kind == "runners" else floor(there / step + TOUCH) * step
    shortest = SHORTEST[wish.kind] * step
    if length < shortest - TOUCH:
        setting.refuse(
            f"a clear depth of {say(there + wish.rear)}, with {say(wish.rear)} left behind, is too "
            f"little for drawers: the shortest are {say(shortest)} deep",
            "Make the unit deeper.",
        )
    return length


@dataclass(frozen=True, slots=True)
class Stand:
    """Where a box stands in its zone: from ``low`` to ``high``; ``runner`` is the z and the front
    y of runners to be laid under it (None: it needs none)."""

    low: float
    high: float
    runner: tuple[float, float] | None = None


def stand(chest: Chest, wish: SlidesSpec, zone: tuple[float, float], lowest: bool) -> Stand:
    """Where the box of a drawer stands whose front reaches from one z to another in its way.

    On runners it stands on the floor of its space if it is the lowest and there is one at
    that height, and on runners behind the rail there, or else on runners of its own.
    """
    setting, space, clear = chest.setting, chest.space, chest.clear
    rod, bench = setting.rod, setting.bench
    low, high = max(zone[0], clear.low), min(zone[1], clear.high)
    above = wish.above if wish.above is not None else bench.sizes.usual(ABOVE[wish.kind])
    if wish.kind != "runners":
        below = wish.below if wish.below is not None else bench.sizes.usual(BELOW[wish.kind])
        return Stand(low + below, high - above)
    if lowest and space.floor is not None and abs(space.low - clear.low) < TOUCH:
        if space.floor.panel:
            return Stand(space.low, high - above)
        behind = bench.bounds(space.floor.ref).high[1]
        return Stand(space.low, high - above, (space.low - rod.thickness, behind))
    return Stand(low + rod.thickness, high - above, (low, max(clear.front, clear.start)))


def lay_slides(
    chest: Chest, place: Stand, sides: tuple[str, str], packers: tuple[tuple[str, ...], ...]
) -> None:
    """Join the sides (left, right) of one drawer to what carries it: slides on the uprights, or on
    the ``packers`` (refs at either side) before them, or runners, which are laid here."""
    run, space, bench = chest.run, chest.space, chest.setting.bench
    thick = bench.parts[sides[0]].blank.thickness
    uprights, sizes = (space.left, space.right), bench.sizes
    pair = Fixing(
        f"pair of {run.kind}-mounted drawer slides",
        1,
        sizes.say(run.length),
        on=" and ".join(sides),
        length=run.length,
        width=run.height,
    )
    for side, upright, packed in zip(sides, uprights, packers, strict=True):
        if run.kind == "runners":
            _bear(chest, place, side, upright)
            continue
        carriers = packed or (upright.ref,)
        for carrier in carriers:
            bench.keep_apart(carrier, side, run.clearance)
        _show_slide(chest, carriers[0], side)
        length = sizes.longest_screw(min(thick, sizes.usual(SLIDE_SCREW)))
        drilled = sizes.pilot_hole(sizes.screw, bench.parts[side].blank.stock.grip)
        held = screws(sizes, SLIDE_SCREWS, length, drilled)
        # Slides are bought in pairs: the left one stands for both.
        fixings = (pair, held) if side == sides[0] else (held,)
        bench.join(
            JointKind.SLIDING, carriers[0], side, bench.parts[side].bounds().centre, *fixings
        )


def _show_slide(chest: Chest, carrier: str, side: str) -> None:
    """Show the slide between a drawer's side and what it is screwed to."""
    run, bench = chest.run, chest.setting.bench
    box, held = bench.bounds(side), bench.bounds(carrier)
    y = (box.low[1], box.low[1] + run.length)
    left = held.high[0] < box.high[0]
    outer = held.high[0] if left else held.low[0]
    near, far = (box.low[0], box.high[0]) if left else (box.high[0], box.low[0])
    if run.kind == "side":
        height = run.height if run.height is not None else min(looks.SLIDE, box.size[2])
        fixed, moving = looks.side_slide((outer, near), y, box.centre[2], height)
    else:
        one, other = looks.under_slide((outer, far), y, box.low[2])
        fixed, moving = (one,), (other,)
    bench.show(carrier, *fixed, inner=True, fine=True)
    bench.show(side, *moving, inner=True, fine=True)


def _bear(chest: Chest, place: Stand, side: str, upright: Upright) -> None:
    """Lay what a drawer's side runs on and along.

    Where the face frame reaches inside the uprights, a strip beside the box brings the
    upright out to its edge.  It and the runner are ripped from carcass stock.
    """
    setting, space, clear, run = chest.setting, chest.space, chest.clear, chest.run
    rod, bench = setting.rod, setting.bench
    guide = upright.ref
    beside = (upright.right, clear.left) if upright is space.left else (clear.right, upright.left)
    if beside[1] - beside[0] > TOUCH:
        box = Box(
            (beside[0], clear.start, place.low),
            (beside[1], min(clear.start + run.length, clear.rear), place.low + rod.thickness),
        )
        guide = _strip(setting, Role.PACKER, "Drawer guide", box, upright)
    bench.keep_apart(guide, side, run.clearance)
    bears = space.floor.ref if space.floor else guide
    if place.runner is not None:
        needed = run.clearance + bench.parts[side].blank.thickness
        bears = _runner(chest, "Drawer runner", place.runner, upright, needed)
    bench.join(JointKind.SLIDING, bears, side, bench.bounds(side).centre)


def lay_kickers(chest: Chest, thick: float) -> None:
    """Lay what keeps the uppermost drawer on runners from tipping when it is drawn out.

    A panel above does it; behind a rail or a frame's rail strips are laid at its height.
    """
    setting, space, clear, run = chest.setting, chest.space, chest.clear, chest.run
    if run.kind != "runners" or space.ceiling is None:
        return
    hidden = space.high - clear.high
    if hidden < TOUCH and space.ceiling.panel:
        return
    if hidden < TOUCH:
        low, front = space.ceiling.low, setting.bench.bounds(space.ceiling.ref).high[1]
    elif hidden >= setting.rod.thickness - TOUCH:
        low, front = clear.high, max(clear.front, clear.start)
    else:
        return
    for upright in (space.left, space.right):
        _runner(chest, "Drawer kicker", (low, front), upright, run.clearance + thick)


def _runner(
    chest: Chest, name: str, at: tuple[float, float], upright: Upright, needed: float
) -> str:
    """A strip along an upright with its underside and its front at ``at``, as wide as is
    ``needed`` past the edge of the clear opening; the one that is there already, if any."""
    setting, clear = chest.setting, chest.clear
    bench, thick = setting.bench, setting.rod.thickness
    wide = max(bench.sizes.usual(RUNNER_WIDTH), needed)
    x = (
        (upright.right, clear.left + wide)
        if upright is chest.space.left
        else (clear.right - wide, upright.left)
    )
    box = Box((x[0], at[1], at[0]), (x[1], clear.rear, at[0] + thick))
    for ref in bench.refs_of(Role.RUNNER):
        there = bench.parts[ref].placement.origin
        if abs(there[0] - box.high[0]) < wide and abs(there[2] - box.low[2]) < thick:
            return ref
    return _strip(setting, Role.RUNNER, name, box, upright)


def _strip(setting: Setting, role: Role, name: str, box: Box, upright: Upright) -> str:
    """A strip of carcass stock lying flat, screwed to an upright."""
    bench, stock = setting.bench, setting.rod.stock
    strip = lay_board(
        bench,
        Board(role, name, _GROUP, stock, shows=()),
        box,
        Y,
        Z,
    )
    screw_on(bench, strip.ref, upright.ref, setting.moisture)
    return strip.ref
