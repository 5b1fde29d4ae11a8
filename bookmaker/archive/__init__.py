"""Archives: folders of puzzles, books and lists → a catalogue with grades, permissions, history and look-alikes.

In: folders, and perhaps books that were printed besides those that `archive.yaml` names. Out: a `Catalogue`. The files
stay the truth: there is no database to keep, and what is remembered between runs is checked against them.
"""

from __future__ import annotations

from collections.abc import Sequence
from concurrent.futures import Executor
from pathlib import Path

from bookmaker.archive.cards import Card, Catalogue
from bookmaker.archive.history import printed_before
from bookmaker.archive.reading import Watch, read_cards
from bookmaker.archive.settings import read_settings
from bookmaker.phrases.bands import BAND_NAMES
from bookmaker.proof.cache import Store
from bookmaker.source.diagnostics import Collector, Place, in_file_order

__all__ = ["Card", "Catalogue", "open_catalogue"]


def open_catalogue(
    roots: Sequence[Path],
    store: Store,
    executor: Executor | None = None,
    printed_in: Sequence[Path] = (),
    watch: Watch = lambda done: None,
) -> Catalogue:
    """The catalogue of some folders. Files with diagnostics are told of in it, and the good puzzles in them are
    there."""
    collector = Collector()
    settings = [read_settings(root, collector) for root in roots]
    cards = read_cards(roots, store, executor, collector, watch)
    books = [book for each in settings for book in each.printed_in]
    books += [(path, Place("--printed-in")) for path in printed_in]
    history = printed_before(books, store, executor, collector)
    named = [each.band_names for each in settings if each.band_names != BAND_NAMES]
    return Catalogue(cards, tuple(roots), history, in_file_order(collector.found), named[0] if named else BAND_NAMES)
