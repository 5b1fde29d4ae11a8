"""Cases for palindromes."""

from __future__ import annotations

from random import Random

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.palindrome import Palindrome
from tests.rules.laying import Chain, neighbours

SENTENCES = (
    ("palindrome: r3c3-r5c5", "The digits along the palindrome read the same from both ends."),
    ("palindrome: [r3c3-r5c5, r3c7-r5c5]", "The digits along each palindrome read the same from both ends."),
)

MISUSES = (
    ("palindrome: r1c1-r1c4", "palindrome-clash", "r1c1"),
    ("palindrome: r3c3-r5c5 r5c6 r4c6", "palindrome-clash", "r3c3"),
    ("palindrome: r5c5", "chain-short", "r5c5"),
    ("palindrome: r1c1 r3c3", "chain-jumps", "r1c1"),
    ("palindrome: [r3c3-r5c5, r5c5-r3c3]", "chain-twice", "r5c5-r3c3"),
)

DEDUCTIONS = (
    ("palindrome: r3c2 r3c3 r4c4 r5c4", {"r3c2": "123", "r4c4": "45"}, {"r5c4": "456789", "r3c3": "1236789"}),
)


def lay(grid: Grid, solution: tuple[int, ...], rng: Random) -> Palindrome | None:
    chains: list[Chain] = []
    taken: set[int] = set()
    for _ in range(300):
        if len(chains) == grid.size // 2:
            break
        chain = _grown(grid, solution, rng, rng.randint(1, 3), taken)
        if chain is not None:
            chains.append(chain)
            taken.update(chain)
    return Palindrome(tuple(chains)) if chains else None


def _grown(grid: Grid, solution: tuple[int, ...], rng: Random, pairs: int, taken: set[int]) -> Chain | None:
    """From a middle cell outwards at both ends, two equal digits at a time."""
    chain = [rng.choice(grid.cells)]
    if chain[0] in taken:
        return None
    for _ in range(pairs):
        ways = [
            (a, b)
            for a in neighbours(grid, chain[0])
            for b in neighbours(grid, chain[-1])
            if solution[a] == solution[b] and a != b and not {a, b} & (taken | set(chain))
        ]
        if not ways:
            return None
        a, b = rng.choice(ways)
        chain = [a, *chain, b]
    return tuple(chain)
