"""`bookmaker explain`: the solving path in words."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import click

from bookmaker.cli.completion import ids
from bookmaker.cli.group import main
from bookmaker.cli.loading import (
    book_argument,
    calibration_option,
    language_option,
    load_book,
    proofs_of,
    proven,
    proving_options,
)
from bookmaker.tell import Story, tell
from bookmaker.tell.formats import as_json, as_markdown, as_text

FORMATS: dict[str, Callable[[Story, bool], str]] = {"text": as_text, "markdown": as_markdown, "json": as_json}


@main.command("explain")
@book_argument
@proving_options
@language_option
@calibration_option
@click.argument("puzzle_id", metavar="ID", shell_complete=ids)
@click.option(
    "--format",
    "form",
    type=click.Choice(list(FORMATS)),
    default="text",
    show_default=True,
    help="Plain text, Markdown, or JSON for other programs.",
)
@click.option("--full", is_flag=True, help="Tell every what-if, also where many of a kind follow each other.")
@click.option("--steps", is_flag=True, help="Print the numbers of the steps beside each sentence.")
def explain_command(book: Path, puzzle_id: str, form: str, full: bool, steps: bool) -> None:
    """Tell how puzzle ID is solved, as a presenter would.

    Every deduction is named, in the order a person would find it, and the hard moment is announced before it comes.
    Cells are named by row and column: r5c2 is in row 5, column 2.
    """
    manifest = load_book(book)
    (proof,) = proven(proofs_of(manifest, (puzzle_id,)))
    click.echo(
        FORMATS[form](tell(proof, manifest.band_names, full=full, language=manifest.publication.language), steps),
        nl=False,
    )
