"""Archives: folders of puzzle files, books and lists of classics, from which books pick.

In: a folder. Out: its files in order, what each holds, and a puzzle by its id. Every puzzle is found once, where it
stands: what a book includes or picks is found in the file that holds it. Hidden files are passed over, so are YAML
files that hold no puzzles (briefs, layouts). Links that lead out of the folder are refused, others are not followed.
"""

from __future__ import annotations

import os
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from functools import cached_property
from pathlib import Path, PurePosixPath

from bookmaker.source import file_limits as limits
from bookmaker.source.diagnostics import LINE_BREAK, Collector, Place, nearest, quoted
from bookmaker.source.placed import Node, Sequence, Table, Word
from bookmaker.source.textfile import read_file
from bookmaker.source.yamlfile import parse_yaml

SETTINGS = "archive.yaml"
"""What an archive says of itself; it holds no puzzles."""

LIST = ".txt"
YAML = (".yaml", ".yml")

_ID = re.compile(r"""(?<![\w-])["']?id["']?\s*:\s*["']?([A-Za-z0-9-]+)""")
_LIST_LINE = re.compile(r"\s*(?P<digits>[0-9.]{81})(?!\S)\s*(?P<name>.*)")


@dataclass(frozen=True, slots=True)
class Holding:
    """What one file holds: its puzzles as typed; the printed permission that holds for those without their own; and
    the files that it includes, for whose puzzles it holds as well."""

    puzzles: tuple[Table, ...] = ()
    permission: str = ""
    includes: tuple[str, ...] = ()


def archive_files(root: Path, collector: Collector) -> Iterator[Path]:
    """Every file that may hold puzzles, in the order of names; `root` begins each as it was typed."""
    if not root.is_dir():
        collector.error(
            Place(str(root)), "no-archive", f"there is no folder “{root}”", "an archive is a folder of puzzle files"
        )
        return
    home, met = root.resolve(), 0
    for folder, folders, names in os.walk(root):
        folders[:] = sorted(name for name in folders if _inside(Path(folder) / name, home, collector))
        met += len(names) + len(folders)
        if met > limits.ARCHIVE_FILES:
            said = f"the folder holds more than {limits.ARCHIVE_FILES} files"
            collector.error(Place(str(root)), "archive-large", said, "name the folder that holds the puzzles")
            return
        for name in sorted(names):
            path = Path(folder) / name
            if name != SETTINGS and path.suffix in (*YAML, LIST) and _inside(path, home, collector):
                yield path


def _inside(path: Path, home: Path, collector: Collector) -> bool:
    """Is this to be read: not hidden, and no link? A link that leads out is a diagnostic."""
    if path.name.startswith("."):
        return False
    if not path.is_symlink():
        return True
    try:
        inside = path.resolve().is_relative_to(home)
    except (OSError, RuntimeError):
        return False
    if not inside:
        said = "this link leads out of the archive"
        collector.error(
            Place(str(path)), "link-outside", said, "put the file itself here, or name its folder as an archive too"
        )
    return False


def holding_of(path: Path, text: str, collector: Collector) -> Holding:
    """What a file holds; mistakes of form go to the collector, those of its puzzles are found when they are read."""
    if path.suffix == LIST:
        return Holding(tuple(_lines_of(path, text)))
    tree = parse_yaml(text, str(path), collector)
    return _holding(tree) if tree is not None else Holding()


def _holding(tree: Node) -> Holding:
    if isinstance(tree, Sequence):
        return _of_lists([tree], "")
    if not isinstance(tree, Table):
        return Holding()
    if tree.get("givens") or (tree.get("id") and not tree.get("book")):
        return Holding((tree,))
    book = tree.get("book")
    said = book.get("permission") if isinstance(book, Table) else None
    lists = [node for node in [tree.get("puzzles")] if node is not None]
    chapters = tree.get("chapters")
    for chapter in chapters.values if isinstance(chapters, Sequence) else ():
        listed = chapter.get("puzzles") if isinstance(chapter, Table) else None
        lists += [listed] if listed is not None else []
    return _of_lists(lists, said.value if isinstance(said, Word) else "")


def _of_lists(lists: Iterable[Node], permission: str) -> Holding:
    puzzles, includes = [], []
    for node in lists:
        for item in node.values if isinstance(node, Sequence) else (node,):
            if not isinstance(item, Table) or item.get("pick"):
                continue
            included = item.get("include")
            if isinstance(included, Word):
                includes.append(included.value)
            elif item.get("id") or item.get("givens"):
                puzzles.append(item)
    return Holding(tuple(puzzles), permission, tuple(includes))


def _lines_of(path: Path, text: str) -> Iterator[Table]:
    """The puzzles of a list, each as it would stand in a manifest; its id is the list's name and its number there."""
    number, stem = 0, list_name(path)
    for at, line in enumerate(LINE_BREAK.split(text), start=1):
        if not (found := _LIST_LINE.match(line)):
            continue
        number += 1
        place = Place(str(path), at, found.start("digits") + 1)
        entries = [("id", f"{stem}-{number}"), ("givens", found["digits"])]
        if (name := found["name"].strip()) and not name.startswith("#"):
            entries.append(("title", name[: limits.LINE]))
        yield Table(place, tuple((Word(place, key), Word(place, value)) for key, value in entries))


def list_name(path: Path) -> str:
    return "-".join(re.findall("[A-Za-z0-9]+", path.stem))[:30] or "list"


def permissions_by_file(books: Mapping[Path, Holding]) -> dict[Path, str]:
    """The printed permission that books give to the files that they include, also by way of others."""
    given: dict[Path, str] = {}

    def hand_on(path: Path, line: str, through: tuple[Path, ...]) -> None:
        for name in books[path].includes if path in books else ():
            file = path.parent / PurePosixPath(name)
            if file not in through:
                given.setdefault(file, line)
                hand_on(file, line, (*through, file))

    for path, holding in sorted(books.items()):
        if holding.permission:
            hand_on(path, holding.permission, (path,))
    return given


@dataclass
class Archive:
    """Folders to pick from. Files are read when a puzzle is first asked for, and then only those that may hold it."""

    roots: tuple[tuple[Path, Place], ...]
    """Each with the place where it is named."""
    collector: Collector
    kept: dict[Path, Holding] = field(default_factory=dict)
    picked: dict[int, Place] = field(default_factory=dict)
    """The puzzles that have been picked, by identity, and where."""

    def find(self, wanted: Word, file: Word | None) -> Table | None:
        """The puzzle of an id as typed, with the printed permission it has from its book; None after a diagnostic.

        `file` is the end of the name of the file that is meant, where several hold a puzzle of this id.
        """
        found = [
            table
            for path in self._texts.ids.get(wanted.value.lower(), ())
            if file is None or PurePosixPath(path.as_posix()).match(file.value)
            for table in self._held(path).puzzles
            if _is(table, wanted.value)
        ]
        if len(found) == 1:
            first = self.picked.setdefault(id(found[0]), wanted.place)
            if first is wanted.place:
                return found[0]
            self.collector.error(
                wanted.place, "pick-twice", f"“{wanted.value}” is picked already, at {first}", "", (first,)
            )
            return None
        names = " and ".join(f"“{folder}”" for folder, _ in self.roots)
        if not found:
            where = f" in “{file.value}”" if file else ""
            said = f"the archive {names} has no puzzle “{wanted.value}”{where}"
            self.collector.error(wanted.place, "unknown-pick", said, nearest(wanted.value, self._texts.names.values()))
        else:
            files = [table.place.file for table in found]
            said = f"{len(found)} puzzles of the archive have the id “{wanted.value}”: in {', '.join(files)}"
            hint = f"say which one is meant with “from: {Path(files[0]).name}”, or give one of them another id"
            self.collector.error(wanted.place, "pick-unclear", said, hint)
        return None

    @cached_property
    def _texts(self) -> _Texts:
        texts = _Texts()
        for root, place in self.roots:
            own = Collector()
            for path in archive_files(root, own):
                text = read_file(path, str(path), Place(str(path)), Collector(), limits.LIST_BYTES)
                if text is not None:
                    texts.take(path, text)
            self.collector.found += [
                diagnostic if diagnostic.code == "link-outside" else replace(diagnostic, place=place)
                for diagnostic in own.found
            ]
        return texts

    def _held(self, path: Path) -> Holding:
        if path not in self.kept:
            held = holding_of(path, self._texts.texts[path], self.collector)
            line = held.permission or self._given.get(path, "")
            self.kept[path] = Holding(tuple(_with_permission(table, line) for table in held.puzzles), line)
        return self.kept[path]

    @cached_property
    def _given(self) -> dict[Path, str]:
        books = {
            p: holding_of(p, t, Collector())
            for p, t in self._texts.texts.items()
            if p.suffix in YAML and "include" in t
        }
        return permissions_by_file(books)


@dataclass
class _Texts:
    """The texts of an archive's files, and which of them may hold an id (in small letters)."""

    texts: dict[Path, str] = field(default_factory=dict)
    ids: dict[str, list[Path]] = field(default_factory=dict)
    names: dict[str, str] = field(default_factory=dict)

    def take(self, path: Path, text: str) -> None:
        if path.suffix == LIST:
            found = {_text(table, "id") for table in _lines_of(path, text)}
        else:
            found = set(_ID.findall(text))
        if found or "include" in text:
            self.texts[path] = text
        for name in found:
            self.names.setdefault(name.lower(), name)
            self.ids.setdefault(name.lower(), []).append(path)


def _text(table: Table, key: str) -> str:
    node = table.get(key)
    return node.value if isinstance(node, Word) else ""


def _is(table: Table, name: str) -> bool:
    return _text(table, "id").lower() == name.lower()


def _with_permission(table: Table, line: str) -> Table:
    """The puzzle with a printed permission of its own, if it has none."""
    if not line or table.get("permission") is not None:
        return table
    return Table(table.place, (*table.entries, (Word(table.place, "permission"), Word(table.place, line))))


def read_pick(item: Table, archive: Archive | None, collector: Collector) -> Table | None:
    """The puzzle that “- pick: id” means, with the fields that stand beside it in place of its own."""
    wanted, file = item.get("pick"), item.get("from")
    if not isinstance(wanted, Word) or not wanted.value or (file is not None and not isinstance(file, Word)):
        collector.error(item.place, "bad-pick", "“pick” names one puzzle by its id", "such as “- pick: low-tide”")
        return None
    if archive is None:
        said = f"{quoted(wanted.value)} is to be picked from an archive, and the book names none"
        hint = "add a line such as “archive: ../archive” under “book:”, or name it with --archive"
        collector.error(wanted.place, "no-archive", said, hint)
        return None
    table = archive.find(wanted, file)
    if table is None:
        return None
    own = [(key, value) for key, value in item.entries if key.value not in ("pick", "from")]
    said_here = {key.value for key, _ in own}
    return Table(item.place, (*(entry for entry in table.entries if entry[0].value not in said_here), *own))
