"""Inside the carcass: what each space is filled with, and what it wants in its front."""

from __future__ import annotations

from dataclasses import replace

from rodwright.setout.carcass.columns_and_rows import lay_between_rows, lay_columns
from rodwright.setout.carcass.shelves import lay_shelves
from rodwright.setout.carcass.spaces import behind, whole_space
from rodwright.setout.inside import Space
from rodwright.setout.notes import Contents, DoorSpace, DrawerSpace, Said
from rodwright.setout.setting import Setting
from rodwright.wishes.doors import DoorsSpec
from rodwright.wishes.models import SpaceSpec


def set_out_interior(setting: Setting) -> None:
    """Lay dividers and shelves on the bench, and note what else their spaces ask for.

    Ends to be jointed, front edges, mid members, rows of holes, drawers and doors are noted for
    the steps that come to them.
    """
    space = whole_space(setting.rod, setting.carcass)
    _fill(setting.at("interior"), space, setting.spec.interior)


def _fill(setting: Setting, space: Space, wish: SpaceSpec, load: Said | None = None) -> None:
    """Fill a space; ``load`` is what the spaces round it are said to carry."""
    if wish.load is not None:
        load = Said(wish.load, setting.at("load").where)
    if wish.continuous_grain:
        setting.notes.continuous.append(setting.where)
    if wish.doors is not None:
        space = _behind_doors(setting.at("doors"), space, wish.doors)
    given = [
        name
        for name in ("columns", "rows", "shelves", "drawers")
        if getattr(wish, name) is not None
    ]
    if len(given) > 1:
        setting.at(given[1]).refuse(
            f"a space has either {' or '.join(f'`{name}`' for name in given)}, not both",
            "Put one of them into the columns or rows of the other.",
        )
    elif wish.columns is not None:
        columns = lay_columns(setting, space, wish)
        for number, (each, column) in enumerate(zip(columns, wish.columns, strict=False)):
            _fill(setting.at("columns", number), each, column, load)
    elif wish.rows is not None:
        rows = lay_between_rows(setting, space, wish)
        for number, (each, row) in enumerate(zip(rows, wish.rows, strict=False)):
            _fill(setting.at("rows", number), each, row, load)
    else:
        setting.notes.contents.append(Contents(space, wish, setting.where, load))
        _furnish(setting, space, wish)


def _furnish(setting: Setting, space: Space, wish: SpaceSpec) -> None:
    """Lay what a space that isn't divided holds on the bench, or note it."""
    if wish.shelves is not None:
        here = setting.at("shelves")
        with here.bench.wished_at(here.where):
            lay_shelves(here, space, wish.shelves)
    elif wish.drawers is not None:
        here = setting.at("drawers")
        if space.closed or _is_framed_round(here, space):
            setting.notes.drawers.append(DrawerSpace(space, wish.drawers, here.where))


def _behind_doors(setting: Setting, space: Space, wish: DoorsSpec) -> Space:
    """Note doors before a space, and give the space that is left behind them."""
    inside = setting.where[:-1]
    if any(inside[: len(other.where) - 1] == other.where[:-1] for other in setting.notes.doors):
        setting.refuse(
            "doors stand before this space already, with all that is round it",
            "Take `doors` out, here or there.",
        )
        return space
    stock = setting.at("stock").stock(wish.stock)
    if stock is None or not _is_framed_round(setting, space):
        return space
    setting.notes.doors.append(DoorSpace(space, wish, setting.where))
    thickness = wish.thickness if wish.thickness is not None else stock.thickness
    plates = None
    if wish.hinge.kind == "cup":
        rear = thickness if wish.hung == "inset" else 0.0
        plates = space.front.plane + rear + wish.hinge.plate
    if wish.hung == "overlay":
        return replace(space, covered=True, plates=plates)
    least = behind(wish, space.front.plane, thickness, setting.sizes)
    return replace(space, setback=max(space.setback, least), closed=True, plates=plates)


def _is_framed_round(setting: Setting, space: Space) -> bool:
    """Whether a front in a face frame has a member at every edge; what lacks one is noted."""
    # Whichever of two sides is named first, a unit and its mirror image are told the same.
    for edge in sorted(space.front.bare, key=("low", "high", "left", "right").index):
        key = "mid_stiles" if edge in ("left", "right") else "mid_rails"
        said = {"left": "left of", "right": "right of", "low": "below", "high": "above"}[edge]
        setting.refuse(
            f"the face frame has no member {said} this front",
            f"Add `face_frame.{key}`, and `rails: both`.",
        )
        return False
    return True
