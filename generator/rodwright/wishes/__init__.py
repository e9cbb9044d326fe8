"""The spec language: what a maker wishes, read with the place of every value."""

from __future__ import annotations

from typing import Any

from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.files import SpecFile, read_spec

__all__ = ["SpecFile", "UnitSpec", "rack_schema", "rates_schema", "read_spec", "spec_schema"]


def spec_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of a spec file."""
    from rodwright.wishes.reading.schema import json_schema

    return json_schema(UnitSpec)


def rack_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of a rack file."""
    from rodwright.wishes.rack import RackSpec
    from rodwright.wishes.reading.schema import json_schema

    return json_schema(RackSpec)


def rates_schema() -> dict[str, Any]:
    """The JSON Schema (draft 2020-12) of a rates file."""
    from rodwright.wishes.rates import RatesSpec
    from rodwright.wishes.reading.schema import json_schema

    return json_schema(RatesSpec)
