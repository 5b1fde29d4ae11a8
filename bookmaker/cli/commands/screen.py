"""`bookmaker screen`: long lists proofed as a stream."""

from __future__ import annotations

from pathlib import Path
from time import monotonic

import click

from bookmaker.cli.group import KEPT, main
from bookmaker.cli.loading import say_alive
from bookmaker.cli.paths import NEW_FILE, Whole
from bookmaker.proof.executors import executor_on, processes
from bookmaker.rules.common.words.wording import counted, number
from bookmaker.screening import screen


@main.command("screen")
@click.argument("lists", nargs=-1, required=True, type=click.Path(exists=True, path_type=Path), metavar="LIST…")
@click.option("--out", "report", required=True, type=NEW_FILE, metavar="REPORT.jsonl", help="Add to this file.")
@click.option(
    "--workers",
    type=Whole(1, 64),
    default=1,
    show_default=True,
    metavar="N",
    help="Share the proofs among N processes.",
)
@click.option("--on", "address", metavar="tcp://…", help="Use the workers of a Dask scheduler (extra “cluster”).")
@click.pass_context
def screen_command(
    ctx: click.Context, lists: tuple[Path, ...], report: Path, workers: int, address: str | None
) -> None:
    """Proof long lists of puzzles, with a line of JSON for each.

    The lines are in the order of the lists. A run that was stopped goes on where it ended when the same command is
    typed again. Ends with exit code 1 if a puzzle in this run is faulty or not proven unique.
    """
    ctx.meta[KEPT] = f"the lines in {report} are kept, and the same command goes on after the last of them"
    met = faulty = 0
    said = monotonic()
    with executor_on(address) if address else processes(workers, say_alive) as executor:
        for line in screen(lists, report, executor):
            met += 1
            faulty += line.get("verdict") != "unique"
            if monotonic() - said > 1:
                said = monotonic()
                click.echo(f"{met} puzzles", err=True)
    click.echo(f"{report}: {counted(met, 'line')} added, {number(faulty)} of them not proven unique")
    if faulty:
        ctx.exit(1)
