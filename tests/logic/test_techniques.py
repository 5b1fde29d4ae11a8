"""Each technique on the smallest position that shows it: what is known → what is struck. Trade knowledge, no source."""

from __future__ import annotations

from bookmaker.logic.follow import follow
from bookmaker.logic.technique import ladder
from bookmaker.logic.techniques.chains import AlternatingChain, SingleDigitChain
from bookmaker.logic.techniques.either_way import EitherWayTechnique
from bookmaker.logic.techniques.extended_chains import ExtendedChainTechnique
from bookmaker.logic.techniques.finned_fish import FinnedFish
from bookmaker.logic.techniques.fish import PlainFish
from bookmaker.logic.techniques.hidden_subset import HiddenPair, HiddenQuad, HiddenTriple
from bookmaker.logic.techniques.locked_candidates import LockedCandidates
from bookmaker.logic.techniques.naked_subset import NakedPair, NakedQuad, NakedTriple
from bookmaker.logic.techniques.shared_sight import SharedSight
from bookmaker.logic.techniques.what_if import WhatIf
from bookmaker.logic.techniques.wings import WWing, XYWing, XYZWing
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.reasons.bymark import NoFilling
from bookmaker.reasons.patterns import Chain
from bookmaker.reasons.throughmarks import EitherWay, ExtendedChain
from bookmaker.reasons.whatif import NoDigit, NothingFits
from bookmaker.rules.cage import Cage
from bookmaker.rules.knight import Knight
from bookmaker.rules.non_consecutive import NonConsecutive
from bookmaker.rules.thermometer import Thermometer
from tests.grade.positions import cell, empty, holds, only, struck


def row_but(row: int, digits: tuple[int, ...], *columns: int) -> set[tuple[str, int]]:
    """Candidates of a row outside some columns."""
    return {(f"r{row}c{c}", digit) for c in range(1, 10) if c not in columns for digit in digits}


def test_ladder_climbs() -> None:
    rungs = [techniques[0].rung for techniques in ladder()]
    assert rungs == sorted(set(rungs))
    names = [technique.name for techniques in ladder() for technique in techniques]
    assert len(set(names)) == len(names)


def test_locked_from_box_to_line() -> None:
    state = empty()
    only(state, 3, "the top left box", "r2c1", "r2c3")
    assert struck(state, LockedCandidates()) == [row_but(2, (3,), 1, 2, 3)]


def test_locked_from_line_to_box() -> None:
    state = empty()
    only(state, 3, "row 2", "r2c1", "r2c3")
    box = {(f"r{r}c{c}", 3) for r in (1, 3) for c in (1, 2, 3)}
    assert struck(state, LockedCandidates()) == [box]


def test_naked_subsets() -> None:
    for technique, cells in (
        (NakedPair(), {"r1c1": (1, 2), "r1c4": (1, 2)}),
        (NakedTriple(), {"r1c1": (1, 2), "r1c4": (2, 3), "r1c7": (1, 3)}),
        (NakedQuad(), {"r1c1": (1, 2), "r1c4": (2, 3), "r1c7": (3, 4), "r1c9": (1, 4)}),
    ):
        state = empty()
        for name, digits in cells.items():
            holds(state, name, *digits)
        together = tuple(sorted({digit for digits in cells.values() for digit in digits}))
        assert struck(state, technique) == [row_but(1, together, *(int(name[3]) for name in cells))]


def test_hidden_subsets() -> None:
    for technique, digits, columns in (
        (HiddenPair(), (1, 2), (1, 4)),
        (HiddenTriple(), (1, 2, 3), (1, 4, 7)),
        (HiddenQuad(), (1, 2, 3, 4), (1, 4, 7, 9)),
    ):
        state = empty()
        for digit in digits:
            only(state, digit, "row 1", *(f"r1c{c}" for c in columns))
        others = tuple(digit for digit in CLASSIC.digits if digit not in digits)
        assert struck(state, technique) == [{(f"r1c{c}", digit) for c in columns for digit in others}]


def test_fish_of_each_size() -> None:
    for rows, columns in (((1, 5), (2, 8)), ((1, 5, 7), (2, 6, 8)), ((1, 4, 7, 9), (2, 5, 6, 8))):
        state = empty()
        for row in rows:
            only(state, 6, f"row {row}", *(f"r{row}c{c}" for c in columns))
        elsewhere = {(f"r{r}c{c}", 6) for c in columns for r in range(1, 10) if r not in rows}
        assert struck(state, PlainFish()) == [elsewhere]


def test_fish_with_a_fin() -> None:
    state = empty()
    only(state, 6, "row 1", "r1c2", "r1c8")
    only(state, 6, "row 5", "r5c2", "r5c8", "r5c9")
    found = struck(state, FinnedFish())
    assert {("r4c8", 6), ("r6c8", 6)} in found
    assert all(candidates <= {("r4c8", 6), ("r6c8", 6)} for candidates in found)


def test_xy_wing() -> None:
    state = empty()
    holds(state, "r1c1", 1, 2)
    holds(state, "r1c8", 1, 3)
    holds(state, "r5c1", 2, 3)
    assert struck(state, XYWing()) == [{("r5c8", 3)}]


def test_xyz_wing() -> None:
    state = empty()
    holds(state, "r1c1", 1, 2, 3)
    holds(state, "r1c8", 1, 3)
    holds(state, "r3c2", 2, 3)
    assert struck(state, XYZWing()) == [{("r1c2", 3), ("r1c3", 3)}]


def test_w_wing() -> None:
    state = empty()
    holds(state, "r1c1", 1, 2)
    holds(state, "r9c9", 1, 2)
    only(state, 1, "row 5", "r5c1", "r5c9")
    assert struck(state, WWing()) == [{("r1c9", 2), ("r9c1", 2)}]


def test_chain_of_one_digit() -> None:
    state = empty()
    only(state, 4, "column 2", "r1c2", "r6c2")
    only(state, 4, "column 7", "r2c7", "r6c7")
    assert struck(state, SingleDigitChain()) == [{("r1c8", 4)}, {("r1c9", 4)}, {("r2c1", 4)}, {("r2c3", 4)}]


def test_chain_through_cells_and_places() -> None:
    state = empty()
    holds(state, "r1c1", 1, 2)
    only(state, 2, "row 4", "r4c1", "r4c5")
    holds(state, "r8c5", 2, 1)
    assert {("r8c1", 1)} in struck(state, AlternatingChain())


def test_a_chain_has_every_link() -> None:
    state = empty()
    only(state, 4, "column 2", "r1c2", "r6c2")
    only(state, 4, "column 7", "r2c7", "r6c7")
    claim = next(iter(SingleDigitChain().find(state))).reason().claim
    assert isinstance(claim, Chain)
    along = [(cell("r1c2"), 4), (cell("r6c2"), 4), (cell("r6c7"), 4), (cell("r2c7"), 4)]
    assert [pair for link in claim.links for pair in (link.false, link.true)] in (along, along[::-1])


def test_seen_by_all_places_through_a_knight() -> None:
    state = empty(Knight())
    only(state, 7, "row 1", "r1c2", "r1c6")
    assert struck(state, SharedSight()) == [{("r2c4", 7)}]


def test_ruled_out_either_way() -> None:
    state = empty(NonConsecutive())
    only(state, 5, "row 1", "r1c2", "r1c4")
    assert struck(state, EitherWayTechnique()) == [{("r1c3", 4), ("r1c3", 6)}]
    (finding,) = EitherWayTechnique().find(state)
    claim = finding.reason().claim
    assert isinstance(claim, EitherWay)
    assert {mark.cells for mark in claim.by} == {(cell("r1c2"), cell("r1c3")), (cell("r1c3"), cell("r1c4"))}
    assert not claim.seen
    assert finding.again
    assert finding.again(state)
    state.remove([(cell("r1c4"), 5)])
    assert not finding.again(state)


def test_ruled_out_by_every_digit_of_a_cell() -> None:
    state = empty(NonConsecutive())
    holds(state, "r5c5", 3, 5)
    around = [{(name, 4)} for name in ("r4c5", "r5c4", "r5c6", "r6c5")]
    assert struck(state, EitherWayTechnique()) == around


def test_a_mark_that_cannot_do_with_a_digit_it_only_sees() -> None:
    state = empty(Cage(((tuple(cell(name) for name in ("r2c2", "r2c3", "r3c2")), 7),)))
    (reason,) = {finding.reason() for finding in EitherWayTechnique().find_for(state, ((cell("r1c1"), 1),))}
    assert isinstance(reason.claim, NoFilling)  # 7 is 1 + 2 + 4 only
    assert reason.mark == state.ground.reference(state.ground.rules[0], [cell("r2c2")])


def test_chain_through_a_mark() -> None:
    state = empty(NonConsecutive())
    only(state, 5, "column 1", "r1c1", "r6c1")
    only(state, 4, "column 2", "r6c2", "r2c2")
    # No 5 in r1c1 puts it into r6c1, next to which r6c2 is no 4, so that r2c2 is.
    found = list(ExtendedChainTechnique().find(state))
    fall = (("r1c1", 4), ("r1c2", 5), ("r2c1", 4), ("r2c2", 5), ("r2c3", 5), ("r3c2", 5))
    assert {pair for finding in found for pair in finding.removed} == {(cell(name), digit) for name, digit in fall}
    claim = next(finding.reason().claim for finding in found if (cell("r1c2"), 5) in finding.removed)
    assert isinstance(claim, ExtendedChain)
    assert [[mark.cells for mark in link.by] for link in claim.links] == [[], [(cell("r6c1"), cell("r6c2"))]]
    assert all(finding.again and finding.again(state) for finding in found)


def test_chain_of_groups() -> None:
    state = empty(Knight())
    only(state, 7, "row 5", "r5c1", "r5c2", "r5c9")
    only(state, 7, "column 9", "r5c9", "r9c9")
    only(state, 7, "row 9", "r9c9", "r9c3")
    # The 7 is in the first two cells of row 5 or in r9c3; the last two cells see the former by a knight's move, too.
    fallen = {pair for finding in ExtendedChainTechnique().find(state) for pair in finding.removed}
    assert fallen == {(cell(name), 7) for name in ("r4c3", "r6c3", "r7c1", "r7c2")}


def test_chain_through_cells_with_a_digit_more_than_they_are() -> None:
    state = empty(Knight())
    holds(state, "r1c1", 1, 2, 3)
    holds(state, "r1c2", 2, 3)
    holds(state, "r7c1", 1, 4)
    holds(state, "r7c9", 4, 3)
    # With no 3 in the corner r1c1 and r1c2 hold 1 and 2, r7c1 is 4 and r7c9 is 3.
    assert ("r1c9", 3) in {pair for found in struck(state, ExtendedChainTechnique()) for pair in found}


def test_extended_chains_leave_classics_alone() -> None:
    state = empty()
    only(state, 4, "column 2", "r1c2", "r6c2")
    only(state, 4, "column 7", "r2c7", "r6c7")
    assert not struck(state, ExtendedChainTechnique())


def test_what_if_takes_the_shortest() -> None:
    state = empty()
    assert not struck(state, WhatIf())
    holds(state, "r1c1", 1, 2)
    holds(state, "r1c2", 1, 3)
    holds(state, "r1c3", 2, 3)
    # A 1 further along the row makes 2 and 3 of the first two cells and leaves nothing for the third: one round.
    assert {("r1c9", 1)} in struck(state, WhatIf())
    assert {finding.reach for finding in WhatIf().find(state)} == {1}


def test_what_if_reads_a_whole_thermometer_at_once() -> None:
    state = empty(Thermometer((tuple(cell(f"r{r}c{r}") for r in range(1, 6)),)))
    state.remove((cell("r5c5"), digit) for digit in (7, 8, 9))
    clash = follow(state, cell("r1c1"), 3)
    assert clash is not None
    assert clash.rounds == 0
    # 3, 4, 5, 6 leave nothing up to 6 for the tip
    end = clash.end(state.ground)
    assert isinstance(end, NoDigit)
    assert (end.cell, end.mark) == (cell("r1c1"), state.ground.reference(state.ground.rules[0], [cell("r1c1")]))


def test_what_if_names_the_mark_that_nothing_fits() -> None:
    state = empty(Cage(((tuple(cell(name) for name in ("r2c2", "r2c3", "r3c2")), 7),)))
    clash = follow(state, cell("r2c3"), 5)
    assert clash is not None
    end = clash.end(state.ground)
    assert isinstance(end, NothingFits)
    assert (end.mark.kind, end.mark.value, end.mark.cells[0]) == ("cage", "7", cell("r2c2"))
