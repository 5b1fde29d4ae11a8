"""Every kind stacked on the same few cells, borders, corners and lanes, so that any two of them meet wherever they can.

The marks need no solution and no sense: what counts is where they stand. A kind whose marks are chains is stacked by
its field `chains`, whatever it is called.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import fields
from itertools import pairwise
from typing import Any

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from bookmaker.rules.arithmetic_cage import Result
from bookmaker.rules.border_values import Worth
from bookmaker.rules.common.arrowreading import Arrow
from bookmaker.rules.common.clue import Clue
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.outside import OutsideRule
from bookmaker.rules.counting_area import Tally
from bookmaker.rules.diagonal_sum import Diagonal
from bookmaker.rules.limits import Limit
from bookmaker.rules.quadruple import Ring


def on(cells: str) -> tuple[int, ...]:
    """Cells by row and column from 1: “22 23”."""
    return tuple(CLASSIC.cell(int(cell[0]) - 1, int(cell[1]) - 1) for cell in cells.split())


WAY = on("22 23 24 34 44 55")
"""Level, upright, and along the falling diagonal at the end."""

TWIN = on("66 55 44 34 24 15")
"""Shares most of the way, the other way round, and goes elsewhere at both ends."""

CELLS = WAY[:5]

PAIRS = tuple((min(pair), max(pair)) for pair in pairwise(CELLS))

CORNERS = (on("23 24 33 34"), on("44 45 54 55"))

WORTHS = (("sum", 7), ("difference", 2), ("product", 18), ("quotient", 2))

DIGITS = (0b10011, 0b110011100, 0b1001111, 0b10000, 0b11011011)
"""One to six digits, with and without runs, as masks."""

_SPECIAL: dict[str, Callable[[type[Any]], Rule]] = {
    "arrow": lambda rule: rule((Arrow(WAY[:1], (WAY[1:],)),)),
    "barred-sums": lambda rule: rule(sums=frozenset({10})),
    "border-values": lambda rule: rule(tuple((pair, Worth(*worth)) for pair, worth in zip(PAIRS, WORTHS, strict=True))),
    "cage": lambda rule: rule(((on("22 23"), 12), (on("24 34 44"), 8), (on("55 56"), 0))),
    "arithmetic-cage": lambda rule: rule(
        ((on("22 23"), Result(12, "×")), (on("24 34 44"), Result(8, "+")), (on("55 56"), Result(3, "−")))
    ),
    "counting-area": lambda rule: rule(
        ((on("22 23"), Tally((7,))), (on("24 34 44"), Tally((), 2)), (on("55 56"), Tally((3, 4))))
    ),
    "open-cage": lambda rule: rule(
        ((on("22 23"), "even"), (on("24 34 44"), "A"), (on("55 56"), "odd"), (on("62 63"), "A"))
    ),
    "clone": lambda rule: rule(((on("22 23"), on("44 45")), (on("24 34"), on("52 62"))), ("A", "B")),
    "consecutive-bars": lambda rule: rule(PAIRS),
    "diagonal-sum": lambda rule: rule(tuple(Diagonal(38, at, "down-right") for at in on("12 21"))),
    "diagonals": lambda rule: rule(True, True),
    "dots": lambda rule: rule(PAIRS[::2], PAIRS[1::2]),
    "extra-region": lambda rule: rule((CELLS, on("55 66 67"), on("24 25 34 35")), 9),
    "fortress": lambda rule: rule(tuple(sorted(on("22 23 24 55")))),
    "inequality": lambda rule: rule((*PAIRS[:2], *(pair[::-1] for pair in PAIRS[2:]))),
    "limits": lambda rule: rule(tuple(Limit(at, mask, at == WAY[1]) for at, mask in zip(CELLS, DIGITS, strict=True))),
    "parity": lambda rule: rule(WAY[::2], WAY[1::2]),
    "peaks": lambda rule: rule(CELLS[::2], CELLS[1::2]),
    "pointing": lambda rule: rule(*((cell,) for cell in CELLS[:4])),
    "quadruple": lambda rule: rule((Ring(CORNERS[0], (1, 2, 3, 4)), Ring(CORNERS[1], (2, 5)))),
    "square-block": lambda rule: rule(
        ((on("22 23 32 33"), "rows"), (on("34 35 44 45"), "columns"), (on("55 56 57 65 66 67 75 76 77"), "magic"))
    ),
    "sum-marks": lambda rule: rule(PAIRS[::2], PAIRS[1::2]),
}

_CLUES = (Clue("left", 0, 12), Clue("left", 1, 5), Clue("top", 1, 7), Clue("top", 2, 21))
_DIGIT_CLUES = tuple(Clue(clue.side, clue.line, clue.value % 9 + 1) for clue in _CLUES)


def stacked(kind: str, twice: bool = False) -> Rule:
    """The kind with marks on all the places; with `twice`, lines run along the twin of the way as well."""
    rule = kinds()[kind]
    if kind == "arrow" and twice:
        return rule((Arrow(WAY[:1], (WAY[1:],)), Arrow(TWIN[:1], (TWIN[1:],))))  # type: ignore[call-arg, arg-type]
    if kind in _SPECIAL:
        return _SPECIAL[kind](rule)
    if _has_chains(rule):
        return rule(chains=(WAY, TWIN) if twice else (WAY,))  # type: ignore[call-arg]
    if issubclass(rule, OutsideRule):
        if kind == "rise-or-fall":
            return rule(tuple(Clue(clue.side, clue.line, clue.value % 2) for clue in _CLUES))
        return rule(_DIGIT_CLUES if kind in ("first-seen", "numbered-room", "skyscraper") else _CLUES)
    return rule()


def twin(kind: str) -> Rule | None:
    """A line of the kind along the twin of the way; None for a kind that has no lines."""
    rule: Any = kinds()[kind]
    if kind == "arrow":
        return rule((Arrow(TWIN[:1], (TWIN[1:],)),))
    return rule(chains=(TWIN,)) if _has_chains(rule) else None


def _has_chains(rule: Any) -> bool:
    return "chains" in [field.name for field in fields(rule)]


def stacks() -> Iterator[tuple[str, str, tuple[Rule, ...]]]:
    """Every pair of kinds, a kind with itself too: the two words, and the rules to draw together."""
    words = list(kinds())
    for at, one in enumerate(words):
        yield one, one, (stacked(one, twice=True),)
        for other in words[at + 1 :]:
            yield one, other, (stacked(one), stacked(other))
            beside = twin(other)
            if beside is not None:
                yield one, other, (stacked(one), beside)
