"""Every rule kind on grids that overlap or have holes: engine, predicates and CP-SAT agree, and steps are sound.

A kind for lines or edges stands in one of the grids, a kind that holds in the whole grid in each; marks in cells may
lie in any of them.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from random import Random

import pytest

from bookmaker.grade import grade
from bookmaker.logic.state import ground_of, start
from bookmaker.puzzle.grid import Grid, boxed_grid
from bookmaker.puzzle.holed import holed_grid
from bookmaker.puzzle.overlapping import Overlapping, overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import keeps_all, kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, node_of
from bookmaker.solve import prove, solutions
from bookmaker.solve.verdict import Unique
from bookmaker.source.diagnostics import Collector, Place
from tests.rules.cpsat import cp_solutions
from tests.rules.harness import lay, read_entry

LAYOUTS = (
    overlapping_grids(6, (2, 3), [(0, 0), (2, 3)]),
    overlapping_grids(4, (2, 2), [(0, 4), (2, 2), (4, 0)]),
    overlapping_grids(6, (3, 2), [(0, 0), (3, 0)]),
)

Solution = tuple[int, ...]


def stood_in(kind: str, grid: Overlapping, letter: str, laid: Rule, plain: Grid) -> Rule | None:
    """A rule laid on a plain grid, read again as one of a grid of these."""
    collector = Collector()
    square = grid.square(letter)
    read = kinds()[kind].read(node_of(laid.written(plain), Place("test")), square, collector)
    return read and replace(read, square=letter)


def puzzles(kind: str, wanted: int) -> Iterator[tuple[RuledPuzzle, Solution]]:
    """Puzzles with marks of the kind, true on the solution, and too few givens to be sure that it is the only one."""
    rng = Random(kind)
    made = 0
    for attempt in range(40 * wanted):
        grid = LAYOUTS[attempt % len(LAYOUTS)]
        assert grid.box
        plain = boxed_grid(grid.size, *grid.box)
        rules: tuple[Rule, ...] = ()
        form = kinds()[kind].form
        if form is Form.WHOLE:
            rules = _in_every(kind, grid)
        empty: RuledPuzzle = Puzzle(grid, (0,) * len(grid.cells), rules)
        solution = next(solutions(problem_of(empty), rng, 20_000), None)
        if solution is None:
            continue
        if kinds()[kind].in_one_square() and form is not Form.WHOLE:
            letter = "A" if form is Form.CELL else rng.choice("AB")  # cells are called as in the whole
            own = tuple(solution[cell] for cell in grid.square(letter).cells)
            laid = lay(kind, plain, own, rng) if letter != "A" or grid.corners[0] == (0, 0) else None
            stood = laid and stood_in(kind, grid, letter, laid, plain)
            rules = (stood,) if stood else ()
        elif form is not Form.WHOLE:
            across = lay(kind, grid, solution, rng)
            rules = (across,) if across else ()
        if not rules or not all(rule.suits(grid) for rule in rules):
            continue
        hidden = set(rng.sample(grid.cells, len(grid.cells) * 2 // 5))
        givens = tuple(0 if cell in hidden else digit for cell, digit in enumerate(solution))
        yield Puzzle(grid, givens, rules), solution
        made += 1
        if made == wanted:
            return


def _in_every(kind: str, grid: Overlapping) -> tuple[Rule, ...]:
    """The kind as its example has it, in each of the grids; none where it does not fit them."""
    shown, _ = read_entry(kinds()[kind].example, grid.squares[0])
    return tuple(replace(shown, square=letter) for letter in "ABC"[: len(grid.squares)]) if shown else ()


@pytest.mark.parametrize("kind", kinds())
def test_engine_and_cp_sat_find_the_same_grids_and_steps_are_sound(kind: str) -> None:
    found = list(puzzles(kind, 4))
    assert found, "no puzzle of this kind could be made"
    for puzzle, solution in found:
        mine = set(solutions(problem_of(puzzle), Random(0), 50_000))
        assert solution in mine and all(keeps_all(puzzle, each) for each in mine)
        assert mine == cp_solutions(puzzle, len(mine) + 1)
        stands = {(cell, digit) for each in mine for cell, digit in enumerate(each)}
        for deduction in start(ground_of(puzzle)).deductions():
            assert not stands & {*deduction.removed}, deduction


_BARE = holed_grid(5, 7, [(row, (row + aside) % 7) for row in range(7) for aside in (0, 3)])

HOLED = replace(_BARE, regions=tuple(house.cells for house in _BARE.rows))
"""Two black cells in every row and column; its rows are its regions, too."""

STANDING = [kind for kind in kinds() if kinds()[kind].stands_on(HOLED)]


@pytest.mark.parametrize("kind", kinds())
def test_marks_taken_apart_come_together_again_in_every_grid(kind: str) -> None:
    """All marks make the rule, and one alone makes a rule with that mark, which the solution keeps."""
    for puzzle, solution in puzzles(kind, 4):
        for rule in puzzle.rules:
            square = rule.laid_on(puzzle.grid)
            parts = rule.parts(square)
            if not parts:
                continue
            assert rule.with_parts(parts, square) == rule
            for part in parts:
                assert rule.with_parts((part,), square).parts(square) == (part,)
                assert rule.keeps(part, square, solution)


@pytest.mark.parametrize("kind", STANDING)
def test_engine_and_cp_sat_find_the_same_grids_with_holes(kind: str) -> None:
    rng, made = Random(kind), 0
    in_all, _ = read_entry(kinds()[kind].example, HOLED) if kinds()[kind].form is Form.WHOLE else (None, None)
    for _ in range(60):
        bare: RuledPuzzle = Puzzle(HOLED, (0,) * len(HOLED.cells), (in_all,) if in_all else ())
        solution = next(solutions(problem_of(bare), rng, 20_000), None)
        rule = in_all or (solution and lay(kind, HOLED, solution, rng))
        if not solution or not rule:
            continue
        hidden = set(rng.sample(HOLED.cells, 16))
        givens = tuple(0 if cell in hidden else digit for cell, digit in enumerate(solution))
        puzzle: RuledPuzzle = Puzzle(HOLED, givens, (rule,))
        mine = set(solutions(problem_of(puzzle), Random(0), 50_000))
        assert solution in mine and all(keeps_all(puzzle, each) for each in mine)
        assert mine == cp_solutions(puzzle, len(mine) + 1)
        stands = {(cell, digit) for each in mine for cell, digit in enumerate(each)}
        assert not [each for each in start(ground_of(puzzle)).deductions() if stands & {*each.removed}]
        made += 1
        if made == 3:
            break
    assert made, "no puzzle of this kind could be made"


def test_a_path_on_overlapping_grids_is_sound() -> None:
    """Givens alone, taken away while one solution is left: fish and subsets are looked for in each grid by itself."""
    for number, grid in enumerate(LAYOUTS):
        rng = Random(number)
        bare: RuledPuzzle = Puzzle(grid, (0,) * len(grid.cells))
        solution = next(solutions(problem_of(bare), rng))
        givens = list(solution)
        for cell in rng.sample(grid.cells, len(grid.cells)):
            kept, givens[cell] = givens[cell], 0
            if not isinstance(prove(problem_of(Puzzle(grid, tuple(givens)))), Unique):
                givens[cell] = kept
        path = grade(Puzzle(grid, tuple(givens)), solution).path
        filled = {cell: digit for cell, digit in enumerate(givens) if digit}
        for step in path.steps:
            assert all(solution[cell] == digit for cell, digit in step.placed)
            assert all(solution[cell] != digit for cell, digit in step.removed)
            filled |= dict(step.placed)
        assert tuple(filled[cell] for cell in grid.cells) == solution
