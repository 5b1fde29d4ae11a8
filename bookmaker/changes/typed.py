"""A puzzle in the file that it is typed in.

In: a book and the id of a puzzle. Out: `Typed`: the puzzle with its place in the text; also one whose givens clash,
since it is to be mended.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from pathlib import Path

from bookmaker.manifest import manifest_in, puzzles_in
from bookmaker.manifest.archives import YAML
from bookmaker.manifest.classics import read_lines
from bookmaker.manifest.givens import Givens, read_givens
from bookmaker.manifest.gridfields import read_grid
from bookmaker.manifest.puzzlefields import read_puzzle
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.source.diagnostics import LINE_BREAK, BookErrors, Collector, Diagnostic, Place, nearest
from bookmaker.source.placed import Node, Table, Word
from bookmaker.source.textfile import read_file
from bookmaker.source.yamlfile import parse_yaml

BEARABLE = ("givens-clash",)
"""Codes of diagnostics that leave a puzzle to look into."""


@dataclass(frozen=True)
class Typed:
    """A puzzle as it stands in a file.

    `text` is the file's, `node` the puzzle's item in it; a classic of a plain list has none. `first` and `after` are
    the numbers of its first line and of the line after its last, from 0.
    """

    id: str
    puzzle: RuledPuzzle
    file: Path
    text: str
    node: Table | None
    givens: Givens | None
    first: int
    after: int
    place: Place

    @property
    def setters_solution(self) -> Solution | None:
        """The solution that the setter gives, if he gives a whole one."""
        node = self.node.get("solution") if self.node else None
        given = read_givens(node, self.puzzle.grid, Collector()) if isinstance(node, Word) else None
        return given.digits if given is not None and all(given.digits) else None

    @property
    def own_lines(self) -> list[str]:
        """The lines of the puzzle."""
        return self.text.split("\n")[self.first : self.after]


def find_typed(book: Path, name: str) -> Typed:
    """The puzzle of that id, in the book's own file, in one that it includes or in an archive that it picks from.

    Raises BookErrors where there is none, or where it can't be read at all.
    """
    collector = Collector()
    path = manifest_in(book, collector) if book.is_dir() else book
    text = _text_of(path, collector)
    if path.suffix not in YAML:
        return _in_list(path, text, name)
    tree = parse_yaml(text, str(path), collector)
    names: list[str] = []
    for _, node in puzzles_in(tree, path, collector)[2] if tree is not None else ():
        word = node.get("id") if isinstance(node, Table) else None
        if isinstance(node, Table) and isinstance(word, Word):
            names.append(word.value)
            if word.value == name:
                return _found(name, node, word, collector)
    collector.raise_errors()
    raise _unknown(path, name, names)


def _found(name: str, node: Table, word: Word, collector: Collector) -> Typed:
    file = Path(word.place.file)
    text = _text_of(file, collector)
    if file.suffix in YAML:
        # What a book says beside a pick stands in another file, and is no part of the puzzle's item in this one.
        own = Table(node.place, tuple(entry for entry in node.entries if entry[0].place.file == word.place.file))
        return _typed(name, own, file, text, word.place)
    return replace(_in_list(file, text, name, word.place.line), id=name)


def _text_of(path: Path, collector: Collector) -> str:
    text = read_file(path, str(path), Place(str(path)), collector)
    collector.raise_errors()
    assert text is not None, "a file that can't be read leaves a trouble"
    return text


def _unknown(path: Path, name: str, names: Iterable[str]) -> BookErrors:
    said = f"the book has no puzzle “{name}”"
    return BookErrors([Diagnostic(Place(str(path)), "unknown-id", said, nearest(name, names))])


def _in_list(path: Path, text: str, name: str, line: int | None = None) -> Typed:
    """The classic of that number, or on that line, of a plain list."""
    collector = Collector()
    numbers = []
    for number, place, entry in read_lines(LINE_BREAK.split(text), str(path), collector):
        numbers.append(str(number))
        if place.line == line or (line is None and str(number) == name):
            errors = [
                diagnostic
                for diagnostic in collector.errors()
                if diagnostic.code not in BEARABLE and diagnostic.place >= place
            ]
            if entry is None or errors:
                raise BookErrors(errors)
            shown = text.split("\n")[place.line - 1]
            word = Word(place, shown[place.column - 1 : place.column + 80])
            givens = read_givens(word, entry.puzzle.grid, Collector())
            return Typed(name, entry.puzzle, path, text, None, givens, place.line - 1, place.line, place)
    raise _unknown(path, name, numbers)


def _typed(name: str, node: Table, file: Path, text: str, place: Place) -> Typed:
    collector = Collector()
    fields: dict[str, Node] = {word.value: value for word, value in node.entries}
    puzzle = read_puzzle(fields, node, collector)
    errors = [diagnostic for diagnostic in collector.errors() if diagnostic.code not in BEARABLE]
    if puzzle is None or errors:
        raise BookErrors(errors)
    grid = read_grid(fields, node.place, Collector())
    givens = read_givens(fields["givens"], grid, Collector()) if "givens" in fields and grid else None
    first, after = _extent(text.split("\n"), node)
    return Typed(name, puzzle, file, text, node, givens, first, after, place)


def _extent(lines: list[str], node: Table) -> tuple[int, int]:
    """The lines of an item, with comments right above it, up to the next line that is set in less than its fields."""
    column = node.entries[0][0].place.column - 1
    first = node.entries[0][0].place.line - 1
    after = first + 1
    while after < len(lines) and (not lines[after].strip() or indent_of(lines[after]) >= column):
        after += 1
    while after > first + 1 and not lines[after - 1].strip():
        after -= 1
    while first and lines[first - 1].strip().startswith("#"):
        first -= 1
    return first, after


def indent_of(line: str) -> int:
    """How far a line is set in."""
    return len(line) - len(line.lstrip(" "))
