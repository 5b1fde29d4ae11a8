"""`bookmaker preflight`: what would a printer find fault with in a finished PDF?"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from pathlib import Path

import click

from bookmaker.cli.group import main, print_diagnostics
from bookmaker.cli.loading import load_book, proofs_in_order, proving_options, shared
from bookmaker.cli.progress import Progress
from bookmaker.halfway import halfway
from bookmaker.preflight import Report, inspect
from bookmaker.proof import Proof
from bookmaker.rules.common.words.wording import counted, listed
from bookmaker.solve.learning import learner
from bookmaker.solve.verdict import Prover, Undecided
from bookmaker.source.diagnostics import Diagnostic, Place


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
    half_new = _half_new(file)
    proofs = proofs_in_order(load_book(book)) if book else None
    with shared() as executor:
        report = inspect(file, str(file), proofs, executor=executor, watch=Progress("read", "pages"))
    print_diagnostics((*report.diagnostics, *half_new))
    if not report.sound or half_new:
        ctx.exit(1)
    click.echo(f"{file}: {_summary(report, compared=proofs is not None)}")
    if proofs is not None:
        click.echo(f"compared: {report.edition}, with {book}, proven {_provers(proofs)}")


def _half_new(file: Path) -> tuple[Diagnostic, ...]:
    """That it is one of several files of which some are new and some old."""
    if not (places := halfway(file)):
        return ()
    names = listed([place.name for place in places])
    said = f"a run was killed while it put new files in place: some of {names} are new and some old"
    hint = "print them again; whatever bookmaker writes into this folder next puts the old ones back first"
    return (Diagnostic(Place(str(file)), "half-new", said, hint),)


def _provers(proofs: Sequence[Proof]) -> str:
    """“now: 18 puzzles by the search, two by clause learning (glucose4 and cadical153 of …)”."""
    names = {Prover.SEARCH: "the search", Prover.LEARNING: f"clause learning ({learner()})"}
    by = Counter(proof.verdict.prover for proof in proofs if not isinstance(proof.verdict, Undecided))
    said = [f"{counted(by[prover], 'puzzle')} by {name}" for prover, name in names.items() if by[prover]]
    if others := len(proofs) - by.total():
        said.append(f"{counted(others, 'puzzle')} left undecided")
    return f"now: {listed(said)}"


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
