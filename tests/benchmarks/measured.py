"""One measurement in a process of its own; prints seconds (and memory) as JSON.

python measured.py growth 500
python measured.py rebuild
"""

from __future__ import annotations

import json
import resource
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

from ruamel.yaml import YAML

MODELS = Path(__file__).parents[2] / "models"
CLOCK = time.process_time
PARTS_PER_BAY = 22


def _set_out(data: dict[str, Any]) -> Any:
    from rodwright.setout import set_out_unit
    from rodwright.wishes import UnitSpec

    return set_out_unit(UnitSpec.model_validate(data, context={"unit": "mm"}))


def bays(count: int) -> dict[str, Any]:
    """A run of bays, each of ten housed shelves with lippings; no two bays are equally wide."""
    columns = [
        {"width": 400 + 0.01 * number, "shelves": {"count": 10, "ends": "housed"}}
        for number in range(count)
    ]
    width = sum(column["width"] for column in columns) + 18 * (count + 1)
    return {
        "title": "Bays",
        "size": {"width": width, "height": 2400, "depth": 300},
        "stock": {
            "ply": {"kind": "sheet", "material": "birch plywood", "thickness": 18},
            "ash": {"kind": "board", "material": "ash", "thickness": 22},
        },
        "carcass": {"stock": "ply"},
        "interior": {"columns": columns},
        "lipping": {"stock": "ash", "thickness": 10},
    }


def growth(parts: int) -> dict[str, float]:
    """Seconds for each stage of a unit of about so many parts, and memory in MB."""
    from rodwright.checks import check_solids
    from rodwright.handover.exports import EXPORTS, Content, Kind
    from rodwright.jobs.build import write_exports
    from rodwright.solids import solid_of
    from rodwright.solids.meshes import mesh_of
    from rodwright.unit.laid import laid_unit

    _set_out(bays(2))
    data = bays(max(2, round(parts / PARTS_PER_BAY)))
    figures: dict[str, float] = {}

    def stage(name: str, work: Callable[[], Any]) -> Any:
        start = CLOCK()
        result = work()
        figures[name] = CLOCK() - start
        return result

    runs = []
    for _ in range(3):  # so short that one may be disturbed
        unit = stage("set-out", lambda: _set_out(data))
        runs.append(figures["set-out"])
    figures["set-out"] = min(runs)
    stage("solids", lambda: [solid_of(shape) for shape in unit.shapes])
    stage("meshes", lambda: [mesh_of(shape) for shape in unit.shapes])
    stage("collisions", lambda: check_solids(unit))
    with tempfile.TemporaryDirectory() as folder:
        plain = [export for export in EXPORTS if export.kind is not Kind.PICTURES]
        out = Path(folder) / "out"
        stage("export", lambda: write_exports(plain, Content(laid_unit(unit)), out))
    figures["parts"] = len(unit.parts)
    figures["memory"] = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    return figures


def rebuild() -> dict[str, float]:
    """Seconds of a first build of the library wall and of one after a width has changed."""
    from rodwright.jobs.build import build

    data = YAML(typ="safe", pure=True).load(
        (MODELS / "library-wall.yaml").read_text(encoding="utf-8")
    )
    times = []
    with tempfile.TemporaryDirectory() as folder:
        for rail in (60, 65):
            data["face_frame"]["width"] = rail
            start = CLOCK()
            build(_set_out(data), Path(folder) / "out", pictures=False)
            times.append(CLOCK() - start)
    return {"first": times[0], "second": times[1]}


if __name__ == "__main__":
    figures = growth(int(sys.argv[2])) if sys.argv[1] == "growth" else rebuild()
    print(json.dumps(figures))
