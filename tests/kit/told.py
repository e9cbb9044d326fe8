"""What a page may be told in tests, beside a unit's model."""

from __future__ import annotations

from dataclasses import asdict
from typing import Any

from rodwright.page import document as page


def finding(severity: str, *parts: str) -> dict[str, Any]:
    """A finding that says how grave it is and no more."""
    meaning = (("", f"What a {severity} means."), ("Source", "A handbook."))
    rule, message = f"{severity}-rule", f"a {severity}"
    return asdict(page.Told(severity, rule, message, "Mend it.", parts, "", meaning=meaning))


def sheet(model: page.Model) -> dict[str, Any]:
    """Words, a drawing and a list with a row for each part."""
    rows = tuple((part.ref, part.name, part.size, part.stock) for part in model.parts)
    svg = '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 90 30"><path d="M9 9h70"/></svg>'
    table = page.Table(
        "All parts",
        ("Ref", "Name", "Size", "Stock"),
        (False, False, True, False),
        rows,
        tuple((part.ref,) for part in model.parts),
        "As they are cut.",
    )
    return asdict(page.Sheet(("Some words.",), (page.Drawing("A line", svg),), (table,)))


def details(model: page.Model) -> dict[str, Any]:
    """The same of each part; each is joined to the first."""
    first = model.parts[0].ref
    place = page.Place(31, 7, "      - {width: 420}  # the narrow one")
    one = page.Detail(
        material="birch plywood",
        weight="4.2 kg",
        finish="oil",
        edges="front lipped",
        laid=("Show face up.",),
        workings=("a groove 6 mm deep",),
        joined=(page.Joined(first, f"in a housing of {first}"),),
        place=place,
    )
    return {part.ref: asdict(one) for part in model.parts}
