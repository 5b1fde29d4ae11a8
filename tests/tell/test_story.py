"""A story tells each step once, after all that it rests on, and nothing that is not so: `proving` has every sentence
proved on the board on which it is told."""

from __future__ import annotations

import json
import re
from functools import cache
from itertools import groupby, pairwise

import pytest

from bookmaker.grade.automorphism import automorphisms
from bookmaker.logic.singles import openings
from bookmaker.logic.state import ground_of, start
from bookmaker.proof.findings import Proof
from bookmaker.reasons.telling import Few, Introduction, MoreAlike, Stuck, WhatIfsFollow
from bookmaker.reasons.whatif import Refuted
from bookmaker.tell import tell
from bookmaker.tell.formats import as_json, as_markdown, as_text
from bookmaker.tell.passages import Mood, Story
from bookmaker.tell.step_groups import crux
from bookmaker.trace.budget import Budget
from bookmaker.trace.dependencies import dependencies
from tests.tell.proving import faults as wrong
from tests.tell.stories import EASY, HARDER, MIRRORED, demo_entries, demo_proof, faults, many_what_ifs, proof_of

QUICK = ("soundings", "full-hold", "regatta", "cross-bearings")
"""Puzzles that are proved in every run with their what-ifs folded, too."""


@cache
def story_of(proof: Proof, full: bool = False) -> Story:
    return tell(proof, full=full)


@pytest.fixture(params=demo_entries())
def proof(request: pytest.FixtureRequest) -> Proof:
    return demo_proof(request.param)


def test_every_sentence_is_true_where_it_is_told(proof: Proof) -> None:
    assert not list(wrong(proof, story_of(proof, full=True)))
    if proof.entry.id in QUICK:
        assert not list(wrong(proof, story_of(proof)))


def test_all_placements_are_told_and_of_the_eliminations_what_is_needed(proof: Proof) -> None:
    assert proof.grade is not None
    steps, story = proof.grade.path.steps, story_of(proof)
    needs = dependencies(ground_of(proof.entry.puzzle), proof.grade.path, Budget())
    told = [story.steps[number - 1] for passage in story.passages for number in passage.told]
    assert [step.number for step in told] == list(range(1, len(told) + 1))
    assert sorted(step.placed for step in told if step.placed) == sorted(step.placed for step in steps if step.placed)
    assert {step.index for step in told if step.removed} <= set(needs.eliminations)
    removed = [pair for step in told for pair in step.removed]
    assert len(removed) == len(set(removed))


def test_nothing_is_eliminated_while_there_are_singles(proof: Proof) -> None:
    state, story = start(ground_of(proof.entry.puzzle)), story_of(proof, full=True)
    for sentence in (sentence for passage in story.passages for sentence in passage.sentences):
        for number in sentence.told:
            step = story.steps[number - 1]
            if step.removed and not step.mirrors and number == sentence.told[0]:
                assert not openings(state)
            for cell, digit in step.placed:
                state.place(cell, digit)
            state.remove(step.removed)


def test_sentences_are_well_formed(proof: Proof) -> None:
    for story in (story_of(proof), story_of(proof, full=True)):
        for passage in story.passages:
            assert not faults(passage.text), passage.text
            for sentence in passage.sentences:
                assert len(sentence.text) <= 700 or any(
                    isinstance(story.steps[number - 1].reason.claim, Refuted) for number in sentence.told
                )


def test_placed_digits_stand_in_their_passage(proof: Proof) -> None:
    grid, story = proof.entry.puzzle.grid, story_of(proof)
    for passage in story.passages:
        named = set(re.findall(r"r\d+c\d+", passage.text))
        assert {grid.name(cell) for number in passage.told for cell, _ in story.steps[number - 1].placed} <= named


def test_the_hard_moment_is_announced_once(proof: Proof) -> None:
    """In the outlook, and right before its steps."""
    assert proof.grade is not None
    hard = crux(proof.grade.path, proof.entry.puzzle.grid)
    said = [(p, s.utterance) for p in story_of(proof).passages for s in p.sentences]
    announced = [p for p, utterance in said if isinstance(utterance, Stuck | Few) and utterance.crux]
    foreseen = [utterance for _, utterance in said if isinstance(utterance, Introduction)]
    assert [p for p in story_of(proof).passages if p.mood is Mood.CRUX] == announced
    assert len(announced) == (foreseen[0].crux_at is not None) <= (hard is not None)


def test_no_two_wordings_repeat_each_other(proof: Proof) -> None:
    sentences = [sentence.text for passage in story_of(proof).passages for sentence in passage.sentences]
    assert not [one for one, other in pairwise(sentences) if one == other]


def test_singles_only_has_no_deduction() -> None:
    story = tell(proof_of(EASY))
    assert {p.mood for p in story.passages} <= {Mood.OPENING, Mood.FLOW, Mood.NARROW, Mood.CRUX, Mood.ENDING}
    assert "singles all the way" in story.passages[0].text


def test_mirrored_steps_are_told_together() -> None:
    proof = proof_of(MIRRORED)
    assert proof.grade is not None and proof.solution is not None
    mirror, *_ = automorphisms(proof.entry.puzzle, proof.solution)
    story = story_of(proof)
    opening, *passages = story.passages
    assert "a half turn, with 1 and 9, 2 and 8, 3 and 7, 4 and 6 exchanged" in opening.text.lower()
    said = " ".join(p.text for p in passages)
    pairs = re.findall(r"(r\d+c\d+) takes (\d), and by symmetry (r\d+c\d+) takes (\d)", said)
    assert pairs
    for cell, digit, image, other in pairs:
        assert int(digit) + int(other) == 10
        assert [10 - int(n) for n in re.findall(r"\d", cell)] == [int(n) for n in re.findall(r"\d", image)]
    images = [step for step in story.steps if step.mirrors and step.placed]
    assert len(images) >= 0.4 * sum(bool(step.placed) for step in story.steps)
    for step in images:
        like = story.steps[step.mirrors - 1]
        assert (mirror.cells[like.cell], mirror.digits[like.digit]) == (step.cell, step.digit)


def test_what_ifs_are_spelled_out_and_introduced_by_what_they_share() -> None:
    story = story_of(many_what_ifs(), full=True)
    what_ifs = [step for step in story.steps if isinstance(step.reason.claim, Refuted)]
    assert all(step.reason.claim.links or not step.reason.claim.rounds for step in what_ifs)
    sentences = [sentence for passage in story.passages for sentence in passage.sentences]
    linked = [sentence for sentence in sentences if sentence.text.startswith("Suppose")]
    assert all(re.fullmatch(r"Suppose .*: then .*, and .*\. So .*eliminated from .*\.", s.text) for s in linked)
    for passage in story.passages:
        kinds = [isinstance(story.steps[number - 1].reason.claim, Refuted) for number in passage.told]
        in_a_row = max((len(list(run)) for what_if, run in groupby(kinds) if what_if), default=0)
        introduced = [s.utterance for s in passage.sentences if isinstance(s.utterance, WhatIfsFollow)]
        assert bool(introduced) == (in_a_row > 3)


def test_many_what_ifs_are_folded_unless_all_are_asked_for() -> None:
    proof = many_what_ifs()
    folded, full = story_of(proof), story_of(proof, full=True)
    more = [s.utterance.count for p in folded.passages for s in p.sentences if isinstance(s.utterance, MoreAlike)]
    assert more
    assert not any(isinstance(s.utterance, MoreAlike) for p in full.passages for s in p.sentences)
    assert folded.steps == full.steps


def test_three_formats_say_the_same() -> None:
    story = tell(proof_of(HARDER))
    text, markdown, data = as_text(story), as_markdown(story), json.loads(as_json(story))
    for passage, item in zip(story.passages, data["passages"], strict=True):
        assert passage.text in markdown
        assert item["text"] == passage.text
        assert passage.text in " ".join(text.split())
    assert markdown.startswith("# Ebb\n")
    assert ("## The hard moment" in markdown) == any(p.mood is Mood.CRUX for p in story.passages)
    assert max(map(len, text.splitlines())) <= 88


def test_numbers_of_steps_stand_beside_the_sentences() -> None:
    story = tell(proof_of(HARDER))
    text, data = as_text(story, numbered=True), json.loads(as_json(story, numbered=True))
    numbers = re.findall(r"(?m)^ *(\d+)–(\d+)  ", text)
    told = [sentence.told for passage in story.passages for sentence in passage.sentences if len(sentence.told) > 1]
    assert numbers == [(str(first), str(last)) for first, *_, last in told]
    assert [step["number"] for step in data["steps"]] == list(range(1, len(story.steps) + 1))


def test_a_puzzle_without_a_grade_has_no_story() -> None:
    with pytest.raises(ValueError, match="no solving path"):
        tell(proof_of("." * 81))
