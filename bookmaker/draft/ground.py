"""Where a draft begins: the wish's rules with marks, and a solution that they are true on.

In: a wish and a random source. Out: a `Sketch` with all the marks that may be chosen from, and how many of each rule
are wanted; or `Missed`, with the reason.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from random import Random

from bookmaker.changes.arrangement import arrangement
from bookmaker.draft.laying import Ground, drawn_first, lay, lay_at, lay_shapes
from bookmaker.draft.needs import Counts
from bookmaker.draft.patience import Missed, Patience
from bookmaker.draft.patterned import fitted
from bookmaker.draft.sketch import Sketch
from bookmaker.puzzle.bits import board_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part
from bookmaker.solve import solutions
from bookmaker.solve.problem import Constraint, Relation, relation
from bookmaker.solve.verdict import Solution
from bookmaker.wishes.wish import Amount, RuleWish, Wish

GUESSES, RESTARTS = 150, 24
"""A solution is sought with few guesses and begun again, rather than with many."""

MANY, GUESSES_OF_MANY = 12, 3000
"""Grids of more rows than this take more guesses to fill."""

SPARE = 3
"""So many times the marks wanted are read off a solution, to choose from those that matter."""


@dataclass(frozen=True, slots=True)
class Begun:
    """A sketch and the numbers of marks wanted."""

    sketch: Sketch
    counts: Counts


def begin(wish: Wish, rng: Random, patience: Patience) -> Begun:
    """Raises Missed where there is no room for the marks, or no grid that keeps them; and what `patience` raises."""
    grid, arranged = wish.grid, arrangement(wish.arrangement, wish.grid)
    ground = Ground(grid, arranged, None, wish.mirrored)
    taken = {cell for wanted in wish.rules if not wanted.amount for cell in _covered(wanted.rule, wish)}
    first = [_before(wanted, ground, rng, taken) for wanted in wish.rules]
    demands = [made for wanted in wish.rules for made in _demands(wanted, ground, rng)]
    solution = _solution(wish, [made for made in first if made is not None], demands, rng, patience)
    ground = replace(ground, solution=solution)
    rules = [
        made if made is not None and not wanted.places else _after(wanted, ground, rng, taken, wish.idle_marks)
        for wanted, made in zip(wish.rules, first, strict=True)
    ]
    kept = board_of(cell for cell, digit in enumerate(wish.fixed) if digit)
    counts = {
        number: (wanted.amount.least, wanted.amount.most)
        for number, wanted in enumerate(wish.rules)
        if wanted.amount and not wanted.places and rules[number].form is not Form.WHOLE and not rules[number].marks_all
    }
    patience.look()
    sketch = Sketch(grid, rules, solution, arranged, patience=patience)
    sketch.kept = sketch.closed(kept) | board_of(wish.pattern)
    if wish.pattern:
        sketch.open = sketch.kept
    return Begun(sketch, counts)


def _covered(rule: Rule, wish: Wish) -> set[int]:
    """Cells that drawn shapes cover."""
    shapes = rule.form in (Form.CHAIN, Form.AREA, Form.TWINS)
    return {cell for part in rule.parts(wish.grid) for cell in part.cells} if shapes else set()


def _before(wanted: RuleWish, ground: Ground, rng: Random, taken: set[int]) -> Rule | None:
    """The rule as far as it is known before there is a solution; None where its marks are read off one."""
    if wanted.amount is None:
        return wanted.rule
    if wanted.places:
        return _open(wanted, ground)
    if not drawn_first(wanted.rule):
        return None
    rule = (
        lay_shapes(wanted, ground, rng, taken) if wanted.shapes else lay(wanted.rule, ground, wanted.amount, rng, taken)
    )
    if rule is None:
        raise Missed("no room")
    return rule


def _open(wanted: RuleWish, ground: Ground) -> Rule | None:
    """What is known of marks whose figures are not: the digits of an area with a total differ."""
    if wanted.rule.form is not Form.AREA:
        return None
    return wanted.rule.with_parts([Part(cells) for cells in wanted.places], ground.grid)


def _after(wanted: RuleWish, ground: Ground, rng: Random, taken: set[int], idle: bool) -> Rule:
    """The rule with marks read off the solution: more than are wanted, of which those that matter are chosen later,
    unless some may be idle."""
    amount = wanted.amount
    assert amount is not None
    if wanted.places:
        rule = lay_at(wanted.rule, ground, wanted.places, rng)
    else:
        most = SPARE * amount.most
        more = amount if idle else Amount(most, most, amount.shortest, amount.longest)
        rule = lay(wanted.rule, ground, more, rng, taken, amount.least)
    if rule is None:
        raise Missed("no room")
    return rule


def _solution(
    wish: Wish, rules: list[Rule], demands: Sequence[Constraint], rng: Random, patience: Patience
) -> Solution:
    bare: RuledPuzzle = Puzzle(wish.grid, wish.fixed or (0,) * len(wish.grid.cells), tuple(rules))
    problem = problem_of(bare)
    problem = replace(problem, constraints=(*problem.constraints, *demands, *_facing(wish)))
    guesses = GUESSES if len(wish.grid.cells) <= MANY**2 else GUESSES_OF_MANY
    for _ in range(RESTARTS):
        for solution in solutions(problem, rng, guesses, patience.look):
            # Marks that are read off the solution help too; how much is seen when they are chosen.
            leads = wish.pattern and len(rules) == len(wish.rules)
            return fitted(problem, wish.pattern, solution, rng) if leads else solution
    raise Missed("no grid")


def _facing(wish: Wish) -> Iterator[Relation]:
    """In a mirrored puzzle, digits that face each other add up to one more than the greatest."""
    if wish.mirrored:
        size, moves = wish.grid.size, arrangement(wish.arrangement, wish.grid).moves
        pairs = {(min(pair), max(pair)) for move in moves[1:] for pair in enumerate(move)}
        yield relation(sorted(pairs), size, ((digit, size + 1 - digit) for digit in wish.grid.digits))


def _demands(wanted: RuleWish, ground: Ground, rng: Random) -> Iterator[Relation]:
    """Places on borders at which some mark of the rule must be true: those that are named; else some by chance, since
    rare marks that have no images would hardly be found."""
    rule, amount = wanted.rule, wanted.amount
    if rule.form is not Form.BORDER or amount is None or rule.marks_all:
        return
    places = list(wanted.places)
    if not places:
        seeds = rng.sample(rule.places(ground.grid), len(rule.places(ground.grid)))
        while len(places) < amount.most:
            places += ground.arranged.images(seeds.pop())
    keeps = _something_true(rule, ground.grid)
    yield relation([(one, other) for one, other in places], ground.grid.size, keeps)


def _something_true(rule: Rule, grid: Grid) -> list[tuple[int, int]]:
    """The pairs of digits for which some mark on their border is true."""
    one, other = rule.places(grid)[0]
    digits, rng, keeps = [0] * len(grid.cells), Random(0), []
    for a in grid.digits:
        for b in grid.digits:
            digits[one], digits[other] = a, b
            if a != b and any(True for _ in rule.read_off((one, other), grid, digits, rng)):
                keeps.append((a, b))
    return keeps
