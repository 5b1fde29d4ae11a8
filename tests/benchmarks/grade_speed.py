"""How long proof, path and effort take together, and how that compares with proving uniqueness alone by CP-SAT.

usage: python tests/benchmarks/grade_speed.py [COUNT]

Processor time of one run each, garbage collection off as in `timeit`. Wanted: 25 ms by median for an everyday classic,
80 ms with chains or cages, no more than 8 times CP-SAT's time on the same everyday classics in the same run (the median
of the ratios), and no hard classic over 5 s. Everyday and hard classics are read from ../shared/data, others drawn.
"""

from __future__ import annotations

import gc
import sys
from collections.abc import Iterable
from pathlib import Path
from statistics import median
from time import process_time

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.grade import grade
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from tests.benchmarks.engine_speed import natural
from tests.benchmarks.rival import cp_sat
from tests.digits import digits_from
from tests.makers.corpus import corpus

DATA = ROOT.parent / "shared" / "data"


def timed(puzzle: RuledPuzzle) -> tuple[float, float]:
    """Seconds for the proof, and for the path with its effort."""
    began = process_time()
    verdict = prove(problem_of(puzzle))
    proven = process_time()
    assert isinstance(verdict, Unique)
    grade(puzzle, verdict.solution)
    return proven - began, process_time() - proven


def measure(name: str, puzzles: Iterable[RuledPuzzle], wanted: float) -> list[float]:
    """Print a line of the table: median, slowest, and the wanted median, in ms; the seconds of each puzzle."""
    taken = [timed(puzzle) for puzzle in puzzles]
    both = [sum(pair) for pair in taken]
    proof = median(pair[0] for pair in taken)
    print(
        f"{name:22s} n={len(both):4d}  proof {1e3 * proof:7.1f}  both {1e3 * median(both):7.1f}"
        f"  slowest {1e3 * max(both):8.1f}  wanted {1e3 * wanted:6.0f}",
        flush=True,
    )
    return both


def main(count: int) -> None:
    gc.disable()
    if DATA.exists():
        lines = [line.split("\t")[1] for line in (DATA / "solving-times.tsv").read_text().splitlines()[1:]][:count]
        everyday: list[RuledPuzzle] = [Puzzle(CLASSIC, digits_from(text)) for text in lines]
        timed(everyday[0])
        both = measure("everyday classics", everyday, 0.025)
        rival = [cp_sat(natural(puzzle.givens, lambda model, x: None)).seconds for puzzle in everyday]
        ratios = [ours / theirs for ours, theirs in zip(both, rival, strict=True)]
        print(f"{'':22s} CP-SAT {1e3 * median(rival):.1f} ms; ours is {median(ratios):.1f} times that (wanted 8)")
        hard = (DATA / "classic-hard.txt").read_text().split()
        slowest = max(measure("hard classics", [Puzzle(CLASSIC, digits_from(text)) for text in hard], 5.0))
        print(f"{'':22s} slowest {slowest:.2f} s (wanted 5)")
    for family in ("relations", "sums"):
        measure(family, [puzzle for puzzle, _ in corpus(family, min(count, 40))], 0.080)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 150)
