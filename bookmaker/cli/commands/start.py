"""`bookmaker start`: a small book to begin with."""

from __future__ import annotations

from pathlib import Path

import click

from bookmaker.cli.completion import rule_kinds
from bookmaker.cli.group import main
from bookmaker.cli.paths import NEW_FOLDER
from bookmaker.source.diagnostics import typed
from bookmaker.starter import write_starter


@main.command("start")
@click.argument("folder", type=NEW_FOLDER)
@click.option(
    "--kind",
    metavar="KIND",
    shell_complete=rule_kinds,
    help="Begin with an example of this rule kind (see “bookmaker rules”).",
)
def start_command(folder: Path, kind: str | None) -> None:
    """Make a small book in FOLDER, ready to print and to change.

    The comments in its manifest explain how to change it.
    """
    for path in write_starter(folder, kind):
        click.echo(f"wrote {path}")
    click.echo(f"now try: bookmaker typeset {typed(folder)} --out {typed(folder / 'printed')}")
