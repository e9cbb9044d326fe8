"""What can't be cut from the stock there is, and what would help."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.problems import Problem


@dataclass(frozen=True, slots=True)
class Refusal:
    """Parts that can't be cut, why not, and what would help.

    ``job`` is the number of their job (from 0), ``refs`` are as in its unit, ``stock`` is what the
    job's spec calls their stock.
    """

    job: int
    refs: tuple[str, ...]
    stock: str
    message: str
    remedy: str

    @property
    def problem(self) -> Problem:
        """The same at the place of the stock in the job's spec."""
        return Problem(self.message, self.remedy, ("stock", self.stock))


class DemandError(ValueError):
    """Some parts can't be cut; every one of them is among the ``refusals``."""

    def __init__(self, refusals: Sequence[Refusal]) -> None:
        super().__init__("\n".join(f"{each.message} {each.remedy}" for each in refusals))
        self.refusals = tuple(refusals)
