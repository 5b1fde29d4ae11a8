"""What is known of a book as a publication: the imprint's fields, told in the terms of catalogues.

In: a `Book`. Out: a `Record`. An identifier is there in any case: the ISBN, or one made of title, editor and imprint,
so that it is the same every time.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from uuid import NAMESPACE_OID, uuid5

from bookmaker.book.contents import Book
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.manifest.publication import Imprint

ACCESS_MODES = ("textual", "visual")
SUFFICIENT = ("textual", "textual,visual")
"""All can be read: tables and words say what pictures show."""

FEATURES = ("alternativeText", "displayTransformability", "readingOrder", "structuralNavigation", "tableOfContents")
PAGED = ("pageBreakMarkers", "pageNavigation")
"""Features of an e-book that knows the printed pages (schema.org accessibilityFeature)."""

HAZARD = "none"


@dataclass(frozen=True, slots=True)
class Record:
    """`identifier` is a URN; `isbn` that of this edition, `printed` that of the printed one, both bare digits or ""."""

    title: str
    subtitle: str
    editor: str
    setters: tuple[str, ...]
    language: str
    identifier: str
    isbn: str
    printed: str
    publisher: str
    edition: str
    rights: str
    description: str
    dated: date | None


def record_of(book: Book, dated: date | None, ebook: bool) -> Record:
    """The record of a book's e-book, or of its printed edition."""
    imprint = book.imprint or Imprint()
    printed = imprint.isbn.replace("-", "")
    isbn = imprint.ebook_isbn.replace("-", "") if ebook else printed
    named = (
        book.title,
        book.subtitle,
        book.editor,
        imprint.publisher,
        imprint.edition,
        printed,
        "ebook" if ebook else "",
    )
    cover, marks = book.cover, book.words.quotation_marks
    blurb = [" ".join("".join(run.text for run in runs).split()) for runs in cover.blurb] if cover else []
    return Record(
        title=book.title,
        subtitle=book.subtitle,
        editor=book.editor,
        setters=tuple(dict.fromkeys(puzzle.setter for puzzle in book.puzzles if puzzle.setter)),
        language=book.language,
        identifier=f"urn:isbn:{isbn}" if isbn else f"urn:uuid:{uuid5(NAMESPACE_OID, chr(10).join(named))}",
        isbn=isbn,
        printed=printed,
        publisher=smart_quotes(imprint.publisher, marks),
        edition=smart_quotes(imprint.edition, marks),
        rights=smart_quotes(imprint.rights, marks),
        description=smart_quotes("\n\n".join(blurb), marks),
        dated=dated,
    )
