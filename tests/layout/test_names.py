"""Names, dates and titles stay whole, however narrow their column, where running text is parted."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

import pytest

from bookmaker.book.contents import BookPuzzle, Chapter, Credits, TitlePage
from bookmaker.display.items import Text, untagged
from bookmaker.layout import compose, compose_cover, layout_names, load_layout
from bookmaker.layout.page_side import PageSide
from bookmaker.layout.pages.credits import credits_pages
from bookmaker.layout.pages.words import head_above, head_beside
from bookmaker.layout.setting.text import FONTS, Row, broken, cut, paragraph, width
from bookmaker.source.file_limits import LINE
from tests.layout.flat import flat
from tests.layout.sample_book import picked

NAME = "Bartholomew Considering of Constantinople and Hospitality with Neighbouring Gentlemen Consecutive"
LAYOUTS = ("a5-book", "a4-book-two", "letter-book-six", "a4-large-print")


def named() -> BookPuzzle:
    (puzzle,) = picked("kettle").puzzles
    return replace(puzzle, setter=NAME, title=NAME, shown="28 November 2025", permission=NAME)


def lines(rows: Iterable[Row]) -> list[str]:
    return [item.text for row in rows for item in untagged(row.drawn({})) if isinstance(item, Text)]


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
            # A word that is wider than its column has to be cut; then its piece stands alone on its line.
            assert not [text for text in lines(rows) if text.endswith("-") and " " in text]


@pytest.mark.parametrize("name", LAYOUTS)
def test_the_credits_part_nothing_and_keep_a_date_together(name: str) -> None:
    layout = load_layout(name).speaking("en")
    other = replace(named(), permission="Another leave.")
    said = [
        item.text
        for leaf in credits_pages(Credits("Credits", puzzles=(named(), other)), layout)
        for group in untagged(leaf.draw(PageSide(layout, right=True), {}))
        for item in untagged(getattr(group, "items", ()))
        if isinstance(item, Text)
    ]
    assert not [text for text in said if text.endswith("-")]
    assert sum("28\u00a0November\u00a02025" in text for text in said) == 2


LONGEST = ("Wandering weather " * 20)[:LINE].strip()


@pytest.mark.parametrize("name", [name for name in layout_names() if load_layout(name).use == "book"])
def test_the_longest_titles_and_names_stay_inside_the_page(name: str) -> None:
    layout = load_layout(name)
    book = picked("kettle", "hinge")
    chapters = [Chapter(at, LONGEST, "", (puzzle,)) for at, puzzle in enumerate(book.puzzles, start=1)]
    front = tuple(replace(part, publisher=LONGEST) if isinstance(part, TitlePage) else part for part in book.front)
    long = replace(book, title=LONGEST, editor=LONGEST, front=front, body=(*chapters, *book.body[1:]))
    for page in (*compose(long, layout).pages, *compose_cover(long, layout, 40).pages):
        for one in flat(page):
            if isinstance(one.item, Text):
                assert one.box[0] >= 14 and one.box[2] <= page.width - 14, one.item.text


SHIP = "Kapitänsmützenabzeichen"
ENDLESS = "Donaudampfschifffahrtsgesellschaftskapitänsmützenabzeichenverwalterstellvertreter"


@pytest.mark.parametrize("name", [name for name in layout_names() if load_layout(name).use == "book"])
@pytest.mark.parametrize("title", [SHIP, ENDLESS])
def test_a_long_word_of_a_title_is_set_smaller_rather_than_cut(name: str, title: str) -> None:
    """Where even the smallest size does not do, the cut has a hyphen."""
    layout = load_layout(name)
    book = picked("kettle")
    long = replace(book, title=title, body=(Chapter(1, title, "", book.puzzles), *book.body[1:]))
    for page in (*compose(long, layout).pages[:4], *compose_cover(long, layout, 40).pages):
        said = [one.item.text for one in flat(page) if isinstance(one.item, Text)]
        pieces = [text for text in said if text.rstrip("-") and text.rstrip("-") in title and len(text) > 3]
        if title == SHIP:
            assert all(text == title for text in pieces), pieces
        assert all(text.endswith("-") or title.endswith(text) for text in pieces), pieces


def test_a_cut_word_has_a_hyphen_unless_a_dash_stands_there() -> None:
    type = load_layout("a5-book").type.title
    for word in (SHIP, "north-north-west-and-by-north", "a/b/c/d/e/f/g/h/i/j/k/l"):
        for measure in (30, 45, 60):
            *before, last = broken(word, type.font, type.size, float(measure))
            assert before and all(text[-1] in "-/" for text in before)
            assert "".join(text if word.find(text) >= 0 else text[:-1] for text in (*before, last)) == word
            assert all(FONTS.width(text, type.font, type.size) <= measure for text in (*before, last))


def test_a_text_is_cut_between_words_and_only_where_it_must_be() -> None:
    label = load_layout("a5-book").type.label
    words = "From the harbour: to the quay"
    assert cut(words, label, width(words, label)) == words
    for room in range(20, 120, 3):
        short = cut(words, label, float(room))
        assert short == words or (short.endswith(" …") and words.startswith(short[:-2]))
        assert width(short, label) <= room or short == "From …"
    assert cut("Unpartable", label, 1.0) == "Unpartable"
