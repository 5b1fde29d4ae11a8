"""Drawing one puzzle from a recipe and a seed: a random solution, marks on it, givens taken away while it stays unique.

In: a `Recipe` and a seed. Out: a `Drawn` puzzle with its proof, or None where the marks of the recipe allow no grid.
Givens are taken away in pairs that face each other across the centre, as setters by hand like to do.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from random import Random

from bookmaker.grade import grade
from bookmaker.grade.model import Grade
from bookmaker.manifest.yamlfile import parse_yaml
from bookmaker.placed import Table
from bookmaker.puzzle.grid import USUAL_BOXES, Grid, boxed_grid, irregular_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import prove, solutions
from bookmaker.solve.problem import relation
from bookmaker.solve.verdict import Solution, Unique
from bookmaker.trouble import Desk
from tests.makers.facing import facing_marks
from tests.rules.harness import cases_of


@dataclass(frozen=True)
class Recipe:
    """What a puzzle should be.

    `rules` is manifest text with the marks drawn beforehand; `lay` names kinds whose marks are read off the solution.
    With `pairs`, that many pairs of their marks face each other across the centre, like the givens.
    `givens` is the least number of givens to leave; `band` the band wished for: givens are left in until it is reached.
    `mirrored` asks for a solution in which cells that face each other across the centre add up to size + 1.
    """

    id: str
    title: str
    setter: str
    band: int
    rules: str = ""
    lay: tuple[str, ...] = ()
    givens: int = 0
    size: int = 9
    regions: str = ""
    shown: str = ""
    note: str = ""
    draws: int = 6
    facing: bool = True
    mirrored: bool = False
    pairs: int = 0

    @property
    def grid(self) -> Grid:
        if self.regions:
            return irregular_grid(self.size, "".join(self.regions.split()))
        return boxed_grid(self.size, *USUAL_BOXES[self.size])


@dataclass(frozen=True)
class Drawn:
    """A puzzle that came out, proven unique and graded; `laid` are the rules whose marks were read off the solution."""

    recipe: Recipe
    puzzle: RuledPuzzle
    laid: tuple[Rule, ...]
    solution: Solution
    grade: Grade


def draw(recipe: Recipe, seed: int) -> Drawn | None:
    """One draw; None where the recipe's marks leave no solution or the search for one takes too long."""
    rng = Random(f"{recipe.id} {seed}")
    grid = recipe.grid
    fixed = tuple(rules_from(recipe.rules, grid))
    empty: RuledPuzzle = Puzzle(grid, (0,) * len(grid.cells), fixed)
    problem = problem_of(empty)
    if recipe.mirrored:
        last, sum_of_two = len(grid.cells) - 1, grid.size + 1
        pairs = [(cell, last - cell) for cell in grid.cells if cell <= last - cell]
        facing = relation(pairs, grid.size, ((d, sum_of_two - d) for d in grid.digits))
        problem = replace(problem, constraints=(*problem.constraints, facing))
    solution = next(iter(solutions(problem, rng)), None)
    if solution is None:
        return None
    laid = tuple(rule for kind in recipe.lay if (rule := _laid(recipe, kind, solution, rng)) is not None)
    full: RuledPuzzle = Puzzle(grid, solution, fixed + laid)
    taken: list[set[int]] = []
    for group in removals(full, recipe.givens, recipe.facing, rng):
        taken.append(group)
        # Once the band is passed, further proofs would be for nothing, and they are the slow ones.
        if len(taken) % LOOK_EVERY == 0 and grade(without(full, taken), solution).band > recipe.band:
            break
    few, many = 0, len(taken)
    while few < many:
        middle = (few + many + 1) // 2
        if grade(without(full, taken[:middle]), solution).band <= recipe.band:
            few = middle
        else:
            many = middle - 1
    puzzle = without(full, taken[:few])
    return Drawn(recipe, puzzle, laid, solution, grade(puzzle, solution))


def rules_from(text: str, grid: Grid) -> Iterator[Rule]:
    """Rules from manifest text, “kind: body” entries. Raises ValueError with the troubles if there are any."""
    if not text.strip():
        return
    desk = Desk()
    tree = parse_yaml(text, "recipe", desk)
    if isinstance(tree, Table):
        for key, body in tree.entries:
            rule = kinds()[key.value].read(body, grid, desk)
            if rule is not None:
                yield rule
    if desk.found:
        raise ValueError([f"{t.place}: {t.text}" for t in desk.found])


BUDGET = 2_000
"""Guesses allowed to prove that a given can go; one that takes more stays."""


LOOK_EVERY = 5
"""After how many removals the grade is looked at."""


def removals(puzzle: RuledPuzzle, least: int, facing: bool, rng: Random) -> Iterator[set[int]]:
    """Cells whose givens can be taken away one group after the other, at random, while one solution and more than
    `least` givens are left; with `facing` a group is a pair of cells that face each other across the centre."""
    cells = list(puzzle.grid.cells)
    rng.shuffle(cells)
    taken: list[set[int]] = []
    left = {cell for cell in cells if puzzle.givens[cell]}
    for cell in cells:
        group = {c for c in ((cell, len(cells) - 1 - cell) if facing else (cell,)) if c in left}
        if group and len(left) - len(group) >= least:
            trial = without(puzzle, [*taken, group])
            if isinstance(prove(problem_of(trial), BUDGET), Unique):
                taken.append(group)
                left -= group
                yield group


def without(puzzle: RuledPuzzle, taken: Iterable[set[int]]) -> RuledPuzzle:
    """The puzzle without the givens of these cells."""
    gone = set().union(*taken)
    return Puzzle(puzzle.grid, tuple(0 if c in gone else d for c, d in enumerate(puzzle.givens)), puzzle.rules)


def _laid(recipe: Recipe, kind: str, solution: Solution, rng: Random) -> Rule | None:
    if recipe.pairs:
        return facing_marks(kind, recipe.grid, solution, rng, recipe.pairs)
    rule: Rule | None = cases_of(kind).lay(recipe.grid, solution, rng)
    return rule
