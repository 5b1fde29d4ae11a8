"""Bands: five grades of difficulty, by cut points of the effort that are kept as data and never re-cut for a book.

A family is a kind of constraint, not of mark, so that a new rule kind finds its place by itself. The cuts are the
quintiles of a corpus of 9×9 puzzles for each family that this project drew from a fixed seed (`tests/makers/corpus.py`;
`tests/benchmarks/grade_bands.py` prints them anew). They say how a puzzle stands among its like, not how many minutes
it takes, and only the effort of classics has people's times behind it.
"""

from __future__ import annotations

from collections.abc import Mapping
from math import floor

from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.problem import Automaton, Combination, Count, Relation, Sum

VERSION = 5
"""Counted up whenever a cut point or the formula of the effort changes."""

CUTS: Mapping[str, tuple[float, float, float, float]] = {
    "classic": (35.0, 50.0, 80.0, 160.0),
    "relations": (170.0, 235.0, 310.0, 435.0),
    "sums": (335.0, 460.0, 650.0, 1065.0),
}
"""Efforts from which bands 2 to 5 begin."""

FAMILIES = tuple(CUTS)


def family_of(puzzle: RuledPuzzle) -> str:
    """“sums” where a rule adds up or counts, “relations” where rules compare neighbours, else “classic”."""
    asked = [made for rule in puzzle.rules for made in rule.constraints(puzzle.grid)]
    if any(isinstance(made, Combination | Sum | Count | Automaton) for made in asked):
        return "sums"
    return "relations" if any(isinstance(made, Relation) for made in asked) else "classic"


def band_of(effort: float, family: str) -> int:
    """The band, 1 to 5."""
    return 1 + sum(effort >= cut for cut in CUTS[family])


def difficulty_of(effort: float, family: str) -> float:
    """From 1 to just under 6: the digit before the point is the band, what follows says how far into it.

    Linear between the band's two cuts; in the first band from an effort of nothing; in the last one the way from its
    cut to twice its cut is the whole band, and what is harder still stays just under 6.
    """
    cuts = (0.0, *CUTS[family], 2 * CUTS[family][-1])
    band = band_of(effort, family)
    low, high = cuts[band - 1], cuts[band]
    return band + min(max((effort - low) / (high - low), 0.0), 0.999)


def figure(difficulty: float, places: int = 1) -> str:
    """A difficulty as it is printed: cut off, not rounded, so that the digit before the point stays the band."""
    return f"{floor(difficulty * 10**places) / 10**places:.{places}f}"
