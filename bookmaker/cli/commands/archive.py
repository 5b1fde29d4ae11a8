"""`bookmaker archive`: what there is to choose from."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.archive.listing import HEADINGS, PERMISSIONS, Wanted, as_csv, as_json, as_xlsx, chosen, rows_of
from bookmaker.archive.setters import spelled_twice
from bookmaker.cli.group import main, print_diagnostics
from bookmaker.cli.loading import archive_options, calibration_option, catalogue_of
from bookmaker.cli.paths import NEW_FILE
from bookmaker.cli.table import in_columns
from bookmaker.files import write_whole
from bookmaker.rules.common.words.wording import counted


@main.command("archive")
@click.argument(
    "folders", nargs=-1, required=True, type=click.Path(exists=True, file_okay=False, path_type=Path), metavar="FOLDER…"
)
@archive_options
@calibration_option
@click.option(
    "--kind", multiple=True, metavar="KIND", help="Only puzzles of this rule kind, “classic” or “latin-square”."
)
@click.option("--band", multiple=True, metavar="BAND", help="Only this band.")
@click.option("--setter", multiple=True, metavar="NAME", help="Only this setter's.")
@click.option("--tag", multiple=True, metavar="TAG", help="Only those with this tag.")
@click.option("--permission", multiple=True, type=click.Choice(PERMISSIONS), help="Only those in this state.")
@click.option("--unprinted", is_flag=True, help="Only those that no book holds, nor a look-alike of them.")
@click.option("--csv", "csv_file", type=NEW_FILE, metavar="FILE", help="Write what is listed as a table.")
@click.option("--xlsx", "xlsx_file", type=NEW_FILE, metavar="FILE", help="The same as a workbook.")
@click.option("--json", "json_file", type=NEW_FILE, metavar="FILE", help="All that is known of it, for other programs.")
@click.pass_context
def archive_command(
    ctx: click.Context,
    folders: tuple[Path, ...],
    kind: tuple[str, ...],
    band: tuple[str, ...],
    setter: tuple[str, ...],
    tag: tuple[str, ...],
    permission: tuple[str, ...],
    unprinted: bool,
    csv_file: Path | None,
    xlsx_file: Path | None,
    json_file: Path | None,
) -> None:
    """List the puzzles of an archive: FOLDERs of puzzle files, books and lists of classics.

    Options that narrow the list may be given several times and together: with --kind cage --kind arrow --band Hike
    come the Hikes that have cages or arrows. What --csv and --xlsx write, “bookmaker intake” reads back.
    """
    catalogue = catalogue_of(folders)
    cards = chosen(catalogue, Wanted(kind, band, setter, tag, permission, unprinted))
    files = {}
    if csv_file:
        files[csv_file] = as_csv(catalogue, cards)
    if xlsx_file:
        files[xlsx_file] = as_xlsx(catalogue, cards)
    if json_file:
        files[json_file] = as_json(catalogue, cards).encode()
    if files:
        write_whole(files)
    if cards:
        click.echo(in_columns((HEADINGS, *rows_of(catalogue, cards)), to_the_right=(5,)))
    of = "" if len(cards) == len(catalogue.cards) else f" of {len(catalogue.cards)}"
    click.echo(f"{counted(len(cards), 'puzzle')}{of}", err=True)
    for spellings in spelled_twice(card.setter for card in catalogue.cards):
        click.echo(f"worth a look: one setter or several? {', '.join(f'“{name}”' for name in spellings)}", err=True)
    print_diagnostics(catalogue.diagnostics)
    if not all(diagnostic.warning for diagnostic in catalogue.diagnostics):
        ctx.exit(1)
