"""Every pair of kinds stacked on the same cells, borders, corners and lanes: both are found in the pixels.

At the size of the smallest cells that any layout prints; `tests/benchmarks/mark_pairs.py` does the same in the layouts
themselves.
"""

from __future__ import annotations

from itertools import groupby

import pytest

import bookmaker.rules
from bookmaker.layout.lengths import mm
from bookmaker.rules import kinds
from bookmaker.rules.common.drawing.places import FREE
from tests.layout.sightings import Stack, unseen
from tests.rules.stacks import stacked, stacks

CELL = mm(6.5)

TABLE = {
    one: [(other, rules) for _, other, rules in group] for one, group in groupby(stacks(), key=lambda pair: pair[0])
}


def test_the_table_has_every_pair() -> None:
    words = list(kinds())
    pairs = {(one, other) for one, row in TABLE.items() for other, _ in row}
    assert pairs == {(one, other) for at, one in enumerate(words) for other in words[at:]}


@pytest.mark.parametrize("one", TABLE)
def test_both_are_found_in_the_pixels(one: str) -> None:
    found = unseen([Stack(rules, CELL) for _, rules in TABLE[one]])
    lost = {other: names for (other, _), names in zip(TABLE[one], found, strict=True) if names}
    assert lost == {}


@pytest.mark.parametrize(
    "words",
    [
        ("dots", "sum-marks", "inequality"),
        ("dots", "sum-marks", "inequality", "consecutive-bars"),
        ("dots", "sum-marks", "quadruple", "cage", "clone"),
        ("quadruple", "limits", "cage", "clone", "extra-region"),
        ("thermometer", "arrow", "palindrome"),
        ("cage", "extra-region", "clone", "windows", "parity"),
    ],
    ids="+".join,
)
def test_more_than_two_are_found_as_well(words: tuple[str, ...]) -> None:
    (lost,) = unseen([Stack(tuple(map(stacked, words)), CELL)])
    assert lost == []


@pytest.mark.parametrize(
    ("one", "other"),
    [
        ("dots", "inequality"),
        ("sum-marks", "consecutive-bars"),
        ("quadruple", "limits"),
        ("thermometer", "resting-thermometer"),
        ("difference-line", "palindrome"),
        ("extra-region", "windows"),
    ],
)
def test_marks_that_are_not_allotted_room_are_lost(one: str, other: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """The tests above can fail: the same marks where each likes best to stand, as if it were alone."""
    monkeypatch.setattr(bookmaker.rules, "allot", lambda grid, claims: [FREE] * len(claims))
    (lost,) = unseen([Stack((stacked(one), stacked(other)), CELL)])
    assert lost
