"""Parity runs: how many digits from that side are all even, or all odd.

Manifest: by side, a row of clues with dots for none.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import product

from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import NoFilling, OnlyDigits
from bookmaker.rules.common.clue import Clue
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.candidates import removed_by
from bookmaker.rules.common.runs_from_side import RunRule


class ParityRun(RunRule):
    """Each clue's value is how many digits have the parity of the nearest."""

    kind = "parity-run"
    title = "Parity runs"
    noun = "parity run"
    relabels = "reversed"
    from_zero = True
    example = """\
parity-run:
  left: 3 . . 1 . . 4 . .
  bottom: . 2 . . . 5 . . .
"""
    strokes = (((-0.1, -0.05), (0.1, -0.05)), ((-0.1, 0.05), (0.1, 0.05)))

    @staticmethod
    def goes_on(before: int, after: int) -> bool:
        return before % 2 == after % 2

    @staticmethod
    def longest(size: int) -> int:
        return (size + 1) // 2

    def holds(self, grid: Grid, digits: Sequence[int]) -> bool:
        for clue in self.clues:
            line = [digits[cell] & 1 for cell in clue.cells(grid)]
            first, beyond = line[: clue.value], line[clue.value : clue.value + 1]
            if len(set(first)) > 1 or beyond == first[:1]:
                return False
        return True

    def deductions(self, position: Position) -> Iterator[Deduction]:
        """What all ways to call the runs of a line even or odd have in common: of each clue, then of both at a line."""
        grid = position.grid
        lines: dict[str, list[Clue]] = {}
        for clue in self.clues:
            lines.setdefault(clue.house, []).append(clue)
            yield from _alone(clue, position)
        for clues in lines.values():
            if len(clues) == 2:
                kept = _kept(clues, position)
                removed = removed_by(position, kept)
                if removed and kept:
                    cells = tuple(sorted(kept))
                    mark = MarkRef.joined(self.kind, clues[0].cells(grid))
                    yield Deduction(Rung.PAIR, 2, cells, removed, mark, NoFilling(cells))


def _alone(clue: Clue, position: Position) -> Iterator[Deduction]:
    """Steps from one clue: digits of the run, and the digit that ends it."""
    kept, mark = _kept([clue], position), clue.refer(ParityRun.kind, position.grid)
    for mask in dict.fromkeys(kept.values()):
        cells = tuple(cell for cell in kept if kept[cell] == mask)
        removed = removed_by(position, dict.fromkeys(cells, mask))
        if removed:
            told = OnlyDigits(cells, digits_in(mask))
            yield Deduction(Rung.SIMPLE, 1, cells, removed, mark, told)


def _kept(clues: Sequence[Clue], position: Position) -> Mapping[int, int]:
    """The digits left to the cells of a line, over every way to call the runs of its clues even or odd."""
    grid, masks = position.grid, position.masks
    sorts = mask_of(grid.digits[1::2]), mask_of(grid.digits[::2])
    line = clues[0].cells(grid)
    kept: dict[int, int] = {}
    for chosen in product((0, 1), repeat=len(clues)):
        called: dict[int, set[int]] = {}
        for clue, sort in zip(clues, chosen, strict=True):
            cells = clue.cells(grid)
            for at, cell in enumerate(cells[: clue.value + 1]):
                called.setdefault(cell, set()).add(sort if at < clue.value else 1 - sort)
        counts = [sum(found == {sort} for found in called.values()) for sort in (0, 1)]
        full = [sort for sort in (0, 1) if counts[sort] == sorts[sort].bit_count()]
        left = {1 - sort for sort in full} or {0, 1}
        asked = {cell: sum(sorts[sort] for sort in called.get(cell, left)) for cell in line}
        fits = all(len(found) == 1 for found in called.values())
        fits = fits and all(counts[sort] <= sorts[sort].bit_count() for sort in (0, 1))
        if fits and all(masks[cell] & mask for cell, mask in asked.items()):
            for cell, mask in asked.items():
                kept[cell] = kept.get(cell, 0) | mask
    return kept
