"""The gates that a grade must pass, measured on samples of the fixed corpus.

usage: python tests/benchmarks/grade_gates.py [COUNT]

1 symmetry, 2 one more given, 4 eliminations against the solution, 5 redundant rules, 6 each weight halved and doubled.
Gate 3, agreement with people, is `grade_agreement.py`.
"""

from __future__ import annotations

import random
import sys
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


def soundness(sample: Sample) -> None:
    struck = wrong = 0
    for puzzle, solution in sample:
        for step in grade(puzzle, solution).path.steps:
            struck += len(step.removed)
            wrong += sum(solution[cell] == digit for cell, digit in step.removed)
            wrong += sum(solution[cell] != digit for cell, digit in step.placed)
    print(f"4 soundness: {wrong} of {struck} eliminations wrong (wanted 0), {len(sample)} puzzles", flush=True)


def redundancy(sample: Sample) -> None:
    for only_singles in (True, False):
        shares = []
        for number, (puzzle, solution) in enumerate(sample):
            plain = grade(puzzle, solution)
            if plain.singles_only != only_singles:
                continue
            chains = tuple(chain[:4] for chain in rising_chains(CLASSIC, solution, random.Random(number), 4))
            marked: RuledPuzzle = Puzzle(CLASSIC, puzzle.givens, (Thermometer(chains),))
            shares.append(abs(grade(marked, solution).effort / plain.effort - 1))
        if shares:
            within = sum(share <= 0.05 for share in shares)
            kind = "singles suffice" if only_singles else "more is needed"
            print(f"5 needless thermometers, {kind}: {within} of {len(shares)} within 5 %", flush=True)


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
        sample = list(corpus(family, count if family == "classic" else min(count, 40), seed=2))
        soundness(sample)
        perturbed(family, sample)


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 300)
