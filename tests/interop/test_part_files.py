"""Files of single parts, read back by programs that had no part in making them.

gmsh measures the bodies; Open CASCADE's reader gives the solid in which every place of the
list is looked for.
"""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from cadquery import importers

from kit.builds import write_build
from kit.specs import unit_from
from kit.told_places import EDGED, misplaced
from rodwright.handover.lists import PartsRow, parts_list
from rodwright.handover.names import file_paths
from rodwright.unit import Role, Unit
from rodwright.unit.shop_part import PartsKind

pytestmark = pytest.mark.xdist_group("part files")
"""What they share is made once."""

KINDS: tuple[PartsKind, ...] = ("cut", "finished")

MEASURE = """
import json, sys
import gmsh


def box(body):
    # Round a body's corners: gmsh's own boxes are loose round slanting holes.
    corners = gmsh.model.getBoundary([body], combined=False, recursive=True)
    places = [gmsh.model.getValue(0, tag, []) for _, tag in corners]
    return [choose(axis) for choose in (min, max) for axis in zip(*places)]


gmsh.initialize(["gmsh", "-v", "1"])
found = {}
for path in sys.argv[1:]:
    gmsh.clear()
    gmsh.model.occ.importShapes(path, highestDimOnly=False)
    gmsh.model.occ.synchronize()
    sheets = [(2, tag) for _, tag in gmsh.model.getEntities(2)
              if not len(gmsh.model.getAdjacencies(2, tag)[0])]  # of no solid
    bodies = [*gmsh.model.getEntities(3), *sheets]
    found[path] = [[body[0], box(body)] for body in bodies]
gmsh.finalize()
print(json.dumps(found))
"""

DOOR = """
size: {width: 700, height: 602, depth: 400}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
interior: {doors: {hung: overlay, count: 1}}
edging: {material: abs, thickness: 1, edges: [doors]}
"""

Box = list[float]


@pytest.fixture(scope="module", params=[EDGED, DOOR], ids=["edged", "door"])
def unit(request: pytest.FixtureRequest) -> Unit:
    return unit_from(request.param)


@pytest.fixture(scope="module")
def built(unit: Unit, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a whole build of either kind."""
    folder = tmp_path_factory.mktemp("parts")
    for kind in KINDS:
        write_build(unit, folder / kind, parts=kind)
    return folder


def files(unit: Unit, built: Path, kind: PartsKind) -> Iterator[tuple[PartsRow, Path]]:
    for row, path in zip(parts_list(unit, kind), file_paths(unit, kind), strict=True):
        yield row, (built / kind / "parts" / path).with_suffix(".step")


def bodies(paths: list[Path]) -> dict[str, tuple[list[Box], list[Box]]]:
    """The boxes round the solids and round the sheets that gmsh finds in each file."""
    done = subprocess.run(
        [sys.executable, "-c", MEASURE, *map(str, paths)],
        capture_output=True,
        text=True,
        check=True,
    )
    return {
        path: tuple([box for dim, box in found if dim == wanted] for wanted in (3, 2))  # type: ignore[misc]
        for path, found in json.loads(done.stdout).items()
    }


def test_gmsh_finds_the_blank_of_the_list_and_the_finished_outline_round_it(
    unit: Unit, built: Path
) -> None:
    listed = list(files(unit, built, "cut"))
    measured = bodies([path for _, path in listed])
    edged = 0
    for row, path in listed:
        [solid], sheets = measured[str(path)]
        assert solid[:3] == pytest.approx([0, 0, 0], abs=1e-5)
        assert solid[3:] == pytest.approx(
            [row.rough_length, row.rough_width, row.thickness], abs=1e-5
        )
        assert path.stem.endswith("-cut")
        if (row.rough_length, row.rough_width) == (row.length, row.width):
            assert sheets == []
            continue
        edged += 1
        [sheet] = sheets
        assert sheet[3] - sheet[0] == pytest.approx(row.length, abs=1e-5)
        assert sheet[4] - sheet[1] == pytest.approx(row.width, abs=1e-5)
    assert edged


def test_gmsh_finds_the_finished_piece_alone_where_that_is_asked_for(
    unit: Unit, built: Path
) -> None:
    listed = list(files(unit, built, "finished"))
    measured = bodies([path for _, path in listed])
    for row, path in listed:
        [solid], sheets = measured[str(path)]
        assert solid == pytest.approx([0, 0, 0, row.length, row.width, row.thickness], abs=1e-5)
        assert sheets == []
        assert path.stem.endswith("-finished")


def test_the_door_is_cut_two_thicknesses_of_edging_smaller(unit: Unit, built: Path) -> None:
    for row, path in files(unit, built, "cut"):
        if row.role is Role.DOOR:
            (edging,) = {
                each.thickness
                for part in unit.parts
                if part.ref == row.refs[0]
                for each in part.edged
            }
            box = importers.importStep(str(path)).solids().val().BoundingBox()
            assert box.xlen == pytest.approx(row.length - 2 * edging, abs=1e-5)
            assert box.ylen == pytest.approx(row.width - 2 * edging, abs=1e-5)
            assert row.up == "rear face"  # the hinge cups


@pytest.mark.parametrize("kind", KINDS)
def test_every_place_in_the_list_is_at_that_coordinate_of_the_file(
    unit: Unit, built: Path, kind: PartsKind
) -> None:
    for row, path in files(unit, built, kind):
        solid = importers.importStep(str(path)).solids().val()
        assert list(misplaced(row, solid)) == []


def test_the_unit_is_finished_whichever_its_parts_are(built: Path) -> None:
    assert (built / "cut" / "unit.step").read_bytes() == (
        built / "finished" / "unit.step"
    ).read_bytes()
