"""A puzzle's marks as a what-if reads them: each for itself and as a whole.

In: a constraint that says more than that cells differ or what one cell allows, with its rule. Out: the candidates that
it rules out among those of its cells, remembered, since many what-ifs come to the same.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeAlias, assert_never

from bookmaker.logic.enumeration import Whole, narrow
from bookmaker.logic.relations import Pairs
from bookmaker.puzzle.bits import board_of, cells_on, digits_in
from bookmaker.rules.common.contract import Rule
from bookmaker.solve.problem import Automaton, Combination, Constraint, Count, DifferentCount, Relation, Sum

Strikes: TypeAlias = tuple[int, ...] | None
"""By digit the boards that go; empty where nothing goes, None where nothing fits."""

REMEMBERED = 50_000
"""Readings of one mark that are kept."""


class Mark:
    """`rule` asks for it, `cells` are its cells in their order, `board` the board of them."""

    __slots__ = ("_known", "_pairs", "board", "cells", "constraint", "rule")

    def __init__(self, constraint: Relation | Whole, rule: Rule) -> None:
        self.constraint = constraint
        self.rule = rule
        match constraint:
            case Relation(pairs, _):
                cells = [cell for pair in pairs for cell in pair]
            case Sum(terms, _, _):
                cells = [cell for cell, _ in terms]
            case Combination() | Count() | DifferentCount() | Automaton():
                cells = list(constraint.cells)
            case _ as never:
                assert_never(never)
        self.cells = tuple(dict.fromkeys(cells))
        self.board = board_of(cells)
        self._pairs = Pairs(constraint) if isinstance(constraint, Relation) else None
        self._known: dict[tuple[int, ...], Strikes] = {}

    def strikes(self, boards: Sequence[int]) -> Strikes:
        """What the mark rules out on these boards, filled cells included."""
        here = self.board
        key = tuple([board & here for board in boards])
        known = self._known
        if key in known:
            return known[key]
        if len(known) > REMEMBERED:
            known.clear()
        known[key] = struck = self._pairs.strikes(key) if self._pairs else self._whole(key)
        if struck:  # read again, a mark has no more to say
            known[tuple([board & ~gone for board, gone in zip(key, struck, strict=True)])] = ()
        return struck

    def settled(self, boards: Sequence[int]) -> bool:
        """Is it known that the mark will strike nothing, whatever else goes from these boards?"""
        return self._pairs is not None and self._pairs.settled(boards)

    def _whole(self, boards: tuple[int, ...]) -> Strikes:
        masks = [0] * (self.board.bit_length())
        for digit in range(1, len(boards)):
            bit = 1 << (digit - 1)
            for cell in cells_on(boards[digit]):
                masks[cell] |= bit
        before = masks[:]
        assert not isinstance(self.constraint, Relation)
        if not narrow(self.constraint, masks):
            return None
        struck = [0] * len(boards)
        for cell in self.cells:
            for digit in digits_in(before[cell] & ~masks[cell]):
                struck[digit] |= 1 << cell
        return tuple(struck) if any(struck) else ()


def mark_of(constraint: Constraint, rule: Rule) -> Mark | None:
    """The mark; None for a constraint that speaks of differing or of single cells alone."""
    return Mark(constraint, rule) if isinstance(constraint, Relation | Whole) else None
