"""Names, dates and titles stay whole, however narrow their column, where running text is parted."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

import pytest

from bookmaker.book.model import BookPuzzle, Credits
from bookmaker.display.items import Text
from bookmaker.layout import load_layout
from bookmaker.layout.pages.credits import credits_leaves
from bookmaker.layout.pages.words import head_above, head_beside
from bookmaker.layout.setting.text import Row, paragraph
from bookmaker.layout.sheet import Sheet
from tests.layout.sample_book import picked

NAME = "Bartholomew Considering of Constantinople and Hospitality with Neighbouring Gentlemen Consecutive"
LAYOUTS = ("a5-book", "a4-book-two", "letter-book-six", "a4-large-print")


def named() -> BookPuzzle:
    (puzzle,) = picked("kettle").puzzles
    return replace(puzzle, setter=NAME, title=NAME, shown="28 November 2025", permission=NAME)


def lines(rows: Iterable[Row]) -> list[str]:
    return [item.text for row in rows for item in row.items if isinstance(item, Text)]


def test_the_name_would_be_parted_as_running_text() -> None:
    note = load_layout("a5-book").speaking("en").type.note
    assert any(
        text.endswith("-") for measure in range(60, 120, 5) for text in lines(paragraph(NAME, note, measure, 12))
    )


@pytest.mark.parametrize("name", LAYOUTS)
def test_no_setter_and_no_title_is_parted(name: str) -> None:
    layout = load_layout(name).speaking("en")
    for ems in range(12, 30):
        measure = ems * layout.type.note.size
        for rows in (head_above(named(), layout, measure, 0.0), head_beside(named(), layout, measure)):
            assert not [text for text in lines(rows) if text.endswith("-")]


@pytest.mark.parametrize("name", LAYOUTS)
def test_the_credits_part_nothing_and_keep_a_date_together(name: str) -> None:
    layout = load_layout(name).speaking("en")
    other = replace(named(), permission="Another leave.")
    said = [
        item.text
        for leaf in credits_leaves(Credits("Credits"), (named(), other), layout)
        for group in leaf.draw(Sheet(layout, right=True), {})
        for item in getattr(group, "items", ())
        if isinstance(item, Text)
    ]
    assert not [text for text in said if text.endswith("-")]
    assert sum("28\u00a0November\u00a02025" in text for text in said) == 2
