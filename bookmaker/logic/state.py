"""A puzzle being solved by hand: what never changes (`Ground`) and the pencil marks so far (`State`).

In: a puzzle. Out: boards that techniques read and steps change. A board is a whole number with one bit per cell, as in
`puzzle/position.py`; unlike there, `State.boards` holds candidates of *empty* cells only, so that a digit already
written down never looks like an opening.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field
from functools import cached_property, lru_cache
from typing import Any

from bookmaker.logic.consequences import Consequences
from bookmaker.logic.mark_readings import Mark, mark_of
from bookmaker.logic.readers import Reader, readers_of
from bookmaker.puzzle.bits import board_of, cells_on, mask_of
from bookmaker.puzzle.grid import Grid, House, HouseRef
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.reasons import MarkRef
from bookmaker.rules import houses_of
from bookmaker.rules.common.contract import Deduction, Rule, RuledPuzzle
from bookmaker.solve.problem import Allowed, Combination, Constraint, Different, Relation


@dataclass(frozen=True, slots=True)
class Area:
    """A house that holds every digit, with its board. `box` tells the regions of the grid from lines and diagonals."""

    ref: HouseRef
    cells: tuple[int, ...]
    board: int
    box: bool


@dataclass(frozen=True, slots=True)
class Crossed:
    """Lines of a grid and those that cross them: which they are, and their boards."""

    base: tuple[HouseRef, ...]
    cover: tuple[HouseRef, ...]
    base_boards: tuple[int, ...]
    cover_boards: tuple[int, ...]


def crossed_lines(base: Sequence[House], cover: Sequence[House]) -> Crossed:
    """The same from the houses."""
    (refs, boards), (other_refs, other_boards) = (
        (tuple(house.ref for house in lines), tuple(board_of(house.cells) for house in lines))
        for lines in (base, cover)
    )
    return Crossed(refs, other_refs, boards, other_boards)


class LastCells(dict[int, list[tuple[int, Area]]]):
    """For a board, of the areas with one cell of it alone: this cell's board and the area. Kept, since a step changes
    the boards of few digits."""

    def __init__(self, areas: Iterable[Area]) -> None:
        super().__init__()
        self.areas = [(area.board, area) for area in areas]

    def __missing__(self, board: int) -> list[tuple[int, Area]]:
        self[board] = alone = [(x, area) for within, area in self.areas if (x := board & within) and not x & (x - 1)]
        return alone


@dataclass(frozen=True, slots=True)
class Asked:
    """A constraint that a rule puts on some cells."""

    constraint: Constraint
    rule: Rule


Look = Callable[[int], None]
"""Is told an effort, in the measure of the prover (`Meter.effort`)."""


def going_on(effort: int) -> None:
    """Nobody asks how long it takes."""


@dataclass(frozen=True)
class Ground:
    """What stays the same from the first step to the last."""

    puzzle: RuledPuzzle
    areas: tuple[Area, ...]
    asked: tuple[Asked, ...]
    peers: tuple[int, ...]
    look: Look = field(default=going_on, compare=False, repr=False)
    """Is told now and then what work was done, and may end it by raising."""

    @property
    def grid(self) -> Grid:
        """The puzzle's grid."""
        return self.puzzle.grid

    @property
    def rules(self) -> tuple[Rule, ...]:
        """The puzzle's rules."""
        return self.puzzle.rules

    @cached_property
    def alone_in_boxes(self) -> LastCells:
        """What stands alone in the regions of the grid, rectangular or not."""
        return LastCells(area for area in self.areas if area.box)

    @cached_property
    def alone_in_lines(self) -> LastCells:
        """What stands alone in rows, columns and the houses that rules add."""
        return LastCells(area for area in self.areas if not area.box)

    @cached_property
    def on_boards(self) -> dict[tuple[str, int], Any]:
        """What a technique, by its name, found on the board of a digit; kept, since few boards change."""
        return {}

    @cached_property
    def opened(self) -> dict[tuple[int, ...], Any]:
        """What could be written down at once, by the empty cells and the digits' boards."""
        return {}

    @cached_property
    def area_called(self) -> dict[HouseRef, Area]:
        """The area of each house."""
        return {area.ref: area for area in self.areas}

    @cached_property
    def areas_of(self) -> tuple[tuple[int, ...], ...]:
        """For each cell the indices of its areas."""
        homes: list[list[int]] = [[] for _ in self.grid.cells]
        for index, area in enumerate(self.areas):
            for cell in area.cells:
                homes[cell].append(index)
        return tuple(map(tuple, homes))

    @cached_property
    def everywhere(self) -> int:
        """The board of all cells."""
        return (1 << len(self.grid.cells)) - 1

    @cached_property
    def crossed(self) -> tuple[Crossed, ...]:
        """The rows and columns of each grid, and its columns and rows."""
        pairs = ((square.rows, square.columns) for square in self.grid.squares)
        return tuple(crossed_lines(*lines) for pair in pairs for lines in (pair, pair[::-1]))

    @cached_property
    def crossings(self) -> tuple[tuple[Area, Area, int], ...]:
        """Ordered pairs of areas that share at least two cells, with the board of those."""
        return tuple(
            (one, other, one.board & other.board)
            for one in self.areas
            for other in self.areas
            if one is not other and (one.board & other.board).bit_count() >= 2
        )

    @cached_property
    def area_boards(self) -> tuple[int, ...]:
        """The areas' boards."""
        return tuple(area.board for area in self.areas)

    @cached_property
    def boards_of(self) -> tuple[tuple[int, ...], ...]:
        """For each cell the boards of its areas."""
        return tuple(tuple(self.areas[index].board for index in indices) for indices in self.areas_of)

    @cached_property
    def marks(self) -> tuple[Mark, ...]:
        """The constraints that say more than that cells differ or what one cell allows."""
        return tuple(mark for asked in self.asked if (mark := mark_of(asked.constraint, asked.rule)))

    @cached_property
    def readers(self) -> tuple[Reader, ...]:
        """The same mark by mark, as a person reads them."""
        return readers_of(((asked.constraint, asked.rule) for asked in self.asked), self.reference)

    @cached_property
    def references(self) -> dict[Rule, tuple[MarkRef, ...]]:
        """How steps refer to the marks of each rule."""
        return {rule: rule.references(rule.laid_on(self.grid)) for rule in self.rules}

    def reference(self, rule: Rule, cells: Sequence[int]) -> MarkRef:
        """The mark of a rule that some cells belong to: the smallest that has them all, rather in this order (as clues
        at both ends of a line read it), else the rule as a whole."""

        def near(mark: MarkRef) -> tuple[int, bool]:
            return len(mark.cells), [cell for cell in mark.cells if cell in asked] != [*cells]

        asked = set(cells)
        holding = [mark for mark in self.references[rule] if asked <= set(mark.cells)]
        return min(holding, key=near, default=MarkRef.whole(rule.kind))

    @cached_property
    def cages(self) -> tuple[tuple[MarkRef, int, frozenset[int]], ...]:
        """Cages with a total, and lines that hold one of some sets: each with its board and its combinations."""
        return tuple(
            (self.reference(asked.rule, made.cells), board_of(made.cells), made.sets)
            for asked in self.asked
            if isinstance(made := asked.constraint, Combination)
        )

    def sees_all(self, board: int) -> int:
        """The board of cells that see every cell of a board."""
        seen = -1
        for cell in cells_on(board):
            seen &= self.peers[cell]
        return seen


@lru_cache(maxsize=2)
def ground_of(puzzle: RuledPuzzle, look: Look = going_on) -> Ground:
    """Houses without doubles, the rules' constraints, and which cells see each other. Kept, with all that was found on
    it, for as long as one puzzle is looked at: it is graded first, and then told."""
    grid = puzzle.grid
    regions = {frozenset(house.cells) for house in grid.region_houses}
    houses: dict[frozenset[int], House] = {}
    for house in houses_of(puzzle):
        houses.setdefault(frozenset(house.cells), house)
    areas = tuple(Area(h.ref, h.cells, board_of(key), key in regions) for key, h in houses.items())
    asked = tuple(Asked(made, rule) for rule in puzzle.rules for made in rule.constraints(rule.laid_on(grid)))
    groups = [area.board for area in areas]
    groups += [board_of(a.constraint.cells) for a in asked if isinstance(a.constraint, Different | Combination)]
    groups += [board_of(pair) for a in asked if isinstance(a.constraint, Relation) for pair in _differing(a.constraint)]
    peers = [0] * len(grid.cells)
    for group in groups:
        for cell in cells_on(group):
            peers[cell] |= group
    asked = tuple(a for a in asked if not (isinstance(a.constraint, Relation) and _only_differ(a.constraint, grid)))
    return Ground(puzzle, areas, asked, tuple(board & ~(1 << cell) for cell, board in enumerate(peers)), look)


def _differing(relation: Relation) -> tuple[tuple[int, int], ...]:
    """Its pairs of cells, if no digit may stand beside itself: such cells see each other."""
    same = any(mask >> (digit - 1) & 1 for digit, mask in enumerate(relation.allowed) if digit)
    return () if same else relation.pairs


def _only_differ(relation: Relation, grid: Grid) -> bool:
    """Does it ask nothing but that digits differ? Then seeing each other says it all."""
    return all(relation.allowed[digit] == grid.all_digits & ~(1 << (digit - 1)) for digit in grid.digits)


class State:
    """Pencil marks. Changed in place by `place` and `remove`; techniques only read."""

    __slots__ = ("_deduced", "_follows", "boards", "empty", "ground", "stood")

    def __init__(self, ground: Ground, boards: list[int], stood: list[int], empty: int) -> None:
        self.ground = ground
        self.boards = boards
        """`boards[d]`: empty cells where digit d may still stand; member 0 unused."""
        self.stood = stood
        """`stood[d]`: cells where digit d is written; member 0 unused."""
        self.empty = empty
        """The board of empty cells."""
        self._deduced: tuple[Position, list[Deduction]] | None = None
        self._follows: Consequences | None = None

    def copy(self) -> State:
        """The same pencil marks on a sheet of their own."""
        return State(self.ground, self.boards[:], self.stood[:], self.empty)

    def place(self, cell: int, digit: int) -> None:
        """Write a digit down and strike it from all cells that see it."""
        boards, bit = self.boards, 1 << cell
        for d in range(1, len(boards)):
            boards[d] &= ~bit
        boards[digit] &= ~self.ground.peers[cell]
        self.empty &= ~bit
        self.stood[digit] |= bit

    def remove(self, removed: Iterable[Candidate]) -> None:
        """Strike candidates (cell, digit)."""
        for cell, digit in removed:
            self.boards[digit] &= ~(1 << cell)

    def masks(self) -> list[int]:
        """The candidates of every empty cell as a mask (digit d is bit d - 1); 0 for a cell that is filled."""
        masks = [0] * len(self.ground.peers)
        for digit in range(1, len(self.boards)):
            board, bit = self.boards[digit], 1 << (digit - 1)
            while board:
                low = board & -board
                masks[low.bit_length() - 1] |= bit
                board ^= low
        return masks

    def held(self, board: int) -> int:
        """The digits written on a board, as a mask."""
        return mask_of(digit for digit in range(1, len(self.stood)) if self.stood[digit] & board)

    def present(self, pairs: Iterable[Candidate]) -> tuple[Candidate, ...]:
        """Those of the candidates (cell, digit) that still stand."""
        return tuple((cell, digit) for cell, digit in pairs if self.boards[digit] >> cell & 1)

    def with_written(self) -> list[int]:
        """The boards with the digits that are written."""
        return [may | stood for may, stood in zip(self.boards, self.stood, strict=True)]

    def position(self) -> Position:
        """The position as the rules read it: a written digit is the only candidate of its cell."""
        return Position(self.ground.grid, tuple(self.with_written()), self.ground.everywhere & ~self.empty)

    def deductions(self) -> list[Deduction]:
        """What the rules say of the position; remembered until the position changes."""
        position = self.position()
        if self._deduced is None or self._deduced[0] != position:
            grid = self.ground.grid
            seen = ((rule, position.on(rule.laid_on(grid))) for rule in self.ground.rules)
            self._deduced = position, [made for rule, there in seen for made in rule.deductions(there)]
        return self._deduced[1]

    def consequences(self) -> Consequences:
        """What goes at once with each candidate; remembered until the position changes."""
        boards, filled = self.with_written(), self.ground.everywhere & ~self.empty
        if self._follows is None or self._follows.boards != tuple(boards):
            self._follows = Consequences(boards, filled, self.ground.peers, self.ground.readers)
        return self._follows


def start(ground: Ground) -> State:
    """The givens written down, and the marks that speak of one cell alone (even, odd, …) pencilled in."""
    digits = ground.grid.digits
    state = State(ground, [0] + [ground.everywhere] * len(digits), [0] * (len(digits) + 1), ground.everywhere)
    for asked in ground.asked:
        if isinstance(asked.constraint, Allowed):
            board = board_of(asked.constraint.cells)
            for digit in digits:
                if not asked.constraint.digits >> (digit - 1) & 1:
                    state.boards[digit] &= ~board
    for cell, digit in enumerate(ground.puzzle.givens):
        if digit:
            state.place(cell, digit)
    return state
