"""Tables in files: workbooks (.xlsx) and text with commas, semicolons or tabs.

In: the path of a file. Out: its sheets, each with rows of text; or BookErrors. And the other way, rows to a workbook
that is the same to the byte whenever it is made.
"""

from __future__ import annotations

import csv
import re
import zipfile
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from io import BytesIO, StringIO
from pathlib import Path
from typing import Any

from bookmaker.files import ordinary
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place

MOST_BYTES = 100_000_000
"""Size of a file, and of a workbook unpacked."""

MOST_ROWS = 200_000

LONGEST_CELL = 32_767
"""Characters that a cell of a workbook holds."""

ROUNDED = 10**15
"""Whole numbers from here on have lost digits in a spreadsheet program."""


@dataclass(frozen=True, slots=True)
class Sheet:
    """Rows of cells as text, the first row first; `name` is "" in a file that has only one. `rounded` are the cells
    (row, column, from 0) whose digits a spreadsheet program has rounded."""

    name: str
    rows: tuple[tuple[str, ...], ...]
    rounded: frozenset[tuple[int, int]] = frozenset()


@dataclass(frozen=True, slots=True)
class Workbook:
    """`read_as` says how text was told apart, "" for a workbook."""

    sheets: tuple[Sheet, ...]
    read_as: str = ""


def read_workbook(path: Path, likely: Callable[[Sequence[str]], int]) -> Workbook:
    """The sheets of a file. `likely` says how many headings of a row are known, by which separators are told apart."""
    try:
        data = ordinary(path).read_bytes() if path.stat().st_size <= MOST_BYTES else None
    except OSError as error:
        raise _refused(path, "unreadable", f"it cannot be opened: {(error.strerror or str(error)).lower()}") from error
    if data is None:
        raise _refused(path, "file-large", f"it is larger than {MOST_BYTES // 1_000_000} MB")
    if data.startswith(b"PK"):
        return _from_xlsx(path, data)
    if data.startswith(b"\xd0\xcf\x11\xe0"):
        raise _refused(path, "old-workbook", "it is a workbook of an old sort", "save it again as .xlsx")
    return _from_text(path, data, likely)


def _refused(path: Path, code: str, said: str, hint: str = "") -> BookErrors:
    return BookErrors([Diagnostic(Place(str(path)), code, said, hint)])


def _from_text(path: Path, data: bytes, likely: Callable[[Sequence[str]], int]) -> Workbook:
    text, encoding = _decoded(data)
    if "\0" in text:
        raise _refused(path, "not-a-table", "it is no table of text", "save it as .csv or .xlsx")
    first = text.lstrip("\r\n").splitlines()[:1]
    known = {mark: likely(next(csv.reader(first, delimiter=mark), [])) for mark in ",;\t" if first}
    mark = max(known, key=lambda each: known[each], default=",")
    try:
        rows = tuple(tuple(row) for row in csv.reader(StringIO(text, newline=""), delimiter=mark))
    except csv.Error as error:
        raise _refused(path, "not-a-table", f"its rows cannot be told apart ({error})") from error
    if len(rows) > MOST_ROWS:
        raise _refused(path, "many-rows", f"it has more than {MOST_ROWS} rows")
    called = {",": "commas", ";": "semicolons", "\t": "tabs"}[mark]
    return Workbook((Sheet("", rows),), f"{encoding}, {called} between the cells")


def _decoded(data: bytes) -> tuple[str, str]:
    """The text and the name of its encoding. What is no UTF-8 was saved by an old program in its usual one."""
    if data.startswith((b"\xff\xfe", b"\xfe\xff")):
        return data.decode("utf-16", errors="replace"), "UTF-16"
    try:
        return data.decode("utf-8-sig"), "UTF-8"
    except UnicodeDecodeError:
        return data.decode("cp1252", errors="replace"), "Latin-1"


def _from_xlsx(path: Path, data: bytes) -> Workbook:
    from openpyxl import load_workbook

    try:
        with zipfile.ZipFile(BytesIO(data)) as packed:
            if sum(part.file_size for part in packed.infolist()) > MOST_BYTES:
                raise _refused(path, "file-large", f"unpacked it is larger than {MOST_BYTES // 1_000_000} MB")
        book = load_workbook(BytesIO(data), read_only=True, data_only=True)
        sheets = tuple(_sheet(path, sheet) for sheet in book.worksheets)
    except BookErrors:
        raise
    except Exception as error:  # a damaged workbook fails in any way there is
        raise _refused(path, "not-a-workbook", "it is damaged, or no workbook", "open it and save it again") from error
    return Workbook(sheets)


def _sheet(path: Path, sheet: Any) -> Sheet:
    rows, rounded = [], set()
    for at, row in enumerate(sheet.iter_rows(values_only=True)):
        if at >= MOST_ROWS:
            raise _refused(path, "many-rows", f"the sheet “{sheet.title}” has more than {MOST_ROWS} rows")
        rows.append(tuple(map(_text, row)))
        rounded |= {(at, i) for i, value in enumerate(row) if isinstance(value, int | float) and abs(value) >= ROUNDED}
    return Sheet(sheet.title, tuple(rows), frozenset(rounded))


def _text(value: object) -> str:
    match value:
        case None:
            return ""
        case bool():
            return "yes" if value else "no"
        case datetime():
            return value.date().isoformat()
        case date():
            return value.isoformat()
        case float() if value.is_integer():
            return str(int(value))
        case _:
            return str(value)


def workbook_bytes(name: str, rows: Sequence[Sequence[str]]) -> bytes:
    """A workbook with one sheet, its first row set apart. Raises BookErrors where a cell would be cut off."""
    from openpyxl import Workbook as NewWorkbook
    from openpyxl.styles import Font

    book = NewWorkbook()
    sheet = book.active
    assert sheet is not None
    sheet.title, sheet.freeze_panes = name, "B2"
    for at, row in enumerate(rows, start=1):
        for column, text in enumerate(row, start=1):
            if len(text) > LONGEST_CELL:
                said = f"the {rows[0][column - 1]} of “{row[0]}” are longer than a cell of a workbook holds"
                raise BookErrors([Diagnostic(Place("--xlsx"), "cell-long", said, "write the table with --csv")])
            if text:
                cell = sheet.cell(at, column, text)
                cell.data_type = "s"  # also what begins with “=”
                if at == 1:
                    cell.font = Font(bold=True)
    packed = BytesIO()
    book.save(packed)
    return _undated(packed.getvalue())


def _undated(data: bytes) -> bytes:
    """The workbook without the hour at which it was made."""
    plain = BytesIO()
    with zipfile.ZipFile(BytesIO(data)) as old, zipfile.ZipFile(plain, "w") as new:
        for part in old.infolist():
            content = old.read(part)
            if part.filename == "docProps/core.xml":
                content = re.sub(rb"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ", b"2000-01-01T00:00:00Z", content)
            new.writestr(zipfile.ZipInfo(part.filename, (1980, 1, 1, 0, 0, 0)), content)
    return plain.getvalue()
