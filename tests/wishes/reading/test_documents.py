import contextlib
import errno
import json
import os
import string
import threading
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from ruamel.yaml import YAML

from rodwright.problems import ProblemsError
from rodwright.wishes.reading.documents import read_document, read_text
from rodwright.wishes.reading.places import Place

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))

SPEC = """\
# A comment.
title: Alcove
size: {width: 800, height: 32 in}
stock:
  case:
    kind: sheet
    size:
      - 2440
      - 1220.5
"""


def problems_of(text):
    with pytest.raises(ProblemsError) as caught:
        read_document(text, "a.yaml")
    return caught.value.problems


def test_data_and_places_of_a_small_spec():
    document = read_document(SPEC, "a.yaml")
    assert document.data == {
        "title": "Alcove",
        "size": {"width": 800, "height": "32 in"},
        "stock": {"case": {"kind": "sheet", "size": [2440, 1220.5]}},
    }
    assert document.problems == ()
    values, keys = document.places.values, document.places.keys
    assert values[()] == (2, 1)
    assert values[("title",)] == (2, 8)
    assert values[("size", "width")] == (3, 15)
    assert keys[("size", "height")] == (3, 20)
    assert values[("stock", "case")] == keys[("stock", "case")] == (5, 3)
    assert values[("stock", "case", "size", 1)] == (9, 9)


def test_the_place_of_what_is_not_written_is_that_of_what_it_would_stand_in():
    places = read_document(SPEC, "a.yaml").places
    assert places.of_value(("stock", "case", "grain")) == Place(5, 3)
    assert places.of_value(("stock", "case", "size", 7, "x")) == Place(7, 5)
    assert places.of_value(("carcass",)) == Place(2, 1)
    assert places.of_key(("stock", "case", "kind")) == Place(6, 5)
    assert places.of_key(("stock", "case", "size", 0)) == Place(8, 9)


# YAML 1.2.2, section 10.3.2 (core schema): what plain scalars mean.  Dates are no part of it.
@pytest.mark.parametrize(
    ("written", "value"),
    [
        ("no", "no"),
        ("on", "on"),
        ("yes", "yes"),
        ("true", True),
        ("False", False),
        ("null", None),
        ("~", None),
        ("", None),
        ("0o14", 12),
        ("0x1A", 26),
        ("012", 12),
        ("-5", -5),
        ("+5", 5),
        ("1.50", 1.5),
        ("12e03", 12000.0),
        ("6:30", "6:30"),
        ("2024-05-01", "2024-05-01"),
        ("=", "="),
        ("3/4 in", "3/4 in"),
        ('23 5/8"', '23 5/8"'),
        ("'12'", "12"),
        ('"¾″"', "¾″"),
        ("!!str 12", "12"),
    ],
)
def test_scalars_mean_what_yaml_1_2_says(written, value):
    document = read_document(f"a: {written}\n", "a.yaml")
    assert document.data == {"a": value}
    assert type(document.data["a"]) is type(value)
    assert document.problems == ()


def test_a_plain_alias_stands_for_its_value():
    document = read_document("a: &wide {width: 3}\nb: *wide\n", "a.yaml")
    assert document.data == {"a": {"width": 3}, "b": {"width": 3}}
    assert document.places.values[("b", "width")] == (1, 18)


def test_a_byte_order_mark_is_no_part_of_the_text(tmp_path):
    path = tmp_path / "bom.yaml"
    path.write_bytes(b"\xef\xbb\xbftitle: x\n")
    assert read_document(read_text(path), "bom.yaml").data == {"title": "x"}


@pytest.mark.parametrize(
    ("text", "place", "said"),
    [
        ("", (1, 1), "the file is empty"),
        ("# nothing yet\n", (1, 1), "the file is empty"),
        ("---\n", (1, 1), "the file is empty"),
        ("- a\n", (1, 1), "doesn't hold keys and values"),
        ("text\n", (1, 1), "doesn't hold keys and values"),
        ("title: a: b\n", (1, 9), "a `:` can't stand here"),
        ("title: A\n unit: mm\n", (2, 6), "a `:` can't stand here"),
        ("title: 'Potter's rack'\n", (1, 16), "text goes on after its closing quote"),
        ('title: "Alcove\nunit: mm\n', (1, 8), "the quote that begins here is never closed"),
        ('width: "23 5/8""\n', (1, 16), "never closed"),
        ("a:\n    b: 3\n  c: 4\n", (3, 3), "isn't indented like the ones it belongs with"),
        ("a:\n\tb: 3\n", (2, 1), "a tab is used to indent this line"),
        ("a:\n  b: 3\n\tc: 3\n", (3, 1), "a tab is used to indent this line"),
        ("a: 1\tb: 2\n", (1, 5), "a tab stands where only spaces may"),
        ("a: [1, 2\nb: mm\n", (1, 4), "the `[` here isn't closed"),
        ("a: {b: 1, c: 2\nd: mm\n", (1, 4), "the `{` here isn't closed"),
        ("a: {b: [1, 2}\n", (1, 13), "the closing `]` is missing"),
        ("a: [1, 2]]\n", (1, 10), "this `]` closes nothing"),
        ("a: {b: 1}}\n", (1, 10), "this `}` closes nothing"),
        ("a: @foo\n", (1, 4), "a value can't begin with `@`"),
        ("a: %foo\n", (1, 4), "a value can't begin with `%`"),
        ("a: *foo\n", (1, 4), "`*` in front of a name"),
        ("a: &\n", (1, 4), "have a special meaning"),
        ("a: !foo! bar\n", (1, 4), "have a special meaning"),
        ("a: 1\n---\nb: 2\n", (2, 1), "a second document begins here"),
        ("# x\n%YAML 1.1\n---\na: no\n", (2, 1), "a line that starts with `%`"),
        ("a: 1\nb:2\nc: 3\n", (2, 1), "a `:` and a space are missing"),
        ('a: "C:\\dir"\n', (1, 8), "a `\\` in double quotes"),
        ("a: |x\n b\n", (1, 5), "the text after `|`"),
        ("a:\n- 1\nb: 2\n- 3\n", (4, 1), "a list item can't stand here"),
        ("- a\nb: 1\n", (2, 1), "doesn't line up with the list items above"),
        ("a: - 1\n", (1, 4), "a list item can't stand here"),
        ("a: \x07\n", (1, 4), "a character here that can't be in a spec (U+0007)"),
        ("a: &a [*a]\n", (1, 4), "nested too deeply"),
        ("a: " + "[" * 100, (1, 43), "nested too deeply"),
    ],
)
def test_what_stops_the_reading_is_told_with_its_place(text, place, said):
    (problem,) = problems_of(text)
    assert said in problem.message
    assert (problem.line, problem.column) == place
    assert problem.file == "a.yaml"
    assert problem.remedy
    assert str(problem).startswith(f"a.yaml:{place[0]}:{place[1]}: ")


@pytest.mark.parametrize(
    ("text", "place", "where", "said"),
    [
        ("a: 1\nb: 2\na: 3\n", (3, 1), ("a",), "written twice: here and in line 1, column 1"),
        ("a: {b: 1, b: 2}\n", (1, 11), ("a", "b"), "written twice"),
        ("<<: {a: 1}\n", (1, 1), (), "merge keys"),
        ("a: !!python/object:os.system 3\n", (1, 4), ("a",), "tags"),
        ("a: !cut {b: 3}\n", (1, 4), ("a",), "tags"),
        ("a: !!int abc\n", (1, 4), ("a",), "isn't a number"),
        ("a: !!map abc\n", (1, 4), ("a",), "tags"),
        ("a: {4: 1}\n", (1, 5), ("a", "4"), "a key is always text"),
        ("true: 1\n", (1, 1), ("true",), "a key is always text"),
        ("? [a]\n: 1\n", (1, 3), (), "this key isn't a name"),
        (": 1\n", (1, 1), (), "this key isn't a name"),
        ("a: .inf\n", (1, 4), ("a",), "isn't a number"),
        ("a: .nan\n", (1, 4), ("a",), "isn't a number"),
        ("a: " + "9" * 6000, (1, 4), ("a",), "isn't a number"),
    ],
)
def test_what_does_not_stop_the_reading_is_collected(text, place, where, said):
    (problem,) = read_document(text, "a.yaml").problems
    assert said in problem.message
    assert (problem.line, problem.column) == place
    assert problem.where == where


def test_the_first_of_two_equal_keys_counts_and_the_rest_is_read_on():
    document = read_document("a: 1\na: 2\nb: 3\nb: 4\nc: 5\n", "a.yaml")
    assert document.data == {"a": 1, "b": 3, "c": 5}
    assert [problem.line for problem in document.problems] == [2, 4]


def test_aliases_cannot_blow_up():
    lines = ["a0: &a0 [1, 1, 1, 1, 1, 1, 1, 1, 1, 1]"]
    lines += [f"a{i}: &a{i} [{', '.join([f'*a{i - 1}'] * 10)}]" for i in range(1, 12)]
    (problem,) = problems_of("\n".join(lines))
    assert "unfolds into too many values" in problem.message
    assert problem.line is not None


@pytest.mark.parametrize("item", ["1, ", "*x, ", "{}, ", "[], "])
def test_a_text_with_too_many_values_is_left_where_that_is_clear(item):
    """The place shows that the reading stopped there instead of at the end of the text."""
    head = "a: &x 1\nb: ["
    (problem,) = problems_of(head + item * 200_000 + "1]\n")
    assert "more than 20,000 keys and values" in problem.message
    assert problem.line == 2
    assert 20_000 < problem.column < 25_000 * len(item)


def test_characters_written_as_json_writes_them():
    text = '{"a": "\\ud83e\\udeb5", "\\ud83e\\udeb5": 1}'
    assert read_document(text, "a.yaml").data == json.loads(text)


@pytest.mark.parametrize(
    ("text", "column"), [('a: "x\\ud83e"', 4), ('"\\udeb5x": 1', 1), ('a: ["\\udeb5\\ud83e"]', 5)]
)
def test_half_a_character(text, column):
    (problem,) = read_document(text, "a.yaml").problems
    assert "half a character" in problem.message
    assert (problem.line, problem.column) == (1, column)


def refusal_of(path):
    with pytest.raises(ProblemsError) as caught:
        read_text(path)
    (problem,) = caught.value.problems
    assert problem.file == str(path)
    return problem


def test_a_file_that_is_not_there(tmp_path):
    assert "there is no file" in refusal_of(tmp_path / "none.yaml").message


def test_a_folder(tmp_path):
    assert "is a folder" in refusal_of(tmp_path).message


def test_a_file_inside_a_file(tmp_path):
    (tmp_path / "a").write_text("x")
    assert "can't be opened" in refusal_of(tmp_path / "a" / "b.yaml").message


def test_a_name_that_cannot_be_a_file():
    assert "can't be opened" in refusal_of(Path("a\0b")).message


def test_a_file_that_is_too_large(tmp_path):
    path = tmp_path / "large.yaml"
    path.write_text("# large\n" * 130_000)
    assert "larger than 1 MB" in refusal_of(path).message


def test_a_file_that_is_not_utf_8(tmp_path):
    path = tmp_path / "latin.yaml"
    path.write_bytes("title: x\nb: é¾".encode("latin-1"))
    problem = refusal_of(path)
    assert "isn't UTF-8" in problem.message
    assert (problem.line, problem.column) == (2, 4)


@pytest.mark.parametrize("device", ["/dev/zero", "/dev/null", "/dev/random"])
def test_a_device_is_no_spec(device):
    if not Path(device).is_char_device():
        pytest.skip("there are no such devices here")
    assert "isn't a file, but a device" in refusal_of(Path(device)).message


@pytest.fixture
def pipe(tmp_path):
    if not hasattr(os, "mkfifo"):
        pytest.skip("there are no pipes here")
    os.mkfifo(tmp_path / "pipe")
    return tmp_path / "pipe"


def written_to(pipe, content):
    """Lets a thread write to a pipe, until all is read or nobody reads on."""

    def write():
        with contextlib.suppress(BrokenPipeError), pipe.open("wb") as file:
            file.write(content)

    thread = threading.Thread(target=write)
    thread.start()
    return thread


def test_a_pipe_is_read_to_its_end(pipe):
    # Held open, so that the reader finds somebody at the other end.
    held = os.open(pipe, os.O_RDWR)
    thread = written_to(pipe, b"title: x\n" * 30_000)
    text = []
    reader = threading.Thread(target=lambda: text.append(read_text(pipe)))
    reader.start()
    thread.join()
    os.close(held)
    reader.join()
    assert text == ["title: x\n" * 30_000]


def test_a_pipe_without_an_end_is_left(pipe):
    held = os.open(pipe, os.O_RDWR)
    thread = written_to(pipe, b"# for ever\n" * 1_000_000)
    assert "larger than 1 MB" in refusal_of(pipe).message
    os.close(held)
    thread.join()


def test_a_pipe_that_nobody_writes_to_is_empty(pipe):
    assert read_text(pipe) == ""


def test_a_file_in_a_folder_one_may_not_enter(tmp_path, monkeypatch):
    """Root may enter everywhere, so the system's answer is put in by hand."""
    path = tmp_path / "a.yaml"
    path.write_text("title: x\n")

    def refuse(*_, **__):
        raise PermissionError(errno.EACCES, "Permission denied")

    monkeypatch.setattr(Path, "stat", refuse)
    monkeypatch.setattr(os, "open", refuse)
    assert "can't be opened: Permission denied" in refusal_of(path).message


def test_a_name_longer_than_any_file_has(tmp_path):
    assert "can't be opened: File name too long" in refusal_of(tmp_path / ("x" * 300)).message


KEYS = st.text(string.ascii_lowercase, min_size=1, max_size=8).filter(
    lambda key: key not in ("null", "true", "false")
)
WORDS = st.text(string.ascii_letters + string.digits + " .,:'\"#-é¾", max_size=12)
VALUES = st.recursive(
    st.none()
    | st.booleans()
    | st.integers(-(10**9), 10**9)
    | st.floats(-1e6, 1e6).map(lambda number: round(number, 3))
    | WORDS,
    lambda inner: st.lists(inner, max_size=4) | st.dictionaries(KEYS, inner, max_size=4),
    max_leaves=12,
)


@given(st.dictionaries(KEYS, VALUES, min_size=1, max_size=5))
@settings(max_examples=150)
def test_data_is_what_json_says(data):
    """JSON is YAML (YAML 1.2.2, section 1.2), so Python's json module is the judge."""
    document = read_document(json.dumps(data, indent=1), "a.yaml")
    assert document.problems == ()
    assert document.data == data


@given(st.dictionaries(KEYS, VALUES, min_size=1, max_size=5))
@settings(max_examples=150)
def test_every_place_is_where_the_text_is(data):
    text = json.dumps(data, indent=1, ensure_ascii=True)
    lines = text.splitlines()
    places = read_document(text, "a.yaml").places
    for path, place in places.keys.items():
        assert lines[place.line - 1][place.column - 1 :].startswith(json.dumps(path[-1]))
    for path, place in places.values.items():
        value = data
        for step in path:
            value = value[step]
        found = lines[place.line - 1][place.column - 1 :]
        if not isinstance(value, dict | list):
            assert found.removesuffix(",") == json.dumps(value)


@pytest.mark.parametrize(
    "path",
    MODELS,
    ids=lambda path: path.name,
)
def test_models_read_as_another_loader_reads_them(path):
    text = path.read_text(encoding="utf-8")
    assert read_document(text, path.name).data == YAML(typ="safe", pure=True).load(text)
