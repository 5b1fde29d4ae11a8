"""Claims settled together: whoever meets gets a place of its own, whoever is alone stands where it likes best."""

from __future__ import annotations

from itertools import combinations, pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bookmaker.puzzle.grid import CLASSIC, Grid
from bookmaker.rules import kinds
from bookmaker.rules.common.drawing.allot import EDGE, allot
from bookmaker.rules.common.drawing.lanes import BROADEST, GAP, lanes
from bookmaker.rules.common.drawing.places import (
    FREE,
    Along,
    Around,
    Box,
    InCell,
    Lane,
    OnBorder,
    OnCorner,
    Outlined,
    Places,
    Seat,
)
from tests.rules.stacks import PAIRS, TWIN, WAY, on, stacked

LEVEL = on("22 23 24 25")


def untouched(places: Places) -> bool:
    return places == FREE


@pytest.mark.parametrize("kind", kinds())
def test_a_kind_alone_moves_only_where_its_own_marks_meet(kind: str) -> None:
    if kind in ("extra-region", "limits"):
        pytest.skip("its stack has regions that overlap, and limits that are written in one of several ways")
    (places,) = allot(CLASSIC, [[*stacked(kind).claims(CLASSIC)]])
    assert not places.seats and not places.lanes and not places.insets and not places.radii and not places.ringed
    assert all(box == claim.boxes[0] for claim, box in places.boxes.items())


def seats(longs: list[float], corners: tuple[tuple[int, ...], ...] = (), signs: float = 0.0) -> list[Seat]:
    """Where marks of these lengths stand on the border between r2c2 and r2c3, each of a rule of its own."""
    pair = PAIRS[0]
    claims: list[list[OnBorder | OnCorner | Along]] = [[OnBorder(pair, long, 0.2)] for long in longs]
    claims.append([OnCorner(cells, 0.26) for cells in corners])
    if signs:
        claims.append([Along(WAY, 0.05, (pair,), signs)])
    return [places.seats.get(pair, Seat()) for places in allot(CLASSIC, claims)[: len(longs)]]


TOP, BOTTOM = on("12 13 22 23"), on("22 23 32 33")


@settings(max_examples=200, deadline=None)
@given(
    st.lists(st.sampled_from([0.23, 0.25, 0.28, 0.53]), min_size=1, max_size=4),
    st.sampled_from([(), (TOP,), (BOTTOM,), (TOP, BOTTOM)]),
    st.sampled_from([0.0, 0.085, 0.15]),
)
def test_marks_on_a_border_stand_beside_each_other(
    longs: list[float], corners: tuple[tuple[int, ...], ...], sign: float
) -> None:
    given = seats(longs, corners, sign)
    spans = [
        (seat.along - seat.scale * long / 2, seat.along + seat.scale * long / 2)
        for long, seat in zip(longs, given, strict=True)
    ]
    assert [*spans] == sorted(spans), "in the order of the rules"
    assert all(after[0] - before[1] >= 0.04 for before, after in pairwise(spans))
    assert len({seat.scale for seat in given}) == 1
    low = -0.5 + (0.28 if TOP in corners else EDGE)
    high = 0.5 - (0.28 if BOTTOM in corners else EDGE)
    if sum(longs) * 0.45 + 0.045 * (len(longs) - 1) <= high - low:
        assert spans[0][0] >= low - 1e-9 and spans[-1][1] <= high + 1e-9
    roomy = high - low > sum(longs) * 0.45 + 2 * sign + 0.4
    if sign and roomy:
        assert all(end <= -sign - 0.04 or start >= sign + 0.04 for start, end in spans)


def test_a_mark_alone_stands_in_the_middle_and_two_around_it() -> None:
    assert seats([0.25]) == [Seat()]
    one, other = seats([0.25, 0.25])
    assert one.along == pytest.approx(-other.along) and one.along < 0
    assert one.scale == other.scale == 1.0


def test_marks_give_way_to_the_sign_of_a_line_and_to_rings() -> None:
    (beside,) = seats([0.25], signs=0.1)
    assert abs(beside.along) == pytest.approx(0.1 + 0.045 + 0.125)
    (away,) = seats([0.53], (TOP,))
    assert away.along > 0 or away.scale < 1


def laid(*chains: tuple[int, ...], half: float = 0.1) -> list[Lane]:
    return lanes(CLASSIC, [(rule, Along(chain, half)) for rule, chain in enumerate(chains)])


def test_lines_that_share_no_stretch_stay_where_they_are() -> None:
    assert laid(LEVEL, on("33 34 35"), on("12 23 34")) == [Lane()] * 3


def sides(lane: Lane, chain: tuple[int, ...], grid: Grid = CLASSIC) -> dict[tuple[int, int], float]:
    """How far to the left or up of the middle a line lies at each of its stretches, seen from the lesser cell."""
    return {(min(step), max(step)): lane.aside if step[0] < step[1] else -lane.aside for step in pairwise(chain)}


@pytest.mark.parametrize("other", [WAY, WAY[::-1], TWIN, WAY[1:4], WAY[4:1:-1], on("24 34 45"), on("34 24 13")])
def test_lines_along_one_stretch_lie_apart_whichever_way_they_run(other: tuple[int, ...]) -> None:
    one, two = laid(WAY, other)
    first, second = sides(one, WAY), sides(two, other)
    shared = first.keys() & second.keys()
    assert shared
    assert all(abs(first[at] - second[at]) >= 0.2 + GAP - 1e-9 for at in shared)


def test_many_lines_are_made_narrower_and_keep_to_their_cells() -> None:
    given = laid(LEVEL, LEVEL, LEVEL, LEVEL, half=0.1)
    asides = sorted(lane.aside for lane in given)
    (scale,) = {lane.scale for lane in given}
    assert scale < 1
    assert all(after - before >= 0.2 * scale + GAP - 1e-9 for before, after in pairwise(asides))
    assert asides[-1] - asides[0] + 0.2 * scale <= BROADEST + 1e-9


def test_a_line_takes_the_side_to_which_it_leaves() -> None:
    """Both run to the right; one turns up and the other down, and they do not cross."""
    up, down = on("22 23 24 14"), on("22 23 24 34")
    one, other = laid(up, down)
    assert one.aside < 0 < other.aside
    other, one = laid(down, up)
    assert one.aside < 0 < other.aside


def test_a_firm_line_keeps_to_the_middle_and_a_bundle_together() -> None:
    firm, beside = lanes(CLASSIC, [(0, Along(on("11 22 33"), 0.02, firm=True)), (1, Along(on("22 33"), 0.1))])
    assert firm.aside == 0 and abs(beside.aside) >= 0.12 + GAP - 1e-9
    same = lanes(CLASSIC, [(0, Along(LEVEL, 0.15, bundle=0)), (0, Along(LEVEL[1:], 0.15, bundle=0))])
    assert same == [Lane(), Lane()]


def test_figures_take_a_box_that_is_free() -> None:
    (cell,) = on("22")
    corner, beside = Box(0.05, 0.05, 0.3, 0.25), Box(0.3, 0.05, 0.55, 0.25)
    one, other = InCell(cell, (corner, beside)), InCell(cell, (corner,))
    first, second = allot(CLASSIC, [[one], [other]])
    assert (first.boxes[one], second.boxes[other]) == (beside, corner), "who has no choice chooses first"
    ring = OnCorner(on("11 12 21 22"), 0.26)
    assert allot(CLASSIC, [[one], [ring]])[0].boxes[one] == beside
    assert allot(CLASSIC, [[one]])[0].boxes.get(one, corner) == corner


def test_outlines_and_rings_lie_inside_each_other() -> None:
    areas = [Outlined(on("22 23"), 0.075, firm=True), Outlined(on("23 24"), 0.12), Outlined(on("23 33"), 0.1)]
    insets = [
        places.insets.get(area.cells, area.inset)
        for places, area in zip(allot(CLASSIC, [[area] for area in areas]), areas, strict=True)
    ]
    assert insets[0] == 0.075
    assert all(abs(one - other) >= 0.05 for one, other in combinations(insets, 2))
    (cell,) = on("22")
    shapes = [Around(cell, 0.36, 2), Around(cell, 0.425, 0), Around(cell, 0.39, 1)]
    radii = [places.radii[cell] for places in allot(CLASSIC, [[shape] for shape in shapes])]
    assert radii[1] > radii[2] > radii[0]
    assert all(abs(one - other) >= 0.07 for one, other in combinations(radii, 2))


def test_the_signs_of_a_line_move_off_a_ring_on_its_corner() -> None:
    pair = on("44 55")
    line, ring = Along(pair, 0.1, ((pair[0], pair[1]),), 0.1), OnCorner(on("44 45 54 55"), 0.26)
    places, _ = allot(CLASSIC, [[line], [ring]])
    assert places.ringed == {pair: 0.26}
