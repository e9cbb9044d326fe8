"""The bench: changed by its own methods and by nothing else."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest

import rodwright.setout
from kit.joint_pairs import board
from rodwright.setout.bench import Bench
from rodwright.setout.recut import Recut
from rodwright.unit import (
    Blank,
    Clearance,
    Fixing,
    Grain,
    Hole,
    Joint,
    JointKind,
    Part,
    Placement,
    Role,
    Slide,
    Surface,
)
from rodwright.unit.directions import X, Y

SETOUT = Path(rodwright.setout.__file__).parent
CHANGE = frozenset(
    name
    for kind in (list, dict, set)
    for name in vars(kind).keys() - vars(tuple).keys() - vars(frozenset).keys()
    if not name.startswith("_") and name not in ("keys", "values", "items", "get", "fromkeys")
)
"""Methods of lists, dicts and sets that change them."""


def shelf(ref: str) -> Part:
    return Part(
        ref,
        "Shelf",
        Role.SHELF,
        "Shelves",
        Blank(600.0, 300.0, 18.0, board(18.0), Grain.LENGTHWISE),
        Placement((0.0, 0.0, 0.0), X, Y),
    )


def is_bench(node: ast.expr) -> bool:
    """Whether an expression is a bench, by its name: `bench`, `self.bench`, `work.bench` ..."""
    name = node.id if isinstance(node, ast.Name) else getattr(node, "attr", "")
    return bool(name.strip("_") == "bench")


def reaches_in(node: ast.expr) -> bool:
    """Whether an expression is something of a bench, or in that."""
    while isinstance(node, ast.Attribute | ast.Subscript):
        node = node.value
        if is_bench(node):
            return True
    return False


def changes(tree: ast.AST) -> Iterator[ast.AST]:
    """Where a bench is changed from outside, or looked into behind its methods."""
    for node in ast.walk(tree):
        match node:
            case ast.Assign(targets=targets) | ast.Delete(targets=targets):
                yield from filter(reaches_in, targets)
            case ast.AugAssign(target=target) | ast.AnnAssign(target=target):
                yield from filter(reaches_in, [target])
            case ast.Call(func=ast.Attribute(value=owner, attr=name)) if name in CHANGE:
                yield from filter(reaches_in, [owner])
            case ast.Attribute(value=owner, attr=name) if name.startswith("_") and is_bench(owner):
                yield node


@pytest.mark.parametrize(
    "text",
    [
        "bench.parts[ref] = part",
        "self.bench.parts[ref] = part",
        "work.bench.joints[:] = []",
        "bench.joints += [joint]",
        "del self._bench.parts[ref]",
        "bench.motions.append(swing)",
        "bench.places.setdefault(ref, where)",
        "bench._parts",
    ],
)
def test_changes_are_seen(text: str) -> None:
    assert len(list(changes(ast.parse(text)))) == 1


@pytest.mark.parametrize("text", ["bench.add(part)", "self.bench = bench", "found.append(bench)"])
def test_what_changes_nothing_is_left_alone(text: str) -> None:
    assert list(changes(ast.parse(text))) == []


def test_only_the_bench_changes_what_lies_on_it() -> None:
    found = [
        f"{path.relative_to(SETOUT)}:{getattr(node, 'lineno', 0)}: {ast.unparse(node)}"
        for path in sorted(SETOUT.rglob("*.py"))
        if path.name != "bench.py"
        for node in changes(ast.parse(path.read_text(encoding="utf-8")))
    ]
    assert found == []


def test_what_lies_on_the_bench_is_shown_and_not_handed_out() -> None:
    bench = Bench()
    with bench.wished_at(("interior",)):
        bench.add(shelf("SH1"))
    bench.buy(Fixing("wood screw", 4))
    with pytest.raises(TypeError):
        bench.parts["SH1"] = shelf("SH1")  # type: ignore[index]
    with pytest.raises(AttributeError):
        bench.joints = ()  # type: ignore[misc]
    for each in (bench.joints, bench.clearances, bench.motions, bench.fixings):
        assert isinstance(each, tuple)


def test_a_part_is_wished_where_it_is_laid() -> None:
    bench = Bench()
    with bench.wished_at(("interior",)):
        bench.add(shelf("SH1"))
        with bench.wished_at(("interior", "columns", 0, "shelves")):
            bench.add(shelf("SH2"))
        bench.add(shelf("SH3"))
    assert bench.place_of("SH1") == bench.place_of("SH3") == ("interior",)
    assert bench.place_of("SH2") == ("interior", "columns", 0, "shelves")


def test_a_part_that_nobody_wished_is_refused() -> None:
    bench = Bench()
    with bench.wished_at(("interior",)):
        pass
    with pytest.raises(RuntimeError, match="shelf SH1 is laid at no place of the spec"):
        bench.add(shelf("SH1"))
    assert not bench.parts


def beside(ref: str, z: float, role: Role = Role.SHELF) -> Part:
    return replace(shelf(ref), role=role, placement=Placement((0.0, 0.0, z), X, Y))


def test_the_bench_knows_what_touches_what() -> None:
    bench = Bench()
    with bench.wished_at(("interior",)):
        bench.add(beside("SH1", 0.0))
        bench.add(beside("CR1", 18.0, Role.CARCASS_RAIL))
        bench.add(beside("SH2", 100.0))
    assert bench.refs_of(Role.SHELF) == ["SH1", "SH2"]
    patch = bench.contact("SH1", "CR1")
    assert patch is not None
    assert patch.size == (600.0, 300.0, 0.0)
    assert bench.contact("SH1", "SH2") is None
    assert bench.meet(JointKind.FACE_GLUED, "SH1", "CR1")
    assert not bench.meet(JointKind.FACE_GLUED, "SH1", "SH2")
    assert [joint.at for joint in bench.joints] == [(300.0, 150.0, 18.0)]


def test_what_a_cut_takes_away_goes_with_all_that_was_noted_of_it() -> None:
    bench = Bench()
    with bench.wished_at(("interior",)):
        for ref, z in (("SH1", 0.0), ("SH2", 18.0), ("SH3", 36.0)):
            bench.add(beside(ref, z))
    bench.meet(JointKind.FACE_GLUED, "SH1", "SH2")
    bench.keep_apart("SH1", "SH3", 1.0)
    bench.keep_apart("SH1", "SH2", 1.0)
    bench.move_together(Slide(("SH2", "SH3"), (0.0, -300.0, 0.0)))
    before = bench.workpieces()
    hole = Hole(Surface.FACE, (20.0, 20.0), 5.0)
    bench.recut(Recut({"SH2": before["SH2"].worked(hole)}, bench.joints, frozenset({"SH3"})))
    assert list(bench.parts) == ["SH1", "SH2"]
    assert bench.workings_of("SH2") == (hole,)
    assert bench.joints == (Joint(JointKind.FACE_GLUED, "SH1", "SH2", (300.0, 150.0, 18.0)),)
    assert bench.clearances == (Clearance("SH1", "SH2", 1.0),)
    assert bench.motions == (Slide(("SH2",), (0.0, -300.0, 0.0)),)
    assert before["SH2"].workings == ()
