"""What a constraint leaves possible, taken as a whole: the candidates that some filling of its cells allows.

In: a constraint and the candidates of its cells. Out: the candidates that stay. This is what a patient person finds by
listing all fillings of one cage or one line. Relations between pairs of cells are read on boards (`relations.py`).
"""

from __future__ import annotations

from typing import TypeAlias

from bookmaker.puzzle.bits import digits_in
from bookmaker.solve.problem import Automaton, Combination, Count, DifferentCount, Sum

Whole: TypeAlias = Combination | Sum | Count | DifferentCount | Automaton
"""Constraints that are read as a whole, cell by cell."""


def narrow(constraint: Whole, masks: list[int]) -> bool:
    """Narrow the masks of a constraint's cells in place; False where it cannot be kept."""
    match constraint:
        case Combination(cells, sets):
            return _combination(cells, sets, masks)
        case Sum(terms, least, most):
            return _sum(terms, least, most, masks)
        case Count(cells, digits, least, most):
            return _count(cells, digits, least, most, masks)
        case DifferentCount(cells, least, most):
            return _different(cells, least, most, masks)
        case Automaton(cells, steps, accept):
            return _automaton(cells, steps, accept, masks)


def _combination(cells: tuple[int, ...], sets: frozenset[int], masks: list[int]) -> bool:
    """Each digit that some arrangement of some set gives to the cell."""
    kept = [0] * len(cells)
    have = 0
    for cell in cells:
        have |= masks[cell]
    for digits in sets:
        if digits & ~have:
            continue
        _arrange(cells, masks, digits, kept)
    for i, cell in enumerate(cells):
        masks[cell] = kept[i]
    return all(kept)


def _arrange(cells: tuple[int, ...], masks: list[int], digits: int, kept: list[int]) -> None:
    """Add to `kept` what each cell holds in the arrangements of one set: sets of used digits, cell by cell."""
    ahead: list[set[int]] = [{0}]
    for cell in cells:
        reached = set()
        for used in ahead[-1]:
            free = masks[cell] & digits & ~used
            while free:
                low = free & -free
                reached.add(used | low)
                free ^= low
        ahead.append(reached)
    live = ahead[-1]
    for i in range(len(cells) - 1, -1, -1):
        back = set()
        for used in ahead[i]:
            free = masks[cells[i]] & digits & ~used
            while free:
                low = free & -free
                if used | low in live:
                    kept[i] |= low
                    back.add(used)
                free ^= low
        live = back


def _sum(terms: tuple[tuple[int, int], ...], least: int, most: int, masks: list[int]) -> bool:
    """Totals reached from the front and from the back, as bits shifted so that the lowest is bit 0."""
    factors: dict[int, int] = {}
    for cell, factor in terms:
        factors[cell] = factors.get(cell, 0) + factor
    cells = [(cell, factor, digits_in(masks[cell])) for cell, factor in factors.items()]
    ahead: list[set[int]] = [{0}]
    for _, factor, digits in cells:
        ahead.append({total + factor * digit for total in ahead[-1] for digit in digits})
    live = {total for total in ahead[-1] if least <= total <= most}
    for i in range(len(cells) - 1, -1, -1):
        cell, factor, digits = cells[i]
        kept, back = 0, set()
        for digit in digits:
            came = {total - factor * digit for total in live} & ahead[i]
            if came:
                kept |= 1 << (digit - 1)
                back |= came
        masks[cell] = kept
        live = back
    return bool(live)


def _count(cells: tuple[int, ...], digits: int, least: int, most: int, masks: list[int]) -> bool:
    surely = sum(1 for cell in cells if not masks[cell] & ~digits)
    maybe = sum(1 for cell in cells if masks[cell] & digits)
    if surely > most or maybe < least:
        return False
    for cell in cells:
        if masks[cell] & digits and masks[cell] & ~digits:
            if surely == most:
                masks[cell] &= ~digits
            elif maybe == least:
                masks[cell] &= digits
    return True


def _different(cells: tuple[int, ...], least: int, most: int, masks: list[int]) -> bool:
    """Sets of digits met, cell by cell: all that the cells before it allow, and those that the cells behind it need."""
    ahead: list[set[int]] = [{0}]
    for cell in cells:
        bits = [1 << (digit - 1) for digit in digits_in(masks[cell])]
        ahead.append({met | bit for met in ahead[-1] for bit in bits if (met | bit).bit_count() <= most})
    live = {met for met in ahead[-1] if met.bit_count() >= least}
    for i in range(len(cells) - 1, -1, -1):
        kept, back = 0, set()
        for digit in digits_in(masks[cells[i]]):
            bit = 1 << (digit - 1)
            came = {met for met in ahead[i] if met | bit in live}
            if came:
                kept |= bit
                back |= came
        masks[cells[i]] = kept
        live = back
    return bool(live)


def _automaton(
    cells: tuple[int, ...], steps: tuple[tuple[int, ...], ...], accept: frozenset[int], masks: list[int]
) -> bool:
    ahead: list[set[int]] = [{0}]
    for cell in cells:
        digits = digits_in(masks[cell])
        ahead.append({steps[at][digit] for at in ahead[-1] for digit in digits} - {-1})
    live = ahead[-1] & accept
    for i in range(len(cells) - 1, -1, -1):
        kept, back = 0, set()
        for digit in digits_in(masks[cells[i]]):
            came = {at for at in ahead[i] if steps[at][digit] in live}
            if came:
                kept |= 1 << (digit - 1)
                back |= came
        masks[cells[i]] = kept
        live = back
    return bool(live)
