"""A remark on a puzzle that needs mending.

In: a proof. Out: a sentence, or nothing.
"""

from __future__ import annotations

from typing import assert_never

from bookmaker.proof.findings import Proof
from bookmaker.proof.pulse import at_work, stage
from bookmaker.puzzle.grid import Grid
from bookmaker.review.contradiction import contradiction, contradiction_words
from bookmaker.solve.verdict import NoSolution, Several, Undecided, Unique


def remark(proof: Proof) -> str:
    """What is wrong with a puzzle that is not proven unique; empty for one that is."""
    entry, grid = proof.entry, proof.entry.puzzle.grid
    name = f"“{entry.title or entry.id}”"
    match proof.verdict:
        case NoSolution():
            with at_work(entry.id):
                stage("being searched for what clashes")
                found = contradiction(entry.puzzle)
            return f"{name} has no solution: {contradiction_words(found, entry.puzzle)}"
        case Several() as several:
            return f"{name} has {_how_many(proof)}; two of them differ in {_cells(grid, several.differing)}"
        case Undecided():
            return f"{name} is undecided: neither the search nor the learning prover came to an answer in its budget"
        case Unique():
            return ""
        case _ as never:
            assert_never(never)


def _how_many(proof: Proof) -> str:
    if proof.tally is None:
        return "more than one solution"
    return f"{'' if proof.tally.complete else 'at least '}{proof.tally.solutions:,} solutions"


def _cells(grid: Grid, cells: tuple[int, ...], most: int = 6) -> str:
    named = ", ".join(grid.name(cell) for cell in cells[:most])
    return named if len(cells) <= most else f"{named} and {len(cells) - most} more cells"
