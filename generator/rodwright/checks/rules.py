"""The names of the rules that findings go by: short, and the same in every edition.

The words of a finding are free to change; its rule's name is not.
"""

from __future__ import annotations

from enum import StrEnum


class Rule(StrEnum):
    """What a finding is about."""

    # The opening, and the unit in it
    SMALL_OPENING = "small-opening"
    TOO_FEW_WIDTHS = "too-few-widths"
    TOO_FEW_HEIGHTS = "too-few-heights"
    CONTRADICTORY_READINGS = "contradictory-readings"
    NO_LEVEL_TAKEN = "no-level-taken"
    LARGER_THAN_OPENING = "larger-than-opening"
    MAY_NOT_GO_IN = "may-not-go-in"
    UNUSUAL_GAP = "unusual-gap"
    OPEN_GAP = "open-gap"
    FRAME_OVERLAP_SHORT = "frame-overlap-short"
    FRAME_OVERLAP_UNSURE = "frame-overlap-unsure"
    SCRIBE_ALLOWANCE_SHORT = "scribe-allowance-short"
    BATTEN_WANTED = "batten-wanted"
    BASE_CANNOT_LEVEL = "base-cannot-level"
    PLINTH_PACKED_UP = "plinth-packed-up"
    WAY_TOO_TIGHT = "way-too-tight"

    # Workings in one piece
    OUTSIDE_BLANK = "outside-blank"
    RIGHT_THROUGH = "right-through"
    NEARLY_THROUGH = "nearly-through"
    DEEPER_THAN_HALF = "deeper-than-half"
    DEEP_HOUSING = "deep-housing"
    THIN_TONGUE = "thin-tongue"
    HOLE_NEAR_EDGE = "hole-near-edge"
    BORES_MEET = "bores-meet"
    THIN_WOOD_BETWEEN_BORES = "thin-wood-between-bores"
    BORE_RUNS_INTO_CUT = "bore-runs-into-cut"
    POCKET_HOLE_BREAKS_OUT = "pocket-hole-breaks-out"
    MITRES_CROSS = "mitres-cross"
    BEVEL_PAST_SAW = "bevel-past-saw"

    # What pieces are cut from
    STOCK_THICKNESS = "stock-thickness"
    LARGER_THAN_SHEET = "larger-than-sheet"
    LONGER_THAN_BOARDS = "longer-than-boards"
    WIDER_THAN_BOARDS = "wider-than-boards"

    # Joints, and what holds
    THIN_DOWELS = "thin-dowels"
    SCREWS_IN_END_GRAIN = "screws-in-end-grain"
    JOINT_OVERLOADED = "joint-overloaded"
    FIXINGS_DRAWN = "fixings-drawn"
    FIXING_NEAR_EDGE = "fixing-near-edge"
    PILOT_TOO_NARROW = "pilot-too-narrow"
    PILOT_TOO_WIDE = "pilot-too-wide"
    DRAWER_OVERLOADED = "drawer-overloaded"
    DRAWER_FRONT_LOOSE = "drawer-front-loose"
    DOOR_TOO_HEAVY = "door-too-heavy"
    NO_ROOM_FOR_DRIVER = "no-room-for-driver"
    NOTHING_HOLDS_IT = "nothing-holds-it"
    FRAME_ONLY_GLUED = "frame-only-glued"
    BACK_SEAM_UNFIXED = "back-seam-unfixed"
    NOTHING_BRACES_IT = "nothing-braces-it"
    UPRIGHT_BUCKLES = "upright-buckles"
    FOOT_CRUSHES = "foot-crushes"
    OPEN_BACK = "open-back"
    SWAYS_TOO_FAR = "sways-too-far"
    BACK_BUCKLES = "back-buckles"
    BACK_FIXINGS_GIVE = "back-fixings-give"
    NOTHING_TO_HANG_BY = "nothing-to-hang-by"
    PLASTERBOARD_ALONE = "plasterboard-alone"
    WALL_NOT_SAID = "wall-not-said"
    TOO_FEW_FIXINGS_FIT = "too-few-fixings-fit"
    HUNG_BACK_GIVES = "hung-back-gives"
    HEAVIER_THAN_TESTED = "heavier-than-tested"
    BACK_TO_BE_GLUED = "back-to-be-glued"
    HELD_ACROSS_GRAIN = "held-across-grain"
    NO_ROOM_TO_SWELL = "no-room-to-swell"

    # Fronts, shelves and frames
    SAGS_TOO_FAR = "sags-too-far"
    BREAKS = "breaks"
    PINS_TEAR_OUT = "pins-tear-out"
    STIFFNESS_UNKNOWN = "stiffness-unknown"
    NOTHING_UNDER_ITS_END = "nothing-under-its-end"
    FRONT_SWELLS_SHUT = "front-swells-shut"
    DOOR_STRIKES = "door-strikes"
    DOORS_STRIKE_EACH_OTHER = "doors-strike-each-other"
    DRAWER_STRIKES = "drawer-strikes"
    DRAWER_STRIKES_DOOR = "drawer-strikes-door"
    NEAR_FLOOR = "near-floor"
    NO_CATCH = "no-catch"
    OPEN_BELOW_BOTTOM = "open-below-bottom"
    LIPPING_AT_EASED_EDGE = "lipping-at-eased-edge"
    SHELF_AT_SLANT = "shelf-at-slant"
    SHELF_CANNOT_GO_IN = "shelf-cannot-go-in"

    # Solids
    COLLISION = "collision"
    JOINT_APART = "joint-apart"
    CLEARANCE_SHORT = "clearance-short"

    # What can hurt someone
    TALL_AND_FREESTANDING = "tall-and-freestanding"
    TIPS_WITH_DRAWERS_OUT = "tips-with-drawers-out"
    TIPS_WITH_DOORS_OPEN = "tips-with-doors-open"
    TIPS_UNTIL_FIXED = "tips-until-fixed"
    HANGING = "hanging"
    FLOOR_LOAD = "floor-load"
    HEAVY_SHEET = "heavy-sheet"
    HEAVY_PART = "heavy-part"
    HEAVY_UNIT = "heavy-unit"
    CARRYING_IN = "carrying-in"
    LOAD_BEARING_WALL = "load-bearing-wall"
    LEAD_AND_ASBESTOS = "lead-and-asbestos"
    CABLES_AND_PIPES = "cables-and-pipes"
    SERVICES_IN_CUT_OUT = "services-in-cut-out"
    GLASS = "glass"
    DUST = "dust"
