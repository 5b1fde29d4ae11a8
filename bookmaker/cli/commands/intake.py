"""`bookmaker intake`: puzzles out of a spreadsheet."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.archive.intake import take_in
from bookmaker.cli.group import main, print_diagnostics
from bookmaker.cli.paths import NEW_FOLDER
from bookmaker.files import write_whole
from bookmaker.rules.common.words.wording import counted


@main.command("intake")
@click.argument("table", metavar="FILE", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option(
    "--out",
    "folder",
    required=True,
    type=NEW_FOLDER,
    metavar="FOLDER",
    help="The archive to write the file into.",
)
@click.pass_context
def intake_command(ctx: click.Context, table: Path, folder: Path) -> None:
    """Make a file of the archive in FOLDER out of a spreadsheet: FILE ends in .csv or .xlsx.

    The first row names the columns: id, title, setter, givens and so on, as in a manifest; a column may also go by the
    name of a rule kind and hold its marks. Givens are 81 characters in a cell, or the range of cells that they stand
    in, such as B2:J10.

    Good rows are written, bad ones told of with their row and column. Nothing that is there already is changed, and
    rows that the archive has already are passed over.
    """
    taken = take_in(table, folder)
    print_diagnostics(taken.diagnostics)
    if taken.read_as:
        click.echo(f"{table}: read as {taken.read_as}", err=True)
    if taken.text:
        write_whole({taken.path: taken.text.encode()})
        click.echo(f"{taken.path}: {counted(len(taken.entries), 'puzzle')}")
    if taken.known:
        click.echo(f"{counted(taken.known, 'row')} passed over, which the archive has already")
    bad = {str(diagnostic.place).rpartition(", “")[0] for diagnostic in taken.diagnostics if not diagnostic.warning}
    if bad:
        click.echo(f"{counted(len(bad), 'row')} not taken in", err=True)
        ctx.exit(1)
