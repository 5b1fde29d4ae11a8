"""`bookmaker handout`: sheets for the club table, and what a contest needs."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, datetime
from functools import partial
from pathlib import Path
from typing import cast, get_args

import click

from bookmaker.book import Book, make_book
from bookmaker.book.contest import enter_contest
from bookmaker.book.smart_quotes import smart_quotes
from bookmaker.book.wording import date_in_words
from bookmaker.cli.checked import Printing, print_checked
from bookmaker.cli.completion import ids_listed, layouts_for
from bookmaker.cli.group import main
from bookmaker.cli.loading import (
    agreed,
    book_argument,
    calibration_option,
    find_entries,
    known,
    language_option,
    load_book,
    proving_options,
)
from bookmaker.cli.paths import NEW_PDF, Whole
from bookmaker.cli.picking import picked, words_in
from bookmaker.display.items import Document
from bookmaker.files import replacing
from bookmaker.layout import (
    KeyPlace,
    Layout,
    Occasion,
    compose_handout,
    compose_key_sheet,
    compose_marker,
    fillable,
    load_layout,
)
from bookmaker.manifest.permission import demand_permission
from bookmaker.rules.common.words.wording import counted
from bookmaker.source.diagnostics import Place

MOST_POINTS = 999

MOST_COPIES = 500


@main.command("handout")
@book_argument
@proving_options
@language_option
@calibration_option
@click.option(
    "--pick",
    "picks",
    required=True,
    multiple=True,
    metavar="ID,3-7,all…",
    shell_complete=ids_listed,
    help="The puzzles to print, in this order: ids, numbers in the book, ranges of them, or all. May be given again.",
)
@click.option("--out", "file", required=True, type=NEW_PDF, metavar="FILE", help="Write this PDF file.")
@click.option(
    "--layout",
    "layout_name",
    default="a4-handout",
    show_default=True,
    metavar="NAME or FILE",
    shell_complete=layouts_for("handout"),
    help="Print in this layout (see “bookmaker layouts”), or in the one in a file of your own.",
)
@click.option(
    "--key",
    type=click.Choice(get_args(KeyPlace)),
    help="Where the key goes: on the last page (the default), on the reverse of each sheet, upside down at its foot, "
    "or nowhere.",
)
@click.option(
    "--key-file",
    type=NEW_PDF,
    metavar="FILE",
    help="Write the key as a sheet of its own; the others then have none, unless --key says where.",
)
@click.option("--title", metavar="TEXT", help="What stands at the head of the sheets, instead of the book's title.")
@click.option(
    "--date",
    "day",
    type=click.DateTime(["%Y-%m-%d"]),
    metavar="DATE",
    help="The date to print, such as 2026-03-14, instead of a line to write it on.",
)
@click.option("--hide-grade", is_flag=True, help="Do not tell how hard the puzzles are.")
@click.option("--hints", is_flag=True, help="Add a sheet with three hints for each puzzle.")
@click.option(
    "--copies",
    type=Whole(1, MOST_COPIES),
    default=1,
    metavar="N",
    help="Print N copies, numbered; hints and a key on the last page follow once.",
)
@click.option("--contest", is_flag=True, help="Add check rows and boxes for points; the key goes to the marker.")
@click.option(
    "--points",
    metavar="N,N…",
    help="What each puzzle is worth in the contest; by default, harder puzzles earn more.",
)
@click.option("--fillable", "on_screen", is_flag=True, help="Make each empty cell a field to be filled in on a screen.")
def handout_command(
    book: Path,
    picks: tuple[str, ...],
    file: Path,
    layout_name: str,
    key: str | None,
    key_file: Path | None,
    title: str | None,
    day: datetime | None,
    hide_grade: bool,
    hints: bool,
    copies: int,
    contest: bool,
    points: str | None,
    on_screen: bool,
) -> None:
    """Print a few puzzles large, for the club table.

    The grids are large enough for pencil; the key follows on the last page, or where --key puts it. A puzzle is picked
    by its id or by its number in the book: --pick low-tide,12 --pick 20-24.

    In a contest some cells of each grid have letters, and solvers copy their digits into a check row at the foot of the
    sheet. Beside FILE a second file is written for the marker, its name ending in “-marker”: the check rows filled in,
    a table for names and points, and the key.

    With --fillable the sheets can be filled in on a screen or tablet; FILE's name then ends in “-fillable”, and
    “bookmaker mark” reads what comes back.
    """
    words = words_in(picks)
    if not words:
        raise click.BadParameter("name at least one puzzle", param_hint="--pick")
    if contest and (key or key_file):
        raise click.UsageError(f"the key of a contest goes to the marker: leave out {'--key' if key else '--key-file'}")
    if points and not contest:
        raise click.UsageError("points are for a contest: add --contest")
    if copies > 1 and on_screen:
        raise click.UsageError("sheets for a screen are copied as files: leave out --copies")
    if key_file and key_file.resolve() == file.resolve():
        raise click.BadParameter("name another file than --out", param_hint="--key-file")
    marks = _marks(points) if points else ()
    manifest = load_book(book)
    layout = load_layout(layout_name, use="handout")
    proofs = agreed(picked(manifest, words, lambda ids: demand_permission(find_entries(manifest, tuple(ids)))))
    worth = _worth(marks, len(proofs)) if points else ()
    contents = make_book(manifest, proofs, as_listed=True, store=known(), hinted=hints)
    if title:
        contents = replace(contents, title=smart_quotes(title, contents.words.quotation_marks), place=Place("--title"))
    occasion = Occasion(date_in_words(contents.words, day) if day else "", copies, not hide_grade)
    sheets = file.with_name(f"{file.stem}-fillable{file.suffix}") if on_screen else file
    if contest:
        contents = enter_contest(contents, worth)
        marker = file.with_name(f"{file.stem}-marker{file.suffix}")
        makers = {
            sheets: partial(_sheets, contents, layout, "none", occasion, on_screen),
            marker: partial(compose_marker, contents, layout),
        }
    else:
        place = cast(KeyPlace, key or ("none" if key_file else "last"))
        makers = {sheets: partial(_sheets, contents, layout, place, occasion, on_screen)}
        if key_file:
            makers[key_file] = partial(compose_key_sheet, contents, layout)
    dated = day.date() if day else None
    with replacing() as beside:
        printings = [Printing(path, partial(_dated, make, dated)) for path, make in makers.items()]
        counts = print_checked(printings, proofs, beside)
    for path, pages in zip(makers, counts, strict=True):
        click.echo(f"{path}: {counted(pages, 'page')}, {counted(len(contents.puzzles), 'puzzle')}")


def _sheets(contents: Book, layout: Layout, key: KeyPlace, occasion: Occasion, on_screen: bool) -> Document:
    document = compose_handout(contents, layout, key, occasion)
    return fillable(document) if on_screen else document


def _dated(make: Callable[[], Document], dated: date | None) -> Document:
    return replace(make(), created=dated)


def _marks(text: str) -> tuple[int, ...]:
    """Whole numbers with commas between."""
    pieces = [piece.strip() for piece in text.split(",")]
    if not all(piece.isascii() and piece.isdigit() and 1 <= int(piece) <= MOST_POINTS for piece in pieces):
        raise click.BadParameter(
            f"points are whole numbers from 1 to {MOST_POINTS}, such as 10,20,30", param_hint="--points"
        )
    return tuple(map(int, pieces))


def _worth(marks: tuple[int, ...], puzzles: int) -> tuple[int, ...]:
    """The same, one for each puzzle."""
    if len(marks) != puzzles:
        raise click.BadParameter(
            f"{counted(puzzles, 'puzzle')} picked, but {len(marks)} given: name one number for each, in their order",
            param_hint="--points",
        )
    return marks
