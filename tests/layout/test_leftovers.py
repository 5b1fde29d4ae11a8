"""No part of a book ends on a page with a few lines, where taking away white or sharing the lines can help it."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import replace
from itertools import count, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bookmaker.book.contents import BookPuzzle, Credits, HintPages, Hints, Index, IndexEntry, IndexGroup
from bookmaker.book.wording import hint_levels
from bookmaker.display.items import Page, Rect, Text
from bookmaker.language import catalogue
from bookmaker.layout import Layout, compose, layout_names, load_layout
from bookmaker.layout.page_side import PageSide, UnnumberedPage
from bookmaker.layout.pages.credits import credits_pages
from bookmaker.layout.pages.hints import hints_pages
from bookmaker.layout.pages.index import index_pages
from bookmaker.layout.setting.flow import columns, height
from bookmaker.layout.setting.paging import LEAST, filled, pages
from bookmaker.layout.setting.text import Row
from bookmaker.layout.sheets.crib import ENDING
from tests.layout.flat import flat
from tests.layout.pinned import crib
from tests.layout.sample_book import full_book, sample_book

ENGLISH = catalogue("en")
HINTS = HintPages(ENGLISH.say("heading-hints"), ENGLISH.say("hints-note"), hint_levels(ENGLISH))

BOOKS = [name for name in layout_names() if load_layout(name).use == "book"]
LINE = 10.0
INK = (Rect(0.0, 0.0, 1.0, 1.0, fill=0.0),)


def line(tied: bool = False) -> Row:
    return Row(LINE, INK, tied)


def settled(rows: Sequence[Row], depth: float) -> list[tuple[Row, ...]]:
    return [column for (column,) in pages(rows, depth, LINE)]


def test_one_line_too_many_is_pulled_back_by_halving_the_white() -> None:
    rows = [*[line()] * 4, Row(LINE), *[line()] * 4, Row(LINE), line(), line()]
    assert len(columns(rows, 110)) == 2
    (page,) = settled(rows, 110)
    assert height(page) == 110 and [row.height for row in page if not row.items] == [5.0, 5.0]


def test_white_is_halved_only_where_a_page_needs_it() -> None:
    """The first page is short, for what follows is tied; it keeps its white, and the second gives up its own."""
    tied = [*[line(tied=True)] * 6, line()]
    rows = [line(), Row(LINE), line(), Row(LINE), line(), *tied, Row(LINE), line(), Row(LINE), line()]
    assert len(columns(rows, 100)) == 3
    one, other = settled(rows, 100)
    assert [row.height for row in one if not row.items] == [LINE, LINE]
    assert [row.height for row in other if not row.items] == [5.0, 5.0]


def test_where_there_is_no_white_the_last_lines_get_company() -> None:
    one, other = settled([line()] * 41, 400)
    assert (len(one), len(other)) == (21, 20)


def test_only_the_page_before_the_last_gives_up_something() -> None:
    assert [len(page) for page in settled([line()] * 122, 400)] == [40, 40, 21, 21]


def test_the_last_two_pages_of_columns_share_what_is_left() -> None:
    shared = pages([line()] * 70, 400, LINE, across=2, top=100)
    assert [[len(column) for column in page] for page in shared] == [[13, 13], [22, 22]]


def test_white_at_the_foot_of_a_column_is_there_again_where_the_columns_of_the_last_page_are_evened() -> None:
    """Two columns of the last page are filled before they are made even: what ended the first may then stand within."""
    entries = [row for _ in range(40) for row in (line(), Row(4.0))]
    *_, last = pages(entries, 94.0, 10.0, across=2)
    assert len(last) == 2
    for column in last:
        shown = [bool(row.items) for row in column]
        assert (True, True) not in pairwise(shown), "no two entries without white between them"


def test_what_is_tied_goes_over_to_the_last_page_whole() -> None:
    block = [*[line(tied=True)] * 29, line()]
    rows = [*[line()] * 50, *block, *[line()] * 3]
    assert [len(page) for page in settled(rows, 400)] == [40, 10, 33]


def test_white_under_a_heading_stays() -> None:
    rows = [line(tied=True), Row(LINE, tied=True), *[line()] * 40]
    one, _ = settled(rows, 400)
    assert one[1].height == LINE


def test_what_cannot_be_helped_stays_as_it_was() -> None:
    block = [*[line(tied=True)] * 38, line()]  # nothing of it can come over
    rows = [*block, line(), line(), line()]
    assert settled(rows, 400) == columns(rows, 400)


ROWS = st.lists(st.tuples(st.integers(1, 6), st.booleans(), st.sampled_from([0.5, 1.0])), min_size=1, max_size=60)


@settings(derandomize=True, deadline=None, max_examples=300)
@given(ROWS, st.integers(12, 40))
def test_nothing_is_lost_and_no_page_is_added(groups: list[tuple[int, bool, float]], lines: int) -> None:
    """Groups of lines, some of them tied, with white between them."""
    marks = count()
    rows: list[Row] = []
    for size, tied, white in groups:
        named = [Row(LINE, (Text(0.0, 0.0, str(next(marks)), "sans", 9.0),), tied) for _ in range(size)]
        rows += [*named[:-1], replace(named[-1], tied=False), Row(white * LINE)]
    before, after = columns(rows, lines * LINE), settled(rows, lines * LINE)
    assert [row.items for page in after for row in page if row.items] == [row.items for row in rows if row.items]
    assert len(after) <= len(before)
    assert all(filled([page]) <= lines * LINE + 0.01 for page in after)
    if len(after) == len(before) > 1:
        assert filled([after[-1]]) >= min(filled([before[-1]]), LEAST * lines * LINE)
    ends = {page[-1].items for page in after[:-1]}
    assert not any(row.tied and row.items in ends for row in rows if row.items)


def drawn(leaves: Sequence[UnnumberedPage], layout: Layout) -> Iterator[Page]:
    for leaf in leaves:
        yield Page(layout.width, layout.height, leaf.draw(PageSide(layout, right=True), {}), "")


def share(page: Page, layout: Layout) -> float:
    """Share of the depth that has something on it."""
    low = max(one.box[3] for one in flat(page) if not one.inside("folio"))
    return (low - layout.margins.top) / layout.depth


def many(number: int) -> tuple[BookPuzzle, ...]:
    """The sample's puzzles over and over, with hints of a line or two."""
    puzzles = sample_book().puzzles
    hints = Hints("Look at the second row.", "A digit that has one place only there.", "It is the 4. " * 6)
    return tuple(replace(puzzles[at % len(puzzles)], number=at + 1, hints=hints) for at in range(number))


def credit_pages(number: int, layout: Layout) -> list[UnnumberedPage]:
    return credits_pages(Credits("Credits", puzzles=many(number)), layout)


@pytest.mark.parametrize("name", ["a4-book", "a5-booklet", "a4-large-print"])
@pytest.mark.parametrize("number", [1, 700])
def test_an_index_entry_of_any_length_stays_on_its_pages(name: str, number: int) -> None:
    """A book of classics without titles has all of them under one name."""
    layout = load_layout(name)
    part = Index(
        "Index", "Figures are puzzle numbers.", (IndexGroup("By rule", (IndexEntry("Classic", many(number)),)),)
    )
    found = [one for page in drawn(index_pages(part, layout), layout) for one in flat(page)]
    assert max(one.box[3] for one in found) <= layout.height - layout.margins.bottom
    figures = [word for one in found if isinstance(one.item, Text) for word in one.item.text.split(", ")]
    assert [word for word in (figure.strip(", ") for figure in figures) if word.isdigit()] == [
        str(at + 1) for at in range(number)
    ]


def hint_pages(number: int, layout: Layout) -> list[UnnumberedPage]:
    """The pages of the last hints."""
    leaves = hints_pages(HINTS, None, many(number), layout, True)
    at = next(at for at, leaf in enumerate(leaves) if any(name == "hints 3" for name, _ in leaf.anchors))
    return leaves[at:]


@pytest.mark.parametrize("name", BOOKS)
@pytest.mark.parametrize("part", [credit_pages, hint_pages])
def test_lists_of_any_length_end_well(name: str, part: Callable[[int, Layout], list[UnnumberedPage]]) -> None:
    layout = load_layout(name)
    ended = 0
    for number in range(20, 140, 3):
        leaves = part(number, layout)
        if len(leaves) > 1:
            ended += 1
            *_, last = drawn(leaves, layout)
            assert share(last, layout) > LEAST - layout.line / layout.depth, number
    assert ended > 5


def test_no_crib_ends_in_a_few_lines_and_a_picture() -> None:
    text = load_layout("a4-book").type.text
    ended = 0
    for cups in range(1, 90):
        *before, last = crib(cups).pages
        lines = {
            round(one.box[3], 2)
            for one in flat(last)
            if isinstance(one.item, Text) and one.item.font == text.font and one.item.size == text.size
        }
        if before and lines:
            ended += 1
            assert len(lines) >= ENDING, cups
    assert ended > 10


@pytest.mark.parametrize("name", BOOKS)
def test_no_part_of_the_sample_ends_in_a_few_lines(name: str) -> None:
    layout = load_layout(name)
    made = tuple(compose(full_book(), layout).pages)
    named = ("contents", "foreword", "guide", "primer", "hints 1", "hints 2", "hints 3", "keys", "credits", "index")
    starts = [at for at, page in enumerate(made) if any(a.name in (*named, "chapter 1", "notes") for a in page.anchors)]
    for start, end in zip(starts, [*starts[1:], len(made)], strict=True):
        *_, last = (page for page in made[start:end] if page is made[start] or len(flat(page)) > 3)
        if last is not made[start] and not any(anchor.name.startswith("puzzle") for anchor in last.anchors):
            assert share(last, layout) > LEAST - layout.line / layout.depth, start
