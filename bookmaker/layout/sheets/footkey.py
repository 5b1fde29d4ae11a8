"""The key upside down at the foot of a handout: small grids in a row, to be read by turning the sheet.

In: the puzzles of a sheet. Out: rows for its foot.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.book.contents import BookPuzzle
from bookmaker.display.items import Group, Item, Line, Stroke, Text, tagged
from bookmaker.display.tags import OURS, PARAGRAPH
from bookmaker.layout.art.gridart import draw_grid
from bookmaker.layout.lengths import mm
from bookmaker.layout.setting.text import Row, width
from bookmaker.layout.spec import Layout

CELL, LEAST = mm(3.3), mm(2.7)
"""Cells of the keys, and of those of large grids: digits of six points, and of five (common practice: no smaller)."""

GUTTER = mm(10)


def foot_key(puzzles: Sequence[BookPuzzle], layout: Layout) -> tuple[Row, ...]:
    """A line across the sheet and under it the keys, turned upside down, with their numbers."""
    line, label = layout.line, layout.type.label
    caption = width(f"{layout.say('heading-answer-key')}  ", label)
    items: list[Item] = [
        tagged((OURS,), Text(0.0, label.size, layout.say("heading-answer-key"), label.font, label.size))
    ]
    x = caption
    deepest = 0.0
    for puzzle in puzzles:
        number = str(puzzle.number)
        items.append(tagged((PARAGRAPH,), Text(x, label.size, number, "sans-bold", label.size)))
        x += width(number, label) + 0.8 * label.size
        grid = puzzle.puzzle.grid
        cell = max(LEAST, min(CELL, CELL * 9 / grid.extent))
        drawn = draw_grid(
            puzzle.puzzle, cell, f"key {puzzle.id}", puzzle.solution or (), marks=False, language=layout.language
        )
        items.append(Group((drawn,), x, 0.0))
        x += grid.width * cell + GUTTER
        deepest = max(deepest, grid.height * cell)
    turned = Group(tuple(items), layout.measure, deepest, turn=180.0)
    rule = Line((0.0, 0.0), (layout.measure, 0.0), Stroke(0.4))
    return (Row(line, (rule,)), Row(deepest, (turned,)))
