"""What every command does first: read the book, prove its puzzles, find the puzzle that is meant."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path
from time import monotonic

import click

from bookmaker.book.order import in_book_order
from bookmaker.cli.group import say_troubles
from bookmaker.cli.table import remark
from bookmaker.manifest import load
from bookmaker.manifest.model import Entry, Manifest
from bookmaker.proof import Proof, prove_all, prove_entry
from bookmaker.trouble import BookTroubles, Trouble, nearest

book_argument = click.argument("book", type=click.Path(exists=True, path_type=Path))


def load_book(path: Path) -> Manifest:
    """The manifest at a path; its warnings are said at once, its mistakes raised."""
    manifest = load(path)
    say_troubles(manifest.warnings)
    return manifest


def proofs_in_order(manifest: Manifest, count: int = 0) -> tuple[Proof, ...]:
    """Proofs of all puzzles in book order, with progress on standard error after the first second."""
    return in_book_order(manifest, prove_all(manifest, count, _progress()))


def proofs_of(manifest: Manifest, ids: tuple[str, ...]) -> tuple[Proof, ...]:
    """Proofs of the puzzles named, in the order named."""
    return tuple(prove_entry(entry) for entry in find_entries(manifest, ids))


def find_entries(manifest: Manifest, ids: tuple[str, ...]) -> tuple[Entry, ...]:
    """Entries by id; unknown ids are reported together, each with the nearest known one."""
    by_id = {entry.id: entry for entry in manifest.entries}
    unknown = [name for name in ids if name not in by_id]
    if unknown:
        raise BookTroubles(
            Trouble(manifest.place, "unknown-id", f"the book has no puzzle “{name}”", nearest(name, by_id))
            for name in unknown
        )
    return tuple(by_id[name] for name in ids)


def proven(proofs: tuple[Proof, ...]) -> tuple[Proof, ...]:
    """The same proofs, if every puzzle has exactly one solution; else a trouble for each that has not."""
    unproven = [proof for proof in proofs if proof.grade is None]
    if unproven:
        raise BookTroubles(
            Trouble(proof.entry.place, "not-unique", remark(proof), "“bookmaker proof --count 100” tells more")
            for proof in unproven
        )
    return proofs


def _progress() -> Callable[[int, int], None]:
    began = monotonic()
    shown = False

    def watch(done: int, of: int) -> None:
        nonlocal shown
        if (monotonic() - began > 1 and sys.stderr.isatty()) or shown:
            shown = True
            click.echo(f"\rproved {done} of {of}", nl=done == of, err=True)

    return watch
