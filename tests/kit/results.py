"""Results of strength by hand, for tests of how they are shown."""

from __future__ import annotations

from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.sources import Source

SEEN = Source("Wood Handbook FPL-GTR-190 (2010), table 9-1")
REMEMBERED = Source("Lavers, The strength properties of timber (1983)", seen=False)
PRACTICE = Source("common practice, no source")

SAG = Result(
    Group.LEVELS,
    "shelf SH1",
    ("SH1",),
    "sag after 10 years",
    7.25,
    4.6,
    "mm",
    "w = 5 q L^4 / (384 E I)",
    SEEN,
    (
        Input("q", "load", 0.245, "N/mm"),
        Input("E", "modulus of elasticity", 10100.0, "N/mm2", REMEMBERED),
    ),
    limit_source=PRACTICE,
    notes=("books are taken for granted",),
    remedies=(
        Remedy("25 mm thick", 2.7, holds=True, cost=12.5),
        Remedy("a lipping of 30 mm", 5.1, holds=False),
    ),
)
PINS = Result(
    Group.LEVELS, "shelf SH1", ("SH1",), "a pin's bearing", 2.0, 3.0, "N/mm2", "s = F/A", SEEN
)
BREAKS = Result(
    Group.JOINTS, "screws of SH1", ("SH1", "SD1"), "pull", 490.3325, 245.16625, "N", "F", SEEN
)
STANDS = Result(
    Group.STABILITY,
    "the unit",
    ("SD1",),
    "pull that tips it",
    20.0,
    10.0,
    "kg",
    "P = W x / H",
    SEEN,
    at_least=True,
)
UNKNOWN = Result(
    Group.LEVELS,
    "shelf SH2",
    ("SH2",),
    "sag at once",
    None,
    4.6,
    "mm",
    "w = 5 q L^4 / (384 E I)",
    SEEN,
    lacking="nothing is known of how stiff `bamboo` is",
)
