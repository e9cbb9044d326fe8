"""Patterns from elsewhere as trees that can be worked on."""

from __future__ import annotations

from rodwright.cutting.sheet_problem import Pattern, SheetProblem
from rodwright.cutting.sheets.filling import Filling
from rodwright.cutting.sheets.left_over import boxes_of
from rodwright.cutting.sheets.separating import Box, Node, part
from rodwright.cutting.sheets.slicing import JOINED_BY, Knot, join, measure
from rodwright.cutting.sheets.state import Ground


def filling_of(ground: Ground, pattern: Pattern) -> Filling | None:
    """A sheet with its pieces pushed together; None if its cuts don't keep the rules, or if the
    sheet has flaws, which pushing might move pieces onto."""
    problem = ground.problem
    sheet = problem.sheets[pattern.sheet]
    area = Box(0, 0, sheet.length, sheet.width)
    node = None if sheet.spots else part(boxes_of(problem, pattern), area, problem.rules)
    if node is None:
        return None
    filling = ground.open(pattern.sheet)
    (field,) = filling.fields
    field.root = _grown(problem, pattern, node)
    field.list_entries()
    filling.free -= field.root.area if field.root is not None else 0
    return filling


def _grown(problem: SheetProblem, pattern: Pattern, node: Node) -> Knot | None:
    if node.which >= 0:
        put = pattern.puts[node.which]
        return Knot(*problem.sizes[put.size].lying(put.turned), put.size, put.turned)
    knots = [knot for each in node.parts if (knot := _grown(problem, pattern, each)) is not None]
    if not knots:
        return None
    root = knots[0]
    for knot in knots[1:]:
        root = join(root, knot, JOINED_BY[node.axis])
        measure(root)
    return root
