"""What of a unit's strength a maker asks about: parts by their refs, or what results are of, as the
table prints it."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from difflib import get_close_matches

from rodwright.handover.strength_list import strength_rows, subjects_text
from rodwright.problems import Problem, ProblemsError
from rodwright.strength.results import Result
from rodwright.unit import Unit

_BETWEEN = re.compile(r"\s*(?:,|;|\band\b|&)\s*", re.IGNORECASE)
_RUN = re.compile(r"([A-Za-z]+)(\d+)([a-z]?)\s*[-\u2013]\s*([A-Za-z]+)?(\d+)([a-z]?)")
_REF = re.compile(r"[A-Za-z]+\d+[A-Za-z]?")
_NUMBERED = re.compile(r"([A-Z]+)(\d+)([a-z]?)")
_TOLD = 12
"""Subjects that an error lists at most, where several are meant."""


@dataclass(frozen=True, slots=True)
class About:
    """The results that were asked for, and the refs of the parts that they are about."""

    results: tuple[Result, ...]
    refs: frozenset[str]


def about(unit: Unit, results: Sequence[Result], asked: str) -> About:
    """The results that ``asked`` means, in any case: refs and runs of them (``SH1, SH3-SH5``), a
    subject as printed (``shelf SH1, SH2``; ``carcass``), or a part of one that means no other.

    Raises:
        ProblemsError: the unit has no such part, nothing is called so, or more than one thing is.
    """
    said = " ".join(asked.split())
    pieces = [each for each in _BETWEEN.split(said) if each]
    if pieces and all(_RUN.fullmatch(each) or _REF.fullmatch(each) for each in pieces):
        refs = frozenset(ref for each in pieces for ref in _refs(unit, results, each))
        return About(tuple(each for each in results if refs.intersection(each.parts)), refs)
    subjects = _subjects(unit, results, said)
    found = tuple(each for each in results if each.subject in subjects)
    return About(found, frozenset(ref for each in found for ref in each.parts))


def _refs(unit: Unit, results: Sequence[Result], said: str) -> frozenset[str]:
    """The parts that a ref or a run of refs means."""
    by_name = {part.ref.casefold(): part.ref for part in unit.parts}
    run = _RUN.fullmatch(said)
    ends = (
        [said] if run is None else [run[1] + run[2] + run[3], (run[4] or run[1]) + run[5] + run[6]]
    )
    for end in ends:
        if end.casefold() not in by_name:
            raise _none_such(unit, results, f"the unit has no part `{end}`", end)
    if run is None:
        return frozenset([by_name[said.casefold()]])
    least, most = sorted((int(run[2]), int(run[5])))
    kinds = {(run[1].upper(), run[3]), ((run[4] or run[1]).upper(), run[6])}
    if len(kinds) > 1:
        raise _none_such(unit, results, f"`{said}` runs over two kinds of parts", ends[0])
    numbered = (_NUMBERED.fullmatch(ref) for ref in by_name.values())
    return frozenset(
        each[0]
        for each in numbered
        if each and {(each[1], each[3])} == kinds and least <= int(each[2]) <= most
    )


def _subjects(unit: Unit, results: Sequence[Result], said: str) -> frozenset[str]:
    """The subjects that are meant: as printed, else by a part that only one has."""
    printed = _printed(unit, results)
    wanted = _bare(said)
    exact = [names for told, names in printed.items() if _bare(told) == wanted]
    if exact:
        return frozenset(name for names in exact for name in names)
    single = dict.fromkeys(each.subject for each in results)
    near = _holding(single, said) or _holding(single, wanted)
    if len(near) > 1:
        listed = "; ".join(f"`{each}`" for each in near[:_TOLD])
        more = f" and {len(near) - _TOLD} more" if len(near) > _TOLD else ""
        told = Problem(f"`{said}` may mean more than one thing", f"Say which: {listed}{more}.")
        raise ProblemsError([told])
    if not near:
        message = f"nothing of the unit's strength is called `{said}`"
        raise _none_such(unit, results, message, said)
    return frozenset(near)


def _holding(subjects: Iterable[str], said: str) -> list[str]:
    """Those with ``said`` in them as whole words; if none, those with it anyhow."""
    words = re.compile(rf"(?<!\w){re.escape(said.casefold())}(?!\w)")
    whole = [each for each in subjects if words.search(each.casefold())]
    return whole or [each for each in subjects if said.casefold() in each.casefold()]


def _printed(unit: Unit, results: Sequence[Result]) -> dict[str, tuple[str, ...]]:
    """Every subject as the tables print it, and the subjects in it."""
    found: dict[str, tuple[str, ...]] = {each.subject: (each.subject,) for each in results}
    for in_full in (False, True):
        for row in strength_rows(results, unit.display_unit, in_full=in_full):
            found.setdefault(row.subject, row.subjects)
    return found


def _bare(text: str) -> str:
    """A subject without its case and article."""
    return " ".join(text.casefold().split()).removeprefix("the ")


def _none_such(unit: Unit, results: Sequence[Result], message: str, said: str) -> ProblemsError:
    """With what is near, and with what there is."""
    told = frozenset(ref for each in results for ref in each.parts)
    refs = [part.ref for part in unit.parts if part.ref in told]
    subjects = dict.fromkeys(each.subject for each in results)
    names = {each.casefold(): each for each in (*refs, *subjects)}
    close = get_close_matches(said.casefold(), names, n=3)
    meant = f"Did you mean {' or '.join(f'`{names[each]}`' for each in close)}? " if close else ""
    whole = [each for each in subjects if not _REF.search(each)]
    of_parts = (
        [f"the parts {_by_runs(refs)} (`rodwright parts` says what they are)"] if refs else []
    )
    listed = "; ".join([*whole, *of_parts]) or "no figures of it at all"
    return ProblemsError([Problem(message, f"{meant}There are: {listed}.")])


def _by_runs(refs: Iterable[str]) -> str:
    """Refs in order, those that follow each other as runs."""

    def order(ref: str) -> tuple[str, int, str]:
        found = re.match(r"([A-Z]+)(\d+)", ref)
        return (found[1], int(found[2]), ref) if found else (ref, 0, ref)

    return subjects_text(sorted(refs, key=order))
