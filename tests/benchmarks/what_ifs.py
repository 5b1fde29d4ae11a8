"""How often does a puzzle need a what-if? Tight puzzles of every rule kind, drawn for the purpose.

usage: python tests/benchmarks/what_ifs.py [COUNT] [SEED] [KIND ...]

Each puzzle has marks of one kind, read off a random solution; givens are taken away as long as one solution is left,
then every mark that can be spared. Since givens go first, these lean on their marks as far as they can, and most are
at Summit: it is the ladder that is tried here, not what an editor would print. COUNT puzzles of each kind (10), of the
kinds named or of all. By kind: how many need a what-if, how many go beyond the ladder, and how many need either and are
below Summit; then what share of the steps that place no digit are what-ifs. Wanted: of the puzzles below Summit at most
5 % need a what-if at all.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import dataclass, fields, replace
from pathlib import Path
from random import Random
from time import perf_counter
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.grade import Grade, grade
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.reasons import Rung
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from tests.makers.grow import empty_grid, needed_givens, random_solution
from tests.rules.harness import cases_of, lay

BUDGET = 2_000
"""Guesses for a proof that something can be spared; it stays where they run out."""

WANTED = 0.05
SUMMIT = 5


def tight(kind: str, seed: int) -> tuple[RuledPuzzle, Solution]:
    """A puzzle with marks of a kind, none of which can be spared, and no given that can."""
    rng = Random(f"what-ifs {kind} {seed}")
    cases = cases_of(kind)
    grow = getattr(cases, "grow", lambda grid, rng: random_solution(empty_grid(grid), rng))
    rule: Rule | None = None
    while rule is None:
        solution = grow(CLASSIC, rng)
        rule = None if solution is None else lay(kind, CLASSIC, solution, rng)
    bare: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81, (rule,))
    puzzle = replace(bare, givens=needed_givens(problem_of(bare), solution, rng, budget=BUDGET))
    spared = True
    while spared:
        spared = False
        fewer = list(one_less(puzzle.rules[0]))
        for less in rng.sample(fewer, len(fewer)):
            trial = replace(puzzle, rules=(less,))
            if less.holds(CLASSIC, solution) and isinstance(prove(problem_of(trial), BUDGET), Unique):
                puzzle, spared = trial, True
                break
    return puzzle, solution


def one_less(rule: Rule) -> Iterator[Rule]:
    """The rule without one of its marks, each in turn, as long as one is left."""
    every = fields(rule)
    rows = {field.name: value for field in every if isinstance(value := getattr(rule, field.name), tuple)}
    if sum(map(len, rows.values())) < 2:
        return
    beside = rule.kind == "clone"  # its letters belong to its groups, one by one
    for name, marks in rows.items():
        for at in range(len(marks)):
            names = rows if beside else [name]
            if beside and (name != next(iter(rows)) or len(marks) < 2):
                continue
            less: dict[str, Any] = {each: rows[each][:at] + rows[each][at + 1 :] for each in names}
            yield replace(rule, **less)


@dataclass
class Tally:
    """Puzzles counted; `low` are those below Summit."""

    puzzles: int = 0
    low: int = 0
    what_ifs: int = 0
    low_what_ifs: int = 0
    beyond: int = 0
    strikes: int = 0
    supposed: int = 0

    def add(self, made: Grade) -> None:
        rungs = [step.rung for step in made.path.steps]
        needs, low = max(rungs) >= Rung.WHAT_IF, made.band < SUMMIT
        self.puzzles += 1
        self.low += low
        self.what_ifs += needs
        self.low_what_ifs += needs and low
        self.beyond += not made.path.reached
        self.strikes += sum(rung > Rung.NAKED for rung in rungs)
        self.supposed += sum(rung >= Rung.WHAT_IF for rung in rungs)

    def __add__(self, other: Tally) -> Tally:
        return Tally(*(getattr(self, f.name) + getattr(other, f.name) for f in fields(self)))

    def __str__(self) -> str:
        share = self.supposed / max(self.strikes, 1)
        return (
            f"{self.puzzles:4} puzzles, {self.what_ifs:3} need a what-if, {self.beyond:3} beyond the ladder; "
            f"below Summit {self.low_what_ifs:3} of {self.low:3}; {share:4.0%} of strikes"
        )


def main(count: int, seed: int, names: list[str]) -> None:
    began, total = perf_counter(), Tally()
    for kind in names or sorted(kinds()):
        here = Tally()
        for number in range(count):
            here.add(grade(*tight(kind, seed * count + number)))
        print(f"{kind:20}{here}", flush=True)
        total += here
    share = total.low_what_ifs / max(total.low, 1)
    print(f"{'all':20}{total}")
    print(f"below Summit {share:.1%} need a what-if (wanted {WANTED:.0%}); {perf_counter() - began:.0f} s")


if __name__ == "__main__":
    main(
        int(sys.argv[1]) if len(sys.argv) > 1 else 10,
        int(sys.argv[2]) if len(sys.argv) > 2 else 0,
        sys.argv[3:],
    )
