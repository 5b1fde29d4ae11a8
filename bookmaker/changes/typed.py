"""A puzzle in the file that it is typed in.

In: a book and the id of a puzzle. Out: `Typed`: the puzzle with its place in the text; also one whose givens clash,
since it is to be mended.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path

from bookmaker.manifest import MANIFEST_NAME
from bookmaker.manifest.classics import read_lines
from bookmaker.manifest.givens import Givens, read_givens
from bookmaker.manifest.gridfields import read_grid
from bookmaker.manifest.includes import Shelf, Source
from bookmaker.manifest.puzzlefields import read_puzzle
from bookmaker.manifest.textfile import read_file
from bookmaker.manifest.yamlfile import parse_yaml
from bookmaker.placed import Node, Sequence, Table, Word
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.solve.verdict import Solution
from bookmaker.trouble import LINE_BREAK, BookTroubles, Desk, Place, Trouble, nearest

BEARABLE = ("givens-clash",)
"""Codes of troubles that leave a puzzle to look into."""


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
        given = read_givens(node, self.puzzle.grid, Desk()) if isinstance(node, Word) else None
        return given.digits if given is not None and all(given.digits) else None

    @property
    def own_lines(self) -> list[str]:
        """The lines of the puzzle."""
        return self.text.split("\n")[self.first : self.after]


def find_typed(book: Path, name: str) -> Typed:
    """The puzzle of that id. Raises BookTroubles where there is none, or where it can't be read at all."""
    path = book / MANIFEST_NAME if book.is_dir() else book
    desk = Desk()
    text = read_file(path, str(path), Place(str(path)), desk)
    desk.raise_errors()
    assert text is not None
    if path.suffix not in (".yaml", ".yml"):
        return _in_list(path, text, name)
    tree = parse_yaml(text, str(path), desk)
    names: list[str] = []
    for node, file, source in _puzzles(tree, path, text, desk) if tree is not None else ():
        word = node.get("id")
        if isinstance(word, Word):
            names.append(word.value)
            if word.value == name:
                return _typed(name, node, file, source, word.place)
    desk.raise_errors()
    raise _unknown(path, name, names)


def _unknown(path: Path, name: str, names: Iterable[str]) -> BookTroubles:
    said = f"the book has no puzzle “{name}”"
    return BookTroubles([Trouble(Place(str(path)), "unknown-id", said, nearest(name, names))])


def _in_list(path: Path, text: str, name: str) -> Typed:
    desk = Desk()
    numbers = []
    for number, place, entry in read_lines(LINE_BREAK.split(text), str(path), desk):
        numbers.append(str(number))
        if str(number) == name:
            errors = [trouble for trouble in desk.errors() if trouble.code not in BEARABLE and trouble.place >= place]
            if entry is None or errors:
                raise BookTroubles(errors)
            line = text.split("\n")[place.line - 1]
            word = Word(place, line[place.column - 1 : place.column + 80])
            givens = read_givens(word, entry.puzzle.grid, Desk())
            return Typed(name, entry.puzzle, path, text, None, givens, place.line - 1, place.line, place)
    raise _unknown(path, name, numbers)


def _puzzles(tree: Node, path: Path, text: str, desk: Desk) -> Iterator[tuple[Table, Path, str]]:
    """The tables of all puzzles, each with its file and the text of this."""
    texts = {str(path): text}
    shelf = Shelf(path.parent.resolve(), desk, {path.resolve(): Place(str(path))})
    source = Source(path, path, (path.resolve(),))
    for listed in lists_of(tree):
        for node in shelf.puzzles(listed, source):
            if isinstance(node, Table):
                file = node.place.file
                if file not in texts:
                    texts[file] = read_file(Path(file), file, Place(file), desk) or ""
                yield node, Path(file), texts[file]


def lists_of(tree: Node) -> list[Node]:
    """The lists of puzzles in a book, or the file itself if it is one."""
    if not isinstance(tree, Table) or tree.get("id") or tree.get("givens"):
        return [tree]
    chapters = tree.get("chapters")
    items = chapters.values if isinstance(chapters, Sequence) else ()
    found = [tree.get("puzzles"), *(item.get("puzzles") for item in items if isinstance(item, Table))]
    return [node for node in found if node is not None]


def _typed(name: str, node: Table, file: Path, text: str, place: Place) -> Typed:
    desk = Desk()
    fields: dict[str, Node] = {word.value: value for word, value in node.entries}
    puzzle = read_puzzle(fields, node, desk)
    errors = [trouble for trouble in desk.errors() if trouble.code not in BEARABLE]
    if puzzle is None or errors:
        raise BookTroubles(errors)
    grid = read_grid(fields, node.place, Desk())
    givens = read_givens(fields["givens"], grid, Desk()) if "givens" in fields and grid else None
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
