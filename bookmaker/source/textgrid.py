"""A picture of a grid as people draw it in text, a character for each cell.

In: a `Word` of several lines with its place. Out: the characters with their places in it, or diagnostics at the rows.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TypeAlias

from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Word

Drawn: TypeAlias = tuple[str, int, int]
"""The character of a cell, and the line and column of the word it stands at, counted from 0."""

RULING = "|+-_"
"""These only help the eye."""


def read_picture(
    word: Word, grid_size: int, what: str, collector: Collector, each: str = "a dot for an empty cell"
) -> tuple[Drawn, ...] | None:
    """What is drawn for each cell, in the grid's order; None after any diagnostic. Spacing is free.

    Rows may also run on in one line if the count is right. `each` says in a hint what stands for a cell.
    """
    rows = [row for line, text in enumerate(word.value.splitlines()) if (row := drawn_in(text, line))]
    found = tuple(cell for row in rows for cell in row)
    wanted = grid_size * grid_size
    if len(found) == wanted and all(len(row) % grid_size == 0 for row in rows):
        return found
    hint = _how(word.value, rows, grid_size, each)
    first = word.at(*rows[0][0][1:]) if rows else word.place
    widths = {len(row) for row in rows}
    wrong = [row for row in rows if len(row) != grid_size]
    if len(rows) <= 1:
        said = f"in {what}, the number of cells is {len(found)} and should be {wanted}"
        collector.error(first, "picture-size", said, hint)
    elif not wrong:
        said = f"in {what}, the number of rows is {len(rows)} and should be {grid_size}"
        collector.error(word.at(*rows[-1][0][1:]), "picture-size", said, hint)
    elif len(widths) == 1:
        said = f"in {what}, each row has {_cells(widths.pop())} and should have {grid_size}"
        collector.error(first, "picture-size", said, hint)
    elif 2 * len(wrong) > len(rows):  # one habit rather than as many slips
        places = [word.at(*row[0][1:]) for row in wrong]
        said = f"in {what}, {len(wrong)} of the {len(rows)} rows do not have {_cells(grid_size)}"
        collector.error(places[0], "picture-size", said, hint, tuple(places[1:]))
    else:
        for number, row in enumerate(rows, start=1):
            if len(row) != grid_size:
                said = f"in {what}, row {number} has {_cells(len(row))} and should have {grid_size}"
                line = word.value.splitlines()[row[0][1]]
                collector.error(word.at(*row[0][1:]), "picture-size", said, _how(line, [row], grid_size, each))
    return None


def drawn_in(text: str, line: int = 0) -> tuple[Drawn, ...]:
    """The cells drawn in one line of a picture."""
    return tuple((char, line, at) for at, char in enumerate(text) if not char.isspace() and char not in RULING)


def _how(text: str, rows: Sequence[Sequence[Drawn]], grid_size: int, each: str) -> str:
    """How to draw the grid, with a word on what went wrong where it can be guessed."""
    how = f"draw {grid_size} rows of {grid_size}, with {each}"
    typed = {char for row in rows for char, _, _ in row}
    if commas := sorted(typed & set(",;")):
        return f"{how}, and no “{commas[0]}” between cells"
    if typed & set("\"'“”‘’"):
        return f"{how}, and without quotation marks"
    if "…" in typed:
        return f"{how}; “…” is a single sign, so type the dots one by one"
    if ruled := next((sign for sign in "_-" if sign in text), ""):
        return f"{how}; “{ruled}” only helps the eye and is no cell"
    if len(rows) > 1 and all(len(row) == len(rows) for row in rows):
        return f"{how}; or say “size: {len(rows)}” for a grid of that size"
    return how


def _cells(number: int) -> str:
    return "1 cell" if number == 1 else f"{number} cells"
