"""What is worked out after the picture has processes of its own, which end with who asks."""

from __future__ import annotations

import asyncio
import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

import psutil
import pytest

from kit.looking import looking
from rodwright.jobs.look import later
from rodwright.jobs.look.workers import Failed, Stopped, Worker

MODEL = Path(__file__).parents[2] / "models" / "niche-shelf.yaml"


def test_it_answers_in_a_process_of_its_own_and_tells_what_failed() -> None:
    async def test() -> None:
        worker = Worker()
        there = await worker.ask(os.getpid)
        assert there != os.getpid()
        assert await worker.ask(os.getpid) == there
        with pytest.raises(Failed, match="ValueError: invalid literal"):
            await worker.ask(int, "many")
        await worker.end()
        assert not psutil.pid_exists(there)

    asyncio.run(test())


def test_one_that_is_stopped_says_so_and_is_started_anew() -> None:
    async def test() -> None:
        worker = Worker()
        first = await worker.ask(os.getpid)
        long = asyncio.ensure_future(worker.ask(time.sleep, 600))
        await asyncio.sleep(0.1)
        worker.stop()
        with pytest.raises(Stopped):
            await long
        assert await worker.ask(os.getpid) != first
        await worker.end()

    asyncio.run(test())


def test_who_waits_no_more_leaves_answers_in_their_order() -> None:
    async def test() -> None:
        worker = Worker()
        given_up = asyncio.ensure_future(worker.ask(time.sleep, 0.5))
        await asyncio.sleep(0.1)
        given_up.cancel()
        assert await worker.ask(int, "7") == 7
        await worker.end()

    asyncio.run(test())


def test_what_is_told_later_is_json_of_each_section() -> None:
    text, path = MODEL.read_text(encoding="utf-8"), str(MODEL)
    told = later.quick(text, path, {}) | later.lists(text, path)
    assert told.keys() == {"apart", "details", "dimensions", "lists"}
    assert json.loads(told["apart"]).keys() == json.loads(told["details"]).keys()
    assert json.loads(told["lists"])["tables"]


def test_what_hangs_on_each_figure_is_told_after_all_that_is_quick(tmp_path: Path) -> None:
    path = tmp_path / "niche.yaml"
    path.write_bytes(MODEL.read_bytes())

    async def test() -> None:
        async with looking(path, rounds=True) as there:
            tab = await there.tab()
            nudges = (await tab.until("nudges"))["nudges"]
            sections: dict[str, Any] = {}
            while "hanging" not in sections:
                sections |= (await tab.until("sections"))["sections"]
            assert sections.keys() >= {"details", "lists", "strength", "findings"}
            assert sections["hanging"].keys() <= {each["key"] for each in nudges}
            refs = {ref for each in sections["hanging"].values() for ref in each["changes"]}
            assert refs == sections["details"].keys()

    asyncio.run(test())


@pytest.mark.skipif(sys.platform == "win32", reason="signals of POSIX")
@pytest.mark.parametrize("by", [signal.SIGINT, signal.SIGTERM])
def test_it_says_where_it_is_and_ends_quietly_with_all_its_processes(by: signal.Signals) -> None:
    command = [sys.executable, "-u", "-m", "rodwright_cli", "look", str(MODEL), "--no-open"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, stderr=subprocess.PIPE) as look:
        assert look.stdout is not None
        assert look.stderr is not None
        assert look.stdout.readline().startswith(b"http://127.0.0.1:")
        while b" parts, " not in look.stdout.readline():
            pass
        workers = psutil.Process(look.pid).children()
        look.send_signal(by)
        assert look.wait() == 0
        assert look.stderr.read() == b""
    psutil.wait_procs(workers)
    assert not any(each.is_running() for each in workers)


def test_a_file_that_isnt_there_is_refused_plainly(tmp_path: Path) -> None:
    command = [sys.executable, "-m", "rodwright_cli", "look", str(tmp_path / "x.yaml")]
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 2
    assert "there is no file" in done.stderr
    assert not done.stdout
