"""Three hints for a puzzle, each giving away more: where to look, what to look for, the deduction itself.

In: a proof with a grade. Out: `Hints` for the point at which a solver first gets stuck. The first names no digit to be
written and no cell it goes to; the second says what kind of step it is; only the third makes it.
"""

from __future__ import annotations

from collections.abc import Sequence

from bookmaker.book.model import Hints
from bookmaker.grade.singles import Kind
from bookmaker.proof.model import Proof
from bookmaker.puzzle.grid import Grid
from bookmaker.rules import houses_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.wording import cells_listed, listed
from bookmaker.tell.context import Context
from bookmaker.tell.reasons import seen
from bookmaker.tell.sticking import Sticking, sticking_point
from bookmaker.tell.strikings import mark_named, payoff, strikes
from bookmaker.tell.trail import Told
from bookmaker.tell.voice import Voice, called, sentence

LONGEST = 3
"""Where more strikes than this are needed, the last hint tells only the first of them."""

SINGLES = {
    Kind.LAST: "the last empty cell",
    Kind.BOX: "a digit with only one place there",
    Kind.LINE: "a digit with only one place there",
    Kind.NAKED: "a cell there with only one possible digit",
}
"""What to look for where a single is all that is needed."""

PATTERNS = {
    "locked candidates": "a digit whose places there all share another row, column or box",
    "naked pair": "two cells with the same two digits left between them",
    "naked triple": "three cells with three digits left between them",
    "naked quad": "four cells with four digits left between them",
    "hidden pair": "two digits with the same two places",
    "hidden triple": "three digits that share three places",
    "hidden quad": "four digits that share four places",
    "X-wing": "a digit that two rows have in the same two columns only, or the other way round: an X-wing",
    "swordfish": "a digit that three rows have in the same three columns only, or the other way round: a swordfish",
    "jellyfish": "a digit that four rows have in the same four columns only, or the other way round: a jellyfish",
    "seen by all places": "a cell that sees every place of a digit",
    "what-if": "a digit that soon leads to a contradiction",
}
"""What to look for where a pattern is needed; one that is not here is named by its trade name alone."""


def hints_of(proof: Proof) -> Hints | None:
    """The hints for a proven, graded puzzle; None where there is nothing to hint at."""
    if proof.grade is None:
        return None
    point = sticking_point(proof.entry.puzzle, proof.grade.path)
    if point is None:
        return None
    puzzle = proof.entry.puzzle
    nouns = tuple(rule.noun for rule in puzzle.rules)
    when = f"with {point.filled} cells filled" if point.filled > puzzle.given_count else "at the start"
    return Hints(
        where=sentence(f"{when}: {_where(puzzle, point, nouns)}"),
        what=sentence(_what(point, nouns)),
        how=_how(puzzle.grid, point, nouns),
    )


def _where(puzzle: RuledPuzzle, point: Sticking, nouns: Sequence[str]) -> str:
    if not point.strikes:
        return _home(point.placement)
    step = point.strikes[0].step
    house = _house(puzzle, step.cells)
    if step.technique not in nouns:
        return house or _spread(puzzle.grid, step.cells)
    if named := mark_named(step.because):
        return named
    first = puzzle.grid.name(step.cells[0])
    if step.technique.endswith((" rule", " move")):
        return f"the cells around {first}"
    whole = house if len(step.cells) == puzzle.grid.size else ""
    return f"the {step.technique} {f'of {whole}' if whole else f'at {first}'}"


def _home(told: Told) -> str:
    """The house in which a single is seen; for a naked one, the fullest of its cell."""
    if told.area:
        return told.area.name
    return next((house for house, _ in told.view.holders if house), "the whole grid")


def _house(puzzle: RuledPuzzle, cells: Sequence[int]) -> str:
    """The first house that all of the cells lie in: a region, a row or column, a house of the rules; else “”."""
    houses = sorted(houses_of(puzzle), key=lambda house: house not in puzzle.grid.region_houses)
    return next((house.name for house in houses if set(cells) <= set(house.cells)), "")


def _spread(grid: Grid, cells: Sequence[int]) -> str:
    """Cells that share no house: the fewer of their rows and columns, or themselves where they are few."""
    rows, columns = {grid.row(cell) for cell in cells}, {grid.column(cell) for cell in cells}
    lines, name = (rows, "rows") if len(rows) <= len(columns) else (columns, "columns")
    if len(cells) <= len(lines):
        return f"the cells {cells_listed(grid, sorted(cells))}" if len(cells) > 1 else f"the cell {grid.name(cells[0])}"
    return f"{name} {listed(str(line + 1) for line in sorted(lines))}"


def _what(point: Sticking, nouns: Sequence[str]) -> str:
    if not point.strikes:
        return SINGLES[point.placement.kind] if point.placement.kind is not None else "the digit that is left"
    name = point.strikes[0].step.technique
    if name in nouns:
        return f"digits {called(name, nouns)} rules out"
    return PATTERNS.get(name, called(name, nouns))


def _how(grid: Grid, point: Sticking, nouns: Sequence[str]) -> str:
    context, voice = Context(nouns), Voice()
    if not point.strikes:
        return sentence(seen(grid, point.placement, context))
    told = point.strikes if len(point.strikes) <= LONGEST else point.strikes[:1]
    sentences = strikes(grid, told, voice, context)
    if told is point.strikes:
        sentences.append(payoff(grid, point.placement, voice))
    return " ".join(said.text for said in sentences)
