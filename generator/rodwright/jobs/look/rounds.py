"""After each picture: what is worked out then, in its order, while no newer save comes."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path

from rodwright.jobs.look import later
from rodwright.jobs.look.board import Board
from rodwright.jobs.look.following import Made
from rodwright.jobs.look.workers import Failed, Stopped, Worker
from rodwright.page import document as page

_AFTER_THE_PICTURE = 0.4
"""Seconds that the picture is given to be drawn, before anything else wants a processor."""
_QUIET = 1.0
"""Seconds without a save before a cutting plan is begun."""
_ENDED = "the process that worked it out has ended; the next save starts it anew"


class Rounds:
    """Works out what is told after the picture, and drops what a newer save makes old.

    Words, checks and plan each have a process: checks load a geometry kernel, for which words
    needn't wait.  What is begun when a save comes is ended and forgotten, but for the cutting plan,
    which takes long and is stopped.
    """

    def __init__(self, path: Path, board: Board, news: Callable[[], None]) -> None:
        """``news`` is called whenever something was pinned to the board."""
        self._path, self._board, self._news = str(path), board, news
        self._words, self._checks, self._cuts = Worker(), Worker(), Worker()
        self._round: asyncio.Task[None] | None = None
        self._cutting = False

    async def warm(self) -> None:
        """Have what is asked for first loaded before it is; what can't be is told of once it is
        asked for."""
        for worker, load in ((self._words, later.warm_words), (self._checks, later.warm_checks)):
            with suppress(Failed, Stopped):
                await worker.ask(load)

    def begin(self, made: Made) -> None:
        """A picture was told: go on from there."""
        if self._round is not None:
            self._round.cancel()
        if self._cutting:
            self._cuts.stop()
        self._round = asyncio.create_task(self._run(made))

    async def end(self) -> None:
        """End all of it."""
        if self._round is not None:
            self._round.cancel()
        for worker in (self._words, self._checks, self._cuts):
            await worker.end()

    async def _run(self, made: Made) -> None:
        await asyncio.sleep(_AFTER_THE_PICTURE)
        await asyncio.gather(self._say(made), self._check(made))
        await asyncio.sleep(_QUIET)
        await asyncio.gather(self._cut(made), self._tell_hanging(made))

    async def _cut(self, made: Made) -> None:
        self._cutting = True
        try:
            await self._tell(made, ("cutting",), self._cuts, later.cutting)
        finally:
            self._cutting = False

    async def _say(self, made: Made) -> None:
        quick = ("apart", "details", "dimensions")
        await self._tell(made, quick, self._words, later.quick, dict(made.places))
        await self._tell_textures(made)
        await self._tell(made, ("lists",), self._words, later.lists)
        await self._tell(made, ("opening",), self._words, later.opening)
        await self._tell(made, ("strength",), self._words, later.strength)

    async def _check(self, made: Made) -> None:
        await self._tell(made, ("findings",), self._checks, later.findings)

    async def _tell(
        self,
        made: Made,
        sections: tuple[str, ...],
        worker: Worker,
        job: Callable[..., later.Known],
        *more: object,
    ) -> None:
        try:
            known = await worker.ask(job, made.text, self._path, *more)
        except (Failed, Stopped) as failed:
            for section in sections:
                self._board.tell_failed(made.version, section, str(failed) or _ENDED)
        else:
            self._board.tell_sections(made.version, known)
        self._news()

    async def _tell_textures(self, made: Made) -> None:
        had = self._board.textures
        if made.model.surfaces.keys() <= had:
            return
        try:
            told = await self._words.ask(later.textures, made.text, self._path, had)
        except (Failed, Stopped) as failed:
            self._board.tell_failed(made.version, "textures", str(failed) or _ENDED)
        else:
            self._board.tell_textures(made.version, told)
        self._news()

    async def _tell_hanging(self, made: Made) -> None:
        told: dict[str, page.Hanging] = {}
        begin: int | None = 0
        try:
            while begin is not None:
                job = later.hanging
                more, begin = await self._words.ask(job, made.text, self._path, begin)
                told |= more
        except (Failed, Stopped) as failed:
            self._board.tell_failed(made.version, "hanging", str(failed) or _ENDED)
        else:
            self._board.tell_sections(made.version, {"hanging": later.as_json(told)})
        self._news()
