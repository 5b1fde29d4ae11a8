"""An attempt ends when its time is up, or when it has taken more than any should, and looks often enough to know."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from pathlib import Path
from time import monotonic

import pytest

from bookmaker.draft.attempt import Drafted, Missing, attempt, attempt_within
from bookmaker.draft.patience import OutOfTime, Patience
from bookmaker.draft.run import Progress, take_up
from bookmaker.draft.telling import missed_lines
from bookmaker.proof.executors import processes
from bookmaker.puzzle.grid import CLASSIC, boxed_grid
from bookmaker.puzzle.overlapping import overlapping_grids
from bookmaker.rules import kinds
from bookmaker.wishes.rulewishes import by_chance
from bookmaker.wishes.wish import Wish

FIVE = overlapping_grids(9, (3, 3), [(0, 0), (0, 12), (6, 6), (12, 0), (12, 12)])
PIECE = 1_500_000
"""Effort that may go by from one look at the clock to the next, about a second."""


@dataclass
class Noted(Patience):
    pieces: list[int] = field(default_factory=list)

    def look(self, spent: int = 0) -> None:
        self.pieces.append(spent)
        super().look(spent)


@pytest.mark.parametrize("kind", ["", "thermometer", "cage"])
def test_no_piece_of_an_attempt_takes_long(kind: str) -> None:
    """On five grids that overlap an attempt took ten seconds and more, whatever time was given."""
    patience = Noted()
    attempt(Wish(FIVE, (by_chance(kinds()[kind], FIVE),) if kind else ()), 1, patience)
    assert len(patience.pieces) > 50
    assert max(patience.pieces) < PIECE


def test_an_attempt_ends_with_its_time() -> None:
    with pytest.raises(OutOfTime):
        attempt(Wish(CLASSIC), 0, Patience(0.0))
    assert attempt_within(Wish(CLASSIC), 0, 0.0) is None
    assert isinstance(attempt_within(Wish(CLASSIC), 0, 600.0), Drafted)


def test_an_attempt_that_takes_too_much_is_missed_on_every_machine() -> None:
    wish, whole = Wish(CLASSIC, (by_chance(kinds()["cage"], CLASSIC),)), Patience()
    made = attempt(wish, 1, whole)
    assert attempt(wish, 1, Patience(most=whole.spent)) == made
    assert attempt(wish, 1, Patience(most=whole.spent - 1)) == Missing(1, "long")


def test_a_run_whose_time_was_up_goes_on_as_if_it_had_not_been(tmp_path: Path) -> None:
    wishes = (Wish(boxed_grid(6, 2, 3), puzzles=2),)
    texts = []
    for name, moments in (("whole", [None]), ("cut", [monotonic() - 1, None])):
        for until in moments:
            run = take_up(tmp_path / f"{name}.yaml", wishes, (), lambda path: ())
            with processes(1) as executor:
                list(run.go_on(executor, 0, until))
            assert run.progress[0].met is (until is None)
        texts.append((tmp_path / f"{name}.yaml").read_text(encoding="utf-8"))
    assert texts[0] == texts[1]


def test_it_is_said_that_no_attempt_came_to_its_end() -> None:
    lines = list(missed_lines(Progress(replace(Wish(), puzzles=1))))
    assert "--for" in lines[-1]
