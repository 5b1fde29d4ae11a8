"""Progress: nothing for short work, a line a second for long work, and the end of it."""

from __future__ import annotations

import pytest

from bookmaker.cli import progress
from bookmaker.cli.progress import Progress


@pytest.fixture
def clock(monkeypatch: pytest.MonkeyPatch) -> list[float]:
    now = [100.0]
    monkeypatch.setattr(progress, "monotonic", lambda: now[0])
    return now


def test_short_work_says_nothing(clock: list[float], capsys: pytest.CaptureFixture[str]) -> None:
    watch = Progress("proved", began=clock[0])
    for done in range(1, 11):
        clock[0] += 0.1
        watch(done, 10)
    assert capsys.readouterr().err == ""


def test_long_work_says_a_line_a_second_and_its_end(clock: list[float], capsys: pytest.CaptureFixture[str]) -> None:
    watch = Progress("drew", "pages of book.pdf", clock[0])
    for done in range(1, 10):
        clock[0] += 0.4
        watch(done, 9)
    said = [f"drew {done} of 9 pages of book.pdf" for done in (3, 6, 9)]
    assert capsys.readouterr().err.splitlines() == said
