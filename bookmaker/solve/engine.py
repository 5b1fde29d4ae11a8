"""Propagation: what follows from a state without guessing.

In: a state. Out: the state in which no reasoning finds anything more, or None for a contradiction. Cheap reasoning
goes first: naked singles, hidden singles, relations, constraints on few cells whose candidates changed, locked
candidates last.
"""

from __future__ import annotations

from dataclasses import dataclass, field

from bookmaker.solve.candidates import CandidateLayout
from bookmaker.solve.houses import Houses
from bookmaker.solve.local import Local
from bookmaker.solve.placement import PlacementMasks
from bookmaker.solve.relations import RelationPropagator


class Meter:
    """What the propagation has done since the engine was made. Counted, never timed: the same on every machine."""

    __slots__ = ("passes", "worked_out")

    def __init__(self) -> None:
        self.passes = 0
        """Runs of relation propagators."""
        self.worked_out = 0
        """Local constraints whose answer was not remembered, each by its `cost`."""

    def effort(self, guesses: int, cells: int) -> int:
        """Guesses and propagation in one measure, fitted to times: a unit is about 0.7 µs of an everyday machine."""
        return guesses * cells + self.passes * cells // 4 + self.worked_out


@dataclass(frozen=True, slots=True)
class Engine:
    """A compiled problem."""

    layout: CandidateLayout
    houses: Houses
    placement: PlacementMasks
    relations: tuple[RelationPropagator, ...]
    locals: tuple[Local, ...]
    watched: tuple[int, ...] = field(init=False)
    """For each cell, how many of the local constraints look at it."""
    meter: Meter = field(init=False, default_factory=Meter)

    def __post_init__(self) -> None:
        watched = [0] * self.layout.cells
        for local in self.locals:
            for cell in local.cells:
                watched[cell] += 1
        object.__setattr__(self, "watched", tuple(watched))

    def settle(self, state: int, unplaced: int, seen: int) -> tuple[int, int, int] | None:
        """Propagate to a fixed point.

        `unplaced` has the guards of the cells, all those of several candidates among them, whose digit has not drawn
        its consequences; `seen` is a state that the relations and local constraints have been through, from which
        this one came. Returns all three anew; then `unplaced` has the cells of several candidates and no others.
        """
        layout, placement, houses, meter = self.layout, self.placement, self.houses, self.meter
        guards, lows, digits = layout.guards, layout.lows, layout.digits
        rise, units = guards - lows, layout.units
        more = bool(self.relations or self.locals)
        while True:
            while True:
                fewer = (state | guards) - lows  # without the lowest candidate; an empty field borrows its guard
                if fewer & guards != guards:
                    return None
                multiple = ((state & fewer) + rise) & guards
                if multiple == unplaced:
                    break
                single = unplaced ^ multiple
                unplaced = multiple
                fresh = state & (single - (single >> digits))
                while fresh:
                    bit = fresh.bit_length() - 1
                    state &= placement[bit]
                    fresh ^= units[bit]
            if unplaced:
                fresh = houses.hidden(state)
                if fresh < 0:
                    return None
                fresh &= unplaced - (unplaced >> digits)
                if fresh:
                    unplaced ^= (fresh + rise) & guards
                    while fresh:
                        bit = fresh.bit_length() - 1
                        state &= placement[bit]
                        fresh ^= units[bit]
                    continue
            if more and state != seen:
                changed = state ^ seen
                seen = state
                for relation in self.relations:
                    if changed & relation.bits:
                        state = relation.run(state)
                        meter.passes += 1
                for local in self.locals:
                    if changed & local.bits:
                        here = state & local.bits
                        keep = local.memory.get(here)
                        if keep is None:
                            keep = local.work_out(here)
                            meter.worked_out += local.cost
                        state &= keep
                if state != seen:
                    continue
            if not unplaced:
                return state, unplaced, seen
            gone = houses.locked(state)
            if not gone:
                return state, unplaced, seen
            state ^= gone
