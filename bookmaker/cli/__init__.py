"""The command line: parse, call, print. No logic lives here."""

from bookmaker.cli.group import main

__all__ = ["main"]
