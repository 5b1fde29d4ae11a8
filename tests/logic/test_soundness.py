"""Gate 4: nothing that a technique strikes is in the proven solution, on positions met while solving.

`tests/benchmarks/grade_soundness.py` walks thousands of puzzles the same way.
"""

from __future__ import annotations

from collections import Counter

import pytest

from bookmaker.logic.technique import ladder
from tests.grade.sound import faults
from tests.makers.corpus import corpus

SAMPLE = {"classic": 12, "relations": 6, "sums": 3}
"""Puzzles of each family of the corpus."""


@pytest.mark.slow
@pytest.mark.parametrize("family", SAMPLE)
def test_every_technique_at_every_stuck_position(family: str) -> None:
    found: Counter[str] = Counter()
    for puzzle, solution in corpus(family, SAMPLE[family], seed=5):
        assert not list(faults(puzzle, solution, found))
    assert found["what-if"]
    assert len(found) > len(ladder())
