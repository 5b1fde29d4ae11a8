"""What `tests/benchmarks/fuzz.py` once found on grids that overlap or have holes, held from then on."""

from __future__ import annotations

from pathlib import Path
from random import Random
from textwrap import indent

import pytest

from bookmaker.manifest import load
from bookmaker.manifest.written import givens_picture, puzzle_lines
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.holed import holed_grid
from bookmaker.puzzle.overlapping import overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import BookErrors
from bookmaker.wishes.reading import load_wishes
from tests.rules.harness import read_entry


@pytest.mark.parametrize("box", [(2, 3), (3, 2)])
def test_the_boxes_of_grids_that_overlap_are_written(tmp_path: Path, box: tuple[int, int]) -> None:
    """Unusual boxes were left out: what `draft` wrote could not be read."""
    puzzle = Puzzle(grid := overlapping_grids(6, box, [(0, 0), box]), (0,) * len(grid.cells))
    (tmp_path / "a.yaml").write_text("\n".join(puzzle_lines(puzzle, {"id": "a"})) + "\n", encoding="utf-8")
    assert [entry.puzzle for entry in load(tmp_path / "a.yaml").entries] == [puzzle]


def alone() -> Grid:
    """A grid with holes on all sides of its first cell."""
    return holed_grid(
        4, 6, [(0, 1), (0, 2), (1, 0), (2, 0), (1, 1), (2, 3), (3, 2), (3, 3), (4, 4), (4, 5), (5, 4), (5, 5)]
    )


def test_a_cell_between_black_cells_is_no_peak() -> None:
    """The greatest of its neighbours was asked for, and it has none."""
    grid = alone()
    _, collector = read_entry("peaks: {greater: r1c1}", grid)
    assert [found.code for found in collector.found] == ["peaks-alone"]
    assert not list(kinds()["peaks"].blank(grid).read_off((0,), grid, (1, 2, 3, 4) * 6, Random(1)))


def test_no_clues_outside_are_wished_for_where_there_are_holes(tmp_path: Path) -> None:
    """`draft` laid them, and what it wrote could not be read."""
    picture = givens_picture(alone(), (0,) * 24)
    (tmp_path / "a.yaml").write_text(
        f"wish:\n  size: 4\n  holes: |\n{indent(picture, '    ')}\n  rules: [cage, parity-run]\n", encoding="utf-8"
    )
    with pytest.raises(BookErrors) as raised:
        load_wishes(tmp_path / "a.yaml")
    assert [found.code for found in raised.value.diagnostics] == ["holes-rule"]
