"""`bookmaker explain`: the solving path in words."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.cli.completion import ids
from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument, load_book, proofs_of, proven, proving_options
from bookmaker.tell import tell
from bookmaker.tell.formats import as_json, as_markdown, as_text

FORMATS = {"text": as_text, "markdown": as_markdown, "json": as_json}


@main.command("explain")
@book_argument
@proving_options
@click.argument("puzzle_id", metavar="ID", shell_complete=ids)
@click.option(
    "--format",
    "form",
    type=click.Choice(list(FORMATS)),
    default="text",
    show_default=True,
    help="Plain text, Markdown, or JSON for other programs.",
)
def explain_command(book: Path, puzzle_id: str, form: str) -> None:
    """Tell how puzzle ID is solved, as a presenter would.

    Every deduction is named, in the order a person would find it, and the hard moment is announced before it comes.
    Cells are named by row and column: r5c2 is in row 5, column 2.
    """
    manifest = load_book(book)
    (proof,) = proven(proofs_of(manifest, (puzzle_id,)))
    click.echo(FORMATS[form](tell(proof, manifest.band_names)), nl=False)
