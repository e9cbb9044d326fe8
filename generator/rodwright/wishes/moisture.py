"""The spec language's part about the moisture that solid wood will live with."""

from typing import Annotated

from pydantic import Field, model_validator
from pydantic_core import PydanticCustomError

from rodwright.trade.movement import DAMPEST, DRIEST
from rodwright.wishes.fields import SpecModel

Moisture = Annotated[float, Field(ge=DRIEST, le=DAMPEST, strict=False)]
"""A moisture content in %, within what the formula for movement is good for."""


class MoistureSpec(SpecModel):
    """Moisture contents of solid wood in use, over the year.

    The defaults are for rooms heated in winter: the lower end of the Wood Handbook's range
    for interiors of most of the United States (table 13-1, 6 to 10 %, from memory), and
    the upper end of BS 1186-3's for joinery heated to 20-24 degrees (8 to 12 %, as quoted
    by English Woodlands Timber).
    """

    least: Moisture = 6.0
    """Moisture content at the driest, in % of the oven-dry weight; 6 to 14."""
    most: Moisture = 12.0
    """Moisture content at the dampest, in %; up to 14, as in rooms that are seldom heated."""

    @model_validator(mode="after")
    def _ordered(self) -> "MoistureSpec":
        if self.least > self.most:
            raise PydanticCustomError(
                "moisture",
                "`least` ({least} %) is more than `most` ({most} %)",
                {
                    "least": f"{self.least:g}",
                    "most": f"{self.most:g}",
                    "remedy": "Swap the two.",
                },
            )
        return self

    @property
    def range(self) -> tuple[float, float]:
        """Least and most, %."""
        return (self.least, self.most)
