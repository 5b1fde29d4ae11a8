"""`bookmaker layouts`: the layouts there are."""

from __future__ import annotations

import click

from bookmaker.cli.group import main
from bookmaker.layout import layout_names, load_layout


@main.command("layouts")
def layouts_command() -> None:
    """List the layouts for books and handouts.

    Also shows the line that chooses one in a manifest, and the option that does so for a single printing.
    """
    names = layout_names()
    width = max(map(len, names))
    for name in names:
        click.echo(f"{name:{width}}  {load_layout(name).about}")
    click.echo("\nin book.yaml, under “book:”\n  layout: " + names[0])
    click.echo(f"or for a single printing\n  bookmaker typeset BOOK --out FOLDER --layout {names[0]}")
