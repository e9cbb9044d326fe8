"""Units from spec text, for tests of the set-out."""

from __future__ import annotations

from functools import cache
from typing import Any

from ruamel.yaml import YAML

from rodwright.jobs.new import model_path
from rodwright.problems import Problems, ProblemsError
from rodwright.setout import begin, set_out, set_out_unit
from rodwright.setout.setting import Setting
from rodwright.unit import Part, Role, Unit
from rodwright.wishes import read_spec
from rodwright.wishes.models import UnitSpec

STOCK = """
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  thin: {kind: sheet, material: birch plywood, thickness: 6, size: [2440, 1220]}
  ash: {kind: board, material: ash, thickness: 22}
  oak: {kind: board, material: european oak, thickness: 32}
"""


def spec_from(text: str, **more: Any) -> UnitSpec:
    """A spec from YAML text, with the stock above where it names none."""
    data = YAML(typ="safe", pure=True).load(text if "stock:\n" in text else text + STOCK)
    carcass = {"stock": "ply", "corners": "butted"}
    data = {"title": "Test", "carcass": carcass} | data | more
    return UnitSpec.model_validate(data, context={"unit": data.get("unit", "mm")})


def setting_from(text: str, **more: Any) -> Setting:
    """What the passes of the set-out begin with: the main lines of a spec, and an empty bench."""
    spec = spec_from(text, **more)
    return begin(spec, Problems(spec.unit))


def unit_from(text: str, **more: Any) -> Unit:
    """The unit that a spec's text sets out."""
    return set_out_unit(spec_from(text, **more))


def problems_of(text: str, **more: Any) -> list[str]:
    """What the set-out has to say against a spec: `key.path: message`."""
    spec = spec_from(text, **more)
    try:
        set_out_unit(spec)
    except ProblemsError as error:
        return [
            f"{'.'.join(map(str, problem.where))}: {problem.message}" for problem in error.problems
        ]
    return []


@cache
def ready_unit(name: str) -> Unit:
    """The unit of the ready model of that name."""
    return set_out(read_spec(model_path(name)))


def of_role(unit: Unit, role: Role) -> list[Part]:
    """The unit's parts of one role."""
    return [part for part in unit.parts if part.role is role]
