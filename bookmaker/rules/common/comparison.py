"""Comparisons between neighbours, as signs, roofs and bowls say them: read, checked for sense, and used as bounds.

A comparison is a pair of cells that share a side; the first holds the greater digit. In: a manifest body, or the
comparisons of a rule with a position. Out: comparisons, diagnostics at their places, or deductions.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
from graphlib import CycleError, TopologicalSorter
from itertools import combinations

from bookmaker.puzzle.bits import highest, lowest, span_mask
from bookmaker.puzzle.grid import Grid
from bookmaker.puzzle.position import Position
from bookmaker.reasons import MarkRef, Rung
from bookmaker.reasons.bymark import Bounds
from bookmaker.rules.common.contract import Deduction
from bookmaker.rules.common.deducing.candidates import removed_by, sees
from bookmaker.rules.common.neighbours import Pair
from bookmaker.rules.common.words.wording import cells_listed
from bookmaker.source.cells import read_cell
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.placed import Node, Word, read_items

_STATEMENT = re.compile(r"[^,\n]*[^,\s][^,\n]*")
_TOKEN = re.compile(r"[<>]|[^\s<>]+")
_HINT = "a comparison is written r1c1 > r1c2"


def read_comparisons(body: Node, grid: Grid, collector: Collector) -> tuple[Pair, ...] | None:
    """Comparisons that can all be true; None after any diagnostic."""
    found: dict[Pair, None] = {}
    stairs = Stairs(grid.size)
    sound = True
    typed: list[tuple[Pair, Place]] = []
    for node in read_items(body, "inequality", collector):
        read = list(_statements(node, grid, collector))
        sound &= bool(read) and None not in read
        typed += [comparison for comparison in read if comparison is not None]
    for pair, place in typed:
        diagnostic = _trouble_with(pair, found, stairs, grid)
        if diagnostic:
            collector.error(place, *diagnostic)
            sound = False
        else:
            found[pair] = None
    return tuple(found) if sound and found else None


def _statements(node: Node, grid: Grid, collector: Collector) -> Iterator[tuple[Pair, Place] | None]:
    """The comparisons of one item with the place of each; None for one that can't be read."""
    if not isinstance(node, Word):
        collector.error(node.place, "not-a-comparison", "an inequality is a line of text", _HINT)
        return
    statements = list(_STATEMENT.finditer(node.value))
    if not statements:
        collector.error(node.place, "not-a-comparison", "no cells are compared here", _HINT)
    for statement in statements:
        tokens = [
            Word(node.at_offset(statement.start() + token.start()), token.group())
            for token in _TOKEN.finditer(statement.group())
        ]
        signs = [token.value for token in tokens[1::2]]
        if len(tokens) < 3 or len(tokens) % 2 == 0 or not {*signs} <= {"<", ">"}:
            said = f"“{statement.group().strip()}” does not compare cells"
            collector.error(tokens[0].place, "not-a-comparison", said, _HINT)
            yield None
            continue
        cells = [read_cell(token, grid, collector) for token in tokens[0::2]]
        for index, sign in enumerate(signs):
            one, other = cells[index], cells[index + 1]
            if one is None or other is None:
                yield None
            elif other not in grid.orthogonal(one):
                text = f"no sign can stand between {cells_listed(grid, (one, other))}, which do not share a side"
                collector.error(tokens[2 * index].place, "not-neighbours", text)
                yield None
            else:
                yield ((one, other) if sign == ">" else (other, one)), tokens[2 * index].place


class Stairs:
    """How high each cell stands, kept up to date comparison by comparison: a big grid may have a thousand."""

    def __init__(self, most: int) -> None:
        self._most = most
        self._above: dict[int, list[int]] = {}
        self._height: dict[int, int] = {}

    def takes(self, pair: Pair) -> bool:
        """Take one more comparison, if that makes no circle and no rise of more than `most` cells."""
        greater, lesser = pair
        raised: dict[int, int] = {}
        higher = [(greater, self._height.get(lesser, 1) + 1)]
        while higher:
            cell, height = higher.pop()
            if height > self._most or cell == lesser:
                return False
            if height > raised.get(cell, self._height.get(cell, 1)):
                raised[cell] = height
                higher += ((other, height + 1) for other in self._above.get(cell, ()))
        self._height |= raised
        self._above.setdefault(lesser, []).append(greater)
        return True


def _trouble_with(pair: Pair, before: Collection[Pair], stairs: Stairs, grid: Grid) -> tuple[str, str] | None:
    """Code and text of what is wrong with one more comparison; where nothing is, the stairs have it."""
    both = cells_listed(grid, pair)
    if pair in before:
        return "mark-twice", f"the sign between {both} is listed twice"
    if pair[::-1] in before:
        return "signs-clash", f"{both} are each said to be greater than the other"
    if stairs.takes(pair):
        return None
    try:
        climb = tallest([*before, pair])
    except CycleError as error:
        circle = " < ".join(grid.name(cell) for cell in error.args[1])
        return "signs-circle", f"the signs go round in a circle: {circle}"
    return "signs-climb", f"the signs through {both} need {climb} rising digits, and there are only {grid.size}"


def trouble_together(comparisons: Sequence[Pair], grid: Grid) -> str | None:
    """Why comparisons cannot all be true, as a clause; None where nothing is seen to be wrong."""
    try:
        climb = tallest(comparisons)
    except CycleError as error:
        return "digits would have to rise in a circle: " + " < ".join(grid.name(cell) for cell in error.args[1])
    return f"{climb} digits would have to rise, and there are only {grid.size}" if climb > grid.size else None


def tallest(comparisons: Iterable[Pair]) -> int:
    """How many cells the longest rise has. Raises `graphlib.CycleError` where the comparisons run in a circle."""
    comparisons = list(comparisons)
    below: dict[int, list[int]] = {}
    for greater, lesser in comparisons:
        below.setdefault(greater, []).append(lesser)
    height: dict[int, int] = {}
    for cell in _rising(comparisons):
        height[cell] = 1 + max((height[lesser] for lesser in below.get(cell, ())), default=0)
    return max(height.values(), default=0)


def _rising(comparisons: Sequence[Pair]) -> list[int]:
    """The cells compared, each after all those that it is greater than."""
    sorter: TopologicalSorter[int] = TopologicalSorter()
    for greater, lesser in comparisons:
        sorter.add(greater, lesser)
    return list(sorter.static_order())


def bounds(
    position: Position, comparisons: Sequence[Pair], refer: Callable[[Sequence[Pair]], MarkRef]
) -> Iterator[Deduction]:
    """Each cell is greater than the least digits of those below it, and smaller than the greatest of those above.

    Two cells below it that see each other differ, so one of them holds at least one more than the least. `refer` names
    the marks that make some of the comparisons.
    """
    grid, masks = position.grid, position.masks
    below: dict[int, list[int]] = {}
    above: dict[int, list[int]] = {}
    for greater, lesser in comparisons:
        below.setdefault(greater, []).append(lesser)
        above.setdefault(lesser, []).append(greater)
    order = _rising(comparisons)
    floors = {cell: lowest(masks[cell]) if masks[cell] else 1 for cell in order}
    least = _climbed(grid, order, below, floors)
    # Seen from above, digits rise the other way round.
    top = grid.size + 1
    ceilings = {cell: top - highest(masks[cell]) for cell in order}
    most = _climbed(grid, order[::-1], above, ceilings)
    for cell in order:
        low, high = least[cell], top - most[cell]
        removed = removed_by(position, {cell: span_mask(low, high)})
        if removed:
            cells = (cell, *below.get(cell, ()), *above.get(cell, ()))
            stairs: dict[Pair, None] = {}
            if any(digit < low for _, digit in removed):
                stairs |= dict.fromkeys(_stairs(cell, below, least, floors))
            if any(digit > high for _, digit in removed):
                stairs |= dict.fromkeys((higher, lower) for lower, higher in _stairs(cell, above, most, ceilings))
            claim = Bounds(((cell, low, high),))
            yield Deduction(Rung.SIMPLE, len(cells), cells, removed, refer(tuple(stairs)), claim)


def _stairs(cell: int, below: dict[int, list[int]], least: dict[int, int], own: dict[int, int]) -> Iterator[Pair]:
    """The comparisons, from a cell downwards, that its least digit comes from if not from its own candidates."""
    if least[cell] == own[cell]:
        return
    under = [other for other in below[cell] if least[other] + 2 >= least[cell]]
    steep = [other for other in under if least[other] + 1 == least[cell]]
    for other in steep[:1] or under:  # where none is next to it, it is two that differ
        yield cell, other
        yield from _stairs(other, below, least, own)


def _climbed(grid: Grid, order: Sequence[int], below: dict[int, list[int]], own: dict[int, int]) -> dict[int, int]:
    """The least that each cell can be, from its own least candidate and those below it; `order` goes upwards."""
    least: dict[int, int] = {}
    for cell in order:
        floor = own[cell]
        lesser = below.get(cell, [])
        for other in lesser:
            floor = max(floor, least[other] + 1)
        for one, other in combinations(lesser, 2):
            if least[one] == least[other] and sees(grid, one, other):
                floor = max(floor, least[one] + 2)
        least[cell] = floor
    return least
