"""Rules about what can hurt someone, however well a unit is set out."""

from __future__ import annotations

from rodwright.checks.meanings.meaning import PRACTICE, Meaning
from rodwright.checks.rules import Rule
from rodwright.trade.floors import HOUSE_FLOORS
from rodwright.trade.lifting import HSE, LOAD_CONSTANT, NIOSH
from rodwright.trade.stability import CHILD, FIX_FROM, OPEN_ELEMENT, PULL, PULL_HEIGHT, RESTRAINT

_LIFTING = (
    f"{NIOSH}: {LOAD_CONSTANT.value:g} kg in the best of cases, less by the reach, the heights of "
    f"the hands and the grip; beside it the {HSE}. Those heights and reaches are common practice, "
    "no source. Neither is a limit of what is safe; for many people and most lifts it is less."
)
_FIX = "Fix it to the wall, with brackets or straps that suit the wall."
_TIPS = "Furniture that tips over kills children. Local codes come first."

MEANINGS = {
    Rule.TALL_AND_FREESTANDING: Meaning(
        "A tall unit stands free",
        f"What level pull at its top, or at {PULL_HEIGHT.value:.0f} mm, tips it, empty or with "
        "what it is to carry, with all that opens open: a child who climbs it, or a hand that "
        f"leans on it. Where nothing opens, {CHILD.value:.1f} kg on the front of a shelf too, on a "
        "carpet. What is only assumed to be in it never helps. "
        f"It is told from {FIX_FROM.value:.0f} mm on, and warned of below "
        f"{PULL.value:.1f} kg.",
        f"Statics. {PULL.source} asks for 10 lb; bookcases are outside its scope, and take it as a "
        "yardstick. The height is common practice, no source.",
        f"{_FIX} The fixing is to hold at least {RESTRAINT.value:.1f} kg ({RESTRAINT.source}). "
        "What is worked at, and stands all that, may stand free. If it hangs there, write "
        "`hung: true`.",
        _TIPS,
    ),
    Rule.TIPS_WITH_DRAWERS_OUT: Meaning(
        "A unit with drawers tips over when they are drawn out",
        "Moments about the line of its feet, with every drawer and door open: whether it falls by "
        "itself, what load straight down on one that is open tips it "
        f"({OPEN_ELEMENT.value:.1f} kg), and what on the foremost edge, on a carpet "
        f"({CHILD.value:.1f} kg, a child). It is tried empty and with what it is to carry; in "
        "drawers of which nothing is said, with clothing. What is only assumed, or lies on its "
        "top, is tried off too. The finding says whether ASTM F2057-23 applies, and what fails of "
        "it. Hardware isn't weighed.",
        f"Statics. One that is open: {OPEN_ELEMENT.source}. The child's weight: {CHILD.source}; "
        "how it is put on is ASTM F2057-23, 9.2.3 (from memory).",
        f"{_FIX} An interlock that lets one drawer open at a time, a deeper base, or weight in the "
        "bottom help too: the finding says how much. Keep heavy things in the lowest drawers.",
        _TIPS,
    ),
    Rule.TIPS_WITH_DOORS_OPEN: Meaning(
        "A unit with doors tips over when they stand open",
        "As with drawers, with the doors open at 90 degrees, or as far as they open.",
        f"Statics. One that is open: {OPEN_ELEMENT.source}. The child's weight: {CHILD.source}; "
        "how it is put on is ASTM F2057-23, 9.2.3 (from memory).",
        f"{_FIX} A deeper base or weight in the bottom help too: the finding says how much.",
        _TIPS,
    ),
    Rule.TIPS_UNTIL_FIXED: Meaning(
        "A unit that is built in tips over until it is fixed",
        "It is tried empty, with its drawers out and its doors open, and with a pull of "
        f"{PULL.value:.1f} kg at its top.",
        f"Statics; the pull is that of {PULL.source}.",
        "Have it held until it is fixed; put in drawers, doors and contents after that.",
        "It falls on whoever fits it.",
    ),
    Rule.FLOOR_LOAD: Meaning(
        "With all that is in it, the unit loads the floor more than houses are designed for",
        "Its weight and all that it is to carry, over what it covers of the floor. Books to the "
        "ceiling come to three times what a floor is designed for all over; along a wall that "
        "carries the joists that is often no matter, in the middle of a span it may be.",
        f"For a spec in mm: {HOUSE_FLOORS['mm'].source}. In inches: {HOUSE_FLOORS['in'].source}.",
        "Ask a structural engineer, above all about timber joists and old houses.",
        "A floor that is overloaded sags, cracks what hangs from it, and may come down. Local "
        "codes come first.",
    ),
    Rule.HANGING: Meaning(
        "A unit hangs on the wall",
        "Its weight is told so that fixings can be chosen; what is put into it comes on top, and "
        "is often more.",
        "Weight by arithmetic, from densities of the materials. How much a fixing takes only its "
        "maker and the wall can say.",
        "Screw it into studs or masonry, with fixings whose makers give several times that load; "
        "have it held while it is fixed.",
        "It can come off the wall with all that is in it. Local codes come first.",
    ),
    Rule.HEAVY_SHEET: Meaning(
        "A sheet as bought is too heavy for one person",
        "A whole sheet, or the largest board at hand, is lifted from the floor to the bench, on "
        "edge. What is longer than 2.4 m takes two people whatever it weighs.",
        _LIFTING,
        "Lift it together, with a carrier or on a truck, or have it cut where it is bought.",
        "Backs and fingers.",
    ),
    Rule.HEAVY_PART: Meaning(
        "A part, a door or a drawer is too heavy for one person",
        "Its weight is told, finished and without hardware; as first cut it weighs more. Parts are "
        "lifted to the bench, drawers and doors to where they go.",
        _LIFTING,
        "Have so many people lift it, or lift it by machine; hold glass with suction lifters.",
        "Backs and fingers.",
    ),
    Rule.HEAVY_UNIT: Meaning(
        "The whole unit is too heavy for one person",
        "Its weight is told, empty and without hardware, and what is left without all that comes "
        "off. More than four people can hardly take hold of it.",
        _LIFTING,
        "Assemble it where it will stand, or bring it in on skates or a sack truck.",
        "Backs and fingers; stairs are harder than either guide knows.",
    ),
    Rule.CARRYING_IN: Meaning(
        "The unit is carried in",
        "The way in is worked out for its size. Stairs, and what people can hold, are not.",
        PRACTICE,
        "Walk the way empty first, agree on who leads, and take doors off their hinges.",
        "Turning a large piece on stairs and round corners crushes hands and backs; keep nobody "
        "below the load.",
    ),
    Rule.LOAD_BEARING_WALL: Meaning(
        "The wall round the opening may carry load",
        "Nothing that was read says whether it does. It is told with every opening.",
        PRACTICE,
        "Never widen or notch an opening without a structural engineer's word.",
        "A wall that is cut wrongly comes down. Local codes come first.",
    ),
    Rule.LEAD_AND_ASBESTOS: Meaning(
        "Old paint and boards may hold lead or asbestos",
        "Paint may hold lead; boards, tiles and textured coatings may hold asbestos. It is told "
        "with every opening, as nothing that was read says how old the building is.",
        PRACTICE,
        "Have them tested before sanding, cutting or drilling.",
        "Both harm whoever breathes them, years later. Local rules come first.",
    ),
    Rule.CABLES_AND_PIPES: Meaning(
        "There may be cables and pipes in the walls",
        "It is told with every opening: what is fixed to a wall is drilled for.",
        PRACTICE,
        "Find them before you drill; leave wiring, gas and water to licensed people.",
        "Shock, gas, flooding. Local codes come first.",
    ),
    Rule.SERVICES_IN_CUT_OUT: Meaning(
        "A socket or pipe stays where the unit is cut out round it",
        "The unit makes room for it; what is done to it is another's trade.",
        PRACTICE,
        "Leave it in reach, turn the supply off before you cut or drill near it, and leave work on "
        "it to a licensed electrician or plumber.",
        "Shock, gas, flooding. Local codes come first.",
    ),
    Rule.GLASS: Meaning(
        "Glass is built in",
        "Glass that breaks in a door or a low shelf cuts.",
        PRACTICE,
        "Order it as safety glass, toughened or laminated, cut, drilled and polished by the "
        "glazier.",
        "Cuts, some of them grave. Local codes say where it must be safety glass.",
    ),
    Rule.DUST: Meaning(
        "Cutting sheet material makes fine dust",
        "It is told wherever the unit has sheets; the dust of solid wood harms as well.",
        PRACTICE,
        "Extract it at the saw, and wear a mask that fits.",
        "Fine dust harms the lungs.",
    ),
}
