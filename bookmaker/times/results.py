"""A table of results: which solver finished which puzzle of a book, in how many minutes.

In: a file of rows and columns, and the puzzles of the book in their printed order. Out: `Results`, or every diagnostic
in the file at its cell. Three shapes are understood:

- a row for each solver and a column for each puzzle, or the other way round: names in the first column, names in the
  first row, times in between;
- a row for each time, with the columns “solver”, “puzzle” and “minutes” in any order.

A puzzle is named by its id, its title, or its number in the book. An empty cell says that the solver did not finish; “>
45” that this was so after 45 minutes; a dash that the solver never tried.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import zip_longest
from pathlib import Path

from bookmaker.files import ordinary
from bookmaker.manifest.entries import Entry
from bookmaker.source.diagnostics import Collector, Place, nearest, quoted
from bookmaker.source.file_limits import FILE_BYTES
from bookmaker.times.durations import minutes_of, unfinished_after
from bookmaker.times.sheet import Cell, read_sheet

DASHES = {"-", "–", "—", "n/a", "x", "/", "."}
"""What says that somebody never tried."""

COLUMNS = {
    "solver": ("solver", "name", "who", "player", "member"),
    "puzzle": ("puzzle", "id", "title", "no", "no.", "number"),
    "minutes": ("minutes", "time", "min", "mins", "took"),
}
"""Headings of a table with a row for each time."""


@dataclass(frozen=True, slots=True)
class Attempt:
    """One solver at one puzzle, both counted from 0: the minutes it took, or after which it was still unfinished;
    `minutes` is None where it is not known how long an unfinished attempt lasted."""

    solver: int
    puzzle: int
    minutes: float | None
    finished: bool


@dataclass(frozen=True, slots=True)
class Results:
    """`solvers` are names; puzzles are counted as in the book."""

    place: Place
    solvers: tuple[str, ...]
    attempts: tuple[Attempt, ...]


def read_results(path: Path, entries: Sequence[Entry]) -> Results:
    """The results in a file, of these puzzles in printed order. Raises BookErrors with everything that is wrong."""
    collector, file = Collector(), str(path)
    with ordinary(path).open("rb") as stream:
        data = stream.read(FILE_BYTES + 1)
    if len(data) > FILE_BYTES:
        said = f"the file is larger than {FILE_BYTES // 1_000_000} million characters, which no table of times needs"
        collector.error(Place(file), "file-large", said, "is it the right file?")
        collector.raise_errors()
    rows = read_sheet(data, file, collector)
    if not rows and not collector.found:
        collector.error(Place(file), "empty", "the table is empty", "it should have solvers, puzzles and minutes")
    collector.raise_errors()
    reader = _Reader(_Names(entries), collector)
    heading = [cell.text.casefold() for cell in rows[0]]
    if (columns := _columns_of(heading)) is not None:
        reader.listed(rows[1:], columns)
    else:
        reader.crossed(rows)
    collector.raise_errors()
    if not reader.attempts:
        collector.error(Place(file), "empty", "there is no time in the table", "write minutes, such as 12.5 or 12:30")
        collector.raise_errors()
    return Results(Place(file), tuple(reader.solvers), tuple(reader.attempts.values()))


def _columns_of(heading: Sequence[str]) -> dict[str, int] | None:
    """Where solver, puzzle and minutes stand in a table with a row for each time; None in one of another shape."""
    found = {
        name: at for name, words in COLUMNS.items() for at in reversed(range(len(heading))) if heading[at] in words
    }
    return found if len(found) == len(COLUMNS) else None


class _Names:
    """The puzzles of the book by what they may be called."""

    def __init__(self, entries: Sequence[Entry]) -> None:
        self._known: dict[str, int] = {}
        numbers = {str(number): at for at, number in enumerate(range(1, len(entries) + 1))}
        titles = [entry.title.casefold() for entry in entries]
        named = {title: at for at, title in enumerate(titles) if title and titles.count(title) == 1}
        ids = {entry.id.casefold(): at for at, entry in enumerate(entries)}
        self._known = numbers | named | ids
        self._words = sorted({entry.id for entry in entries} | {entry.title for entry in entries if entry.title})

    def __call__(self, name: str) -> int | None:
        """The puzzle of that name; “no. 7” and “#7” are 7."""
        word = name.casefold()
        return self._known.get(word, self._known.get(word.removeprefix("no.").removeprefix("#").strip()))

    def hint(self, name: str) -> str:
        """What may have been meant."""
        hint = nearest(name, self._words)
        return hint if hint.startswith("did") else "name a puzzle by its id, its title or its number in the book"


class _Reader:
    """Attempts as they are read; what is wrong is collected."""

    def __init__(self, names: _Names, collector: Collector) -> None:
        self.names = names
        self.collector = collector
        self.solvers: dict[str, int] = {}
        self.attempts: dict[tuple[int, int], Attempt] = {}

    def listed(self, rows: Iterable[Sequence[Cell]], columns: dict[str, int]) -> None:
        """A row for each time."""
        for row in rows:
            if len(row) <= max(columns["solver"], columns["puzzle"]):
                said = "this row is too short: it should have a solver, a puzzle and minutes"
                self.collector.error(row[0].place, "short-row", said)
                continue
            who, what = row[columns["solver"]], row[columns["puzzle"]]
            took = row[columns["minutes"]] if columns["minutes"] < len(row) else Cell(what.place, "")
            solver, puzzle = self.solver(who), self.puzzle(what)
            if solver is not None and puzzle is not None:
                self.attempt(solver, puzzle, took)

    def crossed(self, rows: Sequence[Sequence[Cell]]) -> None:
        """Solvers down and puzzles across, or the other way round, whichever has more puzzles that are known."""
        across, down = rows[0][1:], [row[0] for row in rows[1:]]
        known_across, known_down = self._known(across), self._known(down)
        by_column = known_across >= known_down and rows[0][0].text.casefold() not in COLUMNS["puzzle"]
        if not known_across and not known_down:
            said = "no puzzle of the book is named in the first row, nor in the first column"
            hint = "write the puzzles' ids, titles or numbers across the top and the solvers' names down the side"
            self.collector.error(rows[0][0].place, "no-puzzles", said, hint)
            return
        read_across, read_down = (self.puzzle, self.solver) if by_column else (self.solver, self.puzzle)
        heads = self._heads(across, read_across)
        sides = self._heads(down, read_down)
        width = max(map(len, rows))
        heads += [None] * (width - 1 - len(heads))
        for row, side in zip(rows[1:], sides, strict=True):
            if not row[0].text:
                self.collector.error(row[0].place, "no-name", "there is no name at the beginning of this row")
            cells = [*row[1:], *[Cell(row[-1].place, "")] * (width - len(row))]
            for head, title, cell in zip_longest(heads, across, cells):
                if cell.text and not (title and title.text):
                    self.collector.error(cell.place, "no-name", "there is no name over this cell, in the first row")
                if side is not None and head is not None:
                    solver, puzzle = (side, head) if by_column else (head, side)
                    self.attempt(solver, puzzle, cell)

    def _known(self, cells: Sequence[Cell]) -> float:
        """The share of names that are a puzzle's."""
        named = [cell for cell in cells if cell.text]
        return sum(self.names(cell.text) is not None for cell in named) / max(len(named), 1)

    def _heads(self, cells: Iterable[Cell], read: Callable[[Cell], int | None]) -> list[int | None]:
        """What each heading means; one that is empty, unknown or met before means nothing."""
        heads: list[int | None] = []
        for cell in cells:
            head = read(cell) if cell.text else None
            if head is not None and head in heads:
                self.collector.error(cell.place, "twice", f"{quoted(cell.text)} stands here a second time")
                head = None
            heads.append(head)
        return heads

    def solver(self, cell: Cell) -> int | None:
        """The number of a solver, by name."""
        if not cell.text:
            self.collector.error(cell.place, "no-solver", "the solver's name is missing")
            return None
        return self.solvers.setdefault(cell.text, len(self.solvers))

    def puzzle(self, cell: Cell) -> int | None:
        """The number of a puzzle, by whatever it is called."""
        found = self.names(cell.text)
        if found is None:
            said = f"the book has no puzzle {quoted(cell.text)}"
            self.collector.error(cell.place, "unknown-puzzle", said, self.names.hint(cell.text))
        return found

    def attempt(self, solver: int, puzzle: int, cell: Cell) -> None:
        """Note one solver's time at one puzzle."""
        if cell.text.casefold() in DASHES:
            return
        over = unfinished_after(cell.text)
        minutes = minutes_of(over or cell.text) if cell.text else None
        if cell.text and minutes is None:
            hint = "write minutes, such as 12.5 or 12:30; leave it empty where somebody did not finish"
            self.collector.error(cell.place, "bad-time", f"{quoted(cell.text)} is not a time", hint)
        elif (solver, puzzle) in self.attempts:
            self.collector.error(cell.place, "twice", "this solver has a time for this puzzle already")
        else:
            finished = minutes is not None and over is None
            self.attempts[solver, puzzle] = Attempt(solver, puzzle, minutes, finished)
