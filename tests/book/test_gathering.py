"""The puzzles of a book gathered by workers: the same as made by one, and everything found out is kept."""

from __future__ import annotations

import time
from collections.abc import Callable
from concurrent.futures import Executor, Future, ThreadPoolExecutor
from pathlib import Path
from typing import Any

import pytest

from bookmaker.book import bind, make_book
from bookmaker.book.contents import BookPuzzle
from bookmaker.book.gathering import TOGETHER, Gathered, gather
from bookmaker.manifest.entries import Manifest
from bookmaker.proof import prove_all
from bookmaker.proof.cache import FileStore, FreshStore, NoStore, Store, key_of
from bookmaker.proof.executors import AHEAD, InProcess, done, processes
from tests.layout.sample_book import sample_manifest

MANIFEST: Manifest = sample_manifest()


def gathered(store: Store, executor: Executor | None = None) -> list[Gathered]:
    return [*gather(MANIFEST.entries, MANIFEST.band_names, True, store, executor or InProcess())]


def test_workers_gather_what_one_makes() -> None:
    book = make_book(MANIFEST, prove_all(MANIFEST.entries))
    with processes(2) as executor:
        assert bind(MANIFEST, gathered(NoStore(), executor)) == book
    assert bind(MANIFEST, gathered(NoStore())) == book


class Shares(InProcess):
    """Notes how many entries each piece of work has, and finds nothing out."""

    def __init__(self) -> None:
        self.sizes: list[int] = []

    def submit(self, fn: Callable[..., Any], /, *args: Any, **kwargs: Any) -> Future[Any]:
        self.sizes.append(len(args[0]))
        return done(([], []))


@pytest.mark.parametrize("copies", (1, 3, 10, 100))
def test_a_short_book_has_work_for_many_and_a_long_one_little_ado(copies: int) -> None:
    entries, shares = MANIFEST.entries * copies, Shares()
    assert [*gather(entries, MANIFEST.band_names, True, NoStore(), shares)] == []
    assert sum(shares.sizes) == len(entries) and max(shares.sizes) <= TOGETHER
    assert len(shares.sizes) >= min(len(entries), AHEAD) / 2 and len(shares.sizes) <= max(2 * AHEAD, len(entries) / 15)


def test_workers_begin_before_the_first_puzzle_is_asked_for() -> None:
    begun = list[object]()
    with ThreadPoolExecutor(1, initializer=begun.append, initargs=("a worker",)) as executor:
        puzzles = gather(MANIFEST.entries, MANIFEST.band_names, False, NoStore(), executor)
        deadline = time.monotonic() + 60
        while not begun and time.monotonic() < deadline:
            time.sleep(0.01)
        assert begun and len([*puzzles]) == len(MANIFEST.entries)


def test_proofs_come_without_their_paths() -> None:
    for (proof, puzzle), entry in zip(gathered(NoStore()), MANIFEST.entries, strict=True):
        assert (proof.entry, proof.grade, proof.solution) == (entry, None, puzzle.solution)
        assert puzzle.rating is not None and puzzle.rating.difficulty > 0


def test_what_is_found_out_is_kept_and_taken_along(tmp_path: Path) -> None:
    store = FileStore(tmp_path / "proofs.sqlite")
    first = gathered(store)
    assert all(store.get(key_of(entry.puzzle, 0)) for entry in MANIFEST.entries)

    def strip(pairs: list[Gathered]) -> list[BookPuzzle]:
        return [puzzle for _, puzzle in pairs]

    assert strip(gathered(store)) == strip(first)
    proof, _ = gathered(store)[0]
    assert proof.seconds == 0.0  # nothing was proved again
    assert gathered(FreshStore(store))[0][0].seconds > 0.0
