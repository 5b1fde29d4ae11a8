"""`bookmaker languages`: what can be printed, in which languages."""

from __future__ import annotations

import click
from babel import Locale

from bookmaker.cli.group import main
from bookmaker.language.catalogues import catalogue, completeness, languages


@main.command("languages")
def languages_command() -> None:
    """List the languages that a book can be printed in.

    A book names its own with “language:”; --language of the printing commands asks for another. What an editor has
    typed stays as it is, unless the manifest has it in several languages.
    """
    wide = max(map(len, languages()))
    for language in languages():
        locale = Locale.parse(catalogue(language).locale)
        said, all_of_it = completeness(language)
        share = "complete" if said == all_of_it else f"{said} of {all_of_it} messages"
        click.echo(f"{language:{wide}}  {locale.english_name}: {share}")
