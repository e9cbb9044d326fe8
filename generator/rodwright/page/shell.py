"""The page itself: one HTML text that holds its script, its style and what it is told."""

from __future__ import annotations

import base64
import gzip
import hashlib
import json
from functools import cache
from html import escape
from importlib.resources import files
from typing import Any

_ICON = (
    "<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 32 32'><path d='M5 3h22v26H5z"
    "M5 12h22M5 21h22M16 12v9' fill='#f3f0ea' stroke='#2b2620' stroke-width='3'/></svg>"
)
"""What a browser shows beside the title: an alcove with its shelves."""


@cache
def _asset(name: str) -> str:
    return (files("rodwright.page") / name).read_text(encoding="utf-8")


@cache
def policy(connect: str) -> str:
    """What the page may do (W3C, Content Security Policy Level 3): run the script and have the
    style that are in it, known by their hashes, and show pictures that it holds itself."""
    script, style = _hash(_asset("viewer.js")), _hash(_asset("viewer.css"))
    return (
        f"default-src 'none'; script-src {script}; style-src {style}; "
        f"img-src data: blob:; connect-src {connect}; base-uri 'none'; form-action 'none'"
    )


def page_html(
    title: str,
    told: dict[str, Any],
    connect: str = "'none'",
    *,
    about: str = "",
    standing: str = "",
    packed: bool = False,
) -> str:
    """The page, with all that it is ``told`` (``packed``: as gzip, RFC 1952, in base64); it may
    ``connect`` only where that says.

    ``about`` describes it to who lists pages; ``standing`` is markup that stands in it until its
    script runs.  Nothing but that script can run, and it loads nothing from anywhere.
    """
    still = ' class="still"' if standing else ""
    return (
        '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        f'<meta http-equiv="Content-Security-Policy" content="{escape(policy(connect))}">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        '<meta name="referrer" content="no-referrer">\n'
        + (f'<meta name="description" content="{escape(about)}">\n' if about else "")
        + f"<title>{escape(title)}</title>\n"
        f'<link rel="icon" href="data:image/svg+xml,{_quoted(_ICON)}">\n'
        f"<style>{_asset('viewer.css')}</style>\n</head>\n<body{still}>\n"
        f'<div id="page">{standing}</div>\n{_told(told, packed)}\n'
        f"<script>{_asset('viewer.js')}</script>\n</body>\n</html>\n"
    )


def _told(told: dict[str, Any], packed: bool) -> str:
    """What the page is told, in an element that no browser runs."""
    data = json.dumps(told, ensure_ascii=False, separators=(",", ":"))
    if packed:
        text = base64.b64encode(gzip.compress(data.encode(), 9, mtime=0)).decode("ascii")
        return f'<script type="application/gzip" id="told">{text}</script>'
    # In a script element only `<` can end it or begin a comment (HTML standard, 4.12.1.3).
    text = data.replace("<", "\\u003c")
    return f'<script type="application/json" id="told">{text}</script>'


def _quoted(text: str) -> str:
    """Text as it may stand in a data address within double quotes (RFC 2397)."""
    return text.replace("%", "%25").replace("#", "%23").replace("<", "%3C").replace(">", "%3E")


def _hash(text: str) -> str:
    digest = base64.b64encode(hashlib.sha256(text.encode()).digest()).decode("ascii")
    return f"'sha256-{digest}'"
