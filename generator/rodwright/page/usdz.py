"""USDZ: the unit as Apple's devices place it in a room (OpenUSD; its USDZ specification).

Metres, y up, the unit's front towards +z; it stands on the floor, y = 0, and its middle over the
origin, where a device puts it.
"""

from __future__ import annotations

import hashlib
from collections.abc import Mapping, Sequence
from importlib.util import find_spec
from os import utime
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import numpy as np

from rodwright.handover.clips import Clip, Move, opening
from rodwright.handover.dressed import (
    METRES,
    PANE,
    Y_UP,
    Dress,
    Look,
    Ware,
    cut_by_side,
    look_at,
    places,
)
from rodwright.handover.gltf import flat_mesh, linear_colour
from rodwright.handover.names import groups, shown_name
from rodwright.pictures.triangles import Mesh
from rodwright.problems import Problem, ProblemsError
from rodwright.unit import Part, Swing, Unit

_A_SECOND = 24.0
"""Time codes."""
_WRITTEN = 500_000_000
"""Seconds since 1970 at which the files in a package are said to be written, so that equal units
give equal bytes."""


def refuse_without_usd() -> None:
    """Refuse before the work what needs usd-core where it is missing.

    Raises:
        ProblemsError: it isn't installed.
    """
    if find_spec("pxr") is None:
        raise ProblemsError(
            [
                Problem(
                    "usd-core, which USDZ files are made with, isn't installed",
                    "Install it: `pip install usd-core`.",
                )
            ]
        )


def unit_usdz(
    unit: Unit, dress: Mapping[str, Dress], ware: Sequence[Ware] = (), *, floor: float = 0.0
) -> bytes:
    """The unit as USDZ: unit > group > part, each with the name it is shown by.

    ``dress`` is how each part looks, by its ref, ``ware`` what is bought in; ``floor`` is the z of
    the floor, mm.  Doors and drawers open and shut as in :func:`unit_glb`.

    Raises:
        ProblemsError: usd-core isn't installed.
        ValueError: a part has no single closed solid.
    """
    refuse_without_usd()
    from pxr import Sdf, UsdUtils

    with TemporaryDirectory() as place:
        folder = Path(place)
        root = folder / "unit.usdc"
        _Stage(unit, dress, ware, folder).write(root, floor)
        for file in folder.iterdir():
            utime(file, (_WRITTEN, _WRITTEN))
        package = folder / "unit.usdz"
        if not UsdUtils.CreateNewUsdzPackage(Sdf.AssetPath(str(root)), str(package)):
            raise RuntimeError("usd-core made no package")
        return package.read_bytes()


class _Stage:
    """One unit's stage in the making."""

    def __init__(
        self, unit: Unit, dress: Mapping[str, Dress], ware: Sequence[Ware], folder: Path
    ) -> None:
        self._unit, self._dress, self._ware, self._folder = unit, dress, ware, folder
        self._materials: dict[tuple[Look, bytes | None], Any] = {}
        self._clip: Clip = opening(unit)
        self._move_of = {ref: move for move in self._clip.moves for ref in move.motion.refs}

    def write(self, root: Path, floor: float) -> None:
        from pxr import Kind, Usd, UsdGeom

        unit = self._unit
        self._usd = stage = Usd.Stage.CreateNew(str(root))
        UsdGeom.SetStageUpAxis(stage, UsdGeom.Tokens.y)
        UsdGeom.SetStageMetersPerUnit(stage, 1.0)
        if self._clip.moves:
            stage.SetTimeCodesPerSecond(_A_SECOND)
            stage.SetFramesPerSecond(_A_SECOND)
            stage.SetStartTimeCode(0.0)
            stage.SetEndTimeCode(self._clip.length * _A_SECOND)
        top = UsdGeom.Xform.Define(stage, "/Unit")
        top.GetPrim().SetDisplayName(unit.title)
        Usd.ModelAPI(top).SetKind(Kind.Tokens.component)
        stage.SetDefaultPrim(top.GetPrim())
        low, high = np.array(unit.envelope.low), np.array(unit.envelope.high)
        middle = (low + high) / 2
        to = Y_UP[:3, :3] @ [-middle[0], -middle[1], -floor] * METRES
        top.AddTranslateOp().Set(tuple(to.tolist()))
        UsdGeom.Scope.Define(stage, "/Unit/Materials")
        for number, (name, parts) in enumerate(groups(unit).items(), 1):
            group = self._node(f"/Unit/Group{number}", name)
            self._parts(group, parts)
        stage.GetRootLayer().Save()

    def _node(self, path: str, name: str) -> Any:
        from pxr import UsdGeom

        made = UsdGeom.Xform.Define(self._usd, path)
        made.GetPrim().SetDisplayName(name)
        return made

    def _parts(self, group: Any, parts: Sequence[Part]) -> None:
        hung: dict[Move, Any] = {}
        for part in parts:
            move = self._move_of.get(part.ref)
            if move is not None and move not in hung:
                hung[move] = self._hung(group, move, len(hung) + 1)
            self._part(part, hung[move] if move is not None else group, move)

    def _hung(self, group: Any, move: Move, number: int) -> Any:
        """A node that a door turns about, or that a drawer slides with."""
        swings = isinstance(move.motion, Swing)
        name = f"{'Hinges' if swings else 'Slides'}{number}"
        made = self._node(f"{group.GetPath()}/{name}", name)
        at = made.AddTranslateOp()
        if isinstance(move.motion, Swing):
            at.Set(_moved((*move.motion.hinge, 0.0)))
            turn = made.AddRotateYOp()
            turn.Set(0.0)
            for seconds, share in move.keys:
                turn.Set(share * move.motion.angle, seconds * _A_SECOND)
        else:
            at.Set((0.0, 0.0, 0.0))
            for seconds, share in move.keys:
                x, y, z = move.motion.travel
                at.Set(_moved((share * x, share * y, share * z)), seconds * _A_SECOND)
        return made

    def _part(self, part: Part, parent: Any, move: Move | None) -> None:
        from pxr import Gf, Tf

        made = self._node(
            f"{parent.GetPath()}/{Tf.MakeValidIdentifier(part.ref)}", shown_name(part)
        )
        matrix = np.array(part.placement.matrix())
        if move is not None and isinstance(move.motion, Swing):
            matrix[:2, 3] -= move.motion.hinge
        matrix[:3, 3] *= METRES
        # Rows of a matrix are columns there.
        made.AddTransformOp().Set(Gf.Matrix4d((Y_UP @ matrix).T.tolist()))
        dress = self._dress[part.ref]
        for side, mesh in cut_by_side(flat_mesh(part.shape), part.blank.size, dress).items():
            look, picture = look_at(dress, side)
            where = places(mesh, dress, side) if picture is not None else None
            name = Tf.MakeValidIdentifier(side.replace("-", "low ").replace("+", "high "))
            self._mesh(f"{made.GetPath()}/{name}", mesh, where, self._material(look, picture))
        for number, each in enumerate(each for each in self._ware if each.ref == part.ref):
            path = f"{made.GetPath()}/hardware{number + 1}"
            self._mesh(path, each.mesh, None, self._material(each.look, None))

    def _mesh(self, path: str, mesh: Mesh, where: Any, material: Any) -> None:
        from pxr import Sdf, UsdGeom, UsdShade, Vt

        made = UsdGeom.Mesh.Define(self._usd, path)
        points = (mesh.points * METRES).astype(np.float32)
        made.CreatePointsAttr(Vt.Vec3fArray.FromNumpy(points))
        made.CreateExtentAttr(
            Vt.Vec3fArray.FromNumpy(np.array([points.min(axis=0), points.max(axis=0)]))
        )
        made.CreateFaceVertexCountsAttr(
            Vt.IntArray.FromNumpy(np.full(len(mesh.triangles), 3, np.int32))
        )
        made.CreateFaceVertexIndicesAttr(
            Vt.IntArray.FromNumpy(mesh.triangles.ravel().astype(np.int32))
        )
        made.CreateNormalsAttr(Vt.Vec3fArray.FromNumpy(mesh.normals.astype(np.float32)))
        made.SetNormalsInterpolation(UsdGeom.Tokens.vertex)
        made.CreateSubdivisionSchemeAttr(UsdGeom.Tokens.none)
        if where is not None:
            UsdGeom.PrimvarsAPI(made).CreatePrimvar(
                "st", Sdf.ValueTypeNames.TexCoord2fArray, UsdGeom.Tokens.vertex
            ).Set(Vt.Vec2fArray.FromNumpy(where.astype(np.float32)))
        UsdShade.MaterialBindingAPI.Apply(made.GetPrim()).Bind(material)

    def _material(self, look: Look, picture: bytes | None) -> Any:
        key = (look, picture)
        if key not in self._materials:
            self._materials[key] = self._new_material(look, picture)
        return self._materials[key]

    def _new_material(self, look: Look, picture: bytes | None) -> Any:
        from pxr import Sdf, UsdShade

        path = f"/Unit/Materials/M{len(self._materials) + 1}"
        made = UsdShade.Material.Define(self._usd, path)
        made.GetPrim().SetDisplayName(look.name)
        surface = UsdShade.Shader.Define(self._usd, f"{path}/Surface")
        surface.CreateIdAttr("UsdPreviewSurface")
        surface.CreateInput("roughness", Sdf.ValueTypeNames.Float).Set(look.roughness)
        surface.CreateInput("metallic", Sdf.ValueTypeNames.Float).Set(float(look.metal))
        if look.clear:
            surface.CreateInput("opacity", Sdf.ValueTypeNames.Float).Set(PANE)
        colour = surface.CreateInput("diffuseColor", Sdf.ValueTypeNames.Color3f)
        if picture is None:
            colour.Set(tuple(linear_colour(look.colour)[:3]))
        else:
            colour.ConnectToSource(self._texture(path, picture).GetOutput("rgb"))
        output = surface.CreateOutput("surface", Sdf.ValueTypeNames.Token)
        made.CreateSurfaceOutput().ConnectToSource(output)
        return made

    def _texture(self, path: str, picture: bytes) -> Any:
        from pxr import Sdf, UsdShade

        file = f"{hashlib.sha256(picture).hexdigest()[:16]}.jpg"
        (self._folder / file).write_bytes(picture)
        reader = UsdShade.Shader.Define(self._usd, f"{path}/Places")
        reader.CreateIdAttr("UsdPrimvarReader_float2")
        reader.CreateInput("varname", Sdf.ValueTypeNames.String).Set("st")
        read = reader.CreateOutput("result", Sdf.ValueTypeNames.Float2)
        made = UsdShade.Shader.Define(self._usd, f"{path}/Picture")
        made.CreateIdAttr("UsdUVTexture")
        made.CreateInput("file", Sdf.ValueTypeNames.Asset).Set(Sdf.AssetPath(f"./{file}"))
        made.CreateInput("st", Sdf.ValueTypeNames.Float2).ConnectToSource(read)
        for axis in ("wrapS", "wrapT"):
            made.CreateInput(axis, Sdf.ValueTypeNames.Token).Set("repeat")
        made.CreateInput("sourceColorSpace", Sdf.ValueTypeNames.Token).Set("sRGB")
        made.CreateOutput("rgb", Sdf.ValueTypeNames.Float3)
        return made


def _moved(point: tuple[float, float, float]) -> tuple[float, float, float]:
    """A point or a way of the unit frame in the stage's, metres."""
    x, y, z = (Y_UP[:3, :3] @ point * METRES).tolist()
    return x, y, z
