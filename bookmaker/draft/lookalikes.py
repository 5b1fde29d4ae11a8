"""Puzzles that look alike: the same seen from another side, or with other digits where no rule speaks of digits.

In: a puzzle. Out: a key that is equal for two such puzzles. The eight turns and mirrors of the square are all that is
looked at.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from dataclasses import replace
from typing import TypeAlias

from bookmaker.changes.arrangement import arrangement, same_mark
from bookmaker.rules.common.contract import RuledPuzzle

KeyOf: TypeAlias = Callable[[RuledPuzzle], Hashable]
"""What tells look-alikes: equal for two puzzles that are."""


def key_of(puzzle: RuledPuzzle) -> Hashable:
    """The least of the eight ways to see a puzzle."""
    size = puzzle.grid.size
    moves = {move for name in ("quarter-turn", "both-mirrors", "diagonal") for move in arrangement(name, size).moves}
    moves |= {tuple(one[cell] for cell in other) for one in moves for other in moves}
    return min(repr(_seen(puzzle, move)) for move in moves)


def _seen(puzzle: RuledPuzzle, move: Sequence[int]) -> Hashable:
    grid = puzzle.grid
    givens = [0] * len(move)
    for cell, digit in enumerate(puzzle.givens):
        givens[move[cell]] = digit
    regions = sorted(tuple(sorted(move[cell] for cell in region)) for region in grid.regions)
    marks = []
    for rule in puzzle.rules:
        parts = [replace(part, cells=tuple(move[cell] for cell in part.cells)) for part in rule.parts(grid)]
        told = sorted((repr(_place(same_mark(part, rule))), part.name, part.value) for part in parts)
        marks.append((rule.kind, sorted(rule.said_options().items()), told))
    return (givens if puzzle.rules else _relabelled(givens), regions, sorted(marks))


def _place(place: object) -> object:
    """Sets in an order of their own."""
    return sorted(map(sorted, place)) if isinstance(place, frozenset) else place


def _relabelled(digits: Sequence[int]) -> list[int]:
    """Digits numbered as they are met."""
    names = {0: 0}
    return [names.setdefault(digit, len(names)) for digit in digits]
