"""One attempt at a wish: begun from a seed and a number, then improved until the wish is met or its turns are used up.

In: a wish and the number of the attempt. Out: `Drafted`, or `Missed` with what stood in the way. An attempt depends on
nothing else, so it can be made anywhere, and made again with the same result.

Givens are first few, then some are added where logic would stop short, or where it takes longest; and others are taken
away in their place while that brings the puzzle nearer to the wish.
"""

from __future__ import annotations

from dataclasses import dataclass
from random import Random

from bookmaker.draft.ground import begin
from bookmaker.draft.logic import Run, Rungs, rungs_without
from bookmaker.draft.needs import Counts, chosen, room_for_givens
from bookmaker.draft.patience import Missed, OutOfTime, Patience, patience_for
from bookmaker.draft.sketch import Sketch
from bookmaker.grade import grade
from bookmaker.grade.solve_path import Grade
from bookmaker.puzzle.bits import cells_on
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.wishes.judge import Amiss, amiss, distance
from bookmaker.wishes.wish import Wish

THINNINGS = 3
"""Ways to take givens away that are gone on with."""

CHANGES, PARTICULAR = 8, 40
"""Further changes to the best of them; and where the path itself is to have something particular."""

EASING = 6
"""Gradings, at most, to find how many givens must be added to make a puzzle easy enough."""


@dataclass(frozen=True)
class Drafted:
    """A puzzle that meets the wish, or the nearest to it that was come by: then `amiss` says what is not as wished."""

    number: int
    puzzle: RuledPuzzle
    solution: Solution
    grade: Grade
    amiss: tuple[Amiss, ...] = ()


@dataclass(frozen=True)
class Missing:
    """An attempt that came to no puzzle at all: one of the reasons in `telling.REASONS`."""

    number: int
    why: str


def attempt(wish: Wish, number: int, patience: Patience | None = None) -> Drafted | Missing:
    """What comes of the attempt of that number. Raises OutOfTime where the patience given has an end by the clock."""
    rng = Random(f"{wish.seed} {number}")
    try:
        return _Attempt(wish, number, rng, patience or patience_for(len(wish.grid.cells))).result()
    except Missed as missed:
        return Missing(number, missed.why)


def attempt_within(wish: Wish, number: int, seconds: float) -> Drafted | Missing | None:
    """The same, begun now; None where it takes longer than so many seconds."""
    try:
        return attempt(wish, number, patience_for(len(wish.grid.cells), seconds))
    except OutOfTime:
        return None


@dataclass(frozen=True, slots=True)
class _State:
    """A choice that leaves one solution, its grade, and what is amiss with it."""

    board: int
    grade: Grade
    amiss: list[Amiss]

    @property
    def off(self) -> float:
        return distance(self.amiss)

    @property
    def too_hard(self) -> bool:
        return any(one.way > 0 for one in self.amiss)


class _Attempt:
    def __init__(self, wish: Wish, number: int, rng: Random, patience: Patience) -> None:
        self.wish, self.number, self.rng, self.patience = wish, number, rng, patience
        begun = begin(wish, rng, patience)
        self.sketch: Sketch = begun.sketch
        self.rungs: Rungs | None = None
        if wish.refused or wish.singles_only:
            self.rungs = rungs_without(wish.refused, wish.singles_only)
        self.marks, self.room, self.first = self._choice(begun.counts)
        self.shaped = self.sketch.shaped(self.marks)

    def _choice(self, counts: Counts) -> tuple[int, int, int]:
        """The marks, the cells where givens may stand, and givens to begin with."""
        sketch, wish, rng = self.sketch, self.wish, self.rng
        if not sketch.unique(sketch.offered):
            raise Missed("pattern" if wish.pattern else "several")
        if wish.idle_marks or not wish.rules:
            marks = sketch.everything & ~sketch.cells
            board = sketch.thinned(sketch.offered, sketch.shuffled(sketch.given_orbits, rng))
            return marks, sketch.open, board & sketch.cells
        choice = chosen(sketch, counts, rng)
        if choice is None:
            raise Missed("idle")
        return choice & ~sketch.cells, room_for_givens(sketch, choice, rng), choice & sketch.cells

    def result(self) -> Drafted:
        """The first choice that meets the wish, else the nearest."""
        sketch = self.sketch
        best: _State | None = None
        for turn in range(THINNINGS):
            givens = self.first if turn == 0 else self._thinned(self.room)
            best = self._nearer(best, self._led(givens))
            if not best.amiss:
                return self._drafted(best)
        assert best is not None
        wish = self.wish
        particular = wish.want or wish.bottlenecks or wish.openings or wish.givens
        for _ in range(PARTICULAR if particular else CHANGES):
            best = self._nearer(best, self._changed(best.board & sketch.cells))
            if not best.amiss:
                break
        return self._drafted(best)

    def _nearer(self, best: _State | None, givens: int | None) -> _State:
        """The better of a state and what comes of givens."""
        if givens is None:
            if best is None:
                raise Missed("refused")
            return best
        state = self._eased(self._state(givens))
        return state if best is None or state.off <= best.off else best

    def _state(self, givens: int) -> _State:
        board = givens | self.marks
        puzzle = self.sketch.puzzle(board)
        graded = grade(puzzle, self.sketch.solution, look=self.patience.look)
        return _State(board, graded, amiss(self.wish, puzzle, self.sketch.solution, graded))

    def _thinned(self, givens: int) -> int:
        board = givens | self.marks
        return self.sketch.thinned(board, self.sketch.sparing(board, self.rng)) & self.sketch.cells

    def _led(self, givens: int) -> int | None:
        """The givens with as many added as logic needs to reach the end without what is refused; None where all that
        may be added are too few."""
        if self.rungs is None:
            return givens
        sketch, rng = self.sketch, self.rng
        run = Run.of(sketch.puzzle(givens | self.marks), self.rungs)
        while not run.go_on():
            self.patience.look()
            open_ = [orbit for orbit in self._addable(givens) if orbit & run.state.empty]
            if not open_:
                return None
            open_ = [orbit for orbit in open_ if not orbit & self.shaped] or open_
            orbit = max(rng.sample(open_, min(len(open_), 3)), key=lambda orbit: self._opened(run, orbit))
            givens |= orbit
            run = self._with(run, orbit)
        return givens

    def _opened(self, run: Run, orbit: int) -> int:
        """How many cells singles fill once an orbit is given."""
        trial = self._with(run, orbit)
        trial.singles()
        return -trial.state.empty.bit_count()

    def _with(self, run: Run, orbit: int) -> Run:
        trial = run.copy()
        for cell in cells_on(orbit):
            trial.place((cell, self.sketch.solution[cell]))
        return trial

    def _addable(self, givens: int) -> list[int]:
        return [orbit for orbit in self.sketch.given_orbits if orbit & ~givens and not orbit & ~self.room]

    def _eased(self, state: _State) -> _State:
        """The same with more givens, if it is too hard: as few as make it easy enough, where it takes longest first."""
        if not state.too_hard:
            return state
        more = self._by_effort(state)
        low, high, best = 1, len(more), state
        for _ in range(EASING):
            if low > high:
                break
            middle = (low + high) // 2
            trial = self._state(state.board & self.sketch.cells | sum(more[:middle]))
            if trial.off <= best.off:
                best = trial
            if trial.too_hard:
                low = middle + 1
            else:
                high = middle - 1
        return best

    def _by_effort(self, state: _State) -> list[int]:
        """Orbits that may be added: those on no shape first, and of these the ones whose cells took longest to fill."""
        took: dict[int, float] = {}
        spent = 0.0
        for step in state.grade.path.steps:
            spent += step.effort
            if step.placed:
                took |= {cell: spent for cell, _ in step.placed}
                spent = 0.0
        orbits = self._addable(state.board & self.sketch.cells)
        longest = {orbit: max(took.get(cell, 0.0) for cell in cells_on(orbit)) for orbit in orbits}
        return sorted(orbits, key=lambda orbit: (bool(orbit & self.shaped), -longest[orbit]))

    def _changed(self, givens: int) -> int | None:
        """Other givens, near to these: some orbits go and others come, as few as leave one solution."""
        sketch, rng = self.sketch, self.rng
        here = [orbit for orbit in sketch.given_orbits if orbit & givens and not orbit & sketch.kept]
        if not here:
            return None
        gone = sum(rng.sample(here, min(len(here), rng.choice((1, 1, 2, 3)))))
        left = givens & ~gone
        for orbit in sketch.shuffled(self._addable(left), rng):
            if sketch.unique(left | self.marks):
                break
            if not orbit & gone and any(orbit & broken for broken in sketch.left_by(left | self.marks)):
                left |= orbit
        if not sketch.unique(left | self.marks):
            return None
        return self._led(self._thinned(left) if self.wish.givens else left)

    def _drafted(self, state: _State) -> Drafted:
        puzzle = self.sketch.puzzle(state.board)
        return Drafted(self.number, puzzle, self.sketch.solution, state.grade, tuple(state.amiss))
