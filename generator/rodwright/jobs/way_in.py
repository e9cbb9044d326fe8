"""The way in of a unit, on paper: pictures of every step, and the answer as a document."""

from __future__ import annotations

import re
from pathlib import Path

from rodwright.handover.output import whole_or_nothing
from rodwright.handover.way_in_json import way_in_json
from rodwright.problems import Problem, ProblemsError
from rodwright.unit import Unit
from rodwright.way.answer import WayInAnswer, find_way_in

__all__ = ["way_in", "write_way_in"]


_FILES = re.compile(r"way-in\.json|[0-9]+-[a-z0-9-]+\.(?:svg|png)")


def way_in(unit: Unit) -> WayInAnswer:
    """Whether a finished unit can be carried in, stood up and put into its opening, and how.

    Raises:
        ProblemsError: the spec gives no way in.
    """
    if unit.way_in is None:
        raise ProblemsError(
            [
                Problem(
                    "the spec says nothing of the way in",
                    "Add `way_in:` with what is known of `doors`, `corners`, `ceiling`, "
                    "`skirting` and `mouth`.",
                )
            ]
        )
    return find_way_in(unit, unit.way_in)


def write_way_in(answer: WayInAnswer, folder: Path) -> tuple[str, ...]:
    """Write a picture of every step (SVG and PNG) and ``way-in.json``; returns the file names.

    Raises:
        ProblemsError: the folder can't be written, or something of the user's is in the way;
            nothing is written then.
    """
    # The pictures bring VTK and CadQuery along; the answer alone needs neither.
    from rodwright.pictures.files import write_drawing
    from rodwright.pictures.way import way_drawings

    with whole_or_nothing(folder, ours=_FILES, again=_FILES.fullmatch) as staging:
        for name, drawing in way_drawings(answer).items():
            write_drawing(drawing, staging, name)
        (staging / "way-in.json").write_bytes(way_in_json(answer))
        names = sorted(path.name for path in staging.iterdir())
    return tuple(names)
