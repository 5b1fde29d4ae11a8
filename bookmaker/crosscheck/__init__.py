"""A second opinion on a puzzle, from another prover and from other words for its rules.

In: a puzzle. Out: what OR-Tools CP-SAT finds, from the rules' definitions in this room: one file a rule kind, named as
its file in `rules/`, written from what the rule means and never from its `constraints`. OR-Tools is the optional extra
“audit”: it is imported only when it is asked. It takes no part in a proof, so that its opinion is independent of
whichever prover decided: another translation, of the rules and not of the engine's primitives, and a solver of another
family (lazy clause generation over whole numbers), of which neither the search nor a SAT solver knows anything.
"""

from __future__ import annotations

import importlib
from collections.abc import Callable
from dataclasses import replace
from functools import cache
from typing import Any, TypeAlias

from bookmaker.crosscheck.common import Digits, Model
from bookmaker.puzzle.grid import Grid, boxed_grid
from bookmaker.puzzle.overlapping import Overlapping
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve.verdict import NoSolution, Prover, Several, Solution, Unique, Verdict

Definition: TypeAlias = Callable[[Model, Digits, Any, Grid], None]
"""Adds a rule's definition to a model."""

PATIENCE = 60.0
"""How long CP-SAT may look for each of two solutions, in its own measure of work: about seconds, alike everywhere."""

HOW_TO_INSTALL = "pip install 'bookmaker[audit]'"


@cache
def auditor() -> str:
    """The second prover with its version, “ortools 9.11”; empty where it is not installed."""
    from importlib.metadata import PackageNotFoundError, version

    try:
        return f"ortools {version('ortools')}"
    except PackageNotFoundError:
        return ""


def definition_of(kind: type[Rule]) -> Definition:
    """The definition of a rule kind. Raises ModuleNotFoundError where the room has no file for it."""
    module = importlib.import_module(f"{__name__}.{kind.__module__.rpartition('.')[2]}")
    define: Definition = module.define
    return define


def model_of(puzzle: RuledPuzzle) -> tuple[Model, Digits]:
    """The puzzle in CP-SAT's terms, and its variables: givens, rows, columns, regions, and what each rule means."""
    from ortools.sat.python import cp_model

    grid, model = puzzle.grid, cp_model.CpModel()
    x = [model.new_int_var(given or 1, given or grid.size, f"x{cell}") for cell, given in enumerate(puzzle.givens)]
    corners = grid.corners if isinstance(grid, Overlapping) else ((0, 0),)
    side = grid.size if isinstance(grid, Overlapping) else grid.extent
    for top, left in corners:
        for line in range(side):
            row = [grid.at(top + line, left + at) for at in range(side)]
            column = [grid.at(top + at, left + line) for at in range(side)]
            model.add_all_different([x[cell] for cell in row if cell is not None])
            model.add_all_different([x[cell] for cell in column if cell is not None])
    for region in grid.regions:
        model.add_all_different([x[cell] for cell in region])
    for rule in puzzle.rules:
        _define(model, x, rule, grid)
    return model, x


def _define(model: Model, x: Digits, rule: Rule, grid: Grid) -> None:
    """What a rule means. Where it stands in one of several overlapping grids, it is told the plain grid that this one
    would be alone, and its variables."""
    if not rule.square:
        definition_of(type(rule))(model, x, rule, grid)
        return
    assert grid.box
    square = grid.square(rule.square)
    plain = replace(boxed_grid(grid.size, *grid.box), symbols=grid.symbols, first=grid.first)
    alone = {cell: at for at, cell in enumerate(square.cells)}
    parts = [replace(part, cells=tuple(alone[cell] for cell in part.cells)) for part in rule.parts(square)]
    told = rule.with_parts(parts, plain)
    definition_of(type(rule))(model, [x[cell] for cell in square.cells], told, plain)


def second_opinion(puzzle: RuledPuzzle, patience: float = PATIENCE) -> Verdict | None:
    """CP-SAT's own verdict on a puzzle; None where it gave up. Raises ImportError where OR-Tools is not installed."""
    model, x = model_of(puzzle)
    found: list[Solution] = []
    for _ in range(2):
        answer = _next(model, x, patience)
        if answer is None:
            return None
        if not answer:
            break
        found.append(answer)
        model.add_forbidden_assignments(x, [answer])
    match found:
        case [first, second]:
            return Several(first, second, prover=Prover.AUDIT)
        case [solution]:
            return Unique(solution, prover=Prover.AUDIT)
        case _:
            return NoSolution(prover=Prover.AUDIT)


def _next(model: Model, x: Digits, patience: float) -> Solution | None:
    """A solution; an empty one where there is none; None where patience ran out."""
    from ortools.sat.python import cp_model

    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.max_deterministic_time = patience
    solver.parameters.catch_sigint_signal = False  # it would leave Ctrl-C without an answer for the rest of the command
    match solver.solve(model):
        case cp_model.OPTIMAL | cp_model.FEASIBLE:
            return tuple(solver.value(variable) for variable in x)
        case cp_model.INFEASIBLE:
            return ()
        case cp_model.UNKNOWN:
            return None
        case status:
            raise AssertionError(f"CP-SAT does not accept the model: {solver.status_name(status)}")
