"""Relations between pairs of cells, propagated for the whole grid at once.

In: pairs of cells and an allowed table: for each digit of one cell the digits that the other may hold. Out: a
`RelationPropagator`, which makes a state arc consistent on all the pairs, in both directions, one pass at a time. The
support of every cell, all the digits that its candidates allow at a partner, is worked out for the whole state at
once; pairs are grouped by the distance of their cells, so that one shift carries the support to all partners of a
group.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import cache

from bookmaker.solve.candidates import CandidateLayout, places_in, replicate

AllowedTable = tuple[int, ...]
Group = tuple[int, int, int]
"""Bits to shift left, bits to shift right (one is 0), and the candidates that this distance does not concern."""


@dataclass(frozen=True, slots=True)
class Support:
    """For every cell at once: the digits that some candidate of the cell allows at its partner.

    The allowed table is split into what it allows from a certain distance upwards (`up`: “at least d + step”), from a
    certain distance downwards (`down`), and the rest, by fixed differences or digit by digit, whichever is shorter.
    Every shift is followed by a mask, which keeps it from running over into the next cell. A part that the table does
    not have is None.
    """

    layout: CandidateLayout
    reads: int
    """The candidates that what it says depends on."""
    sure: int
    """Candidates that are allowed whatever the partner holds, but for one digit: placing that one rules them out."""
    up: tuple[int, int] | None
    down: tuple[int, int] | None
    smears: tuple[tuple[int, int], ...]
    """Doubling shifts that bring a bit down to all lower places of its field."""
    rising: tuple[tuple[int, int], ...]
    """Differences from 0 up, with the candidates they apply to."""
    falling: tuple[tuple[int, int], ...]
    digits: tuple[tuple[int, int], ...]
    """Place of a digit in its field, and the digits that it allows."""

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
def support(layout: CandidateLayout, table: AllowedTable) -> Support:
    """Split an allowed table into the parts of a `Support`."""
    digits, full, lows = layout.digits, layout.full, layout.lows
    sure = replicate(1, (e for e in range(digits) if sum(row >> e & 1 for row in table[1:]) >= digits - 1))
    unsure = [(d - 1, row & ~sure) for d, row in enumerate(table) if row & ~sure]
    if len(unsure) <= 2:  # no other way is shorter, and it has few candidates to watch
        return Support(
            layout, lows * replicate(1, (at for at, _ in unsure)), lows * sure, None, None, (), (), (), tuple(unsure)
        )
    rest = list(table)
    parts: dict[bool, tuple[int, int]] = {}
    for upward in (True, False):
        for step in range(1, digits - 1):
            onwards = [_onwards(d, step, upward, digits) for d in range(digits + 1)]
            if all(not more & ~row for more, row in zip(onwards[1:], table[1:], strict=True)):
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
class RelationPropagator:
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


def relation_propagator(
    layout: CandidateLayout, pairs: Iterable[tuple[int, int]], table: AllowedTable
) -> RelationPropagator:
    """The propagator of a relation over pairs of different cells."""
    groups: dict[int, list[int]] = {}
    for a, b in dict.fromkeys(pairs):
        groups.setdefault(b - a, []).append(a)
    forward, backward = support(layout, table), support(layout, reverse(table))
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
    return RelationPropagator(every, forward, backward, tuple(ahead), tuple(behind))


@cache
def reverse(table: AllowedTable) -> AllowedTable:
    """The relation seen from the other cell."""
    digits = range(1, len(table))
    return (0, *(replicate(1, (d - 1 for d in digits if table[d] >> e - 1 & 1)) for e in digits))


@cache
def forbidden(table: AllowedTable) -> tuple[int, ...]:
    """For each digit, 1 at index 0, the mask of digits that it rules out."""
    full = (1 << len(table) - 1) - 1
    return tuple(full & ~row for row in table[1:])


def is_unequal(table: AllowedTable) -> bool:
    """Does the relation ask for different digits, and nothing else?"""
    return forbidden(table) == tuple(1 << digit for digit in range(len(table) - 1))


@cache
def follows_from_placement(table: AllowedTable) -> bool:
    """Does the relation rule out nothing before a digit is placed? Then its propagator would find nothing new."""
    return all(mask.bit_count() <= 1 for each in (table, reverse(table)) for mask in forbidden(each))


class RelatedPair:
    """A relation on one pair of cells, as the filter of a local constraint."""

    def __init__(self, table: AllowedTable) -> None:
        self._tables = table, reverse(table)

    def narrow(self, masks: Sequence[int]) -> tuple[list[int], int] | None:
        one, other = masks
        kept = []
        for table, here, there in zip(self._tables, (one, other), (other, one), strict=True):
            left = 0
            for place in places_in(here):
                if table[place + 1] & there:
                    left |= 1 << place
            kept.append(left)
        return (kept, 0) if all(kept) else None


@cache
def related_pair(table: AllowedTable) -> RelatedPair:
    """The filter for one pair of a relation."""
    return RelatedPair(table)
