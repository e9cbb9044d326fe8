"""What the tests of the page share."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from kit.browser import chromium
from kit.pages_of import unit_page
from kit.sent_pages import sent_page
from kit.specs import ready_unit
from rodwright.page import document
from rodwright.page.model import model_of
from rodwright.unit import Unit


# One at a time: Playwright has only one loop for a thread.
@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    with chromium() as started:
        yield started


@pytest.fixture(scope="module")
def loaded(browser: Browser, address: str) -> Iterator[Page]:
    """The unit's page at a module's ``address``, drawn; whatever a test leaves there is its
    module's ``page`` to put back."""
    with unit_page(browser, address) as shown:
        yield shown


@pytest.fixture(scope="session")
def dresser() -> document.Model:
    """A model with doors and drawers."""
    return model_of(ready_unit("pottery-dresser"))


@pytest.fixture(scope="session")
def cupboard() -> Unit:
    """A unit with framed doors, in millimetres."""
    return ready_unit("linen-cupboard")


@pytest.fixture(scope="session")
def bookcase() -> Unit:
    """A unit in inches."""
    return ready_unit("hallway-bookcase")


@pytest.fixture(scope="session")
def sent(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A page to send, of a unit with doors and drawers."""
    return sent_page("record-cabinet", tmp_path_factory.mktemp("sent"))
