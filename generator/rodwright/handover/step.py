"""STEP files (ISO 10303-21, schema AP242) of a whole unit and of single parts, in mm.

Open CASCADE writes each distinct piece once, in its own frame, with its colour and
material; those texts are kept, so that a rebuild writes only what has changed.  The
assembly round them (products, their use in one another and where they stand) is written
here: the order of an assembly's colours differs from run to run when Open CASCADE writes
it.  The bytes depend on nothing but the input, the file's name and the time stamp, which
is ``SOURCE_DATE_EPOCH`` where that is set.
"""

from __future__ import annotations

import io
import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from OCP.IFSelect import IFSelect_RetDone
from OCP.Interface import Interface_Static
from OCP.Quantity import Quantity_Color, Quantity_TOC_sRGB
from OCP.StepBasic import StepBasic_DerivedUnitElement, StepBasic_SiUnitAndMassUnit
from OCP.STEPCAFControl import STEPCAFControl_Writer
from OCP.STEPControl import STEPControl_AsIs, STEPControl_Controller
from OCP.TCollection import TCollection_ExtendedString, TCollection_HAsciiString
from OCP.TDataStd import TDataStd_Name
from OCP.TDocStd import TDocStd_Document
from OCP.XCAFApp import XCAFApp_Application
from OCP.XCAFDoc import XCAFDoc_ColorSurf, XCAFDoc_DocumentTool

from rodwright.handover.names import groups, shown_name
from rodwright.handover.part21 import ExchangeFile, reals, text
from rodwright.parts import Part, Placement, ShapeKey, Stock, Unit
from rodwright.solids import solid_of

_SETTINGS = {
    "write.step.schema": "AP242DIS",
    "write.step.unit": "MM",
    # Curves on planes and cylinders need no second description in the surface's parameters.
    "write.surfacecurve.mode": "Off",
}
# Stand for texts that are put in later: Open CASCADE leaves other than ASCII letters as they
# are and breaks long texts.
_NAME, _MATERIAL = "NAME OF THE PIECE", "MATERIAL OF THE PIECE"
_HOME = Placement((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))


def write_step_unit(unit: Unit, path: Path) -> None:
    """Write a unit as an assembly: the unit holds its groups, and they hold its parts.

    Parts of one shape and stock are one product, used several times, that bears the first
    one's ref and the names of all; each use is named by its part's ref.  Every product has
    its stock's colour, material and density.  Unit frame, mm.

    Raises:
        OSError: the file can't be written.
        RuntimeError: Open CASCADE can't write a piece.
        ValueError: a part's workings leave no single solid.
    """
    file = _StepFile()
    product_of: dict[str, _Product] = {}
    for parts in _alike(unit):
        names = " / ".join(dict.fromkeys(part.name for part in parts))
        product = file.add_piece(parts[0], f"{parts[0].ref} {names}")
        product_of |= {part.ref: product for part in parts}
    context = file.add_length_context()
    uses = []
    for name, members in groups(unit).items():
        pieces = [_Use(part.ref, product_of[part.ref], part.placement) for part in members]
        uses.append(_Use(name, file.add_assembly(name, pieces, context), _HOME))
    file.add_assembly(unit.title, uses, context)
    file.write(path)


def write_step_part(part: Part, path: Path) -> None:
    """Write one part in its own frame, mm, with its name, colour, material and density.

    Raises:
        OSError: the file can't be written.
        RuntimeError: Open CASCADE can't write the piece.
        ValueError: the part's workings leave no single solid.
    """
    file = _StepFile()
    file.add_piece(part, shown_name(part))
    file.write(path)


def _alike(unit: Unit) -> list[list[Part]]:
    gathered: dict[tuple[ShapeKey, Stock], list[Part]] = {}
    for part in unit.parts:
        gathered.setdefault((part.shape, part.blank.stock), []).append(part)
    return list(gathered.values())


@dataclass(frozen=True, slots=True)
class _Product:
    """What a use of a product points at: names of three entities."""

    definition: str
    representation: str
    origin: str


@dataclass(frozen=True, slots=True)
class _Use:
    """A product that stands in another."""

    name: str
    product: _Product
    placement: Placement


class _StepFile(ExchangeFile):
    """A file of products, each after those it is made of."""

    def __init__(self) -> None:
        super().__init__()
        self._uses = 0

    def add_piece(self, part: Part, name: str) -> _Product:
        """Add a part's piece: the kept text, with entities renumbered and texts put in."""
        stock = part.blank.stock
        piece = _piece_of(part.shape, stock.colour, stock.density)
        shift = self.last - piece.before
        mixed = list(piece.texts)
        mixed[1::2] = [f"#{number + shift}" for number in piece.numbers]
        entities = "".join(mixed).replace(f"'{_NAME}'", text(name))
        self.append(entities.replace(f"'{_MATERIAL}'", text(stock.material)), piece.entities)
        return _Product(*(f"#{number + shift}" for number in piece.anchors))

    def add_length_context(self) -> str:
        """Add what the assembly's lengths and angles are measured in."""
        length = self.add("( LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.) )")
        angle = self.add("( NAMED_UNIT(*) PLANE_ANGLE_UNIT() SI_UNIT($,.RADIAN.) )")
        solid_angle = self.add("( NAMED_UNIT(*) SI_UNIT($,.STERADIAN.) SOLID_ANGLE_UNIT() )")
        uncertainty = self.add(
            f"UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(1.E-07),{length},"
            "'distance_accuracy_value','')"
        )
        return self.add(
            "( GEOMETRIC_REPRESENTATION_CONTEXT(3) "
            f"GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT(({uncertainty})) "
            f"GLOBAL_UNIT_ASSIGNED_CONTEXT(({length},{angle},{solid_angle})) "
            "REPRESENTATION_CONTEXT('','3D') )"
        )

    def add_assembly(self, name: str, uses: list[_Use], context: str) -> _Product:
        """Add a product that is made of others."""
        words = text(name)
        product_context = self.add(f"PRODUCT_CONTEXT('',{self.context},'mechanical')")
        item = self.add(f"PRODUCT({words},{words},'',({product_context}))")
        self.add(f"PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,({item}))")
        formation = self.add(f"PRODUCT_DEFINITION_FORMATION('','',{item})")
        stage = self.add(f"PRODUCT_DEFINITION_CONTEXT('part definition',{self.context},'design')")
        definition = self.add(f"PRODUCT_DEFINITION('design','',{formation},{stage})")
        shape = self.add(f"PRODUCT_DEFINITION_SHAPE('','',{definition})")
        representation = self.reserve()
        self.add(f"SHAPE_DEFINITION_REPRESENTATION({shape},{representation})")
        origin = self._add_place(_HOME)
        product = _Product(definition, representation, origin)
        places = [origin, *(self._add_use(use, product) for use in uses)]
        self.define(representation, f"SHAPE_REPRESENTATION('',({','.join(places)}),{context})")
        return product

    def _add_use(self, use: _Use, within: _Product) -> str:
        self._uses += 1
        words = text(use.name)
        place = self._add_place(use.placement)
        occurrence = self.add(
            f"NEXT_ASSEMBLY_USAGE_OCCURRENCE('{self._uses}',{words},'',"
            f"{within.definition},{use.product.definition},{words})"
        )
        shape = self.add(f"PRODUCT_DEFINITION_SHAPE('','',{occurrence})")
        move = self.add(f"ITEM_DEFINED_TRANSFORMATION('','',{use.product.origin},{place})")
        relation = self.add(
            "( REPRESENTATION_RELATIONSHIP('','',"
            f"{use.product.representation},{within.representation}) "
            f"REPRESENTATION_RELATIONSHIP_WITH_TRANSFORMATION({move}) "
            "SHAPE_REPRESENTATION_RELATIONSHIP() )"
        )
        self.add(f"CONTEXT_DEPENDENT_SHAPE_REPRESENTATION({relation},{shape})")
        return place

    def _add_place(self, placement: Placement) -> str:
        origin = self.add(f"CARTESIAN_POINT('',{reals(placement.origin)})")
        up = self.add(f"DIRECTION('',{reals(placement.thickness)})")
        along = self.add(f"DIRECTION('',{reals(placement.length)})")
        return self.add(f"AXIS2_PLACEMENT_3D('',{origin},{up},{along})")


# --- pieces by Open CASCADE ------------------------------------------------------------


@dataclass(frozen=True, slots=True)
class _Piece:
    """A piece's entities, numbered on from ``before``.

    Every second one of ``texts`` stands for one of ``numbers``.  ``anchors`` are the
    numbers of the product definition, its shape representation and that one's origin.
    """

    before: int
    texts: tuple[str, ...]
    numbers: tuple[int, ...]
    entities: int
    anchors: tuple[int, int, int]


@lru_cache(maxsize=4096)
def _piece_of(shape: ShapeKey, colour: str, density: float) -> _Piece:
    """A piece's entities by Open CASCADE; ``colour`` is sRGB, ``density`` in kg/m3.

    Raises:
        RuntimeError: Open CASCADE fails, or writes other than is expected here.
        ValueError: the workings leave no single solid.
    """
    # Never opened in the application's session, so there is nothing to close.
    document = TDocStd_Document(TCollection_ExtendedString("BinXCAF"))
    XCAFApp_Application.GetApplication_s().InitDocument(document)
    main = document.Main()
    label = XCAFDoc_DocumentTool.ShapeTool_s(main).AddShape(solid_of(shape).wrapped, False)
    TDataStd_Name.Set_s(label, TCollection_ExtendedString(_NAME))
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
    return _read_piece(_exchange_text(document))


def _exchange_text(document: TDocStd_Document) -> str:
    """A document as Open CASCADE writes it."""
    with _settings():
        writer = STEPCAFControl_Writer()
        writer.SetPropsMode(False)
        writer.SetLayerMode(False)
        if not writer.Transfer(document, STEPControl_AsIs):
            raise RuntimeError("Open CASCADE can't turn a piece into STEP entities")
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


def _read_piece(exchange: str) -> _Piece:
    data = re.search(
        r"^DATA;\n#1 = APPLICATION_PROTOCOL_DEFINITION\([^;]*;\n"
        r"#2 = APPLICATION_CONTEXT\([^;]*;\n(.*)\nENDSEC;",
        exchange,
        re.DOTALL | re.MULTILINE,
    )
    definition = re.search(r"^#(\d+) = PRODUCT_DEFINITION\(", exchange, re.MULTILINE)
    shape = re.search(
        r"^#(\d+) = ADVANCED_BREP_SHAPE_REPRESENTATION\('',\(#(\d+),", exchange, re.MULTILINE
    )
    if data is None or definition is None or shape is None:
        raise RuntimeError("Open CASCADE's STEP text of a piece isn't laid out as expected")
    texts = re.split(r"#([3-9]\b|\d{2,})", data[1])  # the first two are every file's
    return _Piece(
        before=2,
        texts=tuple(texts),
        numbers=tuple(map(int, texts[1::2])),
        entities=len(re.findall(r"^#\d+ = ", data[1], re.MULTILINE)),
        anchors=(int(definition[1]), int(shape[1]), int(shape[2])),
    )


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
