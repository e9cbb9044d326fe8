"""axe-core, the accessibility engine, run in a page."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from playwright.sync_api import Page

from kit.needed import need

_AXE = Path(__file__).parents[2] / "generator/viewer/node_modules/axe-core/axe.min.js"


@cache
def _source() -> str:
    need(_AXE.is_file(), "axe-core: npm ci in generator/viewer")
    return _AXE.read_text(encoding="utf-8")


def faults_of(page: Page) -> list[str]:
    """What axe-core finds wrong with a page as it stands now: rule, element, what to do.

    It looks for all its rules of WCAG 2.2, A and AA, and its best practices.
    """
    page.evaluate(_source() + "; undefined")
    found = page.evaluate("axe.run(document, {resultTypes: ['violations']})")
    return [
        f"{each['id']}: {node['html']}\n{node['failureSummary']}"
        for each in found["violations"]
        for node in each["nodes"]
    ]
