"""The files of a build: a row for each kind of file, in the order in which they are written.

What needs a geometry kernel loads it when it writes, so that a build can be refused before.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from enum import StrEnum
from pathlib import Path

from rodwright.checks.findings import Finding
from rodwright.handover.edge_list import edge_list
from rodwright.handover.findings_json import findings_json
from rodwright.handover.list_files import edges_csv, hardware_csv, lists_xlsx, parts_csv
from rodwright.handover.lists import hardware_list
from rodwright.handover.lists_json import parts_json
from rodwright.handover.unit_json import unit_json
from rodwright.unit import Unit
from rodwright.unit.shop_part import PartsKind


class Kind(StrEnum):
    """What files are for, as the terminal lists them."""

    SOLIDS = "solids for the CNC shop"
    MESHES = "meshes"
    LISTS = "lists"
    MODEL = "the whole model"
    PICTURES = "pictures"


@dataclass(frozen=True, slots=True)
class Content:
    """What the files are made from: a unit with its parts as :mod:`rodwright.unit.laid` lays them,
    whether single parts and workings are as cut or as finished, what the checks found, and who is
    told of each step."""

    unit: Unit
    parts: PartsKind = "cut"
    findings: tuple[Finding, ...] = ()
    progress: Callable[[str], None] = lambda _: None


@dataclass(frozen=True, slots=True)
class Export:
    """One kind of file: what it is for, a regular expression of the names it may have (paths in
    the build's folder, with ``/``), and what writes it into that folder.

    Nothing of another name is ever taken for a file of a build.
    """

    kind: Kind
    names: str
    write: Callable[[Content, Path], object]


def _file(kind: Kind, name: str, made: Callable[[Content], bytes | None]) -> Export:
    """An export of one file, left out where there is nothing to say."""

    def write(content: Content, folder: Path) -> None:
        data = made(content)
        if data is not None:
            (folder / name).write_bytes(data)

    return Export(kind, re.escape(name), write)


def _unit_step(content: Content, folder: Path) -> None:
    from rodwright.handover.step import write_step_unit

    write_step_unit(content.unit, folder / "unit.step")


def _parts_step(content: Content, folder: Path) -> None:
    from rodwright.handover.part_files import write_parts_step

    write_parts_step(content.unit, content.parts, folder / "parts")


def _unit_glb(content: Content) -> bytes:
    from rodwright.handover.gltf import unit_glb

    return unit_glb(content.unit)


def _unit_stl(content: Content) -> bytes:
    from rodwright.handover.stl import unit_stl

    return unit_stl(content.unit)


def _parts_stl(content: Content, folder: Path) -> None:
    from rodwright.handover.part_files import write_parts_stl

    write_parts_stl(content.unit, content.parts, folder / "parts")


def _hardware_csv(content: Content) -> bytes | None:
    return hardware_csv(content.unit) if hardware_list(content.unit) else None


def _edges_csv(content: Content) -> bytes | None:
    return edges_csv(content.unit) if edge_list(content.unit) else None


def _pictures(content: Content, folder: Path) -> None:
    from rodwright.pictures.all_views import write_pictures

    write_pictures(content.unit, folder, content.progress)


_PART = r"parts/(?:[^/]+/)?[A-Z]+[0-9]+[^/]*"
"""The name of a single part's file, but for its suffix: in its stock's folder, its ref first."""
_PICTURE = r"(?:assembled|exploded|loaded|opened|views)[a-z0-9-]*\.(?:png|svg)"

EXPORTS = (
    Export(Kind.SOLIDS, r"unit\.step", _unit_step),
    Export(Kind.SOLIDS, rf"{_PART}\.step", _parts_step),
    _file(Kind.MESHES, "unit.glb", _unit_glb),
    _file(Kind.MESHES, "unit.stl", _unit_stl),
    Export(Kind.MESHES, rf"{_PART}\.stl", _parts_stl),
    _file(Kind.LISTS, "parts-list.csv", lambda content: parts_csv(content.unit, content.parts)),
    _file(Kind.LISTS, "parts-list.xlsx", lambda content: lists_xlsx(content.unit, content.parts)),
    _file(Kind.LISTS, "parts-list.json", lambda content: parts_json(content.unit, content.parts)),
    _file(Kind.LISTS, "hardware.csv", _hardware_csv),
    _file(Kind.LISTS, "edges.csv", _edges_csv),
    _file(Kind.MODEL, "unit.json", lambda content: unit_json(content.unit)),
    _file(Kind.MODEL, "findings.json", lambda content: findings_json(content.findings)),
    Export(Kind.PICTURES, _PICTURE, _pictures),
)
"""Every export there is.  To add one: a module under `handover/` that makes it, and a row here."""

BUILD_FILES = re.compile("|".join(f"(?:{export.names})" for export in EXPORTS))
"""The names that files of a build have."""
