"""What pieces are cut with."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

SawKind = Literal["table saw", "track saw", "panel saw", "router"]


@dataclass(frozen=True, slots=True)
class Saw:
    """A saw, or a router that cuts sheets to pieces; mm and kg.

    ``kerf`` is the width of its cut (the diameter of a router's tool).  ``rip`` is the widest
    that it rips against its fence, ``crosscut`` the longest that it crosscuts; None is any.
    ``lift`` is the heaviest that is handled on it by those at hand: larger pieces are broken down
    first with a saw that is brought to them.
    """

    kind: SawKind = "table saw"
    kerf: float = 3.2
    rip: float | None = None
    crosscut: float | None = None
    lift: float = 25.0
