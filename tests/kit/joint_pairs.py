"""Two parts that meet, for tests of joints: an upright and a level that comes to its right face."""

from __future__ import annotations

from typing import Any

from kit.specs import setting_from
from rodwright.geometry import Box, Vector
from rodwright.setout.joints import make_joint
from rodwright.setout.rod.reach import reach
from rodwright.unit import Blank, Grain, Hole, Mortise, Part, Placement, Role, Stock, Unit, Working
from rodwright.unit.directions import LEFT, X, Y, Z
from rodwright.wishes.joints import JointSpec

HEIGHT = 600.0
"""Of the upright, whose foot is at z = 0; mm."""
LENGTH = 500.0
"""Of the level, clear of the upright; mm."""


def wish_of(joint: str, **figures: Any) -> JointSpec:
    """A joint as a spec wishes it, lengths in mm."""
    return JointSpec.model_validate({"joint": joint, **figures}, context={"unit": "mm"})


def board(thickness: float, material: str = "birch plywood") -> Stock:
    """A stock of this thickness."""
    return Stock("s", "sheet", material, thickness, Grain.LENGTHWISE, 680.0, "given", "#c8b08c")


class Pair:
    """An upright (SD1, ``first`` mm thick) and a level (SH1, ``second`` mm) jointed to it.

    The level's underside is at ``z``; at ``"end"`` its face is flush with the upright's top.
    """

    def __init__(
        self,
        wish: JointSpec,
        first: float = 18.0,
        second: float = 18.0,
        depth: float = 300.0,
        z: float | str = 200.0,
        material: str = "birch plywood",
        front: float = 0.0,
    ) -> None:
        setting = setting_from("size: {width: 600, height: 800, depth: 300}")
        self._setting = setting.at("carcass", "corners")
        self.bench, self.wish = setting.bench, wish
        self.first, self.second = first, second
        low = HEIGHT - second if isinstance(z, str) else z
        self.z = low
        stock = board(first, material)
        into = reach(wish, first, "mm")
        self._lay(
            Part(
                "SD1",
                "Left side",
                Role.SIDE,
                "Carcass",
                Blank(HEIGHT, depth, first, stock, Grain.LENGTHWISE),
                Placement((first, 0.0, 0.0), Z, Y),
                withdraw=LEFT,
            )
        )
        self._lay(
            Part(
                "SH1",
                "Shelf",
                Role.SHELF,
                "Shelves",
                Blank(
                    LENGTH + into, depth - front, second, board(second, material), Grain.LENGTHWISE
                ),
                Placement((first - into, front, low), X, Y),
            )
        )
        make_joint(self._setting, wish, "SD1", "SH1")

    def _lay(self, part: Part) -> None:
        with self.bench.wished_at(("carcass",)):
            self.bench.add(part)

    def neighbour(self, wish: JointSpec, z: float, depth: float = 300.0) -> None:
        """Joint another level (SH2) to the upright's other face, at the height ``z``."""
        into = reach(wish, self.first, "mm")
        self._lay(
            Part(
                "SH2",
                "Shelf",
                Role.SHELF,
                "Shelves",
                Blank(LENGTH + into, depth, self.second, board(self.second), Grain.LENGTHWISE),
                Placement((-LENGTH, 0.0, z), X, Y),
            )
        )
        make_joint(self._setting, wish, "SD1", "SH2")

    def said(self) -> list[str]:
        """What was refused: `place: message`."""
        return [
            f"{'.'.join(map(str, problem.where))}: {problem.message}"
            for problem in self._setting.problems.error().problems
        ]

    def workings(self, ref: str) -> tuple[Working, ...]:
        """What is cut into a part, in the fixed order."""
        return next(part.workings for part in self.bench.finished() if part.ref == ref)

    def unit(self) -> Unit:
        """The two as a unit."""
        parts = self.bench.finished()
        boxes = [part.bounds() for part in parts]
        low = [min(box.low[i] for box in boxes) for i in range(3)]
        high = [max(box.high[i] for box in boxes) for i in range(3)]
        envelope = Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))
        return Unit("Pair", envelope, parts, tuple(self.bench.joints))


def axes_of(part: Part, kind: type[Hole] | type[Mortise]) -> list[Vector]:
    """Middles of a part's holes or mortises on the surface they go in at, unit frame."""
    found = []
    for working in part.workings:
        if not isinstance(working, kind):
            continue
        point = [0.0, 0.0, 0.0]
        surface = working.surface
        point[surface.axis] = part.blank.size[surface.axis] if surface.at_high else 0.0
        across = [i for i in range(3) if i != surface.axis]
        extent = working.extent if isinstance(working, Mortise) else (0.0, 0.0)
        for i, at, size in zip(across, working.position, extent, strict=True):
            point[i] = at + size / 2
        found.append(part.placement.to_unit((point[0], point[1], point[2])))
    return sorted(found, key=lambda place: tuple(round(each, 6) for each in place))
