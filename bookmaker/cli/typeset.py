"""`bookmaker typeset`: the book and its answer key as PDF."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from pathlib import Path

import click

from bookmaker.book import make_book
from bookmaker.book.textedition import text_edition
from bookmaker.cli.checked import write_checked
from bookmaker.cli.completion import layouts_for
from bookmaker.cli.group import main
from bookmaker.cli.loading import (
    agreed,
    book_argument,
    known,
    load_book,
    proofs_in_order,
    proving_options,
    say_disguised,
)
from bookmaker.cli.paths import NEW_FOLDER
from bookmaker.display.contact import contact_sheet
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.ink.png import png_bytes
from bookmaker.layout import compose, compose_cover, compose_key, impose, load_layout, press_sheets
from bookmaker.layout.sheets.imposition import sheets_of, signatures
from bookmaker.rules.common.wording import counted

CONTACT_DPI = 150
"""A page on the contact sheet is then 250 pixels wide: titles can be read."""


@main.command("typeset")
@book_argument
@proving_options
@click.option("--out", "folder", required=True, type=NEW_FOLDER, metavar="FOLDER", help="Write into this folder.")
@click.option(
    "--layout",
    "layout_name",
    metavar="NAME",
    shell_complete=layouts_for("book"),
    help="Print in this layout (see “bookmaker layouts”).",
)
@click.option(
    "--edition",
    type=click.Choice(["screen", "press"]),
    default="screen",
    show_default=True,
    help="With links and bookmarks, or as PDF/X-1a on sheets with bleed and crop marks.",
)
@click.option(
    "--date",
    type=click.DateTime(["%Y-%m-%d"]),
    metavar="DATE",
    help="The edition's date, such as 2026-03-14, instead of the imprint's.",
)
@click.option("--contact", is_flag=True, help="Also write contact.png: all pages at a glance.")
@click.option("--booklet", is_flag=True, help="Also write booklet.pdf: sheets to print on both sides, fold and staple.")
@click.option("--cover", is_flag=True, help="Also write cover.pdf: back, spine and front on one sheet.")
@click.option("--text", is_flag=True, help="Also write book.txt, the book in words, for screen readers.")
@click.option("--draft", is_flag=True, help="Allow unproven puzzles, and stamp every page as a draft.")
def typeset_command(
    book: Path,
    folder: Path,
    layout_name: str | None,
    edition: str,
    date: datetime | None,
    contact: bool,
    booklet: bool,
    cover: bool,
    text: bool,
    draft: bool,
) -> None:
    """Print the book, and its answer key separately.

    Writes book.pdf, with the keys at the back, and key.pdf.

    A puzzle without exactly one solution stops the book, unless --draft is given. Both files are checked as by
    “bookmaker preflight”, and files in FOLDER are replaced only if the new ones pass. An edition for the press is
    written beside the other, as book-press.pdf and key-press.pdf; it needs a date, from the imprint or from --date.

    A booklet layout, or --booklet with any other layout, adds booklet.pdf: the pages two to a side, in the order in
    which the sheets are folded. Print it on both sides, flipped on the short edge.
    """
    press = edition == "press"
    if press and booklet:
        raise click.UsageError("a press folds its own sheets: print the booklet without --edition press")
    manifest = load_book(book, to_print=True, press=press)
    imprint = manifest.publication.imprint
    dated = date.date() if date else imprint.date if imprint else None
    if press and dated is None:
        raise click.UsageError(
            "an edition for the press carries its date: put “date:” under “imprint:”, or add --date, such as "
            "--date 2026-03-14"
        )
    chosen = layout_name or manifest.layout or ("a5-booklet" if booklet else "a4-book")
    layout = load_layout(chosen, None if layout_name else manifest.layout_place, "book")
    proofs = proofs_in_order(manifest)
    if not draft:
        agreed(proofs)
        say_disguised(proofs, press)
    contents = make_book(manifest, proofs, draft=draft, store=known())
    documents = {"book": compose(contents, layout), "key": compose_key(contents, layout)}
    pages = documents["book"].pages
    if cover or manifest.publication.cover:
        documents["cover"] = compose_cover(contents, layout, len(pages))
    if booklet or (layout.booklet and not press):
        documents["booklet"] = impose(documents["book"], layout)
    files = {}
    for name, document in documents.items():
        document = replace(document, created=dated)
        path = folder / (f"{name}-press.pdf" if press else f"{name}.pdf")
        files[path] = pdf_bytes(press_sheets(document, layout) if press else document, press)
    others = {folder / "contact.png": png_bytes(contact_sheet(pages), CONTACT_DPI)} if contact else {}
    if text:
        others[folder / "book.txt"] = text_edition(contents).encode()
    bound = next(iter(files))
    wraps = frozenset(path for path, name in zip(files, documents, strict=True) if name == "cover")
    write_checked(files, proofs, frozenset([bound] if press else []), others, wraps)
    for path, document in zip(files, documents.values(), strict=True):
        puzzles = f", {counted(len(contents.puzzles), 'puzzle')}" if path == bound else ""
        click.echo(f"{path}: {counted(len(document.pages), 'page')}{puzzles}")
    if "booklet" in documents:
        sheets = signatures(len(pages), sheets_of(layout).signature)
        fold = "the sheet" if sheets == [1] else f"{' + '.join(map(str, sheets))} sheets into each other"
        click.echo(f"print the booklet on both sides, flipped on the short edge, and fold {fold}")
