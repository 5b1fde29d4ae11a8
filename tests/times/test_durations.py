"""Times as people write them."""

from __future__ import annotations

import pytest

from bookmaker.times.durations import minutes_of, unfinished_after


@pytest.mark.parametrize(
    ("text", "minutes"),
    [
        ("12", 12.0),
        ("12.5", 12.5),
        ("12,5", 12.5),
        ("12:30", 12.5),
        ("0:45", 0.75),
        ("1:02:30", 62.5),
        ("75:00", 75.0),
        ("12 min", 12.0),
        ("12m", 12.0),
        ("12m30s", 12.5),
        ("12 min 30 sec", 12.5),
        ("12′30″", 12.5),
        ("12'30\"", 12.5),
        ("1 h 2 min", 62.0),
        ("90s", 1.5),
        ("1.5 h", 90.0),
    ],
)
def test_minutes(text: str, minutes: float) -> None:
    assert minutes_of(text) == pytest.approx(minutes)


@pytest.mark.parametrize(
    "text", ["", "0", "0:00", "12:75", "1:75:00", "-5", "fast", "12.5.5", "1e3", "99999", "h", "12 13"]
)
def test_what_is_no_time(text: str) -> None:
    assert minutes_of(text) is None


def test_unfinished_after() -> None:
    assert [unfinished_after(text) for text in ("> 45", ">45", "over 45", "more than 1:00:00", "45")] == [
        "45",
        "45",
        "45",
        "1:00:00",
        None,
    ]
