"""`bookmaker desk`: a book in the browser while it is typed."""

from __future__ import annotations

import webbrowser
from pathlib import Path

import click

from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument, from_archives
from bookmaker.cli.paths import Whole
from bookmaker.manifest import MANIFEST_NAMES
from bookmaker.source.diagnostics import BookErrors, Diagnostic, Place, typed


@main.command("desk")
@book_argument
@from_archives("What the book picks from, where it names no archive itself.")
@click.option(
    "--port", type=Whole(0, 65535), default=0, metavar="N", help="Listen at this port instead of any that is free."
)
@click.option("--no-browser", is_flag=True, help="Print the address and open nothing.")
def desk_command(book: Path, archives: tuple[Path, ...], port: int, no_browser: bool) -> None:
    """Show a book in the browser while you type it in any editor.

    Whenever a file of the book is saved, its pictures change, what is new is proven, and troubles are listed with how
    to mend them. Click cells to get the text for the manifest. Your files are only read. Ctrl-C ends it.

    Only this machine can reach the page, and only with the address that is printed.
    """
    try:
        from bookmaker.web.desk.serving import listening, serve
    except ModuleNotFoundError as missing:
        said, hint = f"the desk needs {missing.name}", "install it with: pip install 'bookmaker[desk]'"
        raise BookErrors([Diagnostic(Place("desk"), "no-desk", said, hint)]) from None
    if book.is_dir() and not any((book / name).exists() for name in MANIFEST_NAMES):
        hint = f"“bookmaker start {typed(book)}” makes a small book; “bookmaker review” shows an archive"
        said = f"there is no {MANIFEST_NAMES[0]} in this folder"
        raise BookErrors([Diagnostic(Place(str(book)), "no-file", said, hint)])
    try:
        listener = listening(port)
    except OSError as error:
        hint = "leave out --port to take one that is free"
        said = f"port {port} can't be used: {(error.strerror or str(error)).lower()}"
        raise BookErrors([Diagnostic(Place("--port"), "port-taken", said, hint)]) from None

    def ready(address: str) -> None:
        click.echo(address)
        if not no_browser:
            webbrowser.open(address)

    serve(book, archives, listener, ready)
