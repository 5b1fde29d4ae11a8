"""A puzzle taken into single statements: each given, each mark, and what rules say besides their marks.

In: a puzzle. Out: its `Element`s, which together with the houses say all that it says. Two puzzles on one grid differ
by the elements that one has and the other has not.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part
from bookmaker.rules.common.words.wording import cells_listed, ends_named, number, symbol
from bookmaker.solve.problem import Allowed, Constraint, Different, Problem
from bookmaker.solve.verdict import Solution


@dataclass(frozen=True, slots=True)
class Given:
    """A digit at the start."""

    cell: int
    digit: int


@dataclass(frozen=True, slots=True)
class MarkOf:
    """One mark of a rule; `rule` is the rule without marks, so that it is equal in two puzzles that have this mark."""

    rule: Rule
    part: Part


@dataclass(frozen=True, slots=True)
class Besides:
    """What a rule says that no single mark says: of places without a mark, or of the whole grid."""

    rule: Rule


Element = Given | MarkOf | Besides


def elements_of(puzzle: RuledPuzzle) -> tuple[Element, ...]:
    """All statements, givens first."""
    found: list[Element] = [Given(cell, digit) for cell, digit in enumerate(puzzle.givens) if digit]
    for rule in puzzle.rules:
        grid = rule.laid_on(puzzle.grid)
        bare = _bare(rule, grid)
        found += [MarkOf(bare, part) for part in rule.parts(grid)]
        if any(True for _ in rule.asked_besides(grid)):
            found.append(Besides(rule))
    return tuple(found)


def _bare(rule: Rule, grid: Grid) -> Rule:
    return rule.with_parts((), grid) if rule.parts(grid) else rule


def asked_by(element: Element, grid: Grid) -> tuple[Constraint, ...]:
    """What a statement asks, for the engine."""
    match element:
        case Given(cell, digit):
            return (Allowed((cell,), 1 << (digit - 1)),)
        case MarkOf(rule, part):
            return tuple(rule.asked_by(part, rule.laid_on(grid)))
        case Besides(rule):
            return tuple(rule.asked_besides(rule.laid_on(grid)))


def kept_by(element: Element, grid: Grid, digits: Solution) -> bool:
    """Is a statement true of a filled grid?"""
    match element:
        case Given(cell, digit):
            return digits[cell] == digit
        case MarkOf(rule, part):
            return rule.keeps(part, rule.laid_on(grid), digits)
        case Besides(rule):
            # Its marks being kept, the rest of the rule is kept where the whole rule is.
            return rule.holds(rule.laid_on(grid), digits)


def problem_with(elements: Iterable[Element], grid: Grid) -> Problem:
    """The houses, and these statements."""
    houses = (Different(house.cells) for house in grid.houses)
    asked = (made for element in elements for made in asked_by(element, grid))
    return Problem(len(grid.cells), grid.size, (*houses, *asked))


def named(element: Element, grid: Grid) -> str:
    """What a statement is called: “the 5 at r1c1”, “the cage of 12 at r1c1”."""
    match element:
        case Given(cell, digit):
            return f"the {grid.symbol(digit)} at {grid.name(cell)}"
        case Besides(rule):
            return f"the rest of “{rule.title}”" if rule.marks_all else f"the rule “{rule.title}”"
        case MarkOf(rule, part):
            return f"the {_called(rule, part)} {_where(rule, part, grid)}"


def _called(rule: Rule, part: Part) -> str:
    noun = f"{part.name} {rule.noun}" if part.name.islower() and rule.form is Form.BORDER else rule.noun
    if rule.form is Form.CELL and part.name.islower() and part.name != "not":
        noun = f"mark “{part.name}”"
    if rule.form is Form.BORDER and part.name.isupper():
        noun = part.name
    if rule.figures == "number" and part.value:
        return f"{noun} of {part.value[0]}"
    if rule.figures == "digits":
        return f"{noun} {'not ' * (part.name == 'not')}{' '.join(map(symbol, part.value))}"
    return noun


def _where(rule: Rule, part: Part, grid: Grid) -> str:
    match rule.form:
        case Form.CHAIN:
            return ends_named(grid, part.cells)
        case Form.BORDER:
            return f"between {cells_listed(grid, part.cells)}"
        case Form.EDGE:
            return f"at {grid.name(part.cells[0])}, looking to {grid.name(part.cells[-1])}"
        case Form.TWINS:
            return f"of {number(part.value[0])} areas, the first at {grid.name(part.cells[0])}"
    return f"at {grid.name(part.cells[0])}"
