"""Shapes whose volume and centre follow by hand, as composite bodies: blank less pieces."""

from __future__ import annotations

from dataclasses import dataclass
from math import pi, radians, tan

from rodwright.geometry import Vector
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Rebate,
    ShapeKey,
    Surface,
    Working,
)

SIZE: Vector = (400.0, 120.0, 20.0)

CORNER_AREA = 1 - pi / 4
"""Area between a quarter circle of radius 1 and its two tangents."""
CORNER_CENTRE = (10 - 3 * pi) / (12 - 3 * pi)
"""Its centre's distance from either tangent, 0.2234: square less quarter circle, whose centre
is 4 / (3 pi) from either radius.  The same figure is in Machinery's Handbook under "spandrel or
fillet" (from memory)."""


@dataclass(frozen=True)
class Case:
    """Workings of a blank of SIZE, and the volumes and centres of the pieces they take."""

    name: str
    workings: tuple[Working, ...]
    taken: tuple[tuple[float, Vector], ...]

    @property
    def shape(self) -> ShapeKey:
        return (SIZE, self.workings)

    @property
    def volume(self) -> float:
        return SIZE[0] * SIZE[1] * SIZE[2] - sum(volume for volume, _ in self.taken)

    @property
    def centroid(self) -> Vector:
        whole = SIZE[0] * SIZE[1] * SIZE[2]
        x, y, z = (
            (whole * SIZE[i] / 2 - sum(volume * centre[i] for volume, centre in self.taken))
            / self.volume
            for i in range(3)
        )
        return (x, y, z)


def _case(name: str, working: Working, volume: float, centre: Vector) -> Case:
    return Case(name, (working,), ((volume, centre),))


S = Surface
_H = 200 / tan(radians(60.0))
_BOTH = 120 * 20**2 / 2 - 20**3 / 6
# How far in from its corner the centre of what an easing of 4 mm takes lies, and its area.
_C, _A = 4 * CORNER_CENTRE, 16 * CORNER_AREA
_T30 = tan(radians(30.0))

SINGLE = (
    Case("square", (), ()),
    _case("rebate, back edge, stopped", Rebate(S.REVERSE, S.BACK_EDGE, 10.0, 8.0, 0.0, 300.0),
          300 * 10 * 8, (150, 115, 4)),
    _case("rebate, near end", Rebate(S.FACE, S.NEAR_END, 12.0, 5.0), 12 * 120 * 5, (6, 60, 17.5)),
    _case("rebate in an edge", Rebate(S.FACE_EDGE, S.FACE, 12.0, 5.0), 400 * 5 * 12,
          (200, 2.5, 14)),
    _case("rebate between edge and end", Rebate(S.BACK_EDGE, S.FAR_END, 30.0, 25.0, 4.0, 14.0),
          30 * 25 * 10, (385, 107.5, 9)),
    _case("groove, face, from 20", Groove(S.FACE, 30.0, 6.0, 7.0, 20.0), 380 * 6 * 7,
          (210, 33, 16.5)),
    _case("groove, reverse, through", Groove(S.REVERSE, 30.0, 6.0, 7.0), 400 * 6 * 7,
          (200, 33, 3.5)),
    _case("groove, face edge", Groove(S.FACE_EDGE, 7.0, 5.0, 6.0, 100.0, 220.0), 120 * 5 * 6,
          (160, 3, 9.5)),
    _case("groove, back edge", Groove(S.BACK_EDGE, 7.0, 5.0, 6.0), 400 * 5 * 6, (200, 117, 9.5)),
    _case("housing, reverse, stopped", Housing(S.REVERSE, 150.0, 18.0, 6.0, 15.0), 18 * 105 * 6,
          (159, 67.5, 3)),
    _case("housing, face, through", Housing(S.FACE, 250.0, 12.0, 5.0), 12 * 120 * 5,
          (256, 60, 17.5)),
    _case("notch in a corner", Notch(370.0, 90.0, 30.0, 30.0), 30 * 30 * 20, (385, 105, 10)),
    _case("notch within", Notch(100.0, 40.0, 50.0, 30.0), 50 * 30 * 20, (125, 55, 10)),
    _case("mitre, near end, back edge long", Mitre(S.NEAR_END, 45.0, S.BACK_EDGE),
          120 * 120 / 2 * 20, (40, 40, 10)),
    _case("mitre, far end, face edge long", Mitre(S.FAR_END, 30.0, S.FACE_EDGE),
          120 * 120 * _T30 / 2 * 20, (400 - 40 * _T30, 80, 10)),
    _case("bevel, far end, face long", Mitre(S.FAR_END, 30.0, S.FACE),
          20 * 20 * _T30 / 2 * 120, (400 - 20 * _T30 / 3, 60, 20 / 3)),
    _case("bevel, near end, reverse long", Mitre(S.NEAR_END, 45.0, S.REVERSE),
          20 * 20 / 2 * 120, (20 / 3, 60, 40 / 3)),
    _case("easing, face and face edge", Easing(S.FACE, S.FACE_EDGE, 4.0), _A * 400,
          (200, _C, 20 - _C)),
    _case("easing, reverse and back edge, stopped", Easing(S.REVERSE, S.BACK_EDGE, 4.0, 50.0, 90.0),
          _A * 40, (70, 120 - _C, _C)),
    _case("easing, far end and face", Easing(S.FAR_END, S.FACE, 4.0, 100.0), _A * 20,
          (400 - _C, 110, 20 - _C)),
    _case("easing, upright arris", Easing(S.NEAR_END, S.BACK_EDGE, 4.0, 0.0, 15.0), _A * 15,
          (_C, 120 - _C, 7.5)),
    _case("hole through", Hole(S.FACE, (320.0, 60.0), 8.0), pi * 16 * 20, (320, 60, 10)),
    _case("hole, face, blind", Hole(S.FACE, (320.0, 60.0), 8.0, 12.0), pi * 16 * 12, (320, 60, 14)),
    _case("hole, reverse, blind", Hole(S.REVERSE, (280.0, 20.0), 5.0, 12.0), pi * 6.25 * 12,
          (280, 20, 6)),
    _case("hole, face edge", Hole(S.FACE_EDGE, (70.0, 8.0), 6.0, 30.0), pi * 9 * 30, (70, 15, 8)),
    _case("hole, back edge, through", Hole(S.BACK_EDGE, (70.0, 8.0), 6.0), pi * 9 * 120,
          (70, 60, 8)),
    _case("hole, near end", Hole(S.NEAR_END, (60.0, 8.0), 6.0, 25.0), pi * 9 * 25, (12.5, 60, 8)),
    _case("hole, far end", Hole(S.FAR_END, (60.0, 8.0), 6.0, 25.0), pi * 9 * 25, (387.5, 60, 8)),
    _case("bevel along an arris", Bevel(S.FACE, S.FACE_EDGE, 12.0, 6.0), 36 * 400,
          (200, 4, 18)),
    _case("bevel along an upper arris from below", Bevel(S.BACK_EDGE, S.REVERSE, 6.0, 12.0),
          36 * 400, (200, 116, 2)),
    _case("bevel across a corner", Bevel(S.BACK_EDGE, S.FAR_END, 60.0, 30.0), 900 * 20,
          (380, 110, 10)),
    # 60 down the end it would run out: at the reverse, 20 down, two thirds of the 30 are left.
    Case("bevel over a whole end", (Bevel(S.FACE, S.FAR_END, 30.0, 60.0),),
         ((20 * 20 * 120, (390, 60, 10)), (10 * 20 / 2 * 120, (380 - 10 / 3, 60, 40 / 3)))),
    _case("mortise, face edge", Mortise(S.FACE_EDGE, (100.0, 6.0), (50.0, 8.0), 30.0),
          50 * 8 * 30, (125, 15, 10)),
    _case("mortise, far end", Mortise(S.FAR_END, (30.0, 5.0), (60.0, 10.0), 25.0),
          60 * 10 * 25, (387.5, 60, 10)),
    Case("mortise with round ends", (Mortise(S.REVERSE, (100.0, 20.0), (10.0, 60.0), 12.0, True),),
         ((10 * 50 * 12, (105, 50, 6)), (pi * 25 * 12, (105, 50, 6)))),
    _case("mortise that is round all over", Mortise(S.FACE, (100.0, 20.0), (30.0, 30.0), 12.0,
          True), pi * 225 * 12, (115, 35, 14)),
    # Half discs and balls of 6: as deep as the cutter's radius, which a quarter of a ball ends.
    Case("finger pull, run out", (FingerPull(S.FACE, S.BACK_EDGE, 30.0, 6.0, 6.0),),
         ((pi * 18 * 400, (200, 90, 20 - 8 / pi)),)),
    Case("finger pull, round ends", (FingerPull(S.REVERSE, S.FACE_EDGE, 30.0, 6.0, 6.0, 94.0,
         206.0),), ((pi * 18 * 100, (150, 30, 8 / pi)), (pi * 144, (150, 30, 2.25)))),
    # On the very arris half of that is in the wood.
    Case("finger pull on the arris", (FingerPull(S.REVERSE, S.NEAR_END, 0.0, 6.0, 6.0),),
         ((pi * 9 * 120, (8 / pi, 60, 8 / pi)),)),
)  # fmt: skip

# First moments of that corner, with u = r - t: of (r - sqrt(r^2 - u^2))^3 / 2 and (r - u) times
# (r - sqrt(r^2 - u^2))^2, over u from 0 to r, for r of 1.
_SHARED = 5 / 3 - pi / 2
_INWARD = 4 * ((1 - 3 * pi / 4 + 2 - 3 * pi / 16) / 2) / _SHARED
_DOWN = 4 * (_SHARED - (1 / 2 - 2 / 3 + 1 / 4)) / _SHARED
_CORNER = (_INWARD, _INWARD, 20 - _DOWN)

CROSSING = (
    Case(
        "groove across a housing",
        (Groove(S.FACE, 30.0, 6.0, 7.0), Housing(S.FACE, 250.0, 12.0, 5.0)),
        (
            (400 * 6 * 7, (200, 33, 16.5)),
            (12 * 120 * 5, (256, 60, 17.5)),
            (-12 * 6 * 5, (256, 33, 17.5)),
        ),
    ),
    Case(
        "one working twice", (Notch(100.0, 40.0, 50.0, 30.0),) * 2, ((50 * 30 * 20, (125, 55, 10)),)
    ),
    Case(
        "hole in a housing's floor",
        (Hole(S.FACE, (256.0, 60.0), 8.0), Housing(S.FACE, 250.0, 12.0, 5.0)),
        ((12 * 120 * 5, (256, 60, 17.5)), (pi * 16 * 15, (256, 60, 7.5))),
    ),
    # Two equal cylinders that cross square share 16 r^3 / 3 (Archimedes, The Method, preface).
    Case(
        "two bores that cross",
        (Hole(S.FACE, (100.0, 60.0), 8.0), Hole(S.BACK_EDGE, (100.0, 10.0), 8.0)),
        (
            (pi * 16 * 20, (100, 60, 10)),
            (pi * 16 * 120, (100, 60, 10)),
            (-16 * 64 / 3, (100, 60, 10)),
        ),
    ),
    # Both mitres from one long edge: a triangle is left, 400 long and _H high.
    Case(
        "two mitres that leave a triangle",
        (Mitre(S.NEAR_END, 60.0, S.FACE_EDGE), Mitre(S.FAR_END, 60.0, S.FACE_EDGE)),
        ((400 * 120 * 20, (200, 60, 10)), (-400 * _H / 2 * 20, (200, _H / 3, 10))),
    ),
    # At a back from the long edge and b from the long face they share min(a, b) of the length.
    Case(
        "mitre and bevel at one end",
        (Mitre(S.NEAR_END, 45.0, S.BACK_EDGE), Mitre(S.NEAR_END, 45.0, S.FACE)),
        (
            (120 * 120 / 2 * 20, (40, 40, 10)),
            (20 * 20 / 2 * 120, (20 / 3, 60, 20 / 3)),
            (-_BOTH, (440000 / 3 / _BOTH, 120 - 4300000 / 3 / _BOTH, 20 - 300000 / _BOTH)),
        ),
    ),
    # At a depth t both bevels reach 4 - t in: a pyramid.
    Case(
        "two bevels that meet in a corner",
        (Bevel(S.FACE, S.FACE_EDGE, 4.0, 4.0), Bevel(S.NEAR_END, S.FACE, 4.0, 4.0)),
        (
            (8 * 400, (200, 4 / 3, 20 - 4 / 3)),
            (8 * 120, (4 / 3, 60, 20 - 4 / 3)),
            (-64 / 3, (1.5, 1.5, 19)),
        ),
    ),
    # At a depth t both easings reach g = r - sqrt(2 r t - t^2) in: the integral of g^2.
    Case(
        "two easings that meet in a corner",
        (Easing(S.FACE, S.FACE_EDGE, 4.0), Easing(S.FACE, S.NEAR_END, 4.0)),
        ((_A * 400, (200, _C, 20 - _C)), (_A * 120, (_C, 60, 20 - _C)), (-64 * _SHARED, _CORNER)),
    ),
)
