"""What every command does first: read the book, prove its puzzles, find the puzzle that is meant."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from concurrent.futures import Executor
from contextlib import AbstractContextManager, nullcontext
from pathlib import Path
from time import monotonic
from typing import Any, TypeVar

import click

from bookmaker.archive import Catalogue, open_catalogue
from bookmaker.archive.inbook import Disguise, disguises, troubles_of
from bookmaker.book.order import in_book_order
from bookmaker.cli.group import KEPT, NOTHING, print_diagnostics
from bookmaker.cli.paths import Whole
from bookmaker.cli.progress import Progress
from bookmaker.language.catalogues import languages
from bookmaker.manifest import load
from bookmaker.manifest.entries import Entry, Manifest
from bookmaker.manifest.permission import demand_permission
from bookmaker.proof import Proof, prove_all
from bookmaker.proof.cache import FreshStore, Store, user_store
from bookmaker.proof.claims import wrong_claims
from bookmaker.proof.executors import executor_on, processes
from bookmaker.proof.pulse import heard
from bookmaker.proof.remarks import remark
from bookmaker.proof.second_opinion import doubts
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place, nearest
from bookmaker.times import Calibration, calibrated, calibrated_catalogue, read_calibration

book_argument = click.argument("book", type=click.Path(exists=True, path_type=Path))

Command = TypeVar("Command", bound=Callable[..., object])


def sharing_options(command: Command) -> Command:
    """How the work of proving is done; `known` and `shared` go by them."""
    workers = click.option(
        "--workers",
        type=Whole(1, 64),
        default=1,
        show_default=True,
        expose_value=False,
        callback=lambda ctx, _, value: ctx.meta.update(workers=value),
        metavar="N",
        help="Share the proofs among N processes.",
    )

    def asked_afresh(ctx: click.Context, _: click.Parameter, value: bool) -> None:
        ctx.meta["fresh"] = value
        again = "the same command without --fresh" if value else "the same command"
        ctx.meta[KEPT] = f"{NOTHING}; what was proved so far is kept, and {again} goes on from there"

    fresh = click.option(
        "--fresh",
        is_flag=True,
        expose_value=False,
        callback=asked_afresh,
        help="Ignore saved proofs.",
    )
    return workers(fresh(command))


def from_archives(help: str, **settings: Any) -> Callable[[Command], Command]:
    """`--archive FOLDER`, which may be given several times."""
    folder = click.Path(exists=True, file_okay=False, path_type=Path)
    return click.option("--archive", "archives", multiple=True, type=folder, metavar="FOLDER", help=help, **settings)


def proving_options(command: Command) -> Command:
    """The options of every command that proves the puzzles of a book; `proofs_in_order` and `proofs_of` go by them."""
    archive = from_archives(
        "What the book picks from, where it names no archive itself.",
        expose_value=False,
        callback=lambda ctx, _, value: ctx.meta.update(archives=value),
    )
    return sharing_options(archive(command))


def archive_options(command: Command) -> Command:
    """The options of every command that opens archives; `catalogue_of` goes by them."""
    printed = click.option(
        "--printed-in",
        multiple=True,
        type=click.Path(exists=True, path_type=Path),
        expose_value=False,
        callback=lambda ctx, _, value: ctx.meta.update(printed_in=value),
        metavar="BOOK",
        help="A book that was printed, besides those that archive.yaml names.",
    )
    on = click.option(
        "--on",
        expose_value=False,
        callback=lambda ctx, _, value: ctx.meta.update(on=value),
        metavar="tcp://…",
        help="Use the workers of a Dask scheduler (extra “cluster”).",
    )
    return sharing_options(printed(on(command)))


def calibration_option(command: Command) -> Command:
    """The option of every command that prints difficulties; proofs and catalogues made here go by it."""
    return click.option(
        "--calibration",
        type=click.Path(exists=True, dir_okay=False, path_type=Path),
        expose_value=False,
        callback=_read_calibration,
        metavar="FILE",
        help="Difficulties corrected by a club's own times (see “bookmaker times”).",
    )(command)


def language_option(command: Command) -> Command:
    """The option of every command that prints words: the language of this printing."""
    return click.option(
        "--language",
        type=click.Choice(languages()),
        expose_value=False,
        callback=_note_language,
        metavar="CODE",
        help="Print in this language, such as de, instead of the book's own (see “bookmaker languages”).",
    )(command)


def _note_language(ctx: click.Context, _: click.Parameter, language: str | None) -> None:
    if language:
        ctx.meta["language"] = language


def _read_calibration(ctx: click.Context, _: click.Parameter, path: Path | None) -> None:
    if path:
        ctx.meta["calibration"] = found = read_calibration(path)
        print_diagnostics(found.warnings)


def calibration() -> Calibration | None:
    """What --calibration names."""
    found: Calibration | None = click.get_current_context().meta.get("calibration")
    return found


def catalogue_of(folders: tuple[Path, ...]) -> Catalogue:
    """The catalogue of some archives, with progress on standard error; what is wrong in it is not said yet."""
    printed = click.get_current_context().meta.get("printed_in", ())
    with executor() as workers:
        catalogue = open_catalogue(folders, known(), workers, printed, counting())
    correction = calibration()
    return calibrated_catalogue(catalogue, correction) if correction else catalogue


def counting() -> Callable[[int], None]:
    began = said = monotonic()

    def watch(done: int) -> None:
        nonlocal said
        now = monotonic()
        if now - said > 1:
            said = now
            click.echo(f"{done} puzzles read in {now - began:.0f} s", err=True)

    return watch


def load_book(path: Path, *, to_print: bool = False, press: bool = False) -> Manifest:
    """The manifest at a path; its warnings are said at once, its mistakes raised.

    What is to be printed must have its permissions, for the press all of them.
    """
    asked = click.get_current_context().meta
    manifest = load(path, asked.get("archives", ()), asked.get("language", ""))
    print_diagnostics(manifest.warnings)
    if to_print:
        demand_permission(manifest.entries, press)
    return manifest


def proofs_in_order(manifest: Manifest, count: int = 0) -> tuple[Proof, ...]:
    """Proofs of all puzzles in book order, with progress on standard error after the first second."""
    return in_book_order(manifest, _proofs(manifest.entries, count))


def agreed(proofs: tuple[Proof, ...]) -> tuple[Proof, ...]:
    """The same proofs, if no setter's own solution differs from the proven one; else a trouble for each that does."""
    if diagnostics := tuple(wrong_claims(proofs)):
        raise BookErrors(diagnostics)
    return proofs


def proofs_of(manifest: Manifest, ids: tuple[str, ...]) -> tuple[Proof, ...]:
    """Proofs of the puzzles named, in the order named."""
    return _proofs(find_entries(manifest, ids))


def _proofs(entries: tuple[Entry, ...], count: int = 0) -> tuple[Proof, ...]:
    with shared() as executor:
        proofs = prove_all(entries, count, Progress("proved"), known(), executor)
    correction = calibration()
    return calibrated(proofs, correction) if correction else proofs


def known() -> Store:
    """What earlier runs have kept, unless --fresh ignores it."""
    store = user_store(lambda: click.echo("waiting for another bookmaker that is using the saved proofs …", err=True))
    return FreshStore(store) if click.get_current_context().meta.get("fresh") else store


def executor() -> AbstractContextManager[Executor | None]:
    """The workers that --on or --workers ask for; None where the work is done here."""
    meta = click.get_current_context().meta
    if meta.get("on"):
        return executor_on(meta["on"])
    return shared() if meta.get("workers", 1) > 1 else nullcontext()


def shared() -> AbstractContextManager[Executor]:
    """The executor that --workers asks for."""
    return processes(click.get_current_context().meta.get("workers", 1), say_alive)


def say_alive(line: str) -> None:
    """A sign of life on standard error, while one proof runs long."""
    click.echo(line, err=True)


def find_entries(manifest: Manifest, ids: tuple[str, ...]) -> tuple[Entry, ...]:
    """Entries by id; unknown ids are reported together, each with the nearest known one."""
    by_id = {entry.id: entry for entry in manifest.entries}
    unknown = [name for name in ids if name not in by_id]
    if unknown:
        raise BookErrors(
            Diagnostic(
                Place(manifest.place.file), "unknown-id", f"the book has no puzzle “{name}”", nearest(name, by_id)
            )
            for name in unknown
        )
    return tuple(by_id[name] for name in ids)


def proven(proofs: tuple[Proof, ...]) -> tuple[Proof, ...]:
    """The same proofs, if every puzzle has exactly one solution; else a trouble for each that has not."""
    unproven = [proof for proof in proofs if proof.grade is None]
    if unproven:
        with heard(say_alive):
            raise BookErrors(
                Diagnostic(proof.entry.place, "not-unique", remark(proof), "“bookmaker proof --count 100” tells more")
                for proof in unproven
            )
    return proofs


def disguised(proofs: tuple[Proof, ...]) -> tuple[Disguise, ...]:
    """The puzzles that are the same as earlier ones among these."""
    with executor() as workers:
        return tuple(disguises(proofs, known(), workers, Progress("compared", "puzzles")))


def say_disguised(proofs: tuple[Proof, ...], press: bool) -> None:
    """Say which puzzles look alike. Raises BookErrors where some do in a book for the press."""
    found = tuple(troubles_of(disguised(proofs), press))
    if press and found:
        raise BookErrors(found)
    print_diagnostics(found)


def ask_again(proofs: Sequence[Proof]) -> None:
    """Say what second opinions bring up. Raises BookErrors where one disagrees."""
    with shared() as executor:
        found = tuple(doubts(proofs, executor))
    if not all(diagnostic.warning for diagnostic in found):
        raise BookErrors(found)
    print_diagnostics(found)
    click.echo(f"second opinion: the same on {counted(len(proofs) - len(found), 'puzzle')}", err=True)
