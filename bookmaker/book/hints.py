"""Three hints for a puzzle, each giving away more: where to look, what to look for, the deduction itself.

In: a proof with a grade. Out: `Hints` for the point at which a solver first gets stuck. The first names no digit to be
written and no cell it goes to; the second says what kind of step it is; only the third makes it.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.book.contents import Hints
from bookmaker.language import Manner
from bookmaker.phrases import Phrasebook
from bookmaker.phrases.hints import around_said, cells_said, lines_said, what_said, where_said
from bookmaker.phrases.story import Voice
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.grid import HouseRef
from bookmaker.reasons.marks import Whole
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.telling import Names, Opens, Utterance
from bookmaker.rules import houses_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.tell.concepts import concepts_of
from bookmaker.tell.eliminations import Eliminations
from bookmaker.tell.first_bottleneck import FirstBottleneck, first_bottleneck
from bookmaker.tell.placements import in_full, single_of
from bookmaker.trace import Traced, names_region

LONGEST = 3
"""Where more eliminations than this are needed, the last hint tells only the first of them."""


def hints_of(proof: Proof, language: str = "en") -> Hints | None:
    """The hints for a proven, graded puzzle; None where there is nothing to hint at."""
    if proof.grade is None:
        return None
    puzzle = proof.entry.puzzle
    point = first_bottleneck(puzzle, proof.grade.path)
    if point is None:
        return None
    where = _where(puzzle, point)
    told = _told(point)
    by_letter = (isinstance(where, HouseRef) and where.kind == "region", False, any(map(names_region, told)))
    deduction = _how(Phrasebook(puzzle.grid, language), told)

    def said(manner: Manner) -> tuple[str, str, str]:
        words = Phrasebook(puzzle.grid, language, manner)
        place = str(words.house(where)) if isinstance(where, HouseRef) else _place(words, puzzle, point)
        return (
            where_said(words, place, point.filled if point.filled > puzzle.given_count else None),
            what_said(words, told[0].reason),
            " ".join(map(Voice(words).say, deduction)),
        )

    lettered = tuple(level for level, named in enumerate(by_letter) if named)
    looked_at = {"house"} if isinstance(where, HouseRef) else set[str]()
    return Hints(*said("printed"), lettered, said("heard"), said("short"), concepts_of(told) | looked_at)


def _where(puzzle: RuledPuzzle, point: FirstBottleneck) -> HouseRef | None:
    """The house to look at, as the second hint is about it: of a single, and for a naked one the fullest of its cell;
    of the cells of a pattern, or of a rule that holds in the whole grid. None where another place says more."""
    placement = point.placement
    if not point.eliminations:
        return placement.house or next((house for house, _ in placement.view.holders if house), None)
    step = point.eliminations[0]
    mark = step.reason.mark
    if step.reason.technique == MARK and mark:
        filled = len(step.cells) == puzzle.grid.size
        return _house(puzzle, step.cells) if filled and isinstance(mark.anchor, Whole) else None
    return _house(puzzle, step.cells)


def _place(words: Phrasebook, puzzle: RuledPuzzle, point: FirstBottleneck) -> str:
    """The place to look at where it is no house."""
    if not point.eliminations:
        return words.say("whole-grid")
    step = point.eliminations[0]
    mark = step.reason.mark
    if step.reason.technique != MARK or mark is None:
        return _spread(words, puzzle, step.cells)
    return around_said(words, step.cells[0]) if isinstance(mark.anchor, Whole) else str(words.mark(mark))


def _house(puzzle: RuledPuzzle, cells: Sequence[int]) -> HouseRef | None:
    """The first house that all of the cells lie in: a region, a row or column, a house of the rules."""
    houses = sorted(houses_of(puzzle), key=lambda house: house not in puzzle.grid.region_houses)
    return next((house.ref for house in houses if set(cells) <= set(house.cells)), None)


def _spread(words: Phrasebook, puzzle: RuledPuzzle, cells: Sequence[int]) -> str:
    """Cells that share no house: the fewer of their rows and columns, or themselves where they are few."""
    grid = puzzle.grid
    rows, columns = sorted({grid.row(cell) for cell in cells}), sorted({grid.column(cell) for cell in cells})
    lines, houses = (rows, grid.rows) if len(rows) <= len(columns) else (columns, grid.columns)
    if len(cells) <= len(lines) or grid.overlaps:
        return cells_said(words, sorted(cells))
    return lines_said(words, [houses[line].ref for line in lines])


def _told(point: FirstBottleneck) -> tuple[Traced, ...]:
    """The steps that the last hint tells."""
    whole = len(point.eliminations) <= LONGEST
    return (*point.eliminations, point.placement) if whole else point.eliminations[:1]


def _how(words: Phrasebook, told: Sequence[Traced]) -> list[Utterance]:
    eliminations = [step for step in told if step.removed]
    if not eliminations:
        return [in_full(told[-1])]
    said = [part.utterance for part in Eliminations(words, full=True).told(eliminations)]
    said = [utterance for utterance in said if not isinstance(utterance, Names)]  # the second hint has named it
    return [*said, *(Opens(single_of(step)) for step in told if step.placed)]
