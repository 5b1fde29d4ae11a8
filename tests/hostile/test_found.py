"""What `tests/benchmarks/fuzz.py` once found, held from then on."""

from __future__ import annotations

from pathlib import Path
from random import Random
from time import process_time

import pytest

from bookmaker.manifest import load
from bookmaker.manifest.written import puzzle_lines
from bookmaker.puzzle.grid import Grid, boxed_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from tests.hostile.books import laid_on


@pytest.mark.parametrize("size", [5, 7, 9, 11])
def test_a_latin_square_is_written_as_it_is_read(tmp_path: Path, size: int) -> None:
    """Where no boxes fit, “boxes: none” was left out, and what `draft` had written could not be read."""
    puzzle = Puzzle(Grid(size, ()), (0,) * size**2, ())
    (tmp_path / "a.yaml").write_text("\n".join(puzzle_lines(puzzle, {"id": "a"})) + "\n", encoding="utf-8")
    assert [entry.puzzle for entry in load(tmp_path / "a.yaml").entries] == [puzzle]


@pytest.mark.parametrize("kind", ["cage", "arithmetic-cage", "diagonal-sum", "equal-part-line", "consecutive-line"])
def test_sums_on_the_largest_grid_are_proven_at_once(kind: str) -> None:
    """Sets of all sets of 21 digits took 19 seconds to make, of 24 they took half a gigabyte."""
    rng = Random(3)
    laid = laid_on(kind, boxed_grid(25, 5, 5), rng)
    assert laid is not None
    grid, solution, rule = laid
    givens = tuple(digit if rng.random() < 0.9 else 0 for digit in solution)
    began = process_time()
    verdict = prove(problem_of(Puzzle(grid, givens, (rule,))))
    assert process_time() - began < 5
    assert isinstance(verdict, Unique) and verdict.solution == solution
