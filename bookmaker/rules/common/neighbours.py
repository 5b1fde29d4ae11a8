"""What marks between cells that share a side ask of their digits, and the human steps that follow from it.

In: pairs of neighbours under the kind of their mark. Out: relations for the engine, and deductions.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import TypeAlias

from bookmaker.puzzle.bits import digits_in, highest
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Beside, NoFilling, NoPartner
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.enumeration import Fits, unsupported_candidates
from bookmaker.rules.common.parts import Part
from bookmaker.solve.problem import Relation, relation

Pair: TypeAlias = tuple[int, int]
"""Two cells that share a side, in the grid's order."""

MISSING = "missing"
"""The variety of a mark that is not there, where all are marked."""


@dataclass(frozen=True, slots=True)
class MarkKind:
    """What a mark is called, with its article (“the white dot”), which digits may stand on its two sides by what they
    are worth, and the word that tells it from other marks of its kind (“white”), with the figures printed in it, if
    any."""

    called: str
    keeps: Callable[[int, int], bool]
    variety: str
    value: str = ""


@dataclass(frozen=True, slots=True)
class BorderMarks:
    """The pairs that carry each kind of mark; where all are marked, a pair without one says as much.

    `kind` is the rule's.
    """

    kind: str
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
        for mark, made in there:
            yield from partnerless(position, made, self.kind, mark.variety, value=mark.value)
        if self.all_marked:
            yield from partnerless(position, self._missing(position.grid), self.kind, MISSING, Rung.PAIR)
        yield from _worked_through(position, [made for _, made in there], self.kind)

    def references(self, grid: Grid) -> tuple[MarkRef, ...]:
        """Every mark, and every missing one that says as much."""
        said = [(mark.value, mark.variety, pairs) for mark, pairs in self.pairs]
        said += [("", MISSING, self._bare(grid))] if self.all_marked else []
        return tuple(
            MarkRef.between(self.kind, pair, value, variety) for value, variety, pairs in said for pair in pairs
        )

    def _there(self, grid: Grid) -> list[tuple[MarkKind, Relation]]:
        return [(mark, neighbour_relation(pairs, grid, mark.keeps)) for mark, pairs in self.pairs if pairs]

    def _bare(self, grid: Grid) -> tuple[Pair, ...]:
        marked = {pair for _, pairs in self.pairs for pair in pairs}
        return tuple(pair for pair in neighbours(grid) if pair not in marked)

    def _missing(self, grid: Grid) -> Relation:
        keeps = [kind.keeps for kind, _ in self.pairs]
        return neighbour_relation(self._bare(grid), grid, lambda a, b: not any(kept(a, b) for kept in keeps))


def neighbours(grid: Grid) -> tuple[Pair, ...]:
    """All pairs of cells that share a side, each once."""
    return tuple((cell, other) for cell in grid.cells for other in grid.orthogonal(cell) if cell < other)


def pair_of(part: Part) -> Pair:
    """The two cells of a mark on a border, in the grid's order."""
    one, other = sorted(part.cells)
    return one, other


def neighbour_relation(pairs: Iterable[Pair], grid: Grid, keeps: Callable[[int, int], bool]) -> Relation:
    """What `keeps` says of the digits on the two sides of a border, by what they are worth.

    Cells that share a side share a row or column, so their digits differ: said here once more, it makes the sweep
    stronger (no 5 at an X).
    """
    digits, worth = grid.digits, grid.worth
    keep = ((a, b) for a in digits for b in digits if a != b and keeps(worth(a), worth(b)))
    return relation(pairs, grid.size, keep)


def partnerless(
    position: Position, asked: Relation, kind: str, variety: str, rung: Rung = Rung.SIMPLE, value: str = ""
) -> Iterator[Deduction]:
    """Digits of a cell that find no partner across a border, at marks of a kind, variety and value. The relation is
    symmetric."""
    masks = position.masks
    for pair in asked.pairs:
        for cell, beyond in (pair, pair[::-1]):
            gone = tuple(digit for digit in digits_in(masks[cell]) if not asked.allowed[digit] & masks[beyond])
            if gone:
                mark = MarkRef.between(kind, pair, value, variety)
                removed = tuple((cell, digit) for digit in gone)
                written = position.placed >> beyond & 1
                known = Beside(cell, gone, beyond, highest(masks[beyond]))
                claim = known if written else NoPartner(cell, gone, (beyond,))
                yield Deduction(rung, 2, pair, removed, mark, claim)


def _worked_through(position: Position, asked: Sequence[Relation], kind: str) -> Iterator[Deduction]:
    """Strings of three to six cells joined by marks of a kind: digits that stand in no filling of the whole string.

    The relations are symmetric.
    """
    for cells, fits in _short_strings(tuple(asked)):
        removed = unsupported_candidates(position, cells, fits)
        if removed:
            mark = MarkRef.joined(kind, cells)
            yield Deduction(Rung.WHOLE, len(cells), cells, removed, mark, NoFilling(cells))


@lru_cache(maxsize=256)
def _short_strings(asked: tuple[Relation, ...]) -> tuple[tuple[tuple[int, ...], Fits], ...]:
    """The strings of three to six cells, each with what its relations ask; made once, as `enumeration.py` asks."""
    beside = {pair: made.allowed for made in asked for pair in made.pairs}

    def fitting(cells: tuple[int, ...]) -> Fits:
        def fits(digits: Sequence[int]) -> bool:
            last = len(digits) - 1
            return all(
                beside[min(pair), max(pair)][digits[last]] >> (digits[at] - 1) & 1
                for at in range(last)
                if (min(pair := (cells[at], cells[last])), max(pair)) in beside
            )

        return fits

    return tuple((cells, fitting(cells)) for cells in strings(list(beside)) if 3 <= len(cells) <= 6)


def strings(pairs: Sequence[Pair]) -> Iterator[tuple[int, ...]]:
    """The cells that hang together by pairs; each cell but the first stands beside an earlier one."""
    left = list(pairs)
    while left:
        cells = list(left.pop(0))
        while joined := next((pair for pair in left if pair[0] in cells or pair[1] in cells), None):
            left.remove(joined)
            cells += [cell for cell in joined if cell not in cells]
        yield tuple(cells)
