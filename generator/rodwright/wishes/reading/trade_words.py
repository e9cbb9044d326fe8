"""Words of the trade that the spec language doesn't use, and the one that it uses instead.

British and American workshops call the same thing by different names; whoever writes one of
these is told the key or the choice by name.  All are common words of the trade, no source.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import TypeVar

Value = TypeVar("Value")

KEYS: dict[str, tuple[str, str]] = {
    "adjustable": ("", "interior.shelves.fixed: false"),
    "adjustable_shelf": ("", "interior.shelves.fixed: false"),
    "adjustable_shelves": ("", "interior.shelves.fixed: false"),
    "apron": ("between", "interior.between: {kind: rail}"),
    "back_panel": ("", "back"),
    "band": ("", "edging"),
    "banding": ("", "edging"),
    "baseboard": ("skirting", "cutouts: [{kind: skirting}]"),
    "bay": ("columns", "interior.columns"),
    "beading": ("", "lipping"),
    "benchtop": ("", "worktop"),
    "box": ("", "carcass"),
    "cabinet": ("", "carcass"),
    "carcase": ("", "carcass"),
    "carries": ("load loads", "loads"),
    "case": ("", "carcass"),
    "cavity": ("", "opening"),
    "contents": ("load loads", "loads"),
    "counter": ("", "worktop"),
    "countertop": ("", "worktop"),
    "crown": ("", "cornice"),
    "crown_molding": ("", "cornice"),
    "crown_moulding": ("", "cornice"),
    "dado": ("", "interior.shelves.ends: housed"),
    "dadoes": ("", "interior.shelves.ends: housed"),
    "dado_depth": ("housing_depth", "carcass.housing_depth"),
    "e_modulus": ("stiffness", ""),
    "deflection": ("limit", "loads.limit"),
    "drywall": ("wall", "wall: plasterboard"),
    "edge_banding": ("", "edging"),
    "edge_tape": ("", "edging"),
    "edgeband": ("", "edging"),
    "edgebanding": ("", "edging"),
    "elasticity": ("stiffness", ""),
    "filler": ("", "scribes"),
    "filler_strip": ("", "scribes"),
    "glide": ("slides", ""),
    "hardware": ("handle", ""),
    "infill": ("", "scribes"),
    "infill_panel": ("", "scribes"),
    "joinery": ("ends corners", "carcass.corners"),
    "joint": ("ends corners", "carcass.corners"),
    "kick": ("toe_space", "base: {kind: toe_board}"),
    "kickboard": ("", "base: {kind: plinth}"),
    "knob": ("handle", ""),
    "leveler": ("", "base: {kind: levellers}"),
    "leveller": ("", "base: {kind: levellers}"),
    "loading": ("load loads", "loads"),
    "loose_shelf": ("", "interior.shelves.fixed: false"),
    "loose_shelves": ("", "interior.shelves.fixed: false"),
    "material": ("stock", ""),
    "modulus_of_elasticity": ("stiffness", ""),
    "modulus_of_rupture": ("bending_strength", ""),
    "moe": ("stiffness", ""),
    "molding": ("", "cornice"),
    "mor": ("bending_strength", ""),
    "moulding": ("", "cornice"),
    "mullion": ("mid_stiles", "face_frame.mid_stiles"),
    "muntin": ("mid_stiles", "face_frame.mid_stiles"),
    "nailer": ("between", "interior.between: {kind: rail}"),
    "niche": ("", "opening"),
    "nosing": ("", "lipping"),
    "number": ("count", ""),
    "outlet": ("", "cutouts: [{kind: socket}]"),
    "panelling": ("panel", ""),
    "partition": ("columns", "interior.columns"),
    "peg": ("holes", "interior.shelves.holes"),
    "peg_hole": ("holes", "interior.shelves.holes"),
    "pin_hole": ("holes", "interior.shelves.holes"),
    "plinth": ("", "base: {kind: plinth}"),
    "pull": ("handle", ""),
    "pull_out": ("drawers", "interior.drawers"),
    "pullout": ("drawers", "interior.drawers"),
    "qty": ("count", ""),
    "quantity": ("count", ""),
    "rabbet": ("", "back.fixing: rebated"),
    "reveal": ("gap", ""),
    "runner": ("slides", ""),
    "sag": ("limit", "loads.limit"),
    "scribe_strip": ("", "scribes"),
    "shelf_pin": ("holes", "interior.shelves.holes"),
    "skirting": ("", "cutouts: [{kind: skirting}]"),
    "skirting_board": ("skirting", "cutouts: [{kind: skirting}]"),
    "slider": ("slides", ""),
    "solid_edge": ("", "lipping"),
    "stretcher": ("between", "interior.between: {kind: rail}"),
    "style": ("kind", ""),
    "thk": ("thickness", ""),
    "toe_kick": ("toe_space", "base: {kind: toe_board}"),
    "toekick": ("toe_space", "base: {kind: toe_board}"),
    "type": ("kind", ""),
    "upright": ("columns", "interior.columns"),
    "vertical": ("columns", "interior.columns"),
    "weight": ("load loads", "loads"),
    "wood": ("stock", ""),
    "youngs_modulus": ("stiffness", ""),
}
"""Keys that a maker may look for.  For each: the keys that are meant where one of them may stand,
and what is meant elsewhere, from the top of the spec."""

CHOICES: dict[str, str] = {
    '"': "in",
    "adjustable_feet": "levellers",
    "barrel_nut_fitting": "barrel_nut",
    "baseboard": "skirting",
    "biscuit": "biscuited biscuits",
    "block": "masonry",
    "blockwork": "masonry",
    "boards": "hard",
    "bolted": "knock-down",
    "brick": "masonry",
    "butt_joint": "butted",
    "cam": "cam knock-down",
    "cam_fitting": "cam knock-down",
    "cam_lock": "cam knock-down",
    "ceiling": "top",
    "concealed": "cup",
    "concrete": "masonry hard",
    "dado": "housed",
    "dadoed": "housed",
    "dadoes": "housed",
    "drywall": "plasterboard",
    "european": "cup",
    "exterior": "outside",
    "five_piece": "framed",
    "flat_panel": "slab",
    "floating_tenon": "loose-tenoned",
    "flush": "inset",
    "foot": "levellers legs",
    "frame_and_panel": "framed",
    "full_overlay": "overlay",
    "garage": "unheated",
    "gypsum_board": "plasterboard",
    "half_overlay": "overlay",
    "hardwood": "board",
    "housing": "housed",
    "inch": "in",
    "inches": "in",
    "kick": "toe_board",
    "kickboard": "plinth",
    "knockdown": "knock-down",
    "lay_on": "overlay",
    "let_in": "rebated inset",
    "leveler": "levellers",
    "loose_tenon": "loose-tenoned",
    "lumber": "board",
    "millimeter": "mm",
    "millimetre": "mm",
    "mortise_and_tenon": "loose-tenoned tongued",
    "mortised": "loose-tenoned",
    "nailer": "rail",
    "outdoors": "outside",
    "outlet": "socket",
    "panel": "sheet",
    "plank": "board",
    "plate": "sheet",
    "plug": "socket",
    "ply": "sheet",
    "plywood": "sheet",
    "pocket": "pocket-screwed",
    "pocket_hole": "pocket-screwed",
    "pocket_screw": "pocket-screwed",
    "quarter_sawn": "quarter",
    "quartersawn": "quarter",
    "rabbet": "rebated",
    "rabbeted": "rebated",
    "receptacle": "socket",
    "right_through": "upright",
    "rug": "carpet",
    "screw": "screwed",
    "shaker": "framed",
    "side_mount": "side",
    "slip_tenon": "loose-tenoned",
    "solid": "board",
    "solid_wood": "board",
    "spline": "loose_tongue",
    "stone": "masonry hard",
    "stretcher": "rail",
    "stud": "studs",
    "switch": "socket",
    "tile": "hard",
    "timber": "board studs hard",
    "toe_kick": "toe_board",
    "tongue_and_groove": "tongued",
    "trenched": "housed",
    "under_mount": "under",
    "undermount": "under",
    "veneered": "sheet",
}
"""Choices that a maker may look for, and those that are meant, of which one may stand there."""


@dataclass(frozen=True, slots=True)
class Meant:
    """What a word of the trade is called in a spec.

    ``under`` is what it stands in, from the top: empty at the top, None where the word is
    written.
    """

    name: str
    under: str | None


def key_for(word: str, known: Sequence[str]) -> Meant | None:
    """The key that a word of the trade means, where the keys ``known`` may stand; None for a word
    that isn't one."""
    here, way = _look_up(KEYS, word) or ("", "")
    keys, colon, value = way.partition(":")
    under, _, name = keys.rpartition(".")
    for each in (*here.split(), name):
        if each in known:
            return Meant(each if each in here.split() else f"{name}{colon}{value}", None)
    return Meant(f"{name}{colon}{value}", under) if way else None


def choice_for(word: str, choices: Sequence[str]) -> str | None:
    """The choice that a word of the trade means; None where it means none of these."""
    meant = (_look_up(CHOICES, word) or "").split()
    return next((choice for choice in meant if choice in choices), None)


def _look_up(table: Mapping[str, Value], word: str) -> Value | None:
    """What stands for a word in any case, with hyphens or spaces, in the singular or plural."""
    plain = re.sub(r"[\s_-]+", "_", word.strip().lower())
    return table.get(plain) or table.get(plain.removesuffix("s"))
