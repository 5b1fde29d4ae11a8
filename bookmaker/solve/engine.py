"""Propagation: what follows from a state without guessing.

In: a position. Out: the position in which no reasoning finds anything more, or None for a contradiction. Cheap
reasoning goes first: naked singles, hidden singles, relations and cages whose candidates changed, locked candidates,
then sums and lines, and digits with two places last.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import NamedTuple

from bookmaker.solve.consequences import Consequences
from bookmaker.solve.fields import Fields
from bookmaker.solve.houses import Houses
from bookmaker.solve.local import Reasoner
from bookmaker.solve.pairs import PairedDigits
from bookmaker.solve.sweeps import Sweep


class Position(NamedTuple):
    """A state, and how far reasoning has gone in it: what was drawn from an earlier state is not drawn again."""

    state: int
    unwritten: int
    """Candidates but for those whose consequences are drawn."""
    quick: int
    """The state that sweeps and quick constraints have been through."""
    slow: int
    """The state that slow constraints have been through."""
    paired: tuple[int, ...]
    """Digits with two places that have been used, by family of houses."""


@dataclass(frozen=True, slots=True)
class Engine:
    """A compiled problem. `pairs` is None where two places of a digit say no more than locked candidates do."""

    layout: Fields
    houses: Houses
    writing: Consequences
    sweeps: tuple[Sweep, ...]
    quick: tuple[Reasoner, ...]
    slow: tuple[Reasoner, ...]
    pairs: PairedDigits | None

    def start(self, state: int) -> Position:
        """A state of which nothing is known yet."""
        paired = (0,) * self.houses.families if self.pairs is not None else ()
        return Position(state, self.layout.everything, 0, 0, paired)

    def write(self, position: Position, bit: int) -> Position:
        """The position with a candidate written."""
        state, unwritten, quick, slow, paired = position
        return Position(state & self.writing[bit], unwritten ^ self.layout.units[bit], quick, slow, paired)

    def settle(self, position: Position) -> Position | None:
        """Propagate to a fixed point."""
        state, unwritten, quick_seen, slow_seen, paired = position
        layout, writing, houses = self.layout, self.writing, self.houses
        guards, lows, digits = layout.guards, layout.lows, layout.digits
        rise, units = guards - lows, layout.units
        quick = bool(self.quick or self.sweeps)
        while True:
            while True:
                if (state + rise) & guards != guards:
                    return None
                multiple = ((state & ((state | guards) - lows)) + rise) & guards
                single = guards ^ multiple
                fresh = state & (single - (single >> digits)) & unwritten
                if not fresh:
                    break
                unwritten ^= fresh
                while fresh:
                    bit = fresh.bit_length() - 1
                    state &= writing[bit]
                    fresh ^= units[bit]
            if multiple:
                fresh = houses.hidden(state)
                if fresh < 0:
                    return None
                fresh &= unwritten
                if fresh:
                    unwritten ^= fresh
                    while fresh:
                        bit = fresh.bit_length() - 1
                        state &= writing[bit]
                        fresh ^= units[bit]
                    continue
            if quick and state != quick_seen:
                changed, quick_seen = state ^ quick_seen, state
                for sweep in self.sweeps:
                    if changed & sweep.bits:
                        state = sweep.run(state)
                state = _consulted(self.quick, state, changed)
                if state != quick_seen:
                    continue
            if multiple:
                gone = houses.locked(state)
                if gone:
                    state ^= gone
                    continue
            if self.slow and state != slow_seen:
                changed, slow_seen = state ^ slow_seen, state
                state = _consulted(self.slow, state, changed)
                if state != slow_seen:
                    continue
            if multiple and self.pairs is not None:
                before = state
                state, paired = self.pairs.used(state, paired)
                if state != before:
                    continue
            return Position(state, unwritten, quick_seen, slow_seen, paired)


def _consulted(constraints: Sequence[Reasoner], state: int, changed: int) -> int:
    """The state after every constraint that looks at a changed candidate had its say."""
    for constraint in constraints:
        if changed & constraint.bits:
            here = state & constraint.bits
            keep = constraint.memory.get(here)
            state &= constraint.work_out(here) if keep is None else keep
    return state
