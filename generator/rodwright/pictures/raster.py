"""Triangles to pixels, off screen: which facet each pixel shows, and how deep it lies.

VTK does nothing else here; what the pixels look like is worked out in ``light``.
"""

from __future__ import annotations

import ctypes
from types import TracebackType

import numpy as np
from numpy.typing import NDArray
from vtkmodules import vtkRenderingOpenGL2
from vtkmodules.util.numpy_support import (
    numpy_to_vtk,
    numpy_to_vtkIdTypeArray,
    vtk_to_numpy,
)
from vtkmodules.vtkCommonCore import vtkFloatArray, vtkPoints, vtkUnsignedCharArray
from vtkmodules.vtkCommonDataModel import vtkCellArray, vtkPolyData
from vtkmodules.vtkRenderingCore import (
    vtkActor,
    vtkPolyDataMapper,
    vtkRenderer,
    vtkRenderWindow,
)

from rodwright.pictures.camera import Camera
from rodwright.pictures.facets import Indices

Window = tuple[float, float, float, float]
"""A rectangle of the screen: low x, low y, high x, high y."""


class Raster:
    """A window off screen that draws triangles, the same ones from many sides."""

    def __init__(self) -> None:
        self._window = off_screen_window()
        self._renderer = vtkRenderer()
        self._renderer.SetBackground(0.0, 0.0, 0.0)
        self._renderer.GetActiveCamera().ParallelProjectionOn()
        self._window.AddRenderer(self._renderer)
        self._mapper = vtkPolyDataMapper()
        actor = vtkActor()
        actor.SetMapper(self._mapper)
        actor.GetProperty().LightingOff()
        self._renderer.AddActor(actor)

    def __enter__(self) -> Raster:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self._window.Finalize()

    def load(
        self,
        points: NDArray[np.floating],
        triangles: Indices,
        facet_of: Indices | None = None,
    ) -> None:
        """Take up triangles over points (n, 3), to be drawn from now on; those to be told apart
        by ``facets`` need the facet of each."""
        mesh, cells, places = vtkPolyData(), vtkCellArray(), vtkPoints()
        places.SetData(numpy_to_vtk(np.ascontiguousarray(points, dtype=np.float32), deep=True))
        offsets = np.arange(0, 3 * len(triangles) + 1, 3, dtype=np.int64)
        cells.SetData(
            numpy_to_vtkIdTypeArray(offsets, deep=True),
            numpy_to_vtkIdTypeArray(np.ascontiguousarray(triangles).ravel(), deep=True),
        )
        mesh.SetPoints(places)
        mesh.SetPolys(cells)
        if facet_of is not None:
            # A facet's number, counted from 1, is its colour; 0 is the background.
            number = facet_of + 1
            colours = np.column_stack([number >> 16, number >> 8, number]) & 255
            mesh.GetCellData().SetScalars(numpy_to_vtk(colours.astype(np.uint8), deep=True))
        self._mapper.SetInputData(mesh)

    def draw(
        self, camera: Camera, window: Window, reach: tuple[float, float], size: tuple[int, int]
    ) -> NDArray[np.float32]:
        """How far behind the near end of a parallel view each pixel of ``size`` (w, h) lies, as a
        share of the way to its far end (see ``ends``), 1 where there is nothing; (h, w), the
        lowest row first.

        ``reach`` is the least and greatest depth that any point has.
        """
        width, height = size
        if (width, height) != tuple(self._window.GetSize()):
            self._window.SetSize(width, height)
        low_x, low_y, high_x, high_y = window
        near, far = ends(reach)
        axes, across, up = camera.axes(), (low_x + high_x) / 2, (low_y + high_y) / 2
        eye = np.array(camera.target) + across * axes[0] + up * axes[1]
        view = self._renderer.GetActiveCamera()
        view.SetFocalPoint(*(eye + far * axes[2]))
        view.SetPosition(*(eye + (2 * near - far) * axes[2]))
        view.SetViewUp(*axes[1])
        view.SetParallelScale((high_y - low_y) / 2)
        view.SetClippingRange(near - far, 2 * (near - far))
        self._window.Render()
        buffer = vtkFloatArray()
        self._window.GetZbufferData(0, 0, width - 1, height - 1, buffer)
        return np.asarray(vtk_to_numpy(buffer).reshape(height, width))

    def depths(
        self, camera: Camera, window: Window, reach: tuple[float, float], size: tuple[int, int]
    ) -> NDArray[np.float32]:
        """The depth of each pixel, -inf where there is nothing, (h, w), the top row first; else
        as ``draw``."""
        share, (near, far) = self.draw(camera, window, reach, size)[::-1], ends(reach)
        depth = np.float32(near) - share * np.float32(near - far)
        depth[share >= 1.0] = -np.inf
        return np.asarray(depth)

    def facets(self) -> NDArray[np.int32]:
        """The facet that each pixel of the last view shows (-1: none), (h, w), the top row
        first."""
        width, height = self._window.GetSize()
        colours = vtkUnsignedCharArray()
        self._window.GetPixelData(0, 0, width - 1, height - 1, 0, colours, 0)
        bands = vtk_to_numpy(colours).reshape(height, width, 3)[::-1]
        number = bands[..., 0].astype(np.int32)
        for band in (1, 2):
            number <<= 8
            number |= bands[..., band]
        number -= 1
        return np.asarray(number)


def ends(reach: tuple[float, float]) -> tuple[float, float]:
    """The depths of a view's near and far end, a little beyond what it reaches."""
    far, near = reach
    slack = 0.01 * (near - far) + 1.0
    return near + slack, far - slack


def off_screen_window() -> vtkRenderWindow:
    """A window that needs no display: EGL where VTK has it, which asks for no X server.

    Raises:
        ImportError: the system's libEGL is missing (VTK itself would crash).
    """
    kind = getattr(vtkRenderingOpenGL2, "vtkEGLRenderWindow", vtkRenderWindow)
    if kind is not vtkRenderWindow:
        try:
            ctypes.CDLL("libEGL.so.1")
        except OSError as error:
            raise ImportError(str(error)) from error
    window = kind()
    window.SetOffScreenRendering(1)
    window.SetMultiSamples(0)
    return window
