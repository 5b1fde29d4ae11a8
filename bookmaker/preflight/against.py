"""Is what was printed what was proven: the grids of a file beside the puzzles of its book.

In: grids as read back with their marks, proofs. Out: diagnostics that name the page, the puzzle and the cells or marks.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from bookmaker.preflight.grids import PrintedGrid
from bookmaker.preflight.marks import MarksRead
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.grid import Grid
from bookmaker.rules import keeps_all
from bookmaker.source.diagnostics import Diagnostic, Place

AGAIN = "print the book again from its manifest"


def compare(
    printed: Sequence[PrintedGrid], faulty: Sequence[tuple[int, MarksRead]], proofs: Sequence[Proof], file: str
) -> Iterator[Diagnostic]:
    """What differs: givens, keys, keys that break a rule or hide which digits are given; then marks that are `faulty`,
    each with the page that they were read on; then what is lacking."""
    place = Place(file)
    known = {proof.entry.id: proof for proof in proofs}
    for grid in printed:
        proof = known.get(grid.id)
        if proof is None:
            text = f"page {grid.page}: the {grid.kind} “{grid.id}” belongs to no puzzle in the book"
            yield Diagnostic(place, "stranger", text)
            continue
        for code, text in _grid(grid, proof) if grid.kind == "grid" else _key(grid, proof):
            yield Diagnostic(place, code, f"page {grid.page}: {text}", AGAIN)
    for page, read in faulty:
        yield from (Diagnostic(place, code, f"page {page}: {text}", AGAIN) for code, text in _few(read.diagnostics))
    yield from _lacking(printed, proofs, place)


def _few(diagnostics: Sequence[tuple[str, str]]) -> Iterator[tuple[str, str]]:
    """The first ten: where all is wrong at once, the rest says no more."""
    yield from diagnostics[:10]
    if len(diagnostics) > 10:
        yield "more-marks", f"and {len(diagnostics) - 10} more marks of this grid"


def _grid(printed: PrintedGrid, proof: Proof) -> Iterator[tuple[str, str]]:
    puzzle = proof.entry.puzzle
    yield from _same(printed, puzzle.grid, puzzle.givens, "givens-differ", f"the grid of “{printed.id}”")


def _key(printed: PrintedGrid, proof: Proof) -> Iterator[tuple[str, str]]:
    puzzle, what = proof.entry.puzzle, f"the key of “{printed.id}”"
    if proof.solution is None:  # a draft shows such a puzzle among its keys with its givens alone
        if any(
            symbol and not given
            for symbol, given in zip(_in_cells(printed.symbols, puzzle.grid), puzzle.givens, strict=False)
        ):
            yield "key-unproven", f"{what} is printed, but the puzzle is not proven to have one solution"
        return
    wrong = list(_same(printed, puzzle.grid, proof.solution, "key-differs", what))
    yield from wrong
    if wrong:
        return
    if not keeps_all(puzzle, proof.solution):  # which is what is printed
        yield "key-breaks-rule", f"{what} breaks a rule of the puzzle"
    fonts = _in_cells(printed.fonts, puzzle.grid)
    given = {font for font, digit in zip(fonts, puzzle.givens, strict=True) if digit}
    filled = {font for font, digit in zip(fonts, puzzle.givens, strict=True) if not digit}
    if given & filled:
        yield "key-plain", f"{what} does not distinguish the givens from the other digits"


def _same(printed: PrintedGrid, grid: Grid, digits: Sequence[int], code: str, what: str) -> Iterator[tuple[str, str]]:
    if (printed.rows, printed.columns) != (grid.height, grid.width):
        seen = f"{printed.rows} × {printed.columns} cells" if printed.rows else "no cells that can be made out"
        yield code, f"{what} has {seen}, not {grid.height} × {grid.width}"
        return
    written = ("", *grid.symbols)
    wrong = [
        f"{grid.name(cell)} has {_said(symbol)} for {_said(meant)}"
        for cell, symbol, meant in zip(
            grid.cells, _in_cells(printed.symbols, grid), [written[digit] for digit in digits], strict=True
        )
        if symbol != meant
    ]
    if wrong:
        more = f" and {len(wrong) - 3} more" if len(wrong) > 3 else ""
        yield code, f"{what} is misprinted: {', '.join(wrong[:3])}{more}"


def _in_cells(printed: Sequence[str], grid: Grid) -> Sequence[str]:
    """What is printed for each place, for the places where the grid has a cell."""
    if len(printed) == len(grid.cells):
        return printed
    at = (cell for row in range(grid.height) for cell in grid.across(row))
    return [each for each, cell in zip(printed, at, strict=False) if cell is not None]


def _said(symbol: str) -> str:
    return symbol or "nothing"


def _lacking(printed: Sequence[PrintedGrid], proofs: Sequence[Proof], place: Place) -> Iterator[Diagnostic]:
    """Puzzles without a key where there are keys, and puzzles of the book that are nowhere in the file."""
    grids = {grid.id for grid in printed if grid.kind == "grid"}
    keys = {grid.id for grid in printed if grid.kind == "key"}
    if not printed:
        yield Diagnostic(
            place, "no-grids", "no printed grid can be read back", "only books made by bookmaker name their grids"
        )
        return
    for proof in proofs:
        name = proof.entry.id
        if name in grids and keys and name not in keys and proof.solution is not None:
            yield Diagnostic(place, "no-key", f"the puzzle “{name}” has no key in this file")
        elif name not in grids and name not in keys:
            yield Diagnostic(place, "not-printed", f"the puzzle “{name}” is not in this file", warning=True)
