"""Grids that overlap and grids with holes, filled in and with true marks of any kind, for the grammar of manifests."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from dataclasses import replace
from random import Random

from bookmaker.manifest.overlapfields import check_clues_free
from bookmaker.puzzle.grid import LARGEST, Grid, boxed_grid
from bookmaker.puzzle.grid import LETTERS as ALPHABET
from bookmaker.puzzle.holed import Holed, holed_grid
from bookmaker.puzzle.overlapping import Overlapping, overlapping_grids
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds, problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.rules.common.parts import Form, Part, node_of
from bookmaker.solve import prove, solutions
from bookmaker.solve.verdict import Several, Undecided
from bookmaker.source.diagnostics import Collector, Place
from tests.rules.grids import Solution
from tests.rules.harness import lay, read_entry

SMALL_BOXES = ((2, 2),) * 6 + ((2, 3), (3, 2)) * 3 + ((2, 4), (3, 3), (3, 3))
LARGE_BOXES = ((3, 3), (2, 5), (3, 4), (4, 4), (3, 6), (4, 5))
"""Boxes of grids that overlap, as often as they are drawn."""

SMALL_HOLED = ((5, 4),) * 3 + ((6, 4), (6, 5), (7, 5), (8, 6)) * 2 + ((9, 7), (10, 9), (12, 8))
LARGE_HOLED = ((12, 9), (14, 12), (16, 15), (20, 16), (25, 20), (25, 24))
"""The side of a grid with holes and how many digits it has."""

DIVIDED = (
    "bb#dd beed# b#edc #aecc aaa#c",
    "##dddd ccc##e c##eee #bbff# bb##ff aaaa##",
    "aaa#cc aa#dcc eedd#c e#ddbb eeffb# #fffbb",
    "ddd##gg ##ddffg a##fffg aaaa##g #ecccc# eecbb## ee##bbb",
    "eeee##bb #eecbbb# a##cccbd aaacc##d ##aadddd hhgggg## hhg##gff hh##ffff",
)
"""Regions with holes between them; each can be filled in."""

GUESSES = 2_000
"""So many may be made for a solution; without one, digits are laid along diagonals."""

Filled = tuple[Grid, Solution, tuple[Rule, ...]]


def overlapping(rng: Random, boxes: Sequence[tuple[int, int]]) -> Overlapping:
    """Two to five grids that share boxes."""
    box = rng.choice(boxes)
    size, wanted = box[0] * box[1], rng.choice([2, 2, 2, 3, 3, 4, 5])
    made = overlapping_grids(size, box, [(0, 0), rng.choice([(box[0], 0), (0, box[1]), box])])
    for _ in range(30):
        if len(made.corners) >= wanted:
            break
        top, left = rng.choice(made.corners)
        down, across = (rng.randrange(1 - size // step, size // step) * step for step in box)
        with suppress(ValueError):  # most places for a grid more are none
            more = overlapping_grids(size, box, [*made.corners, (top + down, left + across)])
            made = more if more.extent <= LARGEST else made
    return made


def holed(rng: Random, sides: Sequence[tuple[int, int]]) -> Holed:
    """A square with holes, now and then with regions."""
    if sides is SMALL_HOLED and rng.random() < 0.3:
        rows = rng.choice(DIVIDED).split()
        holes = [(row, column) for row, line in enumerate(rows) for column, each in enumerate(line) if each == "#"]
        bare = holed_grid(len(rows) - rows[0].count("#"), len(rows), holes)
        at: dict[str, list[int]] = {}
        for cell, (row, column) in enumerate(bare.places):
            at.setdefault(rows[row][column], []).append(cell)
        return replace(bare, regions=tuple(map(tuple, at.values())))
    side, size = rng.choice(sides)
    rows_moved, black = rng.sample(range(side), side), rng.sample(range(side), side - size)
    return holed_grid(size, side, [(rows_moved[row], (row + aside) % side) for row in range(side) for aside in black])


def grid_of(rng: Random, large: bool) -> Grid:
    """A grid of one of these shapes, its digits from 1."""
    if rng.random() < 0.6:
        return overlapping(rng, LARGE_BOXES if large else SMALL_BOXES)
    return holed(rng, LARGE_HOLED if large else SMALL_HOLED)


def filled(grid: Grid, rules: Sequence[Rule], rng: Random, searching: bool) -> Solution | None:
    """A solution: searched for, or with the first row moved along; None where the rules allow none that is found."""
    bare: RuledPuzzle = Puzzle(grid, (0,) * len(grid.cells), tuple(rules))
    if rules or (grid.regions and not grid.box):
        searching = True
    found = next(solutions(problem_of(bare), rng, GUESSES), None) if searching else None
    if found or rules:
        return found
    digits = rng.sample(grid.digits, grid.size)
    if isinstance(grid, Overlapping) and grid.box:
        down, across = grid.box
        moved = [across * (row % down) + row // down for row in range(grid.size)]
        return tuple(digits[(moved[row % grid.size] + column) % grid.size] for row, column in grid.places)
    return _along_diagonals(grid, digits)


def _along_diagonals(grid: Grid, digits: Sequence[int]) -> Solution | None:
    """A digit to each of the diagonals that `holed` leaves; None where rows were drawn in another way."""
    first = [grid.column(cell) for cell in grid.rows[0].cells]
    moved = [
        next((by for by in range(grid.extent) if {(each + by) % grid.extent for each in first} == columns), None)
        for columns in ({grid.column(cell) for cell in house.cells} for house in grid.rows)
    ]
    if None in moved or len(set(moved)) < len(moved):
        return None
    of = dict(zip(first, digits, strict=True))
    return tuple(of[(column - (moved[row] or 0)) % grid.extent] for row, column in map(grid.place, grid.cells))


def laid(rng: Random, few: Sequence[str], large: bool) -> Filled | None:
    """A grid of one of these shapes, filled in, with true marks of these kinds as far as there are any; None where no
    solution is found."""
    grid = grid_of(rng, large)
    standing = [kind for kind in few if kinds()[kind].stands_on(grid)]
    if standing and rng.random() < 0.2:
        grid = _with_other_signs(grid, standing, rng)
    whole = [rule for kind in standing if not large for rule in _in_all(kind, grid, rng)]
    solution = filled(grid, whole, rng, searching=not large)
    if solution is None and whole:
        whole, solution = [], filled(grid, (), rng, searching=not large)
    if solution is None:
        return None
    marks = [rule for kind in standing for rule in _marks(kind, grid, solution, rng)]
    return grid, solution, tuple(rule for rule in (*whole, *marks) if rule.suits(grid.square(rule.square)))


def with_one_solution(puzzle: RuledPuzzle, solution: Solution, rng: Random) -> RuledPuzzle:
    """The puzzle with some givens of its solution, and with those more that shut out all others."""
    givens = [digit if rng.random() < 0.3 else 0 for digit in solution]
    while True:
        match prove(problem_of(replace(puzzle, givens=tuple(givens))), GUESSES):
            case Several(first, second):
                differing = [at for at, digits in enumerate(zip(first, second, strict=True)) if len({*digits}) > 1]
                for cell in rng.sample(differing, min(3, len(differing))):
                    givens[cell] = solution[cell]
            case Undecided():
                givens = list(solution)
            case _:
                return replace(puzzle, givens=tuple(givens))


def _with_other_signs(grid: Grid, few: Sequence[str], rng: Random) -> Grid:
    """Letters or digits from 0, where all kinds go with them."""
    if all(kinds()[kind].from_zero for kind in few):
        return replace(grid, symbols="", first=0)
    if all(kinds()[kind].lettered for kind in few):
        return replace(grid, symbols="".join(sorted(rng.sample(ALPHABET, grid.size))), first=None)
    return grid


def _in_all(kind: str, grid: Grid, rng: Random) -> list[Rule]:
    """A kind that holds in the whole of a grid, as its example has it, in each of the grids or in one."""
    if kinds()[kind].form is not Form.WHOLE:
        return []
    shown, _ = read_entry(kinds()[kind].example, grid.squares[0])
    letters = grid.square_letters if rng.random() < 0.6 else rng.sample(grid.square_letters, 1)
    return [replace(shown, square=letter) for letter in letters] if shown else []


def _marks(kind: str, grid: Grid, solution: Solution, rng: Random) -> list[Rule]:
    """Marks of a kind with marks of its own; those that stand in one grid, in one or two of them."""
    if kinds()[kind].form is Form.WHOLE:
        return []
    if not (grid.overlaps and kinds()[kind].in_one_square()):
        across = lay(kind, grid, solution, rng)
        return [across] if across else []
    assert grid.box
    plain = replace(boxed_grid(grid.size, *grid.box), symbols=grid.symbols, first=grid.first)
    found = []
    for letter in rng.sample(grid.square_letters, rng.choice([1, 1, 2])):
        square = grid.square(letter)
        rule = lay(kind, plain, tuple(solution[cell] for cell in square.cells), rng)
        read = rule and kinds()[kind].read(node_of(rule.written(plain), Place("test")), square, Collector())
        if read and (parts := [part for part in read.parts(square) if _stands_free(read, part, grid, letter)]):
            stood = replace(read.with_parts(parts, square), square=letter)
            if stood.holds(
                square, solution
            ):  # cells are named as in the whole, and with some clues left out it may not
                found.append(stood)
    return found


def _stands_free(rule: Rule, part: Part, grid: Grid, letter: str) -> bool:
    """Does a mark of one grid not stand in a cell of another?"""
    collector = Collector()
    if rule.form is Form.EDGE:
        check_clues_free(rule.with_parts((part,), grid.square(letter)), grid, letter, Place("test"), collector)
    return not collector.found
