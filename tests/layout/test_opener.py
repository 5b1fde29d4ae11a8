"""Chapters with long titles, many words or many puzzles: nothing on their first page runs into anything else."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations, islice

import pytest

from bookmaker.book.contents import Book, BookPuzzle, Chapter
from bookmaker.book.sharedrules import share_rules
from bookmaker.display.items import Link, Page, Rect, Text
from bookmaker.layout import compose, layout_names, load_layout
from bookmaker.layout.page_side import PageSide
from bookmaker.layout.pages.opener import MOST, opener_pages
from bookmaker.source.file_limits import LINE, NOTE
from tests.layout.flat import flat
from tests.layout.sample_book import chapter_draft, sample_book

BOOKS = [name for name in layout_names() if load_layout(name).use == "book"]
LONG = {
    "plain": (20, 60),
    "long title": (LINE, 0),
    "an introduction": (20, 800),
    "both": (LINE, 1500),
    "more than a page": (LINE, NOTE),
}


def opened(chapter: Chapter, name: str, book: Book) -> list[Page]:
    layout = load_layout(name)
    leaves = opener_pages(chapter, book, layout)
    return [
        Page(layout.width, layout.height, leaf.draw(PageSide(layout, at % 2 == 0), {}), "")
        for at, leaf in enumerate(leaves)
    ]


@pytest.mark.parametrize("name", BOOKS)
@pytest.mark.parametrize("what", LONG)
def test_words_and_ridge_stand_clear_of_each_other_and_inside_the_page(name: str, what: str) -> None:
    layout = load_layout(name)
    title, note = LONG[what]
    chapter = replace(
        chapter_draft().chapters[1],
        title=("Wandering weather " * 20)[:title].strip(),
        note=("wind and rain " * 400)[:note],
    )
    made = opened(chapter, name, chapter_draft())
    assert len(made) == 1 or what in ("both", "more than a page") or "large" in name or layout.width > layout.height
    ridges = 0
    for page in made:
        items = flat(page)
        for one in items:
            assert one.box[3] <= layout.height - layout.margins.bottom + layout.line
        ridge = [one.box for one in items if one.inside("ridge")]
        ridges += bool(ridge)
        texts = [one.box for one in items if isinstance(one.item, Text)]
        for box, other in combinations(texts, 2):
            assert (
                min(box[2], other[2]) - max(box[0], other[0]) <= 0.1
                or min(box[3], other[3]) - max(box[1], other[1]) <= 0.1
            )
        beside = min((part[0] for part in ridge), default=0.0) if layout.width > layout.height else 0.0
        above = [box for box in texts if ridge and box[1] < max(part[3] for part in ridge) and box[2] > beside]
        assert all(box[3] <= min(part[1] for part in ridge) for box in above)
    assert ridges == 1


def rated(numbers: range, bands: tuple[int, ...]) -> tuple[BookPuzzle, ...]:
    puzzle = sample_book().puzzles[0]
    assert puzzle.rating is not None
    return tuple(
        replace(puzzle, number=number, rating=replace(puzzle.rating, band=bands[at % len(bands)]))
        for at, number in enumerate(numbers)
    )


def under_the_peaks(puzzles: tuple[BookPuzzle, ...]) -> list[str]:
    (page,) = opened(Chapter(1, "Many", "", puzzles), "a5-book", sample_book())
    return [one.text for one in texts_of(page) if one.font == "sans-bold" and one.anchor == "middle"]


def texts_of(page: Page) -> list[Text]:
    return [one.item for one in flat(page) if isinstance(one.item, Text)]


def test_a_few_numbers_are_told_one_by_one_a_run_by_its_ends_and_a_crowd_by_its_count() -> None:
    assert under_the_peaks(rated(range(3, 6), (2,))) == ["3, 4, 5"]
    assert under_the_peaks(rated(range(1, 181), (4,))) == ["1–180"]
    assert under_the_peaks(rated(range(100, 400), (1, 2))) == ["150 puzzles", "150 puzzles"]
    several = under_the_peaks(rated(range(101, 115), (5,)))
    assert 1 < len(several) <= MOST and " ".join(several) == ", ".join(map(str, range(101, 115)))


def test_a_chapter_of_two_pages_leads_to_its_first() -> None:
    draft = chapter_draft()
    long = replace(draft.chapters[0], note="wind and rain " * 250)
    body = tuple(long if part is draft.chapters[0] else part for part in draft.body)
    pages = compose(replace(draft, body=body), load_layout("a5-book")).pages
    (at,) = [at for at, page in enumerate(pages) if any(anchor.name == "chapter 1" for anchor in page.anchors)]
    assert not any(anchor.name.startswith("puzzle") for anchor in (*pages[at].anchors, *pages[at + 1].anchors))


def boxes_on(page: Page) -> int:
    return sum(isinstance(one.item, Rect) and not one.names for one in flat(page))


def test_a_chapters_puzzles_are_ticked_off_by_title_or_by_number() -> None:
    (few,) = opened(Chapter(1, "Few", "", sample_book().puzzles), "a5-book", sample_book())
    titles = {puzzle.heading for puzzle in sample_book().puzzles}
    shown = {text.text for text in texts_of(few)}
    assert boxes_on(few) == len(titles) and len(titles - shown) == 1, "one is long, and cut"
    leads = {one.item.target for one in flat(few) if isinstance(one.item, Link)}
    assert leads == {f"puzzle {puzzle.id}" for puzzle in sample_book().puzzles}
    (many,) = opened(Chapter(1, "Many", "", rated(range(1, 49), (2,))), "a5-book", sample_book())
    assert boxes_on(many) == 48
    assert {str(number) for number in range(1, 49)} <= {text.text for text in texts_of(many)}
    (crowd,) = opened(Chapter(1, "A crowd", "", rated(range(1, 400), (2,))), "a5-book", sample_book())
    assert boxes_on(crowd) == 0


def chaptered() -> Book:
    """A book of chapters of one, two and three puzzles."""
    book, puzzles = sample_book(), iter(sample_book().puzzles)
    made = (Chapter(at, f"Part {at}", "", tuple(islice(puzzles, at))) for at in (1, 2, 3))
    return replace(book, body=(*made, *(part for part in book.body if not isinstance(part, Chapter))))


@pytest.mark.parametrize("name", BOOKS)
def test_chapters_begin_on_right_hand_pages_and_no_page_is_empty(name: str) -> None:
    """Where a chapter ends on a right-hand page, what is left of its leaf has a line for the time of each puzzle."""
    pages = tuple(compose(chaptered(), load_layout(name)).pages)
    openers = [at for at, page in enumerate(pages) if any(a.name.startswith("chapter ") for a in page.anchors)]
    assert len(openers) == 3 and all(at % 2 == 0 for at in openers)
    first = openers[0]
    assert all(any(not one.inside("folio") for one in flat(page)) for page in pages[first - 1 :])
    for page in pages[first:]:
        said = [text.text for text in texts_of(page)]
        if said[:1] == ["Times"] and name not in ("a4-tear-out", "letter-tear-out"):
            assert said.count("Date") == 1 and not page.anchors


def test_a_times_page_names_the_puzzles_of_the_chapter_before_it() -> None:
    pages = tuple(compose(chaptered(), load_layout("a5-book")).pages)
    (opener,) = (at for at, page in enumerate(pages) if any(a.name == "chapter 3" for a in page.anchors))
    ended = chaptered().chapters[1].puzzles
    assert {puzzle.heading for puzzle in ended} <= {text.text for text in texts_of(pages[opener - 1])}


def test_rules_that_a_chapter_shares_can_be_said_once_where_it_opens() -> None:
    plain = load_layout("a5-book")
    once = replace(plain, shows=replace(plain.shows, shared_rules=False))
    (said,) = {puzzle.rules.plain for puzzle in chaptered().chapters[1].puzzles}
    for layout, expected in ((plain, [0, 1, 1]), (once, [1, 0, 0])):
        pages = tuple(compose(chaptered(), layout).pages)
        (at,) = (at for at, page in enumerate(pages) if any(a.name == "chapter 2" for a in page.anchors))
        texts = (" ".join(text.text for text in texts_of(page)) for page in pages[at : at + 3])
        assert [unspaced(text).count(unspaced(said)) for text in texts] == expected
    guide = next(page for page in compose(chaptered(), once).pages if any(a.name == "guide" for a in page.anchors))
    assert unspaced("where its chapter opens") in unspaced(" ".join(text.text for text in texts_of(guide)))


def unspaced(text: str) -> str:
    """Without spaces and hyphens, so that it does not matter where lines end."""
    return text.replace(" ", "").replace("\u00a0", "").replace("-", "")


def test_marks_are_shared_only_where_all_have_them() -> None:
    first, second, *_ = (puzzle for puzzle in sample_book().puzzles if puzzle.rules.marks)
    both = replace(second, rules=replace(second.rules, marks=(*first.rules.marks, *second.rules.marks)))
    chapter, shared = share_rules(Chapter(1, "Lines", "", (first, both)))
    assert shared is not None and shared.marks == first.rules.marks
    assert [puzzle.rules.marks for puzzle in chapter.puzzles] == [(), second.rules.marks]
    alone = Chapter(1, "Lines", "", (first,))
    assert share_rules(alone) == (alone, None)
