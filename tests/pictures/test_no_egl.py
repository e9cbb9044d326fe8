"""Without the system's libEGL the maker is told so, where VTK itself would crash."""

from __future__ import annotations

import ctypes

import pytest
from vtkmodules import vtkRenderingOpenGL2

from rodwright.pictures import raster


@pytest.mark.skipif(
    not hasattr(vtkRenderingOpenGL2, "vtkEGLRenderWindow"), reason="this VTK has no EGL window"
)
def test_missing_library_is_an_import_error(monkeypatch: pytest.MonkeyPatch) -> None:
    def missing(name: str) -> None:
        raise OSError(f"{name}: cannot open shared object file")

    monkeypatch.setattr(ctypes, "CDLL", missing)
    with pytest.raises(ImportError, match=r"libEGL\.so\.1: cannot open"):
        raster.off_screen_window()
