"""Look-alikes: puzzles that are the same but for moves that their rules allow.

In: puzzles with their one solution. Out: `Keys`, equal exactly for look-alikes and, further, for puzzles that are near
to each other; and the `Move` that carries one puzzle to another, or None.

Rows and columns may be laid out anew in any way that leaves rows, columns, regions and all that the rules ask as they
are; for a classic that is 3,359,232 ways, for a grid with lines drawn on it mostly the eight turns and reflections of
the square. Grids that overlap or have holes are only turned and reflected. Digits may be renamed as far as every rule
allows it (`Rule.relabelling`). The solution is the only one, so it moves with the puzzle, and most puzzles are told
apart by it alone.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields
from itertools import product

from bookmaker.puzzle.bits import board_of
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import Relabelling, Rule, RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.symmetry.arrangement import Arrangement, arranged, automorphisms
from bookmaker.symmetry.carrying import Keys, carries, relabelling_of, renaming_of, short
from bookmaker.symmetry.forms import digest, forms_of
from bookmaker.symmetry.moves import EIGHT, Move, reversed_digits, turned_cells, unmoved_digits
from bookmaker.symmetry.turning import turned_difference, turned_keys, turned_mapping

__all__ = ["Keys", "Move", "different_givens", "keys_of", "mapping", "relabelling_of"]

FEW_GRIDS = 6
"""On grids up to this size there are so few different solutions that sharing one says nothing (6×6 has 49)."""


def keys_of(puzzle: RuledPuzzle, solution: Solution) -> Keys:
    """The keys of a puzzle with exactly this solution."""
    grid = puzzle.grid
    if not grid.plain:
        return turned_keys(grid, puzzle, solution)
    plain = arranged(grid, solution) if grid.size > FEW_GRIDS else None
    renaming, best = _canonical(puzzle, solution)
    text = short(repr((grid.size, renaming)), best.text, _asked(puzzle, best))
    return Keys(
        puzzle=text,
        solution=short(str(grid.size), plain.text) if plain else "",
        marks=_marks_key(puzzle) if any(map(_has_marks, puzzle.rules)) else "",
    )


def mapping(one: RuledPuzzle, its: Solution, other: RuledPuzzle, others: Solution) -> Move | None:
    """The move that carries one puzzle to the other, both with their only solutions; None where there is none.

    Where several do, a turn or reflection is preferred, and digits that stay. What comes out has been tried out.
    """
    if (one.grid.size, one.given_count) != (other.grid.size, other.given_count):
        return None
    if not (one.grid.plain and other.grid.plain):
        return turned_mapping(one, its, other, others)
    for turn in EIGHT.values():
        cells = turned_cells(turn, one.grid.size)
        digits = renaming_of(its, others, cells)
        if digits is not None and carries(move := Move(cells, digits), one, other):
            return move
    first, second = _canonical(one, its), _canonical(other, others)
    if first[0] != second[0] or first[1].text != second[1].text:
        return None
    back = [0] * len(second[1].digits)
    for digit, called in enumerate(second[1].digits):
        back[called] = digit
    cells = tuple(second[1].at[place] for place in first[1].images())
    move = Move(cells, tuple(back[called] for called in first[1].digits))
    return move if carries(move, one, other) else None


def different_givens(one: RuledPuzzle, its: Solution, other: RuledPuzzle, others: Solution) -> int | None:
    """In how many cells only one of two puzzles with the same solution grid has a given, where the grids are laid on
    each other so that this is least; None if no move carries the one solution to the other."""
    if not (one.grid.plain and other.grid.plain):
        return turned_difference(one, its, other, others)
    if len({arranged(puzzle.grid, grid).text for puzzle, grid in ((one, its), (other, others))}) > 1:
        return None
    there = arranged(other.grid, others)
    filled = frozenset(cell for cell, digit in enumerate(other.givens) if digit)
    least = len(its)
    for cells in _onto(one.grid, its, there):
        moved = {cells[cell] for cell, digit in enumerate(one.givens) if digit}
        least = min(least, len(moved ^ filled))
    return least


def _onto(grid: Grid, solution: Solution, there: Arrangement) -> Iterator[tuple[int, ...]]:
    """All ways to lay a solved grid on another one, arranged, that is the same but for a move."""
    for here in automorphisms(grid, solution):
        images = [0] * len(there.at)
        for mine, yours in zip(here.at, there.at, strict=True):
            images[mine] = yours
        yield tuple(images)


def _canonical(puzzle: RuledPuzzle, solution: Solution) -> tuple[Relabelling, Arrangement]:
    """The arrangement that look-alikes share, with how the digits may be renamed."""
    renaming, size = relabelling_of(puzzle), puzzle.grid.size
    ways = {
        "any": ((solution, unmoved_digits(size)),),
        "none": ((solution, unmoved_digits(size)),),
        "reversed": tuple(
            (tuple(digits[d] for d in solution), digits) for digits in (unmoved_digits(size), reversed_digits(size))
        ),
    }[renaming]
    given = board_of(cell for cell, digit in enumerate(puzzle.givens) if digit)

    def whole(found: Arrangement, digits: tuple[int, ...]) -> Arrangement:
        return Arrangement(found.at, tuple(found.digits[d] for d in digits), found.text)

    def search(way: Solution, digits: tuple[int, ...]) -> Arrangement:
        found = arranged(puzzle.grid, way, given, renaming == "any", lambda end: _asked(puzzle, whole(end, digits)))
        return whole(found, digits)

    found = [search(*way) for way in ways]
    if len(found) == 1 or found[0].text != found[1].text:
        return renaming, min(found, key=lambda each: each.text)
    return renaming, min(found, key=lambda each: _asked(puzzle, each))


def _asked(puzzle: RuledPuzzle, arrangement: Arrangement) -> str:
    """What the rules ask where an arrangement has laid them."""
    return digest(forms_of(puzzle, arrangement.images(), arrangement.digits)) if puzzle.rules else ""


def _marks_key(puzzle: RuledPuzzle) -> str:
    grid = puzzle.grid
    renamings = [unmoved_digits(grid.size)]
    renamings += [reversed_digits(grid.size)] if relabelling_of(puzzle) != "none" else []
    bare = Puzzle(grid, (0,) * len(grid.cells), puzzle.rules)
    return min(
        digest(forms_of(bare, turned_cells(turn, grid.size), digits))
        for turn, digits in product(EIGHT.values(), renamings)
    )


def _has_marks(rule: Rule) -> bool:
    """Has a rule marks of its own, other than that it holds in the whole grid?"""
    return any(isinstance(getattr(rule, field.name), tuple) for field in fields(rule))
