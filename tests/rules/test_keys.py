"""The key to the marks shows the marks that a puzzle has, and no others."""

from __future__ import annotations

import pytest

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.rules import kinds
from bookmaker.rules.common.drawing.frame import Frame
from tests.rules.harness import cases_of, inks, sound_entry


@pytest.mark.parametrize("kind", kinds())
def test_every_key_shows_its_kind_within_its_window(kind: str) -> None:
    for entry, _ in cases_of(kind).SENTENCES:
        rule = sound_entry(entry)
        key = rule.key()
        assert (key is None) == (not [*rule.marks(Frame(CLASSIC, 20.0))])
        if key is None:
            continue
        assert type(key.rule) is type(rule)
        assert 1 <= key.rows <= 3, "the key stands beside a sentence or two"
        room = key.rule.margins(key.grid)
        drawn = [ink for mark in key.rule.marks(Frame(key.grid, 20.0)) for ink in inks(mark.item)]
        assert drawn
        for ink in drawn:
            assert ink.left >= -room.left * 20 - 1
            assert ink.top >= -room.top * 20 - 1
            assert ink.right <= 20 * (key.columns + room.right) + 1
            assert ink.bottom <= 20 * (key.rows + room.bottom) + 1


@pytest.mark.parametrize(
    ("entry", "has", "lacks"),
    [
        ("dots: {white: r5c5-r5c6}", "white", "black"),
        ("dots: {black: r5c5-r5c6}", "black", "white"),
        ("sum-marks: {V: r5c5-r5c6}", "five", "ten"),
        ("sum-marks: {X: r5c5-r5c6}", "ten", "five"),
        ("parity: {even: r5c5}", "even", "odd"),
        ("parity: {odd: r5c5}", "odd", "even"),
        ("peaks: {greater: r5c5}", "greater", "smaller"),
        ("peaks: {smaller: r5c5}", "smaller", "greater"),
        ("diagonals: rising", "rising", "falling"),
        ("diagonals: falling", "falling", "rising"),
    ],
)
def test_a_kind_with_two_marks_shows_the_one_in_use(entry: str, has: str, lacks: str) -> None:
    key = sound_entry(entry).key()
    assert key is not None
    assert getattr(key.rule, has)
    assert not getattr(key.rule, lacks)


@pytest.mark.parametrize(
    ("entry", "forbidden"),
    [
        ("limits: {r5c5: 12}", {False}),
        ("limits: {r5c5: not 12}", {True}),
        ("limits: {r1c1: 1, r2c2: not 1}", {False, True}),
    ],
)
def test_limits_show_struck_digits_only_where_there_are_some(entry: str, forbidden: set[bool]) -> None:
    key = sound_entry(entry).key()
    assert key is not None
    assert {limit.forbidden for limit in key.rule.limits} == forbidden  # type: ignore[attr-defined]
