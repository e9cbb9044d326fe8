"""The kinds of files that makers write, as messages speak of them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class FileKind:
    """``name`` is what such a file is; ``keys`` are what it begins with, ``example`` is one line
    of one.  ``has_trade_words`` says whether what other workshops call things is looked up where a
    key isn't known: its table has the keys of a spec.  ``called`` is what the whole file is called
    in a sentence, if not by its name."""

    name: str
    keys: str
    example: str
    has_trade_words: bool = False
    called: str = ""

    @property
    def whole(self) -> str:
        """The file in a sentence."""
        return f"the {self.called or self.name}"


SPEC = FileKind("spec", "`title:`, `stock:` and `carcass:`", "title: Reading alcove", True)
RACK = FileKind("rack", "`unit:` and `stock:`", "first_cut: along")
RATES = FileKind("rates", "`currency:` and `hour:`", "fitters: 2", called="rates file")
