"""Drawings as DXF: sound by ezdxf's audit, read and drawn by LibreCAD, full size, equal bytes."""

from __future__ import annotations

import os
import shutil
import subprocess
from io import StringIO
from pathlib import Path

import ezdxf
import pytest

from rodwright.handover.drawing_dxf import drawing_dxf
from rodwright.handover.dxf import plain_text
from rodwright.pictures.drafting.sheets import Sheet, draw_sheet, projected
from rodwright.pictures.drafting.title_block import TitleBlock
from rodwright.pictures.drafting.views import Cut, Dimension, Note, View


def _sheet(title: str = "Größe 100 %% ^ “Regal”") -> Sheet:
    corners = ((0.0, 0.0), (1200.0, 0.0), (1200.0, 900.0), (0.0, 900.0))
    front = View(
        "Front",
        (0.0, 0.0),
        (1200.0, 900.0),
        visible=tuple(zip(corners, (*corners[1:], corners[0]), strict=True)),
        hidden=(((18.0, 18.0), (1182.0, 18.0)),),
        outline=(((-50.0, 0.0), (1250.0, 0.0)),),
        cuts=(Cut("SD1", (((0.0, 0.0), (18.0, 0.0), (18.0, 900.0), (0.0, 900.0)),), "sheet"),),
        planes=(("A", ((600.0, 0.0), (600.0, 900.0))),),
        moved=(((0.0, 0.0), (300.0, 300.0), (400.0, 700.0)),),
        dimensions=(
            Dimension((0.0, 0.0), (18.0, 0.0), "18", "x", "below", "one"),
            Dimension((18.0, 0.0), (1200.0, 0.0), "1182", "x", "below", "one"),
            Dimension((0.0, 0.0), (0.0, 900.0), "900", "y", "left", "two"),
            Dimension((100.0, 100.0), (400.0, 500.0), "500", "line", "inside", "three"),
            Dimension((1200.0, 0.0), (1200.0, 400.0), "400", "y", "right", "four", running=True),
        ),
        notes=(Note((9.0, 450.0), "SD1", leader=True),),
    )
    block = TitleBlock(title, number="14-B", author="Zoë Carr")
    return draw_sheet(projected(front, None, None, block), block)


def test_ezdxf_finds_nothing_to_mend() -> None:
    document = ezdxf.read(StringIO(drawing_dxf(_sheet()).decode("utf-8")))
    auditor = document.audit()
    assert not auditor.errors
    assert not auditor.fixes
    assert document.dxfversion == "AC1024"
    assert document.header["$INSUNITS"] == 4


def test_dimensions_measure_what_they_say() -> None:
    space = ezdxf.read(StringIO(drawing_dxf(_sheet()).decode("utf-8"))).modelspace()
    dimensions = space.query("DIMENSION")
    assert sorted(each.dxf.text for each in dimensions) == ["1182", "18", "400", "500", "900"]
    for each in dimensions:
        assert each.get_measurement() == pytest.approx(float(each.dxf.text))
        assert each.dxf.actual_measurement == pytest.approx(float(each.dxf.text))
        assert {one.dxftype() for one in each.get_geometry_block()} >= {"LINE", "TEXT", "SOLID"}


def test_lines_are_full_size_on_layers_of_their_types() -> None:
    document = ezdxf.read(StringIO(drawing_dxf(_sheet()).decode("utf-8")))
    space = document.modelspace()
    (hidden,) = space.query('LINE[layer=="hidden edges"]')
    assert tuple(hidden.dxf.start) == pytest.approx((18.0, 18.0, 0.0))
    assert tuple(hidden.dxf.end) == pytest.approx((1182.0, 18.0, 0.0))
    assert len(space.query('LINE[layer=="visible edges"]')) == 4
    (cut,) = space.query('LWPOLYLINE[layer=="cut edges"]')
    assert cut.closed
    layers = {layer.dxf.name: layer.dxf for layer in document.layers}
    assert layers["visible edges"].lineweight == 50
    assert layers["hidden edges"].lineweight == 25
    assert layers["hatching"].lineweight == 18
    assert layers["hidden edges"].linetype == "hidden"
    used = {each.dxf.layer for each in space}
    assert used - {"Defpoints"} <= layers.keys()
    assert len(space.query('LINE[layer=="hatching"]')) > 10


def test_texts_are_texts() -> None:
    space = ezdxf.read(StringIO(drawing_dxf(_sheet("Shelf 3^4")).decode("utf-8"))).modelspace()
    texts = {each.dxf.text for each in space.query("TEXT")}
    assert {"SD1", "A", "14-B", "Zoë Carr", "Shelf 3^ 4", "Lengths in mm"} <= texts
    assert plain_text("100 %%d") == "100 %%%%%%d"
    assert plain_text("100 %") == "100 %"


def test_equal_sheets_give_equal_bytes() -> None:
    assert drawing_dxf(_sheet()) == drawing_dxf(_sheet())


@pytest.mark.skipif(not shutil.which("librecad"), reason="LibreCAD isn't installed")
def test_librecad_draws_it(tmp_path: Path) -> None:
    (tmp_path / "a.dxf").write_bytes(drawing_dxf(_sheet()))
    command = ["librecad", "dxf2pdf", "-a", "-k", "a.dxf"]
    surroundings = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "HOME": str(tmp_path)}
    subprocess.run(command, cwd=tmp_path, env=surroundings, check=True, capture_output=True)
    # An empty page is 1.5 kB.
    assert (tmp_path / "a.pdf").stat().st_size > 6000
