"""Labels for pieces: what each says, and pages of them on sheets as stationers sell them."""

from __future__ import annotations

import io
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from rodwright.cutting.demand.parts import edged_of
from rodwright.cutting.whole import Cutting
from rodwright.cutting.work import Label, Lot
from rodwright.handover.cut_tables import label_rows, labels_of
from rodwright.lengths import LengthUnit, format_length
from rodwright.paper.typesetting import paper_name, typeset
from rodwright.trade.label_sheets import LabelSheet
from rodwright.unit import Grain, Unit

_SIDES = ("near", "far", "face", "back")
_LONGEST = 40
"""Letters of a title on a label: a QR code of more is too fine to be read off wood."""
_MORE = "…"


@dataclass(frozen=True, slots=True)
class LabelText:
    """What one label says.

    ``size`` is as finished, ``cut`` as it comes off the saw, along the grain first.  ``edges`` are
    the ends and edges that get edging, of the piece with its grain running to the right: ``near``
    end left, ``face`` edge below.  ``grain`` is whether it has one.  ``code`` is what the QR code
    holds.
    """

    ref: str
    name: str
    job: str
    size: str
    cut: str
    material: str
    edges: tuple[str, ...]
    grain: bool
    notes: tuple[str, ...]
    code: str


def label_texts(unit: Unit, number: str, cutting: Cutting | None = None) -> tuple[LabelText, ...]:
    """A label for every piece: as a plan cuts them (each layer and strip) with its offcuts worth
    keeping, or else for every part.  ``number`` is the job's, empty where it has none."""
    job = " ".join(filter(None, (number, unit.title)))
    if cutting is None:
        return tuple(_of_parts(unit, job))
    return (*_of_plan(cutting, number), *_of_offcuts(cutting))


def labels_pdf(
    texts: Sequence[LabelText], sheet: LabelSheet, title: str, when: datetime | None = None
) -> bytes:
    """Pages of labels, as many as it takes; ``when`` is the date that the PDF carries.

    Raises:
        ProblemsError: Typst isn't installed.
    """
    (made,) = typeset("labels", *labels_data(texts, sheet, title), when=when)
    return made


def labels_data(
    texts: Sequence[LabelText], sheet: LabelSheet, title: str
) -> tuple[dict[str, Any], dict[str, bytes]]:
    """Data for the template ``labels``, and the QR codes that it names."""
    codes = {f"qr/{number}.svg": _qr(each.code) for number, each in enumerate(texts)}
    data = {
        "title": title,
        "paper": paper_name(sheet.paper),
        "sheet": {
            "across": sheet.across,
            "count": sheet.count,
            "width": sheet.width,
            "height": sheet.height,
            "left": sheet.left,
            "top": sheet.top,
            "pitch_across": sheet.pitch_across,
            "pitch_down": sheet.pitch_down,
        },
        "labels": [
            {
                "ref": each.ref,
                "name": each.name,
                "job": each.job,
                "size": each.size,
                "cut": each.cut,
                "material": each.material,
                "edges": [side in each.edges for side in _SIDES],
                "grain": each.grain,
                "notes": list(each.notes),
                "code": name,
            }
            for each, name in zip(texts, codes, strict=True)
        ],
    }
    return data, codes


def _of_parts(unit: Unit, job: str) -> Iterator[LabelText]:
    measure = unit.display_unit
    for part in unit.parts:
        blank, cut = part.blank, part.rough_size
        if blank.grain is Grain.CROSSWISE:
            cut = (cut[1], cut[0], cut[2])
        yield _label(
            part.ref,
            part.name,
            job,
            _said(blank.size, measure),
            _unless_same(cut, blank.size, measure),
            blank.stock.described,
            edged_of(part),
            Grain.NONE not in (blank.grain, blank.stock.grain),
            (),
        )


def _of_plan(cutting: Cutting, number: str) -> Iterator[LabelText]:
    for planned in cutting.lots:
        lot = planned.lot
        for piece in lot.pieces:
            cut = (piece.length, piece.width or lot.section)
            for label in labels_of(lot, piece):
                own = "" if piece.inner else _unless_same(cut, label.finished, cutting.unit)
                yield _of_label(lot, label, own, number, cutting.unit, not piece.turning)


def _of_label(
    lot: Lot, label: Label, cut: str, number: str, unit: LengthUnit, grain: bool
) -> LabelText:
    return _label(
        label.ref,
        label.part,
        " ".join(filter(None, (number, label.job))),
        _said(label.finished, unit),
        cut,
        lot.material,
        label.edged,
        grain,
        label.notes,
    )


def _of_offcuts(cutting: Cutting) -> Iterator[LabelText]:
    kept = {each.name for each in cutting.kept}
    for name, lines in label_rows(cutting):
        if name in kept:
            size, material, *notes = lines
            yield _label(name, "Offcut", "", size, "", material, (), True, tuple(notes))


def _label(
    ref: str,
    name: str,
    job: str,
    size: str,
    cut: str,
    material: str,
    edges: Sequence[str],
    grain: bool,
    notes: tuple[str, ...],
) -> LabelText:
    short = job if len(job) <= _LONGEST else f"{job[: _LONGEST - 1]}{_MORE}"
    code = "\n".join(filter(None, (ref, name[:_LONGEST], short, size, material[:_LONGEST])))
    return LabelText(ref, name, short, size, cut, material, tuple(edges), grain, notes, code)


def _unless_same(cut: Sequence[float], finished: Sequence[float], unit: LengthUnit) -> str:
    """The size as cut, unless it is told as the finished one is."""
    said = _said(cut[:2], unit)
    return "" if said == _said(finished[:2], unit) else said


def _said(size: Sequence[float], unit: LengthUnit) -> str:
    return f"{' x '.join(format_length(each, unit) for each in size)} {unit}"


def _qr(text: str) -> bytes:
    """A QR code (ISO/IEC 18004, level M) as SVG, with the quiet zone of four modules that it
    asks for."""
    import segno

    made = io.BytesIO()
    segno.make(text, error="m", micro=False, encoding="utf-8").save(
        made, kind="svg", border=4, xmldecl=False, svgns=True, nl=False
    )
    return made.getvalue()
