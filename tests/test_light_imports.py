"""Commands that need no solids must not load a geometry kernel, nor what a spec doesn't use."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

MODEL = Path(__file__).parents[1] / "models" / "reading-alcove.yaml"
RACK = MODEL.parent / "racks" / "workshop.yaml"
HEAVY = (
    "('cadquery', 'OCP', 'vtkmodules', 'trimesh', 'scipy', 'shapely', 'openpyxl', 'Pynite', "
    "'highspy', 'ortools', 'typst', 'ezdxf', 'segno', 'mitsuba', 'pyoidn', 'manifold3d', "
    "'aiohttp', 'pxr')"
)
SAY = f"import sys; print('HEAVY', [m for m in {HEAVY} if m in sys.modules])"


UNUSED = (
    "numpy.ma",
    "numpy.polynomial",
    "rodwright.handover",
    "rodwright.pictures",
    "rodwright.setout.around",
    "rodwright.setout.doors",
    "rodwright.setout.drawers",
    "rodwright.setout.slope",
    "rodwright.unit.record",
    "rodwright.wishes.reading.schema",
    "rodwright.wishes.reading.wording",
)
"""What `check` of the model has no use for: it has no base, no doors, no drawers and no slope, and
nothing is wrong with it."""


def _loaded(code: str, say: str = SAY) -> str:
    command = [
        sys.executable,
        "-c",
        f"import atexit, sys\natexit.register(lambda: exec({say!r}))\n{code}",
    ]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    (line,) = [line for line in done.stdout.splitlines() if line.startswith("HEAVY")]
    return line


def _code(words: list[str]) -> str:
    return f"sys.argv = ['rodwright', *{words!r}]\nfrom rodwright_cli.main import main\nmain()"


@pytest.mark.parametrize(
    "words",
    [
        ["--help"],
        ["cut", "--help"],
        ["book", "--help"],
        ["quote", "--help"],
        ["--version"],
        ["check", str(MODEL)],
        ["parts", str(MODEL)],
        ["strength", str(MODEL)],
        ["strength", str(MODEL), "--json"],
        ["check", str(MODEL), "--json"],
        ["parts", str(MODEL), "--json"],
        ["schema"],
        ["schema", "unit"],
        ["schema", "rack"],
        ["schema", "rates"],
        ["rack", "show", str(RACK)],
        ["rack", "show", str(RACK), "--json"],
        ["new"],
        ["rule"],
        ["span", "birch plywood", "18", "--load", "books", "--ends", "housed"],
        ["rule", "--json"],
    ],
)
def test_command(words: list[str]) -> None:
    assert _loaded(_code(words)) == "HEAVY []"


def test_rates(tmp_path: Path) -> None:
    assert _loaded(_code(["rates", "new", str(tmp_path / "rates.yaml")])) == "HEAVY []"


def test_what_a_spec_doesnt_use_isnt_loaded() -> None:
    say = f"import sys; print('HEAVY', [m for m in {UNUSED!r} if m in sys.modules])"
    assert _loaded(_code(["check", str(MODEL)]), say) == "HEAVY []"


def test_reading_a_unit_back() -> None:
    assert _loaded("import rodwright\nrodwright.read_unit") == "HEAVY []"


def test_package() -> None:
    assert _loaded("import rodwright") == "HEAVY []"


def test_what_a_job_takes_is_counted_without_a_kernel() -> None:
    """Tables are made with openpyxl, and what tells the cuts in their order knows of tables."""
    code = (
        "import rodwright\n"
        "from rodwright.quote.rates import Rates\n"
        "from rodwright.quote.takings import takings_of\n"
        f"unit = rodwright.set_out(rodwright.read_spec({str(MODEL)!r}))\n"
        "rates = Rates('EUR', {}, {}, {}, 0, 0, 0, 0, '', (), 30, 8, 2)\n"
        "assert takings_of(unit, None, rates).operations"
    )
    assert _loaded(code) == "HEAVY ['openpyxl']"


def test_the_live_page_draws_a_unit_without_a_kernel() -> None:
    """A save isn't kept waiting for what takes seconds to load: only the checks' own process is."""
    code = (
        "from pathlib import Path\n"
        "import rodwright.jobs.look\n"
        "from rodwright.jobs.look.following import State, read_state\n"
        "from rodwright.jobs.look.watching import Seen\n"
        f"path = Path({str(MODEL)!r})\n"
        "state = read_state(path, Seen(path.read_bytes()), State())\n"
        "assert state.made.model.parts, state.troubles"
    )
    loaded = _loaded(code)
    assert loaded == "HEAVY ['manifold3d']"


def test_a_build_is_refused_before_a_kernel_is_loaded(tmp_path: Path) -> None:
    (tmp_path / "manifest.json").write_text("mine")
    words = ["build", str(MODEL), "-o", str(tmp_path), "--no-pictures"]
    code = (
        f"sys.argv = ['rodwright', *{words!r}]\nfrom rodwright_cli.main import main\n"
        "try:\n    main()\nexcept SystemExit as left:\n    assert left.code == 2"
    )
    assert _loaded(code) == "HEAVY ['openpyxl']"
