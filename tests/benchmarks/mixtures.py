"""Mixtures: random puzzles of one to four rule kinds, by a generator that shares nothing with makers or engine.

    python tests/benchmarks/mixtures.py FOLDER [FIRST [LAST]]

A full grid is drawn by OR-Tools CP-SAT, with boxes or with irregular regions, under those of the kinds that hold in the
whole grid; the marks of the others are laid on it (`lay` of their test cases); givens are taken away while CP-SAT, from
the definitions in the room `audit`, finds no second solution. Kinds are found by their folder. Of three in five puzzles
one solution is left; one in five has one given less than that, one in five a wrong one. Every sixth puzzle begins
without givens and with all the marks there are: clues at all sides, or three layers of other marks.

A seed makes the same puzzle on every machine that has the same OR-Tools: patience is counted in its deterministic time.
Each is kept in FOLDER as a pickle, so that the next run takes it from there.
"""

from __future__ import annotations

import pickle
import sys
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, fields, replace
from pathlib import Path
from random import Random
from time import perf_counter
from typing import Any

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from ortools.sat.python import cp_model

from bookmaker.crosscheck import model_of
from bookmaker.puzzle.grid import USUAL_BOXES, Grid, boxed_grid, irregular_grid
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from tests.rules.harness import cases_of, lay, read_entry

SIZES = {4: 6, 5: 9, 6: 11, 7: 11, 8: 12, 9: 23, 10: 11, 12: 9, 16: 8}
"""Sizes of grid, each with its share of the puzzles in hundredths."""

COUNT = 2_400
"""Seeds of the whole benchmark; about one in ten gives no puzzle, for its kinds allow no grid of its size."""

PATIENCE, TIGHTENING = 1.0, 2.5
"""CP-SAT's deterministic time (about seconds) for one question, and for all questions about one puzzle's givens."""

Solution = tuple[int, ...]


@dataclass(frozen=True)
class Mixture:
    """A puzzle; `wanted` says what its givens were made for: “unique”, “several”, “none” or “no givens”."""

    seed: int
    puzzle: RuledPuzzle
    wanted: str

    @property
    def kinds(self) -> tuple[str, ...]:
        return tuple(rule.kind for rule in self.puzzle.rules)


def mixture(seed: int) -> Mixture | None:
    """The puzzle of a seed; None where its kinds allow no grid."""
    rng = Random(seed)
    size = rng.choices(list(SIZES), list(SIZES.values()))[0]
    chosen = rng.sample(list(kinds()), rng.choice((1, 1, 2, 2, 3, 4)))
    grid = _random_grid(size, rng)
    in_all = [rule for kind in chosen if hasattr(cases_of(kind), "grow") and (rule := _as_shown(kind, grid))]
    empty: RuledPuzzle = Puzzle(grid, (0,) * len(grid.cells), tuple(in_all))
    solution = _next(empty, None, rng)
    if solution is None:
        return None
    everywhere = seed % 6 == 0
    laid = [_laid(kind, grid, solution, rng, everywhere) for kind in chosen if not hasattr(cases_of(kind), "grow")]
    rules = (*in_all, *(rule for rule in laid if rule is not None))
    if not rules:
        return None
    puzzle: RuledPuzzle = Puzzle(grid, empty.givens, rules)
    if everywhere:
        return Mixture(seed, puzzle, "no givens")
    wanted = rng.choices(("unique", "several", "none"), (3, 1, 1))[0]
    tight = _tightened(replace(puzzle, givens=solution), rng)
    return Mixture(seed, replace(tight, givens=_spoilt(tight.givens, solution, wanted, rng)), wanted)


def kept_mixtures(folder: Path, seeds: Sequence[int]) -> Iterator[Mixture]:
    """The puzzles of some seeds, from the folder where they are there already."""
    folder.mkdir(parents=True, exist_ok=True)
    for seed in seeds:
        file = folder / f"{seed}.pickle"
        if not file.exists():
            file.write_bytes(pickle.dumps(mixture(seed)))
        made: Mixture | None = pickle.loads(file.read_bytes())
        if made is not None:
            yield made


def _random_grid(size: int, rng: Random) -> Grid:
    """Boxes, or regions that come from boxes or rows by exchanging cells of neighbours while each hangs together."""
    if size in USUAL_BOXES and rng.random() < 0.7:
        return boxed_grid(size, *USUAL_BOXES[size])
    height, width = USUAL_BOXES.get(size, (1, size))
    grid = boxed_grid(size, height, width)
    labels = list(grid.region_of)
    for _ in range(size * size * 3):
        one, other = rng.sample(grid.cells, 2)
        if labels[one] != labels[other] and _beside(grid, labels, one, other) and _beside(grid, labels, other, one):
            labels[one], labels[other] = labels[other], labels[one]
            if any(len(grid.pieces(c for c in grid.cells if labels[c] == labels[end])) > 1 for end in (one, other)):
                labels[one], labels[other] = labels[other], labels[one]
    return irregular_grid(size, labels)


def _beside(grid: Grid, labels: list[int], cell: int, home: int) -> bool:
    """Does a cell share a side with another cell of the region of `home`?"""
    return any(labels[near] == labels[home] and near != home for near in grid.orthogonal(cell))


def _as_shown(kind: str, grid: Grid) -> Rule | None:
    """The rule of a kind that holds in the whole grid, as its example says it; None where the grid does not suit it."""
    rule, _ = read_entry(kinds()[kind].example, grid)
    return rule


def _laid(kind: str, grid: Grid, solution: Solution, rng: Random, everywhere: bool) -> Rule | None:
    """Marks of a kind on a solution; `everywhere` joins the clues of many tries, each line once from each side."""
    rules: list[Rule] = [
        rule for _ in range(12 if everywhere else 1) if (rule := lay(kind, grid, solution, rng)) is not None
    ]
    if not rules:
        return None
    first: Any = rules[0]  # kinds are dataclasses, their base is not
    clues = next((field.name for field in fields(first) if field.name in ("clues", "diagonals")), None)
    if clues is None:
        return first
    joined = {tuple(clue.cells(grid)): clue for rule in rules for clue in getattr(rule, clues)}
    laid: Rule = replace(first, **{clues: tuple(joined.values())})
    return laid


def _next(puzzle: RuledPuzzle, known: Solution | None, rng: Random) -> Solution | None:
    """A random solution, other than the one known; None where there is none or patience runs out."""
    return _ask(puzzle, known, rng)[1]


def _ask(puzzle: RuledPuzzle, known: Solution | None, rng: Random) -> tuple[bool, Solution | None, float]:
    """Was it decided, the solution if there is one, and the deterministic time it took."""
    model, x = model_of(puzzle)
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 1
    solver.parameters.random_seed = rng.randrange(1 << 30)
    solver.parameters.max_deterministic_time = PATIENCE if known else 20 * PATIENCE
    if known is None:
        solver.parameters.randomize_search = True
        for variable in x:
            model.add_hint(variable, rng.choice(puzzle.grid.digits))
    else:
        model.add_forbidden_assignments(x, [known])
    status = solver.solve(model)
    spent = solver.response_proto.deterministic_time
    if status in (cp_model.OPTIMAL, cp_model.FEASIBLE):
        return True, tuple(solver.value(variable) for variable in x), spent
    return status == cp_model.INFEASIBLE, None, spent


def _tightened(puzzle: RuledPuzzle, rng: Random) -> RuledPuzzle:
    """Givens taken away in random order while CP-SAT proves that no second solution comes in.

    How many can go at once is found by halving; then the one that can't is kept and the rest tried again, until none
    is left or the time for it has run out.
    """
    solution = puzzle.givens
    order = rng.sample(puzzle.grid.cells, len(solution))
    gone: list[int] = []
    others: list[Solution] = []
    left = TIGHTENING

    def unique_without(cells: Sequence[int]) -> bool:
        nonlocal left
        taken = set(cells)
        if any(all(c in taken or other[c] == solution[c] for c in puzzle.grid.cells) for other in others):
            return False
        givens = tuple(0 if c in taken else d for c, d in enumerate(solution))
        decided, other, spent = _ask(replace(puzzle, givens=givens), solution, rng)
        left -= spent
        if other is not None:
            others.append(other)
        return decided and other is None

    while order and left > 0:
        few, many = 0, len(order) + 1  # `few` can go, `many` can't
        while many - few > 1 and left > 0:
            middle = (few + many) // 2
            if unique_without([*gone, *order[:middle]]):
                few = middle
            else:
                many = middle
        gone += order[:few]
        order = order[few + 1 :]
    taken = set(gone)
    return replace(puzzle, givens=tuple(0 if c in taken else d for c, d in enumerate(solution)))


def _spoilt(givens: Solution, solution: Solution, wanted: str, rng: Random) -> Solution:
    """The givens, one less, or with a wrong one."""
    spoilt = list(givens)
    shown = [cell for cell, digit in enumerate(givens) if digit]
    bare = [cell for cell, digit in enumerate(givens) if not digit]
    if wanted == "several" and shown:
        spoilt[rng.choice(shown)] = 0
    if wanted == "none" and bare:
        cell = rng.choice(bare)
        spoilt[cell] = rng.choice([digit for digit in range(1, max(solution) + 1) if digit != solution[cell]])
    return tuple(spoilt)


def main() -> None:
    folder = Path(sys.argv[1])
    first, last = (int(word) for word in (*sys.argv[2:4], *("0", str(COUNT))[len(sys.argv) - 2 :]))
    began = perf_counter()
    made = sum(1 for _ in kept_mixtures(folder, range(first, last)))
    print(f"{made} puzzles from seeds {first} to {last - 1}, {perf_counter() - began:.0f} s")


if __name__ == "__main__":
    main()
