"""The table of rooms in DEVELOPERS.md, beside what the rooms truly import.

``python tests/kit/house_plan.py DEVELOPERS.md`` rewrites the table's last column.
"""

from __future__ import annotations

import re
import sys
import tomllib
from collections.abc import Iterator, Sequence
from functools import cache
from pathlib import Path
from typing import Any

import grimp

ROOT = Path(__file__).parents[2]
GENERATOR = "generator/rodwright/"
_ROW = re.compile(r"^\| (?P<places>`.*?) \| (?P<holds>.*) \| (?P<imports>.*?) ?\|$", re.MULTILINE)


@cache
def imports() -> grimp.ImportGraph:
    """Every import of the source, lazy ones and those for types only with it."""
    return grimp.build_graph(
        "rodwright", "rodwright_cli", include_external_packages=True, cache_dir=None
    )


def rooms(text: str) -> list[list[str]]:
    """The rooms of the generator, row by row down the table of ``text``."""
    return [names for row in _ROW.finditer(text) if (names := _rooms(row["places"]))]


def contract(name: str) -> dict[str, Any]:
    """The import contract with this id in ``pyproject.toml``."""
    config = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))
    (found,) = (each for each in config["tool"]["importlinter"]["contracts"] if each["id"] == name)
    return dict(found)


def floors(name: str) -> list[list[str]]:
    """The layers of a contract from the lowest up, each with its rooms."""
    layers = contract(name)["layers"]
    return [[room.strip() for room in layer.split("|")] for layer in reversed(layers)]


def with_imports(text: str) -> str:
    """``text`` with the table's last column as the imports are."""
    order = [room for row in rooms(text) for room in row]

    def row(found: re.Match[str]) -> str:
        named = _rooms(found["places"])
        if not named and "`cli/" not in found["places"]:
            return found[0]
        inside = [f"rodwright.{name}" for name in named] or ["rodwright_cli"]
        cell = ", ".join(_imported(inside, order)) or "standard library"
        return f"| {found['places']} | {found['holds']} | {cell} |"

    return _ROW.sub(row, text)


def _rooms(places: str) -> list[str]:
    """`a/b/lengths.py`, `amounts.py` -> lengths, amounts."""
    if GENERATOR not in places:
        return []
    return [Path(place).stem for place in re.findall(r"`(.*?)`", places)]


def _imported(inside: Sequence[str], order: Sequence[str]) -> list[str]:
    """What these packages import: rooms down the table's ``order``, then libraries."""
    named, libraries = set(), set()
    for module in _modules(inside):
        for target in imports().find_modules_directly_imported_by(module):
            top, _, below = target.partition(".")
            if top == "rodwright":
                named.add(below.partition(".")[0])
            elif top != "rodwright_cli" and top not in sys.stdlib_module_names:
                libraries.add(top)
    own = {name.removeprefix("rodwright.") for name in inside}
    face = ["the face"] if "" in named else []
    return [
        *face,
        *(room for room in order if room in named - own),
        *sorted(libraries, key=str.lower),
    ]


def _modules(packages: Sequence[str]) -> Iterator[str]:
    for package in packages:
        yield package
        yield from imports().find_descendants(package)


if __name__ == "__main__":
    path = Path(sys.argv[1])
    path.write_text(with_imports(path.read_text(encoding="utf-8")), encoding="utf-8")
