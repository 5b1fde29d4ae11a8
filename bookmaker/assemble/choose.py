"""The choice itself: the best collection that a plan allows, or why there is none.

In: a plan. Out: a `Choice`; or a `Clash`: a smallest set of demands that cannot be met together, what the archive lacks
for them, and the collection that gives up least.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from bookmaker.assemble.model import Choice, Demand, Plan, Row
from bookmaker.assemble.optimiser import Program, feasible, solve
from bookmaker.assemble.program import model_of


@dataclass(frozen=True)
class Lack:
    """A row of a demand in a clash: how many it wants, and how many cards could serve it at all."""

    demand: Demand
    row: Row
    there: int


@dataclass(frozen=True)
class Clash:
    """`demands` cannot be met together, and any of them left out can; `nearest` misses `given_up` instead."""

    demands: tuple[Demand, ...]
    lacks: tuple[Lack, ...]
    nearest: Choice | None
    given_up: tuple[Demand, ...]


def choose(plan: Plan, refused: Sequence[Choice] = (), most: int | None = None) -> Choice | None:
    """The best collection but for those refused; None where there is none. `most` bounds its number of puzzles."""
    model = model_of(plan, refused=refused, most=most)
    optimum = solve(model.program)
    return model.choice(optimum, len(plan.parts)) if optimum else None


def clash_of(plan: Plan) -> Clash:
    """Why a plan has no collection."""
    numbers = _smallest_clash(plan)
    demands = tuple(plan.demands[number] for number in numbers)
    model = model_of(plan, yielding=True)
    optimum = solve(model.program)
    nearest = model.choice(optimum, len(plan.parts)) if optimum else None
    given_up = [demand for demand in plan.demands if nearest and not demand.rather and not nearest.keeps(demand)]
    return Clash(demands, tuple(_lacks(plan, demands)), nearest, tuple(given_up))


def _smallest_clash(plan: Plan) -> tuple[int, ...]:
    """A smallest set of demands that no collection meets, by hitting sets: every such set meets every set of demands
    whose loss makes the others possible (A. Ignatiev, A. Previti, M. Liffiton, J. Marques-Silva, “Smallest MUS
    extraction with minimal hitting set dualization”, CP 2015)."""
    hard = [number for number, demand in enumerate(plan.demands) if not demand.rather]
    cures: list[frozenset[int]] = []
    while True:
        tried = _smallest_hit(hard, cures)
        if not _possible(plan, tried):
            return tuple(sorted(tried))
        kept = set(tried)
        for number in hard:  # as many more as are possible with these
            if number not in kept and _possible(plan, kept | {number}):
                kept.add(number)
        cures.append(frozenset(hard) - kept)


def _smallest_hit(hard: Sequence[int], cures: Sequence[frozenset[int]]) -> frozenset[int]:
    """As few demands as can be with one of every cure among them."""
    program = Program()
    variables = {number: program.variable() for number in hard}
    for cure in cures:
        program.row({variables[number]: 1 for number in sorted(cure)}, least=1)
    program.objectives = [dict.fromkeys(variables.values(), 1), {at: at + 1 for at in variables.values()}]
    optimum = solve(program)
    assert optimum is not None, "all demands together hit every cure"
    return frozenset(number for number, at in variables.items() if optimum.values[at])


def _possible(plan: Plan, numbers: frozenset[int] | set[int]) -> bool:
    model = model_of(plan, kept=numbers)
    model.program.objectives = []
    return feasible(model.program)


def _lacks(plan: Plan, demands: Sequence[Demand]) -> list[Lack]:
    """For each row that wants at least something: how many cards serve it that the filters among them leave."""
    out = frozenset[int]().union(
        *(row.cards for demand in demands if demand.filters for row in demand.rows if row.part is None)
    )
    return [
        Lack(demand, row, len(row.cards - out))
        for demand in demands
        for row in demand.rows
        if row.amount.least and len(row.cards - out) < row.amount.least
    ]
