"""Lines that run along the same stretch between two cells, laid beside each other.

In: the lines of all rules. Out: a lane for each line that shares a stretch with another. A line keeps its lane from end
to end, so that it does not swerve; where it alone runs through a cell it is a little off the middle.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import combinations, pairwise

from bookmaker.rules.common.places import Along, Lane

GAP = 0.05
"""White between two lines side by side, in cells."""

BROADEST = 0.7
"""So much of a cell's width may be taken by lines side by side; more of them are made narrower."""

MOST = 9
"""Lanes that are tried at most."""

PATIENCE = 5000
"""Places tried before one lane more is taken."""

Clashes = dict[int, dict[int, set[bool]]]
"""For each line those that share a stretch with it, and whether they run the same way there."""


def lanes(lines: Sequence[tuple[int, Along]]) -> list[Lane]:
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
        given |= _laid_out(sorted(group), clashes, firm, half)
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


def _laid_out(group: Sequence[int], clashes: Clashes, firm: set[int], half: dict[int, float]) -> dict[int, Lane]:
    pitch = max(half[a] + half[b] for a in group for b in clashes[a]) + GAP
    counts = range(3, MOST + 1, 2) if firm else range(2, MOST + 1)
    count, number = next(
        (
            (count, number)
            for count in counts
            if (number := _numbered(group, clashes, count, dict.fromkeys(firm, count // 2)))
        ),
        (len(group), {one: at for at, one in enumerate(group)}),
    )
    broad = (count - 1) * pitch + 2 * max(half[one] for one in group)
    scale = min(1.0, BROADEST / broad)
    middle = (count - 1) / 2
    return {one: Lane((number[one] - middle) * pitch * scale, scale) for one in group}


def _numbered(group: Sequence[int], clashes: Clashes, count: int, fixed: dict[int, int]) -> dict[int, int] | None:
    """A lane number for each line; seen from one that runs the other way, lanes are numbered from the other side."""
    number = dict(fixed)
    free = [one for one in group if one not in fixed]

    def fits(one: int, lane: int) -> bool:
        return all(
            (not onward or lane != number[other]) and (onward or lane != count - 1 - number[other])
            for other, ways in clashes[one].items()
            if other in number
            for onward in ways
        )

    def place(at: int) -> bool:
        if at == len(free):
            return True
        for lane in range(count):
            if next(patience, None) is not None and fits(free[at], lane):
                number[free[at]] = lane
                if place(at + 1):
                    return True
                del number[free[at]]
        return False

    patience = iter(range(PATIENCE))
    return number if place(0) else None
