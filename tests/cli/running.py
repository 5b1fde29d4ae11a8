"""Commands as a user types them, and what they print."""

from __future__ import annotations

from click.testing import CliRunner, Result

from bookmaker.cli import main


def run(*arguments: object) -> Result:
    """Run a command; its exit code and what it said on standard output and standard error."""
    return CliRunner().invoke(main, [str(argument) for argument in arguments])
