"""Proves a told story: every sentence on the board on which it is told, by OR-Tools CP-SAT and by plain counting.

In: a proof and its story. Out: what is wrong, in words; nothing where all is well. Of every sentence it asks:

Are its steps told in order, each once, and about nothing that is settled? Cells it speaks of are empty, candidates
stand.

Is what a reason claims there on the board? Its places are all the places, its pairs are pairs, its links follow.

Does what is eliminated or placed follow? CP-SAT, told only what the reason names, finds no digits with the opposite:
the houses that it names, that cells which see each other differ, or one mark's definition (`bookmaker/audit`) with the
rows, columns and regions of the grid; a reason that joins several marks may use all of their rule.

Is what it says besides true? That no single is left, how many there are, what several what-ifs share.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from contextlib import suppress
from dataclasses import fields, replace
from functools import lru_cache
from itertools import combinations, pairwise, product
from typing import Any, assert_never

from ortools.sat.python import cp_model

from bookmaker.crosscheck import definition_of
from bookmaker.logic.state import State, ground_of, start
from bookmaker.proof.findings import Proof
from bookmaker.puzzle.grid import Grid, HouseRef
from bookmaker.puzzle.position import Candidate, Position
from bookmaker.reasons import MarkRef, Reason
from bookmaker.reasons.bymark import (
    Apart,
    Beside,
    BesideAll,
    Bounds,
    CommonSum,
    CountsTo,
    Enclosed,
    FirstDigits,
    HeldByRest,
    LeftOver,
    LimitsMeet,
    Needed,
    NoCombination,
    NoFilling,
    NoPartner,
    NoRun,
    OneCombination,
    OnlyDigits,
    OnlyIn,
    Reached,
    SameDigit,
    Steps,
    TooNear,
)
from bookmaker.reasons.marks import Joined, Whole
from bookmaker.reasons.patterns import (
    Chain,
    Fish,
    HiddenSubset,
    LinkedWing,
    Locked,
    NakedSubset,
    PivotWing,
    SeenByAll,
)
from bookmaker.reasons.singles import Fixed, FromProof, HiddenSingle, LastCell, NakedSingle
from bookmaker.reasons.telling import (
    Aim,
    BySymmetry,
    Eliminates,
    FallsIntoPlace,
    Few,
    Fills,
    Fixes,
    Introduction,
    Leaves,
    MoreAlike,
    Names,
    Opens,
    Places,
    RuleSaid,
    Run,
    RunWithImages,
    SameHolds,
    SeenInCell,
    SeenInHouse,
    StartsHere,
    Stuck,
    Symmetry,
    Table,
    TakenFromProof,
    Utterance,
    WhatIfsFollow,
    WithImage,
)
from bookmaker.reasons.throughmarks import EitherWay, ExtendedChain, ExtendedLink
from bookmaker.reasons.whatif import NoDigit, NoPlace, NothingFits, Refuted, ThenGone, ThenPlaced
from bookmaker.rules.common.contract import Rule, RuledPuzzle
from bookmaker.tell.passages import Story
from bookmaker.trace import Traced


def faults(proof: Proof, story: Story) -> Iterator[str]:
    """All that is wrong with a story."""
    assert proof.solution is not None and proof.grade is not None
    prover = _Prover(proof.entry.puzzle, proof.solution, story.steps)
    numbers = [number for passage in story.passages for number in passage.told]
    if numbers != list(range(1, len(story.steps) + 1)):
        yield f"the steps are told in the order {numbers}"
        return
    for passage in story.passages:
        for sentence in passage.sentences:
            assert sentence.utterance is not None
            for fault in prover.sentence(sentence.utterance, sentence.told):
                yield f"“{sentence.text}” {fault}"
    if prover.state.empty:
        yield "the story ends before the solution"
    hardest = proof.hardest
    top = max((told.rung for told in story.steps), default=None)
    if hardest and not any(
        (told.rung, told.reason.technique, told.reason.kind) == (top, hardest.technique, hardest.kind)
        for told in story.steps
    ):
        yield f"the hardest step is said to be {hardest.technique} {hardest.kind}, which is not told"


def faults_at(puzzle: RuledPuzzle, position: Position, reason: Reason, removed: Sequence[Candidate]) -> Iterator[str]:
    """All that is wrong with one reason on a board."""
    prover = _Prover(puzzle, (), ())
    prover.state.remove(
        (cell, digit) for cell in puzzle.grid.cells for digit in puzzle.grid.digits if not position.may(cell, digit)
    )
    yield from prover.premises(reason, removed, prover.state)
    for pair in removed:
        if not prover.follows(reason, pair, prover.state):
            yield f"does not follow: {pair}"


class _Prover:
    """The board as the listener has it, step by step."""

    def __init__(self, puzzle: RuledPuzzle, solution: Sequence[int], steps: Sequence[Traced]) -> None:
        self.puzzle: RuledPuzzle = puzzle
        self.grid: Grid = puzzle.grid
        self.solution = solution
        self.steps = {told.number: told for told in steps}
        self.ground = ground_of(self.puzzle)
        self.houses = {area.ref: area.cells for area in self.ground.areas}
        self.state = start(self.ground)
        self.placed_before = 0

    def sentence(self, said: Utterance, told: Sequence[int]) -> Iterator[str]:
        """What is wrong with a sentence and the steps that it tells; the board moves on."""
        yield from self.said(said, told)
        for number in told:
            yield from self.step(self.steps[number])

    # The steps

    def step(self, told: Traced) -> Iterator[str]:
        position = self.state.position()
        if told.before != position:
            yield f"(step {told.number}) is drawn on another board than it is told on"
        if told.placed:
            yield from self.placement(told)
            self.state.place(told.cell, told.digit)
            return
        gone = [pair for pair in told.removed if not self.stands(pair)]
        if gone or not told.removed:
            yield f"(step {told.number}) strikes what is gone: {gone}"
        for fault in self.premises(told.reason, told.removed, self.state):
            yield f"(step {told.number}) {fault}"
        for cell, digit in told.removed:
            if not self.follows(told.reason, (cell, digit), self.state):
                yield f"(step {told.number}) does not follow: {digit} may be in {self.grid.name(cell)}"
        self.state.remove(told.removed)

    def placement(self, told: Traced) -> Iterator[str]:
        cell, digit = told.cell, told.digit
        if self.solution[cell] != digit:
            yield f"(step {told.number}) places a wrong digit"
        if not self.state.empty >> cell & 1:
            yield f"(step {told.number}) fills a cell that is filled"
        match told.reason.claim:
            case LastCell(house, _, _):
                if [other for other in self.houses[house] if self.state.empty >> other & 1] != [cell]:
                    yield f"(step {told.number}) is not the last cell of its house"
                domains = self.domains(self.state, without=(cell, digit))
                if self.possible(domains, self.houses[house], [self.houses[house]]):
                    yield f"(step {told.number}) does not follow"
            case HiddenSingle(house, _, _):
                domains = self.domains(self.state, without=(cell, digit))
                if self.possible(domains, self.houses[house], [self.houses[house]]):
                    yield f"(step {told.number}) does not follow"
            case NakedSingle():
                if self.domains(self.state)[cell] != {digit}:
                    yield f"(step {told.number}) is no naked single"
            case Fixed():
                kind = told.reason.kind
                rule = next(rule for rule in self.puzzle.rules if rule.kind == kind)
                domains = [set(self.grid.digits) for _ in self.grid.cells]
                domains[cell].discard(digit)
                if self.possible(domains, self.grid.cells, self.all_houses(), [rule]):
                    yield f"(step {told.number}) is not fixed by its marks"
            case FromProof():
                pass  # said to be beyond the ladder, and equal to the solution
            case other:
                yield f"(step {told.number}) places a digit by {other}"

    def stands(self, pair: Candidate) -> bool:
        return bool(self.state.present((pair,)))

    def domains(self, state: State, without: Candidate | None = None, only: Candidate | None = None) -> list[set[int]]:
        """What each cell can hold on a board, its digit where it is filled."""
        boards = state.with_written()
        domains = [{digit for digit in self.grid.digits if boards[digit] >> cell & 1} for cell in self.grid.cells]
        if without:
            domains[without[0]].discard(without[1])
        if only:
            domains[only[0]] &= {only[1]}
        return domains

    def all_houses(self) -> list[tuple[int, ...]]:
        """Rows, columns and regions."""
        return [house.cells for house in self.grid.houses]

    def possible(
        self,
        domains: Sequence[set[int]],
        cells: Iterable[int],
        different: Iterable[Sequence[int]],
        rules: Iterable[Rule] = (),
    ) -> bool:
        """Are there digits for the cells, different in these sets of cells, that keep the rules?"""
        within = set(cells)
        if not all(domains[cell] for cell in within):
            return False
        model = cp_model.CpModel()
        x: list[Any] = [
            model.new_int_var_from_domain(cp_model.Domain.from_values(sorted(domains[cell])), f"x{cell}")
            if cell in within
            else model.new_int_var(1, self.grid.size, f"y{cell}")
            for cell in self.grid.cells
        ]
        for group in different:
            model.add_all_different([x[cell] for cell in group])
        for rule in rules:
            definition_of(type(rule))(model, x, rule, self.grid)
        solver = cp_model.CpSolver()
        solver.parameters.num_workers = 1
        status = solver.solve(model)
        assert status in (cp_model.OPTIMAL, cp_model.FEASIBLE, cp_model.INFEASIBLE)
        return status != cp_model.INFEASIBLE

    def follows(self, reason: Reason, pair: Candidate, state: State) -> bool:
        """Does it follow from what the reason names that the candidate can't be?"""
        claim, mark = reason.claim, reason.mark
        if isinstance(claim, Refuted):
            return True  # link by link, in `premises`
        if isinstance(claim, ExtendedChain | EitherWay):
            if isinstance(claim, EitherWay):
                options = {*claim.options}
            else:
                options = {candidate for end in claim.ends for candidate in spread(*end)}
            return all(self.parted(pair, option, claim.by, claim.seen, state) for option in options)
        domains = self.domains(state, only=pair)
        if mark is not None and not isinstance(claim, SeenByAll | Fish | NakedSubset):
            return not self.possible(domains, self.grid.cells, self.all_houses(), [self.only(mark)])
        houses = [self.houses[ref] for ref in self.named(claim)]
        cells = {pair[0], *(cell for house in houses for cell in house), *self.spoken(claim)}
        differing = [both for both in combinations(sorted(cells), 2) if self.ground.peers[both[0]] >> both[1] & 1]
        if mark is not None and not houses:
            houses = [mark.cells]
            cells |= set(mark.cells)
            if isinstance(claim, SeenByAll):
                return not self.possible(domains, cells, differing, [self.only(mark)])
        return not self.possible(domains, cells, [*houses, *differing])

    def parted(self, one: Candidate, other: Candidate, marks: Sequence[MarkRef], seen: bool, state: State) -> bool:
        """Can two candidates not both be true, by what they see (on a diagonal, too) or what one of the marks then
        leaves no room for?"""
        if seen and self.seen(one, other):
            return True
        domains = self.domains(state, only=one)
        domains[other[0]] &= {other[1]}
        for cell, digit in (one, other):
            for peer in self.grid.cells:
                if self.ground.peers[cell] >> peer & 1:
                    domains[peer].discard(digit)
        return any(not self.possible(domains, self.grid.cells, self.all_houses(), [self.only(mark)]) for mark in marks)

    def seen(self, one: Candidate, other: Candidate) -> bool:
        """Are they in one cell, or the same digit in cells that see each other?"""
        (cell, digit), (cell2, digit2) = one, other
        return one != other and (cell == cell2 or (digit == digit2 and bool(self.ground.peers[cell] >> cell2 & 1)))

    def named(self, claim: Any) -> list[HouseRef]:
        match claim:
            case Locked(_, home, _, _):
                return [home]
            case NakedSubset(_, _, house):
                return [house] if house else []
            case HiddenSubset(_, _, house) | SeenByAll(_, house, _) | LinkedWing(_, _, house, _, _):
                return [house] if house else []
            case Fish(_, base, cover, _, _):
                return [*base, *cover]
            case Chain(links):
                return [link.house for link in links if link.house]
        return []

    def spoken(self, claim: Any) -> set[int]:
        match claim:
            case PivotWing(pivot, wings, _):
                return {pivot, *wings}
            case LinkedWing(pair, _, _, link, _):
                return {*pair, *link}
            case Chain(links):
                return {cell for link in links for cell, _ in (link.false, link.true)}
            case NakedSubset(cells, _, _):
                return {*cells}
        return set()

    def only(self, mark: MarkRef) -> Rule:
        """The rule of a mark with that mark alone; the whole rule for marks that join, and where it can't be cut, as
        what a missing number says is told by all the numbers that are there."""
        rule = next(rule for rule in self.puzzle.rules if rule.kind == mark.kind)
        if isinstance(mark.anchor, Joined | Whole) or (mark.variety == "missing" and hasattr(rule, "values")):
            return rule
        return _only(rule, mark, self.grid)

    # What a reason claims

    def premises(self, reason: Reason, removed: Sequence[Candidate], state: State) -> Iterator[str]:
        """What the claim says of the board and is not so."""
        boards, masks = state.boards, state.masks()
        claim = reason.claim

        def places(digit: int, cells: Iterable[int]) -> set[int]:
            return {cell for cell in cells if boards[digit] >> cell & 1}

        def digits(cell: int) -> set[int]:
            return {digit for digit in self.grid.digits if masks[cell] >> (digit - 1) & 1}

        match claim:
            case Locked(digit, home, crossing, at):
                if places(digit, self.houses[home]) != {*at} or not {*at} <= {*self.houses[crossing]}:
                    yield f"is not locked in {at}"
            case NakedSubset(cells, held, house):
                written = {cell for cell in cells if not state.empty >> cell & 1}
                if written and reason.mark is None:
                    yield "speaks of filled cells"
                if not all(digits(cell) <= {*held} for cell in cells) or len(cells) != len(held):
                    yield "is no naked subset"
                if house and not {*cells} <= {*self.houses[house]}:
                    yield "lies in no house"
            case HiddenSubset(cells, held, home):
                spread = set().union(*(places(digit, self.houses[home]) for digit in held))
                if spread != {*cells} or len(cells) != len(held):
                    yield "is no hidden subset"
            case Fish(digit, base, cover, at, fins):
                own = set().union(*(places(digit, self.houses[ref]) for ref in base))
                across = {cell for ref in cover for cell in self.houses[ref]}
                if own != {*at} or own - across != {*fins} or len(base) != len(cover):
                    yield "is no fish"
            case SeenByAll(digit, house, at):
                group = self.houses[house] if house else reason.mark.cells if reason.mark else ()
                if places(digit, group) != {*at}:
                    yield "has other places"
                for cell, _ in removed:
                    if not all(self.ground.peers[place] >> cell & 1 for place in at):
                        yield f"{self.grid.name(cell)} is not seen by all"
            case PivotWing(pivot, wings, digit):
                if not all(len(digits(wing)) == 2 and digit in digits(wing) for wing in wings):
                    yield "has no such wings"
                if len(digits(pivot)) != 2 + (digit in digits(pivot)):
                    yield "has no such pivot"
            case LinkedWing(pair, joined, house, link, digit):
                if not all(digits(cell) == {joined, digit} for cell in pair):
                    yield "has no such pair"
                if places(joined, self.houses[house]) != {*link}:
                    yield "has no such link"
            case Chain(links):
                for strong in links:
                    cell, digit = strong.false
                    other, same = strong.true
                    if strong.house:
                        if digit != same or places(digit, self.houses[strong.house]) != {cell, other}:
                            yield "has a link that is none"
                    elif cell != other or digits(cell) != {digit, same}:
                        yield "has a link that is none"
                for before, after in pairwise(links):
                    cell, digit = before.true
                    other, also = after.false
                    if not (cell == other and digit != also) and not (
                        digit == also and self.ground.peers[cell] >> other & 1
                    ):
                        yield "is broken"
            case ExtendedChain(chained, _, _):
                yield from self.extended(chained, state)
            case EitherWay(options, house, _, _):
                (cell, digit), *_ = options
                if house:
                    there = {(at, digit) for at in places(digit, self.houses[house])}
                else:
                    there = {(cell, held) for held in digits(cell)}
                if there != {*options}:
                    yield "has other ways"
            case Refuted():
                yield from self.refuted(claim, removed, state)
            case Beside(_, _, beside, known):
                if not state.stood[known] >> beside & 1:
                    yield "speaks of a digit that is not written"
            case NoPartner(cell, _, beyond):
                if not state.empty >> cell & 1 or not any(state.empty >> other & 1 for other in beyond):
                    yield "speaks of filled cells"
            case Needed(digit, at) | BesideAll(_, digit, _, at):
                if places(digit, at) != {*at}:
                    yield "has other places"
            case Reached(cell, digit):
                if self.domains(state)[cell] != {digit}:
                    yield "speaks of a digit that is not there"
            case HeldByRest(_, digit, cell, settled):
                if settled != (self.domains(state)[cell] == {digit}):
                    yield "is settled, or is not"
            case OnlyIn(held, cells):
                if not all(any(digit in self.domains(state)[cell] for cell in cells) for digit in held):
                    yield "has no place"
            case (
                Apart()
                | Bounds()
                | CommonSum()
                | CountsTo()
                | Enclosed()
                | FirstDigits()
                | LeftOver()
                | LimitsMeet()
                | NoCombination()
                | NoRun()
                | NoFilling()
                | OneCombination()
                | OnlyDigits()
                | SameDigit()
                | Steps()
                | TooNear()
            ):
                pass  # about all fillings of the mark: CP-SAT has the word
            case LastCell() | HiddenSingle() | NakedSingle() | Fixed() | FromProof():
                yield "is a placement"
            case _ as never:
                assert_never(never)

    def extended(self, chained: Sequence[ExtendedLink], state: State) -> Iterator[str]:
        """An extended chain link by link."""
        boards = state.boards

        def places(digit: int, cells: Iterable[int]) -> set[int]:
            return {cell for cell in cells if boards[digit] >> cell & 1}

        for link in chained:
            first, then, among = {*link.false}, {*link.true}, link.among
            if link.house:
                ways = places(link.false_digit, self.houses[link.house])
                if link.false_digit != link.true_digit or first & then or ways != first | then:
                    yield "has a link that is none"
                continue
            held = {digit for digit in self.grid.digits if places(digit, among)}
            if not all(self.ground.peers[one] >> other & 1 for one, other in combinations(among, 2)):
                yield "has cells that may be equal"
            if held != {link.false_digit, *link.digits} or len(held) != len(among) + 1:
                yield "has other digits"
            if places(link.false_digit, among) != first or places(link.true_digit, among) != then:
                yield "has a link that is none"
        for before, after in pairwise(chained):
            both = product(spread(before.true, before.true_digit), spread(after.false, after.false_digit))
            if not all(self.parted(one, two, after.by, after.seen, state) for one, two in both):
                yield "is broken"

    def refuted(self, claim: Refuted, removed: Sequence[Candidate], state: State) -> Iterator[str]:
        """A what-if link by link, each proved on the board as the links before it leave it."""
        if claim.tried not in removed:
            yield "tries another candidate than goes"
        board = state.copy()
        board.place(*claim.tried)
        for link in claim.links:
            match link:
                case ThenPlaced(cell, digit, house, mark):
                    if not board.empty >> cell & 1 or not board.present(((cell, digit),)):
                        yield f"follows to a filled cell: {link}"
                        return
                    domains = self.domains(board, without=(cell, digit))
                    if house:
                        shown = not self.possible(domains, self.houses[house], [self.houses[house]])
                    elif mark:
                        shown = not self.possible(domains, self.grid.cells, self.all_houses(), [self.only(mark)])
                    else:
                        shown = not domains[cell]
                    if not shown:
                        yield f"does not follow: {link}"
                    board.place(cell, digit)
                case ThenGone(mark, gone):
                    if board.present(gone) != gone:
                        yield f"strikes what is gone: {link}"
                    for pair in gone:
                        domains = self.domains(board, only=pair)
                        if self.possible(domains, self.grid.cells, self.all_houses(), [self.only(mark)]):
                            yield f"does not follow: {link}"
                    board.remove(gone)
                case _ as never:
                    assert_never(never)
        match claim.end:
            case NoPlace(house, digit):
                domains = self.domains(board)
                if any(digit in domains[cell] for cell in self.houses[house]):
                    yield f"does not end: {claim.end}"
            case NoDigit(cell, shutting, _):
                domains = self.domains(board)
                if shutting and not domains[cell]:
                    yield f"ends without its mark: {claim.end}"
                if domains[cell] and (
                    not shutting or self.possible(domains, self.grid.cells, self.all_houses(), [self.only(shutting)])
                ):
                    yield f"does not end: {claim.end}"
            case NothingFits(broken):
                if self.possible(self.domains(board), self.grid.cells, self.all_houses(), [self.only(broken)]):
                    yield f"does not end: {claim.end}"
            case _:
                assert_never(claim.end)

    # What is said around the steps

    def singles(self) -> tuple[int, bool]:
        """How many cells have a single, and whether all of them are naked ones only; counted plainly."""
        domains = self.domains(self.state)
        empty = {cell for cell in self.grid.cells if self.state.empty >> cell & 1}
        naked = {cell for cell in empty if len(domains[cell]) == 1}
        hidden: set[int] = set()
        for cells in self.houses.values():
            for digit in self.grid.digits:
                at = [cell for cell in cells if digit in domains[cell]]
                if len(at) == 1 and at[0] in empty:
                    hidden.add(at[0])
        return len(naked | hidden), not hidden

    def said(self, said: Utterance, told: Sequence[int]) -> Iterator[str]:
        """What is said besides the steps and is not so."""
        steps = [self.steps[number] for number in told]
        placed = tuple(pair for step in steps for pair in step.placed)
        removed = {pair for step in steps for pair in step.removed}
        filled = len(self.grid.cells) - self.state.empty.bit_count()
        match said:
            case Stuck(count, at_start, _, needs):
                if count != filled or at_start != (filled == self.puzzle.given_count and not self.begun()):
                    yield "counts other filled cells"
                if self.singles()[0]:
                    yield "though there are singles"
                ahead = self.ahead()
                if needs and [step.reason for step in ahead[:-1]] != [*needs]:
                    yield "needs other steps"
            case Few(count, singles, naked, _):
                if count != filled or (singles, naked) != self.singles():
                    yield f"though there are {self.singles()} singles at {filled} cells"
            case Aim(single, rivals):
                *before, last = self.ahead()
                if last.reason.claim != single or not {*rivals} <= {pair for step in before for pair in step.removed}:
                    yield "aims elsewhere"
            case WhatIfsFollow():
                yield from self.shared(said)
            case Eliminates(_, gone) | SameHolds(_, gone) | MoreAlike(_, gone):
                if {*gone} != removed:
                    yield "says that other candidates go"
            case BySymmetry(gone, opens):
                if {*gone} != removed or placed != (() if opens is None else (opens,)):
                    yield "says something else by symmetry"
            case Places(single, last, _):
                if steps[0].reason.claim != single or (last and self.standing(single.digit) != self.grid.size - 1):
                    yield "is another placement"
            case Leaves(single) | Opens(single):
                if steps[0].reason.claim != single:
                    yield "is another placement"
                if isinstance(said, Leaves) and steps[0].since != steps[0].number - 1:
                    yield "does not follow from the placement before it"
            case Run(digit, cells, completes, chained, _, _):
                if placed != tuple((cell, digit) for cell in cells):
                    yield "places other digits"
                if completes and self.standing(digit) + len(cells) != self.grid.size:
                    yield "does not complete its digit"
                if chained and any(step.since != step.number - 1 for step in steps[1:]):
                    yield "is no chain"
            case Fills(house, pairs):
                left = {cell for cell in self.houses[house] if self.state.empty >> cell & 1}
                if placed != pairs or left != {cell for cell, _ in pairs}:
                    yield "does not fill its house"
            case FallsIntoPlace(pairs, _) | TakenFromProof(pairs) | Fixes(_, _, pairs):
                if placed != pairs:
                    yield "places other digits"
            case WithImage(single, image):
                if steps[0].reason.claim != single or placed[1] != image:
                    yield "places other digits"
            case RunWithImages(digit, cells, other, images):
                both = [(cell, digit) for cell in cells], [(cell, other) for cell in images]
                if list(placed[::2]) != both[0] or list(placed[1::2]) != both[1]:
                    yield "places other digits"
            case SeenInHouse(single, lookers, struck, marked, _):
                if not all(self.state.stood[single.digit] >> cell & 1 for cell in lookers):
                    yield "looks from where the digit is not"
                unseen = [
                    cell
                    for cell in self.houses[single.house]
                    if self.state.empty >> cell & 1
                    and cell != single.cell
                    and not any(self.ground.peers[looker] >> cell & 1 for looker in lookers)
                ]
                if bool(unseen) != (struck or marked) and isinstance(single, HiddenSingle):
                    yield "leaves out a cell"
            case SeenInCell(single, holders, strikers):
                for where, held in holders:
                    seen = (
                        self.houses[where]
                        if where
                        else [cell for cell in self.grid.cells if self.ground.peers[single.cell] >> cell & 1]
                    )
                    if not all(any(self.state.stood[digit] >> cell & 1 for cell in seen) for digit in held):
                        yield "holds no such digits"
                told_digits = [digit for _, digits in (*holders, *strikers) for digit in digits]
                if sorted(told_digits) != [digit for digit in self.grid.digits if digit != single.digit]:
                    yield "leaves out a digit"
            case Introduction(_, stuck, _, crux_at, _, _, _):
                yield from self.introduction(stuck, crux_at)
            case Names() | StartsHere() | Table() | RuleSaid() | Symmetry():
                pass
            case _ as never:
                assert_never(never)

    def begun(self) -> bool:
        """Was anything told before?"""
        return bool(self.told_so_far())

    def told_so_far(self) -> int:
        position = self.state.position()
        return next(number for number, step in self.steps.items() if step.before == position) - 1

    def ahead(self) -> list[Traced]:
        """The steps from here up to the next placement."""
        found = []
        for number in range(self.told_so_far() + 1, len(self.steps) + 1):
            found.append(self.steps[number])
            if self.steps[number].placed:
                break
        return found

    def standing(self, digit: int) -> int:
        return self.state.stood[digit].bit_count()

    def introduction(self, stuck: int, crux_at: int | None) -> Iterator[str]:
        """Counts how often no single is left in the telling."""
        board, counted, filled = start(self.ground), 0, set()
        prover = replace_state(self, board)
        for number in range(1, len(self.steps) + 1):
            step = self.steps[number]
            first = number == 1 or bool(self.steps[number - 1].placed)
            if first and not prover.singles()[0] and step.removed and not step.mirrors:
                counted += 1
            filled.add(step.filled)
            for cell, digit in step.placed:
                board.place(cell, digit)
            board.remove(step.removed)
        if counted != stuck:
            yield f"though the singles run out {counted} times"
        if crux_at is not None and crux_at not in filled:
            yield "announces a hard moment that never comes"

    def shared(self, said: WhatIfsFollow) -> Iterator[str]:
        ahead = [step for step in self.ahead() if isinstance(step.reason.claim, Refuted)][: said.count]
        ends = [step.reason.claim.end for step in ahead if isinstance(step.reason.claim, Refuted)]
        pairs = [pair for step in ahead for pair in step.removed]
        if len(ahead) != said.count:
            yield "counts other what-ifs"
        if said.house and any(end != NoPlace(said.house, said.digit or 0) for end in ends):
            yield "has another end"
        if said.mark and any(getattr(end, "mark", None) != said.mark for end in ends):
            yield "has another end"
        if said.kind and any(getattr(getattr(end, "mark", None), "kind", "") != said.kind for end in ends):
            yield "has another end"
        if said.tried_digit and any(digit != said.tried_digit for _, digit in pairs):
            yield "tries other digits"
        if said.tried_cell is not None and any(cell != said.tried_cell for cell, _ in pairs):
            yield "tries other cells"
        if said.tried_house and any(cell not in self.houses[said.tried_house] for cell, _ in pairs):
            yield "tries other cells"


def spread(cells: Sequence[int], digit: int) -> list[Candidate]:
    """A digit in each of some cells."""
    return [(cell, digit) for cell in cells]


def replace_state(prover: _Prover, state: State) -> _Prover:
    """The same prover on another board."""
    other = object.__new__(_Prover)
    other.__dict__.update(prover.__dict__, state=state)
    return other


@lru_cache(maxsize=4096)
def _only(rule: Rule, mark: MarkRef, grid: Grid) -> Rule:
    """A rule cut down to one mark: of each of its members that list marks only the one with which the rule still knows
    the mark; the rule as it is where no cut does that."""
    lists = [field.name for field in fields(rule) if isinstance(getattr(rule, field.name), tuple)]
    longest = max((len(getattr(rule, name)) for name in lists), default=0)
    for at in range(longest):
        for name in lists:
            cut = dict.fromkeys(lists, ()) | {name: getattr(rule, name)[at : at + 1]}
            together = {other: getattr(rule, other)[at : at + 1] for other in lists}
            for kept in (together, cut):
                small = replace(rule, **kept) if kept[name] else rule
                with suppress(ValueError):  # members that must be of one length
                    if kept[name] and mark in small.references(grid):
                        return small
    return rule
