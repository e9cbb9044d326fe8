"""Whatever a file holds, reading it gives a spec or problems with their places."""

from pathlib import Path

from hypothesis import given, settings
from hypothesis import strategies as st

from rodwright.problems import ProblemsError
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.reading.files import parse_spec

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))
TEXTS = [path.read_text(encoding="utf-8") for path in MODELS]
TOKENS = [
    *"[]{}:,&*!|>'\"%@`#-?~<=\t\n \\/09.+_aéx\x85\u2028\x00\x07\ufeff",
    *("<<: ", "*a", "&a ", "!!int ", "!x ", "---\n", "...\n", "%YAML 1.1\n", "? ", "- ", " |\n"),
    *("9" * 50, "1e400", "0x", "0b", ".inf", "true", "null", "no", "2024-01-01", "'3/4 in'"),
    *("title: ", "width: ", "stock:\n  ", "kind: board", "shelves: {count: 2}", "\n  ", "\n    "),
]


def assert_read_or_refused(text):
    try:
        spec_file = parse_spec(text, "fuzz.yaml")
    except ProblemsError as error:
        assert error.problems
        lines = len(text.splitlines()) + 1
        for problem in error.problems:
            assert problem.file == "fuzz.yaml"
            assert 1 <= problem.line <= lines
            assert problem.column >= 1
            assert problem.message
            assert problem.remedy
            assert "Input should" not in problem.message
    else:
        assert isinstance(spec_file.spec, UnitSpec)


@st.composite
def mutated_texts(draw):
    """A model's text, or some lines of it, with a few accidents in it."""
    lines = draw(st.sampled_from(TEXTS)).splitlines(keepends=True)
    if draw(st.booleans()):
        start = draw(st.integers(0, len(lines) - 1))
        lines = lines[start : start + draw(st.integers(1, 12))]
    for _ in range(draw(st.integers(1, 4))):
        accident = draw(st.sampled_from(["lose", "move", "insert", "cut", "swap"]))
        at = draw(st.integers(0, max(len(lines) - 1, 0)))
        if not lines:
            break
        line = lines[at]
        column = draw(st.integers(0, len(line) - 1)) if line else 0
        if accident == "lose":
            del lines[at]
        elif accident == "move":
            lines.insert(draw(st.integers(0, len(lines))), lines.pop(at))
        elif accident == "insert":
            lines[at] = line[:column] + draw(st.sampled_from(TOKENS)) + line[column:]
        elif accident == "cut":
            lines[at] = line[:column] + line[column + draw(st.integers(1, 8)) :]
        else:
            lines[at] = line[:column] + line[column + 1 : column + 2] + line[column : column + 1]
            lines[at] += line[column + 2 :]
    return "".join(lines)


@given(mutated_texts())
@settings(max_examples=400)
def test_a_spec_with_accidents(text):
    assert_read_or_refused(text)


@given(st.lists(st.sampled_from(TOKENS), max_size=30).map("".join))
@settings(max_examples=400)
def test_bits_of_yaml_in_any_order(text):
    assert_read_or_refused(text)


@given(st.text(max_size=60))
@settings(max_examples=200)
def test_any_text(text):
    assert_read_or_refused(text.encode(errors="ignore").decode())
