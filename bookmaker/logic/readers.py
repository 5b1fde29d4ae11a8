"""A puzzle's marks one by one, as a person reads them.

In: what the rules ask for, and how steps refer to their marks. Out: a `Reader` for every mark, which says what it rules
out on some boards.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from typing import assert_never

from bookmaker.logic.mark_readings import Mark
from bookmaker.puzzle.bits import cells_on
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import MarkRef
from bookmaker.rules.common.contract import Rule
from bookmaker.solve.problem import (
    Allowed,
    Automaton,
    Combination,
    Constraint,
    Count,
    Different,
    DifferentCount,
    Relation,
    Sum,
)


@dataclass(frozen=True)
class Reader:
    """One mark as a person reads it: the part of the rule's constraints that is about its cells."""

    ref: MarkRef
    mark: Mark

    def struck(self, boards: Sequence[int], filled: int) -> tuple[int, ...] | None:
        """By digit the boards that it rules out; empty where nothing goes, None where nothing fits it, or not what is
        written."""
        struck = self.mark.strikes(boards)
        return None if struck is None or any(board & filled for board in struck) else struck

    def gone(self, boards: Sequence[int], filled: int) -> list[Candidate] | None:
        """The same as candidates (cell, digit)."""
        struck = self.struck(boards, filled)
        if struck is None:
            return None
        return [(cell, digit) for digit, board in enumerate(struck) for cell in cells_on(board)]


def readers_of(
    asked: Iterable[tuple[Constraint, Rule]], reference: Callable[[Rule, Sequence[int]], MarkRef]
) -> tuple[Reader, ...]:
    """Every mark for itself."""
    found = []
    for constraint, rule in asked:
        match constraint:
            case Relation(pairs, beside):
                by_mark: dict[MarkRef, list[tuple[int, int]]] = {}
                for pair in pairs:
                    by_mark.setdefault(reference(rule, pair), []).append(pair)
                found += [Reader(ref, Mark(Relation(tuple(own), beside), rule)) for ref, own in by_mark.items()]
            case Combination() | Sum() | Count() | DifferentCount() | Automaton() as made:
                mark = Mark(made, rule)
                found.append(Reader(reference(rule, mark.cells), mark))
            case Different() | Allowed():
                pass  # that cells differ, or what one cell may hold, is pencilled in already
            case _ as never:
                assert_never(never)
    return tuple(found)
