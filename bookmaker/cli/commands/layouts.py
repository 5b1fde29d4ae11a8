"""`bookmaker layouts`: the layouts there are, and what each of them says."""

from __future__ import annotations

import textwrap
from collections.abc import Sequence
from pathlib import Path
from shutil import get_terminal_size

import click

from bookmaker.cli.completion import any_layout
from bookmaker.cli.group import main
from bookmaker.cli.paths import NEW_PDF
from bookmaker.files import write_whole
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.layout import layout_names, load_layout
from bookmaker.layout.explained import Value, values_of
from bookmaker.layout.sheets.areas import compose_areas


@main.command("layouts")
@click.argument("name", metavar="[NAME or FILE]", required=False, shell_complete=any_layout)
@click.option("--out", "file", type=NEW_PDF, metavar="FILE.pdf", help="Draw the layout's pages with all their areas.")
def layouts_command(name: str | None, file: Path | None) -> None:
    """List the layouts for books and handouts, or explain one.

    The list ends with the line that chooses one in a manifest, and the option that does so for a single printing. For
    one layout, which may be a file of your own: every value, with what it is for; and with --out its pages drawn to
    scale, with their margins and the places of puzzles and keys.
    """
    if name is None:
        if file:
            raise click.UsageError(
                "--out draws one layout: name it, such as “bookmaker layouts a5-book --out FILE.pdf”"
            )
        _list()
        return
    layout, values = load_layout(name), [*values_of(name)]
    if file:
        write_whole({file: pdf_bytes(compose_areas(layout, values))})
        click.echo(f"{file}: the pages of {layout.name}, drawn to scale")
        return
    click.echo(f"{layout.name}: {layout.about}\n")
    _explain(values, min(get_terminal_size().columns, 110))
    click.echo(f"\n“bookmaker layouts {name} --out {layout.name}.pdf” draws its pages")
    if not layout.places or layout.based_on == "":
        click.echo(f"a layout of your own is a file beside the book that says what differs, such as\n{OWN}")


OWN = """
  based-on: a5-book
  margins: {inner: 22 mm}

and in book.yaml, under “book:”

  layout: my-layout.yaml"""


def _explain(values: Sequence[Value], wide: int) -> None:
    """A line for each value: its name, what is typed, and what that is for."""
    names = max(len(value.name) for value in values) + 2
    typed = max(len(value.typed) for value in values)
    for value in values:
        name = f"{'  ' if value.section else ''}{value.name}"
        start = f"{name:{names}}  {value.typed:{typed}}  "
        lines = textwrap.wrap(value.meaning, max(wide - len(start), 20)) or [""]
        click.echo(start + f"\n{' ' * len(start)}".join(lines))


def _list() -> None:
    names = layout_names()
    width = max(map(len, names))
    for name in names:
        click.echo(f"{name:{width}}  {load_layout(name).about}")
    click.echo("\nin book.yaml, under “book:”\n  layout: " + names[0])
    click.echo(f"or for a single printing\n  bookmaker typeset BOOK --out FOLDER --layout {names[0]}")
    click.echo("“bookmaker layouts NAME” explains one, to base a layout of your own on")
