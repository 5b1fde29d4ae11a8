"""Geometry of the grid, against facts from outside."""

from __future__ import annotations

import networkx as nx
import pytest

from bookmaker.puzzle.grid import CLASSIC, LARGEST, SMALLEST, USUAL_BOXES, boxed_grid, irregular_grid
from bookmaker.puzzle.puzzle import digits_text
from tests.digits import classic, digits_from


def test_peers_are_those_of_the_sudoku_graph() -> None:
    """networkx.sudoku_graph(3): 81 nodes, 810 edges, degree 20; its nodes are numbered row by row, as ours are."""
    graph = nx.sudoku_graph(3)
    ours = {frozenset((a, b)) for house in CLASSIC.houses for a in house.cells for b in house.cells if a != b}
    assert ours == {frozenset(edge) for edge in graph.edges}
    assert len(ours) == 810


@pytest.mark.parametrize("size", USUAL_BOXES)
def test_boxes_part_the_grid(size: int) -> None:
    grid = boxed_grid(size, *USUAL_BOXES[size])
    assert sorted(cell for region in grid.regions for cell in region) == list(grid.cells)
    assert all(len(region) == size for region in grid.regions)
    assert all(cell in grid.regions[grid.region_of[cell]] for cell in grid.cells)


def test_sizes_without_usual_boxes_have_none_but_lines() -> None:
    primes = {n for n in range(SMALLEST, LARGEST + 1) if n not in USUAL_BOXES}
    assert primes == {5, 7, 11, 13, 17, 19, 23}


def test_names_of_houses() -> None:
    assert [house.name for house in CLASSIC.region_houses] == [
        "the top left box",
        "the top centre box",
        "the top right box",
        "the middle left box",
        "the centre box",
        "the middle right box",
        "the bottom left box",
        "the bottom centre box",
        "the bottom right box",
    ]
    assert [house.name for house in boxed_grid(6, 2, 3).region_houses][:3] == [
        "the top left box",
        "the top right box",
        "the middle left box",
    ]
    assert CLASSIC.rows[2].name == "row 3" and CLASSIC.columns[8].name == "column 9"


def test_names_and_places_of_cells() -> None:
    assert [CLASSIC.name(cell) for cell in (0, 8, 9, 80)] == ["r1c1", "r1c9", "r2c1", "r9c9"]
    assert all(CLASSIC.cell(CLASSIC.row(cell), CLASSIC.column(cell)) == cell for cell in CLASSIC.cells)


def test_neighbours() -> None:
    assert CLASSIC.orthogonal(0) == (1, 9)
    assert CLASSIC.orthogonal(40) == (31, 39, 41, 49)
    touching = [cell for cell in CLASSIC.cells if CLASSIC.touching(0, cell)]
    assert touching == [1, 9, 10]
    assert not CLASSIC.touching(8, 9), "the end of a row does not touch the start of the next"


def test_boxes_and_regions_that_do_not_fill_the_grid() -> None:
    for size, height, width in ((9, 2, 4), (6, 6, 6), (8, 3, 3)):
        with pytest.raises(ValueError):
            boxed_grid(size, height, width)
    with pytest.raises(ValueError):
        irregular_grid(4, "aaaabbbbccccdddc")


def test_digits_as_text_and_back() -> None:
    text = "123456789ABCDEFG."
    assert digits_text(digits_from(text)) == text
    assert classic("0" * 80 + "9").givens_text == "." * 80 + "9"
    with pytest.raises(ValueError):
        digits_from("x")


def test_pieces_hang_together_by_sides() -> None:
    assert CLASSIC.pieces((0, 1, 20, 11)) == ((0, 1), (11, 20))
    assert CLASSIC.pieces(()) == ()
