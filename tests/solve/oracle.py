"""The independent prover: any problem as an OR-Tools CP-SAT model, written from what each primitive means."""

from __future__ import annotations

from itertools import permutations
from typing import assert_never

from ortools.sat.python import cp_model

from bookmaker.solve.problem import (
    Allowed,
    Automaton,
    Combination,
    Constraint,
    Count,
    Different,
    DifferentCount,
    Problem,
    Relation,
    Sum,
)
from bookmaker.solve.verdict import Solution


def all_solutions(problem: Problem) -> set[Solution]:
    """Every solution, by CP-SAT's enumeration with one worker."""
    model = cp_model.CpModel()
    x = [model.new_int_var(1, problem.digits, f"x{cell}") for cell in range(problem.cells)]
    for constraint in problem.constraints:
        _add(model, x, constraint, range(1, problem.digits + 1))
    solver, collector = cp_model.CpSolver(), _Collector(x)
    solver.parameters.num_workers = 1
    solver.parameters.enumerate_all_solutions = True
    status = solver.solve(model, collector)
    assert status in (cp_model.OPTIMAL, cp_model.INFEASIBLE), solver.status_name(status)
    return collector.found


class _Collector(cp_model.CpSolverSolutionCallback):
    def __init__(self, x: list[cp_model.IntVar]) -> None:
        super().__init__()
        self.x = x
        self.found: set[Solution] = set()

    def on_solution_callback(self) -> None:
        self.found.add(tuple(self.value(variable) for variable in self.x))


def _add(model: cp_model.CpModel, x: list[cp_model.IntVar], constraint: Constraint, digits: range) -> None:
    match constraint:
        case Different(cells):
            model.add_all_different([x[cell] for cell in cells])
        case Relation(pairs, allowed):
            kept = [(d, e) for d in digits for e in digits if e in _digits(allowed[d])]
            for a, b in pairs:
                model.add_allowed_assignments([x[a], x[b]], kept)
        case Combination(cells, sets):
            rows = [row for mask in sets for row in permutations(_digits(mask))]
            model.add_allowed_assignments([x[cell] for cell in cells], rows)
        case Sum(terms, least, most):
            model.add_linear_constraint(sum(factor * x[cell] for cell, factor in terms), least, most)
        case Count(cells, mask, least, most):
            model.add_linear_constraint(sum(_is_in(model, x[cell], mask, digits) for cell in cells), least, most)
        case DifferentCount(cells, least, most):
            held = [_is_held(model, [x[cell] for cell in cells], digit, digits) for digit in digits]
            model.add_linear_constraint(sum(held), least, most)
        case Automaton(cells, steps, accept):
            moves = [(state, d, row[d]) for state, row in enumerate(steps) for d in digits if row[d] >= 0]
            if moves:
                model.add_automaton([x[cell] for cell in cells], 0, sorted(accept), moves)
            else:
                model.add_bool_or([])
        case Allowed(cells, mask):
            for cell in cells:
                model.add_linear_expression_in_domain(x[cell], cp_model.Domain.from_values(_digits(mask)))
        case _ as never:
            assert_never(never)


def _is_held(model: cp_model.CpModel, variables: list[cp_model.IntVar], digit: int, digits: range) -> cp_model.IntVar:
    is_held = model.new_bool_var("")
    model.add_max_equality(is_held, [_is_in(model, variable, 1 << digit - 1, digits) for variable in variables])
    return is_held


def _is_in(model: cp_model.CpModel, variable: cp_model.IntVar, mask: int, digits: range) -> cp_model.IntVar:
    is_in = model.new_bool_var("")
    inside, outside = _digits(mask), [d for d in digits if d not in _digits(mask)]
    model.add_linear_expression_in_domain(variable, cp_model.Domain.from_values(inside)).only_enforce_if(is_in)
    outer = model.add_linear_expression_in_domain(variable, cp_model.Domain.from_values(outside))
    outer.only_enforce_if(is_in.negated())
    return is_in


def _digits(mask: int) -> list[int]:
    return [bit + 1 for bit in range(mask.bit_length()) if mask >> bit & 1]
