"""Whole-number programs, solved exactly by HiGHS.

In: a `Program`: variables with bounds, rows of whole-number factors, and objectives in the order of their weight. Out:
values that are best by the first objective, among these by the second, and so on; or that there are none. This is the
only file that knows the optimiser (Q. Huangfu, J. Hall, “Parallelizing the dual revised simplex method”, Mathematical
Programming Computation 10, 2018); it runs in one thread from a fixed seed, so that equal programs give equal values.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from math import inf, isfinite
from typing import Any

MOST_NODES = 20_000
"""Nodes of the search for one objective; where they do not do, the answer says how far from the best it may be."""

WHOLE = 0.5
"""Values of an objective are whole numbers: what cannot be beaten by this much cannot be beaten."""


OPTIONS: dict[str, Any] = {
    "output_flag": False,
    "threads": 1,
    "random_seed": 0,
    "mip_rel_gap": 0.0,
    "mip_abs_gap": WHOLE,
    "mip_max_nodes": MOST_NODES,
}


@dataclass
class Program:
    """Variables from 0 to their `upper` bounds, all of them whole where `whole` says so. Factors are whole numbers, and
    so is every objective's value at a solution; all objectives are to be as small as can be."""

    upper: list[float] = field(default_factory=list)
    whole: list[bool] = field(default_factory=list)
    rows: list[tuple[Mapping[int, int], float, float]] = field(default_factory=list)
    objectives: list[Mapping[int, int]] = field(default_factory=list)

    def variable(self, upper: float = 1, whole: bool = True) -> int:
        self.upper.append(upper)
        self.whole.append(whole)
        return len(self.upper) - 1

    def row(self, factors: Mapping[int, int], least: float = -inf, most: float = inf) -> None:
        """Σ factor · variable lies in `least`..`most`."""
        self.rows.append((factors, least, most))


@dataclass(frozen=True, slots=True)
class Optimum:
    """The values of all variables, rounded; by objective its value, and the least that it could be at best."""

    values: tuple[int, ...]
    reached: tuple[int, ...]
    bounds: tuple[float, ...]

    @property
    def slack(self) -> float:
        """How far the first objective that is not proven best may be from it; 0 where all are."""
        gaps = (value - bound for value, bound in zip(self.reached, self.bounds, strict=True))
        return next((gap for gap in gaps if gap > WHOLE + 1e-6), 0.0)


def solve(program: Program) -> Optimum | None:
    """The optimum, None where no values keep all rows."""
    if any(not factors and (least > 0 or most < 0) for factors, least, most in program.rows):
        return None
    exact, relaxed = _Solver(program, whole=True), _Solver(program, whole=False)
    reached: list[int] = []
    bounds: list[float] = []
    values: list[float] = []
    for objective in program.objectives or [{}]:
        exact.aim_at(objective)
        relaxed.aim_at(objective)
        if objective and relaxed.run():
            relaxed.keep_prices()
            _fix(program, exact, relaxed, _value(objective, values) if values else inf)
        if values:
            exact.start_from(values)
        if not exact.run():
            assert not reached, "what keeps all rows once keeps them again"
            return None
        values = exact.values()
        reached.append(round(_value(objective, values)))
        bounds.append(exact.bound())
        if objective:
            if exact.bound() >= reached[-1] - WHOLE:
                _fix(program, exact, relaxed, reached[-1])
            for solver in (exact, relaxed):
                solver.no_more_than(objective, reached[-1])
    rounded = tuple(round(value) for value in values)
    _check(program, rounded, values)
    return Optimum(rounded, tuple(reached), tuple(bounds))


def _value(objective: Mapping[int, int], values: Sequence[float]) -> float:
    return sum(factor * values[at] for at, factor in objective.items())


def _fix(program: Program, exact: _Solver, relaxed: _Solver, best: float) -> None:
    """Variables that cost too much for an objective of `best` are 0 in every optimum, and those too good to leave out
    are 1: by how much the relaxed objective would grow tells it (reduced costs). Later objectives find a smaller
    program."""
    room = best - relaxed.least + 1e-3
    if not isfinite(room):
        return
    for at, cost in enumerate(relaxed.prices):
        if program.whole[at] and program.upper[at] == 1 and at not in relaxed.bound_to:
            if cost > room:
                exact.bind(at, 0)
                relaxed.bind(at, 0)
            elif cost < -room:
                exact.bind(at, 1)
                relaxed.bind(at, 1)


class _Solver:
    """A program as the optimiser holds it, its variables whole or, in the relaxed one, anything between."""

    def __init__(self, program: Program, whole: bool) -> None:
        import highspy
        import numpy

        self.api, self.numpy = highspy, numpy
        self.highs: Any = highspy._Highs()  # type: ignore[attr-defined]  # Highs itself prints a banner
        for name, value in OPTIONS.items():
            self.highs.setOptionValue(name, value)
        lp = highspy.HighsLp()
        count = len(program.upper)
        lp.num_col_, lp.num_row_ = count, len(program.rows)
        lp.col_cost_ = lp.col_lower_ = numpy.zeros(count)
        lp.col_upper_ = numpy.array(program.upper, dtype=float)
        lp.row_lower_ = numpy.array([least for _, least, _ in program.rows], dtype=float)
        lp.row_upper_ = numpy.array([most for _, _, most in program.rows], dtype=float)
        if whole:
            sorts = highspy.HighsVarType.kContinuous, highspy.HighsVarType.kInteger
            lp.integrality_ = [sorts[each] for each in program.whole]
        starts = [0]
        for factors, _, _ in program.rows:
            starts.append(starts[-1] + len(factors))
        lp.a_matrix_.format_ = highspy.MatrixFormat.kRowwise
        lp.a_matrix_.start_ = numpy.array(starts, dtype=numpy.int32)
        lp.a_matrix_.index_ = numpy.array([at for factors, _, _ in program.rows for at in factors], dtype=numpy.int32)
        lp.a_matrix_.value_ = numpy.array([f for factors, _, _ in program.rows for f in factors.values()], dtype=float)
        self.highs.passModel(lp)
        self.count = count
        self.least, self.prices = -inf, list[float]()
        """Of a relaxed program that was solved: its objective, and by how much that grows with each variable."""
        self.bound_to: dict[int, int] = {}

    def aim_at(self, objective: Mapping[int, int]) -> None:
        costs = self.numpy.zeros(self.count)
        for at, factor in objective.items():
            costs[at] = factor
        self.highs.changeColsCost(self.count, self.numpy.arange(self.count, dtype=self.numpy.int32), costs)

    def no_more_than(self, objective: Mapping[int, int], most: int) -> None:
        ats = self.numpy.array(list(objective), dtype=self.numpy.int32)
        factors = self.numpy.array(list(objective.values()), dtype=float)
        self.highs.addRow(-inf, most + 1e-6, len(objective), ats, factors)

    def bind(self, at: int, value: int) -> None:
        self.bound_to[at] = value
        self.highs.changeColBounds(at, value, value)

    def start_from(self, values: Sequence[float]) -> None:
        start = self.api.HighsSolution()
        start.col_value = list(values)
        self.highs.setSolution(start)

    def run(self) -> bool:
        """Solve it; False where nothing keeps all rows. Raises GaveUp where the nodes did not do for an answer."""
        self.highs.run()
        status = self.highs.getModelStatus()
        if status in (self.api.HighsModelStatus.kInfeasible, self.api.HighsModelStatus.kUnboundedOrInfeasible):
            return False
        if self.highs.getInfo().primal_solution_status != self.api.SolutionStatus.kSolutionStatusFeasible:
            raise GaveUp("the optimiser gave up before it found a collection; ask for less, or narrow the archive")
        return True

    def values(self) -> list[float]:
        return list(self.highs.getSolution().col_value)

    def keep_prices(self) -> None:
        self.prices = list(self.highs.getSolution().col_dual)
        self.least = float(self.highs.getInfo().objective_function_value)

    def bound(self) -> float:
        """The least that the objective could be."""
        info = self.highs.getInfo()
        return float(info.mip_dual_bound if isfinite(info.mip_dual_bound) else info.objective_function_value)


class GaveUp(Exception):
    """No answer within the nodes allowed."""


def _check(program: Program, rounded: Sequence[int], values: Sequence[float]) -> None:
    """The optimiser reckons with fractions: what it found is looked at once more in whole numbers."""
    for factors, least, most in program.rows:
        if all(program.whole[at] for at in factors):
            total = sum(factor * rounded[at] for at, factor in factors.items())
            assert least - 1e-6 <= total <= most + 1e-6, "a row is broken"
    assert all(
        abs(value - near) < 1e-4 for value, near, whole in zip(values, rounded, program.whole, strict=True) if whole
    )
