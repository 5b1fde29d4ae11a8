"""Every rule kind's own deductions read well as sentences, alone and after another, whichever part of them is told."""

from __future__ import annotations

import re

import pytest

from bookmaker.grade.model import Step
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.position import Position
from bookmaker.rules import kinds
from bookmaker.rules.common.contract import Deduction
from bookmaker.tell.context import Context
from bookmaker.tell.strikings import strikes
from bookmaker.tell.trail import Told
from bookmaker.tell.voice import Voice
from tests.rules.harness import cases_of, digits_as_mask, sound_entry
from tests.rules.test_kinds import cells_of
from tests.tell.stories import faults


def deductions(kind: str) -> list[Deduction]:
    """What the kind finds in the positions of its known cases."""
    found = []
    for entry, candidates, _ in cases_of(kind).DEDUCTIONS:
        masks = [CLASSIC.all_digits for _ in CLASSIC.cells]
        for cells, digits in candidates.items():
            for cell in cells_of(cells):
                masks[cell] = digits_as_mask(digits)
        boards = tuple(
            sum(1 << cell for cell in CLASSIC.cells if digit and masks[cell] >> (digit - 1) & 1) for digit in range(10)
        )
        found += sound_entry(entry).deductions(Position(CLASSIC, boards))
    return found


@pytest.mark.parametrize("kind", kinds())
def test_its_deductions_read_well(kind: str) -> None:
    noun = kinds()[kind].noun
    told = []
    for at, made in enumerate(deductions(kind)):
        step = Step(noun, made.rung, made.cells, (), made.removed, made.words, 1, 81, 1.0)
        told += [Told(at, step, removed=made.removed), Told(at, step, removed=made.removed[-1:])]
    for sentence, one in zip(strikes(CLASSIC, told, Voice(), Context((noun,))), told, strict=True):
        assert not faults(sentence.text), sentence.text
        assert sentence.told == (one.index,)
        for cell in {cell for cell, _ in one.removed}:
            assert CLASSIC.name(cell) in sentence.text, sentence.text
        assert re.search(r" (is|are) eliminated from r\dc\d|rules out|No way|no way", sentence.text), sentence.text
