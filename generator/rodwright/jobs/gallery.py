"""The gallery: photographs and drawings of every ready model, and a page that shows them."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from rodwright.amounts import format_weight
from rodwright.handover.output import whole_or_nothing
from rodwright.jobs.new import model_names, model_path
from rodwright.lengths import format_length
from rodwright.mass import unit_weight
from rodwright.setout import set_out
from rodwright.unit.facts import size_as_fitted
from rodwright.unit.laid import laid_unit
from rodwright.wishes import read_spec
from rodwright.wishes.reading.options import option_specs

if TYPE_CHECKING:
    from rodwright.photo.tracing import Quality

_HEAD = """# Gallery

Every picture here is made from a spec in [`models/`](../models) by one command:

    rodwright gallery

The photographs are path traced: all of them take the better part of an hour.

Start from one of them with `rodwright new NAME my-unit.yaml`.
"""

_FILES = re.compile(
    r"README\.md|[a-z0-9-]+/(?:(?:exploded|loaded|views|opening)[a-z0-9-]*\.(?:png|svg)"
    r"|(?:closed|open|apart|options)\.jpg|build-up\.webp)"
)
_FILMED = "reading-alcove"
"""The model that is shown taken apart and built up too: the one that the README builds."""
_SIZE, _SAMPLES = 960, 16
"""Of its photographs: a little less than the usual, so that a gallery is made within the hour."""
_ABREAST = 0.6
"""Size of each of the pictures side by side, as a share of the others'."""


def write_gallery(
    folder: Path, progress: Callable[[str], None], quality: Quality | None = None
) -> Path:
    """Make the pictures of every ready model and a page of them; returns the page.

    ``quality`` is that of the photographs, one of its own unless said.

    Raises:
        ProblemsError: a model doesn't make a unit, Mitsuba or Open Image Denoise isn't installed,
            or the folder can't be written; nothing is changed then.
    """
    from rodwright.jobs.survey import survey
    from rodwright.photo.tracing import Quality, refuse_without_mitsuba
    from rodwright.pictures.all_views import write_drawings
    from rodwright.pictures.opening import write_opening

    refuse_without_mitsuba()

    with whole_or_nothing(folder, ours=_FILES, again=_FILES.fullmatch) as staging:
        for name in model_names():
            progress(f"pictures of {name}")
            spec = read_spec(model_path(name))
            unit = set_out(spec)
            pictures = staging / name
            pictures.mkdir()
            for file, data in photographs_of(name, quality or Quality(_SIZE, _SAMPLES)).items():
                (pictures / file).write_bytes(data)
            write_drawings(unit, pictures)
            if unit.opening is not None:
                write_opening(survey(spec), pictures)
        (staging / "README.md").write_text(gallery_page(), encoding="utf-8", newline="\n")
    return folder / "README.md"


def photographs_of(name: str, quality: Quality) -> dict[str, bytes]:
    """The photographs of a ready model by their files' names; open shelves have contents.

    Raises:
        ProblemsError: there is no such model, or Mitsuba or Open Image Denoise isn't installed.
    """
    from rodwright.photo.abreast import side_by_side
    from rodwright.photo.films import build_up
    from rodwright.photo.grades import FILMS
    from rodwright.photo.shots import photographs
    from rodwright.photo.views import shots_of

    spec = read_spec(model_path(name))
    options = [(each, laid_unit(set_out(its))) for each, its in option_specs(spec)]
    unit = options[0][1]
    contents = not unit.motions
    wanted = [each for each in shots_of(unit) if each != "apart" or name == _FILMED]
    shots = photographs(unit, wanted, quality, contents=contents)
    made = {f"{shot}.jpg": data for shot, data in shots.items()}
    if len(options) > 1:
        smaller = replace(quality, size=round(quality.size * _ABREAST))
        made["options.jpg"] = side_by_side(options, smaller, contents=contents).picture
    if name == _FILMED:
        made["build-up.webp"] = build_up(unit, FILMS["draft"])
    return made


def gallery_page() -> str:
    """The gallery's page, in Markdown: every ready model with its sizes and its pictures.

    Raises:
        ProblemsError: a model doesn't make a unit.
    """
    return "\n".join([_HEAD, *(_section(name) for name in model_names())])


def _section(name: str) -> str:
    spec = read_spec(model_path(name))
    unit = set_out(spec)
    size = " x ".join(format_length(length, unit.display_unit) for length in size_as_fitted(unit))
    from rodwright.pictures.details import details

    enlarged = "".join(
        f"\n![{unit.title}, {detail.about}]({name}/exploded-{detail.name}.png)\n"
        for detail in details(unit)
    )
    opening = f"\n![{unit.title}, its opening]({name}/opening.png)\n" if unit.opening else ""
    from rodwright.strength.sag_lines import sag_lines

    under = f"\n![{unit.title}, under its loads]({name}/loaded.png)\n" if sag_lines(unit) else ""
    opened = f"\n![{unit.title}, open]({name}/open.jpg)\n" if unit.motions else ""
    options = [each for each, _ in option_specs(spec)]
    abreast = f"\n![{', '.join(options)}]({name}/options.jpg)\n" if len(options) > 1 else ""
    filmed = (
        f"\n![{unit.title}, taken apart]({name}/apart.jpg)\n"
        f"\n![{unit.title}, built up]({name}/build-up.webp)\n"
        if name == _FILMED
        else ""
    )
    return f"""## {unit.title}

`{name}`: {size} {unit.display_unit} (width x height x depth), {len(unit.parts)} parts, \
{format_weight(unit_weight(unit), unit.display_unit, 0)}.

![{unit.title}]({name}/closed.jpg)
{opened}{abreast}{filmed}
![{unit.title}, taken apart, with the refs of its parts]({name}/exploded.png)
{enlarged}{under}
![{unit.title}, front, side and plan]({name}/views.png)
{opening}"""
