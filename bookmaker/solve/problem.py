"""The few primitives in which every rule kind says what it asks of the cells.

A `Problem` knows cells (whole numbers from 0), digits (1 to `digits`) and sets of digits (masks: digit d is bit
d - 1). It knows no rule kind, no geometry and no file.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from typing import TypeAlias


@dataclass(frozen=True, slots=True)
class Different:
    """All these cells hold different digits; as many cells as digits make a full house, which holds each digit."""

    cells: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Relation:
    """The same relation on each pair (a, b) of cells: `allowed[d]` is the mask of digits for b when a holds d.

    `allowed` has digits + 1 members; member 0 is unused.
    """

    pairs: tuple[tuple[int, int], ...]
    allowed: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Combination:
    """The cells hold different digits, and together exactly one of these sets (masks of len(cells) digits)."""

    cells: tuple[int, ...]
    sets: frozenset[int]


@dataclass(frozen=True, slots=True)
class Sum:
    """The sum of factor × digit over the terms (cell, factor) lies in `least`..`most`. Repeats are allowed."""

    terms: tuple[tuple[int, int], ...]
    least: int
    most: int


@dataclass(frozen=True, slots=True)
class Count:
    """How many of the cells hold a digit of the mask `digits` lies in `least`..`most`."""

    cells: tuple[int, ...]
    digits: int
    least: int
    most: int


@dataclass(frozen=True, slots=True)
class DifferentCount:
    """How many different digits the cells hold lies in `least`..`most`."""

    cells: tuple[int, ...]
    least: int
    most: int


@dataclass(frozen=True, slots=True)
class Automaton:
    """The digits along the cells, in order, are accepted by a finite automaton.

    State 0 is the start. `steps[state][d]` is the next state, or -1 where digit d is refused (member 0 unused).
    The line is kept if it ends in one of `accept`. Tables of allowed tuples are said this way too.

    `lean`, if given, makes the steps and the accepting states of another automaton that accepts the same lines as long
    as the other constraints hold, though it sees less at a time: it serves where every state has to be written out.
    """

    cells: tuple[int, ...]
    steps: tuple[tuple[int, ...], ...]
    accept: frozenset[int]
    lean: Callable[[], tuple[tuple[tuple[int, ...], ...], frozenset[int]]] | None = field(default=None, compare=False)


@dataclass(frozen=True, slots=True)
class Allowed:
    """Each of the cells holds a digit of the mask."""

    cells: tuple[int, ...]
    digits: int


Constraint: TypeAlias = Different | Relation | Combination | Sum | Count | DifferentCount | Automaton | Allowed


@dataclass(frozen=True)
class Problem:
    """Fill `cells` cells with digits 1..`digits` so that every constraint is kept."""

    cells: int
    digits: int
    constraints: tuple[Constraint, ...]


def relation(pairs: Iterable[tuple[int, int]], digits: int, keeps: Iterable[tuple[int, int]]) -> Relation:
    """A `Relation` from the pairs of digits (at a, at b) that keep it."""
    allowed = [0] * (digits + 1)
    for at_a, at_b in keeps:
        allowed[at_a] |= 1 << (at_b - 1)
    return Relation(tuple(pairs), tuple(allowed))
