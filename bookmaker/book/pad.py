"""A book as a pad of sheets, the keys on their backs: it needs no pages of keys, and its guide speaks of no such pages.

In: a book. Out: the same book for a pad.
"""

from __future__ import annotations

from dataclasses import replace

from bookmaker.book.contents import Book, Guide, Keys
from bookmaker.book.wording import IN_A_PAD


def as_pad(book: Book) -> Book:
    """The book without its pages of keys."""
    front = (_in_a_pad(part) if isinstance(part, Guide) else part for part in book.front)
    body = (part for part in book.body if not isinstance(part, Keys))
    return replace(book, front=tuple(front), body=tuple(body))


def _in_a_pad(guide: Guide) -> Guide:
    paragraphs = guide.paragraphs
    for in_a_book, in_a_pad in IN_A_PAD:
        paragraphs = tuple(paragraph.replace(in_a_book, in_a_pad) for paragraph in paragraphs)
    return replace(guide, paragraphs=paragraphs)
