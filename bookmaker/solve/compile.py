"""From a problem to an engine: every constraint goes to the kind of reasoning that handles it best.

In: a `Problem`. Out: an `Engine` (`engine.py`) with the state it starts from. What depends on the houses alone is
kept for the next problem on the same grid.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cache, lru_cache
from typing import assert_never

from bookmaker.solve.arithmetic import Total, house_sums
from bookmaker.solve.automata import accepted_line
from bookmaker.solve.candidates import CandidateLayout, candidate_layout, each_bit
from bookmaker.solve.counts import CountWithin
from bookmaker.solve.different_counts import DifferentWithin
from bookmaker.solve.engine import Engine
from bookmaker.solve.houses import gather
from bookmaker.solve.local import A_CELL, Filter, Filtered, Local
from bookmaker.solve.placement import ExtendedPlacementMasks, Forbidding, PlacementMasks, peers_of
from bookmaker.solve.problem import (
    Allowed,
    Automaton,
    Combination,
    Count,
    Different,
    DifferentCount,
    Problem,
    Relation,
    Sum,
)
from bookmaker.solve.relations import (
    AllowedTable,
    RelationPropagator,
    follows_from_placement,
    forbidden,
    is_unequal,
    related_pair,
    relation_propagator,
    reverse,
)
from bookmaker.solve.sets import ANY_SET, MOST_DIGITS, OneOfFewSets, OneOfTheSets, set_cost, set_of_sets, sets_by_sum
from bookmaker.solve.sums import SumWithin, in_parts

Cells = tuple[int, ...]
FEW_PAIRS = 3
"""Up to this number, the pairs of a relation are cheaper one by one than in a pass over the whole grid."""

Relations = dict[AllowedTable, list[tuple[int, int]]]
Other = Combination | Sum | Count | DifferentCount | Automaton


def compile_problem(problem: Problem) -> tuple[Engine, int]:
    """The engine for a problem, and the state it starts from (0 if the problem contradicts itself on sight)."""
    layout = candidate_layout(problem.cells, problem.digits)
    full, places = layout.full, layout.places
    gone = 0
    groups: list[Cells] = []
    relations: Relations = {}
    others: list[Other] = []
    for constraint in problem.constraints:
        if isinstance(
            constraint, Allowed
        ):  # the commonest first; a `match` on classes takes twice the time of the rest
            refused = full & ~constraint.digits
            for cell in constraint.cells:
                gone |= refused << places[cell]
        elif isinstance(constraint, Different):
            groups.append(constraint.cells)
        elif isinstance(constraint, Relation):
            gone |= _relate(layout, constraint, relations)
        elif isinstance(constraint, Combination):
            others.append(constraint)
            if len(set(constraint.cells)) < len(constraint.cells):
                gone = layout.everything
        elif isinstance(constraint, Sum | Count | DifferentCount | Automaton):
            others.append(constraint)
        else:
            assert_never(constraint)
    frame = _frame(layout, tuple(groups))
    start = 0 if frame.impossible else layout.everything ^ gone
    if not relations and not others:
        return frame.engine(), start
    engine = _engine(layout, frame, relations, others)
    if any(not local.cells and not local.work_out(0) for local in engine.locals):
        start = 0  # a constraint on no cells that cannot be kept
    return engine, start


class _Frame:
    """What the houses of a problem make of a grid. Shared between problems."""

    def __init__(self, layout: CandidateLayout, groups: Sequence[Cells]) -> None:
        self.impossible = any(len(cells) > layout.digits or len(set(cells)) < len(cells) for cells in groups)
        full = [cells for cells in groups if len(cells) == layout.digits]
        self.boards = [_board(cells) for cells in full]
        self.houses = gather(layout, full)
        self.placement = PlacementMasks(layout, peers_of(layout, groups))
        held = [cells for cells in groups if 2 < len(cells) < layout.digits and not self._in_a_house(cells)]
        self.different = (*self.houses.lone, *held)
        self.layout = layout
        self._plain = None if self.different else Engine(layout, self.houses, self.placement, (), ())

    def engine(self) -> Engine:
        """The engine of a problem that has nothing but houses; shared where it has nothing to remember or to count."""
        return self._plain or Engine(self.layout, self.houses, self.placement, (), self.all_different(self.placement))

    def all_different(self, placement: Mapping[int, int]) -> tuple[Local, ...]:
        """What looks after the cells that hold different digits and belong to no family of houses."""
        if self.layout.digits > MOST_DIGITS:
            any_set = OneOfFewSets(frozenset({self.layout.full}))
            full = [cells for cells in self.different if len(cells) == self.layout.digits]
            return tuple(Filtered(self.layout, cells, any_set, placement) for cells in full)
        return tuple(_of_the_sets(self.layout, cells, ANY_SET, placement) for cells in self.different)

    def _in_a_house(self, cells: Cells) -> bool:
        board = _board(cells)
        return any(board & ~house == 0 for house in self.boards)


@lru_cache(maxsize=64)
def _frame(layout: CandidateLayout, groups: tuple[Cells, ...]) -> _Frame:
    return _Frame(layout, groups)


def _relate(layout: CandidateLayout, constraint: Relation, relations: Relations) -> int:
    """Collect the pairs of one relation; candidates go at once where a cell is related to itself."""
    allowed, gone = constraint.allowed, 0
    pairs = relations.setdefault(allowed, [])
    for a, b in constraint.pairs:
        if a == b:
            kept = sum(1 << d - 1 for d in range(1, len(allowed)) if allowed[d] >> d - 1 & 1)
            gone |= (layout.full & ~kept) << layout.places[a]
        else:
            pairs.append((a, b))
    return gone


def _engine(layout: CandidateLayout, frame: _Frame, relations: Relations, others: Sequence[Other]) -> Engine:
    related: dict[int, list[Forbidding]] = {}
    places = layout.places
    groups: list[Cells] = [constraint.cells for constraint in others if isinstance(constraint, Combination)]
    for allowed, pairs in relations.items():
        if is_unequal(allowed):
            groups.extend(pairs)
            continue
        forward, backward = forbidden(allowed), forbidden(reverse(allowed))
        for a, b in pairs:
            related.setdefault(a, []).append((places[b], forward))
            related.setdefault(b, []).append((places[a], backward))
    placement = frame.placement
    peers = peers_of(layout, groups, placement.peers) if groups else placement.peers
    if groups or related:
        placement = ExtendedPlacementMasks(placement, peers, related)
    locals_ = [*_locals(layout, frame, peers, placement, others), *frame.all_different(placement)]
    swept: list[RelationPropagator] = []
    for allowed, pairs in relations.items():
        if follows_from_placement(allowed):
            continue
        if len(pairs) <= FEW_PAIRS:
            locals_.extend(Filtered(layout, pair, related_pair(allowed), placement) for pair in dict.fromkeys(pairs))
        else:
            swept.append(relation_propagator(layout, pairs, allowed))
    return Engine(layout, frame.houses, placement, tuple(swept), tuple(locals_))


def _locals(
    layout: CandidateLayout, frame: _Frame, peers: Sequence[int], placement: Mapping[int, int], others: Sequence[Other]
) -> Iterator[Local]:
    """What looks after each constraint on a few cells, and after the sums that follow from totals and houses."""
    digits = layout.digits

    def filtered(cells: Cells, filter_: Filter) -> Local:
        return Filtered(layout, cells, filter_, placement)

    def adds_up(factors: dict[int, int], least: int, most: int) -> Local:
        """A sum; where its cells differ from each other and count alike, as the sets of digits with that sum."""
        parts = in_parts(layout, factors, peers)
        if len(parts) == 1 and set(factors.values()) == {1} and digits <= MOST_DIGITS:
            cells = tuple(parts[0])
            return _of_the_sets(layout, cells, _sets_with_sum(digits, len(cells), least, most), placement)
        return SumWithin(layout, parts, factors, least, most)

    totals: list[Total] = []
    for constraint in others:
        match constraint:
            case Combination(cells, sets):
                if digits > MOST_DIGITS:
                    a_cell = A_CELL + len(sets) // max(len(cells), 1)  # each set is tried
                    yield Filtered(layout, cells, OneOfFewSets(sets), placement, a_cell)
                else:
                    yield _of_the_sets(layout, cells, set_of_sets(sets), placement)
                total = _common_sum(sets)
                if total is not None:
                    totals.append(Total(_board(cells), 0, total))
            case Sum(terms, least, most):
                factors: dict[int, int] = {}
                for cell, factor in terms:
                    factors[cell] = factors.get(cell, 0) + factor
                yield adds_up(factors, least, most)
                if least == most and all(factor == 1 for factor in factors.values()):
                    totals.append(Total(_board(factors), 0, least))
            case Count(cells, mask, least, most):
                once = tuple(dict.fromkeys(cells))
                yield filtered(once, CountWithin(mask, least, most, tuple(cells.count(cell) for cell in once)))
            case DifferentCount(cells, least, most):
                once = tuple(dict.fromkeys(cells))
                yield filtered(once, DifferentWithin(least, most, _differing(layout, once, peers)))
            case Automaton(cells, steps, accept):
                once = tuple(dict.fromkeys(cells))
                line = tuple(once.index(cell) for cell in cells)
                yield filtered(once, accepted_line(steps, accept, line, digits))
            case _ as never:
                assert_never(never)
    if totals:
        for found in house_sums(frame.boards, totals, digits):
            factors = dict.fromkeys(each_bit(found.plus), 1) | dict.fromkeys(each_bit(found.minus), -1)
            yield adds_up(factors, found.total, found.total)


def _of_the_sets(layout: CandidateLayout, cells: Cells, sets: int, placement: Mapping[int, int]) -> Local:
    """What looks after cells that hold different digits, together one of the sets."""
    return Filtered(layout, cells, OneOfTheSets(layout.digits, sets), placement, A_CELL + set_cost(layout.digits))


def _differing(layout: CandidateLayout, cells: Cells, peers: Sequence[int]) -> tuple[int, ...]:
    """For each of the cells those that are its peers, as bits in the order of the cells."""
    units = [layout.units[layout.places[cell]] for cell in cells]
    return tuple(sum(1 << at for at, unit in enumerate(units) if peers[cell] & unit) for cell in cells)


def _board(cells: Iterable[int]) -> int:
    board = 0
    for cell in cells:
        board |= 1 << cell
    return board


@cache
def _common_sum(sets: frozenset[int]) -> int | None:
    """The sum of the digits of every one of the sets; None if they differ."""
    sums = {sum(bit + 1 for bit in each_bit(mask)) for mask in sets}
    return sums.pop() if len(sums) == 1 else None


@cache
def _sets_with_sum(digits: int, size: int, least: int, most: int) -> int:
    """All sets of `size` digits with a sum within limits, as a set of sets."""
    allowed = 0
    for total, sets in sets_by_sum(digits, size):
        if least <= total <= most:
            allowed |= sets
    return allowed
