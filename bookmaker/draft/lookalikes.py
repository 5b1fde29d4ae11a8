"""Puzzles that look alike: the same seen from another side, or with other digits where no rule speaks of digits.

In: a puzzle. Out: a key that is equal for two such puzzles. The eight turns and mirrors of the square are all that is
looked at.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from typing import TypeAlias

from bookmaker.changes.arrangement import same_mark
from bookmaker.changes.turning import turned, views
from bookmaker.rules.common.contract import RuledPuzzle

KeyOf: TypeAlias = Callable[[RuledPuzzle], Hashable]
"""What tells look-alikes: equal for two puzzles that are."""


def key_of(puzzle: RuledPuzzle) -> Hashable:
    """The least of the eight ways to see a puzzle."""
    return min(repr(_told(turned(puzzle, move))) for move in views(puzzle.grid.size))


def _told(puzzle: RuledPuzzle) -> Hashable:
    """All that a puzzle says, in an order of its own."""
    marks = []
    for rule in puzzle.rules:
        told = sorted((repr(_place(same_mark(p, rule))), p.name, p.value) for p in rule.parts(puzzle.grid))
        marks.append((rule.kind, sorted(rule.said_options().items()), told))
    givens = puzzle.givens if puzzle.rules else _relabelled(puzzle.givens)
    return (tuple(givens), puzzle.grid.regions, sorted(marks))


def _place(place: object) -> object:
    """Sets in an order of their own."""
    return sorted(map(sorted, place)) if isinstance(place, frozenset) else place


def _relabelled(digits: Sequence[int]) -> list[int]:
    """Digits numbered as they are met."""
    names = {0: 0}
    return [names.setdefault(digit, len(names)) for digit in digits]
