"""How fast random mixtures of rule kinds are proven, beside OR-Tools CP-SAT on the same puzzles in the same run.

    python tests/benchmarks/mixture_speed.py FOLDER [--every N] [--seeds FIRST:LAST]
                                             [--plot FILE.svg] [--rows FILE.json] [--rival FILE.json]

The puzzles are those of `mixtures.py`, kept in FOLDER. Ours is the whole call `prove(problem)`, compiling and handing
over included; the rival is the quicker of two ways to ask CP-SAT (`rival.py`), of which only the time inside the solver
counts, not the building of its model. Processor time, one worker; what is short is measured as the mean of a few runs.
The two must agree on every verdict, and every solution must keep all rules by their plain predicates.

Prints tables by size, by kind and by outcome. --plot draws our time against CP-SAT's, a dot for each puzzle; --rows
keeps the figures; --rival takes CP-SAT's from such a file, for comparisons while working on the engine.
"""

from __future__ import annotations

import argparse
import json
import signal
import sys
from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from contextlib import suppress
from dataclasses import asdict, dataclass, replace
from math import floor, log10
from pathlib import Path
from statistics import median
from time import process_time
from types import FrameType

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from bookmaker.crosscheck import model_of
from bookmaker.rules import keeps_all, problem_of
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve import prove
from bookmaker.solve.problem import Problem
from bookmaker.solve.verdict import Several, Undecided, Unique, Verdict
from tests.benchmarks.mixtures import COUNT, Mixture, kept_mixtures
from tests.benchmarks.rival import Answer, cp_sat

LIMIT = 20.0
"""Seconds that CP-SAT has for each of its two ways."""

PATIENCE = 120.0
"""Seconds after which a proof of ours is broken off and counts as undecided; on the wall, because a timer of processor
time would make the clock of it coarse."""

GRACE, FACTOR, SLACK = 0.05, 1.5, 0.3
"""By how much a proof may be slower: seconds that nearly all keep to; the factor and seconds that all keep to."""

SHORT = 0.02
"""What takes less than this many seconds is done again, ten times at most, and the mean counts."""

GOALS = "median 4, slower by more than 50 ms at most 2 %, over 1.5 times + 0.3 s none, undecided none"


@dataclass(frozen=True)
class Row:
    """What was measured of one puzzle. `verdict` is the number of solutions met, two at most; -1 for undecided."""

    seed: int
    size: int
    boxes: bool
    kinds: list[str]
    wanted: str
    ours: float
    theirs: float
    verdict: int
    rival_verdict: int

    @property
    def ratio(self) -> float:
        return self.theirs / self.ours


class _TooLong(Exception):
    pass


def _break_off(signum: int, frame: FrameType | None) -> None:
    raise _TooLong


def measured(mixture: Mixture, known: Answer | None = None) -> Row:
    """Both provers on one puzzle. Raises AssertionError where they disagree or a solution breaks a rule."""
    puzzle = mixture.puzzle
    problem = problem_of(puzzle)
    verdict, seconds = _ours(problem)
    solutions: tuple[tuple[int, ...], ...] = ()
    match verdict:
        case Unique(solution):
            solutions = (solution,)
        case Several(first, second):
            solutions = (first, second)
            assert first != second
    assert all(keeps_all(puzzle, solution) for solution in solutions), mixture
    answer = known or _theirs(puzzle)
    met = -1 if isinstance(verdict, Undecided) else len(solutions)
    theirs = answer.solutions if answer.decided else -1
    assert met == theirs or -1 in (met, theirs), (mixture, verdict, answer)
    grid = puzzle.grid
    return Row(
        mixture.seed,
        grid.size,
        grid.box is not None,
        list(mixture.kinds),
        mixture.wanted,
        seconds,
        answer.seconds,
        met,
        theirs,
    )


def _ours(problem: Problem) -> tuple[Verdict, float]:
    signal.setitimer(signal.ITIMER_REAL, PATIENCE)
    times: list[float] = []
    verdict: Verdict = Undecided(0)
    with suppress(_TooLong):
        while sum(times) < SHORT and len(times) < 10:
            began = process_time()
            try:
                verdict = prove(problem)
            finally:
                times.append(process_time() - began)
    signal.setitimer(signal.ITIMER_REAL, 0)
    return verdict, sum(times) / len(times)


def _theirs(puzzle: RuledPuzzle) -> Answer:
    answers: list[Answer] = []
    while sum(answer.seconds for answer in answers) < SHORT and len(answers) < 10:
        answers.append(cp_sat(lambda: model_of(puzzle), LIMIT))
    return replace(answers[-1], seconds=sum(answer.seconds for answer in answers) / len(answers))


def table(rows: Sequence[Row], title: str, groups: Callable[[Row], Iterable[object]]) -> None:
    """One line for each group, and one for all."""
    print(
        f"\n{title:20}{'count':>6}{'ours':>9}{'worst':>9}{'CP-SAT':>9}{'worst':>9}{'ratio':>8}{'slower':>9}"
        f"{'+50 ms':>9}{'1.5x+0.3':>9}{'undecided':>11}"
    )
    found: dict[object, list[Row]] = {}
    for row in rows:
        for group in groups(row):
            found.setdefault(group, []).append(row)
    for group, members in (*sorted(found.items(), key=lambda item: (str(type(item[0])), item[0])), ("all", rows)):
        _line(str(group), members)


def _line(name: str, rows: Sequence[Row]) -> None:
    ours, theirs = [row.ours for row in rows], [row.theirs for row in rows]
    slower = sum(row.ours > row.theirs for row in rows)
    print(
        f"{name:20}{len(rows):6}{median(ours) * 1e3:9.1f}{max(ours) * 1e3:9.0f}{median(theirs) * 1e3:9.1f}"
        f"{max(theirs) * 1e3:9.0f}{median(row.ratio for row in rows):8.1f}{slower / len(rows):9.1%}"
        f"{sum(map(beyond_grace, rows)) / len(rows):9.1%}{sum(map(far_beyond, rows)):9}"
        f"{sum(row.verdict < 0 <= row.rival_verdict for row in rows):11}"
    )


def beyond_grace(row: Row) -> bool:
    return row.ours > row.theirs + GRACE


def far_beyond(row: Row) -> bool:
    return row.ours > FACTOR * row.theirs + SLACK


def met(rows: Sequence[Row]) -> bool:
    """Are all goals reached?"""
    return (
        median(row.ratio for row in rows) >= 4
        and sum(map(beyond_grace, rows)) <= 0.02 * len(rows)
        and not any(map(far_beyond, rows))
        and not any(row.verdict < 0 <= row.rival_verdict for row in rows)
    )


LEAST, MOST, DECADE, EDGE = 1e-4, 100.0, 90, 50
"""The plot's axes in seconds, the length of a factor of ten in its units, and the room for words."""


def plot(rows: Sequence[Row]) -> str:
    """An SVG with a dot for each puzzle: across, CP-SAT's time; up, ours; both by powers of ten.

    Dots under the slanting line are faster with us. Circles: one solution; squares: several; crosses: none; a ring
    around a dot: undecided with us.
    """
    side = DECADE * round(log10(MOST / LEAST))
    far = side + EDGE

    def at(seconds: float) -> float:
        return DECADE * log10(min(max(seconds, LEAST), MOST) / LEAST)

    def line(x: float, y: float, to_x: float, to_y: float, style: str) -> str:
        return f'<line x1="{EDGE + x:.1f}" y1="{far - y:.1f}" x2="{EDGE + to_x:.1f}" y2="{far - to_y:.1f}" {style}/>'

    parts = [
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {far + 20} {far + EDGE}"',
        ' font-family="sans-serif" font-size="13">',
        f'<rect width="{far + 20}" height="{far + EDGE}" fill="white"/>',
    ]
    for power in range(floor(log10(LEAST)), floor(log10(MOST)) + 1):
        here = at(10.0**power)
        said = {-4: "0.1 ms", -3: "1 ms", -2: "10 ms", -1: "0.1 s", 0: "1 s", 1: "10 s", 2: "100 s"}[power]
        parts += [line(here, 0, here, side, 'stroke="#ddd"'), line(0, here, side, here, 'stroke="#ddd"')]
        parts.append(f'<text x="{EDGE + here:.1f}" y="{far + 18}" text-anchor="middle">{said}</text>')
        parts.append(f'<text x="{EDGE - 6}" y="{far - here + 4:.1f}" text-anchor="end">{said}</text>')
    parts.append(line(0, 0, side, side, 'stroke="#555"'))
    beyond = [LEAST * (MOST / LEAST) ** (step / 200) for step in range(201)]
    for limit, dash in ((lambda t: t + GRACE, "2 3"), (lambda t: FACTOR * t + SLACK, "7 4")):
        points = " ".join(f"{EDGE + at(t):.1f},{far - at(limit(t)):.1f}" for t in beyond if limit(t) <= MOST)
        parts.append(f'<polyline points="{points}" fill="none" stroke="#b00" stroke-dasharray="{dash}"/>')
    for row in rows:
        x, y = EDGE + at(row.theirs), far - at(row.ours)
        match row.rival_verdict if row.verdict < 0 else row.verdict:
            case 0:
                parts.append(f'<path d="M{x - 3:.1f} {y - 3:.1f}l6 6m0 -6l-6 6" stroke="#06c" stroke-opacity=".6"/>')
            case 2:
                parts.append(
                    f'<rect x="{x - 2.5:.1f}" y="{y - 2.5:.1f}" width="5" height="5" fill="#080" fill-opacity=".5"/>'
                )
            case _:
                parts.append(f'<circle cx="{x:.1f}" cy="{y:.1f}" r="2.7" fill="#000" fill-opacity=".45"/>')
        if row.verdict < 0:
            parts.append(f'<circle cx="{x:.1f}" cy="{y:.1f}" r="7" fill="none" stroke="#b00"/>')
    middle = EDGE + side / 2
    parts.append(f'<text x="{middle}" y="{far + 40}" text-anchor="middle">CP-SAT, the quicker of two ways</text>')
    parts.append(f'<text x="{EDGE + 8}" y="{EDGE + 16}">ours</text>')
    for i, (mark, said) in enumerate((("●", "one solution"), ("■", "several"), ("×", "none"))):
        parts.append(f'<text x="{EDGE + 8}" y="{EDGE + 38 + 18 * i}">{mark} {said}</text>')
    parts.append(f'<text x="{EDGE + 8}" y="{EDGE + 96}" fill="#b00">·· + 50 ms   – – 1.5 × + 0.3 s</text>')
    return "\n".join((*parts, "</svg>", ""))


def _seeds(text: str) -> range:
    first, last = text.split(":")
    return range(int(first), int(last))


def _known(file: Path | None) -> Mapping[int, Answer]:
    if file is None:
        return {}
    return {
        row["seed"]: Answer(row["theirs"], max(row["rival_verdict"], 0), row["rival_verdict"] >= 0)
        for row in json.loads(file.read_text())
    }


def _measure_all(folder: Path, seeds: Sequence[int], known: Mapping[int, Answer]) -> Iterator[Row]:
    for mixture in kept_mixtures(folder, seeds):
        if known and mixture.seed not in known:
            continue
        row = measured(mixture, known.get(mixture.seed))
        if far_beyond(row) or row.verdict < 0:
            print(
                f"{row.seed:5} {row.size:2} {'boxes' if row.boxes else 'other'} {', '.join(row.kinds)} ({row.wanted}): "
                f"{row.ours:.3f} s, CP-SAT {row.theirs:.3f} s{', undecided' * (row.verdict < 0)}",
                flush=True,
            )
        yield row


def main() -> int:
    reader = argparse.ArgumentParser()
    reader.add_argument("folder", type=Path)
    reader.add_argument("--seeds", type=_seeds, default=range(COUNT))
    reader.add_argument("--every", type=int, default=1)
    reader.add_argument("--plot", type=Path)
    reader.add_argument("--rows", type=Path)
    reader.add_argument("--rival", type=Path)
    asked = reader.parse_args()
    signal.signal(signal.SIGALRM, _break_off)
    rows = list(_measure_all(asked.folder, asked.seeds[:: asked.every], _known(asked.rival)))
    if asked.rows:
        asked.rows.write_text(json.dumps([asdict(row) for row in rows]))
    if asked.plot:
        asked.plot.write_text(plot(rows), encoding="utf-8")
    print("milliseconds; ratio CP-SAT / ours by median; shares slower, slower by more than 50 ms; counts beyond")
    table(rows, "size", lambda row: [row.size])
    table(rows, "kind", lambda row: row.kinds)
    table(rows, "outcome", lambda row: [row.wanted])
    table(rows, "regions", lambda row: ["boxes" if row.boxes else "other"])
    print(f"\ngoals: {GOALS}: {'met' if met(rows) else 'MISSED'}")
    return 0 if met(rows) else 1


if __name__ == "__main__":
    sys.exit(main())
