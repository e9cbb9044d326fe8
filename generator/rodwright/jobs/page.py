"""One HTML file to send: the unit to turn, open and take apart, from disk, without a network."""

from __future__ import annotations

from dataclasses import asdict
from pathlib import Path

from rodwright.page import document as page
from rodwright.page.model import model_of
from rodwright.page.shell import page_html
from rodwright.setout import set_out
from rodwright.wishes import SpecFile


def page_for(spec: SpecFile, folder: Path | str) -> Path:
    """Write the page of a spec's unit into a folder; the file's path.

    Raises:
        ProblemsError: the spec makes no unit.
        ValueError: the workings of a part leave no single solid.
    """
    unit = set_out(spec)
    told = {
        "model": asdict(model_of(unit)),
        "sections": asdict(page.Sections()),
        "words": asdict(page.Words()),
    }
    target = Path(folder) / "page.html"
    target.parent.mkdir(parents=True, exist_ok=True)
    target.write_text(page_html(unit.title, told), encoding="utf-8")
    return target
