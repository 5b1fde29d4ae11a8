"""A puzzle as pure data: a grid, its givens, its rules."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, Never, TypeVar

from bookmaker.puzzle.grid import CLASSIC, SYMBOLS, Grid

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
        return digits_text(self.givens)


def digits_text(digits: tuple[int, ...]) -> str:
    """Digits as one line of symbols, “.” for 0."""
    return "".join(SYMBOLS[d - 1] if d else "." for d in digits)


def digits_from(text: str) -> tuple[int, ...]:
    """Digits from one line of symbols; “.” and “0” are empty. Raises ValueError at any other character."""
    return tuple(0 if c in ".0" else SYMBOLS.index(c) + 1 for c in text)


def classic(text: str) -> Puzzle[Never]:
    """A classic 9×9 puzzle from its 81 characters."""
    return Puzzle(CLASSIC, digits_from(text))
