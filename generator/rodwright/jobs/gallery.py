"""The gallery: pictures of every ready model, and a page that shows them."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from rodwright.amounts import format_weight
from rodwright.handover.output import whole_or_nothing
from rodwright.jobs.new import model_names, model_path
from rodwright.lengths import format_length
from rodwright.mass import unit_weight
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.wishes import read_spec

_HEAD = """# Gallery

Every picture here is made from a spec in [`models/`](../models) by one command:

    rodwright gallery

Start from one of them with `rodwright new NAME my-unit.yaml`.
"""

_FILES = re.compile(
    r"README\.md|[a-z0-9-]+/(?:assembled|exploded|loaded|opened|views|opening)[a-z0-9-]*\.(?:png|svg)"
)


def write_gallery(folder: Path, progress: Callable[[str], None]) -> Path:
    """Make the pictures of every ready model and a page of them; returns the page.

    Raises:
        ProblemsError: a model doesn't make a unit, or the folder can't be written; nothing
            is changed then.
    """
    from rodwright.jobs.survey import survey
    from rodwright.pictures.all_views import write_pictures
    from rodwright.pictures.opening import write_opening

    with whole_or_nothing(folder, ours=_FILES, again=_FILES.fullmatch) as staging:
        for name in model_names():
            progress(f"pictures of {name}")
            spec = read_spec(model_path(name))
            unit = set_out(spec)
            pictures = staging / name
            pictures.mkdir()
            write_pictures(unit, pictures)
            if unit.opening is not None:
                write_opening(survey(spec), pictures)
        (staging / "README.md").write_text(gallery_page(), encoding="utf-8", newline="\n")
    return folder / "README.md"


def gallery_page() -> str:
    """The gallery's page, in Markdown: every ready model with its sizes and its pictures.

    Raises:
        ProblemsError: a model doesn't make a unit.
    """
    units = {name: set_out(read_spec(model_path(name))) for name in model_names()}
    return "\n".join([_HEAD, *(_section(name, unit) for name, unit in units.items())])


def _section(name: str, unit: Unit) -> str:
    size = " x ".join(format_length(length, unit.display_unit) for length in unit.size)
    from rodwright.pictures.details import details

    enlarged = "".join(
        f"\n![{unit.title}, {detail.about}]({name}/exploded-{detail.name}.png)\n"
        for detail in details(unit)
    )
    opening = f"\n![{unit.title}, its opening]({name}/opening.png)\n" if unit.opening else ""
    from rodwright.strength.sag_lines import sag_lines

    under = f"\n![{unit.title}, under its loads]({name}/loaded.png)\n" if sag_lines(unit) else ""
    opened = f"\n![{unit.title}, open]({name}/opened.png)\n" if unit.motions else ""
    return f"""## {unit.title}

`{name}`: {size} {unit.display_unit} (width x height x depth), {len(unit.parts)} parts, \
{format_weight(unit_weight(unit), unit.display_unit, 0)}.

![{unit.title}, assembled]({name}/assembled.png)
{opened}
![{unit.title}, taken apart]({name}/exploded.png)
{enlarged}{under}
![{unit.title}, front, side and plan]({name}/views.png)
{opening}"""
