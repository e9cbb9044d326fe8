"""The spec language's part about how stiff and strong a stock is, where its maker knows better."""

from __future__ import annotations

from typing import Annotated, Any, Literal

from pydantic import BeforeValidator, Field, ValidationInfo, model_validator
from pydantic_core import CoreSchema, PydanticCustomError, PydanticKnownError, core_schema

from rodwright.amounts import AmountError, Kind, parse_amount
from rodwright.wishes.fields import SpecModel, Text


class _Stress:
    """Reads a modulus or a strength with its unit, N/mm2 once read, between two limits that no
    board is beyond."""

    def __init__(self, least: float, most: float, beyond: str) -> None:
        self._least, self._most, self._beyond = least, most, beyond

    def _read(self, value: Any, _: ValidationInfo) -> float:
        if isinstance(value, bool) or not isinstance(value, str | int | float):
            raise PydanticKnownError("string_type")
        try:
            stress = parse_amount(value, [Kind.STRESS]).value
        except AmountError as error:
            raise PydanticCustomError(
                "stress", "{reason}", {"reason": str(error), "remedy": error.remedy}
            ) from None
        if not self._least * (1 - _ROUNDED) <= stress <= self._most * (1 + _ROUNDED):
            raise PydanticCustomError(
                "stress",
                "`{value}` can't be; {beyond}",
                {
                    "value": value,
                    "beyond": self._beyond,
                    "remedy": "Check the figure and its unit: 1 N/mm2 is 1 MPa or 145 psi.",
                },
            )
        return stress

    def __get_pydantic_core_schema__(self, *_: object) -> CoreSchema:
        return core_schema.with_info_plain_validator_function(self._read)

    def __get_pydantic_json_schema__(self, *_: object) -> dict[str, Any]:
        return {"type": "string"}


def _density(value: Any) -> Any:
    """A density with its unit as kg/m3; whatever is no text stays as it is."""
    if not isinstance(value, str):
        return value
    try:
        float(value)
    except ValueError:
        try:
            return parse_amount(value, [Kind.DENSITY]).value
        except AmountError as error:
            raise PydanticCustomError(
                "density", "{reason}", {"reason": str(error), "remedy": error.remedy}
            ) from None
    return value


Density = Annotated[
    float,
    Field(gt=0, le=3000, strict=False),
    BeforeValidator(_density, json_schema_input_type=float | str),
]
"""A density in kg/m3, or with its unit."""
_ROUNDED = 1e-9
"""What is lost, as a share, where a figure is turned from one unit into another."""
_Modulus = Annotated[
    float,
    _Stress(100.0, 250_000.0, "boards have 100 N/mm2 at least, and steel has 210000 N/mm2"),
]
_ShearModulus = Annotated[
    float,
    _Stress(1.0, 100_000.0, "boards have 1 N/mm2 at least, and steel has 81000 N/mm2"),
]
_Strength = Annotated[
    float,
    _Stress(0.1, 1_000.0, "boards have 0.1 N/mm2 at least and 1000 N/mm2 at most"),
]


class StrengthSpec(SpecModel):
    """How stiff and strong a stock is; what is given here goes before what is known of its
    material."""

    stiffness: _Modulus | None = None
    """Its modulus of elasticity (US: MOE) along the grain, of a sheet along that of its face, with
    its unit: `9300 N/mm2`, `9.3 GPa`, `1350000 psi`."""
    stiffness_across: _Modulus | None = None
    """Its modulus of elasticity across the grain."""
    shear_stiffness: _ShearModulus | None = None
    """Its shear modulus in the plane that shears when it bends lying flat; of a sheet the planar or
    rolling one."""
    panel_shear_stiffness: _ShearModulus | None = None
    """Its shear modulus in its own plane, by which a back keeps a carcass square."""
    bending_strength: _Strength | None = None
    """Its bending strength (US: modulus of rupture, MOR) along the grain."""
    bending_strength_across: _Strength | None = None
    """Its bending strength across the grain."""
    shear_strength: _Strength | None = None
    """Its strength in shear in the plane of `shear_stiffness`."""
    bearing_strength: _Strength | None = None
    """Its strength in compression through its thickness."""
    strengths: Literal["mean", "characteristic"] = "mean"
    """Whether the strengths given are means, or characteristic (what nineteen pieces in twenty
    reach)."""
    creep: Annotated[float, Field(ge=0, le=10, strict=False)] | None = None
    """By how much of itself a sag grows in years: kdef of EN 1995-1-1, 0.6 for solid wood and 2.25
    for MDF in a heated room."""
    like: Text | None = None
    """A material that is known, which it is like: what isn't given here is taken from that."""
    source: Text | None = None
    """Where your figures come from, in your words; shown wherever they are used."""

    @model_validator(mode="after")
    def _says_something(self) -> StrengthSpec:
        if self.like is None and self.creep is None and not self.figures():
            raise PydanticCustomError(
                "empty",
                "no figure is given",
                {"remedy": "Write `stiffness:` and what else is known, or what it is `like:`."},
            )
        return self

    def figures(self) -> dict[str, float]:
        """The moduli and strengths that are given, N/mm2, by key."""
        return {name: value for name, value in self if isinstance(value, float) and name != "creep"}
