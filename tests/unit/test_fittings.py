"""How bought-in pieces are gathered."""

from __future__ import annotations

from rodwright.unit import Block, Fitting
from rodwright.unit.fittings import shapes_by


def test_shapes_of_like_fittings_come_together_in_their_order() -> None:
    one, two, three, four = (Block((0.0, 0.0, 0.0), (1.0, 1.0, up)) for up in (1.0, 2.0, 3.0, 4.0))
    fittings = (
        Fitting("SD1", (one,), ware="brass"),
        Fitting("SD1", (two,), inner=True),
        Fitting("SD1", (three, four), ware="brass", inner=True),
    )
    by_ware = shapes_by(fittings, key=lambda each: (each.ref, each.ware))
    assert by_ware == {("SD1", "brass"): (one, three, four), ("SD1", "steel"): (two,)}
    assert list(by_ware) == [("SD1", "brass"), ("SD1", "steel")]
    assert shapes_by(fittings, key=lambda each: each.inner) == {
        False: (one,),
        True: (two, three, four),
    }
