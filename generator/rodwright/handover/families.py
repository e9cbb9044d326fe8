"""The families of files that share an output folder: what each verb calls its own.

A verb replaces and removes files of its own family alone, and leaves those of the others listed in
the manifest as they are.
"""

from __future__ import annotations

import re

from rodwright.handover.cut_files import CUT_FILES
from rodwright.handover.exports import BUILD_FILES

__all__ = [
    "BOOK_FILES",
    "BUILD_FILES",
    "CNC_FILES",
    "CUT_FILES",
    "PAGE_FILES",
    "PHOTOGRAPHS",
    "QUOTE_FILES",
    "beside",
]

BOOK_FILES = re.compile(
    r"book\.pdf|book/(?:[a-z0-9-]+/)?[A-Za-z0-9-]+\.(?:pdf|svg|png|dxf|csv|json)"
)
"""The names that files of a job book have."""
CNC_FILES = re.compile(r"cnc\.zip")
"""The names that files of a pack for a CNC shop have."""
PAGE_FILES = re.compile(r"page\.(?:html|glb|usdz)")
"""The names that files of a page to send have."""
PHOTOGRAPHS = re.compile(r"photographs/[a-z0-9-]+\.(?:jpg|webp)")
"""The names that photographs and moving pictures have."""
QUOTE_FILES = re.compile(r"quote\.(?:pdf|json)|costing\.xlsx")
"""The names that files of a quote have."""
_ALL = (BUILD_FILES, CUT_FILES, BOOK_FILES, CNC_FILES, PAGE_FILES, PHOTOGRAPHS, QUOTE_FILES)


def beside(ours: re.Pattern[str]) -> re.Pattern[str]:
    """The names of all families but one's own."""
    return re.compile("|".join(f"(?:{each.pattern})" for each in _ALL if each is not ours))
