"""From a spec that was read to a unit that is set out."""

from __future__ import annotations

from rodwright.laid import laid_unit
from rodwright.parts import Unit
from rodwright.setout import set_out_unit
from rodwright.spec import SpecFile, UnitSpec


def set_out(spec: SpecFile | UnitSpec) -> Unit:
    """Set a unit out: every part, where it stands, and every joint; lengths in mm.

    Parts' frames are as they are laid to be worked (see :mod:`rodwright.laid`).

    Raises:
        ProblemsError: the wishes don't make a unit.  Every problem found is in it, with
            file, line and column when the spec was read from a file.
    """
    if isinstance(spec, UnitSpec):
        return laid_unit(set_out_unit(spec))
    with spec.located():
        return laid_unit(set_out_unit(spec.spec))
