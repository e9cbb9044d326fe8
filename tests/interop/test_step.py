"""STEP files read back by programs that had no part in making them.

gmsh (its own import, in a fresh process) measures the solids; Open CASCADE's STEP reader
gives names, colours, materials and nesting.  Sizes are held against rodwright.mass, which
is arithmetic alone.
"""

from __future__ import annotations

import json
import math
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from cadquery import Face, Shape
from hypothesis import given, settings
from OCP.BRepAdaptor import BRepAdaptor_Surface
from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Quantity import Quantity_Color, Quantity_TOC_sRGB
from OCP.STEPCAFControl import STEPCAFControl_Reader
from OCP.TCollection import TCollection_ExtendedString
from OCP.TDataStd import TDataStd_Name, TDataStd_NamedData
from OCP.TDF import TDF_Label, TDF_LabelSequence
from OCP.TDocStd import TDocStd_Document
from OCP.TopAbs import TopAbs_FACE
from OCP.XCAFApp import XCAFApp_Application
from OCP.XCAFDoc import (
    XCAFDoc_ColorSurf,
    XCAFDoc_DocumentTool,
    XCAFDoc_Material,
    XCAFDoc_ShapeTool,
)

from kit import samples, specs
from kit.strategies import shapes
from rodwright.geometry import Vector
from rodwright.handover.lists import parts_list
from rodwright.handover.products import Product, products
from rodwright.handover.step import write_step_part, write_step_unit
from rodwright.jobs.new import model_names, model_path
from rodwright.mass import mass_of
from rodwright.solids import solid_of
from rodwright.solids.worked_faces import worked_faces
from rodwright.unit import Edging, Part, ShapeKey, Surface, Unit
from rodwright.unit.laid import laid

pytestmark = pytest.mark.xdist_group("step")
"""What they share is made once."""

MEASURE = """
import json, sys
import gmsh
gmsh.initialize(["gmsh", "-v", "1"])
found = {}
for path in sys.argv[1:]:
    gmsh.clear()
    volumes = [tag for dim, tag in gmsh.model.occ.importShapes(path) if dim == 3]
    found[path] = [
        [gmsh.model.occ.getMass(3, tag), gmsh.model.occ.getCenterOfMass(3, tag),
         gmsh.model.occ.getBoundingBox(3, tag)]
        for tag in volumes
    ]
gmsh.finalize()
print(json.dumps(found))
"""

KEYS = [
    TCollection_ExtendedString(key)
    for key in (
        "ref",
        "name",
        "quantity",
        "stock",
        "material",
        "thickness",
        "grain direction",
        "edging",
        "lipping",
        "cut state",
        "size as cut",
        "finished size",
        "face up",
        "measured",
        "second side",
        "before and after",
        "worked later",
    )
]

Measured = dict[str, list[Any]]
NAMES = ("sample", *model_names())


def unit_called(name: str) -> Unit:
    if name == "sample":
        return samples.bookcase()
    return specs.unit_from(model_path(name).read_text(encoding="utf-8"))


def alone(part: Part) -> Unit:
    return Unit("Alone", part.bounds(), (part,))


@pytest.fixture(scope="module")
def units() -> dict[str, Unit]:
    return {name: unit_called(name) for name in NAMES}


@pytest.fixture(scope="module")
def folder(units: dict[str, Unit], tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Every unit as ``name.step`` and its distinct parts as ``name-ref.step``."""
    folder = tmp_path_factory.mktemp("step")
    for name, unit in units.items():
        write_step_unit(unit, folder / f"{name}.step")
        for product in products(unit, "cut"):
            write_step_part(unit, product, folder / f"{name}-{product.part.ref}.step")
    worked = alone(samples.worked_part())
    write_step_part(worked, products(worked, "cut")[0], folder / "worked.step")
    return folder


@pytest.fixture(scope="module")
def measured(folder: Path) -> Measured:
    """What gmsh finds in each file: volume, centre and bounding box of every solid."""
    files = sorted(folder.glob("*.step"))
    done = subprocess.run(
        [sys.executable, "-c", MEASURE, *map(str, files)],
        capture_output=True,
        text=True,
        check=True,
    )
    return {Path(path).stem: solids for path, solids in json.loads(done.stdout).items()}


@pytest.mark.parametrize("name", NAMES)
def test_gmsh_measures_the_unit(name: str, units: dict[str, Unit], measured: Measured) -> None:
    unit, solids = units[name], list(measured[name])
    assert len(solids) == len(unit.parts)
    for part in unit.parts:
        mass = mass_of(part.shape)
        centre = part.placement.to_unit(mass.centroid)
        nearest = min(solids, key=lambda solid: math.dist(solid[1], centre))
        solids.remove(nearest)
        assert nearest[0] == pytest.approx(mass.volume, rel=2e-6)
        assert nearest[1] == pytest.approx(centre, abs=1e-3)
        box = part.bounds()
        assert nearest[2] == pytest.approx((*box.low, *box.high), abs=1e-5)


@pytest.mark.parametrize("name", NAMES)
def test_gmsh_measures_each_distinct_part_in_its_own_frame(
    name: str, units: dict[str, Unit], measured: Measured
) -> None:
    for product in products(units[name], "cut"):
        # The finished outline is a sheet: it counts as no volume.
        [[volume, centre, box]] = measured[f"{name}-{product.part.ref}"]
        part = product.part
        mass = mass_of(part.shape)
        assert volume == pytest.approx(mass.volume, rel=2e-6)
        assert centre == pytest.approx(mass.centroid, abs=1e-3)
        assert box == pytest.approx((0, 0, 0, *part.blank.size), abs=1e-5)


def test_gmsh_measures_a_part_with_every_working(
    measured: Measured,
) -> None:
    [[volume, centre, _]] = measured["worked"]
    mass = mass_of(laid([samples.worked_part()])[0].shape)
    assert volume == pytest.approx(mass.volume, rel=2e-6)
    assert centre == pytest.approx(mass.centroid, abs=1e-3)


# --- Open CASCADE's reader ---------------------------------------------------------------


class Read:
    """A STEP file in an XCAF document."""

    def __init__(self, path: Path) -> None:
        self.document = TDocStd_Document(TCollection_ExtendedString("BinXCAF"))
        XCAFApp_Application.GetApplication_s().InitDocument(self.document)
        reader = STEPCAFControl_Reader()
        reader.SetColorMode(True)
        reader.SetNameMode(True)
        reader.SetMatMode(True)
        reader.SetMetaMode(True)
        Interface_Static.SetIVal_s("read.stepcaf.subshapes.name", 1)
        assert reader.ReadFile(str(path)) == IFSelect_RetDone
        assert reader.Transfer(self.document)

    def roots(self) -> list[TDF_Label]:
        labels = TDF_LabelSequence()
        XCAFDoc_DocumentTool.ShapeTool_s(self.document.Main()).GetFreeShapes(labels)
        return list(labels)

    def uses(self, product: TDF_Label) -> Iterator[tuple[str, TDF_Label]]:
        """Each product used in this one, with the name of its use."""
        labels = TDF_LabelSequence()
        XCAFDoc_ShapeTool.GetComponents_s(product, labels)
        for label in labels:
            used = TDF_Label()
            assert XCAFDoc_ShapeTool.GetReferredShape_s(label, used)
            yield name_of(label), used

    def colour(self, product: TDF_Label) -> str:
        shape = XCAFDoc_ShapeTool.GetShape_s(product)
        colour = Quantity_Color()
        tool = XCAFDoc_DocumentTool.ColorTool_s(self.document.Main())
        assert tool.GetColor(shape, XCAFDoc_ColorSurf, colour)
        return "#" + "".join(
            f"{round(each * 255):02x}" for each in colour.Values(Quantity_TOC_sRGB)
        )

    def materials(self) -> set[tuple[str, float]]:
        """Name and density of every material."""
        labels = TDF_LabelSequence()
        XCAFDoc_DocumentTool.MaterialTool_s(self.document.Main()).GetMaterialLabels(labels)
        found = set()
        for label in labels:
            material = XCAFDoc_Material()
            assert label.FindAttribute(XCAFDoc_Material.GetID_s(), material)
            found.add((material.GetName().ToCString(), round(material.GetDensity(), 6)))
        return found

    def properties(self, product: TDF_Label) -> dict[str, str | int]:
        """User-defined attributes of a product."""
        data = TDataStd_NamedData()
        assert product.FindAttribute(TDataStd_NamedData.GetID_s(), data)
        texts = {
            key.ToExtString(): data.GetString(key).ToExtString()
            for key in KEYS
            if data.HasString(key)
        }
        whole = {key.ToExtString(): data.GetInteger(key) for key in KEYS if data.HasInteger(key)}
        return {**texts, **whole}

    def faces(self, product: TDF_Label) -> list[tuple[str, Face]]:
        """The named faces of a product."""
        labels = TDF_LabelSequence()
        XCAFDoc_ShapeTool.GetSubShapes_s(product, labels)
        return [
            (name_of(label), Face(shape))
            for label in labels
            if (shape := XCAFDoc_ShapeTool.GetShape_s(label)).ShapeType() == TopAbs_FACE
        ]


def name_of(label: TDF_Label) -> str:
    name = TDataStd_Name()
    assert label.FindAttribute(TDataStd_Name.GetID_s(), name)
    return str(name.Get().ToExtString())


@pytest.mark.parametrize("name", NAMES)
def test_names_colours_and_nesting_come_back(
    name: str, units: dict[str, Unit], folder: Path
) -> None:
    unit, read = units[name], Read(folder / f"{name}.step")
    [root] = read.roots()
    assert name_of(root) == unit.title
    listed = {ref: f"{row.refs[0]} {row.name}" for row in parts_list(unit) for ref in row.refs}
    refs = []
    for group_name, group in read.uses(root):
        assert name_of(group) == group_name
        for ref, product in read.uses(group):
            part = unit.part(ref)
            assert part.group == group_name
            assert name_of(product) == listed[ref]
            assert read.colour(product) == part.blank.stock.colour
            refs.append(ref)
    assert sorted(refs) == sorted(part.ref for part in unit.parts)


@pytest.mark.parametrize("name", NAMES)
def test_materials_come_back_in_grams_per_cubic_centimetre(
    name: str, units: dict[str, Unit], folder: Path
) -> None:
    stocks = {part.blank.stock for part in units[name].parts}
    expected = {(stock.described, round(stock.density / 1000, 6)) for stock in stocks}
    assert Read(folder / f"{name}.step").materials() == expected


def test_a_part_comes_back_with_name_and_colour(folder: Path) -> None:
    part, read = samples.worked_part(), Read(folder / "worked.step")
    [root] = read.roots()
    assert name_of(root) == "X1 Worked part"
    assert read.colour(root) == part.blank.stock.colour


@pytest.mark.parametrize("name", NAMES)
def test_properties_come_back_from_unit_and_part_files(
    name: str, units: dict[str, Unit], folder: Path
) -> None:
    unit, read = units[name], Read(folder / f"{name}.step")
    expected = {each.part.ref: dict(each.properties) for each in products(unit, "finished")}
    [root] = read.roots()
    found = {}
    for _, group in read.uses(root):
        for _, product in read.uses(group):
            properties = read.properties(product)
            found[str(properties["ref"]).split(",")[0]] = properties
    assert found == expected
    for each in products(unit, "cut"):
        part = Read(folder / f"{name}-{each.part.ref}.step")
        [root] = part.roots()
        assert name_of(root) == each.name
        assert part.properties(root) == dict(each.properties)


def depths_and_widths(face: Face, size: Vector) -> tuple[float, float]:
    """How far a round hole's wall goes in from the nearer face, and its diameter."""
    box = face.BoundingBox()
    return (
        min(box.zmax, size[2] - box.zmin),
        2 * BRepAdaptor_Surface(face.wrapped).Cylinder().Radius(),
    )


def test_faces_of_a_row_for_adjustable_shelves_come_back_by_name(tmp_path: Path) -> None:
    unit = unit_called("boot-room")
    product = next(
        each for each in products(unit, "cut") if any("adjustable" in it for it in each.workings)
    )
    write_step_part(unit, product, tmp_path / "part.step")
    read = Read(tmp_path / "part.step")
    [root] = read.roots()
    part = product.part
    holes = [
        working
        for working, name in zip(part.workings, product.workings, strict=True)
        if name == "row for adjustable shelves, 5 mm, 10 deep"
    ]
    faces = [
        face for name, face in read.faces(root) if name.startswith("row for adjustable shelves")
    ]
    walls = [face for face in faces if face.geomType() == "CYLINDER"]
    assert len(holes) >= 5
    assert len(walls) == len(holes)  # and a floor for each
    assert len(faces) == 2 * len(holes)
    for wall in walls:
        assert depths_and_widths(wall, part.blank.size) == pytest.approx((10.0, 5.0), abs=1e-6)
    places = sorted((round(wall.Center().x, 4), round(wall.Center().y, 4)) for wall in walls)
    assert places == sorted(hole.position for hole in holes)


@pytest.mark.parametrize("name", NAMES)
def test_every_working_of_a_part_has_a_named_face(
    name: str, units: dict[str, Unit], folder: Path
) -> None:
    for product in products(units[name], "cut"):
        read = Read(folder / f"{name}-{product.part.ref}.step")
        [root] = read.roots()
        solid = next((each for use, each in read.uses(root) if use == "as cut"), root)
        names = {each for face, _ in read.faces(solid) for each in face.split("; ")}
        assert names == set(product.workings)


def edged() -> Product:
    """A part with tape on an edge and an end: cut 118 wide, 399 long."""
    part = samples.worked_part()
    tape = (Edging(Surface.FACE_EDGE, "abs", 2.0), Edging(Surface.FAR_END, "abs", 1.0))
    return products(alone(replace(part, workings=part.workings[:5], edged=tape)), "cut")[0]


def test_the_finished_outline_comes_back_as_a_sheet_of_its_own(tmp_path: Path) -> None:
    product = edged()
    write_step_part(alone(samples.worked_part()), product, tmp_path / "part.step")
    read = Read(tmp_path / "part.step")
    [root] = read.roots()
    assert name_of(root) == "X1 Worked part"
    bodies = dict(read.uses(root))
    assert list(bodies) == ["as cut", "finished outline"]
    solid, sheet = (Shape.cast(XCAFDoc_ShapeTool.GetShape_s(each)) for each in bodies.values())
    assert [len(solid.Solids()), len(sheet.Solids())] == [1, 0]
    assert len(sheet.Faces()) == 1
    cut, outline = product.part.blank.size, product.shop.finished
    box = solid.BoundingBox()
    assert (box.xlen, box.ylen, box.zlen) == pytest.approx(cut, abs=1e-5)
    box = sheet.BoundingBox()
    assert (box.xmin, box.ymin) == pytest.approx(outline.low[:2], abs=1e-5)
    assert (box.xmax, box.ymax) == pytest.approx(outline.high[:2], abs=1e-5)
    assert sheet.Faces()[0].Area() == pytest.approx(400 * 120)


def unmatched(read: list[tuple[str, Face]], expected: list[tuple[str, Face]]) -> list[str]:
    """Names of faces that have none of the same name, area and middle among the others."""
    left = [(name, face.Area(), face.Center()) for name, face in expected]
    missed = []
    for name, face in read:
        area, middle = face.Area(), face.Center()
        same = [
            each
            for each in left
            if each[0] == name
            and each[1] == pytest.approx(area, rel=1e-3, abs=0.02)
            and (each[2] - middle).Length < 0.05
        ]
        if same:
            left.remove(same[0])
        else:
            missed.append(name)
    return missed + [name for name, _, _ in left]


@settings(max_examples=25)
@given(shapes(most=4))
def test_names_are_on_the_faces_that_the_workings_left(shape: ShapeKey) -> None:
    blank = replace(
        samples.worked_part().blank, length=shape[0][0], width=shape[0][1], thickness=shape[0][2]
    )
    unit = alone(replace(samples.worked_part(), blank=blank, workings=shape[1]))
    product = products(unit, "cut")[0]
    product = replace(product, workings=tuple(f"working {i}" for i in range(len(shape[1]))))
    own = product.part.shape
    expected = [
        ("; ".join(f"working {index}" for index in left), face)
        for face, left in zip(solid_of(own).Faces(), worked_faces(own), strict=True)
        if left
    ]
    with tempfile.TemporaryDirectory() as folder:
        write_step_part(unit, product, Path(folder) / "part.step")
        read = Read(Path(folder) / "part.step")
        [root] = read.roots()
        assert unmatched(read.faces(root), expected) == []


NAMED = """
import json, sys
import gmsh
gmsh.initialize(["gmsh", "-v", "1"])
gmsh.option.setNumber("Geometry.OCCImportLabels", 1)
gmsh.open(sys.argv[1])
print(json.dumps({
    dim: [gmsh.model.getEntityName(dim, tag) for _, tag in gmsh.model.getEntities(dim)]
    for dim in (2, 3)
}))
gmsh.finalize()
"""


def test_gmsh_keeps_solid_and_outline_apart_by_name(tmp_path: Path) -> None:
    write_step_part(alone(samples.worked_part()), edged(), tmp_path / "part.step")
    done = subprocess.run(
        [sys.executable, "-c", NAMED, str(tmp_path / "part.step")],
        capture_output=True,
        text=True,
        check=True,
    )
    names = json.loads(done.stdout)
    [solid] = names["3"]
    assert "as cut" in solid
    assert sum("finished outline" in name for name in names["2"]) == 1


@pytest.mark.parametrize("title", ["Bücherwand für Zoë", "L'étagère \\ #12", "書棚", "Shelf 📚 ok"])
def test_titles_in_any_script_come_back(title: str, tmp_path: Path) -> None:
    write_step_unit(replace(samples.bookcase(), title=title), tmp_path / "unit.step")
    read = Read(tmp_path / "unit.step")  # its labels live no longer than the document
    [root] = read.roots()
    assert name_of(root) == title
