"""The credits: setter, first showing and permission of every puzzle, in the order of the book."""

from __future__ import annotations

from collections.abc import Iterator

from bookmaker.book.model import BookPuzzle, Credits
from bookmaker.display.items import Text
from bookmaker.layout.parts import flowing, heading, number_before
from bookmaker.layout.sheet import Leaf
from bookmaker.layout.spec import Layout
from bookmaker.layout.text import DROP, PageNumber, Row, paragraph


def credits_leaves(part: Credits, puzzles: tuple[BookPuzzle, ...], layout: Layout) -> list[Leaf]:
    """Pages of credits, an entry a puzzle."""
    rows = [*heading(part.heading, layout, layout.puzzles.hang)]
    for puzzle in puzzles:
        rows += _entry(puzzle, layout)
    return flowing(rows, layout, "credits", part.heading)


def _entry(puzzle: BookPuzzle, layout: Layout) -> Iterator[Row]:
    small, line = layout.type.small, layout.line
    base, left, right = (1 - DROP) * line, layout.puzzles.hang, layout.measure
    said = [f"Set by {puzzle.setter}"] if puzzle.setter else []
    said += [f"First shown {puzzle.shown}"] if puzzle.shown else []
    said += [puzzle.permission] if puzzle.permission else []
    words = " ".join(f"{part.rstrip('.')}." for part in said) or "No setter is named."
    details = paragraph(words, small, right - left - 4 * small.size, line, left, 0.2)
    yield Row(
        line,
        (
            number_before(left, base, puzzle.number, small),
            Text(left, base, puzzle.title, small.font, small.size),
            PageNumber(right, base, "", f"puzzle {puzzle.id}", small),
        ),
        tied=True,
    )
    *most, last = details
    yield from (Row(row.height, row.items, tied=True) for row in most)
    yield last
    yield Row(line / 2)
