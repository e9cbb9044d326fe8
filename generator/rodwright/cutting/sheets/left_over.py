"""What is left of a sheet, in rectangles."""

from __future__ import annotations

from rodwright.cutting.plans import Offcut
from rodwright.cutting.sheet_problem import Pattern, SheetProblem
from rodwright.cutting.sheets.leftovers import KEPT, part_with_offcuts
from rodwright.cutting.sheets.separating import Box, Node


def boxes_of(problem: SheetProblem, pattern: Pattern) -> list[Box]:
    """Its pieces as boxes, with their kerf."""
    boxes = []
    for which, put in enumerate(pattern.puts):
        length, width = problem.sizes[put.size].lying(put.turned)
        boxes.append(Box(put.x, put.y, put.x + length, put.y + width, which))
    return boxes


def parted(problem: SheetProblem, pattern: Pattern, most: int = 3) -> Node | None:
    """The cuts of a sheet, with the largest offcuts whole, so many of them."""
    sheet, kerf = problem.sheets[pattern.sheet], problem.kerf
    least = (problem.least_offcut[0] + kerf + 1, problem.least_offcut[1] + kerf + 1)
    return part_with_offcuts(
        boxes_of(problem, pattern),
        Box(0, 0, sheet.length, sheet.width),
        problem.rules,
        kerf=kerf,
        spots=sheet.spots,
        least=least,
        most=most,
    )


def largest(problem: SheetProblem, pattern: Pattern) -> int:
    """The area of the largest useful offcut of a sheet, in steps squared; 0 if there is none."""
    node = parted(problem, pattern, most=1)
    kept = [leaf.area for leaf in node.leaves() if leaf.which == KEPT] if node else []
    kerf = problem.kerf
    return max(((box.x1 - box.x0 - kerf) * (box.y1 - box.y0 - kerf) for box in kept), default=0)


def left_over(problem: SheetProblem, pattern: Pattern) -> tuple[Offcut, ...]:
    """Rectangles without flaws that are left of a sheet, mm, the largest first."""
    node = parted(problem, pattern)
    sheet, kerf, mm = problem.sheets[pattern.sheet], problem.kerf, problem.grid.length
    offcuts = []
    for leaf in node.leaves() if node else ():
        x, y = leaf.area.x0, leaf.area.y0
        length, width = leaf.area.x1 - x, leaf.area.y1 - y
        marred = any(spot.under(x, y, length, width) for spot in sheet.spots)
        if leaf.which < 0 and min(length, width) > kerf and not marred:
            at = (mm(x + sheet.near), mm(y + sheet.face))
            offcuts.append(Offcut(*at, mm(length - kerf), mm(width - kerf)))
    return tuple(sorted(offcuts, key=lambda each: (-each.area, each.x, each.y)))
