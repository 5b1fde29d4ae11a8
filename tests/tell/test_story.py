"""The telling of a path says each of its steps once, after all that the step rests on, and says nothing else."""

from __future__ import annotations

import json
import re
from functools import cache
from itertools import pairwise

import pytest

from bookmaker.grade.follow import follow
from bookmaker.grade.mirror import mirrors
from bookmaker.grade.model import Step
from bookmaker.grade.singles import Kind, openings
from bookmaker.grade.state import State, ground_of, start
from bookmaker.grade.technique import ladder
from bookmaker.grade.techniques.what_if import WhatIf
from bookmaker.proof.model import Proof
from bookmaker.tell import tell
from bookmaker.tell.formats import as_json, as_markdown, as_text
from bookmaker.tell.model import Mood, Story
from bookmaker.tell.moments import hard_moment
from bookmaker.tell.needs import needs_of
from bookmaker.tell.rounds import rounds
from bookmaker.tell.twins import twins_of
from tests.tell.stories import EASY, HARDER, MIRRORED, demo_entries, demo_proof, faults, proof_of


@cache
def story_of(proof: Proof) -> Story:
    return tell(proof)


@pytest.fixture(params=demo_entries())
def proof(request: pytest.FixtureRequest) -> Proof:
    return demo_proof(request.param)


def test_passages_cover_the_path(proof: Proof) -> None:
    assert proof.grade is not None
    opening, *rest = story_of(proof).passages
    assert opening.mood is Mood.OPENING and not opening.told
    assert rest[0].first == 0 and rest[-1].after == len(proof.grade.path.steps)
    assert all(before.after == after.first for before, after in pairwise(rest))


def test_every_placement_and_every_needed_strike_is_told_once(proof: Proof) -> None:
    assert proof.grade is not None
    steps = proof.grade.path.steps
    needs = needs_of(proof.entry.puzzle, proof.grade.path)
    told = [index for passage in story_of(proof).passages for index in passage.told]
    assert sorted(told) == sorted({*needs.strikes, *(i for i, step in enumerate(steps) if step.placed)})
    for at, index in enumerate(told):
        assert needs.rests.get(index, frozenset()) <= set(told[:at])


def test_told_digits_stand_in_their_passage_and_no_others(proof: Proof) -> None:
    assert proof.grade is not None
    grid, steps = proof.entry.puzzle.grid, proof.grade.path.steps
    for passage in story_of(proof).passages:
        named = set(re.findall(r"r\d+c\d+", passage.text))
        placed = [cell for index in passage.told for cell, _ in steps[index].placed]
        assert {grid.name(cell) for cell in placed} <= named
        order = [passage.text.rindex(grid.name(cell)) for cell in placed]
        assert len(set(order)) == len(order)
        for index in passage.told:
            if steps[index].removed:
                assert any(grid.name(cell) in named for cell, _ in steps[index].removed)


def test_sentences_are_well_formed(proof: Proof) -> None:
    for passage in story_of(proof).passages:
        assert not faults(passage.text), passage.text


def test_the_hard_moment_is_announced_once_and_before_its_steps(proof: Proof) -> None:
    assert proof.grade is not None
    path, grid = proof.grade.path, proof.entry.puzzle.grid
    hard = hard_moment(path, grid)
    passages = story_of(proof).passages
    announcing = [p for p in passages if "ow comes the hard moment" in p.text]
    assert [p for p in passages if p.mood is Mood.CRUX] == announcing
    assert ("hard moment" in passages[0].text) == (hard is not None)
    assert len(announcing) == (hard is not None)
    for passage in announcing:
        assert hard is not None and passage.first <= hard.first < passage.after
        before = passage.text[: passage.text.index("ow comes the hard moment")]
        cells = [cell for step in path.steps[hard.first : hard.after] for cell, _ in step.placed]
        assert not any(re.search(rf"{grid.name(cell)} can only be", before) for cell in cells)


def test_singles_only_has_no_deduction() -> None:
    story = tell(proof_of(EASY))
    assert {p.mood for p in story.passages} <= {Mood.OPENING, Mood.FLOW, Mood.NARROW, Mood.CRUX, Mood.ENDING}
    assert "singles all the way" in story.passages[0].text


def test_mirrored_steps_are_told_together() -> None:
    proof = proof_of(MIRRORED)
    assert proof.grade is not None and proof.solution is not None
    mirror, *_ = mirrors(proof.entry.puzzle, proof.solution)
    twins = twins_of(proof.grade.path, mirror)
    assert twins and all(twins[twins[index]] == index for index in twins)
    opening, *passages = story_of(proof).passages
    assert "a half turn, with 1 and 9, 2 and 8, 3 and 7, 4 and 6 exchanged" in opening.text
    said = " ".join(p.text for p in passages)
    pairs = re.findall(r"(r\d+c\d+) takes (\d), and its twin, (r\d+c\d+), takes (\d)", said)
    assert pairs
    for cell, digit, twin, other in pairs:
        assert int(digit) + int(other) == 10
        assert [10 - int(n) for n in re.findall(r"\d", cell)] == [int(n) for n in re.findall(r"\d", twin)]
    told = [index for p in passages for index in p.told]
    assert sorted(told) == list(range(len(proof.grade.path.steps)))


def test_three_formats_say_the_same() -> None:
    story = tell(proof_of(HARDER))
    text, markdown, data = as_text(story), as_markdown(story), json.loads(as_json(story))
    for passage, item in zip(story.passages, data["passages"], strict=True):
        assert passage.text in markdown
        assert item["text"] == passage.text
        assert passage.text in " ".join(text.split())
    assert markdown.startswith("# Ebb\n")
    assert ("## The hard moment" in markdown) == any(p.mood is Mood.CRUX for p in story.passages)
    crux = next(i for i, p in enumerate(story.passages) if p.mood is Mood.CRUX)
    assert story.passages[crux + 1].mood is not Mood.ENDING
    assert f"## On from there\n\n{story.passages[crux + 1].text}" in markdown
    assert max(map(len, text.splitlines())) <= 88
    steps = [item["steps"] for item in data["passages"] if item["steps"]]
    assert steps[0][0] == 1 and all(later[0] == earlier[1] + 1 for earlier, later in pairwise(steps))


def test_a_puzzle_without_a_grade_has_no_story() -> None:
    with pytest.raises(ValueError, match="no solving path"):
        tell(proof_of("." * 81))


def test_every_strike_is_told_with_its_own_reason(proof: Proof) -> None:
    assert proof.grade is not None
    for passage in story_of(proof).passages:
        for sentence in passage.sentences:
            for index in sentence.told:
                step = proof.grade.path.steps[index]
                if not step.removed:
                    continue
                said, because = sentence.text.lower(), step.because.lower()
                if len(sentence.told) > 1 and step.technique == "what-if":
                    ((cell, digit),) = step.removed
                    _, because = because.split(", ", 1)
                    assert proof.entry.puzzle.grid.name(cell) in said and str(digit) in said
                assert because in said or "the same holds for" in said or "its twin" in said


def test_what_ifs_that_end_alike_are_told_in_one_sentence() -> None:
    story = story_of(demo_proof("soundings"))
    several = [s.text for passage in story.passages for s in passage.sentences if len(s.told) > 1]
    assert any(re.search(r"ith \d in r\dc\d or r\dc\d, [^,]+, so both are out\.", text) for text in several)
    assert any(re.search(r"ith \d or \d in r\dc\d, [^,]+, so both are out\.", text) for text in several)


def test_mirrored_marks_are_told_as_pairs() -> None:
    """Two Tides maps to itself by a half turn with digits taken from 10: each strike is told right before its twin."""
    proof = demo_proof("two-tides")
    assert proof.grade is not None and proof.solution is not None
    path = proof.grade.path
    (mirror,) = mirrors(proof.entry.puzzle, proof.solution)
    twins = twins_of(path, mirror)
    sentences = [sentence for passage in story_of(proof).passages for sentence in passage.sentences]
    told = [index for sentence in sentences for index in sentence.told]
    placed = [index for index in told if path.steps[index].placed]
    paired = sum(twins.get(one) == other for one, other in pairwise(placed))
    assert paired >= 0.4 * len(placed)  # of each two neighbours no more than every other pair can be twins
    opened = [s for s in sentences if re.match("(its twin goes the same way|likewise its twin)", s.text.lower())]
    assert opened
    for sentence in opened:
        *struck, last = sentence.told
        before = told[: told.index(struck[0])]
        assert twins[last] == before[-1]
        assert all(twins[index] in before for index in struck)


def leads_to_it(state: State, step: Step) -> bool:
    """Does a chain as it is told - “if r1c2 is not 4, r6c2 is 4, so r2c7 is 4; …” - strike its candidate? Each cell
    must be a single once the one before it is filled, and whatever holds at its ends must see what goes."""

    def with_digit(pair: tuple[int, int]) -> State:
        there = State(state.ground, state.boards[:], state.stood[:], state.empty)
        there.place(*pair)
        return there

    names = {state.ground.grid.name(cell): cell for cell in state.ground.grid.cells}
    said = re.findall(r"(r\d+c\d+) is (?:not )?(\d)", step.because)
    start, *trues = [(names[cell], int(digit)) for cell, digit in said]
    there = State(state.ground, state.boards[:], state.stood[:], state.empty)
    there.remove([start])
    for true in trues:
        if true not in {(found.cell, found.digit) for found in openings(there)}:
            return False
        there = with_digit(true)
    return not any(with_digit(end).present(step.removed) for end in (start, trues[-1]))


@pytest.mark.parametrize("name", ["spring-tide", "delta", "lobster-pots", "regatta", "rivets", "no-two-waves"])
def test_what_is_told_is_enough(name: str) -> None:
    """On a board where nothing was struck but what was told before, every told step can be found for its reason."""
    proof = demo_proof(name)
    assert proof.grade is not None
    steps = proof.grade.path.steps
    ground = ground_of(proof.entry.puzzle)
    needs = needs_of(proof.entry.puzzle, proof.grade.path)
    told = [index for passage in story_of(proof).passages for index in passage.told]
    round_of = {index: this.first for this in rounds(proof.grade.path) for index in range(this.first, this.after)}
    for at, index in enumerate(told):
        step, before = steps[index], told[:at]
        state = start(ground)
        for earlier in sorted(before) if step.placed else (i for i in sorted(before) if i < round_of[index]):
            for cell, digit in steps[earlier].placed:
                state.place(cell, digit)
            state.remove(needs.strikes.get(earlier, ()))
        if step.placed and step.rung <= Kind.NAKED:
            assert step.placed[0] in {(found.cell, found.digit) for found in openings(state)}
        elif step.technique == WhatIf.name:
            ((cell, digit),) = step.removed
            clash = follow(state, cell, digit)
            assert clash is not None
            assert step.because.endswith(clash.words())
        elif step.technique.endswith("chain"):
            assert leads_to_it(state, step)
        elif step.removed:
            same = [technique for rung in ladder() for technique in rung if technique.rung == step.rung]
            struck = {
                pair
                for technique in same
                for finding in technique.find(state)
                if finding.technique == step.technique and finding.words() == step.because
                for pair in finding.removed
            }
            assert set(needs.strikes[index]) <= struck | {
                pair for pair in needs.strikes[index] if not state.present([pair])
            }
