"""The text edition: a whole book in words and rows, for screen readers, and in short lines for braille displays.

In: a `Book`. Out: plain text, UTF-8 lines.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from textwrap import wrap
from typing import assert_never

from bookmaker.book.contents import Book
from bookmaker.book.reading import Block, Board, Figure, Found, Heading, Listing, Numbered, Words, read_parts

CELLS = 40
"""Cells of a line on a braille display (common practice, no source)."""

LEGEND = (
    f"Lines have at most {CELLS} characters, each of which takes one cell in computer braille. A line that goes on is "
    "indented. In a grid each character is a cell, with a dot for a blank one"
)
BETWEEN_BOXES = "; spaces stand between boxes"
NAMES = (
    ". r is a row, c a column: r2 c3 is the cell in row 2, column 3, and r2 c3-5 the three cells from there to "
    "column 5."
)

_PLAIN = str.maketrans(
    {"“": '"', "”": '"', "‘": "'", "’": "'", "–": "-", "—": "-", "×": "x", "…": "...", "\u00a0": " "}
)
"""Signs that take several cells in computer braille, and those that stand for them."""

_NUMBERED = re.compile(r"\b(?:([rR])ow|([cC])olumn)s? (\d+(?:(?:, | and | to )\d+)*)")


def text_edition(book: Book) -> str:
    """The text of a book: what stands before the puzzles, the puzzles by chapters, their keys, the credits."""
    lines = [line for line in (book.title, book.subtitle, _edited(book), "DRAFT" * book.draft) if line]
    for _, blocks in read_parts(book):
        lines += [""] * (not isinstance(blocks[0], Heading))
        for block in blocks:
            lines += _lines(block)
    return _closed(lines)


def braille_edition(book: Book) -> str:
    """The same in lines of at most `CELLS` characters, with a legend."""
    whole: list[str] = []
    legend = LEGEND + (BETWEEN_BOXES if any(puzzle.puzzle.grid.box for puzzle in book.puzzles) else "") + NAMES
    for line in (book.title, book.subtitle, _edited(book), "DRAFT" * book.draft, "", legend):
        whole += _short_lines(line)
    for _, blocks in read_parts(book):
        whole += [""] * (not isinstance(blocks[0], Heading))
        for block in blocks:
            whole += [*_braille(block)]
    return _closed(whole)


def _found(entry: Found) -> str:
    return f"{entry.name}: {', '.join(str(puzzle.number) for puzzle in entry.puzzles)}"


def _edited(book: Book) -> str:
    return f"Edited by {book.editor}" if book.editor else ""


def _closed(lines: list[str]) -> str:
    return "\n".join(lines).replace("\u00a0", " ").strip("\n") + "\n"


def _lines(block: Block) -> Iterator[str]:
    match block:
        case Heading():
            yield from ("", "", block.text)
        case Words():
            yield from ("", block.text)
        case Listing():
            yield from ("", block.text)
            yield from (f"  {item}" for item in block.items)
        case Figure():
            pass
        case Found():
            yield _found(block)
        case Numbered():
            yield from ("", *(f"{puzzle.number}: {text}" for puzzle, text in block.entries))
        case Board():
            grid = block.puzzle.puzzle.grid
            size = grid.size
            yield ""
            for row in range(size):
                digits = block.digits[row * size : (row + 1) * size]
                yield f"Row {row + 1}: " + ", ".join(grid.symbol(digit) if digit else "blank" for digit in digits)
        case _ as never:
            assert_never(never)


def _braille(block: Block) -> Iterator[str]:
    match block:
        case Heading():
            yield from ("", *_short_lines(block.text))
        case Words():
            yield from _short_lines(block.text)
        case Listing():
            yield from _short_lines(block.text)
            for item in block.items:
                yield from _short_lines(in_short(item))
        case Figure():
            pass
        case Found():
            yield from _short_lines(_found(block))
        case Numbered():
            for puzzle, text in block.entries:
                yield from _short_lines(in_short(f"{puzzle.number}: {text}"))
        case Board():
            grid = block.puzzle.puzzle.grid
            across = grid.box[1] if grid.box else grid.size
            for row in range(grid.size):
                digits = block.digits[row * grid.size : (row + 1) * grid.size]
                line = "".join(grid.symbol(digit) if digit else "." for digit in digits)
                yield " ".join(line[at : at + across] for at in range(0, grid.size, across))
        case _ as never:
            assert_never(never)


def in_short(text: str) -> str:
    """Rows and columns by their letters: “row 1 columns 2 to 4” → “r1 c2-4”."""
    return _NUMBERED.sub(lambda found: (found[1] or found[2]) + found[3].replace(" to ", "-"), text)


def _short_lines(text: str) -> list[str]:
    plain = text.translate(_PLAIN)
    return wrap(plain, CELLS, subsequent_indent="  ", break_on_hyphens=False) or [""]
