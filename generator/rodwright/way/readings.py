"""From what the maker writes of the way in to plain data, with what can't be right told."""

from __future__ import annotations

from rodwright.problems import KeyPath, Problems
from rodwright.unit import Opening
from rodwright.unit.way import Corner, Doorway, Mouth, Skirting, WayIn
from rodwright.wishes.way import MouthSpec, SkirtingSpec, WaySpec

_NARROWEST, _LOWEST = 300.0, 600.0
"""Nobody walks through less (mm); smaller readings are as a rule centimetres typed as mm (common
practice, no source)."""


def read_way(spec: WaySpec, opening: Opening | None, problems: Problems) -> WayIn:
    """The way in as plain data, mm; a corner without a ceiling of its own has the room's.

    What can't be right is noted in ``problems``.
    """
    where: KeyPath = ("way_in",)
    if spec.ceiling is not None:
        _believable(spec.ceiling, _LOWEST, (*where, "ceiling"), "a ceiling", problems)
    for number, door in enumerate(spec.doors):
        place = (*where, "doors", number)
        _believable(door.width, _NARROWEST, (*place, "width"), "a doorway's width", problems)
        _believable(door.height, _LOWEST, (*place, "height"), "a doorway's height", problems)
    for number, corner in enumerate(spec.corners):
        place = (*where, "corners", number)
        for key, width in (("before", corner.before), ("after", corner.after)):
            _believable(width, _NARROWEST, (*place, key), "a corridor's width", problems)
        if corner.ceiling is not None:
            _believable(corner.ceiling, _LOWEST, (*place, "ceiling"), "a ceiling", problems)
    if opening is None:
        for key in ("skirting", "mouth", "front"):
            if getattr(spec, key) is not None:
                problems.add(
                    (*where, key),
                    f"`{key}` is about an opening, and the spec has none",
                    "Leave it out, or add `opening`.",
                )
    else:
        if spec.skirting is not None:
            _skirting_leaves_room(spec.skirting, opening, problems)
        if spec.mouth is not None:
            _mouth_is_tighter(spec.mouth, opening, problems)
    skirting, mouth = spec.skirting, spec.mouth
    return WayIn(
        ceiling=spec.ceiling,
        doors=tuple(Doorway(door.width, door.height) for door in spec.doors),
        corners=tuple(
            Corner(
                corner.before,
                corner.after,
                spec.ceiling if corner.ceiling is None else corner.ceiling,
            )
            for corner in spec.corners
        ),
        skirting=Skirting(skirting.height, skirting.thickness) if skirting else None,
        mouth=Mouth(mouth.width, mouth.height, mouth.thickness) if mouth else None,
        front=spec.front,
        hands=spec.hands,
    )


def _believable(length: float, least: float, where: KeyPath, what: str, problems: Problems) -> None:
    if length < least:
        problems.add(
            where,
            f"{problems.length(length)} can't be {what}",
            "Measure again; is it in another unit?",
        )


def _skirting_leaves_room(skirting: SkirtingSpec, opening: Opening, problems: Problems) -> None:
    if 2 * skirting.thickness >= opening.width:
        problems.add(
            ("way_in", "skirting", "thickness"),
            f"skirting {problems.length(skirting.thickness)} thick at both sides leaves nothing "
            f"of an opening {problems.length(opening.width)} wide",
            "Measure its thickness again.",
        )


def _mouth_is_tighter(mouth: MouthSpec, opening: Opening, problems: Problems) -> None:
    say = problems.length
    where = ("way_in", "mouth")
    if mouth.width is None and mouth.height is None:
        problems.add(where, "a mouth needs a `width` or a `height`", "Give one, or leave it out.")
    for key, clear, inside in (
        ("width", mouth.width, opening.width),
        ("height", mouth.height, opening.height),
    ):
        if clear is not None and clear > inside:
            problems.add(
                (*where, key),
                f"the mouth's {key} of {say(clear)} is more than the opening's of {say(inside)}",
                f"Leave `{key}` out where the mouth is no tighter than the inside.",
            )
    if opening.depth is not None and mouth.thickness >= opening.depth:
        problems.add(
            (*where, "thickness"),
            f"a mouth {say(mouth.thickness)} thick is as deep as the opening itself "
            f"({say(opening.depth)})",
            "Give the smaller width and height as the opening's own.",
        )
