"""A puzzle as pure data: a grid, its givens, its rules."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

from bookmaker.puzzle.grid import SYMBOLS, Grid

RuleT = TypeVar("RuleT", covariant=True)


@dataclass(frozen=True)
class Puzzle(Generic[RuleT]):
    """`givens` has a digit for each cell, 0 where the cell is empty. What a rule is, only the room `rules` knows."""

    grid: Grid
    givens: tuple[int, ...]
    rules: tuple[RuleT, ...] = ()

    @property
    def given_count(self) -> int:
        """How many cells are filled at the start."""
        return len(self.givens) - self.givens.count(0)

    @property
    def givens_text(self) -> str:
        """The givens as one line, “.” for an empty cell."""
        return digits_text(self.givens, self.grid.symbols)


def digits_text(digits: tuple[int, ...], symbols: str = SYMBOLS) -> str:
    """Digits as one line of symbols, “.” for 0."""
    return "".join(symbols[d - 1] if d else "." for d in digits)
