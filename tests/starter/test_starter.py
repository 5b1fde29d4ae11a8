"""The books that `bookmaker start` writes: sound, unique, the same every time, and never over somebody's work."""

from __future__ import annotations

from pathlib import Path

import pytest

from bookmaker.manifest import load
from bookmaker.manifest.bookfields import BOOK_KEYS
from bookmaker.manifest.puzzlefields import PUZZLE_KEYS
from bookmaker.proof import prove_all
from bookmaker.rules import keeps_all, kinds
from bookmaker.solve.verdict import Unique
from bookmaker.starter import write_starter
from bookmaker.trouble import BookTroubles


def test_the_small_book_is_sound_and_gentle(tmp_path: Path) -> None:
    folder = tmp_path / "new"
    assert write_starter(folder) == (folder / "book.yaml", folder / "book.schema.json")
    book = load(tmp_path / "new")
    assert book.warnings == ()
    assert [entry.puzzle.grid.size for entry in book.entries] == [9, 6, 7, 9]
    for proof in prove_all(book.entries):
        assert isinstance(proof.verdict, Unique), proof.entry.id
        assert proof.grade is not None and proof.grade.band <= 2, proof.entry.id


def test_the_small_book_teaches_every_field(tmp_path: Path) -> None:
    text = write_starter(tmp_path)[0].read_text()
    first = (*BOOK_KEYS[:7], *(key for key in PUZZLE_KEYS if key != "link"), "include", "chapters")
    missing = [key for key in first if f"{key}:" not in text]
    assert missing == []


@pytest.mark.parametrize("kind", sorted(kinds()))
def test_a_book_of_one_kind_has_exactly_one_solution(kind: str, tmp_path: Path) -> None:
    write_starter(tmp_path, kind)
    book = load(tmp_path)
    assert book.warnings == ()
    (entry,) = book.entries
    assert [rule.kind for rule in entry.puzzle.rules] == [kind]
    (proof,) = prove_all(book.entries)
    assert isinstance(proof.verdict, Unique)
    assert keeps_all(entry.puzzle, proof.verdict.solution)


def test_the_same_every_time(tmp_path: Path) -> None:
    first, second = (write_starter(tmp_path / name, "thermometer")[0].read_bytes() for name in ("a", "b"))
    assert first == second


@pytest.mark.parametrize("kind", [None, "thermometer"])
def test_nothing_is_overwritten(kind: str | None, tmp_path: Path) -> None:
    (tmp_path / "book.yaml").write_text("mine")
    with pytest.raises(BookTroubles) as found:
        write_starter(tmp_path, kind)
    assert [(t.code, t.place.file) for t in found.value.troubles] == [("exists", str(tmp_path / "book.yaml"))]
    assert (tmp_path / "book.yaml").read_text() == "mine"
    assert list(tmp_path.iterdir()) == [tmp_path / "book.yaml"]


def test_an_unknown_kind_is_refused_before_anything_is_written(tmp_path: Path) -> None:
    with pytest.raises(BookTroubles) as found:
        write_starter(tmp_path / "new", "thermometr")
    assert [(t.code, t.hint) for t in found.value.troubles] == [("unknown-rule", "did you mean “thermometer”?")]
    assert not (tmp_path / "new").exists()
