"""Spreadsheets: what goes out comes back the same, and rows typed by hand are told of at their cells."""

from __future__ import annotations

from io import BytesIO
from pathlib import Path
from typing import Any

import pytest
from openpyxl import Workbook

from bookmaker.archive import open_catalogue
from bookmaker.archive.intake import take_in
from bookmaker.archive.listing import as_csv, as_xlsx
from bookmaker.manifest import load
from bookmaker.manifest.model import Entry
from bookmaker.proof.cache import NoStore
from bookmaker.trouble import BookTroubles
from tests.archive.test_catalogue import EASY
from tests.manifest.books import GIVENS, write

DEMO = Path(__file__).resolve().parents[2] / "demo_book"

TYPED = f"""\
- id: one
  title: "=1+1, a title"
  setter: Zoë
  shown: 2024-05
  tags: [harbour, two words]
  permission: {{state: granted, by: Zoë, on: 2024, printed: With thanks., note: by post}}
  source: notebook 3
  private: |
    two
    lines
  givens: {EASY}
- id: six
  size: 6
  boxes: 3x2
  permission: printed so
  givens: {"1" + "." * 35}
  rules:
    thermometer: [r1c1-r1c3, r3c1-r3c3 r4c4]
    cage: [{{cells: r6c1 r6c2, total: 5}}, r5c5 r6c5]
    king: yes
- id: odd
  size: 5
  regions: |
    aaabb
    aabbb
    ccddd
    cccdd
    eeeee
  givens: {"1" + "." * 24}
"""


def said(entry: Entry) -> tuple[Any, ...]:
    """An entry without places."""
    record = entry.consent
    return (
        *(getattr(entry, name) for name in ("id", "title", "setter", "shown", "tags", "source", "private", "note")),
        *(getattr(entry, name) for name in ("puzzle", "permission", "link")),
        *(record.state, record.by, record.on, record.note),
        entry.solution.digits if entry.solution else None,
    )


def entries(folder: Path) -> list[tuple[Any, ...]]:
    return sorted((said(e) for file in sorted(folder.glob("*.yaml")) for e in load(file).entries), key=str)


@pytest.mark.parametrize("form", ["xlsx", "csv"])
def test_what_is_written_is_read_back_without_loss(form: str, tmp_path: Path) -> None:
    files = [*DEMO.glob("archive/*.yaml"), *DEMO.glob("*.yaml")]
    kept = {f"store/{file.name}": file.read_bytes() for file in files if "id:" in file.read_text(encoding="utf-8")}
    write(tmp_path, {**kept, "store/typed.yaml": TYPED})
    catalogue = open_catalogue([tmp_path / "store"], _Unproven())
    table = tmp_path / f"all.{form}"
    table.write_bytes((as_xlsx if form == "xlsx" else as_csv)(catalogue, catalogue.cards))
    taken = take_in(table, tmp_path / "back")
    assert not taken.troubles
    assert len(taken.entries) == len(catalogue.cards) > 180
    write(tmp_path, {"back/all.yaml": taken.text})
    assert entries(tmp_path / "back") == entries(tmp_path / "store")
    again = take_in(table, tmp_path / "back")
    assert (again.text, again.known, again.path.name) == ("", len(catalogue.cards), "all-2.yaml")


class _Unproven(NoStore):
    """Nothing is kept, and nothing needs to be proved here."""


@pytest.fixture(autouse=True)
def quick(monkeypatch: pytest.MonkeyPatch, request: pytest.FixtureRequest) -> None:
    """Cards without proofs: the spreadsheets do not depend on them."""
    from bookmaker.archive import reading
    from bookmaker.archive.model import Card

    def bare(found: Any, store: Any, crew: Any) -> Any:
        for entry in found:
            place = entry.place
            yield Card(entry.id, place.file, place.line, place.column, printed=entry.permission)

    monkeypatch.setattr(reading, "cards_of", bare)


def test_a_workbook_is_the_same_whenever_it_is_made(tmp_path: Path) -> None:
    write(tmp_path, {"store/typed.yaml": TYPED})
    catalogue = open_catalogue([tmp_path / "store"], NoStore())
    assert as_xlsx(catalogue, catalogue.cards) == as_xlsx(catalogue, catalogue.cards)


ROWS = (
    ("ID", "Title", "Setter ", "Givens", "Thermometer", "permission-state", "Colour"),
    ("good", "Good", "Zoë", EASY, "", "own", "blue"),
    ("", "No id, but a title", "", EASY, "", "", ""),
    ("short", "", "", EASY[:80], "", "", ""),
    ("bent", "", "", EASY, "r1c1 r5c5", "", ""),
    ("state", "", "", EASY, "", "lent", ""),
    ("good", "", "", EASY, "", "", ""),
)


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "cp1252", "utf-16"])
@pytest.mark.parametrize("mark", [",", ";", "\t"])
def test_tables_of_all_sorts_and_every_bad_row_at_its_cell(mark: str, encoding: str, tmp_path: Path) -> None:
    table = tmp_path / "rows.csv"
    lines = (mark.join(f'"{cell}"' if "," in cell else cell for cell in row) for row in ROWS)
    table.write_bytes("\r\n".join(lines).encode(encoding))
    taken = take_in(table, tmp_path / "store")
    assert [(e.id, e.setter, e.consent.state) for e in taken.entries] == [
        ("good", "Zoë", "own"),
        ("no-id-but-a-title", "", None),
    ]
    told = [(str(t.place).removeprefix(f"{table}, "), t.code) for t in taken.troubles]
    assert told == [
        ("row 1, “Colour”", "unknown-column"),
        ("row 4, “Givens”", "picture-size"),
        ("row 5, “Thermometer”", "chain-jumps"),
        ("row 6, “permission-state”", "unknown-word"),
        ("row 7, “ID”", "same-id"),
    ]
    assert taken.read_as.startswith({"cp1252": "Latin-1", "utf-16": "UTF-16"}.get(encoding, "UTF-8"))
    assert not (tmp_path / "store").exists()


def workbook(path: Path, *sheets: tuple[str, list[list[Any]]]) -> Path:
    book = Workbook()
    assert book.active is not None
    book.remove(book.active)
    for name, rows in sheets:
        sheet = book.create_sheet(name)
        for row in rows:
            sheet.append(row)
    packed = BytesIO()
    book.save(packed)
    path.write_bytes(packed.getvalue())
    return path


def test_givens_in_a_block_of_cells_and_digits_that_were_rounded(tmp_path: Path) -> None:
    block = [[int(c) if c != "." else None for c in EASY[at : at + 9]] for at in range(0, 81, 9)]
    rows: list[list[object]] = [
        ["id", "givens"],
        ["block", "Low tide!A1:I9"],
        ["beside", "D1:L9"],
        ["number", 10**80],
        ["nowhere", "X!A1:B2"],
    ]
    rows += [[None, None]] * 4
    beside = [[*row, None, *line] for row, line in zip(rows, block, strict=True)]
    table = workbook(tmp_path / "club.xlsx", ("Puzzles", beside), ("Low tide", block))
    taken = take_in(table, tmp_path / "store")
    told = {(str(t.place).removeprefix(f"{table}, "), t.code) for t in taken.troubles}
    assert [e.id for e in taken.entries] == ["block", "beside"]
    assert {e.puzzle.givens_text for e in taken.entries} == {EASY}
    assert {code for _, code in told} == {"unknown-column", "rounded", "no-sheet"}
    assert ("sheet “Puzzles”, row 4, “givens”", "rounded") in told


@pytest.mark.parametrize("data", [b"", b"\0\1\2", b"PK\3\4 no workbook", b"\xd0\xcf\x11\xe0old", b"a,b\n1,2\n"])
def test_files_that_are_no_table_of_puzzles(data: bytes, tmp_path: Path) -> None:
    (tmp_path / "t.xlsx").write_bytes(data)
    try:
        taken = take_in(tmp_path / "t.xlsx", tmp_path / "store")
    except BookTroubles as found:
        assert found.troubles[0].hint or found.troubles[0].text
    else:
        assert [t.code for t in taken.troubles] == ["no-headings"]


def test_a_puzzle_that_the_archive_has_otherwise_is_told_of(tmp_path: Path) -> None:
    write(
        tmp_path, {"store/a.yaml": f"- id: one\n  givens: {GIVENS}\n", "t.csv": f"id,givens\none,{EASY}\ntwo,{EASY}\n"}
    )
    taken = take_in(tmp_path / "t.csv", tmp_path / "store")
    assert [t.code for t in taken.troubles] == ["id-taken"]
    assert [e.id for e in taken.entries] == ["two"]
