"""How fast puzzles on overlapping grids, and on grids with black cells, are proven, beside OR-Tools CP-SAT.

    python tests/benchmarks/shapes_speed.py [COUNT]

Grids are filled at random, and givens taken away while one solution is left. Ours is the whole call `prove(problem)`,
the best of five; of CP-SAT the time inside the solver, by the quicker of two ways (`rival.py`). Processor time, in one
run, with the median and the least of the ratios.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path
from random import Random
from statistics import median
from time import process_time

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.crosscheck import model_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.holed import holed_grid
from bookmaker.puzzle.overlapping import overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove, solutions
from bookmaker.solve.verdict import Unique
from tests.benchmarks.rival import cp_sat

SHAPES: dict[str, Grid] = {
    "two 6×6": overlapping_grids(6, (2, 3), [(0, 0), (2, 3)]),
    "two 9×9": overlapping_grids(9, (3, 3), [(0, 0), (6, 6)]),
    "three 9×9 in steps": overlapping_grids(9, (3, 3), [(0, 0), (3, 6), (6, 12)]),
    "five 9×9": overlapping_grids(9, (3, 3), [(0, 0), (0, 12), (6, 6), (12, 0), (12, 12)]),
    "8×8 with holes": holed_grid(6, 8, [(row, (row + aside) % 8) for row in range(8) for aside in (0, 3)]),
}


def puzzles(grid: Grid, count: int) -> Iterator[RuledPuzzle]:
    """Puzzles without rules, no given of which can be spared."""
    for seed in range(count):
        rng = Random(seed)
        bare: RuledPuzzle = Puzzle(grid, (0,) * len(grid.cells))
        givens = list(next(solutions(problem_of(bare), rng)))
        for cell in rng.sample(grid.cells, len(grid.cells)):
            kept, givens[cell] = givens[cell], 0
            if not isinstance(prove(problem_of(Puzzle(grid, tuple(givens)))), Unique):
                givens[cell] = kept
        yield Puzzle(grid, tuple(givens))


def main() -> None:
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 20
    for name, grid in SHAPES.items():
        ratios, ours = [], []
        for puzzle in puzzles(grid, count):
            problem, best = problem_of(puzzle), float("inf")
            for _ in range(5):
                began = process_time()
                verdict = prove(problem)
                best = min(best, process_time() - began)
            theirs = cp_sat(lambda puzzle=puzzle: model_of(puzzle))  # type: ignore[misc]
            assert isinstance(verdict, Unique) and theirs.decided
            ratios.append(theirs.seconds / best)
            ours.append(best)
        print(
            f"{name}: {median(ours) * 1000:.1f} ms, {median(ratios):.1f} times as fast, at the least {min(ratios):.1f}"
        )


if __name__ == "__main__":
    main()
