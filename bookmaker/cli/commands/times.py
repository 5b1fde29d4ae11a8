"""`bookmaker times`: what a club's own times say of a book and its grades."""

from __future__ import annotations

import json
from pathlib import Path

import click

from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument, load_book, proofs_in_order, proven, proving_options
from bookmaker.cli.paths import NEW_FILE, NEW_FILE_OR_STREAM
from bookmaker.cli.table import in_columns
from bookmaker.files import write_whole
from bookmaker.times import assess, calibration_text, read_results
from bookmaker.times.wording import data, sentences, table

NUMBERS = (0, 2, 3, 4, 5, 6, 7)
"""Columns of the table that hold numbers."""


@main.command("times")
@book_argument
@click.argument("results", metavar="RESULTS.csv", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@proving_options
@click.option(
    "--out",
    "file",
    type=NEW_FILE,
    metavar="FILE",
    help="Write a calibration, for the option --calibration of other commands.",
)
@click.option(
    "--limit",
    type=click.FloatRange(min=0, min_open=True),
    metavar="MINUTES",
    help="How long everybody had: an empty cell was not finished by then.",
)
@click.option(
    "--json",
    "json_file",
    type=NEW_FILE_OR_STREAM,
    metavar="FILE",
    help="Also write everything as JSON; “-” for standard output.",
)
def times_command(book: Path, results: Path, file: Path | None, limit: float | None, json_file: str | None) -> None:
    """Compare the grades of a book with the times of its solvers.

    RESULTS.csv is a table: solvers down the side, puzzles (ids, titles or numbers) across the top, or the
    other way round, and in between minutes, such as 12, 12.5 or 12:30. Empty means not finished, “> 45” not finished
    after 45 minutes, a dash not tried. Or a row for each time, with the columns solver, puzzle, minutes.

    Tells how well the grades agree with the times, how long the club takes, and which puzzles were misjudged. At least
    eight solvers and ten puzzles are needed.
    """
    manifest = load_book(book)
    proofs = proven(proofs_in_order(manifest))
    found = assess(read_results(results, [proof.entry for proof in proofs]), proofs, limit)
    text = json.dumps(data(found), ensure_ascii=False, indent=1) + "\n"
    written = {Path(json_file): text.encode()} if json_file and json_file != "-" else {}
    if file:
        written[file] = calibration_text(found, results.name).encode()
    write_whole(written)
    if json_file == "-":
        click.echo(text, nl=False)
        return
    click.echo(in_columns(table(found), NUMBERS))
    click.echo()
    for sentence in sentences(found, manifest.band_names):
        click.echo(sentence)
    if file:
        click.echo(f"{file}: a calibration; other commands use it with --calibration")
