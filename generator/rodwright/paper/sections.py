"""What a job book is made of: each section by its template and its data."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType
from typing import Any


@dataclass(frozen=True, slots=True)
class Section:
    """Pages of the job book: ``name`` is that of its template in ``paper/templates`` (without
    ``.typ``), ``title`` its heading and its line in the contents.

    ``data`` is what the template is given: plain lists, dicts, texts and numbers (JSON).  ``files``
    are pictures by the names that the data has for them.
    """

    name: str
    title: str
    data: Any
    files: Mapping[str, bytes] = field(default_factory=lambda: MappingProxyType({}))
