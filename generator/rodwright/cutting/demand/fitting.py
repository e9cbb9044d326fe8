"""Which parts go on none of the sheets and boards there are."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Sequence

from rodwright.cutting.demand.gluing_up import usable
from rodwright.cutting.demand.jobs import Job, Wanted
from rodwright.cutting.demand.refusals import Refusal
from rodwright.cutting.offers import lot_kind
from rodwright.cutting.supplies import Supply
from rodwright.geometry import TOUCH
from rodwright.trade.gluing_up import OVER_LENGTH
from rodwright.unit import Role
from rodwright.unit.facts import through_dividers


def refused(
    jobs: Sequence[Job],
    wanted: Sequence[Wanted],
    supplies: Sequence[Supply],
    without: Collection[str],
) -> Iterator[Refusal]:
    """The parts of a lot that can't be cut, gathered by size and job; ``without`` are the refs of
    those that are to be glued up and found no boards."""
    gathered: dict[tuple[object, ...], list[Wanted]] = {}
    for each in wanted:
        key = (jobs.index(each.job), each.part.role, each.length, each.width, each.thickness)
        gathered.setdefault(key, []).append(each)
    for alike in gathered.values():
        said = _said(alike[0], supplies, alike[0].ref in without)
        if said is not None:
            yield Refusal(
                jobs.index(alike[0].job),
                tuple(ref for each in alike for ref in each.refs),
                alike[0].stock.name,
                f"{_called(alike)} {said[0]}",
                said[1],
            )


def _called(alike: Sequence[Wanted]) -> str:
    """Equal parts by the name of the first and all refs."""
    refs = ", ".join(ref for each in alike for ref in each.refs)
    if alike[0].run:
        return f"{len(alike[0].run)} fronts in one piece ({refs})"
    return f"{alike[0].part.name} ({refs})"


def _said(wanted: Wanted, supplies: Sequence[Supply], without: bool) -> tuple[str, str] | None:
    """Why a part can't be cut, and what would help; None where it can."""
    if (thick := _thickness(wanted)) is not None:
        return thick
    if not supplies:
        return _no_good_faces(wanted)
    if wanted.stock.kind == "sheet":
        return _on_sheet(wanted, supplies)
    return _on_board(wanted, supplies) or (_too_few(wanted) if without else None)


def _too_few(wanted: Wanted) -> tuple[str, str]:
    job, size = wanted.job, (wanted.length, wanted.width)
    return (
        f"has to be glued up to {job.length(*size)}, and the boards of `{wanted.stock.name}` are "
        "too narrow or too few",
        "Get wider ones or more of them (`pieces`, `sold`).",
    )


def _no_good_faces(wanted: Wanted) -> tuple[str, str]:
    """Of every stock some size is sold: there is nothing only where no face is good enough."""
    shown = {1: "a face", 2: "both its faces"}.get(wanted.faces_shown, "no face")
    return (
        f"shows {shown}; no `{wanted.stock.name}` has as many good ones",
        "Name stock for it that has, or `show_faces` for its stock if it has.",
    )


def _thickness(wanted: Wanted) -> tuple[str, str] | None:
    job, stock, thick = wanted.job, wanted.stock, wanted.thickness
    kind = lot_kind(stock)
    if kind == "sheet":
        wrong = abs(thick - stock.thickness) > TOUCH
    else:
        # A strip may be ripped off a board's edge and turned on its side.
        thick = min(thick, wanted.part.rough_size[1]) if kind == "board" else thick
        wrong = thick > stock.thickness + TOUCH
    wide = wanted.part.rough_size[1]
    if kind == "length" and wide > (stock.section or 0.0) + TOUCH:
        return (
            f"is {job.length(wide)} wide as cut; `{stock.name}` is "
            f"{job.length(stock.section or 0.0)}",
            f"Name stock at least {job.length(wide)} wide, or change the part's.",
        )
    if not wrong:
        return None
    return (
        f"is {job.length(thick)} thick; `{stock.name}` is {job.length(stock.thickness)}",
        f"Name stock {job.length(thick)} thick, or change the part's.",
    )


def _on_sheet(wanted: Wanted, supplies: Sequence[Supply]) -> tuple[str, str] | None:
    job, size = wanted.job, (wanted.length, wanted.width)
    sheets = [usable(supply) for supply in supplies]
    if any(_fits(size, sheet) or (wanted.turning and _fits(size[::-1], sheet)) for sheet in sheets):
        return None
    largest = job.length(*max(sheets, key=lambda sheet: (sheet[0] * sheet[1], sheet)))
    grain = "" if wanted.turning else ", its length along the grain"
    helps = [f"It takes a sheet of at least {job.length(*size)} once trimmed", *_helps(wanted)]
    if not wanted.run and any(_fits(size[::-1], sheet) for sheet in sheets):
        helps.insert(1, f"or `grain: none` for `{wanted.stock.name}`, so that it may lie across")
    return (
        f"needs {job.length(*size)}{grain}; the largest sheet of `{wanted.stock.name}` has "
        f"{largest}",
        f"{', '.join(helps)}.",
    )


def _helps(wanted: Wanted) -> Iterator[str]:
    """What else to do about a piece that is larger than its sheets."""
    if wanted.run:
        yield "or say `continuous_grain` of smaller spaces"
        return
    unit = wanted.job.unit
    backs = [each for each in unit.parts if each.role is Role.BACK]
    behind = through_dividers(unit)
    if wanted.part.role is Role.BACK and len(backs) == 1 and behind:
        yield f"or write `back.split: true`, so that its panels meet behind {' and '.join(behind)}"
    yield "or make it in two"


def _fits(size: tuple[float, float], sheet: tuple[float, float]) -> bool:
    return size[0] <= sheet[0] + TOUCH and size[1] <= sheet[1] + TOUCH


def _on_board(wanted: Wanted, supplies: Sequence[Supply]) -> tuple[str, str] | None:
    """A board has to be long enough; one that is too narrow is glued up, and then a little
    longer."""
    job, stock = wanted.job, wanted.stock
    boards = [usable(supply) for supply in supplies]
    if any(_fits((wanted.length, wanted.width), board) for board in boards):
        return None
    if wanted.run:
        return (
            f"needs {job.length(wanted.length, wanted.width)}, and no board of `{stock.name}` is "
            "so large",
            "Say `continuous_grain` of smaller spaces: the grain runs on from end to end of a "
            "board, and over no glued joint.",
        )
    longest = max(length for length, _ in boards)
    needed = wanted.length + (OVER_LENGTH[job.unit.display_unit] if wanted.width else 0.0)
    if wanted.length > longest + TOUCH:
        needed = wanted.length
    elif needed <= longest + TOUCH:
        return None
    return (
        f"needs {job.length(needed)} of length; the longest board of `{stock.name}` has "
        f"{job.length(longest)}",
        f"Get boards of at least {job.length(needed)}, or make it in two.",
    )
