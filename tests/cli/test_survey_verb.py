from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from rodwright.jobs.new import model_path

HEAVY = ("cadquery", "OCP", "vtkmodules", "trimesh", "scipy", "shapely", "openpyxl", "PIL")
CODE = (
    "import atexit, sys\n"
    f"atexit.register(lambda: print('HEAVY', [m for m in {HEAVY} if m in sys.modules]))\n"
    "from rodwright_cli.main import main\n"
    "main()"
)


def _run(*words: str) -> subprocess.CompletedProcess[str]:
    return subprocess.run(
        [sys.executable, "-c", CODE, *words], capture_output=True, text=True, check=False
    )


@pytest.fixture
def alcove(tmp_path: Path) -> Path:
    path = tmp_path / "alcove.yaml"
    path.write_text(model_path("reading-alcove").read_text(encoding="utf-8"), encoding="utf-8")
    return path


def test_a_survey_needs_nothing_heavy(alcove: Path) -> None:
    done = _run("survey", str(alcove))
    assert done.returncode == 0, done.stderr
    assert "HEAVY []" in done.stdout
    for words in ("rising diagonal", "surely goes in", "Bottom rail", "left over", "asbestos"):
        assert words in done.stdout


def test_a_wrong_reading(alcove: Path, tmp_path: Path) -> None:
    text = alcove.read_text(encoding="utf-8")
    alcove.write_text(text.replace("rising: 2366", "rising: 2380"), encoding="utf-8")
    done = _run("survey", str(alcove), "-o", str(tmp_path / "out"))
    assert done.returncode == 2
    assert "alcove.yaml:13:" in done.stderr
    assert "rising diagonal of 2380 mm contradicts" in done.stderr
    assert "rising diagonal" in done.stdout
    assert (tmp_path / "out" / "survey" / "survey.json").exists()
