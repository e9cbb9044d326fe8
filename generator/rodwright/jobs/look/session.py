"""One run of the live page: the file followed, pages told, wishes done."""

from __future__ import annotations

import asyncio
import gc
import signal
from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import asdict, dataclass, replace
from pathlib import Path
from time import monotonic

from rodwright.jobs.look.board import Board
from rodwright.jobs.look.doors import Door, door
from rodwright.jobs.look.figures import nudges_of
from rodwright.jobs.look.following import State, own_fault, read_state
from rodwright.jobs.look.nudging import Nudging, digest_of
from rodwright.jobs.look.rounds import Rounds
from rodwright.jobs.look.serving import Server
from rodwright.jobs.look.talks import NudgeWish, Talk, Wish
from rodwright.jobs.look.watching import Seen, Watched, is_file
from rodwright.page.document import Trouble
from rodwright.problems import Problem, ProblemsError
from rodwright.wishes.reading.documents import read_content

_BREATH = 0.25
"""Seconds that a file which makes nothing is given to become whole: editors write in steps."""
_LONGEST_BREATH = 2.0
"""Seconds after which it is told all the same, though it still changes."""

_GLANCE = 0.02
"""Seconds between looks at whether a change has been told."""


@dataclass(frozen=True, slots=True)
class Served:
    """Where the page is: its addresses, that for this machine first, and whether this machine
    alone can come to it."""

    addresses: tuple[str, ...]
    loopback: bool


@dataclass(frozen=True, slots=True)
class Reading:
    """What came of a save: how many parts were made, if any, what is wrong, and in how many
    seconds that was known."""

    parts: int | None
    troubles: tuple[Trouble, ...]
    seconds: float


def look(
    path: Path | str,
    *,
    host: str = "127.0.0.1",
    port: int = 0,
    ready: Callable[[Served], object],
    read: Callable[[Reading], object] = lambda _: None,
) -> None:
    """Serve the page of a spec file until interrupted (SIGINT, SIGTERM).

    ``host`` is the address of this machine at which it is served, ``port`` 0 for a free one.
    ``ready`` is told where it is, ``read`` what came of each save.

    Raises:
        ProblemsError: there is no such file, it can't be read, or the page can't be served there.
    """
    spec, at = Path(path), door(host)
    read_content(spec)
    if not is_file(spec):
        raise ProblemsError(
            [Problem(f"`{spec}` isn't a file, so it can't be followed", "Give a spec file.")]
        )
    # It runs for hours, and the command line has put the search for garbage off.
    collecting = gc.isenabled()
    gc.enable()
    try:
        asyncio.run(Session(spec, at, read).run(port, ready))
    finally:
        if not collecting:
            gc.disable()


class Session:
    """A file, its board, its server, and what is worked out beside."""

    def __init__(self, path: Path, at: Door, read: Callable[[Reading], object]) -> None:
        """``read`` is told what came of each save."""
        self._path, self._read = path, read
        self._loopback = at.loopback
        self._board = Board()
        self._state = State()
        self._nudging = Nudging(path)
        self._told: str | None = None
        """The digest of the file as it was last told."""
        self._server = Server(path.name, at, lambda: Talk(self._board), self._grant)
        self._rounds = Rounds(path, self._board, self._server.news)

    async def run(self, port: int, ready: Callable[[Served], object]) -> None:
        """Serve and follow until a signal comes; ``ready`` is told where the page is.

        Raises:
            ProblemsError: the page can't be served there.
        """
        watched = Watched(self._path)
        runner, addresses = await self._server.start(port)
        ending = _interrupted()
        try:
            ready(Served(addresses, self._loopback))
            following = asyncio.create_task(self._follow(watched))
            warming = asyncio.create_task(self._rounds.warm())
            await asyncio.wait({following, ending}, return_when=asyncio.FIRST_COMPLETED)
            if following.done():
                following.result()
            following.cancel()
            warming.cancel()
        finally:
            await self._rounds.end()
            await self._server.close()
            await runner.cleanup()

    async def _follow(self, watched: Watched) -> None:
        seen, first_broken = watched.seen, 0.0
        while True:
            self._board.tell("reading", version=self._state.version + 1)
            self._server.news()
            state = await asyncio.to_thread(read_state, self._path, seen, self._state)
            if state.troubles:
                first_broken = first_broken or monotonic()
                if monotonic() - first_broken < _LONGEST_BREATH and (
                    newer := await _within(watched, _BREATH)
                ):
                    seen = newer
                    continue
            first_broken = 0.0
            await self._tell(state)
            seen = await watched.change()

    async def _tell(self, state: State) -> None:
        self._state = state
        made = state.made
        new = made is not None and made.version == state.version
        if made is not None and new:
            self._board.tell_model(made.version, made.model)
        self._tell_troubles()
        if made is not None and new:
            self._rounds.begin(made)
        try:
            await self._tell_nudges()
        except Exception as error:  # as with the reading itself: the page goes on and says so
            self._state = replace(state, troubles=(*state.troubles, own_fault(error)))
            self._tell_troubles()
        self._told = state.digests.get(state.version)
        parts = len(made.unit.parts) if made is not None and new else None
        self._read(Reading(parts, self._state.troubles, state.seconds))

    def _tell_troubles(self) -> None:
        troubles = [asdict(each) for each in self._state.troubles]
        self._board.tell("troubles", version=self._state.version, troubles=troubles)
        self._server.news()

    async def _tell_nudges(self) -> None:
        state = self._state
        if state.spec is None:
            return
        told = await asyncio.to_thread(nudges_of, state.spec)
        # It may have to wait for a change that is being written.
        back = await asyncio.to_thread(self._nudging.can, state.digests[state.version])
        self._board.tell(
            "nudges",
            version=state.version,
            nudges=[asdict(each) for each in told],
            **asdict(back),
        )
        self._server.news()

    async def _grant(self, talk: Talk, wish: Wish) -> None:
        """Do what a page wishes, or tell it why not."""
        try:
            if isinstance(wish, NudgeWish):
                seen = self._state.digests.get(wish.version, "")
                await asyncio.to_thread(self._nudging.nudge, wish.key, wish.value, seen, wish.drag)
            else:
                undo = wish.kind == "undo"
                await asyncio.to_thread(self._nudging.undo if undo else self._nudging.redo)
        except ProblemsError as error:
            await self._refuse(talk, error.problems)
        except Exception as error:  # told too: the page would wait for it without end
            await self._refuse(talk, [own_fault(error)])

    async def _refuse(self, talk: Talk, problems: Sequence[Problem | Trouble]) -> None:
        """Tell a page why what it wished isn't done, once it has been told what stands there."""
        await self._catch_up()
        talk.refuse(" ".join(f"{each.message}. {each.remedy}" for each in problems))

    async def _catch_up(self) -> None:
        """Wait until the file has been told as it is, where someone changed it a moment ago: what a
        page wishes next is then wished of that."""
        until = monotonic() + _LONGEST_BREATH
        while monotonic() < until and await asyncio.to_thread(self._now) != self._told:
            await asyncio.sleep(_GLANCE)

    def _now(self) -> str | None:
        try:
            return digest_of(read_content(self._path))
        except ProblemsError:
            # It can't be told as it is, so there is nothing to wait for.
            return self._told


async def _within(watched: Watched, seconds: float) -> Seen | None:
    with suppress(TimeoutError):
        return await asyncio.wait_for(watched.change(), seconds)
    return None


def _interrupted() -> asyncio.Future[None]:
    """Done once the command is to end."""
    loop = asyncio.get_running_loop()
    ending: asyncio.Future[None] = loop.create_future()

    def end() -> None:
        if not ending.done():
            ending.set_result(None)

    for number in (signal.SIGINT, signal.SIGTERM):
        # Off POSIX, and off the main thread, signals come as exceptions or not at all.
        with suppress(NotImplementedError, RuntimeError, ValueError):
            loop.add_signal_handler(number, end)
    return ending
