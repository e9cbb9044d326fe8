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

from importlib import import_module
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from rodwright.checks import check_parts as check
    from rodwright.checks import check_solids
    from rodwright.checks.findings import Finding, Severity
    from rodwright.handover.edge_list import EdgeRow, edge_list
    from rodwright.handover.lists import HardwareRow, PartsRow, hardware_list, parts_list
    from rodwright.handover.totals import StockTotal, stock_totals
    from rodwright.jobs.build import Build, build
    from rodwright.jobs.survey import SurveySheet, survey, write_survey
    from rodwright.jobs.way_in import way_in, write_way_in
    from rodwright.mass import centre_of_mass, unit_weight, weight
    from rodwright.pictures import write_pictures
    from rodwright.problems import Problem, ProblemsError
    from rodwright.setout import set_out
    from rodwright.solids import solid_of
    from rodwright.solids.meshes import mesh_of, placed_mesh
    from rodwright.unit import Joint, Part, Unit
    from rodwright.way.answer import WayInAnswer
    from rodwright.wishes import SpecFile, UnitSpec, read_spec, spec_schema

_PLACES = {
    "Build": ("jobs.build", "Build"),
    "build": ("jobs.build", "build"),
    "check": ("checks", "check_parts"),
    "check_solids": ("checks", "check_solids"),
    "Finding": ("checks.findings", "Finding"),
    "Severity": ("checks.findings", "Severity"),
    "EdgeRow": ("handover.edge_list", "EdgeRow"),
    "edge_list": ("handover.edge_list", "edge_list"),
    "HardwareRow": ("handover.lists", "HardwareRow"),
    "hardware_list": ("handover.lists", "hardware_list"),
    "StockTotal": ("handover.totals", "StockTotal"),
    "stock_totals": ("handover.totals", "stock_totals"),
    "PartsRow": ("handover.lists", "PartsRow"),
    "parts_list": ("handover.lists", "parts_list"),
    "centre_of_mass": ("mass", "centre_of_mass"),
    "unit_weight": ("mass", "unit_weight"),
    "weight": ("mass", "weight"),
    "mesh_of": ("solids.meshes", "mesh_of"),
    "placed_mesh": ("solids.meshes", "placed_mesh"),
    "Joint": ("unit", "Joint"),
    "Part": ("unit", "Part"),
    "Unit": ("unit", "Unit"),
    "write_pictures": ("pictures", "write_pictures"),
    "Problem": ("problems", "Problem"),
    "ProblemsError": ("problems", "ProblemsError"),
    "solid_of": ("solids", "solid_of"),
    "SpecFile": ("wishes", "SpecFile"),
    "UnitSpec": ("wishes", "UnitSpec"),
    "read_spec": ("wishes", "read_spec"),
    "spec_schema": ("wishes", "spec_schema"),
    "set_out": ("setout", "set_out"),
    "WayInAnswer": ("way.answer", "WayInAnswer"),
    "way_in": ("jobs.way_in", "way_in"),
    "write_way_in": ("jobs.way_in", "write_way_in"),
    "SurveySheet": ("jobs.survey", "SurveySheet"),
    "survey": ("jobs.survey", "survey"),
    "write_survey": ("jobs.survey", "write_survey"),
}

__all__ = [
    "Build",
    "EdgeRow",
    "Finding",
    "HardwareRow",
    "Joint",
    "Part",
    "PartsRow",
    "Problem",
    "ProblemsError",
    "Severity",
    "SpecFile",
    "StockTotal",
    "SurveySheet",
    "Unit",
    "UnitSpec",
    "WayInAnswer",
    "build",
    "centre_of_mass",
    "check",
    "check_solids",
    "edge_list",
    "hardware_list",
    "mesh_of",
    "parts_list",
    "placed_mesh",
    "read_spec",
    "set_out",
    "solid_of",
    "spec_schema",
    "stock_totals",
    "survey",
    "unit_weight",
    "way_in",
    "weight",
    "write_pictures",
    "write_way_in",
    "write_survey",
]


def __getattr__(name: str) -> Any:
    """Load a step's module when the step is first used."""
    if name not in _PLACES:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    module, attribute = _PLACES[name]
    value = getattr(import_module(f"{__name__}.{module}"), attribute)
    globals()[name] = value
    return value
