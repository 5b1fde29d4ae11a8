"""The solver to compare with: OR-Tools CP-SAT, one worker, made to find one solution and to prove there is no second.

It may do so in two ways, and the quicker one counts: enumerate solutions and stop at the second, or solve, forbid what
was found, and solve again. Only the time inside the solver counts, not the building of its model.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from time import process_time

from ortools.sat.python import cp_model

Build = Callable[[], tuple[cp_model.CpModel, list[cp_model.IntVar]]]


@dataclass(frozen=True)
class Answer:
    """Seconds taken, and how many solutions were met (two at most); `decided` is False when the time ran out."""

    seconds: float
    solutions: int
    decided: bool = True


def cp_sat(build: Build, limit: float = 60.0) -> Answer:
    """The quicker of the two ways; what neither decides took all of the limit, whoever else had the processor."""
    ways = _enumerated(build, limit), _solved_twice(build, limit)
    best = min(ways, key=lambda answer: (not answer.decided, answer.seconds))
    return best if best.decided else replace(best, seconds=max(best.seconds, limit))


def _solver(limit: float) -> cp_model.CpSolver:
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_time_in_seconds = limit
    return solver


class _StopAtTwo(cp_model.CpSolverSolutionCallback):
    def __init__(self) -> None:
        super().__init__()
        self.met = 0

    def on_solution_callback(self) -> None:
        self.met += 1
        if self.met == 2:
            self.stop_search()


def _enumerated(build: Build, limit: float) -> Answer:
    model, _ = build()
    solver, watch = _solver(limit), _StopAtTwo()
    solver.parameters.enumerate_all_solutions = True
    began = process_time()
    status = solver.solve(model, watch)
    seconds = process_time() - began
    return Answer(seconds, watch.met, watch.met == 2 or status in (cp_model.OPTIMAL, cp_model.INFEASIBLE))


def _solved_twice(build: Build, limit: float) -> Answer:
    model, x = build()
    solver = _solver(limit)
    began = process_time()
    status = solver.solve(model)
    seconds = process_time() - began
    if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return Answer(seconds, 0, status == cp_model.INFEASIBLE)
    differs = []
    for variable in x:
        other = model.new_bool_var("")
        model.add(variable != solver.value(variable)).only_enforce_if(other)
        differs.append(other)
    model.add_bool_or(differs)
    began = process_time()
    status = solver.solve(model)
    seconds += process_time() - began
    if status == cp_model.INFEASIBLE:
        return Answer(seconds, 1)
    return Answer(seconds, 2, status in (cp_model.OPTIMAL, cp_model.FEASIBLE))
