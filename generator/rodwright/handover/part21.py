"""The clear text encoding of the exchange structure, ISO 10303-21, for schema AP242."""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

_SCHEMA = "AP242_MANAGED_MODEL_BASED_3D_ENGINEERING_MIM_LF { 1 0 10303 442 1 1 4 }"
_APPLICATION = (
    "#1 = APPLICATION_PROTOCOL_DEFINITION('international standard',"
    "'ap242_managed_model_based_3d_engineering',2014,#2);",
    "#2 = APPLICATION_CONTEXT('managed model based 3d engineering');",
)
_NOT_STATED = "not stated"


@dataclass(frozen=True, slots=True)
class Header:
    """What a file says of itself (ISO 10303-21, 8.2): ``time_stamp`` is ISO 8601."""

    description: str
    time_stamp: str
    author: str = ""
    organisation: str = ""


class ExchangeFile:
    """A file as it grows; entities are named ``#1``, ``#2`` and so on.

    It begins with the application protocol, ``#1``, and its context, ``#2``.
    """

    context = "#2"

    def __init__(self) -> None:
        self._lines = list(_APPLICATION)
        self.last = len(_APPLICATION)

    def add(self, entity: str) -> str:
        """Append an entity and give its name."""
        name = self.reserve()
        self.define(name, entity)
        return name

    def reserve(self) -> str:
        """A name for an entity that is defined later."""
        self.last += 1
        return f"#{self.last}"

    def define(self, name: str, entity: str) -> None:
        """Append the entity of a reserved name."""
        self._lines.append(f"{name} = {entity};")

    def place(self) -> int:
        """Where the next entity goes, for :meth:`move_last`."""
        return len(self._lines)

    def move_last(self, since: int, to: int) -> None:
        """Move what was added since a place before what was added since an earlier one."""
        self._lines[to:] = [*self._lines[since:], *self._lines[to:since]]

    def append(self, text: str, entities: int) -> None:
        """Append the text of some entities, numbered on from ``last``."""
        self._lines.append(text)
        self.last += entities

    def write(self, path: Path, header: Header) -> None:
        """Write the file.

        Raises:
            OSError: it can't be written.
        """
        opening = (
            f"ISO-10303-21;\nHEADER;\nFILE_DESCRIPTION(({text(header.description)}),'2;1');\n"
            f"FILE_NAME({text(path.name)},'{header.time_stamp}',"
            f"({text(header.author or _NOT_STATED)}),({text(header.organisation or _NOT_STATED)}),"
            f"'Open CASCADE','Rodwright','');\n"
            f"FILE_SCHEMA(('{_SCHEMA}'));\nENDSEC;\nDATA;\n"
        )
        data = "\n".join(self._lines)
        path.write_bytes(f"{opening}{data}\nENDSEC;\nEND-ISO-10303-21;\n".encode("ascii"))


def text(plain: str) -> str:
    r"""A text in apostrophes, as ISO 10303-21 (6.4.3) writes it: ``\X2\00E9\X0\`` for é."""
    encoded = plain.replace("\\", "\\\\").replace("'", "''")
    encoded = re.sub(r"[^\x20-\x7e\U00010000-\U0010ffff]+", _two_byte, encoded)
    return "'" + re.sub(r"[\U00010000-\U0010ffff]+", _four_byte, encoded) + "'"


def _two_byte(found: re.Match[str]) -> str:
    return "\\X2\\" + "".join(f"{ord(letter):04X}" for letter in found[0]) + "\\X0\\"


def _four_byte(found: re.Match[str]) -> str:
    return "\\X4\\" + "".join(f"{ord(letter):08X}" for letter in found[0]) + "\\X0\\"


def reals(values: Iterable[float]) -> str:
    """Reals in brackets, as ISO 10303-21 (6.4.2) writes them: always with a point."""
    return "(" + ",".join(map(_real, values)) + ")"


def _real(value: float) -> str:
    plain = repr(float(value) + 0.0)  # no negative zero
    mantissa, exponent, power = plain.upper().partition("E")
    return (mantissa if "." in mantissa else f"{mantissa}.") + exponent + power
