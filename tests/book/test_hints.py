"""Hints give away more and more: a place, a kind of step, the step."""

from __future__ import annotations

import re

import pytest

from bookmaker.book.hints import hints_of
from bookmaker.proof import Proof
from bookmaker.tell.first_bottleneck import first_bottleneck
from tests.tell.stories import EASY, HARDER, demo_entries, demo_proof, faults, proof_of


@pytest.fixture(params=demo_entries())
def proof(request: pytest.FixtureRequest) -> Proof:
    return demo_proof(request.param)


def test_the_first_hint_gives_away_no_more_than_where_to_look(proof: Proof) -> None:
    hints = hints_of(proof)
    grid = proof.entry.puzzle.grid
    point = first_bottleneck(proof.entry.puzzle, proof.grade.path)
    mark = point.eliminations[0].reason.mark if point.eliminations else None
    printed = rf"|(of )?\b{re.escape(mark.value)}(?= (at|left|right|above|below|between|from)\b)" if mark else ""
    # what is left without names of cells and houses, what is printed at a mark and the count of cells says no digit
    names = r"r\d+c\d+|(rows?|columns?) \d+(, \d+)*( and \d+)?|\d+ cells" + printed
    bare = re.sub(names, "", hints.where, flags=re.IGNORECASE)
    assert not re.search(r"\d", bare), hints.where
    assert not re.search(r"\b(only|takes|goes|holds|leaves|naked|hidden|locked)\b", hints.where)
    if not point.eliminations:
        assert grid.name(point.placement.cell) not in hints.where
    assert not re.search(r"\d", hints.what)


def test_the_last_hint_makes_the_step(proof: Proof) -> None:
    hints = hints_of(proof)
    grid, steps = proof.entry.puzzle.grid, proof.grade.path.steps
    point = first_bottleneck(proof.entry.puzzle, proof.grade.path)
    assert steps[point.placement.index].placed == point.placement.placed
    if len(point.eliminations) <= 3:
        assert grid.name(point.placement.cell) in hints.how
    for told in point.eliminations[:1]:
        assert all(grid.name(cell) in hints.how for cell, _ in told.removed)


def test_they_are_well_formed(proof: Proof) -> None:
    hints = hints_of(proof)
    for words in (hints.where, hints.what, hints.how):
        assert not faults(words), words


def test_two_of_them_in_full() -> None:
    easy = hints_of(proof_of(EASY))
    assert easy.what == "A digit with only one place there."
    assert re.fullmatch(
        r"The \d in r\dc\d leaves .* only r\dc\d for \d\.|The \ds in .* leave .* only r\dc\d for \d\.", easy.how
    )
    harder = hints_of(proof_of(HARDER))
    assert harder.where != easy.where


def test_a_puzzle_without_a_grade_has_none() -> None:
    assert hints_of(proof_of("." * 81)) is None


def test_they_say_which_of_them_name_a_region_by_its_letter(proof: Proof) -> None:
    hints = hints_of(proof)
    said = tuple(level for level, words in enumerate((hints.where, hints.what, hints.how)) if "egion " in words)
    assert (proof.entry.puzzle.grid.box is not None and not hints.lettered) or set(said) <= set(hints.lettered)
