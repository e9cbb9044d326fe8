"""Exact answers about boxes and rectangles that are turned, tilted and carried through.

Millimetres and radians.  Plain arithmetic: nothing here searches.
"""

from __future__ import annotations

from math import acos, asin, atan2, cos, hypot, pi, sin

_HALVINGS = 60


def tilted_height(height: float, depth: float, tilt_rad: float) -> float:
    """How high a box stands that is tilted by ``tilt_rad`` off upright over a bottom edge.

    ``height * cos + depth * sin``: the upper corner's height, by plane trigonometry.
    """
    return height * cos(tilt_rad) + depth * sin(tilt_rad)


def standing_up_height(height: float, depth: float) -> float:
    """The ceiling under which a box can just be tilted up over a bottom edge: its diagonal.

    :func:`tilted_height` is greatest where ``tan(tilt) = depth / height``, and there it is
    ``sqrt(height**2 + depth**2)``.  Of all ways to stand a box up, tilting over the edge along
    its width, ``depth`` being the smaller of the other two sizes, needs the least: with n the
    direction of the ceiling in the box's frame it stands ``height n1 + width n2 + depth n3``
    high, and at a given n1 the other two add least with all of it on the smaller size.
    """
    return hypot(height, depth)


def steepest_carry(length: float, thickness: float, ceiling: float) -> float | None:
    """The steepest angle (rad, 0 lying flat) to which a lying box can be raised under a ceiling.

    It then stands ``length * sin + thickness * cos`` high.  A quarter turn where the ceiling
    is over the diagonal, None where it is too low even for the box lying flat.
    """
    if thickness > ceiling:
        return None
    diagonal = hypot(length, thickness)
    if diagonal <= ceiling:
        return pi / 2
    return max(0.0, asin(ceiling / diagonal) - atan2(thickness, length))


def rod_round_corner(before: float, after: float) -> float:
    """The longest thin rod that goes flat round a right-angled corner of two corridors.

    ``(a**(2/3) + b**(2/3))**(3/2)``, the textbook ladder problem (from memory): the least of
    ``a / cos t + b / sin t``, at ``tan(t)**3 = b / a``.
    """
    return float((before ** (2 / 3) + after ** (2 / 3)) ** 1.5)


def longest_round_corner(width: float, before: float, after: float) -> float:
    """The longest rectangle of this width that goes flat round a right-angled corner.

    0 where it is wider than either corridor.

    Turning: with the long outer side from (l cos t, 0) to (0, l sin t) on the outer walls, that
    side lies on ``x sin t + y cos t = l sin t cos t``, and the inner corner (a, b) is
    ``a sin t + b cos t - l sin t cos t`` beyond it, which must be no less than the width w at
    any t.  So the longest is the least over t of ``(a sin t + b cos t - w) / (sin t cos t)``.
    Its derivative has the sign of ``F(t) = a sin(t)**3 - b cos(t)**3 + w (cos(t)**2 -
    sin(t)**2)``; F(0) = w - b <= 0 and F(pi/2) = a - w >= 0, and between them F' = sin t cos t
    (3 (a sin t + b cos t) - 4 w) is negative at most near the ends, so F has one zero and
    halving finds it.  Without turning: a rectangle no longer than a corridor is wide is shifted
    through crossways.  Held the other way, across the corner, no rectangle goes that does
    neither (the tests search for one).
    """
    if width > min(before, after):
        return 0.0
    low, high = 0.0, pi / 2
    for _ in range(_HALVINGS):
        t = (low + high) / 2
        slope = before * sin(t) ** 3 - after * cos(t) ** 3 + width * (cos(t) ** 2 - sin(t) ** 2)
        low, high = (t, high) if slope < 0 else (low, t)
    t = (low + high) / 2
    product = sin(t) * cos(t)
    # At an end of the range the width is that of a corridor, and turning gains nothing.
    turning = (
        (before * sin(t) + after * cos(t) - width) / product
        if product > 1e-9
        else min(before, after)
    )
    return max(turning, before, after)


def rolled_into(long: float, short: float, wide: float, narrow: float) -> float | None:
    """The angle (rad) by which a rectangle is rolled to go into another one; None if it can't.

    ``long >= short`` and ``wide >= narrow``; 0 where it goes in unrolled.  Rolled by v it takes
    ``long cos v + short sin v`` by ``long sin v + short cos v``.  The least roll that brings
    the first down to ``wide`` is the best: from there the second grows until it is longer
    than ``long`` itself, and never comes below that again.  (W. B. Carver 1957 and
    J. E. Wetzel, Rectangles in rectangles, Mathematics Magazine 73, 2000, give the same
    condition; cited from memory.)
    """
    if long <= wide:
        return 0.0 if short <= narrow else None
    if short > narrow:
        return None
    roll = acos(wide / hypot(long, short)) + atan2(short, long)
    return roll if long * sin(roll) + short * cos(roll) <= narrow else None
