"""Rules about what can hurt someone, however well a unit is set out."""

from __future__ import annotations

from rodwright.checks.meanings.meaning import PRACTICE, Meaning
from rodwright.checks.rules import Rule
from rodwright.checks.safety import TWO_PERSON_LIFT
from rodwright.checks.tipping import TEST_LOAD, TIPPING_HEIGHT

_LIFTING = (
    f"{TWO_PERSON_LIFT:g} kg is the guideline figure for men lifting close to the body at waist "
    "height in HSE INDG143 (UK; from memory). It is no safe limit; for many people and most lifts "
    "it is less."
)

MEANINGS = {
    Rule.TALL_AND_FREESTANDING: Meaning(
        "A tall unit stands free",
        f"From {TIPPING_HEIGHT:g} mm on, a child who climbs it or a hand that leans on an open "
        "door can bring it down.",
        "Common practice; ASTM F2057 and EN 14749 are concerned with it (from memory).",
        "Fix it to the wall with brackets or straps that suit the wall. If it hangs there, write "
        "`hung: true`.",
        "Furniture that tips over kills children. Local codes come first.",
    ),
    Rule.TIPS_WITH_DRAWERS_OUT: Meaning(
        "A unit with drawers tips over when they are drawn out",
        "Moments about the front feet, with every drawer drawn right out and empty: the weight on "
        "the front of one that tips it. What lies in drawers makes it worse.",
        f"Statics. ASTM F2057 asked for {TEST_LOAD:g} kg (50 lb) on one open drawer until 2023; "
        "see EN 14749 too (from memory).",
        "Fix it to the wall with brackets or straps that suit the wall; keep heavy things in the "
        "lowest drawers.",
        "Furniture that tips over kills children. Local codes come first.",
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
    Rule.HEAVY_PART: Meaning(
        "A part is too heavy for one person",
        "Its weight is told, finished; as first cut it weighs more.",
        _LIFTING,
        "Have two people lift it, or lift it by machine.",
        "Backs and fingers.",
    ),
    Rule.HEAVY_UNIT: Meaning(
        "The whole unit is too heavy for one person",
        "Its weight is told, empty and without hardware.",
        _LIFTING,
        "Assemble it where it will stand, or lift it with enough people.",
        "Backs and fingers.",
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
