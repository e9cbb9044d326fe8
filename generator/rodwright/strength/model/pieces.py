"""What a unit is to finite elements: boards that are plates, sticks that are bars.

Sizes in mm, unit frame; stiffness in N and mm.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from math import pi, tanh

from rodwright.geometry import Box
from rodwright.strength.lacking import lacking
from rodwright.strength.model.sheet import Sheet
from rodwright.strength.model.stiffness import Bar
from rodwright.trade.mechanics import Family, Mechanics
from rodwright.unit import Grain, JointKind, Part, Role, Unit
from rodwright.unit.roles import PANELS

Softening = Callable[[Part], float]
"""By how much a part has gone softer; 0: not."""
BOARDS = (*PANELS, Role.BACK, Role.WORKTOP, Role.PLINTH)
"""What bends or shears as a plate."""
STICKS = (Role.STILE, Role.RAIL, Role.LIPPING, Role.LEG)
"""What bends as a bar."""
SQUARE = 1 - 1e-9
SHEAR = 5 / 6
"""The share of a rectangular section that counts in shear (any text on beams)."""
WITHOUT_SHEAR = 16.0
"""E over G along the grain, where G isn't known (EN 338: E mean / G mean is 16; from memory)."""
ACROSS_WOOD = 30.0
"""E along over E across the grain of solid wood, where that isn't known (EN 338, softwoods; from
memory)."""


@dataclass(frozen=True, slots=True)
class Board:
    """A plate of one or more parts (``refs``): ``box`` is the box round them, ``normal`` the axis
    square to it, ``middle`` where its middle plane lies along that.

    One that follows a slope counts as lying level: ``rise`` is by how much it goes up for each mm
    to the right.
    """

    refs: tuple[str, ...]
    box: Box
    normal: int
    middle: float
    sheet: Sheet
    rise: float = 0.0

    @property
    def axes(self) -> tuple[int, int]:
        """The two axes that it lies along."""
        return ((1, 2), (0, 2), (0, 1))[self.normal]


@dataclass(frozen=True, slots=True)
class Stick:
    """A bar of one part, along ``axis`` through the middle of its ``box``."""

    ref: str
    box: Box
    axis: int
    bar: Bar

    @property
    def refs(self) -> tuple[str, ...]:
        """Its ref, as boards have them."""
        return (self.ref,)


def boards_of(unit: Unit, softening: Softening) -> tuple[Board, ...]:
    """The plates of a unit; layers glued face to face are one.

    A part's moduli count for ``1 / (1 + softening(part))`` (EN 1995-1-1, 2.3.2.2).

    Raises:
        ValueError: how stiff one of them is isn't known.
    """
    layers = _layers(unit)
    boards = []
    for part in unit.parts:
        if part.role in BOARDS and part.ref in layers:
            parts = [unit.part(ref) for ref in layers[part.ref]]
            if _is_square(part):
                boards.append(_board(parts, softening))
            elif rise_of(part) is not None:
                boards.append(_sloping(part, softening))
    return tuple(boards)


def sticks_of(unit: Unit, softening: Softening) -> tuple[Stick, ...]:
    """The bars of a unit; ``softening`` and errors as for :func:`boards_of`."""
    found = (part for part in unit.parts if part.role in STICKS and _is_square(part))
    return tuple(_stick(part, softening) for part in found)


def rise_of(part: Part) -> float | None:
    """By how much a part that follows a slope from left to right goes up for each mm to the right;
    None where it lies square to the unit, or slopes from front to back."""
    across = part.placement.thickness
    if _is_square(part) or abs(across[1]) > 1 - SQUARE or abs(across[2]) < 1 - SQUARE:
        return None
    return -across[0] / across[2]


def lacking_stiffness(unit: Unit) -> str:
    """What has to be given before there is a model; empty if all is known."""
    parts = (part for part in unit.parts if part.role in (*BOARDS, *STICKS))
    return next((told for part in parts if (told := lacking(part.blank.stock, "along"))), "")


def _is_square(part: Part) -> bool:
    placed = part.placement
    return all(max(map(abs, axis)) > SQUARE for axis in placed.axes)


def _layers(unit: Unit) -> dict[str, tuple[str, ...]]:
    """The refs of each pack of layers, by its first."""
    glued: dict[str, list[str]] = {}
    above = set()
    for joint in unit.joints:
        if joint.kind is JointKind.FACE_GLUED:
            glued.setdefault(joint.first, []).append(joint.second)
            above.add(joint.second)
    packs = {}
    for part in unit.parts:
        if part.ref not in above:
            pack, waiting = [part.ref], list(glued.get(part.ref, ()))
            while waiting:
                pack.append(waiting.pop(0))
                waiting += glued.get(pack[-1], ())
            packs[part.ref] = tuple(pack)
    return packs


def _mechanics(part: Part) -> Mechanics:
    found = part.blank.stock.mechanics
    if found is None:
        raise ValueError(f"how stiff {part.blank.stock.material} is isn't known")
    return found


def moduli(part: Part, softening: Softening) -> tuple[float, float, float, float]:
    """E along and across the grain, G in the plane and through the thickness, N/mm2.

    Raises:
        ValueError: how stiff its material is isn't known.
    """
    own = _mechanics(part)
    less = 1 + softening(part)
    along = own.along.value
    across = own.across.value if own.across else _across(own)
    in_plane = own.panel_shear or own.shear
    through = own.shear or own.panel_shear
    return (
        along / less,
        across / less,
        (in_plane.value if in_plane else along / WITHOUT_SHEAR) / less,
        (through.value if through else along / WITHOUT_SHEAR) / less,
    )


def _across(own: Mechanics) -> float:
    return own.along.value / (ACROSS_WOOD if own.family is Family.SOLID_WOOD else 1.0)


def _along_axis(part: Part) -> int:
    lengths = [abs(each) for each in part.placement.length]
    widths = [abs(each) for each in part.placement.width]
    crosswise = part.blank.grain is Grain.CROSSWISE
    turned = widths if crosswise else lengths
    return turned.index(max(turned))


def _board(parts: list[Part], softening: Softening) -> Board:
    boxes = [part.bounds() for part in parts]
    normal = min(range(3), key=lambda axis: boxes[0].size[axis])
    second = ((1, 2), (0, 2), (0, 1))[normal][1]
    layers = []
    for part, box in zip(parts, boxes, strict=True):
        along, across, in_plane, through = moduli(part, softening)
        turned = _along_axis(part) == second
        stiff = (across, along) if turned else (along, across)
        layers.append((box.centre[normal], box.size[normal], stiff, in_plane, through))
    whole = Box.of_boxes(boxes)
    middle = whole.centre[normal] if len(parts) == 1 else _neutral(layers)
    return Board(tuple(part.ref for part in parts), whole, normal, middle, _sheet(layers, middle))


def _sloping(part: Part, softening: Softening) -> Board:
    box, thick = part.bounds(), part.blank.thickness
    along, across, in_plane, through = moduli(part, softening)
    lengthwise = abs(part.placement.length[1]) < 1 - SQUARE
    stiff = (along, across) if lengthwise else (across, along)
    if part.blank.grain is Grain.CROSSWISE:
        stiff = (stiff[1], stiff[0])
    sheet = _sheet([(0.0, thick, stiff, in_plane, through)], 0.0)
    middle = part.placement.to_unit((part.blank.length / 2, part.blank.width / 2, thick / 2))
    rise = rise_of(part) or 0.0
    at_centre = middle[2] + rise * (box.centre[0] - middle[0])
    return Board((part.ref,), box, 2, at_centre, sheet, rise)


Layer = tuple[float, float, tuple[float, float], float, float]


def _neutral(layers: Iterable[Layer]) -> float:
    """Where the pack neither stretches nor shrinks as it bends: the middle of its stiffness."""
    weighed = [(sum(stiff) * thick, at) for at, thick, stiff, _, _ in layers]
    return sum(w * at for w, at in weighed) / sum(w for w, _ in weighed)


def _sheet(layers: Iterable[Layer], middle: float) -> Sheet:
    """What glued layers are together: each bends about the middle of them all."""
    membrane, bending, shear = [0.0, 0.0], [0.0, 0.0], [0.0, 0.0, 0.0]
    for at, thick, stiff, in_plane, through in layers:
        inertia = thick**3 / 12 + thick * (at - middle) ** 2
        for side in (0, 1):
            membrane[side] += stiff[side] * thick
            bending[side] += stiff[side] * inertia
        shear[0] += in_plane * thick
        shear[1] += in_plane * inertia
        shear[2] += SHEAR * through * thick
    return Sheet(
        (membrane[0], membrane[1]),
        shear[0],
        (bending[0], bending[1]),
        shear[1],
        (shear[2], shear[2]),
    )


def _stick(part: Part, softening: Softening) -> Stick:
    box = part.bounds()
    axis = max(range(3), key=lambda each: box.size[each])
    along, _, in_plane, _ = moduli(part, softening)
    one, other = (box.size[each] for each in range(3) if each != axis)
    area = one * other
    bar = Bar(
        along * area,
        in_plane * torsion_constant(one, other),
        (along * one**3 * other / 12, along * other**3 * one / 12),
        (SHEAR * in_plane * area, SHEAR * in_plane * area),
    )
    return Stick(part.ref, box, axis, bar)


def torsion_constant(one: float, other: float) -> float:
    """Saint-Venant's torsion constant of a rectangle, mm4 (Timoshenko and Goodier, Theory of
    elasticity, article 109; from memory): b h3 / 3 (1 - 192 h / (pi5 b) tanh(pi b / 2 h))."""
    thin, wide = sorted((one, other))
    less = 192 / pi**5 * thin / wide * tanh(pi * wide / (2 * thin))
    return wide * thin**3 / 3 * (1 - less)


def refs_in(pieces: Iterable[Board | Stick]) -> Iterator[str]:
    """The refs of all that is in a model."""
    for piece in pieces:
        yield from piece.refs
