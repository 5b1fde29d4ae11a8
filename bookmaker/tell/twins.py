"""Steps that are mirror images of each other, to be told in one breath.

In: a path and a mirror of its puzzle. Out: for every step its twin, if the path has it; and steps put in an order in
which twins stand together.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from bookmaker.grade.mirror import Mirror
from bookmaker.grade.model import SolvePath
from bookmaker.puzzle.position import Candidate
from bookmaker.rules.common.wording import digits_listed, listed
from bookmaker.tell.trail import Told


def twins_of(path: SolvePath, mirror: Mirror | None) -> dict[int, int]:
    """The numbers of the steps that do the same to the image, both ways; a step that is its own image has no twin."""
    if mirror is None:
        return {}

    def image(pairs: Iterable[Candidate]) -> frozenset[Candidate]:
        return frozenset((mirror.cells[cell], mirror.digits[digit]) for cell, digit in pairs)

    by_pairs = {(frozenset(step.placed), frozenset(step.removed)): index for index, step in enumerate(path.steps)}
    twins = {}
    for index, step in enumerate(path.steps):
        other = by_pairs.get((image(step.placed), image(step.removed)), index)
        if other != index:
            twins[index] = other
    return twins


def together(steps: Sequence[Told], twins: Mapping[int, int]) -> list[Told]:
    """The steps, each followed by its twin if that can be taken as early."""
    by_number = {step.index: step for step in steps}
    order: dict[int, Told] = {}
    for step in steps:
        order.setdefault(step.index, step)
        twin = by_number.get(twins.get(step.index, -1))
        if twin and twin.since <= step.index:
            order.setdefault(twin.index, twin)
    return list(order.values())


def mirror_said(mirror: Mirror) -> str:
    """“by a half turn, with 1 and 9 exchanged, the puzzle maps onto itself”, as a clause."""
    swaps = [cycle for cycle in mirror.swapped if len(cycle) == 2]
    rounds = [cycle for cycle in mirror.swapped if len(cycle) > 2]
    said = [f"{', '.join(digits_listed(cycle) for cycle in swaps)} exchanged"] if swaps else []
    said += [f"{digits_listed(cycle)} going round" for cycle in rounds]
    with_digits = f", with {listed(said)}," if said else ""
    return f"by {mirror.name}{with_digits} the puzzle maps onto itself, so most of its steps have a twin"
