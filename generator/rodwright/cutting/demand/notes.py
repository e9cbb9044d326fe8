"""What is written on a piece besides its ref: what is done to it once it is cut."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rodwright.cutting.demand.jobs import Job
from rodwright.geometry import TOUCH
from rodwright.trade.gluing_up import RESAWN
from rodwright.unit import JointKind, Part
from rodwright.unit.cut_edges import glued_up
from rodwright.unit.orientation import describe_shows
from rodwright.unit.shop_part import shop_part


def notes_of(job: Job, part: Part) -> tuple[str, ...]:
    """What to do with a part after it is cut to its rough size: trim it, edge it, glue it to its
    other layers; and which of its faces show."""
    # Which fronts it is cut from one piece with is told with that piece.
    shop = shop_part([replace(part, grain_run="")], "cut", job.unit.display_unit)
    return (*_layers(job, part), *shop.notes, *_showing(part))


def _layers(job: Job, part: Part) -> Iterator[str]:
    """The layers that a part is glued to."""
    others = []
    for joint in job.unit.joints:
        if joint.kind is JointKind.FACE_GLUED and part.ref in (joint.first, joint.second):
            other = joint.second if part.ref == joint.first else joint.first
            if glued_up(part) and glued_up(job.unit.part(other)):
                others.append(job.ref(other))
    if others:
        yield f"a layer: glue up with {' and '.join(others)}"


def _showing(part: Part) -> Iterator[str]:
    """The face to choose the better side for."""
    faces = tuple(each for each in part.blank.show_surfaces if each.axis == 2)
    if len(faces) == 1:
        (name,) = describe_shows([_shown(part)])
        yield f"the better side is the {name}"


def _shown(part: Part) -> Part:
    faces = tuple(each for each in part.blank.show_surfaces if each.axis == 2)
    return replace(part, blank=replace(part.blank, show_surfaces=faces))


def planed(job: Job, part: Part, on_edge: bool) -> Iterator[str]:
    """How a piece of a board gets its thickness."""
    there = part.blank.stock.thickness
    if on_edge:
        wanted = part.rough_size[1]
        yield (
            f"ripped {job.length(part.blank.thickness)} off the edge of the board and turned on "
            f"its side: {job.size(there)} becomes its width"
        )
        if there > wanted + TOUCH:
            yield f"plane that to {job.length(wanted)}"
    elif there > part.blank.thickness + TOUCH:
        thick = part.blank.thickness
        resawn = 2 * thick + RESAWN <= there
        how = ", or resaw it: two come out of it" if resawn else ""
        yield f"plane it from {job.size(there)} to {job.length(thick)} thick{how}"


def ripped(job: Job, part: Part, mitred: bool) -> Iterator[str]:
    """What is taken off a length that was bought in a larger section."""
    stock, (_, wide, thick) = part.blank.stock, part.rough_size
    if (stock.section or 0.0) > wide + TOUCH:
        where = ", from the edge of its short points" if mitred else ""
        yield f"rip it to {job.length(wide)} wide{where}"
    if stock.thickness > thick + TOUCH:
        yield f"plane it from {job.size(stock.thickness)} to {job.length(thick)} thick"
