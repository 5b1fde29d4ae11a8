"""The best collection, against all there are on small pools, and against another optimiser on larger ones."""

from __future__ import annotations

from itertools import combinations
from pathlib import Path
from random import Random

import pytest

from bookmaker.archive.cards import Card
from bookmaker.assemble.choose import choose, clash_of
from bookmaker.assemble.optimiser import solve
from bookmaker.assemble.plan import Choice, Demand, Plan
from bookmaker.assemble.program import model_of, newest_of, off_the_curve, scores_of, tie
from tests.assemble.other import solve_by_cp_sat
from tests.assemble.pools import drawn_brief, plan_of, pool

Value = tuple[int, ...]


def keeps(plan: Plan, chosen: tuple[int, ...], demand: Demand) -> bool:
    return Choice((chosen,)).keeps(demand)


def value(plan: Plan, chosen: tuple[int, ...]) -> Value:
    """What a collection is worth, plainly: first what it misses that was rather wanted, then each preference."""
    cards = [plan.cards[at] for at in chosen]
    choice = Choice((chosen,))
    rather = [sum(choice.missed(row) for row in demand.rows) for demand in plan.demands if demand.rather]
    worth = [sum(rather)] if any(demand.rather and demand.rows for demand in plan.demands) else []
    sums = [scores_of(plan, card, newest_of(plan)) for card in cards]
    for at, preference in enumerate(plan.preferences):
        match preference.wish:
            case "curve":
                curve = plan.parts[0].curve
                worth.append(off_the_curve(curve, [card.difficulty for card in cards]) if curve else 0)
            case "setters":
                worth.append(-len({card.setter for card in cards if card.setter}))
            case "kinds":
                worth.append(-len({card.kinds for card in cards}))
            case _:
                worth.append(sum(score[at] for score in sums))
    return (*worth, sum(map(tie, cards)))


def allowed(plan: Plan, chosen: tuple[int, ...]) -> bool:
    alike = all(len(group & set(chosen)) < 2 for group in plan.alike)
    return alike and all(demand.rather or keeps(plan, chosen, demand) for demand in plan.demands)


def by_brute_force(plan: Plan, size: int) -> list[tuple[Value, tuple[int, ...]]]:
    """Every collection of a size that the brief allows, the best first."""
    every = combinations(range(len(plan.cards)), size)
    return sorted((value(plan, chosen), chosen) for chosen in every if allowed(plan, chosen))


@pytest.mark.parametrize("seed", range(40))
def test_the_best_of_all_collections(seed: int, tmp_path: Path) -> None:
    rng = Random(seed)
    size = rng.randint(3, 4)
    plan = plan_of(drawn_brief(rng, size), pool(14, seed), tmp_path)
    every = by_brute_force(plan, size)
    found = choose(plan)
    if not every:
        assert found is None
        return
    assert found is not None
    assert found.slack == 0
    assert value(plan, found.chosen) == every[0][0]
    second = choose(plan, [found])
    if len(every) < 2:
        assert second is None
    else:
        assert second is not None
        assert set(second.chosen) != set(found.chosen)
        assert value(plan, second.chosen) == every[1][0]


@pytest.mark.parametrize("seed", range(40))
def test_a_smallest_clash_and_the_nearest_collection(seed: int, tmp_path: Path) -> None:
    """Checked by trying all sets of demands and all collections; briefs that can be met are passed over."""
    rng = Random(100 + seed)
    text = drawn_brief(rng, 3) + "  sizes: {9: at least 2}\n  families: {classic: at least 1, sums: at least 2}\n"
    plan = plan_of(text, pool(9, seed), tmp_path)
    if choose(plan) is not None:
        pytest.skip("this brief can be met")
    clash = clash_of(plan)
    hard = [demand for demand in plan.demands if not demand.rather]
    sizes = range(1, len(plan.cards) + 1)
    subsets = [chosen for size in sizes for chosen in combinations(range(len(plan.cards)), size)]
    subsets = [chosen for chosen in subsets if all(len(group & set(chosen)) < 2 for group in plan.alike)]
    broken = [frozenset(at for at, demand in enumerate(hard) if not keeps(plan, chosen, demand)) for chosen in subsets]
    smallest = next(
        size
        for size in range(1, len(hard) + 1)
        if any(all(set(some) & lost for lost in broken) for some in combinations(range(len(hard)), size))
    )
    assert len(clash.demands) == smallest
    numbers = {at for at, demand in enumerate(hard) if demand in clash.demands}
    assert all(numbers & lost for lost in broken)
    assert clash.nearest is not None
    missed = [sum(Choice((chosen,)).missed(row) for demand in hard for row in demand.rows) for chosen in subsets]
    assert sum(clash.nearest.missed(row) for demand in hard for row in demand.rows) == min(missed)
    assert clash.given_up


@pytest.mark.parametrize("seed", range(6))
def test_the_other_optimiser_comes_to_the_same(seed: int, tmp_path: Path) -> None:
    rng = Random(200 + seed)
    plan = plan_of(drawn_brief(rng, 12), pool(300, seed), tmp_path)
    program = model_of(plan).program
    ours = solve(program)
    assert (ours.reached if ours else None) == solve_by_cp_sat(program)


def test_parts_of_their_own(tmp_path: Path) -> None:
    text = (
        "brief:\n  title: T\n  chapters:\n  - title: Night {n}\n    times: 4\n    puzzles: 2\n"
        "    bands: {Stroll: 1}\n    each-setter: at most 1\n  prefer: [most kinds]\n"
    )
    plan = plan_of(text, pool(60, 1), tmp_path)
    found = choose(plan)
    assert found is not None
    assert [part.title for part in plan.parts] == ["Night 1", "Night 2", "Night 3", "Night 4"]
    assert len(set(found.chosen)) == 8
    for part in found.parts:
        cards: list[Card] = [plan.cards[at] for at in part]
        assert sorted(card.band == 1 for card in cards) == [False, True]
        assert len({card.setter for card in cards}) == 2 or not all(card.setter for card in cards)
    program = model_of(plan).program
    ours = solve(program)
    assert ours is not None
    assert ours.reached == solve_by_cp_sat(program)
