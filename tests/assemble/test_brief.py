"""Briefs: what they say, and what is wrong with one, in words and at its place."""

from __future__ import annotations

from itertools import pairwise, permutations
from pathlib import Path
from random import Random

import pytest

from bookmaker.assemble.amounts import Amount, read_amount
from bookmaker.assemble.choose import choose
from bookmaker.assemble.order import ordered
from bookmaker.source.diagnostics import BookErrors, Collector, Place
from bookmaker.source.placed import Word
from tests.assemble.pools import card, plan_of, pool

AMOUNTS = {
    "3": Amount(3, 3),
    "exactly 3": Amount(3, 3),
    "at least 4": Amount(4, None),
    "At  most 5": Amount(0, 5),
    "2 to 5": Amount(2, 5),
    "none": Amount(0, 0),
}


@pytest.mark.parametrize("text", AMOUNTS)
def test_amounts(text: str) -> None:
    collector = Collector()
    assert read_amount(Word(Place("b"), text), "it", collector) == AMOUNTS[text]
    assert not collector.found


WRONG = {
    "no brief": ("book: {title: T}", "missing-key", "book"),
    "no puzzles": ("brief: {title: T}", "missing-key", "{title"),
    "no title": ("brief: {puzzles: 3}", "missing-key", "{puzzles"),
    "unknown": ("brief: {title: T, puzzles: 3, banda: {}}", "unknown-key", "banda"),
    "amount": ("brief: {title: T, puzzles: many}", "bad-amount", "many"),
    "backwards": ("brief: {title: T, puzzles: 5 to 2}", "bad-amount", "5 to 2"),
    "band": ("brief: {title: T, puzzles: 3, bands: {Strol: 1}}", "unknown-name", "Strol"),
    "kind": ("brief: {title: T, puzzles: 3, kinds: {cagge: 1}}", "unknown-name", "cagge"),
    "setter": ("brief: {title: T, puzzles: 3, setters: {Wik: 1}}", "unknown-name", "Wik"),
    "id": ("brief: {title: T, puzzles: 3, must: [p99]}", "unknown-id", "p99"),
    "state": ("brief: {title: T, puzzles: 3, permission: lent}", "unknown-word", "lent"),
    "shown": ("brief: {title: T, puzzles: 3, shown: in spring}", "bad-date", "in spring"),
    "range": ("brief: {title: T, puzzles: 3, difficulty: Climb to Stroll}", "bad-difficulty", "Climb"),
    "curve": ("brief: {title: T, puzzles: 3, curve: falling}", "bad-curve", "falling"),
    "wish": ("brief: {title: T, puzzles: 3, prefer: [best]}", "unknown-word", "best"),
    "apart": ("brief: {title: T, puzzles: 3, apart: bands}", "unknown-word", "bands"),
    "rather": ("brief: {title: T, puzzles: 3, rather: [unprinted]}", "unknown-word", "unprinted"),
    "book": ("brief: {title: T, puzzles: 3}\nbook: {order: effort}", "unknown-key", "effort"),
    "nights": ("brief: {title: T, chapters: [{title: Night, times: 3, puzzles: 1}]}", "no-number", "Night"),
}


@pytest.mark.parametrize("name", WRONG)
def test_each_slip_is_told_at_its_place(name: str, tmp_path: Path) -> None:
    text, code, at = WRONG[name]
    with pytest.raises(BookErrors) as found:
        plan_of(text, pool(12, 1), tmp_path)
    (diagnostic,) = found.value.diagnostics
    line = text.splitlines()[diagnostic.place.line - 1]
    assert (diagnostic.code, line[diagnostic.place.column - 1 :][: len(at)]) == (code, at)


def test_none_of_what_is_not_there_is_kept_anyway(tmp_path: Path) -> None:
    plan = plan_of("brief: {title: T, puzzles: 3, tags: {fog: none}}", pool(12, 1), tmp_path)
    assert [demand.words for demand in plan.demands] == ["puzzles: 3"]


def test_what_is_rather_wanted_gives_way(tmp_path: Path) -> None:
    text = "brief: {title: T, puzzles: 3, unprinted: yes, must: p1, never: p1, rather: [never, unprinted]}"
    plan = plan_of(text, pool(12, 1), tmp_path)
    assert {demand.quoted: demand.rather for demand in plan.demands} == {
        "puzzles: 3": False,
        "unprinted: yes": True,
        "must: p1": False,
        "never: p1": True,
    }
    found = choose(plan)
    assert found is not None
    assert "p1" in {plan.cards[at].id for at in found.chosen}


@pytest.mark.parametrize("seed", range(8))
def test_order_rises_and_keeps_apart_what_is_alike(seed: int) -> None:
    """The fewest alike neighbours of all orders that never step down a band, found by trying all orders."""
    rng = Random(seed)
    cards = [card(number, rng) for number in range(7)]
    order, alike = ordered(cards, range(7), ("setters",))
    assert sorted(order) == list(range(7))
    assert [cards[at].band for at in order] == sorted(each.band for each in cards)

    def alike_in(way: tuple[int, ...]) -> int:
        return sum(bool(cards[a].setter) and cards[a].setter == cards[b].setter for a, b in pairwise(way))

    def rises(way: tuple[int, ...]) -> bool:
        return all(cards[a].band <= cards[b].band for a, b in pairwise(way))

    assert alike == alike_in(order) == min(alike_in(way) for way in permutations(range(7)) if rises(way))
