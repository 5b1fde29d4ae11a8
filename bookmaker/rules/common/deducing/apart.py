"""Cells that must differ though they share no row, column or box, as the moves of chess pieces make them.

In: the grid and the moves. Out: pairs for a relation, and the human steps that such a rule allows.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache

from bookmaker.puzzle.bits import board_of, cells_on
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Reached
from bookmaker.reasons.patterns import SeenByAll
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.candidates import peers
from bookmaker.solve.problem import Relation, relation

Move = tuple[int, int]
"""Rows down and columns to the right."""


def all_differ(grid: Grid, moves: Sequence[Move]) -> Relation:
    """Different digits at every two cells that one of the moves joins; each pair of cells is named once."""
    pairs = [
        (cell, grid.cell(grid.row(cell) + down, grid.column(cell) + across))
        for down, across in moves
        for cell in grid.cells
        if grid.inside(grid.row(cell) + down, grid.column(cell) + across)
    ]
    return relation(pairs, grid.size, ((a, b) for a in grid.digits for b in grid.digits if a != b))


@lru_cache(maxsize=32)
def _reached(grid: Grid, moves: tuple[Move, ...]) -> tuple[int, ...]:
    """For each cell the board of those that a move joins it to."""
    boards = [0] * grid.numbered
    for one, other in all_differ(grid, moves).pairs:
        boards[one] |= 1 << other
        boards[other] |= 1 << one
    return tuple(boards)


def differing(position: Position, moves: tuple[Move, ...], kind: str) -> Iterator[Deduction]:
    """A digit that is settled goes from all cells a move away; and one that a cell sees all places of, from that cell.

    `kind` is the rule's.
    """
    mark = MarkRef.whole(kind)
    grid, masks = position.grid, position.masks
    reached, seen = _reached(grid, moves), peers(grid)
    for cell in grid.cells:
        if masks[cell].bit_count() == 1:
            digit = masks[cell].bit_length()
            removed = _on(position.boards[digit] & reached[cell], digit)
            if removed:
                yield Deduction(Rung.SIMPLE, 1, (cell,), removed, mark, Reached(cell, digit))
    for house in grid.houses:
        home = board_of(house.cells)
        for digit in grid.digits:
            places = [cell for cell in house.cells if position.may(cell, digit)]
            if not 2 <= len(places) <= 4:
                continue
            board = position.boards[digit] & ~home
            moved = 0
            for place in places:
                board &= reached[place] | seen[place]
                moved |= reached[place]
            removed = _on(board & moved, digit)
            if removed:
                rung = Rung.PAIR if len(places) == 2 else Rung.WHOLE
                claim = SeenByAll(digit, house.ref, tuple(places))
                yield Deduction(rung, len(places), tuple(places), removed, mark, claim)


def _on(board: int, digit: int) -> tuple[Candidate, ...]:
    """The candidates (cell, digit) of one digit on a board."""
    return tuple((cell, digit) for cell in cells_on(board))
