"""`rodwright render`, as the maker runs it."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import pytest

from rodwright.photo import grades, shots
from rodwright.photo.tracing import Quality
from rodwright_cli.main import main

_SPEC = """\
title: Niche shelf
size: {width: 800, height: 900, depth: 250}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18}
carcass: {stock: case}
interior:
  shelves: {count: 2}
"""


class _Maker:
    def __init__(
        self, folder: Path, patch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
    ) -> None:
        self.folder, self._patch, self._capsys = folder, patch, capsys
        patch.chdir(folder)

    def run(self, *words: str, spec: str = _SPEC) -> tuple[int, str, str]:
        (self.folder / "niche.yaml").write_text(spec)
        self._patch.setattr(sys, "argv", ["rodwright", "render", "niche.yaml", "-o", "out", *words])
        with pytest.raises(SystemExit) as left:
            main()
        said = self._capsys.readouterr()
        assert isinstance(left.value.code, int)
        return left.value.code, said.out, said.err


@pytest.fixture
def maker(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> _Maker:
    for grade in grades.QUALITIES:
        monkeypatch.setitem(grades.QUALITIES, grade, Quality(24, 1, 3))
    monkeypatch.setattr(shots, "_METERED", Quality(16, 2, 3))
    return _Maker(tmp_path, monkeypatch, capsys)


def test_it_says_which_files_it_wrote(maker: _Maker) -> None:
    code, out, err = maker.run()
    assert code == 0
    assert out.split() == ["out/photographs/apart.jpg", "out/photographs/closed.jpg"]
    assert err.splitlines()[0] == "photographing: closed"
    code, out, _ = maker.run("--of", "closed", "--draft", "--json")
    document = json.loads(out)
    assert (code, document["files"]) == (0, ["photographs/closed.jpg"])


def test_a_unit_that_isn_t_sound_is_photographed_and_told(maker: _Maker) -> None:
    too_large = _SPEC + "opening: {width: 790, height: 910, depth: 260}\n"
    code, out, _ = maker.run("--of", "closed", spec=too_large)
    assert code == 1
    assert "error" in out
    assert (maker.folder / "out/photographs/closed.jpg").exists()


def test_what_can_t_be_asked_is_told(maker: _Maker) -> None:
    assert maker.run("--draft", "--fine")[0] == 2
    assert maker.run("--size", "10")[0] == 2
    code, out, err = maker.run("--of", "open")
    assert (code, out) == (2, "")
    assert err.splitlines() == [
        "nothing of the unit opens",
        "  Ask for `closed` or `apart`, or give it doors.",
    ]
    assert not (maker.folder / "out").exists()


def test_without_mitsuba_it_says_how_to_get_it(
    maker: _Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("rodwright.photo.tracing.find_spec", lambda _name: None)
    code, out, err = maker.run()
    assert (code, out) == (2, "")
    assert err.splitlines() == [
        "mitsuba and pyoidn, which photographs are made with, aren't installed",
        "  Install them: `pip install mitsuba pyoidn`.",
    ]
