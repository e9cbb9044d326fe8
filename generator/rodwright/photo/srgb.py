"""The tone curve of sRGB (IEC 61966-2-1), both ways; values from 0 to 1."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray


def decoded(values: NDArray[np.float64]) -> NDArray[np.float64]:
    """Shown values to linear ones."""
    return np.where(values <= 0.04045, values / 12.92, ((values + 0.055) / 1.055) ** 2.4)


def encoded(values: NDArray[np.float64]) -> NDArray[np.float64]:
    """Linear values to those that are shown."""
    return np.where(values <= 0.0031308, 12.92 * values, 1.055 * values ** (1 / 2.4) - 0.055)


def code_of(linear: NDArray[np.float64]) -> str:
    """Linear red, green and blue as ``#rrggbb``, the nearest that can be shown."""
    return "#" + "".join(f"{round(255 * each):02x}" for each in np.clip(encoded(linear), 0, 1))
