"""Rows of a spreadsheet → files of an archive.

In: a table (.csv or .xlsx) whose first row names its columns, and the folder of an archive. Out: a file with the good
rows as puzzles, ready to be written, and what is wrong with each of the others, at its sheet, row and column.

A row is read as if it stood in a manifest, so mistakes are told in the same words. Givens, solution and regions are
characters in one cell, or the range of cells that they stand in, such as `B2:J10` or `Low tide!B2:J10`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from functools import partial
from pathlib import Path

from bookmaker.archive.columns import FIELDS, RECORD, TOLD, plain_heading
from bookmaker.archive.workbook import Sheet, Workbook, read_workbook
from bookmaker.archive.writing import as_picture, plain, typed_item
from bookmaker.manifest.archives import archive_files, holding_of
from bookmaker.manifest.entries import Entry
from bookmaker.manifest.puzzlefields import PUZZLE_KEYS, read_entry
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import Collector, Diagnostic, Place, nearest, quoted
from bookmaker.source.placed import Node, Table, Word
from bookmaker.source.yamlfile import parse_yaml

PICTURES = ("givens", "solution", "regions", "holes")

SPAN = 1 << 20
"""Places of characters that one cell has to itself."""

COLUMNS = 1 << 10
"""Columns that a table may have."""

_RANGE = re.compile(r"(?:'?([^'!]+)'?!)?\$?([A-Z]{1,3})\$?(\d{1,6}):\$?([A-Z]{1,3})\$?(\d{1,6})")


@dataclass(frozen=True, slots=True, order=True)
class Cell(Place):
    """A cell of a table as a place: shown by its row and the heading of its column."""

    row: int = 0
    heading: str = ""

    def __str__(self) -> str:
        """The file, its sheet, the row and the heading."""
        return f"{self.file}, row {self.row}" + (f", “{self.heading}”" if self.heading else "")


@dataclass(frozen=True)
class Taken:
    """What an intake gives: the new file's text ("" if nothing is new), its puzzles, rows that the archive has already,
    and what is wrong."""

    path: Path
    text: str
    entries: tuple[Entry, ...]
    known: int
    read_as: str
    diagnostics: tuple[Diagnostic, ...] = ()


@dataclass
class _Reading:
    """A file being read."""

    path: Path
    book: Workbook
    there: Mapping[str, tuple[str, str]]
    """For each id of the archive, in small letters, its puzzle's text and where it stands."""
    diagnostics: list[Diagnostic] = field(default_factory=list)
    ids: dict[str, Place] = field(default_factory=dict)
    items: list[str] = field(default_factory=list)
    entries: list[Entry] = field(default_factory=list)
    known: int = 0


def take_in(path: Path, folder: Path) -> Taken:
    """Read a table into the archive in a folder, which need not be there yet. Raises BookErrors where the file can't
    be read as a table at all."""
    book = read_workbook(path, lambda row: sum(meant(text) is not None for text in row))
    reading = _Reading(path, book, _there(folder) if folder.is_dir() else {})
    sheets = [sheet for sheet in book.sheets if {"id", "givens", "title"} & set(map(meant, _headings(sheet)))]
    if not sheets:
        said = "no sheet has a row of headings such as id, title, setter, givens"
        hint = "the first row names the columns; they are " + ", ".join(FIELDS)
        reading.diagnostics.append(Diagnostic(Place(str(path)), "no-headings", said, hint))
    for sheet in sheets:
        _take_sheet(reading, sheet)
    text = "\n".join(reading.items)
    return Taken(
        _free_name(folder, path.stem),
        text,
        tuple(reading.entries),
        reading.known,
        book.read_as,
        tuple(reading.diagnostics),
    )


def meant(heading: str) -> str | None:
    """The column or the kind of rule that a heading names, however it is spelled; None if it names none."""
    text = plain_heading(heading)
    for name in (*FIELDS, *TOLD, *kinds()):
        if plain_heading(name) == text:
            return name
    return None


def _headings(sheet: Sheet) -> tuple[str, ...]:
    return sheet.rows[0] if sheet.rows else ()


def _there(folder: Path) -> dict[str, tuple[str, str]]:
    """The puzzles of the archive as they are: for each id its text, and its place."""
    found: dict[str, tuple[str, str]] = {}
    for path in archive_files(folder, Collector()):
        for table in holding_of(path, path.read_text(encoding="utf-8", errors="replace"), Collector()).puzzles:
            word = table.get("id")
            if isinstance(word, Word):
                found.setdefault(word.value.lower(), (_item(table), str(word.place)))
    return found


def _free_name(folder: Path, stem: str) -> Path:
    name = "-".join(re.findall(r"[\w]+", stem)) or "puzzles"
    names = (f"{name}.yaml", *(f"{name}-{number}.yaml" for number in range(2, 10_000)))
    return next(folder / each for each in names if not (folder / each).exists())


def _take_sheet(reading: _Reading, sheet: Sheet) -> None:
    columns: dict[str, int] = {}
    called = _headings(sheet)[:COLUMNS]
    for at, heading in enumerate(called):
        name = meant(heading)
        if name is None and heading.strip():
            hint = nearest(plain_heading(heading), (*FIELDS, *kinds()))
            hint = hint if hint.startswith("did") else "it is passed over; columns are " + ", ".join(FIELDS)
            place = _cell(reading, sheet, 0, at)
            reading.diagnostics.append(
                Diagnostic(place, "unknown-column", f"no column goes by the name {quoted(heading)}", hint, warning=True)
            )
        elif name in columns:
            said = f"two columns are called “{name}”"
            reading.diagnostics.append(
                Diagnostic(_cell(reading, sheet, 0, at), "column-twice", said, "rename one of them")
            )
        elif name is not None and name not in TOLD:
            columns[name] = at
    for row, cells in enumerate(sheet.rows[1:], start=1):
        texts = {name: cells[at].strip() for name, at in columns.items() if at < len(cells) and cells[at].strip()}
        if texts and not _is_block(texts):
            _take_row(reading, sheet, row, texts, columns)


def _is_block(texts: Mapping[str, str]) -> bool:
    """A row without anything but single digits belongs to a grid that stands below the table."""
    return all(len(text) < 2 for text in texts.values())


def _take_row(reading: _Reading, sheet: Sheet, row: int, texts: dict[str, str], columns: Mapping[str, int]) -> None:
    collector = Collector()
    where = {name: Place(str(reading.path), 0, (row * COLUMNS + at) * SPAN) for name, at in columns.items()}
    table = _table(reading, sheet, row, texts, where, collector)
    entry = read_entry(table, "", 0, reading.ids, collector) if not any(collector.errors()) else None
    if entry is not None and entry.id.lower() in reading.there:
        before, place = reading.there[entry.id.lower()]
        if before == _item(table):
            reading.known += 1
            entry = None
        else:
            said = f"the archive has another puzzle “{entry.id}”, at {place}"
            collector.error(
                where.get("id", entry.place), "id-taken", said, "change it there, or give this one another id"
            )
    reading.diagnostics += [_told(reading, sheet, row, t) for t in collector.found]
    if entry is not None and not any(collector.errors()):
        reading.entries.append(entry)
        reading.items.append(_item(table))


def _table(
    reading: _Reading, sheet: Sheet, row: int, texts: dict[str, str], where: Mapping[str, Place], collector: Collector
) -> Table:
    """The puzzle as it would stand in a manifest."""
    start = Place(str(reading.path), 0, row * COLUMNS * SPAN)
    if "id" not in texts and (made := _id_from(texts.get("title", ""))):
        taken = {*reading.ids, *reading.there}
        texts["id"] = next(each for each in _numbered(made) if each.lower() not in taken)
    fields: list[tuple[str, Node]] = []
    for name in PUZZLE_KEYS:
        text = texts.get(name, "")
        if name == "permission":
            fields += _permission(texts, where, start)
        elif name == "rules":
            fields += _rules(texts, where, collector)
        elif name == "word" and text:
            fields += [(name, tree)] if (tree := _tree(text, where[name], collector)) else []
        elif text:
            place = where.get(name, start)
            if name in PICTURES:
                rounded = (row, _column(place)) in sheet.rounded
                text = _picture(reading.book, sheet, text, rounded, place, name, collector)
            fields.append((name, Word(place, text)))
    return Table(start, tuple((Word(where.get(name, start), name), node) for name, node in fields))


def _permission(texts: Mapping[str, str], where: Mapping[str, Place], start: Place) -> Iterator[tuple[str, Node]]:
    record = {name: text for name in RECORD if (text := texts.get(f"permission {name}", ""))}
    printed = texts.get("permission", "")
    if not record:
        if printed:
            yield "permission", Word(where["permission"], printed)
        return
    fields = [(name, Word(where[f"permission {name}"], text)) for name, text in record.items()]
    fields += [("printed", Word(where["permission"], printed))] if printed else []
    yield "permission", Table(start, tuple((Word(word.place, name), word) for name, word in fields))


def _rules(texts: Mapping[str, str], where: Mapping[str, Place], collector: Collector) -> Iterator[tuple[str, Node]]:
    """The rules, from one cell with all of them and from a cell for each kind."""
    entries: list[tuple[Word, Node]] = []
    for name in ("rules", *kinds()):
        text = texts.get(name, "")
        if not text:
            continue
        place = where[name]
        tree = _tree(text, place, collector)
        if tree is None:
            continue
        if name != "rules":
            entries.append((Word(place, name), tree))
        elif isinstance(tree, Table):
            entries += tree.entries
        else:
            collector.error(place, "not-a-table", "“rules” should be lines of “kind: what is marked”")
    if entries:
        yield "rules", Table(entries[0][0].place, tuple(entries))


def _tree(text: str, place: Place, collector: Collector) -> Node | None:
    """What is typed in a cell as in a manifest; its faults are told of at the cell."""
    own = Collector()
    tree = parse_yaml(text, "", own)
    collector.found += [replace(t, place=Place(place.file, 0, place.column), also=()) for t in own.found]
    return None if tree is None else _placed_at(tree, place)


def _placed_at(node: Node, place: Place) -> Node:
    """The node with all its words at one place: a cell has no lines of its own."""
    match node:
        case Word(value=value):
            return Word(place, value)
        case Table(entries=entries):
            return Table(place, tuple((Word(place, key.value), _placed_at(value, place)) for key, value in entries))
        case _:
            return type(node)(place, tuple(_placed_at(value, place) for value in node.values))


def _picture(
    book: Workbook, sheet: Sheet, text: str, rounded: bool, place: Place, name: str, collector: Collector
) -> str:
    """The characters of a grid, from the cell itself or from the range of cells that it names."""
    if rounded:
        said = f"a spreadsheet program took the {name} for a number and rounded it"
        collector.error(place, "rounded", said, "set the column's format to text, and type the digits again")
        return "." * 81
    found = _RANGE.fullmatch(text)
    if not found:
        return text
    other, left, top, right, bottom = found.groups()
    named = {each.name: each for each in book.sheets}
    there = named.get(other) if other else sheet
    if there is None:
        collector.error(place, "no-sheet", f"there is no sheet “{other}”", nearest(other, named))
        return "." * 81
    columns = range(_number(left) - 1, _number(right))
    rows = range(int(top) - 1, int(bottom))
    cells = [[_at(there, row, column) for column in columns] for row in rows if row < len(there.rows)]
    return "\n".join("".join(each.strip() or "." for each in line) for line in cells)


def _at(sheet: Sheet, row: int, column: int) -> str:
    cells = sheet.rows[row]
    return cells[column] if column < len(cells) else ""


def _number(letters: str) -> int:
    """The number of a column by its letters: A is 1, AA 27."""
    number = 0
    for letter in letters:
        number = number * 26 + ord(letter) - ord("A") + 1
    return number


def _id_from(title: str) -> str:
    return "-".join(re.findall("[a-z0-9]+", title.casefold()))[:36].strip("-")


def _numbered(name: str) -> Iterator[str]:
    yield name
    yield from (f"{name}-{number}" for number in range(2, 1_000_000))


def _item(table: Table) -> str:
    """The puzzle as it is written, its pictures drawn as grids."""
    fields = plain(table)
    size = int(fields["size"]) if str(fields.get("size", "")).isdigit() else 9
    draw = partial(as_picture, size=size, empty=".0" if "digits" not in fields else ".")
    ordered: Sequence[str] = [name for name in PUZZLE_KEYS if name in fields]
    return typed_item((name, draw(fields[name]) if name in PICTURES else fields[name]) for name in ordered)


def _column(place: Place) -> int:
    return place.column // SPAN % COLUMNS


def _cell(reading: _Reading, sheet: Sheet, row: int, column: int) -> Cell:
    several = len(reading.book.sheets) > 1 and sheet.name
    file = f"{reading.path}, sheet “{sheet.name}”" if several else str(reading.path)
    heading = _headings(sheet)[column] if column < len(_headings(sheet)) else ""
    return Cell(file, 0, (row * COLUMNS + column) * SPAN, row + 1, heading)


def _told(reading: _Reading, sheet: Sheet, row: int, diagnostic: Diagnostic) -> Diagnostic:
    """The diagnostic at the cell that it stands in; one of the row as a whole at its first cell."""
    return replace(diagnostic, place=_cell(reading, sheet, row, _column(diagnostic.place)), also=())
