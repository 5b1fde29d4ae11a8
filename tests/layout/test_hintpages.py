"""Pages of hints: what stands on them, what is never seen side by side, where their links lead."""

from __future__ import annotations

from functools import cache

import pytest

from bookmaker.book import Book, make_book
from bookmaker.display.items import Document, Link, Text
from bookmaker.layout import compose, load_layout
from tests.layout.flat import flat
from tests.layout.sample_book import sample_manifest, sample_proofs

LAYOUTS = ["a4-book", "a5-book", "a4-large-print", "letter-book-two"]


@cache
def made(name: str) -> tuple[Book, Document]:
    book = make_book(sample_manifest(), sample_proofs())
    return book, compose(book, load_layout(name))


def level_pages(document: Document) -> dict[int, set[int]]:
    """Indices of the pages of each level, by the anchors of its hints."""
    levels: dict[int, set[int]] = {1: set(), 2: set(), 3: set()}
    for at, page in enumerate(document.pages):
        for anchor in page.anchors:
            if anchor.name.startswith("hint "):
                levels[int(anchor.name.split()[1])].add(at)
    return levels


@pytest.mark.parametrize("name", LAYOUTS)
def test_no_two_levels_are_seen_together(name: str) -> None:
    _, document = made(name)
    levels = level_pages(document)
    # pages 1 and 2 of a spread: left pages have odd indices
    spreads = {level: {(at + 1) // 2 for at in pages} for level, pages in levels.items()}
    assert all(spreads.values())
    assert not spreads[1] & spreads[2] and not spreads[2] & spreads[3] and not spreads[1] & spreads[3]
    assert max(levels[1]) < min(levels[2]) and max(levels[2]) < min(levels[3])


def bare(text: str) -> str:
    """Without spaces, and without hyphens, which a line may end with."""
    return text.replace(" ", "").replace("-", "")


@pytest.mark.parametrize("name", LAYOUTS)
def test_every_hint_stands_at_its_anchor_after_its_number(name: str) -> None:
    book, document = made(name)
    for level in (1, 2, 3):
        for puzzle in book.puzzles:
            words = (puzzle.hints.where, puzzle.hints.what, puzzle.hints.how)[level - 1]
            page, anchor = next(
                (p, a) for p in document.pages for a in p.anchors if a.name == f"hint {level} {puzzle.id}"
            )
            texts = [found for found in flat(page) if isinstance(found.item, Text)]
            assert bare(words) in bare("".join(t.item.text for t in texts if not t.item.text.isdigit()))
            numbers = [t for t in texts if t.item.text == str(puzzle.number) and t.box[1] >= anchor.y]
            first = min(numbers, key=lambda t: t.box[1])
            beside = [t for t in texts if abs(t.box[3] - first.box[3]) < 4 and t.box[0] > first.box[2]]
            assert any(bare(words).startswith(bare(t.item.text)) for t in beside)


@pytest.mark.parametrize("name", LAYOUTS)
def test_links_lead_from_hint_to_hint_to_key_and_back_to_the_puzzle(name: str) -> None:
    book, document = made(name)
    anchors = {anchor.name for page in document.pages for anchor in page.anchors}
    hinted = [page for page in document.pages if any(a.name.startswith("hint ") for a in page.anchors)]
    targets = {found.item.target for page in hinted for found in flat(page) if isinstance(found.item, Link)}
    for puzzle in book.puzzles:
        assert {f"puzzle {puzzle.id}", f"hint 2 {puzzle.id}", f"hint 3 {puzzle.id}", f"key {puzzle.id}"} <= targets
    assert targets <= anchors


def test_the_puzzle_page_leads_to_its_first_hint() -> None:
    book, document = made("a4-book")
    labels = {anchor.name: page.label for page in document.pages for anchor in page.anchors}
    texts = [found.item.text for page in document.pages for found in flat(page) if isinstance(found.item, Text)]
    for puzzle in book.puzzles:
        assert f"Hints on page {labels[f'hint 1 {puzzle.id}']}" in texts


def test_hints_can_be_left_away() -> None:
    from dataclasses import replace

    manifest = sample_manifest()
    manifest = replace(manifest, publication=replace(manifest.publication, hints=False))
    book = make_book(manifest, sample_proofs())
    document = compose(book, load_layout("a5-book"))
    names = [anchor.name for page in document.pages for anchor in page.anchors]
    assert not any(name.startswith("hint") for name in names)
    texts = [found.item.text for page in document.pages for found in flat(page) if isinstance(found.item, Text)]
    assert not any("hint" in text.lower() for text in texts)
