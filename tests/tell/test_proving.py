"""The prover of stories has teeth: a story with one thing wrong in it is found out."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from bookmaker.proof.findings import Proof
from bookmaker.reasons.telling import Stuck
from bookmaker.reasons.whatif import Refuted
from bookmaker.tell import tell
from bookmaker.tell.passages import Story
from bookmaker.trace import Traced
from tests.tell.proving import faults
from tests.tell.stories import demo_proof


def with_step(story: Story, at: int, step: Traced) -> Story:
    return replace(story, steps=(*story.steps[:at], step, *story.steps[at + 1 :]))


def a_true_digit_goes(proof: Proof, story: Story) -> Story:
    at, step = next((at, step) for at, step in enumerate(story.steps) if step.removed)
    cell, _ = step.removed[0]
    assert proof.solution is not None
    return with_step(story, at, replace(step, removed=(*step.removed, (cell, proof.solution[cell]))))


def something_goes_twice(proof: Proof, story: Story) -> Story:
    first, second, *_ = [at for at, step in enumerate(story.steps) if step.removed]
    removed = story.steps[second].removed + story.steps[first].removed
    return with_step(story, second, replace(story.steps[second], removed=removed))


def another_mark_is_named(proof: Proof, story: Story) -> Story:
    marked = [(at, step) for at, step in enumerate(story.steps) if step.removed and step.reason.mark]
    at, step = marked[0]
    other = next(one.reason.mark for _, one in marked if one.reason.mark != step.reason.mark)
    return with_step(story, at, replace(step, reason=replace(step.reason, mark=other)))


def a_link_is_left_out(proof: Proof, story: Story) -> Story:
    for at, step in enumerate(story.steps):
        claim = step.reason.claim
        if isinstance(claim, Refuted) and len(claim.links) > 1:
            shorter = replace(claim, links=claim.links[1:])
            return with_step(story, at, replace(step, reason=replace(step.reason, claim=shorter)))
    raise AssertionError("no what-if has links")


def a_placement_comes_too_early(proof: Proof, story: Story) -> Story:
    """The last two placements of the opening are told the other way round."""
    first, second = next(
        (at, at + 1)
        for at, (one, other) in enumerate(zip(story.steps, story.steps[1:], strict=False))
        if one.placed and other.placed and other.since == one.number
    )
    steps = list(story.steps)
    steps[first], steps[second] = (
        replace(steps[second], number=steps[first].number),
        replace(steps[first], number=steps[second].number),
    )
    return replace(story, steps=tuple(steps))


def it_says_that_it_is_stuck_too_soon(proof: Proof, story: Story) -> Story:
    passages = []
    for passage in story.passages:
        sentences = [
            replace(said, utterance=replace(said.utterance, filled=said.utterance.filled + 1))
            if isinstance(said.utterance, Stuck)
            else said
            for said in passage.sentences
        ]
        passages.append(replace(passage, sentences=tuple(sentences)))
    return replace(story, passages=tuple(passages))


@pytest.mark.parametrize(
    ("name", "spoil"),
    [
        ("delta", a_true_digit_goes),
        ("delta", something_goes_twice),
        ("delta", another_mark_is_named),
        ("soundings", a_link_is_left_out),
        ("delta", a_placement_comes_too_early),
        ("delta", it_says_that_it_is_stuck_too_soon),
    ],
)
def test_a_false_story_is_found_out(name: str, spoil: Callable[[Proof, Story], Story]) -> None:
    proof = demo_proof(name)
    story = tell(proof, full=True)
    assert next(faults(proof, spoil(proof, story)), None)  # a broken board may say anything after that


def test_the_hardest_step_of_the_proof_has_to_be_told() -> None:
    proof = demo_proof("delta")
    story = tell(proof)
    harder = tell(demo_proof("soundings"), full=True).steps
    said = max(harder, key=lambda step: step.rung).reason
    assert "hardest" in list(faults(replace(proof, hardest=said), story))[-1]
