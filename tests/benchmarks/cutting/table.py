"""The outcomes as a table of sets, and below it each instance that isn't as good as is known."""

from __future__ import annotations

import os
import platform
from collections.abc import Sequence
from datetime import date
from importlib.metadata import version

from benchmarks.cutting.instances import SETS, read
from benchmarks.cutting.outcomes import Outcome


def report(outcomes: Sequence[Outcome]) -> str:
    """The page, of all outcomes there are."""
    libraries = ", ".join(f"{name} {version(name)}" for name in ("highspy", "ortools", "numpy"))
    lines = [
        "# Cutting plans against published instances",
        "",
        f"Made by `python -m benchmarks.cutting` (in `tests/`) on {date.today().isoformat()}: "
        f"{os.cpu_count()} cores, {platform.system()} {platform.machine()}, "
        f"Python {platform.python_version()}, {libraries}. Outcomes as they were "
        "kept, some older than the last of the code; what was not run is missing. Each plan was "
        "held to the "
        "checker in `tests/kit/cutting_checker.py`. [Sources of the instances](data/README.md).",
        "",
        "*At the best* is as good as the best value known, *optimum known* of how many instances "
        "it is proven to be the optimum and *at it* how many of these plans reach it; *proven* is "
        "what the plans prove of themselves. *Worst* is the largest share by which a plan is worse "
        "than the best known. Seconds are of processor time.",
        "",
        "| set | instances run | at the best | optimum known | at it | proven | worst | wrong "
        "| seconds, mean | seconds, most |",
        "| --- | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: | ---: |",
    ]
    sets = {name: [each for each in outcomes if each.of == name] for name in SETS}
    lines += [_row(name, each) for name, each in sets.items() if each]
    lines += [_row("all", outcomes), *_behind(outcomes)]
    return "\n".join(lines) + "\n"


def _row(name: str, outcomes: Sequence[Outcome]) -> str:
    known = [each for each in outcomes if each.known]
    seconds = [each.seconds for each in outcomes]
    cells = (
        name,
        f"{len(outcomes)} of {len(read(name)) if name in SETS else sum(map(len, map(read, SETS)))}",
        sum(each.reached for each in outcomes),
        len(known),
        sum(each.reached for each in known),
        sum(each.proven for each in outcomes),
        _share(max(each.worse for each in outcomes)),
        sum(bool(each.wrong) for each in outcomes),
        f"{sum(seconds) / len(seconds):.1f}",
        f"{max(seconds):.1f}",
    )
    return f"| {' | '.join(map(str, cells))} |"


def _share(worse: float) -> str:
    return "none" if worse == float("inf") else f"{max(worse, 0):.2%}"


def _behind(outcomes: Sequence[Outcome]) -> list[str]:
    told = [each for each in outcomes if not each.reached or each.wrong]
    if not told:
        return []
    lines = [
        "",
        "## Not at the best known",
        "",
        "| set | instance | best known | optimum | plan | proven limit | worse | what is wrong |",
        "| --- | --- | ---: | --- | ---: | ---: | ---: | --- |",
    ]
    for each in told:
        got = "none" if each.got is None else f"{each.got:.10g}"
        lines.append(
            f"| {each.of} | {each.name} | {each.best:.10g} | {'yes' if each.known else 'open'} | "
            f"{got} | {each.limit:.10g} | {_share(each.worse)} | {each.wrong} |"
        )
    return lines
