"""Small positions for the techniques' own cases: a grid of which only what matters is said."""

from __future__ import annotations

from bookmaker.logic.state import State, ground_of, start
from bookmaker.phrases import Phrasebook
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import Rule

Candidates = set[tuple[str, int]]


def cell(name: str) -> int:
    """The number of a cell such as “r3c5” on the classic grid."""
    return CLASSIC.cell(int(name[1]) - 1, int(name[3]) - 1)


def empty(*rules: Rule) -> State:
    """The classic grid with every candidate still possible."""
    return start(ground_of(Puzzle(CLASSIC, (0,) * 81, rules)))


def only(state: State, digit: int, house: str, *names: str) -> None:
    """In a house, the digit can stand in these cells only."""
    words = Phrasebook(CLASSIC)
    area = next(area for area in state.ground.areas if str(words.house(area.ref)) == house)
    keep = {cell(name) for name in names}
    state.remove((c, digit) for c in area.cells if c not in keep)


def holds(state: State, name: str, *digits: int) -> None:
    """A cell has just these candidates."""
    state.remove((cell(name), digit) for digit in CLASSIC.digits if digit not in digits)


def struck(state: State, technique: object) -> list[Candidates]:
    """What each finding of a technique strikes."""
    return [
        {(CLASSIC.name(c), digit) for c, digit in finding.removed}
        for finding in technique.find(state)  # type: ignore[attr-defined]
    ]


__all__ = ["Candidates", "cell", "empty", "holds", "only", "struck"]
