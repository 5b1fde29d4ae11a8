"""The parts around the puzzles: which there are, in which order, and what they say."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bookmaker.book.contents import (
    Contents,
    Foreword,
    Guide,
    HalfTitle,
    ImprintPage,
    Index,
    Primer,
    TitlePage,
)
from bookmaker.book.primer import worked
from bookmaker.layout import compose, load_layout
from bookmaker.rules import kinds
from tests.layout.sample_book import full_book, sample_book


def test_a_plain_book_has_the_quiet_parts_only() -> None:
    assert [type(part) for part in sample_book().front] == [TitlePage, Contents, Guide]
    assert not any(isinstance(part, Index) for part in sample_book().body)


def test_the_order_of_all_parts() -> None:
    assert [type(part) for part in full_book().front] == [
        *(HalfTitle, TitlePage, ImprintPage, Contents, Foreword, Guide, Primer),
    ]
    assert isinstance(full_book().body[-1], Index)


def test_the_imprint_says_what_it_was_told() -> None:
    (imprint,) = (part for part in full_book().front if isinstance(part, ImprintPage))
    assert imprint.paragraphs == (
        "The Attic Window. Ten puzzles for a wet Sunday",
        "Second edition, Attic Press, 14 March 2026",
        "© 2026 Attic Press",
        "Puzzles by Fennel, Old Rafter, Tamsin Orrell and Zoë Łukasiewicz-Å.",
        "Printed with the setter’s leave.",
        "ISBN 978-0-11-000222-4",
    )


def test_the_index_names_every_puzzle_under_its_setter_and_each_of_its_rules() -> None:
    (index,) = (part for part in full_book().body if isinstance(part, Index))
    setters, rules = index.groups
    for puzzle in full_book().puzzles:
        named = {entry.name for entry in setters.entries if puzzle in entry.puzzles}
        assert named == ({puzzle.setter} if puzzle.setter else set())
        kinds_of = {entry.name for entry in rules.entries if puzzle in entry.puzzles}
        boxes = puzzle.puzzle.grid.box is not None
        assert kinds_of - {"Classic", "Irregular"} == {rule.title for rule in puzzle.puzzle.rules}
        assert ("Classic" in kinds_of) == (boxes and not puzzle.puzzle.rules)
        assert ("Irregular" in kinds_of) == (not boxes)
    assert [entry.name for entry in setters.entries][-1] == "Zoë Łukasiewicz-Å"


def test_the_primer_teaches_each_kind_once() -> None:
    (primer,) = (part for part in full_book().front if isinstance(part, Primer))
    used = {rule.title for puzzle in full_book().puzzles for rule in puzzle.puzzle.rules}
    assert [lesson.title for lesson in primer.lessons] == sorted(used)


@pytest.mark.parametrize("name", sorted(kinds()))
def test_worked_figures_keep_their_rule_in_a_whole_grid(name: str) -> None:
    """Rows, columns and boxes are checked here by hand, the rule by its plain predicate."""
    figure = worked(kinds()[name])
    if figure is None:
        assert kinds()[name].sample() is None
        return
    grid, digits = figure.sample.grid, figure.digits
    rows = [digits[at : at + grid.size] for at in range(0, len(digits), grid.size)]
    regions = [[digits[cell] for cell in region] for region in grid.regions]
    for house in (*rows, *zip(*rows, strict=True), *regions):
        assert sorted(house) == list(range(1, grid.size + 1))
    assert figure.sample.rule.holds(grid, digits)


@pytest.mark.parametrize("fold", [1, 4, 16])
def test_note_pages_make_the_count_fit_the_fold(fold: int) -> None:
    book = full_book()
    book = replace(book, fold=fold)
    pages = compose(book, load_layout("a5-book")).pages
    plain = compose(replace(book, fold=1), load_layout("a5-book")).pages
    assert len(pages) % fold == 0
    assert 0 <= len(pages) - len(plain) < fold
    assert pages[: len(plain)] == tuple(plain)
