"""The published instances as pieces and stock; ``data/README.md`` has their sources."""

from __future__ import annotations

import json
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from rodwright.cutting import Piece, Supply

DATA = Path(__file__).parent / "data"
SETS = tuple(sorted(path.stem for path in DATA.glob("*.json")))
RULES = ("kerf", "turning", "stages", "first_cut")


@dataclass(frozen=True)
class Instance:
    """A published problem: ``best`` is the best value known, the optimum where ``proven``; nothing
    is better than ``bound``.  ``rules`` are those that it is to be cut by."""

    of: str
    name: str
    objective: str
    best: float
    bound: float
    proven: bool
    pieces: tuple[Piece, ...]
    stock: tuple[Supply, ...]
    rules: dict[str, Any]
    published: dict[str, float]

    @property
    def count(self) -> int:
        """How many pieces there are."""
        return sum(piece.count for piece in self.pieces)

    @property
    def flat(self) -> bool:
        """Whether it has one dimension only."""
        return not self.stock[0].width


def read(name: str) -> list[Instance]:
    """All instances of a set."""
    document = json.loads((DATA / f"{name}.json").read_text(encoding="utf-8"))
    return [_instance(name, each) for each in document["instances"]]


def _instance(of: str, record: dict[str, Any]) -> Instance:
    items = [dict(zip(record["columns"], row, strict=True)) for row in record["items"]]
    sheet = record["stock"][0]
    room = sheet.get("width", 0) * (sheet["length"] or 0)
    pieces = tuple(
        Piece(
            f"p{number}",
            item["length"],
            item.get("width", 0),
            item.get("count") or room // (item["length"] * item["width"]),
            item.get("turning"),
            value=item.get("value"),
        )
        for number, item in enumerate(items, 1)
    )
    stock = tuple(
        Supply(
            f"s{number}",
            each["length"] or 0,
            each.get("width", 0),
            each.get("count"),
            each.get("cost", 1),
        )
        for number, each in enumerate(record["stock"], 1)
    )
    rules = {
        key: record[key] for key in ("kerf", "turning", "stages", "first_cut") if key in record
    }
    published = {key: record[key] for key in record if key.startswith("published")}
    return Instance(
        of=of,
        name=record["name"],
        objective=record["objective"],
        best=record["best"],
        bound=record["bound"],
        proven=record["proven"],
        pieces=pieces,
        stock=stock,
        rules=rules,
        published=published,
    )
