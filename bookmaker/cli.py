"""The command line: parse, call, print. No logic lives here."""

from __future__ import annotations

import click


@click.group()
def main() -> None:
    """Proof, grade and print books of number-placement puzzles."""
