"""Which digits a few cells hold between them, where all choices can be listed: what a solver notes beside a cage.

In: a position, cells that hold different digits, and the sets of digits that they may hold together. Out: the steps
that follow from the sets that still fit.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import lru_cache, reduce
from itertools import combinations
from operator import and_, or_

from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Needed, NoCombination, OneCombination
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.candidates import locked_out, removed_by
from bookmaker.rules.common.deducing.enumeration import Fits, tried_out


def combination_steps(
    position: Position, cells: tuple[int, ...], sets: Iterable[int], mark: MarkRef, fits: Fits | None = None
) -> Iterator[Deduction]:
    """Digits in no set that fits; digits that all of them hold, which see others away; then the cells worked through.

    A set (a mask, of fewer digits than cells where digits repeat) fits if every cell has a candidate in it and every
    digit of it a cell. `fits` says how the cells may be filled; left out, their digits differ and belong to one set.
    """
    masks = position.masks
    open_to = reduce(or_, (masks[cell] for cell in cells))
    every = frozenset(sets)
    ways = [digits for digits in every if not digits & ~open_to and all(masks[cell] & digits for cell in cells)]
    if not ways:
        return
    some = reduce(or_, ways)
    removed = removed_by(position, dict.fromkeys(cells, some))
    if removed:
        gone = tuple(sorted({digit for _, digit in removed}))
        claim = OneCombination(digits_in(some)) if len(ways) == 1 else NoCombination(gone)
        yield Deduction(Rung.SIMPLE, len(cells), cells, removed, mark, claim)
    for digit in digits_in(reduce(and_, ways)):
        out = locked_out(position, cells, digit)
        if out:
            places = tuple(cell for cell in cells if position.may(cell, digit))
            yield Deduction(Rung.PAIR, 2, cells, out, mark, Needed(digit, places))
    if not removed and (fits or len(every) <= MOST_SETS):
        yield from tried_out(position, cells, fits or one_of(every), mark)


MOST_SETS = 1000
"""With more sets than this, more than any cage on a 16×16 grid has, nobody goes through them, and no process should."""


@lru_cache(maxsize=1024)
def one_of(sets: frozenset[int]) -> Fits:
    """Do the digits so far differ and belong to one of the sets?"""

    def fits(digits: Sequence[int]) -> bool:
        held = mask_of(digits)
        return held.bit_count() == len(digits) and any(not held & ~digits_of for digits_of in sets)

    return fits


@lru_cache(maxsize=4096)
def sets_worth(grid: Grid, count: int, worth: Callable[[Sequence[int]], int], value: int) -> frozenset[int]:
    """The sets of `count` different digits, as masks, that come to `value`: sums, products and their like."""
    return frozenset(_by_worth(grid.size, grid.worth(1), count, worth).get(value, ()))


@lru_cache(maxsize=256)
def _by_worth(size: int, first: int, count: int, worth: Callable[[Sequence[int]], int]) -> dict[int, set[int]]:
    """All of them, by what they come to; `first` is what the first digit is worth."""
    found: dict[int, set[int]] = {}
    for digits in combinations(range(first, first + size), count):
        found.setdefault(worth(digits), set()).add(sum(1 << (digit - first) for digit in digits))
    return found
