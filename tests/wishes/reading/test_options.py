"""Options of a spec: each is a whole spec, and what is wrong is told at its own lines."""

from __future__ import annotations

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rodwright.checks import check_parts
from rodwright.checks.findings import Severity
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import ProblemsError
from rodwright.setout import set_out, set_out_options
from rodwright.unit import Role
from rodwright.wishes.reading.files import parse_spec, read_spec
from rodwright.wishes.reading.options import laid_over, option_specs

PLAIN = """title: Box
size: {width: 600, height: 800, depth: 300}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  oak: {kind: board, material: european oak, thickness: 20}
carcass: {stock: ply}
interior: {shelves: 2}
finish: {everything: oil, carcass: {kind: paint, colour: seagreen}}
options:
"""


def told(options: str) -> list[tuple[int | None, int | None, str]]:
    """What is said against a spec with these options: line, column and message."""
    with pytest.raises(ProblemsError) as error:
        set_out_options(parse_spec(PLAIN + options, "box.yaml"))
    assert all(each.file == "box.yaml" for each in error.value.problems)
    return [(each.line, each.column, each.message) for each in error.value.problems]


def test_the_spec_itself_comes_first() -> None:
    spec = parse_spec(PLAIN + "  - {name: Oak, change: {carcass: {stock: oak}}}\n", "box.yaml")
    (name, first), (oak, option) = option_specs(spec)
    assert (name, oak) == ("Box", "Oak")
    assert first is spec
    assert option.spec.carcass.stock == "oak"
    assert option.spec.size == spec.spec.size
    assert not option.spec.options


def test_an_option_is_the_spec_that_it_makes() -> None:
    """What is written out whole gives the same parts."""
    option = """  - name: Other
    change:
      title: Case
      interior: {shelves: {count: 3}}
      finish: {carcass: {colour: ivory}, everything: null}
"""
    whole = (
        PLAIN.replace("options:\n", "")
        .replace("title: Box", "title: Case")
        .replace("shelves: 2", "shelves: 3")
        .replace(
            "everything: oil, carcass: {kind: paint, colour: seagreen}",
            "carcass: {kind: paint, colour: ivory}",
        )
    )
    (_, unit), (_, other) = set_out_options(parse_spec(PLAIN + option, "box.yaml"))
    assert other == set_out(parse_spec(whole, "box.yaml"))
    assert len(other.parts) == len(unit.parts) + 1


DATA = st.recursive(
    st.integers() | st.text(max_size=3),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.sampled_from("abc"), inner),
    max_leaves=8,
)
MAPPINGS = st.dictionaries(st.sampled_from("abc"), DATA)


@given(MAPPINGS, MAPPINGS)
def test_what_is_laid_over_is_all_there(whole: dict[str, Any], change: dict[str, Any]) -> None:
    made = laid_over(whole, change)
    assert laid_over(made, change) == made
    assert laid_over(made, {}) == made
    assert set(made) == set(whole) | set(change)
    for key, value in change.items():
        if not isinstance(value, dict):
            assert made[key] == value
        elif isinstance(whole.get(key), dict):
            assert made[key] == laid_over(whole[key], value)


@given(MAPPINGS)
def test_null_takes_a_key_out(whole: dict[str, Any]) -> None:
    assert laid_over(whole, dict.fromkeys(whole)) == {}
    assert laid_over(whole, {"d": {"e": None}}) == {**whole, "d": {}}


@pytest.mark.parametrize(
    ("options", "expected"),
    [
        (
            "  - {name: A, change: {finish: oyl}}\n",
            [
                (
                    10,
                    32,
                    "option `A`: `finish` takes `oil`, `lacquer`, `paint`, `stain` or `none`; "
                    "`oyl` isn't one of them",
                )
            ],
        ),
        (
            "  - name: A\n    change:\n      worktops: oil\n",
            [(12, 7, "option `A`: `worktops` isn't a key of the spec; did you mean `worktop`?")],
        ),
        (  # what the spec itself has wrong with it now is told at the change
            "  - name: A\n    change: {stock: {ply: null}}\n",
            [(11, 5, "option `A`: no stock is called `ply`")],
        ),
        (
            "  - {name: A, change: {carcass: null}}\n",
            [(10, 33, "option `A`: the spec needs `carcass`")],
        ),
        (
            "  - {name: A, change: {size: {width: 9}}}\n",
            [
                (
                    10,
                    38,
                    "option `A`: the width is too small for a unit: 9 mm, where at least 20 mm "
                    "makes sense; is this in mm?",
                )
            ],
        ),
        (  # it is a spec, but makes no unit
            "  - {name: A, change: {finish: {doors: oil}}}\n",
            [(10, 40, "option `A`: this unit has no doors to be finished")],
        ),
        (
            "  - {name: A, change: {unit: in}}\n  - {name: B, change: {options: []}}\n",
            [
                (10, 30, "option `A`: an option doesn't change `unit`"),
                (11, 24, "option `B`: an option doesn't change `options`"),
            ],
        ),
        (
            "  - {name: A, change: {hung: true}}\n"
            "  - {name: ' a', change: {carcass: {stock: oak}}}\n"
            "  - {name: BOX, change: {finish: oil}}\n",
            [
                (11, 12, "` a` is the name of option 1 too"),
                (12, 12, "`BOX` is the name of the title too"),
            ],
        ),
        (
            "  - {name: A, change: {title: Other, interior: {shelves: {count: 2}}}}\n"
            "  - {name: B, change: {carcass: {stock: oak}}}\n"
            "  - {name: C, change: {carcass: {stock: oak, corners: housed}}}\n",
            [
                (10, 15, "option `A`: what it makes is the same as `Box`"),
                (12, 15, "option `C`: what it makes is the same as `B`"),
            ],
        ),
        (
            "  - {name: A, change: {interior: {shelfs: 3}}}\n",
            [
                (
                    10,
                    35,
                    "option `A`: `shelfs` isn't a key of `interior`; did you mean `shelves`, which "
                    "is said too?",
                )
            ],
        ),
        (
            "  - {name: Plain, change: {hung: true, first_option: B}}\nfirst_option: plain\n",
            [
                (10, 12, "`Plain` is the name of `first_option` too"),
                (10, 54, "option `Plain`: an option doesn't change `first_option`"),
            ],
        ),
        (
            "  []\nfirst_option: Plain\n",
            [(11, 15, "`first_option` says nothing where there are no `options`")],
        ),
        (
            "  - {nam: A, change: {}}\n",
            [(10, 6, "`nam` isn't a key of item 1 of `options`; did you mean `name`?")],
        ),
        (
            "  - {name: A, change: [oil]}\n",
            [(10, 15, "`change` takes a part of a spec; a list is written here")],
        ),
    ],
)
def test_what_is_wrong_is_told_at_its_line(
    options: str, expected: list[tuple[int, int, str]]
) -> None:
    assert told(options) == expected


def test_what_stays_of_the_spec_can_be_taken_out() -> None:
    with pytest.raises(ProblemsError) as error:
        parse_spec(PLAIN + "  - {name: A, change: {finish: {carcass: {kind: oil}}}}\n", "box.yaml")
    (problem,) = error.value.problems
    assert problem.message == "option `A`: `colour`: `colour` says nothing about `kind: oil`"
    assert problem.remedy.endswith("In an option `colour: null` takes the spec's own out.")


def test_what_the_spec_itself_is_called() -> None:
    text = PLAIN + "  - {name: Box, change: {carcass: {stock: oak}}}\n"
    spec = parse_spec(text + "first_option: {name: In ply, note: As drawn.}\n", "box.yaml")
    assert [name for name, _ in option_specs(spec)] == ["In ply", "Box"]


def test_what_of_the_spec_doesnt_go_with_an_option_is_taken_out_there() -> None:
    """Framed doors have no edges to be edged: the spec's own edging is what the option is to do
    without, and the spec stays as it is."""
    doors = "doors: {kind: framed, stock: oak, panel: {stock: thin}}"
    text = (
        PLAIN.replace("shelves: 2", "doors: 1").replace(
            "  oak:", "  thin: {kind: sheet, material: mdf, thickness: 6}\n  oak:"
        )
        + f"  - {{name: A, change: {{interior: {{{doors}}}}}}}\n"
        + "edging: {material: birch veneer, thickness: 0.6, edges: [doors]}\n"
    )
    with pytest.raises(ProblemsError) as error:
        set_out_options(parse_spec(text, "box.yaml"))
    (problem,) = error.value.problems
    assert (problem.line, problem.where[0]) == (11, "edging")
    assert problem.remedy.endswith("In an option `edging: null` takes the spec's own out.")
    assert problem.remedy.count("In an option") == 1


def test_a_key_written_twice_in_an_option_is_told() -> None:
    assert told("  - {name: A, change: {finish: oil, finish: paint}}\n") == [
        (10, 37, "`finish` is written twice: here and in line 10, column 24")
    ]


@pytest.mark.parametrize("name", model_names())
def test_options_of_ready_models_are_sound(name: str) -> None:
    _, *options = set_out_options(read_spec(model_path(name)))
    for _, unit in options:
        assert all(part.finish is not None for part in unit.parts if part.role is not Role.RUNNER)
        assert all(each.severity is not Severity.ERROR for each in check_parts(unit))
