"""The opening page of a chapter, a right one: ornament made of its puzzles, its title, a few words, its puzzles to tick
off, and their numbers under the five peaks of the ridge.

Where there are many words they begin higher up, and where they are more than a page they flow on, the ridge after them.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import groupby

from bookmaker.book.contents import Book, Chapter, RulesText
from bookmaker.display.items import Group, Item, Text, tagged
from bookmaker.display.tags import OURS, PARAGRAPH
from bookmaker.layout.art.ridge import HEIGHT, ridge, skyline
from bookmaker.layout.art.vignette import Vignette, frieze
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.pages.parts import flowing, heading
from bookmaker.layout.pages.ticks import tick_rows
from bookmaker.layout.pages.words import rules_above
from bookmaker.layout.setting.flow import height, stacked
from bookmaker.layout.setting.text import DROP, Labels, Row, broken, paragraph
from bookmaker.layout.spec import Layout
from bookmaker.layout.themefile import worn

TITLE, GROUND = 0.24, 0.78
"""Where the title begins and where the ridge stands, as shares of the page's depth."""

HALF, WIDE_TITLE = 0.55, 0.36
"""On a page wider than high: how much of its width the words take, and where the title begins."""

CELLS = 18
"""Cells of the ornament across the page."""

UNDER = 3
"""Lines under the ridge without those of the numbers: white, and the bands' names."""

MOST = 6
"""Lines of numbers that find room under a peak; where they are more, runs are told by their ends, or counted."""


def opener_pages(chapter: Chapter, book: Book, layout: Layout, shared: RulesText | None = None) -> list[UnnumberedPage]:
    """The page before a chapter's puzzles, or the pages; with the rules that these have in common, if they are said
    here."""
    if layout.measure > layout.depth and (beside := _beside(chapter, book, layout, shared)):
        return [beside]
    hang, line = layout.puzzles.hang, layout.line
    wide = layout.measure - hang
    rows = [*_words(chapter, layout, shared, hang, layout.measure)]
    art = tuple(_range(chapter, book, layout, wide))
    ground = layout.depth * GROUND
    room = ground - HEIGHT * wide - line - height(rows)
    if room >= 0:
        top = min(layout.depth * TITLE, room)
        ticks = tick_rows(chapter.puzzles, layout, hang, layout.measure, room - top - line)
        rows += [Row(line), *ticks] if ticks else []
        salt = f"chapter {chapter.number}"
        drawn = frieze(chapter.puzzles, worn(layout), layout.measure, top - 1.5 * line, CELLS, salt)
        return [_leaf(chapter, rows, top, art, ground, layout, drawn)]
    high = HEIGHT * wide + (UNDER + MOST) * line
    rows += [Row(2 * line), Row(high, (Group(art, hang, HEIGHT * wide),))]
    return flowing(rows, layout, f"chapter {chapter.number}", chapter.title)


def _words(chapter: Chapter, layout: Layout, shared: RulesText | None, left: float, right: float) -> Iterator[Row]:
    """The title, the note and the rules, from `left` to `right`."""
    line, wide = layout.line, right - left
    yield from heading(chapter.title, layout, left, right)
    if chapter.note:
        yield from paragraph(chapter.note, layout.type.text, min(wide, 36 * layout.type.text.size), line, left)
    if shared:
        here = paragraph(layout.say("rules-of-chapter"), layout.type.note, wide, line, left, tags=(OURS,))
        yield Row(line)
        yield from (replace(row, tied=True) for row in here)
        yield from rules_above(replace(chapter.puzzles[0], rules=shared), layout, right, left)


def _beside(chapter: Chapter, book: Book, layout: Layout, shared: RulesText | None) -> UnnumberedPage | None:
    """The page where it is wider than high: the ridge at the right of the words; None where these find no room."""
    line, half, top = layout.line, layout.measure * HALF, layout.depth * WIDE_TITLE
    wide = layout.measure - half - 2 * line
    rows = [*_words(chapter, layout, shared, 0.0, half)]
    ticks = tick_rows(chapter.puzzles, layout, 0.0, half, layout.depth - top - height(rows) - line)
    rows += [Row(line), *ticks] if ticks else []
    if top + height(rows) > layout.depth:
        return None
    salt = f"chapter {chapter.number}"
    drawn = frieze(chapter.puzzles, worn(layout), layout.measure, top - 1.5 * line, 2 * CELLS, salt)
    art = tuple(_range(chapter, book, layout, wide))
    ground = top + HEIGHT * wide + line

    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        over = Group((drawn.art,), sheet.x, sheet.y)
        ridged = Group(art, sheet.x + layout.measure - wide, sheet.y + ground)
        return over, *stacked(rows, sheet.x, sheet.y + top, labels), ridged

    return UnnumberedPage(draw, ((f"chapter {chapter.number}", 0.0),))


def _leaf(
    chapter: Chapter,
    rows: Sequence[Row],
    top: float,
    art: tuple[Item, ...],
    ground: float,
    layout: Layout,
    head: Vignette,
) -> UnnumberedPage:
    def draw(sheet: PageSide, labels: Labels) -> tuple[Item, ...]:
        x, y = sheet.x + layout.puzzles.hang, sheet.y + ground
        over = Group((head.art,), sheet.x, sheet.y)
        return (over, *stacked(rows, sheet.x, sheet.y + top, labels), Group(art, x, y))

    return UnnumberedPage(draw, ((f"chapter {chapter.number}", 0.0),))


def _range(chapter: Chapter, book: Book, layout: Layout, wide: float) -> Iterator[Item]:
    """A large ridge, filled up to the hardest band there is, with the numbers of the puzzles under their peaks."""
    line, label = layout.line, layout.type.label
    bands = [puzzle.rating.band for puzzle in chapter.puzzles if puzzle.rating]
    yield ridge(max(bands, default=0), wide, 0.85)
    for band, (name, (x, _)) in enumerate(zip(book.band_names, skyline(wide, 1.0)[1::2], strict=True), start=1):
        numbers = [puzzle.number for puzzle in chapter.puzzles if puzzle.rating and puzzle.rating.band == band]
        grey = 0.0 if numbers else 0.45
        named = Text(x, (2 - DROP) * line, name, label.font, label.size, grey, anchor="middle")
        yield tagged((PARAGRAPH,), named)
        for at, words in enumerate(_numbers(numbers, layout, wide / 6)):
            text = Text(x, (UNDER - DROP + at) * line, words, "sans-bold", label.size, anchor="middle")
            yield tagged((PARAGRAPH.further,), text)


def _numbers(numbers: Sequence[int], layout: Layout, wide: float) -> tuple[str, ...]:
    """The numbers in a narrow column: each, or runs of them, or how many there are."""
    label, words = layout.type.label, layout.words
    each = ", ".join(map(str, numbers))
    counted = words.say("puzzles-counted", n=len(numbers), number=words.number(len(numbers)))
    lines = broken(each, label.font, label.size, wide)
    for shorter in (", ".join(_runs(numbers)), counted):
        if len(lines) > MOST:
            lines = broken(shorter, label.font, label.size, wide)
    return lines


def _runs(numbers: Sequence[int]) -> Iterator[str]:
    """Numbers that follow each other as “9–31”."""
    for _, group in groupby(enumerate(numbers), key=lambda pair: pair[1] - pair[0]):
        run = [number for _, number in group]
        yield str(run[0]) if len(run) == 1 else f"{run[0]}–{run[-1]}"
