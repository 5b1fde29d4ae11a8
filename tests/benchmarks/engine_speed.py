"""How fast the engine proves uniqueness, beside OR-Tools CP-SAT on the same puzzles in the same run.

    python tests/benchmarks/engine_speed.py [--quick]

Ours is the whole call `prove(problem)`, compiling included; of CP-SAT only the time inside the solver counts, by the
quicker of two ways (`rival.py`). Processor time, the best of five runs for both. The two must agree on
every verdict. Memory is the peak that Python allocates in proving, measured in a pass of its own.
Classics are read from ../shared/data; the other sets are made here from fixed seeds.
"""

from __future__ import annotations

import resource
import sys
import tracemalloc
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from random import Random
from statistics import median
from time import process_time

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from ortools.sat.python import cp_model

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.solve import prove
from bookmaker.solve.problem import Problem
from bookmaker.solve.verdict import NoSolution, Several, Unique, Verdict
from tests.benchmarks.rival import Build, cp_sat
from tests.digits import digits_from
from tests.makers.grow import (
    adds_up,
    cage_layout,
    empty_grid,
    needed_givens,
    random_solution,
    rises,
    rising_chains,
    with_givens,
)

DATA = ROOT.parent / "shared" / "data"
EMPTY = empty_grid(CLASSIC)


@dataclass(frozen=True)
class Case:
    """One puzzle as both sides read it."""

    problem: Problem
    build: Build


@dataclass(frozen=True)
class Target:
    """A set of puzzles, and what to reach: a ratio by median, a worst ratio of 1, a slowest proof in seconds."""

    name: str
    ratio: float
    cases: list[Case]
    slowest: float = 60.0
    never_slower: bool = True


def natural(givens: tuple[int, ...], more: Callable[[cp_model.CpModel, list[cp_model.IntVar]], None]) -> Build:
    """A builder of the model that a user of CP-SAT would write: all-different houses, and `more`."""

    def build() -> tuple[cp_model.CpModel, list[cp_model.IntVar]]:
        model = cp_model.CpModel()
        x = [model.new_int_var(given or 1, given or 9, "") for given in givens]
        for house in CLASSIC.houses:
            model.add_all_different([x[cell] for cell in house.cells])
        more(model, x)
        return model, x

    return build


def classic(text: str) -> Case:
    givens = digits_from(text)
    return Case(with_givens(EMPTY, givens), natural(givens, lambda model, x: None))


def thermometers(seed: int) -> Case:
    """A puzzle of four to six thermometers from which every needless given was taken."""
    rng = Random(seed)
    solution = random_solution(EMPTY, rng)
    chains = rising_chains(CLASSIC, solution, rng, rng.randint(4, 6))
    ruled = Problem(81, 9, (*EMPTY.constraints, rises(chains, 9)))
    givens = needed_givens(ruled, solution, rng)

    def more(model: cp_model.CpModel, x: list[cp_model.IntVar]) -> None:
        for chain in chains:
            for i in range(1, len(chain)):
                model.add(x[chain[i - 1]] < x[chain[i]])

    return Case(with_givens(ruled, givens), natural(givens, more))


def cages(seed: int) -> Case | None:
    """Cages over the whole grid and no givens; None if that leaves more than one solution."""
    rng = Random(seed)
    solution = random_solution(EMPTY, rng)
    layout = cage_layout(CLASSIC, solution, rng)
    totals = [sum(solution[cell] for cell in cage) for cage in layout]
    asked = tuple(adds_up(cage, total, 9) for cage, total in zip(layout, totals, strict=True))
    problem = Problem(81, 9, (*EMPTY.constraints, *asked))
    if not isinstance(prove(problem), Unique):
        return None

    def more(model: cp_model.CpModel, x: list[cp_model.IntVar]) -> None:
        for cage, total in zip(layout, totals, strict=True):
            model.add_all_different([x[cell] for cell in cage])
            model.add(sum(x[cell] for cell in cage) == total)

    return Case(problem, natural((0,) * 81, more))


def targets(quick: bool) -> Iterator[Target]:
    """The sets of puzzles; every tenth of the large ones if it must be quick."""
    step = 10 if quick else 1
    if DATA.exists():
        times = (DATA / "solving-times.tsv").read_text().splitlines()[1:]
        yield Target("everyday classics", 12, [classic(line.split("\t")[1]) for line in times[::step]])
        for name, file, ratio in (("17 givens", "classic-17.txt", 12), ("hard classics", "classic-hard.txt", 4)):
            yield Target(name, ratio, [classic(line) for line in (DATA / file).read_text().split()[::step]])
    else:
        print(f"no {DATA}: classics left out")
    yield Target("minimal thermometers", 6, [thermometers(seed) for seed in range(3 if quick else 20)])
    drawn = (cages(seed) for seed in range(12 if quick else 80))
    yield Target("cages without givens", 2, [case for case in drawn if case is not None])


def solutions_met(verdict: Verdict) -> int:
    match verdict:
        case Unique():
            return 1
        case Several():
            return 2
        case NoSolution():
            return 0
        case _:
            raise AssertionError("the engine gave up")


def _best_of_five(problem: Problem) -> tuple[Verdict, float]:
    times = []
    for _ in range(5):
        began = process_time()
        verdict = prove(problem)
        times.append(process_time() - began)
    return verdict, min(times)


def heading() -> str:
    """The line above the figures."""
    return (
        "milliseconds: ours (compiling included) and CP-SAT's (model building left out); ratio theirs / ours\n"
        f"{'':27}{'ours':>9}{'worst':>9}{'CP-SAT':>9}{'worst':>9}{'nodes':>7}{'most':>6}{'ratio':>9}{'worst':>8}{'goal':>8}"
    )


def measure(target: Target) -> bool:
    """Print one line; True if the target is met."""
    ours, theirs, nodes = [], [], []
    for case in target.cases:
        verdict, seconds = _best_of_five(case.problem)
        rivals = [cp_sat(case.build) for _ in range(5)]
        for rival in rivals:
            assert rival.decided and rival.solutions == solutions_met(verdict), (target.name, verdict, rival)
        ours.append(seconds)
        theirs.append(min(rival.seconds for rival in rivals))
        nodes.append(getattr(verdict, "nodes", 0))
    ratios = [their / our for our, their in zip(ours, theirs, strict=True)]
    met = median(ratios) >= target.ratio and max(ours) <= target.slowest
    met &= min(ratios) >= 1 or not target.never_slower
    print(
        f"{target.name:22}{len(ratios):5}{median(ours) * 1e3:9.3f}{max(ours) * 1e3:9.2f}{median(theirs) * 1e3:9.2f}"
        f"{max(theirs) * 1e3:9.2f}{median(nodes):7.0f}{max(nodes):6}{median(ratios):9.1f}{min(ratios):8.1f}"
        f"{target.ratio:8.0f}  {'met' if met else 'MISSED'}",
        flush=True,
    )
    return met


def memory(sets: list[Target]) -> float:
    """Peak of what Python allocates while proving, in MB, over all puzzles."""
    peak = 0
    for target in sets:
        for case in target.cases:
            tracemalloc.start()
            prove(case.problem)
            peak = max(peak, tracemalloc.get_traced_memory()[1])
            tracemalloc.stop()
    return peak / 1e6


def main() -> int:
    sets = list(targets("--quick" in sys.argv))
    print(heading())
    met = [measure(target) for target in sets]
    print(f"peak memory of a proof {memory(sets):.1f} MB (Python's allocations), of the whole process", end=" ")
    print(f"{resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1e3:.0f} MB")
    return 0 if all(met) else 1


if __name__ == "__main__":
    sys.exit(main())
