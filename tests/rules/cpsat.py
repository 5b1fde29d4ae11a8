"""The independent prover: OR-Tools CP-SAT, one worker, with the grid said from its definition."""

from __future__ import annotations

from collections.abc import Callable

from ortools.sat.python import cp_model

from bookmaker.puzzle.grid import Grid

Definition = Callable[[cp_model.CpModel, list[cp_model.IntVar]], None]


def cp_solutions(grid: Grid, givens: tuple[int, ...], defined: Definition, limit: int) -> set[tuple[int, ...]]:
    """Up to `limit` different solutions of a puzzle whose rule `defined` adds to the model."""
    model = cp_model.CpModel()
    x = [model.new_int_var(given or 1, given or grid.size, f"x{cell}") for cell, given in enumerate(givens)]
    for house in grid.houses:
        model.add_all_different([x[cell] for cell in house.cells])
    defined(model, x)
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
