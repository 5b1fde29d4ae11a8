"""What `compose` refuses, and in which words."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace

import pytest

from bookmaker.layout import Layout, compose, compose_handout, compose_key, load_layout
from bookmaker.layout.lengths import mm
from bookmaker.source.diagnostics import BookErrors, Diagnostic
from tests.layout.sample_book import picked, sample_book


def diagnostics(make: Callable[..., object], *args: object) -> Sequence[Diagnostic]:
    with pytest.raises(BookErrors) as caught:
        make(*args)
    return caught.value.diagnostics


def narrow(name: str, least: float) -> Layout:
    layout = load_layout(name)
    return replace(layout, puzzles=replace(layout.puzzles, least=mm(least), most=mm(max(least, 16))))


def test_a_puzzle_that_fits_on_no_page_is_named_with_the_reason() -> None:
    (diagnostic,) = diagnostics(compose, sample_book(), narrow("a4-book", 11))
    ledger = next(puzzle for puzzle in sample_book().puzzles if puzzle.id == "ledger")
    assert diagnostic.code == "does-not-fit"
    assert diagnostic.place == ledger.place
    for said in ("The Ledger", "a4-book", "16×16", "10.4 mm", "11.0 mm"):
        assert said in diagnostic.text


def test_all_puzzles_that_do_not_fit_are_named_at_once() -> None:
    found = diagnostics(compose, sample_book(), narrow("a5-book", 13.5))
    assert len(found) == len(sample_book().puzzles) - 1  # only the 6×6 has cells as large as that


def test_a_puzzle_too_large_for_its_share_of_a_page_gets_a_page_of_its_own() -> None:
    document = compose(sample_book(), load_layout("a4-book-two"))
    pages = [{a.name for a in page.anchors if a.name.startswith("puzzle ")} for page in document.pages]
    assert {"puzzle ledger"} in pages
    assert max(map(len, pages)) == 2


@pytest.mark.parametrize(
    ("make", "layout", "use"),
    [(compose, "a4-handout", "book"), (compose_key, "a4-handout", "book"), (compose_handout, "a4-book", "handout")],
)
def test_a_layout_made_for_something_else(make: Callable[..., object], layout: str, use: str) -> None:
    (diagnostic,) = diagnostics(make, picked("kettle"), load_layout(layout))
    assert diagnostic.code == "wrong-use"
    assert f"not for a {use}" in diagnostic.text


def test_a_character_that_the_fonts_can_not_print_is_named() -> None:
    book = sample_book()
    kettle = next(puzzle for puzzle in book.puzzles if puzzle.id == "kettle")
    odd = replace(kettle, title="The 壺", setter="Fennel \u0001")
    chapter = replace(book.chapters[0], puzzles=(odd,))
    found = diagnostics(compose, replace(book, title="Ω ☂", body=(chapter, *book.body[1:])), load_layout("a5-book"))
    assert {diagnostic.code for diagnostic in found} == {"missing-glyph"}
    said = [(diagnostic.place, diagnostic.text) for diagnostic in found]
    assert any(place == kettle.places["title"] and "壺" in text and "serif" in text for place, text in said)
    assert any(place == kettle.places["setter"] and "setter" in text for place, text in said)
    assert any(place == book.place and "umbrella" in text for place, text in said)
    assert not any("Ω" in text for _, text in said)
