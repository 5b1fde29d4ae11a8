"""The one arrangement of a solved grid that all its look-alikes share: its canonical form.

In: a grid with its solution, whether digits may be renamed, and the cells that are marked (the givens). Out: an
`Arrangement`, the way to lay the grid out so that two of them come out alike exactly if a move carries one to the
other. Rows and columns are free to be laid out in any order and exchanged: the regions are laid out with them and
belong to what must come out alike.

Cells get names that do not depend on how they lie (`labels.py`). Where every cell has a name of its own, the names
say the order. Where cells share one, each of the smallest group in turn is singled out and the names are refined again
(individualisation and refinement, as in B. McKay, A. Piperno, “Practical graph isomorphism, II”, J. Symbolic
Computation 60, 2014); of all ways that end so, the least one is taken. A way that a symmetry already found maps to one
that has been looked at is left out.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from bookmaker.puzzle.grid import Grid
from bookmaker.symmetry.canonical_labels import canonical_labels, refined, singled_out

Cells = tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Arrangement:
    """`at[i]` is the cell that comes to lie at place i, and `digits[d]` what digit d is called there.

    `text` says what lies there: regions, digits, and where the marked cells are.
    """

    at: Cells
    digits: tuple[int, ...]
    text: bytes

    def images(self) -> Cells:
        """The place of each cell."""
        places = [0] * len(self.at)
        for place, cell in enumerate(self.at):
            places[cell] = place
        return tuple(places)


Judge = Callable[[Arrangement], str]
"""Tells what further lies there (the marks of rules), where arrangements of equal text must be told apart."""


def _nothing_more(arrangement: Arrangement) -> str:
    return ""


def arranged(
    grid: Grid, solution: Sequence[int], marked: int = 0, renamed: bool = True, judge: Judge = _nothing_more
) -> Arrangement:
    """The canonical arrangement. `marked` is a board; `renamed` says that digits may be renamed in any way."""
    return _Search(grid, solution, marked, renamed, judge).best()


def automorphisms(grid: Grid, solution: Sequence[int], marked: int = 0, renamed: bool = True) -> Iterator[Arrangement]:
    """All arrangements whose text is that of the canonical one: as many as moves that carry the grid to itself."""
    search = _Search(grid, solution, marked, renamed, _nothing_more)
    ends = list(search.ends(search.start(), (), every=True))
    least = min(end.text for end in ends)
    return (end for end in ends if end.text == least)


class _Search:
    def __init__(self, grid: Grid, solution: Sequence[int], marked: int, renamed: bool, judge: Judge) -> None:
        self.grid, self.solution, self.marked, self.renamed, self.judge = grid, solution, marked, renamed, judge
        self.least: Arrangement | None = None
        self.more: str | None = None
        """What the judge says of the least, once it has been asked."""
        self.symmetries: list[Cells] = []

    def best(self) -> Arrangement:
        for end in self.ends(self.start(), ()):
            self.weigh(end)
        assert self.least is not None
        return self.least

    def start(self) -> list[int]:
        seeds = () if self.renamed else self.solution
        return canonical_labels(self.grid, self.solution, self.marked, seeds)

    def ends(self, names: list[int], chosen: Cells, every: bool = False) -> Iterator[Arrangement]:
        """All ways to single out cells until each has a name of its own; `every` leaves none out."""
        group = _smallest_group(names)
        if not group:
            yield self.laid_out(names)
            return
        tried: list[int] = []
        for cell in group:
            if every or cell not in self.orbit(tried, chosen):
                tried.append(cell)
                further = refined(self.grid, self.solution, singled_out(names, cell, len(chosen)))
                yield from self.ends(further, (*chosen, cell), every)

    def orbit(self, cells: list[int], chosen: Cells) -> set[int]:
        """Where the symmetries found so far, of those that keep the chosen cells, carry these cells."""
        keeping = [images for images in self.symmetries if all(images[c] == c for c in chosen)]
        reached, edge = set(cells), list(cells)
        while edge:
            here = edge.pop()
            fresh = {images[here] for images in keeping} - reached
            reached |= fresh
            edge.extend(fresh)
        return reached

    def weigh(self, end: Arrangement) -> None:
        """Keep the least end; one that is equal to it shows a symmetry."""
        if self.least is None or end.text < self.least.text:
            self.least, self.more = end, None
            return
        if end.text > self.least.text:
            return
        if self.more is None:
            self.more = self.judge(self.least)
        more = self.judge(end)
        if more < self.more:
            self.least, self.more = end, more
        elif more == self.more:
            images = [0] * len(end.at)
            for one, other in zip(self.least.at, end.at, strict=True):
                images[one] = other
            self.symmetries.append(tuple(images))
            back = [0] * len(images)
            for cell, image in enumerate(images):
                back[image] = cell
            self.symmetries.append(tuple(back))

    def laid_out(self, names: Sequence[int]) -> Arrangement:
        """The grid in the order of its cells' names, all of which differ."""
        n = self.grid.size
        corner = min(self.grid.cells, key=names.__getitem__)
        row = [corner - corner % n + i for i in range(n)]
        column = [corner % n + n * i for i in range(n)]
        row.sort(key=names.__getitem__)
        column.sort(key=names.__getitem__)
        if [names[cell] for cell in row] < [names[cell] for cell in column]:
            across = [cell % n for cell in row]
            at = tuple([cell - cell % n + c for cell in column for c in across])
        else:
            down = [cell - cell % n for cell in column]
            at = tuple([r + cell % n for cell in row for r in down])
        digits = self.digits_by(at)
        called = bytes([digits[self.solution[cell]] for cell in at])
        marks = bytes([self.marked >> cell & 1 for cell in at]) if self.marked else b""
        return Arrangement(at, digits, self.regions_by(at) + called + marks)

    def digits_by(self, at: Cells) -> tuple[int, ...]:
        """New names for the digits, in the order in which they are met."""
        if not self.renamed:
            return tuple(range(self.grid.size + 1))
        digits = [0] * (self.grid.size + 1)
        for number, cell in enumerate(at[: self.grid.size], start=1):
            digits[self.solution[cell]] = number
        return tuple(digits)

    def regions_by(self, at: Cells) -> bytes:
        """The region of each place, numbered in the order in which they are met."""
        met: dict[int, int] = {}
        return bytes([met.setdefault(self.grid.region_of[cell], len(met)) for cell in at]) if self.grid.regions else b""


def _smallest_group(names: Sequence[int]) -> list[int]:
    """The cells of the smallest group that shares a name, the least name of equal groups; none where all differ."""
    if len(set(names)) == len(names):
        return []
    groups: dict[int, list[int]] = {}
    for cell, name in enumerate(names):
        groups.setdefault(name, []).append(cell)
    return min((group for group in groups.values() if len(group) > 1), key=lambda group: (len(group), names[group[0]]))
