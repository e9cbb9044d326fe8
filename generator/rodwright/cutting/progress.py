"""When a search has to end, and who is told how far it is."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from time import monotonic


def _silent(_cost: float, _bound: float) -> None:
    pass


@dataclass(slots=True)
class Patience:
    """How long a search may go on.

    ``seconds`` of the clock (None: to its own end, which is counted in steps and not in time,
    so that the same question has the same answer).  ``told`` gets the best cost and the bound
    whenever one of them changes.  A KeyboardInterrupt that comes while it searches is noted by
    whoever searches, with ``stop``.
    """

    seconds: float | None = None
    told: Callable[[float, float], None] = _silent
    stopped: bool = False
    _began: float = field(default_factory=monotonic)

    @property
    def left(self) -> float:
        """Seconds that are left; infinite where no limit is set, 0 once it was stopped."""
        if self.stopped:
            return 0.0
        if self.seconds is None:
            return float("inf")
        return max(0.0, self.seconds - (monotonic() - self._began))

    def over(self) -> bool:
        """Whether to stop now; notes it, so that the plan can say so."""
        if self.left <= 0:
            self.stopped = True
        return self.stopped

    def stop(self) -> None:
        """Stop as soon as it can be."""
        self.stopped = True


@dataclass(slots=True)
class Brief(Patience):
    """Patience for a short search: it ends when it was asked ``looks`` times, which is the same on
    every machine."""

    looks: int = 15

    def over(self) -> bool:
        """Whether to stop now; counts how often it is asked."""
        self.looks -= 1
        if self.looks < 0:
            self.stop()
        return Patience.over(self)
