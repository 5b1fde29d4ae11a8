"""Runs: the same file whoever works, on from where it was stopped, no look-alike, and why a wish is not met."""

from __future__ import annotations

from itertools import islice
from pathlib import Path
from time import monotonic

import pytest

from bookmaker.draft.run import Found, Run, take_up
from bookmaker.draft.telling import missed_lines
from bookmaker.manifest import load
from bookmaker.proof.executors import processes
from bookmaker.puzzle.grid import boxed_grid
from bookmaker.rules import kinds, problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from bookmaker.source.diagnostics import BookErrors
from bookmaker.symmetry import keys_of
from bookmaker.wishes.rulewishes import by_chance
from bookmaker.wishes.span import Span
from bookmaker.wishes.wish import Wish

SIX = boxed_grid(6, 2, 3)
CAGES = Wish(
    grid=SIX, rules=(by_chance(kinds()["cage"], SIX),), puzzles=3, tags=("small",), texts={"title": "No {number}"}
)
PLAIN = Wish(grid=SIX, puzzles=2, texts={"id": "plain-{number}"}, seed=4)
WISHES = (CAGES, PLAIN)


def keys_in(file: Path) -> set[str]:
    found = set()
    for entry in load(file).entries:
        verdict = prove(problem_of(entry.puzzle))
        assert isinstance(verdict, Unique)
        found.add(keys_of(entry.puzzle, verdict.solution).puzzle)
    return found


def finished(run: Run, workers: int = 1) -> list[str]:
    with processes(workers) as executor:
        return [event.id for event in run.go_on(executor, workers - 1) if isinstance(event, Found)]


@pytest.fixture(scope="module")
def whole(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The file of a run that nothing stopped."""
    file = tmp_path_factory.mktemp("run") / "drafted.yaml"
    assert finished(take_up(file, WISHES, (), keys_in)) == ["no-1", "no-2", "no-3", "plain-1", "plain-2"]
    return file


def test_what_is_written_is_a_list_of_puzzles(whole: Path) -> None:
    entries = load(whole).entries
    assert sorted(entry.title for entry in entries if entry.tags == ("small",)) == ["No 1", "No 2", "No 3"]
    assert sum(not entry.puzzle.rules for entry in entries) == 2
    assert len(keys_in(whole)) == 5


def test_two_workers_give_the_same_file(whole: Path, tmp_path: Path) -> None:
    finished(take_up(tmp_path / "drafted.yaml", WISHES, (), keys_in), 2)
    assert (tmp_path / "drafted.yaml").read_bytes() == whole.read_bytes()


def test_a_run_that_is_stopped_goes_on(whole: Path, tmp_path: Path) -> None:
    file = tmp_path / "drafted.yaml"
    with processes(1) as executor:
        events = take_up(file, WISHES, (), keys_in).go_on(executor, 0)
        stopped = list(islice((event.id for event in events if isinstance(event, Found)), 2))
    assert stopped == ["no-1", "no-2"]
    assert finished(take_up(file, WISHES, (), keys_in)) == ["no-3", "plain-1", "plain-2"]
    assert file.read_bytes() == whole.read_bytes()
    assert finished(take_up(file, WISHES, (), keys_in)) == []


def test_a_file_of_other_wishes_is_left_alone(whole: Path) -> None:
    before = whole.read_bytes()
    with pytest.raises(BookErrors) as raised:
        take_up(whole, (PLAIN,), (), keys_in)
    assert [diagnostic.code for diagnostic in raised.value.diagnostics] == ["other-file"]
    assert whole.read_bytes() == before


def test_look_alikes_are_refused(whole: Path, tmp_path: Path) -> None:
    known = keys_in(whole)
    assert finished(take_up(tmp_path / "drafted.yaml", (CAGES,), known, keys_in)) == ["no-1", "no-2", "no-3"]
    assert not keys_in(tmp_path / "drafted.yaml") & known


def test_time_is_shared_out_among_wishes(tmp_path: Path) -> None:
    narrow = Wish(grid=SIX, bands=Span(5, 5), refused=frozenset({"what-if"}), texts={"id": "narrow-{number}"})
    run = take_up(tmp_path / "drafted.yaml", (narrow, PLAIN), (), keys_in)
    with processes(1) as executor:
        found = [event.id for event in run.go_on(executor, 0, monotonic() + 4) if isinstance(event, Found)]
    assert found == ["plain-1", "plain-2"]


@pytest.mark.parametrize(
    ("wish", "said"),
    [
        (Wish(grid=SIX, pattern=(0, 1, 2)), "the pattern’s givens left several solutions; give it more cells"),
        (
            Wish(grid=SIX, bands=Span(5, 5)),
            "it came out in another band, Stroll; widen the span: “band: Stroll to Summit”",
        ),
        (Wish(grid=SIX, givens=Span(0, 4)), "givens at the nearest); widen “givens”"),
    ],
)
def test_why_a_wish_is_not_met(wish: Wish, said: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("bookmaker.draft.run.PATIENCE", 2)
    run = take_up(tmp_path / "drafted.yaml", (wish,), (), keys_in)
    assert finished(run) == []
    lines = list(missed_lines(run.progress[0]))
    assert lines[0] == "wish: 0 of one puzzle after two attempts"
    assert any(said in line for line in lines), lines
