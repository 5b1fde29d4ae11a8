"""What is wrong with a book on a layout before a page is made.

In: a book and a layout. Out: nothing, or `BookErrors`: a layout made for something else, a character that the fonts
cannot print. Such a character would come out as an empty box, so it is named here instead.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Literal
from unicodedata import name

from bookmaker.book.contents import Book, Foreword, ImprintPage, TitlePage
from bookmaker.layout.setting.runs import font_of
from bookmaker.layout.setting.text import FONTS
from bookmaker.layout.spec import Layout
from bookmaker.manifest.markup import Runs
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place


def check(book: Book, layout: Layout, use: Literal["book", "handout"]) -> None:
    """Raise BookErrors if the layout is not for this use or a text can't be printed in its fonts."""
    diagnostics: dict[tuple[Place, str], Diagnostic] = {}
    if layout.use != use:
        text = f"{layout.name} is a layout for a {layout.use}, not for a {use}"
        hint = "“bookmaker layouts” lists what there is"
        diagnostics[layout.place, ""] = Diagnostic(layout.place, "wrong-use", text, hint)
    for what, text, font, place in _texts(book, layout):
        for character in FONTS.missing(text, font):
            said = f"{what} has the character “{character}” ({name(character, 'without a name').lower()})"
            diagnostic = Diagnostic(place, "missing-glyph", f"{said}, which the font “{font}” can't print")
            diagnostics.setdefault((place, character), diagnostic)
    if diagnostics:
        raise BookErrors(diagnostics.values())


def _texts(book: Book, layout: Layout) -> Iterator[tuple[str, str, str, Place]]:
    """Every text that an editor typed: what it is, the text, a font it is set in, its place."""
    type = layout.type

    def of_book(field: str) -> Place:
        return book.places.get(field, book.place)

    yield "the book's title", book.title, type.display.font, book.place
    yield "the book's title", book.title.upper(), type.label.font, book.place
    yield "the book's subtitle", book.subtitle, type.title.font, of_book("subtitle")
    yield "the editor's name", book.editor.upper(), type.label.font, of_book("editor")
    for part in book.front:
        if isinstance(part, Foreword):
            yield from (("the foreword", *styled, of_book("foreword")) for styled in _styled(part.paragraphs, layout))
        if isinstance(part, ImprintPage):
            for text in part.paragraphs:
                yield "the imprint", text, type.small.font, of_book("imprint")
        if isinstance(part, TitlePage):
            yield "the publisher's name", part.publisher.upper(), type.label.font, of_book("imprint")
    if cover := book.cover:
        yield from (("the blurb", *styled, of_book("cover")) for styled in _styled(cover.blurb, layout))
    for name_of_band in book.band_names:
        yield "the name of a band", name_of_band, type.label.font, of_book("bands")
    for chapter in book.chapters:
        place = chapter.place or book.place
        yield "the chapter's title", chapter.title, type.heading.font, place
        yield "the chapter's title", chapter.title.upper(), type.label.font, place
        yield "the chapter's note", chapter.note, type.text.font, place
    for puzzle in book.puzzles:
        for field, what, text, font in (
            ("title", "the title", puzzle.title, type.title.font),
            ("setter", "the setter's name", puzzle.setter, type.note.font),
            ("note", "the note", puzzle.note, type.note.font),
            ("permission", "the permission", puzzle.permission, type.small.font),
        ):
            yield what, text, font, puzzle.places.get(field) or puzzle.place


def _styled(paragraphs: Iterable[Runs], layout: Layout) -> Iterator[tuple[str, str]]:
    """The words of some paragraphs, each style with its font."""
    return ((run.text, font_of(run.style, layout.type.text)) for runs in paragraphs for run in runs)
