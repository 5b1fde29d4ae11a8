"""Solvers' pace and puzzles' difficulty from times, fitted together: a lognormal model with a Rasch-like structure.

In: attempts, each with its solver, its puzzle and the natural logarithm of the minutes, finished or not. Out: a `Fit`.

    ln minutes = intensity of the puzzle - pace of the solver + chance

with chance normally distributed, of one spread for all (W. van der Linden, "A lognormal model for response times on
test items", Journal of Educational and Behavioral Statistics 31, 2006, with one discrimination for all items, as few
times cannot tell more). Who had not finished after so many minutes would have taken longer: such a time is censored.
Pace and intensity are themselves normally distributed in the club and in the book, which keeps those with few times
near the others.

The most likely values are found by Newton's steps, puzzle by puzzle and solver by solver in turn; the three spreads by
expectation and maximisation (A. Dempster, N. Laird, D. Rubin, J. Royal Statistical Society B 39, 1977), with the
uncertainty of the values read off the curvature at the most likely ones.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import erfc, exp, log, pi, sqrt

ROUNDS, SWEEPS = 200, 40
"""At most so many rounds for the spreads, and sweeps over all puzzles and solvers in each."""

ROUGH, CLOSE = 1e-4, 1e-7
"""Steps smaller than this end a search: while the spreads are sought, and at last."""

LEAST_SPREAD = 0.05
"""No spread is estimated below this: the logarithm of 5 %."""


@dataclass(frozen=True, slots=True)
class Timed:
    """`log_minutes` is the time it took, or after which it was still unfinished."""

    solver: int
    puzzle: int
    log_minutes: float
    finished: bool


@dataclass(frozen=True, slots=True)
class Fit:
    """Intensities of the puzzles with their standard errors, paces of the solvers (on average about 0), the puzzles'
    `mean`, and the spread of chance, of the puzzles and of the solvers, all in natural logarithms of minutes."""

    intensities: tuple[float, ...]
    errors: tuple[float, ...]
    paces: tuple[float, ...]
    mean: float
    chance: float
    puzzle_spread: float
    solver_spread: float

    @property
    def reliability(self) -> float:
        """The share of the differences between puzzles, as they are estimated, that is not chance: 0 to 1."""
        unsure = sum(error**2 for error in self.errors) / len(self.errors)
        return max(0.0, 1 - unsure / self.puzzle_spread**2)

    def alone(self, puzzle: int) -> tuple[float, float]:
        """The intensity that a puzzle's own times say, not drawn towards the other puzzles, and its standard error."""
        firm = 1 / self.errors[puzzle] ** 2
        own = max(firm - 1 / self.puzzle_spread**2, firm / 100)
        return self.mean + (self.intensities[puzzle] - self.mean) * firm / own, 1 / sqrt(own)


def fit(times: Sequence[Timed], puzzles: int, solvers: int) -> Fit:
    """The model of these times; every puzzle and every solver should have finished times among them."""
    finished = [time.log_minutes for time in times if time.finished]
    mean = sum(finished) / len(finished)
    usual = max(LEAST_SPREAD, sqrt(sum((y - mean) ** 2 for y in finished) / len(finished)))
    model = _Model(times, [mean] * puzzles, [0.0] * solvers, mean, usual / 2, usual / 2, usual / 2)
    for _ in range(ROUNDS):
        model.settle(ROUGH)
        if model.respread() < ROUGH:
            break
    model.settle(CLOSE)
    variances, _ = model.uncertainty()
    return Fit(
        tuple(model.intensity),
        tuple(sqrt(variance) for variance in variances),
        tuple(model.pace),
        model.mean,
        model.chance,
        model.puzzle_spread,
        model.solver_spread,
    )


def tail(z: float) -> float:
    """The mean of a standard normal variable beyond z: its density there, by the probability of more (Mills)."""
    if z > 30:
        return z + 1 / z
    return exp(-z * z / 2) / sqrt(2 * pi) / (erfc(z / sqrt(2)) / 2)


@dataclass(slots=True)
class _Model:
    """Everything that is estimated, changed in place."""

    times: Sequence[Timed]
    intensity: list[float]
    pace: list[float]
    mean: float
    chance: float
    puzzle_spread: float
    solver_spread: float

    def pull(self, time: Timed) -> tuple[float, float]:
        """Slope and curvature (downwards) of one time's log-likelihood by its expected log minutes."""
        z = (time.log_minutes - self.intensity[time.puzzle] + self.pace[time.solver]) / self.chance
        if time.finished:
            return z / self.chance, 1 / self.chance**2
        beyond = tail(z)
        return beyond / self.chance, beyond * (beyond - z) / self.chance**2

    def settle(self, close: float) -> None:
        """The most likely intensities and paces at these spreads, as close as that."""
        of_puzzle: list[list[Timed]] = [[] for _ in self.intensity]
        of_solver: list[list[Timed]] = [[] for _ in self.pace]
        for time in self.times:
            of_puzzle[time.puzzle].append(time)
            of_solver[time.solver].append(time)
        for _ in range(SWEEPS):
            moved = 0.0
            for values, own, sign, mean, spread in (
                (self.intensity, of_puzzle, 1, self.mean, self.puzzle_spread),
                (self.pace, of_solver, -1, 0.0, self.solver_spread),
            ):
                for at, theirs in enumerate(own):
                    slope, curve = (mean - values[at]) / spread**2, 1 / spread**2
                    for time in theirs:
                        pull, bend = self.pull(time)
                        slope += sign * pull
                        curve += bend
                    values[at] += slope / curve
                    moved = max(moved, abs(slope / curve))
            if moved < close:
                return

    def uncertainty(self) -> tuple[list[float], list[float]]:
        """The variances of the intensities and of the paces, by the curvature at the top."""
        of_puzzles = [1 / self.puzzle_spread**2] * len(self.intensity)
        of_solvers = [1 / self.solver_spread**2] * len(self.pace)
        between: dict[tuple[int, int], float] = {}
        for time in self.times:
            bend = self.pull(time)[1]
            of_puzzles[time.puzzle] += bend
            of_solvers[time.solver] += bend
            between[time.puzzle, time.solver] = between.get((time.puzzle, time.solver), 0.0) - bend
        if len(of_puzzles) >= len(of_solvers):
            return _variances(of_puzzles, of_solvers, between)
        turned = {(solver, puzzle): bend for (puzzle, solver), bend in between.items()}
        return _variances(of_solvers, of_puzzles, turned)[::-1]

    def respread(self) -> float:
        """The spreads, once more, from values and their uncertainty; how far the farthest of them moved."""
        of_puzzles, of_solvers = self.uncertainty()
        before = self.chance, self.puzzle_spread, self.solver_spread
        self.mean = sum(self.intensity) / len(self.intensity)
        total = 0.0
        for time in self.times:
            z = (time.log_minutes - self.intensity[time.puzzle] + self.pace[time.solver]) / self.chance
            if time.finished:
                total += (z * self.chance) ** 2 + of_puzzles[time.puzzle] + of_solvers[time.solver]
            else:
                total += self.chance**2 * (1 + z * tail(z))
        self.chance = max(LEAST_SPREAD, sqrt(total / len(self.times)))
        between = sum((x - self.mean) ** 2 + v for x, v in zip(self.intensity, of_puzzles, strict=True))
        self.puzzle_spread = max(LEAST_SPREAD, sqrt(between / len(self.intensity)))
        among = sum(x * x + v for x, v in zip(self.pace, of_solvers, strict=True))
        self.solver_spread = max(LEAST_SPREAD, sqrt(among / len(self.pace)))
        after = self.chance, self.puzzle_spread, self.solver_spread
        return max(abs(log(new / old)) for old, new in zip(before, after, strict=True))


def _variances(
    many: Sequence[float], few: Sequence[float], between: Mapping[tuple[int, int], float]
) -> tuple[list[float], list[float]]:
    """The diagonals of a matrix's inverse, for its two blocks. The blocks themselves are diagonal and given so, with
    what links one to the other `between` them; the larger is eliminated first (Schur's complement)."""
    links: list[list[tuple[int, float]]] = [[] for _ in many]
    for (at, other), bend in between.items():
        links[at].append((other, bend))
    left = [[0.0] * len(few) for _ in few]
    for other, firm in enumerate(few):
        left[other][other] = firm
    for firm, row in zip(many, links, strict=True):
        for s, x in row:
            for t, y in row:
                left[s][t] -= x * y / firm
    covariance = inverse(left)
    of_many = [
        1 / firm + sum(x * y * covariance[s][t] for s, x in row for t, y in row) / firm**2
        for firm, row in zip(many, links, strict=True)
    ]
    return of_many, [covariance[at][at] for at in range(len(few))]


def inverse(matrix: Sequence[Sequence[float]]) -> list[list[float]]:
    """Of a symmetric positive definite matrix, by Gauss and Jordan's elimination."""
    size = len(matrix)
    rows = [[*row, *(float(at == other) for other in range(size))] for at, row in enumerate(matrix)]
    for at in range(size):
        pivot = rows[at] = [x / rows[at][at] for x in rows[at]]
        for other in range(size):
            if other != at and (factor := rows[other][at]):
                rows[other] = [x - factor * y for x, y in zip(rows[other], pivot, strict=True)]
    return [row[size:] for row in rows]
