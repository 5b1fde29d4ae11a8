"""`bookmaker handout`: sheets for the club table."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.book import make_book
from bookmaker.cli.checked import write_checked
from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument, load_book, proofs_of, proving_options
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import compose_handout, load_layout
from bookmaker.rules.common.wording import counted


@main.command("handout")
@book_argument
@proving_options
@click.option("--pick", required=True, metavar="ID,ID…", help="The puzzles to print, by id, in this order.")
@click.option("--out", "file", required=True, type=click.Path(dir_okay=False, path_type=Path), metavar="FILE")
@click.option("--layout", "layout_name", default="a4-handout", show_default=True, metavar="NAME")
def handout_command(book: Path, pick: str, file: Path, layout_name: str) -> None:
    """Print a few puzzles on sheets for the table, large enough for pencil, with the key on the last page."""
    manifest = load_book(book)
    ids = tuple(dict.fromkeys(name.strip() for name in pick.split(",") if name.strip()))
    if not ids:
        raise click.BadParameter("name at least one puzzle", param_hint="--pick")
    proofs = proofs_of(manifest, ids)
    contents = make_book(manifest, proofs, as_listed=True)
    document = compose_handout(contents, load_layout(layout_name))
    write_checked({file: pdf_bytes(document)}, proofs)
    click.echo(f"{file}: {counted(len(document.pages), 'page')}, {counted(len(contents.puzzles), 'puzzle')}")
