"""Slips that a broken puzzle may have come from, the likeliest first.

In: the puzzle, and what is known of it: grids that were met, whether it has a solution. Out: slips with their
likelihood, of those that come to the same puzzle the likeliest. None is tried here.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import permutations
from random import Random

from bookmaker.changes.arrangement import Arrangement, arrangements_of
from bookmaker.changes.slips import Slip, left_out_by, slips_in_givens, slips_in_marks
from bookmaker.mend.case import Case
from bookmaker.mend.likelihood import puzzle_likelihood, slip_likelihood, unlikely
from bookmaker.puzzle.bits import board_of
from bookmaker.puzzle.grid import LETTERS, Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part

ARRANGEMENTS = 3
"""So many arrangements suggest marks that were left out."""


def likeliest(case: Case, too_few: bool) -> list[tuple[Slip, float]]:
    """All slips, the likeliest first, each with its likelihood; with `too_few`, something may have been left out."""
    puzzle = case.puzzle
    slips = [*slips_in_givens(puzzle), *slips_in_marks(puzzle)]
    if too_few:
        slips += [*_left_out_givens(puzzle, case), *_left_out_marks(puzzle, case)]
    slips += _unmarked_places(puzzle)
    ways = Counter(slip.sort for slip in slips)
    close = Counter(slip.sort for slip in slips if slip.close)
    cells, size = len(puzzle.grid.cells), puzzle.grid.size
    ways["extra given"] = (cells - puzzle.given_count) * size
    ways["left-out given"] = puzzle.given_count + 1
    ways["left-out mark"] = sum(len(rule.parts(rule.laid_on(puzzle.grid))) for rule in puzzle.rules) + 1
    close["left-out given"] = close["left-out mark"] = 0  # none is easier to forget than another
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
    for arranged in _suggesting(puzzle):
        for number, part in left_out_by(arranged, puzzle):
            rule = puzzle.rules[number]
            laid = rule.laid_on(grid)
            if rule.form is Form.TWINS:
                part = replace(part, name=_free_letter(rule.parts(laid)))
            read = [part]
            if rule.figures or rule.form in (Form.BORDER, Form.CELL):
                read = [made for met in case.met for made in rule.read_off(part.cells, laid, met, rng)]
            yield from (_with_mark(puzzle, number, made) for made in dict.fromkeys(read))


def _free_letter(parts: Sequence[Part]) -> str:
    taken = {part.name for part in parts}
    return next((letter for letter in LETTERS if letter not in taken), "")


def _suggesting(puzzle: RuledPuzzle) -> tuple[Arrangement, ...]:
    """The arrangements that givens and marks come nearest to, but for those that they keep: nothing lacks in these."""
    given = board_of(cell for cell, digit in enumerate(puzzle.givens) if digit)
    costs = [(unlikely(puzzle, given, made), -len(made.moves), made) for made in arrangements_of(puzzle.grid)[1:]]
    return tuple(made for cost, _, made in sorted(costs, key=lambda item: item[:2]) if cost)[:ARRANGEMENTS]


def _unmarked_places(puzzle: RuledPuzzle) -> Iterator[Slip]:
    """A mark between two cells where all are marked: there, one that lacks says something wrong."""
    for number, rule in enumerate(puzzle.rules):
        if not rule.marks_all or rule.form is not Form.BORDER:
            continue
        laid = rule.laid_on(puzzle.grid)
        there = {frozenset(part.cells) for part in rule.parts(laid)}
        for cells in rule.places(laid):
            if frozenset(cells) not in there:
                yield from (_with_mark(puzzle, number, part) for part in _marks_at(cells, rule, laid))


def _marks_at(cells: Sequence[int], rule: Rule, grid: Grid) -> Iterator[Part]:
    """The marks that there are for two cells, whatever they hold."""
    found: dict[Part, None] = {}
    digits = [0] * grid.numbered
    for pair in permutations(grid.digits, 2):
        digits[cells[0]], digits[cells[1]] = pair
        found |= dict.fromkeys(rule.read_off(cells, grid, digits, Random(0)))
    yield from found


def _with_mark(puzzle: RuledPuzzle, number: int, part: Part) -> Slip:
    rules = list(puzzle.rules)
    laid = rules[number].laid_on(puzzle.grid)
    rules[number] = rules[number].with_parts([*rules[number].parts(laid), part], laid)
    return Slip("left-out mark", Puzzle(puzzle.grid, puzzle.givens, tuple(rules)))
