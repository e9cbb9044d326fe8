"""The page to send where it is hard: without a network, a script, WebGL, or on a phone."""

from __future__ import annotations

import base64
import re
from functools import partial
from html import unescape
from http.server import SimpleHTTPRequestHandler, ThreadingHTTPServer
from io import BytesIO
from pathlib import Path
from threading import Thread

import pytest
from PIL import Image
from playwright.sync_api import Browser
from pypdf import PdfReader

from kit.browser import DRAWN, PHONE, tab, until
from kit.sent_pages import sent_page
from rodwright.wishes.reading.files import parse_spec

pytestmark = pytest.mark.xdist_group("browser")


def test_it_asks_for_nothing_but_itself(browser: Browser, sent: Path) -> None:
    asked: list[str] = []
    with tab(browser, offline=True) as page:
        page.on("request", lambda request: asked.append(request.url))
        page.goto(sent.as_uri())
        until(page, DRAWN)
    assert {url for url in asked if not url.startswith(("data:", "blob:"))} == {sent.as_uri()}


def test_a_page_of_sixty_parts_is_small(tmp_path: Path) -> None:
    """Its photographs come on top: three of a phone's size are under 1.5 MB."""
    assert sent_page("library-wall", tmp_path).stat().st_size < 3_500_000


def test_without_its_script_it_tells_what_it_can(browser: Browser, sent: Path) -> None:
    with tab(browser, java_script_enabled=False) as page:
        page.goto(sent.as_uri())
        said = page.locator("body").inner_text()
        notice = page.get_by_text("open this page in a browser of today")
        notice.wait_for(state="visible")
        assert page.locator("img").count() == 1
    for word in ("Record cabinet", "Made of", "Finish", "Weight", "in millimetres"):
        assert word in said, word


def test_an_older_browser_keeps_what_stands(browser: Browser, sent: Path) -> None:
    with tab(browser) as page:
        page.add_init_script("delete window.DecompressionStream")
        page.goto(sent.as_uri())
        page.locator("#still").wait_for(state="visible")
        assert "Made of" in page.locator("body").inner_text()
        assert page.locator("canvas").count() == 0


def test_without_webgl_a_picture_stands_there(browser: Browser, sent: Path) -> None:
    with tab(browser) as page:
        page.add_init_script("HTMLCanvasElement.prototype.getContext = () => null")
        page.goto(sent.as_uri())
        page.get_by_text("can't draw in space").wait_for(state="visible")
        assert page.locator(".instead").get_attribute("alt") == "Front and side, in millimetres"
        assert page.locator(".instead").evaluate("each => each.naturalWidth > 100")


def test_on_a_phone_a_touch_names_a_part(browser: Browser, sent: Path) -> None:
    with tab(browser, PHONE, has_touch=True, is_mobile=True) as page:
        page.goto(sent.as_uri())
        until(page, DRAWN)
        assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
        box = page.locator("canvas").first.bounding_box()
        assert box is not None
        middle = box["width"] / 2, box["height"] / 2
        ref = page.evaluate("([x, y]) => sight.hit({ x, y })?.ref", list(middle))
        page.touchscreen.tap(box["x"] + middle[0], box["y"] + middle[1])
        until(page, f"document.querySelector('[role=status]')?.textContent.includes('{ref}')")


@pytest.mark.parametrize(("paper", "size"), [("A4", (595, 842)), ("Letter", (612, 792))])
def test_it_prints(
    browser: Browser, sent: Path, tmp_path: Path, paper: str, size: tuple[int, int]
) -> None:
    with tab(browser) as page:
        page.goto(sent.as_uri())
        until(page, DRAWN)
        until(page, "stage.resting")
        page.pdf(path=tmp_path / "page.pdf", format=paper)
    pages = PdfReader(tmp_path / "page.pdf").pages
    assert 1 <= len(pages) <= 3
    for each in pages:
        assert tuple(each.mediabox[2:]) == pytest.approx(size, abs=2)
    words = " ".join(each.extract_text() for each in pages)
    for word in ("Record cabinet", "Made of", "Finish", "in millimetres"):
        assert word in words, word
    for button in ("Layers", "Measure", "Apart"):
        assert button not in words, button
    assert pages[0].images


def test_on_paper_the_unit_fills_its_picture(browser: Browser, sent: Path) -> None:
    with tab(browser, device_scale_factor=2) as page:
        page.goto(sent.as_uri())
        until(page, DRAWN)
        page.evaluate("dispatchEvent(new Event('beforeprint'))")
        address = page.evaluate("document.querySelector('#printed-picture canvas').toDataURL()")
    with Image.open(BytesIO(base64.b64decode(address.partition(",")[2]))) as image:
        grey = image.convert("L")
    assert grey.getpixel((0, 0)) == 255
    ink = grey.point(lambda value: 255 if value < 250 else 0).getbbox()
    assert ink is not None
    assert min(ink[0], ink[1], grey.width - ink[2], grey.height - ink[3]) >= 4
    assert max(ink[0], ink[1], grey.width - ink[2], grey.height - ink[3]) <= 24


def test_on_paper_dimensions_have_lines_and_what_is_chosen_has_no_label(
    browser: Browser, sent: Path
) -> None:
    ink = """() => {
        dispatchEvent(new Event("beforeprint"));
        const drawn = document.querySelector("#printed-picture canvas").toDataURL();
        dispatchEvent(new Event("afterprint"));
        return drawn;
    }"""
    with tab(browser) as page:
        page.goto(sent.as_uri())
        until(page, DRAWN)
        page.get_by_role("button", name="Dimensions").click()
        until(page, "document.querySelector('.ink path.dimension.line')")
        until(page, "stage.resting")
        told = page.locator(".dimensioned").inner_text()
        assert told.startswith("In millimetres: overall")
        assert told in (page.locator("#printed").text_content() or "")
        dimensioned = page.evaluate(ink)
        page.evaluate("document.querySelectorAll('.ink path').forEach((each) => each.remove())")
        assert page.evaluate(ink) != dimensioned
        label = "document.querySelector('.labels').append(Object.assign("
        label += "document.createElement('div'), {className: 'label part', innerText: 'DOP1'}))"
        bare = page.evaluate(ink)
        page.evaluate(label)
        assert page.evaluate(ink) == bare


HOSTILE = """
title: "</title></script><!-- <img src=x onerror=alert(1)> &amp; {{7*7}}"
made_by: {name: "<svg onload=alert(2)>", organisation: "\\"><script>alert(3)</script>"}
size: {width: 600, height: 500, depth: 250}
stock:
  "<b>case</b>": {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
carcass: {stock: "<b>case</b>"}
quote: {included: ["</script><script>document.title='ran'</script>"]}
"""
TITLE = "</title></script><!-- <img src=x onerror=alert(1)>"


@pytest.mark.parametrize("scripted", [True, False])
def test_whatever_a_spec_says_is_text(browser: Browser, tmp_path: Path, scripted: bool) -> None:
    file = sent_page(parse_spec(HOSTILE, "hostile.yaml"), tmp_path)
    ran: list[str] = []
    with tab(browser, java_script_enabled=scripted) as page:
        page.on("dialog", lambda dialog: ran.append(dialog.message))
        page.on("console", lambda each: ran.append(each.text) if each.type == "error" else None)
        page.goto(file.as_uri())
        if scripted:
            until(page, DRAWN)
            assert page.evaluate("[...document.scripts].length") == 2
        assert page.title().startswith(TITLE)
        assert page.locator("h1").first.inner_text().startswith(TITLE)
        assert page.locator("b, svg[onload], img[src=x]").count() == 0
        if not scripted:
            assert "</script><script>document.title='ran'" in page.locator("body").inner_text()
    assert not ran


def test_what_lies_beside_it_is_linked_to_on_the_web_alone(
    browser: Browser, tmp_path: Path
) -> None:
    """From disk nobody knows whether it lies there."""
    file = sent_page(parse_spec(HOSTILE, "hostile.yaml"), tmp_path, ("page.glb", "page.usdz"))
    handler = partial(SimpleHTTPRequestHandler, directory=str(tmp_path))
    with ThreadingHTTPServer(("127.0.0.1", 0), handler) as server:
        Thread(target=server.serve_forever, daemon=True).start()
        with tab(browser) as page:
            page.goto(f"http://127.0.0.1:{server.server_port}/page.html")
            page.locator("a[href='page.glb'][download]").wait_for(state="visible")
            page.goto(file.as_uri())
            until(page, DRAWN)
            assert page.locator("a[href^='page.']").count() == 0
        server.shutdown()


def test_its_policy_lets_nothing_else_run_or_load(sent: Path) -> None:
    """W3C, Content Security Policy Level 3: no unsafe source, no host, only hashes and data."""
    text = sent.read_text(encoding="utf-8")
    found = re.search(r'http-equiv="Content-Security-Policy" content="([^"]*)"', text)
    assert found is not None
    rules = dict(each.strip().split(" ", 1) for each in unescape(found[1]).split(";"))
    assert rules["default-src"] == rules["connect-src"] == "'none'"
    assert rules["img-src"] == "data: blob:"
    for rule in ("script-src", "style-src"):
        assert re.fullmatch(r"'sha256-[A-Za-z0-9+/=]+'", rules[rule])
