"""Pieces as STEP entities by Open CASCADE: each distinct one once, in its own frame.

Their texts are kept, so that a rebuild writes only what has changed.  Names are put in
later: Open CASCADE leaves other than ASCII letters as they are and breaks long texts, and
pieces of one shape may be called differently.
"""

from __future__ import annotations

import io
import re
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from functools import lru_cache

from cadquery import Face, Vector, Wire
from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Quantity import Quantity_Color, Quantity_TOC_sRGB
from OCP.StepBasic import StepBasic_DerivedUnitElement, StepBasic_SiUnitAndMassUnit
from OCP.STEPCAFControl import STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_AsIs, STEPControl_Controller
from OCP.TCollection import TCollection_ExtendedString, TCollection_HAsciiString
from OCP.TDataStd import TDataStd_Name
from OCP.TDF import TDF_Label
from OCP.TDocStd import TDocStd_Document
from OCP.TopoDS import TopoDS_Shape
from OCP.XCAFApp import XCAFApp_Application
from OCP.XCAFDoc import XCAFDoc_ColorSurf, XCAFDoc_DocumentTool

from rodwright.handover.part21 import text
from rodwright.solids import solid_of
from rodwright.unit import ShapeKey

_SETTINGS = {
    "write.step.schema": "AP242DIS",
    "write.step.unit": "MM",
    # Curves on planes and cylinders need no second description in the surface's parameters.
    "write.surfacecurve.mode": "Off",
}
_NAME, _MATERIAL = "NAME OF THE PIECE", "MATERIAL OF THE PIECE"
_PRODUCT = f"PRODUCT('{_NAME}','{_NAME}','',"
_FACE = " = ADVANCED_FACE('',"


@dataclass(frozen=True, slots=True)
class Named:
    """What a piece is called: its product, its material, its body and each face in turn.

    Faces are in the order of the body's; an empty text leaves one without a name.
    """

    id: str
    name: str
    description: str
    material: str
    body: str
    faces: Sequence[str]


@dataclass(frozen=True, slots=True)
class _Kind:
    """How Open CASCADE writes a kind of body: its representation, the body and its shell."""

    representation: str
    body: str
    shell: str


_SOLID = _Kind("ADVANCED_BREP_SHAPE_REPRESENTATION", "MANIFOLD_SOLID_BREP", "CLOSED_SHELL")
_SHEET = _Kind("MANIFOLD_SURFACE_SHAPE_REPRESENTATION", "SHELL_BASED_SURFACE_MODEL", "OPEN_SHELL")


@dataclass(frozen=True, slots=True)
class Piece:
    """A piece's entities, numbered on from ``before``.

    Every second one of ``texts`` stands for one of ``numbers``.  ``anchors`` are the
    numbers of the product definition, its shape representation and that one's origin.
    ``body`` and ``faces`` count the texts that define the body and its faces.
    """

    before: int
    texts: tuple[str, ...]
    numbers: tuple[int, ...]
    entities: int
    anchors: tuple[int, int, int]
    body: int
    faces: tuple[int, ...]

    def renumbered(self, last: int, named: Named) -> str:
        """The entities' text, numbered on from ``last``, with names put in.

        Raises:
            ValueError: there are more or fewer names than faces.
        """
        shift = last - self.before
        mixed = list(self.texts)
        mixed[1::2] = [f"#{number + shift}" for number in self.numbers]
        for at, name in zip(self.faces, named.faces, strict=True):
            if name:
                mixed[at] = mixed[at].replace(_FACE, f"{_FACE[:-3]}{text(name)},", 1)
        mixed[self.body] = mixed[self.body].replace("('',", f"({text(named.body)},", 1)
        product = f"PRODUCT({','.join(map(text, (named.id, named.name, named.description)))},"
        entities = "".join(mixed).replace(_PRODUCT, product, 1)
        return entities.replace(f"'{_MATERIAL}'", text(named.material), 1)


@lru_cache(maxsize=4096)
def piece_of(shape: ShapeKey, colour: str, density: float) -> Piece:
    """A piece's entities by Open CASCADE; ``colour`` is sRGB, ``density`` in kg/m3.

    Raises:
        RuntimeError: Open CASCADE fails, or writes other than is expected here.
        ValueError: the workings leave no single solid.
    """
    solid = solid_of(shape)
    document, label = _document(solid.wrapped)
    main = document.Main()
    red, green, blue = (int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))
    XCAFDoc_DocumentTool.ColorTool_s(main).SetColor(
        label, Quantity_Color(red, green, blue, Quantity_TOC_sRGB), XCAFDoc_ColorSurf
    )
    XCAFDoc_DocumentTool.MaterialTool_s(main).SetMaterial(
        label,
        TCollection_HAsciiString(_MATERIAL),
        TCollection_HAsciiString(""),
        density / 1000,  # Open CASCADE takes and writes g/cm3
        TCollection_HAsciiString("density measure"),
        TCollection_HAsciiString("POSITIVE_RATIO_MEASURE"),
    )
    return _read_piece(_exchange_text(document, dense=True), _SOLID, len(solid.Faces()))


@lru_cache(maxsize=4096)
def sheet_of(low: tuple[float, float], high: tuple[float, float]) -> Piece:
    """The entities of a rectangle in the plane z = 0, between two corners (mm).

    Raises:
        RuntimeError: Open CASCADE fails, or writes other than is expected here.
    """
    corners = (low, (high[0], low[1]), high, (low[0], high[1]))
    outline = Wire.makePolygon([Vector(x, y, 0.0) for x, y in corners], close=True)
    document, _ = _document(Face.makeFromWires(outline).wrapped)
    return _read_piece(_exchange_text(document, dense=False), _SHEET, 1)


def _document(shape: TopoDS_Shape) -> tuple[TDocStd_Document, TDF_Label]:
    # Never opened in the application's session, so there is nothing to close.
    document = TDocStd_Document(TCollection_ExtendedString("BinXCAF"))
    XCAFApp_Application.GetApplication_s().InitDocument(document)
    label = XCAFDoc_DocumentTool.ShapeTool_s(document.Main()).AddShape(shape, False)
    TDataStd_Name.Set_s(label, TCollection_ExtendedString(_NAME))
    return document, label


def _exchange_text(document: TDocStd_Document, dense: bool) -> str:
    """A document as Open CASCADE writes it; ``dense`` if its material has a density."""
    with _settings():
        writer = STEPCAFControl_Writer()
        writer.SetPropsMode(False)
        writer.SetLayerMode(False)
        if not writer.Transfer(document, STEPControl_AsIs):
            raise RuntimeError("Open CASCADE can't turn a piece into STEP entities")
        if dense:
            _mend_density_unit(writer)
        stream = io.BytesIO()
        if writer.WriteStream(stream) != IFSelect_RetDone:
            raise RuntimeError("Open CASCADE can't write a piece's STEP entities")
    return stream.getvalue().decode("ascii")


def _mend_density_unit(writer: STEPCAFControl_Writer) -> None:
    """Make it g/cm3: Open CASCADE 7.9 writes g^3 cm^2."""
    model = writer.ChangeWriter().Model()
    mended = 0
    for number in range(model.NbEntities(), 0, -1):  # it stands near the end
        entity = model.Value(number)
        if isinstance(entity, StepBasic_DerivedUnitElement):
            mass = isinstance(entity.Unit(), StepBasic_SiUnitAndMassUnit)
            entity.SetExponent(1.0 if mass else -3.0)
            mended += 1
            if mended == 2:
                return
    raise RuntimeError("Open CASCADE has left out the unit of a piece's density")


def _read_piece(exchange: str, kind: _Kind, faces: int) -> Piece:
    data = re.search(
        r"^DATA;\n#1 = APPLICATION_PROTOCOL_DEFINITION\([^;]*;\n"
        r"#2 = APPLICATION_CONTEXT\([^;]*;\n(.*)\nENDSEC;",
        exchange,
        re.DOTALL | re.MULTILINE,
    )
    definition = re.search(r"^#(\d+) = PRODUCT_DEFINITION\(", exchange, re.MULTILINE)
    shape = re.search(
        rf"^#(\d+) = {kind.representation}\('',\(#(\d+),#(\d+)\)",
        exchange,
        re.MULTILINE,
    )
    # Open CASCADE lists a shell's faces in the order in which the body has them.
    shell = re.search(rf"^#\d+ = {kind.shell}\('',\s*\(([^)]*)\)\s*\);", exchange, re.MULTILINE)
    if data is None or definition is None or shape is None or shell is None:
        raise _unexpected()
    texts = re.split(r"#([3-9]\b|\d{2,})", data[1])  # the first two are every file's
    defined = {int(texts[i - 1]): i for i in range(2, len(texts), 2) if texts[i][:3] == " = "}
    own = [defined[int(number)] for number in re.findall(r"#(\d+)", shell[1])]
    body = defined[int(shape[3])]
    if (
        len(own) != faces
        or not all(texts[at].startswith(_FACE) for at in own)
        or not texts[body].startswith(f" = {kind.body}('',")
        or _PRODUCT not in data[1]
    ):
        raise _unexpected()
    return Piece(
        before=2,
        texts=tuple(texts),
        numbers=tuple(map(int, texts[1::2])),
        entities=len(re.findall(r"^#\d+ = ", data[1], re.MULTILINE)),
        anchors=(int(definition[1]), int(shape[1]), int(shape[2])),
        body=body,
        faces=tuple(own),
    )


def _unexpected() -> RuntimeError:
    return RuntimeError("Open CASCADE's STEP text of a piece isn't laid out as expected")


@contextmanager
def _settings() -> Iterator[None]:
    """The writer's settings, which hold for the whole process, put back afterwards."""
    STEPControl_Controller.Init_s()
    before = {key: Interface_Static.CVal_s(key) for key in _SETTINGS}
    try:
        for key, value in _SETTINGS.items():
            if not Interface_Static.SetCVal_s(key, value):
                raise RuntimeError(f"Open CASCADE doesn't take {value} for {key}")
        yield
    finally:
        for key, value in before.items():
            Interface_Static.SetCVal_s(key, value)
