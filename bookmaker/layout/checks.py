"""What is wrong with a book on a layout before a page is made.

In: a book and a layout. Out: nothing, or `BookTroubles`: a layout made for something else, a character that the fonts
cannot print. Such a character would come out as an empty box, so it is named here instead.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Literal
from unicodedata import name

from bookmaker.book.model import Book, Foreword, ImprintPage, TitlePage
from bookmaker.layout.setting.runs import font_of
from bookmaker.layout.setting.text import FONTS
from bookmaker.layout.spec import Layout
from bookmaker.trouble import BookTroubles, Place, Trouble


def check(book: Book, layout: Layout, use: Literal["book", "handout"]) -> None:
    """Raise BookTroubles if the layout is not for this use or a text can't be printed in its fonts."""
    troubles = []
    if layout.use != use:
        text = f"{layout.name} is a layout for a {layout.use}, not for a {use}"
        troubles.append(Trouble(layout.place, "wrong-use", text, "“bookmaker layouts” lists what there is"))
    for what, text, font, place in _texts(book, layout):
        for character in FONTS.missing(text, font):
            said = f"{what} has the character “{character}” ({name(character, 'without a name').lower()})"
            troubles.append(Trouble(place, "missing-glyph", f"{said}, which the font “{font}” can't print"))
    if troubles:
        raise BookTroubles(troubles)


def _texts(book: Book, layout: Layout) -> Iterator[tuple[str, str, str, Place]]:
    """Every text that an editor typed: what it is, the text, a font it is set in, its place."""
    type = layout.type
    yield "the book's title", book.title, type.display.font, book.place
    yield "the book's title", book.title.upper(), type.label.font, book.place
    yield "the book's subtitle", book.subtitle, type.title.font, book.place
    yield "the editor's name", book.editor.upper(), type.label.font, book.place
    for text, font in _marked_up(book, layout):
        yield "the foreword or the cover", text, font, book.place
    for part in book.front:
        if isinstance(part, ImprintPage):
            for text in part.paragraphs:
                yield "the imprint", text, type.small.font, book.place
        if isinstance(part, TitlePage):
            yield "the publisher's name", part.publisher.upper(), type.label.font, book.place
    for name_of_band in book.band_names:
        yield "the name of a band", name_of_band, type.label.font, book.place
    for chapter in book.chapters:
        yield "the chapter's title", chapter.title, type.heading.font, book.place
        yield "the chapter's title", chapter.title.upper(), type.label.font, book.place
        yield "the chapter's note", chapter.note, type.text.font, book.place
    for puzzle in book.puzzles:
        yield "the title", puzzle.title, type.title.font, puzzle.place
        yield "the setter's name", puzzle.setter, type.note.font, puzzle.place
        yield "the note", puzzle.note, type.note.font, puzzle.place
        yield "the permission", puzzle.permission, type.small.font, puzzle.place


def _marked_up(book: Book, layout: Layout) -> Iterator[tuple[str, str]]:
    """The words of the foreword and of the cover, each style with its font."""
    paragraphs = [runs for part in book.front if isinstance(part, Foreword) for runs in part.paragraphs]
    paragraphs += book.publication.cover.blurb if book.publication.cover else ()
    for runs in paragraphs:
        for run in runs:
            yield run.text, font_of(run.style, layout.type.text)
