"""The files of a build, one after another."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import asdict
from pathlib import Path

from rodwright.checks.findings import Finding, Severity
from rodwright.handover.edge_list import edge_list
from rodwright.handover.gltf import unit_glb
from rodwright.handover.json_text import json_text
from rodwright.handover.list_files import edges_csv, hardware_csv, lists_xlsx, parts_csv, parts_json
from rodwright.handover.lists import hardware_list
from rodwright.handover.products import products
from rodwright.handover.shop_part import PartsKind
from rodwright.handover.step import write_step_part, write_step_unit
from rodwright.handover.stl import part_stl, titled, unit_stl
from rodwright.handover.unit_json import unit_json
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit


def write_files(
    unit: Unit,
    folder: Path,
    kind: PartsKind,
    findings: Sequence[Finding],
    progress: Callable[[str], None],
) -> None:
    """Write a unit's files into an empty folder; see :func:`rodwright.handover.write_build`."""
    unit = laid_unit(unit)
    progress("writing lists")
    (folder / "parts-list.csv").write_bytes(parts_csv(unit, kind))
    (folder / "parts-list.xlsx").write_bytes(lists_xlsx(unit, kind))
    (folder / "parts-list.json").write_bytes(parts_json(unit, kind))
    if hardware_list(unit):
        (folder / "hardware.csv").write_bytes(hardware_csv(unit))
    if edge_list(unit):
        (folder / "edges.csv").write_bytes(edges_csv(unit))
    (folder / "unit.json").write_bytes(unit_json(unit))
    (folder / "findings.json").write_bytes(findings_json(findings))
    progress("writing STEP")
    write_step_unit(unit, folder / "unit.step")
    progress("writing GLB and STL")
    (folder / "unit.glb").write_bytes(unit_glb(unit))
    (folder / "unit.stl").write_bytes(unit_stl(unit))
    distinct = products(unit, kind)
    progress(f"writing {len(distinct)} parts")
    for product in distinct:
        place = folder / "parts" / product.file
        place.parent.mkdir(parents=True, exist_ok=True)
        # A thickness may have a point, so that these names have no suffix to replace.
        write_step_part(unit, product, place.with_name(f"{place.name}.step"))
        part = titled(part_stl(product.shop.part.shape), product.title)
        place.with_name(f"{place.name}.stl").write_bytes(part)


def findings_json(findings: Sequence[Finding]) -> bytes:
    """Findings as JSON, the gravest first, with how many there are of each severity."""
    order = list(Severity)
    counts = Counter(finding.severity for finding in findings)
    document = {
        "counts": {severity: counts[severity] for severity in order},
        "findings": [
            asdict(finding)
            for finding in sorted(findings, key=lambda finding: order.index(finding.severity))
        ],
    }
    return json_text(document)
