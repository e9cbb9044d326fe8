"""The spec language's part about who made a design, and when."""

import re
from datetime import date
from typing import Annotated

from pydantic import AfterValidator, Field
from pydantic_core import PydanticCustomError

from rodwright.wishes.fields import SpecModel, Text

Name = Annotated[Text, Field(max_length=80)]
"""A name that goes on one line."""
Number = Annotated[Text, Field(max_length=24)]
"""What a design is known by in a workshop: figures, letters, strokes."""
Revision = Annotated[Text, Field(max_length=12)]
"""Which state of a design it is."""


class MadeBySpec(SpecModel):
    """Who made the design, for drawings and the header of STEP files."""

    name: Name | None = None
    """Name of the maker, as the author of the files."""
    organisation: Name | None = None
    """Workshop or firm."""


def _date(text: str) -> str:
    if re.fullmatch(r"[0-9]{4}-[0-9]{2}-[0-9]{2}", text):
        try:
            return date.fromisoformat(text).isoformat()
        except ValueError:
            pass
    raise PydanticCustomError(
        "date",
        "`{text}` isn't a date",
        {"text": text, "remedy": "Write year, month and day: `2026-05-31`."},
    )


Date = Annotated[
    str,
    AfterValidator(_date),
    Field(json_schema_extra={"format": "date"}),
]
"""A day of the calendar, ISO 8601."""
