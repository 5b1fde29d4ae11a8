"""`bookmaker crib`: what a presenter holds in the hand."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.book import make_book
from bookmaker.cli.checked import Printing, print_checked
from bookmaker.cli.completion import ids, layouts_for
from bookmaker.cli.group import main
from bookmaker.cli.loading import (
    agreed,
    book_argument,
    calibration_option,
    language_option,
    load_book,
    proofs_of,
    proven,
    proving_options,
)
from bookmaker.cli.paths import NEW_PDF
from bookmaker.files import replacing
from bookmaker.layout import compose_crib, load_layout
from bookmaker.rules.common.words.wording import counted
from bookmaker.tell import tell
from bookmaker.tell.scenes import ends_of, scenes_of


@main.command("crib")
@book_argument
@proving_options
@language_option
@calibration_option
@click.argument("puzzle_id", metavar="ID", shell_complete=ids)
@click.option("--out", "file", required=True, type=NEW_PDF, metavar="FILE", help="Write this PDF file.")
@click.option(
    "--layout",
    "layout_name",
    default="a4-book",
    show_default=True,
    metavar="NAME or FILE",
    shell_complete=layouts_for("book"),
    help="Print in this layout (see “bookmaker layouts”), or in the one in a file of your own.",
)
def crib_command(book: Path, puzzle_id: str, file: Path, layout_name: str) -> None:
    """Print a presenter's crib for puzzle ID.

    The solving path in words, with the board at its key moments beside it.
    """
    manifest = load_book(book)
    proofs = agreed(proven(proofs_of(manifest, (puzzle_id,))))
    (puzzle,) = make_book(manifest, proofs, as_listed=True).puzzles
    language = manifest.publication.language
    story = tell(proofs[0], manifest.band_names, rules=False, full=True, language=language)
    layout = load_layout(layout_name).speaking(language)
    document = compose_crib(puzzle, story, scenes_of(proofs[0], story), *ends_of(proofs[0], story), layout)
    with replacing() as beside:
        (pages,) = print_checked([Printing(file, lambda: document, grids=False)], proofs, beside)
    click.echo(f"{file}: {counted(pages, 'page')}")
