"""Processes of their own for what takes long, so that a save is never kept waiting."""

from __future__ import annotations

import asyncio
import os
import pickle
import sys
import traceback
from asyncio.subprocess import DEVNULL, PIPE, Process
from collections.abc import Callable
from contextlib import suppress
from typing import IO, Any

_MOST_QUESTIONS = 60
"""Questions after which a process gives way to a fresh one: what libraries keep can't pile up."""
_NICER = 10
"""How far it stands back behind what draws (POSIX, nice)."""
_SIZE = 8
"""Bytes that say how long a message is."""
_RUN = (
    "import sys; sys.path[:] = {path!r}; from rodwright.jobs.look.workers import answer; answer()"
)


class Stopped(Exception):  # noqa: N818  # no error: it was meant, or told elsewhere
    """The process ended before it answered."""


class Failed(Exception):  # noqa: N818  # named for what happened
    """What was asked failed there; says how."""


class Worker:
    """One process that answers questions in turn, started when it is first asked.

    It ends with the one who asks, whatever becomes of that one: nobody asks it any more.  It is no
    child by fork, which threads don't allow, nor by ``multiprocessing``, which runs the script of
    who asks once more.
    """

    def __init__(self) -> None:
        """Nothing is started yet."""
        self._process: Process | None = None
        self._asked = 0
        self._turn = asyncio.Lock()

    async def ask(self, job: Callable[..., Any], *about: Any) -> Any:
        """What a function of a module gives there.

        Raises:
            Failed: the function raised, or no process can be started.
            Stopped: the process was stopped meanwhile, or died.
        """
        await self._turn.acquire()
        # Who asked may not wait for the answer any more; the next one asks when it has come.
        asked = asyncio.ensure_future(self._exchange(pickle.dumps((job, about))))
        asked.add_done_callback(self._answered)
        return await asyncio.shield(asked)

    def stop(self) -> None:
        """End it at once, whatever it is at; the next question starts it anew."""
        if self._process is not None:
            with suppress(ProcessLookupError):
                self._process.kill()
            self._process = None

    async def end(self) -> None:
        """Stop it, and see it gone."""
        process = self._process
        self.stop()
        if process is not None:
            await process.wait()

    async def _exchange(self, question: bytes) -> Any:
        if self._asked >= _MOST_QUESTIONS:
            await self.end()
        if self._process is None:
            self._process, self._asked = await _started(), 0
        process = self._process
        assert process.stdin is not None
        assert process.stdout is not None
        self._asked += 1
        try:
            process.stdin.write(_framed(question))
            await process.stdin.drain()
            size = int.from_bytes(await process.stdout.readexactly(_SIZE))
            done, answer = pickle.loads(await process.stdout.readexactly(size))
        except (asyncio.IncompleteReadError, ConnectionError) as error:
            if self._process is process:
                self.stop()
            raise Stopped from error
        if not done:
            raise Failed(answer)
        return answer

    def _answered(self, asked: asyncio.Future[Any]) -> None:
        self._turn.release()
        if not asked.cancelled():
            asked.exception()  # looked at, as nobody else may


async def _started() -> Process:
    try:
        return await asyncio.create_subprocess_exec(
            sys.executable,
            "-c",
            _RUN.format(path=sys.path),
            stdin=PIPE,
            stdout=PIPE,
            stderr=DEVNULL,
            # The terminal's Ctrl-C doesn't come to another session.
            start_new_session=True,
        )
    except OSError as error:
        raise Failed(f"no process can be started: {error.strerror}") from error


def answer() -> None:
    """Answer the questions that come in, until nobody asks any more."""
    asked, told = sys.stdin.buffer, os.fdopen(os.dup(1), "wb")
    os.dup2(os.open(os.devnull, os.O_WRONLY), 1)  # what a library prints is no answer
    if hasattr(os, "nice"):
        os.nice(_NICER)
    while size := asked.read(_SIZE):
        job, about = pickle.loads(asked.read(int.from_bytes(size)))
        try:
            said = (True, job(*about))
        except Exception as error:  # the one who asked tells it
            said = (False, traceback.format_exception_only(error)[-1].strip())
        _say(told, pickle.dumps(said))


def _say(told: IO[bytes], message: bytes) -> None:
    try:
        told.write(_framed(message))
        told.flush()
    except BrokenPipeError:
        os._exit(0)  # nobody listens, and there is nothing to be finished


def _framed(message: bytes) -> bytes:
    return len(message).to_bytes(_SIZE) + message
