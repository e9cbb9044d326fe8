"""HiGHS (https://highs.dev), which solves linear and integer programs, as it is used here."""

from __future__ import annotations

from typing import Any

import highspy


class _Silent(highspy.Highs):  # type: ignore[misc]  # highspy has no types
    def enableCallbacks(self) -> None:  # noqa: N802  # highspy's name
        """Silence it first: otherwise it prints a line as soon as it is made."""
        self.setOptionValue("output_flag", False)
        super().enableCallbacks()


def new_solver(seed: int) -> Any:
    """A solver that is silent, has one thread, and has one answer to the same question."""
    solver = _Silent()
    solver.setOptionValue("threads", 1)
    solver.setOptionValue("random_seed", seed % 2**31)
    return solver
