"""The opening page of a chapter: its title, a few words, and its puzzles under the five peaks of the ridge."""

from __future__ import annotations

from bookmaker.book.model import Book, Chapter
from bookmaker.display.items import Group, Item, Text
from bookmaker.layout.art.ridge import ridge, skyline
from bookmaker.layout.pages.parts import heading
from bookmaker.layout.setting.flow import stacked
from bookmaker.layout.setting.text import DROP, Labels, Row, broken, paragraph
from bookmaker.layout.sheet import Leaf, Sheet
from bookmaker.layout.spec import Layout


def opener_leaf(chapter: Chapter, book: Book, layout: Layout) -> Leaf:
    """The page before a chapter's puzzles."""

    def draw(sheet: Sheet, labels: Labels) -> tuple[Item, ...]:
        hang = layout.puzzles.hang
        wide = layout.measure - hang
        rows: list[Row] = [*heading(chapter.title, layout, hang)]
        if chapter.note:
            rows += paragraph(chapter.note, layout.type.text, min(wide, 36 * layout.type.text.size), layout.line, hang)
        x, y = sheet.x + hang, sheet.y + layout.depth * 0.78
        return (
            *stacked(rows, sheet.x, sheet.y + layout.depth * 0.2, labels),
            Group((*_range(chapter, book, layout, wide),), x, y),
        )

    return Leaf(draw, ((f"chapter {chapter.number}", 0.0),))


def _range(chapter: Chapter, book: Book, layout: Layout, wide: float) -> list[Item]:
    """A large ridge, filled up to the hardest band there is, with the numbers of the puzzles under their peaks."""
    line, label = layout.line, layout.type.label
    bands = [puzzle.rating.band for puzzle in chapter.puzzles if puzzle.rating]
    items: list[Item] = [ridge(max(bands, default=0), wide, 0.85)]
    for band, (name, (x, _)) in enumerate(zip(book.band_names, skyline(wide, 1.0)[1::2], strict=True), start=1):
        numbers = [str(puzzle.number) for puzzle in chapter.puzzles if puzzle.rating and puzzle.rating.band == band]
        grey = 0.0 if numbers else 0.45
        items.append(Text(x, (2 - DROP) * line, name, label.font, label.size, grey, anchor="middle"))
        for at, words in enumerate(broken(", ".join(numbers), label.font, label.size, wide / 6)):
            items.append(Text(x, (3 - DROP + at) * line, words, "sans-bold", label.size, anchor="middle"))
    return items
