"""The text edition: a whole book in words and rows, for screen readers, and in short lines for braille displays.

In: a `Book`. Out: plain text, UTF-8 lines.
"""

from __future__ import annotations

from collections.abc import Iterator
from textwrap import wrap
from typing import assert_never

from bookmaker.book.contents import Book
from bookmaker.book.reading import (
    Block,
    Board,
    Figure,
    Found,
    Heading,
    Listing,
    Numbered,
    Words,
    read_parts,
    rows_read,
)
from bookmaker.book.wording import edited_by
from bookmaker.language import Catalogue
from bookmaker.source.textgrid import drawn_rows

CELLS = 40
"""Cells of a line on a braille display (common practice, no source)."""

_PLAIN = str.maketrans(
    {
        **dict.fromkeys("“”„«»", '"'),
        **dict.fromkeys("‘’‚‹›", "'"),
        "–": "-",
        "—": "-",
        "×": "x",
        "…": "...",
        "\u00a0": " ",
    }
)
"""Signs that take several cells in computer braille, and those that stand for them."""


def text_edition(book: Book) -> str:
    """The text of a book: what stands before the puzzles, the puzzles by chapters, their keys, the credits."""
    lines = [line for line in _head(book) if line]
    for _, blocks in read_parts(book):
        lines += [""] * (not isinstance(blocks[0], Heading))
        for block in blocks:
            lines += _lines(book.words, block)
    return _closed(lines)


def braille_edition(book: Book) -> str:
    """The same in lines of at most `CELLS` characters, with a legend."""
    whole: list[str] = []
    boxes = "yes" if any(puzzle.puzzle.grid.box for puzzle in book.puzzles) else "no"
    legend = book.words.say("braille-legend", cells=str(CELLS), boxes=boxes)
    for line in (*_head(book), "", legend):
        whole += _short_lines(line)
    for _, blocks in read_parts(book, "short"):
        whole += [""] * (not isinstance(blocks[0], Heading))
        for block in blocks:
            whole += [*_braille(book.words, block)]
    return _closed(whole)


def _found(words: Catalogue, entry: Found) -> str:
    numbers = words.joined([str(puzzle.number) for puzzle in entry.puzzles], "then")
    return words.say("titled", title=entry.name, what=numbers)


def _head(book: Book) -> tuple[str, ...]:
    """What stands at the top; "" for what there is not."""
    draft = book.words.say("draft") if book.draft else ""
    return book.title, book.subtitle, edited_by(book.words, book.editor), draft


def _closed(lines: list[str]) -> str:
    return "\n".join(lines).replace("\u00a0", " ").strip("\n") + "\n"


def _lines(words: Catalogue, block: Block) -> Iterator[str]:
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
            yield _found(words, block)
        case Numbered():
            yield from (
                "",
                *(words.say("titled", title=str(puzzle.number), what=text) for puzzle, text in block.entries),
            )
        case Board():
            yield ""
            yield from rows_read(words, block.puzzle.puzzle.grid, block.digits)
        case _ as never:
            assert_never(never)


def _braille(words: Catalogue, block: Block) -> Iterator[str]:
    match block:
        case Heading():
            yield from ("", *_short_lines(block.text))
        case Words():
            yield from _short_lines(block.text)
        case Listing():
            yield from _short_lines(block.text)
            for item in block.items:
                yield from _short_lines(item)
        case Figure():
            pass
        case Found():
            yield from _short_lines(_found(words, block))
        case Numbered():
            for puzzle, text in block.entries:
                yield from _short_lines(words.say("titled", title=str(puzzle.number), what=text))
        case Board():
            grid = block.puzzle.puzzle.grid
            across = grid.box[1] if grid.box else grid.size
            signs = [grid.symbol(digit) if digit else "." for digit in block.digits]
            for line in drawn_rows(grid, signs.__getitem__):
                yield " ".join(line[at : at + across] for at in range(0, grid.width, across))
        case _ as never:
            assert_never(never)


def _short_lines(text: str) -> list[str]:
    plain = text.translate(_PLAIN)
    return wrap(plain, CELLS, subsequent_indent="  ", break_on_hyphens=False) or [""]
