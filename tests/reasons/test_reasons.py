"""Reasons as values: text and back, what they speak of, when two argue alike."""

from __future__ import annotations

from dataclasses import replace

import pytest

from bookmaker.puzzle.grid import CLASSIC
from bookmaker.reasons import MarkRef, Reason, coding
from bookmaker.reasons.claims import argument, name_of, spoken
from bookmaker.reasons.patterns import Locked
from bookmaker.reasons.reason import MARK
from bookmaker.reasons.whatif import NoPlace, Refuted, ThenGone, ThenPlaced
from tests.phrases.samples import BOX, MARKS, ROW, reasons


def test_text_and_back_is_the_same_reason() -> None:
    for reason, _ in reasons():
        text = coding.to_text(reason)
        assert coding.from_text(text) == reason
        assert "\n" not in text


@pytest.mark.parametrize("text", ["", "[]", "null", "{}", '["mark"]', '["mark", null, ["no-such-claim"]]', "[[[["])
def test_what_is_no_reason(text: str) -> None:
    with pytest.raises(ValueError):
        coding.from_text(text)


def test_claims_have_names_and_speak_of_cells_digits_and_houses() -> None:
    claim = Locked(4, ROW, BOX, (10, 11))
    assert name_of(claim) == "locked"
    said = spoken(claim)
    assert (said.cells, said.digits, said.houses) == ((10, 11), (4,), (ROW, BOX))
    chain = Refuted((0, 4), 2, NoPlace(ROW, 7), (ThenPlaced(9, 5, BOX), ThenGone(MARKS[0], ((20, 6),))))
    said = spoken(chain)
    assert (set(said.cells), set(said.digits), set(said.houses)) == ({0, 9, 20}, {4, 5, 6, 7}, {ROW, BOX})


def test_what_varies_from_board_to_board_is_no_part_of_the_argument() -> None:
    one, other = Locked(4, ROW, BOX, (10, 11)), Locked(4, ROW, BOX, (10, 11, 12))
    assert argument(one) == argument(other) != argument(replace(one, digit=5))
    reason = Reason("locked-candidates", None, one)
    assert reason.argues_as(replace(reason, claim=other))
    assert not reason.argues_as(replace(reason, technique=MARK))


def test_marks_joined_in_other_numbers_argue_alike() -> None:
    claim = Locked(4, ROW, BOX, (10, 11))
    few, many = (Reason(MARK, MarkRef.joined("dots", cells), claim) for cells in ((0, 1), (0, 1, 2)))
    assert few.argues_as(many)
    assert not few.argues_as(Reason(MARK, MarkRef.line("dots", CLASSIC.rows[0].cells), replace(claim, digit=5)))
