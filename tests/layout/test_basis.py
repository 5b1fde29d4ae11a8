"""Layouts of one's own: what they say themselves, what they take from their basis, and what is said of mistakes."""

from __future__ import annotations

from dataclasses import replace
from itertools import product
from pathlib import Path

import pytest

from bookmaker.display.items import Text
from bookmaker.layout import Layout, compose, layout_names, load_layout
from bookmaker.layout.lengths import mm
from bookmaker.layout.pages.puzzles import place_puzzles
from bookmaker.layout.specfile import read_layout
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place
from tests.layout.flat import flat
from tests.layout.sample_book import picked, sample_book

BOOKS = [name for name in layout_names() if load_layout(name).use == "book"]


def own(text: str) -> Layout:
    return read_layout("mine", text, "mine.yaml")


def found(text: str) -> tuple[Diagnostic, ...]:
    with pytest.raises(BookErrors) as caught:
        own(text)
    return caught.value.diagnostics


@pytest.mark.parametrize("name", layout_names())
def test_what_is_not_said_is_as_in_the_basis(name: str) -> None:
    basis = load_layout(name)
    layout = own(f"based-on: {name}\nmargins: {{inner: 31 mm}}\nkeys:\n  columns: 2\n")
    assert layout.margins.inner == pytest.approx(mm(31)) and layout.keys.columns == 2
    assert (layout.margins.outer, layout.margins.spine) == (basis.margins.outer, basis.margins.spine)
    assert (layout.type, layout.puzzles, layout.press, layout.booklet, layout.keys.cell, layout.use) == (
        basis.type, basis.puzzles, basis.press, basis.booklet, basis.keys.cell, basis.use
    )  # fmt: skip
    assert layout.places["margins.inner"] == Place("mine.yaml", 2, 11)


def test_a_basis_without_changes_is_the_same_layout() -> None:
    for name in BOOKS:
        layout = own(f"based-on: {name}\nabout: {load_layout(name).about}\n")
        assert [page.items for page in compose(sample_book(), layout).pages] == [
            page.items for page in compose(sample_book(), load_layout(name)).pages
        ]


@pytest.mark.parametrize(
    ("text", "places"),
    [
        ("based-on: a5-bok\nmargins: {iner: 22 mm}\n", [(1, 11, "did you mean “a5-book”"), (2, 11, "“inner”")]),
        ("based-on:\n", [(1, 10, "known here: ")]),
        ("based-on: a5-book\npuzzles: {least cell: 14 mm}\n", [(1, 11, "give this value here as well")]),
        ("based-on: a5-booklet\npaper: A4\n", [(1, 11, "use a larger sheet")]),
        ("paper: A4\nmargins: {inner: 2 cm, outer: 2 cm, top: 2 cm, bottom: 2 cm}\n", [(1, 1, "based-on: a5-book")]),
        ("based-on: a5-book\ntype: {text: serif 9}\nrows: 2\n", [(2, 14, "such as"), (3, 1, "")]),
        ("- based-on: a5-book\n", [(1, 1, "its names")]),
    ],
)  # fmt: skip
def test_mistakes_have_their_place_and_a_hint(text: str, places: list[tuple[int, int, str]]) -> None:
    diagnostics = found(text)
    assert [(each.place.line, each.place.column) for each in diagnostics] == [place[:2] for place in places]
    assert all(hint in diagnostic.hint for diagnostic, (*_, hint) in zip(diagnostics, places, strict=True))
    assert {diagnostic.place.file for diagnostic in diagnostics} == {"mine.yaml"}


def test_files_are_found_from_the_file_that_names_them(tmp_path: Path) -> None:
    (tmp_path / "book").mkdir()
    (tmp_path / "house.yaml").write_text("based-on: b5-book\n")
    (tmp_path / "book" / "mine.yml").write_text("based-on: a5-book\n")
    asked = Place(str(tmp_path / "book" / "book.yaml"), 3, 11)
    assert load_layout("mine.yml", asked).based_on == "a5-book"
    assert load_layout("../house.yaml", asked).based_on == "b5-book"
    assert load_layout(str(tmp_path / "house.yaml")).name == "house"
    for name, code, hint in [
        ("mind.yml", "no-file", "mine.yml"),
        ("mine", "unknown-layout", "mine.yml"),
        (str(tmp_path / "house.yaml"), "layout-outside", "../my-layout.yaml"),
        ("..", "unknown-layout", "known here"),
    ]:
        with pytest.raises(BookErrors) as caught:
            load_layout(name, asked)
        (diagnostic,) = caught.value.diagnostics
        assert (diagnostic.code, diagnostic.place) == (code, asked) and hint in diagnostic.hint


def test_a_layout_for_another_use_is_refused(tmp_path: Path) -> None:
    (tmp_path / "mine.yaml").write_text("based-on: a4-handout\n")
    with pytest.raises(BookErrors) as caught:
        load_layout("mine.yaml", Place(str(tmp_path / "book.yaml"), 2, 3), "book")
    assert caught.value.diagnostics[0].code == "wrong-use"


PER_PAGE = {1: (1, 1), 2: (2, 1), 4: (2, 2), 6: (3, 2), 8: (4, 2)}

MOST = {"A4": 8, "Letter": 8, "8 x 10 in": 6, "B5": 6, "6 x 9 in": 6, "A5": 4}
"""How many 9 × 9 grids with a line of rules each find room on a page, with cells of four millimetres at least."""

SMALL = "{text: serif 7.5/9, note: serif 7.5/9, small: serif 7.5/9, number: sans-bold 11/13.5, title: serif 9/9}"


@pytest.mark.parametrize(("trim", "count"), [pair for pair in product(MOST, PER_PAGE) if pair[1] <= MOST[pair[0]]])
def test_so_many_puzzles_a_page_on_every_trim(trim: str, count: int) -> None:
    rows, columns = PER_PAGE[count]
    layout = own(
        f"based-on: a5-book\npaper: {trim}\ntype: {SMALL}\nshows: {{setter: no, note: no, pointers: no}}\n"
        "margins: {inner: 15 mm, outer: 10 mm, top: 12 mm, bottom: 15 mm}\n"
        f"puzzles: {{rows: {rows}, columns: {columns}, gap: 4 mm, hang: 0 mm, least cell: 4 mm}}\n"
    )
    pages = place_puzzles([replace(picked("kettle").puzzles[0], id=f"{at}") for at in range(16)], layout, layout.depth)
    assert [len(page) for page in pages] == [count] * (16 // count) + ([16 % count] if 16 % count else [])


def test_what_a_layout_does_not_show_is_not_there() -> None:
    shown = words(own("based-on: a5-book\n"))
    hidden = words(own("based-on: a5-book\nshows: {setter: no, difficulty: no, note: no, pointers: no}\n"))
    puzzle = picked("kettle").puzzles[0]
    assert puzzle.setter and puzzle.rating
    for said in (puzzle.setter, puzzle.rating.band_name, "Key on page"):
        assert any(said in text for text in shown) and not any(said in text for text in hidden)
    assert any(puzzle.title in text for text in hidden)


def words(layout: Layout) -> list[str]:
    """What stands on the page of a puzzle."""
    book = picked("kettle")
    page = next(
        page for page in compose(book, layout).pages if any(anchor.name == "puzzle kettle" for anchor in page.anchors)
    )
    return [item.item.text.replace("\u00a0", " ") for item in flat(page) if isinstance(item.item, Text)]
