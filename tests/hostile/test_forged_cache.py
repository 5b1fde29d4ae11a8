"""A cache that lies: what an honest run says stays what is said, whatever stands in the file under whichever seal."""

from __future__ import annotations

import json
import os
import sqlite3
import sys
from collections.abc import Callable
from contextlib import closing
from dataclasses import replace
from hashlib import sha256
from pathlib import Path
from typing import Any

import pytest

from bookmaker.manifest.entries import Entry
from bookmaker.proof import Proof, prove_each
from bookmaker.proof.cache import FileStore, key_of
from bookmaker.proof.record import Findings, to_text
from bookmaker.proof.seal import NAME
from bookmaker.puzzle.grid import CLASSIC
from bookmaker.puzzle.puzzle import Puzzle
from bookmaker.solve.verdict import Several, Unique
from bookmaker.source.diagnostics import Place
from tests.digits import digits_from
from tests.published import MISPRINT, SEVENTEEN

posix = pytest.mark.skipif(sys.platform == "win32", reason="files have other permissions there")


def _entry(givens: str) -> Entry:
    return Entry("forged", Puzzle(CLASSIC, digits_from(givens)), Place("list", 1))


def _prove(store: FileStore | None, givens: str) -> Proof:
    (proof,) = prove_each(iter([_entry(givens)]), 0, store)
    return replace(proof, seconds=0.0)


@pytest.fixture
def store(tmp_path: Path) -> FileStore:
    return FileStore(tmp_path / "cache" / "proofs.sqlite")


@pytest.fixture(scope="module")
def honest() -> Proof:
    return _prove(None, SEVENTEEN)


def _set(at: list[Any], value: Any) -> Callable[[Any], None]:
    def forge(data: Any) -> None:
        for step in at[:-1]:
            data = data[step]
        data[at[-1]] = value

    return forge


def _swap(data: Any) -> None:
    data["grade"]["steps"].reverse()


def _strike_solution(data: Any) -> None:
    steps = data["grade"]["steps"]
    (placed,) = steps[-1][3]
    steps[0][4] = [placed]


def _idle(data: Any) -> None:
    """A step before the others that places and strikes nothing, and costs nothing."""
    reason, rung, cells, _, _, openings, empty, _ = data["grade"]["steps"][0]
    data["grade"]["steps"].insert(0, [reason, rung, cells, [], [], openings, empty, 0.0])


def _placed_again(data: Any) -> None:
    first, second, *_ = data["grade"]["steps"]
    second[3] += first[3]


def _cut(data: Any) -> None:
    data["grade"]["steps"].pop()


def _longer(data: Any) -> None:
    data["verdict"][1].append(1)


def _shorter(data: Any) -> None:
    data["verdict"][1].pop()


FORGERIES: dict[str, Callable[[Any], None]] = {
    "band 99": _set(["grade", "difficulty"], 99.0),
    "another difficulty": _set(["grade", "difficulty"], 1.5),
    "text for a difficulty": _set(["grade", "difficulty"], "hard"),
    "no number": _set(["grade", "difficulty"], float("nan")),
    "another effort": _set(["grade", "effort"], 1.0),
    "endless effort": _set(["grade", "effort"], float("inf")),
    "a number for a truth value": _set(["grade", "singles_only"], 3),
    "reached, though not": _set(["grade", "reached"], "yes"),
    "no grade": _set(["grade"], None),
    "82 cells": _longer,
    "80 cells": _shorter,
    "fractions for digits": _set(["verdict", 1, 0], 1.0),
    "a digit off the board": _set(["verdict", 1, 0], 0),
    "fewer guesses": _set(["verdict", 2], 999_999),
    "no prover of ours": _set(["verdict", 3], "oracle"),
    "no solution": _set(["verdict"], ["none", 3, "search"]),
    "the same solution twice": _set(["verdict"], ["several", [1] * 81, [1] * 81, 3, "search"]),
    "a count not asked for": _set(["tally"], [7, True]),
    "steps in another order": _swap,
    "a step left out": _cut,
    "a step that strikes the solution": _strike_solution,
    "a step that does nothing": _idle,
    "a cell filled again": _placed_again,
    "a digit that is none struck": _set(["grade", "steps", 0, 4], [[80, 0]]),
    "a digit beyond the last struck": _set(["grade", "steps", 0, 4], [[80, 10]]),
    "a truth value struck": _set(["grade", "steps", 0, 4], [[80, True]]),
    "a truth value for a cell": _set(["grade", "steps", 0, 2], [True]),
    "a fraction for a cell": _set(["grade", "steps", 0, 2], [1.0]),
    "another count of empty cells": _set(["grade", "steps", 0, 6], 63),
    "openings below nought": _set(["grade", "steps", 0, 5], -1),
    "a fraction for openings": _set(["grade", "steps", 0, 5], 0.5),
    "a step of less than no effort": _set(["grade", "steps", 0, 7], -1.0),
    "a cell off the board": _set(["grade", "steps", 0, 2], [81]),
    "a cell before the board": _set(["grade", "steps", 0, 2], [-1]),
    "text for a cell": _set(["grade", "steps", 0, 3], [["a1", 1]]),
    "a rung that is none": _set(["grade", "steps", 0, 1], 99),
    "text for openings": _set(["grade", "steps", 0, 5], "many"),
    "a reason of nothing": _set(["grade", "steps", 0, 0], "[]"),
    "a reason with numbers for words": _set(["grade", "steps", 0, 0], '["Reason",1,null,2]'),
    "a reason with a list in a list": _set(["grade", "steps", 0, 0], '["Reason","mark",[[]],null]'),
}


@pytest.mark.parametrize("forged", FORGERIES.values(), ids=FORGERIES)
def test_a_forgery_under_the_right_seal_is_refused(
    store: FileStore, honest: Proof, forged: Callable[[Any], None]
) -> None:
    assert isinstance(honest.verdict, Unique)
    data = json.loads(to_text(Findings(honest.verdict, honest.grade, honest.tally, honest.hardest)))
    forged(data)
    store.put([(key_of(honest.entry.puzzle, 0), json.dumps(data))])
    assert _prove(store, SEVENTEEN) == honest


def test_what_an_honest_run_kept_is_believed(store: FileStore, honest: Proof, monkeypatch: pytest.MonkeyPatch) -> None:
    _prove(store, SEVENTEEN)
    monkeypatch.setattr("bookmaker.proof.find_out", lambda *args: pytest.fail("found out again"))
    assert _prove(store, SEVENTEEN) == honest


def test_several_solutions_never_pass_for_one(store: FileStore, honest: Proof) -> None:
    """The worst of lies, told with a solution that keeps every rule and the grade of another puzzle."""
    several = _prove(None, MISPRINT)
    assert isinstance(several.verdict, Several)
    lie = Findings(Unique(several.verdict.first, several.verdict.nodes), honest.grade, None, honest.hardest)
    store.put([(key_of(several.entry.puzzle, 0), to_text(lie))])
    assert _prove(store, MISPRINT) == several


def test_a_seal_without_the_secret_is_none(store: FileStore) -> None:
    """A plain hash, the empty one, and one made with another's secret."""
    store.put([("key", "honest")])
    other = FileStore(store.file.parent.parent / "other" / "proofs.sqlite")
    other.put([("key", "forged")])
    with closing(sqlite3.connect(other.file)) as database:
        ((foreign,),) = database.execute("SELECT seal FROM proofs")
    for seal in (sha256(b"3:key6:forged").hexdigest(), "", foreign, None, 7):
        with closing(sqlite3.connect(store.file)) as database, database:
            database.execute("UPDATE proofs SET text = 'forged', seal = ?", (seal,))
        assert FileStore(store.file).get("key") is None
        assert FileStore(store.file).get_all(["key"]) == {}


@posix
def test_nobody_else_reads_it(store: FileStore) -> None:
    store.put([("key", "text")])
    assert {file.name: file.stat().st_mode & 0o777 for file in store.file.parent.iterdir()} == {
        NAME: 0o600,
        "proofs.sqlite": 0o600,
    }
    assert store.file.parent.stat().st_mode & 0o777 == 0o700


@posix
@pytest.mark.parametrize("name", [NAME, "proofs.sqlite"])
def test_a_cache_of_somebody_else_is_not_read(store: FileStore, monkeypatch: pytest.MonkeyPatch, name: str) -> None:
    store.put([("key", "text")])
    assert FileStore(store.file).get("key") == "text"
    if os.geteuid() == 0:
        os.chown(store.file.parent / name, 12345, -1)
    else:
        monkeypatch.setattr(os, "geteuid", lambda: 12345)
    assert FileStore(store.file).get("key") is None


@posix
def test_a_secret_that_others_could_read_is_made_again(store: FileStore) -> None:
    store.put([("key", "text")])
    secret = store.file.parent / NAME
    before = secret.read_bytes()
    secret.chmod(0o644)
    assert FileStore(store.file).get("key") is None
    store.put([("key", "text")])
    assert secret.read_bytes() != before
    assert FileStore(store.file).get("key") == "text"


def test_a_secret_cut_short_is_made_again(store: FileStore) -> None:
    store.put([("key", "text")])
    (store.file.parent / NAME).write_bytes(b"short")
    assert FileStore(store.file).get("key") is None
    store.put([("key", "text")])
    assert FileStore(store.file).get("key") == "text"
