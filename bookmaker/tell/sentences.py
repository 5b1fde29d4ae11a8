"""Single steps in sentences: what is placed, what goes, and why.

In: steps. Out: clauses and sentences in the presenter's one voice.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from bookmaker.grade.model import Step
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.wording import cells_listed, digits_listed, listed, sentence_case, symbol


def placements(grid: Grid, steps: Iterable[Step]) -> str:
    """“7 in r1c2 and r5c4, 3 in r2c2”: the digits placed, each digit once, in the order met."""
    by_digit: dict[int, list[int]] = {}
    for step in steps:
        for cell, digit in step.placed:
            by_digit.setdefault(digit, []).append(cell)
    return ", ".join(f"{symbol(digit)} in {cells_listed(grid, cells)}" for digit, cells in by_digit.items())


def strikes(grid: Grid, removed: Sequence[tuple[int, int]]) -> str:
    """“4 goes from r3c5 and r3c8, and 7 from r3c8”: the candidates that go."""
    cells_of: dict[int, list[int]] = {}
    for cell, digit in removed:
        cells_of.setdefault(digit, []).append(cell)
    digits_of: dict[tuple[int, ...], list[int]] = {}
    for digit, struck in cells_of.items():
        digits_of.setdefault(tuple(struck), []).append(digit)
    parts: list[str] = []
    for cells, digits in digits_of.items():
        verb = "" if parts else (" go" if len(digits) > 1 else " goes")
        parts.append(f"{digits_listed(digits)}{verb} from {cells_listed(grid, cells)}")
    return listed(parts)


def because(step: Step) -> str:
    """The step's own reason as the start of a sentence."""
    return sentence_case(step.because)


def deduction(grid: Grid, step: Step) -> str:
    """“Naked pair: in row 3, r3c1 and r3c2 share 4 and 7 among themselves, so 4 goes from r3c5.”

    A reason that begins with the mark itself (“the thermometer from r1c1 …”) needs no name before it.
    """
    names_itself = step.because.startswith("the ") and step.technique in step.because
    lead = because(step) if names_itself else f"{sentence_case(step.technique)}: {step.because}"
    link = "; " if ", so " in step.because else ", so "
    return f"{lead}{link}{strikes(grid, step.removed)}."
