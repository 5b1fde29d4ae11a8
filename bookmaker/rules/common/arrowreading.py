"""Arrows as typed: a circle or an oval, and the shafts that leave it.

In: one item of the manifest's list. Out: an `Arrow` whose shafts can add up to what its circle holds, or diagnostics at
their places.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import reduce
from itertools import dropwhile, pairwise, product

from bookmaker.puzzle.bits import digits_in
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.chain import Chain, read_chain
from bookmaker.rules.common.deducing.sums import open_limits
from bookmaker.rules.common.words.wording import number
from bookmaker.source.cells import read_cells
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Word, read_fields, read_items

LONGEST_OVAL = 3


@dataclass(frozen=True, slots=True)
class Arrow:
    """A circle of one to three cells in reading order, and shafts that each begin beside it, without the circle."""

    circle: tuple[int, ...]
    shafts: tuple[Chain, ...]
    down: bool = False
    """Do several cells of its circle lie in a column?"""

    @property
    def weights(self) -> tuple[int, ...]:
        """What a digit in each cell of the circle counts: 100, 10, 1."""
        return tuple(10**power for power in reversed(range(len(self.circle))))

    @property
    def way(self) -> str:
        """How the number in an oval is read, for a message; nothing where the circle is one cell."""
        return "" if len(self.circle) == 1 else "down" if self.down else "across"


def arrow_on(grid: Grid, circle: tuple[int, ...], shafts: Iterable[Chain]) -> Arrow:
    """The arrow with these cells on a grid."""
    return Arrow(circle, tuple(shafts), len(circle) > 1 and grid.column(circle[0]) == grid.column(circle[1]))


def read_arrow(node: Node, grid: Grid, collector: Collector) -> Arrow | None:
    """An arrow from a chain that begins in its circle, or from a table with the two; None after a diagnostic."""
    if isinstance(node, Word):
        chain = read_chain(node, "the arrow", grid, collector, 2)
        placed: list[tuple[Chain, Node]] | None = None if chain is None else [(chain[1:], node)]
        circle = None if chain is None else chain[:1]
    else:
        fields = read_fields(node, "an arrow", collector, ("circle", "shafts"), ("circle", "shafts"))
        circle = _read_circle(fields["circle"], grid, collector) if "circle" in fields else None
        placed = None
        if circle is not None and "shafts" in fields:
            placed = _read_shafts(fields["shafts"], circle, grid, collector)
    if circle is None or placed is None:
        return None
    fits = [_can_add_up(circle, shaft, shaft_node, grid, collector) for shaft, shaft_node in placed]
    return arrow_on(grid, circle, (shaft for shaft, _ in placed)) if all(fits) else None


def _read_circle(node: Node, grid: Grid, collector: Collector) -> tuple[int, ...] | None:
    if not isinstance(node, Word):
        collector.error(node.place, "not-a-circle", "the circle should be a cell such as r5c5, an oval two or three")
        return None
    cells = read_cells(node, grid, collector)
    if cells is None:
        return None
    circle = tuple(sorted(cells))
    joined = all(after in grid.orthogonal(before) for before, after in pairwise(circle))
    in_line = len({grid.row(cell) for cell in circle}) == 1 or len({grid.column(cell) for cell in circle}) == 1
    if len(circle) > LONGEST_OVAL:
        collector.error(node.place, "oval-long", f"an oval covers at most three cells, not {number(len(circle))}")
    elif len(circle) > 1 and not (in_line and joined):
        collector.error(
            node.place, "oval-crooked", "the cells of an oval should follow each other in a row or a column"
        )
    elif len(circle) > 1 and grid.worth(grid.size) > 9:
        text = f"an oval is read as a number, which a {grid.size}×{grid.size} grid has too many digits for"
        collector.error(node.place, "oval-size", text, "use a circle of one cell")
    else:
        return circle
    return None


def _read_shafts(
    body: Node, circle: tuple[int, ...], grid: Grid, collector: Collector
) -> list[tuple[Chain, Node]] | None:
    nodes = read_items(body, "the shafts", collector)
    if not nodes:
        collector.error(body.place, "no-chains", "the arrow has no shaft")
    good: list[tuple[Chain, Node]] = []
    for node in nodes:
        cells = read_chain(node, "the shaft", grid, collector, 1)
        if cells is None:
            continue
        shaft = tuple(dropwhile(circle.__contains__, cells))
        inside = next((cell for cell in shaft if cell in circle), None)
        if not shaft:
            collector.error(node.place, "chain-short", "the shaft does not leave the circle")
        elif inside is not None:
            collector.error(
                node.place, "shaft-in-circle", f"the shaft comes back into its circle at {grid.name(inside)}"
            )
        elif not any(grid.touching(shaft[0], cell) for cell in circle):
            text = f"the shaft begins at {grid.name(shaft[0])}, which does not touch the circle"
            collector.error(node.place, "shaft-apart", text, "name its cells from the one beside the circle to the tip")
        else:
            good.append((shaft, node))
    return good if good and len(good) == len(nodes) else None


def _can_add_up(circle: tuple[int, ...], shaft: Chain, node: Node, grid: Grid, collector: Collector) -> bool:
    least, most = open_limits(grid, shaft)
    numbers = numbers_in([grid.all_digits] * len(circle), grid)
    low, high = min(numbers), max(numbers)
    if least <= high and most >= low:
        return True
    side = f"at least {least}" if least > high else f"at most {most}"
    what = "circle" if len(circle) == 1 else "oval"
    collector.error(node.place, "arrow-sum", f"this shaft adds up to {side}, but its {what} holds {low} to {high}")
    return False


def numbers_in(masks: Sequence[int], grid: Grid) -> Mapping[int, tuple[int, ...]]:
    """What a circle can hold: each number with its digits, which differ as they stand in one row or column. No number
    of several digits begins with 0."""
    ways = product(*(digits_in(mask) for mask in masks))
    return {
        reduce(lambda n, digit: 10 * n + grid.worth(digit), way, 0): way
        for way in ways
        if len(set(way)) == len(way) and (len(way) == 1 or grid.worth(way[0]))
    }
