"""Directed and undirected graphs: what can leave as one, and what holds the rest together."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Set
from typing import TypeVar

Node = TypeVar("Node")


def closed_cycles(after: Mapping[Node, Set[Node]]) -> list[tuple[Node, ...]]:
    """The strongly connected parts that no edge leads out of, in the order of their first nodes.

    ``after`` says where each node's edges lead.  Tarjan's algorithm (Depth-first search and linear
    graph algorithms, SIAM Journal on Computing 1, 1972), without recursion.
    """
    number: dict[Node, int] = {}
    low: dict[Node, int] = {}
    stack: list[Node] = []
    waiting: set[Node] = set()
    part: dict[Node, int] = {}
    parts: list[list[Node]] = []
    for root in after:
        if root in number:
            continue
        number[root] = low[root] = len(number)
        stack.append(root)
        waiting.add(root)
        path = [(root, iter(after[root]))]
        while path:
            node, edges = path[-1]
            for other in edges:
                if other not in number:
                    number[other] = low[other] = len(number)
                    stack.append(other)
                    waiting.add(other)
                    path.append((other, iter(after[other])))
                    break
                if other in waiting:
                    low[node] = min(low[node], number[other])
            else:
                path.pop()
                if path:
                    low[path[-1][0]] = min(low[path[-1][0]], low[node])
                if low[node] == number[node]:
                    found = stack[stack.index(node) :]
                    del stack[len(stack) - len(found) :]
                    waiting.difference_update(found)
                    part.update((each, len(parts)) for each in found)
                    parts.append(found)
    order = {node: at for at, node in enumerate(after)}
    closed = [
        tuple(sorted(each, key=order.__getitem__))
        for which, each in enumerate(parts)
        if all(part[other] == which for node in each for other in after[node])
    ]
    return sorted(closed, key=lambda each: order[each[0]])


def holding_together(beside: Mapping[Node, Iterable[Node]]) -> set[Node]:
    """The nodes without which what hangs together falls apart: the articulation points.

    ``beside`` says both ways which nodes are joined.  Hopcroft and Tarjan's algorithm (Efficient
    algorithms for graph manipulation, Communications of the ACM 16, 1973), without recursion.
    """
    number: dict[Node, int] = {}
    low: dict[Node, int] = {}
    found: set[Node] = set()
    for root in beside:
        if root in number:
            continue
        number[root] = low[root] = len(number)
        path = [(root, root, iter(beside[root]))]
        branches = 0
        while path:
            node, before, edges = path[-1]
            for other in edges:
                if other not in number:
                    number[other] = low[other] = len(number)
                    path.append((other, node, iter(beside[other])))
                    break
                if other != before:
                    low[node] = min(low[node], number[other])
            else:
                path.pop()
                if before == root:
                    branches += node != root
                elif low[node] >= number[before]:
                    found.add(before)
                if path:
                    low[before] = min(low[before], low[node])
        if branches > 1:
            found.add(root)
    return found
