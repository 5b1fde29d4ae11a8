"""Cells, runs and pictures as people type them."""

from __future__ import annotations

import pytest

from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.source.cells import read_cell, read_cells, read_placed_cells
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Word
from bookmaker.source.textgrid import read_picture

HERE = Place("book.yaml", 7, 11)


def names(text: str, grid: Grid = CLASSIC) -> list[str]:
    collector = Collector()
    cells = read_cells(Word(HERE, text), grid, collector)
    assert cells is not None and not collector.found, collector.found
    return [grid.name(cell) for cell in cells]


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("r3c5", "r3c5"),
        ("R3C5", "r3c5"),
        ("r1c1-r1c4", "r1c1 r1c2 r1c3 r1c4"),
        ("r4c4-r1c1", "r4c4 r3c3 r2c2 r1c1"),
        ("r1c3-r3c1", "r1c3 r2c2 r3c1"),
        ("r9c9-r7c9", "r9c9 r8c9 r7c9"),
        ("r1c1-r1c3-r3c3", "r1c1 r1c2 r1c3 r2c3 r3c3"),
        ("r1c1, r1c2;r1c3\n  r2c3", "r1c1 r1c2 r1c3 r2c3"),
        ("r1c1–r1c3", "r1c1 r1c2 r1c3"),
        ("r1c1 - r1c3", "r1c1 r1c2 r1c3"),
        ("r1c1- r1c3 r2c3 – r4c3  -  r4c1", "r1c1 r1c2 r1c3 r2c3 r3c3 r4c3 r4c2 r4c1"),
        ("r01c09", "r1c9"),
    ],
)
def test_cells_and_runs(text: str, cells: str) -> None:
    assert names(text) == cells.split()


def test_two_figures_on_a_large_grid() -> None:
    assert names("r10c16-r12c16", Grid(16, ())) == ["r10c16", "r11c16", "r12c16"]


@pytest.mark.parametrize(
    ("text", "code", "column"),
    [
        ("", "no-cells", 11),
        ("r1c1 r1", "not-a-cell", 16),
        ("r1c1 c1r1", "not-a-cell", 16),
        ("r1c1-", "not-a-cell", 16),
        ("r1c1 - r1c3 - ", "not-a-cell", 23),
        ("r1c1 - r1c10 r2c2", "off-grid", 18),
        ("r1c1 - r1c3 - x", "not-a-cell", 25),
        ("r1c1-r1c3 r1c2-r1c10", "off-grid", 26),
        ("r0c1", "off-grid", 11),
        ("r1c1 r10c1", "off-grid", 16),
        ("r1c1-r2c3", "crooked-run", 11),
        ("r1c1-r1c1", "crooked-run", 11),
        ("r٣c1", "not-a-cell", 11),
        ("r1c1 " * 200, "many-cells", 11),
    ],
)
def test_slips(text: str, code: str, column: int) -> None:
    collector = Collector()
    assert read_cells(Word(HERE, text), CLASSIC, collector) is None
    assert [t.code for t in collector.found][-1] == code
    assert (collector.found[-1].place.line, collector.found[-1].place.column) == (7, column)


def test_every_slip_of_a_word_is_reported() -> None:
    collector = Collector()
    read_cells(Word(HERE, "x r1c1 y r1c99"), CLASSIC, collector)
    assert [t.place.column for t in collector.found] == [11, 18, 20]


def test_exactly_one_cell() -> None:
    collector = Collector()
    assert read_cell(Word(HERE, "r1c2"), CLASSIC, collector) == 1
    assert read_cell(Word(HERE, "r1c1-r1c2"), CLASSIC, collector) is None
    assert [t.code for t in collector.found] == ["one-cell"]


def test_a_dash_that_begins_a_line_joins_nothing() -> None:
    """YAML folds a list that lost its first line break into one text."""
    folded = Word(HERE, "r1c1-r1c4 - r2c2-r2c5", ((0, HERE), (10, Place("book.yaml", 8, 3))))
    collector = Collector()
    assert read_cells(folded, CLASSIC, collector) is None
    assert (collector.found[0].code, collector.found[0].place) == ("not-a-cell", Place("book.yaml", 8, 3))


def test_cells_know_the_run_they_were_typed_in() -> None:
    cells = read_placed_cells(Word(HERE, "r1c1 r1c2-r1c3"), CLASSIC, Collector())
    assert cells is not None
    assert [(cell, place.column) for cell, place in cells] == [(0, 11), (1, 16), (2, 16)]


PICTURES = [
    "1..2\n..3.\n.4..\n2..1",
    "1 . . 2\n\n. . 3 .\n. 4 . .\n2 . . 1\n",
    "1..|2\n..|3.\n--+--\n.4|..\n2.|.1",
    "1..2..3..4..2..1",
    "1..2..3.\n.4..2..1",
]


@pytest.mark.parametrize("picture", PICTURES)
def test_pictures_with_free_spacing(picture: str) -> None:
    collector = Collector()
    found = read_picture(Word(HERE, picture), Grid(4, ()), "the givens", collector)
    assert found is not None and not collector.found
    assert "".join(char for char, _, _ in found) == "1..2..3..4..2..1"
    rows = picture.split("\n")
    assert all(rows[line][column] == char for char, line, column in found)


@pytest.mark.parametrize(
    "picture", ["1..2\n..3\n.4..\n2..1.", "....\n....\n....", ".....\n" * 4, "...", "", "......\n..\n....\n...."]
)
def test_pictures_of_another_size(picture: str) -> None:
    collector = Collector()
    assert read_picture(Word(HERE, picture), Grid(4, ()), "the givens", collector) is None
    assert {t.code for t in collector.found} == {"picture-size"}
