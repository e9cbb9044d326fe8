"""What holds drawers, their fronts and doors, against what they carry; kg.

A drawer that is drawn out hangs on the foremost of its screws; a door on its top hinge.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from rodwright.amounts import GRAVITY
from rodwright.mass import weight
from rodwright.strength.holds import into_of
from rodwright.strength.joint_results import (
    DRAWN_OUT,
    FILLED,
    FRONT,
    HUNG,
    TOP_HINGE,
    called,
    carries,
    weakest,
)
from rodwright.strength.meetings import meeting_of
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.fastenings import ROOT, Bears, pressed_on_steel, screw_drawn
from rodwright.trade.hinges import BUTT, ENDS, HINGES_PER_DOOR, SCREWS_PER_BUTT
from rodwright.trade.slides import DRAWER_LOAD, DRAWN, FIRST_HOLE, FRONT_PULL, SLIDE_SCREWS
from rodwright.trade.sources import Source
from rodwright.unit import DOORS, DRAWERS, Fixing, Joint, JointKind, Part, Role, Slide, Swing, Unit

_LEVER = Source("statics: moments about the foremost and the hindmost of the screws")
_HUNG = Source("statics: the door's weight at half its width, between its outer hinges")
_HINGES = Source("tables that makers of hinges print for doors up to 600 mm wide", seen=False)
_DOOR = Source("the weight of the door's parts")
_SAID = Source("what the spec says the drawer holds")


def moving_joints(unit: Unit) -> Iterator[Result]:
    """Slides' screws, runners, drawer bottoms and fronts, and hinges, against what they carry.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    for motion in unit.motions:
        parts = [unit.part(ref) for ref in motion.refs]
        if isinstance(motion, Slide) and any(part.role in DRAWERS for part in parts):
            yield from _drawer(unit, parts)
        elif isinstance(motion, Swing) and any(part.role in DOORS for part in parts):
            yield from _door(unit, parts)


def _drawer(unit: Unit, parts: list[Part]) -> Iterator[Result]:
    refs = {part.ref for part in parts}
    own = Input("W0", "weight of the drawer", sum(weight(part) for part in parts), "kg")
    held = contents(unit, parts)
    load = own.value + held.value
    slides = [
        joint for joint in unit.joints if joint.kind is JointKind.SLIDING and joint.second in refs
    ]
    yield from weakest(_slide(unit, joint, load, (own, held)) for joint in slides)
    for joint in unit.joints:
        one, other = unit.part(joint.first), unit.part(joint.second)
        if joint.first not in refs or joint.second not in refs:
            continue
        if (one.role, other.role) != (Role.DRAWER_SIDE, Role.DRAWER_BOTTOM):
            continue
        meeting = meeting_of(unit, joint)
        if meeting is not None:
            half = held.value / 2 * GRAVITY
            result = carries(unit, joint, meeting, half, FILLED, loads=(held,))
            if result is not None:
                yield result
                break
    yield from _front(unit, refs)


def contents(unit: Unit, parts: list[Part]) -> Input:
    """What lies in a drawer, kg: as the spec says, else what drawers are tested with."""
    refs = {part.ref for part in parts}
    said = [load for load in unit.loading.loads if load.ref in refs and load.mass > 0]
    if said:
        source = next((load.source for load in said if load.source), _SAID)
        taken = ", assumed" if any(load.assumed for load in said) else ""
        what = f"what lies in it ({said[0].said}{taken})"
        return Input("W", what, sum(load.mass for load in said), "kg", source)
    bottoms = [part for part in parts if part.role is Role.DRAWER_BOTTOM]
    area = sum(part.blank.length * part.blank.width for part in bottoms) / 1e6
    return Input(
        "W",
        "what drawers of its size are tested with",
        area * DRAWER_LOAD.value,
        "kg",
        DRAWER_LOAD.source,
    )


def foremost(load: float, ahead: float, length: float, count: int) -> float:
    """The load on the foremost of ``count`` screws spread evenly over ``length`` mm, where ``load``
    stands ``ahead`` mm before their middle: its share, and that of the moment by its distance.

    Raises:
        ValueError: there are fewer than two.
    """
    if count < 2:
        raise ValueError("one screw doesn't keep a slide from turning")
    places = [length * (number / (count - 1) - 0.5) for number in range(count)]
    return load / count + load * ahead * (length / 2) / sum(place**2 for place in places)


def _slide(unit: Unit, joint: Joint, load: float, loads: tuple[Input, Input]) -> Result | None:
    """The foremost screw of a slide in the carcass, the drawer being drawn out all the way."""
    screw = next((each for each in joint.fixings if "screw" in each.name), None)
    carrier, side = unit.part(joint.first), unit.part(joint.second)
    into = into_of(carrier, 0)
    if screw is None or screw.diameter is None or screw.length is None or into is None:
        return None
    count = SLIDE_SCREWS // 2
    long = side.bounds().size[1]
    drawn = DRAWN["side"] * long
    bears = pressed_on_steel(screw.diameter, ROOT * screw.diameter, (into, screw.length))
    each = bears.allowed / GRAVITY
    spread = long - 2 * FIRST_HOLE
    on_one = foremost(load / 2, drawn, spread, count)
    needed = next(
        (more for more in range(count, 13) if foremost(load / 2, drawn, spread, more) <= each), 12
    )
    eases = foremost(load / 2, drawn, spread, needed)
    return Result(
        Group.JOINTS,
        f"slides of {side.group.lower()} on {called(carrier)}",
        (side.ref, carrier.ref),
        DRAWN_OUT,
        on_one,
        each,
        "kg",
        "(W + W0)/2 (1/n + a (l/2) / sum x^2)",
        _LEVER,
        (
            *loads,
            Input("n", f"screws {screw.size} of each slide in the carcass", count, ""),
            Input("a", "from the screws' middle to that of the load", drawn, "mm"),
            Input("l", "from the first screw to the last", spread, "mm"),
            Input("R1", "what each bears", each, "kg", bears.source),
        ),
        limit_source=bears.source,
        notes=("the slides' own rating is their maker's to give",),
        remedies=(Remedy(f"{needed} screws for each slide in the carcass", eases, eases <= each),)
        if on_one > each
        else (),
    )


def _front(unit: Unit, refs: set[str]) -> Iterator[Result]:
    """What holds a drawer's front to its box, against a pull at its handle."""
    for joint in unit.joints:
        if joint.second not in refs or unit.part(joint.second).role is not Role.DRAWER_FRONT:
            continue
        meeting = meeting_of(unit, joint)
        if meeting is None or unit.part(joint.first).role not in DRAWERS:
            continue
        result = carries(
            unit,
            joint,
            meeting,
            FRONT_PULL.value * GRAVITY,
            FRONT,
            pulled=True,
            needs=FRONT_PULL.source,
        )
        if result is not None:
            yield result


def _door(unit: Unit, parts: list[Part]) -> Iterator[Result]:
    refs = {part.ref for part in parts}
    kg = sum(weight(part) for part in parts)
    joint = next(
        (each for each in unit.joints if each.kind is JointKind.HINGED and each.second in refs),
        None,
    )
    if joint is None:
        return
    hinge = next((each for each in joint.fixings if "hinge" in each.name), None)
    if hinge is None:
        return
    boxes = [part.bounds() for part in parts if part.role in DOORS]
    low, high = min(box.low[2] for box in boxes), max(box.high[2] for box in boxes)
    left, right = min(box.low[0] for box in boxes), max(box.high[0] for box in boxes)
    subject = f"hinges of {parts[0].group.lower()} on {called(unit.part(joint.first))}"
    weighs = Input("W", "weight of the door", kg, "kg")
    if hinge.name.startswith(BUTT):
        yield from _butts(unit, joint, subject, (right - left, high - low), weighs)
    else:
        yield _cups(joint, subject, hinge, high - low, weighs)


def _cups(joint: Joint, subject: str, hinge: Fixing, high: float, weighs: Input) -> Result:
    """So many hinges for a door of this height and weight, as their makers' tables have it."""
    most = max((kg for tall, kg, count in HINGES_PER_DOOR if count <= hinge.count), default=0.0)
    needed = next((count for _, kg, count in HINGES_PER_DOOR if weighs.value <= kg), None)
    kg_for = {count: kg for _, kg, count in HINGES_PER_DOOR}
    return Result(
        Group.JOINTS,
        subject,
        (joint.second, joint.first),
        HUNG,
        weighs.value,
        most,
        "kg",
        "W <= the heaviest door for so many hinges",
        _DOOR,
        (
            Input("n", "hinges", hinge.count, ""),
            Input("h", "height of the door", high, "mm"),
        ),
        limit_source=_HINGES,
        remedies=(Remedy(f"{needed} hinges", kg_for[needed], holds=True, bears=True),)
        if needed is not None and weighs.value > most
        else (),
    )


def _butts(
    unit: Unit, joint: Joint, subject: str, size: tuple[float, float], weighs: Input
) -> Iterator[Result]:
    """The screws of the top butt: drawn by the door's weight at half its width."""
    screw = next((each for each in joint.fixings if "screw" in each.name), None)
    carrier = unit.part(joint.first)
    into = into_of(carrier, 0)
    wide, high = size
    apart = high - 2 * ENDS
    if screw is None or not screw.diameter or not screw.length or into is None or apart <= 0:
        return
    bears: Bears = screw_drawn(into, screw.diameter, screw.length)
    leaf = SCREWS_PER_BUTT // 2
    pull = weighs.value * wide / 2 / apart
    capacity = leaf * bears.allowed / GRAVITY
    more = ceil(pull * GRAVITY / bears.allowed) if bears.allowed else 0
    yield Result(
        Group.JOINTS,
        subject,
        (joint.second, joint.first),
        TOP_HINGE,
        pull,
        capacity,
        "kg",
        f"W b / (2 a) <= n x ({bears.formula})",
        _HUNG,
        (
            weighs,
            Input("b", "width of the door", wide, "mm"),
            Input("a", "between its outer hinges", apart, "mm"),
            Input("n", f"screws {screw.size} of a leaf", leaf, ""),
            Input("R1", "what each bears", bears.allowed / GRAVITY, "kg", bears.source),
        ),
        limit_source=bears.source,
        remedies=(
            Remedy(
                f"{more} screws {screw.size} in each leaf",
                more * bears.allowed / GRAVITY,
                holds=True,
                bears=True,
            ),
        )
        if more > leaf
        else (),
    )
