"""Grids for tests of the engine, said in its primitives: squares, boxes, givens, data that may be absent."""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.solve.problem import Allowed, Constraint, Different, Problem


def latin(size: int) -> tuple[Different, ...]:
    """Rows and columns of a square."""
    rows = [tuple(range(row * size, row * size + size)) for row in range(size)]
    columns = [tuple(range(column, size * size, size)) for column in range(size)]
    return tuple(Different(cells) for cells in rows + columns)


def boxed(size: int, height: int, width: int) -> tuple[Different, ...]:
    """Rows, columns and boxes of a square."""
    boxes = [
        tuple((top + r) * size + left + c for r in range(height) for c in range(width))
        for top in range(0, size, height)
        for left in range(0, size, width)
    ]
    return (*latin(size), *(Different(cells) for cells in boxes))


def diagonals(size: int) -> tuple[Different, Different]:
    """The two diagonals of a square."""
    falling = tuple(range(0, size * size, size + 1))
    rising = tuple(range(size - 1, size * size - 1, size - 1))
    return Different(falling), Different(rising)


def givens(text: str | Sequence[int]) -> tuple[Allowed, ...]:
    """Givens from digits, with “.” or 0 for an empty cell."""
    digits = [0 if digit == "." else int(digit) for digit in text]
    return tuple(Allowed((cell,), 1 << digit - 1) for cell, digit in enumerate(digits) if digit)


def square(size: int, *constraints: Constraint) -> Problem:
    """A problem on a square with as many digits as its side is long."""
    return Problem(size * size, size, constraints)


def classic(text: str) -> Problem:
    """A classic 9×9 puzzle; spaces in the text are left out."""
    return square(9, *boxed(9, 3, 3), *givens("".join(text.split())))


def digits_of(text: str) -> tuple[int, ...]:
    """A filled grid from its digits; spaces are left out."""
    return tuple(int(digit) for digit in "".join(text.split()))
