"""The rack after a plan was cut."""

from __future__ import annotations

import difflib
import json
import os
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from rodwright.cutting.rack import Rack
from rodwright.cutting.supplies import Flaw
from rodwright.cutting.taking import Comes, Taking, Used, identity, taking_record
from rodwright.jobs.rack import Taken, new_rack, read_rack
from rodwright.jobs.rack import take_from_rack as take
from rodwright.problems import ProblemsError

RACK = """\
# What stands in the shop.
unit: mm

stock:
  # Bought in May.
  birch 18: {kind: sheet, material: birch plywood,   thickness: 18, size: [2440, 1220],
             count: 3, price: 74.00}   # the good side up

  # From the school.
  shelf:
    kind: sheet
    material: birch plywood
    thickness: 18
    size: [1800, 400]
    count: 1  # last one
    note: >-
      Screw holes
      at both ends.

  # Ash.
  ash: {kind: board, material: ash, thickness: 22, length: 2400, width: 150, count: 2}
# The end.
"""
OFFCUT = Comes("KD7F-1", "sheet", "birch plywood", 18.0, 610.04, 402.5, cut_from="birch 18")


class Shop:
    """A folder with a rack file, and plans made from it."""

    def __init__(self, folder: Path, text: str = RACK) -> None:
        self.folder = folder
        self.file = folder / "rack.yaml"
        self.file.write_bytes(text.encode())

    @property
    def rack(self) -> Rack:
        return read_rack(self.file)

    @property
    def text(self) -> str:
        return self.file.read_bytes().decode()

    def plan(self, name: str, uses: dict[str, int], *comes: Comes, **more: Any) -> Path:
        """A plan's document, made from the rack as it is now."""
        rack = self.rack
        used = []
        for entry, count in uses.items():
            known = rack.entry(entry)
            assert known is not None
            used.append(Used(entry, count, known.fingerprint))
        taking = Taking("../rack.yaml", identity(rack.text, [name]), tuple(used), comes)
        path = self.folder / name / "cut.json"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(json.dumps({"title": name, "rack": taking_record(taking) | more}))
        return path


@pytest.fixture
def shop(tmp_path: Path) -> Shop:
    return Shop(tmp_path)


def told(plan: Path, rack: Path | None = None) -> list[str]:
    with pytest.raises(ProblemsError) as error:
        take(plan, rack)
    return [str(each).splitlines()[0] for each in error.value.problems]


def test_counts_go_down_offcuts_come_in_and_nothing_else_changes(shop: Shop) -> None:
    plan = shop.plan("alcove", {"birch 18": 2, "shelf": 1}, OFFCUT)
    mark = json.loads(plan.read_text())["rack"]["plan"]
    done = take(plan)
    assert (
        shop.text
        == (
            RACK.replace("count: 3", "count: 1").replace(
                """\
  shelf:
    kind: sheet
    material: birch plywood
    thickness: 18
    size: [1800, 400]
    count: 1  # last one
    note: >-
      Screw holes
      at both ends.
""",
                "",
            )
        ).replace(
            "count: 2}\n",
            "count: 2}\n  KD7F-1: {kind: sheet, material: birch plywood, thickness: 18, size: "
            "[610, 402.5], count: 1, note: left of birch 18}\n",
        )
        + f'taken:\n  - "{mark}"\n'
    )
    assert done == Taken(
        shop.file, mark, {"birch 18": 2, "shelf": 1}, {"birch 18": 1, "shelf": 0}, (OFFCUT,)
    )
    came = shop.rack.entry("KD7F-1")
    assert came is not None and (came.piece.length, came.piece.count) == (610.0, 1)


def test_what_can_be_bought_stays_with_none_left(shop: Shop) -> None:
    take(shop.plan("alcove", {"birch 18": 3}))
    entry = shop.rack.entry("birch 18")
    assert entry is not None and (entry.piece.count, entry.price) == (0, 74.0)


def test_the_same_plan_isnt_taken_twice(shop: Shop) -> None:
    plan = shop.plan("alcove", {"birch 18": 1})
    take(plan)
    after = shop.text
    line = len(after.splitlines())
    assert told(plan) == [f"{shop.file}:{line}:5: this plan was taken out of the rack already"]
    assert shop.text == after
    # Made anew from the rack as it is now, it is another plan.
    take(shop.plan("alcove", {"birch 18": 1}))


def test_of_two_plans_from_one_rack_the_second_is_taken_if_its_stock_is_left(shop: Shop) -> None:
    first, second = shop.plan("a", {"birch 18": 2}, OFFCUT), shop.plan("b", {"birch 18": 1})
    take(first)
    take(second)
    assert shop.rack.entry("birch 18").piece.count == 0  # type: ignore[union-attr]


def test_of_two_plans_from_one_rack_the_second_is_refused_if_it_needs_the_same(shop: Shop) -> None:
    first, second = shop.plan("a", {"birch 18": 2, "shelf": 1}), shop.plan("b", {"birch 18": 2})
    third = shop.plan("c", {"shelf": 1, "ash": 1})
    take(first)
    after = shop.text
    assert told(second) == [
        f"{shop.file}:7:21: the plan cuts 2 of `birch 18`, and there is 1",
    ]
    assert told(third) == [
        f"{shop.file}:4:1: `shelf`, which the plan cuts, isn't in the rack any more"
    ]
    assert shop.text == after


def test_stock_that_was_changed_since_is_refused(shop: Shop) -> None:
    plan = shop.plan("alcove", {"ash": 1})
    shop.file.write_text(RACK.replace("length: 2400", "length: 2300"))
    assert told(plan) == [f"{shop.file}:21:3: `ash` was changed since the plan was made"]
    # Where it stands, what more of it costs and how many there are is none of the plan's business.
    shop.file.write_text(RACK.replace("count: 2}", "count: 5, price: 9, where: loft}"))
    take(plan)


def test_uses_of_one_entry_in_two_lots_are_counted_together(shop: Shop) -> None:
    plan = shop.plan("alcove", {"ash": 2})
    document = json.loads(plan.read_text())
    document["rack"]["uses"] *= 2
    plan.write_text(json.dumps(document))
    assert told(plan) == [f"{shop.file}:21:85: the plan cuts 4 of `ash`, and there are 2"]


def test_an_offcut_that_is_called_like_an_entry(shop: Shop) -> None:
    plan = shop.plan("alcove", {}, Comes("ASH", "board", "ash", 22.0, 900.0, 70.0))
    assert told(plan) == [f"{shop.file}:21:3: `ash` is called as one of the plan's offcuts"]


def test_a_rack_that_was_moved_is_named(shop: Shop) -> None:
    plan = shop.plan("alcove", {"ash": 1})
    moved = shop.folder / "shop.yaml"
    shop.file.rename(moved)
    (message,) = told(plan)
    assert "there is no rack file" in message and "rack.yaml" in message
    take(plan, moved)
    assert read_rack(moved).entry("ash").piece.count == 1  # type: ignore[union-attr]


def test_a_plan_that_was_copied_elsewhere_needs_its_rack_named(shop: Shop) -> None:
    plan = shop.plan("alcove", {"ash": 1})
    copied = shop.folder / "far" / "away" / "cut.json"
    copied.parent.mkdir(parents=True)
    copied.write_bytes(plan.read_bytes())
    assert "there is no rack file" in told(copied)[0]
    take(copied, shop.file)
    assert "taken out of the rack already" in told(plan)[0]


@pytest.mark.parametrize(
    ("content", "problem"),
    [
        (b"", "isn't a plan: it can't be read as JSON"),
        (b"\xff\xfe", "isn't a plan: it can't be read as JSON"),
        (b"[1]", "isn't a plan: it doesn't say what is taken from a rack"),
        (b"{}", "isn't a plan: it doesn't say what is taken from a rack"),
        (b'{"rack": null}', "was made without a rack file, so there is nothing to take"),
        (b'{"rack": {"rack": 3}}', "was changed, or isn't whole"),
    ],
)
def test_what_is_no_plan(shop: Shop, content: bytes, problem: str) -> None:
    plan = shop.folder / "cut.json"
    plan.write_bytes(content)
    assert problem in told(plan)[0]
    assert shop.text == RACK


def test_a_plan_that_isnt_there(shop: Shop) -> None:
    assert "there is no file" in told(shop.folder / "cut.json")[0]
    assert "can't be opened" in told(shop.folder)[0]


def test_a_rack_that_is_wrong_is_told_and_left(shop: Shop) -> None:
    plan = shop.plan("alcove", {"ash": 1})
    shop.file.write_text(RACK.replace("count: 2", "count: -2"))
    assert told(plan) == [f"{shop.file}:21:85: `count` has to be at least 0; it is `-2`"]


SMALL = "stock: {a: {kind: sheet, material: mdf, thickness: 18, size: [900, 600], count: 2}} # x\n"


@pytest.mark.parametrize(
    "text",
    [
        SMALL,
        "# Above.\n" + SMALL + "taken: []\n",
        SMALL.replace("{a: ", "\n  a: ").replace("}}", "}"),
        SMALL.replace("{a: ", "\n  a: ").replace("}}", "}").rstrip("\n"),
        SMALL.replace("{a: ", "\r\n  a: ").replace("}}", "}").replace("\n", "\r\n"),
        "\ufeff" + SMALL.replace("{a: ", "\n  a: ").replace("}}", "}"),
        SMALL.replace("{a: ", "\n    a: ").replace("}}", '}\ntaken: ["0"]'),
        SMALL.replace("{a: ", "\n    a: ").replace("}}", '}\ntaken:\n- "0"'),
        SMALL.replace("{a: ", "\n    a: ").replace("}}", '}\ntaken:\n      -   "0"\n# after\n'),
        "taken:\n  - '0'  # first\n\n" + SMALL.replace("{a: ", "\n    a: ").replace("}}", "}"),
        SMALL.replace("{a: ", '\n    "a": ').replace("}}", "}") + "...\n",
    ],
)
@pytest.mark.parametrize("count", [1, 2])
def test_racks_of_any_layout(tmp_path: Path, text: str, count: int) -> None:
    shop = Shop(tmp_path, text)
    before = shop.rack
    take(shop.plan("alcove", {"a": count}, OFFCUT))
    after = shop.rack
    names = ["KD7F-1"] if count == 2 else ["a", "KD7F-1"]
    assert [entry.name for entry in after.entries] == names
    assert len(after.taken) == len(before.taken) + 1
    for comment in ("# x", "# Above.", "# after", "# first"):
        if comment in text and not (comment == "# x" and count == 2):
            assert comment in shop.text
    assert shop.text.count("\r\n") in (0, shop.text.count("\n"))
    assert ("\r\n" in shop.text) == ("\r\n" in text)
    assert shop.text.startswith("\ufeff") == text.startswith("\ufeff")


def test_an_empty_rack_takes_offcuts(tmp_path: Path) -> None:
    shop = Shop(tmp_path, "unit: mm\nkeep: {length: 500}  # all we have room for\n")
    take(shop.plan("alcove", {}, OFFCUT))
    assert [entry.name for entry in shop.rack.entries] == ["KD7F-1"]
    assert "# all we have room for" in shop.text


def test_the_last_of_all_leaves_an_empty_rack(tmp_path: Path) -> None:
    shop = Shop(tmp_path, SMALL.replace("{a: ", "\n  a: ").replace("}}", "}"))
    take(shop.plan("alcove", {"a": 2}))
    assert shop.rack.entries == ()


def test_entries_that_share_their_keys_are_refused(tmp_path: Path) -> None:
    one = SMALL.replace("{a: ", "\n  a: &one ").replace("}}", "}")
    shop = Shop(tmp_path, one + "  b: *one\n")
    assert "isn't laid out so that it can be changed" in told(shop.plan("alcove", {"a": 1}))[0]
    take(shop.plan("bench", {"b": 2}, OFFCUT))
    assert [entry.name for entry in shop.rack.entries] == ["a", "KD7F-1"]


@pytest.mark.parametrize(
    ("come", "written"),
    [
        (
            Comes("X-1", "sheet", "mdf", 18.0, 600.0, 400.0, grained=False, show_faces=1),
            "{kind: sheet, material: mdf, thickness: 18, size: [600, 400], show_faces: 1, "
            "count: 1}",
        ),
        (
            Comes("X-1", "sheet", "mdf", 18.0, 600.0, 400.0, grained=True),
            "{kind: sheet, material: mdf, thickness: 18, size: [600, 400], grain: lengthwise, "
            "count: 1}",
        ),
        (
            Comes("X-1", "sheet", "palm ply", 18.5, 600.0, 400.0, density=640.0),
            "{kind: sheet, material: palm ply, density: 640.0, thickness: 18.5, size: [600, 400], "
            "count: 1}",
        ),
        (
            Comes("X-1", "board", "ash", 22.0, 900.19, 70.96, sawn_thickness=27.0),
            "{kind: board, material: ash, thickness: 22, sawn_thickness: 27, planing: 0, "
            "length: 900.1, width: 70.9, count: 1}",
        ),
        (
            Comes("X-1", "length", "pine", 20.0, 800.0, 0.0, section=44.0, cut_from="par: 3"),
            "{kind: length, material: pine, thickness: 20, section: 44, length: 800, count: 1, "
            "note: 'left of par: 3'}",
        ),
    ],
)
def test_how_an_offcut_is_written(shop: Shop, come: Comes, written: str) -> None:
    take(shop.plan("alcove", {}, come))
    assert f"  X-1: {written}\n" in shop.text


@pytest.mark.parametrize(
    ("come", "written"),
    [
        (
            Comes("X-1", "sheet", "mdf", 18.0, 600.0, 400.0, grained=False),
            "{x: 0, length: 60, why: old screw holes}, {x: 60, length: 20.2, y: 10, width: 30}",
        ),
        (
            Comes("X-1", "board", "ash", 22.0, 900.19, 400.0),
            "{x: 0, length: 60, why: old screw holes}, {x: 60, length: 20.2, y: 10, width: 30}",
        ),
        (
            Comes("X-1", "length", "pine", 20.0, 800.0, 0.0, section=44.0),
            "{x: 0, length: 60, why: old screw holes}, {x: 60, length: 20.2}",
        ),
    ],
)
def test_how_the_flaws_of_an_offcut_are_written(shop: Shop, come: Comes, written: str) -> None:
    holes = Flaw(0.0, 0.0, 60.0, come.width, "old screw holes")
    knot = Flaw(60.05, 10.05, 20.1, 29.9) if come.width else Flaw(60.05, 0.0, 20.1, 0.0)
    take(shop.plan("alcove", {}, replace(come, flaws=(holes, knot))))
    assert f", count: 1, flaws: [{written}]}}\n" in shop.text
    entry = shop.rack.entry("X-1")
    assert entry is not None
    for was, now in zip((holes, knot), entry.piece.flaws, strict=True):
        assert now.x <= was.x and now.x + now.length >= was.x + was.length
        assert now.y <= was.y and now.y + now.width >= was.y + was.width
        assert now.why == was.why


def test_a_flaw_that_only_what_is_rounded_off_holds_isnt_written(shop: Shop) -> None:
    end, edge = Flaw(900.12, 0.0, 0.07, 10.0), Flaw(850.0, 69.94, 50.19, 0.02)
    come = Comes("X-1", "board", "ash", 22.0, 900.19, 69.96, flaws=(end, edge))
    take(shop.plan("alcove", {}, come))
    assert "width: 69.9, count: 1}\n" in shop.text


def test_flaws_in_a_rack_that_has_to_be_written_anew(tmp_path: Path) -> None:
    shop = Shop(tmp_path, SMALL)
    come = replace(OFFCUT, flaws=(Flaw(0.0, 0.0, 60.0, 402.5, "old screw holes: four"),))
    take(shop.plan("alcove", {"a": 1}, come))
    assert "flaws: [{x: 0, length: 60, why: 'old screw holes: four'}]" in shop.text


def test_flaws_in_inches_are_never_said_to_be_smaller(tmp_path: Path) -> None:
    shop = Shop(
        tmp_path,
        "unit: in\nstock:\n  a: {kind: board, material: oak, thickness: 1, length: 96, "
        "width: 6, count: 1}\n",
    )
    flaw = Flaw(25.4 * 0.99, 25.4 * 2, 25.4 * 0.49, 25.4 * 1.495, "knot")
    come = Comes("X-1", "board", "oak", 25.4, 25.4 * 24, 25.4 * 5.5, flaws=(flaw,))
    take(shop.plan("alcove", {}, come))
    assert "flaws: [{x: 63/64, length: 1/2, y: 2, width: 1 1/2, why: knot}]" in shop.text


def test_offcuts_in_inches_are_never_said_to_be_larger(tmp_path: Path) -> None:
    shop = Shop(
        tmp_path,
        "unit: in\nstock:\n  a: {kind: board, material: oak, thickness: 1, length: 96, "
        "width: 6, count: 1}\n",
    )
    come = Comes("X-1", "sheet", "birch plywood", 18.0, 25.4 * 24.99, 25.4 * 12.0)
    take(shop.plan("alcove", {}, come))
    assert (
        "  X-1: {kind: sheet, material: birch plywood, thickness: 18 mm, size: [24 63/64, 12], "
        in (shop.text)
    )
    quarter = Comes("X-2", "sheet", "birch plywood", 19.05, 25.4 * 24, 25.4 * 12.5)
    take(shop.plan("bench", {}, quarter))
    assert "thickness: 3/4, size: [24, 12 1/2]" in shop.text


def test_a_rack_that_cant_be_written_is_left_whole(
    shop: Shop, monkeypatch: pytest.MonkeyPatch
) -> None:
    plan = shop.plan("alcove", {"ash": 1})

    def full(_: int) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    assert "can't be written: No space left on device" in told(plan)[0]
    assert shop.text == RACK
    assert sorted(each.name for each in shop.folder.iterdir()) == ["alcove", "rack.yaml"]


def test_a_rack_that_is_being_changed_is_left(shop: Shop) -> None:
    fcntl = pytest.importorskip("fcntl")
    plan = shop.plan("alcove", {"ash": 1})
    with shop.file.open() as other:
        fcntl.flock(other, fcntl.LOCK_EX)
        assert "is being changed at this moment" in told(plan)[0]
    take(plan)


def test_a_rack_behind_a_link_stays_one(shop: Shop) -> None:
    plan = shop.plan("alcove", {"ash": 1})
    shop.file.chmod(0o640)
    kept = shop.folder / "kept.yaml"
    shop.file.rename(kept)
    shop.file.symlink_to(kept)
    take(plan)
    assert shop.file.is_symlink()
    assert read_rack(kept).entry("ash").piece.count == 1  # type: ignore[union-attr]
    assert kept.stat().st_mode & 0o777 == 0o640


def test_a_new_rack_can_be_taken_from(tmp_path: Path) -> None:
    new_rack(tmp_path / "rack.yaml")
    text = (tmp_path / "rack.yaml").read_text()
    shop = Shop(tmp_path, text)
    take(shop.plan("alcove", {"K1": 1, "school shelf": 2, "ash 27": 1}, OFFCUT))
    changed = [
        line
        for line in difflib.ndiff(text.splitlines(), shop.text.splitlines())
        if line[:2] in ("- ", "+ ")
    ]
    assert changed[1:] == [
        "-     count: 3",
        "+     count: 1",
        "-     count: 4",
        "+     count: 3",
        "+   KD7F-1: {kind: sheet, material: birch plywood, thickness: 18, size: [610, 402.5], "
        "count: 1, note: left of birch 18}",
        "+ taken:",
        f'+   - "{shop.rack.taken[0]}"',
    ]
    assert changed[0].startswith("-   K1: {")
    with pytest.raises(ProblemsError, match="is there already"):
        new_rack(tmp_path / "rack.yaml")
