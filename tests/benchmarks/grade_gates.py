"""The gates that a grade must pass, measured on samples of the fixed corpus.

usage: python tests/benchmarks/grade_gates.py [COUNT]

1 symmetry, 2 one more given, 4 eliminations against the solution and what-ifs replayed (`grade_soundness.py` walks
thousands), 5 redundant rules, 6 each weight halved and doubled; last 3, agreement with people (`grade_agreement.py`),
where its data are. 1, 2 and 5 are measured on COUNT classics (200), 4 and 6 on smaller samples of every family.
"""

from __future__ import annotations

import random
import sys
from collections import Counter
from dataclasses import fields, replace
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.grade import grade
from bookmaker.grade.bands import FAMILIES, band_of
from bookmaker.grade.effort import WEIGHTS
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.thermometer import Thermometer
from bookmaker.solve.verdict import Solution
from tests.benchmarks import grade_agreement
from tests.grade.sound import faults
from tests.grade.turns import draw, turn
from tests.makers.corpus import corpus
from tests.makers.grow import rising_chains

Sample = list[tuple[RuledPuzzle, Solution]]


def symmetry(sample: Sample) -> None:
    changed = 0
    for number, (puzzle, solution) in enumerate(sample):
        symmetry = draw(random.Random(number))
        turned: RuledPuzzle = Puzzle(CLASSIC, turn(puzzle.givens, *symmetry))
        changed += grade(turned, turn(solution, *symmetry)).effort != grade(puzzle, solution).effort
    print(f"1 symmetry: {changed} of {len(sample)} changed (wanted 0)", flush=True)


def one_more_given(sample: Sample, each: int = 3) -> None:
    rises = []
    for number, (puzzle, solution) in enumerate(sample):
        before = grade(puzzle, solution).effort
        cells = [cell for cell, digit in enumerate(puzzle.givens) if not digit]
        for cell in random.Random(number).sample(cells, each):
            givens = (*puzzle.givens[:cell], solution[cell], *puzzle.givens[cell + 1 :])
            rises.append(grade(Puzzle(CLASSIC, givens, puzzle.rules), solution).effort / before - 1)
    over = sum(rise > 0.05 for rise in rises) / len(rises)
    print(
        f"2 one more given, {len(rises)} cases: rises by more than 5 % in {100 * over:.2f} % (wanted 1), "
        f"at most by {100 * max(rises):.1f} % (wanted 20), on average by {100 * sum(rises) / len(rises):.1f} %",
        flush=True,
    )


def soundness(family: str, sample: Sample) -> None:
    found: Counter[str] = Counter()
    wrong = [fault for puzzle, solution in sample for fault in faults(puzzle, solution, found)]
    print(
        f"4 {family}: {len(wrong)} of {found.total()} findings wrong (wanted 0), {found['what-if']} what-ifs replayed, "
        f"{len(sample)} puzzles",
        flush=True,
    )


def redundancy(sample: Sample) -> None:
    for only_singles in (True, False):
        shares = []
        for number, (puzzle, solution) in enumerate(sample):
            plain = grade(puzzle, solution)
            if plain.singles_only != only_singles:
                continue
            chains = tuple(chain[:4] for chain in rising_chains(CLASSIC, solution, random.Random(number), 4))
            marked: RuledPuzzle = Puzzle(CLASSIC, puzzle.givens, (Thermometer(chains),))
            shares.append(grade(marked, solution).effort / plain.effort - 1)
        if shares:
            beyond = [share for share in shares if abs(share) > 0.05]
            told = ", ".join(f"{100 * share:+.0f} %" for share in beyond)
            kind = "singles suffice" if only_singles else "more is needed"
            within = len(shares) - len(beyond)
            print(
                f"5 needless thermometers, {kind}: {within} of {len(shares)} within 5 %, others {told or 'none'}",
                flush=True,
            )


def perturbed(family: str, sample: Sample) -> None:
    bands = [band_of(grade(puzzle, solution).effort, family) for puzzle, solution in sample]
    for field in fields(WEIGHTS):
        shares = []
        for factor in (0.5, 2.0):
            value = getattr(WEIGHTS, field.name)
            weights = replace(WEIGHTS, **{field.name: type(value)(value * factor)})
            efforts = [grade(puzzle, solution, weights).effort for puzzle, solution in sample]
            moved = sum(band_of(e, family) != band for e, band in zip(efforts, bands, strict=True))
            shares.append(f"{100 * moved / len(sample):3.0f} %")
        print(f"6 {family}: {field.name} halved, doubled moves {', '.join(shares)} to another band", flush=True)


def main(count: int) -> None:
    classics = list(corpus("classic", count, seed=2))
    symmetry(classics)
    one_more_given(classics)
    redundancy(classics)
    for family in FAMILIES:
        sample = classics[:60] if family == "classic" else list(corpus(family, min(count, 15), seed=2))
        soundness(family, sample[:20])
        perturbed(family, sample)
    times = ROOT.parent / "shared" / "data" / "solving-times.tsv"
    if times.exists():
        print("3 agreement with people", flush=True)
        grade_agreement.main([str(times)])


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 200)
