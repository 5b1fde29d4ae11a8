"""How fast the engine proves puzzles of every rule kind, beside OR-Tools CP-SAT on the same puzzles in the same run.

    python tests/benchmarks/rule_speed.py [--minimal] [--endless] [KIND ...]

For each kind twenty puzzles are made from a fixed seed: a random solution, marks laid on it, givens taken away in
pairs that face each other across the centre, as puzzles are printed, while one solution is left; with --minimal, one
by one, down to puzzles in which no given is needless. A given also stays where the proof without it would take over
`HARDEST` guesses: that is more than the hardest published classics take, and nobody prints what nobody can solve. With
--endless it may take two thousand, which makes puzzles for machines. What is timed, and how, is said in
`engine_speed.py`; the model for CP-SAT is the kind's own definition in the room `audit`. Goals: three times by median,
no proof undecided or over two seconds.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path
from random import Random
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from ortools.sat.python import cp_model

from bookmaker.crosscheck import definition_of
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule
from bookmaker.solve.problem import Problem
from tests.benchmarks.engine_speed import EMPTY, Case, Target, heading, measure, natural
from tests.makers.grow import needed_givens, with_givens
from tests.rules.harness import instances

PUZZLES = 20

HARDEST, ENDLESS = 50, 2_000
"""Guesses a proof may take. Of the classics in ../shared/data none takes more than 37."""


def puzzles(kind: str, minimal: bool, guesses: int) -> Iterator[Case]:
    """The puzzles of a kind; the seed is the kind's name."""
    rng = Random(kind)
    for solution, rule in instances(kind, CLASSIC, rng, PUZZLES):
        ruled = Problem(81, 9, (*EMPTY.constraints, *rule.constraints(CLASSIC)))
        givens = needed_givens(ruled, solution, rng, facing=not minimal, budget=guesses)
        yield Case(with_givens(ruled, givens), natural(givens, _definition(rule)))


def _definition(rule: Rule) -> Any:
    def add(model: cp_model.CpModel, x: list[cp_model.IntVar]) -> None:
        definition_of(type(rule))(model, x, rule, CLASSIC)

    return add


def main() -> int:
    print(heading())
    minimal, guesses = "--minimal" in sys.argv, ENDLESS if "--endless" in sys.argv else HARDEST
    wanted = [word for word in sys.argv[1:] if not word.startswith("--")] or list(kinds())
    drawn = ((kind, list(puzzles(kind, minimal, guesses))) for kind in wanted)
    met = [measure(Target(kind, 3, cases, slowest=2.0, never_slower=False)) for kind, cases in drawn]
    return 0 if all(met) else 1


if __name__ == "__main__":
    sys.exit(main())
