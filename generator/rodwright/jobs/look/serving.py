"""The server of the live page: one page and one socket, and nothing else."""

from __future__ import annotations

import asyncio
import errno
import os
from collections.abc import Awaitable, Callable
from typing import TYPE_CHECKING

from rodwright.jobs.look.doors import Door
from rodwright.jobs.look.talks import LONGEST_WISH, Talk, Wish, wish_of
from rodwright.page.shell import page_html, policy
from rodwright.problems import Problem, ProblemsError

if TYPE_CHECKING:
    from aiohttp import web

_MOST_PAGES = 50
"""Pages that may be open at a time; from a network there might come any number."""
_SILENT = 6.0
"""Seconds after which a page that doesn't answer is taken to be gone."""
_HEADERS = {
    "Cache-Control": "no-store",
    "Cross-Origin-Opener-Policy": "same-origin",
    "Cross-Origin-Resource-Policy": "same-origin",
    "Referrer-Policy": "no-referrer",
    "Server": "rodwright",
    "X-Content-Type-Options": "nosniff",
    "X-Frame-Options": "DENY",
}
_NOWHERE = "default-src 'none'; frame-ancestors 'none'"


class Server:
    """Serves the page of one file to whoever knows its address."""

    def __init__(
        self,
        title: str,
        door: Door,
        talk: Callable[[], Talk],
        wish: Callable[[Talk, Wish], Awaitable[None]],
    ) -> None:
        """``talk`` begins one with a page, ``wish`` is told what a page wishes."""
        self._title, self._door, self._talk, self._wish = title, door, talk, wish
        self._port = 0
        self._talks: dict[web.WebSocketResponse, Talk] = {}

    def news(self) -> None:
        """There is something new on the board."""
        for talk in self._talks.values():
            talk.wake()

    async def close(self) -> None:
        """Tell all pages that nobody is here any more."""
        from aiohttp import WSCloseCode

        for socket in list(self._talks):
            await socket.close(code=WSCloseCode.GOING_AWAY)

    async def start(self, port: int) -> tuple[web.AppRunner, tuple[str, ...]]:
        """Serve at a port (0: one that is free); what ends it, and the page's addresses.

        Raises:
            ProblemsError: the port is taken or may not be had, or the machine hasn't this address.
        """
        from aiohttp import web

        @web.middleware
        async def let_in(
            request: web.Request, handler: Callable[[web.Request], Awaitable[web.StreamResponse]]
        ) -> web.StreamResponse:
            if not self._door.is_called(request.host, self._port):
                raise web.HTTPMisdirectedRequest
            if not self._door.knows(request.match_info.get("token", "")):
                raise web.HTTPNotFound
            return await handler(request)

        application = web.Application(middlewares=[let_in])
        application.on_response_prepare.append(self._say_headers)
        application.router.add_get("/{token}/", self._page)
        application.router.add_get("/{token}/socket", self._socket)
        runner = web.AppRunner(application, access_log=None, shutdown_timeout=1.0)
        await runner.setup()
        try:
            await web.TCPSite(runner, self._door.host, port).start()
        except OSError as error:
            await runner.cleanup()
            raise ProblemsError([_not_served(error, self._door.host, port)]) from error
        self._port = runner.addresses[0][1]
        return runner, self._door.addresses(self._port)

    async def _say_headers(self, _: web.Request, response: web.StreamResponse) -> None:
        response.headers.update(_HEADERS)
        response.headers.setdefault("Content-Security-Policy", _NOWHERE)

    async def _page(self, request: web.Request) -> web.Response:
        from aiohttp import web

        # Some browsers don't take the socket for one of `'self'`.
        connect = f"'self' ws://{request.host}"
        text = page_html(self._title, {"live": f"/{self._door.token}/socket"}, connect)
        headers = {"Content-Security-Policy": f"{policy(connect)}; frame-ancestors 'none'"}
        return web.Response(text=text, content_type="text/html", headers=headers)

    async def _socket(self, request: web.Request) -> web.WebSocketResponse:
        from aiohttp import web

        if request.headers.get("Origin") != f"http://{request.host}":
            raise web.HTTPForbidden
        if len(self._talks) >= _MOST_PAGES:
            raise web.HTTPServiceUnavailable
        socket = web.WebSocketResponse(
            heartbeat=_SILENT, max_msg_size=LONGEST_WISH, compress=False, timeout=1.0
        )
        await socket.prepare(request)
        talk = self._talk()
        self._talks[socket] = talk
        telling = asyncio.create_task(self._tell(talk, socket))
        try:
            async for message in socket:
                if message.type is not web.WSMsgType.TEXT:
                    break
                wished = wish_of(message.data)
                if wished is None:
                    talk.refuse("The page said something that isn't understood; load it again.")
                else:
                    await self._wish(talk, wished)
        finally:
            del self._talks[socket]
            telling.cancel()
        return socket

    @staticmethod
    async def _tell(talk: Talk, socket: web.WebSocketResponse) -> None:
        try:
            await talk.tell(socket)
        except ConnectionError:
            await socket.close()  # the page is gone, so its talk ends


def _not_served(error: OSError, host: str, port: int) -> Problem:
    if error.errno == errno.EADDRINUSE:
        return Problem(
            f"port {port} is taken: something else is served there",
            "End that, give another with `--port`, or leave `--port` out: a free one is found.",
        )
    if error.errno in {errno.EACCES, errno.EPERM}:
        return Problem(
            f"port {port} may not be used here",
            "On most machines those below 1024 are for administrators alone: give a higher one, or "
            "leave `--port` out: a free one is found.",
        )
    if error.errno == errno.EADDRNOTAVAIL:
        return Problem(
            f"this machine has no address `{host}`",
            "Give one of its own, or `0.0.0.0` for all of them.",
        )
    # What it says itself is of its own insides, where the system's word is known.
    why = os.strerror(error.errno) if error.errno else str(error)
    return Problem(
        f"the page can't be served at {host}, port {port}: {why}",
        "Try another port or address.",
    )
