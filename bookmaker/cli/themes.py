"""`bookmaker themes`: how a book can be dressed."""

from __future__ import annotations

import click

from bookmaker.cli.group import main
from bookmaker.layout import load_theme, theme_names


@main.command("themes")
def themes_command() -> None:
    """List the themes for covers and ornament.

    Also shows the line that chooses one in a manifest, and the option that does so for a single printing. A theme sets
    colours and patterns; the patterns themselves are made of the book's own puzzles.
    """
    names = theme_names()
    width = max(map(len, names))
    for name in names:
        click.echo(f"{name:{width}}  {load_theme(name).about}")
    click.echo(f"\nin book.yaml, under “book:”\n  theme: {names[0]}")
    click.echo(f"or for a single printing\n  bookmaker typeset BOOK --out FOLDER --cover --theme {names[0]}")
