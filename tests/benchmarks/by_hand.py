"""The library wall written by hand in CadQuery: what Rodwright's build is measured against.

Every size is worked out here from models/library-wall.yaml, as somebody would who draws
just this one piece.  Run as a script with a folder, it writes the same files as a build
without pictures: STEP, STL and GLB of the unit, STEP and STL of each distinct part, and
the parts list.  Every mesh has the tolerances of Rodwright's own, which the exporters'
defaults are up to hundreds of times finer than.
"""

from __future__ import annotations

import csv
import json
import math
import sys
from pathlib import Path

import cadquery as cq
import openpyxl

W, H, D, T, HD = 2982.0, 2378.0, 317.5, 18.0, 6.0
FLOOR, CEILING, BAY = 58.0, 2360.0, 723.0
FT, FW, MW, R, END = 25.0, 60.0, 44.0, 5.0, 34.0
DIVIDERS = [T + BAY + i * (BAY + T) for i in range(3)]
OUTER = [478.0, 854.0, 1356.0, 1858.0]
LINEAR, ANGULAR = 0.02, 0.4
"""What `rodwright.solids.meshes` gives to Open CASCADE's mesher: mm, absolute, and radians."""
STEP_UP = (CEILING - FLOOR - 5 * 36.0) / 6
INNER = [FLOOR + STEP_UP + i * (STEP_UP + 36.0) for i in range(5)]


def box(x: float, y: float, z: float, dx: float, dy: float, dz: float) -> cq.Workplane:
    return cq.Workplane("XY").box(dx, dy, dz, centered=False).translate((x, y, z))


def cut(body: cq.Workplane, *tools: cq.Workplane) -> cq.Workplane:
    for tool in tools:
        body = body.cut(tool, clean=False)
    return body


def upright(x: float, low: float, high: float, left: list[float], right: list[float]):
    body = box(x, 0, low, T, D, high - low)
    body = cut(body, *(box(x, -1, z, HD, D + 2, 36) for z in left))
    return cut(body, *(box(x + T - HD, -1, z, HD, D + 2, 36) for z in right))


def side(x: float, inner: float) -> cq.Workplane:
    body = box(x, 0, 0, T, D, H)
    body = cut(body, *(box(inner, -1, z, HD, D + 2, 36) for z in OUTER))
    return cut(body, box(inner, -1, 40, HD, D + 2, T), box(inner, -1, CEILING, HD, D + 2, T + 1))


def level(z: float, housings: float) -> cq.Workplane:
    body = box(T - HD, 0, z, W - 2 * T + 2 * HD, D, T)
    return cut(body, *(box(x, -1, housings, T, D + 2, HD) for x in DIVIDERS))


def eased(x: float, y: float, z: float, length: float, axis: str, dx: int, dz: int):
    """What rounding takes off an arris: a bar less the cylinder it leaves."""
    if axis == "z":
        bar = box(min(x, x + dx * R), y - 1, z, R, R + 1, length)
        rod = cq.Workplane("XY").circle(R).extrude(length).translate((x + dx * R, y + R, z))
    else:
        bar = box(x, y - 1, min(z, z + dz * R), length, R + 1, R)
        rod = cq.Workplane("YZ").circle(R).extrude(length).translate((x, y + R, z + dz * R))
    return bar.cut(rod, clean=False)


def frame() -> dict[str, cq.Workplane]:
    middles = [x + T / 2 for x in DIVIDERS]
    parts = {}
    for ref, points, arris in (
        ("ST1", [(0, 0), (FW, FW), (FW, H - FW), (0, H)], eased(FW, -FT, 0, H, "z", -1, 0)),
        (
            "ST2",
            [(W, 0), (W - FW, FW), (W - FW, H - FW), (W, H)],
            eased(W - FW, -FT, 0, H, "z", 1, 0),
        ),
    ):
        parts[ref] = cut(cq.Workplane("XZ").polyline(points).close().extrude(FT), arris)
    edges = [0.0, *(m + s * MW / 2 for m in middles for s in (-1, 1)), W]
    for ref, points, z, up in (
        ("RL1", [(0, 0), (FW, FW), (W - FW, FW), (W, 0)], FW, -1),
        ("RL2", [(0, H), (FW, H - FW), (W - FW, H - FW), (W, H)], H - FW, 1),
    ):
        body = cq.Workplane("XZ").polyline(points).close().extrude(FT)
        runs = zip(edges[::2], edges[1::2], strict=True)
        parts[ref] = cut(body, *(eased(a, -FT, z, b - a, "x", 0, up) for a, b in runs))
    for number, middle in enumerate(middles):
        body = box(middle - MW / 2, -FT, FW, MW, FT, H - 2 * FW)
        arrises = [eased(middle + s * MW / 2, -FT, FW, H - 2 * FW, "z", -s, 0) for s in (-1, 1)]
        parts[f"ST{number + 3}"] = cut(body, *arrises)
    return parts


def spread(low: float, high: float) -> list[float]:
    """Screws from one place to another, 175 mm apart at the most."""
    count = math.ceil((high - low) / 175.0)
    return [low + i * (high - low) / count for i in range(count + 1)]


def back() -> cq.Workplane:
    """The back, with a clearance hole for every screw into what is in front of it."""
    points = [(x, z) for z in (49.0, H - 9.0) for x in spread(52, W - 52)]
    points += [(x, z) for x in (9.0, W - 9.0) for z in spread(80, H - 40)]
    points += [(x + T / 2, z) for x in DIVIDERS for z in spread(92, H - 52)]
    for bay, heights in enumerate((OUTER, INNER, INNER, OUTER)):
        x = T + bay * (BAY + T)
        points += [(each, z + T / 2) for z in heights for each in spread(x + END, x + BAY - END)]
    sheet = cq.Workplane("XZ", origin=(0, D, 0)).center(W / 2, (H + 40) / 2).rect(W, H - 40)
    sheet = sheet.center(-W / 2, -(H + 40) / 2).pushPoints(points).circle(2.0)
    return sheet.extrude(-6.5)


def solids() -> dict[str, dict[str, cq.Workplane]]:
    groups: dict[str, dict[str, cq.Workplane]] = {
        "Carcass": {}, "Shelves": {}, "Back": {}, "Face frame": {}, "Lippings": {}
    }  # fmt: skip
    carcass = groups["Carcass"]
    carcass["SD1"], carcass["SD2"] = side(0, T - HD), side(W - T, W - T)
    carcass["BT1"], carcass["TP1"] = level(40, FLOOR - HD), level(CEILING, CEILING)
    for number, (x, left, right) in enumerate(
        zip(DIVIDERS, (OUTER, INNER, INNER), (INNER, INNER, OUTER), strict=True), start=1
    ):
        carcass[f"DV{number}"] = upright(x, FLOOR - HD, CEILING + HD, left, right)
    groups["Back"]["BK1"] = back()
    groups["Face frame"] = frame()
    faces = [FW, *(x + T / 2 + s * MW / 2 for x in DIVIDERS for s in (-1, 1)), W - FW]
    count = 0
    for bay, heights in enumerate((OUTER, INNER, INNER, OUTER)):
        x = T + bay * (BAY + T)
        for z in heights:
            count += 1
            for layer in range(2):
                shelf = box(x - HD, 0, z + layer * T, BAY + 2 * HD, D, T)
                groups["Shelves"][f"SH{count}{'ab'[layer]}"] = shelf
            left, right = faces[2 * bay], faces[2 * bay + 1]
            groups["Lippings"][f"LP{count}"] = box(left, -20, z, right - left, 20, 36)
    return groups


def mesh(shape: cq.Shape, path: Path) -> None:
    shape.exportStl(str(path), LINEAR, ANGULAR, relative=False)


def main(folder: Path) -> None:
    parts = folder / "parts"
    parts.mkdir(parents=True)
    whole = cq.Assembly(name="Guest-house library wall")
    rows, seen = [], set()
    for group, members in solids().items():
        branch = cq.Assembly(name=group)
        for ref, body in members.items():
            solid = body.val()
            branch.add(body, name=ref, color=cq.Color(0.86, 0.78, 0.63))
            bounds = solid.BoundingBox()
            volume = round(solid.Volume(), 3)
            rows.append([ref, group, bounds.xlen, bounds.ylen, bounds.zlen, volume * 7e-7])
            if volume not in seen:
                seen.add(volume)
                cq.exporters.export(body, str(parts / f"{ref}.step"))
                mesh(solid, parts / f"{ref}.stl")
        whole.add(branch)
    whole.export(str(folder / "unit.step"))
    # The GLB takes the meshes that the STL leaves on the solids.
    mesh(whole.toCompound(), folder / "unit.stl")
    whole.export(str(folder / "unit.glb"), tolerance=LINEAR, angularTolerance=ANGULAR)
    with (folder / "parts-list.csv").open("w", newline="") as file:
        csv.writer(file).writerows(rows)
    (folder / "parts-list.json").write_text(json.dumps(rows))
    book = openpyxl.Workbook()
    for row in rows:
        book.active.append(row)
    book.save(folder / "parts-list.xlsx")


if __name__ == "__main__":
    main(Path(sys.argv[1]))
