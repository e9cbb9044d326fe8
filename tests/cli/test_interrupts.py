"""Ctrl-C: the first ends the search, the second the command."""

from __future__ import annotations

import os
import signal
import threading

import pytest

from rodwright_cli.interrupts import INTERRUPTED, first_stops


def test_the_first_stops_and_the_second_leaves(capsys: pytest.CaptureFixture[str]) -> None:
    stopped: list[bool] = []
    before = signal.getsignal(signal.SIGINT)
    with pytest.raises(SystemExit) as left, first_stops(lambda: stopped.append(True)):
        os.kill(os.getpid(), signal.SIGINT)
        assert stopped == [True]
        os.kill(os.getpid(), signal.SIGINT)
    assert left.value.code == INTERRUPTED == 130
    assert stopped == [True]
    assert "Stopping: the best plan so far is taken." in capsys.readouterr().err
    assert signal.getsignal(signal.SIGINT) is before


def test_without_one_nothing_is_changed() -> None:
    before = signal.getsignal(signal.SIGINT)
    with first_stops(lambda: None):
        assert signal.getsignal(signal.SIGINT) is not before
    assert signal.getsignal(signal.SIGINT) is before


def test_another_thread_is_left_alone() -> None:
    entered: list[bool] = []

    def work() -> None:
        with first_stops(lambda: None):
            entered.append(True)

    thread = threading.Thread(target=work)
    thread.start()
    thread.join()
    assert entered == [True]
