"""What a job takes, as plain data: materials and operations, counted and not yet priced."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from typing import Literal

Stage = Literal["setting out", "cutting", "machining", "assembly", "finishing", "fitting"]
"""The stages of the work, in their order."""
MaterialKind = Literal["stock", "edging", "hardware", "finish", "consumables", "bought in"]


@dataclass(frozen=True, slots=True)
class Operation:
    """Something that is done ``count`` times, or to so many of ``per`` (a cut, a m of edge).

    ``key`` is what a rates file calls it, ``name`` what a maker reads, ``stage`` when it is done.
    """

    key: str
    name: str
    stage: Stage
    count: Decimal
    per: str


@dataclass(frozen=True, slots=True)
class Material:
    """Something that is bought: ``count`` of ``per``, at ``price`` each (None: nobody said one).

    ``key`` is what a rates file calls it where its price can be said there; ``basis`` is how the
    count was come by, in a maker's words (`cutting plan`, `area`).  ``wasted`` says that the count
    is net, and that the waste of the rates comes on top when it is priced.
    """

    kind: MaterialKind
    key: str
    name: str
    count: Decimal
    per: str
    price: Decimal | None
    basis: str = ""
    wasted: bool = False


@dataclass(frozen=True, slots=True)
class Takings:
    """All that a job takes."""

    materials: tuple[Material, ...]
    operations: tuple[Operation, ...]
