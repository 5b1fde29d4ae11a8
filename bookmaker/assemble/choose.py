"""The choice itself: the best collection that a plan allows, or why there is none.

In: a plan. Out: a `Choice`; or a `Clash`: a smallest set of demands that cannot be met together, what the archive lacks
for them, and the collection that gives up least.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass

from bookmaker.assemble.optimiser import Program, solve
from bookmaker.assemble.plan import Choice, Demand, Plan, Row
from bookmaker.assemble.program import model_of
from bookmaker.source.diagnostics import Place


@dataclass(frozen=True)
class Lack:
    """What a line of a clash wants at least, in all its chapters together, and how many cards could serve it at all.
    `label` says which of the things that it counts one by one, "" if it counts but one."""

    demand: Demand
    label: str
    wanted: int
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
    demands = tuple(plan.demands[number] for number in _smallest_clash(plan))
    model = model_of(plan, yielding=True)
    optimum = solve(model.program)
    nearest = model.choice(optimum, len(plan.parts)) if optimum else None
    given_up = [demand for demand in plan.demands if nearest and not demand.rather and not nearest.keeps(demand)]
    return Clash(demands, tuple(_lacks(plan, demands)), nearest, tuple(given_up))


def _smallest_clash(plan: Plan) -> tuple[int, ...]:
    """The demands of a smallest set of lines that no collection meets, by hitting sets: every such set meets every set
    of lines whose loss makes the others possible (A. Ignatiev, A. Previti, M. Liffiton, J. Marques-Silva, “Smallest MUS
    extraction with minimal hitting set dualization”, CP 2015). A line that chapters share is one."""
    lines: dict[tuple[Place, str], list[int]] = {}
    for number, demand in enumerate(plan.demands):
        if not demand.rather:
            lines.setdefault((demand.place, demand.quoted), []).append(number)
    hard = tuple(map(tuple, lines.values()))
    cures: list[frozenset[int]] = []
    while True:
        tried = _smallest_hit(len(hard), cures)
        found = _possible(plan, hard, tried)
        if found is None:
            return tuple(sorted(number for line in tried for number in hard[line]))
        kept = set(tried)
        for line in range(len(hard)):  # as many more as are possible with these
            if line in kept:
                continue
            if all(found.keeps(plan.demands[number]) for number in hard[line]):
                kept.add(line)
            elif (further := _possible(plan, hard, kept | {line})) is not None:
                kept.add(line)
                found = further
        cures.append(frozenset(range(len(hard))) - kept)


def _smallest_hit(lines: int, cures: Sequence[frozenset[int]]) -> frozenset[int]:
    """As few lines as can be with one of every cure among them."""
    program = Program()
    variables = [program.variable() for _ in range(lines)]
    for cure in cures:
        program.row({variables[line]: 1 for line in sorted(cure)}, least=1)
    program.objectives = [dict.fromkeys(variables, 1), {at: at + 1 for at in variables}]
    optimum = solve(program)
    assert optimum is not None, "all lines together hit every cure"
    return frozenset(line for line, at in enumerate(variables) if optimum.values[at])


def _possible(plan: Plan, hard: Sequence[tuple[int, ...]], lines: Collection[int]) -> Choice | None:
    """A collection that meets these lines, if there is one."""
    model = model_of(plan, kept={number for line in lines for number in hard[line]})
    model.program.objectives = []
    optimum = solve(model.program)
    return model.choice(optimum, len(plan.parts)) if optimum else None


def _lacks(plan: Plan, demands: Sequence[Demand]) -> list[Lack]:
    """Where too few cards are left by the filters among these demands."""
    out = frozenset[int]().union(
        *(row.cards for demand in demands if demand.filters for row in demand.rows if row.part is None)
    )
    rows: dict[tuple[Place, str, str], list[tuple[Demand, Row]]] = {}
    for demand in demands:
        for row in demand.rows:
            rows.setdefault((demand.place, demand.quoted, row.label), []).append((demand, row))
    found = []
    for (_, _, label), shared in rows.items():
        wanted = sum(row.amount.least for _, row in shared)
        there = len(frozenset[int]().union(*(row.cards for _, row in shared)) - out)
        if there < wanted:
            first = shared[0][0]
            found.append(Lack(first, label if len(first.rows) > 1 else "", wanted, there))
    return found
