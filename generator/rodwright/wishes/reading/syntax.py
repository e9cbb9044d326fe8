"""YAML errors in a maker's words."""

from __future__ import annotations

import re

from ruamel.yaml.error import MarkedYAMLError, StringMark

# What YAML counts as the end of a line.
_LINE_BREAK = re.compile("\r\n|[\n\r\x85\u2028\u2029]")
_OPENING = {"sequence": ("[", "]"), "mapping": ("{", "}")}
_QUOTE_HINT = "Check the quotes here and the indentation of this line and the one above."


def explain_syntax(error: MarkedYAMLError, text: str) -> tuple[str, str, StringMark]:
    """What is wrong, what to do about it, and where, for an error in the text's layout."""
    context, problem = str(error.context or ""), str(error.problem or "")
    at, began = error.problem_mark, error.context_mark
    if at is None:
        at = began
    lines = _LINE_BREAK.split(text)
    line = lines[at.line] if at.line < len(lines) else ""
    tab = re.match(r" *\t", line)
    if tab is not None and at.column <= tab.end():
        return "a tab is used to indent this line", "Indent with spaces.", at
    if "flow" in context and "expected ','" in problem:
        return _unclosed(context, at, began)
    for pattern, message, remedy, from_start in _KNOWN:
        found = re.search(pattern, f"{context}: {problem}")
        if found is not None:
            character = line[at.column : at.column + 1]
            mark = began if from_start and began is not None else at
            return message.format(character), remedy.format(character), mark
    return "the layout can't be followed here", _QUOTE_HINT, at


def _unclosed(context: str, at: StringMark, began: StringMark) -> tuple[str, str, StringMark]:
    opening, closing = _OPENING["sequence" if "sequence" in context else "mapping"]
    if at.line == began.line:
        return (
            f"a `,` or the closing `{closing}` is missing before this",
            f"Put a `,` between two values; end with `{closing}`.",
            at,
        )
    return (
        f"the `{opening}` here isn't closed, or a `,` is missing before line {at.line + 1}",
        f"End it with `{closing}`, and put a `,` between two values.",
        began,
    )


# Pattern over "context: problem", message, remedy, and whether the place is the beginning of
# what was being read instead of where the reading stopped.  {0} is the character found there.
_KNOWN: tuple[tuple[str, str, str, bool], ...] = (
    (
        "another document",
        "a second document begins here",
        "Keep one piece to a file: take out this `---` and what follows.",
        False,
    ),
    (
        r"found character '\\t'",
        "a tab stands where only spaces may",
        "Use spaces; set your editor to write spaces for tabs.",
        False,
    ),
    (
        "cannot start any token",
        "a value can't begin with `{0}`",
        "Put the value in quotes.",
        False,
    ),
    (
        "quoted scalar: found unexpected",
        "the quote that begins here is never closed",
        "End the text with the same quote it begins with; put single quotes around an inch mark.",
        True,
    ),
    (
        "double-quoted scalar",
        "a `\\` in double quotes means something special, and this one means nothing",
        "Use single quotes around the text.",
        False,
    ),
    (
        "simple key: could not find expected ':'",
        "a `:` and a space are missing after this",
        "Write `key: value`, or `- value` in a list; check the indentation.",
        True,
    ),
    (
        "mapping values are not allowed",
        "a `:` can't stand here",
        "Put text that has `: ` in it in quotes; check that keys that belong together line up.",
        False,
    ),
    (
        "sequence entries are not allowed|block mapping: expected <block end>, but found '-'",
        "a list item can't stand here",
        "Start the list on its own line under its key, every `-` in the same column.",
        False,
    ),
    (
        "mapping keys are not allowed",
        "`?` can't begin anything here",
        "Put the value in quotes.",
        False,
    ),
    (
        r"expected <block end>, but found '[\]}]'",
        "this `{0}` closes nothing",
        "Take it out, or open it where the list or group begins.",
        False,
    ),
    (
        "expected <block end>, but found '<block",
        "this line isn't indented like the ones it belongs with",
        "Line it up with them, using spaces.",
        False,
    ),
    (
        "block collection: expected <block end>",
        "this doesn't line up with the list items above",
        "Put every `-` in the same column, and what belongs to an item under its first key.",
        False,
    ),
    (
        "expected <block end>, but found '<scalar>'",
        "text goes on after its closing quote, or a line is indented wrongly",
        "Write an inch mark without quotes around it (`3/4 in`), and `''` for an apostrophe "
        "inside '…'; " + _QUOTE_HINT.lower(),
        False,
    ),
    (
        "undefined alias",
        "`*` in front of a name uses a value that was given that name before, and none was",
        "Put the value in quotes if the `*` belongs to it.",
        False,
    ),
    (
        "scanning an (anchor|alias)",
        "`&` and `*` at the start of a value have a special meaning",
        "Put the value in quotes.",
        True,
    ),
    (
        r"\ba tag\b|tag handle|directive|URI",
        "`!` and `%` at the start of a value have a special meaning",
        "Put the value in quotes.",
        True,
    ),
    (
        "block scalar",
        "the text after `|` or `>` can't be read",
        "Put the text in quotes, on one line.",
        False,
    ),
)
