"""The spec language's part about what a unit carries, and what it stands on and is fixed to.

Lengths are millimetres once read, weights kilograms.
"""

import math
from collections.abc import Callable
from typing import Annotated, Any, Literal

from pydantic import AfterValidator, Field, GetCoreSchemaHandler, ValidationInfo, model_validator
from pydantic_core import CoreSchema, PydanticCustomError, PydanticKnownError, core_schema

from rodwright.amounts import AmountError, Kind, parse_amount
from rodwright.lengths import LengthUnit
from rodwright.trade.creep import ServiceClass
from rodwright.trade.loads import Burden, read_burden
from rodwright.wishes.fields import InShort, Length, LengthOrZero, SpecModel, default

STEEPEST = 12
"""A floor that falls by more than one in so many is a ramp (ADA Standards 2010, section 405.2, from
memory)."""


class _ReadBy:
    """Reads text with a unit of its own by ``function``, which gets it and the file's unit;
    ``words`` say what it reads."""

    def __init__(self, function: Callable[[Any, LengthUnit], Any], words: str) -> None:
        self._function = function
        self._words = words

    def __get_pydantic_core_schema__(self, *_: object) -> CoreSchema:
        return core_schema.with_info_plain_validator_function(self._read)

    def __get_pydantic_json_schema__(self, *_: object) -> dict[str, Any]:
        return {"type": "string", "title": self._words}

    def _read(self, value: Any, info: ValidationInfo) -> Any:
        if isinstance(value, Burden):
            return value  # read already, where it stands alone for a group of keys
        if isinstance(value, bool) or not isinstance(value, str | int | float):
            raise PydanticKnownError("string_type")
        try:
            return self._function(value, (info.context or {}).get("unit", "mm"))
        except AmountError as error:
            raise PydanticCustomError(
                "amount", "{reason}", {"reason": str(error), "remedy": error.remedy}
            ) from None


def _weight(text: object, _: LengthUnit) -> float:
    return parse_amount(text, (Kind.WEIGHT,)).value


UseOrWeight = Annotated[Burden, _ReadBy(read_burden, "a use or weight")]
"""What is carried: a use, or an amount with its unit."""

Weight = Annotated[float, _ReadBy(_weight, "a weight")]
"""A weight with its unit, kg once read."""


class SpotSpec(SpecModel):
    """A weight on one spot."""

    weight: Weight
    """What it weighs, with its unit: `18 kg`, `40 lb`."""
    at: Length
    """How far its middle is from the left end of the space."""


class LoadSpec(SpecModel):
    """What a shelf, a floor, a drawer or a top carries; give `of`, `television` or `points`."""

    of: UseOrWeight | None = None
    """What it is: `books`, `paperbacks`, `hardbacks`, `large books`, `textbooks`, `records`,
    `files` (US: binders), `archive boxes`, `paper`, `crockery` (US: dishes), `household goods`,
    `storage`, `school storage`, `folded clothes`, `clothes on a rail` (between the sides of the
    space, instead of on its floor) or `nothing`; or what it weighs per metre (`25 kg/m`,
    `30 lb/ft`), per area (`50 lb/ft2`, `1.92 kPa`) or in all on each shelf (`30 kg`), with a name
    before it or not (`potted plants 30 kg`).  Files and boxes are in one row, one high; folded
    clothes and paper fill all the height there is.  `books` (25 lb/ft) are stacks of all kinds that
    were weighed, big ones among them, and so the heavier; `hardbacks` (20 lb/ft) are a row of that
    alone, as a textbook of algebra has it: take `books` where in doubt."""
    television: Weight | None = None
    """Weight of a television in the middle, from its data plate (`18 kg`); `load: television 18 kg`
    says the same."""
    start: LengthOrZero = Field(default=0.0, alias="from")
    """It lies from here on, measured from the left end of the space ..."""
    stop: Length | None = Field(default=None, alias="to")
    """... up to here; to the right end unless said."""
    growing_to: UseOrWeight | None = None
    """It grows evenly from what `of` says at the left to this at the right (`40 kg/m`)."""
    points: Annotated[tuple[SpotSpec, ...], Field(min_length=1, max_length=50, strict=False)] = ()
    """What stands on single spots, besides."""

    @model_validator(mode="after")
    def _makes_sense(self) -> "LoadSpec":
        if self.of is None and self.television is None and not self.points:
            raise _refused(
                "it doesn't say what is carried", "Add `of:`, `television:` or `points:`."
            )
        shaped = self.start > 0 or self.stop is not None or self.growing_to is not None
        if shaped and self.of is None:
            raise _refused(
                "`from`, `to` and `growing_to` say where something lies, and nothing does",
                "Add `of:` and what it is, or take them out.",
            )
        if self.stop is not None and self.stop <= self.start:
            raise _refused("`to` isn't farther to the right than `from`", "Swap or mend the two.")
        if self.of is not None and self.of.manner == "hangs" and (shaped or self.points):
            raise _refused(
                "clothes hang on a rail from side to side",
                "Leave `from`, `to`, `growing_to` and `points` out.",
            )
        self._grows_alike()
        return self

    def _grows_alike(self) -> None:
        """Refuse what can't grow into one another."""
        if self.of is None or self.growing_to is None:
            return
        first, last = self.of.amount.kind, self.growing_to.amount.kind
        if (
            first is not last
            or self.growing_to.manner == "hangs"
            or first not in (Kind.RUN_WEIGHT, Kind.AREA_WEIGHT)
        ):
            raise _refused(
                f"a {first} can't grow to a {last}",
                "Give both per metre or both per area: `of: 25 kg/m` and `growing_to: 40 kg/m`.",
            )


def _refused(message: str, remedy: str) -> PydanticCustomError:
    return PydanticCustomError("load", "{reason}", {"reason": message, "remedy": remedy})


def _burden_lies(burden: Burden) -> Burden:
    if burden.manner == "hangs":
        raise _refused(
            f"`{burden.said}` hangs, and nothing hangs here",
            "Write `folded clothes` or a weight; on a rail, `load:` goes with the space that it "
            "hangs in.",
        )
    return burden


def _lies(load: LoadSpec) -> LoadSpec:
    if load.of is not None:
        _burden_lies(load.of)
    return load


LoadField = Annotated[LoadSpec, InShort(UseOrWeight, "of")]
"""What the spaces within carry: a use or a weight, or keys."""
LevelLoadField = Annotated[LoadSpec, InShort(UseOrWeight, "of"), AfterValidator(_lies)]
"""The same, of something that nothing hangs in."""
_Each = Annotated[tuple[LevelLoadField, ...], Field(max_length=200, strict=False)]


class _OneOrEach:
    """Takes what all carry, in short or as keys, or a list of what each of them carries."""

    def __get_pydantic_core_schema__(self, _: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        def whole(value: Any) -> Any:
            if isinstance(value, tuple):
                return value
            return _lies(value if isinstance(value, LoadSpec) else LoadSpec(of=value))

        return core_schema.no_info_after_validator_function(
            whole, handler.generate_schema(UseOrWeight | LoadSpec | _Each)
        )


LevelLoads = Annotated[LoadSpec | tuple[LoadSpec, ...], _OneOrEach()]
"""What several levels carry: all the same, or a list from the top down."""


class LoadsSpec(SpecModel):
    """What the unit carries, and what its parts are held against."""

    of: Annotated[UseOrWeight, AfterValidator(_burden_lies)] | None = None
    """What every shelf and every floor of a space carries, where `load` doesn't say otherwise: a
    use (`books`) or a weight (`25 kg/m`), as under `load`.  Unless said, open shelves carry books
    (25 lb/ft, 37 kg/m), those behind doors household goods (15 lb/ft2, 73 kg/m2)."""
    limit: Annotated[float, Field(ge=50, le=2000, strict=False)] = 200.0
    """Shelves may sag by their span over this."""
    years: Annotated[float, Field(ge=0, le=100, strict=False)] = 10.0
    """The sag is reckoned after so many years under load; `0` for at once."""
    room: Literal["heated", "unheated", "outside"] = "heated"
    """Where it stands: wood in damp air creeps more (service classes 1, 2 and 3 of
    EN 1995-1-1)."""

    @property
    def service_class(self) -> ServiceClass:
        """The room as EN 1995-1-1 has it (2.3.1.3)."""
        classes: dict[str, ServiceClass] = {"heated": 1, "unheated": 2, "outside": 3}
        return classes[self.room]


LoadsField = Annotated[LoadsSpec, InShort(UseOrWeight, "of")]
"""What the unit carries: a use or a weight, or keys."""


class FloorSpec(SpecModel):
    """The floor that the unit stands on."""

    covering: Literal["hard", "carpet"] = "hard"
    """Boards, tiles and the like, or carpet, into which the front edge sinks."""
    falls: LengthOrZero = 0.0
    """How much lower it is nearer to the room, measured along `over`: lay a straight edge from back
    to front and level it; this is the gap under its front end."""
    over: Length = default(1000.0, "36")
    """Length along which `falls` was measured."""

    @model_validator(mode="after")
    def _is_a_floor(self) -> "FloorSpec":
        if self.falls * STEEPEST > self.over:
            raise _refused(
                f"a floor that falls by more than 1 in {STEEPEST} is a ramp",
                "Check `falls` and `over`.",
            )
        return self

    @property
    def lean(self) -> float:
        """How far it falls to the front, degrees."""
        return math.degrees(math.atan2(self.falls, self.over))


FloorField = Annotated[FloorSpec, InShort(Literal["hard", "carpet"], "covering")]
"""The floor: its covering, or keys."""
