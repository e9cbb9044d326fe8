from pathlib import Path

import pytest

from rodwright.problems import Problem, ProblemsError
from rodwright.wishes.reading.files import parse_spec, read_spec

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))

SPEC = """\
title: Niche shelf
size: {width: 800, height: 900, depth: 250}
stock:
  case: {kind: sheet, material: birch plywood, thickness: 18}
carcass: {stock: case}
interior:
  shelves: {count: 3}
"""


def test_a_spec_is_read_from_its_file(tmp_path):
    path = tmp_path / "niche.yaml"
    path.write_text(SPEC, encoding="utf-8")
    spec_file = read_spec(path)
    assert spec_file.path == path
    assert spec_file.spec.title == "Niche shelf"
    assert spec_file.spec.size.width == 800.0
    assert spec_file.spec.interior.shelves.count == 3
    assert read_spec(str(path)).spec == spec_file.spec


def test_inches_and_millimetres_of_one_piece_are_one_spec():
    inches = SPEC.replace("title", "unit: in\ntitle", 1)
    for mm in ("800", "900", "250", "18"):
        inches = inches.replace(f": {mm}", f": {mm} mm")
    assert parse_spec(inches, "a").spec.size == parse_spec(SPEC, "a").spec.size


def test_problems_of_reading_and_of_validation_come_together():
    text = SPEC.replace("depth: 250", "width: 3, dept: 250").replace("count: 3", "count: !x 3")
    with pytest.raises(ProblemsError) as caught:
        parse_spec(text, "niche.yaml")
    assert [str(problem).splitlines()[0] for problem in caught.value.problems] == [
        "niche.yaml:2:33: `width` is written twice: here and in line 2, column 8",
        "niche.yaml:2:43: `dept` isn't a key of `size`; did you mean `depth`?",
        "niche.yaml:7:20: tags (`!` and a name) aren't used in a spec",
    ]


def test_problems_found_later_are_given_their_places():
    spec_file = parse_spec(SPEC, "niche.yaml")
    elsewhere = Problem("m", "r", ("title",), "other.yaml", 9, 9)
    with pytest.raises(ProblemsError) as caught, spec_file.located():
        raise ProblemsError(
            [
                Problem("shelves", "r", ("interior", "shelves", "count")),
                Problem("a default", "r", ("carcass", "corners")),
                Problem("no such group", "r", ("back", "stock")),
                elsewhere,
            ]
        )
    assert [
        (problem.message, problem.file, problem.line, problem.column)
        for problem in caught.value.problems
    ] == [
        ("no such group", "niche.yaml", 1, 1),
        ("a default", "niche.yaml", 5, 1),
        ("shelves", "niche.yaml", 7, 20),
        ("m", "other.yaml", 9, 9),
    ]


def test_what_is_no_problem_of_the_spec_passes_through():
    with pytest.raises(KeyError), parse_spec(SPEC, "niche.yaml").located():
        raise KeyError("x")


@pytest.mark.parametrize(
    "path",
    MODELS,
    ids=lambda path: path.name,
)
def test_every_model_reads(path):
    spec_file = read_spec(path)
    assert spec_file.spec.title
    assert spec_file.places.of_key(("title",)).column == 1


@pytest.mark.parametrize("items", [
    "{width: x}, ", "{shelves: {count: 0}}, ", "{width: 1, wid: 2}, ", "{doors: {hinge: [1]}}, ",
])  # fmt: skip
def test_of_very_many_problems_the_first_are_told(items):
    text = SPEC.replace("shelves: {count: 3}", f"columns: [{items * 1500}]")
    with pytest.raises(ProblemsError) as caught:
        parse_spec(text, "niche.yaml")
    problems = caught.value.problems
    assert len(problems) == 101
    assert {problem.line for problem in problems} == {7}
    columns = [problem.column for problem in problems]
    assert columns == sorted(columns)
    assert problems[-1].message == "there is more that is wrong, from here on"
    assert "100 problems above" in problems[-1].remedy


def test_faults_in_many_variants_are_told_of_the_nearest_one_each():
    stock = ", ".join(f"s{number}: {{kind: sheet}}" for number in range(40))
    text = SPEC.replace("stock:\n", f"stock:\n  {stock.replace(', ', chr(10) + '  ')}\n", 1)
    with pytest.raises(ProblemsError) as caught:
        parse_spec(text, "niche.yaml")
    assert len(caught.value.problems) == 80
    assert all("needs `" in problem.message for problem in caught.value.problems)
