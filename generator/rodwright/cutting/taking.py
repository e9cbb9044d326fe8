"""What a plan takes out of the maker's rack, and what comes back into it.

Whoever makes a plan writes it down as a :class:`Taking`; once the wood is cut, the rack file is
changed by it.  A taking says what each entry was when the plan was made, so that a rack that has
changed since is noticed.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import asdict, dataclass, fields
from typing import Any, Literal

from rodwright.cutting.supplies import Flaw

_LETTERS = "ACDEFGHJKLMNPQRTUVWXY3479"
"""What marks are made of: letters and digits that aren't taken for each other in pencil."""
_MARK = 4


@dataclass(frozen=True, slots=True)
class Used:
    """How many of one entry of the rack are cut, and what that entry was: its
    :attr:`rodwright.cutting.rack.Entry.fingerprint`."""

    entry: str
    count: int
    was: str


@dataclass(frozen=True, slots=True)
class Comes:
    """An offcut that goes into the rack under ``name``, which is what its label says.

    ``length`` runs along the grain, ``width`` across it (0: a length of bought section, whose
    other side is ``section``), in mm.  ``grained`` is False for what has no grain.
    ``show_faces`` are how many good faces it has, ``density`` is in kg/m3.  ``cut_from`` says of
    what it is left, in words.  ``flaws`` are what it has of flaws, from its own near corner.
    """

    name: str
    kind: Literal["sheet", "board", "length"]
    material: str
    thickness: float
    length: float
    width: float
    section: float = 0.0
    grained: bool = True
    show_faces: int = 2
    sawn_thickness: float | None = None
    density: float = 0.0
    cut_from: str = ""
    flaws: tuple[Flaw, ...] = ()


@dataclass(frozen=True, slots=True)
class Taking:
    """What one plan takes from a rack file and puts into it.

    ``rack`` is the rack file's path, seen from the folder of the plan's document (with ``/``), or
    whole where there is no such way.  ``plan`` is the plan's identity (:func:`identity`).
    """

    rack: str
    plan: str
    uses: tuple[Used, ...] = ()
    comes: tuple[Comes, ...] = ()


def identity(rack: str, asked: Iterable[str]) -> str:
    """The identity of a plan: sixteen digits of the SHA-256 of the rack file's text and of all that
    was asked and answered (pieces, supplies, layouts), as text.

    The same plan made twice has the same identity, one made after the rack changed another.
    """
    digest = hashlib.sha256()
    for text in (rack, *asked):
        part = text.encode()
        digest.update(f"{len(part)}:".encode())
        digest.update(part)
    return digest.hexdigest()[:16]


def offcut_name(plan: str, number: int) -> str:
    """What the label of a plan's offcut says: four characters of the plan and a number, ``KD7F-3``,
    so that offcuts of two plans made from one rack are called differently."""
    rest = int(plan, 16)
    mark = ""
    for _ in range(_MARK):
        rest, letter = divmod(rest, len(_LETTERS))
        mark += _LETTERS[letter]
    return f"{mark}-{number}"


def taking_record(taking: Taking) -> dict[str, Any]:
    """A taking as plain data for JSON."""
    return asdict(taking)


def taking_of(record: Any) -> Taking:
    """The taking that a record is of.

    Raises:
        ValueError: it is none; the message says what is wrong with it.
    """
    whole = _fields(record, Taking, "the plan's `rack`")
    uses = tuple(Used(**_fields(each, Used, "an entry of `uses`")) for each in _list(whole, "uses"))
    comes = tuple(_comes_of(each) for each in _list(whole, "comes"))
    if any(each.count < 1 for each in uses):
        raise ValueError("an entry of `uses` takes less than one")
    if any(each.length <= 0 or each.width < 0 or each.thickness <= 0 for each in comes):
        raise ValueError("an entry of `comes` has no size")
    return Taking(whole["rack"], whole["plan"], uses, comes)


def _comes_of(record: Any) -> Comes:
    found = _fields(record, Comes, "an entry of `comes`")
    flaws = tuple(Flaw(**_fields(each, Flaw, "a flaw of `comes`")) for each in found["flaws"])
    length, width = found["length"], found["width"]
    for each in flaws:
        along = 0 <= each.x < each.x + each.length <= length + _NOISE
        across = 0 <= each.y < each.y + each.width <= width + _NOISE
        if not along or (width and not across):
            raise ValueError("a flaw of `comes` isn't in its offcut")
    return Comes(**found | {"flaws": flaws})


_NOISE = 1e-5
"""mm."""
_KINDS: dict[str, tuple[type, ...]] = {
    "rack": (str,),
    "plan": (str,),
    "entry": (str,),
    "count": (int,),
    "was": (str,),
    "name": (str,),
    "kind": (str,),
    "material": (str,),
    "thickness": (int, float),
    "length": (int, float),
    "width": (int, float),
    "section": (int, float),
    "density": (int, float),
    "grained": (bool,),
    "show_faces": (int,),
    "sawn_thickness": (int, float, type(None)),
    "cut_from": (str,),
    "flaws": (list,),
    "x": (int, float),
    "y": (int, float),
    "why": (str,),
    "uses": (list,),
    "comes": (list,),
}


def _fields(record: Any, model: type[Used | Comes | Flaw | Taking], what: str) -> dict[str, Any]:
    """The fields of a dataclass from a record that has them all and no others."""
    if not isinstance(record, Mapping):
        raise ValueError(f"{what} isn't a record")
    known = [field.name for field in fields(model)]
    if set(record) != set(known):
        raise ValueError(f"{what} hasn't just the keys {', '.join(known)}")
    for key in known:
        value, kind = record[key], _KINDS[key]
        if not isinstance(value, kind) or (isinstance(value, bool) and bool not in kind):
            raise ValueError(f"`{key}` of {what} is of the wrong kind")
    if "kind" in record and record["kind"] not in ("sheet", "board", "length"):
        raise ValueError(f"`kind` of {what} is none that there is")
    return {key: record[key] for key in known}


def _list(record: Mapping[str, Any], key: str) -> list[Any]:
    found: list[Any] = record[key]
    return found
