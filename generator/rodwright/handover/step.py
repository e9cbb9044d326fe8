"""STEP files (ISO 10303-21, schema AP242) of a whole unit and of single parts, in mm.

Open CASCADE writes each distinct piece once (:mod:`rodwright.handover.step_pieces`).  The
assembly round them (products, their properties, their use in one another and where they
stand) is written here: the order of an assembly's colours differs from run to run when Open
CASCADE writes it.  The bytes depend on nothing but the unit, the file's name, and
``SOURCE_DATE_EPOCH`` where that is set and the unit has no date.

Properties are laid out as CAx-IF's Recommended Practices for User Defined Attributes have
them (release 1.8, 2021-02-18, sections 5.1 and 6.1; from memory): a property definition of the
product's definition, associated with a general property of the same name, and represented by
one item.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from rodwright.geometry import Box
from rodwright.handover.names import groups
from rodwright.handover.part21 import ExchangeFile, Header, reals, text
from rodwright.handover.products import CUT_STATE, Product, Property, products
from rodwright.handover.stamp import time_stamp
from rodwright.handover.step_pieces import Named, Piece, piece_of, sheet_of
from rodwright.solids.worked_faces import worked_faces
from rodwright.unit import Placement, Unit

_OUTLINE = "finished outline"
_HOME = Placement((0.0, 0.0, 0.0), (1.0, 0.0, 0.0), (0.0, 1.0, 0.0))


def write_step_unit(unit: Unit, path: Path) -> None:
    """Write a unit as an assembly: the unit holds its groups, and they hold its parts.

    Each row of the parts list is one product with its properties, used as often as there
    are pieces; each use is named by its piece's ref.  Faces left by workings bear their
    names.  Unit frame, mm.

    Raises:
        OSError: the file can't be written.
        ProblemsError: SOURCE_DATE_EPOCH is set, and is no time.
        RuntimeError: Open CASCADE can't write a piece.
        ValueError: a part's workings leave no single solid.
    """
    file = _StepFile()
    use_of: dict[str, _Use] = {}
    for product in products(unit, "finished"):
        defined = file.add_part(product)
        use_of |= {
            piece.ref: _Use(piece.ref, defined, piece.placement) for piece in product.shop.pieces
        }
    context = file.add_length_context()
    uses = []
    for name, members in groups(unit).items():
        pieces = [use_of[part.ref] for part in members]
        identity = f"{unit.title}: {name}"  # a group may be called as the unit is
        uses.append(_Use(name, file.add_assembly(identity, name, "", pieces, context), _HOME))
    file.add_assembly(unit.title, unit.title, "", uses, context)
    count = len(unit.parts)
    file.write(path, _header(unit, f"{unit.title}: {count} part{'s' * (count > 1)}, finished"))


def write_step_part(unit: Unit, product: Product, path: Path) -> None:
    """Write one of a unit's distinct parts in its own frame, mm, as one product.

    Where the piece as cut isn't the finished one, the product holds two bodies: the solid
    that the machine gets, and the finished outline.  The outline is a sheet at the underside,
    in a product of its own: readers of every sort show products by name and hide them one by
    one, while many drop the names of bodies; and a sheet can't be taken for a second piece to
    cut, nor for wood to weigh.

    Raises:
        OSError: the file can't be written.
        ProblemsError: SOURCE_DATE_EPOCH is set, and is no time.
        RuntimeError: Open CASCADE can't write the piece.
        ValueError: the part's workings leave no single solid.
    """
    file = _StepFile()
    outline = product.shop.finished
    if outline == Box.of_size(product.part.blank.size):
        file.add_part(product)
    else:
        file.add_part_with_outline(product, outline)
    file.write(path, _header(unit, f"{product.title}; of {unit.title}"))


def _header(unit: Unit, description: str) -> Header:
    return Header(description, time_stamp(unit), unit.author, unit.organisation)


@dataclass(frozen=True, slots=True)
class _Defined:
    """What a use of a product points at: names of three entities."""

    definition: str
    representation: str
    origin: str


@dataclass(frozen=True, slots=True)
class _Use:
    """A product that stands in another."""

    name: str
    product: _Defined
    placement: Placement


class _StepFile(ExchangeFile):
    """A file of products, each after those it is made of."""

    def __init__(self) -> None:
        super().__init__()
        self._uses = 0
        self._properties: dict[str, str] = {}
        self._plain_context = ""

    def add_part(self, product: Product) -> _Defined:
        """Add a distinct part as one product."""
        ref = product.part.ref
        return self._add_solid(product, ref, product.name, product.properties)

    def add_part_with_outline(self, product: Product, outline: Box) -> None:
        """Add a distinct part as a product that holds its solid and the finished outline."""
        ref, state = product.part.ref, product.shop.state
        solid = self._add_solid(
            product, f"{ref} {state}", f"{product.name}, {state}", ((CUT_STATE, state),)
        )
        low, high = outline.low, outline.high
        sheet = self._add_piece(
            sheet_of((low[0], low[1]), (high[0], high[1])),
            Named(f"{ref} {_OUTLINE}", f"{product.name}, {_OUTLINE}", "", "", _OUTLINE, [_OUTLINE]),
            ((CUT_STATE, _OUTLINE),),
        )
        whole = self.add_assembly(
            ref,
            product.name,
            product.description,
            [_Use(state, solid, _HOME), _Use(_OUTLINE, sheet, _HOME)],
            self.add_length_context(),
        )
        self._add_properties(whole.definition, product.properties)

    def _add_solid(
        self, product: Product, identity: str, name: str, properties: Iterable[Property]
    ) -> _Defined:
        part = product.part
        stock = part.blank.stock
        faces = [
            "; ".join(dict.fromkeys(product.workings[index] for index in left))
            for left in worked_faces(part.shape)
        ]
        named = Named(identity, name, product.description, stock.described, name, faces)
        piece = piece_of(part.shape, stock.colour, stock.density)
        return self._add_piece(piece, named, properties)

    def _add_piece(self, piece: Piece, named: Named, properties: Iterable[Property]) -> _Defined:
        """Add a piece, with names put in, and its properties."""
        shift, start = self.last - piece.before, self.place()
        self.append(piece.renumbered(self.last, named), piece.entities)
        defined = _Defined(*(f"#{number + shift}" for number in piece.anchors))
        end = self.place()
        self._add_properties(defined.definition, properties)
        # Open CASCADE's reader takes the last text that a product has for its material.
        self.move_last(end, start)
        return defined

    def _add_properties(self, definition: str, properties: Iterable[Property]) -> None:
        if not self._plain_context:
            self._plain_context = self.add("REPRESENTATION_CONTEXT('','user defined attributes')")
        for plain, value in properties:
            name = text(plain)
            if plain not in self._properties:
                self._properties[plain] = self.add(f"GENERAL_PROPERTY('',{name},'')")
            own = self.add(f"PROPERTY_DEFINITION({name},'',{definition})")
            self.add(
                f"GENERAL_PROPERTY_ASSOCIATION('user defined attribute','',"
                f"{self._properties[plain]},{own})"
            )
            if isinstance(value, int):
                item = self.add(f"INTEGER_REPRESENTATION_ITEM({name},{value})")
            else:
                item = self.add(f"DESCRIPTIVE_REPRESENTATION_ITEM({name},{text(value)})")
            shown = self.add(f"REPRESENTATION({name},({item}),{self._plain_context})")
            self.add(f"PROPERTY_DEFINITION_REPRESENTATION({own},{shown})")

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

    def add_assembly(
        self, identity: str, name: str, description: str, uses: list[_Use], context: str
    ) -> _Defined:
        """Add a product that is made of others."""
        words = ",".join(map(text, (identity, name, description)))
        product_context = self.add(f"PRODUCT_CONTEXT('',{self.context},'mechanical')")
        item = self.add(f"PRODUCT({words},({product_context}))")
        self.add(f"PRODUCT_RELATED_PRODUCT_CATEGORY('part',$,({item}))")
        formation = self.add(f"PRODUCT_DEFINITION_FORMATION('','',{item})")
        stage = self.add(f"PRODUCT_DEFINITION_CONTEXT('part definition',{self.context},'design')")
        definition = self.add(f"PRODUCT_DEFINITION('design','',{formation},{stage})")
        shape = self.add(f"PRODUCT_DEFINITION_SHAPE('','',{definition})")
        representation = self.reserve()
        self.add(f"SHAPE_DEFINITION_REPRESENTATION({shape},{representation})")
        origin = self._add_place(_HOME)
        product = _Defined(definition, representation, origin)
        places = [origin, *(self._add_use(use, product) for use in uses)]
        self.define(representation, f"SHAPE_REPRESENTATION('',({','.join(places)}),{context})")
        return product

    def _add_use(self, use: _Use, within: _Defined) -> str:
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
