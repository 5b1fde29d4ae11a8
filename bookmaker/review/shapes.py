"""Marks taken apart: the single shapes of a rule, which of them leave no freedom, and which are not needed.

In: a puzzle. Out: `Shape`s. A rule value holds all marks of its kind; a shape is what hangs together in its
constraints: one cage, one thermometer with its branches, one dot.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from bookmaker.puzzle.bits import board_of
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.problem import Allowed, Constraint, Problem, Relation, Sum
from bookmaker.solve.verdict import Unique

BUDGET = 20_000
"""Search nodes for each proof that something is not needed; what runs out of it counts as needed."""


@dataclass(frozen=True, slots=True)
class Shape:
    """One mark: what a step calls it, its cells (of a line in the order typed), and what it asks of them."""

    noun: str
    cells: tuple[int, ...]
    constraints: tuple[Constraint, ...]


def cells_of(constraint: Constraint) -> tuple[int, ...]:
    """The cells that a constraint speaks of."""
    match constraint:
        case Relation(pairs, _):
            return tuple(dict.fromkeys(cell for pair in pairs for cell in pair))
        case Sum(terms, _, _):
            return tuple(dict.fromkeys(cell for cell, _ in terms))
    return constraint.cells


def shapes_of(rule: Rule, puzzle: RuledPuzzle) -> tuple[Shape, ...]:
    """The rule's marks, one by one."""
    parts: list[tuple[int, list[Constraint]]] = []
    grid = rule.laid_on(puzzle.grid)
    marks = [board_of(part.cells) for part in rule.parts(grid)]
    for made in rule.constraints(grid):
        pieces = [replace(made, pairs=(pair,)) for pair in made.pairs] if isinstance(made, Relation) else [made]
        chained = isinstance(made, Relation)
        for piece in pieces:
            board, joined = board_of(cells_of(piece)), [piece]
            kept = []
            for other, theirs in parts:
                same = other == board or (chained and other & board and isinstance(theirs[0], Relation))
                # Sums of one line or area are one mark.
                same = same or (isinstance(piece, Sum) and any(not (other | board) & ~mark for mark in marks))
                if same or (isinstance(piece, Allowed) and other & board == board):
                    board |= other
                    joined = theirs + joined
                else:
                    kept.append((other, theirs))
            parts = [*kept, (board, joined)]
    typed = {board_of(chain): chain for chain in getattr(rule, "chains", ())}
    shapes = []
    for board, part in parts:
        cells = typed.get(board) or dict.fromkeys(cell for made in part for cell in cells_of(made))
        shapes.append(Shape(rule.noun, tuple(cells), tuple(part)))
    return tuple(shapes)


def needless_givens(puzzle: RuledPuzzle) -> tuple[int, ...]:
    """Cells whose given can be taken away alone: the puzzle stays unique."""
    without = []
    for cell, digit in enumerate(puzzle.givens):
        if digit:
            givens = (*puzzle.givens[:cell], 0, *puzzle.givens[cell + 1 :])
            if _unique(problem_of(replace(puzzle, givens=givens))):
                without.append(cell)
    return tuple(without)


def needless_shapes(puzzle: RuledPuzzle) -> tuple[Shape, ...]:
    """Marks that can be taken away alone: the puzzle stays unique."""
    return tuple(
        shape
        for rule in puzzle.rules
        for shape in shapes_of(rule, puzzle)
        if _unique(_without_shape(puzzle, rule, shape))
    )


def needless_rules(puzzle: RuledPuzzle) -> tuple[Rule, ...]:
    """Rules that can be taken away alone, with all their marks: the puzzle stays unique."""
    return tuple(rule for rule in puzzle.rules if _unique(problem_of(without_rule(puzzle, rule))))


def without_rule(puzzle: RuledPuzzle, rule: Rule) -> RuledPuzzle:
    """The puzzle without one of its rules and all of its marks."""
    return Puzzle(puzzle.grid, puzzle.givens, tuple(other for other in puzzle.rules if other is not rule))


def _without_shape(puzzle: RuledPuzzle, rule: Rule, shape: Shape) -> Problem:
    bare = problem_of(without_rule(puzzle, rule))
    rest = [made for other in shapes_of(rule, puzzle) if other != shape for made in other.constraints]
    return replace(bare, constraints=(*bare.constraints, *rest))


def _unique(problem: Problem) -> bool:
    return isinstance(prove(problem, BUDGET), Unique)


def classic_once_filled(puzzle: RuledPuzzle, filling: dict[int, int]) -> bool:
    """Does a puzzle with rules become a classic once some digits are filled in: unique by its houses alone?"""
    if not puzzle.rules:
        return False
    givens = tuple(filling.get(cell, digit) for cell, digit in enumerate(puzzle.givens))
    bare: RuledPuzzle = Puzzle(puzzle.grid, givens)
    return _unique(problem_of(bare))
