"""Drawings for a machine, drawn by LibreCAD, a reader of DXF that isn't ours."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path

import pytest
from PIL import Image

import rodwright
from rodwright.cnc.dxf import shapes_dxf
from rodwright.cnc.part_shapes import part_shapes
from rodwright.handover.products import products

DOTS = 72.0


def drawn_by_librecad(path: Path) -> Image.Image:
    """What LibreCAD draws of a file, as large as an A3 sheet holds it: dark on light."""
    librecad, pdftoppm = shutil.which("librecad"), shutil.which("pdftoppm")
    if librecad is None or pdftoppm is None:
        pytest.skip("librecad or pdftoppm isn't installed")
    environment = {**os.environ, "QT_QPA_PLATFORM": "offscreen"}
    # The page is beside the drawing, whatever name is asked for.
    command = [librecad, "dxf2pdf", "-a", "-m", path.name]
    subprocess.run(command, cwd=path.parent, env=environment, check=True, capture_output=True)
    page, target = path.with_suffix(".pdf"), path.with_suffix("")
    subprocess.run([pdftoppm, "-r", f"{DOTS:g}", "-gray", "-singlefile", page, target], check=True)
    with Image.open(target.with_suffix(".pgm")) as image:
        return image.point(lambda value: 255 if value < 200 else 0)


@pytest.mark.parametrize("model", ["tape-drawers", "boot-room"])
def test_parts_are_drawn_in_their_shape(model: str, tmp_path: Path) -> None:
    unit = rodwright.set_out(rodwright.read_spec(Path("models").resolve() / f"{model}.yaml"))
    for number, product in enumerate(products(unit, "cut")[:5]):
        length, width, _ = product.part.blank.size
        path = tmp_path / f"part-{number}.dxf"
        path.write_bytes(shapes_dxf(part_shapes(product).cut))
        image = drawn_by_librecad(path)
        box = image.getbbox()
        assert box is not None, "nothing was drawn"
        wide, high = box[2] - box[0], box[3] - box[1]
        # To the dot: lines are about two of them wide.
        assert high == pytest.approx(wide * width / length, abs=3.0)
        assert image.histogram()[255] > 2 * (wide + high) - 8
