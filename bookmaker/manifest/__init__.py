"""A book as its editor typed it → a `Manifest`; all of its diagnostics at once.

In: the path of a manifest, of a folder with `book.yaml` in it, of a file of puzzles alone, or of a plain list of
classics. Out: a `Manifest` with its warnings; or `BookErrors`.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import islice
from pathlib import Path

from bookmaker.manifest.archives import Archive
from bookmaker.manifest.bookfields import Heading, read_heading
from bookmaker.manifest.classics import read_classics
from bookmaker.manifest.entries import Chapter, Entry, Manifest
from bookmaker.manifest.includes import Shelf, Source
from bookmaker.manifest.publication import PLAIN
from bookmaker.manifest.puzzlefields import read_entry
from bookmaker.manifest.texts import read_line, read_note
from bookmaker.manifest.translations import in_language, language_of
from bookmaker.phrases.bands import band_names
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.source import file_limits as limits
from bookmaker.source.diagnostics import Collector, Place, in_file_order, typed
from bookmaker.source.placed import Node, Sequence, Table, Word, read_choice, read_fields, read_items
from bookmaker.source.textfile import read_file
from bookmaker.source.yamlfile import parse_yaml

__all__ = ["load"]

MANIFEST_NAMES = ("book.yaml", "book.yml")

MANIFEST_KEYS = ("book", "puzzles", "chapters")
CHAPTER_KEYS = ("title", "note", "order", "puzzles")
CHAPTER_ORDERS = ("difficulty", "listed")

NAMED = 3
"""So many puzzles are named where something is said of several."""


def load(path: Path, archives: tuple[Path, ...] = (), language: str = "") -> Manifest:
    """Read the book at a path; it picks from `archives` where it names none itself, and speaks its own language where
    none is asked for.

    Raises `BookErrors` with everything that is wrong, in file order.
    """
    collector = Collector()
    file = manifest_in(path, collector) if path.is_dir() else path
    text = read_file(file, str(file), Place(str(file)), collector)
    manifest: Manifest | None = None
    if text is not None:
        manifest = (
            _from_yaml(text, file, collector, archives, language)
            if file.suffix in (".yaml", ".yml")
            else _from_list(text, file, collector, language)
        )
    collector.raise_errors()
    assert manifest is not None, "a manifest that cannot be read leaves a diagnostic"
    return manifest


def manifest_in(folder: Path, collector: Collector) -> Path:
    """The manifest of a folder. Raises `BookErrors` where there is none, or more than one."""
    found = [folder / name for name in MANIFEST_NAMES if (folder / name).exists()]
    if len(found) > 1:
        said = f"there is a {MANIFEST_NAMES[0]} and a {MANIFEST_NAMES[1]} in this folder"
        collector.error(Place(str(folder)), "two-books", said, "name the one that is meant, or move the other away")
    elif not found:
        hint = f"“bookmaker start {typed(folder)}” makes a small book to begin with"
        collector.error(Place(str(folder)), "no-file", f"there is no {MANIFEST_NAMES[0]} in this folder", hint)
    collector.raise_errors()
    return found[0]


def _from_list(text: str, file: Path, collector: Collector, language: str) -> Manifest:
    heading = _unheaded(file, language)
    return _manifest(heading, read_classics(text, str(file), collector), (), collector, permissions=False)


def _from_yaml(
    text: str, file: Path, collector: Collector, archives: tuple[Path, ...], language: str
) -> Manifest | None:
    tree = parse_yaml(text, str(file), collector)
    if tree is None:
        return None
    heading, chapters, nodes = puzzles_in(tree, file, collector, archives, language)
    ids: dict[str, Place] = {}
    read = (read_entry(node, heading.permission, chapter, ids, collector) for chapter, node in nodes)
    return _manifest(heading, (entry for entry in read if entry is not None), chapters, collector)


def puzzles_in(
    tree: Node, file: Path, collector: Collector, archives: tuple[Path, ...] = (), language: str = ""
) -> tuple[Heading, tuple[Chapter, ...], Iterator[tuple[int, Node]]]:
    """The heading and chapters of a book's tree, and the node of each puzzle with its chapter's number, read from
    included files and archives as they are come to."""
    shelf = Shelf(file.parent.resolve(), collector, {file.resolve(): Place(str(file))})
    source = Source(file, file, (file.resolve(),))
    spoken = language or language_of(tree)
    tree = in_language(tree, spoken, collector, renamed=bool(language))
    heading, chapters, lists = _read_tree(tree, file, collector, language)
    roots = [(_shortened(file.parent / word.value), word.place) for word in heading.archives]
    roots += [(folder, Place("--archive")) for folder in archives if not roots]
    shelf.archive = Archive(tuple(roots), collector) if roots else None
    nodes = (
        (chapter, in_language(node, spoken, collector))
        for chapter, puzzles in enumerate(lists)
        for node in shelf.puzzles(puzzles, source)
    )
    return heading, chapters, nodes


def _unheaded(file: Path, language: str) -> Heading:
    """The heading of a file without one, which is named after the file."""
    spoken = language or "en"
    return Heading(
        Place(str(file)), file.stem, band_names=band_names(spoken), publication=replace(PLAIN, language=spoken)
    )


def _shortened(path: Path) -> Path:
    """The path without “folder/..”, where that leads to the same place."""
    short = Path(os.path.normpath(path))
    return short if short.resolve() == path.resolve() else path


def _read_tree(
    tree: Node, file: Path, collector: Collector, language: str
) -> tuple[Heading, tuple[Chapter, ...], list[Node]]:
    """The heading, the chapters, and a list of puzzles for each chapter (one list where there are none)."""
    if isinstance(tree, Sequence) or (isinstance(tree, Table) and (tree.get("id") or tree.get("givens"))):
        return _unheaded(file, language), (), [tree]
    tree = _lifted(tree, collector)
    fields = read_fields(tree, "a manifest", collector, MANIFEST_KEYS, ("book",))
    heading = read_heading(fields["book"], collector) if "book" in fields else Heading(tree.place)
    if "chapters" not in fields:
        misspelt = isinstance(tree, Table) and len(fields) < len(tree.entries)
        if heading.order == "chapters" and heading.order_place and not misspelt:
            said = "the order is by chapters, but there are none"
            collector.error(
                heading.order_place,
                "no-chapters",
                said,
                "put the puzzles under “chapters:”, or write “order: difficulty”",
            )
        return heading, (), [fields["puzzles"]] if "puzzles" in fields else []
    if "puzzles" in fields:
        said = "a book has either chapters or one list of puzzles, not both"
        collector.error(fields["puzzles"].place, "chapters-and-puzzles", said, "move these puzzles into a chapter")
    if heading.order not in (None, "chapters") and heading.order_place:
        said = f"“order: {heading.order}” does not go with chapters"
        collector.error(
            heading.order_place,
            "order-chapters",
            said,
            "write “order: chapters”; each chapter is then in order of difficulty",
        )
    heading = replace(heading, order="chapters")
    return heading, *_read_chapters(fields["chapters"], collector)


def _lifted(tree: Node, collector: Collector) -> Node:
    """The manifest with what was set in too far taken out of “book”."""
    book = tree.get("book") if isinstance(tree, Table) else None
    if not isinstance(tree, Table) or not isinstance(book, Table):
        return tree
    astray = [entry for entry in book.entries if entry[0].value in ("puzzles", "chapters")]
    if not astray:
        return tree
    for word, _ in astray:
        said = f"“{word.value}” is set under “book” and belongs below it"
        collector.error(word.place, "lost-name", said, f"begin “{word.value}:” in the first column")
    own = Table(book.place, tuple(entry for entry in book.entries if entry not in astray))
    return Table(tree.place, (*((word, own if node is book else node) for word, node in tree.entries), *astray))


def _read_chapters(node: Node, collector: Collector) -> tuple[tuple[Chapter, ...], list[Node]]:
    chapters, lists = [], []
    for item in read_items(node, "“chapters”", collector):
        fields = read_fields(item, "the chapter", collector, CHAPTER_KEYS, ("title", "puzzles"))
        title = fields.get("title")
        if isinstance(title, Word) and not title.value.strip():
            collector.error(
                title.place, "no-value", "the chapter's title is left empty", "it is printed at the head of the chapter"
            )
        order = read_choice(fields["order"], "“order”", collector, CHAPTER_ORDERS) if "order" in fields else None
        note, place = read_note(fields, "note", collector), title.place if title else item.place
        chapters.append(Chapter(read_line(fields, "title", collector), note, order == "listed", place))
        lists.append(fields.get("puzzles", Sequence(item.place, ())))
    return tuple(chapters), lists


def _manifest(
    heading: Heading,
    entries: Iterable[Entry],
    chapters: tuple[Chapter, ...],
    collector: Collector,
    permissions: bool = True,
) -> Manifest:
    """`permissions` says whether the file has room for permission lines."""
    taken = tuple(islice(entries, limits.PUZZLES + 1))
    if len(taken) > limits.PUZZLES:
        said = f"the book has more than {limits.PUZZLES} puzzles"
        collector.error(taken[-1].place, "many-puzzles", said, "split it into several books")
    if not taken and not any(collector.errors()):
        hint = "list them under “puzzles:”, each after a dash: “- id: …”"
        collector.error(Place(heading.place.file), "no-puzzles", "the book has no puzzles", hint)
    _warn_of_twins(taken, collector)
    if permissions:
        _warn_of_permissions(taken, heading.place.file, collector)
    return Manifest(
        place=heading.place,
        title=heading.title,
        entries=taken,
        subtitle=heading.subtitle,
        editor=heading.editor,
        layout=heading.layout,
        layout_place=heading.layout_place,
        order=heading.order or "difficulty",
        band_names=heading.band_names,
        chapters=chapters,
        publication=heading.publication,
        places=heading.places,
        warnings=in_file_order(diagnostic for diagnostic in collector.found if diagnostic.warning),
    )


def _warn_of_permissions(entries: Iterable[Entry], file: str, collector: Collector) -> None:
    """One line for all puzzles that may be printed by nobody's leave."""
    without = [entry.id for entry in entries if not entry.permission and not entry.consent.state]
    if without:
        named = ", ".join(without[:NAMED]) + (" …" if len(without) > NAMED else "")
        which = f"“{named}” has" if len(without) == 1 else f"{len(without)} puzzles ({named}) have"
        said = f"{which} no “permission:” line; one under “book:” holds for all puzzles without their own"
        collector.warn(Place(file), "no-permission", said)


def _warn_of_twins(entries: Iterable[Entry], collector: Collector) -> None:
    """The same puzzle under two ids is hardly ever meant."""
    first: dict[RuledPuzzle, Entry] = {}
    for entry in entries:
        twin = first.setdefault(entry.puzzle, entry)
        if twin is not entry:
            said = f"“{entry.id}” is the same puzzle as “{twin.id}”, at {twin.place}"
            collector.warn(entry.place, "same-puzzle", said)
