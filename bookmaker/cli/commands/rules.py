"""`bookmaker rules`: the rule kinds there are, each with an example to paste."""

from __future__ import annotations

import textwrap
from pathlib import Path

import click

from bookmaker.cli.completion import rule_kinds
from bookmaker.cli.group import main
from bookmaker.cli.loading import language_option
from bookmaker.cli.paths import NEW_PDF
from bookmaker.files import write_whole
from bookmaker.ink.pdf import pdf_bytes
from bookmaker.language import catalogue
from bookmaker.layout.sheets.chart import compose_chart
from bookmaker.phrases.titles import title_of
from bookmaker.rules import kinds
from bookmaker.source.diagnostics import nearest


@main.command("rules")
@language_option
@click.argument("kind", required=False, shell_complete=rule_kinds)
@click.option(
    "--chart",
    type=NEW_PDF,
    metavar="FILE.pdf",
    help="Draw every kind's marks on a chart.",
)
def rules_command(kind: str | None, chart: Path | None) -> None:
    """List the rule kinds, or explain one KIND.

    For a single kind: what it means, and an example to paste under “rules:”.
    """
    language = click.get_current_context().meta.get("language", "en")
    if chart is not None:
        write_whole({chart: pdf_bytes(compose_chart(language))})
        click.echo(f"{chart}: a chart of {len(kinds())} rule kinds")
        return
    if kind is None:
        width = max(map(len, kinds()))
        for word, rule in kinds().items():
            click.echo(f"{word:{width}}  {rule.title}")
        click.echo("\n“bookmaker rules KIND” explains one and shows how it is written")
        return
    if kind not in kinds():
        raise click.BadParameter(f"there is no rule kind “{kind}”; {nearest(kind, kinds())}", param_hint="KIND")
    rule = kinds()[kind]
    words = catalogue(language)
    click.echo(title_of(words, rule) + "\n")
    click.echo(textwrap.fill(rule.primer(words), 88) + "\n")
    click.echo("paste this into a puzzle:\n\n    rules:\n" + textwrap.indent(rule.example.rstrip(), " " * 6))
