"""The text edition: a whole book in words and rows, for screen readers and braille displays.

In: a `Book`. Out: plain text, UTF-8 lines. Marks are told as their setter typed them in the manifest, cell names spoken
out: that notation is complete, and the same for every kind of rule.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence

from bookmaker.book import wording
from bookmaker.book.model import (
    Book,
    BookPuzzle,
    Chapter,
    Credits,
    Foreword,
    Guide,
    HintPages,
    ImprintPage,
    Keys,
    Primer,
)
from bookmaker.book.typography import curled
from bookmaker.puzzle.grid import SYMBOLS, Grid

HOW_TO_READ = (
    "Rows are numbered from top to bottom, columns from left to right. Each row of a puzzle is read from left to "
    "right, and “blank” stands for a cell to fill. Clues outside a grid are read from left to right or from top to "
    "bottom, and “none” stands where there is no clue."
)

_CELL = re.compile(r"[rR](\d+)[cC](\d+)")


def text_edition(book: Book) -> str:
    """The text of a book: what stands before the puzzles, the puzzles by chapters, their keys, the credits."""
    return "\n".join(_lines(book)).replace("\u00a0", " ").rstrip("\n") + "\n"


def _lines(book: Book) -> Iterator[str]:
    yield from (line for line in (book.title, book.subtitle) if line)
    if book.editor:
        yield f"Edited by {book.editor}"
    if book.draft:
        yield "DRAFT"
    for part in (*book.front, *book.body):
        match part:
            case ImprintPage():
                yield from ("", "", *part.paragraphs)
            case Foreword():
                yield from _prose(part.heading, ["".join(run.text for run in runs) for runs in part.paragraphs])
            case Guide():
                yield from _prose(wording.TEXT_GUIDE, (wording.proved(book.draft), HOW_TO_READ))
            case Primer():
                yield from _prose(part.heading, [f"{lesson.title}. {lesson.text}" for lesson in part.lessons])
            case Chapter():
                if part.title:
                    yield from _prose(f"Chapter {part.number}: {part.title}", [part.note] if part.note else [])
                for puzzle in part.puzzles:
                    yield from _puzzle(puzzle)
            case HintPages():
                for level, title in enumerate(part.levels):
                    yield from ("", "", f"{part.heading}: {title.lower()}", "")
                    yield from _hints(book.puzzles, level)
            case Keys():
                yield from ("", "", part.heading)
                for puzzle in book.puzzles:
                    yield from _key(puzzle)
            case Credits():
                shared = wording.shared_permission(book.puzzles)
                said = any(isinstance(other, ImprintPage) for other in book.front)
                yield from ("", "", part.heading, "", *((shared, "") if shared and not said else ()))
                yield from (_credit(puzzle, bool(shared)) for puzzle in book.puzzles)
            case _:
                pass  # pages without words of their own, and lists of page numbers


def _prose(heading: str, paragraphs: Sequence[str]) -> Iterator[str]:
    yield from ("", "", heading)
    for words in paragraphs:
        yield from ("", words)


def _puzzle(puzzle: BookPuzzle) -> Iterator[str]:
    yield from ("", "", f"Puzzle {puzzle.number}: {puzzle.title}")
    if puzzle.setter:
        yield f"Set by {puzzle.setter}"
    if puzzle.rating:
        yield f"{puzzle.rating.band_name}, band {puzzle.rating.band} of 5, effort {puzzle.rating.effort:.0f}"
    yield puzzle.flaw or puzzle.rules.whole
    yield from _regions(puzzle.puzzle.grid)
    for rule, marks in zip(puzzle.puzzle.rules, puzzle.marks, strict=True):
        if marks:
            yield f"{curled(rule.title)}:"
            yield from (f"  {spoken(mark)}" for mark in marks)
    yield from _rows(puzzle.puzzle.grid, puzzle.puzzle.givens)
    yield from (line for line in (puzzle.note, puzzle.link) if line)


def _regions(grid: Grid) -> Iterator[str]:
    """Where the regions lie, if not in rank and file."""
    if grid.box:
        high, wide = grid.box
        yield f"The boxes have {high} rows and {wide} columns."
        return
    for number, cells in enumerate(grid.regions, start=1):
        by_row: dict[int, list[str]] = {}
        for cell in cells:
            by_row.setdefault(grid.row(cell) + 1, []).append(str(grid.column(cell) + 1))
        said = "; ".join(
            f"row {row} {'column' if len(columns) == 1 else 'columns'} {' '.join(columns)}"
            for row, columns in by_row.items()
        )
        yield f"Region {number}: {said}"


def _hints(puzzles: Sequence[BookPuzzle], level: int) -> Iterator[str]:
    for puzzle in puzzles:
        if puzzle.hints:
            words = (puzzle.hints.where, puzzle.hints.what, puzzle.hints.how)[level]
            yield f"{puzzle.number}: " + _CELL.sub(r"row \1 column \2", words)


def _key(puzzle: BookPuzzle) -> Iterator[str]:
    yield from ("", f"Key to puzzle {puzzle.number}: {puzzle.title}")
    if puzzle.solution:
        yield from _rows(puzzle.puzzle.grid, puzzle.solution)
    else:
        yield puzzle.flaw


def _rows(grid: Grid, digits: Sequence[int]) -> Iterator[str]:
    for row in range(grid.size):
        cells = digits[row * grid.size : (row + 1) * grid.size]
        yield f"Row {row + 1}: " + ", ".join(SYMBOLS[digit - 1] if digit else "blank" for digit in cells)


def _credit(puzzle: BookPuzzle, permission_said: bool) -> str:
    shown = f"first shown {puzzle.shown}" if puzzle.shown else ""
    details = ", ".join(said for said in (puzzle.setter, shown) if said)
    said = (puzzle.title, details, "" if permission_said else puzzle.permission.rstrip("."))
    return f"{puzzle.number}: {'. '.join(words for words in said if words)}"


def spoken(mark: str) -> str:
    """A mark as typed, in words: “r1c2-r1c4 r2c5” → “row 1 column 2 to row 1 column 4, row 2 column 5”.

    A list of clues has “none” for each dot.
    """
    if re.search(r"(^|\s)\.(\s|$)", mark):
        return re.sub(r"\s+", ", ", re.sub(r":\s+", ":\ue000", mark).replace(".", "none")).replace("\ue000", " ")
    mark = re.sub(r"(?<=\d)\s*[-–]\s*(?=[rR]\d)", " to ", mark)
    mark = re.sub(r"(?<=\d)\s+(?=[rR]\d+[cC])", ", ", mark)
    mark = _CELL.sub(r"row \1 column \2", mark)
    return mark.replace(" > ", " is greater than ").replace(" < ", " is less than ")
