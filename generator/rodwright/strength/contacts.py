"""What levels and the dividers below them press on each other with; N and mm."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

CLOSE = 1e-6
"""A level and a divider that are off by no more than this (mm) meet."""


@dataclass(frozen=True, slots=True)
class Contact:
    """A level (by ref) that lies on a divider which may give way."""

    level: str
    divider: str
    at: float
    pulls: bool


def balanced(matrix: np.ndarray, right: np.ndarray, contacts: Sequence[Contact]) -> list[float]:
    """Forces that close all gaps, but of those that can't pull, which leave a gap in its place.

    One at a time is let go, the first that pulls, or taken up again, the first whose gap has closed
    past itself (K. G. Murty, Linear Algebra and its Applications 7, 1974, from memory).
    """
    held = [True] * len(contacts)
    forces = np.zeros(len(contacts))
    for _ in range(2 ** min(len(contacts), 10)):
        on = [number for number, holds in enumerate(held) if holds]
        forces = np.zeros(len(contacts))
        if on:
            forces[on] = np.linalg.lstsq(matrix[np.ix_(on, on)], right[on], rcond=None)[0]
        gaps = matrix @ forces - right
        wrong = next(
            (
                number
                for number, contact in enumerate(contacts)
                if not contact.pulls
                and (forces[number] < -CLOSE if held[number] else gaps[number] > CLOSE)
            ),
            None,
        )
        if wrong is None:
            break
        held[wrong] = not held[wrong]
    return [float(force) for force in forces]
