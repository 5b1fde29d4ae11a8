"""Layout files: the ones that come with bookmaker, and what is said of bad ones."""

from __future__ import annotations

import pytest

from bookmaker.display.items import Rect, Text
from bookmaker.layout import compose, layout_names, load_layout
from bookmaker.layout.art.gridart import outside
from bookmaker.layout.lengths import mm
from bookmaker.layout.specfile import read_layout
from bookmaker.resources import shipped
from bookmaker.source.diagnostics import BookErrors
from tests.layout.flat import flat
from tests.layout.sample_book import sample_book

GOOD = (shipped("layouts") / "a4-book.yaml").read_text(encoding="utf-8")


@pytest.mark.parametrize(
    ("name", "width", "height"),
    [
        # ISO 216: A4 210 × 297 mm, A5 148 × 210 mm, B5 176 × 250 mm
        ("a4-book", 595.276, 841.890),
        ("a4-book-two", 595.276, 841.890),
        ("a4-handout", 595.276, 841.890),
        ("a5-book", 419.528, 595.276),
        ("b5-book", 498.898, 708.661),
        # trims of 6 × 9 in and 5.5 × 8.5 in: common practice, no source
        ("6x9-book", 432, 648),
        ("half-letter-book", 396, 612),
        # Letter, 8.5 × 11 in: ANSI/ASME Y14.1, from memory
        ("letter-book", 612, 792),
        ("letter-book-two", 612, 792),
        ("letter-handout", 612, 792),
    ],
)
def test_papers(name: str, width: float, height: float) -> None:
    layout = load_layout(name)
    assert (layout.width, layout.height) == pytest.approx((width, height), abs=0.001)


@pytest.mark.parametrize("name", layout_names())
def test_every_layout_keeps_the_house_rules(name: str) -> None:
    layout = load_layout(name)
    assert layout.margins.inner > layout.margins.outer or layout.use == "handout"
    assert layout.puzzles.least >= mm(6.5) - 0.001  # pocket books; club sheets 9 mm (common practice, no source)
    assert layout.use == "book" or layout.puzzles.least >= mm(9) - 0.001
    assert layout.about
    halves = [getattr(layout.type, role).leading / layout.line * 2 for role in layout.type.__dataclass_fields__]
    assert halves == [round(half) for half in halves], "a leading off the baseline grid"


def test_the_text_of_a_layout_becomes_points() -> None:
    layout = read_layout("x", GOOD.replace("inner: 25 mm", "inner: 1 in"), "x.yaml")
    assert layout.margins.inner == 72
    assert (layout.type.text.font, layout.type.text.size, layout.type.text.leading) == ("serif", 10.5, 14)


@pytest.mark.parametrize(
    ("old", "new", "code", "said"),
    [
        ("paper: A4", "paper: A44", "unknown-paper", "A4"),
        ("paper: A4", "paper: 20 x 30 mm", "out-of-range", "20 x 30 mm"),
        ("paper: A4", "paper: 4 x 5 in", "no-room", "80 by 120 mm"),
        ("inner: 25 mm", "inner: 25", "not-a-length", "25"),
        ("inner: 25 mm", "inner: 250 mm", "out-of-range", "250 mm"),
        ("inner: 25 mm", "iner: 25 mm", "unknown-key", "iner"),
        ("text: serif 10.5/14", "text: serif 10.5", "not-a-type", "serif 10.5"),
        ("text: serif 10.5/14", "text: serfi 10.5/14", "unknown-font", "serfi"),
        ("text: serif 10.5/14", "text: serif 10.5/9", "out-of-range", "10.5/9"),
        ("text: above", "text: abvoe", "unknown-word", "abvoe"),
        ("use: book ", "use: boook ", "unknown-word", "boook"),
        ("rows: 1 ", "rows: nine ", "not-a-number", "nine"),
        ("spine: 2 mm", "spine: 2 cm", "out-of-range", "2 cm"),
        ("hang: 26 mm", "weight: heavy", "not-a-number", "heavy"),
        ("hang: 26 mm", "weight: 4", "out-of-range", "4"),
        ("most cell: 18.5 mm", "most cell: 8 mm", "out-of-range", "8 mm"),
        ("about:", "# about:", "missing-key", "about"),
    ],
)
def test_mistakes_are_found_at_their_place(old: str, new: str, code: str, said: str) -> None:
    text = GOOD.replace(old, new, 1)
    assert text != GOOD
    with pytest.raises(BookErrors) as caught:
        read_layout("x", text, "x.yaml")
    diagnostic = next(diagnostic for diagnostic in caught.value.diagnostics if diagnostic.code == code)
    assert said in diagnostic.text + diagnostic.hint
    assert diagnostic.place.file == "x.yaml"
    line = text.splitlines()[diagnostic.place.line - 1]
    assert new.strip().split(":")[0].strip()[:3] in line or code in ("missing-key", "no-room")


def test_all_mistakes_at_once() -> None:
    text = GOOD.replace("paper: A4", "paper: A44").replace("hang: 26 mm", "hang: wide").replace("rows: 1", "rows: 0")
    with pytest.raises(BookErrors) as caught:
        read_layout("x", text, "x.yaml")
    assert [diagnostic.code for diagnostic in caught.value.diagnostics] == [
        "unknown-paper",
        "out-of-range",
        "not-a-length",
    ]


def test_an_unknown_layout_names_the_nearest() -> None:
    with pytest.raises(BookErrors) as caught:
        load_layout("a4-bok")
    assert "a4-book" in caught.value.diagnostics[0].hint


def test_the_text_of_a_thick_book_keeps_away_from_the_spine_as_it_is() -> None:
    """Common practice, no source: the spine margin grows with the page count."""
    layout = load_layout("a4-book")
    assert [layout.bound(pages).margins.inner - layout.margins.inner for pages in (99, 100, 250)] == pytest.approx(
        [0, mm(2), mm(4)]
    )
    for pages in (64, 320, 3000):
        bound = layout.bound(pages)
        assert (bound.measure, bound.depth) == pytest.approx((layout.measure, layout.depth))
        assert bound.margins.outer >= mm(8.99)


LARGE_PRINT = ("a4-large-print", "letter-large-print")


@pytest.mark.parametrize("name", LARGE_PRINT)
def test_large_print_has_text_of_eighteen_points_and_figures_of_fourteen(name: str) -> None:
    """UKAAF G003 and the RNIB's Clear Print guidelines, from memory: large print is 16 points at least, better 18."""
    for page in compose(sample_book(), load_layout(name)).pages:
        for item in flat(page):
            if isinstance(item.item, Text) and not item.inside("ornament"):
                drawn = any(map(item.inside, ("grid ", "sample ", "key ", "coordinates")))
                assert item.item.size >= (14 if drawn else 18) - 0.01, item.item


@pytest.mark.parametrize("name", LARGE_PRINT)
def test_large_print_has_wide_grids_with_firm_lines(name: str) -> None:
    """165 mm, or 150 with clues at both sides, none of which comes too near to the edge; 3 points between regions."""
    layout = load_layout(name)
    pages = compose(sample_book(), layout).pages
    checked = 0
    for puzzle in sample_book().puzzles:
        drawn = [one for page in pages for one in flat(page) if one.inside(f"grid {puzzle.id}")]
        left, right = min(one.box[0] for one in drawn), max(one.box[2] for one in drawn)
        pens = [one.item.stroke.width for one in drawn if isinstance(one.item, Rect) and one.item.stroke]
        frame = max(one.box[2] - one.box[0] for one in drawn if isinstance(one.item, Rect) and one.item.stroke)
        if puzzle.puzzle.grid.size <= 9:
            checked += 1
            assert frame >= mm(150 if outside(puzzle.puzzle).right else 165) - 0.01 and max(pens) >= 3, puzzle.id
            assert left >= mm(6) and right <= layout.width - mm(6), puzzle.id
    assert checked > 5
