"""Who stands where: the claims of all rules of a puzzle, settled together, so that no mark lies on another.

In: a grid and the claims of each rule. Out: the places of each rule. Settled in this order, each with an eye to what
came before: lines, marks around corners, marks on borders, figures and signs in cells. The order of rules decides
between equals, so that the same manifest is drawn the same way.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.drawing.lanes import lanes
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
    Pair,
    PlaceClaim,
    Places,
    Seat,
)

GAP = 0.045
"""White between two marks on one border, in cells."""

EDGE = 0.06
"""Marks on a border keep so far from its ends, where cell lines cross, in cells."""

SCALES = (1.0, 0.92, 0.85, 0.78, 0.7, 0.62, 0.56, 0.5, 0.45)
"""How large marks on a border may be, where several have to share it."""

INSETS = (0.13, 0.185, 0.24, 0.295)
"""Where outlines of areas that overlap run, from the cells' edges; the outermost place is that of cages."""

INNERMOST, APART = 0.19, 0.075
"""Of shapes around the middle of one cell: the least radius, and how far one lies inside the other, in cells."""

Span = tuple[float, float]


def allot(grid: Grid, claims: Sequence[Iterable[PlaceClaim]]) -> list[Places]:
    """The places of each rule, in the order of the rules."""
    every = [(rule, claim) for rule, asked in enumerate(claims) for claim in asked]
    if len(every) < 2:
        return [FREE] * len(claims)
    made = [Places({}, {}, {}, {}, {}, {}) for _ in claims]
    lines = [(rule, claim) for rule, claim in every if isinstance(claim, Along)]
    rings = {_corner(grid, claim.cells): claim.radius for _, claim in every if isinstance(claim, OnCorner)}
    taken: dict[int, list[Box]] = {}
    for _, claim in every:
        if isinstance(claim, OnCorner):
            for cell, box in zip(claim.cells, _quarters(claim.radius), strict=True):
                taken.setdefault(cell, []).append(box)
    signs: dict[Pair, list[Span]] = {}
    for (rule, line), lane in zip(lines, lanes(grid, lines), strict=True):
        if lane != Lane():
            made[rule].lanes[line.chain] = lane
        for pair in line.signs:
            _sign(grid, line, pair, lane, rings, made[rule], signs, taken)
    _seat_all(grid, every, rings, signs, taken, made)
    _box_all(every, taken, made)
    _nest(every, made)
    _inset(every, made)
    return made


def _corner(grid: Grid, cells: Sequence[int]) -> Pair:
    """The corner that four cells share, or two that touch there: lines above it and at its left."""
    return max(map(grid.row, cells)), max(map(grid.column, cells))


def _quarters(radius: float) -> Iterator[Box]:
    """What a mark around a corner takes of the four cells there."""
    for top, bottom in ((1 - radius, 1.0), (0.0, radius)):
        for left, right in ((1 - radius, 1.0), (0.0, radius)):
            yield Box(left, top, right, bottom)


def _sign(
    grid: Grid,
    line: Along,
    pair: Pair,
    lane: Lane,
    rings: dict[Pair, float],
    made: Places,
    signs: dict[Pair, list[Span]],
    taken: dict[int, list[Box]],
) -> None:
    """Where a line has a sign of its own between two cells: it gives way to a ring, and what is on the border to it."""
    before, after = next(step for step in pairwise(line.chain) if {*step} == {*pair})
    across, down = grid.column(after) - grid.column(before), grid.row(after) - grid.row(before)
    if across and down:
        radius = rings.get(_corner(grid, pair))
        if radius is not None:
            made.ringed[min(pair), max(pair)] = radius
        return
    middle = lane.aside * (across - down)  # to the right of the way is down or up, left or right
    half = line.sign * lane.scale
    signs.setdefault((min(pair), max(pair)), []).append((middle - half, middle + half))
    _take(taken, (min(pair), max(pair)), middle, half, half)


def _seat_all(
    grid: Grid,
    every: Sequence[tuple[int, PlaceClaim]],
    rings: dict[Pair, float],
    signs: dict[Pair, list[Span]],
    taken: dict[int, list[Box]],
    made: Sequence[Places],
) -> None:
    """Marks on one border stand side by side along it."""
    groups: dict[Pair, list[tuple[int, OnBorder]]] = {}
    for rule, claim in every:
        if isinstance(claim, OnBorder):
            groups.setdefault(claim.pair, []).append((rule, claim))
    for pair, group in groups.items():
        upright = pair[1] == pair[0] + 1
        row, column = _corner(grid, pair)
        begin, end = (row, column), (row + 1, column) if upright else (row, column + 1)
        start, stop = (rings[at] + 0.02 if at in rings else EDGE for at in (begin, end))
        seats = _seats([claim.long for _, claim in group], (start - 0.5, 0.5 - stop), signs.get(pair, []))
        for (rule, claim), seat in zip(group, seats, strict=True):
            if seat != Seat():
                made[rule].seats[pair] = seat
            _take(taken, pair, seat.along, claim.long * seat.scale / 2, claim.wide * seat.scale / 2)


def _take(taken: dict[int, list[Box]], pair: Pair, along: float, half: float, deep: float) -> None:
    """Note what something on the border of two cells takes of both: `half` to each side along it, `deep` across."""
    low, high = 0.5 + along - half, 0.5 + along + half
    upright = pair[1] == pair[0] + 1
    for cell, near, far in ((pair[0], 1 - deep, 1.0), (pair[1], 0.0, deep)):
        taken.setdefault(cell, []).append(Box(near, low, far, high) if upright else Box(low, near, high, far))


def _seats(longs: Sequence[float], room: Span, signs: Sequence[Span]) -> list[Seat]:
    """Places in a row, as large and as near to the middle as there is room beside the signs of lines."""
    # Where there is no room beside all signs, the widest give way first: ticks across a tube are seen beside a mark.
    left = sorted(signs, key=lambda sign: sign[1] - sign[0])
    for free in [_without(room, left[:count]) for count in range(len(left), -1, -1)]:
        for scale in SCALES:
            for shares in _shares(len(longs), len(free)):
                placed = _packed(longs, shares, free, scale)
                if placed is not None:
                    return placed
    scale = SCALES[-1]
    whole = scale * sum(longs) + GAP * (len(longs) - 1)
    return _row(longs, -whole / 2, scale)


def _without(room: Span, signs: Sequence[Span]) -> list[Span]:
    """What the signs leave of the room."""
    free, start = [], room[0]
    for low, high in sorted(signs):
        free.append((start, low - GAP))
        start = high + GAP
    free.append((start, room[1]))
    return [(low, high) for low, high in free if high > low]


def _shares(count: int, parts: int) -> list[tuple[int, ...]]:
    """How many marks may stand in each part of a border, the most even first, more of them at the end."""
    if parts <= 1:
        return [(count,)] * parts
    ways = [(first, *rest) for first in range(count + 1) for rest in _shares(count - first, parts - 1)]
    return sorted(ways, key=lambda way: (max(way) - min(way), way))


def _packed(longs: Sequence[float], shares: Sequence[int], free: Sequence[Span], scale: float) -> list[Seat] | None:
    """Each part of the border with its share of the marks, in order and near the middle; None if one is too short."""
    seats: list[Seat] = []
    for count, (low, high) in zip(shares, free, strict=True):
        here = longs[len(seats) : len(seats) + count]
        whole = scale * sum(here) + GAP * (count - 1)
        if count and whole > high - low + 1e-9:
            return None
        seats += _row(here, max(low, min(-whole / 2, high - whole)), scale)
    return seats


def _row(longs: Sequence[float], start: float, scale: float) -> list[Seat]:
    seats = []
    for long in longs:
        middle = start + scale * long / 2
        seats.append(Seat(0.0 if abs(middle) < 1e-9 else middle, scale))
        start += scale * long + GAP
    return seats


def _box_all(every: Sequence[tuple[int, PlaceClaim]], taken: dict[int, list[Box]], made: Sequence[Places]) -> None:
    """Figures and signs in cells: who has the fewest boxes to choose from chooses first."""
    asked = [(rule, claim) for rule, claim in every if isinstance(claim, InCell)]
    for rule, claim in sorted(asked, key=lambda one: (one[1].late, len(one[1].boxes))):
        here = taken.setdefault(claim.cell, [])
        box = min(claim.boxes, key=lambda box: round(sum(map(box.meets, here)), 4))
        made[rule].boxes[claim] = box
        here.append(box)


def _nest(every: Sequence[tuple[int, PlaceClaim]], made: Sequence[Places]) -> None:
    """Shapes around the middle of one cell lie inside each other: signs of the cell, ends of lines, filled ends."""
    cells: dict[int, dict[int, Around]] = {}
    for rule, claim in every:
        if isinstance(claim, Around):
            cells.setdefault(claim.cell, {}).setdefault(rule, claim)
    for cell, shapes in cells.items():
        inside = 1.0
        for rule in sorted(shapes, key=lambda rule: shapes[rule].depth) if len(shapes) > 1 else ():
            radius = max(INNERMOST, min(shapes[rule].radius, inside - APART))
            made[rule].radii[cell], inside = radius, radius - shapes[rule].rim


def _inset(every: Sequence[tuple[int, PlaceClaim]], made: Sequence[Places]) -> None:
    """Outlines of areas that share a cell run inside each other."""
    areas = [(rule, claim, {*claim.cells}) for rule, claim in every if isinstance(claim, Outlined)]
    given: list[float] = []
    for at, (rule, claim, cells) in enumerate(areas):
        near = [other for other, (_, _, theirs) in enumerate(areas) if other != at and cells & theirs]
        inset = claim.inset
        if near and not claim.firm:
            used = {given[other] for other in near if other < at}
            inset = next((lane for lane in INSETS if lane not in used), INSETS[-1])
            made[rule].insets[claim.cells] = inset
        given.append(inset)
