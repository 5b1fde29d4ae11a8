"""The givens of a puzzle: a text picture of the grid, and whether any two of them clash.

In: the node under `givens:`. Out: a digit for each cell, 0 where it is empty; or diagnostics at the digits themselves.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from bookmaker.puzzle.grid import FROM_ZERO, SYMBOLS, Grid, House
from bookmaker.source.diagnostics import Collector, Place, quoted
from bookmaker.source.placed import Node, Word
from bookmaker.source.textgrid import read_picture

_TIMES = {2: "twice", 3: "three times", 4: "four times"}


@dataclass(frozen=True, slots=True)
class Givens:
    """`digits` and, for each cell, where it was typed (line and column in the picture)."""

    word: Word
    digits: tuple[int, ...]
    spots: tuple[tuple[int, int], ...]

    def place(self, cell: int) -> Place:
        return self.word.at(*self.spots[cell])


def read_givens(node: Node, grid: Grid, collector: Collector, what: str = "the givens") -> Givens | None:
    """The givens, or what else is drawn so; None after reporting every character that cannot stand in this grid."""
    if not isinstance(node, Word):
        name = what.removeprefix("the ")
        hint = f"begin with “{name}: |” and draw the grid on the lines below, indented further"
        collector.error(node.place, "not-a-picture", f"“{name}” should be a picture of the grid", hint)
        return None
    picture = read_picture(node, grid, what, collector)
    if picture is None:
        return None
    signs = {char: _digit(char, grid) for char in {char for char, _, _ in picture}}
    digits = [signs[char] for char, _, _ in picture]
    strays: dict[str, list[Place]] = {}
    for digit, (char, line, column) in zip(digits, picture, strict=True):
        if digit is None:
            strays.setdefault(char, []).append(node.at(line, column))
        elif digit > grid.size:
            said = (
                f"{(SYMBOLS if grid.first else FROM_ZERO)[digit - 1]} is too large for a {grid.size}×{grid.size} grid"
            )
            hint = f"{_told(grid)}; for a larger grid, set “size:”"
            collector.error(node.at(line, column), "digit-large", said, hint)
    for char, (first, *more) in strays.items():
        hint = f"{_told(grid)}; an empty cell is a dot"
        said = f"{quoted(char)} is not {'one of the letters' if grid.lettered else 'a digit'}"
        collector.error(first, "not-a-digit", said, hint, tuple(more))
    sound = tuple([digit for digit in digits if digit is not None and digit <= grid.size])
    if len(sound) < len(digits):
        return None
    return Givens(node, sound, tuple([(line, column) for _, line, column in picture]))


def _told(grid: Grid) -> str:
    """Which signs a grid takes."""
    if grid.lettered:
        return f"the letters here are {grid.symbols}"
    return f"digits here go from {grid.symbols[0]} to {grid.symbols[-1]}"


def _digit(char: str, grid: Grid) -> int | None:
    if char == "." or (char == "0" and grid.first):
        return 0
    known = grid.symbols if grid.lettered else SYMBOLS if grid.first else FROM_ZERO
    return known.index(char.upper()) + 1 if char.upper() in known else None


def check_clashes(givens: Givens, houses: Iterable[House], grid: Grid, collector: Collector) -> None:
    """Report each digit that stands more than once in a house; the same cells are reported once."""
    reported: set[tuple[int, ...]] = set()
    digits = givens.digits
    for house in houses:
        standing = [digits[cell] for cell in house.cells if digits[cell]]
        if len(set(standing)) == len(standing):
            continue
        for digit in sorted({digit for digit in standing if standing.count(digit) > 1}):
            cells = tuple(cell for cell in house.cells if digits[cell] == digit)
            if cells in reported:
                continue
            reported.add(cells)
            names = [grid.name(cell) for cell in cells]
            listed = ", ".join(names[:-1]) + " and " + names[-1]
            times = _TIMES.get(len(cells), f"{len(cells)} times")
            said = f"givens clash: {house.name} has {grid.symbol(digit)} {times} ({listed})"
            hint = "one of the two is likely a slip" if len(cells) == 2 else "a digit can appear there only once"
            places = [givens.place(cell) for cell in cells]
            collector.error(places[0], "givens-clash", said, hint, tuple(places[1:]))
