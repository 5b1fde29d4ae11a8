"""Pictures for a story: each shows the board as it stands where its step is told, and no more than follows."""

from __future__ import annotations

import pytest

from bookmaker.proof.model import Proof
from bookmaker.tell import tell
from bookmaker.tell.scenes import LETTERS, MOST, STEPS, ends_of, scenes_of
from tests.tell.stories import EASY, demo_entries, demo_proof, proof_of


@pytest.fixture(params=[*demo_entries()][::3])
def proof(request: pytest.FixtureRequest) -> Proof:
    return demo_proof(request.param)


def test_scenes_are_lettered_in_the_order_of_the_story(proof: Proof) -> None:
    assert proof.grade is not None
    story = tell(proof)
    scenes = scenes_of(proof, story)
    told = [index for passage in story.passages for index in passage.told]
    assert [index for index in told if index in scenes] == list(scenes)
    assert [scene.label for scene in scenes.values()] == list(LETTERS[: len(scenes)])
    assert len(scenes) <= max(MOST, len(proof.grade.path.steps) // STEPS)


def test_scenes_show_true_boards(proof: Proof) -> None:
    """Digits and candidates agree with the solution; what goes is no part of it, and was there until now."""
    assert proof.grade is not None and proof.solution is not None
    story = tell(proof)
    told = [index for passage in story.passages for index in passage.told]
    for index, scene in scenes_of(proof, story).items():
        steps = [proof.grade.path.steps[i] for i in told[: told.index(index)]]
        written = {cell: digit for cell, digit in enumerate(proof.entry.puzzle.givens) if digit}
        written |= {cell: digit for step in steps for cell, digit in step.placed}
        assert scene.filled == len(written)
        shown = {cell: digit for cell, digit in enumerate(scene.digits) if digit}
        extra = set(shown) - set(written)
        assert extra <= {scene.goes} and all(proof.solution[cell] == digit for cell, digit in shown.items())
        for cell, digit in scene.struck:
            assert proof.solution[cell] != digit and scene.pencil.may(cell, digit)
        for cell in proof.entry.puzzle.grid.cells:
            pencilled = [d for d in proof.entry.puzzle.grid.digits if scene.pencil.may(cell, d)]
            if len(pencilled) > 1 and not scene.pencil.placed >> cell & 1:
                one_digit = len({digit for _, digit in scene.struck}) == 1
                assert proof.solution[cell] in pencilled or one_digit


def test_the_ends_are_the_givens_and_the_solution() -> None:
    proof = proof_of(EASY)
    start, end = ends_of(proof)
    assert start.digits == proof.entry.puzzle.givens and start.filled == sum(map(bool, start.digits))
    assert end.digits == proof.solution and end.filled == 81
