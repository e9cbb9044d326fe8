"""Pages to send, for tests."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from rodwright.jobs.new import model_path
from rodwright.jobs.page import html_of
from rodwright.page.standing import Picture
from rodwright.setout import set_out
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile, read_spec


def sent_page(
    spec: SpecFile | str,
    folder: Path,
    beside: Sequence[str] = (),
    photographs: Sequence[Picture] = (),
) -> Path:
    """The page of a spec, or of the ready model of that name, as a file; nothing is checked.  It
    says that ``beside`` lie beside it."""
    if isinstance(spec, str):
        spec = read_spec(model_path(spec))
    file = folder / "page.html"
    page = html_of(spec, laid_unit(set_out(spec)), photographs, beside=beside)
    file.write_text(page, encoding="utf-8")
    return file
