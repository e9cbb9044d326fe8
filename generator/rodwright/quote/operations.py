"""The operations that labour is counted in: one table, with minutes to start from.

A rates file calls an operation by its ``key`` and says the maker's own minutes for each.  **All
minutes here are invented**: they give a first quote something to stand on until a workshop has
timed itself, and no source is claimed for any of them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from decimal import ROUND_HALF_UP, Decimal
from types import MappingProxyType

from rodwright.amounts import AREAS, RUNS, WEIGHTS, Measure
from rodwright.lengths import LengthUnit
from rodwright.quote.counted import Stage


@dataclass(frozen=True, slots=True)
class OperationKind:
    """Something that is done in making a unit.

    ``name`` is what a maker reads, ``per`` what one of it is: a thing, or a measure (`m`, `m2`,
    `kg`; `ft`, `sq ft`, `lb` in a rates file in inches).  ``minutes`` are one person's for one of
    it, invented.  ``means`` says what is in it and how it is counted.  ``on_site`` tells what is
    done at the client's.
    """

    key: str
    name: str
    stage: Stage
    per: str
    minutes: Decimal
    means: str
    on_site: bool = False


def _kind(
    key: str, name: str, stage: Stage, per: str, minutes: str, means: str, *, on_site: bool = False
) -> OperationKind:
    return OperationKind(key, name, stage, per, Decimal(minutes), means, on_site)


_FIRST = (
    _kind("job", "reading and drawing the job", "setting out", "job", "90",
          "talking it over, the spec, ordering; once a job"),
    _kind("survey", "measuring the opening", "setting out", "opening", "45",
          "where it is made for an opening; the road there is driving"),
    _kind("shape", "setting out a kind of part", "setting out", "kind of part", "5",
          "marking its rod and its first piece; pieces of one shape count "
          "once"),
    _kind("sheet", "handling a sheet", "cutting", "sheet", "6",
          "fetched, laid up, its offcuts put away; sheets of the cutting plan"),
    _kind("board", "handling a board", "cutting", "board", "3",
          "chosen, laid up, its offcuts put away; boards and lengths of the cutting plan"),
    _kind("rip", "cutting along", "cutting", "cut", "1.5",
          "a cut along a sheet or board, with its setting; steps of the cutting plan"),
    _kind("crosscut", "cutting across", "cutting", "cut", "1",
          "a cut across a sheet or board, with its setting; steps of the cutting plan"),
    _kind("routed", "cutting out with the router", "cutting", "piece", "2",
          "a piece that a router cuts out of its sheet"),
    _kind("planing", "planing boards", "cutting", "m", "4",
          "faced, edged and thicknessed: the length of the boards that are bought sawn"),
    _kind("gluing_up", "gluing boards up", "cutting", "m", "10",
          "jointed edges glued into panels: the length of the glue lines"),
)  # fmt: skip
_MACHINING = (
    _kind("mitre", "mitring an end", "machining", "end", "2",
          "sawn and trimmed to its line"),
    _kind("bevel", "sawing a bevel", "machining", "cut", "3",
          "a slanting cut over a whole end or edge"),
    _kind("housing", "cutting a housing", "machining", "housing", "4",
          "its guide set, routed or sawn, its end squared"),
    _kind("rebate", "cutting rebates", "machining", "m", "3",
          "tongues are two of them"),
    _kind("groove", "cutting grooves", "machining", "m", "2.5",
          "for backs, panels and drawer bottoms"),
    _kind("notch", "cutting a notch", "machining", "notch", "5",
          "a corner or an edge cut out right through"),
    _kind("shelf_hole", "boring a shelf hole", "machining", "hole", "0.15",
          "in rows, with a guide"),
    _kind("hinge_cup", "boring a hinge cup", "machining", "cup", "1.5",
          "for a concealed hinge"),
    _kind("hole", "boring any other hole", "machining", "hole", "0.6",
          "marked and bored, as for handles; not those of dowels, shelves, hinge cups and screws"),
    _kind("mortise", "cutting a mortise or slot", "machining", "mortise", "3",
          "not those of biscuits and loose tenons"),
    _kind("dowel", "boring for a dowel", "machining", "dowel", "2",
          "both its holes"),
    _kind("biscuit", "slotting for a biscuit", "machining", "biscuit", "1.2",
          "both its slots"),
    _kind("loose_tenon", "mortising for a loose tenon", "machining", "loose tenon", "5",
          "both its mortises"),
    _kind("pocket_hole", "boring a pocket hole", "machining", "pocket hole", "1",
          "in its jig"),
    _kind("finger_pull", "routing a finger pull", "machining", "finger pull", "4",
          "in the edge of a front"),
    _kind("easing", "easing arrises", "machining", "m", "0.7",
          "rounded or bevelled: the length of all of them"),
    _kind("edging", "gluing edging on", "machining", "m", "3",
          "veneer or tape, trimmed: the length of the edges"),
)  # fmt: skip
_ASSEMBLY = (
    _kind("lipping", "gluing lippings on", "assembly", "m", "8",
          "glued, clamped, planed flush: the length of the edges"),
    _kind("layers", "gluing layers face to face", "assembly", "m2", "25",
          "the area that is glued"),
    _kind("glued_joint", "gluing a joint", "assembly", "joint", "2",
          "tried dry, glue spread, closed, clamped, wiped; not lippings and layers"),
    _kind("carcass", "putting a carcass together", "assembly", "carcass", "40",
          "laid out, held square, cleaned up; its joints are counted beside it"),
    _kind("face_frame", "putting a face frame together", "assembly", "face frame", "25",
          "one that is joined before it is fitted"),
    _kind("door", "putting a door together", "assembly", "door", "20",
          "of a frame and a panel"),
    _kind("drawer", "putting a drawer together", "assembly", "drawer", "20",
          "its box, held square, and its front set"),
    _kind("base", "putting a base together", "assembly", "base", "20",
          "a plinth or stand that is made apart"),
    _kind("back", "fitting a back", "assembly", "back", "15",
          "measured on the carcass, trimmed, put in; its screws and pins apart"),
    _kind("screw", "driving a screw", "assembly", "screw", "0.6",
          "pilot and clearance hole with it; also those of hinge plates, butts, slides "
          "and feet; not those that a hinge's cup comes with"),
    _kind("pin", "driving a pin", "assembly", "pin", "0.2",
          "its hole with it"),
    _kind("plug", "plugging a screw hole", "assembly", "plug", "1.2",
          "glued in and pared flush"),
    _kind("knock_down", "putting in a knock-down fitting", "assembly", "fitting", "1",
          "a cam or barrel nut and its bolt"),
    _kind("hinge", "fitting a hinge", "assembly", "hinge", "4",
          "on the door and on what carries it; its cup pressed in, or held by screws that come "
          "with it"),
    _kind("slides", "fitting a pair of slides", "assembly", "pair", "10",
          "on the carcass and on the drawer"),
    _kind("handle", "fitting a handle", "assembly", "handle", "3",
          "knobs and pulls too, with their screws; its holes apart"),
    _kind("foot", "fitting a foot", "assembly", "foot", "2",
          "an adjustable foot under the carcass"),
    _kind("small_part", "putting in a small part", "assembly", "piece", "0.2",
          "shelf pins and sleeves, bumpers, clips, buttons, washers, loose tongues"),
)  # fmt: skip
_FINISHING = (
    _kind("sanding", "sanding", "finishing", "m2", "9",
          "all grits: the area of all that gets a finish, faces and edges; not of what stays "
          "bare, nor of what nobody sees"),
    _kind("oil", "oiling", "finishing", "m2", "5", "a coat: its area times its coats"),
    _kind("lacquer", "lacquering", "finishing", "m2", "5",
          "a coat, rubbed down: its area times its coats"),
    _kind("primer", "priming", "finishing", "m2", "6",
          "a coat, filled and rubbed down: its area times its coats"),
    _kind("paint", "painting", "finishing", "m2", "6",
          "a coat, rubbed down: its area times its coats"),
    _kind("stain", "staining", "finishing", "m2", "6",
          "a coat, wiped even: its area times its coats"),
)  # fmt: skip
_FITTING = (
    _kind("packing", "wrapping for the road", "fitting", "piece", "8",
          "what is carried as one: a unit that travels whole; else carcass, frame, door, drawer"),
    _kind("loose_shelf", "wrapping and laying in a loose shelf", "fitting", "shelf", "2",
          "one that lies on its pins, with what is glued on it"),
    _kind("loading", "loading and carrying in", "fitting", "kg", "0.3",
          "the weight of the unit"),
    _kind("settling_in", "setting up on site", "fitting", "job", "40",
          "tools in, floors covered; once a job", on_site=True),
    _kind("standing", "standing it in its place", "fitting", "carcass", "40",
          "placed and levelled, its base with it", on_site=True),
    _kind("fixing_point", "packing and fixing to the wall", "fitting", "fixing", "12",
          "looked for what runs in the wall, bored, packed, screwed", on_site=True),
    _kind("scribing", "scribing to the wall", "fitting", "m", "25",
          "scribes, and the frame's edges that are scribed", on_site=True),
    _kind("frame_member", "fitting a face frame", "fitting", "piece", "25",
          "as a frame, or member by member, cut to its place", on_site=True),
    _kind("surround", "fitting a worktop or cornice", "fitting", "piece", "30",
          "set, levelled, held; in the workshop where it travels whole", on_site=True),
    _kind("adjusting", "adjusting a door or drawer", "fitting", "front", "8",
          "gaps even, runs free", on_site=True),
    _kind("clearing", "clearing up", "fitting", "job", "30",
          "floor swept, waste taken, the client shown; once a job", on_site=True),
)  # fmt: skip

OPERATIONS: tuple[OperationKind, ...] = (
    *_FIRST, *_MACHINING, *_ASSEMBLY, *_FINISHING, *_FITTING,
)  # fmt: skip
"""Every operation, in the order of the work, in metric measures; minutes are invented."""
BY_KEY: Mapping[str, OperationKind] = MappingProxyType({each.key: each for each in OPERATIONS})
"""The same by key."""

_MEASURES: Mapping[str, Mapping[LengthUnit, Measure]] = MappingProxyType(
    {"m": RUNS, "m2": AREAS, "kg": WEIGHTS}
)

_HUNDREDTH = Decimal("0.01")


def measure_of(per: str, unit: LengthUnit) -> Measure:
    """What is counted by ``per`` of :data:`OPERATIONS` in a rates file in ``unit``; things are
    counted one by one in either."""
    measures = _MEASURES.get(per)
    return Measure(per, 1.0, 0) if measures is None else measures[unit]


def operations_in(unit: LengthUnit) -> tuple[OperationKind, ...]:
    """:data:`OPERATIONS` for a rates file in ``unit``: by the foot, square foot and pound where
    that is inches, minutes to the hundredth, halves up."""
    found = []
    for each in OPERATIONS:
        measure = measure_of(each.per, unit)
        minutes = each.minutes
        if measure.one != 1.0:
            minutes = (minutes * Decimal(str(measure.one))).quantize(_HUNDREDTH, ROUND_HALF_UP)
        found.append(replace(each, per=measure.symbol, minutes=minutes))
    return tuple(found)
