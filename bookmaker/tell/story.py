"""The story of a path: told steps grouped into passages, bottlenecks told as such, the hard moment before it comes.

In: a `Proof` with a grade. Out: a `Story`.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from bookmaker.grade.automorphism import Automorphism, automorphisms
from bookmaker.grade.bottlenecks import Bottleneck
from bookmaker.grade.solve_path import Grade
from bookmaker.language import Catalogue
from bookmaker.logic.state import Ground, ground_of
from bookmaker.phrases import Phrasebook
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.phrases.story import Voice
from bookmaker.proof.findings import Proof
from bookmaker.reasons.telling import (
    Aim,
    BySymmetry,
    Candidates,
    FallsIntoPlace,
    Few,
    Fixes,
    Introduction,
    Opens,
    RuleSaid,
    Stuck,
    Symmetry,
    Table,
    TakenFromProof,
)
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.rules.common.words.letters import in_letters
from bookmaker.tell.eliminations import Eliminations
from bookmaker.tell.passages import Mood, Passage, Said, Sentence, Story
from bookmaker.tell.placements import flow, in_full, single_of, units
from bookmaker.tell.step_groups import bottlenecks, crux
from bookmaker.trace import Traced, trace

BREATH = 9
"""Placements told in one passage before a new one begins."""

HEAVY = 2
"""An elimination told among placements takes as much breath as this many of them."""

HANDFUL = 3
"""So few singles make no passage of their own after a hard place."""

LONG = 4
"""A fight of so many eliminations is summed up before it is told."""

TAIL = 2
"""The last placements are told as one list: as many as this many rows hold."""

SHORT = 4
"""So many placements at the end need no words about falling into place."""

SEVERAL = 3
"""So many singles at every step are worth a word."""


def tell(
    proof: Proof, band_names: Sequence[str] = BAND_NAMES, rules: bool = True, full: bool = False, language: str = "en"
) -> Story:
    """Tell the path of a proven, graded puzzle, its rules first if they are to be said; `full` folds no what-ifs.

    Raises ValueError for a puzzle without a grade.
    """
    if proof.grade is None:
        raise ValueError(f"“{proof.entry.id}” has no solving path")
    entry, puzzle = proof.entry, proof.entry.puzzle
    ground = ground_of(puzzle)
    mirror = next(iter(automorphisms(puzzle, proof.solution)), None) if proof.solution else None
    steps = trace(ground, proof.grade.path, mirror)
    words = Phrasebook(puzzle.grid, language)
    teller = _Teller(ground, proof.grade, steps, words, full)
    opening = [Said(part) for part in _opening(words.catalogue, puzzle, mirror, rules)]
    opening.append(Said(teller.introduction(band_names[proof.grade.band - 1])))
    voice = Voice(words)
    passages = [(Mood.OPENING, opening), *teller.passages()]
    spoken = [
        Passage(mood, tuple(Sentence(voice.say(said.utterance), said.told, said.utterance) for said in sentences))
        for mood, sentences in passages
    ]
    return Story(entry.title or entry.id, entry.setter, tuple(spoken), steps, words.catalogue.language)


def _opening(
    words: Catalogue, puzzle: RuledPuzzle, mirror: Automorphism | None, rules: bool
) -> Iterator[Table | RuleSaid | Symmetry]:
    """The grid, its rules if they are to be said, its symmetry."""
    grid = puzzle.grid
    yield Table(grid.size, puzzle.given_count, "boxes" if grid.box else "irregular" if grid.regions else "none")
    if rules:
        yield from (RuleSaid(in_letters(words, rule.sentences(words, grid), grid)) for rule in puzzle.rules)
    if mirror:
        yield Symmetry(mirror.name, mirror.swapped)


class _Teller:
    """Groups the steps of one story."""

    def __init__(self, ground: Ground, grade: Grade, steps: Sequence[Traced], words: Phrasebook, full: bool) -> None:
        self.ground, self.grid, self.path = ground, ground.grid, grade.path
        self.steps = steps
        self.eliminations = Eliminations(words, full)
        points = bottlenecks(grade.path, self.grid)
        self.narrow = {self._ending(point) for point in points}
        """The placements of the path that bottlenecks end with, by their numbers in it."""
        hardest = crux(grade.path, self.grid)
        self.crux = next((told for told in steps if hardest and told.index == self._ending(hardest)), None)
        self.needed: dict[int, list[Traced]] = {told.number: [] for told in steps if told.placed}
        """For each placement the eliminations that are told right before it."""
        for told in steps:
            if told.removed:
                self.needed[told.opens].append(told)
        self.hard_places = {told.number for told in steps if told.placed and self._narrow(told)}

    def _ending(self, point: Bottleneck) -> int:
        """The number in the path of the placement that a point is, or that it opens."""
        return point.first if self.path.steps[point.first].placed else point.after

    def _is_crux(self, told: Traced) -> bool:
        return self.crux is not None and told.number == self.crux.number and self._narrow(told)

    def _narrow(self, told: Traced) -> bool:
        """Is it told as a bottleneck: nothing is open, or it is hard to see?"""
        if told.kind is None or told.mirrors:
            return False
        return self._stuck(told) or (told.index in self.narrow and not self.needed[told.number])

    def _stuck(self, told: Traced) -> bool:
        """Is no single left before it, and what is needed for it?"""
        return bool(self.needed[told.number]) and not told.choice and not told.mirrors

    def introduction(self, band: str) -> Introduction:
        """What is to come."""
        placed = [told for told in self.steps if told.placed]
        hard = next((told for told in placed if self._is_crux(told)), None)
        first = hard is not None and self._first_of(hard) == 1
        empty = (len(self.grid.cells) - told.filled for told in placed)
        choices = [told.choice for told, left in zip(placed, empty, strict=True) if left > TAIL * self.grid.size]
        least = min((choice for choice in choices), default=0)
        return Introduction(
            band=band,
            stuck=sum(map(self._stuck, placed)),
            longest=max((len(self.needed[told.number]) for told in placed), default=0),
            crux_at=hard.filled if hard else None,
            at_start=first,
            bottlenecks=any(self._narrow(told) for told in placed),
            choice=least if least >= SEVERAL else 0,
        )

    def _first_of(self, told: Traced) -> int:
        """The number of the first step that is told for a placement."""
        return min([told.number, *(step.number for step in self.needed[told.number])])

    def passages(self) -> Iterator[tuple[Mood, list[Said]]]:
        """All passages. A few singles after a hard place stand with it."""
        last: tuple[Mood, list[Said]] | None = None
        for mood, said in self._all():
            count = sum(len(part.told) for part in said)
            if last and mood is Mood.FLOW and count <= HANDFUL and last[0] is not Mood.FLOW:
                last[1].extend(said)
                continue
            if last:
                yield last
            last = mood, said
        if last:
            yield last

    def _all(self) -> Iterator[tuple[Mood, list[Said]]]:
        placed = [told for told in self.steps if told.placed]
        tail = self._tail(placed)
        for how, run in groupby(placed, key=lambda told: self._how(told, tail)):
            steps = list(run)
            if how == "given":
                yield Mood.FLOW, list(self._given(steps))
            elif how == "narrow":
                yield from self._hard_places(steps)
            elif how == "tail":
                pairs = tuple(told.placed[0] for told in steps)
                said = Said(FallsIntoPlace(pairs, len(steps) <= SHORT), tuple(told.number for told in steps))
                yield Mood.ENDING, [said]
            else:
                yield from self._flowing(steps)

    def _how(self, told: Traced, tail: int) -> str:
        if told.kind is None:
            return "given"
        if told.number >= tail:
            return "tail"
        return "narrow" if self._narrow(told) or told.mirrors in self.hard_places else "flow"

    def _tail(self, placed: Sequence[Traced]) -> int:
        """The number of the step from which on only a list is told: the last singles, for which nothing is needed."""
        tail = len(self.steps) + 1
        for told in placed[::-1][: TAIL * self.grid.size]:
            if told.kind is None or self.needed[told.number] or self._narrow(told):
                break
            tail = told.number
        return tail

    def _given(self, steps: Sequence[Traced]) -> Iterator[Said]:
        """Digits that marks fix by themselves, or that the ladder does not reach."""
        for kind, run in groupby(steps, key=lambda told: told.reason.kind):
            mine = list(run)
            placed, numbers = tuple(told.placed[0] for told in mine), tuple(told.number for told in mine)
            rule = next((rule for rule in self.ground.rules if rule.kind == kind), None)
            if rule:
                yield Said(Fixes(kind, len(self.ground.references[rule]), placed), numbers)
            else:
                yield Said(TakenFromProof(placed), numbers)

    def _flowing(self, steps: Sequence[Traced]) -> Iterator[tuple[Mood, list[Said]]]:
        """Passages of no more than a breath each."""
        said: list[Said] = []
        length = told = 0
        plain: list[Traced] = []

        def flowed() -> None:
            said.extend(flow(self.grid, plain, begins=not said))
            plain.clear()

        for unit in self._units(steps):
            behind = self.needed[unit[0].number]
            if behind:
                flowed()
                said.extend(self._opening(unit[0]))
            else:
                plain.extend(unit)
            told += len(unit)
            length += len(unit) + HEAVY * len(behind)
            following = steps[told] if told < len(steps) else None
            if length >= BREATH and len(steps) - told > HANDFUL and not (following and following.mirrors):
                flowed()
                yield Mood.FLOW, said
                said, length = [], 0
        flowed()
        if said:
            yield Mood.FLOW, said

    def _units(self, steps: Sequence[Traced]) -> Iterator[list[Traced]]:
        """Placements cut into units; those that need eliminations stand alone."""
        for bare, run in groupby(steps, key=lambda told: not self.needed[told.number]):
            mine = list(run)
            if bare:
                yield from ([*unit.steps] for unit in units(self.grid, mine))
            else:
                yield from ([told] for told in mine)

    def _opening(self, told: Traced) -> Iterator[Said]:
        """The eliminations behind a placement, and what they open."""
        behind = self.needed[told.number]
        if told.mirrors:
            removed: Candidates = tuple(dict.fromkeys(pair for step in behind for pair in step.removed))
            numbers = (*(step.number for step in behind), told.number)
            yield Said(BySymmetry(removed, told.placed[0]), numbers)
        else:
            yield from self.eliminations.told(behind)
            yield Said(Opens(single_of(told)), (told.number,))

    def _hard_places(self, steps: Sequence[Traced]) -> Iterator[tuple[Mood, list[Said]]]:
        """A passage for each, the mirror image of one with it."""
        last: tuple[Mood, list[Said]] | None = None
        for told in steps:
            if last and told.mirrors:
                last[1].extend(self._opening(told) if self.needed[told.number] else [self._image(told)])
                continue
            if last:
                yield last
            last = self._hard(told)
        if last:
            yield last

    def _image(self, told: Traced) -> Said:
        return Said(BySymmetry((), told.placed[0]), (told.number,))

    def _hard(self, told: Traced) -> tuple[Mood, list[Said]]:
        """A placement that takes long to find."""
        behind, hard = self.needed[told.number], self._is_crux(told)
        start = self._first_of(told) == 1
        if not behind:
            few = Few(told.filled, told.choice, told.naked, hard)
            return Mood.CRUX if hard else Mood.NARROW, [Said(few), Said(in_full(told), (told.number,))]
        long = hard or len(behind) >= LONG
        said = [Said(Stuck(told.filled, start, hard, tuple(step.reason for step in behind) if long else ()))]
        if len(behind) >= LONG:
            said.append(Said(Aim(single_of(told), self._rivals(told))))
        if hard and len(behind) == 1:
            self.eliminations.named.add(behind[0].reason.technique)
        said += self._opening(told)
        return Mood.CRUX if hard else Mood.DEDUCTION, said

    def _rivals(self, told: Traced) -> Candidates:
        """The candidates whose going makes a single of it, as the eliminations before it took them."""
        house = self.ground.area_called[told.house].cells if told.house else ()
        return tuple(
            (cell, digit)
            for step in self.needed[told.number]
            for cell, digit in step.removed
            if (digit == told.digit and cell in house if told.house else cell == told.cell)
        )
