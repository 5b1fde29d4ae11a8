"""A book as a pad of sheets, the keys on their backs: it needs no pages of keys, and its guide speaks of no such pages.

In: a book. Out: the same book for a pad.
"""

from __future__ import annotations

from dataclasses import replace

from bookmaker.book.contents import Book, Guide, Keys


def as_pad(book: Book) -> Book:
    """The book without its pages of keys."""
    front = (
        replace(part, paragraphs=part.in_a_pad or part.paragraphs) if isinstance(part, Guide) else part
        for part in book.front
    )
    body = (part for part in book.body if not isinstance(part, Keys))
    return replace(book, front=tuple(front), body=tuple(body))
