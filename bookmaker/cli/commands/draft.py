"""`bookmaker draft`: new puzzles from a wish."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from time import monotonic

import click

from bookmaker.alone import at_work_on
from bookmaker.archive.lookalikes import members_of
from bookmaker.changes.typed import find_typed
from bookmaker.cli.commands.assemble import plan_for
from bookmaker.cli.durations import seconds_in
from bookmaker.cli.group import KEPT, main, print_diagnostics
from bookmaker.cli.loading import from_archives, known
from bookmaker.cli.paths import NEW_FILE, Whole
from bookmaker.draft.forced import FINDERS
from bookmaker.draft.forcing import dresses, grown
from bookmaker.draft.run import Found, Progress, take_up
from bookmaker.draft.telling import dress_lines, found_line, missed_lines, progress_line
from bookmaker.files import write_whole
from bookmaker.manifest.written import puzzle_lines
from bookmaker.proof.executors import executor_on, processes
from bookmaker.rules import problem_of
from bookmaker.rules.common.words.wording import counted
from bookmaker.solve import prove
from bookmaker.solve.verdict import Unique
from bookmaker.source.diagnostics import BookErrors, Collector, Diagnostic, Place
from bookmaker.wishes.lacks import filled_up, lacks_of, wishes_for
from bookmaker.wishes.reading import load_wishes
from bookmaker.wishes.wish import Wish


@main.command("draft")
@click.argument("wish", required=False, type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--out", "file", required=True, type=NEW_FILE, metavar="FILE.yaml", help="Write the puzzles here.")
@click.option(
    "--for",
    "limits",
    multiple=True,
    metavar="10m|BRIEF",
    help="Stop after 30s, 10m or 2h; or draft what the archive lacks for this brief.",
)
@click.option(
    "--against",
    "others",
    multiple=True,
    type=click.Path(exists=True, path_type=Path),
    metavar="BOOK",
    help="Refuse what looks like a puzzle of this book, list or archive.",
)
@from_archives("The archive of the brief, where this names none.")
@click.option(
    "--force",
    nargs=2,
    type=(click.Path(exists=True, path_type=Path), str),
    metavar="BOOK ID",
    help="Tell givens of this classic by marks that leave no choice.",
)
@click.option(
    "--kind",
    type=click.Choice(list(FINDERS)),
    default="thermometer",
    show_default=True,
    help="With --force: the marks that tell the givens.",
)
@click.option(
    "--workers", type=Whole(1, 64), default=1, show_default=True, metavar="N", help="Share the work among N processes."
)
@click.option("--on", "address", metavar="tcp://…", help="Use the workers of a Dask scheduler (extra “cluster”).")
@click.pass_context
def draft_command(
    ctx: click.Context,
    wish: Path | None,
    file: Path,
    limits: tuple[str, ...],
    others: tuple[Path, ...],
    archives: tuple[Path, ...],
    force: tuple[Path, str] | None,
    kind: str,
    workers: int,
    address: str | None,
) -> None:
    """Draft puzzles as the file WISH describes them.

    Each is proven to have one solution and graded, and is written to FILE.yaml as soon as it is found: a list of
    puzzles that a book can include. A run that was stopped goes on from there when the same command is typed again.
    Ends with exit code 1 if a wish is not met, and says what stood in the way and what would widen it.

    With --force, FILE.yaml gets the puzzle named in the dress of --kind: marks that leave no freedom stand in place of
    some of its givens, and say no more than these, which is proven. If it has none, a classic that has is made, and
    both are written.
    """
    if force is not None:
        _force(ctx, *force, kind, file)
        return
    seconds, briefs = _limits(limits)
    if not (wish or briefs):
        raise click.UsageError("name a file with a wish, or a brief with --for")
    wishes = load_wishes(wish) if wish else ()
    shun: set[str] = set()
    for brief in briefs:
        more, keys = _lacking(brief, archives)
        wishes += more
        shun |= keys
    ctx.meta[KEPT] = f"the puzzles in {file} are kept, and the same command goes on from there"
    with at_work_on(file), executor_on(address) if address else processes(workers) as executor:
        run = take_up(file, wishes, shun | _keys_in(*others), _keys_in)
        alone = workers == 1 and not address
        _watch(run.go_on(executor, 0 if alone else 2 * workers + 2, monotonic() + seconds if seconds else None))
    click.echo(f"{file}: {counted(sum(progress.found for progress in run.progress), 'puzzle')}")
    short = [progress for progress in run.progress if not progress.met]
    for progress in short:
        for line in missed_lines(progress):
            click.echo(line, err=True)
    if short:
        ctx.exit(1)


def _lacking(brief: Path, archives: tuple[Path, ...]) -> tuple[tuple[Wish, ...], set[str]]:
    """Wishes for what the archive lacks for a brief, and the keys of the puzzles that it has or that were printed."""
    plan, catalogue = plan_for(brief, archives, filled_up)
    assert plan is not None, "mistakes in a brief are raised"
    lacks = lacks_of(plan)
    if lacks is None:
        hint = "“bookmaker assemble” says which of its demands clash"
        raise BookErrors([Diagnostic(Place(str(brief)), "no-help", "no drafted puzzles would meet this brief", hint)])
    if not lacks:
        click.echo(f"the archive lacks nothing for {brief}")
    for lack in lacks:
        click.echo(f"lacking for {brief}: {lack.words(catalogue.band_names)}")
    return wishes_for(lacks), {card.keys.puzzle for card in catalogue.cards} | set(catalogue.history)


def _force(ctx: click.Context, book: Path, name: str, kind: str, file: Path) -> None:
    """Marks without freedom for a classic, or a classic for them."""
    typed = find_typed(book, name)
    verdict = prove(problem_of(typed.puzzle))
    if typed.puzzle.rules or not isinstance(verdict, Unique):
        said = f"“{name}” is not a classic with one solution"
        raise BookErrors([Diagnostic(typed.place, "not-a-classic", said, "marks take the place of a classic’s givens")])
    found = dresses(typed.puzzle, verdict.solution, kind)
    for at, dress in enumerate(found, start=1):
        click.echo("\n".join(dress_lines(at, dress)))
    items = [puzzle_lines(dress.puzzle, {"id": f"{name}-{kind}"}) for dress in found[:1]]
    if not found:
        click.echo(f"No {kind} leaves its cells no freedom among the givens of “{name}”; here is a classic with some:")
        made = grown(Wish(grid=typed.puzzle.grid), kind)
        if made is None:
            click.echo("none was found", err=True)
            ctx.exit(1)
        click.echo("\n".join(dress_lines(1, made)))
        items = [puzzle_lines(made.classic, {"id": "grown"}), puzzle_lines(made.puzzle, {"id": f"grown-{kind}"})]
    write_whole({file: "\n".join("\n".join(lines) + "\n" for lines in items).encode()})
    click.echo(f"wrote {file}: {counted(len(items), 'puzzle')}")


def _limits(texts: tuple[str, ...]) -> tuple[int, list[Path]]:
    """What stands after --for: seconds (0 for no limit), and files."""
    seconds, files = 0, []
    for text in texts:
        if time := seconds_in(text):
            seconds = time
        elif Path(text).is_file():
            files.append(Path(text))
        else:
            said = f"“{text}” is neither a time, such as 30s, 10m or 2h, nor a file with a brief"
            raise click.BadParameter(said, param_hint="--for")
    return seconds, files


def _keys_in(*places: Path) -> set[str]:
    """The keys of the puzzles in books, lists and archives, which their look-alikes share."""
    collector = Collector()
    members = members_of(places, known(), None, collector).members
    print_diagnostics(tuple(collector.found))
    return {member.keys.puzzle for member in members}


def _watch(events: Iterator[Found | Progress]) -> None:
    """Say each puzzle, and between them, more and more rarely, how far it has come."""
    said, pause = monotonic(), 1.0
    for event in events:
        if isinstance(event, Found):
            click.echo(found_line(event))
            said, pause = monotonic(), 1.0
        elif monotonic() - said > pause:
            said, pause = monotonic(), min(2 * pause, 60.0)
            click.echo(progress_line(event), err=True)
