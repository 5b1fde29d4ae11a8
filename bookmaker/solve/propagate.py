"""First, plain propagation: candidates as one mask per cell.

In: a `Problem`. Out: `Propagator`, which narrows a list of masks (digit d is bit d - 1) until nothing changes.
"""

from __future__ import annotations

from bookmaker.solve.problem import (
    Allowed,
    Automaton,
    Combination,
    Constraint,
    Count,
    Different,
    Problem,
    Relation,
    Sum,
)


class Contradiction(Exception):
    """Some constraint cannot be kept any more."""


def _low(mask: int) -> int:
    return (mask & -mask).bit_length()


class Propagator:
    """Narrows candidate masks by every constraint of a problem until nothing changes."""

    def __init__(self, problem: Problem) -> None:
        self.problem = problem
        self.everything = (1 << problem.digits) - 1

    def start(self) -> list[int]:
        return [self.everything] * self.problem.cells

    def narrow(self, masks: list[int]) -> None:
        """Narrow in place to a fixed point; raises Contradiction."""
        while True:
            before = masks[:]
            for constraint in self.problem.constraints:
                self._apply(constraint, masks)
                if 0 in masks:
                    raise Contradiction
            if masks == before:
                return

    def _apply(self, constraint: Constraint, masks: list[int]) -> None:
        match constraint:
            case Allowed(cells, digits):
                for cell in cells:
                    masks[cell] &= digits
            case Different(cells):
                self._different(cells, masks)
            case Relation(pairs, beside):
                for a, b in pairs:
                    masks[a], masks[b] = _related(masks[a], masks[b], beside)
                    if a == b:
                        masks[a] &= sum(1 << (d - 1) for d in range(1, len(beside)) if beside[d] >> (d - 1) & 1)
            case Combination(cells, sets):
                self._different(cells, masks)
                union = 0
                for digits in sets:
                    if all(masks[cell] & digits for cell in cells):
                        union |= digits
                for cell in cells:
                    masks[cell] &= union
                if all(masks[cell] & (masks[cell] - 1) == 0 for cell in cells):
                    held = 0
                    for cell in cells:
                        held |= masks[cell]
                    if held not in sets:
                        raise Contradiction
            case Sum(terms, least, most):
                _sum(terms, least, most, masks)
            case Count(cells, digits, least, most):
                surely = sum(1 for cell in cells if not masks[cell] & ~digits)
                maybe = sum(1 for cell in cells if masks[cell] & digits)
                if surely > most or maybe < least:
                    raise Contradiction
                for cell in cells:
                    if masks[cell] & digits and masks[cell] & ~digits:
                        if surely == most:
                            masks[cell] &= ~digits
                        elif maybe == least:
                            masks[cell] &= digits
            case Automaton(cells, steps, accept):
                _automaton(cells, steps, accept, masks)

    def _different(self, cells: tuple[int, ...], masks: list[int]) -> None:
        for i, cell in enumerate(cells):
            mask = masks[cell]
            if mask & (mask - 1) == 0:
                for j, other in enumerate(cells):
                    if i != j:
                        masks[other] &= ~mask
        if len(cells) == self.problem.digits:
            for bit in (1 << d for d in range(self.problem.digits)):
                places = [cell for cell in cells if masks[cell] & bit]
                if not places:
                    raise Contradiction
                if len(places) == 1:
                    masks[places[0]] &= bit
        elif len(cells) > self.problem.digits:
            raise Contradiction


def _related(at_a: int, at_b: int, beside: tuple[int, ...]) -> tuple[int, int]:
    kept = allowed = 0
    for d in range(1, len(beside)):
        if at_a >> (d - 1) & 1 and beside[d] & at_b:
            kept |= 1 << (d - 1)
            allowed |= beside[d]
    return kept, at_b & allowed


def _sum(terms: tuple[tuple[int, int], ...], least: int, most: int, masks: list[int]) -> None:
    factors: dict[int, int] = {}
    for cell, factor in terms:
        factors[cell] = factors.get(cell, 0) + factor
    ends = {at: sorted((factor * _low(masks[at]), factor * masks[at].bit_length())) for at, factor in factors.items()}
    floor, ceiling = sum(end[0] for end in ends.values()), sum(end[1] for end in ends.values())
    for cell, factor in factors.items():
        low, high = ends[cell]
        for d in range(1, masks[cell].bit_length() + 1):
            if factor * d + floor - low > most or factor * d + ceiling - high < least:
                masks[cell] &= ~(1 << (d - 1))
    if floor > most or ceiling < least:
        raise Contradiction


def _automaton(
    cells: tuple[int, ...], steps: tuple[tuple[int, ...], ...], accept: frozenset[int], masks: list[int]
) -> None:
    reached: list[set[int]] = [{0}]
    for cell in cells:
        digits = [d for d in range(1, masks[cell].bit_length() + 1) if masks[cell] >> (d - 1) & 1]
        reached.append({steps[state][d] for state in reached[-1] for d in digits} - {-1})
    live = reached[-1] & accept
    if not live:
        raise Contradiction
    for i in range(len(cells) - 1, -1, -1):
        kept, back = 0, set()
        for state in reached[i]:
            for d in range(1, masks[cells[i]].bit_length() + 1):
                if masks[cells[i]] >> (d - 1) & 1 and steps[state][d] in live:
                    kept |= 1 << (d - 1)
                    back.add(state)
        masks[cells[i]] &= kept
        live = back
