"""How far a unit sways on its legs: each a post that the joints at its head keep upright."""

from __future__ import annotations

from rodwright.strength.bracing import slip_modulus
from rodwright.strength.meetings import meeting_of
from rodwright.strength.turning import turning_of
from rodwright.unit import Joint, JointKind, Part, Role, Unit
from rodwright.unit.facts import STANDS


def standing(unit: Unit) -> list[Part]:
    """The legs that stand on the floor."""
    return [part for part in unit.parts if part.role is Role.LEG and part.bounds().low[2] < STANDS]


def legs_sway(unit: Unit, push: float, about: int, length: float | None = None) -> float | None:
    """Sway (mm) on its legs under a push (N) at the top, about an axis of the unit (0: front to
    back, 1: sideways): F/n (a^3/(3 E I) + a^2/S) for n legs a mm high, S (N mm/rad) what holds the
    head of each; ``length`` is another than theirs.  None where there are no legs,
    infinite where nothing holds them upright."""
    posts = standing(unit)
    if not posts:
        return None
    stiff = sum(_stiffness(unit, post, about, length) for post in posts)
    return push / stiff if stiff else float("inf")


def _stiffness(unit: Unit, post: Part, about: int, length: float | None) -> float:
    """How stiffly one leg stands, N/mm."""
    mechanics = post.blank.stock.mechanics
    turning = sum(
        _held(unit, post, joint, about)
        for joint in unit.joints
        if post.ref in {joint.first, joint.second}
    )
    if mechanics is None or not turning:
        return 0.0
    size = post.bounds().size
    high, deep, wide = length or size[2], size[1 - about], size[about]
    inertia = wide * deep**3 / 12
    return 1 / (high**3 / (3 * mechanics.along.value * inertia) + high**2 / turning)


def _held(unit: Unit, post: Part, joint: Joint, about: int) -> float:
    """How stiffly a joint holds the head of a leg, N mm/rad: a rail that runs on to another leg by
    itself, a block with what holds it to the carcass, one behind the other."""
    other = unit.part(joint.second if joint.first == post.ref else joint.first)
    if joint.kind is JointKind.STANDING or other.role is not Role.LEG:
        return turning_of(unit, joint, about).value
    here = _turning(unit, joint, about)
    met = {
        (each.second if each.first == other.ref else each.first): each
        for each in unit.joints
        if other.ref in {each.first, each.second}
    }
    if sum(unit.part(ref).role is Role.LEG for ref in met) > 1:
        return here
    onward = sum(
        _turning(unit, each, about)
        for ref, each in met.items()
        if unit.part(ref).role is not Role.LEG
    )
    return 1 / (1 / here + 1 / onward) if here and onward else 0.0


def _turning(unit: Unit, joint: Joint, about: int) -> float:
    """How stiffly a joint turns about an axis, N mm/rad; about that of its own screws or dowels,
    by their slip, k r^2 for each r mm from their middle."""
    meeting = meeting_of(unit, joint)
    if meeting is None or meeting.axis != about:
        return turning_of(unit, joint, about).value
    density = (meeting.first.blank.stock.density * meeting.second.blank.stock.density) ** 0.5
    total = 0.0
    for fixing in joint.fixings:
        if fixing.diameter and fixing.count > 1:
            step = meeting.length / fixing.count
            arms = [(i - (fixing.count - 1) / 2) * step for i in range(fixing.count)]
            slip = slip_modulus(fixing.diameter, density, drilled=True)
            total += sum(slip * arm**2 for arm in arms)
    return total
