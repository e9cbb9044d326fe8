"""Housed, rebated and tongued joints: the second part reaches into the first."""

from __future__ import annotations

from rodwright.geometry import TOUCH
from rodwright.setout.bench import Bench
from rodwright.setout.joints.meet import Work, cut_channel, cut_step
from rodwright.setout.rod.sizes import easily_set
from rodwright.trade.wood_left import LEAST_TONGUE
from rodwright.unit import JointKind

MOST_OF_REBATE = 2 / 3
"""Part of a thickness that a rebate may take (common practice, no source)."""


def housed(work: Work) -> None:
    """The whole thickness let in, or a tongue beside a shoulder; layers go into one housing."""
    meeting, wish = work.meeting, work.wish
    if not _deep_enough(work, 0.5, "housing") or not _stops(work):
        return
    left, right = meeting.left, meeting.right
    if wish.shoulder is not None:
        tongue = work.say(meeting.thickness - wish.shoulder)
        if work.layers:
            work.refuse(
                "shoulder",
                "a shelf of several layers has no shoulder",
                "Leave `shoulder` out, or make it of one layer.",
            )
            return
        if meeting.thickness - wish.shoulder < LEAST_TONGUE:
            work.refuse(
                "shoulder",
                f"a shoulder of {work.say(wish.shoulder)} leaves a tongue of {tongue} on a part "
                f"{work.say(meeting.thickness)} thick",
                "Make it a third of the thickness.",
            )
            return
        left, right = _beside_shoulder(work, meeting.thickness - wish.shoulder)
    _let_in(work, (left, right), wish.stopped)


def rebated(work: Work) -> None:
    """The end of the second in a rebate at the end of the first: a corner."""
    meeting = work.meeting
    bounds = work.first.bounds()
    low, high = bounds.low[meeting.across], bounds.high[meeting.across]
    if meeting.left > low + TOUCH and meeting.right < high - TOUCH:
        work.refuse(
            "joint",
            "a rebated joint is one for corners, and these parts don't meet at one",
            "Choose `housed` there.",
        )
        return
    if _deep_enough(work, MOST_OF_REBATE, "rebate"):
        _let_in(work, (meeting.left, meeting.right), 0.0)


def tongued(work: Work) -> None:
    """A tongue on the second, left by one rebate or two, in a groove of the first.

    It is a third as thick as the second unless said (common practice, no source).
    """
    meeting, wish = work.meeting, work.wish
    tongue = wish.thickness
    if tongue is None:
        tongue = easily_set(meeting.thickness / 3, work.setting.unit)
    if work.layers:
        work.refuse(
            "joint", "a shelf of several layers can't be tongued", "Choose `housed` for its ends."
        )
        return
    if not LEAST_TONGUE <= tongue <= meeting.thickness - LEAST_TONGUE:
        work.refuse(
            "thickness",
            f"a tongue {work.say(tongue)} thick doesn't suit a part "
            f"{work.say(meeting.thickness)} thick",
            "Make it a third of the thickness.",
        )
        return
    if not _deep_enough(work, 0.5, "groove") or not _stops(work):
        return
    if wish.tongue == "barefaced":
        sides = _beside_shoulder(work, tongue)
    else:
        sides = (meeting.middle - tongue / 2, meeting.middle + tongue / 2)
    _let_in(work, sides, wish.stopped, JointKind.TONGUE)


def _deep_enough(work: Work, share: float, name: str) -> bool:
    meeting = work.meeting
    most = meeting.through * share
    if meeting.reach > most + TOUCH:
        work.refuse(
            "depth",
            f"a {name} {work.say(meeting.reach)} deep is more than "
            f"{'half' if share == 0.5 else 'two thirds'} of {work.say(meeting.through)}",
            "Make it shallower, a third of the thickness or so.",
        )
        return False
    if meeting.reach <= TOUCH:
        raise ValueError(f"{meeting.second} was set out without reaching into {meeting.first}")
    return True


def _stops(work: Work) -> bool:
    """Whether it can end short of the front as wished: not where the second is thicker than it is
    deep, as its notch would take all that goes in."""
    meeting = work.meeting
    if not work.wish.stopped or abs(work.second.placement.thickness[meeting.run]) < 0.5:
        return True
    work.refuse(
        "stopped",
        f"what goes in is {work.say(meeting.length)} thick and only {work.say(meeting.thickness)} "
        f"deep: nothing would be left of it behind a stopped housing",
        "Leave `stopped` out.",
    )
    return False


def _beside_shoulder(work: Work, tongue: float) -> tuple[float, float]:
    """A tongue flush with one face: the lower or left one, but away from an end that is near.

    At a corner the wood between the groove and the end of the first stays thick so.
    """
    meeting, bounds = work.meeting, work.first.bounds()
    low, high = bounds.low[meeting.across], bounds.high[meeting.across]
    near_low = meeting.left - low < min(meeting.thickness, high - meeting.right)
    if near_low:
        return meeting.right - tongue, meeting.right
    return meeting.left, meeting.left + tongue


def _let_in(
    work: Work,
    sides: tuple[float, float],
    stopped: float,
    kind: JointKind | None = None,
) -> None:
    """Cut the channel in the first and shape the ends that go into it.

    The channel begins ``stopped`` mm behind the front of what goes in, or at the front of the
    first if that lies farther back; the ends are notched in front of it.  Where a face frame
    covers the front of the first and too thin a sliver would be left there, it runs out.
    """
    bench, m = work.bench, work.meeting
    boxes = [bench.bounds(ref) for ref in (m.second, *work.layers)]
    left = min([sides[0], *(box.low[m.across] for box in boxes[1:])])
    right = max([sides[1], *(box.high[m.across] for box in boxes[1:])])
    low = max(m.low, boxes[0].low[m.run] + stopped)
    # What goes in stands a little back, behind the air of an inset door.
    sliver = low - work.first.bounds().low[m.run]
    covered = work.setting.rod.front.frame is not None
    runs_out = covered and m.run == 1 and not stopped and sliver < LEAST_TONGUE - TOUCH
    start = low - sliver if runs_out else low
    channel = m.box((start, m.high), (left, right), (0.0, m.reach))
    cut = cut_channel(bench, m.first, channel, m.axis, m.into, use=str(work.second.role))
    for ref, box in zip((m.second, *work.layers), boxes, strict=True):
        whole = (box.low[m.across], box.high[m.across])
        if low > box.low[m.run] + TOUCH:
            bench.notch(ref, m.box((box.low[m.run], low), whole, (0.0, m.reach)), "stopped housing")
        if not work.layers:
            for step in ((whole[0], left), (right, whole[1])):
                if step[1] > step[0] + TOUCH:
                    run = (box.low[m.run], box.high[m.run])
                    taken = m.box(run, step, (0.0, m.reach))
                    cut_step(bench, ref, taken, m.axis, m.into, m.across)
        note(bench, kind or cut, m.first, ref)


def note(bench: Bench, kind: JointKind, first: str, second: str) -> None:
    """Note that two parts meet, without fixings.

    Raises:
        ValueError: they don't.
    """
    if not bench.meet(kind, first, second):
        raise ValueError(f"{first} and {second} were set out apart")
