"""Slips that a broken puzzle may have come from, the likeliest first.

In: the puzzle, and what is known of it: grids that were met, whether it has a solution. Out: slips with their
likelihood, of those that come to the same puzzle the likeliest. None is tried here.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from random import Random

from bookmaker.changes.arrangement import arrangements_of, nearly_arranged_as
from bookmaker.changes.slips import Slip, left_out_by, slips_in_givens, slips_in_marks
from bookmaker.mend.case import Case
from bookmaker.mend.likelihood import puzzle_likelihood, slip_likelihood
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.parts import Form


def likeliest(case: Case, too_few: bool) -> list[tuple[Slip, float]]:
    """All slips, the likeliest first, each with its likelihood; with `too_few`, something may have been left out."""
    puzzle = case.puzzle
    slips = [*slips_in_givens(puzzle), *slips_in_marks(puzzle)]
    if too_few:
        slips += [*_left_out_givens(puzzle, case), *_left_out_marks(puzzle, case)]
    ways = Counter(slip.sort for slip in slips)
    close = Counter(slip.sort for slip in slips if slip.close)
    cells, size = len(puzzle.grid.cells), puzzle.grid.size
    ways["extra given"] = (cells - puzzle.given_count) * size
    ways["left-out given"] = puzzle.given_count + 1
    ways["left-out mark"] = sum(len(rule.parts(rule.laid_on(puzzle.grid))) for rule in puzzle.rules) + 1
    close["left-out given"] = close["left-out mark"] = 0
    told = [(slip, slip_likelihood(slip.sort, slip.close, ways[slip.sort], close[slip.sort])) for slip in slips]
    told = [(slip, likely + puzzle_likelihood(slip.meant)) for slip, likely in told]
    return sorted(told, key=lambda item: -item[1])


def _left_out_givens(puzzle: RuledPuzzle, case: Case) -> Iterator[Slip]:
    """One more given, of all that stand in some grid that was met."""
    seen = {(cell, digit) for solution in case.met for cell, digit in enumerate(solution)}
    for cell, digit in sorted(seen):
        if not puzzle.givens[cell]:
            givens = (*puzzle.givens[:cell], digit, *puzzle.givens[cell + 1 :])
            yield Slip("left-out given", Puzzle(puzzle.grid, givens, puzzle.rules))


def _left_out_marks(puzzle: RuledPuzzle, case: Case) -> Iterator[Slip]:
    """A mark that the arrangement of the others suggests, with figures as the grids that were met would have them."""
    grid, rng = puzzle.grid, Random(0)
    given = [cell for cell, digit in enumerate(puzzle.givens) if digit]
    named = nearly_arranged_as(given, grid, 2) or arrangements_of(grid)[1:2]
    seen = set()
    for arranged in named[:3]:
        for number, part in left_out_by(arranged, puzzle):
            rule = puzzle.rules[number]
            laid = rule.laid_on(grid)
            read = [part]
            if rule.figures or rule.form in (Form.BORDER, Form.CELL):
                read = [made for met in case.met for made in rule.read_off(part.cells, laid, met, rng)]
            for made in read:
                if (number, made) not in seen:
                    seen.add((number, made))
                    rules = list(puzzle.rules)
                    rules[number] = rule.with_parts([*rule.parts(laid), made], laid)
                    yield Slip("left-out mark", Puzzle(grid, puzzle.givens, tuple(rules)), close=True)
