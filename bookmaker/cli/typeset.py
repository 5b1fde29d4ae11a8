"""`bookmaker typeset`: the book and its answer key as PDF."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.book import make_book
from bookmaker.cli.checked import write_checked
from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument, load_book, proofs_in_order
from bookmaker.display.contact import contact_sheet
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.png import png_bytes
from bookmaker.layout import compose, compose_key, load_layout
from bookmaker.rules.common.wording import counted

CONTACT_DPI = 150
"""A page on the contact sheet is then 250 pixels wide: titles can be read."""


@main.command("typeset")
@book_argument
@click.option("--out", "folder", required=True, type=click.Path(file_okay=False, path_type=Path), metavar="FOLDER")
@click.option("--layout", "layout_name", metavar="NAME", help="Print in this layout (see “bookmaker layouts”).")
@click.option("--contact", is_flag=True, help="Also write contact.png: all pages small, side by side.")
@click.option("--draft", is_flag=True, help="Allow unproven puzzles, and stamp every page as a draft.")
def typeset_command(book: Path, folder: Path, layout_name: str | None, contact: bool, draft: bool) -> None:
    """Print the book: book.pdf with its keys at the back, and key.pdf with the keys alone.

    A puzzle without exactly one solution stops the book, unless --draft. Both files are looked
    over as “bookmaker preflight” does, and those in FOLDER are replaced only when the new ones are sound.
    """
    manifest = load_book(book)
    layout = load_layout(layout_name or manifest.layout or "a4-book")
    proofs = proofs_in_order(manifest)
    contents = make_book(manifest, proofs, draft=draft)
    whole, key = compose(contents, layout), compose_key(contents, layout)
    pictures = {folder / "contact.png": png_bytes(contact_sheet(whole.pages), CONTACT_DPI)} if contact else {}
    files = {folder / "book.pdf": pdf_bytes(whole), folder / "key.pdf": pdf_bytes(key)}
    write_checked(files, proofs, unchecked=pictures)
    puzzles = counted(len(contents.puzzles), "puzzle")
    click.echo(f"{folder / 'book.pdf'}: {counted(len(whole.pages), 'page')}, {puzzles}")
    click.echo(f"{folder / 'key.pdf'}: {counted(len(key.pages), 'page')}")
