"""Clubs that never met: solvers of known pace at puzzles of known difficulty, and books to go with them."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cache
from math import exp, log
from pathlib import Path
from random import Random

from bookmaker.grade.bands import PER_BAND, bounded
from bookmaker.proof import Proof, prove_all
from bookmaker.times.pace import Timed
from tests.layout.sample_book import sample_manifest

CHANCE, PACES = 0.35, 0.35
"""Standard deviations of the logarithm of a time: from one sitting to the next, and from one solver to the other."""


@dataclass(frozen=True)
class Club:
    """Times and the truth behind them."""

    times: list[Timed]
    intensities: list[float]
    paces: list[float]


def club(seed: int, solvers: int, puzzles: int, limit: float = 60.0, missed: float = 0.1) -> Club:
    """Each solver tries most of the puzzles and stops at so many minutes."""
    rng = Random(seed)
    intensities = [rng.gauss(2.2, 0.5) for _ in range(puzzles)]
    paces = [rng.gauss(0.0, PACES) for _ in range(solvers)]
    times = []
    for solver in range(solvers):
        for puzzle in range(puzzles):
            if rng.random() >= missed:
                taken = intensities[puzzle] - paces[solver] + rng.gauss(0.0, CHANCE)
                times.append(Timed(solver, puzzle, min(taken, log(limit)), taken < log(limit)))
    return Club(times, intensities, paces)


@cache
def graded(puzzles: int, seed: int = 1) -> tuple[Proof, ...]:
    """So many puzzles with levels drawn at random between 1 and 6; all of them are one and the same grid."""
    rng = Random(seed)
    (proof,) = prove_all([entry for entry in sample_manifest().entries if entry.id == "morning"])
    assert proof.grade
    levels = sorted(rng.uniform(1.0, 6.0) for _ in range(puzzles))
    return tuple(
        replace(
            proof,
            entry=replace(proof.entry, id=f"puzzle-{number}", title=f"Puzzle {chr(64 + number)}"),
            grade=replace(proof.grade, difficulty=bounded(at)),
        )
        for number, at in enumerate(levels, start=1)
    )


def sheet(
    levels: Sequence[float],
    heads: Sequence[str],
    solvers: int,
    seed: int,
    off: Mapping[int, float] | None = None,
    limit: float = 90.0,
    missed: float = 0.08,
) -> str:
    """A table as a host would keep it: minutes and seconds, empty where somebody did not finish in time, a dash where
    they did not try. Puzzles `off` are so many bands harder than their level."""
    rng = Random(seed)
    rows = [";".join(["Solver", *heads])]
    for solver in range(solvers):
        pace, cells = rng.gauss(0.0, PACES), [f"Solver {solver + 1}"]
        for number, at in enumerate(levels):
            minutes = exp(0.7 + PER_BAND * (at + (off or {}).get(number, 0.0)) - pace + rng.gauss(0.0, CHANCE))
            tried = rng.random() >= missed
            cells.append("-" if not tried else "" if minutes > limit else f"{int(minutes)}:{int(minutes % 1 * 60):02}")
        rows.append(";".join(cells))
    return "\n".join(rows) + "\n"


def kept(folder: Path, text: str | bytes) -> Path:
    """The table as a file."""
    file = folder / "results.csv"
    file.write_bytes(text if isinstance(text, bytes) else text.encode())
    return file
