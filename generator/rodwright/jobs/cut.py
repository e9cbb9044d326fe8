"""What to buy for some specs, and how to cut it."""

from __future__ import annotations

import os
from collections import Counter
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from string import ascii_uppercase
from typing import Literal

from rodwright.checks import check_parts
from rodwright.checks.findings import Finding, Severity
from rodwright.cutting.demand import DemandError, Job, lots_of
from rodwright.cutting.offcuts import Least, kept_offcuts, plan_identity
from rodwright.cutting.offers import offcut_of, uses_of
from rodwright.cutting.one_more import one_more
from rodwright.cutting.planning import LotError, Watch, plan_lots
from rodwright.cutting.pricing import offer_of
from rodwright.cutting.rack import Rack
from rodwright.cutting.saws import SawKind, usual_saw
from rodwright.cutting.steps import arranged, that_come_off
from rodwright.cutting.taking import Taking, Used
from rodwright.cutting.whole import Cutting, ForJob, Rules
from rodwright.cutting.work import Lot, LotPlan
from rodwright.handover.cut_sequence import steps_of
from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.lengths import LengthUnit, format_length, parse_length
from rodwright.problems import Problem, ProblemsError
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.wishes import SpecFile

__all__ = ["Asked", "Watch", "cut", "must_be_mended", "refuse_early", "write_cut"]


@dataclass(frozen=True, slots=True)
class Asked:
    """What is asked for besides specs and rack; None is what the rack says, or what is usual.

    ``saw`` is a kind of saw, ``kerf`` as makers write it; the others are as in
    :class:`rodwright.cutting.whole.Rules`.
    """

    saw: str | None = None
    kerf: str | None = None
    free: bool = False
    first_cut: Literal["along", "across"] | None = None
    stages: int | None = None
    head_cuts: bool = False


_PLAIN = Asked()


def cut(
    specs: Sequence[SpecFile],
    *,
    rack: Rack | None = None,
    asked: Asked = _PLAIN,
    seed: int = 0,
    watch: Watch | None = None,
) -> Cutting:
    """Plan what is cut for some specs together, and from what.

    ``rack`` is what is at hand, bought and cut with (:func:`rodwright.read_rack`); without one,
    what is at hand is what the specs say.  ``watch`` says how long it may take and who is told how
    far it is.

    Raises:
        ProblemsError: a spec makes no unit, or its parts can't be cut from what there is; each with
            its place.
    """
    units = [set_out(spec) for spec in specs]
    jobs = _jobs(units)
    unit = units[0].display_unit
    rules, least = _rules(asked, rack, unit), _least(rack)
    lots = _lots(specs, jobs, rack, rules.saw.kerf)
    watch = watch or Watch()
    try:
        found = plan_lots(lots, rules, least, seed, watch)
    except LotError as error:
        raise _told(error, specs, jobs) from error
    planned = tuple(_for_the_saw(each, rules) for each in found)
    changes = (
        change
        for at, each in enumerate(planned)
        for change in one_more(at, each, rules, least, seed, unit, watch)
    )
    identified = plan_identity(planned, rack.text if rack is not None else "")
    cutting = Cutting(
        tuple(
            ForJob(job.unit.title, job.mark, str(spec.path))
            for job, spec in zip(jobs, specs, strict=True)
        ),
        unit,
        rules,
        planned,
        least,
        identified,
        kept_offcuts(planned, identified, least),
        seed,
        tuple(changes),
    )
    cutting = replace(cutting, kept=that_come_off(cutting.kept, steps_of(cutting)))
    return cutting if rack is None else replace(cutting, rack=_taking(rack, cutting))


def _for_the_saw(planned: LotPlan, rules: Rules) -> LotPlan:
    """A plan laid out as it is best cut, unless a router cuts it."""
    if rules.router is not None and planned.lot.kind == "sheet":
        return planned
    return arranged(planned, rules.begins if planned.lot.kind == "sheet" else None)


def must_be_mended(specs: Sequence[SpecFile]) -> tuple[Finding, ...]:
    """The errors that the checks find in some specs: to be mended before anything is cut.

    Raises:
        ProblemsError: a spec makes no unit.
    """
    found = (finding for spec in specs for finding in check_parts(set_out(spec)))
    return tuple(each for each in found if each.severity is Severity.ERROR)


def _rules(asked: Asked, rack: Rack | None, unit: LengthUnit) -> Rules:
    """What the rack says of saws and sheets, but for what is asked."""
    there = rack.saws if rack is not None else ()
    kind = None if asked.saw is None else _kind(asked.saw)
    saws = [each for each in there if each.kind != "router" and kind in (None, each.kind)]
    routers = [each for each in there if each.kind == "router"]
    saw = saws[0] if saws else usual_saw(kind or "table saw", unit)
    router = routers[0] if routers else usual_saw("router", unit)
    if asked.kerf is not None:
        kerf = _kerf(asked.kerf, unit)
        saw, router = replace(saw, kerf=kerf), replace(router, kerf=kerf)
    return Rules(
        saw,
        router if asked.free else None,
        (rack.spacing if rack is not None else None) or 0.0,
        asked.stages,
        asked.first_cut or (rack.first_cut if rack is not None else None),
        asked.head_cuts,
    )


def _least(rack: Rack | None) -> Least:
    return Least() if rack is None else Least(*rack.keep, *rack.keep_board)


def _kind(saw: str) -> SawKind:
    """A kind of saw by its name.

    Raises:
        ProblemsError: there is none of that name.
    """
    kinds: tuple[SawKind, ...] = ("table saw", "track saw", "panel saw")
    for kind in kinds:
        if " ".join(saw.lower().replace("-", " ").split()) in (kind, kind.split()[0]):
            return kind
    known = ", ".join(f"`{kind}`" for kind in kinds)
    raise ProblemsError(
        [Problem(f"--saw: `{saw}` is no saw that sheets and boards are cut with", f"Say {known}.")]
    )


def _kerf(text: str, unit: LengthUnit) -> float:
    """A kerf (mm) as it is written.

    Raises:
        ProblemsError: it can't be read, or no saw cuts so.
    """
    plain, other = ("1/8", "3.2 mm") if unit == "in" else ("3.2", "1/8 in")
    remedy = f'Write it like `--kerf {plain}`, or with its unit: `--kerf "{other}"`.'
    try:
        kerf = parse_length(text, unit)
    except ValueError as error:
        raise ProblemsError([Problem(f"--kerf: {error}", remedy)]) from None
    if not 0 <= kerf <= _WIDEST:
        most = f"{format_length(_WIDEST, unit)} {unit}"
        raise ProblemsError([Problem(f"--kerf: no saw or tool cuts wider than {most}", remedy)])
    return kerf


_WIDEST = 40.0


def _jobs(units: Sequence[Unit]) -> tuple[Job, ...]:
    """Units with titles of their own, and marks where there are several."""
    titles: Counter[str] = Counter()
    jobs = []
    for number, unit in enumerate(units):
        title = unit.title
        titles[title] += 1
        while titles[title] > 1:
            title = f"{unit.title} ({titles[unit.title]})"
            titles[title] += 1
        jobs.append(Job(replace(unit, title=title), _mark(number) if len(units) > 1 else ""))
    return tuple(jobs)


def _mark(number: int) -> str:
    """``A`` to ``Z``, then ``AA`` and so on."""
    mark = ""
    number += 1
    while number:
        number, letter = divmod(number - 1, len(ascii_uppercase))
        mark = ascii_uppercase[letter] + mark
    return mark


def _lots(
    specs: Sequence[SpecFile], jobs: Sequence[Job], rack: Rack | None, kerf: float
) -> tuple[Lot, ...]:
    """What is cut, by lots, with where it comes from."""
    try:
        return lots_of(jobs, rack, kerf=kerf)
    except DemandError as error:
        told: list[Problem] = []
        for each in error.refusals:
            told += _placed(specs[each.job], [each.problem])
        raise ProblemsError(told) from error


def _placed(spec: SpecFile, problems: Sequence[Problem]) -> Sequence[Problem]:
    """Problems with their place in their spec's file."""
    try:
        with spec.located():
            raise ProblemsError(problems)
    except ProblemsError as error:
        return error.problems


def _told(error: LotError, specs: Sequence[SpecFile], jobs: Sequence[Job]) -> ProblemsError:
    """Why a lot can't be cut, at the place of its stock in each spec that wants it."""
    lot = error.lot
    told: list[Problem] = []
    for spec, job in zip(specs, jobs, strict=True):
        labels = [each for name in error.why.pieces for each in lot.labels[name]]
        refs = [each.ref for each in labels if each.job == job.unit.title]
        if not refs:
            continue
        stock = _stock_of(job, refs[0])
        message, remedy = _REASONS[error.why.reason]
        where = () if stock is None else ("stock", stock)
        problem = Problem(message.format(", ".join(refs), lot.material), remedy, where)
        told += _placed(spec, [problem])
    return ProblemsError(told)


_REASONS = {
    "too large": (
        "{} can't be cut from any {} that there is: it is too large",
        "Add a larger one to the stock (`sold`, `pieces`) or to the rack, or make it in two.",
    ),
    "grain": (
        "{} can't be cut from any {} that there is with its grain as it should be",
        "Add one that is larger along or across the grain, or let it turn: `grain: none`.",
    ),
    "flaws": (
        "{} can't be cut from any {} that there is: what is free of flaws is too small",
        "Add one without flaws there to the stock or to the rack.",
    ),
    "not enough": (
        "{} can't all be cut: there is too little {}",
        "Raise the counts, or give a size that is sold: `size` or `sold` in the stock.",
    ),
}


def _stock_of(job: Job, ref: str) -> str | None:
    """What a job's spec calls the stock of a part, or of the part that is glued up from a strip."""
    for part in job.unit.parts:
        if ref in (job.ref(part.ref), part.ref) or ref.startswith(f"{job.ref(part.ref)}-"):
            return part.blank.stock.name
    return None


def _taking(rack: Rack, cutting: Cutting) -> Taking:
    """What a plan takes out of a rack, and the offcuts that come into it."""
    used: Counter[tuple[str, str]] = Counter()
    for planned in cutting.lots:
        for each in uses_of(rack, planned.lot.offers, planned.plan.used):
            used[each.entry, each.was] += each.count
    comes = []
    for kept in cutting.kept:
        planned = cutting.lots[kept.lot]
        name = planned.plan.layouts[kept.layout].stock
        offer, size = offer_of(planned.lot, name), (kept.offcut.length, kept.offcut.width)
        comes.append(offcut_of(offer, kept.name, *size, name, kept.flaws))
    uses = tuple(Used(entry, count, was) for (entry, was), count in used.items())
    return Taking(str(Path(rack.file).absolute()), cutting.identity, uses, tuple(comes))


def _seen_from(folder: Path, cutting: Cutting) -> Cutting:
    """A plan whose rack file is told as it is seen from a folder, where there is such a way."""
    if cutting.rack is None:
        return cutting
    try:
        seen = os.path.relpath(cutting.rack.rack, folder.absolute())
    except ValueError:  # on another drive of Windows
        return cutting
    return replace(cutting, rack=replace(cutting.rack, rack=Path(seen).as_posix()))


def refuse_early(folder: Path) -> None:
    """Refuse before the work what :func:`write_cut` would after it.

    Raises:
        ProblemsError: as there, as far as it is known before anything is written.
    """
    from rodwright.handover.families import CUT_FILES, beside

    look_before(folder, ours=CUT_FILES, beside=beside(CUT_FILES), again=CUT_FILES.fullmatch)


def write_cut(
    cutting: Cutting, folder: Path | str, progress: Callable[[str], object] = lambda _: None
) -> tuple[str, ...]:
    """Write a plan into a folder, which may hold a build: ``cut.json``, and all else in ``cut/``;
    ``progress`` is told what takes long.

    Returns:
        The names of the files.

    Raises:
        ProblemsError: the folder can't be written, or something of the user's is in the way;
            nothing is written then.
    """
    from rodwright.handover.cut_files import write_cut_files
    from rodwright.handover.families import CUT_FILES, beside

    target = Path(folder)
    with whole_or_nothing(
        target, ours=CUT_FILES, beside=beside(CUT_FILES), again=CUT_FILES.fullmatch
    ) as staging:
        write_cut_files(_seen_from(target, cutting), staging, progress)
        names = (path.relative_to(staging) for path in staging.rglob("*") if path.is_file())
        return tuple(sorted(name.as_posix() for name in names))
