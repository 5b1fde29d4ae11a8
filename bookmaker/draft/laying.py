"""Marks laid on a grid by chance: as shapes on an empty one, for which a solution is then sought, or read off one.

In: a rule before it has marks, how many are wanted and of how many cells, how they are arranged, a random source. Out:
the rule with marks that its own reader would accept; or None where luck fails. Shapes are kept clear of each other;
marks on borders, corners and outside the grid share no place.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import count, islice, pairwise
from random import Random

from bookmaker.changes.arrangement import Arrangement, same_mark
from bookmaker.changes.slips import as_read
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.area import LETTERS
from bookmaker.rules.common.chain import ChainRule
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.parts import Form, Part
from bookmaker.solve.verdict import Solution
from bookmaker.wishes.wish import Amount, RuleWish

TRIES = 80
"""Attempts at a mark before fewer have to do, for each mark that is wanted."""

_SHARING = (Form.BORDER, Form.CORNER, Form.EDGE)
"""Marks that may share cells with others."""

Cells = tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Ground:
    """What marks are laid on: a grid, its solution if there is one already, and how they are arranged.

    With `reversing`, the image of a mark that is told from one end is told from the other: so it must be where the
    digits of images are counted from the other end.
    """

    grid: Grid
    arranged: Arrangement
    solution: Solution | None = None
    reversing: bool = False


def drawn_first(rule: Rule) -> bool:
    """Are its marks shapes that a random solution hardly ever keeps, so that a solution is sought for them?"""
    return rule.form in (Form.CHAIN, Form.TWINS) or (rule.form is Form.AREA and not rule.figures)


def is_sound(rule: Rule, grid: Grid) -> bool:
    """Would a manifest that says this be accepted?"""
    return as_read(rule, grid) is not None


def lay(
    rule: Rule, ground: Ground, amount: Amount, rng: Random, taken: set[int] | None = None, least: int | None = None
) -> Rule | None:
    """The rule with marks; shapes avoid the cells `taken`, to which theirs are added. None if there is no room for
    `least` of them, or for as many as the amount says at least."""
    if rule.form is Form.WHOLE:
        return rule
    if rule.marks_all:
        return _all_there_are(rule, ground, rng)
    return _laid(rule, ground, amount, rng, set() if taken is None else taken, None, least)


def lay_shapes(wanted: RuleWish, ground: Ground, rng: Random, taken: set[int]) -> Rule | None:
    """The same with shapes that are given, moved and turned."""
    assert wanted.amount is not None
    seeds = (_moved(rng.choice(wanted.shapes), ground.grid, rng) for _ in count())
    return _laid(wanted.rule, ground, wanted.amount, rng, taken, seeds, None)


def lay_at(rule: Rule, ground: Ground, places: Sequence[Cells], rng: Random) -> Rule | None:
    """The rule with a mark at each of these places, read off the solution; None where one has none that is true."""
    assert ground.solution is not None
    found = [list(rule.read_off(cells, ground.grid, ground.solution, rng)) for cells in places]
    made = rule.with_parts([rng.choice(true) for true in found if true], ground.grid)
    return made if all(found) and is_sound(made, ground.grid) else None


def _laid(
    rule: Rule,
    ground: Ground,
    amount: Amount,
    rng: Random,
    taken: set[int],
    seeds: Iterator[Cells] | None,
    least: int | None,
) -> Rule | None:
    parts: list[Part] = []
    places: set[object] = set()
    wanted = rng.randint(amount.least, amount.most)
    for cells in islice(seeds or _seeds(rule, ground, amount, rng, taken), TRIES * wanted):
        if len(parts) >= wanted:
            break
        orbit = _orbit(rule, ground, cells, rng) if cells else []
        here = {frozenset(part.cells) for part in orbit}
        covered = [cell for part in orbit for cell in part.cells]
        free = len(here) == len(orbit) and here.isdisjoint(places)
        if rule.form is Form.CHAIN:
            free = free and not lines_cross([part.cells for part in (*parts, *orbit)], ground.grid)
        if rule.form not in _SHARING:
            free = free and len(set(covered)) == len(covered) and taken.isdisjoint(covered)
        if not orbit or not free or len(parts) + len(orbit) > amount.most:
            continue
        more = _lettered(rule, [*parts, *orbit])
        if is_sound(rule.with_parts(more, ground.grid), ground.grid):
            parts = more
            places |= here
            taken.update(covered if rule.form not in _SHARING else ())
    enough = len(parts) >= (amount.least if least is None else least)
    return rule.with_parts(parts, ground.grid) if parts and enough else None


def lines_cross(chains: Sequence[Cells], grid: Grid) -> bool:
    """Do chains cross between cells, at a corner where one goes from the upper left and one from the upper right?"""
    steps = {frozenset(step) for chain in chains for step in pairwise(chain)}
    slanting = (step for chain in chains for step in pairwise(chain) if step[1] not in grid.orthogonal(step[0]))
    across = (
        frozenset({grid.at(grid.row(one), grid.column(other)), grid.at(grid.row(other), grid.column(one))})
        for one, other in slanting
    )
    return any(step in steps for step in across)


def _moved(shape: Cells, grid: Grid, rng: Random) -> Cells:
    """A shape turned or mirrored, and moved to a place by chance."""
    at = [(grid.row(cell), grid.column(cell)) for cell in shape]
    if rng.random() < 0.5:
        at = [(column, row) for row, column in at]
    down, across = rng.choice((1, -1)), rng.choice((1, -1))
    at = [(down * row, across * column) for row, column in at]
    rows, columns = [row for row, _ in at], [column for _, column in at]
    room = grid.height - (max(rows) - min(rows)), grid.width - (max(columns) - min(columns))
    if min(room) < 1:
        return ()
    top, left = rng.randrange(room[0]) - min(rows), rng.randrange(room[1]) - min(columns)
    there = [grid.at(row + top, column + left) for row, column in at]
    return tuple(cell for cell in there if cell is not None) if None not in there else ()


def _all_there_are(rule: Rule, ground: Ground, rng: Random) -> Rule | None:
    """A mark wherever one is true."""
    assert ground.solution is not None, "marks that stand wherever they can are read off a solution"
    there = (list(rule.read_off(place, ground.grid, ground.solution, rng)) for place in rule.places(ground.grid))
    parts = [rng.choice(found) for found in there if found]
    return rule.with_parts(parts, ground.grid) if parts else None


def _orbit(rule: Rule, ground: Ground, cells: Cells, rng: Random) -> list[Part]:
    """A mark at these cells with its images; empty where one of them would not be true."""
    images: dict[object, Part] = {}
    for number, image in enumerate(ground.arranged.images(cells)):
        told = image[::-1] if ground.reversing and number and rule.directed and not rule.figures else image
        part = Part(told, "", _divided(rule, told))
        if ground.solution is not None:
            true = list(rule.read_off(told, ground.grid, ground.solution, rng))
            if not true:
                return []
            part = rng.choice(true)
        images.setdefault(same_mark(part, rule), part)
    return list(images.values())


def _divided(rule: Rule, cells: Cells) -> tuple[int, ...]:
    """How the cells of a shape without a solution are divided: an arrow has a circle of one cell, clones are two."""
    if rule.form is Form.TWINS:
        return (2,)
    return (1,) if rule.form is Form.CHAIN and not isinstance(rule, ChainRule) else ()


def _lettered(rule: Rule, parts: Sequence[Part]) -> list[Part]:
    """Clones are told apart by letters."""
    if rule.form is not Form.TWINS:
        return list(parts)
    return [replace(part, name=letter) for part, letter in zip(parts, LETTERS.upper(), strict=False)]


def _seeds(rule: Rule, ground: Ground, amount: Amount, rng: Random, taken: set[int]) -> Iterator[Cells]:
    """Cells for marks, in random order; endless where there are more than can be listed."""
    if places := rule.places(ground.grid):
        several = rule.usual_cells != (1, 1)
        fitting = [cells for cells in places if not several or amount.shortest <= len(cells) <= amount.longest]
        yield from rng.sample(fitting, len(fitting))
        return
    copies = list(_copies(ground, amount, rng)) if rule.form is Form.TWINS and ground.solution is not None else None
    if copies is not None:
        yield from copies
        return
    while True:
        size = rng.randint(amount.shortest, amount.longest)
        match rule.form:
            case Form.CHAIN:
                cells = _chain(rule, ground, rng, size, taken)
            case Form.AREA:
                cells = _area(ground, rng, size, taken, rule.digits_differ)
            case _:
                cells = _twins(ground, rng, size, taken)
        yield cells


def _chain(rule: Rule, ground: Ground, rng: Random, size: int, taken: set[int]) -> Cells:
    """A walk through free touching cells, from one end or from the middle; empty if it gets stuck.

    Two steps in three go along a row or column, which keeps chains easy to follow.
    """
    grid, solution = ground.grid, ground.solution
    free = [cell for cell in grid.cells if cell not in taken]
    if not free:
        return ()
    chain = [rng.choice(free)]
    middle = solution is not None and isinstance(rule, ChainRule) and rule.from_the_middle
    while len(chain) < size:
        slanting = rng.random() < 0.35
        ends = (chain[0], chain[-1]) if middle and len(chain) + 2 <= size + 1 else (chain[-1],)
        longer = []
        for more in _steps(grid, ends, slanting):
            grown = [more[0], *chain, more[1]] if len(more) == 2 else [*chain, *more]
            if len(set(grown)) == len(grown) and taken.isdisjoint(more) and _leads_on(rule, grown, ground):
                longer.append(grown)
        if not longer:
            return ()
        chain = rng.choice([grown for grown in longer if _is_tidy(grown, grid)] or longer)
    return tuple(chain)


def _is_tidy(chain: Sequence[int], grid: Grid) -> bool:
    """Does a chain keep clear of itself, so that no cell lies beside an earlier one but the last?"""
    return all(
        chain[later] not in grid.orthogonal(chain[earlier])
        for later in range(2, len(chain))
        for earlier in range(later - 1)
    )


def _steps(grid: Grid, ends: Sequence[int], slanting: bool) -> list[Cells]:
    near = [_touching(grid)[end] if slanting else grid.orthogonal(end) for end in ends]
    return [(one,) for one in near[0]] if len(near) == 1 else [(one, other) for one in near[0] for other in near[1]]


def _leads_on(rule: Rule, chain: Sequence[int], ground: Ground) -> bool:
    solution = ground.solution
    if solution is None or not isinstance(rule, ChainRule):
        return True
    return rule.leads_on([solution[cell] for cell in chain], ground.grid)


@lru_cache(maxsize=16)
def _touching(grid: Grid) -> tuple[Cells, ...]:
    return tuple(tuple(other for other in grid.cells if grid.touching(cell, other)) for cell in grid.cells)


def _area(ground: Ground, rng: Random, size: int, taken: set[int], differ: bool = True) -> Cells:
    """Free cells that hang together, whose digits `differ` if there is a solution; empty if it gets stuck."""
    grid, solution = ground.grid, ground.solution
    free = [cell for cell in grid.cells if cell not in taken]
    area = [rng.choice(free)] if free else []
    while area and len(area) < size:
        digits = {solution[cell] for cell in area} if solution and differ else set[int]()
        edge = {near for cell in area for near in grid.orthogonal(cell)}.difference(area, taken)
        ways = sorted(cell for cell in edge if not solution or solution[cell] not in digits)
        if not ways:
            return ()
        area.append(rng.choice(ways))
    return tuple(sorted(area))


def _twins(ground: Ground, rng: Random, size: int, taken: set[int]) -> Cells:
    """An area and a copy of it somewhere else, one after the other; empty if there is no room."""
    grid = ground.grid
    area = _area(ground, rng, size, taken)
    down, across = rng.randint(1, grid.size - 1), rng.randint(1 - grid.size, grid.size - 1)
    moved = [(grid.row(cell) + down, grid.column(cell) + across) for cell in area]
    copy = tuple(grid.cell(*at) for at in moved if grid.inside(*at))
    return area + copy if len(copy) == len(area) and taken.isdisjoint(copy) else ()


def _copies(ground: Ground, amount: Amount, rng: Random) -> Iterator[Cells]:
    """Areas that the solution happens to hold twice, each with its copy."""
    grid, solution = ground.grid, ground.solution
    assert solution is not None
    moves = [(down, across) for down in range(1, grid.size) for across in range(1 - grid.size, grid.size) if across]
    for down, across in rng.sample(moves, len(moves)):
        moved = {cell: grid.at(grid.row(cell) + down, grid.column(cell) + across) for cell in grid.cells}
        twins = {cell: to for cell, to in moved.items() if to is not None and solution[cell] == solution[to]}
        for area in grid.pieces(twins):
            if amount.shortest <= len(area) <= amount.longest:
                yield area + tuple(twins[cell] for cell in area)
