"""One value of a spec's text written anew: what changes, and above all what doesn't."""

from __future__ import annotations

import difflib
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from ruamel.yaml import YAML

from rodwright.problems import ProblemsError
from rodwright.wishes.reading.documents import read_document
from rodwright.wishes.reading.editing import value_at, ways_to_same, with_value

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))
TEXTS = {path.stem: path.read_text(encoding="utf-8") for path in MODELS}

SPEC = """\
# A comment,\twith a tab.
title: "Alcove"   # said so
size: {width: 800, height: 32 in, depth: '12 in'}
columns:
  - &bay  # used again
    width: &wide 420  # as wide as the door
    rows: [{height: 1 share}, {height: 200,}]
  - *bay
  - width: *wide
    shelves: {}
  - {width: 1 share, # rest
     shelves: 3}
note: |
  Long words
last: 1"""


def edited(path, value, text=SPEC):
    return with_value(text, path, value, "a.yaml")


def changed_lines(before, after):
    """The lines taken out and put in."""
    lines = difflib.ndiff(before.splitlines(keepends=True), after.splitlines(keepends=True))
    return [line for line in lines if line[0] in "+-"]


@pytest.mark.parametrize(
    ("path", "value", "line"),
    [
        (("size", "width"), "750.5", "size: {width: 750.5, height: 32 in, depth: '12 in'}\n"),
        (
            ("size", "height"),
            "30 1/2 in",
            "size: {width: 800, height: 30 1/2 in, depth: '12 in'}\n",
        ),
        (("size", "depth"), "13 in", "size: {width: 800, height: 32 in, depth: '13 in'}\n"),
        (("size", "depth"), "6' 3\"", "size: {width: 800, height: 32 in, depth: '6'' 3\"'}\n"),
        (("title",), 'A "new" one', 'title: "A \\"new\\" one"   # said so\n'),
        (("columns", 0, "width"), "400", "    width: &wide 400  # as wide as the door\n"),
        (
            ("columns", 1, "rows", 1, "height"),
            "3 in",
            "    rows: [{height: 1 share}, {height: 3 in,}]\n",
        ),
        (("columns", 3, "width"), "2 shares", "  - {width: 2 shares, # rest\n"),
        (("columns", 3, "shelves"), "4", "     shelves: 4}\n"),
        (("last",), "- 1: {x} # y", 'last: "- 1: {x} # y"'),
        (("last",), "true", 'last: "true"'),
    ],
)
def test_a_value_is_written_in_its_place(path, value, line):
    after = edited(path, value)
    assert changed_lines(SPEC, after)[1::2] == [f"+ {line}"]
    assert after.splitlines(keepends=True)[0] == "# A comment,\twith a tab.\n"


def test_what_has_a_name_changes_wherever_it_is_used():
    path = ("columns", 2, "width")
    assert ways_to_same(SPEC, path, "a.yaml") == (
        ("columns", 0, "width"),
        ("columns", 1, "width"),
        path,
    )
    data = read_document(edited(path, "410"), "a.yaml").data
    assert [column["width"] for column in data["columns"]] == [410, 410, 410, "1 share"]


@pytest.mark.parametrize(
    ("path", "value", "lines"),
    [
        (("columns", 3, "load"), "books", ["+      shelves: 3, load: books}\n"]),
        (("columns", 2, "shelves", "count"), "4", ["+     shelves: {count: 4}\n"]),
        (("columns", 0, "rows", 0, "shelves", "count"), "2",
         ["+     rows: [{height: 1 share, shelves: {count: 2}}, {height: 200,}]\n"]),
        (("columns", 0, "rows", 1, "shelves"), "2",
         ["+     rows: [{height: 1 share}, {height: 200, shelves: 2,}]\n"]),
        (("columns", 0, "shelves"), "2", ["+     shelves: 2\n"]),
        (("fit", "sides"), "3.5", ["+ last: 1\n", "+ fit: {sides: 3.5}"]),
    ],
)  # fmt: skip
def test_a_key_that_was_not_written_is_put_in(path, value, lines):
    after = edited(path, value)
    assert [line for line in changed_lines(SPEC, after) if line[0] == "+"] == lines
    assert str(value_at(read_document(after, "a.yaml").data, path)) == value


@pytest.mark.parametrize(
    ("path", "value"),
    [
        (("note",), "18"),  # a block of lines
        (("size",), "18"),  # a group of keys
        (("columns", 9, "width"), "18"),  # no such column
        (("columns", 3, "shelves", "layers"), "2"),  # what it would go into is a figure
        (("last",), "x" * 300),
    ],
)
def test_what_cannot_be_put_there_is_refused_and_nothing_else(path, value):
    with pytest.raises(ProblemsError) as caught:
        edited(path, value)
    (problem,) = caught.value.problems
    assert "can't be written here" in problem.message
    assert problem.line is not None


def test_a_text_that_is_no_spec_is_refused():
    with pytest.raises(ProblemsError):
        edited(("a",), "1", "a: [")


def scalars(data, path=()):
    """The way to every value that isn't a group or list."""
    held = data.items() if isinstance(data, dict) else enumerate(data)
    for step, each in held:
        if isinstance(each, dict | list):
            yield from scalars(each, (*path, step))
        else:
            yield (*path, step)


def plain(text):
    """The data as ruamel's own safe loader reads them, which shares no code with ours."""
    return YAML(typ="safe").load(text)


def laid(data, paths, value):
    for path in paths:
        inner = data
        for step in path[:-1]:
            inner = inner[step]
        inner[path[-1]] = value
    return data


def without_shared(data):
    """Data in which nothing is in two places at once, as an alias puts it."""
    if isinstance(data, dict):
        return {key: without_shared(each) for key, each in data.items()}
    if isinstance(data, list):
        return [without_shared(each) for each in data]
    return data


def strange(text, line_ends, last_line):
    text = text if last_line else text.rstrip("\n")
    return text.replace("\n", "\r\n") if line_ends else text


VALUES = st.one_of(
    st.integers(0, 3000).map(str),
    st.decimals(0, 3000, places=1).map(str),
    st.sampled_from(["23 5/8 in", "1 share", "2.5 shares", '3/4"', "6' 3 1/4\"", "1.2 m", "¾ in"]),
    st.text(max_size=12),
)


@settings(max_examples=60)
@given(
    model=st.sampled_from(sorted(TEXTS)),
    pick=st.integers(0, 10_000),
    value=VALUES,
    line_ends=st.booleans(),
    last_line=st.booleans(),
)
def test_the_data_differ_at_that_place_alone(model, pick, value, line_ends, last_line):
    text = strange(TEXTS[model], line_ends, last_line)
    paths = list(scalars(plain(text)))
    path = paths[pick % len(paths)]
    try:
        after = edited(path, value, text)
    except ProblemsError:
        # Only what can't be in a YAML text at all, whatever its quotes (YAML 1.2, 5.1).
        assert not value.isprintable()
        return
    same = ways_to_same(text, path, "a.yaml")
    new = value_at(read_document(after, "a.yaml").data, path)
    assert new == value or float(value) == new
    before, now = without_shared(plain(text)), without_shared(plain(after))
    assert laid(before, same, None) == laid(now, same, None)
    line, column = read_document(text, "a.yaml").places.values[path]
    old_lines, new_lines = (each.splitlines(keepends=True) for each in (text, after))
    old_line, new_line = old_lines.pop(line - 1), new_lines.pop(line - 1)
    assert old_lines == new_lines
    begins = old_line[: column - 1]
    assert new_line.startswith(begins)
    comment = old_line[len(begins) :].partition(" #")[2]
    assert new_line.endswith(comment)


@settings(max_examples=60)
@given(model=st.sampled_from(sorted(TEXTS)), pick=st.integers(0, 10_000), line_ends=st.booleans())
def test_a_key_is_put_in_anywhere_and_nothing_else_changes(model, pick, line_ends):
    text = strange(TEXTS[model], line_ends, last_line=True)
    data = plain(text)
    groups = [
        (),
        *sorted({path[:-1] for path in scalars(data) if isinstance(path[-1], str)}, key=str),
    ]
    path = (*groups[pick % len(groups)], "added")
    after = edited(path, "12", text)
    assert value_at(read_document(after, "a.yaml").data, path) == 12
    assert after.replace("\n", "").count("added") == 1
    added = len(after) - len(text)
    assert any(after[:at] + after[at + added :] == text for at in range(len(text) + 1))
