"""The forced filling: digits that a rule's marks and the houses fix before any given is looked at.

In: a puzzle. Out: such digits, rule by rule. A thermometer of nine cells holds 1 to 9 whatever the givens; a solver
writes it down at once, and what is left is graded as the puzzle it then is.
"""

from __future__ import annotations

from bookmaker.logic.singles import openings
from bookmaker.logic.state import ground_of, start
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import Rule, RuledPuzzle


def forced(puzzle: RuledPuzzle, rule: Rule) -> dict[int, int]:
    """The digit of each cell that follows from one rule and the houses alone, by the rule's own steps and singles."""
    bare: RuledPuzzle = Puzzle(puzzle.grid, (0,) * len(puzzle.grid.cells), (rule,))
    state = start(ground_of(bare))
    digits: dict[int, int] = {}
    while True:
        found = openings(state)
        for opening in found:
            digits[opening.cell] = opening.digit
            state.place(opening.cell, opening.digit)
        struck = [
            state.present(deduction.removed)
            for deduction in rule.deductions(state.position().on(rule.laid_on(puzzle.grid)))
        ]
        for removed in struck:
            state.remove(removed)
        if not found and not any(struck):
            return digits
