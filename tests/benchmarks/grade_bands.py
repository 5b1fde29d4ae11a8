"""The cut points of the bands, taken from the fixed corpus of each family.

usage: python tests/benchmarks/grade_bands.py [COUNT]

Prints quintiles of the effort to put into `bookmaker/grade/bands.py` (rounded to 5), what they cut there now, and what
share of the corpus the ladder reaches.
"""

from __future__ import annotations

import sys
from pathlib import Path
from statistics import quantiles

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.grade import grade
from bookmaker.grade.bands import CUTS, VERSION, band_of
from tests.makers.corpus import corpus

COUNTS = {"classic": 300, "relations": 150, "sums": 150}
"""Puzzles of each family's corpus."""


def main(most: int) -> None:
    print(f"version {VERSION} in bands.py")
    for family in CUTS:
        grades = [grade(puzzle, solution) for puzzle, solution in corpus(family, min(most, COUNTS[family]))]
        efforts = [graded.effort for graded in grades]
        cuts = ", ".join(f"{5 * round(cut / 5)}.0" for cut in quantiles(efforts, n=5))
        bands = [sum(band_of(effort, family) == band for effort in efforts) for band in range(1, 6)]
        reached = sum(graded.path.reached for graded in grades)
        print(f'"{family}": ({cuts}),  now {bands}, {reached} of {len(grades)} reached', flush=True)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else max(COUNTS.values()))
