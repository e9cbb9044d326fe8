"""A file's content put in its place, and what is left where that fails."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from rodwright.jobs.look.saving import replace_content
from rodwright.problems import ProblemsError

resource = pytest.importorskip("resource", reason="limits of POSIX")
OLD, NEW = b"height: 900\n", b"height: 1000  # and a line that is longer than it was\n"


@contextmanager
def _room_for(size: int) -> Iterator[None]:
    """No file may grow beyond so many bytes: as with a disk that is full."""
    soft, hard = resource.getrlimit(resource.RLIMIT_FSIZE)
    resource.setrlimit(resource.RLIMIT_FSIZE, (size, hard))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_FSIZE, (soft, hard))


@pytest.fixture(params=["alone", "with another name"])
def file(request: pytest.FixtureRequest, tmp_path: Path) -> Path:
    path = tmp_path / "shelf.yaml"
    path.write_bytes(OLD)
    if request.param != "alone":
        os.link(path, tmp_path / "same.yaml")
    return path


def test_it_holds_the_new_content_under_all_its_names(file: Path) -> None:
    names, mode = sorted(file.parent.iterdir()), file.stat().st_mode
    for content in (NEW, OLD[:4], NEW):
        replace_content(file, content)
        assert {each.read_bytes() for each in file.parent.iterdir()} == {content}
    assert sorted(file.parent.iterdir()) == names
    assert file.stat().st_mode == mode


def test_without_room_it_is_as_it_was(file: Path) -> None:
    names = sorted(file.parent.iterdir())
    with _room_for(len(NEW) - 5), pytest.raises(ProblemsError, match="can't be written") as refused:
        replace_content(file, NEW)
    assert "it is as it was" in refused.value.problems[0].remedy
    assert {each.read_bytes() for each in file.parent.iterdir()} == {OLD}
    assert sorted(file.parent.iterdir()) == names
