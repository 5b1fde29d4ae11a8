"""Reasons and sentences of every type and variety, made by hand; no position stands behind them."""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

from bookmaker.puzzle.grid import CLASSIC, HouseRef
from bookmaker.puzzle.position import Candidate
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
from bookmaker.reasons.claims import Claim
from bookmaker.reasons.marks import At, Between, Lettered, Line, Outside, Slanting
from bookmaker.reasons.patterns import (
    Chain,
    ChainLink,
    Fish,
    HiddenSubset,
    LinkedWing,
    Locked,
    NakedSubset,
    PivotWing,
    SeenByAll,
)
from bookmaker.reasons.reason import MARK
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

ROW, COLUMN, BOX = (houses[1].ref for houses in (CLASSIC.rows, CLASSIC.columns, CLASSIC.region_houses))
CELLS = (0, 10, 20)
REMOVED: tuple[Candidate, ...] = ((0, 4), (0, 5), (10, 4))

MARKS = (
    MarkRef("thermometer", CELLS, Line(0, 20)),
    MarkRef("cage", CELLS, At(0), "17"),
    MarkRef("cage", CELLS, At(0)),
    MarkRef("dots", (0, 1), Between(0, 1), variety="white"),
    MarkRef("sum-marks", (0, 1), Between(0, 1), "X", "X"),
    MarkRef("consecutive-bars", (0, 1), Between(0, 1), variety="missing"),
    MarkRef("skyscraper", tuple(range(9)), Outside("left", 1), "3"),
    MarkRef("diagonal-sum", CELLS, Slanting(0, "down-right"), "9"),
    MarkRef("clone", CELLS, Lettered("A")),
    MarkRef.joined("inequality", CELLS),
    MarkRef.joined("peaks", CELLS),
    MarkRef.whole("non-consecutive"),
    MarkRef.whole("no-doubles"),
    MarkRef.whole("barred-sums"),
)
TECHNIQUES: dict[type, tuple[str, ...]] = {
    Locked: ("locked-candidates",),
    NakedSubset: ("naked-pair", "naked-triple", "naked-quad"),
    HiddenSubset: ("hidden-pair", "hidden-triple", "hidden-quad"),
    Fish: ("x-wing", "swordfish", "jellyfish", "finned-x-wing", "finned-swordfish", "finned-jellyfish"),
    SeenByAll: ("seen-by-all-places",),
    PivotWing: ("xy-wing", "xyz-wing"),
    LinkedWing: ("w-wing",),
    Chain: ("single-digit-chain", "alternating-chain"),
    ExtendedChain: ("extended-chain",),
    EitherWay: ("either-way",),
    Refuted: ("what-if",),
    LastCell: ("last-cell",),
    HiddenSingle: ("hidden-single",),
    NakedSingle: ("naked-single",),
    FromProof: ("beyond",),
}
"""The techniques that make a claim; the others are made by marks."""


def claims() -> Iterator[Claim]:
    """Every type of claim, in each of its varieties."""
    yield from (LastCell(ROW, 0, 4), HiddenSingle(BOX, 0, 4), NakedSingle(0, 4), Fixed(0, 4), FromProof(0, 4))
    yield Locked(4, ROW, BOX, (10, 11))
    yield from (NakedSubset(CELLS, (1, 2, 3), house) for house in (ROW, None))
    yield HiddenSubset(CELLS, (1, 2, 3), ROW)
    yield from (Fish(4, (ROW,), (COLUMN,), CELLS, fins) for fins in ((), (30,)))
    yield from (SeenByAll(4, house, CELLS) for house in (ROW, None))
    yield PivotWing(0, (10, 20), 4)
    yield LinkedWing((0, 10), 1, ROW, (20, 30), 4)
    links = (ChainLink((0, 4), (9, 4), COLUMN), ChainLink((10, 4), (10, 5), None))
    yield from (Chain(links), Chain((links[0], ChainLink((10, 4), (0, 4), None))))
    mark = MARKS[0]
    through = (
        ExtendedLink((0,), 4, (9, 18), 4, COLUMN, (), (), (), False),
        ExtendedLink((10,), 4, (10,), 5, None, (10,), (5,), (MARKS[1],), False),
        ExtendedLink((12, 13), 5, (13,), 6, None, (12, 13), (4, 6), (), True),
        ExtendedLink((12, 13), 5, (13,), 6, None, (12, 13), (4, 6), (MARKS[1], mark), True),
    )
    group = ExtendedLink((0, 1), 4, (0,), 4, ROW, (), (), (), False)
    itself = ExtendedLink((1,), 4, (0,), 4, ROW, (), (), (mark,), False)
    for by, seen in (((mark,), False), ((mark, MARKS[3]), True), ((), True)):
        yield from (ExtendedChain(links, by, seen) for links in (through, (group, through[1]), (through[0], itself)))
        yield from (
            EitherWay(((10, 5), (11, 5)), ROW, by, seen),
            EitherWay(((10, 5), (10, 6), (10, 7)), None, by, seen),
        )
    then = (ThenPlaced(9, 4, ROW), ThenPlaced(9, 4), ThenPlaced(9, 4, None, mark), ThenGone(mark, ((0, 3), (10, 3))))
    for end in (NoPlace(ROW, 4), NoDigit(0), NoDigit(0, mark), NoDigit(0, None, True), NothingFits(mark)):
        yield from (Refuted((0, 4), rounds, end, links) for rounds, links in ((0, ()), (1, ()), (3, ()), (2, then)))
    yield Bounds(((0, 2, 3), (10, 5, 9)))
    yield from (Enclosed(ends, (20,)) for ends in ((0, 10), (30, 40)))
    yield from (OnlyDigits(CELLS, (1, 2)), OnlyIn((4,), CELLS), OnlyIn((4, 5), CELLS))
    yield from (NoPartner(0, (4, 5), (10,)), Beside(0, (4,), 1, 5), TooNear(0, (4,), (1, 2)))
    yield from (
        OneCombination((1, 2)),
        NoCombination((4, 5)),
        NoRun((4, 5)),
        Needed(4, CELLS),
        NoFilling(CELLS),
        SameDigit((0, 10)),
    )
    yield from (Reached(0, 4), BesideAll(0, 4, ROW, (10, 11)))
    yield from (LimitsMeet(5, 9, from_above) for from_above in (False, True))
    yield from (CommonSum((10,)), CommonSum((10, 11)), CommonSum((10, 11, 12, 13)))
    yield from (
        LeftOver(houses, 45, 40, beyond, cells)
        for houses, beyond, cells in product(((ROW,), (ROW, ROW)), (False, True), ((0,), (0, 10)))
    )
    yield from (Steps((1, 2)), FirstDigits(0, (4,)), FirstDigits(0, (4, 5)), CountsTo(0, (2, 3)))
    yield from (Apart(counts, filled) for counts in ((1,), (2, 3)) for filled in ((), ((1, 2), (3, 4))))
    yield from (HeldByRest(HouseRef("windows", 1, 0, "rows"), 4, 0, settled) for settled in (False, True))


def reasons() -> Iterator[tuple[Reason, tuple[Candidate, ...]]]:
    """Every claim as each technique makes it, or as marks of every form make it, with what goes."""
    for claim in claims():
        placed = isinstance(claim, LastCell | HiddenSingle | NakedSingle | Fixed | FromProof)
        removed = () if placed else REMOVED
        in_mark = getattr(claim, "house", ROW) is None
        for technique in TECHNIQUES.get(type(claim), ()):
            yield Reason(technique, MARKS[1] if in_mark else None, claim), removed
        if type(claim) not in TECHNIQUES or isinstance(claim, NakedSubset | SeenByAll | Locked):
            yield from ((Reason(MARK, mark, claim), removed) for mark in MARKS)
        if isinstance(claim, SeenByAll | Reached):
            yield from ((Reason(MARK, MarkRef.whole(kind), claim), removed) for kind in ("king", "knight"))


SINGLES = (LastCell(ROW, 0, 4), HiddenSingle(BOX, 0, 4), NakedSingle(0, 4))
BOOLS = (False, True)


def utterances() -> Iterator[Utterance]:
    """Every type of sentence, in each of its varieties."""
    yield from (
        Table(9, givens, regions) for givens in (0, 1, 24) for regions in ("boxes", "irregular", "none", "holes")
    )
    yield from (Table(9, givens, "overlap", grids) for givens in (0, 1, 24) for grids in (2, 5))
    yield RuleSaid("Digits rise.")
    for turn in ("half", "left-right", "top-bottom", "falling", "rising", "quarter"):
        yield from (Symmetry(turn, cycles) for cycles in ((), ((1, 9), (2, 8)), ((1, 2, 3),)))
    yield from (
        Introduction("Hike", stuck, longest, crux_at, at_start, bottlenecks, choice)
        for stuck, longest, (crux_at, at_start), bottlenecks, choice in product(
            (0, 1, 2, 3), (2, 9), ((None, False), (24, False), (24, True)), BOOLS, (0, 3)
        )
    )
    for single in SINGLES:
        yield from (Places(single, last, first) for last, first in product(BOOLS, BOOLS))
        yield from (Leaves(single), Opens(single), WithImage(single, (80, 6)))
    for completes, chained, starts in product(BOOLS, BOOLS, BOOLS):
        bands = ("", "top", "middle", "bottom", "left", "centre", "right")
        yield from (Run(4, CELLS, completes, chained, band, starts) for band in bands)
    placed = ((0, 4), (10, 4), (20, 5))
    yield from (Fills(ROW, placed), RunWithImages(4, CELLS, 6, (60, 70, 80)), RunWithImages(4, CELLS, 4, (60, 70, 80)))
    for (struck, marked), starts in product(product(BOOLS, BOOLS), BOOLS):
        for single in SINGLES[:2]:
            assert not isinstance(single, NakedSingle)
            yield from (SeenInHouse(single, lookers, struck, marked, starts) for lookers in ((), (40,), (40, 50)))
    why = Reason(MARK, MARKS[0], Bounds(((0, 2, 3),))), Reason("naked-pair", None, NakedSubset((0, 1), (1, 2), ROW))
    for holders in (((ROW, (1, 2)), (None, (3,))), ((None, (1,)), (ROW, (2,)))):
        yield SeenInCell(SINGLES[2], holders, ((None, (5,)), (why[0], (6,)), (why[1], (7, 8))))
    yield StartsHere()
    yield from (Fixes(kind, marks, placed[:count]) for kind in ("cage", "king") for marks, count in ((1, 1), (2, 3)))
    yield TakenFromProof(placed)
    yield from (FallsIntoPlace(placed, short) for short in BOOLS)
    yield from (Few(40, singles, naked, crux) for singles, naked, crux in product((1, 2), BOOLS, BOOLS))
    for start, crux in product(BOOLS, BOOLS):
        yield from (Stuck(40, start, crux, needs) for needs in ((why[0], why[1], why[1]), *((),) * (not crux)))
    yield from (Aim(single, rivals) for single in SINGLES[1:] for rivals in (((10, 4),), ((0, 5), (0, 6))))
    for reason, removed in reasons():
        if removed:
            yield Eliminates(reason, removed)
            yield Eliminates(reason, removed[:1])
        if reason.technique != MARK:
            yield Names(reason)
    yield SameHolds(why[0], REMOVED)
    yield from (BySymmetry(removed, opens) for removed, opens in ((REMOVED, None), (REMOVED, (0, 4)), ((), (0, 4))))
    yield from (
        WhatIfsFollow(5, house=ROW, digit=4),
        WhatIfsFollow(5, mark=MARKS[0]),
        WhatIfsFollow(5, kind="cage"),
        WhatIfsFollow(5, tried_digit=4),
        WhatIfsFollow(5, tried_cell=0),
        WhatIfsFollow(5, tried_house=ROW),
        WhatIfsFollow(5),
    )
    yield from (MoreAlike(count, REMOVED) for count in (1, 4))
