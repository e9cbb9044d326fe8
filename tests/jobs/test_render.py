"""Photographs as files: which are made, which stay, and what is told."""

from __future__ import annotations

import hashlib
import os
import re
import signal
import subprocess
import sys
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image

import rodwright
from rodwright.photo import abreast, films, grades, shots
from rodwright.photo.scene import Scene
from rodwright.photo.tracing import Quality, Tracer
from rodwright.problems import ProblemsError

_SPEC = """
title: Small box
size: {width: 400, height: 300, depth: 200}
stock: {ply: {kind: sheet, material: birch plywood, thickness: 18}}
carcass: {stock: ply, corners: butted}
options:
  - {name: In oak, change: {stock: {ply: {material: oak-veneered plywood}}}}
"""


@pytest.fixture(autouse=True)
def small(monkeypatch: pytest.MonkeyPatch) -> None:
    for table in (grades.QUALITIES, grades.FILMS):
        for grade in table:
            monkeypatch.setitem(table, grade, Quality(32, 2, 3))  # type: ignore[index]
    monkeypatch.setattr(shots, "_METERED", Quality(16, 2, 3))
    monkeypatch.setattr(films, "_ROUND", 3)
    monkeypatch.setattr(films, "_MOST", 9)


def _spec(folder: Path, text: str = _SPEC) -> rodwright.SpecFile:
    path = folder / "spec.yaml"
    path.write_text(text, encoding="utf-8")
    return rodwright.read_spec(path)


def _digests(folder: Path) -> dict[str, str]:
    return {
        path.name: hashlib.sha256(path.read_bytes()).hexdigest()
        for path in sorted((folder / "photographs").glob("*"))
    }


def test_the_same_seed_gives_the_same_files(tmp_path: Path) -> None:
    spec = _spec(tmp_path)
    made = rodwright.render(spec, tmp_path / "one")
    assert made.files == ("photographs/apart.jpg", "photographs/closed.jpg")
    rodwright.render(spec, tmp_path / "two", pictures=["closed", "apart"])
    assert _digests(tmp_path / "one") == _digests(tmp_path / "two")
    rodwright.render(spec, tmp_path / "two", seed=1, pictures=["closed"])
    assert _digests(tmp_path / "one")["closed.jpg"] != _digests(tmp_path / "two")["closed.jpg"]


def test_photographs_of_the_same_unit_stay_and_of_another_go(tmp_path: Path) -> None:
    out = tmp_path / "out"
    rodwright.render(_spec(tmp_path), out)
    rodwright.render(_spec(tmp_path), out, pictures=["turntable", "build-up", "options"])
    before = _digests(out)
    assert list(before) == [
        "apart.jpg",
        "build-up.webp",
        "closed.jpg",
        "option-1-small-box.jpg",
        "option-2-in-oak.jpg",
        "options.jpg",
        "turntable.webp",
    ]
    rodwright.render(_spec(tmp_path), out, pictures=["closed"], size=40)
    after = _digests(out)
    assert {name for name in before if before[name] != after[name]} == {"closed.jpg"}
    rodwright.render(_spec(tmp_path, _SPEC.replace("400", "410")), out, pictures=["closed"])
    assert list(_digests(out)) == ["closed.jpg"]


def test_a_picture_is_as_large_as_asked(tmp_path: Path) -> None:
    rodwright.render(_spec(tmp_path), tmp_path, pictures=["closed"], size=70)
    with Image.open(tmp_path / "photographs/closed.jpg") as picture:
        assert max(picture.size) == 70
        assert not picture.getexif()


def test_moving_pictures_move(tmp_path: Path) -> None:
    rodwright.render(_spec(tmp_path), tmp_path, pictures=["turntable", "build-up"])
    for name, least in (("turntable", 3), ("build-up", 6)):
        with Image.open(tmp_path / f"photographs/{name}.webp") as film:
            assert film.n_frames >= least  # type: ignore[attr-defined]
            first = film.convert("RGB").tobytes()
            film.seek(film.n_frames - 1)  # type: ignore[attr-defined]
            assert film.convert("RGB").tobytes() != first


def test_progress_is_told_with_the_time_left(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("rodwright.photo.tracing._PATHS_A_PASS", 1)
    told: list[str] = []
    rodwright.render(_spec(tmp_path), tmp_path, pictures=["closed"], progress=told.append)
    first, second = told
    assert first == "photographing: closed"
    assert re.fullmatch(r"photographing: closed, 50%, about \d+ (s|min) left", second)


def test_what_there_isn_t_is_told(tmp_path: Path) -> None:
    spec = _spec(tmp_path, _SPEC.split("options:")[0])
    with pytest.raises(ProblemsError) as told:
        rodwright.render(spec, tmp_path / "out", pictures=["open", "options"])
    assert [each.message for each in told.value.problems] == [
        "the spec has no options to show side by side",
        "nothing of the unit opens",
    ]
    assert not (tmp_path / "out").exists()


def test_a_photograph_that_was_changed_is_refused_before_the_work(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    rodwright.render(_spec(tmp_path), tmp_path, pictures=["closed"])
    path = tmp_path / "photographs/closed.jpg"
    with Image.open(path) as picture:
        data = BytesIO()
        picture.rotate(90).save(data, format="JPEG")
    path.write_bytes(data.getvalue())
    monkeypatch.setattr(shots, "Tracer", None)
    with pytest.raises(ProblemsError, match="is in the way"):
        rodwright.render(_spec(tmp_path), tmp_path, pictures=["closed"])


def test_without_the_libraries_nothing_is_written(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("rodwright.photo.tracing.find_spec", lambda _name: None)
    with pytest.raises(ProblemsError, match=r"pip install mitsuba pyoidn"):
        rodwright.render(_spec(tmp_path), tmp_path / "out")
    assert not (tmp_path / "out").exists()


def test_options_share_their_camera_and_light(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    scenes: list[Scene] = []
    trace = Tracer.trace

    def noted(self: Tracer, scene: Scene, *words: object, **more: object) -> object:
        scenes.append(scene)
        return trace(self, scene, *words, **more)  # type: ignore[arg-type]

    monkeypatch.setattr(abreast.Tracer, "trace", noted)
    rodwright.render(_spec(tmp_path), tmp_path, pictures=["options"])
    metered, one, other = scenes
    assert max(metered.camera.width, metered.camera.height) == 16
    assert one.camera == other.camera
    assert one.lamps == other.lamps
    assert one.bodies[0].surface is not other.bodies[0].surface


@pytest.mark.skipif(os.name != "posix", reason="Ctrl-C is sent as a signal")
def test_ctrl_c_keeps_nothing_half(tmp_path: Path) -> None:
    _spec(tmp_path)
    running = subprocess.Popen(
        [
            sys.executable,
            "-m",
            "rodwright_cli",
            "render",
            "spec.yaml",
            "-o",
            "out",
            "--fine",
            "--size=640",
        ],
        cwd=tmp_path,
        stderr=subprocess.PIPE,
        text=True,
        env=os.environ | {"PYTHONPATH": os.pathsep.join(sys.path)},
    )
    assert running.stderr is not None
    assert "photographing" in running.stderr.readline()  # there is a minute of it to come
    running.send_signal(signal.SIGINT)
    _, errors = running.communicate()
    assert running.returncode == 130
    assert "Traceback" not in errors
    assert not (tmp_path / "out").exists()
