"""The spec language's part about options: the same unit otherwise."""

from typing import Annotated, Any

from pydantic import Field

from rodwright.wishes.fields import SpecModel, Text


class OptionSpec(SpecModel):
    """The unit with some of its spec changed, to be shown and quoted beside it."""

    name: Annotated[Text, Field(max_length=100)]
    """What it is called: `In oak`, `Painted sage`; each differs from the others and the title."""
    note: Annotated[Text, Field(max_length=500)] | None = None
    """What the client is told of it, in a sentence."""
    change: Annotated[
        dict[str, Any],
        Field(json_schema_extra={"title": "a part of a spec", "additionalProperties": True}),
    ]
    """What is otherwise: keys of a spec, laid over the whole.  Keys that have keys of their own are
    merged, anything else is put in place of what there was (a list as a whole), and `null` takes a
    key out.  What comes of it has to be a whole spec, in the same `unit`."""


OptionsField = Annotated[tuple[OptionSpec, ...], Field(max_length=20, strict=False)]
"""The options of a unit."""
