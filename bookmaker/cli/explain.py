"""`bookmaker explain`: the solving path in words."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument, calibration_option, load_book, proofs_of, proven, proving_options
from bookmaker.tell import tell
from bookmaker.tell.formats import as_json, as_markdown, as_text

FORMATS = {"text": as_text, "markdown": as_markdown, "json": as_json}


@main.command("explain")
@book_argument
@proving_options
@calibration_option
@click.argument("puzzle_id", metavar="ID")
@click.option("--format", "form", type=click.Choice(list(FORMATS)), default="text", show_default=True)
def explain_command(book: Path, puzzle_id: str, form: str) -> None:
    """Tell how puzzle ID is solved, as one would at the table.

    Every deduction by its name, in the order a person would find it; the hard moment is announced before it comes.
    """
    manifest = load_book(book)
    (proof,) = proven(proofs_of(manifest, (puzzle_id,)))
    click.echo(FORMATS[form](tell(proof, manifest.band_names)), nl=False)
