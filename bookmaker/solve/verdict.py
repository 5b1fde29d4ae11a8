"""The answers a search can give. “Gave up” and “impossible” are different answers."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import TypeAlias

Solution: TypeAlias = tuple[int, ...]
"""A digit for each cell."""


class Prover(StrEnum):
    """Who decided."""

    SEARCH = "search"
    """The search of this room: propagation and guesses."""
    LEARNING = "clause learning"
    """The SAT solver to which it hands over."""
    AUDIT = "OR-Tools"
    """The second opinion, which reads the rules' definitions and not the engine's primitives."""


@dataclass(frozen=True, slots=True)
class Unique:
    """There is exactly one solution, and this is it."""

    solution: Solution
    nodes: int = 0
    prover: Prover = Prover.SEARCH


@dataclass(frozen=True, slots=True)
class NoSolution:
    """The whole space was searched and holds nothing."""

    nodes: int = 0
    prover: Prover = Prover.SEARCH


@dataclass(frozen=True, slots=True)
class Several:
    """At least two solutions, both shown."""

    first: Solution
    second: Solution
    nodes: int = 0
    prover: Prover = Prover.SEARCH

    @property
    def differing(self) -> tuple[int, ...]:
        """Cells in which the two differ."""
        return tuple(c for c, (a, b) in enumerate(zip(self.first, self.second, strict=True)) if a != b)


@dataclass(frozen=True, slots=True)
class Undecided:
    """The budget of search nodes ran out first; `found` is a solution met on the way, if any. Never called unique."""

    budget: int
    found: Solution | None = None


Verdict: TypeAlias = Unique | NoSolution | Several | Undecided


@dataclass(frozen=True, slots=True)
class Tally:
    """How many solutions were counted; `complete` is False where the limit or the budget stopped the count."""

    solutions: int
    complete: bool
