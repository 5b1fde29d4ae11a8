"""How much is done for a story is bounded, by counting: what it takes too much effort to cut down is told as found."""

from __future__ import annotations

import pytest

from bookmaker.book.hints import hints_of
from bookmaker.grade.path import walk
from bookmaker.logic.state import ground_of
from bookmaker.proof.findings import Proof
from bookmaker.reasons import Rung
from bookmaker.tell import tell
from bookmaker.trace import budget, trace
from bookmaker.trace.budget import Budget, TooMuch
from bookmaker.trace.dependencies import dependencies
from bookmaker.trace.telling import as_found
from tests.tell.stories import demo_proof, many_what_ifs


@pytest.fixture(scope="module")
def proof() -> Proof:
    return many_what_ifs()


@pytest.fixture
def _little(monkeypatch: pytest.MonkeyPatch) -> None:
    """Next to no effort for each puzzle."""
    monkeypatch.setattr(budget, "MOST", 500)


def test_every_look_at_the_board_is_counted(proof: Proof) -> None:
    assert proof.grade
    ground, plenty = ground_of(proof.entry.puzzle), Budget()
    dependencies(ground, proof.grade.path, plenty)
    spent = Budget().left - plenty.left
    assert spent and spent % 81 == 0
    dependencies(ground, proof.grade.path, Budget(spent))
    with pytest.raises(TooMuch):
        dependencies(ground, proof.grade.path, Budget(spent - 1))


def test_marks_make_a_look_dearer(proof: Proof) -> None:
    def cost(of: Proof) -> int:
        budget = Budget()
        budget.spend(ground_of(of.entry.puzzle))
        return Budget().left - budget.left

    assert cost(proof) == 81 < cost(demo_proof("regatta")) < cost(demo_proof("soundings"))


@pytest.mark.usefixtures("_little")
def test_all_steps_are_told_as_they_were_found(proof: Proof) -> None:
    assert proof.grade
    path, ground = proof.grade.path, ground_of(proof.entry.puzzle)
    told = trace(ground, path)
    assert told == as_found(ground, path)
    assert [step.placed for step in told if step.placed] == [step.placed for step in path.steps if step.placed]
    gone = {pair for step in path.steps for pair in step.removed}
    removed = [pair for step in told for pair in step.removed]
    assert len(removed) == len(set(removed)) and set(removed) <= gone
    for step in told:
        assert all(step.before.may(*pair) for pair in (*step.placed, *step.removed))
        assert step.placed or told[step.opens - 1].placed
        assert step.reason == path.steps[step.index].reason or step.placed
    assert tell(proof).steps == trace(ground, path)


def test_there_are_no_hints_then(monkeypatch: pytest.MonkeyPatch) -> None:
    stuck = demo_proof("soundings")
    assert hints_of(stuck)
    monkeypatch.setattr(budget, "MOST", 500)
    assert hints_of(stuck) is None


def test_what_ifs_are_looked_for_as_long_as_the_bound_allows(proof: Proof) -> None:
    assert proof.solution and proof.grade
    puzzle, path = proof.entry.puzzle, proof.grade.path
    count = sum(step.rung is Rung.WHAT_IF for step in path.steps)
    assert count and walk(puzzle, proof.solution) == path
    without = walk(puzzle, proof.solution, what_ifs=0)
    assert not without.reached and not any(step.rung is Rung.WHAT_IF for step in without.steps)
    some = walk(puzzle, proof.solution, what_ifs=1)
    assert 0 < sum(step.rung is Rung.WHAT_IF for step in some.steps) < count
