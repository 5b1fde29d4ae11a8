"""Relations between pairs of cells, swept for the whole grid at once.

In: pairs of cells and the digits that may stand beside each digit. Out: a `Sweep`, which narrows a state by all the
pairs, in both directions. For each cell of the state at once it works out which digits a neighbour may hold (the
support); pairs are grouped by their distance, so that one shift brings the support to all neighbours of a kind.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache

from bookmaker.solve.fields import Fields, spread

Beside = tuple[int, ...]
Group = tuple[int, int, int]
"""Bits to shift left, bits to shift right (one is 0), and the candidates that this distance does not concern."""


@dataclass(frozen=True, slots=True)
class Support:
    """For every cell at once: the digits that some candidate of the cell allows beside it.

    A relation is taken apart into what it allows from a step upwards (`up`: “at least d + step”), from a step
    downwards (`down`), and the rest by fixed differences or digit by digit, whichever is shorter. A shift is always
    followed by a mask, which keeps it from running over into the next cell; no shift and mask, no such part.
    """

    layout: Fields
    reads: int
    """The candidates that what it says depends on."""
    sure: int
    """Candidates that are allowed whatever the neighbour holds, but for one digit: writing that one rules them out."""
    up: tuple[int, int] | None
    down: tuple[int, int] | None
    smears: tuple[tuple[int, int], ...]
    """Doubling shifts that bring a bit down to all lower places of its field."""
    rising: tuple[tuple[int, int], ...]
    """Differences from 0 up, with the candidates they apply to."""
    falling: tuple[tuple[int, int], ...]
    digits: tuple[tuple[int, int], ...]
    """Place of a digit in its field, and the digits allowed beside it."""

    def of(self, state: int) -> int:
        layout = self.layout
        lows = layout.lows
        allowed = self.sure
        if self.up is not None:
            # state ^ (state - lows) holds every bit of a field up to its lowest candidate.
            above = (state ^ (state | layout.guards) - lows) & layout.everything ^ layout.everything
            step, mask = self.up
            allowed = above << step & mask if step else above
        if self.down is not None:
            below = state
            for step, mask in self.smears:
                below |= below >> step & mask
            step, mask = self.down
            allowed |= below >> step & mask
        for step, mask in self.rising:
            allowed |= (state & mask) << step
        for step, mask in self.falling:
            allowed |= (state & mask) >> step
        for place, others in self.digits:
            allowed |= (state >> place & lows) * others
        return allowed


@cache
def support(layout: Fields, beside: Beside) -> Support:
    """Take a relation apart. `beside[d]` is the mask of digits allowed beside d; member 0 is unused."""
    digits, full, lows = layout.digits, layout.full, layout.lows
    sure = spread(1, (e for e in range(digits) if sum(row >> e & 1 for row in beside[1:]) >= digits - 1))
    unsure = [(d - 1, row & ~sure) for d, row in enumerate(beside) if row & ~sure]
    if len(unsure) <= 2:  # no other way is shorter, and it has few candidates to watch
        return Support(
            layout, lows * spread(1, (at for at, _ in unsure)), lows * sure, None, None, (), (), (), tuple(unsure)
        )
    rest = list(beside)
    parts: dict[bool, tuple[int, int]] = {}
    for upward in (True, False):
        for step in range(1, digits - 1):
            onwards = [_onwards(d, step, upward, digits) for d in range(digits + 1)]
            if all(not more & ~allowed for more, allowed in zip(onwards[1:], beside[1:], strict=True)):
                rest = [kept & ~known for kept, known in zip(rest, onwards, strict=True)]
                parts[upward] = (step - 1, lows * (full >> step << step)) if upward else (step, lows * (full >> step))
                break
    smears = tuple((1 << i, lows * (full >> (1 << i))) for i in range((digits - 1).bit_length()))
    pairs = [(d, e) for d in range(1, digits + 1) for e in range(1, digits + 1) if rest[d] >> e - 1 & 1]
    by_difference: dict[int, int] = {}
    for d, e in pairs:
        by_difference[e - d] = by_difference.get(e - d, 0) | 1 << d - 1
    by_digit = {d - 1: rest[d] for d, _ in pairs}
    if len(by_difference) <= len(by_digit):
        by_digit = {}
    else:
        by_difference = {}
    return Support(
        layout,
        layout.everything,
        0,
        parts.get(True),
        parts.get(False),
        smears,
        tuple((step, lows * mask) for step, mask in by_difference.items() if step >= 0),
        tuple((-step, lows * mask) for step, mask in by_difference.items() if step < 0),
        tuple(by_digit.items()),
    )


def _onwards(digit: int, step: int, upward: bool, digits: int) -> int:
    """The digits at least `step` above a digit, or at least `step` below it."""
    if upward:
        first = digit - 1 + step
        return (1 << digits) - 1 >> first << first if digit else 0
    return (1 << digit - step) - 1 if digit > step else 0


@dataclass(frozen=True, slots=True)
class Sweep:
    """One relation on all its pairs. `bits` are the candidates it depends on."""

    bits: int
    forward: Support
    backward: Support
    ahead: tuple[Group, ...]
    behind: tuple[Group, ...]

    def run(self, state: int) -> int:
        """The state without the candidates that lack support; a cell left empty shows a contradiction."""
        allowed = self.forward.of(state)
        for left, right, untouched in self.ahead:
            state &= allowed << left >> right | untouched
        allowed = self.backward.of(state)
        for left, right, untouched in self.behind:
            state &= allowed << left >> right | untouched
        return state


def sweep(layout: Fields, pairs: Iterable[tuple[int, int]], beside: Beside) -> Sweep:
    """The sweep of a relation over pairs of different cells."""
    groups: dict[int, list[int]] = {}
    for a, b in dict.fromkeys(pairs):
        groups.setdefault(b - a, []).append(a)
    forward, backward = support(layout, beside), support(layout, reverse(beside))
    ahead: list[Group] = []
    behind: list[Group] = []
    every = 0
    for distance, sources in groups.items():
        at_sources = layout.bits(sources)
        step = abs(distance) * layout.width
        left, right = (step, 0) if distance > 0 else (0, step)
        at_targets = at_sources << left >> right
        every |= at_sources & forward.reads | at_targets & backward.reads
        ahead.append((left, right, layout.everything ^ at_targets))
        behind.append((right, left, layout.everything ^ at_sources))
    return Sweep(every, forward, backward, tuple(ahead), tuple(behind))


@cache
def reverse(beside: Beside) -> Beside:
    """The relation seen from the other cell."""
    digits = range(1, len(beside))
    return (0, *(spread(1, (d - 1 for d in digits if beside[d] >> e - 1 & 1)) for e in digits))


@cache
def forbidden(beside: Beside) -> tuple[int, ...]:
    """For each digit, 1 at index 0, the mask of digits that may not stand beside it."""
    full = (1 << len(beside) - 1) - 1
    return tuple(full & ~allowed for allowed in beside[1:])


def is_unequal(beside: Beside) -> bool:
    """Does the relation ask for different digits, and nothing else?"""
    return forbidden(beside) == tuple(1 << digit for digit in range(len(beside) - 1))


@cache
def follows_from_writing(beside: Beside) -> bool:
    """Does the relation rule out nothing before a digit is written? Then its sweep would find nothing new."""
    return all(mask.bit_count() <= 1 for table in (beside, reverse(beside)) for mask in forbidden(table))
