"""Puzzles from lines of digits, as tests write them."""

from __future__ import annotations

from typing import Never

from bookmaker.puzzle.grid import CLASSIC, SYMBOLS
from bookmaker.puzzle.puzzle import Puzzle


def digits_from(text: str) -> tuple[int, ...]:
    """Digits from one line of symbols; “.” and “0” are empty. Raises ValueError at any other character."""
    return tuple(0 if c in ".0" else SYMBOLS.index(c) + 1 for c in text)


def classic(text: str) -> Puzzle[Never]:
    """A classic 9×9 puzzle from its 81 characters."""
    return Puzzle(CLASSIC, digits_from(text))
