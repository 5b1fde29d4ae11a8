"""The primer: each kind of rule that a book uses, taught once.

In: puzzles. Out: a lesson a kind, with a worked figure: the kind's own sample in a corner of a grid that is filled so
that the sample's rule holds. The digits come from the engine, in an order drawn from the kind's name, and the rule's
plain predicate has checked them; every run gives the same ones.
"""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache
from random import Random

from bookmaker.book.contents import Lesson, WorkedFigure
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.language import Catalogue
from bookmaker.phrases.titles import title_of
from bookmaker.proof import EngineFault
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.solve import solutions


def lessons(words: Catalogue, puzzles: Iterable[RuledPuzzle]) -> tuple[Lesson, ...]:
    """The kinds of rules of these puzzles, Latin squares and digits from 0, in the order of their titles, a lesson
    each."""
    puzzles = list(puzzles)
    found = {type(rule) for puzzle in puzzles for rule in puzzle.rules}
    latin = {not puzzle.grid.regions for puzzle in puzzles}
    boxes = latin != {True}
    taught = [
        Lesson(smart_quotes(title_of(words, kind)), kind.primer(words, boxes=boxes), worked(kind)) for kind in found
    ]
    if True in latin:
        taught.append(Lesson(words.say("heading-latin"), words.say("latin-primer"), None))
    if any(not puzzle.grid.plain and not puzzle.grid.overlaps for puzzle in puzzles):
        taught.append(Lesson(words.say("grid-holes"), words.say("holes-primer"), None))
    if any(puzzle.grid.overlaps for puzzle in puzzles):
        taught.append(Lesson(words.say("grids-overlap"), words.say("overlap-primer"), None))
    if any(puzzle.grid.first == 0 for puzzle in puzzles):
        taught.append(Lesson(words.say("heading-zero"), words.say("zero-primer"), None))
    return tuple(sorted(taught, key=lambda lesson: words.dictionary(lesson.title)))


@cache
def worked(kind: type[Rule]) -> WorkedFigure | None:
    """The kind's sample with digits that keep it; None for a kind that draws nothing.

    A clue outside the grid speaks of a whole line of cells, so the whole of it is shown. Raises `EngineFault` where no
    grid keeps the sample: a figure that teaches must be true.
    """
    sample = kind.sample()
    if sample is None:
        return None
    puzzle = Puzzle(sample.grid, (0,) * len(sample.grid.cells), (sample.rule,))
    digits = next(solutions(problem_of(puzzle), Random(kind.kind)), ())
    if not digits or not sample.rule.holds(sample.grid, digits):
        raise EngineFault(f"the engine finds no digits that keep the sample of {kind.kind}")
    size, claim = sample.grid.size, sample.rule.margins(sample.grid)
    return WorkedFigure(
        sample,
        digits,
        rows=size if kind.hugs_grid or claim.top or claim.bottom else sample.rows,
        columns=size if kind.hugs_grid or claim.left or claim.right else sample.columns,
    )
