"""`bookmaker typeset`: the book and its answer key as PDF."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from datetime import date, datetime
from functools import partial
from pathlib import Path

import click

from bookmaker.book import Book, bind
from bookmaker.book.gathering import Gathered, gather
from bookmaker.cli.checked import Printing, hand_over, print_checked
from bookmaker.cli.completion import layouts_for, themes
from bookmaker.cli.dress import check_dress, condition_of, dressed, theme_of
from bookmaker.cli.group import main, print_diagnostics
from bookmaker.cli.loading import (
    agreed,
    ask_again,
    book_argument,
    calibration,
    calibration_option,
    known,
    language_option,
    load_book,
    proving_options,
    say_disguised,
    shared,
)
from bookmaker.cli.paths import NEW_FILE, NEW_FOLDER
from bookmaker.cli.progress import Progress
from bookmaker.crosscheck import auditor
from bookmaker.display.items import Document
from bookmaker.files import replacing
from bookmaker.layout import (
    Layout,
    compose,
    compose_cover,
    compose_key,
    fillable,
    impose,
    load_layout,
    make_ready,
    press_sheets,
    thin_spine,
)
from bookmaker.layout.binding import cramped, forewarned
from bookmaker.layout.sheets.imposition import sheets_of, signatures
from bookmaker.proof import Proof
from bookmaker.proof.executors import ahead_of
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import BookErrors
from bookmaker.times import calibrated_proof


@main.command("typeset")
@book_argument
@proving_options
@language_option
@calibration_option
@click.option("--out", "folder", required=True, type=NEW_FOLDER, metavar="FOLDER", help="Write into this folder.")
@click.option(
    "--layout",
    "layout_name",
    metavar="NAME or FILE",
    shell_complete=layouts_for("book"),
    help="Print in this layout (see “bookmaker layouts”), or in the one in a file of your own.",
)
@click.option(
    "--theme",
    "theme_name",
    metavar="NAME",
    shell_complete=themes,
    help="Dress cover and ornament in this theme (see “bookmaker themes”).",
)
@click.option(
    "--edition",
    type=click.Choice(["screen", "press", "fillable", "ebook"]),
    default="screen",
    show_default=True,
    help="With links and bookmarks; as PDF/X-1a on sheets with crop marks; with cells to fill in; or as EPUB.",
)
@click.option(
    "--date",
    "day",
    type=click.DateTime(["%Y-%m-%d"]),
    metavar="DATE",
    help="The edition's date, such as 2026-03-14, instead of the imprint's.",
)
@click.option(
    "--marks",
    type=click.Choice(["crop", "none"]),
    help="For the press: sheets with crop marks, or no larger than the bleed; else as the layout says.",
)
@click.option("--no-bleed", is_flag=True, help="For the press: pages without bleed; a cover keeps it.")
@click.option("--contact", is_flag=True, help="Also write contact.png: all pages at a glance.")
@click.option("--booklet", is_flag=True, help="Also write booklet.pdf: sheets to print on both sides, fold and staple.")
@click.option("--cover", is_flag=True, help="Also write cover.pdf: back, spine and front on one sheet.")
@click.option("--text", is_flag=True, help="Also write book.txt and book.html, the book in words, for screen readers.")
@click.option("--braille", is_flag=True, help="Also write book-braille.txt, in short lines for braille displays.")
@click.option(
    "--metadata",
    "catalogues",
    multiple=True,
    type=NEW_FILE,
    metavar="FILE",
    help="Also write what a catalogue wants to know: JSON-LD if FILE ends in .json, Dublin Core if in .xml.",
)
@click.option("--draft", is_flag=True, help="Allow unproven puzzles, and stamp every page as a draft.")
def typeset_command(
    book: Path,
    folder: Path,
    layout_name: str | None,
    theme_name: str | None,
    edition: str,
    day: datetime | None,
    marks: str | None,
    no_bleed: bool,
    contact: bool,
    booklet: bool,
    cover: bool,
    text: bool,
    braille: bool,
    catalogues: tuple[Path, ...],
    draft: bool,
) -> None:
    """Print the book, and its answer key separately.

    Writes book.pdf, with the keys at the back, and key.pdf.

    A puzzle without exactly one solution stops the book, unless --draft is given. Both files are checked as by
    “bookmaker preflight”, and files in FOLDER are replaced only if the new ones pass. An edition for the press is
    written beside the other, as book-press.pdf and key-press.pdf; it needs a date, from the imprint or from --date. For
    the press every puzzle is also put to a second prover, where that is installed (extra “audit”). A book to be filled
    in on a screen or tablet is book-fillable.pdf; “bookmaker mark” reads it back.

    Services that print on demand often ask for sheets without marks: --marks none leaves the bleed alone, --no-bleed
    leaves that out as well but for the cover.

    A booklet layout, or --booklet with any other layout, adds booklet.pdf: the pages two to a side, in the order in
    which the sheets are folded. Print it on both sides, flipped on the short edge.

    An e-book, book.epub, has pictures of the grids and the same in words and tables. It is dated as well, and knows the
    numbers of the printed pages.
    """
    press, ebook = edition == "press", edition == "ebook"
    if edition == "fillable" and (booklet or cover):
        raise click.UsageError("what is filled in on a screen is not folded: leave out --booklet and --cover")
    if press and booklet:
        raise click.UsageError("a press folds its own sheets: print the booklet without --edition press")
    paper = {"--contact": contact, "--booklet": booklet, "--cover": cover}
    if ebook and any(paper.values()):
        (name, *_) = (name for name, given in paper.items() if given)
        raise click.UsageError(f"an e-book has no sheets of paper: leave out {name}, or --edition ebook")
    if catalogues or ebook:  # read, like all that few books ask for, only where it is asked for
        from bookmaker.ebook import CATALOGUES, catalogue_bytes, check_ebook, ebook_bytes, record_of
    for file in catalogues:
        if file.suffix.lower() not in CATALOGUES:
            raise click.BadParameter(f"the name should end in {', '.join(CATALOGUES)}", param_hint="--metadata")
    if not press and (marks or no_bleed):
        raise click.UsageError("crop marks and bleed are for a press: add --edition press")
    manifest = load_book(book, to_print=True, press=press)
    check_dress(manifest)
    imprint = manifest.publication.imprint
    dated = day.date() if day else imprint.date if imprint else None
    if (press or ebook) and dated is None:
        what = "an e-book" if ebook else "an edition for the press"
        raise click.UsageError(
            f"{what} carries its date: put “date:” under “imprint:”, or add --date, such as --date 2026-03-14"
        )
    chosen = layout_name or manifest.layout or ("a5-booklet" if booklet else "a4-book")
    layout = load_layout(chosen, None if layout_name else manifest.layout_place, "book")
    theme = theme_of(manifest, theme_name, layout)
    layout = _for_press(dressed(layout, theme, press), marks)
    inside = replace(layout, press=replace(layout.press, bleed=0.0)) if no_bleed else layout
    with (
        replacing() as beside,
        shared() as executor,
    ):  # in this order, so that workers end before files are moved or gone
        proofs: list[Proof] = []
        regrade = partial(calibrated_proof, calibration=correction) if (correction := calibration()) else None
        said = manifest.publication
        gathered = gather(
            manifest.entries, manifest.band_names, said.hints, known(), executor, regrade, language=said.language
        )
        make_ready(layout.speaking(said.language))  # while workers are at the first puzzles
        contents = bind(manifest, _watched(gathered, len(manifest.entries), proofs), draft)
        by_id = {proof.entry.id: proof for proof in proofs}
        if not draft:
            agreed(tuple(proofs))
            say_disguised(tuple(by_id[puzzle.id] for puzzle in contents.puzzles), press)
            if press and auditor():
                ask_again(proofs)

        def printing(name: str, make: Callable[[], Document]) -> Printing:
            return Printing(
                folder / (f"{name}-press.pdf" if press else f"{name}.pdf"),
                partial(_edition, make, dated, (layout if name == "cover" else inside) if press else None),
                press,
                folded=press and name == "book",
                grids=name != "cover",
                condition=condition_of(manifest),
                figure=0.0 if name == "booklet" else layout.puzzles.figure,
            )

        folded = edition == "screen" and (booklet or layout.booklet)
        key = [printing("key", partial(compose_key, contents, layout))] if edition in ("screen", "press") else []
        begun = hand_over(key, proofs, beside, executor) if ahead_of(executor) else {}
        document = compose(contents, layout, Progress("laid out", "parts of the book"))
        if not ebook:
            covered = cover or manifest.publication.cover is not None
            print_diagnostics((*cramped(layout), *forewarned(layout, len(document.pages), covered)))
        printings: list[Printing] = []
        if edition == "fillable":
            printings.append(printing("book-fillable", lambda: fillable(document)))
        elif not ebook:
            printings += [printing("book", lambda: document), *key]
            if cover or manifest.publication.cover:
                thin = thin_spine(contents, len(document.pages))
                print_diagnostics((thin,) if thin else ())
                printings.append(printing("cover", partial(compose_cover, contents, layout, len(document.pages))))
            if folded:
                printings.append(printing("booklet", partial(_booklet, contents, layout)))
        counts = print_checked(printings, proofs, beside, executor, begun) if printings else []
        bound = folder / ("book.epub" if ebook else printings[0].path.name)
        if ebook and dated:
            epub = ebook_bytes(contents, layout, document.pages, dated)
            if faults := check_ebook(epub, str(bound), contents.puzzles, by_id):
                raise BookErrors(faults)
            beside(bound).write_bytes(epub)
        for catalogue in catalogues:
            record = record_of(contents, dated, ebook)
            beside(catalogue).write_bytes(catalogue_bytes(record, catalogue, ebook, len(document.pages)))
        if contact:
            from bookmaker.ink.contact import DPI, contact_sheet
            from bookmaker.ink.pixels import png_bytes

            sheet = contact_sheet(beside(bound).read_bytes())
            beside(folder / "contact.png").write_bytes(png_bytes(sheet, DPI))
        if text or braille:
            from bookmaker.book.textedition import braille_edition, text_edition
        if text:
            from bookmaker.hypertext.webpage import web_page

            beside(folder / "book.txt").write_bytes(text_edition(contents).encode())
            beside(folder / "book.html").write_bytes(web_page(contents))
        if braille:
            beside(folder / "book-braille.txt").write_bytes(braille_edition(contents).encode())
    if ebook:
        click.echo(f"{bound}: {counted(len(contents.puzzles), 'puzzle')}")
    for printed, pages in zip(printings, counts, strict=True):
        puzzles = f", {counted(len(contents.puzzles), 'puzzle')}" if printed.path == bound else ""
        click.echo(f"{printed.path}: {counted(pages, 'page')}{puzzles}")
    if folded:
        sheets = signatures(len(document.pages), sheets_of(layout).signature)
        fold = "the sheet" if sheets == [1] else f"{' + '.join(map(str, sheets))} sheets into each other"
        click.echo(f"print the booklet on both sides, flipped on the short edge, and fold {fold}")


def _watched(gathered: Iterable[Gathered], count: int, proofs: list[Proof]) -> Iterator[Gathered]:
    """The puzzles as they come, with progress; their proofs are noted, for the keys to be compared with."""
    watch = Progress("proved", "puzzles")
    for proof, puzzle in gathered:
        proofs.append(proof)
        watch(len(proofs), count)
        yield proof, puzzle


def _booklet(contents: Book, layout: Layout) -> Document:
    """Sheets to fold, in black: they are printed at a desk."""
    plain = dressed(layout, layout.theme, press=True) if layout.theme else layout
    return impose(compose(contents, plain), plain)


def _for_press(layout: Layout, marks: str | None) -> Layout:
    """The layout with what the press asks around its pages."""
    if marks is None:
        return layout
    crop = marks == "crop"
    return replace(layout, press=replace(layout.press, marks=crop, slug=crop))


def _edition(make: Callable[[], Document], dated: date | None, press: Layout | None) -> Document:
    """The document with its date, and on sheets for the press if it is for one."""
    document = replace(make(), created=dated)
    return press_sheets(document, press) if press else document
