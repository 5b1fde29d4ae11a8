"""Automata from plain words: a rule says how a state changes with each digit; out comes the smallest table.

In: a start state, a step from a state and a digit to the next state (None: refused), and which states keep the rule
at the end of the line. States are any values that compare equal when they mean the same. Out: a `Machine`, whose
states are whole numbers with 0 the start, and which becomes an `Automaton` on any line of cells.

Only states that can still come to a good end are kept, and states that accept the same continuations are one
(E. F. Moore's partition refinement, 1956), so that the engine carries as little as possible. Makers of machines are
meant to be cached by their clue: many lines of a book share one.
"""

from __future__ import annotations

from collections.abc import Callable, Hashable
from typing import NamedTuple, TypeVar

from bookmaker.solve.problem import Automaton

State = TypeVar("State", bound=Hashable)


class Machine(NamedTuple):
    """`steps[state][digit]` is the next state, -1 where the digit is refused; a line may end in `accept`."""

    steps: tuple[tuple[int, ...], ...]
    accept: frozenset[int]

    def over(self, cells: tuple[int, ...], lean: Callable[[], Machine] | None = None) -> Automaton:
        """The constraint that the digits along these cells, in order, are accepted.

        `lean` makes a machine that need not remember the digits met, for cells that other constraints hold different.
        """
        return Automaton(cells, self.steps, self.accept, lean)


def machine(
    digits: range, start: State, step: Callable[[State, int], State | None], accepts: Callable[[State], bool]
) -> Machine:
    """The smallest machine with the given behaviour over lines of any length. The states must be finitely many."""
    number: dict[State, int] = {start: 0}
    steps: list[tuple[int, ...]] = []
    met = [start]
    for state in met:
        row = [-1]
        for digit in digits:
            after = step(state, digit)
            if after is not None and after not in number:
                number[after] = len(met)
                met.append(after)
            row.append(-1 if after is None else number[after])
        steps.append(tuple(row))
    accept = {number[state] for state in met if accepts(state)}
    return _smallest(_without_dead_ends(steps, accept), accept)


def remembers(size: int) -> bool:
    """Do machines on the lines of such a grid remember which digits they met? Else a lean one is no other."""
    return size <= REMEMBERED


def met(seen: int, digit: int, size: int, lean: bool = False) -> int | None:
    """The set of digits met on a line, as a mask, with one more; None if it was there already. A lean machine forgets.

    A machine on a row or column that remembers it takes far fewer guesses of the engine, for it knows that two 4s never
    make an 8. Beyond `REMEMBERED` digits there would be too many sets: it stays empty, and houses alone see to it.
    """
    if lean or not remembers(size):
        return seen
    bit = 1 << (digit - 1)
    return None if seen & bit else seen | bit


REMEMBERED = 9
"""The largest grid on whose lines machines remember which digits they met."""


def _without_dead_ends(steps: list[tuple[int, ...]], accept: set[int]) -> list[tuple[int, ...]]:
    """The same table with every step refused that leads where no good end can be reached."""
    before: list[list[int]] = [[] for _ in steps]
    for state, row in enumerate(steps):
        for after in row:
            if after >= 0:
                before[after].append(state)
    good, open_ends = set(accept), list(accept)
    while open_ends:
        for state in before[open_ends.pop()]:
            if state not in good:
                good.add(state)
                open_ends.append(state)
    return [tuple(after if after in good else -1 for after in row) for row in steps]


def _smallest(steps: list[tuple[int, ...]], accept: set[int]) -> Machine:
    """Merge states that no continuation tells apart, and number those met from the start, which is 0."""
    group = [int(state in accept) for state in range(len(steps))]
    count = len(set(group))
    while True:
        signs = [
            (group[state], *(group[after] if after >= 0 else -1 for after in row)) for state, row in enumerate(steps)
        ]
        names = {sign: index for index, sign in enumerate(dict.fromkeys(signs))}
        group = [names[sign] for sign in signs]
        if len(names) == count:
            break
        count = len(names)
    example = {of: state for state, of in reversed(list(enumerate(group)))}
    number = {group[0]: 0}
    met = [group[0]]
    table: list[tuple[int, ...]] = []
    for of in met:
        row = []
        for after in steps[example[of]]:
            to = group[after] if after >= 0 else -1
            if to >= 0 and to not in number:
                number[to] = len(met)
                met.append(to)
            row.append(number[to] if to >= 0 else -1)
        table.append(tuple(row))
    return Machine(tuple(table), frozenset(number[group[state]] for state in accept if group[state] in number))
