"""Numbers and dates in sentences: what is counted agrees, by the plural rules of the language (Unicode CLDR)."""

from __future__ import annotations

import pytest

from bookmaker.language import catalogue, date_said


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
