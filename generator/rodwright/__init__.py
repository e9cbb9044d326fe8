"""Rodwright: from one spec to everything a fitted piece of furniture needs.

The steps, each a function of immutable objects:

>>> import rodwright
>>> spec = rodwright.read_spec("alcove.yaml")       # wishes, checked, with their places
>>> unit = rodwright.set_out(spec)                  # parts and joints, by arithmetic
>>> findings = rodwright.check(unit)                # what to mend, from the parts alone
>>> findings += rodwright.check_solids(unit)        # collisions and gaps, from the solids
>>> made = rodwright.build(unit, "out")             # every file

Importing this package imports no geometry kernel; the steps that need one load it when
they are first called.
"""

from __future__ import annotations

import ast
import sys
from importlib import import_module
from pathlib import Path
from typing import Any


def _read_face() -> dict[str, tuple[str, str]]:
    """Where each name of `__init__.pyi` comes from: its module, and what it is called there."""
    face: dict[str, tuple[str, str]] = {}
    for line in ast.parse(Path(__file__).with_suffix(".pyi").read_bytes()).body:
        match line:
            case ast.ImportFrom(module="rodwright"):
                continue  # a room, which is had by its own name
            case ast.ImportFrom(module=str(module), names=names):
                face |= {each.asname or each.name: (module, each.name) for each in names}
            case ast.Assign(targets=[ast.Name(id=name)], value=ast.Name(id=other)):
                face[name] = face.pop(other)
    return face


_FACE = _read_face()
_ROOMS = ("cutting",)
"""Rooms that are offered whole: plain data in, an answer out."""
__all__ = sorted(_FACE)


def __getattr__(name: str) -> Any:
    """Load a step's module when the step is first used."""
    value: Any
    if name == "__version__":
        from importlib.metadata import version

        value = version("rodwright")
    elif name in _ROOMS:
        return import_module(f"{__name__}.{name}")
    elif name in _FACE:
        module, attribute = _FACE[name]
        value = getattr(import_module(module), attribute)
    else:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    globals()[name] = value
    return value


def __dir__() -> list[str]:
    """The names that are offered, loaded or not."""
    return [*__all__, "__version__"]


def load_ipython_extension(shell: Any) -> None:
    """Have an IPython shell show units: a picture, and the model to turn.

    IPython calls it for `%load_ext rodwright`; where a notebook imports this package, it is called
    at once.
    """

    def shown(unit: Any) -> dict[str, str]:
        count = len(unit.parts)
        told = {"text/plain": f"<Unit {unit.title!r}: {count} part{'s' * (count > 1)}>"}
        if "text/html" in shell.display_formatter.active_types:
            from rodwright.page.notebook import notebook_bundle

            told |= notebook_bundle(unit)
        return told

    shell.display_formatter.mimebundle_formatter.for_type_by_name(
        "rodwright.unit.whole", "Unit", shown
    )


_ipython = sys.modules.get("IPython")
if _ipython is not None and (_shell := _ipython.get_ipython()) is not None:
    load_ipython_extension(_shell)
