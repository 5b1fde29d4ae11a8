"""The other optimiser: a program of whole numbers solved by OR-Tools CP-SAT, to compare with."""

from __future__ import annotations

from math import inf

from ortools.sat.python import cp_model

from bookmaker.assemble.optimiser import Program


def solve_by_cp_sat(program: Program, seconds: float = 60) -> tuple[int, ...] | None:
    """The least value of each objective in turn, those before it kept; None where no values keep all rows."""
    model = cp_model.CpModel()
    variables = [model.new_int_var(0, int(upper), "") for upper in program.upper]
    for factors, least, most in program.rows:
        total = sum(factor * variables[at] for at, factor in factors.items())
        if least > -inf:
            model.add(total >= int(least))
        if most < inf:
            model.add(total <= int(most))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 2
    solver.parameters.max_time_in_seconds = seconds
    reached = []
    for objective in program.objectives or [{}]:
        total = sum(factor * variables[at] for at, factor in objective.items())
        model.minimize(total)
        status = solver.solve(model)
        if status == cp_model.INFEASIBLE:
            return None
        assert status == cp_model.OPTIMAL, "the other optimiser ran out of time"
        reached.append(round(solver.objective_value))
        model.add(total <= reached[-1])
        model.clear_hints()
        for variable in variables:
            model.add_hint(variable, solver.value(variable))
    return tuple(reached)
