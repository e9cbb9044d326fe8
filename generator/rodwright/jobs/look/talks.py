"""The talk with one page: what it is told, and what it wishes."""

from __future__ import annotations

import asyncio
import json
from collections import deque
from typing import TYPE_CHECKING, Annotated, Literal

from pydantic import BaseModel, ConfigDict, Field, TypeAdapter, ValidationError

from rodwright.jobs.look.board import Board, Reader

if TYPE_CHECKING:
    from aiohttp.web import WebSocketResponse

BEAT = 2.0
"""Seconds after which a page is told that its server is there, if nothing else was told it."""
LONGEST_WISH = 4096
"""Bytes of a message from a page; longer ones end the talk."""
_MOST_REFUSALS = 8


class _Wish(BaseModel):
    model_config = ConfigDict(extra="forbid", strict=True, frozen=True)


class NudgeWish(_Wish):
    """A figure is to be changed; ``version`` is the reading its page shows."""

    kind: Literal["nudge"]
    key: Annotated[str, Field(max_length=300)]
    value: Annotated[str, Field(max_length=300)]
    version: Annotated[int, Field(ge=0)]
    drag: Annotated[str, Field(max_length=60)] = ""


class BackWish(_Wish):
    """The last change is to be taken back, or made once more."""

    kind: Literal["undo", "redo"]


Wish = NudgeWish | BackWish
_WISHES: TypeAdapter[Wish] = TypeAdapter(Annotated[Wish, Field(discriminator="kind")])


def wish_of(text: str) -> Wish | None:
    """What a page's message says; None where it says nothing that is understood."""
    try:
        return _WISHES.validate_json(text)
    except ValidationError:
        return None


class Talk:
    """One open page."""

    def __init__(self, board: Board) -> None:
        """It reads from this board, from the beginning."""
        self._board = board
        self._reader = Reader()
        self._news = asyncio.Event()
        self._news.set()
        self._refusals: deque[str] = deque(maxlen=_MOST_REFUSALS)

    def wake(self) -> None:
        """There is something new on the board."""
        self._news.set()

    def refuse(self, message: str) -> None:
        """Tell this page alone that what it wished isn't done."""
        self._refusals.append(json.dumps({"kind": "refused", "message": message}))
        self._news.set()

    async def tell(self, socket: WebSocketResponse) -> None:
        """Tell the page what it hasn't read, and when there is nothing that somebody is there.

        Raises:
            ConnectionError: the page is gone.
        """
        while True:
            try:
                await asyncio.wait_for(self._news.wait(), BEAT)
            except TimeoutError:
                await socket.send_str('{"kind":"alive"}')
                continue
            self._news.clear()
            while (message := self._board.next(self._reader)) is not None:
                await socket.send_str(message)
            # It hears why not once it shows the file that this was refused by.
            while self._refusals:
                await socket.send_str(self._refusals.popleft())
