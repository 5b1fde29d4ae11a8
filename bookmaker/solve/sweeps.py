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
Group = tuple[int, int]
"""A distance in bits, and the mask of candidates that this distance does not concern."""


@dataclass(frozen=True, slots=True)
class Support:
    """For every cell at once: the digits that some candidate of the cell allows beside it.

    A relation is taken apart into what it allows from a distance upwards (“at least d + up”), from a distance
    downwards (“at most d − down”), and the rest by fixed differences or digit by digit, whichever is shorter.
    None where a part is missing.
    """

    layout: Fields
    up: int | None
    down: int | None
    differences: tuple[tuple[int, int], ...]
    digits: tuple[tuple[int, int], ...]

    def of(self, state: int) -> int:
        layout = self.layout
        lows, full = layout.lows, layout.full
        allowed = 0
        if self.up is not None:
            # state ^ (state - lows) holds every bit of a field up to its lowest candidate.
            upto = (state ^ (state | layout.guards) - lows) & layout.everything
            if self.up:
                allowed |= (upto ^ layout.everything) << self.up - 1 & lows * (full >> self.up << self.up)
            else:
                allowed |= ((upto & layout.everything) >> 1 & layout.everything) ^ layout.everything
        if self.down is not None:
            below, step = state, 1
            while step < layout.digits:
                below |= below >> step & lows * (full >> step)
                step *= 2
            allowed |= below >> self.down & lows * (full >> self.down)
        for difference, mask in self.differences:
            allowed |= (state & mask) << difference if difference >= 0 else (state & mask) >> -difference
        for shift, others in self.digits:
            allowed |= (state >> shift & lows) * others
        return allowed


@cache
def support(layout: Fields, beside: Beside) -> Support:
    """Take a relation apart. `beside[d]` is the mask of digits allowed beside d; member 0 is unused."""
    digits, full = layout.digits, layout.full
    rest = list(beside)
    steps: list[int | None] = []
    for upward in (True, False):
        tables = ([_onwards(d, step, upward, digits) for d in range(digits + 1)] for step in range(digits - 1))
        found = next(((i, t) for i, t in enumerate(tables) if not any(map(_exceeds, t[1:], beside[1:]))), None)
        steps.append(None if found is None else found[0])
        if found is not None:
            rest = [kept & ~known for kept, known in zip(rest, found[1], strict=True)]
    pairs = [(d, e) for d in range(1, digits + 1) for e in range(1, digits + 1) if rest[d] >> e - 1 & 1]
    differences: dict[int, int] = {}
    for d, e in pairs:
        differences[e - d] = differences.get(e - d, 0) | 1 << d - 1
    single = {d: rest[d] & full for d, _ in pairs}
    if len(differences) <= len(single):
        by_difference = tuple((difference, layout.lows * mask) for difference, mask in differences.items())
        return Support(layout, steps[0], steps[1], by_difference, ())
    return Support(layout, steps[0], steps[1], (), tuple((d - 1, others) for d, others in single.items()))


def _onwards(digit: int, step: int, upward: bool, digits: int) -> int:
    """The digits at least `step` above a digit, or at least `step` below it."""
    if upward:
        first = digit - 1 + step
        return (1 << digits) - 1 >> first << first if digit else 0
    return (1 << digit - step) - 1 if digit > step else 0


def _exceeds(mask: int, limit: int) -> bool:
    return bool(mask & ~limit)


@dataclass(frozen=True, slots=True)
class Sweep:
    """One relation on all its pairs. `bits` are the candidates of the cells it looks at."""

    bits: int
    forward: Support
    backward: Support
    ahead: tuple[Group, ...]
    behind: tuple[Group, ...]

    def run(self, state: int) -> int:
        """The state without the candidates that lack support; a cell left empty shows a contradiction."""
        allowed = self.forward.of(state)
        for distance, untouched in self.ahead:
            state &= (allowed << distance if distance > 0 else allowed >> -distance) | untouched
        allowed = self.backward.of(state)
        for distance, untouched in self.behind:
            state &= (allowed << distance if distance > 0 else allowed >> -distance) | untouched
        return state


def sweep(layout: Fields, pairs: Iterable[tuple[int, int]], beside: Beside) -> Sweep:
    """The sweep of a relation over pairs of different cells."""
    groups: dict[int, list[int]] = {}
    for a, b in dict.fromkeys(pairs):
        groups.setdefault(b - a, []).append(a)
    ahead, behind, cells = [], [], set[int]()
    for distance, sources in groups.items():
        targets = [source + distance for source in sources]
        cells.update(sources, targets)
        ahead.append((distance * layout.width, ~layout.bits(targets)))
        behind.append((-distance * layout.width, ~layout.bits(sources)))
    bits = layout.bits(cells)
    return Sweep(bits, support(layout, beside), support(layout, reverse(beside)), tuple(ahead), tuple(behind))


@cache
def reverse(beside: Beside) -> Beside:
    """The relation seen from the other cell."""
    digits = range(1, len(beside))
    return (0, *(spread(1, (d - 1 for d in digits if beside[d] >> e - 1 & 1)) for e in digits))


@cache
def follows_from_writing(beside: Beside) -> bool:
    """Does the relation rule out nothing before a digit is written? Then its sweep would find nothing new."""
    full = (1 << len(beside) - 1) - 1
    both = (beside, reverse(beside))
    return all((full & ~allowed).bit_count() <= 1 for table in both for allowed in table[1:])
