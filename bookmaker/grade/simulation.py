"""Twenty-eight solvers fill in all singles, each with luck of their own: how much looking a placement takes on average.

In: a `State` with openings, and the solution. Out: for each placement until no single is left, the mean effort of the
solvers at that count of empty cells. All solvers end in the same position, whatever their order.

Where several openings can be seen, which one falls to the eye first is chance, weighted by how visible each is. The
chance is drawn once per cell and solver by the cell's canonical label (`symmetry/canonical_labels.py`): the same puzzle
always gets the same effort, turning or relabelling it changes nothing, and one more given leaves the luck of all cells
as it was. For each cell the draws are spread evenly over the distribution (Latin hypercube sampling: M. McKay, R.
Beckman, W. Conover, Technometrics 21, 1979), so that few solvers do the work of many; the last cells are soon all open,
luck hardly matters there, and fewer still fill them in. What is left of chance is 2.8 % of an effort (standard
deviation; 1.8 % with 64 solvers, which take twice the time).
"""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import cache, lru_cache
from hashlib import shake_128
from itertools import zip_longest

from bookmaker.grade.effort import Practice, Weights
from bookmaker.logic.state import State
from bookmaker.puzzle.bits import cells_on, digits_in
from bookmaker.reasons import Rung

SOLVERS = 28

WAYS = 1021
"""Ways to spread the draws over the solvers."""

LAST, FEW = 4, 4
"""The last fourth of a grid's cells is filled in by one solver in four only."""


@dataclass(frozen=True, slots=True)
class SimulatedSolver:
    """Luck, how long each cell waits to be seen, and what practice there is by now."""

    waits: tuple[float, ...]
    practice: Practice = field(default_factory=Practice)


def solvers(labels: Sequence[int]) -> list[SimulatedSolver]:
    """All of them, at the start; where cells share a way, their labels' last bits see to it that no two wait equally
    long."""
    ways = [label % WAYS for label in labels]
    shared = Counter(ways)
    waits = [
        _spread(way) if shared[way] == 1 else [wait + (label & 0xFFFFF) for wait in _spread(way)]
        for way, label in zip(ways, labels, strict=True)
    ]
    return [SimulatedSolver(its) for its in zip(*waits, strict=True)]


@cache
def _spread(way: int) -> tuple[float, ...]:
    """How long each solver leaves an opening of weight 1 unseen: of an exponential distribution a share for each. These
    are whole numbers, whose last bits tell one way from another; floats, since those are divided faster."""
    drawn = shake_128(way.to_bytes(2, "little")).digest(3 * SOLVERS)
    ranks = sorted(range(SOLVERS), key=lambda solver: drawn[3 * solver : 3 * solver + 2])
    waits = []
    for solver, rank in enumerate(ranks):
        within = (drawn[3 * solver + 2] + 0.5) / 256
        waits.append(float((round(-math.log((rank + within) / SOLVERS) * (1 << 20)) << 20) + way))
    return tuple(waits)


def mean_looks(
    state: State, solution: Sequence[int], everyone: Sequence[SimulatedSolver], weights: Weights
) -> list[float]:
    """The mean effort of each placement from here until no single is left."""
    stretch = _Stretch(state, solution, weights)
    last = len(solution) // LAST
    runs = [stretch.run(solver, last if number % FEW else 0) for number, solver in enumerate(everyone)]
    steps = [[look for look in looks if look] for looks in zip_longest(*runs)]
    return [sum(looks) / len(looks) for looks in steps]


Loss = tuple[int, int, int, tuple[int, ...]]
"""A spot that a placement takes away: its key; its cell, if it is a candidate less for it; how much it counts in the
areas; and these areas, each for the spot's digit."""


class _Removals(dict[int, list[Loss]]):
    """What goes when a digit is placed, on a grid with these areas and peers; worked out where it is asked for.

    A spot is a digit in a cell: its key is digit times cells plus cell. Digit 0 means that the cell is empty. An area
    counts the spots of each digit in whole grids of cells and adds their cells up in the same number, which tells the
    cell of the last one.
    """

    def __init__(self, homes: tuple[tuple[int, ...], ...], peers: tuple[int, ...], areas: int, digits: int) -> None:
        super().__init__()
        self.cells = len(homes)
        self.peers = peers
        self.areas_of = [tuple(digit * areas + area for area in home) for digit in range(digits + 1) for home in homes]
        """For each key the areas that count the spot."""

    def __missing__(self, key: int) -> list[Loss]:
        cell = key % self.cells
        settled = self.areas_of[key]  # by the placement itself
        self[key] = lost = []
        for peer in cells_on(self.peers[cell]):
            spot = key - cell + peer
            counting = tuple(area for area in self.areas_of[spot] if area not in settled)
            lost.append((spot, peer, self.cells + peer, counting))
        return lost


@lru_cache(maxsize=16)
def _removals(homes: tuple[tuple[int, ...], ...], peers: tuple[int, ...], areas: int, digits: int) -> _Removals:
    return _Removals(homes, peers, areas, digits)


class _Stretch:
    """The openings at the start of a stretch of singles, from which every solver sets out."""

    def __init__(self, state: State, solution: Sequence[int], weights: Weights) -> None:
        ground, masks = state.ground, state.masks()
        digits = len(state.boards) - 1
        removals = _removals(ground.areas_of, ground.peers, len(ground.areas), digits)
        self.solution = solution
        self.formula = weights
        self.empty = state.empty.bit_count()
        self.cells = cells = removals.cells
        lines = [weights.box if area.box else weights.line for area in ground.areas]
        self.worth = [float(weights.last - line) for line in lines] + [float(line) for line in lines] * digits
        """How much more visible the cell of the last spot is, for each area and digit."""
        self.left = [mask.bit_count() for mask in masks] + [0]
        self.stands = bytearray(len(removals.areas_of))
        self.areas = [0] * len(self.worth)
        for cell in cells_on(state.empty):
            for digit in (0, *digits_in(masks[cell])):
                key = digit * cells + cell
                self.stands[key] = True
                for area in removals.areas_of[key]:
                    self.areas[area] += cells + cell
        self.open: dict[int, float] = {}
        for area, count in enumerate(self.areas):
            if cells <= count < 2 * cells:
                cell = count - cells
                self.open[cell] = self.open.get(cell, 0) + self.worth[area]
        self.lost: dict[int, list[Loss]] = {}
        """For each cell what its digit takes away: candidates of other cells, its own others, its being empty."""
        for cell in cells_on(state.empty):
            if self.left[cell] == 1:
                self.open[cell] = self.open.get(cell, 0) + weights.naked
            struck = removals[solution[cell] * cells + cell]
            lost = self.lost[cell] = [loss for loss in struck if self.stands[loss[0]]]
            for digit in (0, *digits_in(masks[cell])):
                if digit != solution[cell]:
                    key = digit * cells + cell
                    lost.append((key, cells, cells + cell, removals.areas_of[key]))

    def run(self, solver: SimulatedSolver, last: int) -> list[float]:
        """One solver's effort for each placement in the order in which openings are found, but for the `last` cells."""
        wait, practice = solver.waits, solver.practice
        solution, all_lost, worth, cells = self.solution, self.lost, self.worth, self.cells
        areas, left, stands, opened = self.areas[:], self.left[:], self.stands[:], self.open.copy()
        misses, same_digit, fresh = self.formula.misses, float(self.formula.same_digit), self.formula.fresh
        naked, line = float(self.formula.naked), self.formula.line
        remaining, two = self.empty, 2 * cells
        efforts: list[float] = []
        digit = 0
        new: dict[int, float] = {}  # what the last placement has opened
        while remaining > last and (opened or new):
            visible, soonest, found = 0.0, math.inf, -1
            for cell, weight in opened.items():
                if solution[cell] == digit:
                    weight *= same_digit
                visible += weight
                until = wait[cell] / weight
                if until < soonest:
                    soonest, found = until, cell
            for cell, weight in new.items():
                opened[cell] = weight
                counted = weight * fresh
                if solution[cell] == digit:
                    counted *= same_digit
                visible += counted
                until = wait[cell] / counted
                if until < soonest:
                    soonest, found = until, cell
            looks = (remaining + 1) * 100 / (misses + visible)  # `Weights.placing`, but for the call
            efforts.append(looks if visible >= line else practice.looks(Rung.NAKED, looks))
            del opened[found]
            remaining -= 1
            digit = solution[found]
            new = {}
            for key, cell, spot, where in all_lost[found]:
                if stands[key]:
                    stands[key] = False
                    candidates = left[cell] = left[cell] - 1
                    if candidates == 1:
                        if cell in opened:
                            opened[cell] += naked
                        else:
                            new[cell] = new.get(cell, 0) + naked
                    for area in where:
                        count = areas[area] = areas[area] - spot
                        if count < two and count:
                            single = count - cells
                            if single in opened:
                                opened[single] += worth[area]
                            else:
                                new[single] = new.get(single, 0) + worth[area]
        return efforts
