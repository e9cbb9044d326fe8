"""The spec language's part about what surfaces are finished with."""

from collections.abc import Iterator
from difflib import get_close_matches
from typing import Annotated, Any, Literal

from pydantic import Discriminator, GetCoreSchemaHandler, Tag, ValidationInfo, field_validator
from pydantic_core import CoreSchema, PydanticCustomError, core_schema

from rodwright.trade.colours import COLOUR_WORDS
from rodwright.wishes.fields import InShort, SpecModel
from rodwright.wishes.made_by import Name

FinishWord = Literal["oil", "lacquer", "paint", "stain", "none"]
"""What a surface is finished with, in a word."""


def _colour(value: str) -> str:
    """A colour as ``#rrggbb`` in small letters, from that or from a word."""
    text = value.strip().lower()
    if text in COLOUR_WORDS:
        return COLOUR_WORDS[text]
    if len(text) == 7 and text[0] == "#" and all(each in "0123456789abcdef" for each in text[1:]):
        return text
    near = get_close_matches(text.replace(" ", ""), COLOUR_WORDS, n=1)
    raise PydanticCustomError(
        "colour",
        "`{value}` isn't a colour that is known here",
        {
            "value": value,
            "remedy": f"{f'Did you mean `{near[0]}`? ' if near else ''}Write `#rrggbb` in quotes, "
            "or a colour word of CSS such as `seagreen`.",
        },
    )


class _ColourOrWord:
    """Reads a colour."""

    def __get_pydantic_core_schema__(self, *_: Any) -> CoreSchema:
        return core_schema.no_info_after_validator_function(_colour, core_schema.str_schema())

    def __get_pydantic_json_schema__(self, *_: Any) -> dict[str, Any]:
        return {"type": "string", "title": "a colour"}


ColourOrWord = Annotated[str, _ColourOrWord()]
"""A colour as `#rrggbb`, or a colour word of CSS."""


def _unread(key: str, kind: str, remedy: str) -> PydanticCustomError:
    """What is said of a key that would go unread."""
    return PydanticCustomError(
        "finish",
        "`{key}` says nothing about `kind: {kind}`",
        {"key": key, "kind": kind, "remedy": remedy},
    )


class ColourSpec(SpecModel):
    """A colour, and what it is called where it is mixed or bought."""

    shown: ColourOrWord
    """What it looks like, for pictures: `#rrggbb` in quotes or a colour word of CSS."""
    name: Name
    """Its name or number in lists and on the quote, in quotes: `"sage, tin 12"`."""


class CoatSpec(SpecModel):
    """What some surfaces are finished with."""

    kind: FinishWord
    """What it is; a stain is lacquered over."""
    colour: ColourOrWord | ColourSpec | None = None
    """Paint and stain: its colour, `#rrggbb` in quotes or a colour word of CSS (`ivory`,
    `seagreen`), or keys, which give it a name or number of your own.  Unless said, paint is
    off-white (`#f3f0e6`) and stain mid-brown (`#5f4026`)."""
    sheen: Literal["matt", "satin", "gloss"] | None = None
    """How it shines; oil is matt and all else satin unless said."""

    @field_validator("colour")
    @classmethod
    def _of_a_colour(
        cls, value: str | ColourSpec | None, info: ValidationInfo
    ) -> str | ColourSpec | None:
        if value is None:
            raise PydanticCustomError(
                "finish",
                "no colour is written here",
                {"remedy": "Put `#rrggbb` in quotes: in YAML a bare `#` begins a comment."},
            )
        kind = info.data.get("kind")
        if kind in ("oil", "lacquer", "none"):
            raise _unread("colour", kind, "Leave it out, or write `kind: paint` or `kind: stain`.")
        return value

    @field_validator("sheen")
    @classmethod
    def _of_a_finish(cls, value: str | None, info: ValidationInfo) -> str | None:
        if info.data.get("kind") == "none":
            raise _unread("sheen", "none", "Leave it out, or change `kind`.")
        return value


CoatField = Annotated[CoatSpec, InShort(FinishWord, "kind")]
"""A finish: its kind, or keys."""


class FinishSpec(SpecModel):
    """What the unit's surfaces are finished with, by place or by stock.

    Of several that are said of a part the most particular counts: `everything`, then its stock,
    then its place, `shelves`, `back`, `door_panels`, `drawer_fronts` and `drawer_boxes` over the
    wider places they lie in.
    """

    model_config = SpecModel.model_config | {"extra": "allow"}
    __pydantic_extra__: dict[str, CoatField]

    everything: CoatField | None = None
    """All that takes a finish (glass and what is faced with melamine don't) and isn't named more
    particularly: by the name of its stock, as a key here (`oak: oil`), or by one of the places
    below, which go before its stock.  Wooden runners stay bare, and what nobody sees: what another
    part covers, and of sheets the rear of a back and what is turned to walls, ceiling or floor."""
    carcass: CoatField | None = None
    """Sides, top, bottom, dividers, rails, shelves and back."""
    shelves: CoatField | None = None
    """Shelves, whatever `carcass` says."""
    back: CoatField | None = None
    """The back, whatever `carcass` says."""
    lipping: CoatField | None = None
    """Solid strips on front edges."""
    face_frame: CoatField | None = None
    """The face frame."""
    doors: CoatField | None = None
    """Doors."""
    door_panels: CoatField | None = None
    """The panels of framed doors, whatever `doors` says."""
    drawers: CoatField | None = None
    """Drawers, fronts and boxes."""
    drawer_fronts: CoatField | None = None
    """Their fronts, whatever `drawers` says."""
    drawer_boxes: CoatField | None = None
    """Their boxes, whatever `drawers` says."""
    base: CoatField | None = None
    """Plinth, toe board or legs."""
    worktop: CoatField | None = None
    """The worktop."""
    cornice: CoatField | None = None
    """The cornice."""
    scribes: CoatField | None = None
    """The strips that close the gaps to the walls."""

    def said(self) -> Iterator[tuple[str, CoatSpec]]:
        """What is said of each place and stock, places first."""
        for name, coat in self:
            if coat is not None:
                yield name, coat


def _way(value: Any) -> str:
    """How a finish is written: in a word, as the keys of one finish, or by places."""
    if not isinstance(value, dict):
        return "word"
    return "one" if "kind" in value else "places"


_Written = Annotated[
    Annotated[FinishWord, Tag("word")]
    | Annotated[CoatSpec, Tag("one")]
    | Annotated[FinishSpec, Tag("places")],
    Discriminator(_way),
]


class _OneOrPlaces:
    """Takes one finish for everything, in a word or as keys, or finishes by place."""

    def __get_pydantic_core_schema__(self, _: Any, handler: GetCoreSchemaHandler) -> CoreSchema:
        def whole(value: Any) -> Any:
            if isinstance(value, FinishSpec):
                return value
            coat = value if isinstance(value, CoatSpec) else CoatSpec(kind=value)
            return FinishSpec.model_validate({"everything": coat})

        return core_schema.no_info_after_validator_function(
            whole, handler.generate_schema(_Written)
        )


FinishField = Annotated[FinishSpec, _OneOrPlaces()]
"""What the unit is finished with: one finish for everything, or keys."""
