"""The files of an archive → cards, each file's kept between runs as long as it stays as it is.

In: folders. Out: for every file its cards, in order; what is wrong goes to the collector. A file that was read before,
and is the same to the byte, is not parsed again; its cards come from the store in which proofs are kept.
"""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import Executor
from dataclasses import dataclass, replace
from functools import partial
from hashlib import sha256
from pathlib import Path
from typing import Any

from bookmaker.archive.cards import NO_KEYS, NOTHING_RECORDED, Card
from bookmaker.archive.likeness import likeness_each
from bookmaker.files import ordinary
from bookmaker.grade.bands import family_of
from bookmaker.manifest.archives import YAML, Holding, archive_files, holding_of, permissions_by_file
from bookmaker.manifest.entries import Entry
from bookmaker.manifest.puzzlefields import read_entry
from bookmaker.phrases import Phrasebook
from bookmaker.proof import Proof, prove_each
from bookmaker.proof.cache import ROOMS_THAT_MATTER, Store, code_version, hash_of
from bookmaker.proof.claims import wrong_claims
from bookmaker.proof.report import verdict_word
from bookmaker.source import file_limits as limits
from bookmaker.source.diagnostics import Collector, Place
from bookmaker.source.textfile import read_file
from bookmaker.symmetry import Keys

ROOMS = (*ROOMS_THAT_MATTER, "symmetry", "manifest", "archive", "source/placed.py", "source/diagnostics.py")

KEEP_AFTER = 200
"""Puzzles after which the cards of finished files are put into the store."""

Watch = Callable[[int], None]
"""Told how many puzzles have been read."""


@dataclass(frozen=True, slots=True)
class File:
    """A file of an archive as it was read: its cards, what it holds besides, and whether it was faulty."""

    path: Path
    cards: tuple[Card, ...]
    holding: Holding


def read_cards(
    roots: Sequence[Path],
    store: Store,
    executor: Executor | None,
    collector: Collector,
    watch: Watch = lambda done: None,
) -> tuple[Card, ...]:
    """The cards of all puzzles in these folders, in the order of folders, files and lines."""
    paths = list(dict.fromkeys(path for root in roots for path in archive_files(root, collector)))
    keys = {path: key for path in paths if (key := _key_of(path, collector))}
    kept = store.get_all(keys.values())
    files: list[File] = []
    fresh: list[tuple[str, str]] = []
    done = waiting = 0
    for path, key in keys.items():
        file = _from_text(path, kept.pop(key, ""))
        if file is None:
            before = len(collector.found)
            file = _read(path, store, executor, collector, partial(_onward, watch, done))
            if file and len(collector.found) == before:
                fresh.append((key, _to_text(file)))
                waiting += len(file.cards)
                if waiting > KEEP_AFTER:
                    store.put(fresh)
                    fresh, waiting = [], 0
        if file:
            files.append(file)
            done += len(file.cards)
            watch(done)
    if fresh:
        store.put(fresh)
    return tuple(_with_permissions(files))


def entries_of(path: Path, text: str, collector: Collector) -> tuple[tuple[Entry, ...], Holding]:
    """The puzzles that stand in one file, with the permission that the file itself gives them."""
    holding = holding_of(path, text, collector)
    ids: dict[str, Place] = {}
    own = Collector()
    read = [read_entry(table, holding.permission, 0, ids, own) for table in holding.puzzles]
    collector.found += own.found
    return tuple(entry for entry in read if entry is not None), holding


def text_of(path: Path, collector: Collector) -> str | None:
    """The text of a file of an archive; None after a diagnostic."""
    most = limits.FILE_BYTES if path.suffix in YAML else limits.LIST_BYTES
    return read_file(path, str(path), Place(str(path)), collector, most)


def _read(path: Path, store: Store, executor: Executor | None, collector: Collector, watch: Watch) -> File | None:
    text = text_of(path, collector)
    if text is None:
        return None
    entries, holding = entries_of(path, text, collector)
    cards = []
    for card in cards_of(entries, store, executor):
        cards.append(card)
        watch(len(cards))
    return File(path, tuple(cards), holding)


def cards_of(entries: Iterable[Entry], store: Store, executor: Executor | None) -> Iterator[Card]:
    """The cards of entries, in their order."""
    proofs: list[Proof] = []

    def each() -> Iterator[Any]:
        for proof in prove_each(iter(entries), 0, store, executor):
            proofs.append(proof)
            if proof.solution is not None:
                yield proof.entry.puzzle, proof.solution

    found = likeness_each(each(), store, executor)
    while True:
        keys = next(found, None)
        while proofs and proofs[0].solution is None:
            yield _card(proofs.pop(0), None)
        if keys is None:
            return
        yield _card(proofs.pop(0), keys)


def _card(proof: Proof, keys: Keys | None) -> Card:
    entry, graded = proof.entry, proof.grade
    grid = entry.puzzle.grid
    return Card(
        id=entry.id,
        file=entry.place.file,
        line=entry.place.line,
        column=entry.place.column,
        title=entry.title,
        setter=entry.setter,
        shown=str(entry.shown or ""),
        tags=entry.tags,
        source=entry.source,
        state=entry.consent.state or ("granted" if entry.permission else NOTHING_RECORDED),
        printed=entry.permission,
        kinds=tuple(dict.fromkeys(rule.kind for rule in entry.puzzle.rules)),
        family=family_of(entry.puzzle),
        grid=grid.called,
        size=grid.size,
        givens=entry.puzzle.given_count,
        verdict=verdict_word(proof.verdict),
        difficulty=graded.difficulty if graded else 0.0,
        effort=graded.effort if graded else 0.0,
        hardest=Phrasebook(grid).technique(proof.hardest) if proof.hardest else "",
        reached=graded.path.reached if graded else False,
        disputed=any(True for _ in wrong_claims([proof])),
        keys=keys or NO_KEYS,
        fingerprint=entry.fingerprint,
    )


def _with_permissions(files: Sequence[File]) -> Iterator[Card]:
    """The cards, those of included files with the permission that their book gives."""
    given = permissions_by_file({file.path: file.holding for file in files})
    for file in files:
        line = given.get(file.path, "")
        for card in file.cards:
            if line and card.state == NOTHING_RECORDED:
                yield replace(card, state="granted", printed=line)
            elif line and card.state in ("granted", "own") and not card.printed:
                yield replace(card, printed=line)
            else:
                yield card


def _onward(watch: Watch, before: int, more: int) -> None:
    watch(before + more)


def _key_of(path: Path, collector: Collector) -> str:
    """What a file's cards are kept under; "" after a diagnostic."""
    try:
        data = ordinary(path).read_bytes()
    except OSError as error:
        collector.error(
            Place(str(path)), "unreadable", f"“{path}” cannot be opened: {(error.strerror or str(error)).lower()}"
        )
        return ""
    return hash_of("archive", code_version(*ROOMS), path.name, sha256(data).hexdigest())


def _to_text(file: File) -> str:
    cards = [card.to_data() for card in file.cards]
    return json.dumps([cards, file.holding.permission, file.holding.includes], ensure_ascii=False)


def _from_text(path: Path, text: str) -> File | None:
    if not text:
        return None
    try:
        cards, permission, includes = json.loads(text)
        read = tuple(Card.from_data(data, str(path)) for data in cards)
        return File(path, read, Holding((), str(permission), tuple(map(str, includes))))
    except (ValueError, TypeError):
        return None
