"""What comes of an instance: planned, held to the checker, compared with what is known."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, replace
from time import process_time

from benchmarks.cutting.instances import Instance
from kit.cutting_checker import check_boards, check_sheets
from rodwright import cutting
from rodwright.cutting import CannotCutError, Piece, Plan, Supply


@dataclass(frozen=True)
class Outcome:
    """How an instance came out.

    ``got`` is the value reached (None: no plan), ``limit`` what was proven that nothing can be
    better than; ``most`` says that more is better; ``seconds`` of processor time; ``wrong`` is
    what can't be true.
    """

    of: str
    name: str
    best: float
    known: bool
    most: bool
    got: float | None
    limit: float
    proven: bool
    seconds: float
    wrong: str = ""

    @property
    def reached(self) -> bool:
        """Whether it is as good as the best value known, or better."""
        return self.got is not None and self.worse <= 1e-9

    @property
    def worse(self) -> float:
        """By what share it is worse than the best value known; below 0 where it is better."""
        if self.got is None:
            return float("inf")
        return (self.best - self.got if self.most else self.got - self.best) / self.best


@dataclass(frozen=True)
class _Answer:
    got: float | None
    limit: float
    proven: bool


def run(instance: Instance) -> Outcome:
    """Plan an instance and see what is wrong with the answer, if anything is."""
    begun = process_time()
    wrong = ""
    try:
        answer = _ASKED.get(instance.objective, _cost)(instance)
    except AssertionError as error:
        answer, wrong = _Answer(None, 0, proven=False), str(error)
    seconds = process_time() - begun
    return Outcome(
        of=instance.of,
        name=instance.name,
        best=instance.best,
        known=instance.proven,
        most=instance.objective == "max_value",
        got=answer.got,
        limit=answer.limit,
        proven=answer.proven,
        seconds=seconds,
        wrong=wrong or _against(instance, answer),
    )


def _against(instance: Instance, answer: _Answer) -> str:
    """What in an answer can't be true, by what is proven of the instance."""
    sign = -1 if instance.objective == "max_value" else 1
    if answer.got is None:
        return "no plan"
    if sign * (answer.got - instance.bound) < -1e-6:
        return f"{answer.got:g} is better than the proven bound {instance.bound:g}"
    if sign * (answer.limit - instance.best) > 1e-6:
        return f"the limit {answer.limit:g} excludes a known plan of {instance.best:g}"
    return ""


def _cost(instance: Instance) -> _Answer:
    """Least cost, by boards or by sheets."""
    if instance.flat:
        kerf = instance.rules.get("kerf", 0.0)
        plan = cutting.plan_boards(instance.pieces, instance.stock, kerf=kerf)
        check_boards(plan, instance.pieces, instance.stock, kerf=kerf)
    else:
        plan = cutting.plan_sheets(instance.pieces, instance.stock, **instance.rules)
        check_sheets(plan, instance.pieces, instance.stock, **instance.rules)
    assert not plan.left, f"{sum(piece.count for piece in plan.left)} pieces found no place"
    return _Answer(plan.cost, plan.bound, plan.proven)


def _value(instance: Instance) -> _Answer:
    """Most value from one sheet."""
    sheet = instance.stock[0]
    filled = cutting.fill_sheet(instance.pieces, sheet, **instance.rules)
    cut = Counter(placed.piece for placed in filled.layout.placed)
    left = [replace(piece, count=piece.count - cut[piece.name]) for piece in instance.pieces]
    kerf = instance.rules.get("kerf", 0.0)
    plan = Plan(
        (filled.layout,),
        sheet.price,
        0,
        proven=False,
        kerf=kerf,
        left=tuple(piece for piece in left if piece.count),
    )
    check_sheets(plan, instance.pieces, instance.stock, **instance.rules)
    value = sum(_worth(piece) * cut[piece.name] for piece in instance.pieces)
    assert abs(value - filled.value) < 1e-6, f"value {filled.value}, but the pieces give {value}"
    return _Answer(filled.value, filled.bound, filled.proven)


def _worth(piece: Piece) -> float:
    return piece.length * piece.width if piece.value is None else piece.value


def _strip(instance: Instance) -> _Answer:
    """Shortest strip: a sheet as long as the best one has to do, and one a step shorter mustn't."""
    best = instance.best
    plan = _in_strip(instance, best)
    got = best if plan and not plan.left else None
    try:
        shorter = _in_strip(instance, best - 1)
    except CannotCutError:
        return _Answer(got, best, proven=got is not None)
    assert shorter.left, f"a strip of {best - 1:g} did, though none can"
    return _Answer(got, 0, proven=False)


def _in_strip(instance: Instance, length: float) -> Plan:
    stock = [Supply("strip", length, instance.stock[0].width, count=1)]
    plan = cutting.plan_sheets(instance.pieces, stock, **instance.rules)
    check_sheets(plan, instance.pieces, stock, **instance.rules)
    return plan


_ASKED = {"max_value": _value, "min_strip_length": _strip}
