"""Rodwright against its budgets, as ratios measured in one run; rewrites RESULTS.md.

    python tests/benchmarks/run.py

Ratios are of processor time, the least of several runs, so that other work on the machine
matters little.  Leaves with 1 when a budget is missed.
"""

from __future__ import annotations

import json
import math
import os
import platform
import resource
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from importlib.metadata import version
from pathlib import Path

HERE = Path(__file__).parent
MODELS = HERE.parents[1] / "models"
SIZES = (50, 500, 5000)
ENVIRONMENT = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
"""Compiled modules are kept, as on a user's machine."""


@dataclass(frozen=True)
class Result:
    """A ratio (or exponent) and the most it may be."""

    name: str
    figure: float
    budget: float

    @property
    def kept(self) -> bool:
        return self.figure <= self.budget


def seconds(words: Sequence[str], runs: int, *, folder: bool = False) -> float:
    """Least processor time of a command; with ``folder`` it gets a fresh one as last word."""
    times = []
    for _ in range(runs):
        with tempfile.TemporaryDirectory() as scratch:
            last = [str(Path(scratch) / "out")] if folder else []
            before = resource.getrusage(resource.RUSAGE_CHILDREN)
            subprocess.run([*words, *last], check=True, env=ENVIRONMENT,
                           stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)  # fmt: skip
            after = resource.getrusage(resource.RUSAGE_CHILDREN)
        times.append(after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime)
    return min(times)


def figures(*words: str) -> dict[str, float]:
    done = subprocess.run([sys.executable, str(HERE / "measured.py"), *words], check=True,
                          stdout=subprocess.PIPE, text=True)  # fmt: skip
    loaded: dict[str, float] = json.loads(done.stdout.splitlines()[-1])
    return loaded


def start_up() -> list[Result]:
    bare = seconds([sys.executable, "-c", "import pydantic, ruamel.yaml, typer"], 7)
    command = [sys.executable, "-m", "rodwright_cli"]
    check = [*command, "check", str(MODELS / "reading-alcove.yaml")]
    return [
        Result("`--help` / bare imports", seconds([*command, "--help"], 7) / bare, 3.0),
        Result("`check` / bare imports", seconds(check, 7) / bare, 3.0),
    ]


def cold_build() -> Result:
    by_hand = seconds([sys.executable, str(HERE / "by_hand.py")], 3, folder=True)
    model = str(MODELS / "library-wall.yaml")
    command = [sys.executable, "-m", "rodwright_cli", "build", model, "--no-pictures", "-o"]
    name = "cold build with checks, 69 parts / script by hand"
    return Result(name, seconds(command, 3, folder=True) / by_hand, 0.5)


def pictures() -> list[Result]:
    """Builds with pictures over builds without, turn by turn, so that both meet like conditions."""
    results = []
    for name, budget in (("reading-alcove", 1.6), ("archive-wall", 2.2)):
        command = [sys.executable, "-m", "rodwright_cli", "build", str(MODELS / f"{name}.yaml")]
        with_them, without = [], []
        for _ in range(3):
            without.append(seconds([*command, "--no-pictures", "-o"], 1, folder=True))
            with_them.append(seconds([*command, "-o"], 1, folder=True))
        title = f"cold build of {name.replace('-', ' ')} with pictures / without"
        results.append(Result(title, min(with_them) / min(without), budget))
    return results


def rebuild() -> Result:
    ratios = []
    for _ in range(3):
        times = figures("rebuild")
        ratios.append(times["second"] / times["first"])
    return Result("rebuild after one width changed / first build", min(ratios), 0.25)


def growth() -> list[Result]:
    rows = [figures("growth", str(size)) for size in SIZES]
    first, last = rows[0], rows[-1]
    decades = math.log(last["parts"] / first["parts"])
    return [
        Result(
            f"growth of {stage}, {first['parts']:.0f} to {last['parts']:.0f} parts (exponent)",
            math.log(last[stage] / first[stage]) / decades,
            1.1,
        )
        for stage in ("set-out", "solids", "meshes", "collisions", "export", "memory")
    ]


def processor() -> str:
    for line in Path("/proc/cpuinfo").read_text().splitlines():
        if line.startswith("model name"):
            return line.split(":")[1].strip()
    return platform.processor() or "unknown processor"


def report(results: Sequence[Result]) -> str:
    libraries = ", ".join(f"{name} {version(name)}" for name in ("cadquery", "trimesh", "vtk"))
    lines = [
        "# Benchmark results",
        "",
        f"Made by `python tests/benchmarks/run.py` on {date.today().isoformat()}: {processor()}, "
        f"{os.cpu_count()} cores, {platform.system()} {platform.machine()}, "
        f"Python {platform.python_version()}, {libraries}.",
        "Ratios of processor time within one run; an exponent of 1 is growth in proportion.",
        "",
        "| what | measured | budget | kept |",
        "| --- | ---: | ---: | --- |",
    ]
    lines += [
        f"| {result.name} | {result.figure:.2f} | {result.budget:.2f} | "
        f"{'yes' if result.kept else '**no**'} |"
        for result in results
    ]
    return "\n".join(lines) + "\n"


def main() -> None:
    results = [*start_up(), cold_build(), *pictures(), rebuild(), *growth()]
    text = report(results)
    (HERE / "RESULTS.md").write_text(text, encoding="utf-8")
    print(text)
    sys.exit(not all(result.kept for result in results))


if __name__ == "__main__":
    main()
