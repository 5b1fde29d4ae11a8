"""What a club's times say of a book: how hard its puzzles were, on the scale on which they are graded, and how far the
two agree.

In: results and the proofs of the book in the same order. Out: an `Assessment`, or BookErrors where there is too
little to go by.

The model of `pace.py` gives each puzzle's intensity, which divided by `PER_BAND` is a level but for the club's own
pace. That pace, and how much harder or easier than graded whole families are, are fitted to what is left between the
two:

    intensity / PER_BAND = level graded + pace + family + misjudgement of the puzzle + chance

Families and misjudgements are normally distributed about 0 with the spreads below, and what is far out counts less (P.
Huber, Annals of Mathematical Statistics 35, 1964). A puzzle's new level is its mean given both grade and times, so that
few times change little.

The interval of the rank correlation is Fisher's, with the variance that E. Fieller, H. Hartley and E. Pearson found for
ranks (Biometrika 44, 1957): 1.06 / (n - 3). Where it reaches 0 the times cannot tell whether the grade is right.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import atanh, exp, log, sqrt, tanh

from bookmaker.grade.bands import FAMILIES, PER_BAND, family_of, level
from bookmaker.proof.findings import Proof
from bookmaker.source.diagnostics import BookErrors, Diagnostic
from bookmaker.times.pace import Fit, Timed, fit
from bookmaker.times.results import Attempt, Results

SOLVERS, PUZZLES = 8, 10
"""With fewer nothing is said."""

MISJUDGED = 1.0
"""A puzzle is misjudged by at least a band, and by more than twice its standard error."""

GRADE_SPREAD = 0.6
"""How far, in bands, a grade lies from the truth: on published times the standard deviation is 0.66 with the chance of
a dozen solvers in it."""

FAMILY_SPREAD = {"classic": 0.15}
"""The same for a whole family whose cuts have people's times behind them."""

UNSURE = 0.5
"""The spread of every other family."""

FAR = 1.5
"""From so many standard deviations on a puzzle counts less the farther it lies."""

STEPS = 100

Z95 = 1.96
"""Standard deviations of a normal distribution that hold 95 % of it, either side."""


@dataclass(frozen=True, slots=True)
class Measured:
    """A puzzle as the times have it. Levels are in bands (see `grade/bands.py`): the one `graded`; the one `expected`,
    with what its family is off; what the `times` alone say, with their standard `error`; what `both` say together."""

    proof: Proof
    number: int
    attempts: int
    finished: int
    graded: float
    expected: float
    times: float
    error: float
    both: float

    @property
    def misjudged(self) -> bool:
        """Do the times contradict the grade by a band or more, and surely?"""
        return abs(self.times - self.expected) >= max(MISJUDGED, 2 * self.error)


@dataclass(frozen=True, slots=True)
class Shift:
    """How many bands harder (or, below 0, easier) than graded a family is, with the standard error."""

    bands: float
    error: float
    puzzles: int


@dataclass(frozen=True, slots=True)
class Assessment:
    """`agreement` is the rank correlation of graded and measured difficulty, from `low` to `high` with 95 % confidence;
    `reliability` the share of the measured differences that is not chance. `pace` is the natural logarithm of the
    minutes that the club's average solver takes at level 0. `apart` are puzzles that no chain of solvers links with the
    others, `unsolved` those without a finished time: they can't be measured."""

    solvers: int
    attempts: int
    finished: int
    puzzles: tuple[Measured, ...]
    families: dict[str, Shift]
    agreement: float
    low: float
    high: float
    reliability: float
    pace: float
    chance: float
    apart: tuple[Proof, ...]
    unsolved: tuple[Proof, ...]

    def minutes(self, at: float) -> float:
        """What the average solver takes for a puzzle of a level (the median, where chance would have it)."""
        return exp(self.pace + PER_BAND * at)


def assess(results: Results, proofs: Sequence[Proof], limit: float | None = None) -> Assessment:
    """The assessment of these puzzles, all graded, in the order in which the results count them.

    An empty cell counts as unfinished after `limit` minutes; without it, after the longest time that anybody finished
    the puzzle in. Raises BookErrors where too few solvers or puzzles are left.
    """
    unsolved = {attempt.puzzle for attempt in results.attempts} - {a.puzzle for a in results.attempts if a.finished}
    attempts = _usable(results.attempts)
    kept = _linked(attempts)
    apart = {attempt.puzzle for attempt in attempts} - {attempt.puzzle for attempt in kept}
    puzzles = sorted({attempt.puzzle for attempt in kept})
    solvers = sorted({attempt.solver for attempt in kept})
    if len(solvers) < SOLVERS or len(puzzles) < PUZZLES:
        text = (
            f"the table cannot tell: {len(solvers)} solvers and {len(puzzles)} puzzles with finished times, linked by "
            "solvers in common"
        )
        hint = f"it takes {SOLVERS} solvers and {PUZZLES} puzzles at least"
        raise BookErrors([Diagnostic(results.place, "too-few", text, hint)])
    times = _timed(kept, puzzles, solvers, limit)
    fitted = fit(times, len(puzzles), len(solvers))
    return _assessment(fitted, times, [proofs[puzzle] for puzzle in puzzles], puzzles, apart, unsolved, proofs)


def _usable(attempts: Iterable[Attempt]) -> list[Attempt]:
    """Without solvers who finished nothing and puzzles that nobody finished, over and over until none is left."""
    kept = list(attempts)
    while True:
        solved = {attempt.puzzle for attempt in kept if attempt.finished}
        active = {attempt.solver for attempt in kept if attempt.finished}
        fewer = [attempt for attempt in kept if attempt.puzzle in solved and attempt.solver in active]
        if len(fewer) == len(kept):
            return kept
        kept = fewer


def _linked(attempts: Sequence[Attempt]) -> list[Attempt]:
    """The largest set of attempts in which solvers in common link every puzzle with every other."""
    group: dict[tuple[str, int], int] = {}
    for number, attempt in enumerate(attempts):
        ends = ("solver", attempt.solver), ("puzzle", attempt.puzzle)
        met = {group[end] for end in ends if end in group}
        group.update(dict.fromkeys(ends, number))
        group.update({end: number for end, other in group.items() if other in met})
    sizes = Counter(group["puzzle", attempt.puzzle] for attempt in attempts)
    largest = max(sizes, key=lambda number: sizes[number], default=-1)
    return [attempt for attempt in attempts if group["puzzle", attempt.puzzle] == largest]


def _timed(
    attempts: Sequence[Attempt], puzzles: Sequence[int], solvers: Sequence[int], limit: float | None
) -> list[Timed]:
    """The attempts with numbers of their own, each with the minutes it took or lasted."""
    longest: dict[int, float] = {}
    for attempt in attempts:
        if attempt.finished and attempt.minutes:
            longest[attempt.puzzle] = max(longest.get(attempt.puzzle, 0.0), attempt.minutes)
    return [
        Timed(
            solvers.index(attempt.solver),
            puzzles.index(attempt.puzzle),
            log(attempt.minutes or limit or longest[attempt.puzzle]),
            attempt.finished,
        )
        for attempt in attempts
    ]


def _assessment(
    fitted: Fit,
    times: Sequence[Timed],
    proofs: Sequence[Proof],
    numbers: Sequence[int],
    apart: set[int],
    unsolved: set[int],
    everything: Sequence[Proof],
) -> Assessment:
    graded = [level(proof.grade.difficulty) for proof in proofs if proof.grade]
    families = [family_of(proof.entry.puzzle) for proof in proofs]
    alone = [fitted.alone(at) for at in range(len(proofs))]
    errors = [error / PER_BAND for _, error in alone]
    left = [intensity / PER_BAND - g for (intensity, _), g in zip(alone, graded, strict=True)]
    pace, shifts = _pace_and_shifts(left, errors, families)
    measured = []
    for at, proof in enumerate(proofs):
        expected = graded[at] + shifts[families[at]].bands
        told = graded[at] + left[at] - pace
        weight = GRADE_SPREAD**2 / (GRADE_SPREAD**2 + errors[at] ** 2)
        tries = [time for time in times if time.puzzle == at]
        measured.append(
            Measured(
                proof,
                numbers[at] + 1,
                len(tries),
                sum(time.finished for time in tries),
                graded[at],
                expected,
                told,
                errors[at],
                expected + weight * (told - expected),
            )
        )
    agreement, low, high = rank_correlation(graded, fitted.intensities)
    return Assessment(
        len(fitted.paces),
        len(times),
        sum(time.finished for time in times),
        tuple(measured),
        shifts,
        agreement,
        low,
        high,
        fitted.reliability,
        PER_BAND * pace,
        fitted.chance,
        tuple(everything[puzzle] for puzzle in sorted(apart)),
        tuple(everything[puzzle] for puzzle in sorted(unsolved)),
    )


def _pace_and_shifts(
    left: Sequence[float], errors: Sequence[float], families: Sequence[str]
) -> tuple[float, dict[str, Shift]]:
    """The club's pace in bands, and how much harder than graded each family is, from what grades leave of levels."""
    pace = sorted(left)[len(left) // 2]
    shifts = {family: Shift(0.0, 0.0, 0) for family in FAMILIES if family in families}
    for _ in range(STEPS):
        weights = []
        for x, error, family in zip(left, errors, families, strict=True):
            variance = error**2 + GRADE_SPREAD**2
            far = abs(x - pace - shifts[family].bands) / sqrt(variance)
            weights.append(min(1.0, FAR / far if far else 1.0) / variance)
        rest = [x - shifts[family].bands for x, family in zip(left, families, strict=True)]
        pace = sum(w * x for w, x in zip(weights, rest, strict=True)) / sum(weights)
        for family in shifts:
            own = [(w, x - pace) for w, x, its in zip(weights, left, families, strict=True) if its == family]
            firm = sum(w for w, _ in own) + 1 / FAMILY_SPREAD.get(family, UNSURE) ** 2
            shifts[family] = Shift(sum(w * x for w, x in own) / firm, 1 / sqrt(firm), len(own))
    return pace, shifts


def rank_correlation(one: Sequence[float], other: Sequence[float]) -> tuple[float, float, float]:
    """Spearman's coefficient of two equally long series, with the ends of its 95 % interval; 0, -1 and 1 where a series
    is all the same, the whole interval where they have three members or fewer."""
    a, b = ranks(one), ranks(other)
    middle = (len(a) - 1) / 2
    spreads = [sum((x - middle) ** 2 for x in series) for series in (a, b)]
    if not all(spreads):
        return 0.0, -1.0, 1.0
    rho = sum((x - middle) * (y - middle) for x, y in zip(a, b, strict=True)) / sqrt(spreads[0] * spreads[1])
    if len(a) <= 3:
        return rho, -1.0, 1.0
    reach = Z95 * sqrt(1.06 / (len(a) - 3))
    z = atanh(min(max(rho, -0.999999), 0.999999))
    return rho, tanh(z - reach), tanh(z + reach)


def ranks(values: Sequence[float]) -> list[float]:
    """Ranks from 0; equal values share their mean rank."""
    ordered = sorted(values)
    return [ordered.index(value) + (ordered.count(value) - 1) / 2 for value in values]
