"""How soon a saved spec is seen in the live page, and what hours of saves take in memory.

    cd tests
    python -m benchmarks.live_page  # some minutes; prints a table
    python -m benchmarks.live_page --saves 500  # what a long session takes, every 100 saves

A model is saved again and again with something else in it, and in headless Chromium is measured
from before the write to the first frame that was drawn with the new unit: the picture is read back
from the canvas, so that what draws has to be done.  Times of one run are comparable to each other;
another machine, or a busy one, has others.
"""

from __future__ import annotations

import argparse
import shutil
import statistics
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from itertools import count
from pathlib import Path

import psutil
from playwright.sync_api import Page

from kit.browser import chromium, until
from kit.looking import served

MODELS = Path(__file__).parents[2] / "models"
CHANGES: dict[str, dict[str, tuple[str, str, float, float]]] = {
    "library-wall": {
        "frame width": ("width: 60, thickness: 25", "width: %g, thickness: 25", 60, 0.5),
        "depth": ("left: 352, right: 349", "left: %g, right: 349", 340, -1),
        "sheet thickness": ("plywood, thickness: 18", "plywood, thickness: %g", 18, 0.1),
    },
    "pottery-dresser": {
        "width": ("width: 1650", "width: %g", 1650, 1),
        "depth": ("depth: 480", "depth: %g", 480, 1),
        "sheet thickness": ("plywood, thickness: 18", "plywood, thickness: %g", 18, 0.1),
    },
    "archive-wall": {
        "depth": ("depth: 480", "depth: %g", 480, -1),
        "sheet thickness": ("plywood, thickness: 18", "plywood, thickness: %g", 18, 0.1),
    },
}
"""What is changed in a model: what stands there, what is written instead, the figure it begins at,
and by how much more it is each time: no shape comes twice."""

_TOLD_EVERY = 100
"""Saves from one line of a long session to the next."""
_PACE = 300
"""ms from a save that was seen to the next."""

_TIMED = """() => {
  const pixel = new Uint8Array(4);
  const show = stage.show.bind(stage);
  const draw = stage.render.bind(stage);
  let fresh = false;
  window.seen = [];
  stage.show = (...model) => {
    show(...model);
    fresh = true;
  };
  stage.render = () => {
    draw();
    if (!fresh) return;
    fresh = false;
    const gl = stage.renderer.getContext();
    gl.readPixels(0, 0, 1, 1, gl.RGBA, gl.UNSIGNED_BYTE, pixel);
    window.seen.push(performance.timeOrigin + performance.now());
  };
}"""


@contextmanager
def followed(
    spec: Path, width: int = 1280, height: int = 800
) -> Iterator[tuple[Page, psutil.Process]]:
    """The live page of a spec in Chromium, and its server."""
    with served(spec) as (address, server), chromium() as browser:
        page = browser.new_page(viewport={"width": width, "height": height})
        page.goto(address)
        until(page, "window.stage && stage.pieces.size > 0")
        page.evaluate(_TIMED)
        yield page, psutil.Process(server.pid)


def saved(spec: Path, text: str, page: Page) -> float:
    """Save a text; seconds until it was seen."""
    before = page.evaluate("seen.length")
    began = time.time()
    spec.write_text(text, encoding="utf-8")
    until(page, f"seen.length > {before}")
    return float(page.evaluate("seen.at(-1)")) / 1000 - began


def texts(model: str, change: tuple[str, str, float, float]) -> Iterator[str]:
    """A model's text with a change in it, a new one each time."""
    text = (MODELS / f"{model}.yaml").read_text(encoding="utf-8")
    there, instead, start, step = change
    assert there in text, there
    return (text.replace(there, instead % (start + step * number)) for number in count(1))


def seen_within(model: str, times: int, folder: Path) -> None:
    """Print how soon each change of a model is seen."""
    spec = folder / f"{model}.yaml"
    shutil.copy(MODELS / spec.name, spec)
    with followed(spec) as (page, _):
        parts = page.evaluate("stage.pieces.size")
        page.wait_for_timeout(10_000)  # what follows the first picture is done
        for name, change in CHANGES[model].items():
            rest = texts(model, change)
            took = []
            for _ in range(times):
                took.append(saved(spec, next(rest), page))
                # A maker looks at it before the next: what follows the picture is done by then.
                page.wait_for_timeout(3_000)
                until(page, "stage.resting")
            median, worst = statistics.median(took), max(took)
            print(f"| {model} ({parts}) | {name} | {median:.2f} | {worst:.2f} |", flush=True)


def long_session(saves: int, folder: Path) -> None:
    """Print what server and page hold while a model is saved again and again, never as before."""
    model = "pottery-dresser"
    spec = folder / f"{model}.yaml"
    shutil.copy(MODELS / spec.name, spec)
    text = spec.read_text(encoding="utf-8")
    # What is held doesn't hang on how many pixels are drawn, but how long it takes does.
    with followed(spec, 480, 320) as (page, server):
        devtools = page.context.new_cdp_session(page)
        for number in range(saves + 1):
            saved(spec, text.replace("width: 1650", f"width: {1500 + number / 2:g}"), page)
            page.wait_for_timeout(_PACE)
            if number % _TOLD_EVERY == 0:
                page.wait_for_timeout(15_000)  # what follows the picture is done
                devtools.send("HeapProfiler.collectGarbage")
                heap = devtools.send("Runtime.getHeapUsage")["usedSize"] / 1e6
                held = page.evaluate("stage.renderer.info.memory")
                shaders = page.evaluate("stage.renderer.info.programs.length")
                workers = [each.memory_info().rss // 1_000_000 for each in server.children()]
                own = server.memory_info().rss / 1e6
                print(
                    f"| {number} | {own:.0f} | {', '.join(map(str, workers))} | {heap:.1f} "
                    f"| {held['geometries']}, {held['textures']}, {shaders} |",
                    flush=True,
                )


def main() -> None:
    """Measure what is asked for."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--saves", type=int, default=0, help="watch memory over so many saves")
    asked.add_argument("--times", type=int, default=30, help="saves of each change")
    given = asked.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        if given.saves:
            print(
                "| saves | server, MB | its workers, MB | page's heap, MB "
                "| geometries, textures, shaders |"
            )
            long_session(given.saves, Path(folder))
            return
        print("| model (parts) | what is changed | median, s | longest, s |")
        for model in CHANGES:
            seen_within(model, given.times, Path(folder))


if __name__ == "__main__":
    main()
