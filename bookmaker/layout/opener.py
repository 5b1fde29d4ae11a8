"""The opening page of a chapter: its title, a few words, and the range of its ridges."""

from __future__ import annotations

from bookmaker.book.model import Chapter
from bookmaker.display.items import Item
from bookmaker.layout.flow import stacked
from bookmaker.layout.parts import heading
from bookmaker.layout.sheet import Leaf, Sheet
from bookmaker.layout.spec import Layout
from bookmaker.layout.text import Labels, Row, paragraph


def opener_leaf(chapter: Chapter, layout: Layout) -> Leaf:
    """The page before a chapter's puzzles."""

    def draw(sheet: Sheet, labels: Labels) -> tuple[Item, ...]:
        hang = layout.puzzles.hang
        wide = min(layout.measure - hang, 34 * layout.type.text.size)
        rows: list[Row] = [*heading(chapter.title, layout, hang)]
        if chapter.note:
            rows += paragraph(chapter.note, layout.type.text, wide, layout.line, hang)
        return tuple(stacked(rows, sheet.x, sheet.y + layout.depth * 0.25, labels))

    return Leaf(draw, ((f"chapter {chapter.number}", 0.0),))
