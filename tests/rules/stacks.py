"""Every kind stacked on the same few cells, borders, corners and lanes, so that any two of them meet wherever they can.

The marks need no solution and no sense: what counts is where they stand. A kind whose only marks are chains is stacked
by its field `chains`, whatever it is called.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import fields

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from bookmaker.rules.arrow import Arrow
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.outside import Clue, OutsideRule
from bookmaker.rules.diagonal_sum import Diagonal
from bookmaker.rules.limits import Limit
from bookmaker.rules.quadruple import Ring


def cell(row: int, column: int) -> int:
    """A cell by its row and column from 1."""
    return CLASSIC.cell(row - 1, column - 1)


WAY = tuple(cell(row, column) for row, column in ((2, 2), (2, 3), (2, 4), (3, 4), (4, 4), (5, 5)))
"""Level, upright, and along the falling diagonal at the end."""

TWIN = tuple(cell(row, column) for row, column in ((6, 6), (5, 5), (4, 4), (3, 4), (2, 4), (1, 5)))
"""Shares most of the way, the other way round, and goes elsewhere at both ends."""

PAIRS = tuple((min(pair), max(pair)) for pair in zip(WAY[:4], WAY[1:5], strict=True))

CORNERS = tuple(
    (cell(row, column), cell(row, column + 1), cell(row + 1, column), cell(row + 1, column + 1))
    for row, column in ((2, 3), (4, 4))
)

CELLS = WAY[:5]

_SPECIAL = {
    "arrow": lambda: {"arrows": (Arrow((WAY[0],), (WAY[1:],)),)},
    "cage": lambda: {"cages": (((cell(2, 2), cell(2, 3)), 12), ((cell(2, 4), cell(3, 4), cell(4, 4)), 8), ((cell(5, 5), cell(5, 6)), 0))},
    "clone": lambda: {"groups": (((cell(2, 2), cell(2, 3)), (cell(4, 4), cell(4, 5))), ((cell(2, 4), cell(3, 4)), (cell(5, 2), cell(6, 2)))), "letters": ("A", "B")},
    "consecutive-bars": lambda: {"bars": PAIRS},
    "diagonal-sum": lambda: {"diagonals": (Diagonal(38, cell(1, 2), "down-right"), Diagonal(21, cell(2, 1), "down-right"))},
    "diagonals": lambda: {"falling": True, "rising": True},
    "dots": lambda: {"white": PAIRS[::2], "black": PAIRS[1::2]},
    "extra-region": lambda: {"regions": ((*CELLS,), (cell(5, 5), cell(6, 6), cell(6, 7)), (cell(2, 4), cell(2, 5), cell(3, 4), cell(3, 5))), "digits": 9},
    "inequality": lambda: {"pairs": (*PAIRS[:2], *(pair[::-1] for pair in PAIRS[2:]))},
    "limits": lambda: {"limits": tuple(Limit(at, digits, at == WAY[1]) for at, digits in zip(CELLS, (0b10011, 0b110011100, 0b1001111, 0b10000, 0b11011011), strict=True))},
    "parity": lambda: {"even": CELLS[::2], "odd": (*CELLS[1::2], WAY[5])},
    "peaks": lambda: {"greater": CELLS[::2], "smaller": CELLS[1::2]},
    "quadruple": lambda: {"rings": tuple(Ring(cells, digits) for cells, digits in zip(CORNERS, ((1, 2, 3, 4), (2, 5)), strict=True))},
    "sum-marks": lambda: {"five": PAIRS[::2], "ten": PAIRS[1::2]},
}  # fmt: skip

_CLUES = tuple(
    Clue(side, line, value) for side, line, value in (("left", 0, 12), ("left", 1, 5), ("top", 1, 7), ("top", 2, 21))
)
"""At the same places for all kinds of clues outside; those that take digits have one each."""


def stacked(kind: str, twice: bool = False) -> Rule:
    """The kind with marks on all the places; with `twice`, lines run along the twin of the way as well."""
    rule = kinds()[kind]
    if kind in _SPECIAL:
        return rule(**_SPECIAL[kind]())
    names = [field.name for field in fields(rule)]  # type: ignore[arg-type]
    if "chains" in names:
        return rule(chains=(WAY, TWIN) if twice else (WAY,))  # type: ignore[call-arg]
    if issubclass(rule, OutsideRule):
        digits = kind in ("first-seen", "numbered-room", "skyscraper")
        return rule(tuple(Clue(clue.side, clue.line, min(clue.value, 9)) if digits else clue for clue in _CLUES))
    return rule()


def twin(kind: str) -> Rule | None:
    """A line of the kind along the twin of the way; None for a kind that has no lines."""
    rule = kinds()[kind]
    if kind == "arrow":
        return rule(arrows=(Arrow((TWIN[0],), (TWIN[1:],)),))  # type: ignore[call-arg]
    if "chains" in [field.name for field in fields(rule)]:  # type: ignore[arg-type]
        return rule(chains=(TWIN,))  # type: ignore[call-arg]
    return None


def stacks() -> Iterator[tuple[str, str, tuple[Rule, ...]]]:
    """Every pair of kinds, a kind with itself too: the two words, and the rules to draw together."""
    words = list(kinds())
    for at, one in enumerate(words):
        for other in words[at:]:
            beside = twin(other)
            if one == other:
                yield one, other, (stacked(one, twice=True),)
                continue
            yield one, other, (stacked(one), stacked(other))
            if beside is not None:
                yield one, other, (stacked(one), beside)
