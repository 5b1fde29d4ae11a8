"""Lines that run along the same stretch between two cells, laid beside each other.

In: the lines of all rules. Out: a lane for each line that shares a stretch with another. A line keeps its lane from end
to end, so that it does not swerve; where it alone runs through a cell it is a little off the middle.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from itertools import combinations, islice, pairwise, product

from bookmaker.display.items import Point
from bookmaker.puzzle.grid import Grid
from bookmaker.rules.common.drawing.places import Along, Lane
from bookmaker.rules.common.drawing.strokes import moved_aside

GAP = 0.05
"""White between two lines side by side, in cells."""

BROADEST = 0.7
"""So much of a cell's width may be taken by lines side by side; more of them are made narrower."""

NARROWEST = 0.5
"""A line made narrower than that is no longer told from others: where more want to run along a stretch, they hide each
other, and whoever composes the puzzle is told."""

MOST = 9
"""Lanes that are tried at most."""

PATIENCE, COMPARED = 5000, 24
"""Places tried before one lane more is taken, and how many ways to share out the lanes are compared."""

Clashes = dict[int, dict[int, set[bool]]]
"""For each line those that share a stretch with it, and whether they run the same way there."""


def lanes(grid: Grid, lines: Sequence[tuple[int, Along]]) -> list[Lane]:
    """A lane for each line, said with the number of its rule. Those of one bundle have one lane."""
    bundles: dict[tuple[int, int], int] = {}
    member = []
    for at, (rule, line) in enumerate(lines):
        bundle = (rule, line.bundle) if line.bundle >= 0 else (-1, at)
        member.append(bundles.setdefault(bundle, len(bundles)))
    clashes = _clashes(lines, member)
    given: dict[int, Lane] = {}
    for group in _groups(clashes):
        firm = {member[at] for at, (_, line) in enumerate(lines) if line.firm and member[at] in group}
        half = {one: max(line.half for at, (_, line) in enumerate(lines) if member[at] == one) for one in group}
        ways = {one: [_way(grid, line) for at, (_, line) in enumerate(lines) if member[at] == one] for one in group}
        given |= _laid_out(sorted(group), clashes, firm, half, ways)
    return [given.get(one, Lane()) for one in member]


def _clashes(lines: Sequence[tuple[int, Along]], member: Sequence[int]) -> Clashes:
    users: dict[tuple[int, int], set[tuple[int, bool]]] = {}
    for one, (_, line) in zip(member, lines, strict=True):
        for a, b in pairwise(line.chain):
            users.setdefault((min(a, b), max(a, b)), set()).add((one, a < b))
    clashes: Clashes = {}
    for stretch in users.values():
        for (one, onward), (other, along) in combinations(sorted(stretch), 2):
            if one != other:
                for a, b in ((one, other), (other, one)):
                    clashes.setdefault(a, {}).setdefault(b, set()).add(onward == along)
    return clashes


def _groups(clashes: Clashes) -> Iterator[set[int]]:
    """Lines that hang together by shared stretches."""
    left = dict.fromkeys(sorted(clashes))
    while left:
        group, edge = set[int](), [next(iter(left))]
        while edge:
            one = edge.pop()
            if one in left:
                del left[one]
                group.add(one)
                edge += clashes[one]
        yield group


def _way(grid: Grid, line: Along) -> list[Point]:
    return [(float(grid.column(cell)), float(grid.row(cell))) for cell in line.chain]


def _laid_out(
    group: Sequence[int], clashes: Clashes, firm: set[int], half: dict[int, float], ways: dict[int, list[list[Point]]]
) -> dict[int, Lane]:
    """As few lanes as do; among the ways to share them out, the one in which the lines cross least."""
    between, outer = max(half[a] + half[b] for a in group for b in clashes[a]), 2 * max(half[one] for one in group)
    made = {one: Lane() for one in group}
    for count in range(3, MOST + 1, 2) if firm else range(2, MOST + 1):
        # The white between lines stays as it is where they are made narrower.
        scale = max(NARROWEST, min(1.0, (BROADEST - (count - 1) * GAP) / ((count - 1) * between + outer)))
        middle, pitch = (count - 1) / 2, min(between * scale + GAP, (BROADEST - outer * scale) / (count - 1))
        fewest = None
        for number in islice(_numbered(group, clashes, count, dict.fromkeys(firm, count // 2)), COMPARED):
            asides = {one: (number[one] - middle) * pitch for one in group}
            crossings = _crossings({one: [moved_aside(way, asides[one]) for way in ways[one]] for one in group})
            if fewest is None or crossings < fewest:
                fewest, made = crossings, {one: Lane(asides[one], scale) for one in group}
        if fewest is not None:
            break
    return made


def _crossings(ways: Mapping[int, Sequence[Sequence[Point]]]) -> int:
    """How often lines of different members cross."""
    return sum(
        _cross(a, b, c, d)
        for one, other in combinations(ways, 2)
        for way, beside in product(ways[one], ways[other])
        for (a, b), (c, d) in product(pairwise(way), pairwise(beside))
    )


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Do the stretches from a to b and from c to d cross, or touch?"""

    def side(p: Point, q: Point, r: Point) -> float:
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    return side(a, b, c) * side(a, b, d) <= 0 and side(c, d, a) * side(c, d, b) <= 0


def _numbered(group: Sequence[int], clashes: Clashes, count: int, fixed: dict[int, int]) -> Iterator[dict[int, int]]:
    """Lane numbers for the lines; seen from one that runs the other way, lanes are numbered from the other side."""
    number = dict(fixed)
    free = [one for one in group if one not in fixed]
    patience = iter(range(PATIENCE))

    def fits(one: int, lane: int) -> bool:
        return all(
            (not onward or lane != number[other]) and (onward or lane != count - 1 - number[other])
            for other, ways in clashes[one].items()
            if other in number
            for onward in ways
        )

    def place(at: int) -> Iterator[dict[int, int]]:
        if at == len(free):
            yield dict(number)
            return
        for lane in range(count):
            if next(patience, None) is not None and fits(free[at], lane):
                number[free[at]] = lane
                yield from place(at + 1)
                del number[free[at]]

    return place(0)
