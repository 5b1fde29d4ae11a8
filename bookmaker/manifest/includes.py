"""Lists of puzzles, with the files they include.

In: the node of a list of puzzles. Out: the nodes of the puzzles themselves, in order, from however many files.

An included file lies in the folder of the file that includes it, or further down; never above the folder of the
manifest, whatever `..` or links between files say.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path, PureWindowsPath

from bookmaker.manifest.archives import Archive, read_pick
from bookmaker.source import file_limits as limits
from bookmaker.source.diagnostics import Collector, Place, quoted
from bookmaker.source.placed import Node, Sequence, Table, Word, read_text
from bookmaker.source.textfile import read_file
from bookmaker.source.yamlfile import parse_yaml


@dataclass(frozen=True, slots=True)
class Source:
    """An opened file: its path, its name as the user would write it, and the files through which it was reached."""

    path: Path
    shown: Path
    through: tuple[Path, ...] = ()


@dataclass(slots=True)
class Shelf:
    """The files of one book. `root` is the folder that includes must stay in, with links followed; `archive` is what
    the book picks from."""

    root: Path
    collector: Collector
    taken: dict[Path, Place] = field(default_factory=dict)
    archive: Archive | None = None

    def puzzles(self, node: Node, source: Source) -> Iterator[Node]:
        """The puzzles of a list, or of the one puzzle that stands in place of a list."""
        if isinstance(node, Table):
            yield from self._item(node, source)
        elif isinstance(node, Sequence):
            for item in node.values:
                yield from self._item(item, source)
        elif node.value:
            hint = "each puzzle begins with a dash on a line of its own: “- id: …”"
            if node.value.endswith((".yaml", ".yml")):
                hint = f"a file is named on a line of its own: “- include: {node.value}”"
            self.collector.error(node.place, "not-a-list", "a list of puzzles should stand here", hint)

    def _item(self, item: Node, source: Source) -> Iterator[Node]:
        if isinstance(item, Table) and item.get("pick") is not None:
            picked = read_pick(item, self.archive, self.collector)
            if picked is not None:
                yield picked
            return
        named = item.get("include") if isinstance(item, Table) else None
        if named is None or not isinstance(item, Table):
            yield item
            return
        for key, _ in item.entries:
            if key.value != "include":
                self.collector.error(
                    key.place, "unknown-key", f"{quoted(key.value)} cannot stand beside “include”", _ALONE
                )
        included = self._open(named, source)
        if included is not None:
            yield from self._of_file(*included)

    def _of_file(self, tree: Node, source: Source) -> Iterator[Node]:
        """The puzzles of an included file: a list, one puzzle, or a table with `puzzles:` alone."""
        listed = tree.get("puzzles") if isinstance(tree, Table) else None
        if listed is None or not isinstance(tree, Table):
            yield from self.puzzles(tree, source)
            return
        for key, _ in tree.entries:
            if key.value != "puzzles":
                said = f"{quoted(key.value)} cannot stand in an included file"
                self.collector.error(key.place, "unknown-key", said, "an included file holds puzzles only")
        yield from self.puzzles(listed, source)

    def _open(self, named: Node, source: Source) -> tuple[Node, Source] | None:
        name = read_text(named, "“include”", self.collector)
        if name is None or not isinstance(named, Word) or not self._well_named(named):
            return None
        path, shown = source.path.parent / name, source.shown.parent / name
        try:
            true_path = path.resolve()
        except (OSError, RuntimeError):
            self.collector.error(named.place, "no-file", f"there is no file “{shown}”")
            return None
        if not true_path.is_relative_to(self.root):
            said = f"“{shown}” is a link that leads out of the book's folder"
            self.collector.error(named.place, "include-outside", said, _INSIDE)
            return None
        if not self._new(true_path, named, source):
            return None
        text = read_file(path, str(shown), named.place, self.collector)
        tree = parse_yaml(text, str(shown), self.collector) if text is not None else None
        return None if tree is None else (tree, Source(path, shown, (*source.through, true_path)))

    def _well_named(self, named: Word) -> bool:
        name = named.value
        windows = PureWindowsPath(name)
        said = code = hint = ""
        if not name or not name.isprintable():
            said, code, hint = "“include” names no file", "no-value", "such as “include: puzzles/estuary.yaml”"
        elif name.startswith(("/", "\\", "~")) or windows.drive or ".." in windows.parts:
            said, code, hint = f"{quoted(name)} is not inside the book's folder", "include-outside", _INSIDE
        elif "\\" in name:
            said, code, hint = f"{quoted(name)} has backslashes", "include-name", "write / between folder and file"
        if said:
            self.collector.error(named.place, code, said, hint)
        return not said

    def _new(self, true_path: Path, named: Word, source: Source) -> bool:
        """Is this a file not yet in the book, and within the limits?"""
        said = hint = code = ""
        if true_path in source.through:
            said, code = f"{quoted(named.value)} includes itself, directly or by way of others", "include-loop"
            hint = "remove the line from one of these files"
        elif true_path in self.taken:
            said, code = f"{quoted(named.value)} is already included, at {self.taken[true_path]}", "include-twice"
        elif len(source.through) > limits.INCLUDE_DEPTH:
            said, code = f"files include files more than {limits.INCLUDE_DEPTH} deep here", "include-deep"
        elif len(self.taken) >= limits.FILES:
            said, code = f"the book is made of more than {limits.FILES} files", "include-many"
        if said:
            self.collector.error(named.place, code, said, hint)
            return False
        self.taken[true_path] = named.place
        return True


_ALONE = "“- include: file” stands on its own; what belongs to a puzzle goes into the included file"
_INSIDE = "a book includes only files in its own folder or below, so that it can be moved as a whole"
