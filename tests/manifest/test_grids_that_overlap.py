"""Grids that overlap, from the manifest to the page and back: read, written, told, printed and read back."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.book import make_book
from bookmaker.book.textedition import text_edition
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import compose, load_layout
from bookmaker.manifest import load
from bookmaker.manifest.entries import Entry
from bookmaker.manifest.written import puzzle_lines
from bookmaker.preflight import inspect
from bookmaker.proof import prove_all
from bookmaker.source.diagnostics import BookErrors
from tests.listening import listen, told

STEPPED = """\
  - id: stepped
    title: Stepped
    size: 6
    grids: r1c1 r3c4 r5c7
    givens: |
      . . .  . . .  # # #  # # #
      . . .  . . .  # # #  # # #

      . . .  . . .  . . .  # # #
      . . .  . . .  . . .  # # #

      . . .  . . .  . . .  . . .
      . . .  . . .  . . .  . . .

      # # #  . . .  . . .  . . .
      # # #  . . .  . . .  . . .

      # # #  # # #  . . .  . . .
      # # #  # # #  . . .  . . .
    rules:
      in B:
        diagonals: falling
      thermometer:
        - r7c9 r8c8-r8c9 r9c10-r9c11
        - r2c1-r1c1 r1c2-r1c3
        - r4c5-r3c5 r4c6-r3c6 r2c5 r3c4
      cage:
        picture: |
          a.bbbb######
          aa.b..######
          ........c###
          ..dee...c###
          ..dee...ffff
          ....e.gggg.h
          ###.iig...hh
          ###.ii......
          ######......
          ######......
        totals: {a: 9, b: 19, c: 7, d: 9, e: 15, f: 17, g: 18, h: 13, i: 14}
      dots:
        white: r10c8-r10c9 r6c12-r7c12 r8c8-r8c9 r7c4-r8c4
        black: r1c2-r2c2 r8c9-r8c10
      in C:
        sandwich:
          right: . . . 4 10 .
          bottom: . . . . 0 .
      in A:
        diagonal-sum:
          - 9 from r6c3 up-right
"""


def entries(folder: Path, puzzles: str) -> tuple[Entry, ...]:
    (folder / "book.yaml").write_text(f"book:\n  title: T\npuzzles:\n{puzzles}", encoding="utf-8")
    return load(folder / "book.yaml").entries


def test_they_are_read_as_they_are_written(tmp_path: Path) -> None:
    (entry,) = entries(tmp_path, STEPPED)
    again = "\n".join("  " + line for line in puzzle_lines(entry.puzzle, {"id": "stepped"}))
    (written,) = entries(tmp_path, again)
    assert written.puzzle.grid == entry.puzzle.grid
    assert set(written.puzzle.rules) == set(entry.puzzle.rules)
    assert len(entry.rule_places) == len(entry.puzzle.rules)
    assert {(rule.kind, rule.square) for rule in entry.puzzle.rules if rule.square} == {
        ("diagonals", "B"),
        ("sandwich", "C"),
        ("diagonal-sum", "A"),
    }


def test_a_kind_for_the_whole_grid_holds_in_each_and_is_written_once(tmp_path: Path) -> None:
    (entry,) = entries(tmp_path, STEPPED[: STEPPED.index("    rules:")] + "    rules:\n      king: yes\n")
    assert [rule.square for rule in entry.puzzle.rules] == ["A", "B", "C"]
    assert len(entry.rule_places) == 3 and len({*entry.rule_places}) == 1
    lines = puzzle_lines(entry.puzzle, {"id": "stepped"})
    assert lines[-2:] == ["  rules:", "    king: yes"]


@pytest.mark.parametrize(
    ("old", "new", "code"),
    [
        ("r1c1 r3c4 r5c7", "r1c1", "grids-count"),
        ("r1c1 r3c4 r5c7", "r1c1 r2c4", "grids-clash"),
        ("r1c1 r3c4 r5c7", "r1c1 r3c5", "grids-clash"),
        ("r1c1 r3c4 r5c7", "r1c1 r1c1", "grids-clash"),
        ("r1c1 r3c4 r5c7", "r1c1 r7c7", "grids-apart"),
        ("r1c1 r3c4 r5c7", "r1c1 r7c1", "grids-apart"),
        ("r1c1 r3c4 r5c7", "r3c1 r5c4", "grids-begin"),
        ("r1c1 r3c4 r5c7", "r1c1 r3c4 r5c7 r21c22", "grids-large"),
        ("grids: r1c1 r3c4 r5c7", "grids: [r1c1, r3c4]", "not-cells"),
        ("    grids:", "    boxes: none\n    grids:", "grids-boxes"),
        ("|\n      . . .  . . .  # # #", "|\n      . . .  . . .  # # 1", "picture-outside"),
        ("|\n      . . .  . . .  # # #", "|\n      . . .  . . #  # # #", "picture-outside"),
        ("r2c1-r1c1 r1c2-r1c3", "r2c1-r1c1 r1c2-r1c7", "off-grid"),
        ("r2c1-r1c1 r1c2-r1c3", "r2c6-r1c7", "off-grid"),
        ("in B:", "in D:", "unknown-grid"),
        ("in B:\n        diagonals: falling", "in B: diagonals", "not-a-table"),
        ("    grids: r1c1 r3c4 r5c7\n", "", "unknown-grid"),
        ("      in C:\n", "      x-sum: {right: . . . 4 10 .}\n      in C:\n", "which-grid"),
        ("right: . . . 4 10 .", "left: . . . 4 10 .", "clue-in-cell"),
        ("9 from r6c3 up-right", "9 from r6c7 up-right", "off-grid"),
    ],
)  # fmt: skip
def test_each_mistake_is_told_once(tmp_path: Path, old: str, new: str, code: str) -> None:
    assert old in STEPPED
    with pytest.raises(BookErrors) as caught:
        entries(tmp_path, STEPPED.replace(old, new))
    assert code in [found.code for found in caught.value.diagnostics if not found.warning]


def test_the_page_and_the_text_hold_what_was_proven(tmp_path: Path) -> None:
    (entry,) = entries(tmp_path, STEPPED)
    (proof,) = prove_all([entry])
    assert proof.solution is not None
    book = make_book(load(tmp_path / "book.yaml"), [proof])
    (puzzle,) = book.puzzles
    assert puzzle.rules.plain.startswith("Fill all the grids so that every row, column and box of each holds")
    assert [mark.text[:7] for mark in puzzle.rules.marks if mark.text.startswith("Grid")] == [
        "Grid B:",
        "Grid C:",
        "Grid A:",
    ]
    (heard,) = listen(text_edition(book))
    assert (heard.puzzle.grid, heard.puzzle.givens, heard.key) == (
        entry.puzzle.grid,
        entry.puzzle.givens,
        proof.solution,
    )
    assert [(rule.square, told(rule)) for rule in heard.puzzle.rules] == [
        (rule.square, told(rule)) for rule in entry.puzzle.rules
    ]
    for layout in ("a4-book", "a5-book"):
        file = pdf_bytes(compose(book, load_layout(layout)))
        found = inspect(file, "book.pdf", (proof,))
        assert {(grid.kind, grid.rows, grid.columns) for grid in found.printed} == {("grid", 10, 12), ("key", 10, 12)}
        assert not [each for each in found.diagnostics if not each.warning and each.code != "fold"]


HOLED = """\
  - id: stones
    size: 4
    holes: |
      # . . . .
      . # . . .
      . . # . .
      . . . # .
      . . . . #
    givens: |
      # 1 . . .
      . # . . .
      . . # 2 .
      . . . # .
      . . . . #
    rules:
      knight: yes
      thermometer: [r2c3-r2c5]
"""


def test_black_cells_are_read_printed_and_heard(tmp_path: Path) -> None:
    (entry,) = entries(tmp_path, HOLED)
    assert (len(entry.puzzle.grid.cells), len(entry.puzzle.grid.houses)) == (20, 10)
    again = "\n".join("  " + line for line in puzzle_lines(entry.puzzle, {"id": "stones"}))
    assert entries(tmp_path, again)[0].puzzle == entry.puzzle
    (proof,) = prove_all([entry])
    book = make_book(load(tmp_path / "book.yaml"), [proof], draft=True)
    (heard,) = listen(text_edition(book))
    assert (heard.puzzle.grid, heard.puzzle.givens) == (entry.puzzle.grid, entry.puzzle.givens)
    found = inspect(pdf_bytes(compose(book, load_layout("a4-book"))), "book.pdf", (proof,))
    assert {(grid.rows, grid.columns) for grid in found.printed} == {(5, 5)}
    assert not [each for each in found.diagnostics if each.code in ("givens-differ", "mark-missing", "mark-stranger")]


@pytest.mark.parametrize(
    ("old", "new", "code"),
    [
        ("# . . . .\n      . # . . .", "# . . . .\n      # . . . .", "holes-uneven"),
        ("# . . . .\n      . # . . .", "# . . . .\n      . # . . . .", "picture-size"),
        ("# . . . .\n      . # . . .", "# . . . .\n      . # . . 1", "not-a-hole"),
        ("size: 4", "size: 5", "picture-size"),
        ("# 1 . . .", "2 1 . . .", "picture-outside"),
        ("r2c3-r2c5", "r2c1-r2c4", "off-grid"),
        ("knight: yes", "diagonals: both", "holes-rule"),
        ("size: 4", "size: 4\n    boxes: 2x2", "holes-alone"),
    ],
)
def test_each_mistake_in_a_grid_with_holes_is_told(tmp_path: Path, old: str, new: str, code: str) -> None:
    assert old in HOLED
    with pytest.raises(BookErrors) as caught:
        entries(tmp_path, HOLED.replace(old, new, 1))
    assert code in [found.code for found in caught.value.diagnostics if not found.warning]
