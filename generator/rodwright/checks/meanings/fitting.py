"""Rules about the opening as it was read, and about the unit in it."""

from __future__ import annotations

from rodwright.checks.meanings.meaning import PRACTICE, Meaning
from rodwright.checks.measuring import HEIGHTS, WIDTHS
from rodwright.checks.rules import Rule
from rodwright.opening.readings import FLOOR_ASSUMED, PLUMB_ASSUMED, TOP_ASSUMED
from rodwright.opening.slips import SMALL_OPENING
from rodwright.trade.gaps import BATTEN_LIMIT, CAULK_LIMIT, USUAL_GAP

_SURVEY = (
    "The readings with their errors, adjusted by least squares; what was not read is assumed: "
    f"{PLUMB_ASSUMED:g} mm a metre out of plumb, {FLOOR_ASSUMED:g} out of level at the floor and "
    f"{TOP_ASSUMED:g} at the top (common practice, no source)."
)

MEANINGS = {
    Rule.SMALL_OPENING: Meaning(
        "The opening is so small that it was more likely read in another unit",
        f"An opening less than {SMALL_OPENING['width']:g} mm wide, {SMALL_OPENING['height']:g} "
        f"high or {SMALL_OPENING['depth']:g} deep is rare in a building, and common on paper: "
        "centimetres or feet written where millimetres or inches are read.",
        PRACTICE,
        "Write the unit after the figure (`80 cm`). If the opening is that small, leave it.",
    ),
    Rule.TOO_FEW_WIDTHS: Meaning(
        "Too few widths were read to show a belly in the walls",
        f"{WIDTHS} widths, at the floor, half-way up and under the top, show whether a wall "
        "bellies; one or two don't, and the unit may stick at a place where nobody measured.",
        "Common practice, no source, for both ends and the middle. Simulated with walls that "
        "belly by up to 4 mm: with one width 7 units in a hundred don't go in, with two 3, with "
        "three none.",
        "Read `width: {bottom, middle, top}` before anything is cut.",
    ),
    Rule.TOO_FEW_HEIGHTS: Meaning(
        "Too few heights were read to show a hump in the floor or a sag in the top",
        f"{HEIGHTS} heights, at both sides and half-way across, show a hump or a sag between "
        "them. Floors and tops belly more rarely than walls, so this is a note.",
        PRACTICE,
        "Read `height: {left, middle, right}`, or hold a straight edge to floor and top.",
    ),
    Rule.CONTRADICTORY_READINGS: Meaning(
        "Two readings can't both be right",
        "Each reading is held to what all others say of the same place. One that is off by more "
        "than its own error and theirs is told, with what it says too much or too little.",
        "Baarda's data snooping, a test of geodesy (W. Baarda, A testing procedure for use in "
        "geodetic networks, 1968; from memory).",
        "Measure those again. Until then the unit is made small enough for either.",
    ),
    Rule.NO_LEVEL_TAKEN: Meaning(
        "A wall, the floor or the top leans, and nobody put a level to it",
        "Widths, heights and diagonals show that an edge runs out by more than is assumed of one "
        "that nobody looked at. Which of two walls has the lean can't be told from sizes alone.",
        _SURVEY,
        "Hold a level or a plumb line to it, and add `opening.plumb` or `opening.level`.",
    ),
    Rule.LARGER_THAN_OPENING: Meaning(
        "The unit is larger than its opening",
        "As drawn it can't go in: its width, height or depth is more than the opening's at the "
        "tightest. Of a face frame that is to be scribed to the walls only the carcass counts.",
        "The opening's readings.",
        "Make it smaller (`size`), or measure again. If only the face frame is too large, write "
        "`fit.overlap` and scribe it on site, or give it less `face_frame.overhang`.",
    ),
    Rule.MAY_NOT_GO_IN: Meaning(
        "The unit may not go in",
        "It goes into the likeliest shape of the opening, but not into the least that the readings "
        "allow with their errors.",
        _SURVEY,
        "Take plumb, level and diagonal readings, which make the least larger; or make the unit "
        "smaller.",
    ),
    Rule.UNUSUAL_GAP: Meaning(
        "The unit leaves less or more of the opening than usual",
        f"A unit is made {USUAL_GAP[0]:g} to {USUAL_GAP[1]:g} mm smaller than its opening in "
        "width and in height. With less it may stick; more has to be packed and covered.",
        PRACTICE,
        "Change `fit` or `size`; or see that packers, scribes and frame fill and cover what is "
        "left.",
    ),
    Rule.OPEN_GAP: Meaning(
        "A gap stays open that caulk can't bridge",
        f"A bead of caulk bridges about {CAULK_LIMIT:g} mm without sinking. Here neither a face "
        "frame nor a scribe covers a gap that may be wider.",
        PRACTICE,
        "Fit a cover strip or a scribe (`scribes`), or a face frame with overhang.",
    ),
    Rule.FRAME_OVERLAP_SHORT: Meaning(
        "The face frame covers less of the wall than was asked for",
        "`fit.overlap` says how far the frame is to reach past the gap. With its overhang it "
        "reaches less far over the likeliest gap.",
        "`fit.overlap` in the spec, and the readings with their errors.",
        "Give `face_frame.overhang` more, or `fit.overlap` less.",
    ),
    Rule.FRAME_OVERLAP_UNSURE: Meaning(
        "The face frame may not cover the gap",
        "Over the likeliest gap it does, but the readings allow a gap that is wider than the frame "
        "reaches.",
        _SURVEY,
        "Read plumb and level, and more widths; or give the frame more overhang.",
    ),
    Rule.SCRIBE_ALLOWANCE_SHORT: Meaning(
        "A scribe may come out too narrow",
        "A scribe is cut wider than the likeliest gap by an allowance that is planed off to the "
        "wall. The readings allow a gap that is wider by more than that.",
        _SURVEY,
        "Read plumb and level, and more widths; or give `scribes.allowance` more.",
    ),
    Rule.BATTEN_WANTED: Meaning(
        "More is to be packed than packers hold a screw through",
        f"Beyond {BATTEN_LIMIT:g} mm a screw through a stack of packers bends and pulls, and the "
        "stack slips.",
        PRACTICE,
        "Fix a batten to the wall first, planed to it, and pack from that; or make the unit wider.",
        "A unit that works loose from its wall can fall.",
    ),
    Rule.BASE_CANNOT_LEVEL: Meaning(
        "The floor falls by more than the base can level out",
        "The unit stands on the floor's high spot. At the low side its base would have to reach "
        "down farther than `base.levelling` lets it.",
        "The readings of the floor, and `base.levelling`.",
        "Give the base more `levelling`, take feet with a larger range, or make the plinth higher "
        "and scribe it to the floor.",
        "What doesn't stand on all its feet rocks, and a tall unit may tip.",
    ),
    Rule.PLINTH_PACKED_UP: Meaning(
        "The plinth is packed up off the floor's low side",
        "It stands on the floor's high spot; how far it is to be packed, and where, is told so "
        "that a strip can be kept to cover the gap under it.",
        f"The readings of the floor, and `base.levelling`; from {BATTEN_LIMIT:g} mm on a batten is "
        "better than packers (common practice, no source).",
        "Level the plinth first, and fix the carcass to it once it lies true.",
    ),
    Rule.WAY_TOO_TIGHT: Meaning(
        "The finished unit doesn't pass a place on its way in",
        "Doorways, corners, standing it up and sliding it into the opening are worked out by "
        "formula, for a box held at its best. Here it is short of room.",
        "Plane geometry: a rectangle through a doorway, round a corner, tilted under a ceiling.",
        "The remedies tried are told with the finding. `rodwright way-in` also looks for a path "
        "into the opening that tilts or turns.",
        "Forcing it crushes hands.",
    ),
}
