"""The set-out: wishes and sizes become parts and joints, by arithmetic alone.

:mod:`rodwright.setout.passes` has what is done, in its order.  What only some units have is loaded
when one asks for it: the shortest check should be quick.
"""

from __future__ import annotations

from collections.abc import Mapping

from rodwright.geometry import TOUCH, Box
from rodwright.opening.slips import small_sizes
from rodwright.opening.survey import Survey
from rodwright.problems import KeyPath, Problem, Problems, ProblemsError
from rodwright.setout.bench import Bench
from rodwright.setout.carried.loads import set_out_loads
from rodwright.setout.passes import run
from rodwright.setout.rod.main_lines import draw_rod
from rodwright.setout.setting import Setting
from rodwright.setout.surroundings import surroundings_of
from rodwright.trade.sizes import trade_sizes
from rodwright.unit import Part, Unit
from rodwright.unit.laid import laid_unit
from rodwright.way.readings import read_way
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.files import SpecFile

__all__ = ["begin", "set_out", "set_out_options", "set_out_traced", "set_out_unit"]


def set_out(spec: SpecFile | UnitSpec) -> Unit:
    """Set a unit out: every part, where it stands, and every joint; lengths in mm.

    Parts' frames are as they are laid to be worked (see :mod:`rodwright.unit.laid`).

    Raises:
        ProblemsError: the wishes don't make a unit.  Every problem found is in it, with
            file, line and column when the spec was read from a file.
    """
    return set_out_traced(spec)[0]


def set_out_traced(spec: SpecFile | UnitSpec) -> tuple[Unit, Mapping[str, KeyPath]]:
    """As :func:`set_out`, and where in the spec each part was wished, by its ref.

    What is there unasked (the sides of a carcass with no ``carcass:`` in the spec) was wished at a
    place that isn't written; :meth:`rodwright.wishes.reading.places.Places.of_value` then finds
    what it would stand in.

    Raises:
        ProblemsError: as there.
    """
    if isinstance(spec, UnitSpec):
        unit, wished = _made(spec, None)
    else:
        with spec.located():
            unit, wished = _made(spec.spec, None)
    return laid_unit(unit), wished


def set_out_options(spec: SpecFile) -> tuple[tuple[str, Unit], ...]:
    """The spec's unit under its title, then each option's under its name; as :func:`set_out`.

    Raises:
        ProblemsError: the spec or an option of it makes no unit, with all that is wrong in each.
    """
    from rodwright.wishes.reading.options import option_specs

    made: list[tuple[str, Unit]] = []
    problems: list[Problem] = []
    for name, each in option_specs(spec):
        try:
            made.append((name, set_out(each)))
        except ProblemsError as error:
            problems += error.problems
    if problems:
        raise ProblemsError(problems)
    return tuple(made)


def set_out_unit(spec: UnitSpec, survey: Survey | None = None) -> Unit:
    """Set a unit out: every part with its blank, workings and placement, and every joint.

    Lengths in mm; the unit frame is that of :mod:`rodwright.unit`.  ``survey`` is that of the
    spec's opening, if it is made already.

    Raises:
        ProblemsError: the wishes don't make a unit; every problem found is in it, with the
            way to its place in the spec.  Where the opening is hardly one because a size was
            read in another unit, that is said instead of all that follows from it.
    """
    return _made(spec, survey)[0]


def _made(spec: UnitSpec, survey: Survey | None) -> tuple[Unit, Mapping[str, KeyPath]]:
    try:
        return _set_out(spec, survey)
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


def begin(spec: UnitSpec, problems: Problems, survey: Survey | None = None) -> Setting:
    """What the passes begin with: the main lines, and an empty bench.

    ``survey`` is that of the spec's opening, if it is made already.

    Raises:
        ProblemsError: the sizes or stocks that everything else hangs on can't be settled.
    """
    rod, slope = draw_rod(spec, problems, survey), None
    if spec.slope is not None:
        from rodwright.setout.rod.slope_lines import slope_lines, under_slope

        slope = slope_lines(spec, rod, problems)
        if slope is not None:
            rod = under_slope(spec, rod, slope, problems)
    return Setting(spec, rod, Bench(sizes=trade_sizes(spec.unit)), problems, slope=slope)


def _set_out(spec: UnitSpec, survey: Survey | None = None) -> tuple[Unit, Mapping[str, KeyPath]]:
    problems = Problems(spec.unit)
    setting = begin(spec, problems, survey)
    rod, bench = setting.rod, setting.bench
    run(setting)
    problems.raise_if_any()
    loading = set_out_loads(setting)
    problems.raise_if_any()
    way_in = read_way(spec.way_in, rod.opening, problems) if spec.way_in else None
    problems.raise_if_any()
    _refuse_nothing(bench, problems)
    parts = _finished(bench.finished(), setting)
    problems.raise_if_any()
    unit = Unit(
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
        levelling=setting.notes.levelling,
        moisture=spec.moisture.range,
        hung=spec.hung,
        loading=loading,
        surroundings=surroundings_of(setting),
        author=spec.made_by.name or "",
        organisation=spec.made_by.organisation or "",
        date=spec.date or "",
        number=spec.number or "",
        revision=spec.revision or "",
        approved_by=spec.approved_by or "",
        services=tuple(
            dict.fromkeys(wish.kind for wish in spec.cutouts if wish.kind != "skirting")
        ),
    )
    return unit, {part.ref: bench.place_of(part.ref) for part in parts}


def _finished(parts: tuple[Part, ...], setting: Setting) -> tuple[Part, ...]:
    """The parts with what they are finished with, where something is said of that."""
    if setting.spec.finish is None:
        return parts
    from rodwright.setout.finishes import with_finishes

    return with_finishes(parts, setting)


def _refuse_nothing(bench: Bench, problems: Problems) -> None:
    """Stop where a part has come out with no size at all, which no module should let happen."""
    for ref, part in bench.parts.items():
        if min(part.blank.size) <= TOUCH:
            problems.add(
                bench.place_of(ref),
                f"no wood is left of {part.name.lower()} {ref} between what stands round it",
                "Give it more room, or leave it out.",
            )
    problems.raise_if_any()
