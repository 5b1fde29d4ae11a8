"""`bookmaker review`: every puzzle on one page for the browser."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument, counting, known, load_book, proving_options, shared
from bookmaker.cli.paths import NEW_FILE
from bookmaker.cli.progress import Progress
from bookmaker.files import write_whole
from bookmaker.manifest import MANIFEST_NAMES
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place, typed
from bookmaker.web.collection import of_archive, of_book
from bookmaker.web.page import review_page


@main.command("review")
@book_argument
@proving_options
@click.option("--out", "file", required=True, type=NEW_FILE, metavar="FILE", help="Write this HTML file.")
@click.option("--notes", is_flag=True, help="Add notes for the editor to each puzzle, as “proof --notes” does.")
def review_command(book: Path, file: Path, notes: bool) -> None:
    """Show all puzzles on one page to leaf through in a browser.

    BOOK may also be the folder of an archive. The page can be searched, narrowed and sorted; a puzzle that is opened
    shows how it is solved, step by step. It is a single file that needs no connection and asks nothing of any other
    place.
    """
    if file.suffix.lower() not in (".html", ".htm"):
        raise click.BadParameter("the name should end in .html", param_hint="--out")
    with shared() as executor:
        if book.is_dir() and not any((book / name).exists() for name in MANIFEST_NAMES):
            collection = of_archive((book,), known(), executor, counting())
            if not collection.entries:
                raise BookErrors(collection.diagnostics or [_nothing(book)])
        else:
            collection = of_book(load_book(book), known(), executor, Progress("proved"))
        page = review_page(collection, known(), executor, notes, Progress("told"))
    write_whole({file: page.encode()})
    click.echo(f"{file}: {counted(len(collection.entries), 'puzzle')}")


def _nothing(folder: Path) -> Diagnostic:
    hint = f"“bookmaker start {typed(folder)}” makes a small book to begin with"
    return Diagnostic(
        Place(str(folder)), "no-puzzles", "there is no book in this folder, and no file with puzzles", hint
    )
