"""The unit taken apart, with the list of its parts."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from rodwright.amounts import format_weight
from rodwright.handover.lists import parts_list
from rodwright.lengths import format_length
from rodwright.paper.sections import Section
from rodwright.unit import Unit


def parts_section(unit: Unit, pictures: Mapping[str, bytes]) -> Section:
    """The parts with their refs, finished sizes and weights, and ``pictures`` of them by what they
    show."""
    measure = unit.display_unit
    names = {f"parts/{at}.jpg": title for at, title in enumerate(pictures)}
    data = {
        "unit": measure,
        "pictures": [[name, title] for name, title in names.items()],
        "rows": [
            {
                "refs": ", ".join(row.refs),
                "name": row.name,
                "quantity": row.quantity,
                "size": _size((row.length, row.width, row.thickness), unit),
                "material": row.material,
                "weight": format_weight(row.weight_each, measure),
            }
            for row in parts_list(unit)
        ],
    }
    files = dict(zip(names, pictures.values(), strict=True))
    return Section("parts", "The parts", data, files)


def _size(lengths: Sequence[float], unit: Unit) -> str:
    return " x ".join(format_length(each, unit.display_unit) for each in lengths)
