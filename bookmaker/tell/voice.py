"""The presenter's voice: small pieces that all sentences are made of, and how the same thing is said in other words.

In: cells, digits, candidates. Out: clauses and sentences. A sentence never begins with the name of a cell or a figure.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import groupby

from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Candidate
from bookmaker.rules.common.wording import cells_listed, digits_listed, sentence_case, symbol


class Voice:
    """Chooses among wordings that say the same: each time one is asked for, the next, and from the first again.

    Which wordings there are to choose from is settled by what is seen on the board, so nothing is left to chance: one
    path is always told in the same words.
    """

    def __init__(self) -> None:
        self._used: dict[str, int] = {}

    def pick(self, situation: str, *wordings: str) -> str:
        """The next wording for a situation."""
        count = self._used.get(situation, 0)
        self._used[situation] = count + 1
        return wordings[count % len(wordings)]


def sentence(clause: str) -> str:
    """A clause with a capital and a full stop."""
    return sentence_case(clause) + "."


def several(digit: int) -> str:
    """“4s”: a digit many times."""
    return f"{symbol(digit)}s"


def plural(name: str) -> str:
    """“naked pairs”; fish, coloured candidates and the like stay as they are."""
    return name if name.endswith(("fish", "s")) else f"{name}s"


def called(technique: str, nouns: Sequence[str]) -> str:
    """“the arrow” for a mark of the puzzle, “a hidden pair”, “an X-wing” and “locked candidates” for a pattern."""
    if technique in nouns:
        return f"the {technique}"
    if technique.endswith("candidates"):
        return technique
    return f"{'an' if technique[0] in 'aeiouX' else 'a'} {technique}"


def clauses_listed(clauses: Sequence[str]) -> str:
    """“a, b, and c”, “a, and b”: for parts that hold commas or “and” themselves."""
    return ", ".join(clauses[:-1]) + (", and " if len(clauses) > 1 else "") + clauses[-1]


def placed(grid: Grid, pairs: Iterable[Candidate]) -> str:
    """“7 in r1c2 and r5c4, 3 in r2c2”: digits written one after the other, a digit that is repeated named once."""
    parts = []
    for digit, run in groupby(pairs, key=lambda pair: pair[1]):
        parts.append(f"{symbol(digit)} in {cells_listed(grid, [cell for cell, _ in run])}")
    return ", ".join(parts)


def struck(grid: Grid, removed: Sequence[Candidate]) -> str:
    """“4 is eliminated from r3c5 and r3c8, and 7 from r3c8”: by digits or by cells, whichever is shorter."""
    ways = [_strikes(grid, removed, by) for by in (1, 0)]
    parts = min(ways, key=lambda parts: sum(map(len, parts)))
    return clauses_listed(parts)


def _strikes(grid: Grid, removed: Sequence[Candidate], by: int) -> list[str]:
    """Digits with all cells they go from (by 1), or cells with all digits that go from them (by 0)."""
    gathered: dict[int, list[int]] = {}
    for pair in removed:
        gathered.setdefault(pair[by], []).append(pair[1 - by])
    alike: dict[tuple[int, ...], list[int]] = {}
    for key, members in gathered.items():
        alike.setdefault(tuple(sorted(members)), []).append(key)
    parts: list[str] = []
    for same, keys in alike.items():
        members, keys = list(same), sorted(keys)
        digits, cells = (keys, members) if by else (members, keys)
        verb = "" if parts else (" are eliminated" if len(digits) > 1 else " is eliminated")
        parts.append(f"{digits_listed(digits)}{verb} from {cells_listed(grid, cells)}")
    return parts
