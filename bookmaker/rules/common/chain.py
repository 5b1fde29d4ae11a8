"""Chains: lines through neighbouring cells, as many rule kinds use them. How they are read and written.

In: a manifest body. Out: chains, each a tuple of cells in the order typed; or diagnostics at their places. `ChainRule`
is the base of the kinds whose marks are chains.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from collections.abc import Sequence as Cells
from dataclasses import dataclass, replace
from itertools import pairwise
from random import Random
from typing import ClassVar, Self, TypeAlias

from bookmaker.language import Argument, Catalogue
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import Rule
from bookmaker.rules.common.deducing.enumeration import APART, Fits, can_be_filled
from bookmaker.rules.common.parts import Form, Part, Written, runs
from bookmaker.rules.common.words.speech import lines_said
from bookmaker.rules.common.words.wording import counted, ends_named
from bookmaker.source.cells import read_placed_cells
from bookmaker.source.diagnostics import Collector
from bookmaker.source.placed import Node, Sequence, Table, Word, read_fields, read_items

Chain: TypeAlias = tuple[int, ...]

Complaint: TypeAlias = tuple[str, str, str]
"""What is wrong with a chain: a diagnostic's code, text and hint."""


@dataclass(frozen=True)
class ChainRule(Rule):
    """A kind whose marks are chains."""

    form = Form.CHAIN
    usual_cells = (3, 6)
    from_the_middle: ClassVar[bool] = False
    """Does it compare cells at one distance from a chain's middle, so that true ones are found from there outwards?"""

    chains: tuple[Chain, ...]

    @classmethod
    def blank(cls, grid: Grid) -> Self:
        return cls(())

    def parts(self, grid: Grid) -> tuple[Part, ...]:
        return tuple(map(Part, self.chains))

    def with_parts(self, parts: Cells[Part], grid: Grid) -> Self:
        return replace(self, chains=tuple(part.cells for part in parts))

    def arguments(self, words: Catalogue) -> dict[str, Argument]:
        return {"n": len(self.chains)}

    def spoken(self, words: Catalogue, grid: Grid) -> Iterator[str]:
        return lines_said(words, grid, f"{self.kind}-spoken", self.chains)

    def written(self, grid: Grid) -> Written:
        lines: list[Written] = [runs(grid, chain) for chain in self.chains]
        options = self.said_options()
        return {"lines": lines, **options} if options else lines

    def read_off(self, cells: Cells[int], grid: Grid, digits: Cells[int], rng: Random) -> Iterator[Part]:
        for chain in (tuple(cells), tuple(cells)[::-1])[: 1 + self.directed]:
            if self.with_parts((Part(chain),), grid).holds(grid, digits):
                yield Part(chain)

    def leads_on(self, digits: Cells[int], grid: Grid) -> bool:
        """May a chain that is being drawn hold these digits so far? From its start, or from the middle outwards."""
        return True


def read_chains(
    body: Node,
    noun: str,
    grid: Grid,
    collector: Collector,
    least: int = 2,
    most: int | None = None,
    why: str = "",
    objects: Callable[[Chain], Complaint | None] = lambda chain: None,
) -> tuple[Chain, ...] | None:
    """One or more chains of `least` to `most` cells; None after any diagnostic.

    `why` is the hint that says what limits the length; `objects` is asked what else is wrong with a chain.
    """
    nodes = read_items(body, f"the {noun}", collector)
    if isinstance(body, Sequence) and not nodes:
        collector.error(body.place, "no-chains", f"no {noun} is listed here", "name one, or leave out the whole entry")
    good: list[Chain] = []
    for node in nodes:
        chain = read_chain(node, f"the {noun}", grid, collector, least, most, why)
        if chain is None:
            continue
        complaint = objects(chain)
        if chain in good or chain[::-1] in good:
            collector.error(node.place, "chain-twice", f"the {noun} through these cells is listed already")
        elif complaint is not None:
            collector.error(node.place, *complaint)
        else:
            good.append(chain)
    return tuple(good) if good and len(good) == len(nodes) else None


def unfillable(grid: Grid, chain: Chain, noun: str, fits: Fits) -> Complaint | None:
    """The complaint that no digits keep to a chain, even in the empty grid. `fits` reads it in order."""
    if can_be_filled(grid, chain, fits):
        return None
    text = f"no digits fit the {noun} {ends_named(grid, chain)}, even in an empty grid"
    return "chain-unfillable", text, APART


def lines_and_option(body: Node, noun: str, option: str, collector: Collector) -> tuple[Node | None, Node | None]:
    """The lines, and the value of an option if the body is a table with `lines` and that option.

    The lines are None after a diagnostic with the table itself.
    """
    if not isinstance(body, Table):
        return body, None
    fields = read_fields(body, f"the {noun}", collector, ("lines", option), ("lines",))
    known = len(fields) == len(body.entries)
    return fields.get("lines") if known else None, fields.get(option)


def read_chain(
    node: Node, what: str, grid: Grid, collector: Collector, least: int = 2, most: int | None = None, why: str = ""
) -> Chain | None:
    """The cells of a chain in order; a jump, a second visit, too few or too many cells are diagnostics at its place."""
    if not isinstance(node, Word):
        collector.error(node.place, "not-a-chain", f"{what} should be a list of cells such as r1c1-r1c4 r2c5")
        return None
    placed = read_placed_cells(node, grid, collector)
    if placed is None:
        return None
    cells = tuple(cell for cell, _ in placed)
    sound = True
    for (before, first), (after, then) in pairwise(placed):
        if before != after and not grid.touching(before, after):
            text = f"{what} jumps from {grid.name(before)} to {grid.name(after)}, which do not touch"
            new_line = "a line of its own begins after a dash: “- r1c1-r1c4”"
            hint = (
                new_line if then.line > first.line else "each cell of a chain touches the next, by a side or a corner"
            )
            collector.error(node.place, "chain-jumps", text, hint)
            sound = False
    twice = next((cell for i, cell in enumerate(cells) if cell in cells[:i]), None)
    if twice is not None:
        collector.error(node.place, "chain-returns", f"{what} visits {grid.name(twice)} twice")
        sound = False
    if sound and len(cells) < least:
        text = f"{what} has {counted(len(cells), 'cell')} and needs at least {counted(least, 'cell')}"
        collector.error(node.place, "chain-short", text)
        sound = False
    if sound and most is not None and len(cells) > most:
        text = f"{what} has {counted(len(cells), 'cell')} and may have at most {counted(most, 'cell')}"
        collector.error(node.place, "chain-long", text, why)
        sound = False
    return cells if sound else None
