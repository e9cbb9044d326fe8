"""Parts as a shop gets them: as cut or finished, worked side up, with what to do besides.

One frame for the list, the model and the part's file: x from the near end, y from the face
edge, z up, the worked side up (see :mod:`rodwright.unit.laid`).  Of a part *as cut* the blank is
what the machine gets: less its edging, with what is trimmed off later still on it, every
working measured from the edges as cut.  Of a *finished* part it is the finished size, for a
shop that edges and trims first and bores afterwards.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Literal

from rodwright.geometry import Box, Vector
from rodwright.lengths import LengthUnit, format_length
from rodwright.unit import Bore, Edging, Part, Role, Surface, Working
from rodwright.unit.cut_edges import Growth, as_cut, glued_up, growth, outlines, trims, waits
from rodwright.unit.laid import laid
from rodwright.unit.orientation import Orientation, orientation_of
from rodwright.unit.surfaces import HIGH, LOW

PartsKind = Literal["cut", "finished"]
"""Which of the two a part's file and figures are."""


@dataclass(frozen=True, slots=True)
class ShopPart:
    """Equal pieces as they come to the bench or the machine.

    ``pieces`` are all of them, each with the blank as it comes and its workings, in the
    frame of their file: the blank fills ``[0, length] x [0, width] x [0, thickness]``, z is up
    as it lies.  They have no trim and, as cut, no edging.  ``finished`` is the outline of the
    finished piece in that frame (mm); it reaches past the blank by the edging, and stays
    within it by what is trimmed.  ``edged`` is the edging, by the surfaces of that frame.
    ``later`` are workings that can only be made once the piece is trimmed and edged: they
    aren't in the blank.

    In the words of the list, surfaces named by where they lie in the unit as far as the pieces
    agree: ``up`` the face that is up, ``reference`` where x and y are measured from,
    ``second_side`` how to turn the piece over for the other face (None where that has no
    workings), ``notes`` what to do before or after.
    """

    kind: PartsKind
    pieces: tuple[Part, ...]
    finished: Box
    edged: tuple[Edging, ...]
    later: tuple[Working, ...]
    up: str
    reference: str
    second_side: str | None
    notes: tuple[str, ...]

    @property
    def part(self) -> Part:
        """The first of the pieces."""
        return self.pieces[0]

    @property
    def state(self) -> str:
        """``as cut`` or ``finished``."""
        return "as cut" if self.kind == "cut" else "finished"


def shop_part(parts: Sequence[Part], kind: PartsKind = "cut", unit: LengthUnit = "mm") -> ShopPart:
    """Equal pieces (a row of the parts list) for the shop; texts have lengths in ``unit``."""
    lying = laid(parts)
    first, size = lying[0], lying[0].blank.size
    grown = growth(first) if kind == "cut" else {}
    cut, finished = outlines(first) if kind == "cut" else (size, Box.of_size(size))
    later = tuple(each for each in first.workings if waits(size, each, grown))
    workings = _moved(size, (each for each in first.workings if each not in later), grown)
    pieces = tuple(_piece(each, cut, finished, workings, kind) for each in lying)
    orientation = orientation_of(pieces)
    return ShopPart(
        kind,
        pieces,
        finished,
        first.edged,
        _moved(size, later, grown),
        orientation.name(Surface.FACE),
        f"x from the {orientation.name(LOW[0])}, y from the {orientation.name(LOW[1])}",
        _second_side(pieces[0], orientation, unit),
        tuple(_notes(first, orientation, kind, unit)),
    )


def _moved(size: Vector, workings: Iterable[Working], grown: Growth) -> tuple[Working, ...]:
    moved = (as_cut(size, each, grown) for each in workings)
    return tuple(each for each in moved if each is not None)


def _piece(
    part: Part, size: Vector, finished: Box, workings: tuple[Working, ...], kind: PartsKind
) -> Part:
    placed, (x, y, z) = part.placement, finished.low
    return replace(
        part,
        blank=replace(
            part.blank,
            length=size[0],
            width=size[1],
            thickness=size[2],
            trim_length=0.0,
            trim_width=0.0,
            trim_at=(),
        ),
        placement=replace(placed, origin=placed.to_unit((-x, -y, -z))),
        workings=workings,
        edged=() if kind == "cut" else part.edged,
    )


def _second_side(part: Part, orientation: Orientation, unit: LengthUnit) -> str | None:
    """How the piece is turned over for what is cut into its lower face."""
    size = part.blank.size
    if all(each.worked_from(size) is not Surface.REVERSE for each in part.workings):
        return None
    return (
        f"{orientation.name(Surface.REVERSE)}: turn it over about its length; x still from the "
        f"{orientation.name(LOW[0])}, y from the {orientation.name(HIGH[1])} "
        f"({format_length(part.blank.width, unit)} less y as listed)"
    )


def _notes(
    part: Part, orientation: Orientation, kind: PartsKind, unit: LengthUnit
) -> Iterator[str]:
    """What is done to a laid part before or after it is worked."""
    if part.grain_run and kind == "cut":
        yield (
            f"its grain runs on through its neighbours (run {part.grain_run}): they are cut in "
            "their order from one piece"
        )
    left_on = trims(part)
    if kind == "finished":
        before = [
            *(["glued up"] if glued_up(part) else []),
            *(["trimmed"] if left_on else []),
            *(["edged"] if part.edged else []),
        ]
        if before:
            yield f"sizes and places as they are once it is {listed(before)}"
        return
    for amount, surfaces in _by_amount(left_on).items():
        yield f"cut {format_length(amount, unit)} over at {_places(surfaces, orientation)}"
    if left_on:
        yield _trimming(part, left_on, unit)
        bored = {each.entered for each in part.workings if isinstance(each, Bore)}
        into = {surface: amount for surface, amount in left_on.items() if surface in bored}
        for amount, surfaces in _by_amount(into).items():
            yield (
                f"bores in {_places(surfaces, orientation)} are {format_length(amount, unit)} "
                "deeper here, which trimming takes off; better made after it"
            )
    for (amount, what), surfaces in _by_edging(part.edged).items():
        yield (
            f"cut {format_length(amount, unit)} under at {_places(surfaces, orientation)}, which "
            f"its edging ({what}) makes up"
        )


def _trimming(part: Part, left_on: dict[Surface, float], unit: LengthUnit) -> str:
    """When a piece is trimmed, and to what."""
    if part.role is Role.SCRIBE:
        return "scribe it to the wall there"
    size = list(part.blank.size)
    for each in part.edged:
        size[each.surface.axis] -= each.thickness
    length, width = (format_length(each, unit) for each in size[:2])
    before = ", before edging" if part.edged else ""
    if part.role is Role.LIPPING:
        return f"glue it on first, then trim it flush to {length} x {width}"
    if glued_up(part):
        return f"glue the layers up first, then trim them together to {length} x {width}{before}"
    long = f"{length} long" if any(each.axis == 0 for each in left_on) else ""
    wide = f"{width} wide" if any(each.axis == 1 for each in left_on) else ""
    return f"trim it to {' and '.join(filter(None, (long, wide)))} when it is fitted{before}"


def _by_amount(left_on: dict[Surface, float]) -> dict[float, list[Surface]]:
    gathered: dict[float, list[Surface]] = {}
    for surface, amount in left_on.items():
        gathered.setdefault(amount, []).append(surface)
    return gathered


def _by_edging(edged: Sequence[Edging]) -> dict[tuple[float, str], list[Surface]]:
    gathered: dict[tuple[float, str], list[Surface]] = {}
    for each in edged:
        gathered.setdefault((each.thickness, each.called), []).append(each.surface)
    return gathered


def _places(surfaces: Sequence[Surface], orientation: Orientation) -> str:
    """Ends and edges together: ``both ends and both edges`` before their names one by one."""
    said: list[str] = []
    for axis, both in ((0, "both ends"), (1, "both edges")):
        there = [each for each in surfaces if each.axis == axis]
        said += [both] if len(there) == 2 else [f"the {orientation.name(each)}" for each in there]
    return listed(said)


def listed(words: Sequence[str]) -> str:
    """Words one after the other, the last after an and."""
    return " and ".join(filter(None, (", ".join(words[:-1]), words[-1])))
