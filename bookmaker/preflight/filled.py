"""Sheets that were filled in on a screen, read back.

In: a PDF with fields as `ink.form` names them. Out: what stands in the cells of each of its grids, or what is wrong
with the file; and beside a solution, which cells are wrong and which are still to fill. Whatever program filled it in,
only the values of its fields are read, never what it shows.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from io import BytesIO
from pathlib import Path
from typing import Any

import pikepdf

from bookmaker.preflight.tokens import DAMAGED, reason_of
from bookmaker.puzzle.grid import Grid
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place

_NAME = re.compile(r"r(\d{1,2})c(\d{1,2})")

MOST = 100_000
"""Fields that are looked at: more than any book has."""

FilledCells = Mapping[tuple[int, int], str]
"""What stands in each field, by its row and column, from 1; “” where nothing does."""


@dataclass(frozen=True, slots=True)
class Marked:
    """A filled grid beside its solution: the cells that hold another digit, and those that hold none, or only notes."""

    wrong: tuple[int, ...]
    empty: tuple[int, ...]

    @property
    def solved(self) -> bool:
        return not self.wrong and not self.empty


def read_filled(file: Path) -> dict[str, FilledCells]:
    """The cells of each grid by the id of its puzzle. Raises BookErrors for a file that is no such sheet."""
    try:
        with pikepdf.open(BytesIO(file.read_bytes()), suppress_warnings=True) as pdf:
            found = _groups(pdf)
    except DAMAGED as error:
        hint = "open it in a viewer and see whether it is damaged or protected"
        text = f"this PDF cannot be read ({reason_of(error)})"
        raise BookErrors([Diagnostic(Place(str(file)), "unreadable", text, hint)]) from None
    if not found:
        hint = "sheets with cells to fill in come from “typeset --edition fillable” and “handout --fillable”"
        text = "there are no cells to fill in on this sheet"
        raise BookErrors([Diagnostic(Place(str(file)), "no-fields", text, hint)])
    return found


def mark(grid: Grid, givens: Sequence[int], solution: Sequence[int], cells: FilledCells) -> Marked:
    """Compare what was filled in with the solution. A cell with several characters has notes, not an answer."""
    wrong, empty = [], []
    for at in grid.cells:
        if givens[at]:
            continue
        answer = cells.get((grid.row(at) + 1, grid.column(at) + 1), "")
        if len(answer) != 1:
            empty.append(at)
        elif answer.upper() != grid.symbol(solution[at]):
            wrong.append(at)
    return Marked(tuple(wrong), tuple(empty))


def _groups(pdf: pikepdf.Pdf) -> dict[str, FilledCells]:
    form = pdf.Root.get("/AcroForm", pikepdf.Dictionary())
    found: dict[str, FilledCells] = {}
    left = MOST
    for group in form.get("/Fields", ()):
        kids = [*group.get("/Kids", ())][:left]
        left -= len(kids)
        cells = dict(_cells(kids))
        if cells:
            found[str(group.get("/T", ""))] = cells
    return found


def _cells(fields: Sequence[Any]) -> Iterator[tuple[tuple[int, int], str]]:
    for field in fields:
        if named := _NAME.fullmatch(str(field.get("/T", ""))):
            yield (int(named[1]), int(named[2])), "".join(str(field.get("/V", "")).split())
