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

from rodwright.pictures.camera import Array
from rodwright.pictures.facets import Indices

Window = tuple[float, float, float, float]
"""A rectangle of the screen: low x, low y, high x, high y."""


class Raster:
    """A window off screen that draws the same triangles again and again."""

    def __init__(self, triangles: Indices, facet_of: Indices) -> None:
        self._window = _off_screen_window()
        self._renderer = vtkRenderer()
        self._renderer.SetBackground(0.0, 0.0, 0.0)
        self._window.AddRenderer(self._renderer)
        self._points, self._mesh = vtkPoints(), vtkPolyData()
        cells = vtkCellArray()
        offsets = np.arange(0, 3 * len(triangles) + 1, 3, dtype=np.int64)
        cells.SetData(
            numpy_to_vtkIdTypeArray(offsets, deep=True),
            numpy_to_vtkIdTypeArray(np.ascontiguousarray(triangles).ravel(), deep=True),
        )
        self._mesh.SetPolys(cells)
        # A facet's number, counted from 1, is its colour; 0 is the background.
        number = facet_of + 1
        colours = np.column_stack([number >> 16, number >> 8, number]) & 255
        self._mesh.GetCellData().SetScalars(numpy_to_vtk(colours.astype(np.uint8), deep=True))
        mapper = vtkPolyDataMapper()
        mapper.SetInputData(self._mesh)
        actor = vtkActor()
        actor.SetMapper(mapper)
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

    def draw(
        self, screen: Array, window: Window, size: tuple[int, int]
    ) -> tuple[NDArray[np.int32], NDArray[np.float32]]:
        """Draw points given in screen coordinates, (n, 3), in pixels of ``size`` (w, h).

        Returns the facet each pixel shows (-1: none) and its depth (-inf: none), both of
        shape (h, w), the top row first.
        """
        depth = self.depths(screen, window, size)
        width, height = size
        colours = vtkUnsignedCharArray()
        self._window.GetPixelData(0, 0, width - 1, height - 1, 0, colours, 0)
        bands = vtk_to_numpy(colours).reshape(height, width, 3)[::-1].astype(np.int32)
        return (bands[..., 0] << 16 | bands[..., 1] << 8 | bands[..., 2]) - 1, depth

    def depths(self, screen: Array, window: Window, size: tuple[int, int]) -> NDArray[np.float32]:
        """The depths alone, as ``draw`` gives them."""
        width, height = size
        self._window.SetSize(width, height)
        self._points.SetData(numpy_to_vtk(np.ascontiguousarray(screen), deep=True))
        self._mesh.SetPoints(self._points)
        low_x, low_y, high_x, high_y = window
        far, near = float(screen[:, 2].min()), float(screen[:, 2].max())
        slack = 0.01 * (near - far) + 1.0
        camera = self._renderer.GetActiveCamera()
        camera.ParallelProjectionOn()
        camera.SetFocalPoint((low_x + high_x) / 2, (low_y + high_y) / 2, far)
        camera.SetPosition((low_x + high_x) / 2, (low_y + high_y) / 2, near + 2 * slack)
        camera.SetViewUp(0.0, 1.0, 0.0)
        camera.SetParallelScale((high_y - low_y) / 2)
        camera.SetClippingRange(slack, near - far + 3 * slack)
        self._window.Render()
        buffer = vtkFloatArray()
        self._window.GetZbufferData(0, 0, width - 1, height - 1, buffer)
        share = vtk_to_numpy(buffer).reshape(height, width)[::-1]
        depth = np.float32(near + slack) - share * np.float32(near - far + 2 * slack)
        return np.where(share < 1.0, depth, np.float32(-np.inf))


def _off_screen_window() -> vtkRenderWindow:
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
