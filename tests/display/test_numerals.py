"""Roman numerals: common knowledge."""

from __future__ import annotations

import pytest

from bookmaker.display.numerals import roman, roman_value


@pytest.mark.parametrize(
    ("value", "numerals"),
    [(1, "i"), (4, "iv"), (9, "ix"), (14, "xiv"), (40, "xl"), (49, "xlix"), (90, "xc"), (1994, "mcmxciv")],
)
def test_roman_numerals(value: int, numerals: str) -> None:
    assert roman(value) == numerals
    assert roman_value(numerals) == value


@pytest.mark.parametrize("text", ["", "iiii", "vx", "ivi", "x1", "page", "IV"])
def test_what_is_no_roman_numeral(text: str) -> None:
    assert roman_value(text) == 0


def test_every_number_comes_back() -> None:
    assert all(roman_value(roman(number)) == number for number in range(1, 4000))
