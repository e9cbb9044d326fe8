"""The pages of finishing: areas, sanding, coats and amounts, cautions."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from rodwright.amounts import AREAS
from rodwright.lengths import LengthUnit
from rodwright.making.finishing import FinishArea, finish_areas, finished_areas
from rodwright.paper.sections import Section
from rodwright.trade import finishes
from rodwright.trade.finishes import CAUTIONS, FINISHES, GRITS, OF_KIND, TINS, Coat
from rodwright.unit import Unit
from rodwright.unit.finish import Finish

_RULES = (
    "Solid wood gets the same coats on both faces, hidden ones too: sealed on one alone it takes "
    "up moisture on the other, and cups. Sheets stay bare where nobody looks; a thin back that is "
    "painted on its face may ask for one sealing coat behind.",
    "What is glued stays bare: tape over housings, edges under lippings, and where the face frame "
    "goes. Loose panels are finished before they go into their grooves, or a bare strip shows when "
    "they shrink.",
    "What lies inside is finished before the glue-up; fronts, lippings and the face frame when "
    "they are flush.",
    "Try all of it on an offcut of each wood first.",
)


def finishing_section(unit: Unit) -> Section:
    """What there is to finish, with what, and how much of it: of the finishes that were chosen, or
    of the usual ones where none was."""
    areas, measure = finish_areas(unit), unit.display_unit
    said = AREAS[measure].said
    chosen = finished_areas(unit)
    counted = [each for each in areas if each.finish is not None] if chosen else areas
    data = {
        "chosen": bool(chosen),
        "areas": [
            {
                "finish": each.finish.described if each.finish is not None else "stays bare",
                "stock": each.stock,
                "material": each.material,
                "shows": said(each.shows),
                "faces": said(each.faces),
                "edges": said(each.edges),
                "whole": said(each.whole),
                "unseen": said(each.unseen),
            }
            for each in sorted(areas, key=lambda each: _place(each.finish, chosen))
        ],
        "whole": said(sum(each.whole for each in counted)),
        "shows": said(sum(each.shows for each in counted)),
        "unseen": said(sum(each.unseen for each in counted)),
        "sanding": _sanding(unit),
        "rules": list(_RULES),
        "finishes": [
            _told(
                f"{_capital(finish.described)}: {OF_KIND[finish.kind].name.lower()}",
                OF_KIND[finish.kind],
                of_it,
                measure,
            )
            for finish, of_it in chosen.items()
        ]
        or [_told(usual.name, usual, areas, measure) for usual in FINISHES],
        "cautions": list(CAUTIONS),
    }
    return Section("finishing", "Finishing", data)


def _place(finish: Finish | None, chosen: Iterable[Finish]) -> int:
    """Where a finish comes among those that were chosen: what stays bare last."""
    order = list(chosen)
    return order.index(finish) if finish is not None else len(order)


def _told(
    name: str, finish: finishes.Finish, areas: Iterable[FinishArea], measure: LengthUnit
) -> dict[str, Any]:
    """A finish under a name, with what its coats take of these areas."""
    areas = list(areas)
    shows, whole = sum(each.shows for each in areas), sum(each.whole for each in areas)
    return {
        "name": name,
        "last": finish.last_grit,
        "notes": list(finish.notes),
        "coats": [_coat(coat, shows, whole, measure) for coat in finish.coats],
    }


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _sanding(unit: Unit) -> list[str]:
    kinds = {part.blank.stock.kind for part in unit.parts}
    found = []
    if "board" in kinds:
        found.append(
            f"Solid wood: {', '.join(str(grit) for grit in GRITS)}, along the grain, to the last "
            "grit of the finish chosen. End grain one grit finer: it drinks more."
        )
    if "sheet" in kinds:
        found.append(
            f"Sheets: from {GRITS[1]} on, by hand near edges: their face is thin, and soon through."
        )
    found.append("Break every sharp edge with 180 by hand: no finish stays on it. Vacuum, wipe.")
    return found


def _coat(coat: Coat, shows: float, whole: float, unit: LengthUnit) -> dict[str, Any]:
    tins, area = TINS[unit], AREAS[unit]
    least, most = (area.of(each) * tins.litre for each in coat.covers)

    def needed(square_metres: float) -> str:
        low, high = (each / tins.litre for each in coat.litres(square_metres))
        return f"{low:.1f} to {high:.1f} {tins.symbol}"

    return {
        "what": coat.what,
        "coats": coat.coats,
        "covers": f"{least:.0f} to {most:.0f} {area.symbol} a {_NAMES[tins.symbol]}",
        "shows": needed(shows),
        "whole": needed(whole),
        "buy": f"{tins.buy(coat.litres(whole)[1]):g} {tins.symbol}",
        "between": coat.between,
    }


_NAMES = {"l": "litre", "qt": "quart"}
