"""The telling of a path covers each of its steps once, in order, and says what they do."""

from __future__ import annotations

import json

import pytest

from bookmaker.manifest.model import Entry
from bookmaker.proof import prove_entry
from bookmaker.proof.model import Proof
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle, digits_from
from bookmaker.rules.common.contract import Rule
from bookmaker.tell import tell
from bookmaker.tell.formats import as_json, as_markdown, as_text
from bookmaker.tell.model import Mood
from bookmaker.tell.rounds import rounds
from bookmaker.tell.sentences import placements, strikes
from bookmaker.trouble import Place

# Grown by this project's makers.
EASY = ".89..41...4...63..3....5.4.87...2..4...6.8...2..5...87.2.9....6..74...1...82..59."
HARDER = "4...3......8...64..21..8.....7.9..86.6.127.3.54..8.7.....7..86..94...1......1...3"


def _proof(givens: str, *rules: Rule) -> Proof:
    return prove_entry(Entry("x", Puzzle(CLASSIC, digits_from(givens), rules), Place("book.yaml"), "Ebb", "Mudlark"))


@pytest.mark.parametrize("givens", [EASY, HARDER])
def test_every_step_is_told_once_and_in_order(givens: str) -> None:
    proof = _proof(givens)
    assert proof.grade is not None
    told = [p for p in tell(proof).passages if p.mood is not Mood.OPENING]
    assert told[0].first == 0
    assert all(before.after == after.first for before, after in zip(told, told[1:], strict=False))
    assert told[-1].after == len(proof.grade.path.steps)
    for passage in told:
        for step in proof.grade.path.steps[passage.first : passage.after]:
            for cell, _ in step.placed:
                assert CLASSIC.name(cell).lower() in passage.text.lower()


def test_rounds_keep_to_one_look_at_the_board() -> None:
    proof = _proof(HARDER)
    assert proof.grade is not None
    cut = list(rounds(proof.grade.path))
    assert sum(len(r.steps) for r in cut) == len(proof.grade.path.steps)
    for this in cut:
        assert len({bool(step.placed) for step in this.steps}) == 1
        if this.places:
            assert [s.empty for s in this.steps] == list(range(this.steps[0].empty, this.steps[-1].empty - 1, -1))


def test_the_hard_moment_is_announced_once_and_before_its_step() -> None:
    proof = _proof(HARDER)
    assert proof.grade is not None
    hardest = proof.grade.path.hardest
    assert hardest is not None
    assert hardest.rung > 4
    (crux,) = [p for p in tell(proof).passages if p.mood is Mood.CRUX]
    assert crux.first <= proof.grade.path.steps.index(hardest) < crux.after
    assert "hard moment" in crux.text.split(".")[0]


def test_singles_only_has_no_hard_moment() -> None:
    story = tell(_proof(EASY))
    assert {p.mood for p in story.passages} <= {Mood.OPENING, Mood.FLOW, Mood.CARE, Mood.ENDING}
    assert "singles all the way" in story.passages[0].text


def test_digits_are_told_once_with_their_cells() -> None:
    proof = _proof(EASY)
    assert proof.grade is not None
    text = placements(CLASSIC, proof.grade.path.steps[:6])
    digits = [part.split(" in ")[0] for part in text.split(", ") if " in " in part]
    assert len(digits) == len(set(digits))


def test_strikes_are_grouped() -> None:
    assert strikes(CLASSIC, ((0, 4), (1, 4))) == "4 goes from r1c1 and r1c2"
    assert strikes(CLASSIC, ((0, 4), (0, 7))) == "4 and 7 go from r1c1"
    assert strikes(CLASSIC, ((0, 4), (1, 4), (1, 7))) == "4 goes from r1c1 and r1c2 and 7 from r1c2"


def test_three_formats_say_the_same() -> None:
    story = tell(_proof(EASY))
    text, markdown, data = as_text(story), as_markdown(story), json.loads(as_json(story))
    for passage, item in zip(story.passages, data["passages"], strict=True):
        assert passage.text in markdown
        assert item["text"] == passage.text
        assert passage.text in " ".join(text.split())
    assert markdown.startswith("# Ebb\n")
    assert max(map(len, text.splitlines())) <= 88


def test_a_puzzle_without_a_grade_has_no_story() -> None:
    with pytest.raises(ValueError, match="no solving path"):
        tell(_proof("." * 81))
