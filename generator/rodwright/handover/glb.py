"""Binary glTF 2.0 (GLB): arrays, pictures and the tree that names them, as one file.

Section numbers are those of the glTF 2.0 specification.
"""

from __future__ import annotations

import json
import struct
from typing import Any, Literal

import numpy as np
from numpy.typing import NDArray

Kind = Literal["vertices", "indices", "other"]
"""What an array is for."""
_TARGETS = {"vertices": 34962, "indices": 34963}  # 5.11.5
_TYPES = {1: "SCALAR", 2: "VEC2", 3: "VEC3", 4: "VEC4"}
_COMPONENTS = {"<u2": 5123, "<u4": 5125, "<f4": 5126}  # 5.1.3
_RESTART = 65535
"""No index may be the greatest number of its type (3.7.2.1)."""
_MAGIC, _JSON, _BIN = 0x46546C67, 0x4E4F534A, 0x004E4942  # 4.4


class Glb:
    """A file in the making: ``tree`` is its JSON, whose lists of views and accessors this keeps."""

    def __init__(self, generator: str) -> None:
        self.tree: dict[str, Any] = {
            "asset": {"version": "2.0", "generator": generator},
            "buffers": [{"byteLength": 0}],
            "bufferViews": [],
            "accessors": [],
        }
        self._data = bytearray()

    def add(self, name: str, entry: dict[str, Any]) -> int:
        """Put an entry into one of the tree's lists; its number there."""
        entries = self.tree.setdefault(name, [])
        entries.append(entry)
        return len(entries) - 1

    def array(self, values: NDArray[Any], kind: Kind, *, bounds: bool = False) -> int:
        """The number of the accessor of an array, one or two-dimensional: whole numbers go in as
        unsigned short where they can, all others as float.  ``bounds`` are wanted of points and of
        times."""
        whole = np.issubdtype(values.dtype, np.integer)
        kept = ("<u2" if values.max() < _RESTART else "<u4") if whole else "<f4"
        stored = np.ascontiguousarray(values, dtype=kept)
        table = stored.reshape(len(stored), -1)
        accessor: dict[str, Any] = {
            "bufferView": self._view(stored.tobytes(), _TARGETS.get(kind)),
            "componentType": _COMPONENTS[kept],
            "count": len(table),
            "type": _TYPES[table.shape[1]],
        }
        if bounds:
            accessor["min"] = table.min(axis=0).tolist()
            accessor["max"] = table.max(axis=0).tolist()
        return self.add("accessors", accessor)

    def texture(self, picture: bytes, name: str) -> int:
        """The number of the texture that a JPEG is, repeated beyond its sides (5.26)."""
        view = self._view(picture, None)
        image = self.add("images", {"bufferView": view, "mimeType": "image/jpeg", "name": name})
        if "samplers" not in self.tree:
            # Linear, and from mipmaps where it is far.
            self.add("samplers", {"magFilter": 9729, "minFilter": 9987})
        return self.add("textures", {"source": image, "sampler": 0})

    def packed(self) -> bytes:
        """The whole file (4.4)."""
        self._align()
        self.tree["buffers"][0]["byteLength"] = len(self._data)
        text = json.dumps(self.tree, ensure_ascii=False, separators=(",", ":")).encode()
        text += b" " * (-len(text) % 4)
        size = 12 + 8 + len(text) + 8 + len(self._data)
        head = struct.pack("<III", _MAGIC, 2, size)
        chunks = (struct.pack("<II", len(text), _JSON), text)
        return b"".join((head, *chunks, struct.pack("<II", len(self._data), _BIN), self._data))

    def _view(self, data: bytes, target: int | None) -> int:
        self._align()
        view = {"buffer": 0, "byteOffset": len(self._data), "byteLength": len(data)}
        self._data += data
        return self.add("bufferViews", view | ({"target": target} if target else {}))

    def _align(self) -> None:
        self._data += bytes(-len(self._data) % 4)
