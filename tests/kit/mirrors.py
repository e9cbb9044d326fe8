"""The mirror image of a wish: what is left goes to the right, and the other way round."""

from __future__ import annotations

import copy
from typing import Any

from kit.wishes import Wish

_SWAP = {"left": "right", "right": "left"}


def mirrored(wish: Wish, width: float | None = None) -> Wish:
    """The same unit seen in a mirror: columns reversed, left and right swapped in all that names
    them, and places across counted from the other side of the unit's ``width``, mm (None: as the
    wish says it)."""
    image = copy.deepcopy(wish)
    if "interior" in image:
        image["interior"] = _space(image["interior"])
    if "opening" in image:
        image["opening"] = _readings(image["opening"])
    if "scribes" in image:
        edges = image["scribes"].get("edges", ["left", "right"])
        image["scribes"]["edges"] = [_SWAP.get(edge, edge) for edge in edges]
    _swapped(image, "cornice", "returns")
    _swapped(image, "slope", "falls")
    if width is None:
        width = image.get("size", {}).get("width")
    for each in image.get("cutouts", ()):
        # Along the front: the first of `at`, but of a pipe that runs from side to side.
        if "at" in each and each.get("runs") != "across":
            each["at"] = [width - each["at"][0], each["at"][1]]
    return image


def _swapped(holder: Wish, *keys: str) -> None:
    for key in keys[:-1]:
        if key not in holder:
            return
        holder = holder[key]
    value = holder.get(keys[-1])
    if value in _SWAP:
        holder[keys[-1]] = _SWAP[value]


def _space(space: Wish) -> Wish:
    image = dict(space)
    if "columns" in image:
        image["columns"] = [_space(each) for each in reversed(image["columns"])]
    if "rows" in image:
        image["rows"] = [_space(each) for each in image["rows"]]
    doors = image.get("doors")
    if doors is not None and doors.get("count", 1) == 1:
        image["doors"] = doors | {"hinges": _SWAP[doors.get("hinges", "left")]}
    return image


def _readings(opening: Wish) -> Wish:
    image: Any = {
        key: _sides(value) if isinstance(value, dict) else value for key, value in opening.items()
    }
    if "back" in image:
        image["back"] = _readings(opening["back"])
    diagonals = image.get("diagonals")
    if diagonals:
        image["diagonals"] = {
            {"rising": "falling", "falling": "rising"}[key]: value
            for key, value in diagonals.items()
        }
    if "level" in image:
        image["level"] = {
            plane: reading | {"rises": _SWAP[reading["rises"]]}
            for plane, reading in opening["level"].items()
        }
    return dict(image)


def _sides(readings: Wish) -> Wish:
    return {_SWAP.get(key, key): value for key, value in readings.items()}
