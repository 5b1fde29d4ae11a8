"""Pictures for a story: each shows the board as it stands where its step is told, and no more than follows."""

from __future__ import annotations

import networkx
import pytest

from bookmaker.proof.findings import Proof
from bookmaker.reasons.whatif import Refuted, ThenPlaced
from bookmaker.tell import tell
from bookmaker.tell.passages import Story
from bookmaker.tell.scenes import LONG, MOST, STEPS, board_after, ends_of, scenes_of
from tests.tell.stories import EASY, HARDER, demo_entries, demo_proof, many_what_ifs, proof_of


@pytest.fixture(params=[*[*demo_entries()][::3], "soundings", "regatta"])
def proof(request: pytest.FixtureRequest) -> Proof:
    return demo_proof(request.param)


def long_what_ifs(story: Story) -> set[int]:
    """The first steps of sentences that nobody follows without a picture."""
    found = set()
    for sentence in (sentence for passage in story.passages for sentence in passage.sentences):
        claim = story.steps[sentence.told[0] - 1].reason.claim if sentence.told else None
        if isinstance(claim, Refuted) and len(claim.links) >= LONG:
            found.add(sentence.told[0])
    return found


def test_scenes_are_lettered_in_the_order_of_the_story(proof: Proof) -> None:
    """Each belongs to the sentence that begins with its step, so that none gets lost; no profile goes back."""
    assert proof.grade is not None
    story = tell(proof, full=True)
    scenes = scenes_of(proof, story)
    told = {sentence.told[0]: sentence.told for p in story.passages for sentence in p.sentences if sentence.told}
    assert list(scenes) == sorted(scenes) and set(scenes) <= set(told)
    assert all(scene.steps == told[number] for number, scene in scenes.items())
    labels = [scene.label for scene in scenes.values()]
    assert labels == sorted(labels, key=lambda label: (len(label), label)) and len(set(labels)) == len(labels)
    assert labels[:1] == ["A"][: len(labels)]
    groups = [scene.group for scene in scenes.values()]
    assert groups == sorted(groups)
    long = long_what_ifs(story)
    assert long <= set(scenes)
    hard = sum(len(p.sentences) for p in story.passages if p.mood.value == "crux")
    assert len(set(scenes) - long) <= max(MOST, len(proof.grade.path.steps) // STEPS) + hard


def test_scenes_show_true_boards(proof: Proof) -> None:
    """Digits and candidates agree with the solution; what goes is no part of it, and was there until now."""
    assert proof.grade is not None and proof.solution is not None
    story, puzzle = tell(proof, full=True), proof.entry.puzzle
    for number, scene in scenes_of(proof, story).items():
        digits, before = board_after(puzzle, story, number - 1)
        written = {cell: digit for cell, digit in enumerate(digits) if digit}
        assert scene.filled == len(written)
        shown = {cell: digit for cell, digit in enumerate(scene.digits) if digit}
        assert set(shown) - set(written) <= {scene.goes}
        assert all(proof.solution[cell] == digit for cell, digit in shown.items())
        told = story.steps[number - 1]
        assert not told.removed or scene.struck or scene.follows
        for cell, digit in scene.struck:
            assert scene.pencil.may(cell, digit) or cell in scene.follows
            assert before.may(cell, digit)
            assert proof.solution[cell] != digit or scene.follows
        if not scene.follows:
            for cell in puzzle.grid.cells:
                pencilled = [d for d in puzzle.grid.digits if scene.pencil.may(cell, d)]
                if len(pencilled) > 1 and not scene.pencil.placed >> cell & 1:
                    one_digit = len({digit for _, digit in scene.struck}) == 1
                    assert proof.solution[cell] in pencilled or one_digit


def test_a_what_if_shows_its_rounds_in_their_order() -> None:
    proof = many_what_ifs()
    story = tell(proof, full=True)
    seen = 0
    for number, scene in scenes_of(proof, story).items():
        claim = story.steps[number - 1].reason.claim
        if not isinstance(claim, Refuted):
            assert not scene.rounds
            continue
        seen += 1
        cell, digit = claim.tried
        assert digit in scene.follows[cell] and scene.rounds[cell] == (0,)
        for at, link in enumerate(claim.links, start=1):
            if isinstance(link, ThenPlaced):
                assert scene.follows[link.cell] == (link.digit,) and at in scene.rounds[link.cell]
            else:
                assert all(at in scene.rounds[gone] for gone, _ in link.gone)
    assert seen > 10


def test_the_ends_are_the_givens_and_the_solution() -> None:
    proof = proof_of(EASY)
    start, end = ends_of(proof, tell(proof))
    assert start.digits == proof.entry.puzzle.givens and start.filled == sum(map(bool, start.digits))
    assert end.digits == proof.solution and end.filled == 81


def test_regions_are_lettered_where_the_text_names_one() -> None:
    proof = demo_proof("patchwork")
    story = tell(proof)
    assert "region " in " ".join(passage.text for passage in story.passages)
    assert ends_of(proof, story)[0].regions
    assert not ends_of(demo_proof("ebb"), tell(demo_proof("ebb")))[0].regions


@pytest.mark.parametrize("givens", [EASY, HARDER])
def test_boards_step_by_step_to_the_solution(givens: str) -> None:
    proof = proof_of(givens)
    story, puzzle = tell(proof), proof.entry.puzzle
    digits, position = board_after(puzzle, story, 0)
    assert digits == puzzle.givens
    for cell, seen in networkx.sudoku_graph(3).adjacency():
        if not digits[cell]:
            assert {d for d in range(1, 10) if position.may(cell, d)} == set(range(1, 10)) - {digits[c] for c in seen}
    for count, step in enumerate(story.steps, start=1):
        digits, position = board_after(puzzle, story, count)
        assert all(digits[cell] == digit for cell, digit in step.placed)
        assert not any(position.may(cell, digit) for cell, digit in step.removed)
    assert digits == proof.solution
    for count in (-1, len(story.steps) + 1):
        with pytest.raises(ValueError, match="steps"):
            board_after(puzzle, story, count)
