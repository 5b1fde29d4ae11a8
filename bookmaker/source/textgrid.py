"""A picture of a grid as people draw it in text, a character for each cell.

In: a `Word` of several lines with its place. Out: the characters with their places in it, or diagnostics at the rows.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import chain
from typing import TypeAlias

from bookmaker.puzzle.grid import Grid
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Word

Drawn: TypeAlias = tuple[str, int, int]
"""The character of a cell, and the line and column of the word it stands at, counted from 0."""

RULING = "|+-_"
"""These only help the eye."""

NO_CELL = "#"
"""What stands beside the grids where several overlap."""


def read_picture(
    word: Word, grid: Grid, what: str, collector: Collector, each: str = "a dot for an empty cell"
) -> tuple[Drawn, ...] | None:
    """What is drawn for each cell, in the grid's order; None after any diagnostic. Spacing is free.

    Rows may also run on in one line if the count is right. `each` says in a hint what stands for a cell.
    `NO_CELL` stands where a grid with holes, or grids that overlap, have no cell.
    """
    drawn = _all_drawn(word, grid.height, grid.width, what, collector, each)
    if drawn is None or len(drawn) == len(grid.cells):
        return drawn
    return _of_cells(word, grid, drawn, what, collector)


def _of_cells(
    word: Word, grid: Grid, drawn: Sequence[Drawn], what: str, collector: Collector
) -> tuple[Drawn, ...] | None:
    """What is drawn in the cells of overlapping grids; None after a diagnostic where something is drawn beside them, or
    nothing in them."""
    found, astray, missing = list[Drawn](), list[Drawn](), list[Drawn]()
    for index, each in enumerate(drawn):
        inside, cell_drawn = grid.inside(*divmod(index, grid.width)), each[0] != NO_CELL
        (found if inside and cell_drawn else missing if inside else astray if cell_drawn else []).append(each)
    off, on = ("in none of the grids", "in one of them") if grid.overlaps else ("on a hole", "on none")
    for wrong, said in (
        (astray, f"in {what}, this lies {off} and should be “{NO_CELL}”"),
        (missing, f"in {what}, this lies {on} and should not be “{NO_CELL}”"),
    ):
        if wrong:
            first, *more = (word.at(line, column) for _, line, column in wrong)
            hint = f"draw {grid.height} rows of {grid.width}, with {NO_CELL} where there is no cell"
            collector.error(first, "picture-outside", said, hint, tuple(more))
    return None if astray or missing else tuple(found)


def _all_drawn(
    word: Word, height: int, width: int, what: str, collector: Collector, each: str
) -> tuple[Drawn, ...] | None:
    """All characters of a picture of this size."""
    rows = [row for line, text in enumerate(word.value.splitlines()) if (row := drawn_in(text, line))]
    found = tuple(chain.from_iterable(rows))
    wanted = height * width
    if len(found) == wanted and all(len(row) % width == 0 for row in rows):
        return found
    hint = _how(word.value, rows, (height, width), each)
    first = word.at(*rows[0][0][1:]) if rows else word.place
    widths = {len(row) for row in rows}
    wrong = [row for row in rows if len(row) != width]
    if len(rows) <= 1:
        said = f"in {what}, the number of cells is {len(found)} and should be {wanted}"
        collector.error(first, "picture-size", said, hint)
    elif not wrong:
        said = f"in {what}, the number of rows is {len(rows)} and should be {height}"
        collector.error(word.at(*rows[-1][0][1:]), "picture-size", said, hint)
    elif len(widths) == 1:
        said = f"in {what}, each row has {_cells(widths.pop())} and should have {width}"
        collector.error(first, "picture-size", said, hint)
    elif 2 * len(wrong) > len(rows):  # one habit rather than as many slips
        places = [word.at(*row[0][1:]) for row in wrong]
        said = f"in {what}, {len(wrong)} of the {len(rows)} rows do not have {_cells(width)}"
        collector.error(places[0], "picture-size", said, hint, tuple(places[1:]))
    else:
        for number, row in enumerate(rows, start=1):
            if len(row) != width:
                said = f"in {what}, row {number} has {_cells(len(row))} and should have {width}"
                line = word.value.splitlines()[row[0][1]]
                collector.error(word.at(*row[0][1:]), "picture-size", said, _how(line, [row], (height, width), each))
    return None


def drawn_rows(grid: Grid, sign: Callable[[int], str]) -> list[str]:
    """The rows of a picture that `read_picture` reads, with the sign of each cell."""
    return [
        "".join(sign(grid.cell(row, column)) if grid.inside(row, column) else NO_CELL for column in range(grid.width))
        for row in range(grid.height)
    ]


def drawn_in(text: str, line: int = 0) -> tuple[Drawn, ...]:
    """The cells drawn in one line of a picture."""
    return tuple([(char, line, at) for at, char in enumerate(text) if char not in RULING and not char.isspace()])


def _how(text: str, rows: Sequence[Sequence[Drawn]], wanted: tuple[int, int], each: str) -> str:
    """How to draw the grid, with a word on what went wrong where it can be guessed."""
    height, width = wanted
    how = f"draw {height} rows of {width}, with {each}"
    typed = {char for row in rows for char, _, _ in row}
    if commas := sorted(typed & set(",;")):
        return f"{how}, and no “{commas[0]}” between cells"
    if typed & set("\"'“”‘’"):
        return f"{how}, and without quotation marks"
    if "…" in typed:
        return f"{how}; “…” is a single sign, so type the dots one by one"
    if ruled := next((sign for sign in "_-" if sign in text), ""):
        return f"{how}; “{ruled}” only helps the eye and is no cell"
    if len(rows) > 1 and height == width and all(len(row) == len(rows) for row in rows):
        return f"{how}; or say “size: {len(rows)}” for a grid of that size"
    return how


def _cells(number: int) -> str:
    return "1 cell" if number == 1 else f"{number} cells"
