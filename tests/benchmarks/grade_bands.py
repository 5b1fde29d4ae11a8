"""The cut points of the bands, and what they rest on.

usage: python tests/benchmarks/grade_bands.py [TIMES.tsv] [--count N]

Prints, family by family, the cuts to put into `bookmaker/grade/bands.py` (rounded to 5) beside those there now. Those
of the classics come from people's times (S.-W. Wang, IEEE Access 12, 2024, 104254–104262, CC0): the efforts at which a
regression of log time on log effort comes to 5, 8, 13 and 21 minutes. Those of the other families come from the
structure of paths: on the same times the weights of two features are fitted,

    scarcity = ln Σ (empty cells + 1) / (openings + 1)            over the digits placed
    together = ln (1 + Σ (rung - 4))                              over the rounds in which none could be

(the rungs above the singles count how many constraints are held together, and from the chains on how far one thinks
ahead), and in a corpus of the family, from bare puzzles to such with half the grid given, the time that they let expect
is regressed on the effort. Quantities are natural logarithms of seconds.
"""

from __future__ import annotations

import sys
from collections.abc import Sequence
from itertools import groupby
from math import exp, log, log1p
from pathlib import Path
from statistics import fmean, linear_regression, median

import numpy as np

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.grade import Grade, grade
from bookmaker.grade.bands import CUTS, FAMILIES, MINUTES, VERSION, difficulty_of
from bookmaker.grade.solve_path import SolvePath
from tests.benchmarks.grade_agreement import read, rho
from tests.digits import classic
from tests.makers.corpus import corpus

COUNT, BACK = 150, 30
"""Puzzles of each family's corpus, and how many givens at most are put back in one."""

SINGLES = 4
"""The highest rung of the singles."""


def structure(path: SolvePath) -> tuple[float, float]:
    """Scarcity and together, as above."""
    scarcity = sum((step.empty + 1) / (step.openings + 1) for step in path.steps if step.placed)
    rounds = groupby(path.steps, key=lambda step: (bool(step.placed), step.rung, step.empty, step.openings))
    together = sum(max(rung - SINGLES, 1) for (placed, rung, _, _), _ in rounds if not placed)
    return log(scarcity), log1p(together)


def line(x: Sequence[float], y: Sequence[float]) -> tuple[float, float, float]:
    """Slope, intercept and the root of the mean square of what is left, of y by x."""
    slope, intercept = linear_regression(x, y)
    left = fmean((v - intercept - slope * u) ** 2 for u, v in zip(x, y, strict=True)) ** 0.5
    return slope, intercept, left


def cuts_of(slope: float, intercept: float) -> list[int]:
    """The efforts at which the line reaches the minutes."""
    return [5 * round(exp((log(60 * minutes) - intercept) / slope) / 5) for minutes in MINUTES]


def told(family: str, name: str, efforts: Sequence[float], seconds: Sequence[float]) -> None:
    """Print the cuts at which the times would reach the minutes, how good the line is, and the bands of the corpus."""
    fitted = line([log(effort) for effort in efforts], seconds)
    bands = [sum(int(difficulty_of(effort, family)) == band for effort in efforts) for band in range(1, 6)]
    print(
        f'"{family}": {cuts_of(*fitted[:2])} by {name}, now {[round(cut) for cut in CUTS[family]]}: '
        f"slope {fitted[0]:.2f}, within a factor of {exp(fitted[2]):.2f}, rho {rho(efforts, seconds):.2f}; "
        f"{len(efforts)} puzzles, in bands {bands}",
        flush=True,
    )


def main(times: Path, count: int) -> None:
    print(f"version {VERSION} in bands.py")
    rows = read(times)
    grades = [grade(classic(row.text), row.solution) for row in rows]
    seconds = [log(row.seconds) for row in rows]
    told("classic", "people's times", [graded.effort for graded in grades], seconds)
    for band in range(1, 6):
        took = [row.seconds / 60 for row, graded in zip(rows, grades, strict=True) if graded.band == band]
        if took:
            print(f"   band {band}: {len(took)} puzzles took {median(took):.1f} minutes by median")
    features = [structure(graded.path) for graded in grades]
    table = np.column_stack([np.ones(len(rows)), np.array(features)])
    weights = np.linalg.lstsq(table, np.array(seconds), rcond=None)[0]
    expected = [float(x) for x in table @ weights]
    print(f"structure: {', '.join(f'{w:.3f}' for w in weights)}; rho with times {rho(expected, seconds):.3f}")

    def by_structure(graded: Grade) -> float:
        return float(weights @ np.array([1.0, *structure(graded.path)]))

    for family in FAMILIES:
        drawn = [grade(puzzle, solution) for puzzle, solution in corpus(family, count, seed=3, back=BACK)]
        told(family, "structure", [graded.effort for graded in drawn], [by_structure(graded) for graded in drawn])
        print(f"   {sum(graded.path.reached for graded in drawn)} of {len(drawn)} reached by logic")


if __name__ == "__main__":
    words = sys.argv[1:]
    most = int(words.pop(words.index("--count") + 1)) if "--count" in words else COUNT
    files = [word for word in words if not word.startswith("--")]
    source = Path(files[0]) if files else ROOT.parent / "shared" / "data" / "solving-times.tsv"
    if not source.exists():
        sys.exit(f"no data at {source}")
    main(source, most)
