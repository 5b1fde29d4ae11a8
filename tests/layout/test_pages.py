"""Whole books, keys and handouts in every layout: what must hold on each page, whatever stands on it.

Contrast: WCAG 2.2, SC 1.4.3 (text 4.5:1) and SC 1.4.11 (graphics 3:1); its relative luminance formula for greys.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import cache, partial
from itertools import combinations, pairwise
from typing import Any

import pytest

from bookmaker.book.contents import Book
from bookmaker.book.contest import enter_contest
from bookmaker.book.wording import with_credits_of_their_own
from bookmaker.display.colour import grey_of
from bookmaker.display.items import Document, Group, Line, Link, Path, Rect, Text, untagged
from bookmaker.display.numerals import roman
from bookmaker.layout import compose, compose_handout, compose_key, compose_marker, layout_names, load_layout
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.fitting import ALONE, LARGEST
from bookmaker.layout.pages.sizing import SMALLER
from tests.dump import dump
from tests.layout.flat import Flat, flat
from tests.layout.sample_book import chapter_draft, full_book, picked, sample_book

BOOKS = [name for name in layout_names() if load_layout(name).use == "book"]
HANDOUTS = [name for name in layout_names() if load_layout(name).use == "handout"]
PICKS = (("kettle",), ("stairs", "window"), ("kettle", "hinge", "attic"), ("loom", "pantry", "ledger", "morning"))


def makers() -> dict[str, Callable[[], Document]]:
    made: dict[str, Callable[[], Document]] = {}
    for name in BOOKS:
        made[f"{name} book"] = partial(lambda name: compose(sample_book(), load_layout(name)), name)
        made[f"{name} key"] = partial(lambda name: compose_key(sample_book(), load_layout(name)), name)
        made[f"{name} draft"] = partial(lambda name: compose(chapter_draft(), load_layout(name)), name)
    for name in ("a4-book", "half-letter-book", "a4-large-print"):
        made[f"{name} full"] = partial(lambda name: compose(full_book(), load_layout(name)), name)
    for name in HANDOUTS:
        for pick in PICKS:
            made[f"{name} {'+'.join(pick)}"] = partial(
                lambda name, pick: compose_handout(picked(*pick), load_layout(name)), name, pick
            )
        for key in ("foot", "reverse"):
            made[f"{name} key {key}"] = partial(
                lambda name, key: compose_handout(picked(*PICKS[1]), load_layout(name), key), name, key
            )
        made[f"{name} contest"] = partial(lambda name: compose_handout(contest(), load_layout(name), "none"), name)
        made[f"{name} marker"] = partial(lambda name: compose_marker(contest(), load_layout(name)), name)
    return made


def contest() -> Book:
    """Six puzzles, the most for a handout."""
    return enter_contest(picked(*PICKS[-1], "stairs", "kettle"))


MAKERS = makers()


@cache
def document(name: str) -> Document:
    return MAKERS[name]()


@cache
def flattened(name: str) -> Any:
    return [flat(page) for page in document(name).pages]


every_document = pytest.mark.parametrize("name", list(MAKERS))


@every_document
def test_text_keeps_five_millimetres_inside_the_trim_and_nothing_leaves_the_page(name: str) -> None:
    """Common practice, no source: text at least 5 mm inside the trim."""
    for page, items in zip(document(name).pages, flattened(name), strict=True):
        for item in items:
            safe = mm(5) if isinstance(item.item, Text) else 0.0
            left, top, right, bottom = item.box
            assert left >= safe and top >= safe, item
            assert right <= page.width - safe and bottom <= page.height - safe, item


@every_document
def test_no_two_texts_overlap_and_none_is_empty(name: str) -> None:
    for items in flattened(name):
        assert all(item.item.text for item in items if isinstance(item.item, Text))
        texts = [item for item in items if isinstance(item.item, Text) and item.item.text.strip()]
        for one, other in combinations(texts, 2):
            across = min(one.box[2], other.box[2]) - max(one.box[0], other.box[0])
            down = min(one.box[3], other.box[3]) - max(one.box[1], other.box[1])
            assert across <= 0.1 or down <= 0.1, (one.item, other.item)


@every_document
def test_words_stand_clear_of_grids(name: str) -> None:
    for items in flattened(name):
        grids = {}
        for item in items:
            for at in item.names:
                if at.startswith(("grid ", "key ")) and not isinstance(item.item, Text):
                    box = grids.get(at, item.box)
                    grids[at] = (*map(min, box[:2], item.box[:2]), *map(max, box[2:], item.box[2:]))
        for item in items:
            if not isinstance(item.item, Text) or any(map(item.inside, ("grid ", "key ", "check "))):
                continue
            for grid, box in grids.items():
                apart = item.box[2] < box[0] or item.box[0] > box[2] or item.box[3] < box[1] or item.box[1] > box[3]
                assert apart, (item.item, grid)


@every_document
def test_everything_of_a_puzzle_stands_on_one_page(name: str) -> None:
    places: dict[str, set[int]] = {}
    for number, items in enumerate(flattened(name)):
        for item in items:
            for at in item.names:
                if at.startswith(("puzzle ", "grid ", "key ")):
                    places.setdefault(at, set()).add(number)
    assert places
    assert all(len(pages) == 1 for pages in places.values())


@every_document
def test_links_and_bookmarks_lead_somewhere(name: str) -> None:
    made = document(name)
    anchors = [anchor.name for page in made.pages for anchor in page.anchors]
    assert len(anchors) == len(set(anchors))
    links = [item.item.target for items in flattened(name) for item in items if isinstance(item.item, Link)]
    assert set(links) <= set(anchors)
    assert {bookmark.target for bookmark in made.bookmarks} <= set(anchors)


@every_document
def test_strokes_fills_and_text_are_dark_enough_and_not_too_thin(name: str) -> None:
    """No hairline is under 0.25 points: common practice, no source."""
    for items in flattened(name):
        for item in items:
            match item.item:
                case Text(colour=grey):
                    assert contrast(grey_of(grey)) >= 4.5, item.item
                case Line(stroke=stroke):
                    assert stroke.width >= 0.25 and contrast(grey_of(stroke.colour)) >= 3, item.item
                case Rect(stroke=stroke) | Path(stroke=stroke) if stroke is not None and not drawn_by_a_rule(item):
                    assert stroke.width >= 0.25 and contrast(grey_of(stroke.colour)) >= 3, item.item
                case _:
                    pass


def drawn_by_a_rule(item: Flat) -> bool:
    """Marks have light bodies inside dark outlines; the tests of `rules` look after them."""
    return any(item.inside(prefix) for prefix in ("grid ", "check ", "sample ", "ornament"))


def contrast(grey: float) -> float:
    linear = grey / 12.92 if grey <= 0.04045 else ((grey + 0.055) / 1.055) ** 2.4
    return 1.05 / (linear + 0.05)


def test_the_contrast_formula_agrees_with_known_greys() -> None:
    """#767676 and #949494 on white, the lightest greys of 4.5:1 and 3:1: from memory."""
    assert contrast(0x76 / 255) == pytest.approx(4.54, abs=0.005)
    assert contrast(0x94 / 255) == pytest.approx(3.03, abs=0.005)


@pytest.mark.parametrize("name", BOOKS)
def test_pages_are_numbered_i_ii_iii_then_1_2_3_and_the_body_begins_on_the_right(name: str) -> None:
    labels = [page.label for page in document(f"{name} book").pages]
    body = labels.index("1")
    assert body % 2 == 0
    assert labels[:body] == [roman(number) for number in range(1, body + 1)]
    assert labels[body:] == [str(number) for number in range(1, len(labels) - body + 1)]


@pytest.mark.parametrize("name", BOOKS)
def test_every_puzzle_leads_to_its_key_and_back_with_the_right_page_numbers(name: str) -> None:
    made = document(f"{name} book")
    labels = {anchor.name: page.label for page in made.pages for anchor in page.anchors}
    said: dict[str, set[str]] = {}
    for page, items in zip(made.pages, flattened(f"{name} book"), strict=True):
        if any(anchor.name.startswith("hint") for anchor in page.anchors):
            continue  # there the words themselves are links: see test_hintpages
        for item, link in pairwise(items):
            if isinstance(link.item, Link):
                assert isinstance(item.item, Text)
                assert item.item.text.split()[-1] == labels[link.item.target]
                said.setdefault(link.item.target, set()).add(item.item.text.rstrip("0123456789").strip())
    for puzzle in sample_book().puzzles:
        assert said[f"key {puzzle.id}"] == {"Key on page"}
        assert said[f"puzzle {puzzle.id}"] == {"page", ""}  # from its key; from contents and credits


@pytest.mark.parametrize("name", BOOKS)
def test_puzzles_stand_in_order_of_difficulty_on_every_page_and_no_ridge_contradicts_it(name: str) -> None:
    """In the book, its contents, its keys and its credits; ridges are looked for beside a puzzle's link or in it."""
    puzzles = {puzzle.id: puzzle for puzzle in sample_book().puzzles}
    easiest_first = sorted(puzzles, key=lambda id: puzzles[id].rating.difficulty)
    assert easiest_first == list(puzzles)
    met: dict[str, list[str]] = {"puzzle": [], "key": [], "links": [], "ridges": []}
    for items in flattened(f"{name} book"):
        for item in items:
            for kind in ("puzzle", "key"):
                met[kind] += [at.split()[1] for at in item.names if at.startswith(f"{kind} ")]
            ridges = [int(at.split()[1]) for at in item.names if at.startswith("ridge ")]
            if ridges and item.inside("puzzle "):
                assert ridges == [puzzles[met["puzzle"][-1]].rating.band]
        links = [item for item in items if isinstance(item.item, Link) and item.item.target.startswith("puzzle ")]
        for item in (item for item in links if not item.inside("key ")):
            id = item.item.target.split()[1]
            met["links"].append(id)
            ridged = [other for other in items if other.inside("ridge ") and abs(other.box[2] - item.box[0]) < 60]
            beside = [other for other in ridged if item.box[1] < middle(other) < item.box[3]]
            if beside:
                met["ridges"].append(id)
                assert {at for other in beside for at in other.names} == {f"ridge {puzzles[id].rating.band}"}
    assert list(dict.fromkeys(met["puzzle"])) == list(dict.fromkeys(met["key"])) == easiest_first
    assert met["ridges"] == easiest_first  # in the contents
    credited = [puzzle.id for puzzle in with_credits_of_their_own(sample_book().puzzles)]
    assert met["links"] == 5 * easiest_first + credited  # from the contents, three hints, the keys and the credits


def middle(item: Flat) -> float:
    """Half way down."""
    return (item.box[1] + item.box[3]) / 2


@pytest.mark.parametrize("name", BOOKS)
def test_a_puzzle_page_says_all_there_is_to_say(name: str) -> None:
    pages = flattened(f"{name} book")
    for puzzle in sample_book().puzzles:
        at = next(at for at, items in enumerate(pages) if any(item.inside(f"grid {puzzle.id}") for item in items))
        here = [item for item in pages[at] if item.inside(f"puzzle {puzzle.id}")]
        if "large-print" in name and not any(item.inside("ornament") for item in pages[at - 1]):
            here += pages[at - 1]  # where the rules may face the grid
        words = " ".join(item.item.text for item in here if isinstance(item.item, Text)).replace("\u00a0", " ")
        assert str(puzzle.number) in words
        for piece in (
            puzzle.title,
            puzzle.setter,
            puzzle.rules.plain,
            puzzle.note,
            *(m.text for m in puzzle.rules.marks),
        ):
            assert unparted(piece) in unparted(words), piece
        assert f"{puzzle.rating.band_name}  ·  difficulty {puzzle.rating.figure}" in words
        assert any(item.inside(f"ridge {puzzle.rating.band}") for item in here)
        for mark in puzzle.rules.marks:
            assert any(item.inside(f"sample {mark.sample.rule.kind}") for item in here)


@pytest.mark.parametrize("name", [*BOOKS, *HANDOUTS])
def test_cells_keep_the_layouts_limits(name: str) -> None:
    slots = load_layout(name).puzzles
    for title in MAKERS:
        if not title.startswith(f"{name} "):
            continue
        for group in groups(document(title)):
            if group.name.startswith("grid "):
                puzzle = next(puzzle for puzzle in sample_book().puzzles if f"grid {puzzle.id}" == group.name)
                side = max(item.width for item in untagged(group.items) if isinstance(item, Rect) and item.stroke)
                cell = side / puzzle.puzzle.grid.size
                alone = LARGEST if slots.rows * slots.columns > 1 else ALONE
                most = max(slots.most, alone) * (SMALLER if puzzle.puzzle.grid.size < 9 else 1)
                most = max(most, slots.grid / puzzle.puzzle.grid.size)
                assert slots.least - 0.02 <= cell <= most + 0.02


def unparted(text: str) -> str:
    """The letters alone, whatever hyphens and spaces stand between them."""
    return re.sub(r"[-\s\u00a0]", "", text)


def groups(made: Document) -> Iterator[Group]:
    waiting = [item for page in made.pages for item in page.items]
    while waiting:
        item = waiting.pop()
        if isinstance(item, Group):
            yield item
            waiting.extend(item.items)


@pytest.mark.parametrize("name", BOOKS)
def test_every_page_of_a_draft_says_so_clear_of_everything_else(name: str) -> None:
    for items in flattened(f"{name} draft"):
        (stamp,) = [item for item in items if isinstance(item.item, Text) and item.item.text == "DRAFT"]
        others = [item for item in items if isinstance(item.item, Text) and item is not stamp]
        assert all(item.box[1] > stamp.box[3] for item in others)
    for items in flattened(f"{name} book"):
        assert not any(isinstance(item.item, Text) and item.item.text == "DRAFT" for item in items)


@pytest.mark.parametrize("name", BOOKS)
def test_a_draft_says_what_is_wrong_with_a_puzzle_instead_of_its_band_and_key(name: str) -> None:
    flawed = {puzzle.id: puzzle for puzzle in chapter_draft().puzzles if puzzle.flaw}
    assert len(flawed) == 2
    for items in flattened(f"{name} draft"):
        for item in items:
            if isinstance(item.item, Text) and item.item.text in ("More than one solution", "No solution"):
                flawed.pop(next((at[7:] for at in item.names if at.startswith("puzzle ")), ""), None)
    assert not flawed


@pytest.mark.parametrize("name", BOOKS)
def test_chapters_open_with_their_title_and_the_numbers_of_their_puzzles(name: str) -> None:
    pages = document(f"{name} draft").pages
    for chapter in chapter_draft().chapters:
        at = next(n for n, page in enumerate(pages) if any(a.name == f"chapter {chapter.number}" for a in page.anchors))
        words = [item.item.text for item in flattened(f"{name} draft")[at] if isinstance(item.item, Text)]
        assert chapter.title in words
        rated = [str(puzzle.number) for puzzle in chapter.puzzles if puzzle.rating]
        assert set(rated) <= {number.rstrip(",") for line in words for number in line.split()}


@pytest.mark.parametrize("name", BOOKS)
def test_the_same_book_gives_the_same_document(name: str) -> None:
    assert dump(compose(sample_book(), load_layout(name))) == dump(document(f"{name} book"))


@pytest.mark.parametrize("name", BOOKS)
def test_left_and_right_pages_mirror_each_other(name: str) -> None:
    layout = load_layout(name)
    made = document(f"{name} book")
    for index, (page, items) in enumerate(zip(made.pages, flattened(f"{name} book"), strict=True)):
        folios = [item for item in items if item.inside("folio") and item.item.text == page.label]
        assert len(folios) <= 1
        for folio in folios:
            outer = layout.margins.outer
            edge = page.width - folio.box[2] if index % 2 == 0 else folio.box[0]
            assert edge == pytest.approx(outer, abs=0.6)
