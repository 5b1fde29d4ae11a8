"""Relations read on boards, set against pairs of digits tried one by one; and when they have no more to say."""

from __future__ import annotations

import random
from itertools import product

import pytest

from bookmaker.logic.relations import Pairs
from bookmaker.solve.problem import Relation, relation

CELLS, DIGITS = 12, 9

KEEPS = {
    "rises": lambda a, b: a < b,
    "not neighbours": lambda a, b: abs(a - b) != 1,
    "far apart": lambda a, b: abs(a - b) >= 5,
    "double": lambda a, b: a == 2 * b or b == 2 * a,
    "if 3 then 7": lambda a, b: a != 3 or b == 7,
    "three low ones": lambda a, b: a > 3 or b <= a + 3,
}

DRAWN = "drawn by lot"


def drawn(name: str, rng: random.Random) -> Relation:
    pairs = [(one, other) for one, other in (rng.sample(range(CELLS), 2) for _ in range(rng.randint(1, 9)))]
    if name == DRAWN:
        below = [rng.sample(range(1, 11), 2) for _ in range(rng.randint(1, 6))]  # in or out of a stretch of digits
        beside = {a: rng.choice([*below, (1, 10)]) for a in range(1, 10)}

        def keeps(a: int, b: int) -> bool:
            first, after = beside[a]
            return first <= b < after if first < after else not after <= b < first

    else:
        keeps = KEEPS[name]
    return relation(pairs, DIGITS, ((a, b) for a, b in product(range(1, 10), repeat=2) if keeps(a, b)))


def boards_of(may: list[set[int]]) -> list[int]:
    return [sum(1 << cell for cell in range(CELLS) if digit in may[cell]) for digit in range(DIGITS + 1)]


def left_over(made: Relation, may: list[set[int]]) -> list[set[int]]:
    """What stays if pairs strike until none says anything more."""
    left = [set(digits) for digits in may]
    while True:
        before = [set(digits) for digits in left]
        for a, b in made.pairs:
            fits = [(x, y) for x in left[a] for y in left[b] if made.allowed[x] >> (y - 1) & 1]
            left[a], left[b] = {x for x, _ in fits}, {y for _, y in fits}
        if left == before:
            return left


@pytest.mark.parametrize("name", [*KEEPS, DRAWN])
def test_a_relation_strikes_what_its_pairs_strike(name: str) -> None:
    rng = random.Random(name)
    settled = 0
    for _ in range(300):
        made = drawn(name, rng)
        may = [set(rng.sample(range(1, 10), rng.randint(1, rng.choice((2, 9))))) for _ in range(CELLS)]
        boards, left = boards_of(may), left_over(made, may)
        struck = Pairs(made).strikes(boards)
        after = [board & ~gone for board, gone in zip(boards, struck or [0] * len(boards), strict=True)]
        if all(left):
            assert after == boards_of(left)
        else:  # once a cell is empty, how much more goes does not matter
            assert any(not any(board >> cell & 1 for board in after) for cell in range(CELLS))
        if Pairs(made).settled(boards):
            settled += 1
            assert left == may
        else:
            assert any(not made.allowed[x] >> (y - 1) & 1 for a, b in made.pairs for x in may[a] for y in may[b])
    assert settled or name == "double"  # of digits drawn at random, hardly any two are doubles
