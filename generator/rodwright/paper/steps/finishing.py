"""The pages of finishing: areas, sanding, coats and amounts, cautions."""

from __future__ import annotations

from typing import Any

from rodwright.amounts import AREAS
from rodwright.assembly.finishing import finish_areas
from rodwright.lengths import LengthUnit
from rodwright.paper.sections import Section
from rodwright.trade.finishes import CAUTIONS, FINISHES, GRITS, TINS, Coat
from rodwright.unit import Unit

_RULES = (
    "Both faces get the same coats, backs and undersides too: wood that is sealed on one face "
    "alone takes up moisture on the other, and cups.",
    "What is glued stays bare: tape over housings, edges under lippings, and where the face frame "
    "goes. Loose panels are finished before they go into their grooves, or a bare strip shows when "
    "they shrink.",
    "What lies inside is finished before the glue-up; fronts, lippings and the face frame when "
    "they are flush.",
    "Try all of it on an offcut of each wood first.",
)


def finishing_section(unit: Unit) -> Section:
    """What there is to finish, with what, and how much of it."""
    areas, measure = finish_areas(unit), unit.display_unit
    said = AREAS[measure].said
    whole, shows = sum(each.whole for each in areas), sum(each.shows for each in areas)
    data = {
        "areas": [
            {
                "stock": each.stock,
                "material": each.material,
                "shows": said(each.shows),
                "faces": said(each.faces),
                "edges": said(each.edges),
                "whole": said(each.whole),
            }
            for each in areas
        ],
        "whole": said(whole),
        "shows": said(shows),
        "sanding": _sanding(unit),
        "rules": list(_RULES),
        "finishes": [
            {
                "name": finish.name,
                "last": finish.last_grit,
                "notes": list(finish.notes),
                "coats": [_coat(coat, shows, whole, measure) for coat in finish.coats],
            }
            for finish in FINISHES
        ],
        "cautions": list(CAUTIONS),
    }
    return Section("finishing", "Finishing", data)


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
