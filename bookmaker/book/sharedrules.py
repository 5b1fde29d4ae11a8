"""Rules that all puzzles of a chapter have, to be said once where it opens.

In: a chapter. Out: the chapter, its puzzles without these rules, and the rules.
"""

from __future__ import annotations

from dataclasses import replace

from bookmaker.book.contents import Book, Chapter, Guide, RulesText


def share_rules(chapter: Chapter) -> tuple[Chapter, RulesText | None]:
    """The plain text, if it is the same for all, and the marks that all have; None where there is nothing to share, or
    one puzzle only."""
    first, *others = (puzzle.rules for puzzle in chapter.puzzles)
    if not others or not chapter.title:
        return chapter, None
    plain = first.plain if all(rules.plain == first.plain for rules in others) else ""
    marks = tuple(mark for mark in first.marks if all(mark in rules.marks for rules in others))
    if not plain and not marks:
        return chapter, None
    puzzles = (
        replace(
            puzzle,
            rules=RulesText(
                "" if plain else puzzle.rules.plain, tuple(mark for mark in puzzle.rules.marks if mark not in marks)
            ),
        )
        for puzzle in chapter.puzzles
    )
    return replace(chapter, puzzles=tuple(puzzles)), RulesText(plain, marks)


def guided(book: Book) -> Book:
    """The book; its guide tells where such rules are to be found."""
    return replace(book, front=tuple(_told(part) if isinstance(part, Guide) else part for part in book.front))


def _told(guide: Guide) -> Guide:
    first, _, *more = guide.paragraphs
    return replace(guide, paragraphs=(first, guide.shared, *more))
