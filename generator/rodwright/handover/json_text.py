"""JSON laid out for people and programs alike."""

from __future__ import annotations

import json
from collections.abc import Mapping
from typing import Any


def json_text(document: Mapping[str, Any]) -> bytes:
    """A document as UTF-8: one line for each key, and one for each record of a list.

    So a change in one part is a change in one line, and the fast encoder does the work.
    """
    lines = (f"{_line(key)}: {_value(value)}" for key, value in document.items())
    return ("{\n" + ",\n".join(lines) + "\n}\n").encode()


def _value(value: Any) -> str:
    if isinstance(value, list | tuple) and value and isinstance(value[0], Mapping):
        return "[\n " + ",\n ".join(map(_line, value)) + "\n]"
    return _line(value)


def _line(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False)
