"""Sheets for the press: every page on a larger sheet with bleed, crop marks and a slug line.

In: a finished document and its layout. Out: the same pages, their items untouched, with room and marks around them.
Marks stand at the trim's corners, beyond what may be cut off; the slug line under the trim says which sheet this is. A
page that will be folded has ticks over and under its folds: broken, and with the word beside them, so that nobody cuts
there. Distances are common practice of the trade, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace

from bookmaker.display.items import Document, Item, Line, Page, Stroke, Text
from bookmaker.layout.drawing import Pages
from bookmaker.layout.lengths import mm
from bookmaker.layout.setting.text import FONTS, broken
from bookmaker.layout.spec import Layout

CLEAR = mm(3)
"""How far marks keep from the trim at least: a cut a little off shall not show them."""

MARK = mm(5)
"""Length of a crop mark."""

EDGE = mm(2)
"""Paper beyond the marks."""

PEN = Stroke(0.25)

CREASE = Stroke(0.25, dash=(2.0, 1.5))

SLUG = 6.5
"""Type size of the slug line in points, and of the word beside a fold."""

FOLD = "fold"


@dataclass(frozen=True, slots=True)
class FoldedPage(Page):
    """A page that will be folded along upright lines, `folds` points from its left side, the leftmost first."""

    folds: tuple[float, ...] = ()


def press_sheets(document: Document, layout: Layout) -> Document:
    """The document with the bleed of its layout and, where the layout wants them, crop marks and slug lines."""
    press = layout.press
    clear = max(press.bleed, CLEAR)
    sheet = clear + MARK + EDGE if press.marks or press.slug else press.bleed

    def draw(at: int) -> Page:
        page = document.pages[at]
        items: list[Item] = [*page.items]
        room = page.width - 2 * EDGE
        if press.marks:
            items += _crop_marks(page, clear)
        if press.marks and isinstance(page, FoldedPage):
            items += _fold_marks(page, clear, layout)
            room = page.folds[0] - _said(layout) - 3 * EDGE
        if press.slug:
            items.append(_slug(page, clear, _words(document, page, at + 1), room, layout))
        return replace(page, items=tuple(items), bleed=press.bleed, sheet=sheet)

    return replace(document, pages=Pages(len(document.pages), draw))


def _crop_marks(page: Page, clear: float) -> Iterator[Line]:
    """Two at each corner, in line with the trim's sides."""
    for x in (0.0, page.width):
        yield Line((x, -clear), (x, -clear - MARK), PEN)
        yield Line((x, page.height + clear), (x, page.height + clear + MARK), PEN)
    for y in (0.0, page.height):
        yield Line((-clear, y), (-clear - MARK, y), PEN)
        yield Line((page.width + clear, y), (page.width + clear + MARK, y), PEN)


def _fold_marks(page: FoldedPage, clear: float, layout: Layout) -> Iterator[Item]:
    """A tick over and one under each fold, with the word at the outer sides."""
    for above in (True, False):
        near = -clear if above else page.height + clear
        far = near - MARK if above else near + MARK
        for x in page.folds:
            yield Line((x, near), (x, far), CREASE)
        base = (near + far) / 2 + 0.35 * SLUG
        font = layout.type.display.font
        yield Text(page.folds[0] - EDGE / 2, base, FOLD, font, SLUG, anchor="end")
        yield Text(page.folds[-1] + EDGE / 2, base, FOLD, font, SLUG)


def _said(layout: Layout) -> float:
    """Width of the word beside a fold."""
    return FONTS.width(FOLD, layout.type.display.font, SLUG)


def _words(document: Document, page: Page, number: int) -> list[str]:
    """What the slug line says of a sheet, the title last: where the line is too long, it is cut there."""
    said = [f"Sheet {number} of {len(document.pages)}", f"page {page.label}" if page.label else "no page number"]
    if document.created:
        said.append(document.created.isoformat())
    return [*said, document.title]


def _slug(page: Page, clear: float, words: list[str], room: float, layout: Layout) -> Text:
    """Set in the font of the title page, which is known to have the title's characters."""
    font = layout.type.display.font
    line = broken("  ·  ".join(words), font, SLUG, room)[0]
    return Text(EDGE, page.height + clear + 0.5 * MARK + 0.35 * SLUG, line, font, SLUG)
