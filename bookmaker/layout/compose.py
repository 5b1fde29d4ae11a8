"""A book on paper: parts → leaves → numbered pages.

In: a `Book` and a `Layout`. Out: a `Document` ready for ink. First every part says what stands on its pages; then the
pages are numbered, i, ii, iii in front and 1, 2, 3 in the body; only then are they drawn, so that every page number
that is printed is known.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import replace
from typing import assert_never

from bookmaker.book.contents import (
    Book,
    Chapter,
    Contents,
    Credits,
    Foreword,
    Glossary,
    Guide,
    HalfTitle,
    HintPages,
    ImprintPage,
    Index,
    Keys,
    Part,
    Primer,
    TitlePage,
)
from bookmaker.book.pad import as_pad
from bookmaker.book.sharedrules import guided, share_rules
from bookmaker.display.items import Anchor, Bookmark, Document, Page
from bookmaker.display.numerals import roman
from bookmaker.layout.checks import check
from bookmaker.layout.drawing import Pages
from bookmaker.layout.page_side import BLANK, PageSide, UnnumberedPage, as_part, furniture
from bookmaker.layout.pages.contents import contents_pages
from bookmaker.layout.pages.credits import credits_pages, credits_rows
from bookmaker.layout.pages.divider import divider_leaf
from bookmaker.layout.pages.front import foreword_pages, guide_pages, half_title_leaf, imprint_leaf, title_leaf
from bookmaker.layout.pages.hints import hints_pages
from bookmaker.layout.pages.index import index_pages
from bookmaker.layout.pages.keys import key_pages
from bookmaker.layout.pages.notes import note_pages, owner_page, times_page
from bookmaker.layout.pages.opener import opener_pages
from bookmaker.layout.pages.primer import primer_pages
from bookmaker.layout.pages.puzzles import puzzle_pages
from bookmaker.layout.pages.tearout import torn_leaves
from bookmaker.layout.setting.flow import height
from bookmaker.layout.setting.paging import LEAST
from bookmaker.layout.setting.text import Row
from bookmaker.layout.spec import Layout


def compose(book: Book, layout: Layout, watch: Callable[[int, int], None] = lambda done, of: None) -> Document:
    """The whole book; `watch` is told how many of its parts are laid out, of how many. Raises BookErrors for what can't
    be printed, and for puzzles that fit on no page."""
    check(book, layout, "book")
    layout = layout.speaking(book.language)
    if layout.tear_out:
        book = as_pad(book)
    if not layout.shows.shared_rules and any(share_rules(chapter)[1] for chapter in book.chapters):
        book = guided(book)
    parts = len(book.front) + len(book.body)
    front: list[UnnumberedPage] = []
    for done, part in enumerate(book.front, start=1):
        front += _told(part, book, layout, right=True)
        watch(done, parts)
    if len(front) % 2:
        front += as_part([owner_page(book, layout)])
    body: list[UnnumberedPage] = []
    for done, part in enumerate(book.body, start=1 + len(book.front)):
        body += _before(part, book, layout, len(body) % 2 == 0)
        right = len(body) % 2 == 0
        body += _kept_apart(_told(part, book, layout, right), right)
        watch(done, parts)
    notes = layout.say("heading-notes")
    short = -(len(front) + len(body)) % book.fold
    body += as_part(note_pages(short, notes, layout))
    numbered = [*zip(front, map(roman, range(1, len(front) + 1)), strict=True)]
    numbered += zip(body, map(str, range(1, len(body) + 1)), strict=True)
    pages = draw_pages(numbered, layout, book.title, book.draft)
    bookmarks = [*_bookmarks(book), *([Bookmark(notes, "notes")] if short else [])]
    language = book.language
    return Document(book.title, book.editor, book.subtitle, pages, tuple(bookmarks), language)


def compose_key(book: Book, layout: Layout) -> Document:
    """The answer key alone. Raises BookErrors for what can't be printed."""
    check(book, layout, "book")
    language = book.language
    layout = layout.speaking(language)
    called = layout.say("heading-answer-key")
    title = layout.say("titled", title=book.title, what=called)
    leaves = key_pages(book.puzzles, layout, title, called)
    numbered = list(zip(leaves, map(str, range(1, len(leaves) + 1)), strict=True))
    pages = draw_pages(numbered, layout, book.title, book.draft)
    return Document(title, book.editor, book.subtitle, pages, (Bookmark(title, "keys"),), language)


def draw_pages(
    numbered: Sequence[tuple[UnnumberedPage, str]], layout: Layout, title: str, draft: bool
) -> Sequence[Page]:
    """Leaves with their printed numbers as pages, the first a right one; left pages carry the book's title."""
    labels = {name: label for leaf, label in numbered for name, _ in leaf.anchors}
    bound = layout.bound(len(numbered))

    def draw(at: int) -> Page:
        leaf, label = numbered[at]
        sheet = PageSide(bound, right=at % 2 == 0)
        head = leaf.guide or (leaf.head if sheet.right or not leaf.head else title)
        items = (*furniture(sheet, leaf, head, label, draft), *leaf.draw(sheet, labels))
        anchors = tuple(Anchor(name, 0.0, y) for name, y in leaf.anchors)
        return Page(layout.width, layout.height, items, label, anchors)

    return Pages(len(numbered), draw)


def _before(part: Part, book: Book, layout: Layout, right: bool) -> Iterator[UnnumberedPage]:
    """What stands before a chapter that would else begin on a left page: room for the times of the chapter that ends
    there."""
    match part:
        case Chapter() if part.title and not right:
            ended = book.chapters[book.chapters.index(part) - 1]
            yield from as_part([times_page(ended.puzzles, layout, ended.title)])


def _kept_apart(leaves: Iterable[UnnumberedPage], right: bool) -> Iterator[UnnumberedPage]:
    """The leaves, the first a `right` page or a left one, with pages put between those that must not face each other,
    and before those that must be the front of a leaf."""
    for leaf in leaves:
        if leaf.front and not right:
            yield BLANK
            right = True
        if leaf.between and right:
            yield leaf.between
            right = not right
        yield leaf
        right = not right


def _told(part: Part, book: Book, layout: Layout, right: bool) -> Iterable[UnnumberedPage]:
    """The leaves of a part, the first a `right` page or a left one. They are one to a reader as well if it has a
    heading: the title pages and a chapter without a title belong to the book itself."""
    divided = isinstance(part, HintPages | Keys) and any(chapter.title for chapter in book.chapters)
    leaves = _leaves(part, book, layout, right != divided)
    match part:
        case HalfTitle() | TitlePage() | ImprintPage() | Chapter(title=""):
            return leaves
        case HintPages() | Keys() if divided:
            return divider_leaf(part.heading, book, layout), *as_part(leaves)
    return as_part(leaves)


def _leaves(part: Part, book: Book, layout: Layout, right: bool) -> Iterable[UnnumberedPage]:
    match part:
        case HalfTitle():
            return [half_title_leaf(book, layout), BLANK]
        case TitlePage():
            return [title_leaf(part, book, layout)]
        case ImprintPage():
            return [imprint_leaf(part, layout)]
        case Foreword():
            return foreword_pages(part, book, layout)
        case Primer():
            return primer_pages(part, layout)
        case Guide():
            return guide_pages(part, book, layout)
        case Contents():
            return contents_pages(part, book, layout)
        case Chapter():
            part, shared = (part, None) if layout.shows.shared_rules else share_rules(part)
            opening = opener_pages(part, book, layout, shared) if part.title else []
            leaves = torn_leaves if layout.tear_out else puzzle_pages
            if layout.tear_out and len(opening) % 2:
                opening.append(times_page(part.puzzles, layout, part.title))
            return opening + leaves(part.puzzles, layout, part.title or book.title)
        case HintPages():
            glossary = next((other for other in book.body if isinstance(other, Glossary)), None)
            return hints_pages(part, glossary, book.puzzles, layout, right)
        case Glossary():
            return []  # it stands between the hints
        case Keys():
            return key_pages(book.puzzles, layout, part.heading, part.heading)
        case Credits():
            return [] if _above_index(part, book, layout) else credits_pages(part, layout)
        case Index():
            credits = (other for other in book.body if isinstance(other, Credits))
            above = next((rows for other in credits if (rows := _above_index(other, book, layout))), [])
            return index_pages(part, layout, above)
        case _ as never:
            assert_never(never)


def _above_index(part: Credits, book: Book, layout: Layout) -> list[Row]:
    """Credits too short for a page of their own; they stand over the index that follows. Else none."""
    after = book.body[book.body.index(part) + 1 :]
    rows = credits_rows(part, layout)
    if not after or not isinstance(after[0], Index) or height(rows) > LEAST * layout.depth:
        return []
    return [replace(rows[0], anchors=("credits",)), *rows[1:]]


def _bookmarks(book: Book) -> Iterator[Bookmark]:
    for part in (*book.front, *book.body):
        match part:
            case HalfTitle() | ImprintPage():
                pass
            case TitlePage():
                yield Bookmark(book.title, "title")
            case Foreword():
                yield Bookmark(part.heading, "foreword")
            case Primer():
                yield Bookmark(part.heading, "primer")
            case Guide():
                yield Bookmark(part.heading, "guide")
            case Contents():
                yield Bookmark(part.heading, "contents")
            case Chapter():
                level = 0
                if part.title:
                    yield Bookmark(part.title, f"chapter {part.number}")
                    level = 1
                for puzzle in part.puzzles:
                    yield Bookmark(f"{puzzle.number}  {puzzle.heading}".rstrip(), f"puzzle {puzzle.id}", level)
            case HintPages():
                yield Bookmark(part.heading, "hints")
                for level, title in enumerate(part.levels, start=1):
                    yield Bookmark(title, f"hints {level}", 1)
            case Glossary():
                yield Bookmark(part.heading, "glossary", 1)
            case Keys():
                yield Bookmark(part.heading, "keys")
            case Credits():
                yield Bookmark(part.heading, "credits")
            case Index():
                yield Bookmark(part.heading, "index")
            case _ as never:
                assert_never(never)
