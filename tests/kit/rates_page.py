"""The page of rates, docs/rates.md: its table of operations, made from theirs.

`python tests/kit/rates_page.py docs/rates.md` writes it anew.
"""

from __future__ import annotations

import sys
from pathlib import Path

from rodwright.quote.operations import OPERATIONS

STARTS = "<!-- operations: made from their table, not by hand -->"
ENDS = "<!-- end of operations -->"


def with_operations(page: str) -> str:
    """The page with the table between its two marks made anew."""
    before, start, rest = page.partition(STARTS)
    _, end, after = rest.partition(ENDS)
    assert start and end, f"the page has no `{STARTS}` and `{ENDS}`"
    rows = [
        f"| `{each.key}` | {each.stage} | {each.per} | {each.minutes} | {each.name}: {each.means} |"
        for each in OPERATIONS
    ]
    head = "| Key | Stage | For each | Minutes to start from | What it is |\n| --- |" + 4 * " --- |"
    return "\n".join([f"{before}{start}\n", head, *rows, f"\n{end}{after}"])


if __name__ == "__main__":
    file = Path(sys.argv[1])
    file.write_text(with_operations(file.read_text(encoding="utf-8")), encoding="utf-8")
