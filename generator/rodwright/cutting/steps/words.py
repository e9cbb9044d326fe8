"""Cuts in the words of a maker at the saw."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.amounts import format_weight
from rodwright.cutting.flaws import flaws_said
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps.cuts import Contour, Edge, LotSteps, Result, SheetSteps, Step
from rodwright.cutting.steps.settings import Setting, is_opening, step_at
from rodwright.lengths import LengthUnit, format_length
from rodwright.trade.lifting import people, sheet_people

OPPOSITE: dict[Edge, Edge] = {"face": "back", "back": "face", "near": "far", "far": "near"}
NARROW, SHORT = 60.0, 150.0
"""mm: what is less wide, or long, beside the blade isn't held by hand (common practice, no
source)."""
RAIL_WIDE, RAIL_LONG = 200.0, 400.0
"""mm: on what is less wide, or less long, the rail of a track saw doesn't lie (common practice, no
source)."""
_EDGES: dict[Edge, str] = {
    "face": "face edge", "back": "back edge", "near": "near end", "far": "far end",
}  # fmt: skip
_NOUNS = {"sheet": "sheet", "board": "board", "length": "length"}


@dataclass(frozen=True, slots=True)
class StepWords:
    """A step as columns of a list; lengths in the maker's unit, without it.

    ``hand`` is what is cut, ``size`` its length and width (with its weight if it is heavy),
    ``cut`` what is done, ``setting`` what the fence or stop is set to (or where the line is) and
    ``against`` which edge is held to it.  ``leaves`` says what comes of it, what was measured
    first; ``mind`` what to look out for at the saw.
    """

    number: int
    hand: str
    size: str
    cut: str
    setting: str
    against: str
    leaves: tuple[str, ...]
    mind: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class SettingWords:
    """A setting of the fence or the stop as columns of a list; ``cuts`` says what is cut at it,
    and how often."""

    setting: str
    cut: str
    times: int
    cuts: str


def step_words(steps: LotSteps, sheet: SheetSteps, step: Step, unit: LengthUnit) -> StepWords:
    """A step as a maker reads it."""
    held = step.held
    leaves = [_left(steps, each, unit) for each in step.results]
    size = _size(held.length, held.width, unit)
    return StepWords(
        step.number,
        hand_name(steps, sheet, held.name),
        f"{size}, {format_weight(held.weight, unit)}" if step.heavy else size,
        _cut(step, unit),
        "" if _needs_no_setting(step) else format_length(step.setting, unit),
        _against(step, unit),
        tuple(leaves),
        tuple(_cautions(steps, step, unit)),
    )


def preparation(steps: LotSteps, sheet: SheetSteps, unit: LengthUnit) -> str | None:
    """What is done to a sawn board before its first cut."""
    if sheet.jointed is None:
        return None
    off = f" ({format_length(sheet.jointed, unit)} comes off)" if sheet.jointed else ""
    thick = format_length(steps.lot.thickness, unit)
    return (
        f"First joint the face edge straight{off} and plane to {thick}: guard over the cutters, "
        "push blocks on the wood."
    )


def contour_words(steps: LotSteps, contour: Contour, unit: LengthUnit) -> StepWords:
    """What a router cuts round, as a maker reads it."""
    size = _size(contour.length, contour.width, unit)
    at = f"{format_length(contour.x, unit)}, {format_length(contour.y, unit)}"
    result = Result("piece", contour.name, contour.length, contour.width, contour.copies)
    mind = ("small: leave tabs",) if contour.tabs else ()
    cut = "inner contour" if contour.inner else "contour"
    return StepWords(
        contour.number,
        contour.name,
        size,
        cut,
        at,
        "near end, face edge",
        (_left(steps, result, unit),),
        mind,
    )


def setting_words(steps: LotSteps, setting: Setting, unit: LengthUnit) -> SettingWords:
    """A setting as a maker reads it."""
    first = step_at(steps, setting.steps[0])[1]
    text = "" if _needs_no_setting(first) else format_length(setting.setting, unit)
    counted: dict[str, int] = {}
    for place in setting.steps:
        sheet, step = step_at(steps, place)
        hand = hand_name(steps, sheet, step.held.name)
        counted[hand] = counted.get(hand, 0) + 1
    cuts = (f"{hand}, {many} times" if many > 1 else hand for hand, many in counted.items())
    cut = _cut(first, unit)
    if setting.how == "carried":
        made = [step_at(steps, place)[1] for place in setting.steps]
        beyond = next((f", {_beyond(step, steps.saw, unit)}" for step in made if step.large), "")
        cut = f"{cut}, carried{beyond}"
    return SettingWords(text, cut, setting.times, "; ".join(cuts))


def hand_name(steps: LotSteps, sheet: SheetSteps, name: str) -> str:
    """What is in hand: ``sheet 1`` or, of equal ones, ``sheets 2 to 4``; ``1.2``."""
    noun, numbers = _NOUNS[steps.lot.kind], sheet.numbers
    if name != str(numbers[0]):
        return name
    if len(numbers) == 1:
        return f"{noun} {name}"
    return f"{noun}s {_listed([str(each) for each in numbers])}"


def written(steps: LotSteps, result: Result) -> tuple[str, ...]:
    """What is written on a piece: the refs of all that are cut like it."""
    labels = steps.lot.labels.get(result.name, ())
    return tuple(labels[copy].ref for copy in result.copies if copy < len(labels)) or (result.name,)


def cautions(steps: LotSteps) -> tuple[str, ...]:
    """What to mind at every cut; common practice, no source."""
    cuts = [step for sheet in steps.sheets for step in sheet.steps]
    told = ["Dust: extraction on, a mask where it doesn't reach, ears and eyes covered."]
    if steps.saw.kind == "router" and steps.lot.kind == "sheet":
        told.append(
            "Router: clamp or hold the sheet all over, leave tabs on small pieces, and never reach "
            "in while the cutter turns."
        )
        return tuple(told)
    told.append(
        "Saw: guard and riving knife on, a push stick for what is narrow, never a fence and a stop "
        "at once, and stand clear of narrow offcuts beside the blade."
    )
    if any(step.how == "carried" for step in cuts):
        told.append(
            "Cuts marked `carried` are made where the sheet lies, on foam or battens, with a track "
            "saw or a straightedge clamped on; both sides supported."
        )
    if any(step.heavy for step in cuts):
        told.append("What is marked heavy is lifted by as many people as it says.")
    if steps.lot.kind == "sheet":
        told.append(
            "Better side up on a table saw or a panel saw, down under a track saw or a hand-held "
            "one: the blade leaves the other side rough."
        )
    return tuple(told)


def _needs_no_setting(step: Step) -> bool:
    return is_opening(step) and not step.along and step.kind in ("trim", "mitre")


def _cut(step: Step, unit: LengthUnit) -> str:
    if step.kind == "trim" or is_opening(step):
        edge = _EDGES[OPPOSITE[step.edge]]
        if step.kind == "mitre":
            return f"mitre the {edge} at {step.angle:.4g}°, {_long(step)}"
        size = step.held.width if step.along else step.held.length
        off = format_length(size - step.setting, unit)
        return f"trim {off} off the {edge}"
    if step.kind == "mitre":
        nested = ", the next piece's end with it" if step.nested else ""
        return f"mitre at {step.angle:.4g}°, {_long(step)}{nested}"
    return step.kind


def _long(step: Step) -> str:
    return f"longer at the {_EDGES[step.long_point or 'face']}"


def _against(step: Step, unit: LengthUnit) -> str:
    edge = f"{_EDGES[step.edge]}, {step.state}"
    if _needs_no_setting(step):
        return ""
    if step.how == "fence" or step.rest_setting <= 0:
        return edge
    other = _EDGES[OPPOSITE[step.edge]]
    return f"{edge}; {format_length(step.rest_setting, unit)} from the {other}"


def _left(steps: LotSteps, result: Result, unit: LengthUnit) -> str:
    size = _size(result.length, result.width, unit)
    match result.what:
        case "piece":
            return f"{size}: done, write {_listed(written(steps, result))}"
        case "outer":
            return f"{result.name}, {size}: divided later into {_divided(steps, result)}"
        case "offcut":
            flawed = f", {flaws_said(result.flaws)}" if result.flaws else ""
            return f"offcut {_listed(result.names)}, {size}: to the rack{flawed}"
        case "waste":
            return f"waste, {size}"
        case "panel":
            return f"{result.name}, {size}"


def _divided(steps: LotSteps, outer: Result) -> str:
    """What is cut from a piece, in the order in which it lies there."""
    (piece,) = (each for each in steps.lot.pieces if each.name == outer.name)
    inner = sorted(piece.inner, key=lambda each: (each.x, each.y))
    parts = (Result("piece", each.name, each.length, each.width, outer.copies) for each in inner)
    refs = _listed([" or ".join(written(steps, each)) for each in parts])
    if len({each.y for each in inner}) == 1:
        return f"{refs}, from the {_EDGES['near']} on"
    return f"{refs}, from the {_EDGES['face']} on" if len({each.x for each in inner}) == 1 else refs


def _cautions(steps: LotSteps, step: Step, unit: LengthUnit) -> Iterator[str]:
    held, saw = step.held, steps.saw
    if step.heavy:
        count = sheet_people(held.length, steps.lot.thickness, held.weight)
        yield f"heavy: {people(count)}" if count > 1 else "heavy"
    if step.large:
        yield _beyond(step, saw, unit)
    if step.how == "carried":
        yield "carried: a saw is brought to it"
    elif step.how == "line":
        if step.held.width < RAIL_WIDE or step.held.length < RAIL_LONG:
            yield "small for the rail: lay offcuts as thick under it, and clamp the work"
    elif step.kind != "trim" and step.setting < (NARROW if step.along else SHORT):
        yield (
            "narrow: push stick" if step.along else "short: clamp it, or hold it by a longer block"
        )
    if step.remains and step.rest is not None:
        yield _checked(steps, step, step.rest, unit)


def _beyond(step: Step, saw: Saw, unit: LengthUnit) -> str:
    limit = saw.rip if step.along else saw.crosscut
    assert limit is not None
    return f"beyond the saw, which {'rips' if step.along else 'crosscuts'} " + (
        f"{format_length(limit, unit)}"
    )


def _checked(steps: LotSteps, step: Step, rest: Result, unit: LengthUnit) -> str:
    """That what other cuts leave has to be measured."""
    name = _listed(written(steps, rest)) if rest.what == "piece" else rest.name
    side = "wide" if step.along else "long"
    return f"what is left is {name}: check it, {format_length(step.rest_setting, unit)} {side}"


def _size(length: float, width: float, unit: LengthUnit) -> str:
    sides = (length, width) if width else (length,)
    return " x ".join(format_length(side, unit) for side in sides)


def _listed(words: Sequence[str]) -> str:
    if len(words) > 2 and all(word.isdigit() for word in words):
        first, last = int(words[0]), int(words[-1])
        if last - first == len(words) - 1:
            return f"{first} to {last}"
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} and {words[-1]}"
