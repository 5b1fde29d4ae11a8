"""Marks laid on a solution at random: chains that a check accepts, and areas of neighbouring cells."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import lru_cache
from random import Random

from bookmaker.puzzle.grid import Grid

Chain = tuple[int, ...]


def neighbours(grid: Grid, cell: int, diagonal: bool = True) -> tuple[int, ...]:
    """Cells that share a side, or also a corner, with a cell."""
    return _touching(grid)[cell] if diagonal else grid.orthogonal(cell)


@lru_cache(maxsize=16)
def _touching(grid: Grid) -> tuple[tuple[int, ...], ...]:
    return tuple(tuple(other for other in grid.cells if grid.touching(cell, other)) for cell in grid.cells)


def random_chain(
    grid: Grid,
    rng: Random,
    length: int,
    grows: Callable[[Sequence[int]], bool] = lambda chain: True,
    taken: set[int] | None = None,
) -> Chain | None:
    """A chain of `length` cells of which every beginning satisfies `grows`, clear of `taken`; None if luck fails."""
    taken = taken or set()
    chain = [rng.choice(grid.cells)]
    if chain[0] in taken or not grows(chain):
        return None
    while len(chain) < length:
        here = chain[-1]
        near = neighbours(grid, here, diagonal=rng.random() < 0.4)
        ways = [n for n in near if n not in chain and n not in taken and grows([*chain, n])]
        if not ways:
            return None
        chain.append(rng.choice(ways))
    return tuple(chain)


def random_chains(
    grid: Grid,
    rng: Random,
    wanted: int,
    lengths: Sequence[int],
    grows: Callable[[Sequence[int]], bool] = lambda chain: True,
    whole: Callable[[Sequence[int]], bool] = lambda chain: True,
    tries: int = 400,
) -> tuple[Chain, ...]:
    """Up to `wanted` chains that share no cell, each satisfying `whole` when complete."""
    chains: list[Chain] = []
    taken: set[int] = set()
    for _ in range(tries):
        if len(chains) == wanted:
            break
        chain = random_chain(grid, rng, rng.choice(lengths), grows, taken)
        if chain is not None and whole(chain):
            chains.append(chain)
            taken.update(chain)
    return tuple(chains)


def random_area(grid: Grid, rng: Random, size: int, free: set[int], fits: Callable[[int, set[int]], bool]) -> set[int]:
    """A connected area of up to `size` free cells, grown by cells that `fits(cell, area)`; empty if none is free."""
    if not free:
        return set()
    area = {rng.choice(sorted(free))}
    while len(area) < size:
        edge = {n for cell in area for n in grid.orthogonal(cell)} - area
        ways = sorted(cell for cell in edge & free if fits(cell, area))
        if not ways:
            break
        area.add(rng.choice(ways))
    return area
