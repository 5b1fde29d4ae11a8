"""A book as its editor typed it → a `Manifest`; all of its troubles at once.

In: the path of a manifest, of a folder with `book.yaml` in it, of a file of puzzles alone, or of a plain list of
classics. Out: a `Manifest` with its warnings; or `BookTroubles`.
"""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator
from dataclasses import replace
from itertools import islice
from pathlib import Path

from bookmaker.manifest import limits
from bookmaker.manifest.archives import Archive
from bookmaker.manifest.bookfields import Heading, read_heading
from bookmaker.manifest.classics import read_classics
from bookmaker.manifest.includes import Shelf, Source
from bookmaker.manifest.model import Chapter, Entry, Manifest
from bookmaker.manifest.puzzlefields import read_entry
from bookmaker.manifest.textfile import read_file
from bookmaker.manifest.texts import read_line, read_note
from bookmaker.manifest.yamlfile import parse_yaml
from bookmaker.placed import Node, Sequence, Table, Word, read_choice, read_fields, read_items
from bookmaker.rules.common.contract import RuledPuzzle
from bookmaker.trouble import Desk, Place, in_file_order, typed

__all__ = ["load"]

MANIFEST_NAMES = ("book.yaml", "book.yml")

MANIFEST_KEYS = ("book", "puzzles", "chapters")
CHAPTER_KEYS = ("title", "note", "order", "puzzles")
CHAPTER_ORDERS = ("difficulty", "listed")

NAMED = 3
"""So many puzzles are named where something is said of several."""


def load(path: Path, archives: tuple[Path, ...] = ()) -> Manifest:
    """Read the book at a path; it picks from `archives` where it names none itself.

    Raises `BookTroubles` with everything that is wrong, in file order.
    """
    desk = Desk()
    file = manifest_in(path, desk) if path.is_dir() else path
    text = read_file(file, str(file), Place(str(file)), desk)
    manifest: Manifest | None = None
    if text is not None:
        manifest = (
            _from_yaml(text, file, desk, archives) if file.suffix in (".yaml", ".yml") else _from_list(text, file, desk)
        )
    desk.raise_errors()
    assert manifest is not None, "a manifest that cannot be read leaves a trouble"
    return manifest


def manifest_in(folder: Path, desk: Desk) -> Path:
    """The manifest of a folder. Raises `BookTroubles` where there is none, or more than one."""
    found = [folder / name for name in MANIFEST_NAMES if (folder / name).exists()]
    if len(found) > 1:
        said = f"there is a {MANIFEST_NAMES[0]} and a {MANIFEST_NAMES[1]} in this folder"
        desk.error(Place(str(folder)), "two-books", said, "name the one that is meant, or move the other away")
    elif not found:
        hint = f"“bookmaker start {typed(folder)}” makes a small book to begin with"
        desk.error(Place(str(folder)), "no-file", f"there is no {MANIFEST_NAMES[0]} in this folder", hint)
    desk.raise_errors()
    return found[0]


def _from_list(text: str, file: Path, desk: Desk) -> Manifest:
    heading = Heading(Place(str(file)), file.stem)
    return _manifest(heading, read_classics(text, str(file), desk), (), desk, permissions=False)


def _from_yaml(text: str, file: Path, desk: Desk, archives: tuple[Path, ...]) -> Manifest | None:
    tree = parse_yaml(text, str(file), desk)
    if tree is None:
        return None
    heading, chapters, nodes = puzzles_in(tree, file, desk, archives)
    ids: dict[str, Place] = {}
    read = (read_entry(node, heading.permission, chapter, ids, desk) for chapter, node in nodes)
    return _manifest(heading, (entry for entry in read if entry is not None), chapters, desk)


def puzzles_in(
    tree: Node, file: Path, desk: Desk, archives: tuple[Path, ...] = ()
) -> tuple[Heading, tuple[Chapter, ...], Iterator[tuple[int, Node]]]:
    """The heading and chapters of a book's tree, and the node of each puzzle with its chapter's number, read from
    included files and archives as they are come to."""
    shelf = Shelf(file.parent.resolve(), desk, {file.resolve(): Place(str(file))})
    source = Source(file, file, (file.resolve(),))
    heading, chapters, lists = _read_tree(tree, file, desk)
    roots = [(_shortened(file.parent / word.value), word.place) for word in heading.archives]
    roots += [(folder, Place("--archive")) for folder in archives if not roots]
    shelf.archive = Archive(tuple(roots), desk) if roots else None
    nodes = ((chapter, node) for chapter, puzzles in enumerate(lists) for node in shelf.puzzles(puzzles, source))
    return heading, chapters, nodes


def _shortened(path: Path) -> Path:
    """The path without “folder/..”, where that leads to the same place."""
    short = Path(os.path.normpath(path))
    return short if short.resolve() == path.resolve() else path


def _read_tree(tree: Node, file: Path, desk: Desk) -> tuple[Heading, tuple[Chapter, ...], list[Node]]:
    """The heading, the chapters, and a list of puzzles for each chapter (one list where there are none)."""
    if isinstance(tree, Sequence) or (isinstance(tree, Table) and (tree.get("id") or tree.get("givens"))):
        return Heading(Place(str(file)), file.stem), (), [tree]
    tree = _lifted(tree, desk)
    fields = read_fields(tree, "a manifest", desk, MANIFEST_KEYS, ("book",))
    heading = read_heading(fields["book"], desk) if "book" in fields else Heading(tree.place)
    if "chapters" not in fields:
        misspelt = isinstance(tree, Table) and len(fields) < len(tree.entries)
        if heading.order == "chapters" and heading.order_place and not misspelt:
            said = "the order is by chapters, but there are none"
            desk.error(
                heading.order_place,
                "no-chapters",
                said,
                "put the puzzles under “chapters:”, or write “order: difficulty”",
            )
        return heading, (), [fields["puzzles"]] if "puzzles" in fields else []
    if "puzzles" in fields:
        said = "a book has either chapters or one list of puzzles, not both"
        desk.error(fields["puzzles"].place, "chapters-and-puzzles", said, "move these puzzles into a chapter")
    if heading.order not in (None, "chapters") and heading.order_place:
        said = f"“order: {heading.order}” does not go with chapters"
        desk.error(
            heading.order_place,
            "order-chapters",
            said,
            "write “order: chapters”; each chapter is then in order of difficulty",
        )
    heading = replace(heading, order="chapters")
    return heading, *_read_chapters(fields["chapters"], desk)


def _lifted(tree: Node, desk: Desk) -> Node:
    """The manifest with what was set in too far taken out of “book”."""
    book = tree.get("book") if isinstance(tree, Table) else None
    if not isinstance(tree, Table) or not isinstance(book, Table):
        return tree
    astray = [entry for entry in book.entries if entry[0].value in ("puzzles", "chapters")]
    if not astray:
        return tree
    for word, _ in astray:
        said = f"“{word.value}” is set under “book” and belongs below it"
        desk.error(word.place, "lost-name", said, f"begin “{word.value}:” in the first column")
    own = Table(book.place, tuple(entry for entry in book.entries if entry not in astray))
    return Table(tree.place, (*((word, own if node is book else node) for word, node in tree.entries), *astray))


def _read_chapters(node: Node, desk: Desk) -> tuple[tuple[Chapter, ...], list[Node]]:
    chapters, lists = [], []
    for item in read_items(node, "“chapters”", desk):
        fields = read_fields(item, "the chapter", desk, CHAPTER_KEYS, ("title", "puzzles"))
        title = fields.get("title")
        if isinstance(title, Word) and not title.value.strip():
            desk.error(
                title.place, "no-value", "the chapter's title is left empty", "it is printed at the head of the chapter"
            )
        order = read_choice(fields["order"], "“order”", desk, CHAPTER_ORDERS) if "order" in fields else None
        note, place = read_note(fields, "note", desk), title.place if title else item.place
        chapters.append(Chapter(read_line(fields, "title", desk), note, order == "listed", place))
        lists.append(fields.get("puzzles", Sequence(item.place, ())))
    return tuple(chapters), lists


def _manifest(
    heading: Heading,
    entries: Iterable[Entry],
    chapters: tuple[Chapter, ...],
    desk: Desk,
    permissions: bool = True,
) -> Manifest:
    """`permissions` says whether the file has room for permission lines."""
    taken = tuple(islice(entries, limits.PUZZLES + 1))
    if len(taken) > limits.PUZZLES:
        said = f"the book has more than {limits.PUZZLES} puzzles"
        desk.error(taken[-1].place, "many-puzzles", said, "split it into several books")
    if not taken and not any(desk.errors()):
        hint = "list them under “puzzles:”, each after a dash: “- id: …”"
        desk.error(Place(heading.place.file), "no-puzzles", "the book has no puzzles", hint)
    _warn_of_twins(taken, desk)
    if permissions:
        _warn_of_permissions(taken, heading.place.file, desk)
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
        warnings=in_file_order(trouble for trouble in desk.found if trouble.warning),
    )


def _warn_of_permissions(entries: Iterable[Entry], file: str, desk: Desk) -> None:
    """One line for all puzzles that may be printed by nobody's leave."""
    without = [entry.id for entry in entries if not entry.permission and not entry.consent.state]
    if without:
        named = ", ".join(without[:NAMED]) + (" …" if len(without) > NAMED else "")
        which = f"“{named}” has" if len(without) == 1 else f"{len(without)} puzzles ({named}) have"
        said = f"{which} no “permission:” line; one under “book:” holds for all puzzles without their own"
        desk.warn(Place(file), "no-permission", said)


def _warn_of_twins(entries: Iterable[Entry], desk: Desk) -> None:
    """The same puzzle under two ids is hardly ever meant."""
    first: dict[RuledPuzzle, Entry] = {}
    for entry in entries:
        twin = first.setdefault(entry.puzzle, entry)
        if twin is not entry:
            said = f"“{entry.id}” is the same puzzle as “{twin.id}”, at {twin.place}"
            desk.warn(entry.place, "same-puzzle", said)
