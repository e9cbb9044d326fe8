"""The one tolerance of lengths."""

from __future__ import annotations

TOUCH = 1e-6
"""Lengths, and places, that differ by less (mm) are the same: far below any saw, far above the
rounding of sums, and well above the 1e-7 that Open CASCADE itself takes for nothing.

Where a length is divided into steps, as small a share of a step is no step either.
"""
