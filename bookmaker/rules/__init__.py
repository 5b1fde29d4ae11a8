"""Rule kinds, one file each. `kinds()` finds them by looking into this folder; there is no list to keep.

In: a kind's word and its manifest body. Out: a `Rule`; and for a whole puzzle its `Problem` for the engine, its
houses with names, the plain re-check of a filled grid, and all its marks.
"""

from __future__ import annotations

import importlib
import inspect
import pkgutil
from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import replace
from functools import cache

from bookmaker.puzzle.grid import Grid, House
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.drawing.allot import allot
from bookmaker.rules.common.drawing.frame import Frame, Margins, Mark
from bookmaker.rules.common.drawing.places import Box, InCell
from bookmaker.solve.problem import Allowed, Constraint, Different, Problem


@cache
def kinds() -> Mapping[str, type[Rule]]:
    """Every rule kind by its word, in alphabetical order. Raises ValueError where two files claim one word."""
    found: dict[str, type[Rule]] = {}
    for module_info in pkgutil.iter_modules(__path__):
        if module_info.ispkg:
            continue
        module = importlib.import_module(f"{__name__}.{module_info.name}")
        for _, rule in inspect.getmembers(module, inspect.isclass):
            if rule.__module__ != module.__name__ or not issubclass(rule, Rule) or inspect.isabstract(rule):
                continue
            if rule.kind in found:
                raise ValueError(f"two files claim the rule kind “{rule.kind}”")
            found[rule.kind] = rule
    return dict(sorted(found.items()))


def problem_of(puzzle: RuledPuzzle, with_givens: bool = True) -> Problem:
    """The puzzle in the engine's primitives: houses, givens, and what each rule asks."""
    grid = puzzle.grid
    asked: list[Constraint] = [Different(house.cells) for house in grid.houses]
    if with_givens:
        asked.extend(Allowed((cell,), 1 << (digit - 1)) for cell, digit in enumerate(puzzle.givens) if digit)
    for rule in puzzle.rules:
        asked.extend(rule.constraints(rule.laid_on(grid)))
    return Problem(len(grid.cells), grid.size, tuple(asked))


def houses_of(puzzle: RuledPuzzle) -> tuple[House, ...]:
    """The grid's houses and those that rules add."""
    added = (house for rule in puzzle.rules for house in rule.houses(rule.laid_on(puzzle.grid)))
    return puzzle.grid.houses + tuple(added)


def keeps_all(puzzle: RuledPuzzle, digits: Sequence[int]) -> bool:
    """The plain re-check of a filled grid: givens kept, houses full, every rule's own predicate true."""
    grid = puzzle.grid
    everything = set(grid.digits)
    return (
        len(digits) == len(grid.cells)
        and all(given in (0, digit) for given, digit in zip(puzzle.givens, digits, strict=True))
        and all({digits[cell] for cell in house.cells} == everything for house in grid.houses)
        and all(rule.holds(rule.laid_on(grid), digits) for rule in puzzle.rules)
    )


def margins_of(rules: Iterable[Rule], grid: Grid) -> Margins:
    """The room outside the grid, in cells at each side, that all the rules' clues take together."""
    beyond = Margins()
    for square, own in _clues_by_square(rules, grid).items():
        top, left = square.begins
        right, bottom = grid.width - left - square.width, grid.height - top - square.height
        beyond = beyond.covering(Margins(own.top - top, own.right - right, own.bottom - bottom, own.left - left))
    return beyond


def _clues_by_square(rules: Iterable[Rule], grid: Grid) -> dict[Grid, Margins]:
    """The room that clues take at each of several overlapping grids, or at the only one."""
    taken: dict[Grid, Margins] = {}
    for rule in rules:
        square = rule.laid_on(grid)
        taken[square] = taken.get(square, Margins()) + rule.margins(square)
    return taken


def marks_of(rules: Sequence[Rule], frame: Frame) -> Iterator[Mark]:
    """The marks of all rules, none on another. Clues of several kinds at one side stand in lanes, those that hug the
    grid innermost."""
    return (mark for _, mark in ruled_marks(rules, frame))


def boxes_beside(rules: Iterable[Rule], grid: Grid, claims: Sequence[InCell]) -> list[Box]:
    """Boxes for what is drawn in cells beside the marks of the rules, which stay where they are."""
    given = allot(grid, [*([*rule.claims(rule.laid_on(grid))] for rule in rules), claims])[-1].boxes
    return [given.get(claim, claim.boxes[0]) for claim in claims]


def ruled_marks(rules: Sequence[Rule], frame: Frame) -> Iterator[tuple[Rule, Mark]]:
    """The same, each with its rule."""
    in_order = sorted(rules, key=lambda rule: not rule.hugs_grid)
    claims = [[*rule.claims(rule.laid_on(frame.grid))] for rule in in_order]
    taken: dict[str, Margins] = {}
    for rule, places in zip(in_order, allot(frame.grid, claims), strict=True):
        grid, outset = rule.laid_on(frame.grid), taken.get(rule.square, frame.outset)
        yield from ((rule, mark) for mark in rule.marks(replace(frame, grid=grid, places=places, outset=outset)))
        taken[rule.square] = outset + rule.margins(grid)
