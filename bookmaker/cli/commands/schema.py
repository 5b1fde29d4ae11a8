"""`bookmaker schema`: what may be typed into a file, for editors."""

from __future__ import annotations

import click

from bookmaker.cli.group import main
from bookmaker.schema import SCHEMAS, schema_text


@main.command("schema")
@click.argument("name", type=click.Choice(list(SCHEMAS)), default="manifest")
def schema_command(name: str) -> None:
    """Print what may be typed into a file, for editors that complete it.

    It is a JSON Schema: of a manifest unless another kind of file is named. An editor with a YAML language server uses
    it where the file begins with “# yaml-language-server: $schema=book.schema.json”, with the schema saved under that
    name beside it. “bookmaker start” writes both.
    """
    click.echo(schema_text(name), nl=False)
