"""How records of several kinds are told apart once they are written down."""

from __future__ import annotations

from typing import TYPE_CHECKING, Annotated, Any

if TYPE_CHECKING:
    from pydantic import GetCoreSchemaHandler
    from pydantic_core import CoreSchema


class ByKind:
    """Says of a union of dataclasses that their ``kind`` names the one that is meant.

    For :mod:`rodwright.unit.record`; pydantic is loaded by nothing else here.
    """

    def __get_pydantic_core_schema__(
        self, source: Any, handler: GetCoreSchemaHandler
    ) -> CoreSchema:
        from pydantic import Discriminator

        return handler.generate_schema(Annotated[source, Discriminator("kind")])
