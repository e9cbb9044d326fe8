"""Where the live page itself fails it says so and goes on."""

from __future__ import annotations

from pathlib import Path
from typing import NoReturn

import pytest

from kit.looking import SHELF, looking, run
from rodwright.jobs.look import session, workers
from rodwright.jobs.look.nudging import Nudging
from rodwright.jobs.look.workers import Failed, Worker

FAILED = "Rodwright itself failed: ZeroDivisionError: of all things"


def _fail(*_: object) -> NoReturn:
    raise ZeroDivisionError("of all things")


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    path = tmp_path / "shelf.yaml"
    path.write_text(SHELF, encoding="utf-8")
    return path


def test_figures_that_cant_be_found_cost_the_picture_nothing(
    spec: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            await tab.until("nudges")
            with monkeypatch.context() as patch:
                patch.setattr(session, "nudges_of", _fail)
                spec.write_text(SHELF.replace("900", "950"), encoding="utf-8")
                assert (await tab.until("model", version=2))["model"]["parts"]
                while not (troubles := (await tab.until("troubles"))["troubles"]):
                    pass
            assert [each["message"] for each in troubles] == [FAILED]
            assert [each.message for each in there.readings[-1].troubles] == [FAILED]
            spec.write_text(SHELF.replace("900", "960"), encoding="utf-8")
            assert (await tab.until("troubles", version=3))["troubles"] == []
            await tab.until("nudges", version=3)

    run(test)


def test_a_wish_that_fails_is_refused_and_the_page_stays(
    spec: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    async def test() -> None:
        async with looking(spec) as there:
            tab = await there.tab()
            await tab.until("nudges")
            with monkeypatch.context() as patch:
                patch.setattr(Nudging, "undo", _fail)
                await tab.socket.send_json({"kind": "undo"})
                assert (await tab.until("refused"))["message"].startswith(FAILED)
            wish = {"kind": "nudge", "key": "size/width", "value": "610", "version": 1, "drag": ""}
            await tab.socket.send_json(wish)
            await tab.until("model", version=2)

    run(test)


def test_a_worker_that_cant_be_started_says_so(monkeypatch: pytest.MonkeyPatch) -> None:
    async def test() -> None:
        worker = Worker()
        with monkeypatch.context() as patch:
            patch.setattr(workers.sys, "executable", "/nowhere/python")
            with pytest.raises(Failed, match="no process can be started: No such file"):
                await worker.ask(len, "four")
        assert await worker.ask(len, "four") == 4
        await worker.end()

    run(test)
