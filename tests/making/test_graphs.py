"""Graphs, held to what their words mean."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from rodwright.making.graphs import closed_cycles, holding_together

EDGES = st.sets(st.tuples(st.integers(0, 7), st.integers(0, 7)).filter(lambda e: e[0] != e[1]))


def _reached(after: dict[int, set[int]], start: int) -> set[int]:
    found, left = {start}, [start]
    while left:
        for other in after[left.pop()] - found:
            found.add(other)
            left.append(other)
    return found


@given(EDGES)
def test_closed_cycles_are_what_reaches_nothing_but_itself(edges: set[tuple[int, int]]) -> None:
    after = {node: {b for a, b in edges if a == node} for node in range(8)}
    reached = {node: _reached(after, node) for node in after}
    closed = {
        tuple(sorted(reached[node]))
        for node in after
        if all(reached[other] == reached[node] for other in reached[node])
    }
    assert sorted(closed_cycles(after)) == sorted(closed)


@given(EDGES)
def test_without_a_node_that_holds_together_there_are_more_parts(
    edges: set[tuple[int, int]],
) -> None:
    beside = {
        node: {b for a, b in edges if a == node} | {a for a, b in edges if b == node}
        for node in range(8)
    }

    def parts(nodes: set[int]) -> int:
        within = {node: beside[node] & nodes for node in nodes}
        return len({frozenset(_reached(within, node)) for node in nodes})

    whole = set(beside)
    holding = {node for node in whole if parts(whole - {node}) > parts(whole)}
    assert holding_together(beside) == holding


def test_a_long_chain_needs_no_recursion() -> None:
    last = 5000
    after = {node: {node + 1} for node in range(last)} | {last: set()}
    beside = {node: {node - 1, node + 1} & after.keys() for node in after}
    assert holding_together(beside) == set(range(1, last))
    assert closed_cycles(after) == [(last,)]
