"""Cutting plans against the published instances.

    cd tests
    python -m benchmarks.cutting                      # all sets; rewrites cutting/RESULTS.md
    python -m benchmarks.cutting 1d_scholl 2d_strip   # these sets; prints the table
    python -m benchmarks.cutting --every 5            # a fifth of each set; prints the table
    python -m benchmarks.cutting --keep FILE          # goes on where a run that kept FILE ended
    python -m benchmarks.cutting --keep FILE --table  # the page of what FILE keeps; runs nothing

One process, no limit of time: the whole takes an hour or more of processor time.
"""

from __future__ import annotations

import argparse
import json
from dataclasses import asdict
from pathlib import Path

from benchmarks.cutting.instances import SETS, read
from benchmarks.cutting.outcomes import Outcome, run
from benchmarks.cutting.table import report

RESULTS = Path(__file__).parent / "RESULTS.md"


def _kept(path: Path | None) -> dict[tuple[str, str], Outcome]:
    if not path or not path.exists():
        return {}
    rows = [Outcome(**json.loads(line)) for line in path.read_text(encoding="utf-8").splitlines()]
    return {(row.of, row.name): row for row in rows}


def main() -> None:
    parser = argparse.ArgumentParser(prog="benchmarks.cutting")
    parser.add_argument("sets", nargs="*", metavar="set", help=", ".join(SETS))
    parser.add_argument("--every", type=int, default=1, help="only every nth instance of a set")
    parser.add_argument("--keep", type=Path, help="where outcomes are kept as they come")
    parser.add_argument("--table", action="store_true", help="only the page of what is kept")
    asked = parser.parse_args()
    kept = _kept(asked.keep)
    if asked.table:
        RESULTS.write_text(report([*kept.values()]), encoding="utf-8")
        return
    outcomes = []
    for name in asked.sets or SETS:
        for instance in read(name)[:: asked.every]:
            outcome = kept.get((name, instance.name))
            if outcome is None:
                outcome = run(instance)
                print(f"{name} {instance.name}: {outcome.got} of {outcome.best} {outcome.wrong}")
                if asked.keep:
                    with asked.keep.open("a", encoding="utf-8") as file:
                        file.write(json.dumps(asdict(outcome)) + "\n")
            outcomes.append(outcome)
    page = report(outcomes)
    print(page)
    if not asked.sets and asked.every == 1:
        RESULTS.write_text(page, encoding="utf-8")


if __name__ == "__main__":
    main()
