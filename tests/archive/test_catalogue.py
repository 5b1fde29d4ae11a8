"""The catalogue: every puzzle of a folder once, with its history, kept between runs as long as its file is the same."""

from __future__ import annotations

from pathlib import Path
from random import Random

import pytest

import bookmaker.archive.reading as reading
from bookmaker.archive import Catalogue, open_catalogue
from bookmaker.archive.listing import Wanted, as_json, chosen
from bookmaker.archive.setters import spelled_twice
from bookmaker.proof.cache import FileStore
from bookmaker.puzzle.puzzle import digits_text
from bookmaker.source.diagnostics import BookErrors
from tests.digits import digits_from
from tests.grade.turns import turned
from tests.manifest.books import GIVENS, write

EASY = "53..7....6..195....98....6.8...6...34..8.3..17...2...6.6....28....419..5....8..79"
"""The worked example of a general modeller, PuLP 2.9.0 (`examples/Sudoku1.py`)."""

COPY = digits_text(turned(digits_from(EASY), Random(5)))

FILES: dict[str, str | bytes] = {
    "store/a.yaml": (
        f"- id: one\n  setter: Old Heron\n  tags: harbour\n  shown: 2024\n  givens: {EASY}\n"
        f"- id: two\n  setter: Old Herron\n  permission: {{state: refused}}\n  givens: {GIVENS}\n"
    ),
    "store/book.yaml": "book: {title: B, permission: by B}\npuzzles:\n- include: in.yaml\n- pick: one\n",
    "store/in.yaml": (
        "- id: broken\n  givens: " + "." * 81 + "\n"
        "- id: marked\n  size: 4\n  givens: 1...............\n  rules: {thermometer: r4c1-r1c1, king: yes}\n"
    ),
    "store/archive.yaml": "printed-in: ../printed.yaml\n",
    "printed.yaml": f"book: {{title: Printed}}\npuzzles:\n- id: x\n  givens: {COPY}\n",
}


@pytest.fixture
def store(tmp_path: Path) -> FileStore:
    return FileStore(tmp_path / "cache" / "proofs.sqlite")


def opened(folder: Path, store: FileStore) -> Catalogue:
    write(folder, FILES)
    return open_catalogue([folder / "store"], store)


def test_every_puzzle_stands_there_once(tmp_path: Path, store: FileStore) -> None:
    catalogue = opened(tmp_path, store)
    found = {card.id: card for card in catalogue.cards}
    assert [card.id for card in catalogue.cards] == ["one", "two", "broken", "marked"]
    assert not catalogue.diagnostics
    assert (found["one"].verdict, found["one"].tags, found["one"].state) == ("unique", ("harbour",), "none")
    assert (found["two"].state, found["two"].band) == ("refused", 4)
    assert (found["broken"].verdict, found["broken"].band, found["broken"].difficulty) == ("several", 0, 0.0)
    assert (found["marked"].kinds, found["marked"].size) == (("thermometer", "king"), 4)
    assert (found["marked"].state, found["marked"].printed) == ("granted", "by B")
    assert 1 <= found["one"].difficulty < 6


def test_books_are_the_history_and_a_look_alike_counts(tmp_path: Path, store: FileStore) -> None:
    catalogue = opened(tmp_path, store)
    assert {card.id: catalogue.printed_in(card) for card in catalogue.cards} == {
        "one": ("Printed",),
        "two": (),
        "broken": (),
        "marked": (),
    }


def test_what_stays_is_not_read_again(tmp_path: Path, store: FileStore, monkeypatch: pytest.MonkeyPatch) -> None:
    first = opened(tmp_path, store)
    read: list[str] = []
    honest = reading.entries_of

    def counted(path: Path, text: str, desk: object) -> object:
        read.append(path.name)
        return honest(path, text, desk)  # type: ignore[arg-type]

    monkeypatch.setattr(reading, "entries_of", counted)
    assert open_catalogue([tmp_path / "store"], store) == first
    assert read == []
    file = tmp_path / "store" / "a.yaml"
    file.write_text(file.read_text().replace("2024", "2025"))
    again = open_catalogue([tmp_path / "store"], store)
    assert read == ["a.yaml"]
    assert again.cards[0].shown == "2025"


def test_a_faulty_puzzle_is_told_and_the_others_are_there(tmp_path: Path, store: FileStore) -> None:
    write(
        tmp_path, {"store/a.yaml": f"- id: bad\n  givens: 55\n- id: good\n  givens: {EASY}\n", "store/b.yaml": "a: [\n"}
    )
    for _ in range(2):
        catalogue = open_catalogue([tmp_path / "store"], store)
        assert [card.id for card in catalogue.cards] == ["good"]
        assert {t.code for t in catalogue.diagnostics} >= {"picture-size"}


def test_options_narrow_together(tmp_path: Path, store: FileStore) -> None:
    catalogue = opened(tmp_path, store)

    def ids(**wanted: object) -> list[str]:
        return [card.id for card in chosen(catalogue, Wanted(**wanted))]  # type: ignore[arg-type]

    assert ids() == ["one", "two", "broken", "marked"]
    assert ids(kinds=("classic",)) == ["one", "two", "broken"]
    assert ids(kinds=("classic", "king"), unprinted=True) == ["two", "broken", "marked"]
    assert ids(setters=("old heron",), tags=("harbour",)) == ["one"]
    assert ids(permissions=("refused", "granted")) == ["two", "broken", "marked"]
    assert ids(bands=("Climb",)) == ["two"]
    with pytest.raises(BookErrors) as found:
        ids(kinds=("cagge",), tags=("harbor",))
    assert [t.hint for t in found.value.diagnostics] == ["did you mean “cage”?", "did you mean “harbour”?"]
    assert '"printed_in": [\n    "Printed"\n   ]' in as_json(catalogue, catalogue.cards)


def test_setters_spelled_in_two_ways() -> None:
    names = ["Old Heron", "Old Herron", "old  heron", "Ann", "Jan", "Brine", "Wick", "", "José", "Jose"]
    assert spelled_twice(names) == (("José", "Jose")[::-1], ("Old Heron", "Old Herron", "old  heron"))
