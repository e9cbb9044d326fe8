"""`rodwright span` at the prompt."""

from __future__ import annotations

import json
import re

import pytest
from typer.testing import CliRunner

from rodwright.lengths import parse_length
from rodwright_cli.main import app


def said(*words: str, code: int = 0) -> str:
    found = CliRunner().invoke(app, ["span", *words], env={"COLUMNS": "500"})
    assert found.exit_code == code, found.output
    return found.output


def test_the_greatest_span() -> None:
    lines = said("birch plywood", "18", "--load", "books").splitlines()
    assert lines[0] == "Greatest span: 941.2 mm"
    assert lines[1] == (
        "birch plywood, 18 mm thick, 300 mm deep, ends pinned, under 35.0 kg (37.2 kg/m, "
        "124 kg/m2). Sag limits it."
    )
    assert re.fullmatch(
        r"Sag at once 2\.84 mm; sag after 10 years 4\.71 mm \(at most 4\.71 mm\); bending stress "
        r"4\.07 N/mm2 \(at most 23\.5 N/mm2\)\.",
        lines[2],
    )
    assert lines[3].startswith("Taken for granted: its depth is assumed (--depth); its ends ")
    assert re.fullmatch(r"Sources: \d+, \d+ of them from memory.*; --formulas gives .*", lines[4])
    assert lines[5].startswith("This is no structural engineer's work")
    assert len(lines) == 6


def test_formulas_are_told_when_asked_for() -> None:
    text = said("birch plywood", "18", "--load", "books", "--formulas")
    assert text.startswith("Greatest span: 941.2 mm\n")
    assert "(from memory)" in text and "its depth is assumed (--depth)" in text
    assert "5 w L^4/(384 E I) + w L^2/(8 G A')" in text
    assert "This is no structural engineer's work" in text
    assert "5 w L^4" not in said("birch plywood", "18", "--load", "books")


def test_a_thickness_is_told_alike_where_it_is_told_twice() -> None:
    """Rounded up, for less than what is needed doesn't hold."""
    lines = said("oak", "--span", "36 in", "--load", "25 lb/ft").splitlines()
    told = lines[0].removeprefix("Least thickness: ")
    assert lines[1].startswith(f"oak, {told} thick")


def test_in_inches() -> None:
    text = said("oak", "3/4 in", "--span", "36 in", "--depth", "10")
    assert "oak, 3/4 in thick, 10 in deep, ends pinned over 36 in." in text
    assert "lb/ft" in text.splitlines()[0]


@pytest.mark.parametrize("span", [f"{inches} in" for inches in range(24, 34)])
def test_the_least_thickness_is_told_alike_and_never_too_little(span: str) -> None:
    words = ("birch plywood", "--span", span, "--load", "40 lb/ft", "--depth", "12 in")
    least, shelf = said(*words).splitlines()[:2]
    thick = least.removeprefix("Least thickness: ")
    assert shelf.startswith(f"birch plywood, {thick} thick, ")
    record = json.loads(said(*words, "--json"))
    assert parse_length(thick, "in") >= record["thickness"]


def test_the_least_thickness_and_whether_it_holds() -> None:
    assert said("mdf", "--span", "800", "--load", "books").startswith("Least thickness: 29.8 mm\n")
    assert said("mdf", "30", "--span", "800", "--load", "books").startswith("It holds\n")
    text = said("mdf", "18", "--span", "800", "--load", "books", code=1)
    assert text.startswith("It doesn't hold\n")
    assert "Sag at once " in text
    assert "  would do: a span of 495.4 mm: 2.48 mm (sag after 10 years)\n" in text
    assert "  would do: 29.8 mm thick: " in text


def test_json() -> None:
    document = json.loads(said("mdf", "18", "--load", "30 kg", "--json"))
    assert document["total"] == 30
    assert document["span"] > 0
