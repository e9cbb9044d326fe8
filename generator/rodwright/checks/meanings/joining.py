"""Rules about joints, what holds a unit together, and how wood moves in it."""

from __future__ import annotations

from rodwright.checks.driving import ROOM
from rodwright.checks.hanging import LEAST_SCREWS
from rodwright.checks.holding import LEAST_SEAM
from rodwright.checks.meanings.meaning import GEOMETRY, PRACTICE, Meaning
from rodwright.checks.rules import Rule
from rodwright.strength.paths import GRAVITY
from rodwright.strength.racking import PUSH, SWAY_LIMIT
from rodwright.strength.uprights import BUCKLING_SAFETY, BUCKLING_SOURCE
from rodwright.trade.connectors import DOWEL_EDGE
from rodwright.trade.fastenings import END_GRAIN_PULL, END_GRAIN_SCREW, SAFETY
from rodwright.trade.movement import ACCEPTED, TABLE
from rodwright.trade.screws import FROM_CORNER, SIDE
from rodwright.trade.slides import DRAWER_LOAD, FRONT_PULL
from rodwright.trade.wall_fixings import (
    BOARD_FAILS,
    CABINET_TEST,
    LEAST_BACK,
    PLUG,
    PLUG_SPACING,
    STUD_CENTRES,
    TALL_CABINET_TEST,
    WALL_SAFETY,
)

_SWAYS = (
    f"Push of {PUSH:g} N and limit of height over {SWAY_LIMIT:g}: common practice, no source; "
    "1/200 of what stands in it: EN 1993-1-1, 5.3.2 (from memory)."
)
_WALL = (
    "It can come off the wall with all that is in it. Have the wall judged by who knows it; local "
    "codes come first."
)

MEANINGS = {
    Rule.THIN_DOWELS: Meaning(
        "Dowels are thinner than a third of the edge they go into",
        "Thinner ones hold less than the board around them would bear.",
        PRACTICE,
        "Take dowels of a third to half of the edge.",
    ),
    Rule.SCREWS_IN_END_GRAIN: Meaning(
        "Screws go into the end grain of solid wood",
        "Along the grain threads cut fibres short and strip; such a screw holds "
        f"{100 * END_GRAIN_PULL:.0f}% of one across the grain at best, where the wood hasn't "
        "split.",
        f"{END_GRAIN_SCREW}.",
        "House the end as well, or choose dowels, loose tenons or pocket screws.",
    ),
    Rule.JOINT_OVERLOADED: Meaning(
        "A joint carries more than it bears",
        "What a shelf, top, bottom or rail brings to its joint, by its own weight and what lies on "
        f"it, is more than its screws, dowels or housing bear. A fifth (1/{SAFETY:g}) of what "
        "breaks them counts, for loads that stay for years.",
        "Screws and nails: NDS 2018, ch. 12, and the Wood Handbook, ch. 8; dowels: Eckelman; "
        "housings: EN 1995-1-1; each figure in `rodwright strength` says which, and which are from "
        "memory.",
        "Take more, thicker or longer fixings, or the other joint that the finding names.",
        "A shelf that leaves its joints falls, with all that is on it. Rodwright is no structural "
        "engineer.",
    ),
    Rule.FIXINGS_DRAWN: Meaning(
        "A shelf that sags draws on its fixings by more than they bear",
        "Its ends turn as it sags, and what holds them is drawn out. They give a little, and the "
        "end then turns as on a pin: it sags as a shelf on pins does.",
        "Withdrawal: NDS 2018 and the Wood Handbook, ch. 8; how stiffly the joint turns is a "
        "stated estimate.",
        "Take more or longer fixings, or house the end as well, so that they carry nothing.",
    ),
    Rule.FIXING_NEAR_EDGE: Meaning(
        "Screws or dowels lie too near an edge, a face or an end",
        f"Nearer than {SIDE:g} diameters to a face the edge bulges or splits; nearer than "
        f"{FROM_CORNER['sheet']:g} to an end ({FROM_CORNER['splitting']:g} in MDF and chipboard) "
        f"the corner does. Dowels want {DOWEL_EDGE:g} from an end.",
        PRACTICE,
        "Move them, or take thinner ones.",
    ),
    Rule.PILOT_TOO_NARROW: Meaning(
        "Pilot holes are too narrow for their screws",
        "The wood splits, or the screw breaks off. The hole is 0.7 of the root in softwood and 0.9 "
        "in hardwood and sheets, three quarters of the diameter where edges split.",
        "Wood Handbook, ch. 8 (from memory); in sheets common practice, no source.",
        "Drill the size that the finding names.",
    ),
    Rule.PILOT_TOO_WIDE: Meaning(
        "Pilot holes are too wide for their screws",
        "Past the root of the thread, or where edges split 0.8 of the diameter, too little is left "
        "for it to cut into.",
        PRACTICE,
        "Drill the size that the finding names, or take thicker screws.",
    ),
    Rule.DRAWER_OVERLOADED: Meaning(
        "A drawer holds more than its slides' screws or its bottom's grooves bear",
        "Drawn out, a drawer hangs on the foremost screws of its slides. Where the spec doesn't "
        f"say what lies in it, {DRAWER_LOAD.value:.0f} kg for each square metre of its bottom do, "
        "which drawers are tested with.",
        f"Load: {DRAWER_LOAD.source}. Screws: NDS 2018, ch. 12 (bearing from memory).",
        "Take the number of screws that the finding names, or put less into it. What the slides "
        "themselves carry is their maker's to say.",
        "A drawer that comes off its slides falls on feet.",
    ),
    Rule.DRAWER_FRONT_LOOSE: Meaning(
        "What holds a drawer's front to its box is less than its pull is tested with",
        f"Fronts are pulled at {FRONT_PULL.value:.1f} kg straight out.",
        f"{FRONT_PULL.source}.",
        "Take the screws that the finding names.",
    ),
    Rule.DOOR_TOO_HEAVY: Meaning(
        "A door is too heavy for its hinges, for their screws, or for the corners of its frame",
        "So many hinges are for a door of a certain weight, and the door's weight at half its "
        "width draws on the screws of the top one. The rails of a framed door carry half of it "
        "between its stiles, and turn in their joints.",
        "Hinges: tables that their makers print (from memory). Screws: Wood Handbook, ch. 8.",
        "Hang it on more hinges, take longer screws, or make it lighter.",
        "A door that comes off its hinges falls on who opens it.",
    ),
    Rule.NO_ROOM_FOR_DRIVER: Meaning(
        "Something stands behind the heads of screws that are driven in place",
        f"An angle driver with its bit and a hand needs about {ROOM:g} mm behind the head. What is "
        "screwed on from inside, once the carcass stands together, leaves less here.",
        PRACTICE,
        "Make room, or drive those screws before what stands in the way goes in.",
    ),
    Rule.NOTHING_HOLDS_IT: Meaning(
        "Nothing holds a part in its place",
        "A part of the carcass is butted, without a screw; boards of a cornice lie on too little "
        "for screws or biscuits; or a back lies in rebates too narrow for pins.",
        PRACTICE,
        "Choose a joint that holds (`carcass.corners`, its own `ends`), give the part more to lie "
        "on, or see to it with nails, cleats or brackets.",
        "A shelf or a cornice that nothing holds falls on whoever is under it.",
    ),
    Rule.FRAME_ONLY_GLUED: Meaning(
        "Only glue on end grain holds the face frame together",
        "End grain drinks glue and gives a weak joint; the frame opens at its corners when it is "
        "handled or as the wood moves.",
        PRACTICE,
        "Choose a `face_frame.joint`, with members wide enough for it.",
    ),
    Rule.BACK_SEAM_UNFIXED: Meaning(
        "Two panels of a back meet on a divider too thin to be pinned to",
        f"Both edges want a pin, three diameters from either edge of the divider: {LEAST_SEAM:g} "
        "mm for the thinnest pins of 1 mm.",
        "EN 1995-1-1, table 8.2: three diameters from pin to edge (from memory).",
        "Take thicker `dividers.stock`, or leave `back.split` out.",
    ),
    Rule.NOTHING_BRACES_IT: Meaning(
        "Nothing keeps the carcass from racking sideways",
        "It has no back that is fixed or let in all round, and no face frame with jointed corners; "
        f"pushed with {PUSH / GRAVITY:.0f} kg at the top, and with what stands in it, it sways "
        f"further than its height over {SWAY_LIMIT:g}, or folds flat. Joints are counted low: as "
        "they turn, without glue between faces.",
        _SWAYS,
        "`rodwright strength` works out what would brace it, each with its figure: a `back` (it "
        "braces best), a `face_frame`, stiffer joints (`carcass.corners`), a rail, or the wall it "
        "is fixed to (`wall`).",
        "A loaded carcass that racks folds flat, and falls on whoever stands before it. Don't load "
        "it as it is.",
    ),
    Rule.UPRIGHT_BUCKLES: Meaning(
        "A side, divider or leg is too slender for what comes down it",
        "Between two levels that meet it a thin upright bows out sideways under load, "
        f"and gives way. It may carry a {BUCKLING_SAFETY:g}rd of what buckles it (Euler).",
        f"Euler; {BUCKLING_SOURCE}.",
        "Fix a shelf half-way up, or take thicker stock; `rodwright strength` has the figures.",
        "What stands on it comes down at once, without warning.",
    ),
    Rule.FOOT_CRUSHES: Meaning(
        "An upright crushes what it stands on",
        "Through its thickness, across the grain, a board bears far less than along it: the foot "
        "sinks in, and all above it follows.",
        "EN 1995-1-1, 2.4.1: kmod f/gammaM; f of the stock under it.",
        "Let the upright go past what it stands on to the floor, make it thicker, or take harder "
        "stock under it.",
    ),
    Rule.OPEN_BACK: Meaning(
        "Without a back only the carcass's own joints keep it square",
        f"They do: pushed with {PUSH / GRAVITY:.0f} kg at the top it sways less than its height "
        f"over {SWAY_LIMIT:g}. A back braces it many times better.",
        _SWAYS,
        "Fix it to the wall, or give it a `back`, if it is to carry more than was said.",
        "High and laden more than was said it may rack and fold.",
    ),
    Rule.SWAYS_TOO_FAR: Meaning(
        "What braces the carcass doesn't brace it enough",
        f"Pushed with {PUSH / GRAVITY:.0f} kg at the top it sways further than its height over "
        f"{SWAY_LIMIT:g}, sideways or from front to back: its face frame is too weak, its back has "
        "too much play in its grooves or too few fixings, or its legs turn where they are held.",
        _SWAYS,
        "`rodwright strength` works out what would help, each with its figure.",
        "A loaded carcass that sways works its joints loose, and may fold in the end.",
    ),
    Rule.SWAY_UNKNOWN: Meaning(
        "It isn't known how far the carcass sways",
        "Nothing is told from a guessed material: without the stiffness of the carcass's wood, or "
        "of its back in shear, no sway is worked out, and whether it folds isn't known either.",
        PRACTICE,
        "Give `strength` in the stock, with its source, or say what it is `like`.",
        "A loaded carcass that nothing keeps square may fold.",
    ),
    Rule.BACK_BUCKLES: Meaning(
        "The back is so thin that it buckles in shear",
        "Pushed at the top, the panel bulges out of its plane between the edges that hold it, and "
        "braces no more from there on.",
        "Timoshenko and Gere, Theory of elastic stability, ch. 9 (from memory).",
        "Take a thicker back, or split it (`back.split`).",
    ),
    Rule.BACK_FIXINGS_GIVE: Meaning(
        "Screws or pins of the back carry more than they may when the carcass is pushed",
        "Each carries its share of the push, and works loose; the back then braces less and less.",
        "NDS 2018, ch. 12, yield limit equations of single shear.",
        "Set them closer, take thicker ones, or glue the back.",
    ),
    Rule.NOTHING_TO_HANG_BY: Meaning(
        "What hangs on the wall has nothing that carries it there",
        f"A unit is hung by screws through its back, which is {LEAST_BACK:g} mm thick at least and "
        f"tied to the carcass by {LEAST_SCREWS:g} screws at least, or glued into grooves all "
        "round.",
        PRACTICE,
        "Give it a thicker `back`, or screw a rail to its top and sides and hang it by that.",
        "It can come off the wall with all that is in it. Have the fixings and the wall judged by "
        "who knows both; local codes come first.",
    ),
    Rule.PLASTERBOARD_ALONE: Meaning(
        "A unit is to hang in plasterboard alone",
        "The board breaks round any fixing, whatever that is, sooner or later: "
        f"{BOARD_FAILS.value / GRAVITY:.0f} kg straight out did it in a test, and a cabinet pulls "
        "for years.",
        f"{BOARD_FAILS.source}; that it is refused: common practice, no source.",
        "Find the studs (`wall: studs`) or put noggings in, or stand it on the floor.",
        "It comes off the wall with all that is in it, on whoever is under it.",
    ),
    Rule.WALL_NOT_SAID: Meaning(
        "A unit hangs, and what the wall is isn't said",
        "What is needed depends on it: plugs in masonry, screws in studs. Both are worked out: "
        "T = W e/h for the pull on the top, half of the weight downwards at top and bottom each.",
        f"Statics; {PLUG.source}; screws: NDS withdrawal (Engineering ToolBox). Half at most of "
        f"what breaks a fixing: {WALL_SAFETY.source}.",
        "Write `wall: masonry`, `wall: studs` or `wall: plasterboard`.",
        _WALL,
    ),
    Rule.TOO_FEW_FIXINGS_FIT: Meaning(
        "Behind the unit there is no room for as many fixings as it takes",
        "In studs, which stand where they stand, only those surely behind it count; plugs keep "
        f"{PLUG_SPACING:g} mm apart.",
        f"{STUD_CENTRES.source}; {PLUG.source}; spacing: common practice, no source.",
        "Hang it by a batten across more studs, put noggings in, or set plugs in two rows.",
        _WALL,
    ),
    Rule.HUNG_BACK_GIVES: Meaning(
        "The back that a unit hangs by gives way",
        "It bends round its fixings, their heads are pulled through it, or the screws that tie it "
        "to the case carry more than they may.",
        "Bending and pull-through: stated estimates; screws: NDS withdrawal and yield equations.",
        "Take a thicker `back.stock`, or more screws; `rodwright strength` has the figures.",
        "The case comes off its back, with all that is in it.",
    ),
    Rule.HEAVIER_THAN_TESTED: Meaning(
        "It hangs with more than wall cabinets are tried with",
        f"Wall cabinets are tried with {CABINET_TEST.value:g} kg, those over 24 in high with "
        f"{TALL_CABINET_TEST.value:g} kg, new and for a short time.",
        f"{CABINET_TEST.source}; {TALL_CABINET_TEST.source}.",
        "Make two of it, put less in it, or stand it on the floor.",
        _WALL,
    ),
    Rule.BACK_TO_BE_GLUED: Meaning(
        "The back that carries a hanging unit is held by its grooves alone",
        "Glued all round in its grooves a panel of sheet material carries the case; left loose it "
        "slides out.",
        PRACTICE,
        "Glue it into its grooves all round.",
        "Unglued, the case can come off the wall with all that is in it.",
    ),
    Rule.HELD_ACROSS_GRAIN: Meaning(
        "Solid wood is held across its grain by something that doesn't move with it",
        "Wood swells across its grain and hardly along it. Where a joint holds it against sheet "
        "material, or against wood that runs the other way, it splits, bows or breaks the joint. "
        f"Up to {ACCEPTED:g} mm is let pass, about what rails in frames have always moved.",
        f"Movement: {TABLE}. Limit: common practice, no source.",
        "Leave it room: buttons, screws in slots, a groove without glue. Or make both of solid "
        "wood with the grain the same way, or take quarter-sawn boards (`sawn: quarter`).",
    ),
    Rule.NO_ROOM_TO_SWELL: Meaning(
        "A panel of solid wood swells by more than its grooves or rebates leave it",
        "Between the driest and the dampest that the spec gives (`moisture`) it grows past the "
        "bottom of its grooves, and pushes the unit apart.",
        f"{TABLE}.",
        "Make it of sheet material or of narrow boards that aren't glued together, or give it more "
        "`depth` and `clearance`.",
    ),
    Rule.COLLISION: Meaning(
        "Two parts run into each other",
        "Their solids share more than a hundredth of a millimetre (0.01 mm) where no joint cuts "
        "one out for the other. Looked for only where solids are built.",
        GEOMETRY,
        "Move one of them, make it smaller, or joint them.",
    ),
    Rule.JOINT_APART: Meaning(
        "Two parts should be joined, but don't meet",
        "A joint says that they touch, and their solids lie more than 0.05 mm apart: nothing for "
        "glue or screws to draw together.",
        GEOMETRY,
        "Bring them together, or take the joint away. In a unit that Rodwright set out by itself "
        "it is a fault of Rodwright's: please report it.",
    ),
    Rule.CLEARANCE_SHORT: Meaning(
        "A gap that was asked for isn't kept",
        "Between two parts there is less air than the spec, or a front or drawer that opens, "
        "wants.",
        "What the spec asks for.",
        "Make one of them smaller, or move it.",
    ),
}
