"""The story of a path: steps grouped into passages, narrow places told as such, the hard moment before it comes.

In: a `Proof` with a grade. Out: a `Story`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import groupby

from bookmaker.grade.mirror import Mirror, mirrors
from bookmaker.grade.model import Grade
from bookmaker.grade.narrow import NarrowPoint
from bookmaker.grade.singles import Kind
from bookmaker.manifest.model import BAND_NAMES
from bookmaker.proof.model import Proof
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.wording import number
from bookmaker.tell.context import Context
from bookmaker.tell.model import Mood, Passage, Sentence, Story
from bookmaker.tell.moments import hard_moment, narrow_moments
from bookmaker.tell.needs import needs_of
from bookmaker.tell.outlook import outlook
from bookmaker.tell.placings import ending, fixed, flow, units
from bookmaker.tell.reasons import seen
from bookmaker.tell.rounds import Round, rounds, rounds_of
from bookmaker.tell.strikings import payoff, steps_counted, strikes
from bookmaker.tell.trail import Told, trail
from bookmaker.tell.twins import together, twins_of
from bookmaker.tell.voice import Voice, sentence

BREATH = 9
"""Placements told in one passage before a new one begins."""

HEAVY = 2
"""A strike told among placements takes as much breath as this many of them."""

HANDFUL = 3
"""So few singles make no passage of their own after a hard place."""

MANY = 5
"""Where so many steps are to be found, it is said how few matter."""

STILL = ("That opens nothing yet.", "Still no single.", "Not enough yet.", "One more look is wanted.")
"""Said between the rounds of a stretch of strikes."""

TAIL = 2
"""The last placements are told as one list: as many as this many rows hold."""


def tell(proof: Proof, band_names: Sequence[str] = BAND_NAMES, rules: bool = True) -> Story:
    """Tell the path of a proven, graded puzzle, its rules first if they are to be said.

    Raises ValueError for a puzzle without a grade.
    """
    if proof.grade is None:
        raise ValueError(f"“{proof.entry.id}” has no solving path")
    entry = proof.entry
    found = mirrors(entry.puzzle, proof.solution) if proof.solution else ()
    mirror = found[0] if found else None
    begin = Sentence(outlook(entry.puzzle, proof.grade, band_names, mirror, rules))
    first = Passage(Mood.OPENING, (begin,), 0, 0)
    teller = _Teller(entry.puzzle, proof.grade, mirror)
    return Story(entry.title or entry.id, entry.setter, (first, *teller.passages()))


class _Teller:
    """Tells one path; remembers what it has said, and in which words."""

    def __init__(self, puzzle: RuledPuzzle, grade: Grade, mirror: Mirror | None) -> None:
        self.grid: Grid = puzzle.grid
        self.nouns = tuple(rule.noun for rule in puzzle.rules)
        self.path = grade.path
        self.needs = needs_of(puzzle, grade.path)
        self.told = {told.index: told for told in trail(puzzle, grade.path, self.needs)}
        placed = (point for point in narrow_moments(grade.path, self.grid) if grade.path.steps[point.first].placed)
        self.narrow = {point.first: point for point in placed}
        self.hard = hard_moment(grade.path, self.grid)
        self.voice = Voice()
        self.twins = twins_of(grade.path, mirror)
        self.context = Context(self.nouns, {}, self.twins, rounds_of(grade.path))
        self.said: set[int] = set()

    def passages(self) -> Iterator[Passage]:
        """All passages; together they cover the path. A few singles after a hard place stand with it."""
        last: Passage | None = None
        for passage in self._all():
            if last and passage.mood is Mood.FLOW and len(passage.told) <= HANDFUL and last.mood is not Mood.FLOW:
                last = Passage(last.mood, last.sentences + passage.sentences, last.first, passage.after)
                continue
            if last:
                yield last
            last = passage
        if last:
            yield last

    def _all(self) -> Iterator[Passage]:
        stretches = [list(run) for _, run in groupby(rounds(self.path), key=lambda this: this.places)]
        first = 0
        for at, stretch in enumerate(stretches):
            last = at + 1 == len(stretches)
            if stretch[0].places:
                yield from self._placings(first, stretch[-1].after, last)
                first = stretch[-1].after
            elif not last:
                yield self._strikings(stretch)
                first = stretch[-1].after + 1

    def _placings(self, first: int, after: int, last: bool) -> Iterator[Passage]:
        """Flow, broken where the path is narrow; at the end of the path a list."""
        tail = max([first, after - TAIL * self.grid.size, *self._resting(first, after)]) if last else after
        runs = [(how, [self.told[index] for index in run]) for how, run in groupby(range(first, after), key=self._how)]
        before = self.told.get(first - 1)  # what the strikes just told have opened: its twin may come first
        for at, (how, steps) in enumerate(runs):
            if how == "flow":
                early = [step for step in steps if step.index < tail]
                lead = [before] if before and not at else []
                runs[at] = how, together([*lead, *early], self.twins)[len(lead) :] + steps[len(early) :]
        order = (step.index for _, steps in runs for step in steps)
        hinges = {index: strikes for index in order if (strikes := self._unsaid(index))}
        self.context = replace(self.context, hinges=hinges)
        for how, steps in runs:
            if how == "given":
                yield _passage(Mood.FLOW, fixed(self.grid, steps, self.context), steps)
            elif how == "narrow":
                yield from map(self._careful, steps)
            else:
                yield from self._flowing([step for step in steps if step.index < tail], before)
                if rest := [step for step in steps if step.index >= tail]:
                    if rest[-1].index + 1 == len(self.path.steps):
                        yield _passage(Mood.ENDING, [ending(self.grid, rest, self.voice)], rest)
                    else:
                        yield from self._flowing(rest)
            before = None

    def _resting(self, first: int, after: int) -> Iterator[int]:
        """Numbers right after placements that rest on strikes which neither they nor earlier ones have had told."""
        said = set(self.said)
        for index in range(first, after):
            if unsaid := self.needs.behind(index) - said:
                said |= unsaid
                yield index + 1

    def _how(self, index: int) -> str:
        """How a placement is told."""
        if self.told[index].kind is None:
            return "given"
        return "narrow" if index in self.narrow else "flow"

    def _unsaid(self, index: int) -> list[Told]:
        """The strikes behind a step that have not been told, in the order of the path; from now on they have."""
        unsaid = sorted(self.needs.behind(index) - self.said)
        self.said.update(unsaid)
        return together([self.told[strike] for strike in unsaid], self.twins)

    def _flowing(self, steps: Sequence[Told], before: Told | None = None) -> Iterator[Passage]:
        """Passages of no more than a breath each, cut between units where all steps so far are told; `before` is the
        placement told right before them."""
        breath: list[Told] = []
        left, length = len(steps), 0
        for unit in units(self.grid, steps, self.context):
            breath.extend(unit.steps)
            left -= len(unit.steps)
            length += len(unit.steps) + HEAVY * len(self.context.hinges.get(unit.first.index, ()))
            numbers = [step.index for step in breath]
            if length >= BREATH and left > HANDFUL and max(numbers) - min(numbers) + 1 == len(numbers):
                yield self._flow(breath, before)
                breath, length, before = [], 0, None
        if breath:
            yield self._flow(breath, before)

    def _flow(self, steps: Sequence[Told], before: Told | None) -> Passage:
        sentences = flow(self.grid, steps, self.voice, self.context, before, begins=steps[0].index == 0)
        return _passage(Mood.FLOW, sentences, steps)

    def _careful(self, step: Told) -> Passage:
        """A placement that takes long to find, with the reason in full."""
        moment = self.narrow[step.index]
        hinge = self.context.hinges.get(step.index, ())
        sentences = [
            Sentence(sentence(self._warning(moment))),
            *strikes(self.grid, hinge, self.voice, self.context),
            Sentence(sentence(seen(self.grid, step, self.context)), (step.index,)),
        ]
        return _passage(Mood.CRUX if moment == self.hard else Mood.NARROW, sentences, [step])

    def _warning(self, moment: NarrowPoint) -> str:
        filled, count = moment.filled, number(moment.openings)
        hard = "now comes the hard moment: " if moment == self.hard else ""
        naked = self.path.steps[moment.first].rung == Kind.NAKED
        if naked and moment.openings == 1:
            return hard + self.voice.pick(
                "lone",
                f"{'' if hard else 'careful here: '}{filled} cells are filled, and the one opening is a naked single",
                f"{'a' if hard else 'another'} lone naked single, with {filled} cells filled",
                f"just one opening at {filled} cells, a naked single",
            )
        if naked:
            return hard + self.voice.pick(
                "few naked",
                f"at {filled} cells nothing but naked singles is left, and only {count} of them",
                f"{count} naked singles are all there is at {filled} cells",
            )
        openings = "one opening" if moment.openings == 1 else f"{count} openings"
        return hard + self.voice.pick(
            "few",
            f"{'' if hard else 'look closely: '}only {openings} at {filled} cells",
            f"with {filled} cells filled there {'is' if moment.openings == 1 else 'are'} only {openings}",
        )

    def _strikings(self, stretch: Sequence[Round]) -> Passage:
        """A stretch of strikes: those behind the placement that it opens, and this placement."""
        first, after = stretch[0].first, stretch[-1].after
        opened = self.told[after]
        steps = self._unsaid(after)
        crux = self.hard is not None and self.hard.first == first
        sentences = [Sentence(self._stuck(first, steps, crux))]
        sentences += strikes(self.grid, [step for step in steps if step.index < first], self.voice, self.context)
        begun = False
        for this in stretch:
            mine = [step for step in steps if this.first <= step.index < this.after]
            if not mine:
                continue
            if begun:
                sentences.append(Sentence(self.voice.pick("still", *STILL)))
            if 2 * len(mine) <= len(this.steps) and len(this.steps) >= MANY:
                matter = "one matters" if len(mine) == 1 else f"{number(len(mine))} matter"
                found = number(len(this.steps))
                words = self.voice.pick(
                    "matter",
                    f"of {found} steps to be found here, {matter} now",
                    f"there are {found} steps to find, of which {matter}",
                    f"out of {found} steps on offer, {matter} here",
                )
                sentences.append(Sentence(sentence(words)))
            sentences += strikes(self.grid, mine, self.voice, self.context, named=crux and len(steps) == 1)
            begun = True
        sentences.append(payoff(self.grid, opened, self.voice))
        return Passage(Mood.CRUX if crux else Mood.DEDUCTION, tuple(sentences), first, after + 1)

    def _stuck(self, first: int, steps: Sequence[Told], crux: bool) -> str:
        filled = len(self.grid.cells) - self.path.steps[first].empty
        if crux:
            way = steps_counted([step.step.technique for step in steps], self.nouns)
            when = f"with {filled} cells filled no single is left" if first else "there is no single to begin with"
            return sentence(f"now comes the hard moment: {when}, and you need {way}")
        if not first:
            return "There is no single to begin with."
        return sentence(
            self.voice.pick(
                "stuck",
                f"with {filled} cells filled, no single is left",
                f"at {filled} cells the singles end again",
                f"no single is left once more, with {filled} cells filled",
            )
        )


def _passage(mood: Mood, sentences: Sequence[Sentence], steps: Sequence[Told]) -> Passage:
    """A passage that covers some placements."""
    numbers = [step.index for step in steps]
    return Passage(mood, tuple(sentences), min(numbers), max(numbers) + 1)
