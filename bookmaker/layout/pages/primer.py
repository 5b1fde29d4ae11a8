"""The primer: each kind of rule with a paragraph and a worked figure.

In: a `Primer`. Out: pages of columns in which no lesson is split, unless it is longer than a column or the page is
shallow. Figures stand under their paragraphs.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from math import ceil

from bookmaker.book.contents import Lesson, Primer, WorkedFigure
from bookmaker.book.reading import figure_read
from bookmaker.display.items import Tagged, tagged
from bookmaker.display.tags import HEADING, OUR_LANGUAGE, OURS, SECTION, Role, Tag
from bookmaker.layout.art.swatch import figure_size, legible_cell, worked_figure
from bookmaker.layout.page_side import UnnumberedPage
from bookmaker.layout.pages.columned import GUTTER, Columns, columned
from bookmaker.layout.pages.parts import heading
from bookmaker.layout.pages.words import RULES_EMS, smallest_figure
from bookmaker.layout.setting.text import Row, paragraph
from bookmaker.layout.spec import Layout

CELL = 1.7
"""Size of the cells of a figure, in lines of text: all figures of a book are of one scale, but for those whose marks
would have figures too small to read, and those too wide for their column."""

LARGE, LARGE_CELL = 6, 1.35
"""A figure with so many rows has cells of this size."""

SHALLOW = 32
"""On pages of fewer lines a lesson may go on in the next column."""

EMS = 20
"""The narrowest column of lessons, in ems of text."""


def primer_pages(part: Primer, layout: Layout) -> list[UnnumberedPage]:
    """Pages of lessons, in as many columns as have room."""
    across = max(1, int((layout.measure + GUTTER) / (EMS * layout.type.text.size + GUTTER)))
    grid = Columns(across, (layout.measure - (across - 1) * GUTTER) / across)
    rows: list[Row] = []
    for lesson in part.lessons:
        *whole, last = _lesson(lesson, layout, grid.wide)
        if layout.depth >= SHALLOW * layout.line:
            whole = [replace(row, tied=True) for row in whole]
        rows += [*whole, last, Row(layout.line)]
    return [*columned(heading(part.heading, layout), rows, layout, grid, part.heading, ("primer",))]


def _lesson(lesson: Lesson, layout: Layout, wide: float) -> Iterator[Row]:
    """Title, paragraph, and the figure under it."""
    line, title = layout.line, replace(layout.type.text, font="serif-bold")
    measure = min(wide, RULES_EMS * layout.type.text.size)
    heads = paragraph(lesson.title, title, measure, line, tags=(SECTION, HEADING))
    yield from (replace(row, tied=True) for row in heads)
    *said, end = paragraph(lesson.text, layout.type.text, measure, line, tags=(SECTION.further, OURS))
    figure = lesson.figure
    yield from said
    yield replace(end, tied=figure is not None)
    if figure is None:
        return
    across, down = figure_size(figure, 1.0)
    usual = (CELL if down < LARGE else LARGE_CELL) * line
    cell = min(max(usual, legible_cell(figure.sample, smallest_figure(layout))), wide / across)
    yield Row(0.4 * line, tied=True)
    yield Row(ceil(2 * down * cell / line) * line / 2, (_told(layout, figure, cell),), tags=(SECTION.further,))


def _told(layout: Layout, figure: WorkedFigure, cell: float) -> Tagged:
    """The figure and what it shows, read after its paragraph."""
    box = (0.0, 0.0, *figure_size(figure, cell))
    told = Tag(Role.FIGURE, f"{figure_read(layout.words, figure)}.", 1, language=OUR_LANGUAGE, box=box)
    return tagged((told,), worked_figure(figure, cell))
