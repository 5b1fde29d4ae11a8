"""What every command does first: read the book, prove its puzzles, find the puzzle that is meant."""

from __future__ import annotations

from collections.abc import Callable
from concurrent.futures import Executor
from contextlib import AbstractContextManager
from pathlib import Path
from time import monotonic
from typing import TypeVar

import click

from bookmaker.book.order import in_book_order
from bookmaker.cli.group import say_troubles
from bookmaker.cli.table import remark
from bookmaker.manifest import load
from bookmaker.manifest.model import Entry, Manifest
from bookmaker.proof import Proof, prove_all
from bookmaker.proof.cache import FreshStore, Store, user_store
from bookmaker.proof.crew import processes
from bookmaker.times import calibrated_by, read_calibration
from bookmaker.trouble import BookTroubles, Place, Trouble, nearest

book_argument = click.argument("book", type=click.Path(exists=True, path_type=Path))

Command = TypeVar("Command", bound=Callable[..., object])


def proving_options(command: Command) -> Command:
    """The options of every command that proves puzzles; `proofs_in_order` and `proofs_of` go by them."""
    workers = click.option(
        "--workers",
        type=click.IntRange(1, 64),
        default=1,
        show_default=True,
        expose_value=False,
        callback=lambda ctx, _, value: ctx.meta.update(workers=value),
        metavar="N",
        help="Share the proving among N processes.",
    )
    fresh = click.option(
        "--fresh",
        is_flag=True,
        expose_value=False,
        callback=lambda ctx, _, value: ctx.meta.update(fresh=value),
        help="Prove everything anew, also what is known from an earlier run.",
    )
    return workers(fresh(command))


def calibration_option(command: Command) -> Command:
    """The option of every command that prints difficulties; `proofs_in_order` and `proofs_of` go by it."""
    return click.option(
        "--calibration",
        type=click.Path(exists=True, dir_okay=False, path_type=Path),
        expose_value=False,
        callback=_read_calibration,
        metavar="FILE",
        help="Difficulties as a club's own times have them (see “bookmaker times”).",
    )(command)


def _read_calibration(ctx: click.Context, _: click.Parameter, path: Path | None) -> None:
    if path:
        ctx.meta["calibration"] = calibration = read_calibration(path)
        say_troubles(calibration.warnings)


def load_book(path: Path) -> Manifest:
    """The manifest at a path; its warnings are said at once, its mistakes raised."""
    manifest = load(path)
    say_troubles(manifest.warnings)
    return manifest


def proofs_in_order(manifest: Manifest, count: int = 0) -> tuple[Proof, ...]:
    """Proofs of all puzzles in book order, with progress on standard error after the first second."""
    return in_book_order(manifest, _proofs(manifest.entries, count))


def proofs_of(manifest: Manifest, ids: tuple[str, ...]) -> tuple[Proof, ...]:
    """Proofs of the puzzles named, in the order named."""
    return _proofs(find_entries(manifest, ids))


def _proofs(entries: tuple[Entry, ...], count: int = 0) -> tuple[Proof, ...]:
    with shared() as crew:
        proofs = prove_all(entries, count, _progress(), known(), crew)
    return calibrated_by(proofs, click.get_current_context().meta.get("calibration"))


def known() -> Store:
    """What earlier runs have kept, unless --fresh asks for everything anew."""
    return FreshStore(user_store()) if click.get_current_context().meta.get("fresh") else user_store()


def shared() -> AbstractContextManager[Executor]:
    """The crew that --workers asks for."""
    return processes(click.get_current_context().meta.get("workers", 1))


def find_entries(manifest: Manifest, ids: tuple[str, ...]) -> tuple[Entry, ...]:
    """Entries by id; unknown ids are reported together, each with the nearest known one."""
    by_id = {entry.id: entry for entry in manifest.entries}
    unknown = [name for name in ids if name not in by_id]
    if unknown:
        raise BookTroubles(
            Trouble(Place(manifest.place.file), "unknown-id", f"the book has no puzzle “{name}”", nearest(name, by_id))
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
    began = said = monotonic()

    def watch(done: int, of: int) -> None:
        nonlocal said
        now = monotonic()
        if now - said > 1 or (done == of and said > began):
            said = now
            click.echo(f"proved {done} of {of}", err=True)

    return watch
