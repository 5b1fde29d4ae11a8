"""Puzzles grown from a seed, said in the engine's primitives: for benchmarks and for tests of the engine.

In: a `Problem` without givens and a seeded `random.Random`. Out: a random solution of it; givens of which none can be
taken away; thermometer chains and cages laid on a solution. The bands' cut points and the engine's figures rest on
what is drawn here (`corpus.py`), so chains and cages are drawn as they were then, not as `bookmaker draft` lays them.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations, pairwise
from random import Random

from bookmaker.changes.arrangement import arrangement
from bookmaker.draft.sketch import Sketch
from bookmaker.puzzle.grid import Grid
from bookmaker.solve import solutions
from bookmaker.solve.problem import Allowed, Combination, Different, Problem, Relation, relation
from bookmaker.solve.verdict import Solution

Cage = tuple[int, ...]


def empty_grid(grid: Grid) -> Problem:
    """The houses of a grid and nothing else."""
    houses = tuple(Different(house.cells) for house in grid.houses)
    return Problem(len(grid.cells), grid.size, houses)


def random_solution(problem: Problem, rng: Random) -> Solution:
    """A solution found with shuffled branches; raises ValueError if there is none."""
    found = next(solutions(problem, rng), None)
    if found is None:
        raise ValueError("the problem has no solution")
    return found


def with_givens(problem: Problem, givens: Sequence[int]) -> Problem:
    """The problem with givens, 0 for an empty cell."""
    written = tuple(Allowed((cell,), 1 << digit - 1) for cell, digit in enumerate(givens) if digit)
    return Problem(problem.cells, problem.digits, (*problem.constraints, *written))


def needed_givens(
    problem: Problem, solution: Solution, rng: Random, facing: bool = False, budget: int = 2_000
) -> tuple[int, ...]:
    """Givens that leave one solution, none of them needless, tried in random order.

    With `facing`, cells that face each other across the centre go or stay together, as setters by hand like it, and
    none of these pairs is needless. A given stays if the proof without it runs out of `budget`.
    """
    grid = Grid(problem.digits, ())
    arranged = arrangement("half-turn" if facing else "none", grid)
    sketch = Sketch(grid, (), solution, arranged, problem.constraints, budget)
    cells = rng.sample(range(problem.cells), problem.cells)
    board = sketch.thinned(sketch.cells, [sum(1 << other for other in arranged.orbit(cell)) for cell in cells])
    return sketch.puzzle(board).givens


def rising_chains(grid: Grid, solution: Solution, rng: Random, wanted: int, longest: int = 7) -> list[tuple[int, ...]]:
    """Chains of neighbouring cells along which the solution rises; they share no cell, and have at least three."""
    chains: list[tuple[int, ...]] = []
    free = set(grid.cells)
    for _ in range(wanted * 40):
        chain = [rng.choice(grid.cells)]
        while len(chain) < longest:
            here = chain[-1]
            ways = [n for n in sorted(free) if grid.touching(here, n) and solution[n] > solution[here]]
            if not ways:
                break
            chain.append(min(rng.sample(ways, min(2, len(ways))), key=lambda n: solution[n]))
        if chain[0] in free and len(chain) >= 3:
            chains.append(tuple(chain))
            free.difference_update(chain)
        if len(chains) == wanted:
            break
    return chains


def rises(chains: Sequence[Sequence[int]], digits: int) -> Relation:
    """What thermometers ask."""
    pairs = [pair for chain in chains for pair in pairwise(chain)]
    return relation(pairs, digits, combinations(range(1, digits + 1), 2))


def cage_layout(
    grid: Grid, solution: Solution, rng: Random, sizes: Sequence[int] = (2, 2, 3, 3, 3, 4, 4, 5)
) -> list[Cage]:
    """Cages that cover the grid, each of neighbouring cells with different digits in the solution."""
    free = set(grid.cells)
    cages = []
    while free:
        seed = min(free, key=lambda cell: (sum(n in free for n in grid.orthogonal(cell)), rng.random()))
        cage, size = [seed], rng.choice(sizes)
        free.discard(seed)
        while len(cage) < size:
            taken = {solution[cell] for cell in cage}
            edge = {n for cell in cage for n in grid.orthogonal(cell) if n in free and solution[n] not in taken}
            if not edge:
                break
            cage.append(rng.choice(sorted(edge)))
            free.discard(cage[-1])
        cages.append(tuple(sorted(cage)))
    return cages


def adds_up(cage: Cage, total: int, digits: int) -> Combination:
    """What a cage with a total asks."""
    sets = (chosen for chosen in combinations(range(1, digits + 1), len(cage)) if sum(chosen) == total)
    return Combination(cage, frozenset(sum(1 << digit - 1 for digit in chosen) for chosen in sets))
