"""The live page with a server of the test's own behind it, so that it can be told anything."""

from __future__ import annotations

import json
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import asdict, dataclass, field
from typing import Any

from playwright.sync_api import Browser, Page, WebSocketRoute

from kit.browser import DESKTOP, opened_anywhere
from rodwright.page import document as page_document
from rodwright.page.shell import page_html

_ADDRESS = "http://127.0.0.1:9/token/"


@dataclass
class Server:
    """What the page is told, and what it said."""

    page: Page
    sockets: list[WebSocketRoute] = field(default_factory=list)
    heard: list[dict[str, Any]] = field(default_factory=list)

    def tell(self, **message: Any) -> None:
        while not self.sockets:
            self.page.wait_for_timeout(10)
        for socket in self.sockets:
            socket.send(json.dumps(message))

    def model(self, model: page_document.Model, version: int = 1) -> None:
        self.tell(kind="model", version=version, model=asdict(model))
        self.tell(kind="troubles", version=version, troubles=[])

    def sections(self, version: int = 1, **sections: Any) -> None:
        self.tell(kind="sections", version=version, sections=sections)

    def gone(self) -> None:
        for socket in self.sockets:
            socket.close()
        self.sockets.clear()


@contextmanager
def live(
    browser: Browser, size: dict[str, int] = DESKTOP, *, before: str = "", **more: Any
) -> Iterator[Server]:
    """The live page, opened, its server there and silent; a script is run ``before`` its own."""
    html = page_html("alcove.yaml", {"live": "/token/socket"}, "'self'")
    with opened_anywhere(browser, size, **more) as page:
        server = Server(page)

        def met(socket: WebSocketRoute) -> None:
            server.sockets[:] = [socket]
            socket.on_message(lambda text: server.heard.append(json.loads(text)))

        page.add_init_script(before)
        page.route_web_socket("**/socket", met)
        page.route(_ADDRESS, lambda each: each.fulfill(body=html, content_type="text/html"))
        page.goto(_ADDRESS)
        yield server
