"""Grids read back from paper, and compared with what was proven."""

from __future__ import annotations

from dataclasses import replace
from io import BytesIO

import pytest
from pypdf import PageObject, PdfReader, PdfWriter, Transformation

from bookmaker.display.items import Document, Group, Item, Page, Rect, Stroke, Text
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout.art.gridart import draw_grid
from bookmaker.manifest.entries import Entry
from bookmaker.preflight import PrintedGrid, inspect
from bookmaker.proof import Proof, prove_entry
from bookmaker.puzzle.grid import CLASSIC, SYMBOLS, boxed_grid, irregular_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.solve.verdict import Several, Unique
from bookmaker.source.diagnostics import Place
from tests.digits import digits_from
from tests.published import PULP_SOLVED, WORKED
from tests.rules.harness import sound_entry

GIVENS, SOLUTION = WORKED, PULP_SOLVED

MISPRINT = SOLUTION[:78] + "379"
"""The solution with a 3 for the 1 in r9c7, which is not given."""


def proof_of(name: str = "pulp") -> Proof:
    return prove_entry(Entry(name, Puzzle(CLASSIC, digits_from(GIVENS)), Place("book.yaml", 3, 5)))


PROOF = proof_of()


def printed(*items: Item) -> bytes:
    return pdf_bytes(Document("t", "", "", (Page(600, 600, items, "1"),)))


def grid_and_key(proof: Proof = PROOF, grid: str | None = None, key: str | None = None) -> tuple[Group, Group]:
    """The puzzle and its key as layout draws them, or with other digits."""
    puzzle, name = proof.entry.puzzle, proof.entry.id
    shown = replace(puzzle, givens=digits_from(grid)) if grid else puzzle
    solution = digits_from(key) if key else proof.solution
    return (
        replace(draw_grid(shown, 25, f"grid {name}"), dx=50, dy=40),
        replace(draw_grid(puzzle, 10, f"key {name}", solution, marks=False), dx=400, dy=300),
    )


def text_of(grid: PrintedGrid) -> str:
    return "".join(symbol or "." for symbol in grid.symbols)


def codes(file: bytes, *proofs: Proof) -> list[tuple[str, str]]:
    found = inspect(file, "book.pdf", proofs or (PROOF,)).diagnostics
    return [(diagnostic.code, diagnostic.text) for diagnostic in found if diagnostic.code not in ("fold", "safe-area")]


def test_a_grid_and_its_key_read_back() -> None:
    grid, key = inspect(printed(*grid_and_key()), "book.pdf").printed
    assert (grid.kind, grid.id, grid.page, grid.rows, text_of(grid)) == ("grid", "pulp", 1, 9, GIVENS)
    assert (key.kind, key.id, key.page, key.rows, text_of(key)) == ("key", "pulp", 1, 9, SOLUTION)
    bold = "".join(symbol if "Bold" in font else "." for symbol, font in zip(key.symbols, key.fonts, strict=True))
    assert bold == GIVENS


@pytest.mark.parametrize("turn", [90, 180, 270, 33])
def test_whichever_way_it_is_turned(turn: float) -> None:
    group, _ = grid_and_key()
    (grid,) = inspect(printed(Group((group,), 300, 300, 0.7, turn)), "book.pdf").printed
    assert text_of(grid) == GIVENS


def test_from_a_page_that_lies_on_an_imposed_sheet() -> None:
    source = PdfReader(BytesIO(printed(*grid_and_key()))).pages[0]
    writer = PdfWriter()
    sheet = PageObject.create_blank_page(writer, 600, 600)
    sheet.merge_transformed_page(source, Transformation().scale(0.5).rotate(90).translate(300, 0))
    writer.add_page(sheet)
    file = BytesIO()
    writer.write(file)
    assert [text_of(grid) for grid in inspect(file.getvalue(), "book.pdf").printed] == [GIVENS, SOLUTION]


@pytest.mark.parametrize("size", [4, 6, 9, 10, 16])
def test_every_size_and_its_letters(size: int) -> None:
    height = {4: 2, 6: 2, 9: 3, 10: 2, 16: 4}[size]
    digits = tuple((cell + cell // size) % (size + 1) for cell in range(size * size))
    puzzle = Puzzle(boxed_grid(size, height, size // height), digits)
    (grid,) = inspect(printed(draw_grid(puzzle, 20, "grid sized")), "book.pdf").printed
    assert grid.rows == size
    assert grid.symbols == tuple(SYMBOLS[digit - 1] if digit else "" for digit in digits)


def test_irregular_regions() -> None:
    puzzle = Puzzle(irregular_grid(5, "AAAABABBBBCCCCCDDDDDEEEEE"), tuple(range(1, 6)) * 5)
    (grid,) = inspect(printed(draw_grid(puzzle, 30, "grid odd")), "book.pdf").printed
    assert (grid.rows, text_of(grid)) == (5, "12345" * 5)


def test_marks_and_pencil_are_no_digits() -> None:
    group, _ = grid_and_key()
    marks = (
        Text(2, 8, "23", "sans-narrow", 7),
        Text(25, 29, "X", "sans", 10, anchor="middle"),
        Text(-12, 18, "14", "sans", 16, anchor="middle"),
        Rect(50, 50, 75, 75, Stroke(0.5, dash=(2, 1))),
    )
    (grid,) = inspect(printed(replace(group, items=group.items + marks)), "book.pdf").printed
    assert text_of(grid) == GIVENS


def test_a_sound_book() -> None:
    assert codes(printed(*grid_and_key())) == []


def test_a_misprinted_given() -> None:
    wrong = "35" + GIVENS[2:]
    said = "page 1: the grid of “pulp” is misprinted: r1c1 has 3 for 5, r1c2 has 5 for 3"
    assert codes(printed(*grid_and_key(grid=wrong))) == [("givens-differ", said)]
    lost = "." + GIVENS[1:]
    said = "page 1: the grid of “pulp” is misprinted: r1c1 has nothing for 5"
    assert codes(printed(*grid_and_key(grid=lost))) == [("givens-differ", said)]


def test_a_misprinted_key() -> None:
    said = "page 1: the key of “pulp” is misprinted: r9c7 has 3 for 1"
    assert codes(printed(*grid_and_key(key=MISPRINT))) == [("key-differs", said)]


def test_a_digit_printed_twice_over() -> None:
    group, key = grid_and_key()
    again = Text(12.5, 18, "5", "sans", 16, anchor="middle")
    (code, said), *_ = codes(printed(replace(group, items=(*group.items, again)), key))
    assert (code, said) == ("givens-differ", "page 1: the grid of “pulp” is misprinted: r1c1 has 55 for 5")


def test_a_key_that_does_not_tell_givens() -> None:
    group, _ = grid_and_key()
    plain = Puzzle(CLASSIC, digits_from(SOLUTION))
    key = replace(draw_grid(plain, 10, "key pulp"), dx=400, dy=300)
    assert [code for code, _ in codes(printed(group, key))] == ["key-plain"]


def test_a_key_that_breaks_a_rule() -> None:
    """Even where engine and print agree, the rules have the last word."""
    twisted = replace(PROOF, verdict=Unique(digits_from(MISPRINT)))
    assert [code for code, _ in codes(printed(*grid_and_key(key=MISPRINT)), twisted)] == ["key-breaks-rule"]


def test_a_grid_of_the_wrong_size() -> None:
    small = draw_grid(Puzzle(boxed_grid(6, 2, 3), (0,) * 36), 25, "grid pulp")
    _, key = grid_and_key()
    assert codes(printed(small, key)) == [("givens-differ", "page 1: the grid of “pulp” has 6 × 6 cells, not 9 × 9")]
    bare = Group((Text(0, 0, "5", "sans", 20),), 50, 50, name="grid pulp")
    assert "no cells that can be made out" in codes(printed(bare, key))[0][1]


def test_strangers_and_what_is_lacking() -> None:
    grid, key = grid_and_key()
    other = proof_of("other")
    stranger = replace(draw_grid(PROOF.entry.puzzle, 10, "grid nobody"), dx=400, dy=40)
    assert codes(printed(grid, key, stranger)) == [
        ("stranger", "page 1: the grid “nobody” belongs to no puzzle in the book")
    ]
    assert codes(printed(grid, key), PROOF, other) == [("not-printed", "the puzzle “other” is not in this file")]
    alone = replace(grid_and_key(other)[0], dy=320)
    assert codes(printed(grid, key, alone), PROOF, other) == [("no-key", "the puzzle “other” has no key in this file")]
    assert codes(printed(grid)) == []
    assert [code for code, _ in codes(printed(Rect(50, 50, 9, 9, fill=0.5)))] == ["no-grids"]


def test_a_key_of_an_unproven_puzzle() -> None:
    solution = PROOF.solution
    assert solution
    unproven = replace(PROOF, verdict=Several(solution, solution), grade=None)
    assert [code for code, _ in codes(printed(*grid_and_key()), unproven)] == ["key-unproven"]


@pytest.mark.parametrize("kind", kinds())
@pytest.mark.parametrize("shown", [GIVENS, SOLUTION], ids=["givens", "full"])
def test_no_mark_of_any_rule_kind_is_taken_for_a_digit(kind: str, shown: str) -> None:
    rule = sound_entry(kinds()[kind].example)
    puzzle = Puzzle(CLASSIC, digits_from(shown), (rule,))
    for cell in (18.4, 25.5, 40.0):  # the smallest of a pocket book, a club sheet, large print
        (grid,) = inspect(printed(replace(draw_grid(puzzle, cell, "grid ruled"), dx=100, dy=100)), "book.pdf").printed
        assert (grid.rows, text_of(grid)) == (9, shown)


@pytest.mark.parametrize(("figure", "told"), [(6.0, []), (7.0, ["key"]), (18.0, ["grid", "key"])])
def test_figures_smaller_than_asked_are_told(figure: float, told: list[str]) -> None:
    """At cells of 25 points the digits of the grid are of 16 points, at 10 points those of its key of 6.6."""
    found = inspect(printed(*grid_and_key()), "book.pdf", (PROOF,), figure=figure).diagnostics
    small = [each for each in found if each.code == "figure-small"]
    assert [each.warning for each in small] == [kind == "key" for kind in told]
    assert all(f"the {kind} of “pulp”" in each.text for kind, each in zip(told, small, strict=True))
