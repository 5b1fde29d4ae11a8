"""What a page is about: the puzzles of a book, an archive or a list, with what the catalogue knows of each.

In: a manifest, or an archive's folders. Out: a `Collection`, whose puzzles are proven as they are asked for.
"""

from __future__ import annotations

import os
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass
from math import inf
from pathlib import Path

from bookmaker.archive import Card, Catalogue, open_catalogue
from bookmaker.archive.reading import cards_of, entries_of, text_of
from bookmaker.book.order import place_in_book
from bookmaker.manifest.archives import archive_files
from bookmaker.manifest.entries import Entry, Manifest
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.proof import Proof, prove_each
from bookmaker.proof.cache import Store
from bookmaker.source.diagnostics import Collector, Diagnostic


@dataclass(frozen=True, slots=True)
class Collection:
    """`entries` and `cards` go together; `ranks` says where each puzzle stands in the book, from 0; `printed` names the
    books that hold a puzzle already, by its place among the entries."""

    title: str
    entries: tuple[Entry, ...]
    cards: tuple[Card, ...]
    ranks: tuple[int, ...]
    subtitle: str = ""
    editor: str = ""
    band_names: tuple[str, ...] = BAND_NAMES
    chapters: tuple[str, ...] = ()
    printed: tuple[tuple[str, ...], ...] = ()
    diagnostics: tuple[Diagnostic, ...] = ()
    homes: tuple[Path, ...] = ()
    """The folders in which its files lie."""

    def nearby(self, text: str) -> str:
        """A text without the folders that lead to the files in it: a page that is passed on names no machine."""
        for home in self.homes:
            text = text.replace(f"{home}{os.sep}", "")
        return text

    def proofs(self, store: Store, executor: Executor | None = None) -> Iterator[Proof]:
        """The proofs, one after the other; they are in the store already."""
        return prove_each(iter(self.entries), 0, store, executor)


def of_book(
    manifest: Manifest,
    store: Store,
    executor: Executor | None = None,
    watch: Callable[[int, int], None] = lambda a, b: None,
) -> Collection:
    """The puzzles of a book."""
    cards = []
    for card in cards_of(manifest.entries, store, executor):
        cards.append(card)
        watch(len(cards), len(manifest.entries))
    place = place_in_book(manifest)
    difficulties = [card.difficulty if card.band else inf for card in cards]
    order = sorted(range(len(cards)), key=lambda at: place(manifest.entries[at], difficulties[at]))
    ranks = {at: rank for rank, at in enumerate(order)}
    return Collection(
        manifest.title,
        manifest.entries,
        tuple(cards),
        tuple(ranks[at] for at in range(len(cards))),
        manifest.subtitle,
        manifest.editor,
        manifest.band_names,
        tuple(chapter.title for chapter in manifest.chapters),
        ((),) * len(cards),
        manifest.warnings,
        (Path(manifest.place.file).parent,),
    )


def of_archive(
    folders: Sequence[Path],
    store: Store,
    executor: Executor | None = None,
    watch: Callable[[int], None] = lambda done: None,
) -> Collection:
    """The puzzles of an archive, in the order of its files."""
    catalogue: Catalogue = open_catalogue(folders, store, executor, watch=watch)
    by_place = {card.place: card for card in catalogue.cards}
    entries: list[Entry] = []
    for path in dict.fromkeys(path for folder in folders for path in archive_files(folder, Collector())):
        text = text_of(path, Collector())
        if text is not None:
            entries += (entry for entry in entries_of(path, text, Collector())[0] if entry.place in by_place)
    cards = tuple(by_place[entry.place] for entry in entries)
    return Collection(
        " and ".join(folder.resolve().name for folder in folders),
        tuple(entries),
        cards,
        tuple(range(len(cards))),
        band_names=catalogue.band_names,
        printed=tuple(catalogue.printed_in(card) for card in cards),
        diagnostics=catalogue.diagnostics,
        homes=tuple(folders),
    )
