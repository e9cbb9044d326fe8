"""Racks laid out anyhow: what is taken is gone, what comes is there, and all else stays."""

from __future__ import annotations

import json
from pathlib import Path
from tempfile import TemporaryDirectory

from hypothesis import given, settings
from hypothesis import strategies as st

from rodwright.cutting.taking import Comes, Taking, Used, identity, taking_record
from rodwright.jobs.rack import parse_rack
from rodwright.jobs.rack import take_from_rack as take

SHEET = "kind: sheet, material: mdf, thickness: 18, size: [900, 600], count: {count}"
names = st.lists(st.sampled_from(["A", "b 2", '"c: 3"', "'4'", "dé"]), min_size=1, unique=True)
between = st.sampled_from(
    ["", "\n", "  # of the one below\n", "\n# at the edge\n", "      # far in\n"]
)


@st.composite
def racks(draw: st.DrawFn) -> str:
    """A rack's text: entries on one line or on several, with comments and empty lines."""
    lines = [draw(st.sampled_from(["", "# Mine.\n", "unit: mm  # of course\n"])), "stock:\n"]
    indent = " " * draw(st.integers(1, 5))
    for name in draw(names):
        keys = SHEET.format(count=draw(st.integers(0, 3)))
        lines.append(draw(between))
        if draw(st.booleans()):
            lines.append(f"{indent}{name}: {{{keys}}}{draw(st.sampled_from(['', '  # one']))}\n")
        else:
            inner = keys.replace("[900, 600]", "[900; 600]").split(", ")
            note = draw(
                st.sampled_from(["", "where: loft", "note: >-\n          in the\n          loft"])
            )
            lines.append(f"{indent}{name}:\n")
            lines += [f"{indent}  {key}\n".replace(";", ",") for key in [note, *inner] if key]
    lines.append(draw(between))
    lines.append(draw(st.sampled_from(["", 'taken: ["0"]\n', "taken:\n- a\n# last\n"])))
    text = "".join(lines)
    return text.replace("\n", draw(st.sampled_from(["\n", "\r\n"])))


@settings(max_examples=60, deadline=None)
@given(text=racks(), data=st.data())
def test_what_is_taken(text: str, data: st.DataObject) -> None:
    rack = parse_rack(text, "rack.yaml").rack
    uses = [
        Used(each.name, count, each.fingerprint)
        for each in rack.entries
        if (count := data.draw(st.integers(0, each.piece.count)))
    ]
    comes = [
        Comes(f"X-{number}", "sheet", "birch plywood", 18.0, 500.0, 300.0)
        for number in range(data.draw(st.integers(0, 2)))
    ]
    taking = Taking("rack.yaml", identity(text, []), tuple(uses), tuple(comes))
    with TemporaryDirectory() as folder:
        file, plan = Path(folder, "rack.yaml"), Path(folder, "cut.json")
        file.write_bytes(text.encode())
        plan.write_text(json.dumps({"rack": taking_record(taking)}))
        take(plan)
        after = file.read_bytes().decode()
    counts = {each.name: each.piece.count for each in rack.entries}
    for use in uses:
        counts[use.entry] -= use.count
    gone = {use.entry for use in uses if not counts[use.entry]}
    wanted = {name: count for name, count in counts.items() if name not in gone}
    wanted |= dict.fromkeys((each.name for each in comes), 1)
    left = parse_rack(after, "rack.yaml").rack
    assert {each.name: each.piece.count for each in left.entries} == wanted
    assert left.taken == (*rack.taken, taking.plan)
    if wanted:
        kept = [line for line in text.splitlines() if line.strip().startswith("#")]
        assert [line for line in after.splitlines() if line.strip().startswith("#")] == kept
        assert ("\r\n" in after) == ("\r\n" in text)
