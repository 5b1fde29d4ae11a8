"""The gates that a grade must pass, measured on samples of the fixed corpus.

usage: python tests/benchmarks/grade_gates.py [COUNT]

1 symmetry, 2 one more given, 4 eliminations against the solution and what-ifs replayed (`grade_soundness.py` walks
thousands), 5 redundant rules, 6 each weight halved and doubled; last 3, agreement with people (`grade_agreement.py`),
where its data are. 1, 2 and 5 are measured on COUNT classics (200), 4 and 6 on smaller samples of every family. Each
line with a wish ends with a verdict. A few minutes in all; exits with 1 if a gate does not hold.
"""

from __future__ import annotations

import random
import sys
from collections import Counter
from collections.abc import Iterable
from dataclasses import fields, replace
from itertools import pairwise
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.grade import Grade, grade
from bookmaker.grade.bands import FAMILIES, difficulty_of
from bookmaker.grade.effort import WEIGHTS
from bookmaker.logic.mark_readings import mark_of
from bookmaker.logic.state import ground_of, start
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


missed: list[str] = []


def verdict(gate: str, told: str, holds: bool) -> None:
    """Print a line with what was found, and whether the gate holds."""
    print(f"{gate}: {told} - {'holds' if holds else 'DOES NOT HOLD'}", flush=True)
    if not holds:
        missed.append(gate)


def symmetry(sample: Sample) -> None:
    changed = 0
    for number, (puzzle, solution) in enumerate(sample):
        symmetry = draw(random.Random(number))
        turned: RuledPuzzle = Puzzle(CLASSIC, turn(puzzle.givens, *symmetry))
        changed += grade(turned, turn(solution, *symmetry)).effort != grade(puzzle, solution).effort
    verdict("1 symmetry", f"{changed} of {len(sample)} changed (wanted 0)", not changed)


def one_more_given(sample: Sample, each: int = 3) -> None:
    rises = []
    for number, (puzzle, solution) in enumerate(sample):
        before = grade(puzzle, solution).effort
        cells = [cell for cell, digit in enumerate(puzzle.givens) if not digit]
        for cell in random.Random(number).sample(cells, each):
            givens = (*puzzle.givens[:cell], solution[cell], *puzzle.givens[cell + 1 :])
            rises.append(grade(Puzzle(CLASSIC, givens, puzzle.rules), solution).effort / before - 1)
    over, most = sum(rise > 0.05 for rise in rises) / len(rises), max(rises)
    mean = sum(rises) / len(rises)
    told = f"{len(rises)} cases, on average {100 * mean:+.1f} %"
    verdict("2 one more given, often", f"{told}; more than +5 % in {100 * over:.2f} % (wanted 1)", over <= 0.01)
    verdict("2 one more given, at most", f"{100 * most:+.1f} % (wanted +20)", most <= 0.2)


def soundness(family: str, sample: Sample) -> None:
    found: Counter[str] = Counter()
    wrong = [fault for puzzle, solution in sample for fault in faults(puzzle, solution, found)]
    told = f"{len(wrong)} of {found.total()} findings wrong (wanted 0), {found['what-if']} what-ifs replayed"
    verdict(f"4 soundness, {family}", f"{told}, {len(sample)} puzzles", not wrong)


def redundancy(sample: Sample) -> None:
    """Four needless thermometers ought to leave the effort as it was. They do not where they say something: who solves
    the puzzle cannot know that they are needless, and goes by them. So two more things are asked, which can hold: that
    they do not hinder, by the limits of gate 2, and that nothing changes where they say nothing that is wanted.
    """
    needless = []
    for only_singles in (True, False):
        shares, idle = [], []
        for number, (puzzle, solution) in enumerate(sample):
            plain = grade(puzzle, solution)
            if plain.singles_only != only_singles:
                continue
            rng = random.Random(number)
            drawn = tuple(chain[:4] for chain in rising_chains(CLASSIC, solution, rng, 4))
            shares.append(_marked(puzzle, drawn, solution) / plain.effort - 1)
            if silent := _silent(puzzle, plain, rising_chains(CLASSIC, solution, rng, 12)):
                idle.append(_marked(puzzle, silent, solution) / plain.effort - 1)
        kind = "singles suffice" if only_singles else "more is needed"
        within = sum(abs(share) <= 0.05 for share in shares)
        told = f"{within} of {len(shares)} within 5 % (wanted all)"
        ends = f"from {100 * min(shares):+.0f} % to {100 * max(shares):+.0f} %"
        verdict(f"5 needless thermometers, {kind}", f"{told}, {ends}", within == len(shares))
        same, within = (sum(abs(share) <= most for share in idle) for most in (1e-9, 0.05))
        told = f"{same} of {len(idle)} with the same effort, {within} within 5 % (wanted all)"
        verdict(f"5 thermometers that say nothing, {kind}", told, within == len(idle) > 0)
        needless += shares
    over, most = sum(share > 0.05 for share in needless) / len(needless), max(needless)
    told = f"more than +5 % in {100 * over:.1f} % (wanted 1), at most {100 * most:+.1f} % (wanted +20)"
    verdict("5 needless thermometers do not hinder", told, over <= 0.01 and most <= 0.2)


def _marked(puzzle: RuledPuzzle, chains: tuple[tuple[int, ...], ...], solution: Solution) -> float:
    return grade(Puzzle(CLASSIC, puzzle.givens, (Thermometer(chains),)), solution).effort


def _silent(puzzle: RuledPuzzle, plain: Grade, chains: Iterable[tuple[int, ...]]) -> tuple[tuple[int, ...], ...]:
    """Up to four pieces of chains whose cells see each other anyhow, and that strike nothing wherever the path of the
    puzzle without them is stuck."""
    state = start(ground_of(puzzle))
    stuck = []
    for step in plain.path.steps:
        if step.removed:
            stuck.append(state.with_written())
        state.remove(step.removed)
        for cell, digit in step.placed:
            state.place(cell, digit)
    found = []
    for chain in chains:
        for piece in (chain[at : at + length] for length in (3, 2) for at in range(0, len(chain) - length + 1, length)):
            glass = Thermometer((piece,))
            asked = [mark_of(made, glass) for made in glass.constraints(CLASSIC)]
            seen = all(state.ground.peers[one] >> other & 1 for one, other in pairwise(piece))
            if seen and not any(mark.strikes(boards) for mark in asked if mark for boards in stuck):
                found.append(piece)
                break
    return tuple(found[:4])


def forced_row(sample: Sample) -> None:
    """A thermometer along the first row holds 1 to 9: what is left is the classic with this row given."""
    wrong = 0
    for puzzle, solution in sample:
        names = [0] * 10
        for digit, cell in enumerate(range(9), start=1):
            names[solution[cell]] = digit
        rest = tuple(names[digit] for digit in puzzle.givens)[9:]
        left: RuledPuzzle = Puzzle(CLASSIC, (*range(1, 10), *rest))
        marked: RuledPuzzle = Puzzle(CLASSIC, (*(0,) * 9, *rest), (Thermometer((tuple(range(9)),)),))
        filled = tuple(names[digit] for digit in solution)
        wrong += abs(grade(marked, filled).effort - grade(left, filled).effort - 9) > 1e-6
    told = f"{wrong} of {len(sample)} differ from the classic that is left and nine looks (wanted 0)"
    verdict("5 forced row", told, not wrong)


def perturbed(family: str, sample: Sample) -> None:
    bands = [grade(puzzle, solution).band for puzzle, solution in sample]
    for field in fields(WEIGHTS):
        shares = []
        for factor in (0.5, 2.0):
            value = getattr(WEIGHTS, field.name)
            weights = replace(WEIGHTS, **{field.name: type(value)(value * factor)})
            efforts = [grade(puzzle, solution, weights).effort for puzzle, solution in sample]
            moved = sum(int(difficulty_of(e, family)) != band for e, band in zip(efforts, bands, strict=True))
            shares.append(f"{100 * moved / len(sample):3.0f} %")
        print(f"6 {family}: {field.name} halved, doubled moves {', '.join(shares)} to another band", flush=True)


def main(count: int) -> None:
    classics = list(corpus("classic", count, seed=2))
    symmetry(classics)
    one_more_given(classics)
    redundancy(classics)
    forced_row(classics[:40])
    for family in FAMILIES:
        sample = classics[:40] if family == "classic" else list(corpus(family, min(count, 8), seed=2))
        stuck = classics if family == "classic" else sample
        soundness(family, [pair for pair in stuck if not grade(*pair).singles_only][:15])
        perturbed(family, sample)
    times = ROOT.parent / "shared" / "data" / "solving-times.tsv"
    if times.exists():
        found = grade_agreement.main([str(times)])
        pair, effort = found["the two together, cross-validated"], found["effort"]
        for name, at, least in (("mean time", 0, 0.71), ("D_TO", 1, 0.87), ("mean time, more than singles", 4, 0.55)):
            told = f"{effort[at]:.3f} (wanted {least}), the published pair {pair[at]:.3f}"
            verdict(f"3 agreement with {name}", told, effort[at] >= least and effort[at] > pair[at])
    sys.exit(bool(missed))


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 200)
