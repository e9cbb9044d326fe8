"""What may be said of finishes, and what a maker is told of the rest."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.specs import spec_from
from rodwright.problems import ProblemsError
from rodwright.wishes.finish import CoatSpec
from rodwright.wishes.reading.files import parse_spec

PLAIN = (
    "title: Box\n"
    "size: {width: 600, height: 800, depth: 300}\n"
    "stock: {ply: {kind: sheet, material: birch plywood, thickness: 18}}\n"
    "carcass: {stock: ply}\n"
)
SIZE = "size: {width: 600, height: 800, depth: 300}\n"
PAINT = CoatSpec(kind="paint", colour="#2e8b57")


def said(text: str, **more: str) -> dict[str, CoatSpec]:
    """What a spec says of finishes, by place and stock."""
    finish = spec_from(SIZE + text, **more).finish
    assert finish is not None
    return dict(finish.said())


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("finish: oil", {"everything": CoatSpec(kind="oil")}),
        ("finish: {kind: oil, sheen: gloss}", {"everything": CoatSpec(kind="oil", sheen="gloss")}),
        ("finish: {kind: paint, colour: SeaGreen}", {"everything": PAINT}),
        ("finish: {kind: paint, colour: '#2E8B57'}", {"everything": PAINT}),
        (
            "finish: {shelves: none, ply: oil}",
            {"shelves": CoatSpec(kind="none"), "ply": CoatSpec(kind="oil")},
        ),
        ("finish: {ash: {kind: paint, colour: seagreen}}", {"ash": PAINT}),
        ("finish: {}", {}),
    ],
)
def test_a_word_keys_or_places(text: str, expected: dict[str, CoatSpec]) -> None:
    assert said(text) == expected


def test_in_inches_nothing_is_lost() -> None:
    assert said("finish: {ply: oil, doors: paint}\nunit: in\n") == {
        "doors": CoatSpec(kind="paint"),
        "ply": CoatSpec(kind="oil"),
    }


WRONG = [
    (
        "finish: oyl",
        9,
        "`finish` takes `oil`, `lacquer`, `paint`, `stain` or `none`; `oyl` isn't one of them",
        "Did you mean `oil`?",
    ),
    (
        "finish: {ply: oyl}",
        15,
        "`ply` takes `oil`, `lacquer`, `paint`, `stain` or `none`; `oyl` isn't one of them",
        "Did you mean `oil`?",
    ),
    (
        "finish: {kind: paint, colour: whte}",
        31,
        "`colour`: `whte` isn't a colour that is known here",
        "Did you mean `white`? Write `#rrggbb` in quotes, or a colour word of CSS such as "
        "`seagreen`.",
    ),
    (
        "finish: {kind: paint, colour: '#12345'}",
        31,
        "`colour`: `#12345` isn't a colour that is known here",
        "Write `#rrggbb` in quotes, or a colour word of CSS such as `seagreen`.",
    ),
    (
        "finish: {kind: paint, colour: {shown: whte, name: sage}}",
        39,
        "`shown`: `whte` isn't a colour that is known here",
        "Did you mean `white`? Write `#rrggbb` in quotes, or a colour word of CSS such as "
        "`seagreen`.",
    ),
    (
        "finish: {kind: paint, colr: red}",
        23,
        "`colr` isn't a key of `finish`; did you mean `colour`?",
        "Write `colour:`.",
    ),
    (
        "finish: {doors: {kind: oil, colour: red}}",
        37,
        "`colour`: `colour` says nothing about `kind: oil`",
        "Leave it out, or write `kind: paint` or `kind: stain`.",
    ),
    (
        "finish: {doors: {kind: none, sheen: matt}}",
        37,
        "`sheen`: `sheen` says nothing about `kind: none`",
        "Leave it out, or change `kind`.",
    ),
    (
        "finish: {doors: {knd: oil}}",
        18,
        "`knd` isn't a key of `doors`; did you mean `kind`?",
        "Write `kind:`.",
    ),
]


@pytest.mark.parametrize(("text", "column", "message", "remedy"), WRONG)
def test_what_is_wrong_is_told_where_it_stands(
    text: str, column: int, message: str, remedy: str
) -> None:
    with pytest.raises(ProblemsError) as error:
        parse_spec(PLAIN + text + "\n", Path("box.yaml"))
    (problem,) = error.value.problems
    assert (problem.message, problem.remedy) == (message, remedy)
    assert (problem.line, problem.column) == (5, column)


def test_a_colour_that_became_a_comment_is_told() -> None:
    """In YAML a bare `#` begins a comment, and nothing would be left of the colour."""
    with pytest.raises(ProblemsError, match=r"colour`: no colour is written here\n  Put `#rrggbb`"):
        parse_spec(PLAIN + "finish:\n  kind: paint\n  colour: #2e8b57\n", Path("box.yaml"))
