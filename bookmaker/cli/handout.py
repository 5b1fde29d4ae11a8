"""`bookmaker handout`: sheets for the club table, and what a contest needs."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import cast, get_args

import click

from bookmaker.book import Book, make_book
from bookmaker.book.contest import enter_contest
from bookmaker.cli.checked import Printing, print_checked
from bookmaker.cli.completion import ids_listed, layouts_for
from bookmaker.cli.group import main
from bookmaker.cli.loading import (
    agreed,
    book_argument,
    calibration_option,
    find_entries,
    load_book,
    proofs_of,
    proving_options,
)
from bookmaker.cli.paths import NEW_PDF
from bookmaker.display.items import Document
from bookmaker.files import replacing
from bookmaker.layout import KeyPlace, Layout, compose_handout, compose_marker, fillable, load_layout
from bookmaker.manifest.permission import demand_permission
from bookmaker.rules.common.wording import counted

MOST_POINTS = 999


@main.command("handout")
@book_argument
@proving_options
@calibration_option
@click.option(
    "--pick",
    required=True,
    metavar="ID,ID…",
    shell_complete=ids_listed,
    help="The puzzles to print, by id, in this order.",
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
@click.option("--contest", is_flag=True, help="Add check rows and boxes for points; the key goes to the marker.")
@click.option(
    "--points",
    metavar="N,N…",
    help="What each puzzle is worth in the contest; by default, harder puzzles earn more.",
)
@click.option("--fillable", "on_screen", is_flag=True, help="Make each empty cell a field to be filled in on a screen.")
def handout_command(
    book: Path,
    pick: str,
    file: Path,
    layout_name: str,
    key: str | None,
    contest: bool,
    points: str | None,
    on_screen: bool,
) -> None:
    """Print a few puzzles large, for the club table.

    The grids are large enough for pencil; the key follows on the last page, or where --key puts it.

    In a contest some cells of each grid have letters, and solvers copy their digits into a check row at the foot of the
    sheet. Beside FILE a second file is written for the marker, its name ending in “-marker”: the check rows filled in,
    a table for names and points, and the key.

    With --fillable the sheets can be filled in on a screen or tablet; FILE's name then ends in “-fillable”, and
    “bookmaker mark” reads what comes back.
    """
    ids = tuple(dict.fromkeys(name.strip() for name in pick.split(",") if name.strip()))
    if not ids:
        raise click.BadParameter("name at least one puzzle", param_hint="--pick")
    if contest and key:
        raise click.UsageError("the key of a contest goes to the marker: leave out --key")
    if points and not contest:
        raise click.UsageError("points are for a contest: add --contest")
    worth = _points(points, len(ids)) if points else ()
    manifest = load_book(book)
    demand_permission(find_entries(manifest, ids))
    proofs = agreed(proofs_of(manifest, ids))
    contents = make_book(manifest, proofs, as_listed=True)
    layout = load_layout(layout_name, use="handout")
    sheets = file.with_name(f"{file.stem}-fillable{file.suffix}") if on_screen else file
    if contest:
        contents = enter_contest(contents, worth)
        marker = file.with_name(f"{file.stem}-marker{file.suffix}")
        makers = {
            sheets: partial(_sheets, contents, layout, "none", on_screen),
            marker: partial(compose_marker, contents, layout),
        }
    else:
        makers = {sheets: partial(_sheets, contents, layout, cast(KeyPlace, key or "last"), on_screen)}
    with replacing() as beside:
        counts = print_checked([Printing(path, make) for path, make in makers.items()], proofs, beside)
    for path, pages in zip(makers, counts, strict=True):
        click.echo(f"{path}: {counted(pages, 'page')}, {counted(len(contents.puzzles), 'puzzle')}")


def _sheets(contents: Book, layout: Layout, key: KeyPlace, on_screen: bool) -> Document:
    document = compose_handout(contents, layout, key)
    return fillable(document) if on_screen else document


def _points(text: str, puzzles: int) -> tuple[int, ...]:
    """Whole numbers with commas between, one for each puzzle."""
    pieces = [piece.strip() for piece in text.split(",")]
    if not all(piece.isascii() and piece.isdigit() and 1 <= int(piece) <= MOST_POINTS for piece in pieces):
        raise click.BadParameter(
            f"points are whole numbers from 1 to {MOST_POINTS}, such as 10,20,30", param_hint="--points"
        )
    if len(pieces) != puzzles:
        raise click.BadParameter(
            f"{counted(puzzles, 'puzzle')} picked, but {len(pieces)} given: name one number for each, in their order",
            param_hint="--points",
        )
    return tuple(map(int, pieces))
