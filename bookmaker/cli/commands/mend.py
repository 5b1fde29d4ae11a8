"""`bookmaker mend`: from a puzzle with a slip to its cures."""

from __future__ import annotations

from pathlib import Path
from time import monotonic

import click

from bookmaker.changes.textedits import changed_text, own_text
from bookmaker.changes.typed import Typed, find_typed
from bookmaker.cli.completion import ids
from bookmaker.cli.durations import SECONDS
from bookmaker.cli.group import main
from bookmaker.cli.loading import book_argument
from bookmaker.cli.paths import NEW_FILE, Whole
from bookmaker.files import write_whole
from bookmaker.mend import telling
from bookmaker.mend.case import Case
from bookmaker.mend.conflicts import conflicts
from bookmaker.mend.cures import Search, Watch, search
from bookmaker.mend.limit import Seconds
from bookmaker.mend.settling import settling
from bookmaker.solve.verdict import NoSolution, Several, Unique


@main.command("mend")
@book_argument
@click.argument("puzzle_id", metavar="ID", shell_complete=ids)
@click.option("--write", "file", type=NEW_FILE, metavar="FILE", help="Write the mended puzzle to a file of its own.")
@click.option("--cure", "choice", type=Whole(1), default=1, show_default=True, metavar="N", help="Write the N-th cure.")
@click.option("--show", type=Whole(1), default=5, show_default=True, metavar="N", help="Show so many cures.")
@click.option("--for", "seconds", type=SECONDS, default="10s", show_default=True, help="How long to look.")
@click.pass_context
def mend_command(
    ctx: click.Context, book: Path, puzzle_id: str, file: Path | None, choice: int, show: int, seconds: int
) -> None:
    """Find the slip in puzzle ID: no solution, several, or another than its setter gives.

    Every single change that would leave exactly one solution is tried, the likeliest slips first: a digit misread, a
    row shifted, a total with its digits turned, a chain from the wrong end. Of a puzzle with several solutions it also
    says what to add, of one with none what cannot stand together. With --write, the puzzle after the first cure (or
    the one that --cure names) goes into a file of its own; the book is never touched. Ends with exit code 1 if there
    is no cure.
    """
    typed = find_typed(book, puzzle_id)
    wanted = typed.setters_solution
    found = search(Case(typed.puzzle, Seconds(0.6 * seconds)), wanted, _progress(), max(show, choice))
    click.echo(telling.verdict_line(puzzle_id, found.verdict, wanted))
    if isinstance(found.verdict, Unique) and wanted in (None, found.verdict.solution):
        return
    for at, cure in enumerate(found.cures[:show], start=1):
        click.echo("\n" + "\n".join(telling.cure_lines(at, cure, typed)))
    if len(found.cures) > show:
        click.echo(f"\nand {len(found.cures) - show} more: --show {len(found.cures)}")
    click.echo("\n" + "\n".join(telling.search_lines(found)))
    _say_more(typed, found, 0.4 * seconds)
    if file is not None:
        _write(ctx, typed, found, file, choice)
    if not found.cures:
        ctx.exit(1)


def _say_more(typed: Typed, found: Search, seconds: float) -> None:
    """What cannot stand together, or what to add."""
    grid = typed.puzzle.grid
    match found.verdict:
        case NoSolution():
            lines = telling.conflict_lines(conflicts(Case(typed.puzzle, Seconds(seconds))), grid)
        case Several():
            lines = telling.settling_lines(settling(Case(typed.puzzle, Seconds(seconds))), grid)
        case _:
            return
    click.echo("\n" + "\n".join(lines))


def _write(ctx: click.Context, typed: Typed, found: Search, file: Path, choice: int) -> None:
    if choice > len(found.cures):
        click.echo(f"there is no cure {choice}, so nothing was written", err=True)
        ctx.exit(1)
    write_whole({file: own_text(typed, changed_text(typed, found.cures[choice - 1].puzzle)).encode()})
    click.echo(f"\nwrote {file}: cure {choice}")


def _progress() -> Watch:
    said = monotonic()

    def watch(done: int, of: int) -> None:
        nonlocal said
        if monotonic() - said > 1:
            said = monotonic()
            click.echo(f"{done} of {of} changes", err=True)

    return watch
