"""Numbers and dates in sentences: what is counted agrees, by the plural rules of the language (Unicode CLDR)."""

from __future__ import annotations

import pytest

from bookmaker.language import catalogue, date_said
from bookmaker.language.figures import decimal_said


@pytest.mark.parametrize(
    ("language", "count", "said"),
    [
        ("pl", 2, "dwie nagie pary"),
        ("pl", 5, "pięć nagich par"),
        ("pl", 21, "21 nagich par"),
        ("pl", 22, "22 nagie pary"),
        ("uk", 2, "дві відкриті пари"),
        ("uk", 5, "п’ять відкритих пар"),
        ("uk", 21, "21 відкрита пара"),
    ],
)
def test_what_is_counted_agrees_with_a_number_in_words(language: str, count: int, said: str) -> None:
    words = catalogue(language)
    assert words.say("technique-naked-pair", "many", count=words.number(count)) == said


def test_a_date_is_written_as_the_language_does_with_signs_that_the_typeface_has() -> None:
    assert date_said(catalogue("pl"), 2026, 3, 14) == "14 marca 2026"
    assert date_said(catalogue("uk"), 2026, 3, 14) == "14 березня 2026\u00a0р."


@pytest.mark.parametrize(
    ("language", "said"), [("en", "3.4"), ("en-US", "3.4"), ("de", "3,4"), ("fr", "3,4"), ("uk", "3,4")]
)
def test_decimals_stand_after_what_the_language_puts_before_them(language: str, said: str) -> None:
    assert decimal_said(catalogue(language), "3.4") == said
