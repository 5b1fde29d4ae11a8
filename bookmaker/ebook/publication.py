"""A whole e-book.

In: a `Book`, the layout and the pages of its printed edition, its date. Out: the bytes of the .epub file.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from importlib.resources import files as package_files

from bookmaker.book.contents import Book, ImprintPage
from bookmaker.display.items import Page
from bookmaker.ebook.container import container
from bookmaker.ebook.navigation import mark_pages, navigation
from bookmaker.ebook.package import package
from bookmaker.ebook.pictures import Pictures, cover_picture
from bookmaker.ebook.record import record_of
from bookmaker.ebook.texts import Text, texts_of
from bookmaker.hypertext.elements import element, xhtml, xml
from bookmaker.hypertext.webpage import stylesheet
from bookmaker.layout import Layout
from bookmaker.resources import shipped

FONTS = ("PTF55F.ttf", "PTF56F.ttf", "PTF75F.ttf", "PTS55F.ttf", "PTS75F.ttf", "LICENCE.txt")
"""The fonts of the stylesheet, whole and with their licence, which asks for that."""

COVER = "images/cover.png"


def ebook_bytes(book: Book, layout: Layout, pages: Sequence[Page], dated: date) -> bytes:
    """The e-book. `pages` are the printed ones, whose numbers it carries along."""
    pictures = Pictures(book.language)
    texts = [*texts_of(book, pictures, COVER)]
    numbers = {puzzle.id: puzzle.number for puzzle in book.puzzles}
    printed = mark_pages(texts, pages, numbers)
    record = record_of(book, dated, ebook=True)
    contents = Text("nav.xhtml", book.words.say("heading-contents"), navigation(book.words, texts, printed), ())
    texts.insert(2 + any(isinstance(part, ImprintPage) for part in book.front), contents)
    language = book.language
    style = stylesheet() + package_files(__package__).joinpath("reader.css").read_text(encoding="utf-8")
    files = {text.file: _document(text, language) for text in texts}
    files |= {"style.css": style.encode(), COVER: cover_picture(book, layout, len(pages)), **pictures.files}
    files |= {f"fonts/{name}": (shipped("fonts") / name).read_bytes() for name in FONTS}
    source = f"urn:isbn:{record.printed}" if record.printed else f"{book.title} (printed: {layout.name})"
    spine = [text.file for text in texts]
    opf = package(record, files, spine, COVER, dated, source if printed else "")
    return container({"package.opf": xml(opf), **files})


def _document(text: Text, language: str) -> bytes:
    head = (
        element("meta", charset="utf-8"),
        element("title", text.title),
        element("link", rel="stylesheet", type="text/css", href="style.css"),
    )
    kind = text.matter if text.matter != "cover" else "frontmatter"
    return xhtml(head, element("body", element("main", [*text.body]), epub_type=kind), language)
