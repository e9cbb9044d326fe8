"""The unit taken apart, with the list of its parts."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from rodwright.amounts import format_weight
from rodwright.handover.lists import parts_list
from rodwright.lengths import format_length
from rodwright.paper.sections import Section
from rodwright.unit import Unit


def parts_section(unit: Unit, standing: Mapping[str, bytes], apart: Mapping[str, bytes]) -> Section:
    """The parts with their refs, finished sizes and weights, pictures of the unit ``standing`` and
    of it taken ``apart``, by what they show."""
    measure, pictures = unit.display_unit, {**standing, **apart}
    names = [[f"parts/{at}.jpg", title] for at, title in enumerate(pictures)]
    data = {
        "unit": measure,
        "standing": names[: len(standing)],
        "apart": names[len(standing) :],
        "rows": [
            {
                "refs": ", ".join(row.refs),
                "name": row.name,
                "quantity": row.quantity,
                "size": _size((row.length, row.width, row.thickness), unit),
                "material": "; ".join(filter(None, (row.material, row.finish))),
                "weight": format_weight(row.weight_each, measure),
            }
            for row in parts_list(unit)
        ],
    }
    files = {name: pictures[title] for name, title in names}
    return Section("parts", "The parts", data, files)


def _size(lengths: Sequence[float], unit: Unit) -> str:
    return " x ".join(format_length(each, unit.display_unit) for each in lengths)
