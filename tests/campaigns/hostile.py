"""A campaign of hostile specs through the command, in process; rewrites RESULTS.md.

    nice python tests/campaigns/hostile.py                  # all of it
    python tests/campaigns/hostile.py --count 500           # a short one, RESULTS.md left alone
    python tests/campaigns/hostile.py --only 1234           # one case again, with what it said

Every case has to end with exit code 0, 1 or 2, take less than the limit of processor time, and
name file, line and column of everything it refuses.  Leaves with 1 when one doesn't.
"""

from __future__ import annotations

import argparse
import contextlib
import io
import os
import re
import signal
import sys
import tempfile
import time
from collections import Counter, defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date
from math import inf
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))
from campaigns.specs import KINDS, case

HERE = Path(__file__).parent
COUNT = 50_000
SEED = 20_261_126
SLOW = 5.0
"""Processor time that no case may take, s."""
HANGS = 20.0
"""Processor time after which a case is given up, s."""
NAME = "case.yaml"
_UNDER_WAY = "looking for a way in"
"""What is told on the error stream while the work goes on."""
_PLACED = re.compile(rf"{re.escape(NAME)}:(\d+):(\d+): \S")


class Hang(BaseException):
    """Raised in a case that takes too long; nothing that catches errors catches it."""


@dataclass(frozen=True)
class Outcome:
    """What became of one case."""

    number: int
    kind: str
    verb: str
    code: int
    seconds: float
    out: str
    err: str
    faults: tuple[str, ...]


@dataclass
class Tally:
    """What became of all of them."""

    codes: dict[str, Counter[int]] = field(default_factory=lambda: defaultdict(Counter))
    seconds: dict[str, list[float]] = field(default_factory=lambda: defaultdict(list))
    refusals: int = 0
    bad: list[Outcome] = field(default_factory=list)

    def add(self, outcome: Outcome) -> None:
        self.codes[outcome.kind][outcome.code] += 1
        self.seconds[outcome.kind].append(outcome.seconds)
        self.refusals += len(_PLACED.findall(outcome.err)) if outcome.code == 2 else 0
        if outcome.faults:
            self.bad.append(outcome)


def run(number: int, seed: int, slow: float = SLOW) -> Outcome:
    """Run one case in the present folder, where its spec is written; ``slow`` is the limit, s."""
    from rodwright_cli.main import main

    kind, verb, text = case(seed, number)
    Path(NAME).write_bytes(text.encode())
    out, err = io.StringIO(), io.StringIO()
    words, sys.argv = sys.argv, ["rodwright", verb, NAME]
    code: object = 0
    start = time.process_time()
    if slow < inf:
        signal.setitimer(signal.ITIMER_PROF, HANGS)
    try:
        with contextlib.redirect_stdout(out), contextlib.redirect_stderr(err):
            main()
    except SystemExit as error:
        code = error.code
    except Hang:
        code = -1
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
        sys.argv = words
    seconds = time.process_time() - start
    code = code if isinstance(code, int) else 0 if code is None else 1
    said = err.getvalue()
    faults = tuple(faults_of(code, seconds - slow, out.getvalue(), said, text))
    return Outcome(number, kind, verb, code, seconds, out.getvalue(), said, faults)


def faults_of(code: int, over: float, out: str, err: str, text: str) -> Iterator[str]:
    """What is wrong with how a case ended, ``over`` seconds past the limit."""
    if code not in (0, 1, 2):
        yield f"exit {code}: {err.strip().splitlines()[0] if err.strip() else 'a hang'}"
    if over > 0:
        yield f"{over:.1f} s over the limit"
    if any(
        (ord(letter) < 32 and letter != "\n") or 127 <= ord(letter) < 160 for letter in out + err
    ):
        yield "a control character on the terminal"
    if code != 2:
        return
    if not err:
        yield "refused without a word"
    lines = text.count("\n") + text.count("\r") + text.count("\x85") + 2
    lines += text.count("\u2028") + text.count("\u2029") + text.count("\x0b") + text.count("\x0c")
    for line in err.splitlines():
        if line.startswith("  ") or line == _UNDER_WAY:
            continue
        found = _PLACED.match(line)
        if found is None or not 1 <= int(found[1]) <= lines or int(found[2]) < 1:
            yield f"not placed: {line[:120]}"


def campaign(
    numbers: Sequence[int], seed: int, keep: Path | None = None, slow: float = SLOW
) -> Tally:
    """Run cases one after another in a scratch folder; bad ones are kept in ``keep``, if given."""
    tally = Tally()
    home = Path.cwd()
    before = signal.signal(signal.SIGPROF, _give_up)
    with tempfile.TemporaryDirectory() as scratch:
        os.chdir(scratch)
        try:
            for done, number in enumerate(numbers, start=1):
                outcome = run(number, seed, slow)
                tally.add(outcome)
                if outcome.faults and keep is not None:
                    (keep / f"{number}.yaml").write_bytes(Path(NAME).read_bytes())
                    with (keep / "faults.txt").open("a", encoding="utf-8") as file:
                        file.write(f"{number} {outcome.verb}: {'; '.join(outcome.faults)}\n")
                if done % 1000 == 0:
                    print(f"{done} done, {len(tally.bad)} bad", file=sys.stderr, flush=True)
        finally:
            os.chdir(home)
            signal.signal(signal.SIGPROF, before)
    return tally


def _give_up(*_: object) -> None:
    raise Hang


def report(tally: Tally, seed: int) -> str:
    """The campaign's table, in Markdown."""
    total = sum(sum(codes.values()) for codes in tally.codes.values())
    codes = sorted({0, 1, 2, 70, *(code for each in tally.codes.values() for code in each)})
    lines = [
        "# Hostile specs",
        "",
        f"Made by `python tests/campaigns/hostile.py` on {date.today().isoformat()}: {total:,} "
        f"specs through the command, in process, seed {seed}. `specs.py` draws them; a case is "
        "made again by its number.",
        "",
        "Exit 0: a unit without an error; 1: a unit with error findings; 2: refused, with file, "
        "line and column of every fault; 70: a fault of Rodwright's own. Seconds are processor "
        f"time, and none may reach {SLOW:g}.",
        "",
        "| kind of spec | "
        + " | ".join(f"exit {code}" for code in codes)
        + " | median s | longest s |",
        "| --- |" + " ---: |" * (len(codes) + 2),
    ]
    for kind in [*KINDS, "all"]:
        chosen = list(KINDS) if kind == "all" else [kind]
        seconds = sorted(each for name in chosen for each in tally.seconds[name])
        if not seconds:
            continue
        counts = " | ".join(
            f"{sum(tally.codes[name][code] for name in chosen):,}" for code in codes
        )
        lines.append(
            f"| {kind} | {counts} | {seconds[len(seconds) // 2]:.3f} | {seconds[-1]:.2f} |"
        )
    lines += [
        "",
        f"Refusals told: {tally.refusals:,}, every one placed."
        if not any("placed" in fault for each in tally.bad for fault in each.faults)
        else f"Refusals told: {tally.refusals:,}.",
    ]
    lines += ["", f"Cases that ended badly: {len(tally.bad)}."]
    lines += [f"- {each.number} ({each.verb}): {'; '.join(each.faults)}" for each in tally.bad[:50]]
    return "\n".join(lines) + "\n"


def main() -> None:
    asked = argparse.ArgumentParser(description=__doc__.split("\n\n")[0])
    asked.add_argument("--count", type=int, default=COUNT)
    asked.add_argument("--first", type=int, default=0)
    asked.add_argument("--seed", type=int, default=SEED)
    asked.add_argument("--only", type=int)
    asked.add_argument("--keep", type=Path, help="folder for the specs that end badly")
    words = asked.parse_args()
    if words.keep is not None:
        words.keep.mkdir(parents=True, exist_ok=True)
    if words.only is not None:
        with tempfile.TemporaryDirectory() as scratch:
            os.chdir(scratch)
            signal.signal(signal.SIGPROF, _give_up)
            outcome = run(words.only, words.seed)
            print(Path(NAME).read_text(encoding="utf-8"))
        print(f"{outcome.verb}: exit {outcome.code}, {outcome.seconds:.2f} s, {outcome.faults}")
        print(outcome.out, outcome.err)
        return
    tally = campaign(range(words.first, words.first + words.count), words.seed, words.keep)
    text = report(tally, words.seed)
    if words.count >= COUNT:
        (HERE / "RESULTS.md").write_text(text, encoding="utf-8")
    print(text)
    sys.exit(bool(tally.bad))


if __name__ == "__main__":
    main()
