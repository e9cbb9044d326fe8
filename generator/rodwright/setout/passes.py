"""The passes of the set-out, in their order: one table, as the checks have it.

Each is a function of a :class:`Setting` that lays its parts on the bench, cuts and joins them, and
notes what can't be made.
"""

from __future__ import annotations

from collections.abc import Callable
from contextlib import nullcontext
from dataclasses import dataclass
from importlib import import_module

from rodwright.problems import KeyPath
from rodwright.setout.setting import Setting


def _always(_: Setting) -> bool:
    return True


@dataclass(frozen=True, slots=True)
class Pass:
    """One pass of the set-out.

    ``step`` is its module in this package and its function, loaded when a unit has the pass.
    ``needs`` are the names of the passes that have to be done before it, in units that have them:
    what it goes by would be missing, or it would get in their way.  ``applies`` says which units
    have it.  One that is for ``sound`` units alone comes once nothing was found wrong so far.
    ``where`` is the place of the spec that it and its parts are wished at, and that its setting is
    at; one without comes to several.
    """

    name: str
    step: str
    needs: tuple[str, ...] = ()
    applies: Callable[[Setting], bool] = _always
    sound: bool = False
    where: KeyPath = ()

    def load(self) -> Callable[[Setting], None]:
        """Its function."""
        module, _, name = self.step.partition(":")
        step: Callable[[Setting], None] = getattr(import_module(f"{__package__}.{module}"), name)
        return step


def in_order(passes: tuple[Pass, ...]) -> tuple[Pass, ...]:
    """The same passes, if each comes once, and after all that it needs.

    Raises:
        ValueError: they don't; the passes that are out of order are named.
    """
    done: set[str] = set()
    for each in passes:
        if each.name in done:
            raise ValueError(f"{each.name} comes twice")
        for need in each.needs:
            if need not in done:
                raise ValueError(f"{each.name} needs {need}, which doesn't come before it")
        done.add(each.name)
    return passes


PASSES = in_order(
    (
        Pass("carcass", "carcass.box:set_out_carcass", where=("carcass",)),
        Pass("interior", "carcass.interior:set_out_interior", ("carcass",)),
        Pass("ends inside", "carcass.ends:join_ends", ("interior",)),
        Pass(
            "back",
            "carcass.back:set_out_back",
            ("interior",),
            lambda setting: setting.rod.back is not None,
            where=("back",),
        ),
        Pass(
            "face frame",
            "frame.face_frame:set_out_face_frame",
            ("interior",),
            lambda setting: setting.rod.front.frame is not None,
            where=("face_frame",),
        ),
        Pass(
            "lippings",
            "edges.lipping:set_out_lippings",
            ("face frame",),
            lambda setting: setting.rod.front.lipping is not None,
            where=("lipping",),
        ),
        Pass("play of shelves", "carcass.shelves:keep_loose", ("back", "face frame")),
        Pass(
            "drawers",
            "drawers.chest:set_out_drawers",
            ("ends inside",),
            lambda setting: bool(setting.notes.drawers),
        ),
        Pass(
            "doors",
            "doors.leaves:set_out_doors",
            ("lippings", "drawers"),
            lambda setting: bool(setting.notes.doors),
        ),
        Pass(
            "continuous grain",
            "edges.continuous_grain:run_grain_on",
            ("doors",),
            lambda setting: bool(setting.notes.continuous),
        ),
        Pass(
            "base",
            "around.base:set_out_base",
            ("ends inside",),
            lambda setting: setting.spec.base is not None,
            where=("base",),
        ),
        Pass(
            "worktop",
            "around.worktop:set_out_worktop",
            ("ends inside",),
            lambda setting: setting.spec.worktop is not None,
            where=("worktop",),
        ),
        Pass(
            "cornice",
            "around.cornice:set_out_cornice",
            ("lippings", "drawers", "worktop"),
            lambda setting: setting.spec.cornice is not None,
            where=("cornice",),
        ),
        Pass(
            "scribes",
            "around.scribes:set_out_scribes",
            ("cornice",),
            lambda setting: setting.spec.scribes is not None,
            where=("scribes",),
        ),
        Pass(
            "edging",
            "edges.edging:set_out_edging",
            ("doors",),
            lambda setting: setting.spec.edging is not None,
            where=("edging",),
        ),
        Pass(
            "cut-outs",
            "around.cutouts:cut_out",
            ("back", "doors", "base", "scribes"),
            lambda setting: bool(setting.spec.cutouts),
            where=("cutouts",),
        ),
        Pass(
            "rows of holes",
            "carcass.shelf_drilling:drill_shelf_rows",
            ("cut-outs",),
            lambda setting: bool(setting.notes.rows),
        ),
        Pass(
            "slope",
            "slope.cutting:cut_to_slope",
            ("rows of holes",),
            lambda setting: setting.slope is not None,
            sound=True,
            where=("slope",),
        ),
        Pass(
            "sloping boards",
            "slope.boards:lay_slope",
            ("edging", "slope"),
            lambda setting: setting.slope is not None,
            sound=True,
            where=("slope",),
        ),
    )
)


def run(setting: Setting, passes: tuple[Pass, ...] = PASSES) -> None:
    """Set the unit out on the setting's bench.

    Raises:
        ProblemsError: a pass for sound units has come, and problems were noted before it.
    """
    for each in passes:
        if each.applies(setting):
            if each.sound:
                setting.problems.raise_if_any()
            place = setting.bench.wished_at(each.where) if each.where else nullcontext()
            with place:
                each.load()(setting.at(*each.where))
