"""All solutions of a puzzle by the second prover, from its own words for the rules."""

from __future__ import annotations

from ortools.sat.python import cp_model

from bookmaker.crosscheck import model_of
from bookmaker.rules.common.contract import RuledPuzzle


def cp_solutions(puzzle: RuledPuzzle, limit: int) -> set[tuple[int, ...]]:
    """Up to `limit` different solutions."""
    model, x = model_of(puzzle)
    collector = _Collector(x, limit)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.enumerate_all_solutions = True
    solver.solve(model, collector)
    return collector.found


class _Collector(cp_model.CpSolverSolutionCallback):
    def __init__(self, x: list[cp_model.IntVar], limit: int) -> None:
        super().__init__()
        self.x, self.limit = x, limit
        self.found: set[tuple[int, ...]] = set()

    def on_solution_callback(self) -> None:
        self.found.add(tuple(self.value(variable) for variable in self.x))
        if len(self.found) >= self.limit:
            self.stop_search()
