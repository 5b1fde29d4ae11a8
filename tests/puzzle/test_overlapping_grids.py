"""Grids that share boxes: cells numbered over all of them, and each grid with the numbers of the whole."""

from __future__ import annotations

import pytest

from bookmaker.layout.art.gridletters import letter_places
from bookmaker.puzzle.overlapping import overlapping_grids

FIVE = [(0, 0), (0, 12), (6, 6), (12, 0), (12, 12)]
"""The corners of five 9×9 grids, four of which share a box with the one in the middle."""


def test_five_grids_have_the_cells_that_one_counts_by_hand() -> None:
    grid = overlapping_grids(9, (3, 3), FIVE)
    assert len(grid.cells) == 5 * 81 - 4 * 9
    assert (grid.height, grid.width, len(grid.regions)) == (21, 21, 5 * 9 - 4)
    assert [grid.name(cell) for cell in (0, 8, 9, 17, 18)] == ["r1c1", "r1c9", "r1c13", "r1c21", "r2c1"]
    assert not grid.inside(0, 9) and not grid.inside(9, 5) and grid.inside(9, 6)
    assert len(grid.houses) == 5 * 18 + 41


def test_each_grid_has_the_cells_of_the_whole() -> None:
    grid = overlapping_grids(9, (3, 3), FIVE)
    middle = grid.square("C")
    assert (middle.row(middle.cells[0]), middle.name(middle.cells[0])) == (0, "r7c7")
    assert middle.rows[0].name == "row 7 of grid C" and middle.rows[0].ref.square == "C"
    assert set(middle.cells) & set(grid.square("A").cells) == set(grid.square("A").regions[-1])
    for square in grid.squares:
        assert [square.cell(square.row(cell), square.column(cell)) for cell in square.cells] == list(square.cells)
        assert {house.cells for house in square.region_houses} <= {house.cells for house in grid.region_houses}
    assert grid.at(20, 20) == grid.cells[-1] and grid.at(10, 0) is None and middle.at(0, 0) is None


def test_grids_with_one_more_lie_so_that_any_two_touching_cells_share_one() -> None:
    overlapping_grids(6, (2, 3), [(0, 0), (2, 3), (4, 6)])
    for corners, why in (
        ([(0, 0), (2, 2)], "share whole boxes"),
        ([(0, 0), (0, 0)], "lie on each other"),
        ([(0, 0), (0, 6)], "hang together"),
        ([(0, 0), (4, 0), (0, 6), (4, 3)], "share no grid"),
    ):
        with pytest.raises(ValueError, match=why):
            overlapping_grids(6, (2, 3), corners)


@pytest.mark.parametrize(
    "corners", [FIVE, [(0, 0), (6, 6)], [(0, 0), (3, 6)], [(0, 0), (0, 6)], [(6, 0), (6, 12), (0, 6)]]
)
def test_letters_stand_beside_their_own_grid_alone(corners: list[tuple[int, int]]) -> None:
    grid = overlapping_grids(9, (3, 3), corners)
    places = letter_places(grid)
    assert len(set(places)) == len(corners)
    for square, (row, column) in zip(grid.squares, places, strict=True):
        assert not grid.inside(row, column)
        near = {grid.at(row + down, column + across) for down in (-1, 0, 1) for across in (-1, 0, 1)} - {None}
        assert near & {*square.cells}
        if 0 <= row < grid.height:
            assert near <= {*square.cells}
