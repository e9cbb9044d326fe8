"""What drawers run on: slides at their sides or under them, or wooden runners.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import floor

from rodwright.geometry import TOUCH, Box
from rodwright.problems import KeyPath, Problems
from rodwright.setout.bench import NOWHERE, Bench, Y, Z
from rodwright.setout.boards import lay_board, refs_of, screw_on
from rodwright.setout.carcass.box import Upright
from rodwright.setout.carcass.spaces import Space
from rodwright.setout.grip import grip
from rodwright.setout.rod.main_lines import Rod
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import Fixing, JointKind, Role
from rodwright.wishes.drawers import SlidesSpec

SIDE_CLEARANCE = 12.7
"""Gap (mm) that a side slide takes at each side of a box: half an inch, as makers of ball-bearing
slides publish it (from memory)."""
RUNNER_CLEARANCE = 1.0
"""Gap at each side of a box on runners, mm (common practice, no source)."""
LEAST_CLEARANCE = 1.0
"""Gap that a box over under slides needs at each side, mm (common practice, no source)."""
BELOW = {"side": 12.0, "under": 15.0}
"""From the front's lower edge up to the box, mm (common practice, no source)."""
ABOVE = {"side": 12.0, "under": 12.0, "runners": 2.0}
"""From the box up to the front's upper edge, mm: room to lift it off its slides, or little enough
that a runner above keeps it from tipping (common practice, no source)."""
STEPS = {"mm": 50.0, "in": 50.8}
"""Slides come in lengths of 50 mm or 2 in (common practice, no source)."""
SHORTEST = {"side": 4, "under": 4, "runners": 1}
"""Steps of the shortest that are made (common practice, no source)."""
DRAWN = {"side": 1.0, "under": 1.0, "runners": 2 / 3}
"""How much of its length a drawer is drawn out: all of it on slides of full extension, on runners
as far as it doesn't drop (common practice, no source)."""
SLIDE_SCREWS = 6
"""Screws for one slide, half of them in the carcass (common practice, no source)."""
_SHORT_SCREWS = (10, 12, 16)
"""Lengths of screws for slides, mm (common practice, no source)."""
RUNNER_WIDTH = 25.0
"""How far a runner reaches under a box, mm, if its sides aren't thicker (common practice, no
source)."""
_GROUP = "Carcass"


@dataclass(frozen=True, slots=True)
class Way:
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
    """How boxes run: the gap at each side, their length, and how far they are drawn out."""

    kind: str
    clearance: float
    length: float
    travel: float


def running(
    wish: SlidesSpec, way: Way, side: float, problems: Problems, where: KeyPath
) -> Running | None:
    """How boxes with sides so thick (mm) run in a space; None where they can't, which is noted."""
    before = len(problems)
    _read_in_vain(wish, problems, where)
    clearance = _clearance(wish, side, problems, where)
    length = _length(wish, way, problems, where)
    if len(problems) > before:
        return None
    return Running(wish.kind, clearance, length, length * DRAWN[wish.kind])


def _read_in_vain(wish: SlidesSpec, problems: Problems, where: KeyPath) -> None:
    """Note figures that say nothing about this kind of slides."""
    given = wish.model_fields_set
    for key, kinds in (("clearance", ("side", "runners")), ("deduction", ("under",)),
                       ("below", ("side", "under")), ("height", ("side",))):  # fmt: skip
        if key in given and wish.kind not in kinds:
            problems.add(
                (*where, key),
                f"`{key}` says nothing about `{wish.kind}`",
                f"Leave it out; it goes with {' and '.join(f'`{kind}`' for kind in kinds)}.",
            )


def _clearance(wish: SlidesSpec, side: float, problems: Problems, where: KeyPath) -> float:
    if wish.kind != "under":
        usual = (
            SIDE_CLEARANCE
            if wish.kind == "side"
            else trade_sizes(problems.unit).usual(RUNNER_CLEARANCE)
        )
        return wish.clearance if wish.clearance is not None else usual
    # The box is ``deduction`` narrower inside than its way, and its sides take their part of it.
    clearance = wish.deduction / 2 - side
    if clearance < LEAST_CLEARANCE:
        say = problems.length
        problems.add(
            (*where, "deduction"),
            f"a box {say(wish.deduction)} narrower inside than the opening has no room there for "
            f"sides {say(side)} thick",
            f"Use stock of at most {problems.at_most(wish.deduction / 2 - LEAST_CLEARANCE)} for "
            "the box.",
        )
    return clearance


def _length(wish: SlidesSpec, way: Way, problems: Problems, where: KeyPath) -> float:
    say = problems.length
    there = way.rear - max(way.front, way.start) - wish.rear
    if wish.length is not None:
        if wish.length > there + TOUCH:
            problems.add(
                (*where, "length"),
                f"drawers {say(wish.length)} deep don't go into a clear depth of "
                f"{say(there + wish.rear)} with {say(wish.rear)} left behind them",
                f"Make them at most {problems.at_most(there)} long, or the unit deeper.",
            )
        return wish.length
    step = STEPS[problems.unit]
    # Runners are made to measure.
    length = there if wish.kind == "runners" else floor(there / step + TOUCH) * step
    shortest = SHORTEST[wish.kind] * step
    if length < shortest - TOUCH:
        problems.add(
            where,
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


def stand(
    wish: SlidesSpec, zone: tuple[float, float], lowest: bool, space: Space, way: Way, rod: Rod,
    bench: Bench,
) -> Stand:  # fmt: skip
    """Where the box of a drawer stands whose front reaches from one z to another in its way.

    On runners it stands on the floor of its space if it is the lowest and there is one at
    that height, and on runners behind the rail there, or else on runners of its own.
    """
    low, high = max(zone[0], way.low), min(zone[1], way.high)
    above = wish.above if wish.above is not None else bench.sizes.usual(ABOVE[wish.kind])
    if wish.kind != "runners":
        below = wish.below if wish.below is not None else bench.sizes.usual(BELOW[wish.kind])
        return Stand(low + below, high - above)
    if lowest and space.floor is not None and abs(space.low - way.low) < TOUCH:
        if space.floor.panel:
            return Stand(space.low, high - above)
        behind = bench.parts[space.floor.ref].bounds().high[1]
        return Stand(space.low, high - above, (space.low - rod.thickness, behind))
    return Stand(low + rod.thickness, high - above, (low, max(way.front, way.start)))


def lay_slides(
    run: Running, place: Stand, sides: tuple[str, str], packers: tuple[tuple[str, ...], ...],
    space: Space, way: Way, rod: Rod, bench: Bench,
) -> None:  # fmt: skip
    """Join the sides (left, right) of one drawer to what carries it: slides on the uprights, or on
    the ``packers`` (refs at either side) before them, or runners, which are laid here."""
    thick = bench.parts[sides[0]].blank.thickness
    uprights, sizes = (space.left, space.right), bench.sizes
    pair = Fixing(
        f"pair of {run.kind}-mounted drawer slides", 1, sizes.say(run.length),
        on=" and ".join(sides),
    )  # fmt: skip
    for side, upright, packed in zip(sides, uprights, packers, strict=True):
        if run.kind == "runners":
            _bear(run, place, side, upright, space, way, rod, bench)
            continue
        carriers = packed or (upright.ref,)
        for carrier in carriers:
            bench.keep_apart(carrier, side, run.clearance)
        sold = [sizes.usual(each) for each in _SHORT_SCREWS]
        length = max((each for each in sold if each <= thick), default=sold[0])
        screws = Fixing(
            "wood screw", SLIDE_SCREWS, sizes.screw_size(sizes.screw, length),
            f"pilot {sizes.say(sizes.pilot(sizes.screw, grip(bench.parts[side].blank.stock)))}",
        )  # fmt: skip
        # Slides are bought in pairs: the left one stands for both.
        fixings = (pair, screws) if side == sides[0] else (screws,)
        bench.join(
            JointKind.SLIDING, carriers[0], side, bench.parts[side].bounds().centre, *fixings
        )


def _bear(
    run: Running, place: Stand, side: str, upright: Upright, space: Space, way: Way, rod: Rod,
    bench: Bench,
) -> None:  # fmt: skip
    """Lay what a drawer's side runs on and along.

    Where the face frame reaches inside the uprights, a strip beside the box brings the
    upright out to its edge.  It and the runner are ripped from carcass stock.
    """
    guide = upright.ref
    beside = (upright.right, way.left) if upright is space.left else (way.right, upright.left)
    if beside[1] - beside[0] > TOUCH:
        box = Box(
            (beside[0], way.start, place.low),
            (beside[1], min(way.start + run.length, way.rear), place.low + rod.thickness),
        )
        guide = _strip(bench, rod, Role.PACKER, "Drawer guide", box, upright)
    bench.keep_apart(guide, side, run.clearance)
    bears = space.floor.ref if space.floor else guide
    if place.runner is not None:
        needed = run.clearance + bench.parts[side].blank.thickness
        bears = _runner(bench, rod, "Drawer runner", place.runner, upright, space, way, needed)
    bench.join(JointKind.SLIDING, bears, side, bench.parts[side].bounds().centre)


def lay_kickers(run: Running, thick: float, space: Space, way: Way, rod: Rod, bench: Bench) -> None:
    """Lay what keeps the uppermost drawer on runners from tipping when it is drawn out.

    A panel above does it; behind a rail or a frame's rail strips are laid at its height.
    """
    if run.kind != "runners" or space.ceiling is None:
        return
    hidden = space.high - way.high
    if hidden < TOUCH and space.ceiling.panel:
        return
    if hidden < TOUCH:
        low, front = space.ceiling.low, bench.parts[space.ceiling.ref].bounds().high[1]
    elif hidden >= rod.thickness - TOUCH:
        low, front = way.high, max(way.front, way.start)
    else:
        return
    for upright in (space.left, space.right):
        _runner(bench, rod, "Drawer kicker", (low, front), upright, space, way,
                run.clearance + thick)  # fmt: skip


def _runner(
    bench: Bench, rod: Rod, name: str, at: tuple[float, float], upright: Upright, space: Space,
    way: Way, needed: float,
) -> str:  # fmt: skip
    """A strip along an upright with its underside and its front at ``at``, as wide as is
    ``needed`` past the way's edge; the one that is there already, if any."""
    wide = max(bench.sizes.usual(RUNNER_WIDTH), needed)
    x = (
        (upright.right, way.left + wide)
        if upright is space.left
        else (way.right - wide, upright.left)
    )
    box = Box((x[0], at[1], at[0]), (x[1], way.rear, at[0] + rod.thickness))
    for ref in refs_of(bench, Role.RUNNER):
        there = bench.parts[ref].placement.origin
        if abs(there[0] - box.high[0]) < wide and abs(there[2] - box.low[2]) < rod.thickness:
            return ref
    return _strip(bench, rod, Role.RUNNER, name, box, upright)


def _strip(bench: Bench, rod: Rod, role: Role, name: str, box: Box, upright: Upright) -> str:
    """A strip of carcass stock lying flat, screwed to an upright."""
    strip = lay_board(
        bench, role, name, _GROUP, box, Y, Z, rod.stock, shows=(), withdraw=NOWHERE
    )  # fmt: skip
    screw_on(bench, strip.ref, upright.ref, rod.moisture)
    return strip.ref
