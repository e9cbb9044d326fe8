"""One HTML file to send: the unit to turn, open and take apart, from disk, without a network."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import asdict, dataclass, replace
from io import BytesIO
from pathlib import Path

from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding, Severity
from rodwright.handover import families
from rodwright.handover.families import PAGE_FILES
from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.jobs.quote.pictures import drawings_of, photographs_in, photographs_of
from rodwright.page.standing import Picture
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.unit import FACE_FRAME, Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile

PAGE = "page.html"
"""What the page is called."""
_LONGEST, _QUALITY = 1600, 80
"""Longer side of a photograph in the page, in pixels, and its quality (%): as large as a phone or a
tablet shows it."""
_SHOTS = {"closed": "", "open": "open", "apart": "taken apart"}
"""The photographs that a page takes, and how their captions tell them apart."""
_SHEET = (172.0, 118.0)
"""Room for the drawing with sizes, mm: as on a quote."""


@dataclass(frozen=True, slots=True)
class Sent:
    """What was made: the unit, the folder, the files in it (relative, sorted), what the checks
    found, and why there is no photograph although one is wanted."""

    unit: Unit
    folder: Path
    files: tuple[str, ...]
    findings: tuple[Finding, ...]
    no_photograph: str = ""


def write_page(
    spec: SpecFile,
    folder: Path | str,
    *,
    photographs: bool = True,
    progress: Callable[[str], object] = lambda _: None,
) -> Sent:
    """Write ``page.html`` for a client: the unit to turn, to open and to take apart, photographs
    and the maker's words in one file that needs no network; beside it ``page.glb`` and
    ``page.usdz``, by which a phone places the unit in a room.  Whole or not at all.

    Photographs in the folder that show the unit as it is now are taken; where there is none of the
    closed unit it is made, unless no ``photographs`` are wanted.  A unit with errors is a draft,
    and its page says so without naming them.

    Raises:
        ProblemsError: the spec makes no unit, usd-core isn't installed, the folder can't be
            written, or something of the user's is in the way; nothing is written then.
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.page.placing import unit_files
    from rodwright.page.usdz import refuse_without_usd

    target, others = Path(folder), families.beside(PAGE_FILES)
    unit = laid_unit(set_out(spec))
    # Refuse before the work rather than after it.
    refuse_without_usd()
    look_before(target, ours=PAGE_FILES, beside=others, again=PAGE_FILES.fullmatch)
    progress("building solids and looking for collisions")
    findings = (*check_parts(unit), *check_solids(unit))
    draft = any(each.severity is Severity.ERROR for each in findings)
    shown, why = _photographs(unit, target, progress) if photographs else ((), "")
    progress("drawing it for the page")
    drawn = () if shown else (_drawn(unit, progress),)
    placed = unit_files(unit)
    text = html_of(spec, unit, shown, drawn, draft=draft, beside=sorted(placed))
    with whole_or_nothing(
        target, ours=PAGE_FILES, beside=others, again=PAGE_FILES.fullmatch
    ) as staging:
        (staging / PAGE).write_text(text, encoding="utf-8")
        for name, data in placed.items():
            (staging / name).write_bytes(data)
    return Sent(unit, target, tuple(sorted((PAGE, *placed))), findings, why)


def html_of(
    spec: SpecFile,
    unit: Unit,
    photographs: Sequence[Picture] = (),
    drawings: Sequence[Picture] = (),
    *,
    draft: bool = False,
    beside: Sequence[str] = (),
) -> str:
    """The page of a unit that a spec makes, with these photographs and, before the one with its
    sizes, these drawings; ``beside`` are the names of the files that lie beside it.

    Raises:
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.page.model import model_of
    from rodwright.page.shell import page_html
    from rodwright.page.standing import standing_markup
    from rodwright.page.telling import quick_sections
    from rodwright.page.tiles import textures_of
    from rodwright.page.words import for_client, sections_for_client, words_of

    said = spec.spec.quote
    model = for_client(model_of(unit), unit)
    words = words_of(
        unit,
        paragraphs=said.words,
        included=said.included,
        not_included=said.not_included,
        draft=draft,
        beside=beside,
    )
    sections = replace(sections_for_client(quick_sections(unit, {})), textures=textures_of(unit))
    told = {"model": asdict(model), "sections": asdict(sections), "words": asdict(words)}
    drawings = (*drawings, _elevation(unit))
    standing = standing_markup(unit.title, model.size, words, photographs, drawings)
    about = f"{unit.title}, {model.size}"
    return page_html(unit.title, told, about=about, standing=standing, packed=True)


def _drawn(unit: Unit, progress: Callable[[str], object]) -> Picture:
    """The unit as it stands, where there is no photograph of it."""
    (drawn,) = drawings_of([unit], progress)
    return Picture(f"{unit.title}, drawn", drawn, "image/jpeg")


def _elevation(unit: Unit) -> Picture:
    """The front with its sizes, as a quote has it."""
    from rodwright.pictures.svg import to_svg
    from rodwright.quote.elevation import elevation

    drawing = elevation(unit, *_SHEET).drawing
    measure = "millimetres" if unit.display_unit == "mm" else "inches"
    # Nobody knows how large a screen is: a scale would be wrong.
    views = drawing.description.partition(", at ")[0]
    # Between the boards behind it there is more room than is seen.
    framed = any(part.role in FACE_FRAME for part in unit.parts)
    seen = " as seen, openings inside the face frame" if framed else ""
    return Picture(f"{views}{seen}, in {measure}", to_svg(drawing).encode(), "image/svg+xml")


def _photographs(
    unit: Unit, folder: Path, progress: Callable[[str], object]
) -> tuple[tuple[Picture, ...], str]:
    """Those in the folder that show the unit as it is, the closed one first and made if need be;
    and why it couldn't be."""
    from rodwright.photo.stamp import stamp_in, stamp_of

    stamps = {stamp_of(unit, "closed"): "closed"}
    stamps |= {stamp_of(unit, "open"): "open", stamp_of(unit, "apart"): "apart"}
    found: dict[str, bytes] = {}
    for data in photographs_in(folder):
        if (shot := stamps.get(stamp_in(data))) is not None:
            found.setdefault(shot, data)
    why = ""
    if "closed" not in found:
        try:
            (found["closed"],) = photographs_of([unit], folder, progress)
        except ProblemsError as error:
            why = error.problems[0].message
    return tuple(
        Picture(", ".join(filter(None, (unit.title, how))), _smaller(found[shot]), "image/jpeg")
        for shot, how in _SHOTS.items()
        if shot in found
    ), why


def _smaller(photograph: bytes) -> bytes:
    """A photograph (a JPEG file) as it goes into a page, without its stamp."""
    from PIL import Image

    with Image.open(BytesIO(photograph)) as image:
        whole = image.convert("RGB")
    whole.info = {}
    whole.thumbnail((_LONGEST, _LONGEST))
    file = BytesIO()
    whole.save(file, format="JPEG", quality=_QUALITY, optimize=True, progressive=True)
    return file.getvalue()
