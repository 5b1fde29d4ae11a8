"""Digits for givens whose places are fixed, so that they leave one solution.

In: what is asked of the grid, the places, and any solution. Out: a solution whose digits at these places leave no
other, if one is met; else the last. A few of the givens are let go, others put in their place with a solution that they
have, and kept if the solutions seen then agree in more cells.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from itertools import islice
from random import Random

from bookmaker.puzzle.bits import mask_of
from bookmaker.solve import solutions
from bookmaker.solve.problem import Allowed, Problem
from bookmaker.solve.verdict import Solution

STEPS = 700
"""Exchanges of givens that are tried."""

SEEN = 40
"""Solutions that are looked at for each."""

GUESSES = 400


def fitted(problem: Problem, places: Sequence[int], solution: Solution, rng: Random) -> Solution:
    """The solution that leads furthest."""
    best = _open(problem, places, solution, rng)
    for _ in range(STEPS):
        if best == 0:
            break
        gone = rng.sample(places, min(len(places), rng.choice((1, 2, 3, 4))))
        left = [place for place in places if place not in gone]
        other = next(solutions(_given(problem, left, solution), rng, GUESSES), None)
        if other is None or all(other[place] == solution[place] for place in gone):
            continue
        found = _open(problem, places, other, rng)
        if found <= best:
            solution, best = other, found
    return solution


def _open(problem: Problem, places: Sequence[int], solution: Solution, rng: Random) -> int:
    """In how many ways cells differ among some of the solutions that the givens leave; 0 if there is one alone."""
    seen = list(islice(solutions(_given(problem, places, solution), rng, GUESSES), SEEN))
    return sum(mask_of(set(digits)).bit_count() - 1 for digits in zip(*seen, strict=True))


def _given(problem: Problem, places: Sequence[int], solution: Solution) -> Problem:
    given = (Allowed((place,), 1 << (solution[place] - 1)) for place in places)
    return replace(problem, constraints=(*problem.constraints, *given))
