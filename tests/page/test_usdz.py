"""USDZ packages, opened again by usd-core, and held to the USDZ specification by their bytes."""

from __future__ import annotations

import io
import struct
import zipfile
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from PIL import Image
from pxr import Kind, Usd, UsdGeom, UsdShade, UsdValidation

from kit import samples, specs
from rodwright.jobs.new import model_path
from rodwright.page import usdz
from rodwright.page.placing import dresses, wares
from rodwright.page.usdz import unit_usdz
from rodwright.pictures.opened import opened
from rodwright.problems import ProblemsError
from rodwright.unit import Unit


@dataclass(frozen=True)
class Package:
    unit: Unit
    content: bytes
    stage: Any


def package_of(unit: Unit, path: Path) -> Package:
    content = unit_usdz(unit, dresses(unit), wares(unit))
    path.write_bytes(content)
    return Package(unit, content, Usd.Stage.Open(str(path)))


@pytest.fixture(scope="module", params=["linen-cupboard", "tape-drawers"])
def package(
    request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Package]:
    """One with doors, one with drawers."""
    unit = specs.unit_from(model_path(request.param).read_text(encoding="utf-8"))
    yield package_of(unit, tmp_path_factory.mktemp("usdz") / "unit.usdz")


def test_no_validator_of_usd_core_finds_anything(package: Package) -> None:
    every = UsdValidation.ValidationRegistry().GetOrLoadAllValidators()
    assert any("UsdzPackage" in each.GetMetadata().name for each in every)
    errors = UsdValidation.ValidationContext(every).Validate(package.stage)
    assert [each.GetErrorAsString() for each in errors] == []


def test_the_package_is_stored_aligned_and_holds_what_it_may(package: Package) -> None:
    """USDZ specification: a zip without compression or encryption, each file's data at a multiple
    of 64 bytes, a layer of USD first, pictures as PNG or JPEG."""
    names = []
    with zipfile.ZipFile(io.BytesIO(package.content)) as archive:
        for each in archive.infolist():
            head = struct.unpack_from("<4s5H3I2H", package.content, each.header_offset)
            assert (head[0], head[3]) == (b"PK\x03\x04", 0)
            assert (each.header_offset + 30 + head[-2] + head[-1]) % 64 == 0
            names.append(each.filename)
            if each.filename.endswith(".jpg"):
                assert Image.open(io.BytesIO(archive.read(each))).format == "JPEG"
    assert names[0].endswith(".usdc")
    assert {Path(name).suffix for name in names[1:]} == {".jpg"}
    assert len(package.content) < 5_000_000


def test_it_stands_on_the_floor_its_middle_where_it_is_placed(package: Package) -> None:
    stage, unit = package.stage, package.unit
    assert UsdGeom.GetStageUpAxis(stage) == "Y"
    assert UsdGeom.GetStageMetersPerUnit(stage) == 1.0
    top = stage.GetDefaultPrim()
    assert Usd.ModelAPI(top).GetKind() == Kind.Tokens.component
    boxes = UsdGeom.BBoxCache(0.0, ["default"])
    span = boxes.ComputeWorldBound(top).ComputeAlignedRange()
    low, high = np.array(span.GetMin()), np.array(span.GetMax())
    width, height, depth = (each / 1000 for each in unit.size)
    assert (low[0], low[1], high[1]) == pytest.approx((-width / 2, 0.0, height), abs=1e-5)
    assert (high[0], low[2]) == pytest.approx((width / 2, -depth / 2), abs=1e-5)
    # What doors and drawers are pulled by stands before the front, which looks towards +z.
    assert depth / 2 <= high[2] + 1e-5 < depth / 2 + 0.06


def parts_of(stage: Any, unit: Unit) -> dict[str, Any]:
    by_name = {f"{part.ref} {part.name}": part.ref for part in unit.parts}
    found = {by_name.get(each.GetDisplayName()): each for each in stage.Traverse()}
    found.pop(None)
    return found


def test_every_part_has_its_name_and_stands_where_it_should_shut_and_open(
    package: Package,
) -> None:
    stage, unit = package.stage, package.unit
    found = parts_of(stage, unit)
    assert found.keys() == {part.ref for part in unit.parts}
    width, _, depth = (each / 1000 for each in unit.size)
    rate, last = stage.GetTimeCodesPerSecond(), stage.GetEndTimeCode()
    middle = (last - rate) / 2  # the last second all is shut
    low = [each / 1000 for each in unit.envelope.low]
    for moved, at in ((unit, 0.0), (opened(unit), middle), (unit, last)):
        cache = UsdGeom.XformCache(at)
        for ref, prim in found.items():
            matrix = np.array(cache.GetLocalToWorldTransform(prim)).T
            (x, y, z), u = moved.part(ref).placement.origin, moved.part(ref).placement.length
            expected = [
                x / 1000 - low[0] - width / 2,
                z / 1000,
                depth / 2 - (y / 1000 - low[1]),
            ]
            assert matrix[:3, 3] == pytest.approx(expected, abs=2e-6)
            assert matrix[:3, 0] == pytest.approx([u[0], u[2], -u[1]], abs=1e-6)


def test_woods_are_pictures_at_their_scale_and_all_else_has_a_colour(package: Package) -> None:
    pictured = 0
    for prim in package.stage.Traverse():
        if not prim.IsA(UsdGeom.Mesh):
            continue
        material, _ = UsdShade.MaterialBindingAPI(prim).ComputeBoundMaterial()
        surface = material.ComputeSurfaceSource()[0]
        assert surface.GetIdAttr().Get() == "UsdPreviewSurface"
        colour = surface.GetInput("diffuseColor")
        places = UsdGeom.PrimvarsAPI(prim).GetPrimvar("st")
        points = UsdGeom.Mesh(prim).GetPointsAttr().Get()
        if colour.HasConnectedSource():
            assert len(places.Get()) == len(points)
            file = UsdShade.Shader(colour.GetConnectedSource()[0]).GetInput("file").Get()
            assert ".usdz[" in file.resolvedPath
            pictured += 1
        else:
            assert len(colour.Get()) == 3
            assert not places.HasValue()
    assert pictured > len(package.unit.parts)


def test_what_hangs_on_the_wall_hangs_above_the_floor(tmp_path: Path) -> None:
    unit = samples.bookcase()
    path = tmp_path / "unit.usdz"
    path.write_bytes(unit_usdz(unit, dresses(unit), floor=-700.0))
    boxes, stage = UsdGeom.BBoxCache(0.0, ["default"]), Usd.Stage.Open(str(path))
    span = boxes.ComputeWorldBound(stage.GetDefaultPrim()).ComputeAlignedRange()
    assert span.GetMin()[1] == pytest.approx(0.7)
    assert not stage.HasAuthoredTimeCodeRange()  # nothing opens, so nothing moves


def test_equal_units_give_equal_bytes() -> None:
    unit = samples.bookcase()
    first, second = (unit_usdz(unit, dresses(unit)) for _ in range(2))
    assert first == second


def test_a_missing_usd_core_is_told_with_what_installs_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(usdz, "find_spec", lambda _: None)
    unit = samples.bookcase()
    with pytest.raises(ProblemsError, match="usd-core") as told:
        unit_usdz(unit, dresses(unit))
    assert told.value.problems[0].remedy == "Install it: `pip install usd-core`."
