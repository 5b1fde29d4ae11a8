"""What every rule kind deduces in its known cases is proved where it is found, and told well in a story's voice."""

from __future__ import annotations

import pytest

from bookmaker.phrases import Phrasebook
from bookmaker.phrases.story import Voice
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.reasons import Reason
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.telling import Eliminates
from bookmaker.rules import kinds
from tests.phrases.test_phrases import deductions_in_cases
from tests.tell.proving import faults_at
from tests.tell.stories import faults


@pytest.mark.parametrize("kind", kinds())
def test_its_deductions_are_true_and_read_well(kind: str) -> None:
    voice = Voice(Phrasebook(CLASSIC))
    for rule, position, made in deductions_in_cases(kind):
        reason = Reason(MARK, made.mark, made.claim)
        for removed in (made.removed, made.removed[-1:]):
            said = voice.say(Eliminates(reason, removed))
            assert not faults(said), said
            assert all(CLASSIC.name(cell) in said for cell, _ in removed), said
            assert not list(faults_at(Puzzle(CLASSIC, (0,) * 81, (rule,)), position, reason, removed)), said
