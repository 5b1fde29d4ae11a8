"""Proofs kept between runs: the same to the last bit, and never trusted when damaged, foreign or stale."""

from __future__ import annotations

import sqlite3
import sys
from contextlib import closing
from dataclasses import replace
from pathlib import Path
from threading import Timer
from typing import Any

import pytest

import bookmaker.proof as room
from bookmaker.manifest.entries import Entry
from bookmaker.proof import Proof, prove_each
from bookmaker.proof.cache import FileStore, key_of, user_store
from bookmaker.proof.record import Findings, from_text, to_text
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import NoSolution, Several, Tally, Undecided, Unique
from bookmaker.source.diagnostics import Place
from tests.digits import digits_from
from tests.published import MISPRINT, SEVENTEEN

UNIQUE, SEVERAL = SEVENTEEN, MISPRINT
NONE = "3" + UNIQUE[1:]  # its one solution has a 2 there


def _entries(*givens: str) -> list[Entry]:
    return [Entry(str(i), _puzzle(text), Place("list", i + 1)) for i, text in enumerate(givens)]


def _puzzle(givens: str) -> RuledPuzzle:
    return Puzzle(CLASSIC, digits_from(givens))


def _prove(store: FileStore, *givens: str, count: int = 0) -> list[Proof]:
    return [replace(proof, seconds=0.0) for proof in prove_each(iter(_entries(*givens)), count, store)]


@pytest.fixture
def store(tmp_path: Path) -> FileStore:
    return FileStore(tmp_path / "deep" / "proofs.sqlite")


@pytest.fixture
def calls(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    made: list[str] = []
    honest = room.find_out

    def counted(puzzle: RuledPuzzle, *asked: Any) -> Findings:
        made.append(puzzle.givens_text)
        return honest(puzzle, *asked)

    monkeypatch.setattr(room, "find_out", counted)
    return made


def test_a_second_run_proves_nothing_and_says_the_same(store: FileStore, calls: list[str]) -> None:
    first = _prove(store, UNIQUE, SEVERAL, NONE)
    assert len(calls) == 3
    assert _prove(store, UNIQUE, SEVERAL, NONE) == first
    assert len(calls) == 3
    assert isinstance(first[0].verdict, Unique)
    assert isinstance(first[1].verdict, Several)
    assert isinstance(first[2].verdict, NoSolution)


def test_the_hardest_step_is_found_when_it_is_asked_for(store: FileStore, monkeypatch: pytest.MonkeyPatch) -> None:
    """A book does without it; what it has kept is taken for the rest."""
    (whole,) = prove_each(iter(_entries(UNIQUE)))
    (without,) = prove_each(iter(_entries(UNIQUE)), store=store, with_hardest=False)
    assert without.hardest is None and without.grade == whole.grade
    with monkeypatch.context() as barred:
        barred.setattr(room, "prove", lambda problem: whole.verdict)
        barred.setattr(room, "grade", None)
        (added,) = _prove(store, UNIQUE)
    assert added == replace(whole, seconds=0.0)
    monkeypatch.setattr(room, "hardest", None)
    assert _prove(store, UNIQUE) == [added]


def test_another_count_is_another_question(store: FileStore, calls: list[str]) -> None:
    _prove(store, SEVERAL)
    (proof,) = _prove(store, SEVERAL, count=100)
    assert proof.tally == Tally(100, complete=False)
    assert len(calls) == 2


@pytest.mark.parametrize(
    "harm",
    [
        "UPDATE proofs SET text = replace(text, '\"difficulty\":', '\"dificulty\":')",
        "UPDATE proofs SET text = ''",
        "UPDATE proofs SET seal = 'x'",
        "UPDATE proofs SET text = NULL",
        "DROP TABLE proofs",
    ],
)
def test_a_damaged_entry_is_found_out_anew(store: FileStore, calls: list[str], harm: str) -> None:
    first = _prove(store, UNIQUE)
    with sqlite3.connect(store.file) as database:
        database.execute(harm)
    database.close()
    assert _prove(store, UNIQUE) == first
    assert len(calls) == 2
    assert _prove(store, UNIQUE) == first
    assert len(calls) == 2


def test_a_file_that_is_no_cache_is_replaced(store: FileStore, calls: list[str]) -> None:
    store.file.parent.mkdir()
    store.file.write_bytes(b"not a database at all, but a long enough file to look at " * 40)
    first = _prove(store, UNIQUE)
    assert _prove(store, UNIQUE) == first
    assert len(calls) == 1


def test_a_foreign_solution_under_a_right_seal_is_refused(store: FileStore, calls: list[str]) -> None:
    puzzle = _puzzle(UNIQUE)
    (proof,) = _prove(store, UNIQUE)
    assert isinstance(proof.verdict, Unique)
    swapped = tuple({1: 2, 2: 1}.get(digit, digit) for digit in proof.verdict.solution)
    store.put([(key_of(puzzle, 0), to_text(Findings(Unique(swapped), None, None)))])
    assert _prove(store, UNIQUE) == [proof]
    assert len(calls) == 2


def test_without_a_place_to_keep_them_proofs_are_still_made(tmp_path: Path, calls: list[str]) -> None:
    (tmp_path / "file").write_text("in the way")
    blocked = FileStore(tmp_path / "file" / "proofs.sqlite")
    assert _prove(blocked, UNIQUE) == _prove(blocked, UNIQUE)
    assert len(calls) == 2


@pytest.mark.parametrize(("held", "said", "kept"), [(0.0, 0, True), (0.2, 1, True), (60.0, 1, False)])
def test_a_store_that_another_process_holds_is_waited_for_with_a_word(
    store: FileStore, monkeypatch: pytest.MonkeyPatch, held: float, said: int, kept: bool
) -> None:
    """Held for so many seconds; a word after a twentieth of one, given up after half of one."""
    monkeypatch.setattr("bookmaker.proof.cache.SILENCE", 0.05)
    monkeypatch.setattr("bookmaker.proof.cache.PATIENCE", 0.5)
    store.put([("old", "text")])
    words: list[str] = []
    patient = FileStore(store.file, lambda: words.append("waiting"))
    with closing(sqlite3.connect(store.file, check_same_thread=False, isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        release = Timer(held, other.execute, ["COMMIT"])
        if held:
            release.start()
        else:
            other.execute("COMMIT")
        patient.put([("new", "text")])
        release.cancel()
        release.join() if held else None
    assert len(words) == said
    assert store.get("new") == ("text" if kept else None)


def test_the_key_depends_on_all_that_matters(monkeypatch: pytest.MonkeyPatch) -> None:
    puzzle = _puzzle(UNIQUE)
    keys = {key_of(puzzle, 0), key_of(puzzle, 1), key_of(_puzzle(SEVERAL), 0)}
    monkeypatch.setattr("bookmaker.proof.cache.code_version", lambda *places: "other code")
    keys.add(key_of(puzzle, 0))
    assert len(keys) == 4
    assert key_of(puzzle, 0) == key_of(_puzzle(UNIQUE), 0)


def test_records_come_back_as_they_were() -> None:
    solution = tuple([1] * 81)
    for verdict in (NoSolution(3), Undecided(10), Undecided(10, solution), Several(solution, solution, 2)):
        findings = Findings(verdict, None, Tally(2, complete=True))
        assert from_text(to_text(findings)) == findings
    for text in ("", "[]", "{}", '{"verdict":["maybe"],"tally":null,"grade":null}', "null", "[" * 100_000):
        with pytest.raises(ValueError):
            from_text(text)


@pytest.mark.skipif(sys.platform in ("win32", "darwin"), reason="the folder has another name there")
def test_the_store_lies_in_the_users_cache_folder(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """XDG Base Directory Specification 0.8; `BOOKMAKER_CACHE` goes before it."""
    monkeypatch.delenv("BOOKMAKER_CACHE")
    monkeypatch.delenv("XDG_CACHE_HOME", raising=False)
    monkeypatch.setenv("HOME", str(tmp_path))
    assert user_store().file == tmp_path / ".cache" / "bookmaker" / "proofs.sqlite"
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "elsewhere"))
    assert user_store().file == tmp_path / "elsewhere" / "bookmaker" / "proofs.sqlite"
    monkeypatch.setenv("BOOKMAKER_CACHE", str(tmp_path / "mine"))
    assert user_store().file == tmp_path / "mine" / "proofs.sqlite"
