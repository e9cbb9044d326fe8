"""The pages of lists in the job book."""

from __future__ import annotations

from rodwright.amounts import RUNS
from rodwright.cutting.whole import Cutting
from rodwright.handover.edge_list import edge_list
from rodwright.lengths import format_length
from rodwright.paper.lists.boxes import boxes_data, boxes_of
from rodwright.paper.lists.saw import saw_data, saw_list
from rodwright.paper.lists.set_ups import set_ups, set_ups_data
from rodwright.paper.sections import Section
from rodwright.unit import Unit


def lists_section(unit: Unit, cutting: Cutting | None = None) -> Section:
    """Cut list, edging, hardware by the box and set-ups, by a cutting plan where there is one."""
    measure = unit.display_unit
    return Section(
        "lists",
        "Lists for the bench",
        {
            "unit": measure,
            "planned": cutting is not None,
            "saw": saw_data(saw_list(unit, cutting), measure),
            "edges": [
                {
                    "what": f"{row.material}, {format_length(row.thickness, measure)} x "
                    f"{format_length(row.width, measure)} {measure}",
                    "kind": row.kind,
                    "strips": row.strips,
                    "get": f"{row.run_to_get(RUNS[measure]):g} {RUNS[measure].symbol}",
                    "refs": ", ".join(row.refs),
                }
                for row in edge_list(unit)
            ],
            "hardware": boxes_data(boxes_of(unit)),
            "set_ups": set_ups_data(set_ups(unit)),
        },
    )
