"""What the tests of the page share."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser

import rodwright
from kit.browser import chromium
from rodwright.jobs.new import model_path
from rodwright.page import document as page
from rodwright.page.model import model_of


# One at a time: Playwright has only one loop for a thread.
@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    with chromium() as started:
        yield started


@pytest.fixture(scope="session")
def dresser() -> page.Model:
    """A model with doors and drawers."""
    return model_of(rodwright.set_out(rodwright.read_spec(model_path("pottery-dresser"))))
