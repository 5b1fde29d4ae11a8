"""`bookmaker tune`: the least change that brings a puzzle where it is wished to be."""

from __future__ import annotations

from dataclasses import replace
from itertools import islice
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
from bookmaker.draft.telling import tuned_lines, tuning_lines
from bookmaker.draft.tuning import Tuned, Tuning
from bookmaker.files import write_whole
from bookmaker.proof.executors import processes
from bookmaker.rules import problem_of
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from bookmaker.source.diagnostics import BookErrors, Collector, Diagnostic, Place
from bookmaker.wishes.reading import read_goal
from bookmaker.wishes.span import Span
from bookmaker.wishes.wish import Wish


@main.command("tune")
@book_argument
@click.argument("puzzle_id", metavar="ID", shell_complete=ids)
@click.option("--band", metavar="BAND", help="Such as Ramble, or “Ramble to Hike”.")
@click.option("--difficulty", metavar="N", help="Such as 2.5, or “2 to 3”.")
@click.option("--fewer-givens", is_flag=True, help="Fewer givens than it has.")
@click.option("--no", "refused", multiple=True, metavar="TECHNIQUE", help="Without this technique, such as what-if.")
@click.option("--show", type=Whole(1), default=5, show_default=True, metavar="N", help="Show so many changes.")
@click.option("--write", "file", type=NEW_FILE, metavar="FILE", help="Write the first to a file of its own.")
@click.option("--for", "seconds", type=SECONDS, default="1m", show_default=True, help="How long to look.")
@click.option(
    "--workers", type=Whole(1, 64), default=1, show_default=True, metavar="N", help="Share the work among N processes."
)
@click.pass_context
def tune_command(
    ctx: click.Context,
    book: Path,
    puzzle_id: str,
    band: str | None,
    difficulty: str | None,
    fewer_givens: bool,
    refused: tuple[str, ...],
    show: int,
    file: Path | None,
    seconds: int,
    workers: int,
) -> None:
    """Change puzzle ID as little as possible to make it as wished.

    One given or mark is added, taken away or moved by one, or two are; what faces it in the puzzle's arrangement
    changes with it. The solution stays, and is the only one. The least changes come first, as lines to paste. Ends
    with exit code 1 if no change that was tried does it.
    """
    typed = find_typed(book, puzzle_id)
    wish = _wish(typed, band, difficulty, fewer_givens, refused)
    verdict = prove(problem_of(typed.puzzle))
    if not isinstance(verdict, Unique):
        hint = f"“bookmaker mend {book} {puzzle_id}” looks for the slip"
        raise BookErrors([Diagnostic(typed.place, "not-unique", f"“{puzzle_id}” has not exactly one solution", hint)])
    tuning = Tuning(typed.puzzle, verdict.solution, wish)
    found: list[Tuned] = []
    with processes(workers) as executor:
        ahead = 4 * workers if workers > 1 else 0
        for tuned in islice(tuning.results(executor, ahead, monotonic() + seconds), show):
            found.append(tuned)
            click.echo("\n".join(tuned_lines(len(found), tuned, typed)) + "\n")
    click.echo("\n".join(tuning_lines(tuning, len(found))))
    if not found:
        ctx.exit(1)
    if file is not None:
        write_whole({file: own_text(typed, changed_text(typed, found[0].puzzle)).encode()})
        click.echo(f"wrote {file}")


def _wish(typed: Typed, band: str | None, difficulty: str | None, fewer_givens: bool, refused: tuple[str, ...]) -> Wish:
    """What is wished, from the options. Raises BookErrors where one can't be read."""
    if not (band or difficulty or fewer_givens or refused):
        raise click.UsageError("say what to reach: --band, --difficulty, --fewer-givens or --no")
    collector = Collector()
    wish = read_goal(band or "", difficulty or "", refused, typed.puzzle.rules, Place("tune"), collector)
    collector.raise_errors()
    return replace(wish, givens=Span(0, typed.puzzle.given_count - 1)) if fewer_givens else wish
