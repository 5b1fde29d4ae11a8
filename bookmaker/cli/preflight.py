"""`bookmaker preflight`: what would a printer find fault with in a finished PDF?"""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.cli.group import main, print_diagnostics
from bookmaker.cli.loading import load_book, proofs_in_order, proving_options, shared
from bookmaker.cli.progress import Progress
from bookmaker.preflight import Report, inspect
from bookmaker.rules.common.words.wording import counted, listed


@main.command("preflight")
@proving_options
@click.argument("file", metavar="FILE.pdf", type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option(
    "--against",
    "book",
    type=click.Path(exists=True, path_type=Path),
    metavar="BOOK",
    help="Also read the printed grids, their marks and keys back and compare them with this book.",
)
@click.pass_context
def preflight_command(ctx: click.Context, file: Path, book: Path | None) -> None:
    """Check a finished PDF before it goes to press.

    Looks at fonts, boxes, page sizes, colours, pictures, thin lines, text near the trim, the page count and the
    metadata. With --against, every printed grid and key is read from the page and compared with the book, digit by
    digit and mark by mark. Ends with exit code 1 if more than warnings are found.
    """
    proofs = proofs_in_order(load_book(book)) if book else None
    with shared() as executor:
        report = inspect(file, str(file), proofs, executor=executor, watch=Progress("read", "pages"))
    print_diagnostics(report.diagnostics)
    if not report.sound:
        ctx.exit(1)
    click.echo(f"{file}: {_summary(report, compared=proofs is not None)}")


def _summary(report: Report, compared: bool) -> str:
    """“24 pages, no faults found; 18 grids and 18 keys match the book, with 25 cages and 14 dots”."""
    said = f"{counted(report.pages, 'page')}, no faults found"
    if compared:
        grids = sum(grid.kind == "grid" for grid in report.printed)
        keys = len(report.printed) - grids
        said += f"; {counted(grids, 'grid')} and {counted(keys, 'key')} match the book"
        if report.marks:
            marks = sorted(report.marks.items(), key=lambda mark: mark[0].casefold())
            said += ", with " + listed(f"{count} {noun}{'s' * (count > 1)}" for noun, count in marks)
    return said
