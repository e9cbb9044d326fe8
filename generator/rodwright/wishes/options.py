"""The spec language's part about options: the same unit otherwise."""

from typing import Annotated, Any

from pydantic import Field

from rodwright.wishes.fields import InShort, SpecModel, Text

OptionName = Annotated[Text, Field(max_length=100)]
"""What an option is called."""
OptionNote = Annotated[Text, Field(max_length=500)]
"""What the client is told of an option."""


class FirstOptionSpec(SpecModel):
    """What the unit is called as the spec has it, beside its options."""

    name: OptionName
    """What it is called: `Painted sage`; the title unless said."""
    note: OptionNote | None = None
    """What the client is told of it, in a sentence."""


class OptionSpec(SpecModel):
    """The unit with some of its spec changed, to be shown and quoted beside it."""

    name: OptionName
    """What it is called: `In oak`, `Painted sage`; each differs from the others and from what the
    spec itself is called."""
    note: OptionNote | None = None
    """What the client is told of it, in a sentence."""
    change: Annotated[
        dict[str, Any],
        Field(json_schema_extra={"title": "a part of a spec", "additionalProperties": True}),
    ]
    """What is otherwise: keys of a spec, laid over the whole.  Keys that have keys of their own are
    merged, anything else is put in place of what there was (a list as a whole), and `null` takes a
    key out.  What comes of it has to be a whole spec, in the same `unit`, and makes something
    else than the spec and the options before it."""


OptionsField = Annotated[tuple[OptionSpec, ...], Field(max_length=20, strict=False)]
"""The options of a unit."""
FirstOptionField = Annotated[FirstOptionSpec, InShort(OptionName, "name")]
"""What the spec itself is called: a name, or keys."""
