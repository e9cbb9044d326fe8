"""Builds, surveys and ways in, killed before every single move of their files."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from io import BytesIO
from pathlib import Path

import pytest

from kit.builds import write_build
from kit.kills import killed_before
from rodwright.handover.moving import PREFIX
from rodwright.setout import set_out
from rodwright.wishes.reading.files import SpecFile, parse_spec

SPEC = """\
title: {title}
size: {{width: 800, height: 900, depth: 250}}
opening: {{width: 810, height: 910, depth: 260}}
stock:
  case: {{kind: sheet, material: birch plywood, thickness: 18}}
carcass: {{stock: case}}
interior: {{shelves: {{count: {shelves}}}}}
way_in: {{doors: [{{width: 850, height: 1980}}], ceiling: 2400}}
"""
ONE, OTHER = (
    parse_spec(SPEC.format(title=title, shelves=shelves), "a.yaml")
    for title, shelves in (("One", 1), ("Other", 2))
)


# Stand-ins for what takes long: neither the content of a file nor its time matters here.


class Blank:
    """A picture with nothing in it."""

    def __init__(self, *_: object) -> None:
        pass

    def save(self, file: BytesIO, **_: object) -> None:
        file.write(b"PNG")


def draw_nothing(_: object, folder: Path) -> None:
    for kind in ("svg", "png"):
        (folder / f"opening.{kind}").write_bytes(kind.encode())


def write_nothing(*words: object) -> None:
    """What writes a file under the last word it is given, as an exporter does."""
    path = words[-1]
    assert isinstance(path, Path)
    path.write_bytes(path.name.encode())


def no_mesh(*_: object) -> bytes:
    return b"no mesh"


def write_parts(spec: SpecFile, folder: Path) -> None:
    write_build(set_out(spec), folder)


def write_survey(spec: SpecFile, folder: Path) -> None:
    from rodwright.jobs.survey import survey, write_survey

    write_survey(survey(spec), folder)


def write_way(spec: SpecFile, folder: Path) -> None:
    from rodwright.jobs.way_in import way_in, write_way_in

    write_way_in(way_in(set_out(spec)), folder)


def tree(folder: Path) -> dict[str, bytes]:
    return {
        path.relative_to(folder).as_posix(): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


@pytest.mark.parametrize("writer", [write_parts, write_survey, write_way])
def test_killed_before_every_move(
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    writer: Callable[[SpecFile, Path], None],
) -> None:
    for name in ("step.write_step_unit", "part_files.write_step_part"):
        monkeypatch.setattr(f"rodwright.handover.{name}", write_nothing)
    # Geometry libraries keep threads, and what is forked from a process with threads may hang.
    for name in ("gltf.unit_glb", "stl.unit_stl", "part_files.part_stl"):
        monkeypatch.setattr(f"rodwright.handover.{name}", no_mesh)
    monkeypatch.setattr("rodwright.pictures.opening.write_opening", draw_nothing)
    monkeypatch.setattr("rodwright.pictures.paint.to_image", Blank)
    target, aside = tmp_path / "out", tmp_path / "aside"
    writer(OTHER, aside)
    writer(ONE, target)
    one, other = tree(target), tree(aside)
    assert one != other
    (target / "notes.txt").write_bytes(b"mine")
    mine = {"notes.txt": b"mine"}
    kills = 0
    while killed_before(kills, partial(writer, OTHER, target), ("replace",)):
        hidden = [path for path in target.rglob(f"{PREFIX}*") if path.is_dir()]
        assert hidden or tree(target) in (one | mine, other | mine)
        writer(ONE, target)
        assert tree(target) == one | mine
        kills += 1
    assert tree(target) == other | mine
    # The journal, every file that goes and every one that comes, with their manifests.
    assert kills == 1 + len(one) + len(other)
