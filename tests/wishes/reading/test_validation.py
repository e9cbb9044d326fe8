from enum import StrEnum
from typing import Annotated, Literal

import pytest
from pydantic import BaseModel, ConfigDict, Field, ValidationInfo, field_validator, model_validator
from pydantic_core import PydanticCustomError

from rodwright.problems import ProblemsError
from rodwright.wishes.fields import Length, LengthOrShare, LengthOrZero, Share, SpecModel
from rodwright.wishes.reading.documents import read_document
from rodwright.wishes.reading.validation import validate


class Strict(BaseModel):
    model_config = ConfigDict(extra="forbid", strict=True, use_attribute_docstrings=True)


class Finish(StrEnum):
    OILED = "oiled"
    WAXED = "waxed"


class Sheet(Strict):
    kind: Literal["sheet"]
    size: Annotated[list[Length], Field(min_length=2, max_length=2)] | None = None


class Board(Strict):
    kind: Literal["board"]
    width: Length


class Readings(Strict):
    bottom: Length | None = None
    top: Length | None = None

    @model_validator(mode="after")
    def _some(self):
        if self.bottom is None and self.top is None:
            raise PydanticCustomError(
                "readings", "there is no reading", {"remedy": "Measure at the bottom."}
            )
        return self


class Case(Strict):
    """A case."""

    title: Annotated[str, Field(min_length=1, max_length=10)]
    """What it is called."""
    unit: Literal["mm", "in"] = "mm"
    count: Annotated[int, Field(ge=1, le=9)] = 1
    ratio: Annotated[float, Field(lt=1, multiple_of=0.25)] = 0.5
    fixed: bool = True
    corners: Literal["butted", "housed", "mitred"] = "butted"
    colour: Annotated[str, Field(pattern="^#[0-9a-f]{6}$")] | None = None
    """A colour as `#rrggbb`."""
    finish: Annotated[Finish, Field(strict=False)] = Finish.OILED
    width: Readings | Length | None = None
    depth: Annotated[LengthOrZero, Field(le=600)] = 0.0
    tall: LengthOrShare | None = None
    stock: dict[str, Annotated[Sheet | Board, Field(discriminator="kind")]] = {}
    shelves: list["Case"] = []
    at: list[Length] = []
    names: Annotated[dict[str, str], Field(max_length=1)] = {}

    @field_validator("names")
    @classmethod
    def _no_oak(cls, value):
        if "oak" in value:
            raise ValueError("oak stains; name another wood")
        return value


def read(text, model=Case):
    document = read_document(text, "a.yaml")
    return validate(model, document.data, document.places, "a.yaml")


def problems_of(text):
    with pytest.raises(ProblemsError) as caught:
        read(text)
    return caught.value.problems


def test_a_model_comes_out():
    case = read(
        "title: x\nwidth: {top: 3 in}\nat: [1, 2 cm]\nstock: {a: {kind: board, width: 40}}\n"
        "shelves: [{title: y, width: 12}]\ntall: 2 shares\n"
    )
    assert case.width == Readings(top=76.2)
    assert case.at == [1.0, 20.0]
    assert case.stock == {"a": Board(kind="board", width=40.0)}
    assert case.shelves[0].width == 12.0
    assert case.tall == Share(2.0)


def test_the_unit_of_the_file_is_that_of_its_bare_numbers():
    case = read("title: x\nunit: in\nwidth: 23 5/8\ndepth: 1\nat: [2 mm, 2]\n")
    assert case.width == 600.075
    assert case.depth == 25.4
    assert case.at == [2.0, 50.8]


ONE_PROBLEM = [
    (
        "count: 1",
        (1, 1),
        "the spec needs `title`",
        "Add `title:` and text. What it is called.",
    ),
    (
        "title: x\ncuont: 3",
        (2, 1),
        "`cuont` isn't a key of the spec; did you mean `count`?",
        "Write `count:`.",
    ),
    (
        "title: x\nwidth: {zzz: 3, top: 4}",
        (2, 9),
        "`zzz` isn't a key of `width`",
        "The keys here are `bottom` and `top`.",
    ),
    (
        "title: x\nwidth: {top: 19,5}",
        (2, 17),
        "`top: 19,5` has a decimal comma",
        "Write a decimal point, not a comma: `top: 19.5`.",
    ),
    (
        "titel: x",
        (1, 1),
        "`titel` isn't a key of the spec; did you mean `title`?",
        "Write `title:`.",
    ),
    (
        "title: x\nwidth: {top:1209}",
        (2, 9),
        "a space is missing after `top:`",
        "Write `top: 1209`.",
    ),
    (
        "title: 12",
        (1, 8),
        "`title` takes text; `12` is a number",
        'Put it in quotes: `"12"`.',
    ),
    (
        "title: true",
        (1, 8),
        "`title` takes text; `true` is written here",
        'Put it in quotes: `"true"`.',
    ),
    ("title: [x]", (1, 1), "`title` takes text; a list is written here", "Write text."),
    ("title:", (1, 7), "`title` takes text; nothing is written here", "Write text."),
    ("title: ''", (1, 8), "`title` is empty", "Write some text."),
    (
        "title: abcdefghijklm",
        (1, 8),
        "`title` takes at most 10 characters; there are 13",
        "Write at most 10 characters.",
    ),
    (
        "title: x\nunit: inch",
        (2, 7),
        "`unit` takes `mm` or `in`; `inch` is called `in` here",
        "Write `in`.",
    ),
    (
        "title: x\ncount: three",
        (2, 8),
        "`count` takes a whole number; `three` is text",
        "Write a whole number.",
    ),
    (
        "title: x\ncount: '3'",
        (2, 8),
        "`count` takes a whole number; `3` is text",
        "Take the quotes and anything but digits and a point off it.",
    ),
    (
        "title: x\ncount: 2.5",
        (2, 8),
        "`count` takes a whole number; `2.5` isn't one",
        "Write a whole number.",
    ),
    (
        "title: x\ncount:",
        (2, 7),
        "`count` takes a whole number; nothing is written here",
        "Write a whole number, or take `count:` out.",
    ),
    ("title: x\ncount: 0", (2, 8), "`count` has to be at least 1; it is `0`", "larger number"),
    ("title: x\ncount: 10", (2, 8), "`count` has to be at most 9; it is `10`", "smaller number"),
    ("title: x\nratio: 1", (2, 8), "`ratio` has to be less than 1; it is `1`", "smaller number"),
    ("title: x\nratio: 0.3", (2, 8), "`ratio` has to be a multiple of 0.25", "different number"),
    (
        "title: x\nfixed: yes",
        (2, 8),
        "`fixed` takes `true` or `false`; `yes` is text",
        "Write `true` or `false`.",
    ),
    (
        "title: x\ncorners: miterd",
        (2, 10),
        "`corners` takes `butted`, `housed` or `mitred`; `miterd` isn't one of them",
        "Did you mean `mitred`?",
    ),
    (
        "title: x\ncorners: 3",
        (2, 10),
        "`corners` takes `butted`, `housed` or `mitred`; `3` is a number",
        "Write one of them.",
    ),
    (
        "title: x\nfinish: painted",
        (2, 9),
        "`finish` takes `oiled` or `waxed`; `painted` isn't one of them",
        "Write one of them.",
    ),
    (
        "title: x\ncolour: red",
        (2, 9),
        "`colour` isn't in the right form; `red` is text",
        "A colour as `#rrggbb`.",
    ),
    (
        "title: x\nwidth: wide",
        (2, 8),
        "`width`: `wide` can't be read as a length",
        "",
    ),
    (
        "title: x\nwidth: [3]",
        (2, 1),
        "`width` takes a length or the keys `bottom` and `top`; a list is written here",
        "",
    ),
    (
        "title: x\nwidth: {top: '12,5'}",
        (2, 14),
        "`top`: `12,5` has a comma in it",
        "",
    ),
    ("title: x\nwidth: {}", (2, 1), "`width`: there is no reading", "Measure at the bottom."),
    ("title: x\nwidth: 0", (2, 8), "`width` has to be more than 0; it is `0`", "larger length"),
    (
        "title: x\ndepth: 61 cm",
        (2, 8),
        "`depth` has to be at most 600 mm; it is `61 cm`",
        "smaller length",
    ),
    (
        "title: x\nunit: in\ndepth: 24",
        (3, 8),
        "`depth` has to be at most 23 5/8 in; it is `24`",
        "smaller length",
    ),
    ("title: x\ntall: 0 shares", (2, 7), "`tall`: `0 shares` can't be read as a share", "1 share"),
    (
        "title: x\nstock: {a: {kind: bord, width: 3}}",
        (2, 19),
        "`kind` takes `sheet` or `board`; `bord` isn't one of them",
        "Did you mean `board`?",
    ),
    (
        "title: x\nstock: {a: {width: 3}}",
        (2, 9),
        "`a` needs `kind`",
        "Add `kind:` and `sheet` or `board`.",
    ),
    (
        "title: x\nstock:\n  a: 3",
        (3, 6),
        "`a` takes keys, among them `kind` with `sheet` or `board`; `3` is a number",
        "",
    ),
    ("title: x\nstock: {sheet: {kind: board}}", (2, 9), "`sheet` needs `width`", "a length"),
    (
        "title: x\nstock: {a: {kind: board, width: 3, size: [1, 2]}}",
        (2, 36),
        "`size` isn't a key of `a` as it is; it goes with `kind: sheet`",
        "Take it out, or write `kind: sheet`.",
    ),
    (
        "title: x\nstock: {a: {kind: sheet, size: [1]}}",
        (2, 26),
        "`size` takes at least 2 items; there is 1",
        "Write at least 2 items.",
    ),
    (
        "title: x\nshelves:\n  - title: y\n    at:\n      - 3\n      - no\n",
        (6, 9),
        "item 2 of `at`: `no` can't be read as a length",
        "",
    ),
    (
        "title: x\nshelves:\n  - {count: 3}\n",
        (3, 5),
        "item 1 of `shelves` needs `title`",
        "Add `title:`",
    ),
    ("title: x\nnames: {a: b, c: d}", (2, 1), "`names` takes at most 1 key; there are 2", ""),
    ("title: x\nnames: {oak: b}", (2, 1), "`names`: oak stains; name another wood", ""),
    ("title: x\nshelves: {a: 1}", (2, 1), "`shelves` takes a list", "Write a list"),
    ("title: x\nshelves: [3]", (2, 11), "item 1 of `shelves` takes the keys `title`", "keys"),
]


@pytest.mark.parametrize(("text", "place", "message", "remedy"), ONE_PROBLEM)
def test_one_mistake_is_one_problem_in_plain_words(text, place, message, remedy):
    (problem,) = problems_of(text)
    assert message in problem.message
    assert remedy in problem.remedy
    assert (problem.file, problem.line, problem.column) == ("a.yaml", *place)


@pytest.mark.parametrize("text", [case[0] for case in ONE_PROBLEM])
def test_nothing_of_the_machinery_shows(text):
    (problem,) = problems_of(text)
    said = f"{problem.message} {problem.remedy}"
    for jargon in ("Input", "valid ", "http", "pydantic", "_type", "dict", "string", "None", "Len"):
        assert jargon not in said


def test_everything_is_told_at_once_in_the_order_of_the_file():
    problems = problems_of(
        "zzz: 1\ncount: x\nshelves:\n  - {title: y, corners: q}\nstock: {a: {kind: board}}\n"
    )
    assert [(problem.line, problem.where) for problem in problems] == [
        (1, ("title",)),
        (1, ("zzz",)),
        (2, ("count",)),
        (4, ("shelves", 0, "corners")),
        (5, ("stock", "a", "width")),
    ]


def test_a_list_that_is_too_short_only_for_bad_items_is_not_blamed():
    problems = problems_of("title: x\nstock: {a: {kind: sheet, size: [1, x]}}\n")
    assert [problem.where for problem in problems] == [("stock", "a", "size", 1)]


def test_two_readings_wrong_in_one_variant_are_both_told():
    problems = problems_of("title: x\nwidth: {top: a, botom: 3}\n")
    assert [problem.where for problem in problems] == [("width", "top"), ("width", "botom")]


class Whole(SpecModel):
    """Validators see the unit of the file."""

    unit: Literal["mm", "in"] = "mm"
    size: Length

    @field_validator("size", mode="after")
    @classmethod
    def _keep(cls, value: float, info: ValidationInfo) -> float:
        assert info.context == {"unit": "in"}
        return value


def test_validators_find_the_unit_in_their_context():
    assert read("unit: in\nsize: 2", Whole).size == 50.8
