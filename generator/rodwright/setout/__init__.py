"""The set-out: wishes and sizes become parts and joints, by arithmetic alone.

What only some units have is loaded when one asks for it: the shortest check should be quick.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from rodwright.geometry import TOUCH, Box
from rodwright.opening.slips import small_sizes
from rodwright.problems import Problem, Problems, ProblemsError
from rodwright.setout.around.base import levelling_of, set_out_base
from rodwright.setout.bench import Bench
from rodwright.setout.carcass.back import set_out_back
from rodwright.setout.carcass.box import set_out_carcass
from rodwright.setout.carcass.interior import Interior, keep_loose, set_out_interior
from rodwright.setout.edges.lipping import set_out_lippings
from rodwright.setout.frame.face_frame import set_out_face_frame
from rodwright.setout.rod.main_lines import Rod, draw_rod
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.way.readings import read_way
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.files import SpecFile

if TYPE_CHECKING:
    from rodwright.setout.slope.lines import SlopeLines

__all__ = ["set_out", "set_out_unit"]


def set_out(spec: SpecFile | UnitSpec) -> Unit:
    """Set a unit out: every part, where it stands, and every joint; lengths in mm.

    Parts' frames are as they are laid to be worked (see :mod:`rodwright.unit.laid`).

    Raises:
        ProblemsError: the wishes don't make a unit.  Every problem found is in it, with
            file, line and column when the spec was read from a file.
    """
    if isinstance(spec, UnitSpec):
        return laid_unit(set_out_unit(spec))
    with spec.located():
        return laid_unit(set_out_unit(spec.spec))


def set_out_unit(spec: UnitSpec) -> Unit:
    """Set a unit out: every part with its blank, workings and placement, and every joint.

    Lengths in mm; the unit frame is that of :mod:`rodwright.unit`.

    Raises:
        ProblemsError: the wishes don't make a unit; every problem found is in it, with the
            way to its place in the spec.  Where the opening is hardly one because a size was
            read in another unit, that is said instead of all that follows from it.
    """
    try:
        return _set_out(spec)
    except ProblemsError as error:
        slips = small_sizes(spec)
        if slips is None:
            raise
        left = _problems_of(slips.mended)
        if len(left) >= len(error.problems):
            raise
    raise ProblemsError((*slips.problems, *left))


def _problems_of(spec: UnitSpec) -> tuple[Problem, ...]:
    try:
        _set_out(spec)
    except ProblemsError as error:
        return error.problems
    return ()


def _set_out(spec: UnitSpec) -> Unit:
    problems = Problems(spec.unit)
    rod = draw_rod(spec, problems)
    slope = None
    if spec.slope is not None:
        from rodwright.setout.slope.lines import slope_lines, under_slope

        slope = slope_lines(spec, rod, problems)
        if slope is not None:
            rod = under_slope(spec, rod, slope, problems)
    bench = Bench(sizes=trade_sizes(spec.unit))
    carcass = set_out_carcass(spec, rod, bench, problems)
    bench.note_places(("carcass",))
    interior = set_out_interior(spec, rod, carcass, bench, problems)
    if spec.back is not None and rod.back is not None:
        moisture = spec.moisture.range
        set_out_back(spec.back, rod, carcass, interior, bench, moisture, problems)
    if spec.face_frame is not None and rod.frame is not None:
        set_out_face_frame(spec.face_frame, rod, carcass, interior, bench, problems)
    if rod.lipping is not None:
        set_out_lippings(rod, carcass, interior, bench, problems)
    keep_loose(interior.loose, bench)
    bench.note_places(())
    _fill_fronts(spec, rod, slope, interior, bench, problems)
    if spec.hung and spec.base is not None:
        problems.add(
            ("hung",),
            "a unit that hangs on the wall stands on no base",
            "Leave `hung` or `base` out.",
        )
    if spec.base is not None:
        set_out_base(spec.base, rod, carcass, bench, problems)
    _finish_round(spec, rod, bench, problems)
    if interior.rows:
        from rodwright.setout.carcass.shelf_drilling import drill_shelf_rows

        drill_shelf_rows(interior.rows, bench, problems)
    problems.raise_if_any()
    if slope is not None:
        from rodwright.setout.slope.boards import lay_slope
        from rodwright.setout.slope.cutting import cut_to_slope

        cut_to_slope(spec, rod, slope, bench, problems)
        problems.raise_if_any()
        lay_slope(spec, rod, slope, bench)
    way_in = read_way(spec.way_in, rod.opening, problems) if spec.way_in else None
    problems.raise_if_any()
    _refuse_nothing(bench, problems)
    parts = bench.finished()
    return Unit(
        title=spec.title,
        envelope=Box.of_boxes(part.bounds() for part in parts).spanning(2, low=0.0),
        parts=parts,
        joints=tuple(bench.joints),
        clearances=tuple(bench.clearances),
        opening=rod.opening,
        least_gap=spec.clearance,
        display_unit=spec.unit,
        way_in=way_in,
        motions=tuple(bench.motions),
        fixings=tuple(bench.fixings),
        fittings=bench.fittings(parts),
        levelling=levelling_of(spec.base, bench.sizes),
        moisture=spec.moisture.range,
        hung=spec.hung,
        author=spec.made_by.name or "",
        organisation=spec.made_by.organisation or "",
        date=spec.date or "",
        services=tuple(
            dict.fromkeys(wish.kind for wish in spec.cutouts if wish.kind != "skirting")
        ),
    )


def _refuse_nothing(bench: Bench, problems: Problems) -> None:
    """Stop where a part has come out with no size at all, which no module should let happen."""
    for ref, part in bench.parts.items():
        if min(part.blank.size) <= TOUCH:
            problems.add(
                bench.places.get(ref) or ("interior",),
                f"no wood is left of {part.name.lower()} {ref} between what stands round it",
                "Give it more room, or leave it out.",
            )
    problems.raise_if_any()


def _fill_fronts(
    spec: UnitSpec, rod: Rod, slope: SlopeLines | None, interior: Interior, bench: Bench,
    problems: Problems,
) -> None:  # fmt: skip
    """Lay drawers and doors on the bench."""
    moisture = spec.moisture.range
    if interior.chests:
        from rodwright.setout.drawers.chest import set_out_drawers

        for chest in interior.chests:
            set_out_drawers(chest.wish, chest.space, rod, bench, problems, chest.where, moisture)
            bench.note_places(chest.where)
    if interior.doorways:
        from rodwright.setout.doors.hinge_places import surroundings
        from rodwright.setout.doors.leaves import set_out_doors

        around = surroundings(bench, interior.rows)
        for door in interior.doorways:
            set_out_doors(
                door.wish, door.space, rod, bench, problems, door.where, moisture, around, slope
            )
            bench.note_places(door.where)


def _finish_round(spec: UnitSpec, rod: Rod, bench: Bench, problems: Problems) -> None:
    """Lay what stands over and beside the carcass on the bench, and cut all out for the room."""
    if spec.worktop is not None:
        from rodwright.setout.around.worktop import set_out_worktop

        set_out_worktop(spec.worktop, rod, bench, spec.moisture.range, problems)
    if spec.cornice is not None:
        from rodwright.setout.around.cornice import set_out_cornice

        scribed = spec.scribes.edges if spec.scribes else ()
        set_out_cornice(spec.cornice, rod, scribed, bench, problems)
    if spec.scribes is not None:
        from rodwright.setout.around.scribes import set_out_scribes

        set_out_scribes(spec.scribes, rod, bench, problems)
    if spec.edging is not None:
        from rodwright.setout.edges.edging import set_out_edging

        set_out_edging(spec, spec.edging, bench, problems)
    if spec.cutouts:
        from rodwright.setout.around.cutouts import cut_out

        cut_out(spec.cutouts, rod, bench, problems)
