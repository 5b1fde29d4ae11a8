"""`bookmaker themes`: how a book can be dressed."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import click

from bookmaker.book import make_book
from bookmaker.cli.group import main
from bookmaker.cli.loading import known, load_book, proofs_in_order, proving_options
from bookmaker.cli.paths import NEW_FILE
from bookmaker.display.items import Document
from bookmaker.files import write_whole
from bookmaker.ink.contact import DPI, cover_sheet
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.pixels import png_bytes
from bookmaker.layout import compose, compose_cover, load_layout, load_theme, theme_names
from bookmaker.rules.common.words.wording import counted


@main.command("themes")
@click.argument("book", required=False, type=click.Path(exists=True, path_type=Path))
@click.option("--out", "file", type=NEW_FILE, metavar="FILE.png", help="Draw the cover of BOOK in every theme.")
@proving_options
def themes_command(book: Path | None, file: Path | None) -> None:
    """List the themes for covers and ornament.

    Also shows the line that chooses one in a manifest, and the option that does so for a single printing. A theme sets
    colours and patterns; the patterns themselves are made of the book's own puzzles, so --out draws BOOK's own cover in
    each of them, on one sheet.
    """
    if (book is None) != (file is None):
        raise click.UsageError("name a book and, after --out, the picture to draw of it; or neither")
    names = theme_names()
    if book is not None and file is not None:
        write_whole({file: _covers(book, names)})
        click.echo(f"{file}: {counted(len(names), 'theme')}")
        return
    width = max(map(len, names))
    for name in names:
        click.echo(f"{name:{width}}  {load_theme(name).about}")
    click.echo(f"\nin book.yaml, under “book:”\n  theme: {names[0]}")
    click.echo(f"or for a single printing\n  bookmaker typeset BOOK --out FOLDER --cover --theme {names[0]}")


def _covers(book: Path, names: tuple[str, ...]) -> bytes:
    """The covers of the book side by side; puzzles that are not proven do not matter here."""
    manifest = load_book(book)
    contents = replace(make_book(manifest, proofs_in_order(manifest), draft=True, store=known()), draft=False)
    layout = load_layout(manifest.layout or "a4-book", manifest.layout_place, "book")
    count = len(compose(contents, layout).pages)
    covers = [compose_cover(contents, replace(layout, theme=load_theme(name)), count) for name in names]
    pages = tuple(page for cover in covers for page in cover.pages)
    sheet = cover_sheet(pdf_bytes(Document(contents.title, "", "", pages)), names)
    return png_bytes(sheet, DPI)
