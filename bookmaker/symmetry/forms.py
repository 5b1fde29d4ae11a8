"""What a puzzle's rules ask, in forms that can be carried along with a move and compared.

In: a puzzle, and for each cell and each digit its image. Out: a set of forms. Two puzzles ask the same exactly if their
sets are equal, in whatever order and from whichever end their marks were typed. Houses of the grid itself count only
where they are regions: rows and columns stay rows and columns in every move.
"""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache
from hashlib import sha256
from typing import Any, TypeAlias, assert_never

from bookmaker.puzzle.bits import digits_in
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.problem import (
    Allowed,
    Automaton,
    Combination,
    Constraint,
    Count,
    Different,
    DifferentCount,
    Relation,
    Sum,
)

Form: TypeAlias = tuple[str, tuple[int, ...], tuple[Any, ...]]
"""A word for what is asked, the images of its cells, and its digits and numbers. Forms of one word can be ordered."""

Steps: TypeAlias = tuple[tuple[int, ...], ...]
"""For each state of an automaton the next one for each digit, as in `Automaton`."""

Words: TypeAlias = tuple[tuple[tuple[int, int, int], ...], ...]
"""For each place of a line its steps (from, digit, to) between numbered states; equal lines have equal numbers."""


def forms_of(puzzle: RuledPuzzle, cells: Sequence[int], digits: Sequence[int]) -> frozenset[Form]:
    """The forms of all the puzzle asks but its givens; `cells[c]` is the image of cell c, `digits[d]` of digit d."""
    grid = puzzle.grid
    forms: set[Form] = {("different", tuple(sorted(cells[c] for c in region)), ()) for region in grid.regions}
    for rule in puzzle.rules:
        for asked in rule.meaning(rule.laid_on(grid)):
            _add(asked, cells, tuple(digits), forms)
    return frozenset(forms)


def digest(forms: frozenset[Form]) -> str:
    """A short text for a set of forms: equal sets have equal texts, different ones different texts."""
    return _short(sorted(forms))


def _short(value: object) -> str:
    return sha256(repr(value).encode()).hexdigest()[:40]


def _add(asked: Constraint, cells: Sequence[int], digits: tuple[int, ...], forms: set[Form]) -> None:
    match asked:
        case Different(over):
            forms.add(("different", tuple(sorted(cells[c] for c in over)), ()))
        case Allowed(over, mask):
            allowed = _mapped(mask, digits)
            forms.update(("allowed", (cells[c],), (allowed,)) for c in over)
        case Combination(over, sets):
            masks = tuple(sorted(_mapped(mask, digits) for mask in sets))
            forms.add(("sets", tuple(sorted(cells[c] for c in over)), masks))
        case Count(over, mask, least, most):
            forms.add(("count", tuple(sorted(cells[c] for c in over)), (_mapped(mask, digits), least, most)))
        case DifferentCount(over, least, most):
            forms.add(("different digits", tuple(sorted(cells[c] for c in over)), (least, most)))
        case Relation(pairs, beside):
            onward, back = _tables(beside, digits)
            for a, b in pairs:
                one, other = cells[a], cells[b]
                forms.add(("pair", (one, other), onward) if one < other else ("pair", (other, one), back))
        case Sum(terms, least, most):
            forms.add(_sum(terms, least, most, cells, digits))
        case Automaton(over, steps, accept):
            line = tuple(cells[c] for c in over)
            line = tuple(sorted(line)) if _in_any_order(steps) else line
            if line > line[::-1] and (from_end := _read_back(len(line), steps, accept, digits)):
                forms.add(("line", line[::-1], (from_end,)))
            else:
                forms.add(("line", line, (_read(len(line), steps, accept, digits),)))
        case _ as never:
            assert_never(never)


MOST_STEPS = 10_000
"""Steps of an automaton read from the other end that are worked out; more come of clues on grids of ten and more digits
only."""

LAID_OUT = 40_000
"""Steps of an automaton, times the cells of its line, that are laid out cell by cell; more come of clues on grids of 16
and more digits only, and take half a second for each."""


@lru_cache(maxsize=1 << 14)
def _mapped(mask: int, digits: tuple[int, ...]) -> int:
    return sum(1 << digits[d] - 1 for d in digits_in(mask))


@lru_cache(maxsize=256)
def _tables(beside: tuple[int, ...], digits: tuple[int, ...]) -> tuple[tuple[int, ...], tuple[int, ...]]:
    """The table of a relation with its digits mapped, and the same seen from the other cell."""
    onward, back = [0] * len(digits), [0] * len(digits)
    for d in range(1, len(beside)):
        onward[digits[d]] = _mapped(beside[d], digits)
        for e in digits_in(beside[d]):
            back[digits[e]] |= 1 << digits[d] - 1
    return tuple(onward), tuple(back)


def _sum(
    terms: Sequence[tuple[int, int]], least: int, most: int, cells: Sequence[int], digits: tuple[int, ...]
) -> Form:
    """A sum stays a sum if digits stay, or are all counted from the other end; else it names the digits' worth."""
    factors: dict[int, int] = {}
    for cell, factor in terms:
        factors[cells[cell]] = factors.get(cells[cell], 0) + factor
    factors = {cell: factor for cell, factor in sorted(factors.items()) if factor}
    size = len(digits) - 1
    worth: tuple[int, ...] = ()
    if digits == (0, *range(size, 0, -1)):
        # Σ f·d = Σ f·(size + 1) − Σ f·image
        whole = (size + 1) * sum(factors.values())
        least, most = whole - most, whole - least
    elif digits != tuple(range(size + 1)):
        worth = digits
    if factors and next(iter(factors.values())) < 0:
        factors = {cell: -factor for cell, factor in factors.items()}
        least, most = -most, -least
    return "sum", tuple(factors), (tuple(factors.values()), least, most, worth)


@lru_cache(maxsize=1024)
def _in_any_order(steps: Steps) -> bool:
    """Do two digits lead to the same state whichever comes first? Then the line is a set of cells."""
    last = (-1,) * len(steps[0])
    table = (*steps, last)  # a refused digit leads to the last one
    digits = range(1, len(steps[0]))
    return all(table[row[a]][b] == table[row[b]][a] for row in steps for a in digits for b in digits if a < b)


@lru_cache(maxsize=1024)
def _read(length: int, steps: Steps, accept: frozenset[int], digits: tuple[int, ...]) -> str:
    """A short text for what an automaton accepts along a line, since tables of clues are large: alike for those that
    accept the same words of this length. A very large one is told by its own table; then only lines that are asked the
    same in the same way are known again."""
    if _large(length, steps):
        return _short(_renumbered(steps, accept, digits))
    return _short(_words(length, steps, accept, digits))


@lru_cache(maxsize=1024)
def _read_back(length: int, steps: Steps, accept: frozenset[int], digits: tuple[int, ...]) -> str:
    """The same for the line read from its other end. Empty where that would be too large: then the line is told as it
    is read, and only its twin that is typed from the other end is not known again."""
    if _large(length, steps):
        return ""
    back = _reversed(_words(length, steps, accept, digits))
    return _short(back) if back is not None else ""


def _large(length: int, steps: Steps) -> bool:
    return length * sum(after >= 0 for row in steps for after in row) > LAID_OUT


def _renumbered(steps: Steps, accept: frozenset[int], digits: tuple[int, ...]) -> tuple[Steps, tuple[int, ...]]:
    """The table and the accepting states, numbered as they are met by way of the images of the digits."""
    in_order = sorted(range(1, len(digits)), key=digits.__getitem__)
    number, met = {0: 0}, [0]
    table = []
    for at in met:
        row = []
        for after in (steps[at][digit] for digit in in_order):
            if after >= 0 and after not in number:
                number[after] = len(met)
                met.append(after)
            row.append(number.get(after, -1))
        table.append(tuple(row))
    return tuple(table), tuple(sorted(number[at] for at in accept if at in number))


def _words(length: int, steps: Steps, accept: frozenset[int], digits: tuple[int, ...]) -> Words:
    """The accepted words of one length as the smallest layered automaton."""
    reached: list[set[int]] = [{0}]
    for _ in range(length):
        reached.append({s for at in reached[-1] for s in steps[at][1:] if s >= 0})
    edges = [
        {(at, digits[d], steps[at][d]) for at in reached[i] for d in range(1, len(digits)) if steps[at][d] >= 0}
        for i in range(length)
    ]
    return _smallest(edges, reached[-1] & accept)


def _smallest(edges: Sequence[set[tuple[int, int, int]]], last: set[int]) -> Words:
    """States that accept the same rests become one, then are numbered in the order of their rests."""
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
        tuple(sorted((number, digit, to) for rest, number in kind.items() for digit, to in rest))
        for kind in reversed(kinds)
    )


def _reversed(words: Words) -> Words | None:
    """The same words read from the other end: steps turned round, then made deterministic and small again. None where
    that takes too many steps; they may double with every cell."""
    left = MOST_STEPS
    edges: list[set[tuple[int, int, int]]] = []
    here: dict[frozenset[int], int] = {frozenset({0}): 0}
    for layer in reversed(words):
        there: dict[frozenset[int], int] = {}
        made = set()
        into: dict[int, list[tuple[int, int]]] = {}
        for at, digit, to in layer:
            into.setdefault(to, []).append((digit, at))
        for states, number in here.items():
            targets: dict[int, set[int]] = {}
            for to in states:
                for digit, at in into.get(to, ()):
                    targets.setdefault(digit, set()).add(at)
            for digit, target in targets.items():
                made.add((number, digit, there.setdefault(frozenset(target), len(there))))
            left -= len(targets)
            if left < 0:
                return None
        edges.append(made)
        here = there
    return _smallest(edges, set(here.values()))
