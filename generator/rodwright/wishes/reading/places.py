"""Where each key and value of a spec stands in its file."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import NamedTuple

from rodwright.problems import KeyPath


class Place(NamedTuple):
    """A line and a column, both counted from 1."""

    line: int
    column: int


@dataclass(frozen=True, slots=True)
class Places:
    """The places of a file's keys and values.

    ``values`` holds every value, the whole file as ``()`` among them; a group or a list is
    found at the key it belongs to.  ``keys`` holds every key.
    """

    values: Mapping[KeyPath, Place]
    keys: Mapping[KeyPath, Place]

    def of_value(self, path: KeyPath) -> Place:
        """Place of the value at ``path``, or of what it would stand in if it isn't written."""
        while path not in self.values:
            path = path[:-1]
        return self.values[path]

    def of_key(self, path: KeyPath) -> Place:
        """Place of the key at the end of ``path``; of the value where there is no such key."""
        return self.keys.get(path) or self.of_value(path)
