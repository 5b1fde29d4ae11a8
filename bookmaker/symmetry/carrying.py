"""How digits may be renamed, and whether a move carries one puzzle to another.

In: puzzles, their solutions, images of cells. Out: what is true of them, with nothing of how a move was found taken on
trust; and `short`, one text for several.
"""

from __future__ import annotations

from dataclasses import dataclass
from hashlib import sha256

from bookmaker.rules.common.contract import Relabelling, RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.symmetry.forms import forms_of
from bookmaker.symmetry.moves import Move, unmoved_digits


@dataclass(frozen=True, slots=True)
class Keys:
    """`puzzle` is shared by look-alikes. `solution` is shared by puzzles whose solution grids are the same but for a
    move, whatever their givens and rules; `marks` by puzzles whose marks are the same but for a turn or reflection and
    digits counted from the other end, whatever their givens. Both are "" where they would say nothing."""

    puzzle: str
    solution: str
    marks: str


def relabelling_of(puzzle: RuledPuzzle) -> Relabelling:
    """How digits may be renamed so that every rule of the puzzle goes along."""
    allowed = {rule.relabelling(rule.laid_on(puzzle.grid)) for rule in puzzle.rules}
    return "none" if "none" in allowed else "reversed" if "reversed" in allowed else "any"


def renaming_of(its: Solution, others: Solution, cells: tuple[int, ...]) -> tuple[int, ...] | None:
    """Which digit becomes which if the one solution, its cells moved, is to be the other."""
    digits = [0] * (max(its) + 1)
    for cell, digit in enumerate(its):
        image = others[cells[cell]]
        if digits[digit] not in (0, image):
            return None
        digits[digit] = image
    return tuple(digits)


def carries(move: Move, one: RuledPuzzle, other: RuledPuzzle) -> bool:
    """Is the one puzzle after the move the other: givens, regions and all that rules ask? Nothing of how the move was
    found is taken on trust."""
    regions = {frozenset(move.cells[cell] for cell in region) for region in one.grid.regions}
    if move.apply(one.givens) != other.givens or regions != {frozenset(region) for region in other.grid.regions}:
        return False
    unmoved = forms_of(other, tuple(other.grid.cells), unmoved_digits(other.grid.size))
    return forms_of(one, move.cells, move.digits) == unmoved


def short(*parts: str | bytes) -> str:
    total = sha256()
    for part in parts:
        data = part.encode() if isinstance(part, str) else part
        total.update(b"%d:" % len(data) + data)
    return total.hexdigest()[:32]
