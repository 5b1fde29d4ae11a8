"""What marks between cells that share a side ask of their digits, and the human steps that follow from it.

In: pairs of neighbours under the kind of their mark. Out: relations for the engine, and deductions.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from typing import TypeAlias

from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.fillings import never_stand
from bookmaker.rules.common.parts import Part
from bookmaker.rules.common.wording import cells_listed, digits_listed, symbol
from bookmaker.solve.problem import Relation, relation

Pair: TypeAlias = tuple[int, int]
"""Two cells that share a side, in the grid's order."""


@dataclass(frozen=True, slots=True)
class MarkKind:
    """What a mark is called, with its article (“the white dot”), and which digits may stand on its two sides."""

    called: str
    keeps: Callable[[int, int], bool]


@dataclass(frozen=True, slots=True)
class BorderMarks:
    """The pairs that carry each kind of mark; where all are marked, a pair without one says as much.

    `noun` is what one mark is called (“dot”), whatever its kind.
    """

    noun: str
    pairs: tuple[tuple[MarkKind, tuple[Pair, ...]], ...]
    all_marked: bool

    def asked(self, grid: Grid) -> Iterator[Relation]:
        """What each kind of mark asks, and what its absence asks."""
        for _, made in self._there(grid):
            yield made
        yield from self.asked_where_missing(grid)

    def asked_where_missing(self, grid: Grid) -> Iterator[Relation]:
        """What borders without a mark ask, if all are marked."""
        if self.all_marked:
            yield self._missing(grid)

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """Digits without a partner at a mark, or at a missing one; and strings of marks worked through."""
        there = self._there(position.grid)
        for called, made in there:
            yield from partnerless(position, made, called)
        if self.all_marked:
            yield from partnerless(position, self._missing(position.grid), f"the missing {self.noun}", 6)
        yield from _worked_through(position, [made for _, made in there], f"{self.noun}s")

    def _there(self, grid: Grid) -> list[tuple[str, Relation]]:
        return [(kind.called, neighbour_relation(pairs, grid, kind.keeps)) for kind, pairs in self.pairs if pairs]

    def _missing(self, grid: Grid) -> Relation:
        marked = {pair for _, pairs in self.pairs for pair in pairs}
        bare = [pair for pair in neighbours(grid) if pair not in marked]
        return neighbour_relation(bare, grid, lambda a, b: not any(kind.keeps(a, b) for kind, _ in self.pairs))


def neighbours(grid: Grid) -> tuple[Pair, ...]:
    """All pairs of cells that share a side, each once."""
    return tuple((cell, other) for cell in grid.cells for other in grid.orthogonal(cell) if cell < other)


def pair_of(part: Part) -> Pair:
    """The two cells of a mark on a border, in the grid's order."""
    one, other = sorted(part.cells)
    return one, other


def neighbour_relation(pairs: Iterable[Pair], grid: Grid, keeps: Callable[[int, int], bool]) -> Relation:
    """What `keeps` says of the digits on the two sides of a border.

    Cells that share a side share a row or column, so their digits differ: said here once more, it makes the sweep
    stronger (no 5 at an X).
    """
    digits = grid.digits
    return relation(pairs, grid.size, ((a, b) for a in digits for b in digits if a != b and keeps(a, b)))


def partnerless(position: Position, asked: Relation, mark: str, rung: int = 5) -> Iterator[Deduction]:
    """Digits of a cell that find no partner across a border. `mark` begins the words; the relation is symmetric."""
    grid, masks = position.grid, position.masks
    for pair in asked.pairs:
        for cell, beyond in (pair, pair[::-1]):
            gone = [digit for digit in digits_in(masks[cell]) if not asked.allowed[digit] & masks[beyond]]
            if gone:
                name, partner = grid.name(cell), grid.name(beyond)
                said = f"rules out {digits_listed(gone)} in {name}, which would leave nothing for {partner}"
                words = f"{mark} between {cells_listed(grid, pair)} {said}"
                yield Deduction(rung, 2, pair, tuple((cell, digit) for digit in gone), words)


def _worked_through(position: Position, asked: Sequence[Relation], what: str) -> Iterator[Deduction]:
    """Strings of three to six cells joined by marks: digits that stand in no filling of the whole string.

    `what` is what the string is made of (“dots”). The relations are symmetric.
    """
    beside = {pair: made.allowed for made in asked for pair in made.pairs}
    for cells in strings(list(beside)):
        if not 3 <= len(cells) <= 6:
            continue

        def fits(digits: Sequence[int], cells: Sequence[int] = cells) -> bool:
            last = len(digits) - 1
            return all(
                beside[min(pair), max(pair)][digits[last]] >> (digits[at] - 1) & 1
                for at in range(last)
                if (min(pair := (cells[at], cells[last])), max(pair)) in beside
            )

        removed = never_stand(position, cells, fits)
        if removed:
            cell, digit = removed[0]
            where = f"the {what} that join {cells_listed(position.grid, cells)}"
            words = f"no way to fill {where} puts {symbol(digit)} in {position.grid.name(cell)}"
            yield Deduction(7, len(cells), cells, removed, words)


def strings(pairs: Sequence[Pair]) -> Iterator[tuple[int, ...]]:
    """The cells that hang together by pairs; each cell but the first stands beside an earlier one."""
    left = list(pairs)
    while left:
        cells = list(left.pop(0))
        while joined := next((pair for pair in left if pair[0] in cells or pair[1] in cells), None):
            left.remove(joined)
            cells += [cell for cell in joined if cell not in cells]
        yield tuple(cells)
