"""The page itself: one HTML text that holds its script, its style and what it is told."""

from __future__ import annotations

import base64
import hashlib
import json
from functools import cache
from html import escape
from importlib.resources import files
from typing import Any


@cache
def _asset(name: str) -> str:
    return (files("rodwright.page") / name).read_text(encoding="utf-8")


def page_html(title: str, told: dict[str, Any], connect: str = "'none'") -> str:
    """The page, with all that it is ``told``; it may ``connect`` only where that says.

    Nothing but the script in it can run, and it loads nothing from anywhere: its content security
    policy (W3C, Content Security Policy Level 3) names the script's and the style's hashes.
    """
    script, style = _asset("viewer.js"), _asset("viewer.css")
    # In a script element only `<` can end it or begin a comment (HTML standard, 4.12.1.3).
    data = json.dumps(told, ensure_ascii=False).replace("<", "\\u003c")
    policy = (
        f"default-src 'none'; script-src {_hash(script)}; style-src {_hash(style)}; "
        f"img-src data: blob:; connect-src {connect}; base-uri 'none'; form-action 'none'"
    )
    return (
        '<!doctype html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        f'<meta http-equiv="Content-Security-Policy" content="{escape(policy)}">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        '<meta name="referrer" content="no-referrer">\n'
        f"<title>{escape(title)}</title>\n<style>{style}</style>\n</head>\n<body>\n"
        f'<div id="page"></div>\n<script type="application/json" id="told">{data}</script>\n'
        f"<script>{script}</script>\n</body>\n</html>\n"
    )


def _hash(text: str) -> str:
    digest = base64.b64encode(hashlib.sha256(text.encode()).digest()).decode("ascii")
    return f"'sha256-{digest}'"
