"""The trace: a path as it can be told, without what nothing rests on, each step argued on the board as it then stands.

In: a puzzle and its path. Out: `Traced` steps in the order of the telling, numbered from 1. Every placement of the path
is among them; an elimination only where a placement needs it, right before that. The path may have found it earlier, on
another board: here its reason is looked for on the board as told, so that no step argues about what is settled.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from bookmaker.grade.automorphism import Automorphism
from bookmaker.grade.solve_path import SolvePath, Step
from bookmaker.logic.refutation import refutation, refuted_alike
from bookmaker.logic.singles import openings_kept
from bookmaker.logic.state import Ground, State, start
from bookmaker.logic.technique import Finding, Technique, ladder
from bookmaker.puzzle.position import Candidate
from bookmaker.reasons import Reason, Rung
from bookmaker.reasons.patterns import Chain
from bookmaker.reasons.throughmarks import EitherWay, ExtendedChain
from bookmaker.reasons.whatif import Refuted
from bookmaker.trace.budget import Budget, TooMuch
from bookmaker.trace.dependencies import Dependencies, dependencies, opening_of, rivals_of
from bookmaker.trace.rounds import rounds
from bookmaker.trace.telling import Telling, as_found
from bookmaker.trace.traced import Traced


def trace(ground: Ground, path: SolvePath, mirror: Automorphism | None = None) -> tuple[Traced, ...]:
    """All placements of a path with what they need; each right before its mirror image where there is one. Nothing is
    eliminated while there are singles. All steps as found where it takes too much effort to find out what is needed."""
    try:
        return _needed(ground, path, mirror, Budget())
    except TooMuch:
        return as_found(ground, path)


def _needed(ground: Ground, path: SolvePath, mirror: Automorphism | None, budget: Budget) -> tuple[Traced, ...]:
    tracer = _Tracer(ground, path, dependencies(ground, path, budget), budget)
    images = _images(path, mirror)
    after = {index: this.after for this in rounds(path) if this.places for index in range(this.first, this.after)}
    pending = list(after)
    while pending:
        here = sum(1 for index in pending if index < after[pending[0]])
        index, told = tracer.place(pending, here)
        pending.remove(index)
        other = images.get(index)
        if other in pending and mirror and tracer.place_image(other, told, mirror):
            pending.remove(other)
    return tuple(tracer.told)


def trace_to(ground: Ground, path: SolvePath, target: int) -> tuple[Traced, ...]:
    """One placement of a path with what it needs, on a board on which those before it are written and nothing else is
    eliminated. Raises TooMuch where it takes too much effort to find that out."""
    so_far, budget = replace(path, steps=path.steps[: target + 1]), Budget()
    tracer = _Tracer(ground, so_far, dependencies(ground, so_far, budget, target), budget)
    for step in path.steps[:target]:
        for cell, digit in step.placed:
            tracer.state.place(cell, digit)
    tracer.place([target], 1)
    return tuple(tracer.told)


def _images(path: SolvePath, mirror: Automorphism | None) -> dict[int, int]:
    """The placements of a path whose mirror images it has, too, both ways."""
    if mirror is None:
        return {}
    by_pair = {step.placed: index for index, step in enumerate(path.steps) if step.placed}
    images = {}
    for placed, index in by_pair.items():
        (cell, digit), *_ = placed
        other = by_pair.get(((mirror.cells[cell], mirror.digits[digit]),), index)
        if other != index:
            images[index] = other
    return images


class _Tracer(Telling):
    """Tells what is needed, argued on the board as it then stands."""

    def __init__(self, ground: Ground, path: SolvePath, needs: Dependencies, budget: Budget) -> None:
        super().__init__(ground, path)
        self.needs, self.budget = needs, budget
        self.real = _boards(ground, path)
        self.seen: dict[tuple[str, Candidate | int | None], Sequence[Finding]] = {}
        """What techniques find on the board as it stands."""

    def tell(self, told: Traced) -> None:
        super().tell(told)
        self.seen.clear()

    def ready(self, pending: Sequence[int], here: int) -> int | None:
        """The first of the placements that wait for nothing. Digits that marks or the proof give wait for their round:
        they are told among the first, `here`, only."""
        open_now = {((found.cell, found.digit),) for found in openings_kept(self.state)}
        steps = self.path.steps
        found = (
            index
            for at, index in enumerate(pending)
            if (steps[index].placed in open_now if steps[index].rung <= Rung.NAKED else at < here)
        )
        return next(found, None)

    def place(self, pending: Sequence[int], here: int, mirrors: int = 0) -> tuple[int, list[Traced]]:
        """Tell a placement of the path, the first that waits for nothing; if all do, after eliminations, which are
        meant for the first of them. Which it is, and the steps told."""
        first, found = len(self.told), openings_kept(self.state)
        index = self.ready(pending, here)
        if index is None:
            wanted = opening_of(self.real[pending[0]], self.path.steps[pending[0]])
            if wanted:
                self.eliminate(self.state.present(rivals_of(self.ground, wanted)), pending)
            index = self.ready(pending, here)
        index = pending[0] if index is None else index
        self.write(index, first, found, mirrors)
        return index, self.told[first:]

    def place_image(self, index: int, like: Sequence[Traced], mirror: Automorphism) -> bool:
        """Tell the mirror image of a placement if nothing is needed for it but images of what was just told."""
        step, number = self.path.steps[index], like[-1].number
        if opening_of(self.state, step):
            self.place([index], 1, number)
            return True
        wanted = opening_of(self.real[index], step)
        images = {
            (mirror.cells[cell], mirror.digits[digit]): told.number for told in like for cell, digit in told.removed
        }
        rivals = self.state.present(rivals_of(self.ground, wanted)) if wanted else ()
        if not rivals or not set(rivals) <= set(images) or not set(rivals) <= set(self.needs.striker):
            return False
        first = len(self.told)
        self.place([index], 1, number)
        for at in range(first, len(self.told) - 1):
            of = {images.get(pair, 0) for pair in self.told[at].removed}
            self.told[at] = replace(self.told[at], mirrors=min(of))
        return True

    def eliminate(self, pairs: Sequence[Candidate], pending: Sequence[int]) -> None:
        """Tell why candidates go until one of the placements is a single, what is easiest to follow first; before that
        what they rest on, as far as they can't be seen without."""
        levels: list[dict[Candidate, None]] = [dict.fromkeys(pairs)]
        while (standing := self.state.present(levels[0])) and self.ready(pending, 0) is None:
            for level in levels:
                found = [
                    (pair, finding)
                    for pair in self.state.present(level)
                    if (finding := self._found(pair, self._length(pair)))
                ]
                if found:
                    self._explain(*min(found, key=self._cost))
                    break
            else:
                behind = {
                    other
                    for pair in self.state.present(levels[-1])
                    for other in self.needs.rests[self.needs.striker[pair]]
                }
                deeper = sorted(self.state.present(behind - set().union(*levels)), key=self.needs.striker.__getitem__)
                if deeper:
                    levels.append(dict.fromkeys(deeper))
                else:  # as a last resort, however long it takes
                    pair = standing[0]
                    self._explain(pair, self._found(pair, None) or self._found(pair, None, beyond=True))

    def _cost(self, found: tuple[Candidate, Finding]) -> tuple[int, int, int]:
        """How hard a finding is to follow; of equals the path's order."""
        pair, finding = found
        return finding.rung, finding.reach, self.needs.striker[pair]

    def _explain(self, pair: Candidate, finding: Finding | None) -> None:
        index = self.needs.striker[pair]
        step, wanted = self.path.steps[index], self.needs.eliminations[index]
        reason = finding.reason() if finding else step.reason
        if isinstance(reason.claim, Refuted):
            self._what_if(reason, pair)
            return
        struck = finding.removed if finding else step.removed
        removed = self.state.present(other for other in struck if other in wanted)
        cells, rung = (finding.cells, finding.rung) if finding else (step.cells, step.rung)
        self.tell(Traced(self.next, index, reason, rung, self.state.position(), cells, removed=removed))

    def _what_if(self, reason: Reason, pair: Candidate) -> None:
        """Tell a what-if link by link, and others that are needed and end in the same way by the same links."""
        chain = refutation(self.state, pair, self.ground.readers)
        reason = replace(reason, claim=chain or reason.claim)
        others = [
            other
            for other, striker in self.needs.striker.items()
            if chain and other != pair and isinstance(self.path.steps[striker].reason.claim, Refuted)
        ]
        alike = [
            other
            for other in self.state.present(others)
            if chain and refuted_alike(self.state, other, chain, self.ground.readers)
        ]
        for cell, digit in (pair, *alike):
            told = reason
            if chain:
                told = replace(reason, claim=replace(chain, tried=(cell, digit)))
            striker = self.needs.striker[cell, digit]
            board = self.state.position()
            self.tell(Traced(self.next, striker, told, Rung.WHAT_IF, board, (cell,), removed=((cell, digit),)))

    def _found(self, pair: Candidate, longest: int | None, beyond: bool = False) -> Finding | None:
        """A technique that takes a candidate on the board as it stands: that of the path's step, no longer than it was
        there (None: of any length), or an easier one; `beyond` also a harder one."""
        step = self.path.steps[self.needs.striker[pair]]
        wanted = set(self.needs.eliminations[self.needs.striker[pair]])
        for techniques in ladder():
            rung = techniques[0].rung
            if rung > step.rung and not beyond:
                return None
            if rung < step.rung and rung in (Rung.CHAIN, Rung.WHAT_IF):
                continue  # no easier to follow
            found = [
                finding
                for technique in techniques
                for finding in self._findings(technique, pair)
                if pair in finding.removed and (rung < step.rung or longest is None or finding.reach <= longest)
            ]
            if found:
                return min(found, key=lambda finding: self._rank(finding, step, wanted))
        return None

    def _findings(self, technique: Technique, pair: Candidate) -> Sequence[Finding]:
        """What a technique finds on the board as it stands, kept until the next step is told."""
        by_pair = technique.rung in (Rung.CHAIN, Rung.WHAT_IF)
        if by_pair or technique.by_digit:
            key: tuple[str, Candidate | int | None] = technique.name, pair if by_pair else pair[1]
            find = technique.find_for(self.state, (pair,))
        else:
            key, find = (technique.name, None), technique.find(self.state)
        if key not in self.seen:
            self.budget.spend(self.ground)
            self.seen[key] = tuple(find)
        return self.seen[key]

    def _length(self, pair: Candidate) -> int | None:
        """How far a person had to think ahead in the path for a candidate to go."""
        return _reach(self.path.steps[self.needs.striker[pair]].reason)

    def _rank(self, finding: Finding, step: Step, wanted: set[Candidate]) -> tuple[bool, int, int]:
        """Rather the path's own argument, then one that takes more of what is wanted, then the nearer one."""
        same = finding.rung == step.rung and finding.reason().argues_as(step.reason)
        return not same, -len(wanted.intersection(finding.removed)), finding.reach


def _boards(ground: Ground, path: SolvePath) -> list[State]:
    """The path's own board before each step."""
    state, found = start(ground), []
    for step in path.steps:
        found.append(state.copy())
        for cell, digit in step.placed:
            state.place(cell, digit)
        state.remove(step.removed)
    return found


def _reach(reason: Reason) -> int | None:
    """How far a person must think ahead for a reason, where that makes a difference."""
    match reason.claim:
        case Refuted(_, rounds, _, _):
            return rounds
        case Chain(links):
            return len(links) - 1
        case ExtendedChain(links, _, _):
            return len(links) - 1
        case EitherWay(options, _, _, _):
            return len(options) - 1
    return None
