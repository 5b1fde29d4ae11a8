"""What is said before the first step: what lies on the table, the added rules, and what is to come.

In: a puzzle and its grade. Out: a few sentences.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from bookmaker.grade.mirror import Mirror
from bookmaker.grade.model import Grade
from bookmaker.grade.singles import Kind
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.wording import counted, number
from bookmaker.tell.moments import LAST_ROWS, hard_moment, narrow_moments
from bookmaker.tell.rounds import rounds
from bookmaker.tell.twins import mirror_said
from bookmaker.tell.voice import sentence

SEVERAL = 3
"""So many openings at every step are worth a word."""


def outlook(
    puzzle: RuledPuzzle, grade: Grade, band_names: Sequence[str], mirror: Mirror | None = None, rules: bool = True
) -> str:
    """The grid, its rules if they are to be said, its mirror structure, the band and the shape of the path."""
    sentences = [_table(puzzle), *(rule.sentence() for rule in puzzle.rules if rules)]
    if mirror:
        sentences.append(sentence(mirror_said(mirror)))
    return " ".join([*sentences, _way(puzzle, grade, band_names)])


def _table(puzzle: RuledPuzzle) -> str:
    grid = puzzle.grid
    count = counted(puzzle.given_count, "given") if puzzle.given_count else "no givens at all"
    if not grid.regions:
        kind = "grid without boxes and with"
    else:
        kind = "grid with" if grid.box else "grid with irregular regions and"
    return sentence(f"a {grid.size}×{grid.size} {kind} {count}")


def _way(puzzle: RuledPuzzle, grade: Grade, band_names: Sequence[str]) -> str:
    grid, path = puzzle.grid, grade.path
    band = f"band {band_names[grade.band - 1]}"
    stuck = [run for places, run in groupby(rounds(path), key=lambda this: this.places) if not places]
    narrow = narrow_moments(path, grid)
    hard = hard_moment(path, grid)
    where = f"at {hard.filled} cells filled" if hard and hard.first else "at the very start"
    if not stuck:
        if hard:
            return sentence(f"{band}: singles all the way, with the hard moment {where}")
        if narrow:
            return sentence(f"{band}: singles all the way, with a narrow place or two")
        least = min(
            (s.openings for s in path.steps if s.empty > LAST_ROWS * grid.size and s.rung <= Kind.NAKED), default=0
        )
        if least >= SEVERAL:
            return sentence(f"{band}: singles all the way, and never fewer than {number(least)} to choose from")
        return sentence(f"{band}: singles all the way, and none that is hard to find")
    times = {1: "once", 2: "twice"}.get(len(stuck), f"{number(len(stuck))} times")
    if hard:
        return sentence(f"{band}: the singles end {times}, and the hard moment comes {where}")
    return sentence(f"{band}: the singles end {times}, and not for long")
