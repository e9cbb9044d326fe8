"""Pages set by Typst from a template and plain data, to PDF or PNG; the same input, the same bytes.

The fonts are those that pictures are lettered with (:mod:`rodwright.pictures.glyphs`), so that what
was measured is what is printed.  No network: templates use no packages.
"""

from __future__ import annotations

import json
from collections.abc import Mapping
from datetime import UTC, datetime
from importlib.resources import files as resources
from importlib.util import find_spec
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, Literal

from rodwright.pictures.glyphs import font_files, lacking
from rodwright.problems import Problem, ProblemsError
from rodwright.trade.label_sheets import Paper

_TEMPLATES = "templates"


def paper_name(paper: Paper) -> str:
    """What Typst calls a paper."""
    return "a4" if paper == "a4" else "us-letter"


def refuse_without_typst() -> None:
    """Refuse before the work what needs Typst where there is none.

    Raises:
        ProblemsError: Typst isn't installed.
    """
    if find_spec("typst") is None:
        raise ProblemsError(
            [
                Problem(
                    "Typst, which sets the pages, isn't installed",
                    "Install it: `pip install typst`.",
                )
            ]
        )


def without_font(text: str) -> frozenset[str]:
    """The letters of a text that neither our fonts nor this machine's have: they are printed as
    boxes.

    Raises:
        ProblemsError: Typst isn't installed.
    """
    wanted = lacking(text)
    if not wanted:
        return wanted
    refuse_without_typst()
    import typst
    from fontTools.ttLib import TTFont

    # Typst is asked for the fonts, since it is Typst that sets with them.
    for path, index in sorted({(each.path or "", each.index) for each in typst.Fonts().fonts()}):
        if not wanted:
            break
        if path:
            with TTFont(path, fontNumber=index, lazy=True) as font:
                had = font.getBestCmap() or {}
            wanted -= {each for each in wanted if ord(each) in had}
    return wanted


def typeset(
    template: str,
    data: Any,
    files: Mapping[str, bytes],
    *,
    when: datetime | None = None,
    form: Literal["pdf", "png"] = "pdf",
    ppi: float = 100.0,
) -> tuple[bytes, ...]:
    """Set ``template`` (of ``paper/templates``, without ``.typ``) with ``data`` (JSON) and the
    ``files`` that it names.

    The template reads its data by ``json("data.json")``, and may import the other templates.
    ``when`` is the date that the PDF carries; without one it is the first of January 1970.

    Returns:
        One PDF, or a PNG a page.

    Raises:
        ProblemsError: Typst isn't installed.
        RuntimeError: the template has a fault.
    """
    refuse_without_typst()
    import typst

    text = json.dumps(data, ensure_ascii=False, allow_nan=False)
    with TemporaryDirectory() as place:
        root = Path(place)
        for each in resources(__package__).joinpath(_TEMPLATES).iterdir():
            if each.name.endswith(".typ"):
                (root / each.name).write_bytes(each.read_bytes())
        (root / "fonts").mkdir()
        for name, content in font_files().items():
            (root / "fonts" / name).write_bytes(content)
        for name, content in files.items():
            path = root / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(content)
        (root / "data.json").write_text(text, encoding="utf-8")
        made: bytes | list[bytes] = typst.compile(
            str(root / f"{template}.typ"),
            root=str(root),
            font_paths=[str(root / "fonts")],
            # What a machine happens to have is asked only for letters that ours lack.
            ignore_system_fonts=not lacking(text),
            format=form,
            ppi=ppi,
            # Readers of today's Debian take fault with how Typst 0.15 writes its tags.
            pdf_tags=False,
            timestamp=int((when or datetime(1970, 1, 1, tzinfo=UTC)).timestamp()),
        )
    return (made,) if isinstance(made, bytes) else tuple(made)
