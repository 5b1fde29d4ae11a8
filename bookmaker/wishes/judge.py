"""A puzzle held against a wish.

In: a wish, and a puzzle with its solution and grade. Out: what is amiss, each with how far it is off, so that a search
knows which of two puzzles is nearer; nothing where the wish is met.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from math import floor

from bookmaker.grade.automorphism import automorphisms
from bookmaker.grade.bands import figure
from bookmaker.grade.bottlenecks import bottlenecks_of
from bookmaker.grade.solve_path import Grade, SolvePath
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.wishes.span import Span
from bookmaker.wishes.techniques import SINGLES, key_of, name_of, rung_of
from bookmaker.wishes.wish import Wish

MOST_BOTTLENECKS = 9
"""So many are counted at most."""


@dataclass(frozen=True, slots=True)
class Amiss:
    """Something that is not as wished.

    `what` is a word for it, `found` what it is instead, `off` by how much it differs; `way` is 1 if the puzzle is too
    hard, -1 if it is too easy, 0 where that is no help.
    """

    what: str
    found: str
    off: float
    way: int = 0


def amiss(wish: Wish, puzzle: RuledPuzzle, solution: Solution, grade: Grade) -> list[Amiss]:
    """Everything that is not as wished."""
    return list(_amiss(wish, puzzle, solution, grade))


def distance(found: list[Amiss]) -> float:
    """How far a puzzle is from the wish; 0 where it is met."""
    return sum(1 + one.off for one in found)


def _amiss(wish: Wish, puzzle: RuledPuzzle, solution: Solution, grade: Grade) -> Iterator[Amiss]:
    yield from _too_hard(wish, puzzle, grade)
    yield from _hardness(wish, puzzle, grade)
    met = Counter(key_of(step.reason) for step in grade.path.steps)
    for names, times in wish.want.items():
        came = sum(met[name] for name in names)
        if came not in times:
            # A path that climbs as high up the ladder is nearer to it than one that does not.
            short = max(rung_of(names) - max((step.rung for step in grade.path.steps), default=0), 0)
            yield Amiss(
                "wanted", f"{name_of(names[0])} {_times(came)}", times.distance(came) + short / 10, -1 if short else 0
            )
    if wish.givens and puzzle.given_count not in wish.givens:
        yield Amiss("givens", f"{puzzle.given_count} givens", wish.givens.distance(puzzle.given_count))
    if wish.openings and _openings(grade.path) not in wish.openings:
        found = _openings(grade.path)
        yield Amiss(
            "openings", f"{found} openings", wish.openings.distance(found), 1 if found < wish.openings.least else -1
        )
    if wish.bottlenecks:
        narrow = _bottlenecks(wish, grade.path, len(puzzle.grid.cells))
        if narrow not in wish.bottlenecks:
            yield Amiss("bottlenecks", f"{narrow} bottlenecks", wish.bottlenecks.distance(narrow))
    if wish.mirrored and not automorphisms(puzzle, solution):
        yield Amiss("mirrored", "not mirrored", 1.0)


def _too_hard(wish: Wish, puzzle: RuledPuzzle, grade: Grade) -> Iterator[Amiss]:
    """What must not come in the path, however hard the puzzle may be."""
    path = grade.path
    met = Counter(key_of(step.reason) for step in path.steps)
    if not path.reached:
        yield Amiss("logic", "logic does not reach the end", 3.0, 1)
    plain = {*SINGLES, *(rule.kind for rule in puzzle.rules)}
    more = sum(count for name, count in met.items() if name not in plain)
    if wish.singles_only and more:
        yield Amiss("singles", "more than singles", float(more), 1)
    for technique in sorted(wish.refused):
        if met[technique]:
            yield Amiss("refused", f"{name_of(technique)} {_times(met[technique])}", float(met[technique]), 1)


def _hardness(wish: Wish, puzzle: RuledPuzzle, grade: Grade) -> Iterator[Amiss]:
    hardness = grade.difficulty
    if grade.band not in wish.bands:
        edges = Span(wish.bands.least, wish.bands.most + 0.999)
        way = 1 if grade.band > wish.bands.most else -1
        yield Amiss("band", BAND_NAMES[grade.band - 1], edges.distance(hardness), way)
    if wish.difficulty and floor(10 * hardness) / 10 not in wish.difficulty:
        way = 1 if hardness > wish.difficulty.most else -1
        yield Amiss("difficulty", f"difficulty {figure(hardness)}", wish.difficulty.distance(hardness), way)


def _times(count: int) -> str:
    return {0: "never", 1: "once", 2: "twice"}.get(count, f"{count} times")


def _openings(path: SolvePath) -> int:
    """Digits that can be placed at the start; 0 where something must be struck first."""
    first = path.steps[0] if path.steps else None
    return first.openings if first and first.placed else 0


def _bottlenecks(wish: Wish, path: SolvePath, cells: int) -> int:
    thirds = {"early": (0.0, 1 / 3), "middle": (1 / 3, 2 / 3), "late": (2 / 3, 1.0), "": (0.0, 1.0)}
    low, high = thirds[wish.where]
    points = bottlenecks_of(path, cells, MOST_BOTTLENECKS)
    return sum(low <= point.first / len(path.steps) <= high for point in points)
