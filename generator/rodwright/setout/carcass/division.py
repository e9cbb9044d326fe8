"""Dividing a length: given lengths, shares of what is left, and shelf positions."""

from __future__ import annotations

from collections.abc import Sequence

from rodwright.setout.setting import Setting
from rodwright.wishes.fields import Share
from rodwright.wishes.models import ShelvesSpec

TOLERANCE = 0.05
"""How far (mm) given lengths may miss the whole: below what a tape shows, above what
rounding to 1/64 in adds up to over a few members."""


def divide(
    setting: Setting,
    whole: float,
    between: float,
    wishes: Sequence[float | Share],
    names: tuple[str, str],
) -> tuple[float, ...]:
    """Clear lengths (mm) of the spaces that ``whole`` is divided into.

    ``between`` is the thickness of what stands between each two; ``names`` are the spaces
    and the things between in the maker's words.  Shares take what is left over by the
    given lengths.  A sum that doesn't fit is noted at the setting's place and nothing returned.
    """
    say = setting.say
    spaces, dividers = names
    taken = between * (len(wishes) - 1)
    given = sum(wish for wish in wishes if not isinstance(wish, Share))
    shares = sum(wish.count for wish in wishes if isinstance(wish, Share))
    left = whole - taken - given
    adds_up = f"the {spaces} add up to {say(given)}, with {say(taken)} of {dividers} between them"
    if shares and left <= 0:
        setting.refuse(
            f"{adds_up}; of {say(whole)} nothing is left to share",
            f"Make the given lengths at least {setting.at_least(-left)} smaller.",
        )
        return ()
    if not shares and abs(left) > TOLERANCE:
        much = f"{say(abs(left))} too {'little' if left > 0 else 'much'}"
        setting.refuse(
            f"{adds_up}: {say(given + taken)} in a space of {say(whole)}, {much}",
            "Change a length, or write `1 share` for one of them.",
        )
        return ()
    per_share = left / shares if shares else 0.0
    return tuple(wish.count * per_share if isinstance(wish, Share) else wish for wish in wishes)


def shelf_heights(
    setting: Setting, clear: float, thickness: float, wish: ShelvesSpec
) -> tuple[float, ...]:
    """Heights (mm) of the shelves' undersides above the floor of a space, from the bottom up.

    ``clear`` is the space's clear height.  Equal openings share what the shelves leave;
    equal centres divide the clear height by the number of spaces (common practice, no
    source: positions are then marked from one end).  What doesn't fit is noted.
    """
    say = setting.say
    given = [name for name in ("count", "at", "openings") if getattr(wish, name) is not None]
    if len(given) != 1:
        said = "none of them" if not given else " and ".join(f"`{name}`" for name in given)
        setting.refuse(
            f"shelves need one of `count`, `at` and `openings`; there is {said}",
            "Give exactly one.",
        )
        return ()
    if wish.openings is not None:
        sizes = divide(
            setting.at("openings"), clear, thickness, wish.openings, ("openings", "shelves")
        )
        undersides, height = [], 0.0
        for size in reversed(sizes[1:]):
            height += size
            undersides.append(height)
            height += thickness
        return tuple(undersides)
    if wish.at is not None:
        heights = tuple(sorted(wish.at))
    else:
        assert wish.count is not None
        if wish.spacing == "openings":
            opening = (clear - wish.count * thickness) / (wish.count + 1)
            heights = tuple(
                opening + number * (opening + thickness) for number in range(wish.count)
            )
        else:
            pitch = clear / (wish.count + 1)
            heights = tuple(pitch * (number + 1) - thickness / 2 for number in range(wish.count))
    gaps = [
        upper - lower
        for lower, upper in zip(
            (0.0, *(height + thickness for height in heights)), (*heights, clear), strict=True
        )
    ]
    if min(gaps) <= 0 and wish.at is not None:
        _tell_misplaced(setting.at("at"), clear, thickness, wish.at)
        return ()
    if min(gaps) <= 0:
        setting.at("count").refuse(
            f"{len(heights)} shelves {say(thickness)} thick don't fit there in a clear height of "
            f"{say(clear)}",
            "Take fewer shelves or move them apart.",
        )
        return ()
    return heights


def _tell_misplaced(setting: Setting, clear: float, thickness: float, at: Sequence[float]) -> None:
    """Name each shelf that runs into the one below it or into the top of its space."""
    say = setting.say
    order = sorted(range(len(at)), key=at.__getitem__)
    for below, number in zip((None, *order), order, strict=False):
        if below is not None and at[below] + thickness >= at[number]:
            setting.at(number).refuse(
                f"the shelf at {say(at[number])} runs into the one at {say(at[below])}, which is "
                f"{say(thickness)} thick",
                "Move them apart.",
            )
        if at[number] + thickness >= clear:
            setting.at(number).refuse(
                f"the shelf at {say(at[number])}, {say(thickness)} thick, doesn't fit under "
                f"{say(clear)} of clear height",
                "Put it lower.",
            )
