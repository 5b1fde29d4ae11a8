"""Difficulty: one number for every puzzle, from 1 to just under 6, by cut points of the effort that are kept as data.

The digit before the point is the band, from 1 to 5; what follows says how far into it. The cut points belong to
families of puzzles, and are never re-cut for a book. A family is a kind of constraint, not of mark, so that a new rule
kind finds its place by itself.

The *level* of a puzzle is b where the effort reaches the cut at which band b begins, and between two cuts goes with the
logarithm of the effort; below the first and above the last it goes on as steeply as in the band beside. The difficulty
is the level, but for the ends, which are bent so that they stay between 1 and 6:

    difficulty = 1 + exp(level - 2)     below level 2
               = level                  from 2 to 5
               = 6 - exp(5 - level)     above level 5

It rises with the effort without a step or a kink, and is b exactly where band b begins. What the cuts rest on, family
by family:

**Classics**: people's times. Bands 2 to 5 begin at the efforts whose puzzles took the people who finished them 5, 8, 13
and 21 minutes on average, so that each band asks for about 1.6 times the minutes of the one before. That is a
regression of log time on log effort over 800 published puzzles (see `effort.py` for the source); one puzzle's time lies
within a factor of 1.4 of it for two in three. Few of the puzzles ask for more than singles: the lower three cuts are
sure to about a tenth, the last, above which only two of the 800 lie, is little more than the line drawn on.

**Relations** and **sums**: nobody's times, but what times support in classics. Three things about a path are told
without the weights of the effort: how scarce openings are (cells left, by openings), how many constraints a step holds
together when no digit can be placed, and how far it must think ahead (both by its rung). On the published times their
weights are fitted, and on a corpus of each family (thermometers; cages) the cuts are put where the same time is to be
expected. They come out within a sixth of those of the classics, which is as sure as they are if a person reads a mark
as readily as a house. That is assumed, not known; a club that keeps its own times can mend it (`bookmaker times`).

`tests/benchmarks/grade_bands.py` prints the cuts again whenever the ladder or the formula has changed.
"""

from __future__ import annotations

from collections.abc import Mapping
from math import exp, floor, log

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.problem import Automaton, Combination, Count, DifferentCount, Relation, Sum

VERSION = 7
"""Counted up whenever a cut point or the formula of the effort changes."""

Cuts = tuple[float, float, float, float]

CUTS: Mapping[str, Cuts] = {
    "classic": (50.0, 120.0, 275.0, 630.0),
    "relations": (45.0, 110.0, 265.0, 645.0),
    "sums": (45.0, 100.0, 235.0, 545.0),
}
"""Efforts from which bands 2 to 5 begin."""

FAMILIES = tuple(CUTS)

MINUTES = (5, 8, 13, 21)
"""The mean times of published classics at these cuts."""

PER_BAND = log(MINUTES[-1] / MINUTES[0]) / (len(MINUTES) - 1)
"""The natural logarithm of how many times the minutes a band more asks for."""

LEAST = 1e-6
"""No difficulty comes nearer to 6."""


def family_of(puzzle: RuledPuzzle) -> str:
    """“sums” where a rule adds up or counts, “relations” where rules compare neighbours, else “classic”."""
    asked = [made for rule in puzzle.rules for made in rule.constraints(rule.laid_on(puzzle.grid))]
    if any(isinstance(made, Combination | Sum | Count | DifferentCount | Automaton) for made in asked):
        return "sums"
    return "relations" if any(isinstance(made, Relation) for made in asked) else "classic"


def counted_effort(effort: float, grid: Grid) -> float:
    """The part of an effort that cuts are for. Where grids overlap it is that for one of them, as many cells as it has:
    five easy grids take five times as long, and are no harder."""
    return effort * grid.size**2 / len(grid.cells)


def difficulty_of(effort: float, family: str) -> float:
    """From 1 to just under 6, as above; 1 for no effort at all."""
    return bounded(level_of(effort, family)) if effort > 0 else 1.0


def level_of(effort: float, family: str) -> float:
    """The level of an effort above 0, as above."""
    cuts = CUTS[family]
    at = min(max(sum(effort >= cut for cut in cuts), 1), len(cuts) - 1)
    low, high = cuts[at - 1 : at + 1]
    return at + 1 + (log(effort) - log(low)) / (log(high) - log(low))


def bounded(level: float) -> float:
    """The difficulty of a level."""
    if level < 2:
        return 1 + exp(level - 2)
    return level if level <= 5 else 6 - max(exp(5 - level), LEAST)


def level(difficulty: float) -> float:
    """The level of a difficulty above 1: the other way round."""
    if difficulty < 2:
        return 2 + log(difficulty - 1)
    return difficulty if difficulty <= 5 else 5 - log(6 - difficulty)


def figure(difficulty: float, places: int = 1) -> str:
    """As it is printed: cut off, not rounded, so that the digit before the point stays the band."""
    return f"{floor(difficulty * 10**places) / 10**places:.{places}f}"
