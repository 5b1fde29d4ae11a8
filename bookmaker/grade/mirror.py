"""Mirror structure: a turn or reflection of the grid and a relabelling of the digits that map a puzzle to itself.

In: a puzzle and its solution. Out: `Mirror`s. Where there is one, every deduction has a twin: what holds of a cell and
a digit holds of their images.

Since the solution is the only one, it must map to itself, and so it says which digit becomes which. What remains is to
compare givens and constraints, each brought to a form of its own that does not depend on how it was written.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass
from functools import cache

from bookmaker.puzzle.bits import digits_in, mask_of
from bookmaker.puzzle.grid import Grid
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.problem import Allowed, Automaton, Combination, Constraint, Count, Different, Relation, Sum
from bookmaker.solve.verdict import Solution

Turn = Callable[[int, int, int], tuple[int, int]]
"""New row and column of a row and column on a grid of a size."""

TURNS: dict[str, Turn] = {
    "half": lambda r, c, n: (n - 1 - r, n - 1 - c),
    "left-right": lambda r, c, n: (r, n - 1 - c),
    "top-bottom": lambda r, c, n: (n - 1 - r, c),
    "falling": lambda r, c, n: (c, r),
    "rising": lambda r, c, n: (n - 1 - c, n - 1 - r),
    "quarter": lambda r, c, n: (c, n - 1 - r),
}
"""The symmetries of a square: a half turn, reflections from side to side and in a diagonal, named by which way that
runs from the left, and a quarter turn, which stands for both directions. `phrases` has their words."""


@dataclass(frozen=True, slots=True)
class Mirror:
    """`cells[c]` is the image of cell c, `digits[d]` that of digit d (member 0 is 0)."""

    name: str
    cells: tuple[int, ...]
    digits: tuple[int, ...]

    @property
    def swapped(self) -> tuple[tuple[int, ...], ...]:
        """The cycles of digits that change, each from its smallest digit."""
        cycles, seen = [], set()
        for digit in range(1, len(self.digits)):
            cycle = []
            while digit not in seen:
                seen.add(digit)
                cycle.append(digit)
                digit = self.digits[digit]
            if len(cycle) > 1:
                cycles.append(tuple(cycle))
        return tuple(cycles)


def mirrors(puzzle: RuledPuzzle, solution: Solution) -> tuple[Mirror, ...]:
    """All of them, in the order of `TURNS`."""
    grid = puzzle.grid
    found = []
    asked: set[Hashable] | None = None
    for name in TURNS:
        cells = _images(name, grid.size)
        digits = _relabelling(grid, solution, cells)
        if digits is None or any(bool(puzzle.givens[cell]) != bool(puzzle.givens[cells[cell]]) for cell in grid.cells):
            continue
        constraints = problem_of(puzzle, with_givens=False).constraints
        if asked is None:
            asked = _forms(constraints, tuple(grid.cells), tuple(range(grid.size + 1)))
        if _forms(constraints, cells, digits) == asked:
            found.append(Mirror(name, cells, digits))
    return tuple(found)


@cache
def _images(name: str, size: int) -> tuple[int, ...]:
    """The image of each cell under a turn."""
    turned = (TURNS[name](row, column, size) for row in range(size) for column in range(size))
    return tuple(row * size + column for row, column in turned)


def _relabelling(grid: Grid, solution: Solution, cells: Sequence[int]) -> tuple[int, ...] | None:
    digits = [0] * (grid.size + 1)
    for cell, image in enumerate(cells):
        digit, became = solution[cell], solution[image]
        if digits[digit] not in (0, became):
            return None
        digits[digit] = became
    return tuple(digits)


def _forms(constraints: Sequence[Constraint], cells: Sequence[int], digits: Sequence[int]) -> set[Hashable]:
    """The constraints with cells and digits mapped, each in a form that two ways of writing it share."""
    forms: set[Hashable] = set()
    for constraint in constraints:
        match constraint:
            case Different(over):
                forms.add(("different", frozenset(cells[c] for c in over)))
            case Allowed(over, mask):
                forms |= {("allowed", cells[c], _mapped(mask, digits)) for c in over}
            case Combination(over, sets):
                forms.add(("sets", frozenset(cells[c] for c in over), frozenset(_mapped(s, digits) for s in sets)))
            case Count(over, mask, least, most):
                forms.add(("count", tuple(sorted(cells[c] for c in over)), _mapped(mask, digits), least, most))
            case Relation(pairs, beside):
                keeps = frozenset((digits[d], digits[e]) for d in range(1, len(beside)) for e in digits_in(beside[d]))
                turned = frozenset((e, d) for d, e in keeps)
                for a, b in pairs:
                    one, other = cells[a], cells[b]
                    forms.add(("pair", one, other, keeps) if one < other else ("pair", other, one, turned))
            case Sum(terms, least, most):
                forms.add(_sum_form(terms, least, most, cells, digits))
            case Automaton(over, steps, accept):
                line = tuple(cells[c] for c in over)
                words = _layers(len(line), steps, accept, digits)
                forms.add(("line", line, words) if line <= line[::-1] else ("line", line[::-1], _reversed(words)))
    return forms


def _mapped(mask: int, digits: Sequence[int]) -> int:
    return mask_of(digits[d] for d in digits_in(mask))


def _sum_form(
    terms: Sequence[tuple[int, int]], least: int, most: int, cells: Sequence[int], digits: Sequence[int]
) -> Hashable:
    """A sum keeps its meaning if digits stay, or are all counted from the other end; else it maps to no sum."""
    factors: dict[int, int] = {}
    for cell, factor in terms:
        factors[cells[cell]] = factors.get(cells[cell], 0) + factor
    size = len(digits) - 1
    if all(digits[d] == size + 1 - d for d in range(1, size + 1)):
        # Σ f·d = Σ f·(size + 1) − Σ f·image
        whole = (size + 1) * sum(factors.values())
        least, most = whole - most, whole - least
    elif list(digits) != list(range(size + 1)):
        return ("no sum",)
    if tuple(sorted(factors.items())) > tuple(sorted((c, -f) for c, f in factors.items())):
        factors = {cell: -factor for cell, factor in factors.items()}
        least, most = -most, -least
    return ("sum", tuple(sorted(factors.items())), least, most)


Layers = tuple[frozenset[tuple[int, int, int]], ...]
"""For each place of a line its steps (from, digit, to) between numbered states; equal lines have equal numbers."""


def _layers(length: int, steps: Sequence[Sequence[int]], accept: frozenset[int], digits: Sequence[int]) -> Layers:
    """The accepted words of one length as the smallest layered automaton."""
    reached: list[set[int]] = [{0}]
    for _ in range(length):
        reached.append({s for at in reached[-1] for s in steps[at][1:] if s >= 0})
    edges = [
        {(at, digits[d], steps[at][d]) for at in reached[i] for d in range(1, len(digits)) if steps[at][d] >= 0}
        for i in range(length)
    ]
    return _smallest(edges, reached[-1] & accept)


def _smallest(edges: Sequence[set[tuple[int, int, int]]], last: set[int]) -> Layers:
    """States that accept the same rests become one, then are numbered in the order in which they are first met."""
    merged: dict[int, int] = dict.fromkeys(last, 0)
    kinds: list[dict[frozenset[tuple[int, int]], int]] = []
    for layer in reversed(edges):
        rests: dict[int, set[tuple[int, int]]] = {}
        for at, digit, to in layer:
            if to in merged:
                rests.setdefault(at, set()).add((digit, merged[to]))
        kind: dict[frozenset[tuple[int, int]], int] = {}
        for rest in sorted(map(sorted, rests.values())):
            kind.setdefault(frozenset(rest), len(kind))
        merged = {at: kind[frozenset(rest)] for at, rest in rests.items()}
        kinds.append(kind)
    return tuple(
        frozenset((number, digit, to) for rest, number in kind.items() for digit, to in rest)
        for kind in reversed(kinds)
    )


def _reversed(words: Layers) -> Layers:
    """The same words read from the other end: steps turned round, then made deterministic and small again."""
    edges: list[set[tuple[int, int, int]]] = []
    here: dict[frozenset[int], int] = {frozenset({0}): 0}
    for layer in reversed(words):
        there: dict[frozenset[int], int] = {}
        made = set()
        for states, number in here.items():
            for digit in {d for _, d, to in layer if to in states}:
                target = frozenset(at for at, d, to in layer if d == digit and to in states)
                made.add((number, digit, there.setdefault(target, len(there))))
        edges.append(made)
        here = there
    return _smallest(edges, set(here.values()))
