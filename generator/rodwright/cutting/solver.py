"""HiGHS, as all that is planned with it wants it: silent, one thread, the same answer each time."""

from __future__ import annotations

import highspy


def quiet_highs() -> highspy.Highs:
    """A solver that prints nothing, not even its name.

    Made so, it sets up no callbacks: doing that is what writes its name to standard output,
    before anyone can ask it to be silent.
    """
    solver = highspy.Highs.__new__(highspy.Highs)
    super(highspy.Highs, solver).__init__()
    for option, value in (("output_flag", False), ("threads", 1), ("random_seed", 0)):
        solver.setOptionValue(option, value)
    return solver
