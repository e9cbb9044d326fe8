"""Visible and hidden lines, by Open CASCADE's own hidden-line removal (``HLRBRep_Algo``)."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

import numpy as np
from OCP.BRep import BRep_Builder
from OCP.BRepAdaptor import BRepAdaptor_Curve
from OCP.BRepLib import BRepLib
from OCP.GeomAbs import GeomAbs_Line
from OCP.gp import gp_Ax2, gp_Dir, gp_Pnt
from OCP.HLRAlgo import HLRAlgo_Projector
from OCP.HLRBRep import HLRBRep_Algo, HLRBRep_HLRToShape
from OCP.TopAbs import TopAbs_EDGE
from OCP.TopExp import TopExp_Explorer
from OCP.TopoDS import TopoDS, TopoDS_Compound, TopoDS_Shape

from rodwright.pictures.camera import Array, Camera

STEPS = 12
"""A curve is drawn as so many straight stretches."""
LEAST_LENGTH = 0.02
"""Shorter stretches (mm) are left out."""


def lines(
    shapes: Sequence[TopoDS_Shape], camera: Camera, hidden: bool = True
) -> tuple[Array, Array]:
    """The edges of placed solids on the screen: stretches that show, and, if asked for, stretches
    that are hidden; (m, 2, 2) each, from end to end.

    Edges at which a surface goes on smoothly are left out, but for its contours.
    """
    found = _solved([_together(shapes)], camera)
    shown = _stretches((found.VCompound(), found.OutLineVCompound()))
    covered = (found.HCompound(), found.OutLineHCompound()) if hidden else ()
    return shown, _stretches(covered)


def visible_by_group(groups: Sequence[Sequence[TopoDS_Shape]], camera: Camera) -> list[Array]:
    """The stretches that show of each of a few groups of placed solids, which hide each other;
    (m, 2, 2) each."""
    compounds = [_together(shapes) for shapes in groups]
    found = _solved(compounds, camera)
    return [_stretches((found.VCompound(one), found.OutLineVCompound(one))) for one in compounds]


def _together(shapes: Sequence[TopoDS_Shape]) -> TopoDS_Compound:
    builder, together = BRep_Builder(), TopoDS_Compound()
    builder.MakeCompound(together)
    for shape in shapes:
        builder.Add(together, shape)
    return together


def _solved(compounds: Sequence[TopoDS_Compound], camera: Camera) -> HLRBRep_HLRToShape:
    algorithm = HLRBRep_Algo()
    # Shapes added one by one are tried pair by pair, each time anew: eight times as long for a
    # hundred of them, with the same lines in the end.
    for compound in compounds:
        algorithm.Add(compound, 0)
    axes = gp_Ax2(gp_Pnt(*camera.target), gp_Dir(*camera.towards), gp_Dir(*camera.right))
    algorithm.Projector(
        HLRAlgo_Projector(axes)
        if camera.distance is None
        else HLRAlgo_Projector(axes, camera.distance)
    )
    algorithm.Update()
    algorithm.Hide()
    return HLRBRep_HLRToShape(algorithm)


def _stretches(compounds: tuple[TopoDS_Shape | None, ...]) -> Array:
    found = [
        piece
        for compound in compounds
        if compound is not None and not compound.IsNull()
        for piece in _pieces(compound)
    ]
    ends = np.array(found, dtype=np.float64).reshape(-1, 2, 2)
    long = np.linalg.norm(ends[:, 1] - ends[:, 0], axis=1) > LEAST_LENGTH
    return np.asarray(ends[long])


def _pieces(compound: TopoDS_Shape) -> Iterator[tuple[tuple[float, float], tuple[float, float]]]:
    BRepLib.BuildCurves3d_s(compound)
    edges = TopExp_Explorer(compound, TopAbs_EDGE)
    while edges.More():
        curve = BRepAdaptor_Curve(TopoDS.Edge_s(edges.Current()))
        low, high = curve.FirstParameter(), curve.LastParameter()
        steps = 1 if curve.GetType() == GeomAbs_Line else STEPS
        points = [curve.Value(low + (high - low) * step / steps) for step in range(steps + 1)]
        places = [(point.X(), point.Y()) for point in points]
        yield from pairwise(places)
        edges.Next()
