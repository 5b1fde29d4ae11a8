"""Signs of life while one proof runs long."""

from __future__ import annotations

import re

import pytest

from bookmaker.manifest.entries import Entry
from bookmaker.proof import prove_all, pulse
from bookmaker.proof.executors import processes
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.source.diagnostics import Place
from tests.digits import digits_from
from tests.rules.harness import sound_entry

# From the shared list of hard classics (MIT-licensed notebook collection norvig/pytudes), its first.
HARD = "4.....8.5.3..........7......2.....6.....8.4......1.......6.3.7.5..2.....1.4......"


@pytest.fixture
def impatient(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(pulse, "PATIENCE", 0.0)
    monkeypatch.setattr(pulse, "BEAT", 0.001)


@pytest.mark.usefixtures("impatient")
def test_a_long_proof_says_how_many_guesses_are_left() -> None:
    said: list[str] = []
    # A grid with no more than one mark has solutions without end: counting them goes on until the limit.
    open_grid = Puzzle(CLASSIC, (0,) * 81, (sound_entry("non-consecutive: yes"),))
    entry = Entry("endless", open_grid, Place("book.yaml"))
    with processes(1, said.append) as executor:
        prove_all(
            [entry, Entry("hard", Puzzle(CLASSIC, digits_from(HARD)), Place("book.yaml"))], 300, executor=executor
        )
    assert any(re.match(r"“endless” is being proven: \d+ s, [\d,]+ guesses made$", line) for line in said)
    counting = r"“endless” is being counted out: \d+ s, ([\d,]+) of ([\d,]+) guesses made, ([\d,]+) left"
    read = [
        [int(figure.replace(",", "")) for figure in match.groups()]
        for match in (re.fullmatch(counting, line) for line in said)
        if match
    ]
    assert read
    assert all(made + left == budget for made, budget, left in read)
    assert any(line.startswith("“hard” is being graded: ") for line in said)


def test_a_short_one_says_nothing() -> None:
    said: list[str] = []
    with processes(1, said.append) as executor:
        prove_all([Entry("hard", Puzzle(CLASSIC, digits_from(HARD)), Place("book.yaml"))], executor=executor)
    assert said == []


def test_nothing_is_said_of_work_that_is_done(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(pulse, "PATIENCE", 0.0)
    with pulse.at_work("one"):
        assert (pulse.sign(1e12) or "").startswith("“one” is being proven: ")
    assert pulse.sign(1e12) is None
