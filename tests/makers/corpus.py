"""The fixed corpus of each family of puzzles, from which the bands' cut points were taken once. Drawn from a seed.

In: a family's name. Out: puzzles with their solutions. A random solution is drawn and marks are read off it; then
givens are taken away in random order while the puzzle stays unique, and 0 to 8 of those taken are put back, so that
puzzles with room to breathe stand beside bare ones. Families: classics; relations, with four to six thermometers; sums,
with eight to twelve cages of two to four cells.
"""

from __future__ import annotations

from collections.abc import Iterator
from random import Random

from bookmaker.grade.bands import CUTS
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.cage import Cage
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.thermometer import Thermometer
from bookmaker.solve.verdict import Solution
from tests.makers.grow import cage_layout, empty_grid, needed_givens, random_solution, rising_chains

BACK = 8
"""At most so many givens are put back."""


def corpus(family: str, count: int, seed: int = 1) -> Iterator[tuple[RuledPuzzle, Solution]]:
    """So many puzzles of a family; the first of a longer corpus are those of a shorter one."""
    for number in range(count):
        rng = Random(f"{family} {seed} {number}")
        solution = random_solution(empty_grid(CLASSIC), rng)
        rules = _rules(family, solution, rng)
        bare: RuledPuzzle = Puzzle(CLASSIC, (0,) * 81, rules)
        givens = list(needed_givens(problem_of(bare), solution, rng))
        taken = [cell for cell, digit in enumerate(givens) if not digit]
        for cell in rng.sample(taken, rng.randint(0, BACK)):
            givens[cell] = solution[cell]
        yield Puzzle(CLASSIC, tuple(givens), rules), solution


def _rules(family: str, solution: Solution, rng: Random) -> tuple[Rule, ...]:
    match family:
        case "classic":
            return ()
        case "relations":
            return (Thermometer(tuple(rising_chains(CLASSIC, solution, rng, rng.randint(4, 6)))),)
        case "sums":
            layout = [cage for cage in cage_layout(CLASSIC, solution, rng, (2, 3, 4)) if len(cage) > 1]
            cages = rng.sample(layout, rng.randint(8, 12))
            return (Cage(tuple((cage, sum(solution[cell] for cell in cage)) for cage in cages)),)
    raise ValueError(f"no family “{family}”; there are {', '.join(CUTS)}")
