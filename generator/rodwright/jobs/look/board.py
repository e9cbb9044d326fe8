"""What all pages are told: the newest of each kind, read by each page at its own pace."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass, field, fields
from typing import Any

from rodwright.page import document as page


@dataclass(eq=False)
class Reader:
    """How far a page has read, and what it needn't be told again."""

    stamp: int = 0
    shapes: set[str] = field(default_factory=set)
    textures: set[str] = field(default_factory=set)


class Board:
    """Messages, pinned one of a kind: a newer one takes the place of the one before.

    A page that comes late or is slow so gets the newest of each, in the order in which they were
    pinned, and nothing that isn't so any more.
    """

    def __init__(self) -> None:
        """Nothing is known yet."""
        self._stamp = 0
        self._pinned: dict[str, tuple[int, str]] = {}
        self._shapes: dict[str, str] = {}
        self._surfaces: frozenset[str] = frozenset()
        self._textures: dict[str, str] = {}

    def tell(self, kind: str, **message: Any) -> None:
        """Pin a message."""
        self._pin(kind, json.dumps({"kind": kind, **message}, ensure_ascii=False))

    def tell_model(self, version: int, model: page.Model) -> None:
        """Pin a model; what was told of the one before goes."""
        for kind in [each for each in self._pinned if each.startswith("of ")]:
            del self._pinned[kind]
        head = {each.name: getattr(model, each.name) for each in fields(model)}
        del head["shapes"]
        self._shapes = {
            name: self._shapes.get(name) or _json(shape) for name, shape in model.shapes.items()
        }
        self._surfaces = frozenset(model.surfaces)
        self._textures = {
            name: each for name, each in self._textures.items() if name in self._surfaces
        }
        # The last brace is left open: the shapes that a page lacks go in before it.
        self._pin("model", f'"version":{version},"model":{_json(head)[:-1]}')

    def tell_sections(self, version: int, sections: Mapping[str, str]) -> None:
        """Pin sections, by name, each as JSON."""
        for name, told in sections.items():
            self._pin(f"of {name}", _sections(version, {name: told}))

    def tell_failed(self, version: int, section: str, message: str) -> None:
        """Pin that a section couldn't be worked out."""
        told = {"kind": "failed", "version": version, "section": section, "message": message}
        self._pin(f"of {section}", json.dumps(told, ensure_ascii=False))

    def tell_textures(self, version: int, textures: Mapping[str, str]) -> None:
        """Pin what surfaces look like, by name, each as JSON; beside those told before."""
        self._textures.update(textures)
        self._pin("of textures", str(version))

    @property
    def textures(self) -> frozenset[str]:
        """Names of the surfaces whose looks are known."""
        return frozenset(self._textures)

    def next(self, reader: Reader) -> str | None:
        """What a page hasn't read yet; None where it has read all."""
        later = [
            (stamp, kind, text)
            for kind, (stamp, text) in self._pinned.items()
            if stamp > reader.stamp
        ]
        if not later:
            return None
        reader.stamp, kind, text = min(later)
        if kind == "model":
            new = {name: each for name, each in self._shapes.items() if name not in reader.shapes}
            reader.shapes = set(self._shapes)
            reader.textures &= self._surfaces
            return f'{{"kind":"model",{text},"shapes":{_joined(new)}}}}}'
        if kind == "of textures":
            unread = {
                name: each for name, each in self._textures.items() if name not in reader.textures
            }
            reader.textures |= unread.keys()
            return _sections(int(text), {"textures": _joined(unread)})
        return text

    def _pin(self, kind: str, text: str) -> None:
        self._stamp += 1
        self._pinned[kind] = (self._stamp, text)


def _sections(version: int, sections: Mapping[str, str]) -> str:
    return f'{{"kind":"sections","version":{version},"sections":{_joined(sections)}}}'


def _joined(members: Mapping[str, str]) -> str:
    """JSON texts by name as one JSON object."""
    return "{" + ",".join(f"{json.dumps(name)}:{text}" for name, text in members.items()) + "}"


def _json(told: object) -> str:
    return json.dumps(told, default=asdict, ensure_ascii=False, separators=(",", ":"))
