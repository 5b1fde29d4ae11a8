"""Books that were printed, as the memory of an archive: who holds a puzzle, or a look-alike of it.

In: books. Out: for each key of a puzzle in them the titles of the books that hold it.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from concurrent.futures import Executor
from pathlib import Path

from bookmaker.archive.likeness import likeness_each
from bookmaker.manifest import load
from bookmaker.manifest.entries import Manifest
from bookmaker.proof.cache import Store
from bookmaker.source.diagnostics import BookErrors, Collector, Place
from bookmaker.symmetry import Keys

Book = tuple[Path, Place]
"""A book, and where it is named."""


def printed_before(
    books: Iterable[Book], store: Store, executor: Executor | None, collector: Collector
) -> dict[str, tuple[str, ...]]:
    """The titles of the books that hold a puzzle with a key; a book that cannot be read is a diagnostic."""
    found: dict[str, dict[str, None]] = {}
    seen: set[Path] = set()
    for path, place in books:
        if path.resolve() in seen:
            continue
        seen.add(path.resolve())
        manifest = load_named(path, place, collector)
        for keys in keys_of_book(manifest, store, executor) if manifest else ():
            if keys is not None and manifest is not None:
                found.setdefault(keys.puzzle, {})[manifest.title] = None
    return {key: tuple(titles) for key, titles in found.items()}


def load_named(path: Path, place: Place, collector: Collector) -> Manifest | None:
    """A book that another file or an option names; None after diagnostics."""
    if not path.exists():
        collector.error(place, "no-book", f"there is no book “{path}”")
        return None
    try:
        return load(path)
    except BookErrors as errors:
        collector.found += errors.diagnostics
        return None


def keys_of_book(manifest: Manifest, store: Store, executor: Executor | None) -> Iterator[Keys | None]:
    """The keys of a book's puzzles, in their order."""
    return likeness_each(((entry.puzzle, None) for entry in manifest.entries), store, executor)
