"""Rules about doors, drawers, shelves and frames."""

from __future__ import annotations

from rodwright.checks.meanings.meaning import GEOMETRY, PRACTICE, Meaning
from rodwright.checks.motions import NEEDED
from rodwright.checks.rules import Rule
from rodwright.strength.load_factors import FACTORS, PSI2_SOURCE
from rodwright.trade.gaps import ABOVE_FLOOR
from rodwright.trade.movement import TABLE

_STOPS = (
    f"Geometry of the set-out. A door that stops short of {NEEDED:g} degrees is of little use, and "
    "is an error or a warning (common practice, no source)."
)

MEANINGS = {
    Rule.SAGS_TOO_FAR: Meaning(
        "A shelf, top, bottom, rail or worktop sags too far",
        "Its sag between what carries it, after the years that the spec says (`loads`), under "
        "what it is to carry. It is bent as the beam it is: on its true supports, its joints as "
        "springs, its lipping and layers with it, cut-outs taken off. Creep is taken whole.",
        f"Timoshenko's beam; creep by EN 1995-1-1, 2.2.3, and {PSI2_SOURCE}. A limit of span/200 "
        "is common practice, no source.",
        "The finding says what would do, each worked out: thicker, other boards, layers, a "
        "lipping, a divider half-way, less length or load. `rodwright strength` has all. What one "
        "costs is told for each part, net: its area, or the run of a board, at the spec's price, "
        "without offcuts.",
    ),
    Rule.BREAKS: Meaning(
        "A shelf, top, bottom, rail or worktop may break",
        "Its stress in bending or shear, loads raised by 1.35 and 1.5 and its ends turning "
        "freely, against its strength under a load that stays for years.",
        f"EN 1995-1-1, 2.4.1: kmod f / gammaM. Loads: {FACTORS}.",
        "The finding says what would do, each worked out.",
        "What lies on it falls. It is no structural engineer's work: what people climb, sit or "
        "lean on follows local codes.",
    ),
    Rule.PINS_TEAR_OUT: Meaning(
        "Shelf pins, or the wood round them, give",
        "Each pin of the fuller end bears its share: how it presses the wall of its hole, what "
        "shears below it, and how it presses the shelf.",
        "Bearing of fasteners by NDS 2018, 12.3 (from memory), strengths by EN 1995-1-1, 2.4.1. "
        "That the wood below a hole shears in two planes is common practice, no source.",
        "Thicker pins, deeper holes, a fixed shelf, or less on it.",
        "The shelf comes down with what is on it.",
    ),
    Rule.STIFFNESS_UNKNOWN: Meaning(
        "It isn't known how stiff a shelf is",
        "Nothing is told from a guessed material: without a modulus of elasticity, and a figure "
        "for creep in such a room, no sag is worked out.",
        PRACTICE,
        "Give `strength` in the stock, with its source, or say what it is `like`.",
    ),
    Rule.NOTHING_UNDER_ITS_END: Meaning(
        "Nothing carries a shelf at both its ends",
        "No joint and nothing below it is known of at one of its ends, at least.",
        GEOMETRY,
        "Let it end at uprights, or stand something under it.",
        "It comes down.",
    ),
    Rule.FRONT_SWELLS_SHUT: Meaning(
        "A door or drawer front of solid wood swells by more than its gap",
        "Made at the driest that the spec gives (`moisture`) and grown to the dampest, it binds. A "
        "door's hinges hold one edge, so that all of its swelling goes to the other; a drawer's "
        "front swells both ways from its screws. Frames move by their stiles alone, and are left "
        "out.",
        f"{TABLE}.",
        "Leave a wider `gap`, take quarter-sawn wood (`sawn: quarter`), or make it of sheet "
        "material or framed.",
    ),
    Rule.DOOR_STRIKES: Meaning(
        "A door strikes something as it opens",
        "The box round it, turned about its hinges, meets a part of the unit or a wall of the "
        "opening before it stands as far open as its hinges let it.",
        _STOPS,
        "Set the doors further forward, hang it on the other side, limit how far it opens "
        "(`hinge.opens`); where it is its own closing edge, leave a wider gap or plane a bevel.",
    ),
    Rule.DOORS_STRIKE_EACH_OTHER: Meaning(
        "Two doors can't both stand open",
        "With one wide open the other strikes it. It is a warning where not even both can stand "
        f"open {NEEDED:g} degrees, else a note.",
        _STOPS,
        "Hang one on its other side, or limit how far they open (`hinge.opens`).",
        "Fingers between two doors are pinched.",
    ),
    Rule.DRAWER_STRIKES: Meaning(
        "A drawer strikes something as it is drawn out",
        "The box of what slides, moved along its whole travel, runs into a part or a wall.",
        GEOMETRY,
        "Move one of them, or make the drawer smaller.",
    ),
    Rule.DRAWER_STRIKES_DOOR: Meaning(
        "A drawer strikes a door that stands open",
        "A drawer behind a door has to pass it, and this is an error; beside a door it is a "
        "warning or a note, as one can be shut before the other.",
        _STOPS,
        "Let the door open further, keep the drawer clear of it on packers (`drawers.packing`), "
        "or limit how far the door opens (`hinge.opens`).",
    ),
    Rule.NEAR_FLOOR: Meaning(
        "A door or drawer hangs close over the floor",
        f"Less than {ABOVE_FLOOR:g} mm under it scrapes where the floor rises before the unit.",
        PRACTICE,
        "Give the unit a `base`, or let the front end higher (`carcass.bottom_height`, less "
        "`overlay`, a wider `gap`).",
    ),
    Rule.NO_CATCH: Meaning(
        "Nothing holds a door shut",
        "Butt hinges have no spring, as cup hinges do, and no catch is on the list.",
        PRACTICE,
        "Fit a catch (magnet, ball or roller) or a bolt.",
    ),
    Rule.OPEN_BELOW_BOTTOM: Meaning(
        "The face frame leaves a hole under the carcass's bottom",
        "Its bottom rail ends below the bottom's underside: doors and drawers open onto a hole, "
        "and one looks in under the unit.",
        GEOMETRY,
        "Write `face_frame.corners: butted`, so that the rail reaches up, or lower the bottom "
        "(`carcass.bottom_height`).",
    ),
    Rule.LIPPING_AT_EASED_EDGE: Meaning(
        "A lipping meets the face frame where its edge is rounded",
        "A lipping that is flush with an eased edge leaves a gap beside the rounding. It has to "
        "lie behind it: thinner than the frame by the radius.",
        PRACTICE,
        "Make the lipping thinner, or ease the frame less.",
    ),
    Rule.SHELF_AT_SLANT: Meaning(
        "An adjustable shelf goes in past the face frame only at a slant",
        "It is longer than the frame's opening. One end raised, flat or on edge, it goes in behind "
        "a stile and is turned between the uprights.",
        GEOMETRY,
        "Try one before the shelves are finished.",
    ),
    Rule.SHELF_CANNOT_GO_IN: Meaning(
        "An adjustable shelf can't be brought in past the face frame",
        "None of three ways does: with one end raised, flat, or on edge with one end first behind "
        "a stile.",
        GEOMETRY,
        "Give the shelf more `clearance`, make `face_frame.width` smaller, or write `fixed: true`.",
    ),
}
