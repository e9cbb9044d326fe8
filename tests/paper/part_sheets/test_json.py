"""The document of the part sheets, and the page that tells its keys."""

from __future__ import annotations

import json
import re
from pathlib import Path
from typing import Any

from kit.panels import unit_of
from kit.samples import worked_part
from rodwright.paper.part_sheets import part_sheets, sheets_json
from rodwright.setout import set_out
from rodwright.wishes import read_spec

ROOT = Path(__file__).parents[3]
PAGE = (ROOT / "docs" / "part-sheets.md").read_text(encoding="utf-8")


def keys(found: Any) -> set[str]:
    """All keys of a document but those that are names of surfaces."""
    if isinstance(found, dict):
        here = {key for key in found if not re.search(r"face$|edge$|end$|side$", key)}
        return here.union(*map(keys, found.values()))
    return set().union(*map(keys, found)) if isinstance(found, list) else set()


def test_every_key_stands_on_the_page() -> None:
    units = [
        unit_of(worked_part()),
        *(
            set_out(read_spec(ROOT / "models" / f"{name}.yaml"))
            for name in ("archive-wall", "pottery-dresser")
        ),
    ]
    told = set(re.findall(r"`([^`]+)`", PAGE)) | {"x", "y", "z"}
    for unit in units:
        document = json.loads(sheets_json(unit, part_sheets(unit)))
        assert list(document) == ["schema_version", "title", "lengths", "sheets"]
        assert keys(document) - told == set()
        kinds = {
            entry["kind"]
            for sheet in document["sheets"]
            for operation in sheet["operations"]
            for entry in operation["entries"]
        }
        assert kinds - told == set()
