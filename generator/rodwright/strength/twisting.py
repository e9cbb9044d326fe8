"""How a level twists that is stiffer at its front than at its back, by a lipping."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.strength.level_sections import modulus
from rodwright.strength.level_states import LevelState
from rodwright.strength.sagging import Sagged
from rodwright.strength.sections import Rectangle, Section, edges_of_lipped
from rodwright.unit import Part


@dataclass(frozen=True, slots=True)
class Twisted:
    """The sag (mm) of a level's front and back edge at midspan, and the load (N/mm) that twists
    it."""

    front: float
    back: float
    load: float


def twist_of(state: LevelState, sagged: Sagged) -> Twisted | None:
    """How the edges of a level sag that has strips glued along one of them; None where it has none,
    an edge is held, it has more than one span, or it isn't known how stiff it is in shear."""
    bearing, ply = state.now, state.level.plies[0]
    if bearing.lines or len(bearing.seats) != 2 or not ply.strips or len(state.level.plies) > 1:
        return None
    front = min(part.bounds().low[1] for part in ply.parts)
    panels = [_rectangle(part, front) for part in ply.layers]
    strips = [_rectangle(part, front) for part in ply.strips]
    first = panels[0]
    if first is None or any(each is None for each in (*panels, *strips)):
        return None
    height = sum(each.height for each in panels if each)
    board = Rectangle(first.width, height, first.modulus, first.shear, first.front, first.bottom)
    section = Section((board, *(each for each in strips if each)))
    depth = max(part.bounds().high[1] for part in ply.parts) - front
    load = (bearing.weight + bearing.contents) / state.level.box.size[0]
    return Twisted(*edges_of_lipped(section, depth, sagged.sag, sagged.span, load), load)


def _rectangle(part: Part, front: float) -> Rectangle | None:
    known, mechanics = modulus(part, 0), part.blank.stock.mechanics
    if known is None or mechanics is None or mechanics.shear is None:
        return None
    box = part.bounds()
    _, deep, high = box.size
    shear = mechanics.panel_shear or mechanics.shear
    return Rectangle(deep, high, known.value, shear.value, box.low[1] - front, box.low[2])
