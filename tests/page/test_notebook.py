"""A unit in a notebook: what IPython is given, and what a browser makes of it."""

from __future__ import annotations

import base64
import json
import subprocess
import sys
from collections.abc import Iterator
from html.parser import HTMLParser
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Browser, Page

from kit.browser import DESKTOP, opened, until

pytestmark = pytest.mark.xdist_group("browser")
MODEL = Path(__file__).parents[2] / "models" / "niche-shelf.yaml"
SESSION = """
import json, sys
from IPython.core.interactiveshell import InteractiveShell
{before}
shell = InteractiveShell.instance()
{active}
shell.run_cell("import rodwright", silent=False).raise_error()
heavy = [name for name in ("cadquery", "OCP", "vtkmodules") if name in sys.modules]
shell.push({{"path": {path!r}}})
shell.run_cell("unit = rodwright.set_out(rodwright.read_spec(path))").raise_error()
given, _ = shell.display_formatter.format(shell.user_ns["unit"])
print("GIVEN" + json.dumps([heavy, given]))
"""


def session(path: Path, before: str = "", active: str = "") -> tuple[list[str], dict[str, str]]:
    """What a fresh IPython shell gives out for a unit, and what importing had loaded."""
    code = SESSION.format(path=str(path), before=before, active=active)
    run = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True, cwd=path.parent
    )
    heavy, given = json.loads(run.stdout.partition("GIVEN")[2].splitlines()[0])
    return heavy, given


@pytest.fixture(scope="module")
def hostile(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A model whose title would like to be markup."""
    path = tmp_path_factory.mktemp("notebook") / "shelf.yaml"
    title = 'title: "Shelf\\" onload=alert(1) <script>alert(2)</script>"\n'
    lines = MODEL.read_text(encoding="utf-8").splitlines(keepends=True)
    path.write_text(
        "".join(title if line.startswith("title:") else line for line in lines), encoding="utf-8"
    )
    return path


@pytest.fixture(scope="module")
def given(hostile: Path) -> dict[str, str]:
    heavy, given = session(hostile)
    assert heavy == []
    return given


def shown_as(browser: Browser, html: str, folder: Path) -> Iterator[Page]:
    """A cell's output within a page, as a notebook has it."""
    path = folder / "notebook.html"
    path.write_text(f"<!doctype html><title>Notebook</title><body>{html}</body>", encoding="utf-8")
    with opened(browser, path.as_uri(), DESKTOP) as page:
        yield page


@pytest.fixture
def page(browser: Browser, given: dict[str, str], tmp_path: Path) -> Iterator[Page]:
    yield from shown_as(browser, given["text/html"], tmp_path)


def test_a_notebook_is_given_a_model_a_picture_and_text(given: dict[str, str]) -> None:
    assert given["text/plain"].startswith("<Unit 'Shelf")
    assert given["text/plain"].endswith("6 parts>")
    with Image.open(BytesIO(base64.b64decode(given["image/jpeg"]))) as picture:
        assert picture.format == "JPEG"
        assert min(picture.size) > 300
    assert len(given["text/html"]) < 5_000_000


TEXT_ALONE = 'shell.display_formatter.active_types = ["text/plain"]'


def test_a_terminal_is_given_text_alone(hostile: Path) -> None:
    heavy, given = session(hostile, active=TEXT_ALONE)
    assert heavy == []
    assert list(given) == ["text/plain"]


def test_a_shell_that_started_later_is_told_by_its_extension(hostile: Path) -> None:
    load = 'shell.run_line_magic("load_ext", "rodwright")'
    for active, begins in ((TEXT_ALONE, "Unit(title="), (f"{load}\n{TEXT_ALONE}", "<Unit 'Shelf")):
        _, given = session(hostile, before="import rodwright", active=active)
        assert given["text/plain"].startswith(begins)


def test_the_model_turns_in_its_frame_and_can_do_nothing_else(page: Page) -> None:
    frame = next(each for each in page.frames if each is not page.main_frame)
    for _ in range(600):
        if frame.evaluate("window.stage ? stage.pieces.size : 0"):
            break
        page.wait_for_timeout(50)
    assert frame.evaluate("stage.pieces.size") == 6
    assert frame.evaluate("self.origin") == "null"
    title = frame.evaluate("document.title")
    assert title == 'Shelf" onload=alert(1) <script>alert(2)</script>'
    assert frame.evaluate("document.querySelectorAll('script').length") == 2
    attributes = page.evaluate(
        "[...document.querySelector('iframe').attributes].map((each) => each.name).sort()"
    )
    assert attributes == ["sandbox", "srcdoc", "style", "title"]
    assert page.get_attribute("iframe", "sandbox") == "allow-scripts"


class _Sanitiser(HTMLParser):
    """What a viewer of notebooks that trusts nobody leaves: pictures and text."""

    def __init__(self) -> None:
        super().__init__()
        self.left: list[str] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag == "img":
            said = dict(attrs)
            self.left.append(f'<img src="{said["src"]}" alt="shelf">')


def test_without_frames_the_picture_is_left(
    browser: Browser, given: dict[str, str], tmp_path: Path
) -> None:
    sanitiser = _Sanitiser()
    sanitiser.feed(given["text/html"])
    for page in shown_as(browser, "".join(sanitiser.left), tmp_path):
        until(page, "document.querySelector('img').naturalWidth > 300")


def test_without_scripts_the_frame_has_the_picture(
    browser: Browser, given: dict[str, str], tmp_path: Path
) -> None:
    still = given["text/html"].replace('sandbox="allow-scripts"', 'sandbox=""')
    path = tmp_path / "still.html"
    path.write_text(f"<!doctype html><title>Notebook</title><body>{still}</body>", encoding="utf-8")
    context = browser.new_context()
    page = context.new_page()
    page.goto(path.as_uri())
    picture = page.frame_locator("iframe").locator("img").first
    picture.wait_for()
    assert picture.is_visible()
    context.close()
