"""Vectors, boxes, planes, and what lies near: plain geometry that knows no wood."""

from rodwright.geometry.boxes import Box
from rodwright.geometry.tolerance import TOUCH
from rodwright.geometry.vectors import (
    Matrix,
    Vector,
    along,
    cross,
    dot,
    minus,
    plus,
    times,
    vector,
)

__all__ = [
    "TOUCH",
    "Box",
    "Matrix",
    "Vector",
    "along",
    "cross",
    "dot",
    "minus",
    "plus",
    "times",
    "vector",
]
