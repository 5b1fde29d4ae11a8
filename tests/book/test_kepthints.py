"""Hints kept between runs: the same to the letter, told again when damaged, stale or asked for."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Sequence
from pathlib import Path

import pytest

import bookmaker.book.kepthints as room
from bookmaker.book.contents import Hints
from bookmaker.book.hints import hints_of
from bookmaker.book.kepthints import CODE_THAT_WORDS, hint_key, with_hints
from bookmaker.proof.cache import ROOMS_THAT_MATTER, FileStore
from bookmaker.proof.findings import Proof
from tests.cli.running import run
from tests.tell.stories import EASY, HARDER, MIRRORED, demo_entries, demo_proof, proof_of

HOME = Path(room.__file__).resolve().parents[1]


def hints_of_all(proofs: Sequence[Proof], store: FileStore) -> list[Hints | None]:
    told = [*with_hints(proofs, store)]
    assert [proof for proof, _ in told] == list(proofs)
    return [hints for _, hints in told]


@pytest.fixture
def store(tmp_path: Path) -> FileStore:
    return FileStore(tmp_path / "proofs.sqlite")


@pytest.fixture
def told(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The ids of the puzzles whose hints are told."""
    ids: list[str] = []

    def counted(proof: Proof, language: str) -> Hints | None:
        ids.append(proof.entry.id)
        return hints_of(proof, language)

    monkeypatch.setattr(room, "hints_of", counted)
    return ids


def test_a_second_run_tells_nothing_and_says_the_same(store: FileStore, told: list[str]) -> None:
    proofs = [demo_proof(name) for name in demo_entries()] + [proof_of(EASY)]
    first = hints_of_all(proofs, store)
    assert len(told) == len(proofs) and None not in first
    assert hints_of_all(proofs, store) == first == [hints_of(proof) for proof in proofs]
    assert len(told) == len(proofs)


def test_a_puzzle_without_a_grade_has_none(store: FileStore) -> None:
    several = proof_of(EASY.replace("8", "."))
    assert several.grade is None
    assert hints_of_all([several, proof_of(HARDER)], store) == [None, hints_of(proof_of(HARDER))]


@pytest.mark.parametrize(
    "harm",
    [
        "UPDATE proofs SET text = replace(text, ' ', '  ')",
        "UPDATE proofs SET text = ''",
        "UPDATE proofs SET seal = 'x'",
        "UPDATE proofs SET text = NULL",
        "DROP TABLE proofs",
    ],
)
def test_damaged_hints_are_told_anew(store: FileStore, told: list[str], harm: str) -> None:
    proofs = [proof_of(HARDER)]
    first = hints_of_all(proofs, store)
    with sqlite3.connect(store.file) as database:
        database.execute(harm)
    database.close()
    assert hints_of_all(proofs, store) == first
    assert len(told) == 2
    assert hints_of_all(proofs, store) == first
    assert len(told) == 2


@pytest.mark.parametrize("text", ["", "null", "[]", '["one", "two"]', '["one", "two", 3]', "{}", "[" * 100_000])
def test_what_is_no_record_of_hints_is_told_anew(store: FileStore, told: list[str], text: str) -> None:
    proof = proof_of(HARDER)
    store.put([(hint_key(proof.entry.puzzle), text)])
    assert hints_of_all([proof], store) == [hints_of(proof)]
    assert len(told) == 1


def test_each_puzzle_has_its_own(store: FileStore) -> None:
    proofs = [proof_of(givens) for givens in (EASY, HARDER, MIRRORED)]
    assert len({hint_key(proof.entry.puzzle) for proof in proofs}) == 3
    hints_of_all(proofs, store)
    assert hints_of_all(proofs[::-1], store) == [hints_of(proof) for proof in proofs[::-1]]


@pytest.mark.parametrize("code", [ROOMS_THAT_MATTER, CODE_THAT_WORDS])
def test_a_change_of_code_makes_them_stale(monkeypatch: pytest.MonkeyPatch, code: tuple[str, ...]) -> None:
    puzzle = proof_of(EASY).entry.puzzle
    before = hint_key(puzzle)

    def version(*places: str) -> str:
        return f"{places} changed" if places == code else f"{places}"

    for module in ("bookmaker.proof.cache", "bookmaker.book.kepthints"):
        monkeypatch.setattr(f"{module}.code_version", lambda *places: f"{places}")
    unchanged = hint_key(puzzle)
    for module in ("bookmaker.proof.cache", "bookmaker.book.kepthints"):
        monkeypatch.setattr(f"{module}.code_version", version)
    assert len({before, unchanged, hint_key(puzzle)}) == 3


def test_all_code_that_words_hints_is_in_their_key() -> None:
    """What is left out holds values only, or reads the manifest: the puzzle itself is in the key."""
    values = {"book.contents", "manifest.entries", "source.placed", "source.diagnostics"}
    files = [
        file
        for place in CODE_THAT_WORDS
        for file in ((HOME / place).rglob("*.py") if "." not in place else [HOME / place])
    ]
    assert len(files) > 10
    for file in files:
        for module in re.findall(r"^from bookmaker\.(\S+) import", file.read_text(encoding="utf-8"), re.MULTILINE):
            inside = module.split(".")[0] in (*ROOMS_THAT_MATTER, *CODE_THAT_WORDS)
            assert inside or module in values, f"{file.name} takes words from {module}"


def test_a_book_asked_for_anew_tells_them_anew(
    tmp_path: Path, told: list[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("BOOKMAKER_CACHE", str(tmp_path / "cache"))
    (tmp_path / "book.yaml").write_text(
        f"book: {{title: One, permission: for this test}}\npuzzles: [{{id: one, givens: '{HARDER}'}}]\n"
    )
    printed = []
    for fresh in ((), (), ("--fresh",), ()):
        assert run("typeset", tmp_path, "--out", tmp_path / "out", *fresh).exit_code == 0
        printed.append((tmp_path / "out" / "book.pdf").read_bytes())
    assert told == ["one", "one"]
    assert len(set(printed)) == 1
