"""How cuts are told: what is in hand, what is set, what each side of the blade is then."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.amounts import format_weight
from rodwright.cutting.steps import Contour, LotSteps, Result, SheetSteps, Step
from rodwright.cutting.work import Label, Lot
from rodwright.handover.cut_words import noun, size_said
from rodwright.lengths import LengthUnit, format_length

_PIECES = ("piece", "outer")
_EDGES = {"face": "face edge", "back": "back edge", "near": "near end", "far": "far end"}


@dataclass(frozen=True, slots=True)
class StepSaid:
    """A cut in words: ``hold`` is what is in hand, ``cut`` what is done, ``setting`` mm from
    ``edge``, ``measured`` what is between that and the blade, ``rest`` what is beyond it."""

    sheets: str
    number: int
    hold: str
    cut: str
    setting: float
    edge: str
    measured: str
    rest: str
    notes: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class StepWords:
    """Tells the cuts of one lot in a maker's unit."""

    lot: Lot
    unit: LengthUnit

    def said(self, sheet: SheetSteps, step: Step) -> StepSaid:
        """One cut of a sheet, and of all that are cut like it."""
        return StepSaid(
            numbers_said(sheet.numbers),
            step.number,
            f"{self._panel(step.held.name)} ({self.size(step.held.length, step.held.width)})",
            f"mitre {step.angle:g}°" if step.angle else step.kind,
            step.setting,
            f"{_EDGES[step.edge]} ({step.state})",
            self.result(step.measured),
            self.result(step.rest),
            tuple(self._notes(step)),
        )

    def size(self, length: float, width: float) -> str:
        """Length and width, without the unit."""
        return size_said(self.lot, length, width, self.unit)

    def result(self, result: Result | None) -> str:
        """What one side of the blade is: done, to be cut further, kept, or waste."""
        if result is None:
            return ""
        size = self.size(result.length, result.width)
        match result.what:
            case "piece":
                return f"{self.names(result.name, result.copies)} done ({size})"
            case "outer":
                names = self.names(result.name, result.copies)
                return f"{names} ({size}), to be divided"
            case "panel":
                return f"{self._panel(result.name)} ({size})"
            case "offcut":
                return f"keep {', '.join(result.names)} ({size})"
            case "waste":
                return f"waste ({size})"

    def names(self, name: str, copies: Sequence[int]) -> str:
        """The refs of a piece's copies, which are written on them."""
        labels: Sequence[Label] = self.lot.labels.get(name, ())
        refs = [labels[copy].ref for copy in copies if copy < len(labels)]
        return ", ".join(dict.fromkeys(refs)) or name

    def refs(self, sheet: SheetSteps) -> str:
        """The refs of all pieces that come out of a sheet, and of those that are cut like it."""
        results = [result for step in sheet.steps for result in step.results]
        done = [each for each in (sheet.whole, *results) if each is not None]
        pieces = [self.names(each.name, each.copies) for each in done if each.what in _PIECES]
        pieces += [self.names(each.name, each.copies) for each in sheet.contours if not each.inner]
        return ", ".join(pieces)

    def contour(self, contour: Contour) -> str:
        """What a router cuts round."""
        place = " x ".join(format_length(each, self.unit) for each in (contour.x, contour.y))
        size = self.size(contour.length, contour.width)
        tabs = ", held by tabs" if contour.tabs else ""
        return f"{self.names(contour.name, contour.copies)}: {size} at {place}{tabs}"

    def _panel(self, name: str) -> str:
        """A sheet by its number, what is cut of one by the number it gets."""
        return f"{noun(self.lot)} {name}" if name.isdigit() else name

    def _notes(self, step: Step) -> Iterator[str]:
        if step.heavy:
            weight = format_weight(step.held.weight, self.unit, 0)
            yield f"{weight}: bring the saw to it, along a track or a straightedge"
        elif step.large:
            yield "too large for this saw: bring one to it, along a track or a straightedge"
        if step.how != "fence" and step.rest is not None and step.rest_setting > 0:
            opposite = {"face": "back", "back": "face", "near": "far", "far": "near"}[step.edge]
            rest = format_length(step.rest_setting, self.unit)
            yield f"the rest is {rest} from the {_EDGES[opposite]}"
        if step.angle and step.long_point is not None:
            yield f"long point at the {_EDGES[step.long_point]}"
        if step.nested:
            yield "leaves the next end as it is wanted"


def numbers_said(numbers: Sequence[int]) -> str:
    """``1``, ``2-4`` or ``1, 5``."""
    runs: list[list[int]] = []
    for number in numbers:
        if runs and runs[-1][-1] == number - 1:
            runs[-1][-1] = number
        else:
            runs.append([number, number])
    return ", ".join(f"{first}-{last}" if first != last else f"{first}" for first, last in runs)


def all_said(steps: LotSteps, unit: LengthUnit) -> Iterator[StepSaid]:
    """Every cut of a lot, sheet by sheet."""
    words = StepWords(steps.lot, unit)
    for sheet in steps.sheets:
        for step in sheet.steps:
            yield words.said(sheet, step)
