"""The primer: each kind of rule with a paragraph and a worked figure.

In: a `Primer`. Out: pages on which no lesson is split, unless it is longer than a page. A small figure hangs at the
left of its paragraph, like the samples of the puzzle pages; a wide one stands under it.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import ceil

from bookmaker.book.model import Lesson, Primer, WorkedFigure
from bookmaker.display.items import Group
from bookmaker.layout.art.swatch import figure_size, legible_cell, worked_figure
from bookmaker.layout.pages.parts import flowing, heading
from bookmaker.layout.pages.words import RULES_EMS, smallest_figure
from bookmaker.layout.setting.text import DROP, Row, paragraph
from bookmaker.layout.sheet import Leaf
from bookmaker.layout.spec import Layout

CELL = 2.0
"""Size of the cells of a figure, in lines of text."""

LEAST = 1.35
"""A figure whose cells would be smaller in the hanging column stands under its paragraph; so does one whose marks would
have figures too small to read."""


LARGE = 6
"""A figure with so many rows is drawn in small cells."""


def primer_leaves(part: Primer, layout: Layout) -> list[Leaf]:
    """Pages of lessons."""
    rows = [*heading(part.heading, layout, layout.puzzles.hang)]
    for lesson in part.lessons:
        whole = [*_lesson(lesson, layout)]
        rows += [replace(row, tied=True) for row in whole]
        rows.append(Row(layout.line))
    return flowing(rows, layout, "primer", part.heading)


def _lesson(lesson: Lesson, layout: Layout) -> Iterator[Row]:
    hang, line = layout.puzzles.hang, layout.line
    title = replace(layout.type.text, font="serif-bold")
    wide = min(layout.measure - hang, RULES_EMS * layout.type.text.size)
    words = [
        *paragraph(lesson.title, title, wide, line, hang),
        *paragraph(lesson.text, layout.type.text, wide, line, hang),
    ]
    figure = lesson.figure
    if figure is None:
        yield from words
        return
    across, down = figure_size(figure, 1.0)
    cell = min(CELL * line, (hang - 0.8 * line) / across)
    if cell >= max(LEAST * line, legible_cell(figure.sample, smallest_figure(layout))):
        yield from _beside(words, figure, cell, down * cell, line)
        return
    cell = min((CELL if down < LARGE else LEAST) * line, wide / across)
    yield from words
    yield Row(line / 2)
    yield Row(ceil(2 * down * cell / line) * line / 2, (Group((worked_figure(figure, cell),), hang, 0.0),))


def _beside(words: list[Row], figure: WorkedFigure, cell: float, high: float, line: float) -> Iterator[Row]:
    """The figure hangs from the height of the title's small letters."""
    first, *others = words
    drawn = Group((worked_figure(figure, cell),), 0.0, (1 - DROP) * line - 0.5 * line)
    yield Row(first.height, (drawn, *first.items))
    yield from others
    missing = high + 0.4 * line - len(words) * line
    if missing > 0:
        yield Row(ceil(missing / line) * line)
