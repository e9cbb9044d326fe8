"""The server of the live page: one page and one socket, on this machine."""

from __future__ import annotations

import asyncio
import json
import secrets
from collections.abc import Callable
from dataclasses import asdict
from pathlib import Path
from typing import Any

from rodwright.jobs.look.following import State, read_state
from rodwright.page.shell import page_html


def look(path: Path | str, *, port: int = 0, ready: Callable[[str], object]) -> None:
    """Serve the page of a spec file until interrupted; ``ready`` is told its address.

    Raises:
        ProblemsError: the port is taken.
    """
    asyncio.run(_serve(Path(path), port, ready))


async def _serve(path: Path, port: int, ready: Callable[[str], object]) -> None:
    from aiohttp import web
    from watchfiles import awatch

    token = secrets.token_urlsafe(24)
    state = await asyncio.to_thread(read_state, path, None)
    sockets: dict[web.WebSocketResponse, set[str]] = {}

    async def page(_: web.Request) -> web.Response:
        text = page_html(path.name, {"live": f"/{token}/socket"}, "'self'")
        return web.Response(text=text, content_type="text/html")

    async def socket(request: web.Request) -> web.WebSocketResponse:
        answer = web.WebSocketResponse(heartbeat=20, compress=False)
        await answer.prepare(request)
        sockets[answer] = set()
        try:
            await tell(answer, state)
            async for _ in answer:
                pass
        finally:
            del sockets[answer]
        return answer

    async def tell(answer: web.WebSocketResponse, now: State) -> None:
        for message in messages(now, sockets[answer]):
            await answer.send_str(json.dumps(message, ensure_ascii=False))

    application = web.Application()
    application.router.add_get(f"/{token}/", page)
    application.router.add_get(f"/{token}/socket", socket)
    runner = web.AppRunner(application, access_log=None)
    await runner.setup()
    site = web.TCPSite(runner, "127.0.0.1", port)
    await site.start()
    _, taken = runner.addresses[0][:2]
    ready(f"http://127.0.0.1:{taken}/{token}/")
    try:
        async for changes in awatch(path.parent, debounce=50, step=10, recursive=False):
            if any(Path(name).name == path.name for _, name in changes):
                state = await asyncio.to_thread(read_state, path, state)
                for answer in list(sockets):
                    await tell(answer, state)
    finally:
        await runner.cleanup()


def messages(state: State, has: set[str]) -> list[dict[str, Any]]:
    """What a page that ``has`` these shapes is told of a state; notes what it has then."""
    told: list[dict[str, Any]] = []
    if state.model is not None:
        model = asdict(state.model)
        model["shapes"] = {name: each for name, each in model["shapes"].items() if name not in has}
        has |= state.model.shapes.keys()
        told.append({"kind": "model", "version": state.version, "model": model})
    troubles = [asdict(each) for each in state.troubles]
    told.append({"kind": "troubles", "version": state.version, "troubles": troubles})
    return told
