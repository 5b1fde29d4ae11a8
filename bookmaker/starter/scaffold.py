"""A first puzzle of a rule kind: the kind's example, with givens that leave it exactly one solution.

In: a rule kind. Out: its example as text and the givens. The example alone rarely makes a puzzle, so a random grid that
keeps it is looked for, and givens are taken away from that grid, in pairs that face each other, while it stays unique.
The same kind always gives the same puzzle.
"""

from __future__ import annotations

from dataclasses import replace
from random import Random

from bookmaker.manifest.example import example_rule
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import NoSolution, Several, Solution, Undecided, Unique, Verdict

_LEAST_GIVENS = 24
"""Fewer would make a first puzzle too hard."""

_TRIES = 5
"""Grids begun before the example is given up."""

_RANDOM_DIGITS = 5
"""Random digits in a grid, for variety, before the search may fill the rest."""

_GLANCE, _PROOF, _LONG = 60, 2_000, 500_000
"""Guesses allowed to find something against a digit, to prove that a given can go, and to find a grid in the end."""


def first_puzzle(kind: type[Rule]) -> RuledPuzzle:
    """A 9×9 puzzle with the kind's example and exactly one solution. Raises ValueError if the example allows none."""
    rng = Random(f"first {kind.kind}")
    rule = example_rule(kind)
    full: RuledPuzzle = Puzzle(CLASSIC, _grid_that_keeps(rule, rng), (rule,))
    cells = list(CLASSIC.cells)
    rng.shuffle(cells)
    return _thinned(full, cells)


def _grid_that_keeps(rule: Rule, rng: Random) -> Solution:
    """Some grid that keeps a rule: random digits are written down one by one, each where a short search finds nothing
    against it, until such a search also finds the rest. A kind that is too tight for that gets a long search."""
    for _ in range(_TRIES):
        givens = [0] * len(CLASSIC.cells)
        for written, cell in enumerate(rng.sample(CLASSIC.cells, len(CLASSIC.cells))):
            for givens[cell] in rng.sample(CLASSIC.digits, CLASSIC.size):
                verdict = prove(problem_of(Puzzle(CLASSIC, tuple(givens), (rule,))), _GLANCE)
                if not isinstance(verdict, NoSolution):
                    break
            else:
                break
            solution = _found(verdict)
            if solution is not None and written >= _RANDOM_DIGITS:
                return solution
    solution = _found(prove(problem_of(Puzzle(CLASSIC, (0,) * len(CLASSIC.cells), (rule,))), _LONG))
    if solution is None:
        raise ValueError(f"no grid keeps the example of “{rule.kind}”")
    return solution


def _found(verdict: Verdict) -> Solution | None:
    match verdict:
        case Unique(solution) | Several(solution, _):
            return solution
        case Undecided(_, found):
            return found
        case NoSolution():
            return None


def _thinned(puzzle: RuledPuzzle, cells: list[int]) -> RuledPuzzle:
    """The puzzle without the givens that can go, tried in the order of these cells."""
    for cell in cells:
        pair = {cell, len(cells) - 1 - cell}
        givens = tuple(0 if at in pair else digit for at, digit in enumerate(puzzle.givens))
        if givens == puzzle.givens or sum(map(bool, givens)) < _LEAST_GIVENS:
            continue
        trial = replace(puzzle, givens=givens)
        if isinstance(prove(problem_of(trial), _PROOF), Unique):
            puzzle = trial
    return puzzle
