"""Rules about the workings in one piece, and about what pieces are cut from."""

from __future__ import annotations

from rodwright.checks.meanings.meaning import GEOMETRY, PRACTICE, Meaning
from rodwright.checks.rules import Rule
from rodwright.checks.weak_joints import ROUNDING
from rodwright.checks.workings import STEEPEST
from rodwright.trade.wood_left import LEAST_BORING, LEAST_FLOOR, LEAST_RIM, LEAST_TONGUE

_STOCK = "The sizes of the stock that the spec gives."

MEANINGS = {
    Rule.OUTSIDE_BLANK: Meaning(
        "A working reaches past the edge of its piece",
        "What is to be cut lies wholly or partly outside the piece. A program can't mark it out, "
        "and a machine cuts air or a clamp.",
        GEOMETRY,
        "Move it in, or make the piece larger.",
    ),
    Rule.RIGHT_THROUGH: Meaning(
        "A blind cut is as deep as its piece",
        "A groove, housing, rebate, hole or mortise that is to leave a floor goes right through.",
        GEOMETRY,
        "Make it shallower, or take thicker stock.",
    ),
    Rule.NEARLY_THROUGH: Meaning(
        "Under a hole, mortise or pocket hardly any wood is left",
        f"Less than {LEAST_FLOOR:g} mm under a bit's point breaks out, or shows through the finish "
        "later.",
        PRACTICE,
        "Make it shallower, take thicker stock, or drill it through.",
    ),
    Rule.DEEPER_THAN_HALF: Meaning(
        "A groove or housing is deeper than half the thickness",
        "What is left under it is weaker than what was taken out, and bends or breaks there.",
        PRACTICE,
        "Keep grooves and housings to a third of the thickness, a half at the most.",
    ),
    Rule.DEEP_HOUSING: Meaning(
        "Housings are deeper than a third of the thickness",
        "A third holds as well and leaves the upright stiff; deeper ones weaken it at every shelf. "
        f"{ROUNDING:g} mm over is let pass, for round figures.",
        PRACTICE,
        "Keep them to a third of the thickness.",
    ),
    Rule.THIN_TONGUE: Meaning(
        "A thin tongue of wood is left beside a cut",
        f"Less than {LEAST_TONGUE:g} mm between a channel and an edge, or between two channels, "
        "splits off while it is cut, glued or carried.",
        PRACTICE,
        "Set back what goes into the channel, stop it short of the edge (`stopped`), or cut it "
        "shallower.",
    ),
    Rule.HOLE_NEAR_EDGE: Meaning(
        "A hole lies so near an edge that it may break out",
        "What is driven into a hole wedges it open; its middle stays its own diameter away from "
        f"the edge. A boring of {LEAST_BORING:g} mm or more takes a cup that wedges nothing, and "
        f"needs {LEAST_RIM:g} mm beside its rim.",
        PRACTICE,
        "Move it in, or take a thinner dowel or screw.",
    ),
    Rule.BORES_MEET: Meaning(
        "Two bores from opposite surfaces meet",
        "A hole, mortise or pocket from one face runs into one from the other: both go through "
        "where blind ones were meant, and leave nothing to drive a screw or dowel against.",
        GEOMETRY,
        f"Move one, or make them shallower: {LEAST_FLOOR:g} mm at least between them.",
    ),
    Rule.THIN_WOOD_BETWEEN_BORES: Meaning(
        "Little wood is left between two bores from opposite surfaces",
        f"Less than {LEAST_FLOOR:g} mm breaks out as the second is drilled.",
        PRACTICE,
        "Move one, or make them shallower.",
    ),
    Rule.BORE_RUNS_INTO_CUT: Meaning(
        "A hole breaks into another hole or cut",
        "A bit wanders where it breaks into a hollow, and what goes into it holds little there. "
        "Bores of one fitting, and holes in the middle of a channel's floor, are meant to meet.",
        GEOMETRY,
        "Move one of them.",
    ),
    Rule.POCKET_HOLE_BREAKS_OUT: Meaning(
        "A pocket hole or its screw comes out where it shouldn't",
        "A pocket hole is bored at a slant from the face into the end. Here it, or the screw in "
        "it, leaves the wood by the side, the face, the back or too far along.",
        GEOMETRY,
        "Change how deep it leaves the end or where it stops, or take thicker stock.",
    ),
    Rule.MITRES_CROSS: Meaning(
        "The slanting ends of a piece cross",
        "The two ends take more than the piece's length off one of its edges: nothing is left "
        "between the short points.",
        GEOMETRY,
        "Make the piece longer or narrower.",
    ),
    Rule.BEVEL_PAST_SAW: Meaning(
        "A bevel is steeper than most saws tilt",
        f"Most saws tilt up to {STEEPEST:g} degrees from square, many a degree or two more. This "
        "bevel wants more, with the piece flat on its face.",
        PRACTICE,
        "Stand the piece on that edge against a tall fence, in a jig, and tilt the saw by what is "
        "left to 90 degrees; or plane the bevel by hand to a line.",
        "A piece on edge tips into the blade or is thrown: hold it in a jig, keep hands off it, "
        "and follow the saw's manual.",
    ),
    Rule.STOCK_THICKNESS: Meaning(
        "A piece is thicker than its stock, or of another thickness than its sheet",
        "A sheet is as thick as it is; a board can be planed thinner and never thicker. A narrow "
        "strip may be ripped off a board and turned on its side.",
        _STOCK,
        "Name stock of that thickness, or change the piece's.",
    ),
    Rule.LARGER_THAN_SHEET: Meaning(
        "A piece is larger than the sheet it is cut from",
        "As first cut, with what is trimmed later, and with its grain along the sheet's; sheets "
        "count without the edges that are trimmed off them.",
        _STOCK,
        "Take larger sheets, let it lie across where that makes it fit (`grain: none` for the "
        "stock), make the piece in two (a back: `back.split: true`), or divide the unit.",
    ),
    Rule.LONGER_THAN_BOARDS: Meaning(
        "A piece is longer than every board, at hand or sold",
        "As first cut, with what is trimmed later, and without the bad ends of boards.",
        _STOCK,
        "Get longer boards, or make the piece in two.",
    ),
    Rule.WIDER_THAN_BOARDS: Meaning(
        "A piece is wider than every board, at hand or sold",
        "It can be made, of boards glued edge to edge; the list counts it as one piece.",
        _STOCK,
        "Glue boards up, or get wider ones.",
    ),
    Rule.WIDER_THAN_SECTION: Meaning(
        "A piece is wider than the section that its stock is bought in",
        "What is bought planed all round, or moulded, is only cut to length: it isn't glued up.",
        _STOCK,
        "Name stock of that width, or leave out the stock's `section` and rip boards.",
    ),
}
