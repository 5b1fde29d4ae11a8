"""Does effort rank puzzles as people's times do? Spearman's rho, beside two published measures, in one run.

usage: python tests/benchmarks/grade_agreement.py [TIMES.tsv] [--cross]

Reads puzzles with the mean time of those who finished and, for some, a published difficulty D_TO (S.-W. Wang, IEEE
Access 12, 2024, 104254–104262, CC0). `--cross` chooses the fitted constants anew on four fifths of the puzzles and
ranks the fifth that is left, for each fifth: what the formula is worth on puzzles it was not tuned to. That is done for
several ways to cut the puzzles into fifths; the mean of each figure is told, and under it how far other puzzles would
move it (standard error by bootstrap, of the first way: B. Efron, Annals of Statistics 7, 1979).

The published pair is R. Pelánek's (arXiv 1403.7373, 2014): *dependency*, the mean number of openings over the first
25 steps, and *refutation sum*, the cost of refuting wrong candidates when no single is left; together by linear
regression on the time, always cross-validated.
"""

from __future__ import annotations

import csv
import random
import sys
from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from itertools import product
from math import isnan, log, nan
from pathlib import Path
from statistics import fmean, stdev

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.grade import Grade, grade
from bookmaker.grade.effort import WEIGHTS, Weights
from bookmaker.logic.follow import follow
from bookmaker.logic.singles import openings
from bookmaker.logic.state import State, ground_of, start
from bookmaker.puzzle.bits import cells_on
from bookmaker.rules import problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Solution, Unique
from tests.digits import classic

FOLDS, REPEATS = 5, 10

DRAWS = 400
"""How often the bootstrap draws."""

GRID = [
    replace(WEIGHTS, same_digit=same, fresh=fresh, misses=misses, naked=naked)
    for same, fresh, misses, naked in product((6, 12, 24), (0.25, 0.5, 1.0), (50, 100), (2, 5, 10))
]
STUCKS = (0.5, 1.0, 2.0, 4.0)


@dataclass(frozen=True)
class Row:
    """A puzzle with what people made of it; `difficulty` is D_TO, None where it was not published."""

    text: str
    seconds: float
    difficulty: float | None
    solution: Solution


def read(path: Path) -> list[Row]:
    rows = []
    with path.open(newline="") as lines:
        for line in csv.DictReader(lines, delimiter="\t"):
            verdict = prove(problem_of(classic(line["puzzle"])))
            assert isinstance(verdict, Unique), line["puzzle"]
            difficulty = float(line["D_TO"]) if line["D_TO"] else None
            rows.append(Row(line["puzzle"], float(line["mean_seconds"]), difficulty, verdict.solution))
    return rows


def ranks(values: Sequence[float]) -> list[float]:
    """Ranks from 0; ties share their mean rank."""
    order = sorted(range(len(values)), key=values.__getitem__)
    out = [0.0] * len(values)
    first = 0
    while first < len(order):
        last = first
        while last + 1 < len(order) and values[order[last + 1]] == values[order[first]]:
            last += 1
        for k in range(first, last + 1):
            out[order[k]] = (first + last) / 2
        first = last + 1
    return out


def rho(one: Sequence[float], other: Sequence[float]) -> float:
    """Spearman's rank correlation: Pearson's, of the ranks; not a number where one side is all the same."""
    a, b = ranks(one), ranks(other)
    if len(set(a)) == 1 or len(set(b)) == 1:
        return nan
    mean = (len(a) - 1) / 2
    cov = sum((x - mean) * (y - mean) for x, y in zip(a, b, strict=True))
    return float(cov / (sum((x - mean) ** 2 for x in a) * sum((y - mean) ** 2 for y in b)) ** 0.5)


def agreement(scores: Sequence[float], rows: Sequence[Row], more: Sequence[bool]) -> list[float]:
    """Rho with time and D_TO for all, for singles only, for more than singles; not a number where few have a D_TO."""
    found = []
    for keep in ([True] * len(rows), [not m for m in more], more):
        chosen = [i for i, kept in enumerate(keep) if kept]
        rated = [i for i in chosen if rows[i].difficulty is not None]
        found.append(rho([scores[i] for i in chosen], [rows[i].seconds for i in chosen]))
        difficulties = [rows[i].difficulty or 0.0 for i in rated]
        found.append(rho([scores[i] for i in rated], difficulties) if len(rated) > 20 else nan)
    return found


def told(name: str, found: Sequence[float]) -> list[float]:
    """Print a line of the table; its six numbers."""
    cells = ["     " if isnan(number) else f"{number:5.3f}" for number in found]
    print(f"{name:34s} " + "   ".join(" ".join(pair) for pair in zip(cells[::2], cells[1::2], strict=True)), flush=True)
    return [*found]


def standard_errors(scores: Sequence[float], rows: Sequence[Row], more: Sequence[bool]) -> list[float]:
    """Of each figure of `agreement`, over as many puzzles drawn with replacement, many times."""
    rng, count = random.Random(1), len(rows)
    drawn = ([rng.randrange(count) for _ in rows] for _ in range(DRAWS))
    found = [agreement([scores[i] for i in draw], [rows[i] for i in draw], [more[i] for i in draw]) for draw in drawn]
    return [nan if any(map(isnan, column)) else stdev(column) for column in zip(*found, strict=True)]


def parts(graded: Grade) -> tuple[float, float]:
    """Effort of placing, and of striking as if `stuck` were 1."""
    placing = sum(step.effort for step in graded.path.steps if step.rung <= 4)
    return placing, (graded.effort - placing)


Constants = tuple[Weights, float]
"""Weights and `stuck`."""


def tried(rows: Sequence[Row]) -> dict[Constants, list[float]]:
    """The efforts under all constants to choose from."""
    efforts: dict[Constants, list[float]] = {}
    for weights in GRID:
        halves = [parts(grade(classic(row.text), row.solution, replace(weights, stuck=1.0))) for row in rows]
        for stuck in STUCKS:
            efforts[weights, stuck] = [placing + stuck * striking for placing, striking in halves]
    return efforts


def crossed(rows: Sequence[Row], efforts: dict[Constants, list[float]], seed: int, chosen: Counter[str]) -> list[float]:
    """Log effort of each fifth under the constants that do best on the other four, brought to one scale; counts what
    was `chosen`."""
    order = list(range(len(rows)))
    random.Random(seed).shuffle(order)
    out = [0.0] * len(rows)
    for fold in range(FOLDS):
        held = order[fold::FOLDS]
        seen = [i for i in order if i not in set(held)]
        rated = [i for i in seen if rows[i].difficulty is not None]

        def fits(key: Constants, seen: list[int] = seen, rated: list[int] = rated) -> float:
            found = efforts[key]
            time = rho([found[i] for i in seen], [rows[i].seconds for i in seen])
            return time + rho([found[i] for i in rated], [rows[i].difficulty or 0.0 for i in rated])

        best = max(efforts, key=fits)
        constants, stuck = best
        chosen[
            f"same_digit {constants.same_digit}, fresh {constants.fresh:g}, misses {constants.misses}, "
            f"naked {constants.naked}, stuck {stuck:g}"
        ] += 1
        known, usual = efforts[best], efforts[WEIGHTS, WEIGHTS.stuck]
        scale = sum(log(known[i] / usual[i]) for i in seen) / len(seen)
        for i in held:
            out[i] = log(known[i]) - scale
    return out


def dependency_and_refutation(row: Row, runs: int = 20, first: int = 25) -> tuple[float, float]:
    """Pelánek's two measures: mean openings over the first steps of random runs; sum of refutation costs."""
    ground = ground_of(classic(row.text))
    source = random.Random(row.text)
    counts: list[int] = []
    refuted = 0.0
    for run in range(runs):
        state = start(ground)
        steps = 0
        while state.empty and (steps < first or run == 0):
            found = openings(state)
            if found:
                if steps < first:
                    counts.append(len(found))
                steps += 1
                chosen = source.choice(found)
                state.place(chosen.cell, chosen.digit)
                continue
            cost, cell, digit = cheapest(state)
            if run == 0:
                refuted += cost
            if steps < first:
                counts.append(0)
            steps += 1
            state.remove([(cell, digit)])
    return sum(counts) / len(counts), refuted


def cheapest(state: State) -> tuple[int, int, int]:
    """The candidate that is refuted in the fewest rounds, and their number."""
    best: tuple[int, int, int] | None = None
    for digit in state.ground.grid.digits:
        for cell in cells_on(state.boards[digit]):
            clash = follow(state, cell, digit, best[0] - 1 if best else None)
            if clash is not None and (best is None or clash.rounds + 1 < best[0]):
                best = (clash.rounds + 1, cell, digit)
    assert best is not None, "not to be refuted by singles"
    return best


def regressed(features: Sequence[Sequence[float]], rows: Sequence[Row]) -> list[float]:
    """Log time predicted by least squares, each fifth from the other four."""
    import numpy as np

    table = np.column_stack([np.ones(len(rows)), np.array(features)])
    target = np.log([row.seconds for row in rows])
    order = np.random.default_rng(1).permutation(len(rows))
    out = np.zeros(len(rows))
    for fold in range(FOLDS):
        held = order[fold::FOLDS]
        seen = np.setdiff1d(order, held)
        out[held] = table[held] @ np.linalg.lstsq(table[seen], target[seen], rcond=None)[0]
    return [float(x) for x in out]


def main(arguments: Iterable[str]) -> dict[str, list[float]]:
    """Print the table; its rows by name."""
    words = list(arguments)
    cross = "--cross" in words
    files = [word for word in words if not word.startswith("--")]
    path = Path(files[0]) if files else ROOT.parent / "shared" / "data" / "solving-times.tsv"
    if not path.exists():
        sys.exit(f"no data at {path}")
    rows = read(path)
    grades = [grade(classic(row.text), row.solution) for row in rows]
    more = [not graded.singles_only for graded in grades]
    pair = [dependency_and_refutation(row) for row in rows]
    rated = sum(row.difficulty is not None for row in rows)
    print(f"{len(rows)} puzzles, {rated} with D_TO, {sum(more)} need more than singles")
    print(f"{'rho with mean time, D_TO':34s} {'all':14s} {'singles only':14s} more")
    givens = [-float(sum(c not in ".0" for c in row.text)) for row in rows]
    scores: dict[str, Sequence[float]] = {
        "givens": givens,
        "refutation sum": [refuted for _, refuted in pair],
        "dependency, 25 steps": [-count for count, _ in pair],
        "the two together, cross-validated": regressed(pair, rows),
        "effort": [graded.effort for graded in grades],
    }
    found = {name: told(name, agreement(values, rows, more)) for name, values in scores.items()}
    if cross:
        efforts = tried(rows)
        chosen: Counter[str] = Counter()
        held_out = [crossed(rows, efforts, seed, chosen) for seed in range(1, REPEATS + 1)]
        for constants, count in chosen.most_common():
            print(f"  chosen {count} times: {constants}")
        figures = zip(*(agreement(scored, rows, more) for scored in held_out), strict=True)
        found["effort, cross-validated"] = told("effort, cross-validated", [fmean(column) for column in figures])
        told("  standard error", standard_errors(held_out[0], rows, more))
    return found


if __name__ == "__main__":
    main(sys.argv[1:])
