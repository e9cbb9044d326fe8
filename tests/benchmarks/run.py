"""Rodwright against its budgets and ceilings, as ratios measured in one run.

    python tests/benchmarks/run.py             # rewrites RESULTS.md; 1 when a budget is missed
    python tests/benchmarks/run.py --ceilings  # fewer runs; 1 when a ceiling is passed

A budget is what a ratio should be at most; a ceiling is what it was lately, with room for noise:
passing it says that something has become dearer.  Both stand in ``limits.toml``.  Ratios are of
processor time, the least of several runs, so that other work on the machine matters little.
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
import tomllib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from importlib.metadata import version
from pathlib import Path

HERE = Path(__file__).parent
MODELS = HERE.parents[1] / "models"
LIMITS = tomllib.loads((HERE / "limits.toml").read_text(encoding="utf-8"))
SIZES = (50, 900)
"""Parts; specs may wish for a thousand."""
ENVIRONMENT = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
"""Compiled modules are kept, as on a user's machine."""


@dataclass(frozen=True)
class Result:
    """A ratio (or exponent): its key among the limits, what it is, and its figure."""

    key: str
    name: str
    figure: float

    @property
    def budget(self) -> float:
        return float(LIMITS[self.key]["budget"])

    @property
    def ceiling(self) -> float:
        return float(LIMITS[self.key]["ceiling"])


def seconds(words: Sequence[str], runs: int, *, folder: bool = False) -> float:
    """Least processor time of a command; with ``folder`` it gets a fresh one as last word."""
    times = []
    for _ in range(runs):
        with tempfile.TemporaryDirectory() as scratch:
            last = [str(Path(scratch) / "out")] if folder else []
            before = resource.getrusage(resource.RUSAGE_CHILDREN)
            subprocess.run(
                [*words, *last],
                check=True,
                env=ENVIRONMENT,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
            )
            after = resource.getrusage(resource.RUSAGE_CHILDREN)
        times.append(after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime)
    return min(times)


def figures(*words: str) -> dict[str, float]:
    done = subprocess.run(
        [sys.executable, str(HERE / "measured.py"), *words],
        check=True,
        stdout=subprocess.PIPE,
        text=True,
    )
    loaded: dict[str, float] = json.loads(done.stdout.splitlines()[-1])
    return loaded


def start_up() -> list[Result]:
    bare = seconds([sys.executable, "-c", "import pydantic, ruamel.yaml, typer"], 7)
    command = [sys.executable, "-m", "rodwright_cli"]
    check = [*command, "check", str(MODELS / "reading-alcove.yaml")]
    return [
        Result("help", "`--help` / bare imports", seconds([*command, "--help"], 7) / bare),
        Result("check", "`check` / bare imports", seconds(check, 7) / bare),
    ]


def cold_build(runs: int) -> Result:
    by_hand = seconds([sys.executable, str(HERE / "by_hand.py")], runs, folder=True)
    model = str(MODELS / "library-wall.yaml")
    command = [sys.executable, "-m", "rodwright_cli", "build", model, "--no-pictures", "-o"]
    name = "cold build with checks, 69 parts / script by hand"
    return Result("by-hand", name, seconds(command, runs, folder=True) / by_hand)


def pictures(runs: int) -> list[Result]:
    """Builds with pictures over builds without, turn by turn, so that both meet like conditions."""
    results = []
    for name in ("reading-alcove", "archive-wall"):
        command = [sys.executable, "-m", "rodwright_cli", "build", str(MODELS / f"{name}.yaml")]
        with_them, without = [], []
        for _ in range(runs):
            without.append(seconds([*command, "--no-pictures", "-o"], 1, folder=True))
            with_them.append(seconds([*command, "-o"], 1, folder=True))
        title = f"cold build of {name.replace('-', ' ')} with pictures / without"
        results.append(Result(f"pictures-{name}", title, min(with_them) / min(without)))
    return results


def rebuild(runs: int) -> Result:
    ratios = []
    for _ in range(runs):
        times = figures("rebuild")
        ratios.append(times["second"] / times["first"])
    return Result("rebuild", "rebuild after one width changed / first build", min(ratios))


def growth() -> list[Result]:
    first, last = (figures("growth", str(size)) for size in SIZES)
    decades = math.log(last["parts"] / first["parts"])
    counts = f"{first['parts']:.0f} to {last['parts']:.0f} parts"
    return [
        Result(
            f"growth-{stage}",
            f"growth of {stage}, {counts} (exponent)",
            math.log(last[stage] / first[stage]) / decades,
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
        "| what | measured | budget | ceiling | budget kept |",
        "| --- | ---: | ---: | ---: | --- |",
    ]
    lines += [
        f"| {result.name} | {result.figure:.2f} | {result.budget:.2f} | {result.ceiling:.2f} | "
        f"{'yes' if result.figure <= result.budget else '**no**'} |"
        for result in results
    ]
    return "\n".join(lines) + "\n"


def main() -> None:
    short = sys.argv[1:] == ["--ceilings"]
    runs = 2 if short else 3
    results = [*start_up(), cold_build(runs), *pictures(runs), rebuild(runs), *growth()]
    print(report(results))
    if not short:
        (HERE / "RESULTS.md").write_text(report(results), encoding="utf-8")
        sys.exit(any(result.figure > result.budget for result in results))
    passed = [each for each in results if each.figure > each.ceiling]
    for each in passed:
        print(f"{each.name}: {each.figure:.2f}, above its ceiling of {each.ceiling:.2f}")
    sys.exit(bool(passed))


if __name__ == "__main__":
    main()
