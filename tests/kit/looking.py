"""The live page's server, within a test or as a command, and what it says to a page."""

from __future__ import annotations

import asyncio
import json
import subprocess
import sys
from collections.abc import AsyncIterator, Awaitable, Callable, Iterator
from contextlib import asynccontextmanager, contextmanager, suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any

import pytest
from aiohttp import ClientSession, ClientWebSocketResponse

from rodwright.jobs.look import session
from rodwright.jobs.look.doors import door
from rodwright.jobs.look.session import Reading, Served, Session

SHELF = """\
title: Shelf
unit: mm
size: {width: 600, height: 900, depth: 300}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
carcass: {stock: ply, corners: butted}
interior:
  shelves: {count: 2}  # two, for now
"""
"""A spec to be changed while it is followed."""


@dataclass
class Tab:
    """An open page: all that it was told, oldest first."""

    socket: ClientWebSocketResponse
    told: list[dict[str, Any]] = field(default_factory=list)

    async def until(self, kind: str, **having: Any) -> dict[str, Any]:
        """The next message of a kind whose members are these."""
        while True:
            message: dict[str, Any] = json.loads(await self.socket.receive_str())
            self.told.append(message)
            if message["kind"] == kind and all(message[each] == having[each] for each in having):
                return message


@dataclass
class Looking:
    """A server that follows a file."""

    address: str
    client: ClientSession
    readings: list[Reading]
    tabs: list[Tab] = field(default_factory=list)

    @property
    def origin(self) -> str:
        return "/".join(self.address.split("/")[:3])

    async def tab(self) -> Tab:
        """Open a page."""
        socket = await self.client.ws_connect(self.address + "socket", origin=self.origin)
        self.tabs.append(Tab(socket))
        return self.tabs[-1]


def run(test: Callable[[], Awaitable[None]]) -> None:
    """Run a test's talk; one that waits for what never comes fails."""

    async def within() -> None:
        await asyncio.wait_for(test(), 60)

    asyncio.run(within())


class NoRounds:
    """In the place of what is worked out after the picture."""

    def __init__(self, *_: object) -> None:
        self.begun: list[int] = []

    async def warm(self) -> None:
        """Nothing is loaded."""

    def begin(self, made: Any) -> None:
        """Nothing is worked out."""
        self.begun.append(made.version)

    async def end(self) -> None:
        """Nothing has begun."""


@asynccontextmanager
async def looking(
    path: Path, *, rounds: bool = False, host: str = "127.0.0.1"
) -> AsyncIterator[Looking]:
    """Follow a file; without ``rounds`` nothing is worked out after the picture."""
    served: asyncio.Future[Served] = asyncio.get_running_loop().create_future()
    readings: list[Reading] = []
    with pytest.MonkeyPatch.context() as patch:
        if not rounds:
            patch.setattr(session, "Rounds", NoRounds)
        running = asyncio.ensure_future(
            Session(path, door(host), readings.append).run(0, served.set_result)
        )
    async with ClientSession() as client:
        await asyncio.wait({running, served}, return_when=asyncio.FIRST_COMPLETED)
        if running.done():
            running.result()
        there = Looking(served.result().addresses[0], client, readings)
        try:
            yield there
        finally:
            for tab in there.tabs:
                await tab.socket.close()
            running.cancel()
            with suppress(asyncio.CancelledError):
                await running


@contextmanager
def served(path: Path, *options: str) -> Iterator[tuple[str, subprocess.Popen[str]]]:
    """The page's address and the process of the command that follows a file; ended afterwards."""
    command = [sys.executable, "-u", "-m", "rodwright_cli", "look", str(path), "--no-open"]
    with subprocess.Popen([*command, *options], stdout=subprocess.PIPE, text=True) as command_run:
        assert command_run.stdout is not None
        try:
            yield command_run.stdout.readline().strip(), command_run
        finally:
            # Whatever failed meanwhile: one that goes on would be waited for without end.
            command_run.kill()
